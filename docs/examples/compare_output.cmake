# Runs an example program and compares what it prints and its exit status with what is stored.
#   PROGRAM, EXPECTED (a file), STATUS, and INPUT (a file) for one that reads its standard input
# With FIELDSHAFT_WRITE_REPORTS set in the environment the file is written anew instead.
if(INPUT)
  set(input INPUT_FILE ${INPUT})
endif()
execute_process(COMMAND ${PROGRAM} ${input} OUTPUT_VARIABLE printed RESULT_VARIABLE status TIMEOUT 60)
if(NOT status EQUAL STATUS)
  message(FATAL_ERROR "exit status ${status} instead of ${STATUS}")
endif()
if(DEFINED ENV{FIELDSHAFT_WRITE_REPORTS})
  file(WRITE ${EXPECTED} "${printed}")
endif()
file(READ ${EXPECTED} expected)
if(NOT printed STREQUAL expected)
  message(FATAL_ERROR "printed:\n${printed}\nexpected (${EXPECTED}):\n${expected}")
endif()
