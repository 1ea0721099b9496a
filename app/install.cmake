# SPDX-License-Identifier: GPL-3.0-or-later
# What an installed Howlmap consists of, and the Debian package made of it (cpack -G DEB in the build folder).
set(desktop ${PROJECT_SOURCE_DIR}/resources/desktop)
set(app_id org.howlmap.Howlmap)

install(TARGETS howlmap RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
install(FILES ${desktop}/${app_id}.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${desktop}/${app_id}.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages)
install(FILES ${desktop}/${app_id}.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
install(FILES ${PROJECT_SOURCE_DIR}/resources/icons/${app_id}.svg
        DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
foreach(size 16 22 24 32 48 64 128 256)
  install(FILES ${desktop}/icons/${size}.png DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/${size}x${size}/apps
          RENAME ${app_id}.png)
endforeach()

file(GLOB examples ${PROJECT_SOURCE_DIR}/examples/*.howlmap)
install(FILES ${examples} DESTINATION ${CMAKE_INSTALL_DOCDIR}/examples)
install(FILES ${desktop}/copyright DESTINATION ${CMAKE_INSTALL_DOCDIR})

# Manual page and changelog are installed compressed, without a time stamp, so that the same source gives the same package.
function(install_compressed file destination)
  get_filename_component(name ${file} NAME)
  set(packed ${CMAKE_CURRENT_BINARY_DIR}/${name}.gz)
  add_custom_command(OUTPUT ${packed} COMMAND gzip -9nc ${file} > ${packed} DEPENDS ${file} VERBATIM)
  add_custom_target(compressed_${name} ALL DEPENDS ${packed})
  install(FILES ${packed} DESTINATION ${destination})
endfunction()
install_compressed(${desktop}/howlmap.1 ${CMAKE_INSTALL_MANDIR}/man1)
install_compressed(${desktop}/changelog ${CMAKE_INSTALL_DOCDIR})

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME howlmap)
set(CPACK_PACKAGE_VENDOR "Howlmap maintainers")
set(CPACK_PACKAGE_CONTACT "Howlmap maintainers <maintainers@howlmap.org>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "stage plans that show which frequency will howl first")
set(CPACK_PACKAGE_DESCRIPTION
"Howlmap is for players who amplify acoustic instruments and for the engineers
who look after them. Wedges, fills, microphones, pickup instruments and in-ear
players are placed on a plan of the stage.
.
It computes level, directivity, reflections and interference for every pair of
a loudspeaker and a microphone or pickup, and the stability of all loops
together. It shows which frequency rings first, how many decibels are left,
and which change of angle, distance or setting cures it at the same loudness
for the player. The result goes to the venue as one sheet: plan, input list,
monitor mixes, starting equaliser, risks and cautions.")
set(CPACK_STRIP_FILES ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION sound)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS qt6-translations-l10n)  # "Cancel" and the like in other languages
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
    OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
include(CPack)
