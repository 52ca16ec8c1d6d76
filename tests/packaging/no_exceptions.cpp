// SPDX-License-Identifier: MIT
#include <cstdio>

#include "jarproof/jarproof.hpp"

// Defined in the other unit, which includes the same headers.
jarproof::verdict judged_elsewhere(const jarproof::plan& plan);

int main() {
  jarproof::document d;
  d.name = "beans";
  d.root.kind = jarproof::node_kind::map;
  const auto set = [&](const char* key, const char* text) {
    jarproof::node value;
    value.kind = jarproof::node_kind::scalar;
    value.text = text;
    d.root.members.push_back({key, 1, 1, value});
  };
  set("food", "green beans");
  set("pack", "raw");
  set("jar", "pint");
  set("method", "pressure");
  set("gauge", "weighted");
  set("pressure", "15 psi");
  set("time", "20 min");
  set("altitude", "4600 ft");
  const jarproof::result<jarproof::plan> plan = jarproof::read_plan(d);
  if (!plan) return 1;
  const jarproof::report here = jarproof::check(*plan, jarproof::builtin_edition());
  std::printf("%s", jarproof::text_of(here, jarproof::builtin_edition()).c_str());
  return here.verdict == jarproof::verdict::accepted && judged_elsewhere(*plan) == here.verdict ? 0
                                                                                                : 1;
}
