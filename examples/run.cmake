# The same as run.sh for `cmake --workflow --preset run`. Exit status 1 says that a plan was
# rejected, which is what the first example is for.
execute_process(COMMAND ${JARPROOF} check examples/plans/soup-first-try.yaml examples/plans/soup-corrected.yaml
                WORKING_DIRECTORY ${ROOT} RESULT_VARIABLE status)
if(NOT status EQUAL 1)
  message(FATAL_ERROR "unexpected exit status ${status}")
endif()
