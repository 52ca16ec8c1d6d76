// Everything but the readers: standard library only, no YAML, no JSON reading, no Boost.
// SPDX-License-Identifier: MIT
#pragma once

#include "jarproof/builtin.hpp"
#include "jarproof/check.hpp"
#include "jarproof/document.hpp"
#include "jarproof/edition.hpp"
#include "jarproof/format/json.hpp"
#include "jarproof/format/text.hpp"
#include "jarproof/lookup.hpp"
#include "jarproof/physics.hpp"
#include "jarproof/plan.hpp"
#include "jarproof/quantity.hpp"
#include "jarproof/read_plan.hpp"
#include "jarproof/read_recipe.hpp"
#include "jarproof/recipe.hpp"
#include "jarproof/report.hpp"
#include "jarproof/result.hpp"
#include "jarproof/unreadable.hpp"
#include "jarproof/version.hpp"
