// Names that look alike and are not: what a line is read as, and what of it must never be lost.
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "jarproof/detail/ingredient_line.hpp"
#include "support/fixtures.hpp"

namespace ingredient_confusions_tests {
namespace {

using namespace jarproof::detail;
using jarproof::builtin_edition;
using jarproof::ingredient;

line_reading read(std::string_view text) { return read_line(builtin_edition(), text); }

std::vector<const ingredient*> things_of(const line_reading& r) {
  std::vector<const ingredient*> out;
  if (r.what != nullptr) out.push_back(r.what);
  for (const other_ingredient& o : r.others) out.push_back(o.what);
  return out;
}

bool has_trait_in(const line_reading& r, std::string_view trait) {
  const std::vector<const ingredient*> things = things_of(r);
  return std::any_of(things.begin(), things.end(),
                     [&](const ingredient* i) { return is_a(builtin_edition(), *i, trait); });
}

TEST_SUITE_BEGIN("check");

TEST_CASE("what sounds like another food is read as itself") {
  struct row {
    const char* text;
    const char* id;
  };
  for (const row& r : {row{"2 lb butternut squash, cubed", "butternut-squash"},
                       row{"1 buttercup squash", "buttercup-squash"},
                       row{"2 cups butter beans", "butter-bean"},
                       row{"1 head butter lettuce", "lettuce"},
                       row{"3 tbsp peanut butter", "peanut-butter"},
                       row{"1 oz cocoa butter", "cocoa-butter"},
                       row{"1 cup apple butter", "apple-butter"},
                       row{"1 tsp cream of tartar", "cream-of-tartar"},
                       row{"2 cups cream-style corn", "cream-style-corn"},
                       row{"2 cups corn, cream style", "cream-style-corn"},
                       row{"2 cups creamed corn", "cream-style-corn"},
                       row{"1 large eggplant", "eggplant"},
                       row{"1 egg plant", "eggplant"},
                       row{"3 lb egg tomatoes", "plum-tomato"},
                       row{"2 tbsp rice vinegar", "rice-vinegar"},
                       row{"1/4 cup rice wine", "rice-wine"},
                       row{"2 cups cauliflower rice", "riced-cauliflower"},
                       row{"1/2 cup corn syrup", "corn-syrup"},
                       row{"2 tbsp cornstarch", "cornstarch"},
                       row{"2 tbsp cornflour", "cornstarch"},
                       row{"4 ears corn", "corn-kernels"},
                       row{"4 cups corn, cut from the cob", "corn-kernels"},
                       row{"1/2 cup cornmeal", "cornmeal"},
                       row{"8 corn husks", "corn-husk"},
                       row{"6 corn tortillas", "tortilla"},
                       row{"4 flour tortillas", "tortilla"},
                       row{"1 can (14 oz) coconut milk", "coconut-milk"},
                       row{"1 cup coconut water", "coconut-water"},
                       row{"1 lb milkfish", "whitefish"},
                       row{"1 tbsp arrowroot", "arrowroot"},
                       row{"1/4 cup masa", "masa-harina"},
                       row{"1/2 cup roux", "roux"},
                       row{"1 tsp file powder", "file-powder"},
                       row{"1 (6 oz) can tomato paste", "tomato-paste"},
                       row{"1 can tomato sauce", "tomato-sauce"},
                       row{"1 cup tomato puree", "tomato-puree"},
                       row{"1 can tomato soup", "condensed-tomato-soup"},
                       row{"1 cup dried pinto beans", "dried-pinto-bean"},
                       row{"1 cup pinto beans, dried", "dried-pinto-bean"},
                       row{"2 cups cooked pinto beans", "cooked-pinto-bean"},
                       row{"2 cups pinto beans, cooked and drained", "cooked-pinto-bean"},
                       row{"2 cans pinto beans", "canned-pinto-bean"},
                       row{"2 cups pinto beans, to be cooked", "pinto-bean"},
                       row{"2 cups pinto beans, half cooked", "pinto-bean"},
                       row{"1 tbsp pickling salt", "canning-salt"},
                       row{"1 tbsp table salt", "table-salt"},
                       row{"1 tsp lite salt", "lite-salt"},
                       row{"1 lb ground beef", "ground-beef"},
                       row{"1 tsp ground cumin", "cumin"},
                       row{"1 lb ground turkey", "ground-chicken"},
                       row{"1 lb hamburger", "ground-beef"},
                       row{"1 lb mince", "ground-beef"},
                       row{"1 jar mincemeat", "mincemeat"},
                       row{"2 chicken stock cubes", "chicken-bouillon"},
                       row{"1 quart chicken stock", "chicken-broth"},
                       row{"2 quarts chicken stock, home canned", "chicken-broth"},
                       row{"1 cup stuffing", "stuffing"},
                       row{"2 tbsp pesto", "pesto"},
                       row{"4 slices bacon", "bacon"},
                       row{"1/4 lb salt pork", "salt-pork"},
                       row{"4 slices turkey bacon", "turkey-bacon"},
                       row{"2 tbsp bacon bits", "lardons"},
                       row{"1 ham hock", "ham-hock"},
                       row{"1 cup oat milk", "grain-milk"},
                       row{"1/4 cup cream sherry", "fortified-wine"},
                       row{"1/2 cup potato flakes", "potato-flakes"},
                       row{"1 cup instant mashed potatoes", "potato-flakes"},
                       row{"1 tbsp potato starch", "potato-starch"},
                       row{"1 bag potato chips", "potato-product"},
                       row{"1/2 cup sour cream", "sour-cream"},
                       row{"8 oz cream cheese", "cream-cheese"},
                       row{"1 pint ice cream", "ice-cream"},
                       row{"1 can cream soda", "soda-drink"},
                       row{"1 bag butterscotch chips", "caramel"},
                       row{"1 cup buttermilk", "buttermilk"},
                       row{"1 can sweetened condensed milk", "condensed-milk"},
                       row{"1 cup sweet milk", "milk"},
                       row{"1 cup chestnuts", "chestnut"},
                       row{"1 can water chestnuts", "water-chestnut"},
                       row{"1 tbsp fish sauce", "fish-sauce"},
                       row{"1 lb oyster mushrooms", "oyster-mushroom"},
                       row{"1 pint oysters", "oyster"},
                       row{"1 cup clam juice", "clam-juice"},
                       row{"1 tsp shrimp paste", "shrimp-paste"},
                       row{"4 lb crab apples", "crab-apple"},
                       row{"1 pineapple", "pineapple"},
                       row{"1/4 cup pine nuts", "pine-nut"},
                       row{"3 apples", "apple"},
                       row{"1 grapefruit", "grapefruit"},
                       row{"2 cups grapes", "grape"},
                       row{"1 lb gingerbread", "cookie"},
                       row{"1 tbsp ginger, grated", "fresh-ginger"},
                       row{"1 lb sweetbreads", "sweetbreads"},
                       row{"1 breadfruit", "breadfruit"},
                       row{"1 package shortbread", "cookie"},
                       row{"1 cup dried fruit", "mixed-dried-fruit"},
                       row{"1 cup buckwheat", "other-grain"},
                       row{"1 cup wheat berries", "wheat-berries"},
                       row{"1 honeydew", "melon"},
                       row{"1 oz honeycomb", "creamed-honey"},
                       row{"1 lb spaghetti squash", "spaghetti-squash"},
                       row{"4 cups fat free broth", "broth"},
                       row{"4 cups beef broth (no stock cubes)", "beef-broth"},
                       row{"2 cans no salt added tomatoes", "canned-whole-tomato"},
                       row{"2 cups vegetable broth, dairy free", "vegetable-broth"},
                       row{"2 leeks, white and light green parts only", "leek"},
                       row{"2 lb cooked chicken, no skin or bones", "chicken"},
                       row{"3 lb lean beef chuck, cubed", "beef-chuck"},
                       row{"1/2 tsp red pepper, ground", "cayenne-pepper"},
                       row{"2 cups tomatoes, fire roasted", "fire-roasted-tomato"},
                       row{"1 cup corn kernels, thawed if frozen", "corn-kernels"},
                       row{"juice of 2 lemons", "fresh-lemon-juice"},
                       row{"1 bunch coriander", "fresh-cilantro"}}) {
    const line_reading l = read(r.text);
    const std::string said = r.text;
    INFO(said);
    REQUIRE(l.what != nullptr);
    CHECK(l.what->id == r.id);
    CHECK(l.strange.empty());
  }
}

TEST_CASE("what is harmful in a line stays in its reading") {
  struct row {
    const char* text;
    const char* trait;
  };
  for (const row& r : {row{"8 oz egg noodles", "grain-or-pasta"},
                       row{"2 tbsp water chestnut flour", "thickener"},
                       row{"1 cup milk or cream", "dairy"},
                       row{"1 cup water or milk", "dairy"},
                       row{"2 onions, browned in butter", "fat"},
                       row{"2 lb venison, browned in oil and drained", "fat"},
                       row{"2 lb venison, for browning in butter", "fat"},
                       row{"2 cups meat, not trimmed and browned in butter", "fat"},
                       row{"2 lb venison dredged in flour", "thickener"},
                       row{"1 cup broth mixed with 2 tbsp flour", "thickener"},
                       row{"mushrooms with cream reduced by half", "dairy"},
                       row{"4 leeks, no salt and cream", "dairy"},
                       row{"2 cups white sauce, milk-based", "dairy"},
                       row{"1 lb cabbage with bacon", "cured-meat"},
                       row{"2 cups rice or barley", "grain-or-pasta"},
                       row{"1 cup chestnuts or pasta", "grain-or-pasta"},
                       row{"2 cups navy beans, not soaked", "dried-legume"},
                       row{"1/2 lb ground beef or smoked sausage", "cured-meat"},
                       row{"2 tbsp flour or cornstarch", "thickener"},
                       row{"1 cup mashed potatoes", "low-acid-puree"},
                       row{"2 eggs, beaten", "egg"},
                       row{"4 cups fish stock or clam juice", "seafood"}}) {
    const line_reading l = read(r.text);
    const std::string said = r.text;
    INFO(said);
    CHECK(has_trait_in(l, r.trait));
  }
  for (const std::string text :
       {"2 cups okra, sliced, to thicken", "2 lb floured venison", "2 lb venison dredged in flour",
        "2 cups pumpkin, mashed", "3 cups beans, pureed", "3 cups beans, blended"}) {
    INFO(text);
    CHECK_FALSE(read(text).telling.empty());
  }
}

TEST_CASE("a word that only looks harmless leaves the line unknown") {
  for (const std::string text :
       {"2 cups creamy carrots", "2 cups buttered carrots", "1 lb cheesy potatoes",
        "2 cups fried onions in batter mixx", "1 lb smoked carrots", "1 cup corn gribble",
        "2 cups carrots with gribble", "2 lb no gribble venison", "2 lb venison, not gribbled",
        "5 lb white tomatoes", "2 cups milky broth", "1 lb cured carrots", "1 cup sauce",
        "my usual mix", "2 cups surprise"}) {
    const line_reading l = read(text);
    INFO(text);
    CHECK((l.what == nullptr || !l.strange.empty() || has_trait_in(l, "made-dish")));
  }
}

TEST_CASE("what is said not to be there, or to be a purpose, is no ingredient") {
  for (const std::string text :
       {"2 lb chicken, without skin and fat", "4 cups broth, no flour or cream",
        "2 lb venison, gristle removed", "2 cups tomatoes, no added salt",
        "4 cups gluten-free broth", "2 lb beef for stew", "1 cup carrots, pea sized"}) {
    const line_reading l = read(text);
    INFO(text);
    CHECK(l.what != nullptr);
    CHECK(l.others.empty());
    CHECK(l.strange.empty());
  }
  const line_reading soaked = read("2 cups dried navy beans, not soaked");
  CHECK(std::find(soaked.words.begin(), soaked.words.end(), "not") != soaked.words.end());
  CHECK(std::find(soaked.words.begin(), soaked.words.end(), "soaked") != soaked.words.end());
  CHECK_FALSE(says(soaked, "soaked"));
  CHECK(says(read("2 cups dried navy beans, soaked"), "soaked"));
}

TEST_CASE("an alternative is kept beside the first ingredient") {
  struct row {
    const char* text;
    const char* first;
    const char* other;
  };
  for (const row& r :
       {row{"2 lb ground beef or fresh sausage", "ground-beef", "fresh-sausage"},
        row{"red or green bell peppers", "green-bell-pepper", "red-bell-pepper"},
        row{"2 lb kale or chard", "kale", "swiss-chard"},
        row{"1 clove garlic or 1/8 tsp garlic powder", "garlic", "garlic-powder"},
        row{"1 tsp onion and garlic powder", "garlic-powder", "onion-powder"},
        row{"2 cups kidney beans, canned or dried", "kidney-bean", "canned-kidney-bean"},
        row{"1 lb ground beef or venison", "ground-beef", "ground-venison"},
        row{"1 cup corn kernels (fresh or frozen)", "corn-kernels", "frozen-corn"}}) {
    const line_reading l = read(r.text);
    const std::string said = r.text;
    INFO(said);
    REQUIRE(l.what != nullptr);
    CHECK(l.what->id == r.first);
    REQUIRE_FALSE(l.others.empty());
    CHECK(l.others.front().what->id == r.other);
    CHECK(l.strange.empty());
  }
}

TEST_SUITE_END();

}  // namespace
}  // namespace ingredient_confusions_tests
