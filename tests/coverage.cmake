# Lines and branches of include/ and src/ that the C++ test programs reach (clang++ with -fcoverage-mapping).
# FIELDSHAFT_COVERAGE_PROGRAMS narrows it to some programs: "unit_;reference_" those whose names begin so.
option(FIELDSHAFT_COVERAGE "Offer report_coverage" OFF)
if(NOT FIELDSHAFT_COVERAGE)
  return()
endif()
set(FIELDSHAFT_COVERAGE_PROGRAMS "unit_;reference_;identity_" CACHE STRING "Beginnings of the programs' names")
find_program(LLVM_PROFDATA NAMES llvm-profdata-14 llvm-profdata REQUIRED)
find_program(LLVM_COV NAMES llvm-cov-14 llvm-cov REQUIRED)
find_program(PYTHON3 NAMES python3 REQUIRED)

list(JOIN FIELDSHAFT_COVERAGE_PROGRAMS "|" beginnings)
list(FILTER test_programs INCLUDE REGEX "^(${beginnings})")
set(counted)
foreach(program IN LISTS test_programs)
  list(APPEND counted $<TARGET_FILE:${program}>)
endforeach()
add_custom_target(report_coverage
  COMMAND ${PYTHON3} -B ${CMAKE_CURRENT_SOURCE_DIR}/coverage.py ${LLVM_PROFDATA} ${LLVM_COV} ${CMAKE_BINARY_DIR}/profiles ${counted}
  DEPENDS ${test_programs} USES_TERMINAL VERBATIM)
