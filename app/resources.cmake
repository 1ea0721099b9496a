# SPDX-License-Identifier: GPL-3.0-or-later
# Everything under resources/ that the program reads at run time is compiled in under :/, with its path below resources/.
file(GLOB_RECURSE resource_files CONFIGURE_DEPENDS
  ${PROJECT_SOURCE_DIR}/resources/symbols/*.svg
  ${PROJECT_SOURCE_DIR}/resources/presets/*.json
  ${PROJECT_SOURCE_DIR}/resources/schema/*.json
  ${PROJECT_SOURCE_DIR}/resources/stages/*.howlmap
  ${PROJECT_SOURCE_DIR}/resources/lessons/*
  ${PROJECT_SOURCE_DIR}/resources/help/*
  ${PROJECT_SOURCE_DIR}/resources/icons/*.svg)
if(resource_files)
  qt_add_resources(howlmap_app resources PREFIX "/" BASE ${PROJECT_SOURCE_DIR}/resources FILES ${resource_files})
endif()
file(GLOB example_files CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/examples/*.howlmap)
if(example_files)
  qt_add_resources(howlmap_app examples PREFIX "/" BASE ${PROJECT_SOURCE_DIR} FILES ${example_files})
endif()
