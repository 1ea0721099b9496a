# SPDX-License-Identifier: GPL-3.0-or-later
# The languages. `ninja update_translations` puts new strings of app/ and core/ into resources/translations; the files
# there are compiled in under :/i18n. A test collects the texts anew and counts what is not translated.
set(translations ${PROJECT_SOURCE_DIR}/resources/translations/howlmap_de.ts)
qt_add_lrelease(howlmap_app TS_FILES ${translations} QM_FILES_OUTPUT_VARIABLE compiled)
set_source_files_properties(${compiled} PROPERTIES QT_RESOURCE_ALIAS howlmap_de.qm)
qt_add_resources(howlmap_app translations PREFIX "/i18n" BASE ${CMAKE_CURRENT_BINARY_DIR} FILES ${compiled})
set(by_helpers ${CMAKE_CURRENT_BINARY_DIR}/texts_by_helpers.cpp)
add_custom_target(update_translations
  COMMAND python3 resources/translations/collect.py app core > ${by_helpers}
  COMMAND Qt6::lupdate -I . -locations none -no-obsolete -source-language en -target-language de app core ${by_helpers} -ts ${translations}
  WORKING_DIRECTORY ${PROJECT_SOURCE_DIR} VERBATIM)
