# Fuzz targets. Every build replays the stored inputs; with FIELDSHAFT_FUZZ (clang++) each target becomes a fuzzer, and
# `run_fuzzers` lets each of them search for FIELDSHAFT_FUZZ_SECONDS.
option(FIELDSHAFT_FUZZ "Build the fuzz targets as fuzzers (clang++)" OFF)
set(FIELDSHAFT_FUZZ_SECONDS 60 CACHE STRING "Seconds that run_fuzzers gives each target")

add_custom_target(run_fuzzers)
foreach(target unit_text case_document assessment cycles linkage envelope)
  add_executable(fuzz_${target} fuzz/${target}.cpp)
  target_include_directories(fuzz_${target} PRIVATE support)
  target_compile_definitions(fuzz_${target} PRIVATE FIELDSHAFT_CASES_DIR="${PROJECT_SOURCE_DIR}/docs/examples/cases")
  target_link_libraries(fuzz_${target} PRIVATE
    fieldshaft::fieldshaft nlohmann_json::nlohmann_json fieldshaft_warnings)
  set(corpus ${CMAKE_CURRENT_SOURCE_DIR}/fuzz/corpus/${target})
  if(target STREQUAL case_document)
    list(APPEND corpus ${PROJECT_SOURCE_DIR}/docs/examples/cases)
  endif()
  if(FIELDSHAFT_FUZZ)
    target_link_options(fuzz_${target} PRIVATE -fsanitize=fuzzer)
    # New inputs go to the build tree; artifacts of a failure are named by the fuzzer.
    add_custom_target(run_fuzz_${target}
      COMMAND ${CMAKE_COMMAND} -E make_directory ${CMAKE_BINARY_DIR}/corpus/${target}
      COMMAND fuzz_${target} -max_total_time=${FIELDSHAFT_FUZZ_SECONDS} -timeout=20 -print_final_stats=1
        -artifact_prefix=${CMAKE_BINARY_DIR}/corpus/${target}- ${CMAKE_BINARY_DIR}/corpus/${target} ${corpus}
      USES_TERMINAL VERBATIM)
    add_dependencies(run_fuzzers run_fuzz_${target})
  else()
    target_sources(fuzz_${target} PRIVATE fuzz/replay.cpp)
    add_test(NAME fuzz/${target} COMMAND fuzz_${target} ${corpus})
    set_tests_properties(fuzz/${target} PROPERTIES TIMEOUT 300)
  endif()
endforeach()
