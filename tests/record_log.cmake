# A lot on its way to the shelf: the log of its run, written on from day to day.
# Called with -DJARPROOF=program -DSOURCE=checkout -DWORK=folder.
file(REMOVE_RECURSE ${WORK})
file(MAKE_DIRECTORY ${WORK})
file(COPY ${SOURCE}/examples/days/soup.yaml ${SOURCE}/examples/logs/soup-load-1.csv
     ${SOURCE}/examples/logs/soup-load-2.csv DESTINATION ${WORK})

function(in_shell what expected_status command)
  execute_process(COMMAND sh -c "${command}" WORKING_DIRECTORY ${WORK} RESULT_VARIABLE status
                  OUTPUT_VARIABLE out ERROR_VARIABLE err)
  if(NOT status EQUAL expected_status)
    message(SEND_ERROR "${what}: exit status ${status}, expected ${expected_status}\n${out}${err}")
  endif()
  set(err "${err}" PARENT_SCOPE)
  set(out "${out}" PARENT_SCOPE)
endfunction()

function(expect what text wanted)
  string(FIND "${text}" "${wanted}" at)
  if(at EQUAL -1)
    message(SEND_ERROR "${what}: no `${wanted}` in:\n${text}")
  endif()
endfunction()

set(log "'${JARPROOF}' log soup.yaml")
set(shelf "'${JARPROOF}' check shelf.jsonl --on 2026-11-28")
set(day "'${JARPROOF}' day soup.yaml --shelf shelf.jsonl")

# First without a word on the seals, then with one jar that did not seal, then the same once more.
in_shell("before the seals" 0 "grep -v unsealed soup-load-1.csv > load.csv && mkdir sub && mv load.csv sub &&
  ${log} sub/load.csv --set lot=a --set jars=8 --record shelf.jsonl")
expect("before the seals" "${err}" "jarproof: lot a is recorded in shelf.jsonl")
in_shell("8 jars" 0 "${shelf}")
expect("8 jars" "${out}" "8 pint jars left")
in_shell("with the seals" 0 "cp soup-load-1.csv load.csv &&
  ${log} load.csv --set lot=a --set jars=8 --record shelf.jsonl")
expect("with the seals" "${err}" "jarproof: lot a is recorded in shelf.jsonl")
in_shell("7 jars" 0 "${shelf}")
expect("7 jars" "${out}" "7 pint jars left")
in_shell("once more" 0 "${log} load.csv --set lot=a --set jars=8 --record shelf.jsonl")
expect("once more" "${err}" "jarproof: lot a stands in shelf.jsonl already")
in_shell("two lines" 0 "wc -l < shelf.jsonl | grep -x ' *2' && grep -c '\"run\": {\"verdict\": \"accepted\", \"log\": \"load.csv\"}, \"unsealed\": 1' shelf.jsonl")

# A broken jar stands on no shelf either.
in_shell("broken" 0 "sed 's/opened/opened\\n11:28,broken 2/' soup-load-1.csv > broken.csv &&
  ${log} broken.csv --set lot=b --set jars=8 --record shelf.jsonl")
in_shell("5 jars of b" 0 "${shelf}")
expect("5 jars of b" "${out}" "5 pint jars left")

# What was not delivered is not put on the shelf; a lot that stands there is marked.
in_shell("rejected" 1 "cp shelf.jsonl before.jsonl &&
  ${log} soup-load-2.csv --set lot=c --set jars=8 --record shelf.jsonl")
expect("rejected" "${err}" "jarproof: the run log of lot c is rejected, so the lot is not recorded in shelf.jsonl")
in_shell("as it was" 0 "cmp shelf.jsonl before.jsonl")
in_shell("put up first, judged afterwards" 1 "'${JARPROOF}' check soup.yaml --set lot=d --set jars=8 --record shelf.jsonl &&
  ${log} soup-load-2.csv --set lot=d --set jars=8 --record shelf.jsonl")
expect("put up first, judged afterwards" "${err}" "jarproof: lot d is recorded in shelf.jsonl")
expect("as rejected" "${err}" "jarproof: lot d is recorded as rejected in shelf.jsonl: do not eat from it")
in_shell("the day knows it" 1 "${day}")
expect("the day knows it" "${out}" "The run log soup-load-2.csv was rejected.")
expect("the day knows it" "${out}" "The shelf on 2026-11-21: 3 lots, 20 jars left, 8 not to be")
in_shell("no second thoughts" 3 "cp soup-load-1.csv soup-load-2.csv &&
  ${log} soup-load-2.csv --set lot=d --set jars=8 --record shelf.jsonl")
expect("no second thoughts" "${err}" "the run log of the lot `d` was rejected before")
