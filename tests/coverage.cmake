# Lines and branches of include/ and src/ that the C++ test programs reach (clang++ with -fcoverage-mapping).
# FIELDSHAFT_COVERAGE_PROGRAMS narrows it to some programs: "unit_;reference_" those whose names begin so.
option(FIELDSHAFT_COVERAGE "Offer report_coverage" OFF)
if(NOT FIELDSHAFT_COVERAGE)
  return()
endif()
set(FIELDSHAFT_COVERAGE_PROGRAMS "unit_;reference_;identity_" CACHE STRING "Beginnings of the programs' names")
find_program(LLVM_PROFDATA NAMES llvm-profdata-14 llvm-profdata REQUIRED)
find_program(LLVM_COV NAMES llvm-cov-14 llvm-cov REQUIRED)

list(JOIN FIELDSHAFT_COVERAGE_PROGRAMS "|" beginnings)
list(FILTER test_programs INCLUDE REGEX "^(${beginnings})")
set(profiles ${CMAKE_BINARY_DIR}/profiles)
file(MAKE_DIRECTORY ${profiles})
set(objects)
set(counted)
foreach(program IN LISTS test_programs)
  add_custom_command(OUTPUT ${profiles}/${program}.profraw
    COMMAND ${CMAKE_COMMAND} -E env LLVM_PROFILE_FILE=${profiles}/${program}.profraw $<TARGET_FILE:${program}> --minimal
    DEPENDS ${program} VERBATIM)
  list(APPEND counted ${profiles}/${program}.profraw)
  list(APPEND objects -object $<TARGET_FILE:${program}>)
endforeach()
list(GET test_programs 0 first)
add_custom_command(OUTPUT ${profiles}/all.profdata
  COMMAND ${LLVM_PROFDATA} merge -sparse ${counted} -o ${profiles}/all.profdata
  DEPENDS ${counted} COMMAND_EXPAND_LISTS VERBATIM)
add_custom_target(report_coverage
  COMMAND ${LLVM_COV} report $<TARGET_FILE:${first}> ${objects} -instr-profile=${profiles}/all.profdata
    -show-branch-summary -ignore-filename-regex "^/usr/|/tests/|/build/"
  DEPENDS ${profiles}/all.profdata COMMAND_EXPAND_LISTS VERBATIM)
