// Generated from the rule folder, edition 2026.11.2, by `jarproof rules --embed rules`. Do not edit.
// SPDX-License-Identifier: MIT
#include "jarproof/builtin.hpp"

namespace jarproof {
namespace {

using sv = std::string_view;

constexpr source a0[] = {{"usda-guide-1", "Complete Guide to Home Canning, Guide 1, Principles", "USDA", "2015 revision, AIB 539", "https://nchfp.uga.edu/resources/category/usda-guide"},
    {"usda-guide-2", "Complete Guide to Home Canning, Guide 2, Fruit", "USDA", "2015 revision, AIB 539", "https://nchfp.uga.edu/resources/category/usda-guide"},
    {"usda-guide-3", "Complete Guide to Home Canning, Guide 3, Tomatoes", "USDA", "2015 revision, AIB 539", "https://nchfp.uga.edu/resources/category/usda-guide"},
    {"usda-guide-4", "Complete Guide to Home Canning, Guide 4, Vegetables", "USDA", "2015 revision, AIB 539", "https://nchfp.uga.edu/resources/category/usda-guide"},
    {"usda-guide-5", "Complete Guide to Home Canning, Guide 5, Poultry, Red Meats and Seafoods", "USDA", "2015 revision, AIB 539", "https://nchfp.uga.edu/resources/category/usda-guide"},
    {"usda-guide-6", "Complete Guide to Home Canning, Guide 6, Fermented Foods and Pickles", "USDA", "2015 revision, AIB 539", "https://nchfp.uga.edu/resources/category/usda-guide"},
    {"usda-guide-7", "Complete Guide to Home Canning, Guide 7, Jams and Jellies", "USDA", "2015 revision, AIB 539", "https://nchfp.uga.edu/resources/category/usda-guide"},
    {"sdsu-onion", "Preserve It! Onion", "South Dakota State University Extension", "S-0001-25, read in a copy", "https://pdfslide.us/documents/preserve-it-onion-south-dakota-state-university-onion-pressure-canner-1.html"},
    {"extension-onion-answer", "Answer 867753, canning onions", "Ask Extension", "9 May 2024", "https://ask.extension.org/kb/faq.php?id=867753"},
    {"psu-poultry", "Canning chicken, duck, goose, turkey and game birds", "Penn State Extension", "issue not recorded", ""},
    {"wisconsin-stock-chart", "Canning chart for poultry and meat stock", "University of Wisconsin Extension", "read in a copy that names the publisher in its heading only", "https://info.5y1.org/homemade-jams-and-jellies-recipes_1_d55b1c.html"},
    {"nchfp-jar-sizes", "Jar Size Choices Have You Frustrated?", "National Center for Home Food Preservation, University of Georgia", "", "https://nchfp.uga.edu/blog/jar-size-choices-have-you-frustrated"},
    {"kstate-odd-jars", "Canning in Odd-Sized Jars", "Kansas State University Research and Extension", "19 May 2022", "https://enewsletters.k-state.edu/youaskedit/2022/05/19/canning-in-odd-sized-jars"},
    {"psu-half-gallon", "Canning With Half Gallon Jars", "Penn State Extension", "", "http://extension.psu.edu/food/preservation/faq/canning-with-half-gallon-jars"},
    {"iowa-half-gallon", "Canning in half gallon containers", "Iowa State University Extension and Outreach", "18 July 2019", "https://blogs.extension.iastate.edu/answerline/2019/07/18/canning-in-half-gallon-containers/"},
    {"nchfp-equipment", "Equipment and Methods Not Recommended", "National Center for Home Food Preservation, University of Georgia", "", "http://nchfp.uga.edu/how/general/equp_methods_not_recommended.html"},
    {"nchfp-multi-cooker", "Can I Can in a Multi-Cooker?", "National Center for Home Food Preservation, University of Georgia", "", "https://nchfp.uga.edu/blog/can-i-can-in-a-multi-cooker"},
    {"nchfp-steam-canner", "Fact sheet on atmospheric steam canners", "National Center for Home Food Preservation, University of Georgia", "", "http://nchfp.uga.edu/publications/nchfp/factsheets/steam_canners.html"},
    {"nchfp-low-temperature", "Low-temperature pasteurization of pickles", "National Center for Home Food Preservation, University of Georgia", "", "http://nchfp.uga.edu/how/can_06/low_temp_pasteur.html"},
    {"nchfp-dry-canning", "Dry Canning Raw Vegetables is an Unsafe Practice", "National Center for Home Food Preservation, University of Georgia", "", "https://preservingfoodathome.com/category/canning/"},
    {"nchfp-vegetable-questions", "Questions about canning vegetables", "National Center for Home Food Preservation, University of Georgia", "", "https://nchfp.uga.edu/faqs/canning-vegetables/category/faq-canning"},
    {"msu-unsafe-methods", "Unsafe Food Preservation Methods", "Michigan State University Extension", "HNI 343, September 2020", "http://www.canr.msu.edu/resources/unsafe-food-preservation-methods"},
    {"illinois-unsafe-methods", "Unsafe Methods", "University of Illinois Extension", "written for people who sell home-made food", "https://extension.illinois.edu/cottage-food/unsafe-methods"},
    {"sdsu-how-not-to-can", "How Not To Can", "South Dakota State University Extension", "", "http://igrow.org/healthy-families/food-safety/how-not-to-can/"},
    {"kstate-mistakes", "Home Canning Mistakes", "Kansas State University Research and Extension", "14 July 2020", "https://enewsletters.k-state.edu/youaskedit/2020/07/14/home-canning-mistakes/"},
    {"psu-equipment", "Use Recommended Equipment to Preserve Food", "Penn State Extension", "1 August 2015", "http://extension.psu.edu/lackawanna/news/2015/use-recommended-equipment-to-preserve-food"},
    {"psu-dry-canning", "\"Dry Canning\" is Not Recommended", "Penn State Extension", "17 September 2024", "https://extension.psu.edu/dry-canning-is-not-recommended"},
    {"missouri-dry-canning", "Why is dry canning not safe?", "University of Missouri Extension", "HES157", "https://extension.missouri.edu./publications/hes157"},
    {"missouri-inversion", "Food safety question 535, turning jars over", "University of Missouri Extension", "", "http://missourifamilies.org/quick/foodsafetyqa/qafs535.htm"},
    {"missouri-aspirin", "Food safety question 19, aspirin in canning", "University of Missouri Extension", "", "http://missourifamilies.org/quick/foodsafetyqa/qafs19.htm"},
    {"wisconsin-multi-cooker", "Are electric multi-cookers safe for canning? No", "University of Wisconsin Extension", "1 November 2017", "https://fyi.extension.wisc.edu/safepreserving/2017/11/01/safe-preserving-are-electric-multi-cookers-safe-for-canning-no/"},
    {"wisconsin-steam-canner", "Preserving acid foods with a steam canner: here's what you need to know", "University of Wisconsin Extension", "23 July 2015", "https://fyi.extension.wisc.edu/news/2015/07/23/preserving-acid-foods-with-a-steam-canner-heres-what-you-need-to-know/"},
    {"clemson-pressure-saucepan", "Pressure Cooker vs. Pressure Canner", "Clemson Cooperative Extension", "", "https://www.clemson.edu/extension/food/canning/canning-tips/02pressure-cooker-saucepot.html"},
    {"usu-vacuum", "Vacuum packaging of food at home", "Utah State University Extension", "", "https://extension.usu.edu/foodpreservation/howdoi/vacuum_package"},
    {"ncsu-vacuum", "Vacuum packaging and food safety", "North Carolina State University", "July 2004", "http://www.foodsafetysite.com/consumers/faq/?m_knowledgebase_article=62"},
    {"missouri-gauges", "Pressure canning FAQs and expert advice", "University of Missouri Extension", "", "https://extension.missouri.edu/news/pressure-canning-faqs-and-expert-advice"},
    {"iowa-gauges", "Canning Season Readiness: time to test pressure canner dial gauges", "Iowa State University Extension and Outreach", "21 May 2024", "https://blogs.extension.iastate.edu/answerline/2024/05/21/canning-season-readiness-time-to-test-pressure-canner-dial-gauges-and-check-out-the-canner/"},
    {"kstate-venting", "Don't Forget to Vent", "Kansas State University Research and Extension", "19 April 2022", "https://enewsletters.k-state.edu/youaskedit/2022/04/19/dont-forget-to-vent/"},
    {"nchfp-pop-quiz", "Pop Quiz: What Time Is It?", "National Center for Home Food Preservation, University of Georgia", "", "https://nchfp.uga.edu/blog/pop-quiz-what-time-is-it"},
    {"pnw-421", "Using and Caring for Your Pressure Canner", "Pacific Northwest Extension (Washington, Oregon, Idaho)", "PNW 421, read in a copy; the address shows the abstract", "https://pubs.extension.wsu.edu/use-care-and-operation-of-your-pressure-canner"},
    {"wyoming-pressure", "Notice on food preservation and testing of dial gauges", "University of Wyoming Extension", "read in a newspaper", "https://lovellchronicle.com/content/uw-extension-present-food-preservation-info-test-dial-gauges"},
    {"pnw-361", "Canning Meat, Poultry, and Game", "Pacific Northwest Extension (Washington, Oregon, Idaho)", "PNW361, read in a copy", "https://docslib.org/doc/5394422/canning-meat-poultry-and-game"},
    {"pnw-450", "Canning Smoked Fish at Home", "Pacific Northwest Extension (Washington, Oregon, Idaho)", "PNW 450, read in a copy", "https://online.documentine.com/2-inch-canning-jar-lid/2/pnw-450-canning-smoked-fish-at-home.html"},
    {"nchfp-smoked-fish", "Smoked Fish", "National Center for Home Food Preservation, University of Georgia", "", "http://nchfp.uga.edu/how/can_05/smoked_fish.html"},
    {"uaf-fish-quarts", "Canning Fish in Quart Jars", "University of Alaska Fairbanks Cooperative Extension Service", "FNH-00126", "https://www.uaf.edu/ces/publications/database/food/canning-fish-in-quart-jars.php"},
    {"clemson-soups", "Canning Soups", "Clemson Cooperative Extension", "", "https://clemson.edu/extension/food/canning/canning-tips/05canning-soups.html"},
    {"kstate-soup-note", "You Asked It!, note on vegetable soup", "Kansas State University Research and Extension", "January 2017", "https://enewsletters.k-state.edu/youaskedit/category/january-2017"},
    {"nal-leftovers", "How long should I keep leftover food?", "USDA National Agricultural Library", "", "https://www.nal.usda.gov/legacy/fnic/how-long-should-i-keep-leftover-food"},
    {"illinois-leftovers", "Leftovers", "University of Illinois Extension", "", "https://extension.illinois.edu/food-safety/leftovers"},
    {"missouri-leftovers", "Myth: Canning your homemade stew", "University of Missouri Extension", "March 2013", "https://nutritionmythbusters.blogspot.com/2013/03/myth-canning-your-homemade-stew.html"},
    {"nchfp-safety", "For Safety's Sake", "National Center for Home Food Preservation, University of Georgia", "", "http://nchfp.uga.edu/how/general/for_safety_sake.html"},
    {"nist-sp811", "Guide for the Use of the International System of Units (SI)", "National Institute of Standards and Technology (Special Publication 811)", "2008", ""},
    {"nchfp-process-time", "Selecting the correct processing time", "National Center for Home Food Preservation, University of Georgia", "", "http://nchfp.uga.edu/how/general/selecting_correct_process_time.html"},
    {"kstate-ten-tips", "10 Tips for Safe Home-Canned Food", "Kansas State University Research and Extension, Ford County", "", "http://www.ford.k-state.edu/health-nutrition/preservation/"},
    {"nchfp-pumpkin-butter", "Beware of pumpkin butter", "National Center for Home Food Preservation, University of Georgia", "", "https://nchfp.uga.edu/blog/beware-pumpkin-butter"},
    {"kstate-pumpkin", "Preserving pumpkin safely", "Kansas State University Research and Extension", "10 August 2016", "https://enewsletters.k-state.edu/youaskedit/2016/08/10/preserving-pumpkin-safely"},
    {"wisconsin-mixtures", "Canning mixtures", "University of Wisconsin Extension", "11 August 2015", "http://fyi.uwex.edu/safepreserving/2015/08/11/safe-preserving-canning-mixtures/"},
    {"extension-beans-answer", "Answer 859353, beans canned without soaking", "Ask Extension", "", "https://ask2.extension.org/kb/faq.php?id=859353"},
    {"nchfp-green-mangoes", "Mangoes, Green", "National Center for Home Food Preservation, University of Georgia", "from So Easy to Preserve, 5th edition, 2006; read without the later columns of its table", "http://nchfp.uga.edu/how/can_02/green_mangoes.html"},
    {"nchfp-mango-sauce", "Mango Sauce", "National Center for Home Food Preservation, University of Georgia", "read without its table of times", "http://nchfp.uga.edu/how/can_02/mango_sauce.html"},
    {"nchfp-fruit-puree", "Fruit Purees", "National Center for Home Food Preservation, University of Georgia", "", "http://nchfp.uga.edu/how/can_02/fruit_puree.html"},
    {"nchfp-asian-pears", "Pears, Asian, Halved or Sliced", "National Center for Home Food Preservation, University of Georgia", "", "http://nchfp.uga.edu/how/can_02/asian_pears.html"},
    {"nchfp-apple-pie-filling", "Apple Pie Filling", "National Center for Home Food Preservation, University of Georgia", "", "https://nchfp.uga.edu/how/can/canning-fruits-and-fruit-products/pie-fillings/apple-pie-filling"},
    {"nchfp-peach-pie-filling", "Peach Pie Filling", "National Center for Home Food Preservation, University of Georgia", "", "https://nchfp.uga.edu/how/can/canning-fruits-and-fruit-products/pie-fillings/peach-pie-filling"},
    {"wisconsin-white-peaches", "Caution against canning white-fleshed peaches and nectarines", "University of Wisconsin Extension", "11 June 2020", "https://fyi.extension.wisc.edu/safefood/2020/06/11/caution-against-canning-white-fleshed-peaches-and-nectarines/"},
    {"minnesota-elderberries", "Q: Are elderberries safe to home can?", "University of Minnesota Extension", "October 2020", "https://blog-cottage-food.extension.umn.edu/2020/10/q-are-elderberries-safe-to-home-can-and.html"},
    {"oregon-mangoes", "Preserving Fruits: Mangoes", "Oregon State University Extension Service", "SP 50-1006", "https://extension.oregonstate.edu/food/preservation/preserving-fruits-mangoes-sp-50-1006"},
    {"kstate-fruit-purees", "Preserving fruit purees", "Kansas State University Research and Extension", "19 April 2022", "https://enewsletters.k-state.edu/youaskedit/2022/04/19/preserving-fruit-purees"},
    {"kstate-pears", "Preserving pears", "Kansas State University Research and Extension", "11 August 2022", "https://enewsletters.k-state.edu/youaskedit/2022/08/11/preserving-pears"},
    {"iowa-thickeners", "Thickeners for home canning", "Iowa State University Extension and Outreach", "16 August 2022", "https://blogs.extension.iastate.edu/answerline/2022/08/16/thickeners-for-home-canning/"},
    {"florida-zucchini-pineapple", "Selecting, Preparing and Canning: Zucchini-Pineapple", "University of Florida, IFAS Extension", "FCS8299, reviewed January 2014", "https://edis.ifas.ufl.edu/he247"},
    {"psu-tomato-acid", "Lemon juice or citric acid for canning tomatoes", "Penn State Extension", "", "http://extension.psu.edu/food/preservation/faq/lemon-juice-citric-acid-for-canning-tomatoes"},
    {"uga-bulletin-989", "So Easy to Preserve", "Cooperative Extension Service, University of Georgia", "Bulletin 989, 4th edition, 1999, read in a copy", "https://www.recipelink.com/recipes/tomato-paste-canning-recipe-206419"},
    {"nchfp-choice-salsa", "Choice Salsa", "National Center for Home Food Preservation, University of Georgia", "read in a copy by South Dakota State University Extension", "https://extension.sdstate.edu/choice-salsa"},
    {"nchfp-cranberry-salsa", "Spicy Cranberry Salsa", "National Center for Home Food Preservation, University of Georgia", "", "http://nchfp.uga.edu/how/can_salsa/spicy_cranberry_salsa.html"},
    {"nchfp-mango-salsa", "Mango Salsa", "National Center for Home Food Preservation, University of Georgia", "", "http://nchfp.uga.edu/how/can_salsa/mango_salsa.html"},
    {"nchfp-peach-salsa", "Peach salsa", "National Center for Home Food Preservation, University of Georgia", "address not recorded", ""},
    {"nchfp-peach-apple-salsa", "Peach Apple Salsa", "National Center for Home Food Preservation, University of Georgia", "the recipe was read in a copy by North Dakota State University Extension", "https://ndsu.edu/agriculture/extension/publications/food-preservation-lets-preserve-salsa"},
    {"nchfp-jicama-relish", "Spicy jicama relish", "National Center for Home Food Preservation, University of Georgia", "", "http://nchfp.uga.edu/how/can_06/jicama_relish.html"},
    {"rutgers-salsa", "Laws of food preservation, salsa", "New Jersey Agricultural Experiment Station, Rutgers University", "", "https://njaes.rutgers.edu/food-safety/home-food-preservation/salsa.php"},
    {"extension-pepper-answer", "Answer 152444, other peppers in salsa", "Ask Extension", "12 September 2013", "https://ask.extension.org/questions/152444"},
    {"extension-lemon-answer", "Answer 435085, lemon juice for vinegar", "Ask Extension", "21 November 2017", "https://ask.extension.org/kb/faq.php?id=435085"},
    {"ndsu-salsa-acid", "Why add lemon juice to tomatoes and salsa before canning", "North Dakota State University Extension", "", "https://ndsu.edu/agriculture/extension/publications/why-add-lemon-juice-tomatoes-and-salsa-canning"},
    {"ndsu-green-chile-salsa", "Tomato and green chile salsa", "North Dakota State University Extension", "", "https://www.ag.ndsu.edu/food/recipes/food-preservation/tomato-green-chili-salsa"},
    {"ndsu-condiments", "Make your own home-canned condiments", "North Dakota State University Extension", "", "https://ndsu.edu/agriculture/extension/publications/make-your-own-home-canned-condiments"},
    {"missouri-pickled-carrots", "Pickled Carrots", "University of Missouri Extension", "names the National Center for Home Food Preservation as its source", "http://seasonalandsimple.info/recipedetails.aspx?RecipeID=341"},
    {"missouri-pickled-baby-carrots", "Pickled Baby Carrots", "University of Missouri Extension", "names the National Center for Home Food Preservation as its source", "https://seasonalandsimple.info/recipedetails.aspx?RecipeID=338"},
    {"nchfp-golden-pepper-jelly", "Golden Pepper Jelly", "National Center for Home Food Preservation, University of Georgia", "read in part, in a copy of University of Missouri Extension", "https://seasonalandsimple.info/recipedetails.aspx?RecipeID=291"},
    {"nchfp-jam-without-pectin", "Jam without added pectin", "National Center for Home Food Preservation, University of Georgia", "", "http://nchfp.uga.edu/how/can_07/jam_without_pectin.html"},
    {"uga-so-easy", "So Easy to Preserve", "University of Georgia Cooperative Extension", "edition not recorded; read in a copy", ""},
    {"oklahoma-soft-jelly", "Remaking soft jelly", "Oklahoma State University Extension", "", "https://extension.okstate.edu/programs/oklahoma-gardening/recipes/remaking-soft-jelly.html"},
    {"nchfp-baby-food", "Canning fruit-based baby foods", "National Center for Home Food Preservation, University of Georgia", "from the USDA guide, revised 2009", "http://nchfp.uga.edu/how/general/baby_food.html"},
    {"nchfp-lemon-curd", "Lemon Curd, Canned", "National Center for Home Food Preservation, University of Georgia", "", "https://nchfp.uga.edu/how/can/canning-fruits-and-fruit-products/lemon-curd-canned"},
    {"nchfp-lemon-curd-blog", "Melt-in-your-Mouth Lemon Curd", "National Center for Home Food Preservation, University of Georgia", "", "https://preservingfoodathome.com/tag/spreads/"},
    {"nchfp-chocolate", "Canning Chocolate Sauces Unsafe", "National Center for Home Food Preservation, University of Georgia", "July 2003", "https://nchfp.uga.edu/resources/entry/chocolate-sauce"},
    {"nchfp-nuts", "Going Nutty Over Advice for Preserving Nutmeats?", "National Center for Home Food Preservation, University of Georgia", "11 November 2014", "https://nchfp.uga.edu/blog/going-nutty-over-advice-for-preserving-nutmeats"},
    {"nchfp-pickled-eggs", "How do you like your eggs? Scrambled, Fried…or Pickled!", "National Center for Home Food Preservation, University of Georgia", "", "https://preservingfoodathome.com/tag/botulism/"},
    {"nchfp-pesto", "Freezing pesto", "National Center for Home Food Preservation, University of Georgia", "from So Easy to Preserve, 5th edition, 2006", "http://nchfp.uga.edu/how/freeze/pesto.html"},
    {"nchfp-garlic-oil", "Freezing garlic in oil", "National Center for Home Food Preservation, University of Georgia", "reviewed 2015", "http://nchfp.uga.edu/how/freeze/garlic_oil.html"},
    {"nchfp-eggplant", "Freezing Eggplant", "National Center for Home Food Preservation, University of Georgia", "from So Easy to Preserve, 5th edition, 2006", "http://nchfp.uga.edu/how/freeze/eggplant.html"},
    {"nchfp-brussels-sprouts", "Freezing and pickling Brussels sprouts", "National Center for Home Food Preservation, University of Georgia", "", "http://preservingfoodathome.com/"},
    {"nchfp-meat-faq", "Questions about canning meat", "National Center for Home Food Preservation, University of Georgia", "", "https://nchfp.uga.edu/faqs/meats/category/faq-canning"},
    {"psu-not-to-can", "Foods that are Not Safe to Can", "Penn State Extension", "read in part, in a newspaper of 19 September 2020", "https://extension.psu.edu/foods-that-are-not-safe-to-can"},
    {"psu-fats-oils", "Caution: Canning with Fats and Oils", "Penn State Extension", "", "https://extension.psu.edu/caution-canning-with-fats-and-oils"},
    {"psu-oil", "Caution: Don't Can in Oil", "Penn State Extension", "2 July 2012", "http://extension.psu.edu/food/preservation/news/2012/caution-dont-can-in-oil"},
    {"psu-breads", "Food Preservation: Setting the Record Straight on Canning Breads and Cakes", "Penn State Extension", "", "https://extension.psu.edu/food-preservation-setting-the-record-straight-on-canning-breads-and-cakes"},
    {"wisconsin-dry-canning", "Say 'NO' to dry canning", "University of Wisconsin Extension", "9 June 2020", "https://fyi.extension.wisc.edu/safefood/2020/06/09/say-no-to-dry-canning/"},
    {"usu-not-to-store", "What NOT to Store!", "Utah State University Extension", "", "https://extension.usu.edu/foodstorage/htm/what-not-to-store"},
    {"osu-emergencies", "Home Canning for Emergencies", "Oregon State University Extension Service", "", "http://extension.oregonstate.edu/question-of-the-week/home-canning-emergencies"},
    {"iowa-thickeners-2018", "Thickeners for home canning", "Iowa State University Extension and Outreach", "10 September 2018", "https://blogs.extension.iastate.edu/answerline/2018/09/10/thickeners-for-home-canning/"},
    {"iowa-thickeners-2022", "Thickeners for home canning", "Iowa State University Extension and Outreach", "16 August 2022", "https://blogs.extension.iastate.edu/answerline/2022/08/16/thickeners-for-home-canning/"},
    {"kstate-low-acid-fruits", "Are All Fruits High in Acid?", "Kansas State University Research and Extension", "", "http://enewsletters.k-state.edu/youaskedit/tag/canning/page/3/"},
    {"kstate-melons", "Preserving Melons", "Kansas State University Research and Extension", "17 July 2023", "https://enewsletters.k-state.edu/youaskedit/2023/07/17/preserving-melons"},
    {"kstate-avocado", "Freezing Avocados", "Kansas State University Research and Extension", "14 December 2019", "https://enewsletters.k-state.edu/youaskedit/2019/12/14/freezing-avocados"},
    {"sdsu-cantaloupe", "Preserve It! Cantaloupe", "South Dakota State University Extension", "S-0001-11, read in a copy", "https://vdocuments.us/preserve-it-cantaloupe-south-dakota-state-university.html"},
    {"extension-banana-answer", "Answer 686024, bananas in a boiling-water canner", "Ask Extension", "", "https://ask.extension.org/questions/686024"},
    {"umaine-updates", "Food preservation updates on white-fleshed peaches and nectarines, elderberries", "University of Maine Cooperative Extension", "29 June 2020, read in a newspaper of central Maine", ""},
    {"extension-elderberry-answer", "Answer 603258, elderberries in Oregon", "Ask Extension", "2019", "https://ask.extension.org/questions/603258"},
    {"aces-persimmons", "The Truth About Canning Persimmons and What to Do Instead", "Alabama Cooperative Extension System", "", "https://www.aces.edu/blog/topics/food-safety/the-truth-about-canning-persimmons-and-what-to-do-instead"},
    {"osu-mangoes", "Preserving Fruits: Mangoes", "Oregon State University Extension Service", "SP 50-1006", "https://extension.oregonstate.edu/food/preservation/preserving-fruits-mangoes-sp-50-1006"},
    {"extension-orange-curd", "Answer 905257, Shelf Stable Orange Curd", "Ask Extension", "June 2025", "https://ask.extension.org/kb/faq.php?id=905257"},
    {"clemson-summer-squash", "Summer Squash and Zucchini", "Clemson Cooperative Extension", "", "https://www.clemson.edu/extension/food/canning/canning-tips/01summer-squash.html"},
    {"kstate-summer-squash", "Preserving Summer Squash", "Kansas State University Research and Extension", "11 August 2022", "https://enewsletters.k-state.edu/youaskedit/2022/08/11/preserving-summer-squash/"},
    {"osu-winter-squash", "Preserving pumpkins and winter squash", "Oregon State University Extension Service", "SP 50-767, revised November 2024", "https://extension.oregonstate.edu/es/food/preservation/preserving-pumpkins-winter-squash"},
    {"clemson-winter-squash", "Preserving Pumpkins & Winter Squash", "Clemson Cooperative Extension", "", "https://blogs.clemson.edu/savannahvalley/preserving-pumpkins-winter-squash/"},
    {"idaho-cabbage", "Cabbage Family", "University of Idaho Extension", "read in a copy", "https://docslib.org/doc/5337197/cabbage-family"},
    {"missouri-broccoli", "Preserve Spring Broccoli and Cauliflower", "University of Missouri Extension", "HES134", "https://extension.missouri.edu./publications/hes134"},
    {"sdsu-artichoke", "Preserve It! Artichoke", "South Dakota State University Extension", "read in a copy", "https://docslib.org/doc/5824491/artichoke-water-bath-canner-pickling-1"},
    {"psu-peas", "Preserving Peas", "Penn State Extension", "", "https://extension.psu.edu/preserving-peas"},
    {"kstate-garlic", "Preserving Garlic", "Kansas State University Research and Extension", "6 August 2019", "https://enewsletters.k-state.edu/youaskedit/2019/08/06/preserving-garlic"},
    {"extension-pesto-answer", "Answer 149935, Pressure canning basil pesto", "Ask Extension", "29 August 2013", "https://ask.extension.org/questions/149935"},
    {"njaes-salsa", "Canning salsa", "Rutgers New Jersey Agricultural Experiment Station", "", "https://njaes.rutgers.edu/food-safety/home-food-preservation/salsa.php"},
    {"nebraska-salsa", "Is your salsa safe?", "Nebraska Extension", "August 2022, read in a newspaper (article 54dd91da-1dcd-11ed-bafb-0b0748e12363)", ""},
    {"ohio-bbq", "Food Preservation: Making and Preserving Barbecue and Hot Sauces", "Ohio State University Extension", "HYG-5365, 12 November 2024", "https://ohioline.osu.edu/factsheet/hyg-5365"},
    {"kstate-creamed-soup", "Can I Home Can Creamed Soup?", "Kansas State University Research and Extension", "15 December 2016", "https://enewsletters.k-state.edu/youaskedit/2016/12/15/can-i-home-can-creamed-soup"},
    {"preserve-soup-tips", "Tips for safely canning soup", "Preserve It Fresh, Preserve It Safe (K-State and University of Missouri Extension)", "read in a newspaper of 20 October 2021 (article e343b016-acd1-5ae8-be28-442577ff1631)", ""},
    {"ucanr-soup", "Soup, the alpha and omega of the vegetable garden", "University of California Agriculture and Natural Resources", "", "https://ucanr.edu/blog/coastal-gardener/article/soup-alpha-and-omega-vegetable-garden"},
    {"osu-own-chili", "Canning meat, game and chili", "Oregon State University Extension Service", "", "http://extension.oregonstate.edu/gardening/node/1415/print"},
    {"clemson-dairy", "Canning Controversies: No to Home Canning Dairy Products", "Clemson Cooperative Extension", "", "https://www.clemson.edu/extension/food/canning/canning-tips/38canning-dairy-products.html"},
    {"kentucky-dairy", "Experts say \"No\" to home canning milk and dairy products", "University of Kentucky Cooperative Extension Service", "read on a county's page", "https://www.meadecountyky.com/post/experts-say-no-to-home-canning-milk-and-dairy-products"},
    {"clemson-chocolate", "Is it SAFE to Can Chocolate & Fudge Sauces?", "Clemson Cooperative Extension", "March 2013", "http://www.clemson.edu/extension/hgic/hot_topics/2013/03is_it_safe_to_can_chocolate_and_fudge_sauces.html"},
    {"osu-nuts", "Would I be nuts to can nuts?", "Oregon State University Extension Service", "", "http://extension.oregonstate.edu/question-of-the-week/would-i-be-nuts-can-nuts"},
    {"clemson-cured-meats", "There is no safe approved process for home canning cured, brined or corned meats", "Clemson Cooperative Extension", "", "https://www.clemson.edu/extension/food/canning/canning-tips/55home-cured-brined-corned-meats.html"},
    {"extension-bacon-jam", "Answer 589309, Bacon Jam Canning", "Ask Extension", "August 2019", "https://ask.extension.org/kb/faq.php?id=589309"},
    {"clemson-bacon-jam", "Storing Bacon Jam", "Clemson Cooperative Extension", "read in part, in a list of articles", "https://hgic.clemson.edu/category/canning-tips/page/2/?display=standard"},
    {"umaine-lobster", "Low Lobster Prices Make Freezing Lobster at Home an Attractive Option", "University of Maine", "29 October 2008", "https://umaine.edu/news/blog/2008/10/29/low-lobster-prices-make-freezing-lobster-at-home-an-attractive-option/"},
    {"usda-sr-27", "National Nutrient Database for Standard Reference, Release 27, household weights", "USDA Agricultural Research Service", "2014; files of weights and food descriptions, read in a copy", "http://www.ars.usda.gov/Services/docs.htm?docid=8964"},
    {"usda-household-list", "National Nutrient Database for Standard Reference, list of common foods in household measures", "USDA Agricultural Research Service", "an older release, which one is not said; read in a copy", ""},
    {"nchfp-ascorbic-acid", "Forms of Ascorbic Acid", "National Center for Home Food Preservation", "January 2004", "http://nchfp.uga.edu/how/can_02/ascorbic_acid.html"},
    {"wisconsin-canning-salt", "Flaked kosher salt in the place of canning and pickling salt, by weight", "University of Wisconsin Extension", "quoted in an article on pickling salt, the publication itself not seen", "http://www.thekitchn.com/pickling-salt-what-is-it-and-do-you-need-it-193108"},
    {"fda-ph-list", "Approximate pH of Foods and Food Products", "U.S. Food and Drug Administration", "read in copies", ""},
    {"fda-ph-older", "pH Values of Various Foods, an older table", "U.S. Food and Drug Administration", "read in copies", ""},
    {"ph-handbook", "Approximate pH values of foods, table of a handbook of chemistry", "A chemistry handbook", "read in copies", ""},
    {"ph-extension", "Average pH of foods", "University Extension", "read in copies", ""},
    {"ph-compiled", "pH of fruits and vegetables, a compiled list", "Compiled from older tables", "read in copies", ""}};
constexpr citation a1[] = {{"sdsu-onion", "", ""}};
constexpr altitude_step a2[] = {{0, 2000, 11, "", {}},
    {2001, 4000, 12, "", {}},
    {4001, 6000, 13, "", {}},
    {6001, 8000, 14, "", {}},
    {8001, 10000, 15, "The USDA dial table stops at 8,000 ft. The 15 psi for 8,001 to 10,000 ft is printed by South Dakota State University Extension, not by USDA.", a1}};
constexpr citation a3[] = {{"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""}};
constexpr altitude_step a4[] = {{0, 1000, 10, "", {}},
    {1001, 0, 15, "", {}}};
constexpr altitude_step a5[] = {{0, 2000, 11, "", {}},
    {2001, 4000, 12, "", {}},
    {4001, 6000, 13, "", {}},
    {6001, 8000, 14, "", {}},
    {8001, 10000, 15, "", {}}};
constexpr altitude_step a6[] = {{0, 1000, 0, "", {}},
    {1001, 3000, 0, "", {}},
    {3001, 6000, 0, "", {}},
    {6001, 0, 0, "", {}}};
constexpr citation a7[] = {{"usda-guide-2", "2", ""},
    {"usda-guide-3", "3", ""}};
constexpr altitude_step a8[] = {{0, 1000, 0, "", {}},
    {1001, 6000, 0, "", {}},
    {6001, 0, 0, "", {}}};
constexpr citation a9[] = {{"usda-guide-2", "2", ""},
    {"usda-guide-6", "6", ""},
    {"usda-guide-7", "7", ""}};
constexpr altitude_step a10[] = {{0, 2000, 6, "", {}},
    {2001, 4000, 7, "", {}},
    {4001, 6000, 8, "", {}},
    {6001, 8000, 9, "", {}}};
constexpr citation a11[] = {{"usda-guide-2", "2", "2-31"},
    {"usda-guide-3", "3", ""}};
constexpr altitude_step a12[] = {{0, 2000, 11, "", {}},
    {2001, 4000, 12, "", {}},
    {4001, 6000, 13, "", {}},
    {6001, 8000, 14, "", {}},
    {8001, 10000, 15, "The USDA dial table stops at 8,000 ft. The 15 psi for 8,001 to 10,000 ft is printed by South Dakota State University Extension for the 11 psi series, not by USDA.", a1}};
constexpr citation a13[] = {{"usda-guide-3", "3", ""}};
constexpr altitude_step a14[] = {{0, 1000, 5, "", {}},
    {1001, 0, 10, "", {}}};
constexpr citation a15[] = {{"usda-guide-2", "2", "2-32"},
    {"usda-guide-3", "3", ""}};
constexpr altitude_step a16[] = {{0, 1000, 15, "", {}}};
constexpr band_set a17[] = {{"low-acid-dial", "Dial gauge, low-acid food", "dial", a2, a3},
    {"low-acid-weighted", "Weighted gauge, low-acid food", "weighted", a4, a3},
    {"extension-dial", "Dial gauge, Extension leaflet", "dial", a5, a1},
    {"boiling-water-4", "Boiling water, fruit and tomato tables", "", a6, a7},
    {"boiling-water-3", "Boiling water, jam, pickle and juice tables", "", a8, a9},
    {"acid-dial-6", "Dial gauge, fruit and tomatoes, 6 psi option", "dial", a10, a11},
    {"acid-dial-11", "Dial gauge, tomatoes, 11 psi option", "dial", a12, a13},
    {"acid-weighted-5", "Weighted gauge, fruit and tomatoes, 5 psi option", "weighted", a14, a15},
    {"acid-weighted-10", "Weighted gauge, tomatoes, 10 psi option", "weighted", a4, a13},
    {"acid-weighted-15", "Weighted gauge, tomatoes, 15 psi option", "weighted", a16, a13}};
constexpr sv a18[] = {"half pint",
    "half-pints",
    "1/2 pint",
    "8 oz jar"};
constexpr citation a19[] = {{"kstate-odd-jars", "", ""},
    {"usda-guide-1", "1", ""}};
constexpr sv a20[] = {"12-ounce",
    "12 oz jar"};
constexpr citation a21[] = {{"kstate-odd-jars", "", ""}};
constexpr sv a22[] = {"pints",
    "pt"};
constexpr citation a23[] = {{"usda-guide-1", "1", ""}};
constexpr sv a24[] = {"pint-and-a-half",
    "1 1/2 pint",
    "1 1/2 pints",
    "1.5 pint",
    "1½ pint"};
constexpr sv a25[] = {"quarts",
    "qt"};
constexpr sv a26[] = {"half gallon",
    "half-gallons",
    "1/2 gallon",
    "2 quart"};
constexpr citation a27[] = {{"psu-half-gallon", "", ""},
    {"iowa-half-gallon", "", ""}};
constexpr jar_size a28[] = {{"half-pint", "half-pint", 8, a18, "", a19},
    {"12-oz", "12 oz", 12, a20, "", a21},
    {"pint", "pint", 16, a22, "", a23},
    {"pint-and-half", "pint-and-a-half", 24, a24, "", a21},
    {"quart", "quart", 32, a25, "", a23},
    {"half-gallon", "half-gallon", 64, a26, "Half-gallon jars have a tested process for apple juice and grape juice only.", a27}};
constexpr sv a29[] = {"pressure canner",
    "pressure canning",
    "pressure canned",
    "pressure can",
    "stovetop pressure canner",
    "steam pressure canner"};
constexpr int a30[] = {5,
    10,
    15};
constexpr int a31[] = {34,
    35,
    69,
    70,
    103,
    105};
constexpr citation a32[] = {{"usda-guide-1", "1", ""},
    {"kstate-venting", "", ""},
    {"pnw-421", "", ""},
    {"nchfp-equipment", "", ""},
    {"nchfp-pop-quiz", "", ""},
    {"iowa-gauges", "", ""},
    {"missouri-gauges", "", ""},
    {"wyoming-pressure", "", ""}};
constexpr sv a33[] = {"boiling water",
    "boiling-water canner",
    "boiling-water canning",
    "boiling water bath",
    "boiling water bath canner",
    "boiling water bath canning",
    "water bath",
    "water bath canner",
    "water bath canning",
    "waterbath",
    "waterbath canner",
    "waterbath canning",
    "hot water bath",
    "hot water bath canner",
    "hot water bath canning",
    "bwb"};
constexpr citation a34[] = {{"usda-guide-1", "1", ""},
    {"nchfp-safety", "", ""}};
constexpr sv a35[] = {"steam canner",
    "steam canning",
    "atmospheric steam",
    "atmospheric steam canner",
    "atmospheric steam canning"};
constexpr citation a36[] = {{"nchfp-steam-canner", "", ""},
    {"wisconsin-steam-canner", "", ""},
    {"nchfp-equipment", "", ""}};
constexpr sv a37[] = {"low temperature",
    "low-temperature pasteurization",
    "low-temperature pasteurisation",
    "low-temp pasteurization",
    "low-temp pasteurisation",
    "low-temperature treatment",
    "pasteurization",
    "pasteurisation"};
constexpr citation a38[] = {{"nchfp-low-temperature", "", ""},
    {"usda-guide-6", "6", ""}};
constexpr sv a39[] = {"oven",
    "oven canning",
    "oven method",
    "oven processing",
    "oven heat",
    "conventional oven",
    "convection oven",
    "electric oven",
    "gas oven",
    "toaster oven"};
constexpr citation a40[] = {{"msu-unsafe-methods", "", ""},
    {"sdsu-how-not-to-can", "", ""},
    {"nchfp-equipment", "", ""}};
constexpr sv a41[] = {"open kettle",
    "open-kettle canning",
    "open-kettle method",
    "kettle canning",
    "no processing",
    "no process",
    "not processed",
    "unprocessed",
    "no canner",
    "fill and seal",
    "hot lid seal",
    "seal without processing"};
constexpr citation a42[] = {{"msu-unsafe-methods", "", ""},
    {"kstate-mistakes", "", ""},
    {"nchfp-equipment", "", ""}};
constexpr sv a43[] = {"inversion",
    "inversion canning",
    "inversion method",
    "invert",
    "invert jars",
    "inverting",
    "inverting jars",
    "inverted jars",
    "jar inversion",
    "turning jars over",
    "turn jars over",
    "turning jars upside down",
    "upside down",
    "upside-down jars",
    "upside-down method",
    "flipping jars",
    "flip jars",
    "flip method"};
constexpr citation a44[] = {{"missouri-inversion", "", ""},
    {"kstate-mistakes", "", ""},
    {"illinois-unsafe-methods", "", ""}};
constexpr sv a45[] = {"dishwasher",
    "dish washer",
    "dishwasher canning",
    "dishwasher method",
    "dishwasher cycle"};
constexpr citation a46[] = {{"msu-unsafe-methods", "", ""},
    {"nchfp-equipment", "", ""}};
constexpr sv a47[] = {"microwave",
    "microwave oven",
    "microwave canning",
    "microwave method",
    "microwaving"};
constexpr citation a48[] = {{"msu-unsafe-methods", "", ""},
    {"nchfp-equipment", "", ""},
    {"illinois-unsafe-methods", "", ""}};
constexpr sv a49[] = {"slow cooker",
    "slow-cooker canning",
    "slow-cooker method",
    "slow cooking"};
constexpr citation a50[] = {{"illinois-unsafe-methods", "", ""}};
constexpr sv a51[] = {"sun",
    "sun canning",
    "sun method",
    "sunlight",
    "solar",
    "solar canning",
    "solar cooker",
    "solar oven"};
constexpr citation a52[] = {{"kstate-mistakes", "", ""},
    {"illinois-unsafe-methods", "", ""}};
constexpr sv a53[] = {"paraffin",
    "paraffin wax",
    "paraffin seal",
    "paraffin sealing",
    "wax",
    "wax seal",
    "wax sealing",
    "melted wax"};
constexpr sv a54[] = {"canning powder",
    "canning powders",
    "preserving powder",
    "aspirin",
    "aspirin canning",
    "aspirin method",
    "canning tablets",
    "preservative tablets",
    "preserving tablets"};
constexpr citation a55[] = {{"nchfp-equipment", "", ""},
    {"sdsu-how-not-to-can", "", ""},
    {"nchfp-vegetable-questions", "", ""},
    {"missouri-aspirin", "", ""}};
constexpr sv a56[] = {"dry canning",
    "dry canned",
    "dry-canning method",
    "dry pack canning",
    "dry oven canning",
    "oven dry canning",
    "waterless canning",
    "no-liquid canning",
    "no-water canning",
    "canning without liquid",
    "canning without water"};
constexpr citation a57[] = {{"nchfp-dry-canning", "", ""},
    {"psu-dry-canning", "", ""},
    {"missouri-dry-canning", "", ""}};
constexpr sv a58[] = {"electric pressure cooker",
    "electric pressure canner",
    "electric multi-cooker",
    "electric multicooker",
    "multi-cooker",
    "multicooker",
    "multi-cooker canning",
    "multi-function cooker",
    "multifunction cooker",
    "programmable pressure cooker",
    "digital pressure cooker",
    "digital pressure canner",
    "countertop pressure cooker"};
constexpr citation a59[] = {{"nchfp-multi-cooker", "", ""},
    {"wisconsin-multi-cooker", "", ""}};
constexpr sv a60[] = {"pressure cooker",
    "pressure cooker canning",
    "pressure cooking",
    "small pressure cooker",
    "stovetop pressure cooker",
    "pressure saucepan",
    "pressure saucepot",
    "pressure pan",
    "pressure pot"};
constexpr citation a61[] = {{"clemson-pressure-saucepan", "", ""},
    {"psu-equipment", "", ""}};
constexpr sv a62[] = {"vacuum sealing",
    "vacuum sealer",
    "vacuum seal",
    "vacuum sealed",
    "vacuum sealed jars",
    "vacuum sealing machine",
    "vacuum packaging",
    "vacuum packing",
    "vacuum pack",
    "vacuum canning",
    "jar vacuum sealer",
    "jar sealer"};
constexpr citation a63[] = {{"usu-vacuum", "", ""},
    {"ncsu-vacuum", "", ""}};
constexpr sv a64[] = {"air fryer",
    "air-fryer canning",
    "air frying",
    "airfryer"};
constexpr citation a65[] = {{"illinois-unsafe-methods", "", ""},
    {"psu-equipment", "", ""},
    {"nchfp-equipment", "", ""},
    {"wisconsin-steam-canner", "", ""}};
constexpr sv a66[] = {"sous vide",
    "sous-vide canning",
    "sous-vide cooker",
    "sous-vide bath",
    "sous-vide circulator",
    "immersion circulator"};
constexpr citation a67[] = {{"usda-guide-1", "1", ""},
    {"illinois-unsafe-methods", "", ""},
    {"psu-equipment", "", ""},
    {"nchfp-equipment", "", ""}};
constexpr sv a68[] = {"steam oven",
    "steam-oven canning",
    "combi oven",
    "combi steam oven",
    "combination steam oven"};
constexpr sv a69[] = {"pressure fryer",
    "pressure-fryer canning",
    "pressure frying"};
constexpr sv a70[] = {"smoker",
    "smoker canning",
    "smokehouse",
    "pellet smoker",
    "grill",
    "pellet grill",
    "barbecue"};
constexpr citation a71[] = {{"illinois-unsafe-methods", "", ""},
    {"psu-equipment", "", ""},
    {"nchfp-equipment", "", ""},
    {"wisconsin-steam-canner", "", ""},
    {"nchfp-smoked-fish", "", ""}};
constexpr sv a72[] = {"cold water",
    "cold water bath",
    "cold water bath canning",
    "cold water canning",
    "cold bath",
    "cold canning",
    "cold pack",
    "cold pack canning",
    "cold pack method",
    "no heat",
    "no-heat canning",
    "no-cook canning"};
constexpr citation a73[] = {{"nchfp-safety", "", ""},
    {"illinois-unsafe-methods", "", ""},
    {"psu-equipment", "", ""}};
constexpr sv a74[] = {"hot fill",
    "hot filling",
    "hot fill and hold",
    "hot fill hold",
    "hot tap water",
    "hot tap water bath",
    "tap water bath",
    "tap water"};
constexpr citation a75[] = {{"msu-unsafe-methods", "", ""},
    {"illinois-unsafe-methods", "", ""},
    {"psu-equipment", "", ""}};
constexpr sv a76[] = {"electric canner",
    "electric canning machine",
    "automatic canner",
    "automatic canning machine",
    "automatic electric canner",
    "electric automatic canner",
    "canning machine",
    "canning appliance"};
constexpr citation a77[] = {{"illinois-unsafe-methods", "", ""},
    {"psu-equipment", "", ""}};
constexpr method a78[] = {{"pressure", "pressure canner", a29, true, "", "", 10, 15, a30, a31, 4, 10, 2, 0, 0, 0, a32},
    {"boiling-water", "boiling-water canner", a33, true, "", "", 0, 0, {}, {}, 0, 0, 0, 0, 10, 10, a34},
    {"steam", "atmospheric steam canner", a35, true, "", "", 0, 0, {}, {}, 0, 0, 0, 45, 0, 0, a36},
    {"low-temperature", "low-temperature pasteurization", a37, true, "", "", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a38},
    {"oven", "oven canning", a39, false, "Dry oven heat enters a jar slowly and the temperature of an oven varies, and there are no tested times for it. Jars can also shatter.", "Process low-acid food in a pressure canner by the food's table; a boiling-water canner is for acid food.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a40},
    {"open-kettle", "open-kettle canning", a41, false, "The jar gets no heat once the lid is on, so microbes in it live on. The lid may pull down all the same and look sealed, which adds the risk of botulism.", "Process the closed jars in a canner, by the method and for the full time of the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a42},
    {"inversion", "turning jars over (inversion)", a43, false, "Turning hot jars over is open-kettle canning by another name. So short a contact with hot food does not kill mold or yeast, and many jars do not seal.", "Leave the jars upright and process them in a canner, by the method and for the full time of the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a44},
    {"dishwasher", "dishwasher canning", a45, false, "A dishwasher never gets as hot as boiling water (212 F): even a sanitizing cycle reaches only about 171 to 180 F.", "Process the filled jars in a canner, by the method and for the full time of the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a46},
    {"microwave", "microwave canning", a47, false, "A microwave oven heats unevenly, so nothing assures that all of the food in the jar gets hot enough.", "Process the filled jars in a canner, by the method and for the full time of the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a48},
    {"slow-cooker", "slow-cooker canning", a49, false, "Extension counts the slow cooker among the appliances that are very dangerous for canning, and allows a boiling-water canner or a pressure canner in its place.", "Process low-acid food in a pressure canner, by a tested recipe and for its full time.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a50},
    {"sun", "sun canning", a51, false, "The heat of the sun cannot be relied on even for acid food, and for low-acid food it is never enough.", "Process the filled jars in a canner, by the method and for the full time of the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a52},
    {"paraffin", "sealing with paraffin or wax", a53, false, "Under a cover of wax mold can grow. Mold on a jelly can carry poisons, the mycotoxins.", "Close the jars with new two-piece lids and process them in a canner by the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a50},
    {"canning-powder", "canning powders, aspirin or tablets in place of heat", a54, false, "Canning powders do not preserve food and cannot stand in for heat. Aspirin is too weak to be relied on against spoilage: it does not stop enzymes, and no vacuum forms in the jar.", "Process the filled jars in a canner, by the method and for the full time of the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a55},
    {"dry-canning", "dry canning", a56, false, "Tested vegetable times count on liquid in the jar to carry the heat; spores survive dry heat longer, and botulism can follow. Dry goods heated in jars in an oven are untested too: in pockets of moisture bacteria or mold can grow.", "Cover vegetables with liquid as their table says and pressure can them; keep dry goods as they are, closed and cool, or frozen.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a57},
    {"electric-multi-cooker", "electric pressure cooker or multi-cooker", a58, false, "The USDA times were made for stovetop canners that hold four or more upright quart jars. These cookers warm up and cool down differently, no measurements of the heat inside the jars back them, and several models that were tested did not get hot enough. A canning button changes none of this.", "Use a stovetop pressure canner that holds at least four quart jars upright on its rack.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a59},
    {"pressure-saucepan", "pressure cooker or pressure saucepan", a60, false, "A small pot heats and cools too quickly, and the heat of warming up and cooling down is part of the tested process.", "Use a pressure canner that holds at least four quart jars upright on its rack; if your pot is one, write \"pressure\" as the method.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a61},
    {"vacuum-sealing", "vacuum sealing", a62, false, "Taking the air out does not preserve food by itself, and a lack of oxygen favors the bacteria of botulism. Perishable food still has to be kept cold.", "Keep vacuum-sealed perishable food in the refrigerator or freezer, or can it in a canner by a tested process.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a63},
    {"air-fryer", "air-fryer canning", a64, false, "No published process heats jars in an air fryer, so nobody can say how long would be enough. Extension allows boiling-water canners and pressure canners, and steam canners for acid food.", "Process low-acid food in a pressure canner by the food's table; a boiling-water canner is for acid food.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a65},
    {"sous-vide", "sous-vide canning", a66, false, "No published process uses a sous-vide bath. Low-acid food needs 240 to 250 F, and a bath of water cannot get hotter than boiling.", "Process low-acid food in a pressure canner by the food's table; a boiling-water canner is for acid food.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a67},
    {"steam-oven", "steam-oven canning", a68, false, "No published process heats jars in a steam oven. Extension allows boiling-water canners and pressure canners, and steam canners for acid food.", "Process low-acid food in a pressure canner by the food's table; a boiling-water canner is for acid food.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a65},
    {"pressure-fryer", "pressure-fryer canning", a69, false, "No published process heats jars in a pressure fryer. Extension allows boiling-water canners and pressure canners, and steam canners for acid food.", "Use a pressure canner that holds at least four quart jars upright on its rack.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a65},
    {"smoker", "canning in a smoker or on a grill", a70, false, "No published process heats jars in a smoker or on a grill. Extension allows boiling-water canners and pressure canners, and steam canners for acid food.", "Process the jars in a pressure canner; for fish that was smoked first there is a table of its own.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a71},
    {"cold-water", "cold-water canning", a72, false, "No published process does without heat. Even boiling water does not kill the spores of botulism in low-acid food, and cold water does less.", "Process low-acid food in a pressure canner by the food's table; if you mean food that goes into the jar raw, write \"raw\" as the pack and the canner as the method.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a73},
    {"hot-fill", "hot filling without processing", a74, false, "No published process leaves it at hot food in the jar or hot water from the tap. A closed jar that gets no tested heat is open-kettle canning: microbes live on under a lid that looks sealed.", "Fill the jars hot and then process them in a canner, by the method and for the full time of the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a75},
    {"electric-canner", "automatic electric canner", a76, false, "The automatic electric canner on sale is made for acid foods and goes by recipes of its own; USDA times do not apply to it. Extension allows boiling-water canners and pressure canners.", "Use the maker's own acid recipes in it and nothing else; process low-acid food in a stovetop pressure canner.", 0, 0, {}, {}, 0, 0, 0, 0, 0, 0, a77}};
constexpr form_word a79[] = {{"whole", "left whole", ""},
    {"spears", "whole spears, 4 to 6 inches long or cut to the height of the jar", ""},
    {"1-inch-pieces", "cut in pieces of 1 inch", ""},
    {"half-inch-cubes", "cut in cubes of 1/2 inch", ""},
    {"1-inch-cubes", "cut in cubes of 1 inch", ""},
    {"sliced", "cut in slices", ""},
    {"diced", "cut in small dice", ""},
    {"quartered", "cut in quarters", ""},
    {"cut", "cut up", ""},
    {"even-pieces", "cut in pieces of one size", ""},
    {"pieces", "cut in pieces that fit the jar", ""},
    {"small", "beans of a small-seeded kind", ""},
    {"large", "beans of a large-seeded kind", ""},
    {"shelled", "shelled", ""},
    {"kernels", "whole kernels cut from the cob", ""},
    {"cream-style", "kernels cut through the middle, with the scrapings of the cob", ""},
    {"leaves", "leaves without tough stems and midribs", ""},
    {"mixed", "several vegetables mixed", ""},
    {"soup", "soup, half of it solids and half liquid", ""},
    {"stock", "strained stock", ""},
    {"in-sauce", "in thin sauce", ""},
    {"okra-whole", "whole okra pods", ""},
    {"okra-1-inch-pieces", "okra cut in pieces of 1 inch", ""},
    {"zucchini-sliced", "sliced zucchini", ""},
    {"zucchini-cubed", "zucchini in cubes", ""},
    {"as-recipe", "made as the printed recipe says", ""},
    {"strips", "cut in strips", ""},
    {"cubes", "cut in cubes", ""},
    {"chunks", "cut in chunks", ""},
    {"patties", "shaped into patties", ""},
    {"balls", "shaped into balls", ""},
    {"links", "cased links, 3 to 4 inches long", ""},
    {"loose", "ground and left loose", ""},
    {"with-bones", "with the bones in", ""},
    {"without-bones", "taken off the bones", ""},
    {"lengths", "cut across in lengths of 3 1/2 inches", ""},
    {"fillets", "fillets as long as the jar", ""},
    {"minced", "minced", ""},
    {"shucked", "shucked meats", ""},
    {"picked-meat", "cooked meat picked from the shell", ""},
    {"mashed", "mashed", "low-acid-puree"},
    {"pureed", "pureed or blended smooth", "low-acid-puree"},
    {"mashed-beans", "mashed or refried beans", "low-acid-puree"},
    {"butter", "cooked down to a butter", "low-acid-puree"},
    {"halved", "cut in halves", ""},
    {"pitted", "whole fruit with the pits taken out", ""},
    {"sections", "peeled sections, the white skin taken off", ""},
    {"juice", "juice, pressed or strained", ""},
    {"fruit-puree", "fruit cooked soft and pressed through a sieve", ""},
    {"smooth-sauce", "sauce pressed smooth", ""},
    {"chunky-sauce", "sauce left in soft pieces", ""},
    {"half-to-1-inch-pieces", "cut in pieces of 1/2 to 1 inch", ""},
    {"shredded", "cut in shreds", ""},
    {"crushed", "quartered and crushed, without added liquid", ""},
    {"sauce", "pressed and cooked down to a sauce, thin or thick", ""},
    {"4-inch-lengths", "trimmed to lengths of 4 inches", ""},
    {"rings", "cut across in rings", ""},
    {"cauliflower-flowerets", "cauliflower in flowerets of 1 to 2 inches", ""},
    {"brussels-sprouts-whole", "small whole Brussels sprouts", ""},
    {"in-sterile-jars", "filled into jars that were boiled, as sterilizing asks", ""},
    {"in-clean-jars", "filled into clean hot jars that were not sterilized", ""}};
constexpr sv a80[] = {"hot"};
constexpr sv a81[] = {"raw",
    "hot"};
constexpr prepared_word a82[] = {{"beans rehydrated", "dried beans or peas soaked and boiled until they have taken up their water", "", "", {}},
    {"beans not rehydrated", "dried beans or peas put in dry", "beans rehydrated", "not-in-process", {}},
    {"meat precooked", "meat, poultry or seafood cooked before filling", "meat not precooked", "", {}},
    {"meat not precooked", "meat, poultry or seafood put in raw", "meat precooked", "", {}},
    {"boiled before filling", "boiled, simmered or steamed before filling, as long as the process says", "", "", {}},
    {"not boiled before filling", "put in without that cooking", "boiled before filling", "", {}},
    {"boiled 5 min", "boiled or simmered for 5 minutes before filling", "", "", {}},
    {"boiled under 5 min", "boiled or simmered for less than 5 minutes before filling", "boiled 5 min", "", {}},
    {"reheated to a boil", "brought back to a boil before filling", "", "", a80},
    {"not reheated", "put in without reheating", "reheated to a boil", "", {}},
    {"jars sterilized", "empty jars boiled before filling", "", "", a81},
    {"peeled", "skins taken off", "", "", a81},
    {"unpeeled", "skins left on", "peeled", "", {}},
    {"fat removed", "excess fat cut off, drained off or skimmed off", "", "", {}},
    {"fat left in", "excess fat left in", "fat removed", "", {}},
    {"skin and bones removed", "skin and bones taken off", "bones left in", "", {}},
    {"skin or bones left in", "skin, bones or both left in", "skin and bones removed", "", {}},
    {"bones removed", "bones taken out", "bones left in", "", {}},
    {"bones left in", "bones left in", "bones removed", "", {}},
    {"covered with liquid", "filled up with the liquid that the process names", "no liquid added", "", {}},
    {"no liquid added", "packed without added liquid", "covered with liquid", "", {}},
    {"drained", "soaking, washing or cooking water poured off where the process says so", "", "", {}},
    {"not drained", "that water kept", "drained", "", {}},
    {"blanched", "scalded in boiling water or steam, as long as the process says", "", "", {}},
    {"not blanched", "put in without scalding", "blanched", "", {}},
    {"packed loosely", "filled loosely", "", "", {}},
    {"packed tightly", "filled tightly, pressed or shaken down", "packed loosely", "", {}},
    {"fresh water used", "jars filled up with fresh hot water", "", "", {}},
    {"cooking water used", "jars filled up with the water the food was cooked in", "fresh water used", "", {}},
    {"not thickened", "no flour, starch, batter or other thickener used", "", "", a81},
    {"thickened", "flour, starch, batter or another thickener used", "not thickened", "thickener-in-jar", {}},
    {"not smoked", "put in unsmoked", "lightly smoked", "", a81},
    {"lightly smoked", "lightly smoked", "not smoked", "not-in-process", {}},
    {"chilled", "chilled in the refrigerator or on ice, as long as the process says", "", "", {}},
    {"not chilled", "put in without chilling", "chilled", "", {}},
    {"boiled in acidified water", "boiled 2 minutes in water with lemon juice or citric acid", "", "", {}},
    {"not boiled in acidified water", "put in without that boiling", "boiled in acidified water", "", {}},
    {"cultivated mushrooms", "grown mushrooms", "", "", {}},
    {"wild mushrooms", "gathered mushrooms", "cultivated mushrooms", "not-in-process", {}},
    {"yellow flesh", "peaches or nectarines of a yellow-fleshed kind", "", "", {}},
    {"white flesh", "peaches or nectarines of a white-fleshed kind", "yellow flesh", "not-in-process", {}},
    {"under-ripe", "fruit picked and used before it is ripe, as the process says", "", "", {}},
    {"fully ripe", "fruit that is fully ripe", "under-ripe", "", {}},
    {"pricked", "skins pricked so that whole fruit does not burst", "", "", {}},
    {"settled cold", "juice left to settle in the refrigerator and poured off the sediment", "", "", {}},
    {"strained", "put through a cloth, filter, sieve or food mill", "", "", {}},
    {"not strained", "put in without straining", "strained", "", {}},
    {"fresh fruit", "fruit that was not frozen", "", "", a81},
    {"frozen fruit", "frozen and thawed fruit without sugar", "fresh fruit", "", {}},
    {"thickened with cook-type starch", "thickened with cook-type modified corn starch", "", "thickener-in-jar", {}},
    {"thickened with another starch", "thickened with flour, plain corn starch, tapioca, instant starch or the like", "thickened with cook-type starch", "thickener-in-jar", {}},
    {"sieved", "put through a sieve or a food mill, skins and seeds held back", "", "", {}},
    {"not sieved", "used without sieving", "sieved", "", {}},
    {"fully fermented", "fermented to the end, as the process says", "", "", {}},
    {"not fully fermented", "canned before the ferment had ended", "fully fermented", "", {}},
    {"lime rinsed out", "pickling lime taken out: rinsed, soaked 1 hour in fresh water and drained, three times in all", "", "", {}},
    {"lime not rinsed out", "pickling lime left in, or rinsed less often", "lime rinsed out", "", {}},
    {"blossom ends removed", "1/16 inch cut off the blossom end", "", "", {}},
    {"slit", "slits cut in each pepper that is left whole", "", "", {}},
    {"not slit", "whole peppers put in without slits", "slit", "", {}},
    {"marinated", "kept in the marinade in the refrigerator, as long as the process says", "", "", {}},
    {"not marinated", "put in without that time in the marinade", "marinated", "", {}},
    {"jars not sterilized", "clean jars that were not boiled before filling", "jars sterilized", "", a81},
    {"pectin directions followed", "made as the directions in the pectin package say, recipe and steps", "", "", {}},
    {"pectin directions changed", "amounts or steps of the pectin package changed", "pectin directions followed", "", {}}};
constexpr sv a83[] = {"washed",
    "rinsed",
    "cleaned",
    "trimmed",
    "washed and trimmed",
    "sorted",
    "stemmed",
    "cored",
    "seeded",
    "husked",
    "strung",
    "topped",
    "topped and tailed",
    "peeled",
    "washed and peeled"};
constexpr sv a84[] = {"about",
    "additional",
    "all",
    "also",
    "and",
    "any",
    "as",
    "at",
    "bag",
    "bath",
    "bite",
    "blanched",
    "boiled",
    "boiling",
    "bought",
    "brine",
    "bulb",
    "bunch",
    "canning",
    "chopped",
    "chunks",
    "clean",
    "cleaned",
    "coarse",
    "coarsely",
    "cold",
    "cooked",
    "cooled",
    "cored",
    "covered",
    "crosswise",
    "crushed",
    "cubed",
    "cubes",
    "cut",
    "desired",
    "destemmed",
    "diagonally",
    "diced",
    "discarded",
    "drained",
    "each",
    "ends",
    "extra",
    "fine",
    "finely",
    "firm",
    "firmly",
    "flesh",
    "for",
    "freshly",
    "from",
    "full",
    "grated",
    "ground",
    "halved",
    "halves",
    "hand",
    "hard",
    "hot",
    "hulled",
    "husked",
    "if",
    "in",
    "into",
    "juices",
    "julienned",
    "kind",
    "kinds",
    "large",
    "lengths",
    "lengthwise",
    "level",
    "lightly",
    "long",
    "longwise",
    "loosely",
    "measured",
    "medium",
    "membranes",
    "mild",
    "minced",
    "mixed",
    "needed",
    "of",
    "off",
    "on",
    "optional",
    "packed",
    "peeled",
    "pickling",
    "piece",
    "pieces",
    "pitted",
    "plus",
    "pre",
    "prepared",
    "purchased",
    "quartered",
    "quarters",
    "removed",
    "rings",
    "rinsed",
    "ripe",
    "rounds",
    "roughly",
    "scrubbed",
    "seeded",
    "seeds",
    "shelled",
    "shredded",
    "size",
    "sized",
    "skinless",
    "skinned",
    "slice",
    "sliced",
    "slices",
    "slightly",
    "small",
    "soak",
    "soaked",
    "soaking",
    "solution",
    "split",
    "stalks",
    "stem",
    "stemmed",
    "stems",
    "strips",
    "tart",
    "taste",
    "the",
    "thick",
    "thin",
    "thinly",
    "tied",
    "tightly",
    "tips",
    "to",
    "topped",
    "total",
    "trimmed",
    "undrained",
    "uniform",
    "unsweetened",
    "used",
    "very",
    "washed",
    "weight",
    "well",
    "whole",
    "with",
    "without",
    "young",
    "your"};
constexpr sv a85[] = {"apple butter",
    "apple butters",
    "spiced apple butter",
    "apple cider butter",
    "mantequilla de manzana"};
constexpr sv a86[] = {"as-recipe"};
constexpr int a87[] = {10,
    15,
    20};
constexpr jar_minutes a88[] = {{"half-pint", a30},
    {"pint", a30},
    {"quart", a87}};
constexpr table a89[] = {{a86, "hot", "cooked down apple pulp with cider, vinegar, sugar, spice", 250, a88, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a90[] = {{"Keep to the printed recipe: the cider and the 5 % vinegar are half and half of its liquid and may not be cut. Sugar and spices may be changed.", {}, "", "", false, false},
    {"Cook the apples soft in the cider and vinegar and press them through a sieve.", {}, "strained", "", false, false},
    {"Cook the pulp with the sugar and spices, stirring often, until it mounds on a spoon.", {}, "boiled before filling", "", false, false},
    {"Fill the jars while it is hot.", {}, "", "", false, false}};
constexpr sv a91[] = {"apple"};
constexpr sv a92[] = {"apple-cider"};
constexpr sv a93[] = {"vinegar"};
constexpr sv a94[] = {"sugar"};
constexpr sv a95[] = {"brown-sugar"};
constexpr sv a96[] = {"ground-cinnamon"};
constexpr sv a97[] = {"ground-cloves"};
constexpr recipe_part a98[] = {{a91, "lb", {8, 1}, {8, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "as purchased"},
    {a92, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", ""},
    {a93, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a94, "cup", {225, 100}, {225, 100}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a95, "cup", {225, 100}, {225, 100}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", "packed"},
    {a96, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a97, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a99[] = {{"", "", "pint", 8, 9, a98}};
constexpr citation a100[] = {{"usda-guide-2", "2", "2-6"}};
constexpr sv a101[] = {"apple juice",
    "apple juices",
    "fresh apple juice",
    "pressed apple juice",
    "clear apple juice",
    "jugo de manzana",
    "zumo de manzana"};
constexpr sv a102[] = {"fruit juice",
    "fruit juices"};
constexpr sv a103[] = {"juice"};
constexpr jar_minutes a104[] = {{"pint", a30},
    {"quart", a30},
    {"half-gallon", a87}};
constexpr table a105[] = {{a103, "hot", "clear strained juice", 250, a104, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a106[] = {{"Let the juice settle 24 to 48 hours in the refrigerator and pour it off the sediment.", {}, "settled cold", "", false, false},
    {"Strain the clear juice.", {}, "strained", "", false, false},
    {"Heat it just to boiling and fill the jars at once.", {}, "boiled before filling", "", false, false}};
constexpr sv a107[] = {"spiced apple rings",
    "spiced apple ring",
    "apple rings",
    "cinnamon apple rings",
    "spiced red apple rings"};
constexpr jar_minutes a108[] = {{"half-pint", a87},
    {"pint", a87}};
constexpr table a109[] = {{a86, "hot", "1/2-inch rings of firm tart apples, at most 2 1/2 inches across, in spiced syrup with vinegar", 500, a108, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a110[] = {{"Keep to the printed recipe: the 5 % vinegar may not be cut and the water may not be raised. Sugar, spices and coloring may be changed.", {}, "", "", false, false},
    {"Use firm tart apples at most 2 1/2 inches across.", {}, "", "", false, false},
    {"Peel and core them and cut rings 1/2 inch thick.", {}, "peeled", "", false, false},
    {"Bring the syrup of sugar, water, vinegar and spices to a boil and put the drained rings in.", {}, "boiled before filling", "", false, false},
    {"Cook the rings in it 5 minutes.", {}, "boiled 5 min", "", false, false},
    {"Fill the jars with the hot rings and cover with the hot syrup.", {}, "covered with liquid", "", false, false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false, false}};
constexpr sv a111[] = {"water"};
constexpr sv a112[] = {"whole-cloves"};
constexpr sv a113[] = {"cinnamon-candy"};
constexpr sv a114[] = {"cinnamon-stick"};
constexpr sv a115[] = {"red-food-colour"};
constexpr recipe_part a116[] = {{a91, "lb", {12, 1}, {12, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "firm tart, at most 2 1/2 inch across, 1/2 inch rings"},
    {a94, "cup", {12, 1}, {12, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a111, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a93, "cup", {125, 100}, {125, 100}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a112, "tbsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a113, "cup", {75, 100}, {75, 100}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "cinnamon", "red hot type"},
    {a114, "piece", {8, 1}, {8, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "cinnamon", ""},
    {a115, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""}};
constexpr tested_recipe a117[] = {{"", "", "pint", 8, 9, a116}};
constexpr citation a118[] = {{"usda-guide-2", "2", "2-8"}};
constexpr sv a119[] = {"apples",
    "apple",
    "sliced apples",
    "apple slices",
    "apples in syrup",
    "apples in water",
    "cooking apples",
    "manzanas",
    "manzana",
    "manzanas en rodajas"};
constexpr sv a120[] = {"sliced"};
constexpr int a121[] = {20,
    25,
    30,
    35};
constexpr jar_minutes a122[] = {{"pint", a121},
    {"quart", a121}};
constexpr int a123[] = {8};
constexpr jar_minutes a124[] = {{"pint", a123},
    {"quart", a123}};
constexpr citation a125[] = {{"usda-guide-2", "2", "2-31"},
    {"usda-guide-2", "2", "2-32"}};
constexpr table a126[] = {{a120, "hot", "peeled, cored slices in water or syrup", 500, a122, "", "", "boiling-water-4", {}, "seen", 2, true, "Raw apples give poor quality and have no table; old timetables with 15 min for pints are out of date."},
    {a120, "hot", "peeled, cored slices in water or syrup", 500, a124, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, ""}};
constexpr condition a127[] = {{"Peel and core the apples and slice them.", {}, "peeled", "", false, false},
    {"A dip against browning, 1 tsp of ascorbic acid to a gallon of water, keeps the color only; it adds no acid to the jar.", {}, "", "", false, false},
    {"Put the slices in water or syrup, about a pint to 5 lb, and bring to a boil.", {}, "boiled before filling", "", false, false},
    {"Boil them 5 minutes.", {}, "boiled 5 min", "", false, false},
    {"Fill the jars and cover the fruit with the hot cooking liquid.", {}, "covered with liquid", "", false, false},
    {"Sugar is for flavor, color and shape; it may be left out.", {}, "", "", false, false}};
constexpr citation a128[] = {{"usda-guide-2", "2", "2-7"}};
constexpr sv a129[] = {"applesauce",
    "apple sauce",
    "smooth applesauce",
    "chunky applesauce",
    "unsweetened applesauce",
    "compota de manzana"};
constexpr sv a130[] = {"apple puree",
    "apple purée",
    "puree of apples",
    "puré de manzana",
    "pure de manzana"};
constexpr sv a131[] = {"smooth-sauce",
    "chunky-sauce"};
constexpr int a132[] = {15,
    20,
    20,
    25};
constexpr jar_minutes a133[] = {{"pint", a132},
    {"quart", a121}};
constexpr int a134[] = {10};
constexpr jar_minutes a135[] = {{"pint", a123},
    {"quart", a134}};
constexpr table a136[] = {{a131, "hot", "smooth or chunk style", 500, a133, "", "", "boiling-water-4", {}, "seen", 2, true, "At 3,001 to 6,000 ft pints take 20 min and not 25; two copies agree."},
    {a131, "hot", "smooth or chunk style", 500, a135, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, ""}};
constexpr condition a137[] = {{"Peel and core the apples.", {}, "peeled", "", false, false},
    {"Cook them tender; press them through a sieve, or leave the sauce in pieces.", {}, "boiled before filling", "", false, false},
    {"Sugar may be added or left out.", {}, "", "", false, false},
    {"Bring the sauce back to a boil and fill the jars while it is boiling hot.", {}, "reheated to a boil", "", false, false}};
constexpr sv a138[] = {"apricots",
    "apricot",
    "apricot halves",
    "halved apricots",
    "sliced apricots",
    "albaricoques",
    "albaricoque",
    "chabacanos",
    "chabacano",
    "damascos",
    "damasco"};
constexpr sv a139[] = {"halved",
    "sliced"};
constexpr int a140[] = {25,
    30,
    35,
    40};
constexpr jar_minutes a141[] = {{"pint", a121},
    {"quart", a140}};
constexpr jar_minutes a142[] = {{"pint", a134},
    {"quart", a134}};
constexpr int a143[] = {30,
    35,
    40,
    45};
constexpr jar_minutes a144[] = {{"pint", a140},
    {"quart", a143}};
constexpr table a145[] = {{a139, "hot", "halved or sliced", 500, a141, "", "", "boiling-water-4", {}, "seen", 2, true, "A list of pH values runs up to 4.80 for apricots; the guide cans them as acid fruit without added acid."},
    {a139, "hot", "halved or sliced", 500, a142, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, ""},
    {a139, "raw", "halved or sliced", 500, a144, "", "", "boiling-water-4", {}, "seen", 2, true, "A raw pack is allowed, but of poor quality."},
    {a139, "raw", "halved or sliced", 500, a142, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, "A raw pack is allowed, but of poor quality."}};
constexpr sv a146[] = {"raw"};
constexpr condition a147[] = {{"Take out the pits and cut the apricots in halves or slices; the skins may stay on.", {}, "unpeeled", "", false, false},
    {"A dip against browning, 1 tsp of ascorbic acid to a gallon of water, keeps the color only; it adds no acid to the jar.", {}, "", "", false, false},
    {"Put the fruit in water, apple juice, white grape juice or very light to medium syrup and bring to a boil.", a80, "boiled before filling", "", false, false},
    {"Fill the jars with the hot fruit and cover with the hot cooking liquid.", a80, "covered with liquid", "", false, false},
    {"Fill the jars with raw fruit and cover with hot water, juice or syrup.", a146, "covered with liquid", "", false, false},
    {"Sugar is for flavor, color and shape; it may be left out.", {}, "", "", false, false}};
constexpr citation a148[] = {{"usda-guide-2", "2", "2-9"}};
constexpr sv a149[] = {"pickled asparagus",
    "asparagus pickles",
    "pickled asparagus spears",
    "esparragos encurtidos",
    "espárragos encurtidos",
    "esparragos en vinagre",
    "espárragos en vinagre"};
constexpr sv a150[] = {"spears"};
constexpr jar_minutes a151[] = {{"12-oz", a87}};
constexpr jar_minutes a152[] = {{"pint", a87}};
constexpr table a153[] = {{a150, "raw", "whole spears cut to jar height, blunt ends down", 500, a151, "", "", "boiling-water-3", {}, "seen", 2, true, "Read whole in a text copy of the 2015 guide, page 6-13."},
    {a150, "raw", "whole spears cut to jar height, blunt ends down", 500, a152, "", "", "boiling-water-3", {}, "seen", 2, true, "The batch is printed for wide-mouth pints."}};
constexpr condition a154[] = {{"Wash the asparagus and cut the spears to the height of the jar; leave them whole.", {}, "", "", false, false},
    {"Put one clove of garlic in each jar and the spears on it, blunt ends down; one small hot pepper may go in.", {}, "", "", false, false},
    {"The liquid is equal parts of vinegar and water; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"Cover the spears with the boiling brine.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer spears. Not allowed: less vinegar, more water or more asparagus.", {}, "", "", false, false}};
constexpr sv a155[] = {"asparagus"};
constexpr sv a156[] = {"garlic"};
constexpr sv a157[] = {"small-hot-pepper"};
constexpr sv a158[] = {"canning-salt"};
constexpr sv a159[] = {"dill-seed"};
constexpr recipe_part a160[] = {{a155, "lb", {10, 1}, {10, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "whole spears"},
    {a156, "clove", {6, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "large, 1 per jar"},
    {a111, "cup", {45, 10}, {45, 10}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a93, "cup", {45, 10}, {45, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a157, "piece", {6, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", "1 per jar"},
    {a158, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a159, "tsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr recipe_part a161[] = {{a155, "lb", {7, 1}, {7, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "whole spears"},
    {a156, "clove", {7, 1}, {7, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "large, 1 per jar"},
    {a111, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a93, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a157, "piece", {7, 1}, {7, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", "1 per jar"},
    {a158, "cup", {1, 3}, {1, 3}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a159, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a162[] = {{"pint", "", "pint", 6, 6, a160},
    {"12-oz", "", "12-oz", 7, 7, a161}};
constexpr citation a163[] = {{"usda-guide-6", "6", "6-13"}};
constexpr sv a164[] = {"asparagus",
    "asparagus spears",
    "esparragos",
    "espárragos"};
constexpr sv a165[] = {"whole",
    "spears",
    "1-inch-pieces"};
constexpr int a166[] = {30};
constexpr int a167[] = {40};
constexpr jar_minutes a168[] = {{"pint", a166},
    {"quart", a167}};
constexpr table a169[] = {{a165, "hot", "spears, whole or cut in 1-inch pieces", 1000, a168, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "One state copy covers with the cooking liquid; the guide uses boiling water. Older charts with 25 and 30 min are out of date."},
    {a165, "raw", "spears, whole or cut in 1-inch pieces", 1000, a168, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Older charts with 25 and 30 min are out of date."}};
constexpr condition a170[] = {{"Use spears of 4 to 6 inches with tight tips, whole or in 1-inch pieces.", {}, "", "", false, false},
    {"Boil them 2 to 3 minutes in water.", a80, "boiled before filling", "", false, false},
    {"Fill the jars loosely.", a80, "packed loosely", "", false, false},
    {"Fill the jars tightly, without crushing the spears.", a146, "packed tightly", "", false, false},
    {"Cover with boiling water.", {}, "covered with liquid", "", false, false}};
constexpr citation a171[] = {{"usda-guide-4", "4", "4-5"}};
constexpr sv a172[] = {"pickled baby carrots",
    "baby carrot pickles",
    "pickled whole baby carrots",
    "pickled mini carrots"};
constexpr sv a173[] = {"zanahorias encurtidas",
    "zanahorias en vinagre"};
constexpr sv a174[] = {"whole"};
constexpr int a175[] = {15,
    20,
    25};
constexpr jar_minutes a176[] = {{"pint", a175}};
constexpr jar_minutes a177[] = {{"half-pint", a175}};
constexpr citation a178[] = {{"missouri-pickled-baby-carrots", "", ""}};
constexpr table a179[] = {{a174, "hot", "whole peeled baby carrots, simmered to half-cooked", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once. The table names pints only."},
    {a174, "hot", "whole peeled baby carrots, simmered to half-cooked", 500, a177, "", "", "boiling-water-3", a178, "seen", 2, true, "All its numbers were read, once, on an Extension page that lists half-pints with the pint times; other copies of the USDA table name pints only."}};
constexpr condition a180[] = {{"Peel the carrots; leave baby carrots whole.", {}, "peeled", "", false, false},
    {"The liquid is 5 1/2 cups of vinegar to 1 cup of water; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"Simmer the carrots in the pickling liquid until they are half-cooked.", {}, "boiled before filling", "", false, false},
    {"Fill the carrots to 1 inch from the rim.", {}, "", "", false, false},
    {"Cover with the hot liquid to 1/2 inch from the rim.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer carrots, more sugar. Not allowed: less vinegar, more water or more carrots.", {}, "", "", false, false}};
constexpr sv a181[] = {"baby-carrot"};
constexpr sv a182[] = {"mustard-seed"};
constexpr sv a183[] = {"celery-seed"};
constexpr recipe_part a184[] = {{a181, "cup", {85, 10}, {85, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "peeled, whole"},
    {a93, "cup", {55, 10}, {55, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a111, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a94, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a158, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a182, "tsp", {8, 1}, {8, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "2 tsp per pint"},
    {a183, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "1 tsp per pint"}};
constexpr tested_recipe a185[] = {{"", "", "pint", 4, 4, a184}};
constexpr citation a186[] = {{"usda-guide-6", "6", "6-16"}};
constexpr sv a187[] = {"baked beans",
    "boston baked beans",
    "molasses baked beans",
    "home-baked beans"};
constexpr sv a188[] = {"beans",
    "pork and beans"};
constexpr int a189[] = {65};
constexpr int a190[] = {75};
constexpr jar_minutes a191[] = {{"pint", a189},
    {"quart", a190}};
constexpr table a192[] = {{a86, "hot", "rehydrated dry beans baked in molasses sauce", 1000, a191, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "One state copy allows the tomato sauces here too; the guide bakes in molasses sauce."}};
constexpr condition a193[] = {{"Pour 3 cups of water over each cup of dry beans, boil 2 minutes, take them off the heat and let them stand 1 hour.", {}, "beans rehydrated", "beans-not-rehydrated", true, false},
    {"Pour the soaking water away.", {}, "drained", "", false, false},
    {"Heat the beans to a boil in fresh water.", {}, "boiled before filling", "", false, false},
    {"Cover them with the printed molasses sauce and bake 4 to 5 hours at 350 F, adding water about every hour so that they stay covered.", {}, "covered with liquid", "", false, false},
    {"At most seven 3/4-inch pieces of pork, ham or bacon go into a batch.", {}, "", "", false, false},
    {"Leave the beans whole: mashed beans have no tested process.", {}, "", "low-acid-puree", false, false},
    {"Fill the jars hot.", {}, "", "", false, false}};
constexpr sv a194[] = {"dried-bean"};
constexpr sv a195[] = {"pork",
    "ham",
    "bacon"};
constexpr sv a196[] = {"water",
    "bean-cooking-liquid"};
constexpr sv a197[] = {"dark-molasses"};
constexpr sv a198[] = {"salt"};
constexpr sv a199[] = {"dry-mustard"};
constexpr recipe_part a200[] = {{a194, "lb", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::low_acid, true, false, false, "", "", "dry weight"},
    {a195, "piece", {7, 1}, {7, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", "3/4 inch pieces"},
    {a196, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::water, false, false, false, "", "", ""},
    {a197, "tbsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::sugar, false, false, false, "", "", ""},
    {a93, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::other, false, false, false, "", "", ""},
    {a198, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a199, "tsp", {75, 100}, {75, 100}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a201[] = {{"", "", "quart", 4, 4, a200}};
constexpr citation a202[] = {{"usda-guide-4", "4", "4-6"}};
constexpr sv a203[] = {"dilled beans",
    "dilly beans",
    "dilled green beans",
    "dilled yellow beans",
    "dilled wax beans",
    "pickled dilled beans",
    "pickled green beans",
    "pickled green bean",
    "pickled yellow beans",
    "pickled wax beans",
    "pickled snap beans",
    "pickled french beans",
    "green bean pickles",
    "dill pickled green beans",
    "ejotes encurtidos",
    "ejotes en vinagre",
    "judias verdes encurtidas",
    "judías verdes encurtidas",
    "chauchas en vinagre"};
constexpr sv a204[] = {"pickled beans",
    "pickled bean"};
constexpr sv a205[] = {"4-inch-lengths"};
constexpr jar_minutes a206[] = {{"pint", a30}};
constexpr table a207[] = {{a205, "raw", "green or yellow beans trimmed to 4 inch lengths, upright in jar", 500, a206, "", "", "boiling-water-3", {}, "seen", 2, true, "One of the two readings was a copy that does not name its publisher; its numbers are those of the USDA table as remembered."}};
constexpr condition a208[] = {{"Wash the beans and trim them to lengths of 4 inches.", {}, "", "", false, false},
    {"Put 1 or 2 fresh dill heads in each pint, and a clove of garlic if wanted; stand the beans upright.", {}, "", "", false, false},
    {"The liquid is equal parts of vinegar and water; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"Cover the beans with the hot pickling liquid.", {}, "covered with liquid", "", false, false},
    {"Green and yellow beans may replace each other. Allowed: more vinegar, fewer beans. Not allowed: less vinegar, more water or more beans.", {}, "", "", false, false}};
constexpr sv a209[] = {"green-bean",
    "yellow-bean"};
constexpr sv a210[] = {"dill-head"};
constexpr sv a211[] = {"crushed-red-pepper"};
constexpr recipe_part a212[] = {{a209, "lb", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "trimmed to 4 inch"},
    {a210, "head", {8, 1}, {16, 1}, "", {0, 1}, part_limit::between, part_role::spice, false, false, false, "", "", "fresh, 1 to 2 per pint"},
    {a156, "clove", {8, 1}, {8, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", "1 per pint"},
    {a158, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a93, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a111, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a211, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""}};
constexpr tested_recipe a213[] = {{"", "", "pint", 8, 8, a212}};
constexpr citation a214[] = {{"usda-guide-6", "6", "6-14"}};
constexpr sv a215[] = {"beans in tomato sauce",
    "beans with tomato sauce",
    "beans in molasses sauce",
    "beans with molasses sauce",
    "dried beans with sauce",
    "dry beans with sauce",
    "dried beans in tomato sauce",
    "dry beans in tomato sauce",
    "dry beans with tomato sauce",
    "dry beans with molasses sauce",
    "dried beans with tomato sauce",
    "dried beans with molasses sauce",
    "beans with sauce",
    "beans in sauce"};
constexpr sv a216[] = {"whole",
    "in-sauce"};
constexpr table a217[] = {{a216, "hot", "rehydrated dry beans in hot thin tomato or molasses sauce", 1000, a191, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Copies differ on whether 3 quarts of bean cooking liquid follow the tomato sauce; no process number depends on it."}};
constexpr condition a218[] = {{"Pour 3 cups of water over each cup of dry beans, boil 2 minutes, take them off the heat and let them stand 1 hour.", {}, "beans rehydrated", "beans-not-rehydrated", true, false},
    {"Pour the soaking water away.", {}, "drained", "", false, false},
    {"Heat the beans to a boil in fresh water and keep that water for the sauce.", {}, "boiled before filling", "", false, false},
    {"Make one of the printed sauces, no thicker than printed, and heat it to a boil.", {}, "not thickened", "", false, false},
    {"Fill the jars three quarters full of hot beans and add at most one 3/4-inch cube of pork, ham or bacon.", {}, "", "", false, false},
    {"Cover with the hot sauce.", {}, "covered with liquid", "", false, false},
    {"This time is shorter than that of plain dried beans and holds with the printed sauces only.", {}, "", "", false, false},
    {"Leave the beans whole: mashed beans have no tested process.", {}, "", "low-acid-puree", false, false}};
constexpr recipe_part a219[] = {{a194, "lb", {75, 100}, {75, 100}, "", {0, 1}, part_limit::free, part_role::low_acid, true, false, false, "", "", "dry weight"},
    {a195, "piece", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", "3/4 inch cubes"}};
constexpr recipe_part a220[] = {{a194, "lb", {5, 1}, {5, 1}, "", {0, 1}, part_limit::free, part_role::low_acid, true, false, false, "", "", "dry weight"},
    {a195, "piece", {7, 1}, {7, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", "3/4 inch cubes"}};
constexpr recipe_part a221[] = {{a194, "lb", {325, 100}, {325, 100}, "", {0, 1}, part_limit::free, part_role::low_acid, true, false, false, "", "", "dry weight"},
    {a195, "piece", {9, 1}, {9, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", "3/4 inch cubes"}};
constexpr sv a222[] = {"tomato-juice"};
constexpr sv a223[] = {"onion"};
constexpr sv a224[] = {"ground-allspice"};
constexpr sv a225[] = {"ground-mace"};
constexpr sv a226[] = {"cayenne-pepper"};
constexpr recipe_part a227[] = {{a222, "quart", {1, 1}, {1, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", ""},
    {a94, "tbsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::sugar, false, false, false, "", "", ""},
    {a198, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a223, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a97, "tsp", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a224, "tsp", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a225, "tsp", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a226, "tsp", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr sv a228[] = {"tomato-ketchup"};
constexpr sv a229[] = {"bean-cooking-liquid"};
constexpr recipe_part a230[] = {{a228, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::acid_food, true, false, false, "", "", ""},
    {a229, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::least, part_role::water, false, false, false, "", "", ""}};
constexpr recipe_part a231[] = {{a197, "tbsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::sugar, true, false, false, "", "", ""},
    {a196, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::water, false, false, false, "", "", ""},
    {a93, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::other, false, false, false, "", "", ""},
    {a198, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a199, "tsp", {75, 100}, {75, 100}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a232[] = {{"1-quart", "beans", "quart", 1, 1, a219},
    {"7-quarts", "beans", "quart", 7, 7, a220},
    {"9-pints", "beans", "pint", 9, 9, a221},
    {"tomato-sauce", "sauce", "", 0, 0, a227},
    {"ketchup-sauce", "sauce", "", 0, 0, a230},
    {"molasses-sauce", "sauce", "", 0, 0, a231}};
constexpr sv a233[] = {"dried beans",
    "dry beans",
    "dried bean",
    "dry bean",
    "dried shelled beans",
    "frijoles",
    "frijol",
    "alubias",
    "porotos",
    "pinto beans",
    "pinto bean",
    "dried pinto beans",
    "frijoles pintos",
    "kidney beans",
    "kidney bean",
    "red kidney beans",
    "dried kidney beans",
    "dried red kidney beans",
    "black beans",
    "black bean",
    "dried black beans",
    "black turtle beans",
    "turtle beans",
    "frijoles negros",
    "navy beans",
    "navy bean",
    "dried navy beans",
    "pea beans",
    "haricot beans",
    "white beans",
    "white bean",
    "dried white beans",
    "small white beans",
    "alubias blancas",
    "great northern beans",
    "dried great northern beans",
    "cannellini beans",
    "cannellini",
    "red beans",
    "small red beans",
    "dried red beans",
    "frijoles rojos",
    "pink beans",
    "dried pink beans",
    "anasazi beans",
    "bolita beans",
    "mayocoba beans",
    "adzuki beans",
    "dried mung beans",
    "dried cranberry beans",
    "dried borlotti beans",
    "dried fava beans",
    "dried broad beans",
    "dried soybeans",
    "chickpeas",
    "chickpea",
    "chick peas",
    "dried chickpeas",
    "garbanzo beans",
    "garbanzo bean",
    "garbanzos",
    "dried garbanzo beans",
    "dried lima beans",
    "dry lima beans",
    "dried limas",
    "dried butter beans",
    "dry butter beans",
    "dried romano beans",
    "dried peas",
    "dry peas",
    "dried pea",
    "whole dried peas",
    "dried green peas",
    "dried black-eyed peas",
    "dry black-eyed peas",
    "dried black-eyed beans",
    "dried cowpeas",
    "dried field peas",
    "dried crowder peas"};
constexpr sv a234[] = {"beans",
    "peas",
    "pea",
    "guisantes",
    "chicharos",
    "chícharos",
    "arvejas",
    "lima beans",
    "lima bean",
    "limas",
    "baby lima beans",
    "baby limas",
    "butter beans",
    "butter bean",
    "romano beans",
    "bush beans",
    "pole beans"};
constexpr int a235[] = {90};
constexpr jar_minutes a236[] = {{"pint", a190},
    {"quart", a235}};
constexpr table a237[] = {{a174, "hot", "mature dry seeds of any variety, fully rehydrated and pre-boiled", 1000, a236, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "One Extension copy asks for the long soak in the refrigerator, the guide for a cool place. An equipment maker's copy drops the 1-hour stand of the short soak; not used."}};
constexpr condition a238[] = {{"Soak the dry beans 12 to 18 hours in a cool place, best in the refrigerator; or boil them 2 minutes, take them off the heat and let them stand 1 hour.", {}, "beans rehydrated", "beans-not-rehydrated", true, false},
    {"Pour the soaking water away.", {}, "drained", "", false, false},
    {"Cover with fresh water and boil 30 minutes.", {}, "boiled before filling", "", false, false},
    {"Fill the jars with the hot beans and cover with the hot cooking water.", {}, "covered with liquid", "", false, false},
    {"Leave the beans whole: mashed or refried beans have no tested process.", {}, "", "low-acid-puree", false, false}};
constexpr sv a239[] = {"fresh lima beans",
    "fresh lima bean",
    "green lima beans",
    "green lima bean",
    "fresh limas",
    "green limas",
    "fresh shelled lima beans",
    "shelled green lima beans",
    "fresh baby lima beans"};
constexpr sv a240[] = {"beans",
    "lima beans",
    "lima bean",
    "limas",
    "baby lima beans",
    "baby limas",
    "butter beans",
    "butter bean",
    "bush beans",
    "pole beans"};
constexpr sv a241[] = {"small",
    "large"};
constexpr int a242[] = {50};
constexpr jar_minutes a243[] = {{"pint", a167},
    {"quart", a242}};
constexpr jar_minutes a244[] = {{"pint", a167}};
constexpr sv a245[] = {"small"};
constexpr jar_minutes a246[] = {{"quart", a242}};
constexpr sv a247[] = {"large"};
constexpr table a248[] = {{a241, "hot", "shelled green seeds", 1000, a243, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "An equipment maker's copy asks 1 1/4 in for every quart; the guide asks 1 in for hot pack."},
    {a241, "raw", "shelled green seeds, small or large", 1000, a244, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, ""},
    {a245, "raw", "shelled green seeds, small beans", 1500, a246, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "An equipment maker's copy asks 1 1/4 in for every quart; the guide asks 1 1/2 in for small beans."},
    {a247, "raw", "shelled green seeds, large beans", 1250, a246, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, ""}};
constexpr condition a249[] = {{"Use fresh green beans out of the pod, not dried ones.", {}, "", "", false, false},
    {"Heat the beans to a boil in water.", a80, "boiled before filling", "", false, false},
    {"Fill the jars loosely.", a80, "packed loosely", "", false, false},
    {"Fill the jars loosely; do not press or shake the beans down, for they swell.", a146, "packed loosely", "", false, false},
    {"In raw quarts small beans need more headspace than large ones, and both more than pints.", a146, "", "", false, false},
    {"Cover with boiling water.", {}, "covered with liquid", "", false, false}};
constexpr citation a250[] = {{"usda-guide-4", "4", "4-7"}};
constexpr sv a251[] = {"green beans",
    "green bean",
    "snap beans",
    "snap bean",
    "string beans",
    "string bean",
    "wax beans",
    "wax bean",
    "yellow wax beans",
    "french beans",
    "french bean",
    "haricots verts",
    "italian beans",
    "italian bean",
    "italian green beans",
    "romano green beans",
    "flat green beans",
    "ejotes",
    "judias verdes",
    "judías verdes",
    "chauchas",
    "porotos verdes",
    "green and wax beans"};
constexpr sv a252[] = {"beans",
    "romano beans",
    "bush beans",
    "pole beans"};
constexpr sv a253[] = {"whole",
    "1-inch-pieces"};
constexpr int a254[] = {20};
constexpr int a255[] = {25};
constexpr jar_minutes a256[] = {{"pint", a254},
    {"quart", a255}};
constexpr table a257[] = {{a253, "hot", "whole or cut in 1-inch pieces", 1000, a256, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Blog copies with 1/2 in headspace are not used."},
    {a253, "raw", "whole or cut in 1-inch pieces", 1000, a256, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Blog copies with 1/2 in headspace are not used."}};
constexpr condition a258[] = {{"Leave the pods whole or cut them in 1-inch pieces.", {}, "", "", false, false},
    {"Bring the beans to a boil in water.", a80, "boiled before filling", "", false, false},
    {"Boil them 5 minutes.", a80, "boiled 5 min", "", false, false},
    {"Fill the jars loosely.", a80, "packed loosely", "", false, false},
    {"Cover with the boiling cooking liquid or with boiling water.", a80, "covered with liquid", "", false, false},
    {"Fill the jars tightly.", a146, "packed tightly", "", false, false},
    {"Cover with boiling water.", a146, "covered with liquid", "", false, false}};
constexpr citation a259[] = {{"usda-guide-4", "4", "4-8"}};
constexpr sv a260[] = {"no-sugar-added pickled beets",
    "no sugar pickled beets",
    "sugar-free pickled beets",
    "pickled beets without sugar",
    "pickled beets with sucralose",
    "no-sugar-added pickled beetroot",
    "sugar-free pickled beetroot",
    "pickled beetroot without sugar",
    "betabel encurtido sin azucar",
    "betabel encurtido sin azúcar",
    "remolacha encurtida sin azucar",
    "remolacha encurtida sin azúcar"};
constexpr sv a261[] = {"sliced",
    "whole"};
constexpr jar_minutes a262[] = {{"pint", a143}};
constexpr table a263[] = {{a261, "hot", "cooked beets 2 to 2-1/2 inch across, 1/4 inch slices; or whole baby beets", 500, a262, "", "", "boiling-water-4", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a264[] = {{"Cook the beets and pour their cooking water away.", {}, "boiled before filling", "", false, false},
    {"Slip the skins off.", {}, "peeled", "", false, false},
    {"Take beets 2 to 2 1/2 inches across and cut them in 1/4-inch slices; only baby beets stay whole.", {}, "", "", false, false},
    {"The liquid is 2 parts of vinegar to 1 part of fresh water; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"At most 6 onions of 2 to 2 1/2 inches go with 7 lb of beets; they may be left out.", {}, "", "", false, false},
    {"Simmer the beets and onions in the liquid and fill the jars hot; take the spice bag out.", {}, "", "", false, false},
    {"Cover with the hot liquid.", {}, "covered with liquid", "", false, false},
    {"Pint jars or smaller: no quart process is printed for this recipe.", {}, "", "", false, false},
    {"Allowed changes: more vinegar, fewer beets or onions. Not allowed: less vinegar, more water, more beets or onions.", {}, "", "", false, false}};
constexpr sv a265[] = {"beet"};
constexpr sv a266[] = {"granular-sucralose"};
constexpr recipe_part a267[] = {{a265, "lb", {7, 1}, {7, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "2 to 2-1/2 inch across, cooked, 1/4 inch slices"},
    {a223, "piece", {4, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", "2 to 2-1/2 inch across, thinly sliced"},
    {a93, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a158, "tsp", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a266, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::other, false, false, false, "", "", ""},
    {a111, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", "fresh"},
    {a114, "piece", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "in spice bag"},
    {a112, "piece", {12, 1}, {12, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "in spice bag"}};
constexpr tested_recipe a268[] = {{"", "", "pint", 8, 8, a267}};
constexpr citation a269[] = {{"usda-guide-6", "6", "6-32"}};
constexpr sv a270[] = {"pickled beets",
    "pickled beet",
    "beet pickles",
    "pickled beetroot",
    "pickled beetroots",
    "beetroot pickle",
    "pickled sliced beets",
    "pickled sliced beetroot",
    "pickled baby beets",
    "pickled baby beetroot",
    "sweet pickled beets",
    "betabel encurtido",
    "betabeles encurtidos",
    "betabel en vinagre",
    "betabeles en vinagre",
    "remolacha encurtida",
    "remolachas encurtidas",
    "remolacha en vinagre",
    "remolachas en vinagre"};
constexpr jar_minutes a271[] = {{"pint", a143},
    {"quart", a143}};
constexpr table a272[] = {{a261, "hot", "cooked beets 2 to 2-1/2 inch across, 1/4 inch slices; or whole baby beets 1 to 1-1/2 inch", 500, a271, "", "", "boiling-water-4", {}, "seen", 2, true, "One copy of the 1994 text prints 45 minutes at 1,001 to 3,000 ft; four others print 35, so 45 is a slip."}};
constexpr condition a273[] = {{"Cook the beets and pour their cooking water away.", {}, "boiled before filling", "", false, false},
    {"Slip the skins off.", {}, "peeled", "", false, false},
    {"Take beets 2 to 2 1/2 inches across and cut them in 1/4-inch slices; only baby beets of 1 to 1 1/2 inches stay whole.", {}, "", "", false, false},
    {"The liquid is 2 parts of vinegar to 1 part of fresh water; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"At most 6 onions of 2 to 2 1/2 inches go with 7 lb of beets; they may be left out.", {}, "", "", false, false},
    {"Simmer the beets and onions in the liquid and fill the jars hot; take the spice bag out.", {}, "", "", false, false},
    {"Cover with the hot liquid.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer beets or onions, more sugar. Not allowed: less vinegar, more water, more beets or onions.", {}, "", "", false, false}};
constexpr recipe_part a274[] = {{a265, "lb", {7, 1}, {7, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "2 to 2-1/2 inch across, cooked, 1/4 inch slices"},
    {a93, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a158, "tsp", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a94, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a111, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", "fresh"},
    {a114, "piece", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "in spice bag"},
    {a112, "piece", {12, 1}, {12, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "in spice bag"},
    {a223, "piece", {4, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", "2 to 2-1/2 inch across, thinly sliced"}};
constexpr tested_recipe a275[] = {{"", "", "pint", 8, 8, a274}};
constexpr citation a276[] = {{"usda-guide-6", "6", "6-15"}};
constexpr sv a277[] = {"beets",
    "beet",
    "beetroot",
    "beetroots",
    "red beets",
    "baby beets",
    "betabel",
    "betabeles",
    "remolacha",
    "remolachas"};
constexpr sv a278[] = {"whole",
    "half-inch-cubes",
    "sliced"};
constexpr int a279[] = {35};
constexpr jar_minutes a280[] = {{"pint", a166},
    {"quart", a279}};
constexpr table a281[] = {{a278, "hot", "small whole, or 1/2-inch cubes or slices", 1000, a280, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Some copies of the 1994 text head the weighted table \"hot and raw\"; a misprint, no raw directions exist."}};
constexpr condition a282[] = {{"Boil the beets 15 to 25 minutes, with the root and an inch of stem on, until the skins slip.", {}, "boiled before filling", "", false, false},
    {"Peel them and trim off stems and roots.", {}, "peeled", "", false, false},
    {"Leave only small beets whole, best 1 to 2 inches across; cut the others in 1/2-inch cubes or slices, and halve or quarter very large slices.", {}, "", "", false, false},
    {"Use fresh hot water, not the water they were boiled in.", {}, "fresh water used", "", false, false},
    {"Cover the beets with it.", {}, "covered with liquid", "", false, false}};
constexpr citation a283[] = {{"usda-guide-4", "4", "4-9"}};
constexpr sv a284[] = {"pickled bell peppers",
    "pickled bell pepper",
    "bell pepper pickles",
    "pickled capsicum",
    "pickled capsicums",
    "pimientos morrones encurtidos",
    "pimiento morron encurtido",
    "pimiento morrón encurtido"};
constexpr sv a285[] = {"pickled peppers",
    "pickled pepper",
    "pimientos encurtidos",
    "pimientos en vinagre",
    "pickled green peppers",
    "pickled red peppers",
    "pickled yellow peppers",
    "pickled sweet peppers"};
constexpr sv a286[] = {"strips"};
constexpr jar_minutes a287[] = {{"half-pint", a30},
    {"pint", a30}};
constexpr table a288[] = {{a286, "hot", "bell peppers in strips, brought to a boil in the solution", 500, a287, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a289[] = {{"Wash the peppers, take out cores and seeds and cut them in strips.", {}, "", "", false, false},
    {"The liquid is equal parts of vinegar and water, boiled with the sugar; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"Bring the peppers to a boil in the liquid.", {}, "boiled before filling", "", false, false},
    {"Put at most 1/2 clove of garlic in a half-pint and 1 clove in a pint.", {}, "", "", false, false},
    {"Cover with the hot liquid.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer peppers or garlic, more sugar. Not allowed: less vinegar, more water or more peppers or garlic.", {}, "", "", false, false}};
constexpr sv a290[] = {"bell-pepper"};
constexpr recipe_part a291[] = {{a290, "lb", {7, 1}, {7, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "strips"},
    {a94, "cup", {35, 10}, {35, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a93, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a111, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a156, "clove", {9, 1}, {9, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "1/2 clove per half-pint, 1 per pint"},
    {a158, "tsp", {45, 10}, {45, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", "1/4 tsp per half-pint, 1/2 tsp per pint"}};
constexpr tested_recipe a292[] = {{"", "", "pint", 9, 9, a291}};
constexpr citation a293[] = {{"usda-guide-6", "6", "6-21"}};
constexpr sv a294[] = {"whole berries",
    "blackberries",
    "blackberry",
    "blueberries",
    "blueberry",
    "currants",
    "red currants",
    "black currants",
    "blackcurrants",
    "redcurrants",
    "dewberries",
    "dewberry",
    "gooseberries",
    "gooseberry",
    "huckleberries",
    "huckleberry",
    "loganberries",
    "loganberry",
    "raspberries",
    "raspberry",
    "red raspberries",
    "black raspberries",
    "zarzamoras",
    "zarzamora",
    "frambuesas",
    "frambuesa",
    "arándanos azules",
    "arandanos azules",
    "grosellas"};
constexpr jar_minutes a295[] = {{"pint", a132},
    {"quart", a132}};
constexpr table a296[] = {{a174, "hot", "whole berries in juice, water or syrup", 500, a295, "", "", "boiling-water-4", {}, "seen", 2, true, "The guide also lists elderberries. Newer Extension advice finds about pH 4.8 and no process, so they are left out; one Extension answer treats those of its own state like blackberries. The guide lists mulberries too; their kinds run from pH 3.4 to 5.6, so they are left out as well. Extension sheets split the band above 6,000 ft; not used."},
    {a174, "hot", "whole berries in juice, water or syrup", 500, a124, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, ""},
    {a174, "raw", "whole berries in juice, water or syrup", 500, a133, "", "", "boiling-water-4", {}, "seen", 2, true, ""},
    {a174, "raw", "whole berries in juice, water or syrup", 500, a135, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, ""}};
constexpr condition a297[] = {{"Only the berries named for this table: elderberries are low-acid and have no process, and mulberries can be over pH 4.6; freeze both.", {}, "", "", false, false},
    {"Strawberries are not in this table.", {}, "", "", false, false},
    {"Only blueberries, currants, gooseberries and huckleberries are meant for the hot pack; pack the other berries raw.", a80, "", "", false, false},
    {"Heat them 30 seconds in boiling water and drain.", a80, "blanched", "", false, false},
    {"Put 1/2 cup of hot water, juice or syrup in each jar and fill it with the berries.", {}, "", "", false, false},
    {"Cover with hot water, juice or syrup.", {}, "covered with liquid", "", false, false},
    {"Sugar is for flavor, color and shape; it may be left out.", {}, "", "", false, false}};
constexpr citation a298[] = {{"usda-guide-2", "2", "2-10"},
    {"minnesota-elderberries", "", ""}};
constexpr sv a299[] = {"berry syrup",
    "berry syrups",
    "blueberry syrup",
    "cherry syrup",
    "grape syrup",
    "raspberry syrup",
    "strawberry syrup",
    "jarabe de frambuesa",
    "jarabe de fresa"};
constexpr table a300[] = {{a86, "hot", "juice of blueberries, cherries, grapes, raspberries or strawberries with sugar; may hold 1 to 2 cups of whole fruit", 500, a108, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a301[] = {{"Use only blueberries, cherries, grapes, raspberries or strawberries, fresh or frozen. No acid is added, so no other fruit may take their place; elderberries have no process.", {}, "", "", false, false},
    {"Crush the fruit, simmer it soft and strain the juice; 6 1/2 cups of fruit give 4 1/2 to 5 cups.", {}, "strained", "", false, false},
    {"Simmer the juice with the sugar 1 minute, and skim it.", {}, "boiled before filling", "", false, false},
    {"Of the fruit, 1 or 2 cups may be saved and simmered whole in the syrup.", {}, "", "", false, false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false, false}};
constexpr sv a302[] = {"blueberry",
    "cherry",
    "grape",
    "raspberry",
    "strawberry"};
constexpr sv a303[] = {"whole-fruit-pieces"};
constexpr recipe_part a304[] = {{a302, "cup", {65, 10}, {65, 10}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh or frozen"},
    {a94, "cup", {675, 100}, {675, 100}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a303, "cup", {1, 1}, {2, 1}, "", {0, 1}, part_limit::between, part_role::acid_food, false, true, false, "", "", ""}};
constexpr tested_recipe a305[] = {{"", "", "half-pint", 9, 9, a304}};
constexpr sv a306[] = {"cantaloupe pickles without sugar",
    "cantaloupe pickles no sugar",
    "sugar-free cantaloupe pickles",
    "sugarless cantaloupe pickles"};
constexpr sv a307[] = {"pickled cantaloupe",
    "cantaloupe pickle",
    "pickled cantaloupe cubes"};
constexpr table a308[] = {{a86, "hot", "1-inch cubes of under-ripe cantaloupe in vinegar with heat-stable sweetener", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, "Read in two text copies of the 2015 guide: the recipe has no table of its own and follows that of the cantaloupe pickles above it."}};
constexpr condition a309[] = {{"Plain cantaloupe and other melons have no process; only the pickled cubes of the printed recipe do.", {}, "", "", false, false},
    {"Use cantaloupe that is still under-ripe and firm, in 1-inch cubes.", {}, "under-ripe", "", false, false},
    {"Let the cubes stand about 18 hours in the refrigerator in the spiced vinegar and water.", {}, "", "", false, false},
    {"The 5 % cider vinegar may not be cut, and the water and melon may not be raised; spices may be changed.", {}, "", "", false, false},
    {"Cook the cubes in the vinegar with the sweetener and fill the jars while they are hot.", {}, "boiled before filling", "", false, false},
    {"Cover the cubes with the hot liquid.", {}, "covered with liquid", "", false, false},
    {"Pint jars and smaller only: no quart process exists.", {}, "", "", false, false}};
constexpr sv a310[] = {"cantaloupe"};
constexpr sv a311[] = {"ground-ginger"};
constexpr recipe_part a312[] = {{a310, "lb", {6, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "1 inch cubes, full size but nearly fully green, firm"},
    {a211, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a114, "piece", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "1 inch"},
    {a97, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a311, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a93, "cup", {45, 10}, {45, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "cider"},
    {a111, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a266, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""}};
constexpr tested_recipe a313[] = {{"", "", "pint", 4, 4, a312}};
constexpr citation a314[] = {{"usda-guide-2", "2", "2-12"}};
constexpr sv a315[] = {"cantaloupe pickles",
    "sweet cantaloupe pickles",
    "spiced cantaloupe pickles",
    "cantaloupe pickles with sugar"};
constexpr table a316[] = {{a86, "hot", "1-inch cubes of under-ripe cantaloupe in vinegar syrup", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, "Read in two text copies of the 2015 guide, page 2-12: minutes, jar, headspace and recipe. Pieces are filled to 1 inch and syrup to 1/2 inch. Other pages print 10 or 20 min for recipes of their own; not used."}};
constexpr condition a317[] = {{"Plain cantaloupe and other melons have no process; only the pickled cubes of the printed recipe do.", {}, "", "", false, false},
    {"Use cantaloupe that is full size but nearly all green, firm and under-ripe.", {}, "under-ripe", "", false, false},
    {"Cut it in 1-inch cubes.", {}, "", "", false, false},
    {"Let the cubes stand about 18 hours in the refrigerator in the spiced vinegar and water.", {}, "", "", false, false},
    {"The 5 % cider vinegar may not be cut, and the water and melon may not be raised; spices may be changed.", {}, "", "", false, false},
    {"Cook the cubes in the vinegar with the sugar and fill the jars while they are hot.", {}, "boiled before filling", "", false, false},
    {"Cover the cubes with the hot syrup.", {}, "covered with liquid", "", false, false},
    {"Pint jars and smaller only: no quart process exists.", {}, "", "", false, false}};
constexpr recipe_part a318[] = {{a310, "lb", {5, 1}, {5, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "1 inch cubes, full size but nearly fully green, firm"},
    {a211, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a114, "piece", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "1 inch"},
    {a97, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a311, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a93, "cup", {45, 10}, {45, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "cider"},
    {a111, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a94, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", "white"},
    {a95, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", "light, packed"}};
constexpr tested_recipe a319[] = {{"", "", "pint", 4, 4, a318}};
constexpr sv a320[] = {"pickled carrots",
    "pickled carrot",
    "carrot pickles",
    "pickled sliced carrots",
    "pickled carrot rounds",
    "pickled carrot slices"};
constexpr citation a321[] = {{"missouri-pickled-carrots", "", ""}};
constexpr table a322[] = {{a120, "hot", "peeled carrots in rounds about 1/2 inch thick, simmered to half-cooked", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once. The table names pints only."},
    {a120, "hot", "peeled carrots in rounds about 1/2 inch thick, simmered to half-cooked", 500, a177, "", "", "boiling-water-3", a321, "seen", 1, true, "All its numbers were read, once, on an Extension page that lists half-pints with the pint times; the USDA table names pints only."}};
constexpr condition a323[] = {{"Wash and peel the carrots.", {}, "peeled", "", false, false},
    {"Cut them in rounds about 1/2 inch thick.", {}, "", "", false, false},
    {"The liquid is 5 1/2 cups of vinegar to 1 cup of water; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"Simmer the carrots in the pickling liquid until they are half-cooked.", {}, "boiled before filling", "", false, false},
    {"Fill the carrots to 1 inch from the rim.", {}, "", "", false, false},
    {"Cover with the hot liquid to 1/2 inch from the rim.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer carrots, more sugar. Not allowed: less vinegar, more water or more carrots.", {}, "", "", false, false}};
constexpr sv a324[] = {"carrot"};
constexpr recipe_part a325[] = {{a324, "lb", {275, 100}, {275, 100}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "peeled weight, rounds 1/2 inch"},
    {a93, "cup", {55, 10}, {55, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a111, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a94, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a158, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a182, "tsp", {8, 1}, {8, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "2 tsp per pint"},
    {a183, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "1 tsp per pint"}};
constexpr tested_recipe a326[] = {{"", "", "pint", 4, 4, a325}};
constexpr sv a327[] = {"carrots",
    "carrot",
    "sliced carrots",
    "diced carrots",
    "zanahoria",
    "zanahorias"};
constexpr sv a328[] = {"sliced",
    "diced"};
constexpr jar_minutes a329[] = {{"pint", a255},
    {"quart", a166}};
constexpr table a330[] = {{a328, "hot", "peeled, sliced or diced", 1000, a329, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, ""},
    {a328, "raw", "peeled, sliced or diced", 1000, a329, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "An undated bulletin lets the liquid reach within 1/2 in; the guide asks 1 in."}};
constexpr condition a331[] = {{"Wash the carrots, peel them and wash them again.", {}, "peeled", "", false, false},
    {"Slice or dice them; roots of 1 to 1 1/4 inches across are best.", {}, "", "", false, false},
    {"Bring them to a boil in water.", a80, "boiled before filling", "", false, false},
    {"Simmer them 5 minutes.", a80, "boiled 5 min", "", false, false},
    {"Cover with the hot cooking liquid or with hot water.", a80, "covered with liquid", "", false, false},
    {"Fill the jars tightly.", a146, "packed tightly", "", false, false},
    {"Cover with hot water.", a146, "covered with liquid", "", false, false}};
constexpr citation a332[] = {{"usda-guide-4", "4", "4-10"}};
constexpr sv a333[] = {"pickled cauliflower",
    "cauliflower pickles",
    "pickled cauliflower florets",
    "pickled cauliflower flowerets",
    "pickled brussels sprouts",
    "pickled brussel sprouts",
    "brussels sprout pickles",
    "pickled cauliflower or brussels sprouts",
    "pickled cauliflower and brussels sprouts",
    "coliflor encurtida",
    "coliflor en vinagre",
    "coles de bruselas encurtidas",
    "repollitos de bruselas encurtidos"};
constexpr sv a334[] = {"cauliflower-flowerets",
    "brussels-sprouts-whole"};
constexpr table a335[] = {{a334, "hot", "cauliflower flowerets 1 to 2 inch (boiled 3 min in salt water) or small Brussels sprouts (boiled 4 min)", 500, a108, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a336[] = {{"Break the cauliflower in flowerets of 1 to 2 inches; take small Brussels sprouts and leave them whole.", {}, "", "", false, false},
    {"Boil them in salt water, flowerets 3 minutes and sprouts 4 minutes.", {}, "blanched", "", false, false},
    {"Drain them.", {}, "drained", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. No water goes into this pickle.", {}, "", "", false, false},
    {"Bring vinegar, sugar, onion, red pepper and spices to a boil.", {}, "", "", false, false},
    {"Fill the jars and cover with the hot liquid.", {}, "covered with liquid", "", false, false},
    {"Cauliflower and sprouts may replace each other, 12 cups in all. Allowed: more vinegar, fewer vegetables, more sugar. Not allowed: less vinegar, added water, more vegetables.", {}, "", "", false, false}};
constexpr sv a337[] = {"cauliflower",
    "brussels-sprouts"};
constexpr sv a338[] = {"red-bell-pepper"};
constexpr sv a339[] = {"turmeric"};
constexpr recipe_part a340[] = {{a337, "cup", {12, 1}, {12, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "flowerets 1 to 2 inch, or small sprouts"},
    {a93, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a94, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a223, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "thinly sliced"},
    {a338, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "diced"},
    {a182, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a183, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a339, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a211, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a341[] = {{"", "", "half-pint", 9, 9, a340}};
constexpr citation a342[] = {{"usda-guide-6", "6", "6-17"}};
constexpr sv a343[] = {"cayenne pepper sauce",
    "cayenne sauce",
    "cayenne hot sauce",
    "cayenne pepper hot sauce",
    "salsa de chile cayena",
    "salsa de cayena"};
constexpr sv a344[] = {"hot sauce",
    "hot sauces",
    "hot pepper sauce",
    "hot pepper sauces",
    "hot chile sauce",
    "hot chili sauce",
    "chilli sauce",
    "salsa picante",
    "salsa de chile picante"};
constexpr table a345[] = {{a86, "hot", "hot peppers, onions and canned diced tomatoes, pureed", 500, a152, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a346[] = {{"Use canned diced tomatoes with their liquid.", {}, "", "", false, false},
    {"Never take more peppers, onions or garlic than printed, nor fewer tomatoes.", {}, "", "", false, false},
    {"Peppers of any kind may be used, their total weight unchanged.", {}, "", "", false, false},
    {"Use no more fresh cilantro than printed.", {}, "", "", false, false},
    {"Add no other vegetable.", {}, "", "", false, false},
    {"Use cider vinegar of at least 5 %, not homemade, and never less than printed.", {}, "", "", false, false},
    {"Add no more water than printed.", {}, "", "", false, false},
    {"Wear gloves for hot peppers.", {}, "", "", false, false},
    {"Boil everything 1 hour, then simmer 1 hour.", {}, "boiled before filling", "", false, false},
    {"Puree the sauce.", {}, "", "", false, false},
    {"Heat it again just to a boil and fill the jars hot.", {}, "reheated to a boil", "", false, false},
    {"Add no flour, starch or other thickener.", {}, "not thickened", "", false, false},
    {"Pint jars at most: no quart process is published.", {}, "", "", false, false}};
constexpr sv a347[] = {"hot-pepper"};
constexpr sv a348[] = {"fresh-cilantro"};
constexpr sv a349[] = {"canned-diced-tomato"};
constexpr recipe_part a350[] = {{a347, "lb", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "any kind, sliced"},
    {a156, "cup", {1, 3}, {1, 3}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "minced"},
    {a223, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "sliced"},
    {a348, "cup", {1, 3}, {1, 3}, "", {0, 1}, part_limit::most, part_role::spice, false, false, false, "", "", "fresh, stemmed, chopped"},
    {a349, "oz", {84, 1}, {84, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "3 cans of 28 oz, undrained"},
    {a93, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "cider"},
    {a111, "cup", {25, 10}, {25, 10}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""}};
constexpr tested_recipe a351[] = {{"", "", "pint", 5, 5, a350}};
constexpr citation a352[] = {{"usda-guide-3", "3", "3-17"},
    {"extension-pepper-answer", "", ""}};
constexpr sv a353[] = {"chayote and jicama slaw",
    "chayote jicama slaw",
    "jicama and chayote slaw",
    "jicama chayote slaw",
    "chayote slaw",
    "jicama slaw",
    "pickled chayote and jicama slaw",
    "ensalada de chayote y jicama",
    "ensalada de chayote y jícama"};
constexpr table a354[] = {{a86, "hot", "julienned jicama and chayote with chopped peppers", 500, a177, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a355[] = {{"Wash and peel the chayote and the jicama.", {}, "peeled", "", false, false},
    {"Cut them in thin strips, and chop the peppers fine.", {}, "", "", false, false},
    {"The liquid is equal parts of cider vinegar and water; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"Bring the slaw to a boil in the liquid and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Cover with the hot liquid.", {}, "covered with liquid", "", false, false},
    {"Half-pint jars only: no process exists for a larger jar.", {}, "", "", false, false},
    {"Allowed changes: more vinegar, fewer vegetables, more sugar. Not allowed: less vinegar, more water or more vegetables.", {}, "", "", false, false}};
constexpr sv a356[] = {"jicama"};
constexpr sv a357[] = {"chayote"};
constexpr recipe_part a358[] = {{a356, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "julienned"},
    {a357, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "julienned"},
    {a338, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a347, "piece", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a111, "cup", {25, 10}, {25, 10}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a93, "cup", {25, 10}, {25, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "cider"},
    {a94, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", "white"},
    {a158, "tsp", {35, 10}, {35, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a183, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""}};
constexpr tested_recipe a359[] = {{"", "", "half-pint", 6, 6, a358}};
constexpr sv a360[] = {"cherries",
    "cherry",
    "whole cherries",
    "pitted cherries",
    "sweet cherries",
    "sour cherries",
    "tart cherries",
    "pie cherries",
    "morello cherries",
    "bing cherries",
    "stoned cherries",
    "cerezas",
    "cereza",
    "guindas"};
constexpr sv a361[] = {"whole",
    "pitted"};
constexpr jar_minutes a362[] = {{"pint", a140},
    {"quart", a140}};
constexpr table a363[] = {{a361, "hot", "whole, pitted or not", 500, a133, "", "", "boiling-water-4", {}, "seen", 2, true, ""},
    {a361, "hot", "whole, pitted or not", 500, a135, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, ""},
    {a361, "raw", "whole, pitted or not", 500, a362, "", "", "boiling-water-4", {}, "seen", 2, true, ""},
    {a361, "raw", "whole, pitted or not", 500, a142, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, ""}};
constexpr condition a364[] = {{"Stem the cherries; take the pits out or leave them in.", {}, "", "", false, false},
    {"Prick cherries that keep their pits, so that they do not burst.", {}, "pricked", "", false, false},
    {"Heat the cherries with 1/2 cup of water, apple juice, white grape juice or syrup to the quart, covered, to a boil.", a80, "boiled before filling", "", false, false},
    {"Fill the jars with the hot cherries and their hot liquid.", a80, "covered with liquid", "", false, false},
    {"Put 1/2 cup of hot water, juice or syrup in each jar, fill it with raw cherries and cover with more of it.", a146, "covered with liquid", "", false, false},
    {"Sugar is for flavor, color and shape; it may be left out.", {}, "", "", false, false}};
constexpr sv a365[] = {"chicken with bones",
    "bone-in chicken",
    "chicken on the bone",
    "bone-in chicken pieces",
    "rabbit with bones",
    "bone-in rabbit",
    "rabbit on the bone",
    "chicken or rabbit with bones",
    "pollo con hueso",
    "conejo con hueso"};
constexpr sv a366[] = {"chicken",
    "chickens",
    "chicken pieces",
    "chicken meat",
    "chicken breast",
    "chicken breasts",
    "chicken thighs",
    "rabbit",
    "rabbits",
    "rabbit meat",
    "poultry",
    "pollo",
    "conejo"};
constexpr sv a367[] = {"with-bones",
    "pieces"};
constexpr table a368[] = {{a367, "hot", "pieces cut to fit the jar, with bones", 1250, a191, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Blog copies print 1 in headspace; the guide asks 1 1/4 in."},
    {a367, "raw", "pieces cut to fit the jar, with bones", 1250, a191, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Blog copies print 1 in headspace; the guide asks 1 1/4 in."}};
constexpr condition a369[] = {{"Use fresh meat, or thawed in the refrigerator; never cured, brined, corned or smoked meat.", {}, "not smoked", "", false, false},
    {"Chill a dressed chicken 6 to 12 hours.", {}, "chilled", "", false, false},
    {"Soak a dressed rabbit 1 hour in water with 1 tbsp of salt to the quart, and rinse it.", {}, "", "", false, false},
    {"Cut off excess fat.", {}, "fat removed", "", false, false},
    {"Cut it in pieces that fit the jar and leave the bones in: this time is too short for boneless meat.", {}, "bones left in", "", false, false},
    {"Leave the giblets out.", {}, "", "", false, false},
    {"Use no flour, batter or other thickener.", {}, "not thickened", "", false, false},
    {"Boil, steam or bake the meat until about two thirds done.", a80, "meat precooked", "", false, false},
    {"Cover with hot broth.", a80, "covered with liquid", "", false, false},
    {"The pieces go in raw.", a146, "meat not precooked", "", false, false},
    {"Fill the jars loosely.", a146, "packed loosely", "", false, false},
    {"Add no liquid.", a146, "no liquid added", "", false, false}};
constexpr citation a370[] = {{"usda-guide-5", "5", "5-5"}};
constexpr sv a371[] = {"chicken without bones",
    "boneless chicken",
    "boned chicken",
    "boneless chicken breast",
    "boneless chicken breasts",
    "boneless chicken thighs",
    "boneless skinless chicken breasts",
    "rabbit without bones",
    "boneless rabbit",
    "chicken or rabbit without bones",
    "pollo sin hueso",
    "pollo deshuesado",
    "conejo deshuesado"};
constexpr sv a372[] = {"without-bones",
    "pieces"};
constexpr table a373[] = {{a372, "hot", "pieces cut to fit the jar, without bones", 1250, a236, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Blog copies print 1 in headspace; the guide asks 1 1/4 in."},
    {a372, "raw", "pieces cut to fit the jar, without bones", 1250, a236, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Blog copies print 1 in headspace; the guide asks 1 1/4 in."}};
constexpr condition a374[] = {{"Use fresh meat, or thawed in the refrigerator; never cured, brined, corned or smoked meat.", {}, "not smoked", "", false, false},
    {"Chill a dressed chicken 6 to 12 hours.", {}, "chilled", "", false, false},
    {"Soak a dressed rabbit 1 hour in water with 1 tbsp of salt to the quart, and rinse it.", {}, "", "", false, false},
    {"Cut off excess fat.", {}, "fat removed", "", false, false},
    {"Take the meat off the bones and cut it in pieces that fit the jar.", {}, "bones removed", "", false, false},
    {"Leave the giblets out.", {}, "", "", false, false},
    {"Use no flour, batter or other thickener.", {}, "not thickened", "", false, false},
    {"Boil, steam or bake the meat until about two thirds done.", a80, "meat precooked", "", false, false},
    {"Cover with hot broth.", a80, "covered with liquid", "", false, false},
    {"The pieces go in raw.", a146, "meat not precooked", "", false, false},
    {"Fill the jars loosely.", a146, "packed loosely", "", false, false},
    {"Add no liquid.", a146, "no liquid added", "", false, false}};
constexpr sv a375[] = {"chile con carne",
    "chili con carne",
    "chilli con carne",
    "chili con carne with beans",
    "chile con carne with beans",
    "chili with beef and beans"};
constexpr sv a376[] = {"chili",
    "chile",
    "chilli"};
constexpr jar_minutes a377[] = {{"pint", a190}};
constexpr table a378[] = {{a86, "hot", "ground beef, beans, tomatoes; fixed USDA recipe, 9 pints", 1000, a377, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Blogs and private lists with 90 min for quarts are not published tests. One Extension page stresses that the time belongs to the printed recipe, not to a chili of one's own."}};
constexpr condition a379[] = {{"Keep to the printed recipe: a chili of your own has no tested process.", {}, "", "", false, false},
    {"Soak the dried beans 12 to 18 hours in cold water in a cool place and simmer them 30 minutes in fresh water.", {}, "beans rehydrated", "beans-not-rehydrated", true, false},
    {"Pour away the soaking water and the water they were cooked in.", {}, "drained", "", false, false},
    {"Brown the ground beef with the onions and peppers.", {}, "meat precooked", "", false, false},
    {"Drain off the fat.", {}, "fat removed", "", false, false},
    {"Add the tomatoes, the beans and the seasoning and bring to a simmer.", {}, "boiled before filling", "", false, false},
    {"Simmer 5 minutes.", {}, "boiled 5 min", "", false, false},
    {"Do not thicken it.", {}, "not thickened", "", false, false},
    {"Pint jars at most: no quart process exists.", {}, "", "", false, false}};
constexpr sv a380[] = {"ground-beef"};
constexpr sv a381[] = {"dried-pinto-bean",
    "dried-red-kidney-bean"};
constexpr sv a382[] = {"pepper"};
constexpr sv a383[] = {"black-pepper"};
constexpr sv a384[] = {"chili-powder"};
constexpr sv a385[] = {"tomato"};
constexpr recipe_part a386[] = {{a380, "lb", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "browned, fat drained"},
    {a381, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "dry, soaked 12-18 h, boiled 30 min, drained"},
    {a111, "cup", {55, 10}, {55, 10}, "", {0, 1}, part_limit::free, part_role::water, false, false, true, "", "", "to boil the beans"},
    {a198, "tsp", {5, 1}, {5, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", "2 with the beans, 3 with the meat"},
    {a223, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a382, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", "chopped, any kind"},
    {a383, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a384, "tbsp", {3, 1}, {6, 1}, "", {0, 1}, part_limit::between, part_role::spice, false, false, false, "", "", ""},
    {a385, "quart", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", "crushed or whole"}};
constexpr tested_recipe a387[] = {{"", "", "pint", 9, 9, a386}};
constexpr citation a388[] = {{"usda-guide-5", "5", "5-8"}};
constexpr sv a389[] = {"cranberry orange chutney",
    "orange cranberry chutney",
    "cranberry and orange chutney",
    "cranberry chutney",
    "cranberry chutney with orange"};
constexpr sv a390[] = {"chutney",
    "chutneys",
    "fruit chutney"};
constexpr jar_minutes a391[] = {{"half-pint", a87}};
constexpr table a392[] = {{a86, "hot", "simmered chutney", 500, a391, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a393[] = {{"Keep to the printed recipe: the 5 % vinegar and the orange juice may not be cut, and no more onion, raisins or fresh ginger may go in. Dried spices may be changed.", {}, "", "", false, false},
    {"Bring everything to a boil and simmer until the cranberries are tender, about 15 minutes; take the cinnamon out.", {}, "boiled before filling", "", false, false},
    {"Fill the jars while it is hot.", {}, "", "", false, false},
    {"Half-pint jars only: no process exists for larger ones.", {}, "", "", false, false}};
constexpr sv a394[] = {"cranberry"};
constexpr sv a395[] = {"golden-raisin"};
constexpr sv a396[] = {"orange-juice"};
constexpr sv a397[] = {"fresh-ginger"};
constexpr recipe_part a398[] = {{a394, "oz", {24, 1}, {24, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh, whole"},
    {a223, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a395, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::acid_food, false, false, false, "", "", ""},
    {a94, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a95, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", "packed"},
    {a93, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a396, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", ""},
    {a397, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "fresh, peeled, grated"},
    {a114, "piece", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "taken out"}};
constexpr tested_recipe a399[] = {{"", "", "half-pint", 8, 8, a398}};
constexpr citation a400[] = {{"usda-guide-2", "2", "2-13"}};
constexpr sv a401[] = {"mango chutney",
    "mango chutneys",
    "green mango chutney",
    "unripe mango chutney",
    "chutney de mango"};
constexpr table a402[] = {{a86, "hot", "chopped unripe hard mango with onion, vinegar, sugar, raisins", 500, a108, "", "", "boiling-water-3", {}, "seen", 2, true, "The times were read in a copy whose 1/4 inch of headspace comes from the text of mango sauce, pasted in by mistake; the 1/2 inch and the 10 min for pints were read on a page of a state program."}};
constexpr condition a403[] = {{"Use only mango that is hard and unripe; ripe mango is low-acid and does not belong in this recipe.", {}, "under-ripe", "", false, false},
    {"Wear gloves: raw green mango can irritate the skin like poison ivy.", {}, "", "", false, false},
    {"Peel and chop the mango.", {}, "peeled", "", false, false},
    {"Keep to the printed recipe: the 5 % white vinegar may not be cut, and no more onion, garlic, fresh ginger or raisins may go in. Sugar and dried spices may be changed.", {}, "", "", false, false},
    {"Boil the vinegar and sugar 5 minutes, add the rest, bring back to a boil and simmer 25 minutes, stirring often.", {}, "boiled before filling", "", false, false},
    {"Fill the jars while it is hot.", {}, "", "", false, false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false, false}};
constexpr sv a404[] = {"green-mango"};
constexpr recipe_part a405[] = {{a404, "cup", {11, 1}, {11, 1}, "lb", {4, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "hard, unripe, chopped"},
    {a223, "cup", {25, 10}, {25, 10}, "lb", {75, 100}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a397, "tbsp", {25, 10}, {25, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "fresh, grated"},
    {a156, "tbsp", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "fresh, finely chopped"},
    {a94, "cup", {45, 10}, {45, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a93, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a395, "cup", {25, 10}, {25, 10}, "", {0, 1}, part_limit::most, part_role::acid_food, false, false, false, "", "", ""},
    {a158, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a384, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a406[] = {{"", "", "pint", 6, 6, a405}};
constexpr citation a407[] = {{"usda-guide-2", "2", "2-16"}};
constexpr sv a408[] = {"clams",
    "clam",
    "whole clams",
    "minced clams",
    "shelled clams",
    "clam meat",
    "almeja",
    "almejas"};
constexpr sv a409[] = {"whole",
    "minced"};
constexpr int a410[] = {60};
constexpr int a411[] = {70};
constexpr jar_minutes a412[] = {{"half-pint", a410},
    {"pint", a411}};
constexpr table a413[] = {{a409, "hot", "whole or minced meats", 1000, a412, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, ""}};
constexpr condition a414[] = {{"Keep the clams alive on ice until you can them.", {}, "", "", false, false},
    {"Scrub them, steam 5 minutes and take out the meat; save the juice.", {}, "meat precooked", "", false, false},
    {"Wash the meat in water with 1 tsp of salt to the quart and rinse it.", {}, "", "", false, false},
    {"Boil the meat 2 minutes.", {}, "boiled before filling", "", false, false},
    {"That water holds 2 tbsp of lemon juice or 1/2 tsp of citric acid to the gallon.", {}, "boiled in acidified water", "", false, false},
    {"Drain it; for minced clams grind it.", {}, "drained", "", false, false},
    {"Fill the jars loosely.", {}, "packed loosely", "", false, false},
    {"Cover with hot clam juice, and boiling water if it runs short.", {}, "covered with liquid", "", false, false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false, false}};
constexpr citation a415[] = {{"usda-guide-5", "5", "5-9"}};
constexpr sv a416[] = {"cream style corn",
    "cream-style corn",
    "cream corn"};
constexpr sv a417[] = {"corn",
    "sweet corn",
    "sweetcorn",
    "maize",
    "elote",
    "elotes",
    "maiz",
    "maíz"};
constexpr sv a418[] = {"cream-style"};
constexpr int a419[] = {85};
constexpr jar_minutes a420[] = {{"pint", a419}};
constexpr table a421[] = {{a418, "hot", "kernels cut at mid-depth plus cob scrapings", 1000, a420, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Copies of the 1994 text add a raw row of 95 min to the weighted table alone, without directions; left out. One state sheet prints 55 min in its dial table; every other copy has 85, which stands."}};
constexpr condition a422[] = {{"Scald the husked ears 4 minutes in boiling water.", {}, "blanched", "", false, false},
    {"Cut the kernels off through the middle and scrape the cobs.", {}, "", "", false, false},
    {"Add 2 cups of boiling water to each quart of corn and scrapings.", {}, "covered with liquid", "", false, false},
    {"Heat it to a boil.", {}, "boiled before filling", "", false, false},
    {"Only corn, water and, if liked, salt go in: no milk, cream, flour or starch.", {}, "not thickened", "", false, false},
    {"No quart process exists: such thick food heats too slowly in the middle of a large jar.", {}, "", "", false, false}};
constexpr sv a423[] = {"whole kernel corn",
    "whole-kernel corn",
    "corn kernels",
    "kernel corn",
    "cut corn",
    "corn cut off the cob",
    "corn off the cob",
    "granos de elote"};
constexpr sv a424[] = {"kernels"};
constexpr int a425[] = {55};
constexpr jar_minutes a426[] = {{"pint", a425},
    {"quart", a419}};
constexpr table a427[] = {{a424, "hot", "kernels cut at about 3/4 depth, cob not scraped", 1000, a426, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "An undated bulletin prints 2/3 depth and 2 cups of water to the quart; the guide has 3/4 and 1 cup."},
    {a424, "raw", "kernels cut at about 3/4 depth, cob not scraped", 1000, a426, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, ""}};
constexpr condition a428[] = {{"Scald the husked ears 3 minutes in boiling water.", {}, "blanched", "", false, false},
    {"Cut the kernels off at about 3/4 of their depth; never scrape the cob.", {}, "", "", false, false},
    {"Add 1 cup of hot water to each quart of kernels and heat it to a boil.", a80, "boiled before filling", "", false, false},
    {"Simmer it 5 minutes.", a80, "boiled 5 min", "", false, false},
    {"Fill the jars with the corn and its cooking liquid.", a80, "covered with liquid", "", false, false},
    {"Fill the jars without shaking or pressing down.", a146, "packed loosely", "", false, false},
    {"Cover with fresh boiling water.", a146, "covered with liquid", "", false, false}};
constexpr citation a429[] = {{"usda-guide-4", "4", "4-11"}};
constexpr sv a430[] = {"spiced crab apples",
    "spiced crabapples",
    "spiced crab apple",
    "pickled crab apples",
    "pickled crabapples",
    "crab apple pickles",
    "crabapple pickles"};
constexpr jar_minutes a431[] = {{"pint", a121}};
constexpr table a432[] = {{a86, "hot", "whole crab apples in spiced vinegar syrup", 500, a431, "", "", "boiling-water-4", {}, "seen", 2, true, ""}};
constexpr condition a433[] = {{"Keep to the printed recipe: the 5 % vinegar may not be cut and the water may not be raised. Sugar and spices may be changed.", {}, "", "", false, false},
    {"Leave the stems on and prick the skin of each crab apple.", {}, "pricked", "", false, false},
    {"Boil the crab apples 2 minutes in the vinegar syrup, a third of them at a time.", {}, "boiled before filling", "", false, false},
    {"Let them stand overnight, covered, in the hot syrup with the spice bag; then take the bag out.", {}, "", "", false, false},
    {"Bring the syrup back to a boil.", {}, "reheated to a boil", "", false, false},
    {"Fill the jars with the crab apples and cover with the hot syrup.", {}, "covered with liquid", "", false, false},
    {"Pint jars and smaller only: no quart process exists.", {}, "", "", false, false}};
constexpr sv a434[] = {"crab-apple"};
constexpr recipe_part a435[] = {{a434, "lb", {5, 1}, {5, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "whole, pricked"},
    {a93, "cup", {45, 10}, {45, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "printed as apple vinegar"},
    {a111, "cup", {375, 100}, {375, 100}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a94, "cup", {75, 10}, {75, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a112, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a114, "piece", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a397, "piece", {6, 1}, {6, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "fresh, 1/2 inch cubes, in spice bag, taken out"}};
constexpr tested_recipe a436[] = {{"", "", "pint", 9, 9, a435}};
constexpr sv a437[] = {"king crab",
    "king crabs",
    "king crab meat",
    "king crabmeat",
    "dungeness crab",
    "dungeness crabs",
    "dungeness crab meat",
    "dungeness crabmeat",
    "king and dungeness crab meat"};
constexpr sv a438[] = {"picked-meat"};
constexpr int a439[] = {80};
constexpr jar_minutes a440[] = {{"half-pint", a411},
    {"pint", a439}};
constexpr table a441[] = {{a438, "hot", "cooked picked meat, hot water added", 1000, a440, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "The table has no column for the pack: cooked meat covered with hot water is written as hot."}};
constexpr condition a442[] = {{"Only king crab and Dungeness crab; freeze blue crab.", {}, "", "", false, false},
    {"Simmer the crabs 20 minutes in water with 1/4 cup of lemon juice and 2 tbsp of salt (up to 1 cup) to the gallon; cool them and pick the meat.", {}, "meat precooked", "", false, false},
    {"Soak the meat 2 minutes in cold water with 2 cups of lemon juice or 4 cups of white vinegar, and 2 tbsp of salt (up to 1 cup), to the gallon.", {}, "", "", false, false},
    {"Drain it and squeeze the water out.", {}, "drained", "", false, false},
    {"Put 6 oz of meat in a half-pint or 12 oz in a pint.", {}, "", "", false, false},
    {"Citric acid or lemon juice goes into every jar.", {}, "", "", false, false},
    {"Cover with hot water.", {}, "covered with liquid", "", false, false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false, false}};
constexpr acid_choice a443[] = {{"citric-acid", 1000, "1 tsp citric acid for a pint, 1/2 tsp for a half-pint"},
    {"bottled-lemon-juice", 12000, "4 tbsp bottled lemon juice for a pint, 2 tbsp for a half-pint"}};
constexpr sv a444[] = {"fermented dill pickles",
    "fermented dill pickle",
    "fermented pickles",
    "fermented cucumbers",
    "brined dill pickles",
    "brined pickles",
    "crock pickles",
    "crock dill pickles",
    "barrel pickles",
    "lacto-fermented pickles",
    "lacto-fermented dill pickles",
    "full sour pickles",
    "full-sour dill pickles",
    "genuine dill pickles",
    "pepinos fermentados",
    "pepinillos fermentados"};
constexpr sv a445[] = {"pickles",
    "pickle",
    "cucumber pickles",
    "pickled cucumbers",
    "pickled cucumber",
    "pepinillos",
    "pepinillos encurtidos",
    "pepinos encurtidos",
    "pepinillos en vinagre",
    "dill pickles",
    "dill pickle",
    "dills",
    "pickled dill cucumbers",
    "pepinillos al eneldo",
    "whole dill pickles",
    "gherkins",
    "gherkin",
    "pickled gherkins",
    "pickled gherkin"};
constexpr jar_minutes a446[] = {{"pint", a87},
    {"quart", a175}};
constexpr table a447[] = {{a174, "raw", "whole pickling cucumbers 4 inch, fully fermented, packed with the brine boiled and simmered 5 min", 500, a446, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a448[] = {{"Wash the cucumbers; cut 1/16 inch off the blossom end and discard it.", {}, "blossom ends removed", "", false, false},
    {"Use the full salt, 1/2 cup to 4 lb of cucumbers and 8 cups of water: less is not tested. No salt substitute and no reduced-sodium salt.", {}, "", "", false, false},
    {"Keep the cucumbers under the brine and take scum off while they ferment, 3 to 4 weeks at 70 to 75 F or 5 to 6 weeks at 55 to 65 F; not above 80 F.", {}, "", "", false, false},
    {"Only fully fermented pickles may be canned.", {}, "fully fermented", "", true, false},
    {"Discard pickles that are soft, slimy or smell bad.", {}, "", "", false, false},
    {"Bring the brine slowly to a boil, simmer it 5 minutes and strain it.", {}, "", "", false, false},
    {"Fill the jars with the pickles and cover with the hot brine.", {}, "covered with liquid", "", false, false}};
constexpr sv a449[] = {"pickling-cucumber"};
constexpr sv a450[] = {"dried-red-pepper"};
constexpr sv a451[] = {"mixed-pickling-spice"};
constexpr recipe_part a452[] = {{a449, "lb", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "4 inch, per gallon of container"},
    {a159, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "dill", ""},
    {a198, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::least, part_role::salt, false, false, false, "", "", "fermentation salt, may not be reduced"},
    {a93, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a111, "cup", {8, 1}, {8, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a156, "clove", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", ""},
    {a450, "piece", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a451, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""}};
constexpr tested_recipe a453[] = {{"", "", "", 0, 0, a452}};
constexpr citation a454[] = {{"usda-guide-6", "6", "6-7"}};
constexpr sv a455[] = {"easy hot sauce",
    "easy hot pepper sauce",
    "serrano hot sauce",
    "serrano pepper sauce",
    "serrano sauce",
    "salsa de chile serrano"};
constexpr table a456[] = {{a86, "hot", "canned diced tomatoes and Serrano peppers, milled", 250, a391, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a457[] = {{"Use canned diced tomatoes with their liquid.", {}, "", "", false, false},
    {"Never take more Serrano peppers than printed, nor fewer tomatoes; take the seeds out of the peppers.", {}, "", "", false, false},
    {"Add no onion, garlic or other vegetable.", {}, "", "", false, false},
    {"Use white vinegar of at least 5 %, not homemade, and never less than printed.", {}, "", "", false, false},
    {"Spices and salt are flavor; change or leave them out.", {}, "", "", false, false},
    {"Wear gloves for hot peppers.", {}, "", "", false, false},
    {"Simmer everything 20 minutes.", {}, "boiled before filling", "", false, false},
    {"Put it through a food mill.", {}, "sieved", "", false, false},
    {"Boil the sauce 15 minutes and fill the jars hot.", {}, "reheated to a boil", "", false, false},
    {"Add no flour, starch or other thickener.", {}, "not thickened", "", false, false},
    {"Half-pint jars only: no process for a larger jar is published.", {}, "", "", false, false}};
constexpr sv a458[] = {"serrano-pepper"};
constexpr recipe_part a459[] = {{a349, "cup", {8, 1}, {8, 1}, "oz", {64, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "undrained"},
    {a458, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "seeded, chopped"},
    {a93, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a158, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a451, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "whole, in a bag"}};
constexpr tested_recipe a460[] = {{"", "", "half-pint", 7, 8, a459}};
constexpr citation a461[] = {{"usda-guide-3", "3", "3-16"}};
constexpr sv a462[] = {"figs",
    "fig",
    "whole figs",
    "fresh figs",
    "figs in syrup",
    "higos",
    "higo",
    "brevas"};
constexpr int a463[] = {45,
    50,
    55,
    60};
constexpr int a464[] = {50,
    55,
    60,
    65};
constexpr jar_minutes a465[] = {{"pint", a463},
    {"quart", a464}};
constexpr table a466[] = {{a174, "hot", "whole, firm ripe, uncracked, in light syrup", 500, a465, "", "", "boiling-water-4", {}, "seen", 2, true, "Old advice is out of date: 5 psi without lemon juice, or 1 tbsp of lemon juice to a quart with 80 to 90 min."}};
constexpr condition a467[] = {{"Use firm ripe figs without cracks, and neither peel nor cut them.", {}, "unpeeled", "", false, false},
    {"Cover them with water and boil 2 minutes.", {}, "boiled before filling", "", false, false},
    {"Drain them.", {}, "drained", "", false, false},
    {"Boil them gently 5 minutes in light syrup.", {}, "boiled 5 min", "", false, false},
    {"Put bottled lemon juice or citric acid into every jar: figs by themselves are over pH 4.6.", {}, "", "", false, false},
    {"Fill the jars with the hot figs and cover with the hot syrup.", {}, "covered with liquid", "", false, false},
    {"Figs are canned whole only: fig puree has no process.", {}, "", "", false, false}};
constexpr acid_choice a468[] = {{"bottled-lemon-juice", 3000, "1 tbsp of bottled lemon juice per pint, 2 tbsp per quart"},
    {"citric-acid", 250, "1/4 tsp of citric acid per pint, 1/2 tsp per quart"}};
constexpr citation a469[] = {{"usda-guide-2", "2", "2-14"},
    {"nchfp-fruit-puree", "", ""}};
constexpr sv a470[] = {"fish in pint jars",
    "fish in half-pint jars",
    "salmon in pint jars",
    "salmon in pints",
    "trout in pint jars",
    "trout in pints",
    "mackerel in pint jars"};
constexpr sv a471[] = {"fish",
    "salmon",
    "trout",
    "salmón",
    "pescado",
    "trucha",
    "mackerel",
    "bluefish",
    "steelhead",
    "steelhead trout",
    "halibut",
    "fatty fish",
    "oily fish"};
constexpr sv a472[] = {"lengths",
    "with-bones"};
constexpr int a473[] = {100};
constexpr jar_minutes a474[] = {{"half-pint", a473},
    {"12-oz", a473}};
constexpr jar_minutes a475[] = {{"pint", a473}};
constexpr table a476[] = {{a472, "raw", "3.5 inch lengths, bone-in", 1000, a474, "low-acid-dial", "low-acid-weighted", "", {}, "seen-part", 2, true, "Read: half-pint and 12 oz jars take the pint time; the pressures near sea level. Carried over from the pint table: the pressures of the higher bands."},
    {a472, "raw", "3.5 inch lengths, bone-in", 1000, a475, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Newer text adds halibut, skin and bones taken out."}};
constexpr condition a477[] = {{"Gut the fish within 2 hours of the catch and keep it on ice; thaw frozen fish in the refrigerator.", {}, "chilled", "", false, false},
    {"Use fish that is not smoked: smoked fish has its own, longer process.", {}, "not smoked", "", false, false},
    {"Take off head, tail, fins and scales; the bones may stay. Halibut loses skin and bones.", {}, "", "", false, false},
    {"Cut it in lengths of 3 1/2 inches.", {}, "", "", false, false},
    {"The fish goes in raw.", {}, "meat not precooked", "", false, false},
    {"Add no liquid.", {}, "no liquid added", "", false, false}};
constexpr citation a478[] = {{"usda-guide-5", "5", "5-10"}};
constexpr sv a479[] = {"fish in quart jars",
    "fish in quarts",
    "salmon in quart jars",
    "salmon in quarts",
    "trout in quart jars",
    "trout in quarts"};
constexpr sv a480[] = {"fillets",
    "chunks"};
constexpr int a481[] = {160};
constexpr jar_minutes a482[] = {{"quart", a481}};
constexpr table a483[] = {{a480, "raw", "jar-length fillets or chunks, packed solid", 1000, a482, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Read whole in a text copy of the 2015 guide, page 5-12."}};
constexpr condition a484[] = {{"Gut the fish within 2 hours of the catch and keep it on ice; thaw frozen fish in the refrigerator.", {}, "chilled", "", false, false},
    {"Use fish that is not smoked.", {}, "not smoked", "", false, false},
    {"Use straight-sided wide-mouth quart jars.", {}, "", "", false, false},
    {"Pack fillets or chunks as long as the jar solidly, raw.", {}, "meat not precooked", "", false, false},
    {"No liquid is needed; halibut may take up to 4 tbsp of oil in a jar.", {}, "no liquid added", "", false, false},
    {"Put 2 to 3 inches of water, about 3 quarts, in the canner.", {}, "", "", false, false},
    {"Heat the canner on high for 20 minutes with the vent open; once steam flows steadily, vent 10 minutes more. Heating and venting together never take less than 30 minutes.", {}, "", "", false, false}};
constexpr citation a485[] = {{"usda-guide-5", "5", "5-11"},
    {"uaf-fish-quarts", "", ""}};
constexpr sv a486[] = {"smoked fish",
    "smoked salmon",
    "smoked trout",
    "smoked rockfish",
    "smoked sole",
    "smoked cod",
    "smoked flounder",
    "lightly smoked fish",
    "lightly smoked salmon",
    "salmon ahumado",
    "salmón ahumado",
    "pescado ahumado",
    "trucha ahumada"};
constexpr sv a487[] = {"fish",
    "salmon",
    "trout",
    "salmón",
    "pescado",
    "trucha"};
constexpr sv a488[] = {"pieces"};
constexpr int a489[] = {110};
constexpr jar_minutes a490[] = {{"half-pint", a489},
    {"pint", a489}};
constexpr table a491[] = {{a488, "raw", "pieces standing upright in the jar", 1000, a490, "low-acid-dial", "", "", {}, "seen-part", 1, true, "The table has no column for the pack; the fish goes in cold, so it is written as raw. Read: the altitude bands and, in a university bulletin, 110 min for pints; half-pints may take the pint time. From memory: the pressures of the dial bands. A recipe page with 100 min is not used."},
    {a488, "raw", "pieces standing upright in the jar", 1000, a490, "", "low-acid-weighted", "", {}, "seen-part", 2, true, "The table has no column for the pack; the fish goes in cold, so it is written as raw. Read: 110 min at 10 psi in a university bulletin, 10 and 15 psi in an equipment maker's copy; half-pints may take the pint time."}};
constexpr condition a492[] = {{"Smoke the fish lightly only, by a tested method.", {}, "lightly smoked", "", false, false},
    {"Can it at once, or after at most 1 day in the refrigerator; do not taste it before.", {}, "", "", false, false},
    {"Use a pressure canner of 16 to 22 quarts, never a smaller one.", {}, "", "", false, false},
    {"Put 4 quarts of cool tap water in the canner, no less, and do not heat it beforehand.", {}, "", "", false, false},
    {"Stand the pieces upright in the jar, loosely or tightly.", {}, "", "", false, false},
    {"Add no liquid.", {}, "no liquid added", "", false, false},
    {"Half-pint and pint jars only, no quarts, no tin cans; freeze other smoked seafood.", {}, "", "", false, false}};
constexpr citation a493[] = {{"usda-guide-5", "5", "5-13"},
    {"nchfp-smoked-fish", "", ""},
    {"pnw-450", "", ""}};
constexpr sv a494[] = {"fruit cocktail",
    "mixed fruit cocktail",
    "fruit cocktails",
    "cóctel de frutas",
    "coctel de frutas",
    "cóctel de fruta"};
constexpr jar_minutes a495[] = {{"half-pint", a121},
    {"pint", a121}};
constexpr table a496[] = {{a86, "raw", "1/2-inch cubes of peaches and pears, whole under-ripe seedless grapes, a few maraschino cherries, syrup", 500, a495, "", "", "boiling-water-4", {}, "seen", 2, true, ""}};
constexpr condition a497[] = {{"Use only yellow-fleshed peaches: the pH of white-fleshed kinds can be over 4.6, and no process of any kind exists for them; freeze them.", {}, "yellow flesh", "", false, false},
    {"Use ordinary European pears; Asian pears are low-acid and do not belong in this recipe.", {}, "", "", false, false},
    {"Use seedless green grapes that are slightly under-ripe.", {}, "", "", false, false},
    {"Add no other fruit: no acid is added, so every fruit in the jar has to be acid by itself.", {}, "", "", false, false},
    {"Peel the peaches and pears and cut them in 1/2-inch cubes.", {}, "peeled", "", false, false},
    {"Drain the mixed fruit.", {}, "drained", "", false, false},
    {"Put 1/2 cup of hot syrup in each jar and a few cherries; fill gently with the raw fruit and cover with more hot syrup.", {}, "covered with liquid", "", false, false},
    {"The syrup may be sweetened less.", {}, "", "", false, false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false, false}};
constexpr sv a498[] = {"peach"};
constexpr sv a499[] = {"pear"};
constexpr sv a500[] = {"grape"};
constexpr sv a501[] = {"maraschino-cherry"};
constexpr recipe_part a502[] = {{a498, "lb", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::acid_food, true, false, false, "", "", "yellow flesh, 1/2 inch cubes"},
    {a499, "lb", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::acid_food, false, false, false, "", "", "1/2 inch cubes"},
    {a500, "lb", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::acid_food, false, false, false, "", "", "seedless green, slightly underripe"},
    {a501, "oz", {10, 1}, {10, 1}, "", {0, 1}, part_limit::free, part_role::other, false, false, false, "", "", "one jar"},
    {a94, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a111, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::water, false, false, false, "", "", "for the syrup"}};
constexpr tested_recipe a503[] = {{"", "", "pint", 6, 6, a502}};
constexpr citation a504[] = {{"usda-guide-2", "2", "2-18"},
    {"wisconsin-white-peaches", "", ""}};
constexpr sv a505[] = {"fruit puree",
    "fruit purees",
    "fruit purée",
    "fruit purées",
    "pureed fruit",
    "puréed fruit",
    "apricot puree",
    "blueberry puree",
    "cherry puree",
    "nectarine puree",
    "peach puree",
    "pear puree",
    "plum puree",
    "raspberry puree",
    "strawberry puree",
    "puré de fruta",
    "pure de fruta",
    "puré de frutas"};
constexpr sv a506[] = {"fruit-puree"};
constexpr jar_minutes a507[] = {{"pint", a175},
    {"quart", a175}};
constexpr table a508[] = {{a506, "hot", "strained cooked pulp, sugar optional", 250, a507, "", "", "boiling-water-3", {}, "seen", 2, true, "The list of excluded fruits grows with the years: figs and tomatoes in 1994, six kinds in the guide of 2015, more on the national center's page and in Extension advice of 2022. The longest list is used. Old timetables with 10 min are out of date."},
    {a506, "hot", "strained cooked pulp, sugar optional", 250, a124, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, ""}};
constexpr condition a509[] = {{"No process exists for purees of bananas, figs, Asian pears, cantaloupe and other melons, papaya, mangoes, coconut, dates, elderberries or persimmons; tomatoes have tables of their own.", {}, "", "", false, false},
    {"Of peaches and nectarines only yellow-fleshed ones: the pH of white-fleshed kinds can be over 4.6, and no process of any kind exists for them; freeze them.", {}, "yellow flesh", "", false, false},
    {"Peel and pit the fruit where needed and cook it slowly with a little water until it is soft.", {}, "boiled before filling", "", false, false},
    {"Press it through a sieve or food mill. Run a blender in short pulses only, for air whipped in may stay in the jar.", {}, "strained", "", false, false},
    {"Sugar may be added or left out.", {}, "", "", false, false},
    {"Bring the pulp back to a boil and fill the jars while it is hot.", {}, "reheated to a boil", "", false, false}};
constexpr citation a510[] = {{"usda-guide-2", "2", "2-14"},
    {"nchfp-fruit-puree", "", ""},
    {"kstate-fruit-purees", "", ""},
    {"wisconsin-white-peaches", "", ""}};
constexpr sv a511[] = {"grape juice",
    "grape juices",
    "concord grape juice",
    "fresh grape juice",
    "white grape juice",
    "jugo de uva",
    "zumo de uva",
    "mosto de uva"};
constexpr table a512[] = {{a103, "hot", "strained juice", 250, a104, "", "", "boiling-water-3", {}, "seen", 2, true, "Private pages print other times, and grapes in sugar water instead of juice; not used."}};
constexpr condition a513[] = {{"Heat the grapes slowly until they are soft, and strain the juice.", {}, "strained", "", false, false},
    {"Let the juice settle 24 to 48 hours in the refrigerator and pour it off the sediment.", {}, "settled cold", "", false, false},
    {"Sugar may be added to taste.", {}, "", "", false, false},
    {"Heat the juice until it just begins to boil and fill the jars at once.", {}, "boiled before filling", "", false, false}};
constexpr citation a514[] = {{"usda-guide-2", "2", "2-15"}};
constexpr sv a515[] = {"grapefruit and orange sections",
    "grapefruit sections",
    "grapefruit segments",
    "grapefruit",
    "grapefruits",
    "grapefruit and orange segments",
    "grapefruit and oranges",
    "grapefruit with orange",
    "orange and grapefruit sections",
    "orange and grapefruit segments",
    "toronja",
    "toronjas"};
constexpr sv a516[] = {"sections"};
constexpr jar_minutes a517[] = {{"pint", a87},
    {"quart", a87}};
constexpr table a518[] = {{a516, "hot", "peeled sections, grapefruit alone or equal parts with orange", 500, a124, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, "The pressure tables list a hot pack, the boiling-water table only a raw one. An appliance manual prints 10 min here for the weighted gauge; the guide prints 8."},
    {a516, "raw", "peeled sections, grapefruit alone or equal parts with orange", 500, a517, "", "", "boiling-water-3", a514, "seen", 2, true, "Two appliance manuals print 5/10/15 min in a shifted column; wrong."},
    {a516, "raw", "peeled sections, grapefruit alone or equal parts with orange", 500, a135, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, ""}};
constexpr condition a519[] = {{"Use grapefruit alone, or with an equal part of orange; orange alone is not described.", {}, "", "", false, false},
    {"Peel the fruit, take off the white skin and part it into sections.", {}, "peeled", "", false, false},
    {"Heat the sections to a boil in water, citrus juice or very light to medium syrup.", a80, "boiled before filling", "", false, false},
    {"Fill the jars and cover with hot water, citrus juice or very light to medium syrup.", {}, "covered with liquid", "", false, false},
    {"Sugar is for flavor, color and shape; it may be left out.", {}, "", "", false, false}};
constexpr citation a520[] = {{"usda-guide-2", "2", "2-31"}};
constexpr sv a521[] = {"grapes",
    "grape",
    "whole grapes",
    "seedless grapes",
    "green grapes",
    "green seedless grapes",
    "uvas",
    "uva"};
constexpr int a522[] = {10,
    15,
    15,
    20};
constexpr jar_minutes a523[] = {{"pint", a522},
    {"quart", a522}};
constexpr table a524[] = {{a174, "hot", "whole seedless in syrup", 1000, a523, "", "", "boiling-water-4", {}, "seen", 2, true, "All numbers were read in copies that differ: those of the 1994 text print 10/15/20/25 min, those of the texts from 2009 on 10/15/15/20. The newest is used; the longer times are the safer ones."},
    {a174, "raw", "whole seedless in syrup", 1000, a133, "", "", "boiling-water-4", {}, "seen", 2, true, ""}};
constexpr condition a525[] = {{"Use unripe, tight-skinned seedless grapes, green ones at best; stem and wash them.", {}, "", "", false, false},
    {"Blanch the grapes 30 seconds in boiling water.", a80, "blanched", "", false, false},
    {"Drain them.", a80, "drained", "", false, false},
    {"Fill the jars and cover with hot very light or light syrup.", {}, "covered with liquid", "", false, false}};
constexpr sv a526[] = {"sweet pickled green tomatoes",
    "pickled sweet green tomatoes",
    "pickled green tomatoes",
    "pickled green tomato",
    "green tomato pickles",
    "sweet green tomato pickles",
    "green tomato pickle",
    "jitomates verdes encurtidos"};
constexpr table a527[] = {{a120, "hot", "sliced green tomatoes and onions, salted 4-6 h, simmered in sweet vinegar", 500, a446, "", "", "boiling-water-3", {}, "seen", 2, true, "Read whole in a text copy of the 2015 guide, page 6-25."}};
constexpr condition a528[] = {{"Wash and slice the green tomatoes and the onions; green, unripe tomatoes only.", {}, "", "", false, false},
    {"Mix with the salt, let stand 4 to 6 hours and drain.", {}, "drained", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short.", {}, "", "", false, false},
    {"Simmer the slices in the sweet vinegar with the spice bag, then take the bag out.", {}, "boiled before filling", "", false, false},
    {"Fill the jars and cover with the hot liquid.", {}, "covered with liquid", "", false, false}};
constexpr sv a529[] = {"green-tomato"};
constexpr sv a530[] = {"whole-allspice"};
constexpr recipe_part a531[] = {{a529, "lb", {10, 1}, {11, 1}, "cup", {16, 1}, part_limit::between, part_role::acid_food, true, false, false, "", "", "sliced"},
    {a223, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "sliced"},
    {a158, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::salt, false, false, true, "", "", "4 to 6 h, drained"},
    {a95, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a93, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a182, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "in spice bag"},
    {a530, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "in spice bag"},
    {a183, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "in spice bag"},
    {a112, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "in spice bag"}};
constexpr tested_recipe a532[] = {{"", "", "pint", 9, 9, a531}};
constexpr citation a533[] = {{"usda-guide-6", "6", "6-24"}};
constexpr sv a534[] = {"greens",
    "spinach",
    "chard",
    "swiss chard",
    "silverbeet",
    "kale",
    "collards",
    "collard greens",
    "mustard greens",
    "turnip greens",
    "beet greens",
    "beetroot greens",
    "espinaca",
    "espinacas",
    "acelga",
    "acelgas"};
constexpr sv a535[] = {"leaves"};
constexpr jar_minutes a536[] = {{"pint", a411},
    {"quart", a235}};
constexpr table a537[] = {{a535, "hot", "wilted leaves, tough stems and midribs removed", 1000, a536, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "A web copy carries a stray 100 min footnote that belongs to soup with seafood."}};
constexpr condition a538[] = {{"Use fresh leaves and take out tough stems and midribs.", {}, "", "", false, false},
    {"Steam them 3 to 5 minutes, 1 lb at a time.", {}, "blanched", "", false, false},
    {"All leaves must be well wilted before they are filled.", {}, "boiled before filling", "", false, false},
    {"Fill the jars loosely.", {}, "packed loosely", "", false, false},
    {"Use fresh boiling water, not the water of the steamer.", {}, "fresh water used", "", false, false},
    {"Cover the leaves with it.", {}, "covered with liquid", "", false, false}};
constexpr citation a539[] = {{"usda-guide-4", "4", ""}};
constexpr sv a540[] = {"ground meat",
    "chopped meat",
    "ground or chopped meat",
    "ground beef",
    "minced beef",
    "beef mince",
    "chopped beef",
    "hamburger",
    "hamburger meat",
    "burger meat",
    "beef patties",
    "ground pork",
    "pork mince",
    "minced pork",
    "ground lamb",
    "lamb mince",
    "minced lamb",
    "ground veal",
    "veal mince",
    "minced veal",
    "fresh sausage",
    "bulk sausage",
    "sausage patties",
    "carne molida",
    "carne picada"};
constexpr sv a541[] = {"meat",
    "red meat",
    "beef",
    "pork",
    "lamb",
    "veal",
    "carne",
    "carne de res",
    "carne de puerco",
    "carne de cerdo",
    "cerdo",
    "cordero",
    "ternera",
    "venison",
    "deer",
    "deer meat",
    "bear",
    "bear meat",
    "carne de venado",
    "venado",
    "ground venison",
    "ground deer",
    "ground deer meat",
    "deer burger",
    "venison burger",
    "venison mince",
    "minced venison",
    "ground bear",
    "ground bear meat",
    "venison sausage",
    "mince",
    "minced meat"};
constexpr sv a542[] = {"patties",
    "balls",
    "links",
    "loose"};
constexpr table a543[] = {{a542, "hot", "patties, balls, links or loose ground meat", 1000, a236, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Copies differ on the salt, 1 or 2 tsp to the quart; it is flavor only."}};
constexpr condition a544[] = {{"Use fresh meat and fresh sausage, never cured, brined, corned or smoked.", {}, "not smoked", "", false, false},
    {"Ground venison takes 1 part of pork fat to 3 or 4 parts of venison, mixed in before grinding.", {}, "", "", false, false},
    {"Shape it into patties or balls, stuff it in casings cut to links of 3 to 4 inches, or leave it loose; no bread, flour or egg in it.", {}, "not thickened", "", false, false},
    {"Cook it until lightly browned.", {}, "meat precooked", "", false, false},
    {"Drain off excess fat.", {}, "fat removed", "", false, false},
    {"Cover with boiling meat broth, tomato juice or water; the liquid is part of the process.", {}, "covered with liquid", "", false, false}};
constexpr citation a545[] = {{"usda-guide-5", "5", "5-6"}};
constexpr sv a546[] = {"pickled hot peppers",
    "pickled hot pepper",
    "hot pickled peppers",
    "hot pepper pickles",
    "pickled hungarian peppers",
    "pickled hungarian wax peppers",
    "pickled long hot peppers",
    "pickled whole hot peppers"};
constexpr sv a547[] = {"pickled peppers",
    "pickled pepper",
    "pimientos encurtidos",
    "pimientos en vinagre",
    "pickled green peppers",
    "pickled red peppers",
    "pickled yellow peppers",
    "pickled chiles",
    "pickled chilies",
    "pickled chillies",
    "pickled chile peppers",
    "pickled chili peppers",
    "pickled chilli peppers",
    "chiles encurtidos",
    "chiles en vinagre",
    "pickled jalapenos",
    "pickled jalapeños",
    "pickled jalapeno",
    "pickled jalapeño",
    "pickled jalapeno peppers",
    "pickled jalapeño peppers",
    "jalapenos encurtidos",
    "jalapeños encurtidos",
    "jalapenos en vinagre",
    "jalapeños en vinagre",
    "pickled banana peppers",
    "pickled banana pepper"};
constexpr sv a548[] = {"whole",
    "quartered"};
constexpr table a549[] = {{a548, "raw", "hot long peppers with sweet peppers, peeled, small ones whole and slit, large ones quartered", 500, a108, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a550[] = {{"Leave small peppers whole and cut slits in each.", {}, "slit", "", false, false},
    {"Quarter large peppers.", {}, "", "", false, false},
    {"Take the skins off.", {}, "peeled", "", false, false},
    {"The liquid is 5 parts of vinegar to 1 part of water; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"Simmer the garlic in the liquid and take it out before filling.", {}, "", "", false, false},
    {"Cover the peppers with the hot liquid.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer peppers, more sugar. Not allowed: less vinegar, more water or more peppers.", {}, "", "", false, false}};
constexpr sv a551[] = {"hot-long-pepper"};
constexpr sv a552[] = {"red-bell-pepper",
    "green-bell-pepper"};
constexpr recipe_part a553[] = {{a551, "lb", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "red, green or yellow; small ones whole and slit, large quartered"},
    {a552, "lb", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "mixed"},
    {a93, "cup", {5, 1}, {5, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a111, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a158, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a94, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a156, "clove", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "simmered in the solution, then removed"}};
constexpr tested_recipe a554[] = {{"", "", "pint", 9, 9, a553}};
constexpr citation a555[] = {{"usda-guide-6", "6", "6-22"}};
constexpr sv a556[] = {"pickled jalapeno rings",
    "pickled jalapeño rings",
    "jalapeno rings",
    "jalapeño rings",
    "pickled jalapeno slices",
    "pickled jalapeño slices",
    "pickled sliced jalapenos",
    "pickled sliced jalapeños",
    "sliced pickled jalapenos",
    "jalapeno pickles",
    "rodajas de jalapeño encurtidas",
    "jalapenos en rodajas",
    "jalapeños en rodajas"};
constexpr sv a557[] = {"pickled peppers",
    "pickled pepper",
    "pimientos encurtidos",
    "pimientos en vinagre",
    "pickled chiles",
    "pickled chilies",
    "pickled chillies",
    "pickled chile peppers",
    "pickled chili peppers",
    "pickled chilli peppers",
    "chiles encurtidos",
    "chiles en vinagre",
    "pickled jalapenos",
    "pickled jalapeños",
    "pickled jalapeno",
    "pickled jalapeño",
    "pickled jalapeno peppers",
    "pickled jalapeño peppers",
    "jalapenos encurtidos",
    "jalapeños encurtidos",
    "jalapenos en vinagre",
    "jalapeños en vinagre",
    "pickled pepper rings",
    "hot pepper rings",
    "pickled hot pepper rings"};
constexpr sv a558[] = {"rings"};
constexpr table a559[] = {{a558, "raw", "rings 1/4 inch thick, limed 12-24 h and rinsed", 500, a152, "", "", "boiling-water-3", {}, "seen", 2, true, "Read whole in a text copy of the 2015 guide, page 6-23. The table prints the style as hot, although the rings go in raw."}};
constexpr condition a560[] = {{"Cut the peppers in rings 1/4 inch thick and discard the stem ends.", {}, "", "", false, false},
    {"Soak the rings 12 to 24 hours in the lime water and drain them.", {}, "drained", "", false, false},
    {"Take the lime out again, for what stays in uses up the acid: rinse, soak 1 hour in fresh water and drain, three times in all.", {}, "lime rinsed out", "", true, false},
    {"The liquid is 7 1/2 cups of cider vinegar to 1 3/4 cups of water; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"Cover the rings fully with the boiling brine.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer peppers. Not allowed: less vinegar, more water or more peppers.", {}, "", "", false, false}};
constexpr sv a561[] = {"jalapeno-pepper"};
constexpr sv a562[] = {"pickling-lime"};
constexpr recipe_part a563[] = {{a561, "lb", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "1/4 inch rings"},
    {a562, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::other, false, false, true, "", "", "soak only, rinsed off"},
    {a111, "gallon", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::water, false, false, true, "", "", "soak only, drained"},
    {a93, "cup", {75, 10}, {75, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "cider"},
    {a111, "cup", {175, 100}, {175, 100}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a158, "tbsp", {25, 10}, {25, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a183, "tbsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "1-1/2 tsp per pint"},
    {a182, "tbsp", {6, 1}, {6, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "1 tbsp per pint"}};
constexpr tested_recipe a564[] = {{"", "", "pint", 6, 6, a563}};
constexpr citation a565[] = {{"usda-guide-6", "6", "6-23"}};
constexpr sv a566[] = {"blueberry-spice jam",
    "spiced blueberry jam",
    "blueberry jam",
    "mermelada de arandanos",
    "mermelada de arándanos",
    "mermelada de arandano azul",
    "mermelada de arándano azul"};
constexpr sv a567[] = {"jam",
    "jams",
    "fruit jam",
    "mermelada",
    "mermeladas",
    "berry jam",
    "mixed berry jam",
    "jam with pectin",
    "jam with added pectin"};
constexpr table a568[] = {{a86, "hot", "with powdered pectin", 250, a287, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a569[] = {{"Wash ripe blueberries and crush them.", {}, "", "", false, false},
    {"Heat the fruit with lemon juice, spice, water and pectin to a full rolling boil, add the sugar and boil again.", {}, "boiled before filling", "", false, false},
    {"Use powdered pectin in the printed amount, and no more water than printed.", {}, "", "", false, false},
    {"The lemon juice may not be cut.", {}, "", "", false, false},
    {"Do not cut the sugar or swap a sweetener for it, and do not double the batch: it may not set or keep.", {}, "", "", false, false}};
constexpr sv a570[] = {"blueberry"};
constexpr sv a571[] = {"lemon-juice"};
constexpr sv a572[] = {"ground-nutmeg",
    "ground-cinnamon"};
constexpr sv a573[] = {"powdered-pectin"};
constexpr recipe_part a574[] = {{a570, "pint", {25, 10}, {25, 10}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "ripe, crushed"},
    {a571, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a572, "tsp", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a94, "cup", {55, 10}, {55, 10}, "", {0, 1}, part_limit::least, part_role::sugar, false, false, false, "", "", ""},
    {a111, "cup", {75, 100}, {75, 100}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a573, "oz", {175, 100}, {175, 100}, "", {0, 1}, part_limit::between, part_role::other, false, false, false, "", "", ""}};
constexpr tested_recipe a575[] = {{"", "", "half-pint", 5, 5, a574}};
constexpr citation a576[] = {{"usda-guide-7", "7", "7-9"}};
constexpr sv a577[] = {"pear-apple jam",
    "pear and apple jam",
    "apple-pear jam",
    "apple and pear jam",
    "pear jam",
    "mermelada de pera",
    "mermelada de pera y manzana"};
constexpr sv a578[] = {"jam",
    "jams",
    "fruit jam",
    "mermelada",
    "mermeladas",
    "jam with pectin",
    "jam with added pectin"};
constexpr table a579[] = {{a86, "hot", "with liquid pectin", 250, a287, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a580[] = {{"Peel and core the pears and apples and chop them fine.", {}, "peeled", "", false, false},
    {"Use bottled lemon juice, 1/3 cup to the batch; it may not be cut.", {}, "", "", false, false},
    {"Heat the fruit with lemon juice and cinnamon, then boil it with the sugar; add the pectin as printed.", {}, "boiled before filling", "", false, false},
    {"Use liquid pectin in the printed amount.", {}, "", "", false, false},
    {"Do not cut the sugar or swap a sweetener for it, and do not double the batch: it may not set or keep.", {}, "", "", false, false}};
constexpr sv a581[] = {"bottled-lemon-juice"};
constexpr sv a582[] = {"liquid-pectin"};
constexpr recipe_part a583[] = {{a499, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "peeled, cored, finely chopped"},
    {a91, "cup", {1, 1}, {1, 1}, "lb", {2, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", "peeled, cored, finely chopped"},
    {a94, "cup", {65, 10}, {65, 10}, "", {0, 1}, part_limit::least, part_role::sugar, false, false, false, "", "", ""},
    {a96, "tsp", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a581, "cup", {1, 3}, {1, 3}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a582, "floz", {6, 1}, {6, 1}, "", {0, 1}, part_limit::between, part_role::other, false, false, false, "", "", ""}};
constexpr tested_recipe a584[] = {{"", "", "half-pint", 7, 8, a583}};
constexpr citation a585[] = {{"usda-guide-7", "7", "7-8"}};
constexpr sv a586[] = {"jam without added pectin",
    "jam without pectin",
    "no-pectin jam",
    "long-boil jam",
    "pectin-free jam",
    "apricot jam",
    "peach jam",
    "blackberry jam",
    "boysenberry jam",
    "dewberry jam",
    "gooseberry jam",
    "loganberry jam",
    "raspberry jam",
    "strawberry jam",
    "mermelada sin pectina",
    "mermelada de fresa",
    "mermelada de fresas",
    "mermelada de frambuesa",
    "mermelada de mora",
    "mermelada de moras",
    "mermelada de zarzamora",
    "mermelada de durazno",
    "mermelada de melocoton",
    "mermelada de melocotón",
    "mermelada de chabacano",
    "mermelada de albaricoque",
    "mermelada de damasco"};
constexpr sv a587[] = {"jam",
    "jams",
    "fruit jam",
    "mermelada",
    "mermeladas",
    "berry jam",
    "mixed berry jam"};
constexpr table a588[] = {{a86, "hot", "crushed fruit and sugar boiled to the jellying point", 250, a287, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a589[] = {{"Only yellow-flesh peaches; white ones may be too low in acid, and no jam process covers them.", {}, "yellow flesh", "", false, false},
    {"Only the fruit of the printed table; pumpkin, melon and other low-acid fruit do not belong in it.", {}, "", "", false, false},
    {"Wash and crush the fruit; follow one printed line whole.", {}, "", "", false, false},
    {"The lemon juice of apricot and peach jam may not be cut.", {}, "", "", false, false},
    {"Boil fruit and sugar to the jellying point: 220 F at sea level, and for each further 1,000 ft up to 8,000 ft 218, 216, 214, 212, 211, 209, 207 and 205 F.", {}, "boiled before filling", "", false, false},
    {"Do not cut the sugar or swap a sweetener for it, and do not double the batch: it may not set or keep.", {}, "", "", false, false},
    {"Jars larger than a pint have no process, and the jam may stay soft in them.", {}, "", "", false, false},
    {"Or use bought pectin and follow the directions in its package to the letter, recipe and steps; the times of this table hold for such a jam too.", {}, "pectin directions followed", "", false, true}};
constexpr sv a590[] = {"apricot"};
constexpr recipe_part a591[] = {{a590, "cup", {4, 1}, {45, 10}, "", {0, 1}, part_limit::between, part_role::acid_food, true, false, false, "", "", "crushed"},
    {a94, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::sugar, false, false, false, "", "", ""},
    {a571, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""}};
constexpr sv a592[] = {"blackberry",
    "boysenberry",
    "dewberry",
    "gooseberry",
    "loganberry",
    "raspberry",
    "strawberry"};
constexpr recipe_part a593[] = {{a592, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "crushed"},
    {a94, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::sugar, false, false, false, "", "", ""}};
constexpr recipe_part a594[] = {{a498, "cup", {55, 10}, {6, 1}, "", {0, 1}, part_limit::between, part_role::acid_food, true, false, false, "", "", "crushed"},
    {a94, "cup", {4, 1}, {5, 1}, "", {0, 1}, part_limit::between, part_role::sugar, false, false, false, "", "", ""},
    {a571, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""}};
constexpr sv a595[] = {"berry"};
constexpr recipe_part a596[] = {{a595, "cup", {9, 1}, {9, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "crushed"},
    {a94, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::sugar, false, false, false, "", "", ""}};
constexpr tested_recipe a597[] = {{"apricot", "", "half-pint", 5, 6, a591},
    {"berry", "", "half-pint", 3, 4, a593},
    {"peach", "", "half-pint", 6, 7, a594},
    {"berry-uga", "", "half-pint", 7, 8, a596}};
constexpr citation a598[] = {{"usda-guide-7", "7", "7-6"},
    {"nchfp-jam-without-pectin", "", ""},
    {"uga-so-easy", "", ""},
    {"wisconsin-white-peaches", "", ""}};
constexpr sv a599[] = {"remade soft jelly",
    "remade soft jellies",
    "remade jelly",
    "remade jellies",
    "recooked jelly",
    "soft jelly",
    "soft jellies",
    "jelly that did not set",
    "jelly that did not jell",
    "unset jelly"};
constexpr sv a600[] = {"jelly",
    "jellies",
    "jalea",
    "jaleas",
    "fruit jelly",
    "fruit jellies",
    "jelly with pectin",
    "jelly with added pectin"};
constexpr table a601[] = {{a86, "hot", "recooked with powdered, liquid or no added pectin", 250, a287, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a602[] = {{"Recook at most 4 to 6 cups at a time.", {}, "", "", false, false},
    {"Follow one of the three printed ways whole.", {}, "", "", false, false},
    {"Use bottled lemon juice, 2 tbsp to the quart of jelly; it may not be cut.", {}, "", "", false, false},
    {"Bring the jelly back to a rolling boil as that way says, and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Use new lids.", {}, "", "", false, false}};
constexpr sv a603[] = {"soft-jelly"};
constexpr recipe_part a604[] = {{a603, "quart", {1, 1}, {1, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", ""},
    {a94, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::least, part_role::sugar, false, false, false, "", "", "added"},
    {a111, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", "added"},
    {a581, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "added"},
    {a573, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::between, part_role::other, false, false, false, "", "", "added"}};
constexpr recipe_part a605[] = {{a603, "quart", {1, 1}, {1, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", ""},
    {a94, "cup", {75, 100}, {75, 100}, "", {0, 1}, part_limit::least, part_role::sugar, false, false, false, "", "", "added"},
    {a581, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "added"},
    {a582, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::between, part_role::other, false, false, false, "", "", "added"}};
constexpr recipe_part a606[] = {{a603, "quart", {1, 1}, {1, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", ""},
    {a581, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "added"}};
constexpr tested_recipe a607[] = {{"powdered-pectin", "", "quart", 1, 1, a604},
    {"liquid-pectin", "", "quart", 1, 1, a605},
    {"no-pectin", "", "quart", 1, 1, a606}};
constexpr citation a608[] = {{"usda-guide-7", "7", ""},
    {"oklahoma-soft-jelly", "", ""}};
constexpr sv a609[] = {"golden pepper jelly",
    "yellow pepper jelly",
    "pepper jelly",
    "pepper jellies",
    "bell pepper jelly",
    "hot pepper jelly",
    "chile pepper jelly",
    "chilli jelly",
    "capsicum jelly",
    "jalea de pimiento",
    "jalea de pimientos",
    "jalea de chile",
    "jalea de chiles"};
constexpr sv a610[] = {"jelly",
    "jellies",
    "jalea",
    "jaleas",
    "jelly with pectin",
    "jelly with added pectin"};
constexpr sv a611[] = {"as-recipe",
    "in-sterile-jars"};
constexpr jar_minutes a612[] = {{"half-pint", a30}};
constexpr sv a613[] = {"in-clean-jars"};
constexpr citation a614[] = {{"nchfp-golden-pepper-jelly", "", ""}};
constexpr table a615[] = {{a611, "hot", "strained pepper and vinegar juice with liquid pectin, sterile jars", 250, a612, "", "", "boiling-water-3", {}, "seen", 2, true, ""},
    {a613, "hot", "strained pepper and vinegar juice with liquid pectin, clean unsterilized jars", 250, a391, "", "", "boiling-water-3", a614, "seen-part", 1, true, "Read: that an optional 10-minute process exists and needs no sterile jars. From memory: the 15 and 20 minutes of the upper bands."}};
constexpr condition a616[] = {{"Take stems and seeds out of the peppers and puree them with vinegar.", {}, "", "", false, false},
    {"Use 1 1/2 cups of white vinegar of 5 % acidity to the batch; it is the acid of this jelly and may not be cut.", {}, "", "", false, false},
    {"Boil the puree with the vinegar and strain the juice through a jelly bag.", {}, "strained", "", false, false},
    {"Boil the juice with the sugar, then with the liquid pectin.", {}, "boiled before filling", "", false, false},
    {"Other sweet or hot peppers may replace the kinds printed; the total may not grow.", {}, "", "", false, false},
    {"Use liquid pectin in the printed amount.", {}, "", "", false, false},
    {"Do not cut the sugar or swap a sweetener for it, and do not double the batch: it may not set or keep.", {}, "", "", false, false},
    {"Half-pint jars only: no process exists for a larger jar.", {}, "", "", false, false}};
constexpr sv a617[] = {"yellow-bell-pepper",
    "bell-pepper"};
constexpr recipe_part a618[] = {{a617, "piece", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "peppers", "", "large, fleshy"},
    {a458, "piece", {1, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "peppers", "", ""},
    {a93, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a94, "cup", {7, 1}, {7, 1}, "", {0, 1}, part_limit::least, part_role::sugar, false, false, false, "", "", ""},
    {a582, "floz", {3, 1}, {3, 1}, "", {0, 1}, part_limit::between, part_role::other, false, false, false, "", "", ""}};
constexpr tested_recipe a619[] = {{"", "", "half-pint", 7, 7, a618}};
constexpr citation a620[] = {{"usda-guide-7", "7", "7-10"}};
constexpr sv a621[] = {"grape-plum jelly",
    "grape and plum jelly",
    "plum-grape jelly",
    "plum and grape jelly",
    "jalea de uva y ciruela"};
constexpr table a622[] = {{a86, "hot", "with powdered pectin", 250, a287, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a623[] = {{"Wash ripe plums and Concord-type grapes, crush them and cook them with the water.", {}, "", "", false, false},
    {"Strain the juice and measure 6 1/2 cups.", {}, "strained", "", false, false},
    {"Boil the juice with the pectin, then with the sugar.", {}, "boiled before filling", "", false, false},
    {"At most 1/2 tsp of butter or margarine may go in against foam.", {}, "", "", false, false},
    {"Use powdered pectin in the printed amount.", {}, "", "", false, false},
    {"Do not cut the sugar or swap a sweetener for it, and do not double the batch: it may not set or keep.", {}, "", "", false, false}};
constexpr sv a624[] = {"plum"};
constexpr sv a625[] = {"butter",
    "margarine"};
constexpr recipe_part a626[] = {{a624, "lb", {35, 10}, {35, 10}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "ripe"},
    {a500, "lb", {3, 1}, {3, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", "ripe Concord type"},
    {a111, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a625, "tsp", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::fat, false, true, false, "", "", "against foam"},
    {a94, "cup", {85, 10}, {85, 10}, "", {0, 1}, part_limit::least, part_role::sugar, false, false, false, "", "", ""},
    {a573, "oz", {175, 100}, {175, 100}, "", {0, 1}, part_limit::between, part_role::other, false, false, false, "", "", ""}};
constexpr tested_recipe a627[] = {{"", "", "half-pint", 10, 10, a626}};
constexpr sv a628[] = {"strawberry-rhubarb jelly",
    "strawberry and rhubarb jelly",
    "rhubarb-strawberry jelly",
    "rhubarb and strawberry jelly",
    "rhubarb jelly",
    "jalea de fresa y ruibarbo"};
constexpr condition a629[] = {{"Wash the fruit; chop red rhubarb stalks and crush ripe strawberries.", {}, "", "", false, false},
    {"Strain the juice and measure 3 1/2 cups.", {}, "strained", "", false, false},
    {"Boil the juice with the sugar, then with the pectin.", {}, "boiled before filling", "", false, false},
    {"At most 1/2 tsp of butter or margarine may go in against foam.", {}, "", "", false, false},
    {"Use liquid pectin in the printed amount.", {}, "", "", false, false},
    {"Do not cut the sugar or swap a sweetener for it, and do not double the batch: it may not set or keep.", {}, "", "", false, false}};
constexpr sv a630[] = {"strawberry"};
constexpr sv a631[] = {"rhubarb"};
constexpr recipe_part a632[] = {{a630, "quart", {15, 10}, {15, 10}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "ripe"},
    {a631, "lb", {15, 10}, {15, 10}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", "red stalks"},
    {a625, "tsp", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::fat, false, true, false, "", "", "against foam"},
    {a94, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::sugar, false, false, false, "", "", ""},
    {a582, "floz", {6, 1}, {6, 1}, "", {0, 1}, part_limit::between, part_role::other, false, false, false, "", "", ""}};
constexpr tested_recipe a633[] = {{"", "", "half-pint", 7, 7, a632}};
constexpr sv a634[] = {"jelly without added pectin",
    "jelly without pectin",
    "no-pectin jelly",
    "pectin-free jelly",
    "apple jelly",
    "blackberry jelly",
    "crab apple jelly",
    "crabapple jelly",
    "grape jelly",
    "plum jelly",
    "bramble jelly",
    "jalea sin pectina",
    "jalea de manzana",
    "jalea de uva",
    "jalea de ciruela",
    "jalea de mora",
    "jalea de moras",
    "jalea de zarzamora"};
constexpr sv a635[] = {"jelly",
    "jellies",
    "jalea",
    "jaleas",
    "fruit jelly",
    "fruit jellies"};
constexpr table a636[] = {{a86, "hot", "juice of high-pectin fruit boiled to the jellying point", 250, a287, "", "", "boiling-water-3", {}, "seen", 2, true, "Read whole in a text copy of the 2015 guide, page 7-6."}};
constexpr condition a637[] = {{"Only the fruit of the printed table; strawberries are not in it.", {}, "", "", false, false},
    {"Cook the fruit and strain the juice; use juice from the fruit itself, at most 6 to 8 cups at a time.", {}, "strained", "", false, false},
    {"Boil juice and sugar to the jellying point: 220 F at sea level, and for each further 1,000 ft up to 8,000 ft 218, 216, 214, 212, 211, 209, 207 and 205 F.", {}, "boiled before filling", "", false, false},
    {"Lemon juice may be added to apple juice, 1 1/2 tsp to the cup.", {}, "", "", false, false},
    {"Do not cut the sugar or swap a sweetener for it, and do not double the batch: it may not set or keep.", {}, "", "", false, false},
    {"Or use bought pectin and follow the directions in its package to the letter, recipe and steps; the times of this table hold for such a jelly too.", {}, "pectin directions followed", "", false, true}};
constexpr sv a638[] = {"apple-juice"};
constexpr recipe_part a639[] = {{a638, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "strained, home-extracted"},
    {a94, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::least, part_role::sugar, false, false, false, "", "", ""},
    {a571, "tsp", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, true, false, "", "", ""}};
constexpr sv a640[] = {"blackberry-juice"};
constexpr recipe_part a641[] = {{a640, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "strained, home-extracted"},
    {a94, "cup", {3, 1}, {4, 1}, "", {0, 1}, part_limit::between, part_role::sugar, false, false, false, "", "", ""}};
constexpr sv a642[] = {"crab-apple-juice"};
constexpr recipe_part a643[] = {{a642, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "strained, home-extracted"},
    {a94, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::sugar, false, false, false, "", "", ""}};
constexpr sv a644[] = {"grape-juice"};
constexpr recipe_part a645[] = {{a644, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "strained, home-extracted"},
    {a94, "cup", {3, 1}, {4, 1}, "", {0, 1}, part_limit::between, part_role::sugar, false, false, false, "", "", ""}};
constexpr sv a646[] = {"plum-juice"};
constexpr recipe_part a647[] = {{a646, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "strained, home-extracted"},
    {a94, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::least, part_role::sugar, false, false, false, "", "", ""}};
constexpr tested_recipe a648[] = {{"apple", "", "half-pint", 4, 5, a639},
    {"blackberry", "", "half-pint", 7, 8, a641},
    {"crab-apple", "", "half-pint", 4, 5, a643},
    {"grape", "", "half-pint", 8, 9, a645},
    {"plum", "", "half-pint", 8, 9, a647}};
constexpr citation a649[] = {{"usda-guide-7", "7", "7-5"}};
constexpr sv a650[] = {"bread-and-butter pickled jicama",
    "bread and butter jicama",
    "jicama bread and butter pickles",
    "pickled jicama",
    "jicama pickles",
    "pickled jicama cubes",
    "jicama encurtida",
    "jícama encurtida",
    "jicama en vinagre",
    "jícama en vinagre"};
constexpr sv a651[] = {"cubes"};
constexpr table a652[] = {{a651, "hot", "cubed jicama with onion and red bell pepper", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a653[] = {{"Peel the jicama.", {}, "peeled", "", false, false},
    {"Cut it in cubes; slice the onions thin and chop the pepper.", {}, "", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. No water goes into this pickle.", {}, "", "", false, false},
    {"Heat the vegetables in the boiling sweet vinegar.", {}, "boiled before filling", "", false, false},
    {"Fill the jars hot and cover with the liquid.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer vegetables, more sugar. Not allowed: less vinegar, added water, more vegetables.", {}, "", "", false, false}};
constexpr recipe_part a654[] = {{a356, "cup", {14, 1}, {14, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "cubed"},
    {a223, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "thinly sliced"},
    {a338, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a93, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a94, "cup", {45, 10}, {45, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a182, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a183, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a339, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a655[] = {{"", "", "pint", 6, 6, a654}};
constexpr citation a656[] = {{"usda-guide-6", "6", "6-18"}};
constexpr sv a657[] = {"spicy jicama relish",
    "jicama relish",
    "hot jicama relish",
    "spicy jícama relish",
    "jícama relish",
    "jicama pepper relish",
    "spicy jicama salsa",
    "yam bean relish",
    "relish de jícama",
    "relish de jicama"};
constexpr table a658[] = {{a86, "hot", "diced jicama with peppers and onion", 500, a431, "", "", "boiling-water-4", {}, "seen", 2, true, ""}};
constexpr condition a659[] = {{"Dice the jicama and the bell peppers.", {}, "", "", false, false},
    {"Never take more jicama, peppers or onions than printed.", {}, "", "", false, false},
    {"Add no other vegetable.", {}, "", "", false, false},
    {"Use white vinegar of at least 5 %, not homemade and not diluted, and never less than printed.", {}, "", "", false, false},
    {"Add no water.", {}, "", "", false, false},
    {"Wear gloves for hot peppers.", {}, "", "", false, false},
    {"Cook it as the recipe says and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener.", {}, "not thickened", "", false, false},
    {"Pint jars at most: no quart process is published.", {}, "", "", false, false}};
constexpr sv a660[] = {"yellow-bell-pepper"};
constexpr sv a661[] = {"hot-finger-pepper"};
constexpr recipe_part a662[] = {{a356, "cup", {9, 1}, {9, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "diced"},
    {a451, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "whole, in a bag"},
    {a114, "stick", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "2 inch"},
    {a93, "cup", {8, 1}, {8, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a94, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a211, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a660, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "diced"},
    {a338, "cup", {45, 10}, {45, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "diced"},
    {a223, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a661, "piece", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "about 6 inch, finely chopped, partly seeded"}};
constexpr tested_recipe a663[] = {{"", "", "pint", 7, 7, a662}};
constexpr citation a664[] = {{"usda-guide-6", "6", "6-30"},
    {"nchfp-jicama-relish", "", ""}};
constexpr sv a665[] = {"blender ketchup",
    "blender catsup",
    "blended ketchup",
    "blended tomato ketchup",
    "blender tomato ketchup"};
constexpr sv a666[] = {"ketchup",
    "ketchups",
    "catsup",
    "homemade ketchup",
    "tomato catsup",
    "kétchup",
    "cátsup",
    "ketchup de tomate",
    "salsa catsup",
    "salsa de tomate"};
constexpr table a667[] = {{a86, "hot", "blended tomatoes, onions and sweet peppers with vinegar and sugar, cooked down by one half", 125, a176, "", "", "boiling-water-3", {}, "seen", 2, true, "The same process as for tomato ketchup."}};
constexpr condition a668[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Peel the tomatoes and take out the cores.", {}, "peeled", "", false, false},
    {"Use no more onions and sweet peppers than printed, and no fewer tomatoes; add no other vegetable.", {}, "", "", false, false},
    {"Use vinegar of at least 5 %, not homemade, and never less than printed.", {}, "", "", false, false},
    {"Spices, sugar and salt are flavor and may be changed or cut.", {}, "", "", false, false},
    {"Blend the tomatoes, onions and peppers smooth.", {}, "", "", false, false},
    {"Cook it down by one half and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener.", {}, "not thickened", "", false, false},
    {"No acid need go into the jars; the vinegar of the recipe is enough.", {}, "", "", false, false},
    {"Pint jars at most: no quart process is published.", {}, "", "", false, false}};
constexpr sv a669[] = {"green-bell-pepper"};
constexpr recipe_part a670[] = {{a385, "lb", {24, 1}, {24, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "ripe"},
    {a223, "lb", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", ""},
    {a338, "lb", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", ""},
    {a669, "lb", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", ""},
    {a93, "cup", {9, 1}, {9, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a94, "cup", {9, 1}, {9, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a158, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a199, "tbsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a226, "tbsp", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "ground"},
    {a530, "tsp", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "whole"},
    {a112, "tbsp", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "whole"},
    {a114, "stick", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a671[] = {{"", "", "pint", 9, 9, a670}};
constexpr citation a672[] = {{"usda-guide-3", "3", "3-18"}};
constexpr sv a673[] = {"country western ketchup",
    "country western catsup",
    "western ketchup",
    "country-style western ketchup"};
constexpr table a674[] = {{a86, "hot", "sieved tomatoes with chiles, vinegar and spices, cooked down by one half", 125, a176, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a675[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Peel the tomatoes and take out the cores.", {}, "peeled", "", false, false},
    {"Use no more chiles than printed, and no fewer tomatoes; take the seeds out of the chiles.", {}, "", "", false, false},
    {"Put no onions in, though the printed steps speak of them; add no other vegetable.", {}, "", "", false, false},
    {"Use vinegar of at least 5 %, not homemade, and never less than printed.", {}, "", "", false, false},
    {"Spices, sugar and salt are flavor and may be changed or cut.", {}, "", "", false, false},
    {"Put the cooked tomatoes and chiles through a sieve or a food mill.", {}, "sieved", "", false, false},
    {"Cook it down by one half and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener.", {}, "not thickened", "", false, false},
    {"No acid need go into the jars; the vinegar of the recipe is enough.", {}, "", "", false, false},
    {"Wear gloves for hot peppers.", {}, "", "", false, false},
    {"Pint jars at most: no quart process is published.", {}, "", "", false, false}};
constexpr sv a676[] = {"chile-pepper"};
constexpr sv a677[] = {"paprika"};
constexpr sv a678[] = {"black-peppercorn"};
constexpr sv a679[] = {"bay-leaf"};
constexpr recipe_part a680[] = {{a385, "lb", {24, 1}, {24, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "ripe"},
    {a676, "piece", {5, 1}, {5, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "sliced, seeded"},
    {a198, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a93, "cup", {8, 3}, {8, 3}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a94, "cup", {125, 100}, {125, 100}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a226, "tsp", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "ground"},
    {a677, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a530, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "whole"},
    {a199, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a678, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "whole"},
    {a182, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a679, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a681[] = {{"", "", "pint", 6, 7, a680}};
constexpr sv a682[] = {"mango sauce",
    "mango sauces",
    "sweet mango sauce"};
constexpr table a683[] = {{a86, "hot", "puree of slightly under-ripe to just-ripe mango with lemon juice and ascorbic acid", 250, a177, "", "", "boiling-water-3", {}, "seen", 2, false, "Read in two text copies of the 2015 guide. One state Extension says it has no guideline for ripe mango or mango sauce; where publications differ the stricter one stands, so this table accepts nothing."}};
constexpr condition a684[] = {{"Use slightly under-ripe to just-ripe mango; mango loses acid as it ripens, and fully ripe mango has no process.", {}, "under-ripe", "", false, false},
    {"Wear gloves: raw green mango can irritate the skin like poison ivy.", {}, "", "", false, false},
    {"Peel the mango and puree the flesh smooth.", {}, "peeled", "", false, false},
    {"Both the bottled lemon juice and the ascorbic acid are needed, and neither may be cut; no more puree may go in. Honey, sugar and spices may be changed.", {}, "", "", false, false},
    {"Heat everything to 200 F, stirring all the time, and fill the jars while it is hot.", {}, "boiled before filling", "", false, false},
    {"Half-pint jars only: no process exists for larger ones.", {}, "", "", false, false}};
constexpr sv a685[] = {"mango-puree"};
constexpr sv a686[] = {"honey"};
constexpr sv a687[] = {"ascorbic-acid"};
constexpr sv a688[] = {"ground-nutmeg"};
constexpr recipe_part a689[] = {{a685, "cup", {55, 10}, {55, 10}, "lb", {325, 100}, part_limit::most, part_role::acid_food, true, false, false, "", "", "slightly under-ripe to just-ripe mango"},
    {a686, "tbsp", {6, 1}, {6, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a581, "tbsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a94, "cup", {75, 100}, {75, 100}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a687, "tsp", {25, 10}, {25, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "7500 mg"},
    {a96, "tsp", {125, 1000}, {125, 1000}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a688, "tsp", {125, 1000}, {125, 1000}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a690[] = {{"", "", "half-pint", 6, 6, a689}};
constexpr citation a691[] = {{"usda-guide-2", "2", "2-17"},
    {"nchfp-mango-sauce", "", ""},
    {"oregon-mangoes", "", ""}};
constexpr sv a692[] = {"green mangoes",
    "green mango",
    "green mangos",
    "unripe mangoes",
    "unripe mango",
    "unripe mangos",
    "mangos verdes",
    "mango verde"};
constexpr table a693[] = {{a120, "hot", "peeled slices of green firm mango in light or medium syrup", 500, a133, "", "", "boiling-water-4", {}, "seen-part", 1, true, "Read on the page: 15 min for pints up to 1,000 ft, and the four bands, the third printed as 3,000 to 6,000 ft. From memory: the other times of pints, the headspace, and the steps of quarts; the 20 min of quarts were read on a private page only."}};
constexpr condition a694[] = {{"Use only green, firm mangoes: mango loses acid as it ripens, and ripe mango has no process.", {}, "under-ripe", "", false, false},
    {"Wear gloves: raw green mango can irritate the skin like poison ivy.", {}, "", "", false, false},
    {"Peel the mangoes and slice the flesh off the pit.", {}, "peeled", "", false, false},
    {"Put the slices in hot light or medium syrup, bring to a boil and cook 2 minutes.", {}, "boiled before filling", "", false, false},
    {"Fill the jars with the hot slices and cover with the boiling syrup.", {}, "covered with liquid", "", false, false}};
constexpr citation a695[] = {{"nchfp-green-mangoes", "", ""},
    {"oregon-mangoes", "", ""}};
constexpr sv a696[] = {"beef stock",
    "beef broth",
    "beef bone broth",
    "beef bone stock"};
constexpr sv a697[] = {"stock",
    "stocks",
    "broth",
    "broths",
    "meat stock",
    "meat broth",
    "bone broth",
    "bone stock"};
constexpr sv a698[] = {"stock"};
constexpr table a699[] = {{a698, "hot", "strained broth, meat picked off the bones may go back in", 1000, a256, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "The guide lets meat picked from the bones go back in and sets no size. A University of Wisconsin Extension chart (so headed where it was read) keeps 20 and 25 min for bits of at most 1/4 inch and asks 75 and 90 min for larger pieces; the safer reading is taken."}};
constexpr condition a700[] = {{"Crack or saw fresh beef bones, rinse them and simmer them 3 to 4 hours in water.", {}, "boiled before filling", "", false, false},
    {"Take the bones out.", {}, "bones removed", "", false, false},
    {"Let the stock cool and take off the fat.", {}, "fat removed", "", false, false},
    {"Only bits of meat picked from these bones, at most 1/4 inch in size, may go back in.", {}, "", "", false, false},
    {"This is no process for jars packed with meat or vegetables.", {}, "", "", false, false},
    {"Reheat the stock to a boil before filling.", {}, "reheated to a boil", "not-reheated", false, false},
    {"Add nothing that thickens it.", {}, "not thickened", "", false, false}};
constexpr citation a701[] = {{"usda-guide-5", "5", "5-7"},
    {"wisconsin-stock-chart", "", ""}};
constexpr sv a702[] = {"chicken stock",
    "chicken broth",
    "chicken bone broth",
    "turkey stock",
    "turkey broth",
    "turkey bone broth",
    "poultry stock",
    "poultry broth"};
constexpr condition a703[] = {{"Simmer the large carcass bones 30 to 45 minutes in water, until the meat comes off easily.", {}, "boiled before filling", "", false, false},
    {"Take the bones out.", {}, "bones removed", "", false, false},
    {"Let the stock cool and take off the fat.", {}, "fat removed", "", false, false},
    {"Only bits of meat picked from these bones, at most 1/4 inch in size, may go back in.", {}, "", "", false, false},
    {"This is no process for jars packed with meat or vegetables.", {}, "", "", false, false},
    {"Reheat the stock to a boil before filling.", {}, "reheated to a boil", "not-reheated", false, false},
    {"Add nothing that thickens it.", {}, "not thickened", "", false, false}};
constexpr sv a704[] = {"meat strips",
    "meat cubes",
    "meat chunks",
    "cubed meat",
    "stew meat",
    "stewing meat",
    "stew beef",
    "stewing beef",
    "stewing steak",
    "braising steak",
    "beef stew meat",
    "beef strips",
    "beef cubes",
    "beef chunks",
    "cubed beef",
    "diced beef",
    "pork strips",
    "pork cubes",
    "pork chunks",
    "cubed pork",
    "diced pork",
    "lamb strips",
    "lamb cubes",
    "lamb chunks",
    "cubed lamb",
    "diced lamb",
    "veal strips",
    "veal cubes",
    "veal chunks",
    "cubed veal",
    "carne en trozos",
    "carne en cubos"};
constexpr sv a705[] = {"meat",
    "red meat",
    "beef",
    "pork",
    "lamb",
    "veal",
    "carne",
    "carne de res",
    "carne de puerco",
    "carne de cerdo",
    "cerdo",
    "cordero",
    "ternera",
    "venison",
    "deer",
    "deer meat",
    "bear",
    "bear meat",
    "carne de venado",
    "venado",
    "venison cubes",
    "venison chunks",
    "venison strips",
    "venison stew meat",
    "cubed venison",
    "deer cubes",
    "deer chunks",
    "deer strips",
    "deer stew meat",
    "bear cubes",
    "bear chunks",
    "bear strips"};
constexpr sv a706[] = {"strips",
    "cubes",
    "chunks"};
constexpr table a707[] = {{a706, "hot", "strips, cubes or chunks, large bones removed", 1000, a236, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, ""},
    {a706, "raw", "strips, cubes or chunks, large bones removed", 1000, a236, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "One copy of the 1994 text lists the hot pack alone in its dial table; the other copies list hot and raw."}};
constexpr condition a708[] = {{"Use fresh meat, or thawed in the refrigerator; never cured, brined, corned or smoked meat.", {}, "not smoked", "", false, false},
    {"Use well chilled meat.", {}, "chilled", "", false, false},
    {"Soak strong-tasting game 1 hour in water with 1 tbsp of salt to the quart, and rinse it.", {}, "", "", false, false},
    {"Cut off gristle, bruised spots and excess fat.", {}, "fat removed", "", false, false},
    {"Take out the large bones: meat on the bone has no tested process here.", {}, "bones removed", "", false, false},
    {"Cut it in strips, cubes or chunks; the guide sets no size, one Extension page makes the strips 1 inch wide.", {}, "", "", false, false},
    {"Use no flour, batter or other thickener.", {}, "not thickened", "", false, false},
    {"Roast, stew or brown the meat in a little fat until rare.", a80, "meat precooked", "", false, false},
    {"Fill the jars loosely.", {}, "packed loosely", "", false, false},
    {"Cover with boiling broth, drippings, water or tomato juice.", a80, "covered with liquid", "", false, false},
    {"The pieces go in raw.", a146, "meat not precooked", "", false, false},
    {"Add no liquid.", a146, "no liquid added", "", false, false}};
constexpr sv a709[] = {"mexican tomato sauce",
    "mexican-style tomato sauce",
    "mexican tomato sauce with chiles"};
constexpr table a710[] = {{a86, "hot", "chopped peeled tomatoes with peeled chiles and onions", 1000, a256, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 1, true, "Some copies head the upper weighted band \"above 1001 ft\"; the guide says above 1,000 ft. One private page uses boiling water: wrong."}};
constexpr condition a711[] = {{"Keep to the printed recipe; its 1/2 cup of vinegar is flavor and does not make the sauce fit for boiling water.", {}, "", "", false, false},
    {"Peel the tomatoes and the chiles, and take the seeds out of the chiles.", {}, "peeled", "", false, false},
    {"Use no more chiles and onions, and no fewer tomatoes, than printed.", {}, "", "", false, false},
    {"Simmer it covered for 10 minutes and fill the jars while it is hot.", {}, "boiled before filling", "", false, false}};
constexpr sv a712[] = {"oregano"};
constexpr recipe_part a713[] = {{a385, "lb", {18, 1}, {18, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh"},
    {a676, "lb", {25, 10}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "as purchased, peeled, seeded, chopped"},
    {a223, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a198, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a712, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a93, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""}};
constexpr tested_recipe a714[] = {{"", "", "quart", 7, 7, a713}};
constexpr citation a715[] = {{"usda-guide-3", "3", "3-15"}};
constexpr sv a716[] = {"mincemeat",
    "mincemeat pie filling",
    "mincemeat filling",
    "festive mincemeat",
    "festive mincemeat pie filling"};
constexpr sv a717[] = {"mince",
    "minced meat"};
constexpr jar_minutes a718[] = {{"quart", a235}};
constexpr table a719[] = {{a86, "hot", "ground meat, suet, apples, raisins", 1000, a718, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "The table prints its last dial band as 6,000 to 8,000 ft, so 6,000 ft stands in two bands; read as 6,001 like every other table of the guide. At exactly 6,000 ft, 14 psi is the safer reading."}};
constexpr condition a720[] = {{"Keep to the printed recipe; it holds meat and suet, so only a pressure canner will do.", {}, "", "", false, false},
    {"Cook the meat before it is ground with the suet and the apples.", {}, "meat precooked", "", false, false},
    {"Peel and core the apples.", {}, "peeled", "", false, false},
    {"Simmer the whole mixture for 1 hour, stirring often, and fill the jars while it is hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener.", {}, "not thickened", "", false, false},
    {"The table lists quart jars only; a smaller jar takes the quart time.", {}, "", "", false, false}};
constexpr sv a721[] = {"suet"};
constexpr sv a722[] = {"raisin"};
constexpr recipe_part a723[] = {{a380, "lb", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", ""},
    {a721, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::fat, false, false, false, "", "", "finely chopped"},
    {a91, "quart", {5, 1}, {5, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", "chopped"},
    {a722, "lb", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::acid_food, false, false, false, "", "", "dark, seedless"},
    {a395, "lb", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::acid_food, false, false, false, "", "", ""},
    {a92, "quart", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", ""},
    {a96, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a688, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a94, "cup", {5, 1}, {5, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a198, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""}};
constexpr sv a724[] = {"ground-venison"};
constexpr sv a725[] = {"sausage"};
constexpr recipe_part a726[] = {{a724, "lb", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", ""},
    {a725, "lb", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", ""},
    {a721, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::fat, false, false, false, "", "", "finely chopped"},
    {a91, "quart", {5, 1}, {5, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", "chopped"},
    {a722, "lb", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::acid_food, false, false, false, "", "", "dark, seedless"},
    {a395, "lb", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::acid_food, false, false, false, "", "", ""},
    {a92, "quart", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", ""},
    {a96, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a688, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a94, "cup", {5, 1}, {5, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a198, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""}};
constexpr tested_recipe a727[] = {{"beef", "", "quart", 7, 7, a723},
    {"venison", "", "quart", 7, 7, a726}};
constexpr citation a728[] = {{"usda-guide-2", "2", "2-28"}};
constexpr sv a729[] = {"pickled mixed vegetables",
    "mixed vegetable pickles",
    "mixed pickles",
    "mixed pickle",
    "pickled vegetable mix",
    "mixed pickled vegetables",
    "pickled mixed veg",
    "mustard mixed pickles",
    "verduras mixtas encurtidas",
    "vegetales mixtos encurtidos",
    "encurtido mixto",
    "encurtidos mixtos"};
constexpr sv a730[] = {"as-recipe",
    "mixed"};
constexpr jar_minutes a731[] = {{"pint", a30},
    {"quart", a87}};
constexpr table a732[] = {{a730, "hot", "cucumber in 1 inch slices, quartered small onions, celery 1 inch, carrots 1/2 inch, sweet red pepper 1/2 inch, cauliflowerets", 500, a731, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a733[] = {{"Wash the cucumbers; cut 1/16 inch off the blossom end and discard it.", {}, "blossom ends removed", "", false, false},
    {"Cut cucumbers in 1-inch slices, celery in 1-inch and carrots and pepper in 1/2-inch pieces, cauliflower in flowerets; quarter the onions.", {}, "", "", false, false},
    {"Drain the vegetables well.", {}, "drained", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. No water goes into this pickle.", {}, "", "", false, false},
    {"Heat the vegetables in the boiling pickling liquid.", {}, "boiled before filling", "", false, false},
    {"Fill the jars hot and cover with the liquid.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer vegetables, more sugar. Not allowed: less vinegar, added water, more or other vegetables.", {}, "", "", false, false}};
constexpr sv a734[] = {"celery"};
constexpr sv a735[] = {"cauliflower"};
constexpr sv a736[] = {"prepared-mustard"};
constexpr recipe_part a737[] = {{a449, "lb", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "4 to 5 inch, cut in 1 inch slices"},
    {a223, "lb", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "peeled, quartered"},
    {a734, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "1 inch pieces"},
    {a324, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "peeled, 1/2 inch pieces"},
    {a338, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "1/2 inch pieces"},
    {a735, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "flowerets"},
    {a93, "cup", {5, 1}, {5, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a736, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a158, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a94, "cup", {35, 10}, {35, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a183, "tbsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a182, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a112, "tsp", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a339, "tsp", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a738[] = {{"", "", "pint", 10, 10, a737}};
constexpr citation a739[] = {{"usda-guide-6", "6", "6-25"}};
constexpr sv a740[] = {"mixed vegetables",
    "mixed veg",
    "mixed vegetable",
    "vegetable mix",
    "vegetable mixture"};
constexpr sv a741[] = {"mixed"};
constexpr table a742[] = {{a741, "hot", "carrots, whole kernel corn, cut green beans, lima beans, tomatoes, diced zucchini, or allowed swaps", 1000, a236, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "One garbled state copy prints other quart times; the guide's table stands. Most copies bar winter squash, a later one bars squash altogether."}};
constexpr condition a743[] = {{"Every vegetable must have canning directions of its own; zucchini is allowed here, diced.", {}, "", "", false, false},
    {"Leave out leafy greens, dried beans, cream style corn, sweet potatoes and winter squash, and any squash but the zucchini.", {}, "", "", false, false},
    {"Prepare each vegetable as for canning it alone, such as corn scalded and cut from the cob.", {}, "", "", false, false},
    {"Peel whatever its own directions peel, such as carrots.", {}, "peeled", "", false, false},
    {"Mix them, cover with water and bring to a boil.", {}, "boiled before filling", "", false, false},
    {"Boil 5 minutes.", {}, "boiled 5 min", "", false, false},
    {"Fill the jars with the hot pieces and their liquid.", {}, "covered with liquid", "", false, false}};
constexpr sv a744[] = {"asparagus",
    "beans-lima-fresh",
    "beans-snap",
    "beets",
    "carrots",
    "corn-whole-kernel",
    "mushrooms",
    "okra",
    "onions",
    "peas-green",
    "peppers",
    "potatoes-white"};
constexpr citation a745[] = {{"usda-guide-4", "4", "4-12"}};
constexpr sv a746[] = {"marinated whole mushrooms",
    "marinated mushrooms",
    "marinated mushroom",
    "pickled mushrooms",
    "pickled mushroom",
    "pickled whole mushrooms",
    "pickled button mushrooms",
    "marinated button mushrooms",
    "champiñones marinados",
    "champinones marinados",
    "champiñones en escabeche",
    "champinones en escabeche",
    "champiñones encurtidos",
    "champinones encurtidos"};
constexpr jar_minutes a747[] = {{"half-pint", a121}};
constexpr table a748[] = {{a174, "hot", "small whole unopened mushrooms, caps under 1-1/4 inch, simmered 5 min with bottled lemon juice and water, drained; oil and vinegar marinade", 500, a747, "", "", "boiling-water-4", {}, "seen", 2, true, "The table was read whole, once in an excerpt that showed its publisher but no page address."}};
constexpr condition a749[] = {{"Use only grown mushrooms; never wild ones.", {}, "cultivated mushrooms", "", false, false},
    {"Take small unopened ones with caps under 1 1/4 inches, and leave them whole.", {}, "", "", false, false},
    {"Simmer them 5 minutes in water with the bottled lemon juice; it belongs to the acid of the recipe.", {}, "boiled 5 min", "", false, false},
    {"Drain them.", {}, "drained", "", false, false},
    {"Use 2 1/2 cups of vinegar of 5 % acidity, 1/2 cup of bottled lemon juice and at most 2 cups of oil to 7 lb.", {}, "", "", false, false},
    {"Heat the marinade to a boil.", {}, "", "", false, false},
    {"Put at most 1/4 clove of garlic and 2 to 3 peppercorns in each half-pint.", {}, "", "", false, false},
    {"Cover the mushrooms with the hot marinade.", {}, "covered with liquid", "", false, false},
    {"Half-pint jars only: no process exists for a larger jar.", {}, "", "", false, false},
    {"Allowed changes: more vinegar, fewer mushrooms, less oil. Not allowed: less vinegar or lemon juice, more oil, onion, garlic or pimento.", {}, "", "", false, false}};
constexpr sv a750[] = {"mushroom"};
constexpr sv a751[] = {"olive-oil",
    "salad-oil"};
constexpr sv a752[] = {"dried-basil"};
constexpr sv a753[] = {"pimento"};
constexpr recipe_part a754[] = {{a750, "lb", {7, 1}, {7, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "small, whole, unopened, caps under 1-1/4 inch"},
    {a581, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "in the simmering water (then drained)"},
    {a751, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::fat, false, false, false, "", "", ""},
    {a93, "cup", {25, 10}, {25, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a712, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a752, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a158, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a223, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a753, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "diced"},
    {a156, "clove", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "quartered, 1/4 clove per half-pint"},
    {a678, "piece", {25, 1}, {25, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "2 to 3 per half-pint"}};
constexpr tested_recipe a755[] = {{"", "", "half-pint", 9, 9, a754}};
constexpr sv a756[] = {"mushrooms",
    "mushroom",
    "button mushrooms",
    "white mushrooms",
    "cultivated mushrooms",
    "domestic mushrooms",
    "champiñones",
    "champinones"};
constexpr sv a757[] = {"whole",
    "cut"};
constexpr int a758[] = {45};
constexpr jar_minutes a759[] = {{"half-pint", a758},
    {"pint", a758}};
constexpr table a760[] = {{a757, "hot", "small whole, larger ones cut", 1000, a759, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, ""}};
constexpr condition a761[] = {{"Use only grown mushrooms, small to medium, with closed caps; never wild ones.", {}, "cultivated mushrooms", "", false, false},
    {"Soak them 10 minutes in cold water and wash them; leave small ones whole and cut large ones.", {}, "", "", false, false},
    {"Cover them with water and bring to a boil.", {}, "boiled before filling", "", false, false},
    {"Boil 5 minutes.", {}, "boiled 5 min", "", false, false},
    {"Use fresh hot water, not the water they were boiled in.", {}, "fresh water used", "", false, false},
    {"Cover the mushrooms with it.", {}, "covered with liquid", "", false, false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false, false}};
constexpr citation a762[] = {{"usda-guide-4", "4", "4-13"}};
constexpr sv a763[] = {"nectarines",
    "nectarine",
    "yellow nectarines",
    "yellow nectarine",
    "nectarine halves",
    "nectarine slices",
    "sliced nectarines",
    "halved nectarines",
    "nectarinas",
    "nectarina"};
constexpr table a764[] = {{a139, "hot", "halved or sliced, unpeeled, yellow-flesh", 500, a141, "", "", "boiling-water-4", {}, "seen", 2, true, "The guide does not tell yellow from white flesh; the refusal of white-fleshed kinds is newer Extension advice."},
    {a139, "hot", "halved or sliced, unpeeled, yellow-flesh", 500, a142, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, ""},
    {a139, "raw", "halved or sliced, unpeeled, yellow-flesh", 500, a144, "", "", "boiling-water-4", {}, "seen", 2, true, "A raw pack is allowed, but of poor quality."},
    {a139, "raw", "halved or sliced, unpeeled, yellow-flesh", 500, a142, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, "A raw pack is allowed, but of poor quality."}};
constexpr condition a765[] = {{"Use only yellow-fleshed nectarines: the pH of white-fleshed kinds can be over 4.6, and no process of any kind exists for them; freeze them.", {}, "yellow flesh", "", false, false},
    {"Wash the nectarines and leave the skins on.", {}, "unpeeled", "", false, false},
    {"Cut them in halves or slices and take out the pits.", {}, "", "", false, false},
    {"A dip against browning, 1 tsp of ascorbic acid to a gallon of water, keeps the color only; it adds no acid to the jar.", {}, "", "", false, false},
    {"Put the fruit in water, apple juice, white grape juice or very light to medium syrup and bring to a boil.", a80, "boiled before filling", "", false, false},
    {"Fill the jars with the hot fruit and cover with the hot cooking liquid.", a80, "covered with liquid", "", false, false},
    {"Fill the jars with raw fruit and cover with hot water, juice or syrup.", a146, "covered with liquid", "", false, false},
    {"Sugar is for flavor, color and shape; it may be left out.", {}, "", "", false, false}};
constexpr sv a766[] = {"dilled okra",
    "pickled okra",
    "okra pickles",
    "pickled dilled okra",
    "okra dill pickles",
    "dill pickled okra",
    "pickled lady's fingers",
    "pickled ladies' fingers",
    "quimbombo encurtido",
    "quimbombó encurtido"};
constexpr table a767[] = {{a174, "hot", "small whole okra pods, raw in jar, covered with boiling pickling solution", 500, a152, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once. The table calls this pack hot although the pods go in raw; a raw pack covered with the boiling liquid is the same process."}};
constexpr condition a768[] = {{"Wash small pods, trim them and leave them whole.", {}, "", "", false, false},
    {"Put one clove of garlic in each jar.", {}, "", "", false, false},
    {"The liquid is equal parts of vinegar and water; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"Fill the raw pods in and cover them with the boiling liquid; the table calls this a hot pack, so a plan says `pack: hot`.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, less okra, fewer peppers. Not allowed: less vinegar, more water, okra, peppers or garlic.", {}, "", "", false, false}};
constexpr sv a769[] = {"okra"};
constexpr recipe_part a770[] = {{a769, "lb", {7, 1}, {7, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "small whole pods"},
    {a157, "piece", {6, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", ""},
    {a159, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a156, "clove", {8, 1}, {9, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "1 per jar"},
    {a158, "cup", {2, 3}, {2, 3}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a111, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a93, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""}};
constexpr tested_recipe a771[] = {{"", "", "pint", 8, 9, a770}};
constexpr citation a772[] = {{"usda-guide-6", "6", "6-19"}};
constexpr sv a773[] = {"okra",
    "okras",
    "okra pods",
    "lady's fingers",
    "ladies' fingers",
    "bhindi",
    "quimbombo",
    "quimbombó"};
constexpr jar_minutes a774[] = {{"pint", a255},
    {"quart", a167}};
constexpr table a775[] = {{a253, "hot", "pods whole or cut in 1-inch pieces", 1000, a774, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, ""}};
constexpr condition a776[] = {{"Cover with hot water, boil 2 minutes and drain.", {}, "boiled before filling", "", false, false},
    {"Fill the jars with the hot okra and its cooking liquid.", {}, "covered with liquid", "", false, false}};
constexpr citation a777[] = {{"usda-guide-4", "4", "4-14"}};
constexpr sv a778[] = {"onions",
    "onion",
    "pearl onions",
    "pearl onion",
    "boiling onions",
    "yellow onions",
    "white onions",
    "red onions",
    "cebolla",
    "cebollas"};
constexpr jar_minutes a779[] = {{"pint", a167},
    {"quart", a167}};
constexpr table a780[] = {{a253, "hot", "whole, at most 1 inch across, or 1-inch pieces", 1000, a779, "extension-dial", "low-acid-weighted", "", {}, "seen", 1, true, "Not in the USDA guide; two Extension pages agree on the minutes. One allows whole onions up to 1 inch across, the other cuts 1-inch sections; only the latter prints the dial bands above 2,000 ft."}};
constexpr condition a781[] = {{"Wash the onions and peel them.", {}, "peeled", "", false, false},
    {"Leave onions whole only up to 1 inch across; cut larger ones in 1-inch pieces.", {}, "", "", false, false},
    {"Bring them to a boil in water.", {}, "boiled before filling", "", false, false},
    {"Boil 5 minutes.", {}, "boiled 5 min", "", false, false},
    {"Fill the jars hot and cover with the cooking liquid or with boiling water.", {}, "covered with liquid", "", false, false}};
constexpr citation a782[] = {{"sdsu-onion", "", ""},
    {"extension-onion-answer", "", ""}};
constexpr sv a783[] = {"oysters",
    "oyster",
    "shucked oysters",
    "oyster meats",
    "ostra",
    "ostras",
    "ostion",
    "ostiones",
    "ostión"};
constexpr sv a784[] = {"shucked"};
constexpr jar_minutes a785[] = {{"half-pint", a190},
    {"pint", a190}};
constexpr table a786[] = {{a784, "hot", "shucked meats", 1000, a785, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "The table has no column for the pack: meats covered with hot water are written as hot. Newer text says fresh boiling water, older text hot water."}};
constexpr condition a787[] = {{"Keep the oysters alive on ice until you can them.", {}, "", "", false, false},
    {"Heat them in the shell 5 to 7 minutes at 400 F, cool them briefly in ice water and shuck them.", {}, "meat precooked", "", false, false},
    {"Wash the meats in water with 1/2 cup of salt to the gallon, and drain.", {}, "drained", "", false, false},
    {"Cover with fresh boiling water.", {}, "covered with liquid", "", false, false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false, false}};
constexpr citation a788[] = {{"usda-guide-5", "5", "5-12"}};
constexpr sv a789[] = {"peaches",
    "peach",
    "yellow peaches",
    "yellow peach",
    "peach halves",
    "peach slices",
    "sliced peaches",
    "halved peaches",
    "freestone peaches",
    "clingstone peaches",
    "cling peaches",
    "duraznos",
    "durazno",
    "melocotones",
    "melocotón",
    "melocoton"};
constexpr table a790[] = {{a139, "hot", "halved or sliced, peeled, yellow-flesh", 500, a141, "", "", "boiling-water-4", {}, "seen", 2, true, "The guide does not tell yellow from white flesh; the refusal of white-fleshed kinds is newer Extension advice."},
    {a139, "hot", "halved or sliced, peeled, yellow-flesh", 500, a142, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, ""},
    {a139, "raw", "halved or sliced, peeled, yellow-flesh", 500, a144, "", "", "boiling-water-4", {}, "seen", 2, true, "A raw pack is allowed, but of poor quality."},
    {a139, "raw", "halved or sliced, peeled, yellow-flesh", 500, a142, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, "A raw pack is allowed, but of poor quality."}};
constexpr condition a791[] = {{"Use only yellow-fleshed peaches: the pH of white-fleshed kinds can be over 4.6, and no process of any kind exists for them; freeze them.", {}, "yellow flesh", "", false, false},
    {"Dip the peaches in boiling water until the skins loosen, then in cold water, and peel them.", {}, "peeled", "", false, false},
    {"Cut them in halves or slices and take out the pits.", {}, "", "", false, false},
    {"A dip against browning, 1 tsp of ascorbic acid to a gallon of water, keeps the color only; it adds no acid to the jar.", {}, "", "", false, false},
    {"Put the fruit in water, apple juice, white grape juice or very light to medium syrup and bring to a boil.", a80, "boiled before filling", "", false, false},
    {"Fill the jars with the hot fruit and cover with the hot cooking liquid.", a80, "covered with liquid", "", false, false},
    {"Fill the jars with raw fruit and cover with hot water, juice or syrup.", a146, "covered with liquid", "", false, false},
    {"Sugar is for flavor, color and shape; it may be left out.", {}, "", "", false, false}};
constexpr citation a792[] = {{"usda-guide-2", "2", "2-19"},
    {"wisconsin-white-peaches", "", ""}};
constexpr sv a793[] = {"pickled pearl onions",
    "pickled pearl onion",
    "pickled onions",
    "pickled onion",
    "cocktail onions",
    "pickled cocktail onions",
    "pickled baby onions",
    "pickled silverskin onions",
    "cebollitas encurtidas",
    "cebollitas en vinagre",
    "cebollas perla encurtidas"};
constexpr table a794[] = {{a174, "hot", "peeled white pearl onions, simmered to half-cooked (about 5 min)", 500, a152, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a795[] = {{"Use white pearl onions only, and leave them whole.", {}, "", "", false, false},
    {"Peel them.", {}, "peeled", "", false, false},
    {"The liquid is 5 1/2 cups of vinegar to 1 cup of water; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"Simmer the onions in the pickling liquid until half-cooked, about 5 minutes.", {}, "boiled before filling", "", false, false},
    {"Fill the onions to 1 inch from the rim.", {}, "", "", false, false},
    {"Cover with the hot liquid to 1/2 inch from the rim.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer onions, more sugar. Not allowed: less vinegar, more water or more onions.", {}, "", "", false, false}};
constexpr sv a796[] = {"pearl-onion"};
constexpr recipe_part a797[] = {{a796, "cup", {8, 1}, {8, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "white, peeled"},
    {a93, "cup", {55, 10}, {55, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a111, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a158, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a94, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a182, "tsp", {8, 1}, {8, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "2 tsp per pint"},
    {a183, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "1 tsp per pint"}};
constexpr tested_recipe a798[] = {{"", "", "pint", 3, 4, a797}};
constexpr citation a799[] = {{"usda-guide-6", "6", "6-20"}};
constexpr sv a800[] = {"asian pears",
    "asian pear",
    "nashi",
    "nashi pears",
    "nashi pear",
    "japanese pears",
    "korean pears",
    "apple pears",
    "apple pear",
    "peras asiáticas",
    "peras asiaticas",
    "pera asiática"};
constexpr table a801[] = {{a139, "hot", "halved or sliced, peeled, cored", 500, a141, "", "", "boiling-water-4", {}, "seen", 2, true, "No amount of citric acid is printed for this fruit."}};
constexpr condition a802[] = {{"Peel and core the pears and cut them in halves or slices.", {}, "peeled", "", false, false},
    {"A dip against browning, 1 tsp of ascorbic acid to a gallon of water, keeps the color only; it adds no acid to the jar.", {}, "", "", false, false},
    {"Put them in water, juice or syrup and bring to a boil.", {}, "boiled before filling", "", false, false},
    {"Boil them 5 minutes.", {}, "boiled 5 min", "", false, false},
    {"Put bottled lemon juice into every jar: Asian pears are over pH 4.6. Half the amount is not safe.", {}, "", "", false, false},
    {"Fill the jars and cover the fruit with the hot cooking liquid.", {}, "covered with liquid", "", false, false},
    {"No puree of Asian pears: it has no process.", {}, "", "", false, false},
    {"Sugar is for flavor, color and shape; it may be left out.", {}, "", "", false, false}};
constexpr acid_choice a803[] = {{"bottled-lemon-juice", 3000, "1 tbsp of bottled lemon juice per pint, 2 tbsp per quart"}};
constexpr citation a804[] = {{"usda-guide-2", "2", "2-20"},
    {"nchfp-asian-pears", "", ""}};
constexpr sv a805[] = {"pears",
    "pear",
    "pear halves",
    "halved pears",
    "european pears",
    "bartlett pears",
    "williams pears",
    "bosc pears",
    "anjou pears",
    "comice pears",
    "peras",
    "pera"};
constexpr sv a806[] = {"halved"};
constexpr table a807[] = {{a806, "hot", "halved, peeled, cored (European types)", 500, a141, "", "", "boiling-water-4", {}, "seen", 2, true, "Hot pack only. One Extension sheet has times for a raw pack and marks them as not endorsed by USDA; not used."},
    {a806, "hot", "halved, peeled, cored (European types)", 500, a142, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, ""}};
constexpr condition a808[] = {{"Use European pears, which need no added acid; Asian pears have a table of their own and need lemon juice in every jar.", {}, "", "", false, false},
    {"Peel and core the pears and halve them.", {}, "peeled", "", false, false},
    {"A dip against browning, 1 tsp of ascorbic acid to a gallon of water, keeps the color only; it adds no acid to the jar.", {}, "", "", false, false},
    {"Put them in water, juice or syrup and bring to a boil.", {}, "boiled before filling", "", false, false},
    {"Boil them 5 minutes.", {}, "boiled 5 min", "", false, false},
    {"Fill the jars and cover the fruit with the hot cooking liquid.", {}, "covered with liquid", "", false, false},
    {"Sugar is for flavor, color and shape; it may be left out.", {}, "", "", false, false}};
constexpr citation a809[] = {{"usda-guide-2", "2", "2-19"},
    {"kstate-pears", "", ""}};
constexpr sv a810[] = {"green peas",
    "green pea",
    "english peas",
    "english pea",
    "garden peas",
    "garden pea",
    "shelling peas",
    "fresh green peas",
    "petits pois"};
constexpr sv a811[] = {"peas",
    "pea",
    "guisantes",
    "chicharos",
    "chícharos",
    "arvejas"};
constexpr sv a812[] = {"shelled"};
constexpr table a813[] = {{a812, "hot", "shelled young seeds", 1000, a779, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Old Canadian tables with 45 min for quarts are out of date and not used."},
    {a812, "raw", "shelled young seeds", 1000, a779, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Old Canadian tables with 45 min for quarts are out of date and not used."}};
constexpr condition a814[] = {{"Use young green peas out of the pod: no peas with edible pods, no field peas, no dried peas.", {}, "", "", false, false},
    {"Cover with boiling water, bring to a boil and boil 2 minutes.", a80, "boiled before filling", "", false, false},
    {"Fill the jars loosely.", a80, "packed loosely", "", false, false},
    {"Add the cooking liquid.", a80, "covered with liquid", "", false, false},
    {"Fill the jars without shaking or pressing down.", a146, "packed loosely", "", false, false},
    {"Add boiling water.", a146, "covered with liquid", "", false, false}};
constexpr sv a815[] = {"marinated peppers",
    "marinated pepper",
    "marinated bell peppers",
    "marinated sweet peppers",
    "marinated jalapenos",
    "marinated jalapeños",
    "marinated banana peppers",
    "marinated hungarian peppers",
    "marinated roasted peppers",
    "peppers marinated in oil and vinegar",
    "pimientos marinados",
    "pimientos en escabeche",
    "chiles marinados"};
constexpr sv a816[] = {"pickled peppers",
    "pickled pepper",
    "pimientos encurtidos",
    "pimientos en vinagre",
    "pickled green peppers",
    "pickled red peppers",
    "pickled yellow peppers",
    "pickled sweet peppers",
    "pickled chiles",
    "pickled chilies",
    "pickled chillies",
    "pickled chile peppers",
    "pickled chili peppers",
    "pickled chilli peppers",
    "chiles encurtidos",
    "chiles en vinagre",
    "pickled jalapenos",
    "pickled jalapeños",
    "pickled jalapeno",
    "pickled jalapeño",
    "pickled jalapeno peppers",
    "pickled jalapeño peppers",
    "jalapenos encurtidos",
    "jalapeños encurtidos",
    "jalapenos en vinagre",
    "jalapeños en vinagre",
    "pickled banana peppers",
    "pickled banana pepper"};
constexpr jar_minutes a817[] = {{"half-pint", a132},
    {"pint", a132}};
constexpr table a818[] = {{a548, "raw", "bell, Hungarian, banana or jalapeno, peeled, whole flattened or quartered; hot oil, vinegar and lemon marinade", 500, a817, "", "", "boiling-water-4", {}, "seen", 2, true, "All its numbers were read, once, on a page that wrongly speaks of a pressure canner; the table is one for boiling water."}};
constexpr condition a819[] = {{"Take the skins off.", {}, "peeled", "", false, false},
    {"Leave peppers whole and flatten them, or quarter large ones.", {}, "", "", false, false},
    {"Use 2 cups of white vinegar of 5 % acidity, 1 cup of bottled lemon juice and at most 1 cup of oil to 4 lb.", {}, "", "", false, false},
    {"Heat the marinade to a boil.", {}, "", "", false, false},
    {"Garlic may be left out; at most 1/4 clove goes in a half-pint.", {}, "", "", false, false},
    {"Cover the peppers with the hot marinade.", {}, "covered with liquid", "", false, false},
    {"The four kinds of pepper may replace each other, 4 lb in all. Allowed: more vinegar, fewer peppers, less oil. Not allowed: less vinegar or lemon juice, more oil, onion or garlic.", {}, "", "", false, false}};
constexpr sv a820[] = {"bell-pepper",
    "hungarian-pepper",
    "banana-pepper",
    "jalapeno-pepper"};
constexpr sv a821[] = {"prepared-horseradish"};
constexpr recipe_part a822[] = {{a820, "lb", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "peeled; whole flattened or quartered"},
    {a581, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a93, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a712, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a751, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::fat, false, false, false, "", "", ""},
    {a223, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a156, "clove", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", "quartered, 1/4 clove per half-pint"},
    {a821, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""}};
constexpr tested_recipe a823[] = {{"", "", "half-pint", 9, 9, a822}};
constexpr sv a824[] = {"peppers",
    "bell peppers",
    "bell pepper",
    "sweet peppers",
    "sweet pepper",
    "green peppers",
    "red peppers",
    "capsicum",
    "capsicums",
    "hot peppers",
    "hot pepper",
    "chiles",
    "chilies",
    "chillies",
    "chile peppers",
    "chile pepper",
    "chili peppers",
    "chili pepper",
    "chilli peppers",
    "chilli pepper",
    "green chiles",
    "green chilies",
    "green chillies",
    "green chile peppers",
    "green chili peppers",
    "fresh chiles",
    "jalapenos",
    "jalapeno",
    "jalapeños",
    "jalapeño",
    "jalapeno peppers",
    "jalapeño peppers",
    "pimientos",
    "pimiento",
    "pimentos",
    "pimento",
    "poblanos",
    "poblano",
    "poblano peppers",
    "anaheim peppers",
    "anaheim chiles",
    "serranos",
    "serrano peppers",
    "serrano chiles",
    "chiles verdes",
    "pimientos morrones",
    "pimiento morron"};
constexpr jar_minutes a825[] = {{"half-pint", a279},
    {"pint", a279}};
constexpr table a826[] = {{a548, "hot", "small whole and flattened, large quartered; cored, seeded, peeled", 1000, a825, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "The guide covers with fresh boiled water, one state copy with the cooking liquid. Equipment makers' copies peel chiles only; the guide peels all."}};
constexpr condition a827[] = {{"Take out cores and seeds; leave small peppers whole and quarter large ones. Wear gloves for hot peppers.", {}, "", "", false, false},
    {"Slit the skins, blister them in the heat or scald them, and peel.", {}, "peeled", "", false, false},
    {"Flatten whole peppers.", {}, "", "", false, false},
    {"Fill the jars loosely.", {}, "packed loosely", "", false, false},
    {"Cover with fresh boiled water.", {}, "covered with liquid", "", false, false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false, false}};
constexpr citation a828[] = {{"usda-guide-4", "4", "4-15"}};
constexpr sv a829[] = {"piccalilli",
    "piccalilli relish",
    "picalilli",
    "green tomato piccalilli",
    "green tomato and cabbage relish"};
constexpr sv a830[] = {"relish",
    "relishes"};
constexpr table a831[] = {{a86, "hot", "chopped green tomatoes, peppers, onions, cabbage; salted 12 h, pressed dry, boiled 30 min or to half volume", 500, a287, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a832[] = {{"Wash and chop the vegetables; green, unripe tomatoes only.", {}, "", "", false, false},
    {"Let them stand 12 hours with the salt, then drain and press out all the liquid.", {}, "drained", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. No water goes into this relish.", {}, "", "", false, false},
    {"Boil the vegetables gently in the sweet vinegar 30 minutes, or until the volume is half.", {}, "boiled before filling", "", false, false},
    {"Take the spice bag out and fill the jars hot.", {}, "", "", false, false},
    {"Allowed changes: more vinegar, fewer peppers, onions or cabbage, more sugar. Not allowed: less vinegar, added water, more of these vegetables.", {}, "", "", false, false}};
constexpr sv a833[] = {"cabbage"};
constexpr recipe_part a834[] = {{a529, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "chopped"},
    {a338, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a669, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a223, "cup", {225, 100}, {225, 100}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a833, "cup", {75, 10}, {75, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a158, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, true, "", "", "for the 12 h soak, drained"},
    {a451, "tbsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "in spice bag"},
    {a93, "cup", {45, 10}, {45, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a95, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""}};
constexpr tested_recipe a835[] = {{"", "", "half-pint", 9, 9, a834}};
constexpr citation a836[] = {{"usda-guide-6", "6", "6-27"}};
constexpr sv a837[] = {"14-day sweet pickles",
    "14-day pickles",
    "14 day sweet pickle",
    "fourteen-day sweet pickles",
    "fourteen day pickles",
    "two-week sweet pickles"};
constexpr sv a838[] = {"pickles",
    "pickle",
    "cucumber pickles",
    "pickled cucumbers",
    "pickled cucumber",
    "pepinillos",
    "pepinillos encurtidos",
    "pepinos encurtidos",
    "pepinillos en vinagre",
    "gherkins",
    "gherkin",
    "pickled gherkins",
    "pickled gherkin",
    "sweet pickles",
    "sweet pickle",
    "sweet cucumber pickles",
    "pepinillos dulces",
    "sliced sweet pickles",
    "sweet pickle slices",
    "sweet pickle chips"};
constexpr sv a839[] = {"whole",
    "strips",
    "sliced"};
constexpr table a840[] = {{a839, "raw", "cucumbers 2 to 5 inch, whole, strips or slices", 500, a731, "", "", "boiling-water-3", {}, "seen", 2, true, "Read whole in a text copy of the 2015 guide, page 6-12."}};
constexpr condition a841[] = {{"Wash the cucumbers; cut 1/16 inch off the blossom end and discard it.", {}, "blossom ends removed", "", false, false},
    {"Pack whole only cucumbers of one size.", {}, "", "", false, false},
    {"Brine them with 1/4 cup of salt on days 1, 3 and 5; pour each brine away.", {}, "drained", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. No water goes into the syrup.", {}, "", "", false, false},
    {"Add the sugar to the syrup in steps, as printed.", {}, "", "", false, false},
    {"Fill the jars and cover with the hot syrup.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer cucumbers. Not allowed: less vinegar, added water, more cucumbers.", {}, "", "", false, false}};
constexpr recipe_part a842[] = {{a449, "lb", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "2 to 5 inch, uniform size if whole"},
    {a158, "cup", {75, 100}, {75, 100}, "", {0, 1}, part_limit::free, part_role::salt, false, false, true, "", "", "1/4 cup on days 1, 3 and 5, drained"},
    {a183, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a451, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a94, "cup", {55, 10}, {55, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", "added in steps"},
    {a93, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""}};
constexpr tested_recipe a843[] = {{"", "", "pint", 5, 9, a842}};
constexpr citation a844[] = {{"usda-guide-6", "6", "6-11"}};
constexpr sv a845[] = {"squash bread-and-butter pickles",
    "yellow squash bread and butter pickles",
    "yellow squash pickles",
    "pickled yellow squash",
    "yellow summer squash pickles"};
constexpr sv a846[] = {"squash pickles",
    "summer squash pickles",
    "pickled summer squash",
    "summer squash bread-and-butter pickles",
    "pickled zucchini",
    "zucchini pickles",
    "pickled courgettes",
    "courgette pickles",
    "courgette pickle",
    "zucchini bread-and-butter pickles",
    "courgette bread-and-butter pickles",
    "calabacitas encurtidas",
    "calabacines encurtidos"};
constexpr table a847[] = {{a120, "hot", "slender zucchini or yellow summer squash 1 to 1-1/2 inch across, sliced 3/16 inch, in place of cucumbers", 500, a517, "", "", "boiling-water-3", {}, "seen", 2, true, "A named variation of the table for bread-and-butter pickles."}};
constexpr condition a848[] = {{"Use slender squash 1 to 1 1/2 inches across, in slices 3/16 inch thick.", {}, "", "", false, false},
    {"Chill squash and onions with the salt under ice, then drain.", {}, "drained", "", false, false},
    {"Use no pickling lime: that variation is printed for cucumbers only.", {}, "", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. No water goes into this pickle.", {}, "", "", false, false},
    {"Heat the slices in the boiling sweet vinegar.", {}, "boiled before filling", "", false, false},
    {"Fill the jars hot and cover with the liquid.", {}, "covered with liquid", "", false, false},
    {"Zucchini and yellow squash may replace each other, 6 lb in all. Allowed: more vinegar, less squash or onion, more sugar. Not allowed: less vinegar, added water, more squash or onion.", {}, "", "", false, false}};
constexpr sv a849[] = {"zucchini",
    "yellow-summer-squash"};
constexpr recipe_part a850[] = {{a849, "lb", {6, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "slender, 1 to 1 1/2 inch across, 3/16 inch slices"},
    {a223, "cup", {8, 1}, {8, 1}, "lb", {3, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "thinly sliced"},
    {a158, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, true, "", "", "ice soak, drained"},
    {a93, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a94, "cup", {45, 10}, {45, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a182, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a183, "tbsp", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a339, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a851[] = {{"", "", "pint", 8, 8, a850}};
constexpr citation a852[] = {{"usda-guide-6", "6", "6-9"}};
constexpr sv a853[] = {"bread-and-butter pickles",
    "bread-and-butter pickle",
    "bread-and-butter cucumbers",
    "bread-and-butter chips",
    "bread-and-butter pickle slices",
    "bread-and-butter cucumber pickles"};
constexpr sv a854[] = {"pickles",
    "pickle",
    "cucumber pickles",
    "pickled cucumbers",
    "pickled cucumber",
    "pepinillos",
    "pepinillos encurtidos",
    "pepinos encurtidos",
    "pepinillos en vinagre",
    "sweet pickles",
    "sweet pickle",
    "sweet cucumber pickles",
    "pepinillos dulces",
    "sliced sweet pickles",
    "sweet pickle slices",
    "sweet pickle chips"};
constexpr table a855[] = {{a120, "hot", "cucumbers sliced 3/16 inch with sliced onions", 500, a517, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a856[] = {{"Wash the cucumbers; cut 1/16 inch off the blossom end and discard it.", {}, "blossom ends removed", "", false, false},
    {"Cut the cucumbers in slices 3/16 inch thick, and slice the onions thin.", {}, "", "", false, false},
    {"Chill them with the salt under ice, then drain.", {}, "drained", "", false, false},
    {"Where pickling lime is used for firmness, take it out again: rinse, soak 1 hour in fresh water and drain, three times in all.", {}, "lime rinsed out", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. No water goes into this pickle.", {}, "", "", false, false},
    {"Heat the slices in the boiling sweet vinegar.", {}, "boiled before filling", "", false, false},
    {"Fill the jars hot and cover with the liquid.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer cucumbers or onions, more sugar. Not allowed: less vinegar, added water, more cucumbers or onions.", {}, "", "", false, false}};
constexpr recipe_part a857[] = {{a449, "lb", {6, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "4 to 5 inch, 3/16 inch slices"},
    {a223, "cup", {8, 1}, {8, 1}, "lb", {3, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "thinly sliced"},
    {a158, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, true, "", "", "ice soak, drained"},
    {a93, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a94, "cup", {45, 10}, {45, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a182, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a183, "tbsp", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a339, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a562, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, true, "", "", "only for the firmer variation, rinsed off"}};
constexpr tested_recipe a858[] = {{"", "", "pint", 8, 8, a857}};
constexpr sv a859[] = {"no-sugar-added sweet pickle slices",
    "no-sugar-added sweet pickle cucumber slices",
    "no-sugar-added sweet pickles",
    "no-sugar-added pickles",
    "no sugar sweet pickles",
    "sugar-free sweet pickles",
    "sugar-free pickles",
    "sweet pickles with sucralose",
    "sweet pickles without sugar",
    "pepinillos dulces sin azucar",
    "pepinillos dulces sin azúcar"};
constexpr table a860[] = {{a120, "hot", "cucumbers in 1/4 inch slices, scalded and cooled", 500, a152, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a861[] = {{"Wash the cucumbers; cut 1/16 inch off the blossom end and discard it.", {}, "blossom ends removed", "", false, false},
    {"Cut the cucumbers in slices 1/4 inch thick.", {}, "", "", false, false},
    {"Scald the slices and cool them.", {}, "blanched", "", false, false},
    {"Drain them.", {}, "drained", "", false, false},
    {"The liquid is 4 parts of cider vinegar to 1 part of water; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"Heat the slices in the boiling liquid.", {}, "boiled before filling", "", false, false},
    {"Fill the jars hot and cover with the liquid.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer cucumbers. Not allowed: less vinegar, more water or more cucumbers.", {}, "", "", false, false}};
constexpr recipe_part a862[] = {{a449, "lb", {35, 10}, {35, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "1/4 inch slices"},
    {a93, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "cider"},
    {a266, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::other, false, false, false, "", "", ""},
    {a158, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a111, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a182, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a530, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a183, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a114, "piece", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", "1 inch, 1 per jar if desired"}};
constexpr tested_recipe a863[] = {{"", "", "pint", 4, 5, a862}};
constexpr citation a864[] = {{"usda-guide-6", "6", "6-33"}};
constexpr sv a865[] = {"quick fresh-pack dill pickles",
    "fresh-pack dill pickles",
    "fresh-pack dills",
    "quick dill pickles",
    "quick dills",
    "vinegar dill pickles",
    "unfermented dill pickles"};
constexpr table a866[] = {{a174, "raw", "whole cucumbers 3 to 5 inch, brined 12 h", 500, a446, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a867[] = {{"Wash the cucumbers; cut 1/16 inch off the blossom end and discard it.", {}, "blossom ends removed", "", false, false},
    {"Let the cucumbers stand 12 hours in the salt water, then drain.", {}, "drained", "", false, false},
    {"The liquid is 3 parts of vinegar to 4 parts of water; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"Put dill and mustard seed in each jar.", {}, "", "", false, false},
    {"Cover the cucumbers with the boiling pickling liquid.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer cucumbers, more sugar. Not allowed: less vinegar, more water or more cucumbers.", {}, "", "", false, false}};
constexpr recipe_part a868[] = {{a449, "lb", {8, 1}, {8, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "3 to 5 inch"},
    {a111, "gallon", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::water, false, false, true, "", "", "12 h soak, drained"},
    {a158, "cup", {75, 100}, {75, 100}, "", {0, 1}, part_limit::free, part_role::salt, false, false, true, "", "", "in the soak water"},
    {a158, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", "in the pickling solution"},
    {a93, "quart", {15, 10}, {15, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a94, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a111, "quart", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", "in the pickling solution"},
    {a451, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a182, "tbsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "about 1 tsp per pint"},
    {a210, "head", {14, 1}, {14, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "dill", "fresh, 1 1/2 per pint"},
    {a159, "tbsp", {45, 10}, {45, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "dill", "1 1/2 tsp per pint"}};
constexpr tested_recipe a869[] = {{"", "", "pint", 7, 9, a868}};
constexpr citation a870[] = {{"usda-guide-6", "6", "6-10"}};
constexpr sv a871[] = {"quick sweet pickles",
    "quick sweet pickle",
    "quick sweet cucumber pickles",
    "quick sweet pickle slices",
    "quick sweet pickle strips",
    "sweet pickle strips",
    "sweet pickle sticks"};
constexpr sv a872[] = {"sliced",
    "strips"};
constexpr jar_minutes a873[] = {{"pint", a30},
    {"quart", a30}};
constexpr table a874[] = {{a872, "raw", "cucumbers 3 to 4 inch, slices or strips, covered with hot syrup", 500, a446, "", "", "boiling-water-3", {}, "seen", 2, true, "Read whole in a text copy of the 2015 guide, page 6-13."},
    {a872, "hot", "cucumbers 3 to 4 inch, slices or strips, heated in the pickling solution", 500, a873, "", "", "boiling-water-3", {}, "seen", 2, true, "Read whole in a text copy of the 2015 guide, page 6-13."}};
constexpr condition a875[] = {{"Wash the cucumbers; cut 1/16 inch off the blossom end and discard it.", {}, "blossom ends removed", "", false, false},
    {"Cut the cucumbers in slices or strips.", {}, "", "", false, false},
    {"Chill them with the salt under ice, then drain.", {}, "drained", "", false, false},
    {"Where pickling lime is used for firmness, take it out again: rinse, soak 1 hour in fresh water and drain, three times in all.", {}, "lime rinsed out", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. No water goes into this pickle.", {}, "", "", false, false},
    {"Heat the cucumbers in the pickling liquid until it boils again.", a80, "boiled before filling", "", false, false},
    {"Fill the jars hot and cover with the liquid.", a80, "covered with liquid", "", false, false},
    {"Fill the jars with the raw cucumbers and cover with the hot syrup.", a146, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer cucumbers, more sugar. Not allowed: less vinegar, added water, more cucumbers.", {}, "", "", false, false}};
constexpr recipe_part a876[] = {{a449, "lb", {8, 1}, {8, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "3 to 4 inch, slices or strips"},
    {a158, "cup", {1, 3}, {1, 3}, "", {0, 1}, part_limit::free, part_role::salt, false, false, true, "", "", "ice soak, drained"},
    {a94, "cup", {45, 10}, {45, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a93, "cup", {35, 10}, {35, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a183, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a530, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a182, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a562, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, true, "", "", "only for the firmer variation, rinsed off"}};
constexpr tested_recipe a877[] = {{"", "", "pint", 7, 9, a876}};
constexpr citation a878[] = {{"usda-guide-6", "6", "6-12"}};
constexpr sv a879[] = {"reduced-sodium sliced dill pickles",
    "reduced-sodium dill pickles",
    "low-sodium dill pickles",
    "low-salt dill pickles",
    "sliced dill pickles",
    "dill pickle slices",
    "dill pickle chips",
    "dill chips",
    "hamburger dills",
    "hamburger dill slices"};
constexpr sv a880[] = {"pickles",
    "pickle",
    "cucumber pickles",
    "pickled cucumbers",
    "pickled cucumber",
    "pepinillos",
    "pepinillos encurtidos",
    "pepinos encurtidos",
    "pepinillos en vinagre",
    "dill pickles",
    "dill pickle",
    "dills",
    "pickled dill cucumbers",
    "pepinillos al eneldo",
    "reduced-sodium pickles",
    "reduced-salt pickles",
    "low-sodium pickles",
    "low-salt pickles"};
constexpr table a881[] = {{a120, "raw", "cucumbers in 1/4 inch slices", 250, a176, "", "", "boiling-water-3", {}, "seen", 2, true, "Little salt is allowed here because vinegar gives the acid; a fermented pickle needs its salt."}};
constexpr condition a882[] = {{"Wash the cucumbers; cut 1/16 inch off the blossom end and discard it.", {}, "blossom ends removed", "", false, false},
    {"Cut the cucumbers in slices 1/4 inch thick.", {}, "", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. No water goes into this pickle.", {}, "", "", false, false},
    {"Put onion and a dill head in each jar and fill the slices to 1/2 inch from the rim.", {}, "", "", false, false},
    {"Cover with the hot liquid to 1/4 inch from the rim.", {}, "covered with liquid", "", false, false},
    {"Do not use low-temperature pasteurization for pickles with little salt.", {}, "", "", false, false},
    {"Allowed changes: more vinegar, fewer cucumbers or onions, more sugar. Not allowed: less vinegar, added water, more cucumbers or onions.", {}, "", "", false, false}};
constexpr recipe_part a883[] = {{a449, "lb", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "3 to 5 inch, 1/4 inch slices"},
    {a93, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a94, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a158, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a183, "tsp", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a182, "tsp", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a223, "piece", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "large, thinly sliced"},
    {a210, "head", {8, 1}, {8, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "fresh"}};
constexpr tested_recipe a884[] = {{"", "", "pint", 8, 8, a883}};
constexpr citation a885[] = {{"usda-guide-6", "6", "6-34"}};
constexpr sv a886[] = {"reduced-sodium sliced sweet pickles",
    "reduced-sodium sweet pickles",
    "low-sodium sweet pickles",
    "low-salt sweet pickles",
    "reduced-sodium sweet pickle slices"};
constexpr sv a887[] = {"pickles",
    "pickle",
    "cucumber pickles",
    "pickled cucumbers",
    "pickled cucumber",
    "pepinillos",
    "pepinillos encurtidos",
    "pepinos encurtidos",
    "pepinillos en vinagre",
    "sweet pickles",
    "sweet pickle",
    "sweet cucumber pickles",
    "pepinillos dulces",
    "sliced sweet pickles",
    "sweet pickle slices",
    "sweet pickle chips",
    "reduced-sodium pickles",
    "reduced-salt pickles",
    "low-sodium pickles",
    "low-salt pickles"};
constexpr table a888[] = {{a120, "hot", "cucumbers in 1/4 inch slices simmered in vinegar brine 5-7 min, drained", 500, a152, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a889[] = {{"Wash the cucumbers; cut 1/16 inch off the blossom end and discard it.", {}, "blossom ends removed", "", false, false},
    {"Cut the cucumbers in slices 1/4 inch thick.", {}, "", "", false, false},
    {"Simmer the slices 5 to 7 minutes in the undiluted vinegar brine.", {}, "boiled before filling", "", false, false},
    {"Drain them.", {}, "drained", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. Brine and syrup are both made with vinegar and no water.", {}, "", "", false, false},
    {"Fill the jars and cover with the hot syrup.", {}, "covered with liquid", "", false, false},
    {"Do not use low-temperature pasteurization for pickles with little salt.", {}, "", "", false, false},
    {"Allowed changes: more vinegar, fewer cucumbers, more sugar. Not allowed: less vinegar, added water, more cucumbers.", {}, "", "", false, false}};
constexpr recipe_part a890[] = {{a449, "lb", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "3 to 4 inch, 1/4 inch slices"},
    {a93, "quart", {1, 1}, {1, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "simmered with slices then drained"},
    {a158, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", "brining solution"},
    {a182, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "brining solution"},
    {a94, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", "brining solution"},
    {a93, "cup", {5, 3}, {5, 3}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "canning syrup"},
    {a94, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", "canning syrup"},
    {a530, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "canning syrup"},
    {a183, "tsp", {225, 100}, {225, 100}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "canning syrup"}};
constexpr tested_recipe a891[] = {{"", "", "pint", 4, 5, a890}};
constexpr sv a892[] = {"sweet gherkin pickles",
    "sweet gherkins",
    "sweet gherkin",
    "sweet pickled gherkins",
    "sweet baby pickles",
    "baby sweet pickles",
    "pepinillos dulces enteros"};
constexpr sv a893[] = {"pickles",
    "pickle",
    "cucumber pickles",
    "pickled cucumbers",
    "pickled cucumber",
    "pepinillos",
    "pepinillos encurtidos",
    "pepinos encurtidos",
    "pepinillos en vinagre",
    "gherkins",
    "gherkin",
    "pickled gherkins",
    "pickled gherkin",
    "sweet pickles",
    "sweet pickle",
    "sweet cucumber pickles",
    "pepinillos dulces"};
constexpr table a894[] = {{a174, "raw", "whole cucumbers 1-1/2 inch or less, four-day syrup cure", 500, a206, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a895[] = {{"Wash the cucumbers; cut 1/16 inch off the blossom end and discard it.", {}, "blossom ends removed", "", false, false},
    {"Use cucumbers of 1 1/2 inches or less, whole.", {}, "", "", false, false},
    {"Soak them in salt water as printed, and drain each time.", {}, "drained", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. No water goes into the syrup.", {}, "", "", false, false},
    {"Add vinegar and sugar in steps over the four days, as printed.", {}, "", "", false, false},
    {"Fill the jars and cover with the hot syrup.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer cucumbers. Not allowed: less vinegar, added water, more cucumbers.", {}, "", "", false, false}};
constexpr sv a896[] = {"cucumber"};
constexpr sv a897[] = {"fennel"};
constexpr sv a898[] = {"vanilla"};
constexpr recipe_part a899[] = {{a896, "lb", {7, 1}, {7, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "1-1/2 inch or less"},
    {a158, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, true, "", "", "soaks, drained"},
    {a94, "cup", {8, 1}, {8, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", "added in steps"},
    {a93, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "added in steps"},
    {a339, "tsp", {75, 100}, {75, 100}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a183, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a451, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a114, "piece", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a897, "tsp", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a898, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""}};
constexpr tested_recipe a900[] = {{"", "", "pint", 6, 7, a899}};
constexpr sv a901[] = {"apple pie filling",
    "apple pie fillings",
    "apple filling",
    "filling for apple pie"};
constexpr sv a902[] = {"pie filling",
    "pie fillings",
    "canned pie filling",
    "fruit pie filling",
    "fruit pie fillings"};
constexpr table a903[] = {{a86, "hot", "blanched 1/2-inch slices in thickened syrup", 1000, a362, "", "", "boiling-water-4", {}, "seen", 2, true, ""}};
constexpr condition a904[] = {{"Use fresh apples only, not frozen ones.", {}, "fresh fruit", "", false, false},
    {"Peel and core the apples and cut slices 1/2 inch thick.", {}, "peeled", "", false, false},
    {"Blanch the slices 1 minute in boiling water, at most 6 cups in a gallon at a time, and drain.", {}, "blanched", "", false, false},
    {"Thicken with cook-type modified corn starch and nothing else: never flour, plain corn starch, tapioca or the instant type. Without it, can the filling unthickened and thicken it when baking.", {}, "thickened with cook-type starch", "thickener-in-jar", false, false},
    {"Never use more starch than printed.", {}, "", "", false, false},
    {"The bottled lemon juice may not be cut; sugar and spices may be changed.", {}, "", "", false, false},
    {"For apples that lack tartness take 1/4 cup more lemon juice to 6 quarts of slices.", {}, "", "", false, false},
    {"Cook the sugar, the starch, the spices, the water and the apple juice until it thickens and bubbles, add the lemon juice and boil 1 minute, stirring; fold in the drained fruit.", {}, "boiled before filling", "", false, false},
    {"Fill the jars at once while the filling is hot, and process them at once.", {}, "", "", false, false},
    {"Compare a batch with one printed column, 1 quart or 7 quarts, never with a mixture of both.", {}, "", "", false, false}};
constexpr sv a905[] = {"cook-type-starch"};
constexpr sv a906[] = {"yellow-food-colour"};
constexpr recipe_part a907[] = {{a91, "cup", {35, 10}, {35, 10}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh, 1/2 inch slices, blanched"},
    {a94, "cup", {875, 1000}, {875, 1000}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a905, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::most, part_role::starch, false, false, false, "", "", ""},
    {a96, "tsp", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a111, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a638, "cup", {75, 100}, {75, 100}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", ""},
    {a581, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a688, "tsp", {125, 1000}, {125, 1000}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a906, "drop", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""}};
constexpr recipe_part a908[] = {{a91, "quart", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh, 1/2 inch slices, blanched"},
    {a94, "cup", {55, 10}, {55, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a905, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::starch, false, false, false, "", "", ""},
    {a96, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a111, "cup", {25, 10}, {25, 10}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a638, "cup", {5, 1}, {5, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", ""},
    {a581, "cup", {75, 100}, {75, 100}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a688, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a906, "drop", {7, 1}, {7, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""}};
constexpr tested_recipe a909[] = {{"1-quart", "", "quart", 1, 1, a907},
    {"7-quart", "", "quart", 7, 7, a908}};
constexpr citation a910[] = {{"usda-guide-2", "2", "2-26"},
    {"iowa-thickeners", "", ""},
    {"nchfp-apple-pie-filling", "", ""}};
constexpr sv a911[] = {"blueberry pie filling",
    "blueberry pie fillings",
    "blueberry filling",
    "filling for blueberry pie"};
constexpr table a912[] = {{a86, "hot", "blanched or thawed berries in thickened syrup", 1000, a271, "", "", "boiling-water-4", {}, "seen", 2, true, ""}};
constexpr condition a913[] = {{"Blanch fresh berries 1 minute in boiling water, at most 6 cups in a gallon at a time, and drain.", {}, "blanched", "", false, false},
    {"Thaw frozen unsweetened berries, count the juice as part of the water, and use only 1/4 cup of starch to a quart, 1 3/4 cups to 7 quarts.", {}, "frozen fruit", "", false, false},
    {"Thicken with cook-type modified corn starch and nothing else: never flour, plain corn starch, tapioca or the instant type. Without it, can the filling unthickened and thicken it when baking.", {}, "thickened with cook-type starch", "thickener-in-jar", false, false},
    {"Never use more starch than printed.", {}, "", "", false, false},
    {"The bottled lemon juice may not be cut; sugar and spices may be changed.", {}, "", "", false, false},
    {"Cook the sugar, the starch, the water and the coloring until it thickens and bubbles, add the lemon juice and boil 1 minute, stirring; fold in the drained fruit.", {}, "boiled before filling", "", false, false},
    {"Fill the jars at once while the filling is hot, and process them at once.", {}, "", "", false, false},
    {"Compare a batch with one printed column, 1 quart or 7 quarts, never with a mixture of both.", {}, "", "", false, false}};
constexpr sv a914[] = {"blue-food-colour"};
constexpr recipe_part a915[] = {{a570, "cup", {35, 10}, {35, 10}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh"},
    {a94, "cup", {875, 1000}, {875, 1000}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a905, "cup", {3125, 10000}, {3125, 10000}, "", {0, 1}, part_limit::most, part_role::starch, false, false, false, "", "", "with fresh fruit"},
    {a111, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", "with frozen fruit the thaw juice counts as water"},
    {a581, "tsp", {35, 10}, {35, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a914, "drop", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""},
    {a115, "drop", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""}};
constexpr sv a916[] = {"frozen-blueberry"};
constexpr recipe_part a917[] = {{a916, "cup", {35, 10}, {35, 10}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "thawed, unsweetened"},
    {a94, "cup", {875, 1000}, {875, 1000}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a905, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::most, part_role::starch, false, false, false, "", "", "with frozen fruit"},
    {a111, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", "with frozen fruit the thaw juice counts as water"},
    {a581, "tsp", {35, 10}, {35, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a914, "drop", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""},
    {a115, "drop", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""}};
constexpr recipe_part a918[] = {{a570, "quart", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh"},
    {a94, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a905, "cup", {225, 100}, {225, 100}, "", {0, 1}, part_limit::most, part_role::starch, false, false, false, "", "", "with fresh fruit"},
    {a111, "cup", {7, 1}, {7, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", "with frozen fruit the thaw juice counts as water"},
    {a581, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a914, "drop", {20, 1}, {20, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""},
    {a115, "drop", {7, 1}, {7, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""}};
constexpr recipe_part a919[] = {{a916, "quart", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "thawed, unsweetened"},
    {a94, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a905, "cup", {175, 100}, {175, 100}, "", {0, 1}, part_limit::most, part_role::starch, false, false, false, "", "", "with frozen fruit"},
    {a111, "cup", {7, 1}, {7, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", "with frozen fruit the thaw juice counts as water"},
    {a581, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a914, "drop", {20, 1}, {20, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""},
    {a115, "drop", {7, 1}, {7, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""}};
constexpr tested_recipe a920[] = {{"1-quart", "", "quart", 1, 1, a915},
    {"1-quart-frozen", "", "quart", 1, 1, a917},
    {"7-quart", "", "quart", 7, 7, a918},
    {"7-quart-frozen", "", "quart", 7, 7, a919}};
constexpr citation a921[] = {{"usda-guide-2", "2", "2-27"},
    {"iowa-thickeners", "", ""}};
constexpr sv a922[] = {"cherry pie filling",
    "cherry pie fillings",
    "sour cherry pie filling",
    "tart cherry pie filling",
    "cherry filling",
    "filling for cherry pie"};
constexpr table a923[] = {{a86, "hot", "blanched or thawed pitted sour cherries in thickened syrup", 1000, a271, "", "", "boiling-water-4", {}, "seen", 2, true, "The amounts were read in private copies and in a copy of an Extension page. A private page prints 20/25/30/35 min and a pressure option; not used."}};
constexpr condition a924[] = {{"Use sour cherries and take the pits out.", {}, "", "", false, false},
    {"Blanch fresh cherries 1 minute in boiling water, at most 6 cups in a gallon at a time, and drain.", {}, "blanched", "", false, false},
    {"Thaw frozen unsweetened cherries, count the juice as part of the water, and use only 1/4 cup of starch to a quart, 1 3/4 cups to 7 quarts.", {}, "frozen fruit", "", false, false},
    {"Thicken with cook-type modified corn starch and nothing else: never flour, plain corn starch, tapioca or the instant type. Without it, can the filling unthickened and thicken it when baking.", {}, "thickened with cook-type starch", "thickener-in-jar", false, false},
    {"Never use more starch than printed.", {}, "", "", false, false},
    {"The bottled lemon juice may not be cut; sugar and spices may be changed.", {}, "", "", false, false},
    {"Cook the sugar, the starch, the water and the flavoring until it thickens and bubbles, add the lemon juice and boil 1 minute, stirring; fold in the drained fruit.", {}, "boiled before filling", "", false, false},
    {"Fill the jars at once while the filling is hot, and process them at once.", {}, "", "", false, false},
    {"Compare a batch with one printed column, 1 quart or 7 quarts, never with a mixture of both.", {}, "", "", false, false}};
constexpr sv a925[] = {"sour-cherry"};
constexpr sv a926[] = {"almond-extract"};
constexpr recipe_part a927[] = {{a925, "cup", {10, 3}, {10, 3}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh, or thawed unsweetened, pitted"},
    {a94, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a905, "cup", {3125, 10000}, {3125, 10000}, "", {0, 1}, part_limit::most, part_role::starch, false, false, false, "", "", "with fresh fruit"},
    {a111, "cup", {4, 3}, {4, 3}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", "with frozen fruit the thaw juice counts as water"},
    {a581, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a96, "tsp", {125, 1000}, {125, 1000}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a926, "tsp", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""},
    {a115, "drop", {6, 1}, {6, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""}};
constexpr sv a928[] = {"frozen-sour-cherry"};
constexpr recipe_part a929[] = {{a928, "cup", {10, 3}, {10, 3}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh, or thawed unsweetened, pitted"},
    {a94, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a905, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::most, part_role::starch, false, false, false, "", "", "with frozen fruit"},
    {a111, "cup", {4, 3}, {4, 3}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", "with frozen fruit the thaw juice counts as water"},
    {a581, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a96, "tsp", {125, 1000}, {125, 1000}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a926, "tsp", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""},
    {a115, "drop", {6, 1}, {6, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""}};
constexpr recipe_part a930[] = {{a925, "quart", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh, or thawed unsweetened, pitted"},
    {a94, "cup", {7, 1}, {7, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a905, "cup", {175, 100}, {175, 100}, "", {0, 1}, part_limit::most, part_role::starch, false, false, false, "", "", "with fresh fruit"},
    {a111, "cup", {28, 3}, {28, 3}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", "with frozen fruit the thaw juice counts as water"},
    {a581, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a96, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a926, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""},
    {a115, "tsp", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""}};
constexpr recipe_part a931[] = {{a928, "quart", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh, or thawed unsweetened, pitted"},
    {a94, "cup", {7, 1}, {7, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a905, "cup", {175, 100}, {175, 100}, "", {0, 1}, part_limit::most, part_role::starch, false, false, false, "", "", "with frozen fruit"},
    {a111, "cup", {28, 3}, {28, 3}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", "with frozen fruit the thaw juice counts as water"},
    {a581, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a96, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a926, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""},
    {a115, "tsp", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""}};
constexpr tested_recipe a932[] = {{"1-quart", "", "quart", 1, 1, a927},
    {"1-quart-frozen", "", "quart", 1, 1, a929},
    {"7-quart", "", "quart", 7, 7, a930},
    {"7-quart-frozen", "", "quart", 7, 7, a931}};
constexpr sv a933[] = {"green tomato pie filling",
    "green tomato pie fillings",
    "green tomato filling",
    "green tomato mincemeat",
    "meatless green tomato mincemeat"};
constexpr sv a934[] = {"pie filling",
    "pie fillings",
    "canned pie filling"};
constexpr jar_minutes a935[] = {{"quart", a175}};
constexpr table a936[] = {{a86, "hot", "chopped green tomatoes, tart apples, raisins", 500, a935, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a937[] = {{"Keep to the printed recipe: neither the bottled lemon juice nor the 5 % vinegar may be cut, both are needed, and no more raisins may go in. Sugar and spices may be changed.", {}, "", "", false, false},
    {"Chop the green tomatoes; peel and chop the tart apples.", {}, "peeled", "", false, false},
    {"Add no starch, flour or other thickener: this recipe has none.", {}, "not thickened", "", false, false},
    {"Cook everything slowly, stirring often, until it is tender and slightly thick, about 35 to 40 minutes; fill the jars while it is hot.", {}, "boiled before filling", "", false, false},
    {"Quart jars only are listed; a smaller jar takes the quart time.", {}, "", "", false, false}};
constexpr sv a938[] = {"citron",
    "lemon-peel",
    "orange-peel"};
constexpr recipe_part a939[] = {{a529, "quart", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "chopped"},
    {a91, "quart", {3, 1}, {3, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", "tart, peeled, chopped"},
    {a722, "lb", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::acid_food, false, false, false, "", "", "dark, seedless"},
    {a395, "lb", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::acid_food, false, false, false, "", "", ""},
    {a938, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::other, false, false, false, "", "", "minced"},
    {a111, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a95, "cup", {25, 10}, {25, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a94, "cup", {25, 10}, {25, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", "white"},
    {a93, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a581, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a96, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a688, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a97, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a940[] = {{"", "", "quart", 7, 7, a939}};
constexpr citation a941[] = {{"usda-guide-2", "2", "2-29"}};
constexpr sv a942[] = {"peach pie filling",
    "peach pie fillings",
    "peach filling",
    "filling for peach pie"};
constexpr table a943[] = {{a86, "hot", "blanched 1/2-inch slices in thickened syrup, heated 3 min more", 1000, a271, "", "", "boiling-water-4", {}, "seen", 2, true, "The recipe was read on the national center's page too."}};
constexpr condition a944[] = {{"Use fresh peaches only, not frozen ones.", {}, "fresh fruit", "", false, false},
    {"Use only yellow-fleshed peaches: the pH of white-fleshed kinds can be over 4.6, and no process of any kind exists for them; freeze them.", {}, "yellow flesh", "", false, false},
    {"Peel and pit the peaches and cut slices 1/2 inch thick.", {}, "peeled", "", false, false},
    {"Blanch the slices 1 minute in boiling water, at most 6 cups in a gallon at a time, and drain.", {}, "blanched", "", false, false},
    {"Thicken with cook-type modified corn starch and nothing else: never flour, plain corn starch, tapioca or the instant type. Without it, can the filling unthickened and thicken it when baking.", {}, "thickened with cook-type starch", "thickener-in-jar", false, false},
    {"Never use more starch than printed.", {}, "", "", false, false},
    {"The bottled lemon juice may not be cut; sugar and spices may be changed.", {}, "", "", false, false},
    {"Cook the water, the sugar and the starch until it thickens and bubbles, add the lemon juice and boil 1 minute, stirring; fold in the drained slices and heat 3 minutes more.", {}, "boiled before filling", "", false, false},
    {"Fill the jars at once while the filling is hot, and process them at once.", {}, "", "", false, false},
    {"Compare a batch with one printed column, 1 quart or 7 quarts, never with a mixture of both.", {}, "", "", false, false}};
constexpr recipe_part a945[] = {{a498, "cup", {35, 10}, {35, 10}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh, yellow flesh, 1/2 inch slices"},
    {a94, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a905, "cup", {3125, 10000}, {3125, 10000}, "", {0, 1}, part_limit::most, part_role::starch, false, false, false, "", "", ""},
    {a111, "cup", {75, 100}, {75, 100}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a96, "tsp", {125, 1000}, {125, 1000}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a926, "tsp", {125, 1000}, {125, 1000}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""},
    {a581, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""}};
constexpr recipe_part a946[] = {{a498, "quart", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh, yellow flesh, 1/2 inch slices"},
    {a94, "cup", {7, 1}, {7, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a905, "cup", {21875, 10000}, {21875, 10000}, "", {0, 1}, part_limit::most, part_role::starch, false, false, false, "", "", ""},
    {a111, "cup", {525, 100}, {525, 100}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a96, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a926, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::other, false, true, false, "", "", ""},
    {a581, "cup", {175, 100}, {175, 100}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""}};
constexpr tested_recipe a947[] = {{"1-quart", "", "quart", 1, 1, a945},
    {"7-quart", "", "quart", 7, 7, a946}};
constexpr citation a948[] = {{"usda-guide-2", "2", "2-30"},
    {"iowa-thickeners", "", ""},
    {"nchfp-peach-pie-filling", "", ""},
    {"wisconsin-white-peaches", "", ""}};
constexpr sv a949[] = {"pineapple",
    "pineapples",
    "pineapple slices",
    "sliced pineapple",
    "pineapple chunks",
    "pineapple cubes",
    "cubed pineapple",
    "pineapple rings",
    "piña",
    "pina",
    "piñas",
    "ananas",
    "ananás"};
constexpr sv a950[] = {"sliced",
    "cubes"};
constexpr table a951[] = {{a950, "hot", "peeled slices or cubes", 500, a133, "", "", "boiling-water-4", {}, "seen", 2, true, "One county list counts ripe pineapple as low-acid; the guide cans it without added acid."}};
constexpr condition a952[] = {{"Use firm, ripe pineapple; peel it, take out the eyes and the tough fiber, and slice or cube it.", {}, "peeled", "", false, false},
    {"Simmer it 10 minutes in water, juice or very light to medium syrup.", {}, "boiled before filling", "", false, false},
    {"Fill the jars and cover the fruit with the hot cooking liquid.", {}, "covered with liquid", "", false, false},
    {"Sugar is for flavor, color and shape; it may be left out.", {}, "", "", false, false}};
constexpr citation a953[] = {{"usda-guide-2", "2", "2-21"}};
constexpr sv a954[] = {"plums",
    "plum",
    "whole plums",
    "plum halves",
    "halved plums",
    "prune plums",
    "italian plums",
    "damson plums",
    "damsons",
    "greengages",
    "mirabelle plums",
    "ciruelas",
    "ciruela"};
constexpr sv a955[] = {"whole",
    "halved"};
constexpr table a956[] = {{a955, "hot", "whole or halved freestone", 500, a141, "", "", "boiling-water-4", {}, "seen", 2, true, "The guide prints one row for both packs."},
    {a955, "hot", "whole or halved freestone", 500, a142, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, ""},
    {a955, "raw", "whole or halved freestone", 500, a141, "", "", "boiling-water-4", {}, "seen", 2, true, ""},
    {a955, "raw", "whole or halved freestone", 500, a142, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, ""}};
constexpr condition a957[] = {{"Leave plums whole, or halve and pit freestone kinds.", {}, "", "", false, false},
    {"Prick whole plums on two sides so that they do not burst.", {}, "pricked", "", false, false},
    {"Boil the plums 2 minutes in water or syrup, then let them stand covered 20 to 30 minutes.", a80, "boiled before filling", "", false, false},
    {"Fill the jars with the hot plums and cover with the hot cooking liquid.", a80, "covered with liquid", "", false, false},
    {"Fill the jars with raw plums and cover with hot water or syrup.", a146, "covered with liquid", "", false, false},
    {"Sugar is for flavor, color and shape; it may be left out.", {}, "", "", false, false}};
constexpr sv a958[] = {"sweet potatoes",
    "sweet potato",
    "sweetpotatoes",
    "sweetpotato",
    "kumara",
    "camote",
    "camotes",
    "batata",
    "batatas",
    "boniato",
    "boniatos"};
constexpr sv a959[] = {"potatoes",
    "potato"};
constexpr sv a960[] = {"whole",
    "even-pieces"};
constexpr jar_minutes a961[] = {{"pint", a189},
    {"quart", a235}};
constexpr table a962[] = {{a960, "hot", "peeled, whole small or uniform pieces", 1000, a961, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, ""}};
constexpr condition a963[] = {{"Use small to medium roots within 1 to 2 months of harvest.", {}, "", "", false, false},
    {"Boil or steam them 15 to 20 minutes, until partly soft.", {}, "boiled before filling", "", false, false},
    {"Peel them, and cut larger ones so that all pieces are of one size.", {}, "peeled", "", false, false},
    {"Do not mash or puree them: no tested process exists for that; mash them after opening.", {}, "", "low-acid-puree", false, false},
    {"Use fresh boiling water or syrup, not the cooking water.", {}, "fresh water used", "", false, false},
    {"Cover the pieces with it; never pack them dry.", {}, "covered with liquid", "", false, false}};
constexpr citation a964[] = {{"usda-guide-4", "4", "4-16"}};
constexpr sv a965[] = {"white potatoes",
    "white potato",
    "irish potatoes",
    "irish potato",
    "red potatoes",
    "yellow potatoes",
    "russet potatoes",
    "papas",
    "papa",
    "patatas",
    "patata"};
constexpr sv a966[] = {"whole",
    "half-inch-cubes"};
constexpr jar_minutes a967[] = {{"pint", a279},
    {"quart", a167}};
constexpr table a968[] = {{a966, "hot", "peeled, whole 1 to 2 inches diameter, or 1/2-inch cubes", 1000, a967, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "Equipment makers' copies allow whole potatoes up to 2 1/2 in across; the guide says 1 to 2 in."}};
constexpr condition a969[] = {{"Peel the potatoes: the process was worked out on peeled ones.", {}, "peeled", "", false, false},
    {"Leave whole only potatoes of 1 to 2 inches across; cut others in 1/2-inch cubes. Keep them from browning in water with ascorbic acid.", {}, "", "", false, false},
    {"Boil cubes 2 minutes or whole potatoes 10 minutes.", {}, "boiled before filling", "", false, false},
    {"Drain them.", {}, "drained", "", false, false},
    {"Use fresh boiling water, never the starchy cooking water.", {}, "fresh water used", "", false, false},
    {"Cover every piece with it.", {}, "covered with liquid", "", false, false},
    {"Do not mash or puree them: no tested process exists for that; mash them after opening.", {}, "", "low-acid-puree", false, false}};
constexpr citation a970[] = {{"usda-guide-4", "4", "4-17"}};
constexpr sv a971[] = {"turkey with bones",
    "bone-in turkey",
    "turkey on the bone",
    "duck with bones",
    "bone-in duck",
    "goose with bones",
    "bone-in goose",
    "game birds with bones",
    "bone-in game birds",
    "bone-in pheasant",
    "pheasant with bones",
    "pavo con hueso"};
constexpr sv a972[] = {"turkey",
    "turkeys",
    "turkey meat",
    "wild turkey",
    "turkey breast",
    "duck",
    "ducks",
    "wild duck",
    "duck breast",
    "goose",
    "geese",
    "wild goose",
    "game birds",
    "game bird",
    "pheasant",
    "pheasants",
    "partridge",
    "grouse",
    "quail",
    "poultry",
    "pavo",
    "guajolote",
    "pato",
    "ganso"};
constexpr table a973[] = {{a367, "hot", "pieces cut to fit the jar, with bones", 1250, a191, "low-acid-dial", "low-acid-weighted", "", {}, "seen-part", 2, true, "No table of its own in the USDA guide. University Extension says these birds may be canned like chicken; read there: the birds, the minutes, the headspace and the pressure near sea level. Carried over from the chicken table: the pressures of the higher bands."},
    {a367, "raw", "pieces cut to fit the jar, with bones", 1250, a191, "low-acid-dial", "low-acid-weighted", "", {}, "seen-part", 2, true, "No table of its own in the USDA guide. University Extension says these birds may be canned like chicken; read there: the birds, the minutes, the headspace and the pressure near sea level. Carried over from the chicken table: the pressures of the higher bands."}};
constexpr condition a974[] = {{"Use fresh meat, or thawed in the refrigerator; never cured, brined, corned or smoked meat.", {}, "not smoked", "", false, false},
    {"Chill the dressed birds.", {}, "chilled", "", false, false},
    {"Strong-tasting game birds may be soaked 1 hour in water with 1 tbsp of salt to the quart; then leave out salt in the jar.", {}, "", "", false, false},
    {"Cut off excess fat.", {}, "fat removed", "", false, false},
    {"Cut it in pieces that fit the jar and leave the bones in: this time is too short for boneless meat.", {}, "bones left in", "", false, false},
    {"Leave the giblets out.", {}, "", "", false, false},
    {"Use no flour, batter or other thickener.", {}, "not thickened", "", false, false},
    {"Boil, steam or bake the meat until about two thirds done.", a80, "meat precooked", "", false, false},
    {"Cover with hot broth.", a80, "covered with liquid", "", false, false},
    {"The pieces go in raw.", a146, "meat not precooked", "", false, false},
    {"Fill the jars loosely.", a146, "packed loosely", "", false, false},
    {"Add no liquid.", a146, "no liquid added", "", false, false}};
constexpr citation a975[] = {{"psu-poultry", "", ""},
    {"usda-guide-5", "5", ""}};
constexpr sv a976[] = {"turkey without bones",
    "boneless turkey",
    "boneless turkey breast",
    "duck without bones",
    "boneless duck",
    "boneless duck breast",
    "goose without bones",
    "boneless goose",
    "game birds without bones",
    "boneless game birds",
    "boneless pheasant",
    "pheasant without bones",
    "pavo deshuesado"};
constexpr table a977[] = {{a372, "hot", "pieces cut to fit the jar, without bones", 1250, a236, "low-acid-dial", "low-acid-weighted", "", {}, "seen-part", 2, true, "No table of its own in the USDA guide. University Extension says these birds may be canned like chicken; read there: the birds, the minutes, the headspace and the pressure near sea level. Carried over from the chicken table: the pressures of the higher bands."},
    {a372, "raw", "pieces cut to fit the jar, without bones", 1250, a236, "low-acid-dial", "low-acid-weighted", "", {}, "seen-part", 2, true, "No table of its own in the USDA guide. University Extension says these birds may be canned like chicken; read there: the birds, the minutes, the headspace and the pressure near sea level. Carried over from the chicken table: the pressures of the higher bands."}};
constexpr condition a978[] = {{"Use fresh meat, or thawed in the refrigerator; never cured, brined, corned or smoked meat.", {}, "not smoked", "", false, false},
    {"Chill the dressed birds.", {}, "chilled", "", false, false},
    {"Strong-tasting game birds may be soaked 1 hour in water with 1 tbsp of salt to the quart; then leave out salt in the jar.", {}, "", "", false, false},
    {"Cut off excess fat.", {}, "fat removed", "", false, false},
    {"Take the meat off the bones and cut it in pieces that fit the jar.", {}, "bones removed", "", false, false},
    {"Leave the giblets out.", {}, "", "", false, false},
    {"Use no flour, batter or other thickener.", {}, "not thickened", "", false, false},
    {"Boil, steam or bake the meat until about two thirds done.", a80, "meat precooked", "", false, false},
    {"Cover with hot broth.", a80, "covered with liquid", "", false, false},
    {"The pieces go in raw.", a146, "meat not precooked", "", false, false},
    {"Fill the jars loosely.", a146, "packed loosely", "", false, false},
    {"Add no liquid.", a146, "no liquid added", "", false, false}};
constexpr sv a979[] = {"pumpkin",
    "pumpkins",
    "pie pumpkin",
    "pie pumpkins",
    "sugar pumpkin",
    "sugar pumpkins",
    "pumpkin cubes",
    "cubed pumpkin"};
constexpr sv a980[] = {"1-inch-cubes"};
constexpr jar_minutes a981[] = {{"pint", a425},
    {"quart", a235}};
constexpr table a982[] = {{a980, "hot", "peeled, 1-inch cubes", 1000, a981, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "A garden page with 55 min for quarts and a blog with 20 min are unsafe and not used."}};
constexpr condition a983[] = {{"Use pumpkins with a hard rind and ripe flesh without strings.", {}, "", "", false, false},
    {"Peel it and cut it in 1-inch cubes: cubes are the only tested form.", {}, "peeled", "", false, false},
    {"Boil the cubes 2 minutes in water.", {}, "boiled before filling", "", false, false},
    {"Do not mash or puree it: no tested process exists for that; mash it after opening.", {}, "", "low-acid-puree", false, false},
    {"Fill the jars with the cubes and their cooking liquid.", {}, "covered with liquid", "", false, false}};
constexpr sv a984[] = {"chayote and pear relish",
    "chayote pear relish",
    "pear and chayote relish",
    "chayote relish",
    "relish de chayote y pera",
    "relish de chayote"};
constexpr table a985[] = {{a86, "hot", "chayote and Seckel pears in 1/2 inch cubes with chopped peppers and onion", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a986[] = {{"Peel the chayote and the pears.", {}, "peeled", "", false, false},
    {"Cut them in 1/2-inch cubes; chop the peppers and chop the onions fine.", {}, "", "", false, false},
    {"Use Seckel pears, in the full amount.", {}, "", "", false, false},
    {"The liquid is 5 parts of cider vinegar to 3 parts of water; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"Heat the relish in the boiling liquid.", {}, "boiled before filling", "", false, false},
    {"Fill the solids to 1 inch from the rim.", {}, "", "", false, false},
    {"Cover with the hot liquid to 1/2 inch from the rim.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer peppers, onions or chayote, more sugar. Not allowed: less vinegar, more water or more peppers, onions or chayote.", {}, "", "", false, false}};
constexpr sv a987[] = {"seckel-pear"};
constexpr sv a988[] = {"ground-pumpkin-pie-spice"};
constexpr recipe_part a989[] = {{a357, "cup", {35, 10}, {35, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "peeled, 1/2 inch cubes"},
    {a987, "cup", {35, 10}, {35, 10}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", "peeled, 1/2 inch cubes"},
    {a338, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a660, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a223, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a458, "piece", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a93, "cup", {25, 10}, {25, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "cider"},
    {a111, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a94, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", "white"},
    {a158, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a224, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a988, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a990[] = {{"", "", "pint", 5, 5, a989}};
constexpr citation a991[] = {{"usda-guide-6", "6", "6-26"}};
constexpr sv a992[] = {"corn relish",
    "pickled corn relish",
    "sweet corn relish",
    "sweetcorn relish",
    "relish de maiz",
    "relish de maíz",
    "relish de elote"};
constexpr jar_minutes a993[] = {{"half-pint", a175},
    {"pint", a175}};
constexpr table a994[] = {{a86, "hot", "whole kernel corn with diced peppers, celery, onion", 500, a993, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a995[] = {{"Boil fresh ears 5 minutes and cut the kernels off; or use six 10-oz packages of frozen corn.", {}, "boiled 5 min", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short.", {}, "", "", false, false},
    {"Simmer the relish and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"It may be thickened with at most 1/4 cup of flour in 1/4 cup of water for the batch; no other thickener and no more.", {}, "thickened", "", false, false},
    {"Allowed changes: more vinegar, fewer vegetables, more sugar, no flour. Not allowed: less vinegar, more water, more vegetables.", {}, "", "", false, false}};
constexpr sv a996[] = {"corn-kernels"};
constexpr sv a997[] = {"wheat-flour"};
constexpr recipe_part a998[] = {{a996, "cup", {10, 1}, {10, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "fresh, cut after boiling ears 5 min"},
    {a338, "cup", {25, 10}, {25, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "diced"},
    {a669, "cup", {25, 10}, {25, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "diced"},
    {a734, "cup", {25, 10}, {25, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a223, "cup", {125, 100}, {125, 100}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "diced"},
    {a94, "cup", {175, 100}, {175, 100}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a93, "cup", {5, 1}, {5, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a158, "tbsp", {25, 10}, {25, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a183, "tsp", {25, 10}, {25, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a199, "tbsp", {25, 10}, {25, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a339, "tsp", {125, 100}, {125, 100}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a997, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::most, part_role::starch, false, true, false, "", "", ""},
    {a111, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::most, part_role::water, false, true, false, "", "", ""}};
constexpr tested_recipe a999[] = {{"", "", "pint", 9, 9, a998}};
constexpr citation a1000[] = {{"usda-guide-6", "6", "6-28"}};
constexpr sv a1001[] = {"green tomato relish",
    "pickled green tomato relish",
    "green tomato pickle relish",
    "relish de jitomate verde"};
constexpr table a1002[] = {{a86, "hot", "grated or finely chopped green tomatoes, peppers, onions", 500, a206, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a1003[] = {{"Use small, hard, green tomatoes; ripe ones are not meant.", {}, "", "", false, false},
    {"Grate or chop the vegetables fine, brine them as printed, and drain.", {}, "drained", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. No water goes into this relish.", {}, "", "", false, false},
    {"Thicken with 2 tbsp of cornstarch to the batch, no more and nothing else.", {}, "thickened", "", false, false},
    {"Bring the relish to a boil and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Allowed changes: more vinegar, fewer peppers or onions, more sugar. Not allowed: less vinegar, added water, more peppers, onions or starch.", {}, "", "", false, false}};
constexpr sv a1004[] = {"cornstarch"};
constexpr recipe_part a1005[] = {{a529, "lb", {10, 1}, {10, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "small, hard; grated or finely chopped"},
    {a338, "lb", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "grated or finely chopped"},
    {a669, "lb", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "grated or finely chopped"},
    {a223, "lb", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "grated or finely chopped"},
    {a158, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, true, "", "", "brine, drained"},
    {a111, "quart", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::water, false, false, true, "", "", "brine, drained"},
    {a94, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a93, "quart", {1, 1}, {1, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a736, "cup", {1, 3}, {1, 3}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a1004, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::starch, false, false, false, "", "", "thickener"}};
constexpr tested_recipe a1006[] = {{"", "", "pint", 7, 9, a1005}};
constexpr citation a1007[] = {{"usda-guide-6", "6", "6-29"}};
constexpr sv a1008[] = {"pepper-onion relish",
    "pepper and onion relish",
    "onion-pepper relish",
    "onion and pepper relish",
    "pickled pepper-onion relish",
    "pepper relish",
    "capsicum and onion relish",
    "relish de pimiento y cebolla",
    "relish de pimiento"};
constexpr table a1009[] = {{a86, "hot", "finely chopped onions and peppers boiled to half volume (about 30 min)", 500, a287, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a1010[] = {{"Wash the vegetables and chop them fine.", {}, "", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. No water goes into this relish; white vinegar is best.", {}, "", "", false, false},
    {"Boil it gently until the volume is half, about 30 minutes, and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Jars that are not processed keep only in the refrigerator, 1 month.", {}, "", "", false, false},
    {"Allowed changes: more vinegar, fewer onions or peppers, more sugar. Not allowed: less vinegar, added water or more onions or peppers.", {}, "", "", false, false}};
constexpr recipe_part a1011[] = {{a223, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "finely chopped"},
    {a338, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a669, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a94, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a93, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white preferred"},
    {a158, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""}};
constexpr tested_recipe a1012[] = {{"", "", "half-pint", 9, 9, a1011}};
constexpr citation a1013[] = {{"usda-guide-6", "6", "6-30"}};
constexpr sv a1014[] = {"pickle relish",
    "sweet pickle relish",
    "cucumber relish",
    "cucumber pickle relish",
    "sweet cucumber relish",
    "relish de pepino",
    "relish de pepinillos"};
constexpr table a1015[] = {{a86, "hot", "chopped cucumbers, peppers, onion", 500, a108, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a1016[] = {{"Wash the cucumbers; cut 1/16 inch off the blossom end and discard it.", {}, "blossom ends removed", "", false, false},
    {"Chop the vegetables.", {}, "", "", false, false},
    {"Soak them with the salt, ice and water as printed, and drain.", {}, "drained", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. No water goes into the relish itself.", {}, "", "", false, false},
    {"Heat the vegetables in the boiling sweet vinegar and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Allowed changes: more vinegar, fewer vegetables, more sugar. Not allowed: less vinegar, added water or more vegetables.", {}, "", "", false, false}};
constexpr sv a1017[] = {"ice"};
constexpr recipe_part a1018[] = {{a896, "quart", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "chopped"},
    {a669, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a338, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a223, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a158, "cup", {75, 100}, {75, 100}, "", {0, 1}, part_limit::free, part_role::salt, false, false, true, "", "", "soak, drained"},
    {a1017, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::other, false, false, true, "", "", "soak, drained"},
    {a111, "cup", {8, 1}, {8, 1}, "", {0, 1}, part_limit::free, part_role::water, false, false, true, "", "", "soak, drained"},
    {a94, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a182, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a339, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a530, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a112, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a93, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"}};
constexpr tested_recipe a1019[] = {{"", "", "pint", 9, 9, a1018}};
constexpr sv a1020[] = {"tangy tomatillo relish",
    "tomatillo relish",
    "relish de tomatillo",
    "relish de tomate de cascara",
    "relish de tomate de cáscara"};
constexpr table a1021[] = {{a86, "hot", "chopped tomatillos, tomatoes, jicama, peppers, onion; brined and drained", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, "The numbers were read, once. The column for the pack was blank in the excerpt; the jars are filled with boiling relish."}};
constexpr condition a1022[] = {{"Husk and wash the tomatillos; chop all vegetables, the jicama fine.", {}, "", "", false, false},
    {"Keep the vegetables in the salt brine as printed, then drain.", {}, "drained", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. The vinegar is cider vinegar, and no water goes into the relish itself.", {}, "", "", false, false},
    {"Bring the relish to a boil in the sweet vinegar, take the spice bag out and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Allowed changes: more vinegar, fewer peppers, onions or jicama, more sugar. Not allowed: less vinegar, added water, more of these vegetables, fewer tomatillos or tomatoes.", {}, "", "", false, false}};
constexpr sv a1023[] = {"tomatillo"};
constexpr sv a1024[] = {"plum-tomato"};
constexpr recipe_part a1025[] = {{a1023, "cup", {12, 1}, {12, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "chopped"},
    {a356, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a223, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a1024, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", "chopped"},
    {a669, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a338, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a660, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a158, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, true, "", "", "brine, drained"},
    {a111, "quart", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::water, false, false, true, "", "", "brine, drained"},
    {a451, "tbsp", {6, 1}, {6, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "in spice bag"},
    {a211, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a94, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a93, "cup", {65, 10}, {65, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "cider"}};
constexpr tested_recipe a1026[] = {{"", "", "pint", 6, 7, a1025}};
constexpr citation a1027[] = {{"usda-guide-6", "6", "6-31"}};
constexpr sv a1028[] = {"rhubarb",
    "stewed rhubarb",
    "rhubarb stalks",
    "rhubarb pieces",
    "rhubarb compote",
    "ruibarbo"};
constexpr sv a1029[] = {"half-to-1-inch-pieces"};
constexpr table a1030[] = {{a1029, "hot", "stewed pieces with sugar", 500, a507, "", "", "boiling-water-3", {}, "seen", 2, true, ""},
    {a1029, "hot", "stewed pieces with sugar", 500, a124, "acid-dial-6", "acid-weighted-5", "", a125, "seen", 2, true, ""}};
constexpr condition a1031[] = {{"Use the stalks only: rhubarb leaves are poisonous.", {}, "", "", false, false},
    {"Cut the stalks in pieces of 1/2 to 1 inch.", {}, "", "", false, false},
    {"Add 1/2 cup of sugar to the quart and let them stand until juice appears.", {}, "", "", false, false},
    {"Heat gently to a boil and fill the jars at once.", {}, "boiled before filling", "", false, false}};
constexpr citation a1032[] = {{"usda-guide-2", "2", "2-22"}};
constexpr sv a1033[] = {"chile salsa ii",
    "chile salsa 2",
    "chili salsa ii",
    "chili salsa 2",
    "chilli salsa ii",
    "second chile salsa"};
constexpr sv a1034[] = {"salsa",
    "salsas",
    "canned salsa",
    "tomato salsa",
    "tomato salsas",
    "red salsa",
    "salsa roja",
    "hot salsa",
    "mild salsa",
    "medium salsa",
    "salsa casera",
    "salsa picante",
    "salsa de chile",
    "chile salsas",
    "tomato chile salsa",
    "tomato chili salsa",
    "tomato pepper salsa",
    "tomato and pepper salsa"};
constexpr table a1035[] = {{a86, "hot", "chopped peeled tomatoes, mixed mild and hot chiles, onions, vinegar", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, "Read once, in a private page's copy of an Extension recipe; the proportions of the recipe were confirmed on another page."}};
constexpr condition a1036[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Peel the tomatoes and take out the cores.", {}, "peeled", "", false, false},
    {"Measure the vegetables chopped, level in dry measuring cups.", {}, "", "", false, false},
    {"Keep strictly to the amounts: of all tested salsas this one has the least acid, 1 cup of vinegar to 20 cups of tomatoes, peppers and onions.", {}, "", "", false, false},
    {"Never take more peppers or onions than printed, nor fewer tomatoes.", {}, "", "", false, false},
    {"Add no other vegetable, such as corn, beans, carrots or avocado.", {}, "", "", false, false},
    {"Add no fresh herbs beyond what is printed.", {}, "", "", false, false},
    {"Use vinegar of at least 5 %, not homemade, and never less than printed.", {}, "", "", false, false},
    {"Bottled lemon juice may replace the vinegar, measure for measure; never the other way round.", {}, "", "", false, false},
    {"One kind of pepper may replace another, the total unchanged.", {}, "", "", false, false},
    {"Onions of any color may be used, the total unchanged.", {}, "", "", false, false},
    {"The amounts of black pepper and salt may be changed.", {}, "", "", false, false},
    {"Wear gloves for hot peppers.", {}, "", "", false, false},
    {"Bring it to a boil, simmer 10 minutes and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener; thicken it, or pour liquid off, after opening.", {}, "not thickened", "", false, false},
    {"Pint jars at most: no quart process is published, and no pressure process.", {}, "", "", false, false}};
constexpr sv a1037[] = {"tomato",
    "tomatillo",
    "green-tomato"};
constexpr sv a1038[] = {"vinegar",
    "bottled-lemon-juice"};
constexpr recipe_part a1039[] = {{a1037, "cup", {10, 1}, {10, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "peeled, cored, chopped"},
    {a676, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "seeded, chopped, mixed mild and hot"},
    {a223, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a1038, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a198, "tsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a383, "tsp", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a1040[] = {{"", "", "pint", 7, 9, a1039}};
constexpr citation a1041[] = {{"usda-guide-3", "3", "3-22"},
    {"rutgers-salsa", "", ""},
    {"extension-pepper-answer", "", ""},
    {"extension-lemon-answer", "", ""}};
constexpr sv a1042[] = {"chile salsa",
    "chili salsa",
    "chilli salsa",
    "hot tomato-pepper sauce",
    "hot tomato pepper sauce",
    "chile salsa (hot tomato-pepper sauce)",
    "chile salsa i"};
constexpr table a1043[] = {{a86, "hot", "chopped peeled tomatoes, chiles, onions, vinegar", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, "An old state copy asks for a pressure process (10 lb, 20 min); the tables of 1994 and later are for boiling water."}};
constexpr condition a1044[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Peel the tomatoes and take out the cores.", {}, "peeled", "", false, false},
    {"The printed weights are those of the vegetables as bought.", {}, "", "", false, false},
    {"Never take more peppers or onions than printed, nor fewer tomatoes; fewer vegetables are fine, but nothing may fill the gap.", {}, "", "", false, false},
    {"Add no other vegetable, such as corn, beans, carrots or avocado.", {}, "", "", false, false},
    {"Add no fresh herbs beyond what is printed.", {}, "", "", false, false},
    {"Use vinegar of at least 5 %, not homemade, and never less than printed.", {}, "", "", false, false},
    {"One kind of pepper may replace another, the total weight unchanged.", {}, "", "", false, false},
    {"Onions of any color may be used, the total unchanged.", {}, "", "", false, false},
    {"Bottled lemon juice may replace the vinegar, measure for measure; never the other way round.", {}, "", "", false, false},
    {"Dried spices and herbs and salt may be changed or left out.", {}, "", "", false, false},
    {"Wear gloves for hot peppers.", {}, "", "", false, false},
    {"Bring it to a boil, simmer 10 minutes and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener; thicken it, or pour liquid off, after opening.", {}, "not thickened", "", false, false},
    {"Pint jars at most: no quart process is published, and no pressure process.", {}, "", "", false, false}};
constexpr recipe_part a1045[] = {{a1037, "lb", {5, 1}, {5, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "as purchased"},
    {a676, "lb", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "as purchased"},
    {a223, "lb", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "as purchased"},
    {a1038, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a158, "tsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a383, "tsp", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a1046[] = {{"", "", "pint", 6, 8, a1045}};
constexpr citation a1047[] = {{"usda-guide-3", "3", "3-21"},
    {"rutgers-salsa", "", ""},
    {"extension-pepper-answer", "", ""},
    {"extension-lemon-answer", "", ""}};
constexpr sv a1048[] = {"choice salsa",
    "choice tomato salsa",
    "onion and pepper choice salsa"};
constexpr sv a1049[] = {"salsa",
    "salsas",
    "canned salsa",
    "tomato salsa",
    "tomato salsas",
    "red salsa",
    "salsa roja",
    "hot salsa",
    "mild salsa",
    "medium salsa",
    "salsa casera"};
constexpr table a1050[] = {{a86, "hot", "seeded chopped tomatoes 1/4-1/2 inch, onions and/or peppers diced 1/4 inch, lemon or lime juice", 500, a993, "", "", "boiling-water-3", {}, "seen-part", 1, true, "Read: 15 min for half-pints and pints at 0 to 1,000 ft. From memory of the same table, and from a general statement for the Center's salsas: 20 and 25 min."}};
constexpr condition a1051[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Peel the tomatoes, take out cores and seeds and chop them in pieces of 1/4 to 1/2 inch.", {}, "peeled", "", false, false},
    {"Dice onions and peppers to 1/4 inch.", {}, "", "", false, false},
    {"Split the 9 cups of onions and peppers between any kinds of onion and pepper, but never take more than 9 cups in all to 6 cups of tomatoes.", {}, "", "", false, false},
    {"Do not change the proportions of tomatoes, vegetables and juice.", {}, "", "", false, false},
    {"Put in no garlic and no other vegetable; none was tested.", {}, "", "", false, false},
    {"Add no fresh herbs beyond what is printed.", {}, "", "", false, false},
    {"Use bottled lemon or lime juice, or both, never less than printed and never fresh; no key lime juice.", {}, "", "", false, false},
    {"Never use vinegar in place of the juice.", {}, "", "", false, false},
    {"Wear gloves for hot peppers.", {}, "", "", false, false},
    {"Bring it to a boil, simmer 3 minutes and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener; thicken it, or pour liquid off, after opening.", {}, "not thickened", "", false, false},
    {"Pint jars at most.", {}, "", "", false, false}};
constexpr sv a1052[] = {"onion",
    "pepper"};
constexpr sv a1053[] = {"bottled-lemon-juice",
    "bottled-lime-juice"};
constexpr recipe_part a1054[] = {{a385, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "peeled, cored, seeded, chopped 1/4 to 1/2 inch"},
    {a1052, "cup", {9, 1}, {9, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "diced 1/4 inch, any kind, any split"},
    {a1053, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "not key lime"},
    {a158, "tsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""}};
constexpr tested_recipe a1055[] = {{"", "", "pint", 6, 6, a1054}};
constexpr citation a1056[] = {{"nchfp-choice-salsa", "", ""}};
constexpr sv a1057[] = {"spicy cranberry salsa",
    "cranberry salsa",
    "hot cranberry salsa",
    "salsa de arándanos rojos",
    "salsa de arandanos rojos"};
constexpr sv a1058[] = {"salsa",
    "salsas",
    "canned salsa",
    "fruit salsa",
    "fruit salsas",
    "salsa de fruta",
    "salsa de frutas"};
constexpr table a1059[] = {{a86, "hot", "cooked salsa", 250, a108, "", "", "boiling-water-3", {}, "seen", 2, true, "Read on the National Center's page, half-pints or pints. A salsa page prints 15, 20 and 25 min for pints of the same recipe; not used."}};
constexpr condition a1060[] = {{"Use fresh, whole cranberries.", {}, "", "", false, false},
    {"Never take more onion or pepper than printed, nor fewer cranberries.", {}, "", "", false, false},
    {"Add no other vegetable and no fresh herbs.", {}, "", "", false, false},
    {"Use cider vinegar of at least 5 %, not homemade, and never less than printed.", {}, "", "", false, false},
    {"Add no more water than printed.", {}, "", "", false, false},
    {"One kind of pepper may replace another, the total unchanged; go by weight where peppers are counted.", {}, "", "", false, false},
    {"Onions of any color may be used, the total unchanged.", {}, "", "", false, false},
    {"Wear gloves for hot peppers.", {}, "", "", false, false},
    {"Boil it as the recipe says, with the cranberries going in last, and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener; thicken it, or pour liquid off, after opening.", {}, "not thickened", "", false, false},
    {"Pint jars at most: no quart process is published.", {}, "", "", false, false}};
constexpr recipe_part a1061[] = {{a223, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a458, "piece", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "large, finely chopped"},
    {a111, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a93, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "cider"},
    {a158, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a94, "cup", {4, 3}, {4, 3}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a686, "tbsp", {6, 1}, {6, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a394, "cup", {12, 1}, {12, 1}, "lb", {275, 100}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh, whole, rinsed"}};
constexpr tested_recipe a1062[] = {{"", "", "pint", 6, 6, a1061}};
constexpr citation a1063[] = {{"usda-guide-2", "2", "2-23"},
    {"nchfp-cranberry-salsa", "", ""},
    {"rutgers-salsa", "", ""},
    {"extension-pepper-answer", "", ""}};
constexpr sv a1064[] = {"mango salsa",
    "mango salsas",
    "green mango salsa",
    "unripe mango salsa",
    "salsa de mango",
    "salsa de mango verde"};
constexpr table a1065[] = {{a86, "hot", "hard green (unripe) mango 1/2 inch cubes, red bell pepper, onion, cider vinegar", 500, a391, "", "", "boiling-water-3", {}, "seen", 2, true, "Read: 10, 15 and 20 min, stated for the Center's fruit salsas with mango named; 15 min for 1,001 to 6,000 ft on another page as well. A second separate reading is missing."}};
constexpr condition a1066[] = {{"Use only hard, green, unripe mangoes; ripe mango is a low-acid food.", {}, "under-ripe", "", true, false},
    {"Green mango sap may irritate the skin like poison ivy: wear gloves.", {}, "", "", false, false},
    {"Cut the mango in cubes of 1/2 inch.", {}, "", "", false, false},
    {"Never take more pepper, onion, garlic or ginger than printed, nor less fruit.", {}, "", "", false, false},
    {"Add no other vegetable and no fresh herbs.", {}, "", "", false, false},
    {"Use cider vinegar of at least 5 %, not homemade, and never less than printed.", {}, "", "", false, false},
    {"Add no more water than printed.", {}, "", "", false, false},
    {"One kind of pepper may replace another, the total unchanged.", {}, "", "", false, false},
    {"Onions of any color may be used, the total unchanged.", {}, "", "", false, false},
    {"Bring it to a boil, simmer 5 minutes and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener; thicken it, or pour liquid off, after opening.", {}, "not thickened", "", false, false},
    {"Half-pint jars only: no process for a larger jar is published.", {}, "", "", false, false}};
constexpr recipe_part a1067[] = {{a404, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "hard, green, unripe, 1/2 inch cubes"},
    {a338, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "diced 1/2 inch"},
    {a223, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a211, "tsp", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a156, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a397, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "fresh, finely chopped"},
    {a95, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a93, "cup", {125, 100}, {125, 100}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "cider"},
    {a111, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""}};
constexpr tested_recipe a1068[] = {{"", "", "half-pint", 6, 6, a1067}};
constexpr citation a1069[] = {{"nchfp-mango-salsa", "", ""},
    {"rutgers-salsa", "", ""},
    {"extension-pepper-answer", "", ""}};
constexpr sv a1070[] = {"tomato salsa using paste tomatoes",
    "tomato salsa with paste tomatoes",
    "paste tomato salsa",
    "salsa with paste tomatoes",
    "salsa using paste tomatoes",
    "roma tomato salsa",
    "plum tomato salsa"};
constexpr table a1071[] = {{a86, "hot", "chopped peeled paste tomatoes, chiles, jalapenos, onions, lemon or lime juice", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, "Read whole in a text copy of the 2015 guide, page 3-23."}};
constexpr condition a1072[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Use tomatoes of a paste kind.", {}, "", "", false, false},
    {"Peel the tomatoes and take out the cores.", {}, "peeled", "", false, false},
    {"Measure the vegetables chopped, level in dry measuring cups.", {}, "", "", false, false},
    {"Never take more peppers, onions or garlic than printed, nor fewer tomatoes; fewer vegetables are fine, but nothing may fill the gap.", {}, "", "", false, false},
    {"Add no other vegetable, such as corn, beans, carrots or avocado.", {}, "", "", false, false},
    {"Use no more fresh cilantro than printed; add more when you serve it.", {}, "", "", false, false},
    {"Use bottled lemon or lime juice, or both; never less than printed, and never vinegar or fresh juice in its place.", {}, "", "", false, false},
    {"One kind of pepper may replace another, the total unchanged.", {}, "", "", false, false},
    {"Onions of any color may be used, the total unchanged.", {}, "", "", false, false},
    {"Spices may be reduced or left out; do not add more.", {}, "", "", false, false},
    {"Wear gloves for hot peppers.", {}, "", "", false, false},
    {"Simmer everything but the spices 10 minutes, add them, simmer 20 minutes more and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener; thicken it, or pour liquid off, after opening.", {}, "not thickened", "", false, false},
    {"Pint jars at most: no quart process is published, and no pressure process.", {}, "", "", false, false}};
constexpr sv a1073[] = {"paste-tomato"};
constexpr sv a1074[] = {"long-green-chile"};
constexpr sv a1075[] = {"cumin"};
constexpr recipe_part a1076[] = {{a1073, "quart", {7, 1}, {7, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "peeled, cored, chopped"},
    {a1074, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "peppers", "", "seeded, chopped"},
    {a223, "cup", {5, 1}, {5, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a561, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "peppers", "", "seeded, finely chopped"},
    {a156, "clove", {6, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a1053, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a198, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a383, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a1075, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", "ground"},
    {a712, "tbsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a348, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::spice, false, true, false, "", "", "fresh"}};
constexpr tested_recipe a1077[] = {{"", "", "pint", 16, 18, a1076}};
constexpr citation a1078[] = {{"usda-guide-3", "3", "3-23"},
    {"rutgers-salsa", "", ""},
    {"extension-pepper-answer", "", ""},
    {"ndsu-salsa-acid", "", ""}};
constexpr sv a1079[] = {"peach apple salsa",
    "peach and apple salsa",
    "apple peach salsa",
    "peach-apple-tomato salsa",
    "tomato peach apple salsa",
    "salsa de durazno y manzana",
    "salsa de melocotón y manzana"};
constexpr table a1080[] = {{a86, "hot", "tomatoes, onions, bell peppers, hard unripe peaches, tart apples, cider vinegar, sugar", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, "Read whole in a text copy of the 2015 guide, page 2-25."}};
constexpr condition a1081[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Peel the tomatoes and chop them in pieces of 1/2 inch.", {}, "peeled", "", false, false},
    {"Use only peaches with yellow flesh; white-fleshed peaches may be too low in acid, and no canning process fits them.", {}, "yellow flesh", "", true, false},
    {"Take hard, unripe peaches.", {}, "under-ripe", "", false, false},
    {"Use tart apples.", {}, "", "", false, false},
    {"Never take more onion or pepper than printed, nor fewer tomatoes, peaches or apples.", {}, "", "", false, false},
    {"Add no other vegetable and no fresh herbs.", {}, "", "", false, false},
    {"Use cider vinegar of at least 5 %, not homemade, and never less than printed.", {}, "", "", false, false},
    {"One kind of pepper may replace another, the total unchanged.", {}, "", "", false, false},
    {"Onions of any color may be used, the total unchanged.", {}, "", "", false, false},
    {"Bring it to a boil and simmer 30 minutes with the bag of spices.", {}, "boiled before filling", "", false, false},
    {"Fill the hot solids to 1 1/4 inch of the rim and cover with the hot liquid to 1/2 inch.", {}, "covered with liquid", "", false, false},
    {"Add no flour, starch or other thickener; thicken it, or pour liquid off, after opening.", {}, "not thickened", "", false, false},
    {"Pint jars at most: no quart process is published.", {}, "", "", false, false}};
constexpr sv a1082[] = {"tart-apple"};
constexpr recipe_part a1083[] = {{a1024, "cup", {6, 1}, {6, 1}, "lb", {225, 100}, part_limit::least, part_role::acid_food, true, false, false, "", "", "peeled, chopped 1/2 inch"},
    {a223, "cup", {25, 10}, {25, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "diced 1/4 inch"},
    {a669, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped 1/4 inch"},
    {a498, "cup", {10, 1}, {10, 1}, "lb", {35, 10}, part_limit::least, part_role::acid_food, false, false, false, "", "", "hard, unripe, chopped 1/2 inch"},
    {a1082, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", "chopped 1/2 inch"},
    {a451, "tbsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "in a bag"},
    {a158, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a211, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a95, "cup", {375, 100}, {375, 100}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", "packed"},
    {a93, "cup", {225, 100}, {225, 100}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "cider"}};
constexpr tested_recipe a1084[] = {{"", "", "pint", 7, 7, a1083}};
constexpr citation a1085[] = {{"nchfp-peach-apple-salsa", "", ""},
    {"wisconsin-white-peaches", "", ""},
    {"rutgers-salsa", "", ""},
    {"extension-pepper-answer", "", ""}};
constexpr sv a1086[] = {"peach salsa",
    "peach salsas",
    "yellow peach salsa",
    "salsa de durazno",
    "salsa de duraznos",
    "salsa de melocotón",
    "salsa de melocoton"};
constexpr table a1087[] = {{a86, "hot", "hard unripe but yellow peaches 1/2 inch cubes, red bell pepper, onion, cider vinegar", 500, a391, "", "", "boiling-water-3", {}, "seen", 2, true, "Read whole in a text copy of the 2015 guide, page 2-24. The guide sends the reader from peach salsa to the table of mango salsa."}};
constexpr condition a1088[] = {{"Use only peaches with yellow flesh; white-fleshed peaches may be too low in acid, and no canning process fits them.", {}, "yellow flesh", "", true, false},
    {"Take peaches that are hard and unripe, but already yellow.", {}, "under-ripe", "", false, false},
    {"Cut the peaches in cubes of 1/2 inch.", {}, "", "", false, false},
    {"Never take more pepper, onion, garlic or ginger than printed, nor less fruit.", {}, "", "", false, false},
    {"Add no other vegetable and no fresh herbs.", {}, "", "", false, false},
    {"Use cider vinegar of at least 5 %, not homemade, and never less than printed.", {}, "", "", false, false},
    {"Add no more water than printed.", {}, "", "", false, false},
    {"One kind of pepper may replace another, the total unchanged.", {}, "", "", false, false},
    {"Onions of any color may be used, the total unchanged.", {}, "", "", false, false},
    {"Bring it to a boil, simmer 5 minutes and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener; thicken it, or pour liquid off, after opening.", {}, "not thickened", "", false, false},
    {"Half-pint jars only: no process for a larger jar is published.", {}, "", "", false, false}};
constexpr recipe_part a1089[] = {{a498, "cup", {6, 1}, {6, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "hard, unripe but yellow, 1/2 inch cubes"},
    {a338, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "diced 1/2 inch"},
    {a223, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a211, "tsp", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a156, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a397, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "fresh, finely chopped"},
    {a95, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a93, "cup", {125, 100}, {125, 100}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "cider"},
    {a111, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""}};
constexpr tested_recipe a1090[] = {{"", "", "half-pint", 6, 6, a1089}};
constexpr citation a1091[] = {{"nchfp-peach-salsa", "", ""},
    {"wisconsin-white-peaches", "", ""},
    {"rutgers-salsa", "", ""},
    {"extension-pepper-answer", "", ""}};
constexpr sv a1092[] = {"tomato salsa using slicing tomatoes",
    "tomato salsa with slicing tomatoes",
    "slicing tomato salsa",
    "salsa with slicing tomatoes",
    "salsa using slicing tomatoes"};
constexpr table a1093[] = {{a86, "hot", "chopped peeled slicing tomatoes, chiles, jalapenos, onions, vinegar", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a1094[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Peel the tomatoes and take out the cores.", {}, "peeled", "", false, false},
    {"Measure the vegetables chopped, level in dry measuring cups.", {}, "", "", false, false},
    {"Never take more peppers, onions or garlic than printed, nor fewer tomatoes; fewer vegetables are fine, but nothing may fill the gap.", {}, "", "", false, false},
    {"Add no other vegetable, such as corn, beans, carrots or avocado.", {}, "", "", false, false},
    {"Use no more fresh cilantro than printed; add more when you serve it.", {}, "", "", false, false},
    {"Use vinegar of at least 5 %, not homemade, and never less than printed.", {}, "", "", false, false},
    {"One kind of pepper may replace another, the total unchanged.", {}, "", "", false, false},
    {"Onions of any color may be used, the total unchanged.", {}, "", "", false, false},
    {"Bottled lemon juice may replace the vinegar, measure for measure; never the other way round.", {}, "", "", false, false},
    {"Dried spices and herbs and salt may be changed or left out.", {}, "", "", false, false},
    {"Wear gloves for hot peppers.", {}, "", "", false, false},
    {"Bring it to a boil, simmer 20 minutes and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener; thicken it, or pour liquid off, after opening.", {}, "not thickened", "", false, false},
    {"Pint jars at most: no quart process is published, and no pressure process.", {}, "", "", false, false}};
constexpr sv a1095[] = {"slicing-tomato",
    "tomatillo",
    "green-tomato"};
constexpr recipe_part a1096[] = {{a1095, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "peeled, cored, chopped"},
    {a1074, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "peppers", "", "seeded, chopped"},
    {a561, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "peppers", "", "seeded, chopped"},
    {a223, "cup", {75, 100}, {75, 100}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a156, "clove", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a1038, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a1075, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", "ground"},
    {a712, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a348, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::spice, false, true, false, "", "", "fresh"},
    {a198, "tsp", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""}};
constexpr tested_recipe a1097[] = {{"", "", "pint", 4, 4, a1096}};
constexpr citation a1098[] = {{"usda-guide-3", "3", "3-24"},
    {"rutgers-salsa", "", ""},
    {"extension-pepper-answer", "", ""},
    {"extension-lemon-answer", "", ""}};
constexpr sv a1099[] = {"tomatillo green salsa",
    "tomatillo salsa",
    "green tomatillo salsa",
    "salsa verde",
    "green salsa",
    "green tomato salsa",
    "tomatillo salsa verde",
    "salsa de tomatillo",
    "salsa de tomatillos",
    "salsa de tomate verde",
    "salsas verdes"};
constexpr sv a1100[] = {"salsa",
    "salsas",
    "canned salsa",
    "green chile salsa",
    "green chili salsa",
    "salsa de chile verde"};
constexpr table a1101[] = {{a86, "hot", "chopped tomatillos (or green tomatoes), green chiles, jalapenos, onions, lemon juice", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, "One page states the times for all the National Center's vegetable salsas and names tomatillo; the whole row was also read in an equipment maker's copy."}};
constexpr condition a1102[] = {{"Take off the husks of the tomatillos and chop them.", {}, "", "", false, false},
    {"Green, unripe tomatoes may replace tomatillos, the total unchanged.", {}, "", "", false, false},
    {"Measure the vegetables chopped, level in dry measuring cups.", {}, "", "", false, false},
    {"Never take more peppers, onions or garlic than printed, nor fewer tomatillos; fewer vegetables are fine, but nothing may fill the gap.", {}, "", "", false, false},
    {"Add no other vegetable, such as corn, beans, carrots or avocado.", {}, "", "", false, false},
    {"Add no fresh herbs beyond what is printed.", {}, "", "", false, false},
    {"Use bottled lemon or lime juice, or both; never less than printed, and never vinegar or fresh juice in its place.", {}, "", "", false, false},
    {"One kind of pepper may replace another, the total unchanged.", {}, "", "", false, false},
    {"Onions of any color may be used, the total unchanged.", {}, "", "", false, false},
    {"Dried spices and herbs and salt may be changed or left out.", {}, "", "", false, false},
    {"Wear gloves for hot peppers.", {}, "", "", false, false},
    {"Bring it to a boil, simmer 20 minutes and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener; thicken it, or pour liquid off, after opening.", {}, "not thickened", "", false, false},
    {"Pint jars at most: no quart process is published, and no pressure process.", {}, "", "", false, false}};
constexpr sv a1103[] = {"tomatillo",
    "green-tomato"};
constexpr recipe_part a1104[] = {{a1103, "cup", {5, 1}, {5, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "chopped"},
    {a1074, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "peppers", "", "seeded, chopped"},
    {a561, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "peppers", "", "seeded, finely chopped"},
    {a223, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a1053, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a156, "clove", {6, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a1075, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", "ground"},
    {a712, "tbsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", "dried"},
    {a198, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a383, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a1105[] = {{"", "", "pint", 5, 5, a1104}};
constexpr citation a1106[] = {{"usda-guide-3", "3", "3-22"},
    {"rutgers-salsa", "", ""},
    {"extension-pepper-answer", "", ""}};
constexpr sv a1107[] = {"tomato and green chile salsa",
    "tomato/green chile salsa",
    "tomato green chili salsa",
    "tomato and green chili salsa",
    "tomato with green chile salsa"};
constexpr sv a1108[] = {"salsa",
    "salsas",
    "canned salsa",
    "tomato salsa",
    "tomato salsas",
    "red salsa",
    "salsa roja",
    "hot salsa",
    "mild salsa",
    "medium salsa",
    "salsa casera",
    "tomato chile salsa",
    "tomato chili salsa",
    "tomato pepper salsa",
    "tomato and pepper salsa",
    "green chile salsa",
    "green chili salsa",
    "salsa de chile verde"};
constexpr table a1109[] = {{a86, "hot", "chopped peeled tomatoes, long green chiles, onions, vinegar", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, "Read whole in a text copy of the 2015 guide, page 3-25."}};
constexpr condition a1110[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Peel the tomatoes and take out the cores.", {}, "peeled", "", false, false},
    {"Measure the vegetables chopped, level in dry measuring cups.", {}, "", "", false, false},
    {"The spices may be reduced; change nothing else.", {}, "", "", false, false},
    {"Never take more peppers, onions or garlic than printed, nor fewer tomatoes.", {}, "", "", false, false},
    {"Add no other vegetable, such as corn, beans, carrots or avocado.", {}, "", "", false, false},
    {"Add no fresh herbs beyond what is printed.", {}, "", "", false, false},
    {"Use vinegar of at least 5 %, not homemade, and never less than printed.", {}, "", "", false, false},
    {"Wear gloves for hot peppers.", {}, "", "", false, false},
    {"Bring it to a boil, simmer 20 minutes and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener; thicken it, or pour liquid off, after opening.", {}, "not thickened", "", false, false},
    {"Pint jars at most: no quart process is published, and no pressure process.", {}, "", "", false, false}};
constexpr recipe_part a1111[] = {{a385, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "peeled, cored, chopped"},
    {a1074, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "peppers", "", "seeded, chopped"},
    {a223, "cup", {75, 100}, {75, 100}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a561, "piece", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "peppers", "", "seeded, finely chopped"},
    {a156, "clove", {6, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a93, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a1075, "tsp", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", "ground"},
    {a712, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a198, "tsp", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""}};
constexpr tested_recipe a1112[] = {{"", "", "pint", 3, 3, a1111}};
constexpr citation a1113[] = {{"usda-guide-3", "3", "3-24"},
    {"ndsu-green-chile-salsa", "", ""},
    {"rutgers-salsa", "", ""}};
constexpr sv a1114[] = {"tomato/tomato paste salsa",
    "tomato tomato paste salsa",
    "tomato and tomato paste salsa",
    "tomato paste salsa",
    "salsa with tomato paste",
    "tomato salsa with tomato paste"};
constexpr table a1115[] = {{a86, "hot", "chopped peeled slicing tomatoes, canned tomato paste, onions, peppers, lemon or lime juice", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a1116[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Peel the tomatoes and take out the cores.", {}, "peeled", "", false, false},
    {"Measure the vegetables chopped, level in dry measuring cups.", {}, "", "", false, false},
    {"Only the amounts of spices and dried herbs may change; tomatoes, tomato paste, vegetables and juice keep their proportions.", {}, "", "", false, false},
    {"Never take more peppers, onions or garlic than printed, nor fewer tomatoes or less tomato paste.", {}, "", "", false, false},
    {"Add no other vegetable, such as corn, beans, carrots or avocado.", {}, "", "", false, false},
    {"Add no fresh herbs beyond what is printed.", {}, "", "", false, false},
    {"Use bottled lemon or lime juice, or both; never less than printed, and never vinegar or fresh juice in its place.", {}, "", "", false, false},
    {"Wear gloves for hot peppers.", {}, "", "", false, false},
    {"Bring it to a boil, simmer 30 minutes and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener; thicken it, or pour liquid off, after opening.", {}, "not thickened", "", false, false},
    {"Pint jars at most: no quart process is published, and no pressure process.", {}, "", "", false, false}};
constexpr sv a1117[] = {"slicing-tomato"};
constexpr sv a1118[] = {"tomato-paste"};
constexpr recipe_part a1119[] = {{a1117, "quart", {3, 1}, {3, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "peeled, cored, chopped"},
    {a223, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a561, "piece", {6, 1}, {6, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "peppers", "", "seeded, finely chopped"},
    {a1074, "piece", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "peppers", "", "seeded, chopped"},
    {a156, "clove", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "finely chopped"},
    {a1118, "oz", {24, 1}, {24, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", "2 cans of 12 oz"},
    {a1053, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a198, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a94, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a1075, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", "ground"},
    {a712, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a383, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a1120[] = {{"", "", "pint", 7, 9, a1119}};
constexpr citation a1121[] = {{"usda-guide-3", "3", "3-25"},
    {"rutgers-salsa", "", ""}};
constexpr sv a1122[] = {"sauerkraut",
    "sauer kraut",
    "kraut",
    "home-made sauerkraut",
    "choucroute",
    "chucrut"};
constexpr sv a1123[] = {"shredded"};
constexpr jar_minutes a1124[] = {{"pint", a522},
    {"quart", a132}};
constexpr table a1125[] = {{a1123, "hot", "shredded cabbage, fully fermented, kraut and juice brought slowly to a boil", 500, a1124, "", "", "boiling-water-4", {}, "seen", 2, true, "Read whole in a text copy of the 2015 guide, page 6-8. Older pages give longer hot-pack times near sea level, 15 minutes for pints and 20 for quarts; not used."},
    {a1123, "raw", "shredded cabbage, fully fermented, packed cold with its juice", 500, a141, "", "", "boiling-water-4", {}, "seen", 2, true, ""}};
constexpr condition a1126[] = {{"Shred the cabbage and mix in 3 tbsp of canning salt to every 5 lb, 5 lb at a time; less is not tested, and too much stops the ferment.", {}, "", "", false, false},
    {"No salt substitute and no reduced-sodium salt.", {}, "", "", false, false},
    {"Where the juice does not cover the cabbage, add boiled, cooled brine of 1 1/2 tbsp of salt to the quart of water.", {}, "", "", false, false},
    {"Ferment 3 to 4 weeks at 70 to 75 F or 5 to 6 weeks at 60 to 65 F; below 60 F it may not ferment, above 75 F it may go soft.", {}, "", "", false, false},
    {"Only fully fermented kraut may be canned.", {}, "fully fermented", "", true, false},
    {"Discard kraut that is slimy or smells bad.", {}, "", "", false, false},
    {"Bring kraut and juice slowly to a boil, stirring often.", a80, "boiled before filling", "", false, false},
    {"Fill the jars rather firmly.", {}, "packed tightly", "", false, false},
    {"Cover with the juice.", {}, "covered with liquid", "", false, false},
    {"Low-temperature pasteurization is not for kraut.", {}, "", "", false, false}};
constexpr recipe_part a1127[] = {{a833, "lb", {5, 1}, {5, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "shredded"},
    {a158, "tbsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::least, part_role::salt, false, false, false, "", "", "mixed into the cabbage"}};
constexpr tested_recipe a1128[] = {{"", "", "", 0, 0, a1127}};
constexpr citation a1129[] = {{"usda-guide-6", "6", "6-8"}};
constexpr sv a1130[] = {"seafood soup",
    "fish soup",
    "clam soup",
    "soup with seafood",
    "soup with fish",
    "sopa de mariscos",
    "sopa de pescado"};
constexpr sv a1131[] = {"soup"};
constexpr jar_minutes a1132[] = {{"pint", a473},
    {"quart", a473}};
constexpr table a1133[] = {{a1131, "hot", "soup containing any seafood; jars half solids, half liquid", 1000, a1132, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "The guide prints this time as a footnote to the soup table, for pints and quarts alike; an equipment maker's copy lacks it."}};
constexpr condition a1134[] = {{"Every solid ingredient must have canning directions of its own, and is prepared as for its hot pack; so no cabbage.", {}, "", "", false, false},
    {"Peel whatever its own directions peel, such as carrots, potatoes and onions.", {}, "peeled", "", false, false},
    {"Prepare the seafood as for canning it alone: only kinds that have canning directions (so no shrimp and no blue crab).", {}, "", "", false, false},
    {"No noodles, other pasta, rice, barley, dumplings, flour, starch, cream, milk or other thickener go in; add them after opening.", {}, "not thickened", "", false, false},
    {"If dried beans or peas are in it, pour 3 cups of water over each cup, boil 2 minutes, let them stand 1 hour off the heat, heat to a boil and drain.", {}, "beans rehydrated", "beans-not-rehydrated", false, false},
    {"If meat or poultry is in it, cook it tender and let it cool.", {}, "meat precooked", "", false, false},
    {"Take the bones out.", {}, "bones removed", "", false, false},
    {"Take off the fat.", {}, "fat removed", "", false, false},
    {"If mushrooms are in it, use grown ones, never wild ones.", {}, "cultivated mushrooms", "", false, false},
    {"Drain all solids.", {}, "drained", "", false, false},
    {"Cover them with hot broth, tomatoes or water and bring to a boil.", {}, "boiled before filling", "", false, false},
    {"Boil 5 minutes.", {}, "boiled 5 min", "", false, false},
    {"Fill the solids in loosely, without pressing.", {}, "packed loosely", "", false, false},
    {"Fill up with the hot liquid.", {}, "covered with liquid", "", false, false}};
constexpr sv a1135[] = {"asparagus",
    "beans-lima-fresh",
    "beans-snap",
    "beets",
    "carrots",
    "corn-whole-kernel",
    "mushrooms",
    "okra",
    "onions",
    "peas-green",
    "peppers",
    "potatoes-white",
    "beans-dry",
    "greens",
    "potatoes-sweet",
    "pumpkin",
    "squash-winter",
    "chicken-without-bones",
    "ground-meat",
    "meat-stock-beef",
    "meat-stock-poultry",
    "meat-strips-cubes-chunks",
    "poultry-other-without-bones",
    "wild-game-ground",
    "wild-game-strips",
    "clams",
    "crab-king-dungeness",
    "fish-pint-jars",
    "fish-quart-jars",
    "oysters",
    "tuna"};
constexpr citation a1136[] = {{"usda-guide-4", "4", ""},
    {"clemson-soups", "", ""}};
constexpr sv a1137[] = {"vegetable soup",
    "vegetable soups",
    "bean soup",
    "dried bean soup",
    "chicken soup",
    "chicken vegetable soup",
    "turkey soup",
    "poultry soup",
    "beef soup",
    "vegetable beef soup",
    "beef vegetable soup",
    "meat soup",
    "soup without seafood",
    "sopa de verduras",
    "sopa de frijol"};
constexpr jar_minutes a1138[] = {{"pint", a410},
    {"quart", a190}};
constexpr table a1139[] = {{a1131, "hot", "vegetable, dried bean or pea, meat or poultry; jars half solids, half liquid", 1000, a1138, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "One Extension newsletter asks for the longest time of any single ingredient instead, 60 to 90 min in most cases; the guide's times are the least that is accepted."}};
constexpr condition a1140[] = {{"Every solid ingredient must have canning directions of its own, and is prepared as for its hot pack; so no cabbage.", {}, "", "", false, false},
    {"Peel whatever its own directions peel, such as carrots, potatoes and onions.", {}, "peeled", "", false, false},
    {"No noodles, other pasta, rice, barley, dumplings, flour, starch, cream, milk or other thickener go in; add them after opening.", {}, "not thickened", "", false, false},
    {"If dried beans or peas are in it, pour 3 cups of water over each cup, boil 2 minutes, let them stand 1 hour off the heat, heat to a boil and drain.", {}, "beans rehydrated", "beans-not-rehydrated", false, false},
    {"If meat or poultry is in it, cook it tender and let it cool.", {}, "meat precooked", "", false, false},
    {"Take the bones out.", {}, "bones removed", "", false, false},
    {"Take off the fat.", {}, "fat removed", "", false, false},
    {"If mushrooms are in it, use grown ones, never wild ones.", {}, "cultivated mushrooms", "", false, false},
    {"No seafood of any kind: it needs the longer process.", {}, "", "", false, false},
    {"Drain all solids.", {}, "drained", "", false, false},
    {"Cover them with hot broth, tomatoes or water and bring to a boil.", {}, "boiled before filling", "", false, false},
    {"Boil 5 minutes.", {}, "boiled 5 min", "", false, false},
    {"Fill the solids in loosely, without pressing.", {}, "packed loosely", "", false, false},
    {"Fill up with the hot liquid.", {}, "covered with liquid", "", false, false}};
constexpr sv a1141[] = {"asparagus",
    "beans-lima-fresh",
    "beans-snap",
    "beets",
    "carrots",
    "corn-whole-kernel",
    "mushrooms",
    "okra",
    "onions",
    "peas-green",
    "peppers",
    "potatoes-white",
    "beans-dry",
    "greens",
    "potatoes-sweet",
    "pumpkin",
    "squash-winter",
    "chicken-without-bones",
    "ground-meat",
    "meat-stock-beef",
    "meat-stock-poultry",
    "meat-strips-cubes-chunks",
    "poultry-other-without-bones",
    "wild-game-ground",
    "wild-game-strips"};
constexpr citation a1142[] = {{"usda-guide-4", "4", ""},
    {"clemson-soups", "", ""},
    {"kstate-soup-note", "", ""}};
constexpr sv a1143[] = {"spaghetti sauce with meat",
    "spaghetti meat sauce",
    "meat spaghetti sauce",
    "meat sauce",
    "pasta sauce with meat",
    "spaghetti sauce with ground beef",
    "spaghetti sauce with sausage"};
constexpr sv a1144[] = {"spaghetti sauce",
    "pasta sauce"};
constexpr jar_minutes a1145[] = {{"pint", a410},
    {"quart", a411}};
constexpr table a1146[] = {{a86, "hot", "sieved tomatoes with browned ground beef or sausage and vegetables, cooked down by nearly one half", 1000, a1145, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, ""}};
constexpr condition a1147[] = {{"Put the cooked tomatoes through a sieve or a food mill.", {}, "", "", false, false},
    {"Brown the ground beef or sausage before it goes into the sauce.", {}, "meat precooked", "", false, false},
    {"Keep to the printed recipe: never more onion, pepper, celery, garlic or mushrooms than it says; less is fine.", {}, "", "", false, false},
    {"Use only grown mushrooms, never wild ones.", {}, "cultivated mushrooms", "", false, false},
    {"Simmer the sauce uncovered until it has cooked down by nearly half, and fill the jars while it is hot.", {}, "boiled before filling", "", false, false},
    {"Let it thicken by cooking down alone; add no flour or starch.", {}, "not thickened", "", false, false}};
constexpr sv a1148[] = {"ground-beef",
    "sausage"};
constexpr sv a1149[] = {"celery",
    "green-bell-pepper"};
constexpr sv a1150[] = {"fresh-parsley"};
constexpr recipe_part a1151[] = {{a385, "lb", {30, 1}, {30, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh"},
    {a1148, "lb", {25, 10}, {25, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "browned"},
    {a156, "clove", {5, 1}, {5, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "minced"},
    {a223, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a1149, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a750, "lb", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", "fresh, sliced"},
    {a198, "tsp", {45, 10}, {45, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a712, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "dried"},
    {a1150, "tbsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::spice, false, false, false, "", "", "minced"},
    {a383, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a95, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""}};
constexpr tested_recipe a1152[] = {{"", "", "pint", 9, 9, a1151}};
constexpr citation a1153[] = {{"usda-guide-3", "3", "3-14"}};
constexpr sv a1154[] = {"spaghetti sauce without meat",
    "meatless spaghetti sauce",
    "vegetarian spaghetti sauce",
    "pasta sauce without meat",
    "meatless pasta sauce"};
constexpr table a1155[] = {{a86, "hot", "sieved tomatoes with sauteed vegetables, cooked down by nearly one half", 1000, a256, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "One copy heads both of its tables as weighted; the first is plainly the dial table."}};
constexpr condition a1156[] = {{"Put the cooked tomatoes through a sieve or a food mill.", {}, "", "", false, false},
    {"Put no meat in: with meat the longer process holds.", {}, "", "", false, false},
    {"Cook the vegetables soft in oil, with no more oil than printed.", {}, "", "", false, false},
    {"Keep to the printed recipe: never more onion, pepper, celery, garlic or mushrooms than it says; less is fine.", {}, "", "", false, false},
    {"Use only grown mushrooms, never wild ones.", {}, "cultivated mushrooms", "", false, false},
    {"Simmer the sauce uncovered until it has cooked down by nearly half, and fill the jars while it is hot.", {}, "boiled before filling", "", false, false},
    {"Let it thicken by cooking down alone; add no flour or starch.", {}, "not thickened", "", false, false}};
constexpr sv a1157[] = {"vegetable-oil"};
constexpr recipe_part a1158[] = {{a385, "lb", {30, 1}, {30, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh"},
    {a156, "clove", {5, 1}, {5, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "minced"},
    {a223, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a1149, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a750, "lb", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", "fresh, sliced"},
    {a198, "tsp", {45, 10}, {45, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a712, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "dried"},
    {a1150, "tbsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::spice, false, false, false, "", "", "minced"},
    {a383, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a95, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a1157, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::most, part_role::fat, false, false, false, "", "", "for sauteing"}};
constexpr tested_recipe a1159[] = {{"", "", "pint", 9, 9, a1158}};
constexpr citation a1160[] = {{"usda-guide-3", "3", "3-13"}};
constexpr sv a1161[] = {"peach-pineapple spread",
    "peach and pineapple spread",
    "pineapple-peach spread",
    "reduced-sugar peach-pineapple spread",
    "peach spread",
    "nectarine-pineapple spread",
    "apricot-pineapple spread",
    "plum-pineapple spread"};
constexpr jar_minutes a1162[] = {{"half-pint", a132},
    {"pint", a121}};
constexpr table a1163[] = {{a86, "hot", "drained peach pulp and drained crushed pineapple", 250, a1162, "", "", "boiling-water-4", {}, "seen", 2, true, "All its numbers were read, once. Longer than the times for jam, which must not be used for this spread."}};
constexpr condition a1164[] = {{"Only yellow-flesh peaches and nectarines; white ones may be too low in acid.", {}, "yellow flesh", "", false, false},
    {"Peel the fruit, take out the pits and crush the flesh.", {}, "peeled", "", false, false},
    {"Heat it until tender, let the juice drip off, and measure 4 cups of drained pulp.", {}, "", "", false, false},
    {"Use 2 cups of unsweetened crushed pineapple, drained.", {}, "", "", false, false},
    {"Use bottled lemon juice, 1/4 cup to the batch; it may not be cut.", {}, "", "", false, false},
    {"Boil the spread gently, stirring, and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Peaches, nectarines, apricots and plums may replace each other, 4 cups in all; sugar may be left out, at most 2 cups.", {}, "", "", false, false}};
constexpr sv a1165[] = {"peach",
    "nectarine",
    "apricot",
    "plum"};
constexpr sv a1166[] = {"pineapple"};
constexpr recipe_part a1167[] = {{a1165, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::acid_food, true, false, false, "", "", "drained pulp"},
    {a1166, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", "crushed, unsweetened, drained"},
    {a581, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a94, "cup", {0, 1}, {2, 1}, "", {0, 1}, part_limit::between, part_role::sugar, false, true, false, "", "", ""}};
constexpr tested_recipe a1168[] = {{"", "", "half-pint", 5, 6, a1167}};
constexpr citation a1169[] = {{"usda-guide-7", "7", "7-11"},
    {"wisconsin-white-peaches", "", ""}};
constexpr sv a1170[] = {"winter squash",
    "winter squashes",
    "acorn squash",
    "banana squash",
    "buttercup squash",
    "butternut squash",
    "butternut",
    "golden delicious squash",
    "hubbard squash",
    "winter squash cubes",
    "cubed winter squash"};
constexpr table a1171[] = {{a980, "hot", "peeled, 1-inch cubes", 1000, a981, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "The guide sends winter squash to the pumpkin table. A garden page with 55 min for quarts and a blog with 20 min are unsafe and not used."}};
constexpr condition a1172[] = {{"Use squash with a hard rind and ripe flesh without strings; spaghetti squash does not stay in cubes and is not covered.", {}, "", "", false, false},
    {"Peel it and cut it in 1-inch cubes: cubes are the only tested form.", {}, "peeled", "", false, false},
    {"Boil the cubes 2 minutes in water.", {}, "boiled before filling", "", false, false},
    {"Do not mash or puree it: no tested process exists for that; mash it after opening.", {}, "", "low-acid-puree", false, false},
    {"Fill the jars with the cubes and their cooking liquid.", {}, "covered with liquid", "", false, false}};
constexpr sv a1173[] = {"succotash",
    "corn and lima beans"};
constexpr jar_minutes a1174[] = {{"pint", a410},
    {"quart", a419}};
constexpr table a1175[] = {{a741, "hot", "whole kernel corn and shelled green lima beans, tomatoes optional", 1000, a1174, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "One state copy soaks dried limas; the guide's recipe takes fresh green ones. Copies that print 1 lb of corn for 15 lb hold a slip."},
    {a741, "raw", "whole kernel corn and shelled green lima beans, tomatoes optional", 1000, a1174, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "One state copy soaks dried limas; the guide's recipe takes fresh green ones. Copies that print 1 lb of corn for 15 lb hold a slip."}};
constexpr condition a1176[] = {{"Use fresh green lima beans out of the pod, not dried ones.", {}, "", "", false, false},
    {"Scald the ears of corn and cut the kernels off as for whole kernel corn.", {}, "blanched", "", false, false},
    {"Mix the vegetables, cover with water and bring to a boil.", a80, "boiled before filling", "", false, false},
    {"Boil gently 5 minutes.", a80, "boiled 5 min", "", false, false},
    {"Fill the jars with the vegetables and their cooking liquid.", a80, "covered with liquid", "", false, false},
    {"Mix equal parts of the prepared vegetables.", a146, "", "", false, false},
    {"Fill the jars without shaking or pressing down.", a146, "packed loosely", "", false, false},
    {"Cover with fresh boiling water.", a146, "covered with liquid", "", false, false}};
constexpr sv a1177[] = {"lima-bean"};
constexpr recipe_part a1178[] = {{a996, "quart", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "cut kernels"},
    {a1177, "quart", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "green, shelled"},
    {a385, "quart", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::acid_food, false, true, false, "", "", "crushed or whole"}};
constexpr tested_recipe a1179[] = {{"", "", "quart", 7, 7, a1178}};
constexpr sv a1180[] = {"pickled three-bean salad",
    "three-bean salad",
    "3-bean salad",
    "three bean pickled salad",
    "marinated three-bean salad",
    "pickled bean salad",
    "bean salad",
    "ensalada de tres frijoles",
    "ensalada de tres alubias",
    "ensalada de frijoles encurtidos"};
constexpr table a1181[] = {{a86, "hot", "blanched green or yellow beans, canned kidney and garbanzo beans, onion, celery, pepper; marinated 12-14 h refrigerated, then heated to a boil", 500, a993, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a1182[] = {{"Cut green or yellow beans in 1- to 2-inch pieces and blanch them 3 minutes.", {}, "blanched", "", false, false},
    {"Use canned or cooked kidney and garbanzo beans, drained; rinse the kidney beans.", {}, "drained", "", false, false},
    {"Use 1/2 cup of white vinegar of 5 % acidity, 1/4 cup of bottled lemon juice, at most 1 1/4 cups of water and at most 1/4 cup of oil.", {}, "", "", false, false},
    {"Marinate beans and vegetables 12 to 14 hours in the refrigerator.", {}, "marinated", "", false, false},
    {"Heat the salad to a boil before filling.", {}, "boiled before filling", "", false, false},
    {"Cover with the hot liquid.", {}, "covered with liquid", "", false, false},
    {"Green and yellow beans may replace each other. Allowed: more vinegar, fewer vegetables, less oil. Not allowed: less vinegar or lemon juice, more water, oil, beans or vegetables.", {}, "", "", false, false}};
constexpr sv a1183[] = {"canned-kidney-bean"};
constexpr sv a1184[] = {"canned-garbanzo-bean"};
constexpr recipe_part a1185[] = {{a209, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "cut 1 to 2 inch, blanched 3 min"},
    {a1183, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "canned, drained and rinsed"},
    {a1184, "cup", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "canned, drained"},
    {a223, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "peeled, thinly sliced"},
    {a734, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "trimmed, thinly sliced"},
    {a669, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "sliced"},
    {a93, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a581, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a94, "cup", {75, 100}, {75, 100}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a1157, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::most, part_role::fat, false, false, false, "", "", ""},
    {a158, "tsp", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a111, "cup", {125, 100}, {125, 100}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""}};
constexpr tested_recipe a1186[] = {{"", "", "half-pint", 5, 6, a1185}};
constexpr sv a1187[] = {"tomatillos",
    "tomatillo",
    "whole tomatillos",
    "husk tomatoes",
    "husk tomato",
    "mexican husk tomatoes",
    "miltomate",
    "miltomates",
    "tomates de cáscara",
    "tomate de cáscara",
    "tomates de cascara",
    "tomate de cascara",
    "tomates de fresadilla"};
constexpr sv a1188[] = {"tomate",
    "tomates",
    "tomate verde",
    "tomates verdes"};
constexpr int a1189[] = {40,
    45,
    50,
    55};
constexpr jar_minutes a1190[] = {{"pint", a1189},
    {"quart", a463}};
constexpr int a1191[] = {15};
constexpr jar_minutes a1192[] = {{"pint", a1191},
    {"quart", a1191}};
constexpr int a1193[] = {1};
constexpr jar_minutes a1194[] = {{"pint", a1193},
    {"quart", a1193}};
constexpr table a1195[] = {{a174, "hot", "husked, washed, not peeled or seeded, covered with boiling water", 500, a1190, "", "", "boiling-water-4", {}, "seen", 2, true, ""},
    {a174, "hot", "husked, washed, not peeled or seeded, covered with boiling water", 500, a142, "acid-dial-11", "acid-weighted-10", "", {}, "seen", 2, true, "The page sends the reader to the hot pack of whole tomatoes in water; the pressures are from that table."},
    {a174, "hot", "husked, washed, not peeled or seeded, covered with boiling water", 500, a1192, "acid-dial-6", "acid-weighted-5", "", {}, "seen", 2, true, "The page sends the reader to the hot pack of whole tomatoes in water; the numbers are from that table."},
    {a174, "hot", "husked, washed, not peeled or seeded, covered with boiling water", 500, a1194, "", "acid-weighted-15", "", {}, "seen", 2, true, "The page sends the reader to the hot pack of whole tomatoes in water; the numbers are from that table. Up to 1,000 ft only: above that the guide does not recommend this option."}};
constexpr condition a1196[] = {{"Take off the husks and wash the tomatillos.", {}, "", "", false, false},
    {"Leave skins and seeds in.", {}, "unpeeled", "", false, false},
    {"Bring them to a boil in water.", {}, "boiled before filling", "", false, false},
    {"Boil them gently until tender, 5 to 10 minutes.", {}, "boiled 5 min", "", false, false},
    {"Drain them.", {}, "drained", "", false, false},
    {"Put bottled lemon juice, citric acid or 5 % vinegar into every jar, in a pressure canner too; it may go in before the food.", {}, "", "", false, false},
    {"Use bottled lemon juice, never fresh, whose acid varies; vitamin C and \"tomato canning tablets\" are no substitute.", {}, "", "", false, false},
    {"Salt is flavor only and may be left out; sugar may be added against the sour taste.", {}, "", "", false, false},
    {"Fill the jars loosely.", {}, "packed loosely", "", false, false},
    {"Cover with boiling water.", {}, "covered with liquid", "", false, false}};
constexpr acid_choice a1197[] = {{"bottled-lemon-juice", 3000, "1 tbsp of bottled lemon juice per pint, 2 tbsp per quart"},
    {"citric-acid", 250, "1/4 tsp of citric acid per pint, 1/2 tsp per quart"},
    {"vinegar", 6000, "2 tbsp of 5 % vinegar per pint, 4 tbsp per quart"}};
constexpr citation a1198[] = {{"usda-guide-3", "3", "3-13"},
    {"usda-guide-3", "3", "3-9"},
    {"psu-tomato-acid", "", ""}};
constexpr sv a1199[] = {"tomato juice",
    "tomato juices",
    "plain tomato juice",
    "pressed tomato juice",
    "canned tomato juice",
    "jugo de tomate",
    "zumo de tomate",
    "jugo de jitomate"};
constexpr sv a1200[] = {"passata",
    "tomato passata"};
constexpr int a1201[] = {35,
    40,
    45,
    50};
constexpr jar_minutes a1202[] = {{"pint", a1201},
    {"quart", a1189}};
constexpr jar_minutes a1203[] = {{"pint", a254},
    {"quart", a254}};
constexpr table a1204[] = {{a103, "hot", "pressed, skins and seeds removed", 500, a1202, "", "", "boiling-water-4", {}, "seen", 2, true, ""},
    {a103, "hot", "pressed, skins and seeds removed", 500, a1192, "acid-dial-11", "acid-weighted-10", "", {}, "seen", 2, true, ""},
    {a103, "hot", "pressed, skins and seeds removed", 500, a1203, "acid-dial-6", "acid-weighted-5", "", {}, "seen", 2, true, ""},
    {a103, "hot", "pressed, skins and seeds removed", 500, a142, "", "acid-weighted-15", "", {}, "seen-part", 2, true, "Read: three weighted options, the last not recommended above 1,000 ft. From memory of the same table: 10 min. The whole row was read only in an equipment maker's copy of the USDA table. Up to 1,000 ft only: above that the guide does not recommend this option."}};
constexpr condition a1205[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Tomatoes alone; with a little celery, onion, carrot or pepper it is the tomato and vegetable juice blend.", {}, "", "", false, false},
    {"Heat the tomatoes to a boil while you crush them.", {}, "boiled before filling", "", false, false},
    {"Simmer 5 minutes.", {}, "boiled 5 min", "", false, false},
    {"Press them through a sieve or a food mill; skins and seeds stay behind.", {}, "sieved", "", false, false},
    {"Put bottled lemon juice, citric acid or 5 % vinegar into every jar, in a pressure canner too; it may go in before the food.", {}, "", "", false, false},
    {"Use bottled lemon juice, never fresh, whose acid varies; vitamin C and \"tomato canning tablets\" are no substitute.", {}, "", "", false, false},
    {"Salt is flavor only and may be left out; sugar may be added against the sour taste.", {}, "", "", false, false},
    {"Bring the juice back to a boil and fill the jars at once.", {}, "reheated to a boil", "", false, false},
    {"Pint and quart jars at most; half-gallon jars have no process for tomato juice.", {}, "", "", false, false}};
constexpr citation a1206[] = {{"usda-guide-3", "3", "3-5"},
    {"psu-tomato-acid", "", ""}};
constexpr sv a1207[] = {"tomato ketchup",
    "tomato ketchups",
    "standard tomato ketchup",
    "regular tomato ketchup",
    "standard ketchup"};
constexpr table a1208[] = {{a86, "hot", "sieved tomatoes with onions, vinegar and spices, cooked down by one half", 125, a176, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a1209[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Peel the tomatoes and take out the cores.", {}, "peeled", "", false, false},
    {"Use no more onion than printed, and no fewer tomatoes; add no other vegetable.", {}, "", "", false, false},
    {"Use cider vinegar of at least 5 %, not homemade, and never less than printed.", {}, "", "", false, false},
    {"Spices, sugar and salt are flavor and may be changed or cut.", {}, "", "", false, false},
    {"Put the cooked tomatoes and onions through a sieve or a food mill.", {}, "sieved", "", false, false},
    {"Cook it down by one half, until it rounds up on a spoon and no liquid separates; fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Add no flour, starch or other thickener.", {}, "not thickened", "", false, false},
    {"No acid need go into the jars; the vinegar of the recipe is enough.", {}, "", "", false, false},
    {"Pint jars at most: no quart process is published.", {}, "", "", false, false}};
constexpr recipe_part a1210[] = {{a385, "lb", {24, 1}, {24, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "ripe"},
    {a223, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a226, "tsp", {75, 100}, {75, 100}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "ground"},
    {a93, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "cider"},
    {a112, "tsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "whole"},
    {a114, "stick", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "crushed"},
    {a530, "tsp", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "whole"},
    {a183, "tbsp", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a94, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a198, "cup", {25, 100}, {25, 100}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""}};
constexpr tested_recipe a1211[] = {{"", "", "pint", 6, 7, a1210}};
constexpr citation a1212[] = {{"usda-guide-3", "3", "3-17"}};
constexpr sv a1213[] = {"tomato paste",
    "tomato pastes",
    "tomato concentrate",
    "concentrated tomato puree",
    "concentrado de tomate",
    "pasta de tomate"};
constexpr sv a1214[] = {"tomato puree",
    "tomato purée",
    "puré de tomate",
    "pure de tomate"};
constexpr jar_minutes a1215[] = {{"half-pint", a463}};
constexpr table a1216[] = {{a86, "hot", "sieved tomatoes with sweet red pepper, cooked until it mounds on a spoon", 250, a1215, "", "", "boiling-water-4", {}, "seen", 2, false, "Not to be used yet: weakly sourced. Not in the USDA guide; read once, in a copy of a university bulletin of 1999. That recipe adds no acid; a later version by a jar maker adds 1 1/2 tsp of bottled lemon juice to a half-pint and leaves 1/2 inch. The juice is asked for here."}};
constexpr condition a1217[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Peel the tomatoes and take out the cores.", {}, "peeled", "", false, false},
    {"Use no more sweet red pepper than printed, and no onion.", {}, "", "", false, false},
    {"One clove of garlic may cook with it; take it out again before you fill the jars.", {}, "", "", false, false},
    {"Cook the tomatoes with the pepper and press them through a sieve.", {}, "sieved", "", false, false},
    {"Cook the paste slowly until it mounds on a spoon.", {}, "boiled before filling", "", false, false},
    {"Put bottled lemon juice into every jar; fresh juice varies.", {}, "", "", false, false},
    {"Add no flour, starch or other thickener.", {}, "not thickened", "", false, false},
    {"Half-pint jars only: no process for a larger jar is published.", {}, "", "", false, false}};
constexpr acid_choice a1218[] = {{"bottled-lemon-juice", 3000, "1 1/2 tsp of bottled lemon juice per half-pint"}};
constexpr recipe_part a1219[] = {{a385, "quart", {8, 1}, {8, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "peeled, cored, chopped (about 48 large)"},
    {a338, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a679, "piece", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a158, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a156, "clove", {1, 1}, {1, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", "removed before filling"}};
constexpr tested_recipe a1220[] = {{"", "", "half-pint", 9, 9, a1219}};
constexpr citation a1221[] = {{"uga-bulletin-989", "", ""}};
constexpr sv a1222[] = {"tomato sauce",
    "standard tomato sauce",
    "plain tomato sauce",
    "thin tomato sauce",
    "thick tomato sauce",
    "unseasoned tomato sauce",
    "tomato-only sauce",
    "salsa de jitomate"};
constexpr sv a1223[] = {"passata",
    "tomato passata",
    "tomato puree",
    "tomato purée",
    "puré de tomate",
    "pure de tomate",
    "salsa de tomate"};
constexpr sv a1224[] = {"sauce"};
constexpr table a1225[] = {{a1224, "hot", "plain pressed tomatoes, thin (cooked down by one third) or thick (by one half)", 250, a1202, "", "", "boiling-water-4", {}, "seen", 2, true, "One table for thin and for thick sauce."},
    {a1224, "hot", "plain pressed tomatoes, thin (cooked down by one third) or thick (by one half)", 250, a1192, "acid-dial-11", "acid-weighted-10", "", {}, "seen", 2, true, "One recipe copy prints 10 min at 11 psi on the dial; a university copy has 15, as have the tables for juice and for the blend."},
    {a1224, "hot", "plain pressed tomatoes, thin (cooked down by one third) or thick (by one half)", 250, a1203, "acid-dial-6", "acid-weighted-5", "", {}, "seen", 2, true, ""},
    {a1224, "hot", "plain pressed tomatoes, thin (cooked down by one third) or thick (by one half)", 250, a142, "", "acid-weighted-15", "", {}, "seen", 2, true, "Up to 1,000 ft only: above that the guide does not recommend this option."}};
constexpr condition a1226[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Tomatoes alone: with onion, pepper, garlic, oil or meat use a tested spaghetti sauce and its pressure process.", {}, "", "", false, false},
    {"Cook the tomatoes as for juice and press them through a sieve or a food mill.", {}, "sieved", "", false, false},
    {"Simmer the sauce until it has cooked down by one third for thin sauce, by one half for thick.", {}, "boiled before filling", "", false, false},
    {"Put bottled lemon juice, citric acid or 5 % vinegar into every jar, in a pressure canner too; it may go in before the food.", {}, "", "", false, false},
    {"Use bottled lemon juice, never fresh, whose acid varies; vitamin C and \"tomato canning tablets\" are no substitute.", {}, "", "", false, false},
    {"Salt is flavor only and may be left out; sugar may be added against the sour taste.", {}, "", "", false, false},
    {"Add no flour, starch or other thickener.", {}, "not thickened", "", false, false},
    {"Fill the jars with the hot sauce.", {}, "", "", false, false}};
constexpr citation a1227[] = {{"usda-guide-3", "3", "3-8"},
    {"psu-tomato-acid", "", ""}};
constexpr sv a1228[] = {"tomato taco sauce",
    "taco sauce",
    "taco sauces",
    "taco sauce with tomatoes",
    "salsa para tacos",
    "salsa taquera"};
constexpr table a1229[] = {{a86, "hot", "finely chopped peeled paste tomatoes, onions, peppers, vinegar, cooked thick", 500, a176, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a1230[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Use tomatoes of a paste kind only.", {}, "", "", false, false},
    {"Peel the tomatoes and take out the cores.", {}, "peeled", "", false, false},
    {"Measure the vegetables chopped, level in dry measuring cups.", {}, "", "", false, false},
    {"Never take more peppers, onions or garlic than printed, nor fewer tomatoes; fewer vegetables are fine, but nothing may fill the gap.", {}, "", "", false, false},
    {"Add no other vegetable, such as corn, beans, carrots or avocado.", {}, "", "", false, false},
    {"Add no fresh herbs beyond what is printed.", {}, "", "", false, false},
    {"Use vinegar of at least 5 %, not homemade, and never less than printed.", {}, "", "", false, false},
    {"Bottled lemon juice may replace the vinegar, measure for measure; never the other way round.", {}, "", "", false, false},
    {"One kind of pepper may replace another, the total unchanged; go by weight where peppers are counted.", {}, "", "", false, false},
    {"Onions of any color may be used, the total unchanged.", {}, "", "", false, false},
    {"Dried spices and herbs and salt may be changed or left out.", {}, "", "", false, false},
    {"Wear gloves for hot peppers.", {}, "", "", false, false},
    {"Bring it to a boil, simmer about 1 hour until it is thick, stirring, and fill the jars hot.", {}, "boiled before filling", "", false, false},
    {"Let it thicken by cooking down alone; add no flour, starch or other thickener.", {}, "not thickened", "", false, false},
    {"Pint jars at most: no quart process is published, and no pressure process.", {}, "", "", false, false}};
constexpr recipe_part a1231[] = {{a1073, "quart", {8, 1}, {8, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "peeled, cored, finely chopped"},
    {a156, "clove", {2, 1}, {2, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "crushed"},
    {a223, "cup", {5, 1}, {5, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "chopped"},
    {a561, "piece", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "peppers", "", "seeded, chopped"},
    {a1074, "piece", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "peppers", "", "seeded, chopped"},
    {a1038, "cup", {25, 10}, {25, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a198, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a383, "tbsp", {15, 10}, {15, 10}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a94, "tbsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a712, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", ""},
    {a1075, "tsp", {1, 1}, {1, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, true, false, "", "", "ground"}};
constexpr tested_recipe a1232[] = {{"", "", "pint", 16, 18, a1231}};
constexpr citation a1233[] = {{"usda-guide-3", "3", "3-26"},
    {"ndsu-condiments", "", ""},
    {"rutgers-salsa", "", ""},
    {"extension-pepper-answer", "", ""},
    {"extension-lemon-answer", "", ""}};
constexpr sv a1234[] = {"tomato vegetable juice",
    "tomato and vegetable juice",
    "tomato vegetable juice blend",
    "tomato juice blend",
    "tomato juice with vegetables",
    "vegetable tomato juice",
    "mixed tomato vegetable juice",
    "jugo de tomate con verduras",
    "jugo de tomate y verduras",
    "zumo de tomate con verduras"};
constexpr table a1235[] = {{a103, "hot", "pressed; tomatoes with celery, onion, carrot, pepper", 500, a1202, "", "", "boiling-water-4", {}, "seen", 2, true, ""},
    {a103, "hot", "pressed; tomatoes with celery, onion, carrot, pepper", 500, a1192, "acid-dial-11", "acid-weighted-10", "", {}, "seen", 2, true, ""},
    {a103, "hot", "pressed; tomatoes with celery, onion, carrot, pepper", 500, a1203, "acid-dial-6", "acid-weighted-5", "", {}, "seen", 2, true, ""},
    {a103, "hot", "pressed; tomatoes with celery, onion, carrot, pepper", 500, a142, "", "acid-weighted-15", "", {}, "seen", 2, true, "Up to 1,000 ft only: above that the guide does not recommend this option."}};
constexpr condition a1236[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Take at most 3 cups of finely chopped celery, onion, carrot and pepper, all together, to 22 lb of tomatoes; less is fine.", {}, "", "", false, false},
    {"Put in no other vegetable.", {}, "", "", false, false},
    {"Simmer the tomatoes with the vegetables 20 minutes.", {}, "boiled before filling", "", false, false},
    {"Press the hot mixture through a sieve or a food mill; skins and seeds stay behind.", {}, "sieved", "", false, false},
    {"Put bottled lemon juice, citric acid or 5 % vinegar into every jar, in a pressure canner too; it may go in before the food.", {}, "", "", false, false},
    {"Use bottled lemon juice, never fresh, whose acid varies; vitamin C and \"tomato canning tablets\" are no substitute.", {}, "", "", false, false},
    {"Salt is flavor only and may be left out; sugar may be added against the sour taste.", {}, "", "", false, false},
    {"Bring the juice back to a boil and fill the jars at once.", {}, "reheated to a boil", "", false, false},
    {"Pint and quart jars at most.", {}, "", "", false, false}};
constexpr sv a1237[] = {"celery",
    "onion",
    "carrot",
    "pepper"};
constexpr recipe_part a1238[] = {{a385, "lb", {22, 1}, {22, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh, as purchased"},
    {a1237, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "", "finely chopped"}};
constexpr tested_recipe a1239[] = {{"", "", "quart", 7, 7, a1238}};
constexpr citation a1240[] = {{"usda-guide-3", "3", "3-6"},
    {"psu-tomato-acid", "", ""}};
constexpr sv a1241[] = {"crushed tomatoes",
    "crushed tomato",
    "quartered and crushed tomatoes",
    "crushed tomatoes without added liquid",
    "crushed canned tomatoes",
    "tinned crushed tomatoes",
    "tomate triturado",
    "tomates triturados",
    "jitomate triturado",
    "jitomates triturados",
    "tomates machacados"};
constexpr sv a1242[] = {"tomatoes",
    "tomato",
    "tomate",
    "tomates",
    "jitomate",
    "jitomates",
    "ripe tomatoes",
    "red tomatoes",
    "roma tomatoes",
    "plum tomatoes",
    "paste tomatoes",
    "green tomatoes",
    "unripe tomatoes",
    "tomates verdes",
    "tomate verde",
    "canned tomatoes",
    "tinned tomatoes",
    "bottled tomatoes",
    "tomates en conserva",
    "hot-packed tomatoes",
    "hot pack tomatoes"};
constexpr sv a1243[] = {"crushed"};
constexpr jar_minutes a1244[] = {{"pint", a1201},
    {"quart", a463}};
constexpr jar_minutes a1245[] = {{"pint", a254}};
constexpr jar_minutes a1246[] = {{"quart", a254}};
constexpr table a1247[] = {{a1243, "hot", "peeled, quartered, crushed, no added liquid", 500, a1244, "", "", "boiling-water-4", {}, "seen", 2, true, "Read in a reworded copy of the USDA page with its table intact; 35 and 45 min were read elsewhere too."},
    {a1243, "hot", "peeled, quartered, crushed, no added liquid", 500, a1192, "acid-dial-11", "", "", {}, "seen-part", 1, true, "Read: 15 min and 11 psi. From memory of the same table: 12, 13 and 14 psi above 2,000 ft."},
    {a1243, "hot", "peeled, quartered, crushed, no added liquid", 500, a1245, "acid-dial-6", "", "", {}, "seen", 2, true, "The copy prints \"min\" after the pressures; they are pounds."},
    {a1243, "hot", "peeled, quartered, crushed, no added liquid", 500, a1192, "", "acid-weighted-10", "", {}, "seen-part", 2, true, "Read: 15 min at 10 psi. From memory of the same table: 15 psi above 1,000 ft. The whole row was read only in an equipment maker's copy of the USDA table."},
    {a1243, "hot", "peeled, quartered, crushed, no added liquid", 500, a142, "", "acid-weighted-15", "", {}, "seen-part", 2, true, "From memory of the same table; the whole row was read only in an equipment maker's copy of the USDA table. Up to 1,000 ft only: above that the guide does not recommend this option."},
    {a1243, "hot", "peeled, quartered, crushed, no added liquid", 500, a1203, "", "acid-weighted-5", "", {}, "seen-part", 2, true, "From memory of the same table; the whole row was read only in an equipment maker's copy of the USDA table."},
    {a1243, "hot", "peeled, quartered, crushed, no added liquid", 500, a1246, "acid-dial-6", "", "", {}, "seen", 1, true, "The numbers were read once, in a copy that prints \"min\" after the pressures; they are pounds."}};
constexpr condition a1248[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Green, unripe tomatoes may be canned in the same way, with the acid.", {}, "", "", false, false},
    {"Peel the tomatoes and take out the cores.", {}, "peeled", "", false, false},
    {"Quarter the tomatoes and crush them.", {}, "", "", false, false},
    {"Tomatoes alone: with onion, pepper, garlic, celery or another vegetable these times do not hold.", {}, "", "", false, false},
    {"Put bottled lemon juice, citric acid or 5 % vinegar into every jar, in a pressure canner too; it may go in before the food.", {}, "", "", false, false},
    {"Use bottled lemon juice, never fresh, whose acid varies; vitamin C and \"tomato canning tablets\" are no substitute.", {}, "", "", false, false},
    {"Salt is flavor only and may be left out; sugar may be added against the sour taste.", {}, "", "", false, false},
    {"Add no liquid.", {}, "no liquid added", "", false, false},
    {"Bring them to a boil.", {}, "boiled before filling", "", false, false},
    {"Boil gently 5 minutes after all the tomatoes are in the pot, and fill the jars while they are hot.", {}, "boiled 5 min", "", false, false}};
constexpr citation a1249[] = {{"usda-guide-3", "3", "3-7"},
    {"psu-tomato-acid", "", ""}};
constexpr sv a1250[] = {"tomatoes in tomato juice",
    "tomatoes packed in tomato juice",
    "tomatoes in juice",
    "tomatoes packed in juice",
    "juice-packed tomatoes",
    "whole tomatoes in tomato juice",
    "whole tomatoes in juice",
    "halved tomatoes in tomato juice",
    "halved tomatoes in juice",
    "peeled tomatoes in tomato juice",
    "peeled tomatoes in juice",
    "whole or halved tomatoes packed in tomato juice",
    "tomates en jugo de tomate",
    "tomates en zumo de tomate",
    "jitomates en jugo de jitomate"};
constexpr sv a1251[] = {"tomatoes",
    "tomato",
    "tomate",
    "tomates",
    "jitomate",
    "jitomates",
    "ripe tomatoes",
    "red tomatoes",
    "roma tomatoes",
    "plum tomatoes",
    "paste tomatoes",
    "green tomatoes",
    "unripe tomatoes",
    "tomates verdes",
    "tomate verde",
    "canned tomatoes",
    "tinned tomatoes",
    "bottled tomatoes",
    "tomates en conserva",
    "whole tomatoes",
    "whole tomato",
    "halved tomatoes",
    "tomato halves",
    "whole or halved tomatoes",
    "peeled tomatoes",
    "whole peeled tomatoes",
    "skinned tomatoes",
    "raw-packed tomatoes",
    "raw pack tomatoes",
    "tomates enteros",
    "tomates pelados",
    "jitomates enteros",
    "tomates al natural",
    "tomates en mitades",
    "hot-packed tomatoes",
    "hot pack tomatoes",
    "tomatoes in their own juice",
    "tomatoes in own juice",
    "tomates en su jugo",
    "tomates en su propio jugo"};
constexpr int a1252[] = {85,
    90,
    95,
    100};
constexpr jar_minutes a1253[] = {{"pint", a1252},
    {"quart", a1252}};
constexpr jar_minutes a1254[] = {{"pint", a255},
    {"quart", a255}};
constexpr table a1255[] = {{a955, "hot", "peeled, cored, whole or halved, covered with tomato juice", 500, a1253, "", "", "boiling-water-4", {}, "seen", 2, true, ""},
    {a955, "hot", "peeled, cored, whole or halved, covered with tomato juice", 500, a1254, "acid-dial-11", "acid-weighted-10", "", {}, "seen", 2, true, ""},
    {a955, "hot", "peeled, cored, whole or halved, covered with tomato juice", 500, a779, "acid-dial-6", "acid-weighted-5", "", {}, "seen", 2, true, ""},
    {a955, "hot", "peeled, cored, whole or halved, covered with tomato juice", 500, a1192, "", "acid-weighted-15", "", {}, "seen", 2, true, "Up to 1,000 ft only: above that the guide does not recommend this option."},
    {a955, "raw", "peeled, cored, whole or halved, covered with tomato juice", 500, a1253, "", "", "boiling-water-4", {}, "seen", 2, true, ""},
    {a955, "raw", "peeled, cored, whole or halved, covered with tomato juice", 500, a1254, "acid-dial-11", "acid-weighted-10", "", {}, "seen", 2, true, ""},
    {a955, "raw", "peeled, cored, whole or halved, covered with tomato juice", 500, a779, "acid-dial-6", "acid-weighted-5", "", {}, "seen", 2, true, ""},
    {a955, "raw", "peeled, cored, whole or halved, covered with tomato juice", 500, a1192, "", "acid-weighted-15", "", {}, "seen", 2, true, "Up to 1,000 ft only: above that the guide does not recommend this option."}};
constexpr condition a1256[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Green, unripe tomatoes may be canned in the same way, with the acid.", {}, "", "", false, false},
    {"Peel the tomatoes and take out the cores.", {}, "peeled", "", false, false},
    {"Leave them whole or cut them in halves.", {}, "", "", false, false},
    {"Tomatoes alone: with onion, pepper, garlic, celery or another vegetable these times do not hold.", {}, "", "", false, false},
    {"Put bottled lemon juice, citric acid or 5 % vinegar into every jar, in a pressure canner too; it may go in before the food.", {}, "", "", false, false},
    {"Use bottled lemon juice, never fresh, whose acid varies; vitamin C and \"tomato canning tablets\" are no substitute.", {}, "", "", false, false},
    {"Salt is flavor only and may be left out; sugar may be added against the sour taste.", {}, "", "", false, false},
    {"Cover the tomatoes with tomato juice and bring to a boil.", a80, "boiled before filling", "", false, false},
    {"Boil them gently 5 minutes in the juice.", a80, "boiled 5 min", "", false, false},
    {"Fill the jars with the hot tomatoes and cover with the hot juice.", a80, "covered with liquid", "", false, false},
    {"Fill the jars with the raw tomatoes and cover with hot tomato juice.", a146, "covered with liquid", "", false, false}};
constexpr citation a1257[] = {{"usda-guide-3", "3", "3-10"},
    {"psu-tomato-acid", "", ""}};
constexpr sv a1258[] = {"tomatoes without added liquid",
    "tomatoes without liquid",
    "tomatoes with no added liquid",
    "tomatoes packed without liquid",
    "tomatoes raw packed without liquid",
    "tomatoes raw packed without added liquid",
    "raw-packed tomatoes without added liquid",
    "raw-packed tomatoes without liquid",
    "raw tomatoes without added liquid",
    "whole tomatoes without added liquid",
    "halved tomatoes without added liquid",
    "whole tomatoes without liquid",
    "halved tomatoes without liquid",
    "tomates sin líquido añadido",
    "tomates sin liquido"};
constexpr sv a1259[] = {"tomatoes",
    "tomato",
    "tomate",
    "tomates",
    "jitomate",
    "jitomates",
    "ripe tomatoes",
    "red tomatoes",
    "roma tomatoes",
    "plum tomatoes",
    "paste tomatoes",
    "green tomatoes",
    "unripe tomatoes",
    "tomates verdes",
    "tomate verde",
    "canned tomatoes",
    "tinned tomatoes",
    "bottled tomatoes",
    "tomates en conserva",
    "whole tomatoes",
    "whole tomato",
    "halved tomatoes",
    "tomato halves",
    "whole or halved tomatoes",
    "peeled tomatoes",
    "whole peeled tomatoes",
    "skinned tomatoes",
    "raw-packed tomatoes",
    "raw pack tomatoes",
    "tomates enteros",
    "tomates pelados",
    "jitomates enteros",
    "tomates al natural",
    "tomates en mitades",
    "tomatoes in their own juice",
    "tomatoes in own juice",
    "tomates en su jugo",
    "tomates en su propio jugo"};
constexpr table a1260[] = {{a955, "raw", "peeled, cored, pressed in the jar until juice fills the spaces", 500, a1253, "", "", "boiling-water-4", {}, "seen", 2, true, ""},
    {a955, "raw", "peeled, cored, pressed in the jar until juice fills the spaces", 500, a1254, "acid-dial-11", "acid-weighted-10", "", {}, "seen", 2, true, ""},
    {a955, "raw", "peeled, cored, pressed in the jar until juice fills the spaces", 500, a779, "acid-dial-6", "acid-weighted-5", "", {}, "seen", 2, true, ""},
    {a955, "raw", "peeled, cored, pressed in the jar until juice fills the spaces", 500, a1192, "", "acid-weighted-15", "", {}, "seen", 2, true, "Up to 1,000 ft only: above that the guide does not recommend this option."}};
constexpr condition a1261[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Green, unripe tomatoes may be canned in the same way, with the acid.", {}, "", "", false, false},
    {"Peel the tomatoes and take out the cores.", {}, "peeled", "", false, false},
    {"Leave them whole or cut them in halves.", {}, "", "", false, false},
    {"Tomatoes alone: with onion, pepper, garlic, celery or another vegetable these times do not hold.", {}, "", "", false, false},
    {"Put bottled lemon juice, citric acid or 5 % vinegar into every jar, in a pressure canner too; it may go in before the food.", {}, "", "", false, false},
    {"Use bottled lemon juice, never fresh, whose acid varies; vitamin C and \"tomato canning tablets\" are no substitute.", {}, "", "", false, false},
    {"Salt is flavor only and may be left out; sugar may be added against the sour taste.", {}, "", "", false, false},
    {"Raw pack only.", {}, "", "", false, false},
    {"Press the raw tomatoes in the jar until their juice fills the spaces.", {}, "packed tightly", "", false, false},
    {"Add no liquid.", {}, "no liquid added", "", false, false}};
constexpr citation a1262[] = {{"usda-guide-3", "3", "3-11"},
    {"psu-tomato-acid", "", ""}};
constexpr sv a1263[] = {"tomatoes in water",
    "tomatoes packed in water",
    "water-packed tomatoes",
    "whole tomatoes in water",
    "whole tomatoes packed in water",
    "halved tomatoes in water",
    "halved tomatoes packed in water",
    "peeled tomatoes in water",
    "whole or halved tomatoes packed in water",
    "tomates en agua",
    "tomates enteros en agua",
    "jitomates en agua"};
constexpr sv a1264[] = {"tomatoes",
    "tomato",
    "tomate",
    "tomates",
    "jitomate",
    "jitomates",
    "ripe tomatoes",
    "red tomatoes",
    "roma tomatoes",
    "plum tomatoes",
    "paste tomatoes",
    "green tomatoes",
    "unripe tomatoes",
    "tomates verdes",
    "tomate verde",
    "canned tomatoes",
    "tinned tomatoes",
    "bottled tomatoes",
    "tomates en conserva",
    "whole tomatoes",
    "whole tomato",
    "halved tomatoes",
    "tomato halves",
    "whole or halved tomatoes",
    "peeled tomatoes",
    "whole peeled tomatoes",
    "skinned tomatoes",
    "raw-packed tomatoes",
    "raw pack tomatoes",
    "tomates enteros",
    "tomates pelados",
    "jitomates enteros",
    "tomates al natural",
    "tomates en mitades",
    "hot-packed tomatoes",
    "hot pack tomatoes"};
constexpr table a1265[] = {{a955, "hot", "peeled, cored, whole or halved, covered with water", 500, a1190, "", "", "boiling-water-4", {}, "seen", 2, true, ""},
    {a955, "hot", "peeled, cored, whole or halved, covered with water", 500, a142, "acid-dial-11", "acid-weighted-10", "", {}, "seen", 2, true, ""},
    {a955, "hot", "peeled, cored, whole or halved, covered with water", 500, a1192, "acid-dial-6", "acid-weighted-5", "", {}, "seen", 2, true, "Several 1994 copies print 20 min for the dial option; the 2015 text and the weighted column have 15."},
    {a955, "hot", "peeled, cored, whole or halved, covered with water", 500, a1194, "", "acid-weighted-15", "", {}, "seen", 2, true, "Up to 1,000 ft only: above that the guide does not recommend this option."},
    {a955, "raw", "peeled, cored, whole or halved, covered with water", 500, a1190, "", "", "boiling-water-4", {}, "seen", 2, true, ""},
    {a955, "raw", "peeled, cored, whole or halved, covered with water", 500, a142, "acid-dial-11", "acid-weighted-10", "", {}, "seen", 2, true, ""},
    {a955, "raw", "peeled, cored, whole or halved, covered with water", 500, a1192, "acid-dial-6", "acid-weighted-5", "", {}, "seen", 2, true, "Several 1994 copies print 20 min for the dial option; the 2015 text and the weighted column have 15."},
    {a955, "raw", "peeled, cored, whole or halved, covered with water", 500, a1194, "", "acid-weighted-15", "", {}, "seen", 2, true, "Up to 1,000 ft only: above that the guide does not recommend this option."}};
constexpr condition a1266[] = {{"Take no diseased or over-ripe tomatoes, and none from dead or frost-killed vines.", {}, "", "", false, false},
    {"Green, unripe tomatoes may be canned in the same way, with the acid.", {}, "", "", false, false},
    {"Peel the tomatoes and take out the cores.", {}, "peeled", "", false, false},
    {"Leave them whole or cut them in halves.", {}, "", "", false, false},
    {"Tomatoes alone: with onion, pepper, garlic, celery or another vegetable these times do not hold.", {}, "", "", false, false},
    {"Put bottled lemon juice, citric acid or 5 % vinegar into every jar, in a pressure canner too; it may go in before the food.", {}, "", "", false, false},
    {"Use bottled lemon juice, never fresh, whose acid varies; vitamin C and \"tomato canning tablets\" are no substitute.", {}, "", "", false, false},
    {"Salt is flavor only and may be left out; sugar may be added against the sour taste.", {}, "", "", false, false},
    {"Cover the tomatoes with water and bring to a boil.", a80, "boiled before filling", "", false, false},
    {"Boil them gently 5 minutes.", a80, "boiled 5 min", "", false, false},
    {"Fill the jars with the hot tomatoes and cover with the hot cooking liquid.", a80, "covered with liquid", "", false, false},
    {"Fill the jars with the raw tomatoes and cover with hot water.", a146, "covered with liquid", "", false, false}};
constexpr citation a1267[] = {{"usda-guide-3", "3", "3-9"},
    {"psu-tomato-acid", "", ""}};
constexpr sv a1268[] = {"tomatoes with okra",
    "tomatoes and okra",
    "okra and tomatoes",
    "okra with tomatoes",
    "tomatoes with zucchini",
    "tomatoes and zucchini",
    "zucchini and tomatoes",
    "zucchini with tomatoes",
    "tomatoes with courgettes",
    "tomatoes and courgettes",
    "courgettes and tomatoes",
    "tomatoes with okra or zucchini"};
constexpr sv a1269[] = {"okra-whole",
    "okra-1-inch-pieces",
    "zucchini-sliced",
    "zucchini-cubed"};
constexpr table a1270[] = {{a1269, "hot", "peeled quartered tomatoes with okra (whole or 1-inch pieces) or zucchini (sliced or cubed)", 1000, a280, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, ""}};
constexpr condition a1271[] = {{"Take about 3 lb of tomatoes to 1 lb of okra or zucchini; more okra or zucchini is not tested.", {}, "", "", false, false},
    {"Peel and core the tomatoes and quarter them.", {}, "peeled", "", false, false},
    {"Leave okra pods whole or cut them in 1-inch pieces; slice or cube zucchini.", {}, "", "", false, false},
    {"Bring the tomatoes to a boil and simmer them 10 minutes before the vegetable goes in.", {}, "boiled before filling", "", false, false},
    {"Boil them gently 5 minutes more with the vegetable.", {}, "boiled 5 min", "", false, false},
    {"At most 4 or 5 pearl onions, or 2 slices of onion, may go into each jar.", {}, "", "", false, false},
    {"Added acid does not make this mixture fit for boiling water.", {}, "", "", false, false}};
constexpr sv a1272[] = {"okra",
    "zucchini"};
constexpr sv a1273[] = {"onion-slice"};
constexpr recipe_part a1274[] = {{a385, "lb", {12, 1}, {12, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh"},
    {a1272, "lb", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "sliced or cubed"},
    {a796, "piece", {35, 1}, {35, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "onions", ""},
    {a1273, "piece", {14, 1}, {14, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "onions", ""},
    {a198, "tsp", {7, 1}, {7, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, true, false, "", "", ""}};
constexpr recipe_part a1275[] = {{a385, "lb", {7, 1}, {7, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, true, false, false, "", "", "fresh"},
    {a1272, "lb", {25, 10}, {25, 10}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "sliced or cubed"},
    {a796, "piece", {45, 1}, {45, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "onions", ""},
    {a1273, "piece", {18, 1}, {18, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, true, false, "", "onions", ""},
    {a198, "tsp", {45, 10}, {45, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, true, false, "", "", ""}};
constexpr tested_recipe a1276[] = {{"quart-load", "", "quart", 7, 7, a1274},
    {"pint-load", "", "pint", 9, 9, a1275}};
constexpr citation a1277[] = {{"usda-guide-3", "3", "3-12"}};
constexpr sv a1278[] = {"tuna",
    "tuna fish",
    "albacore",
    "albacore tuna",
    "atun",
    "atún"};
constexpr sv a1279[] = {"chunks"};
constexpr jar_minutes a1280[] = {{"half-pint", a473},
    {"pint", a473}};
constexpr table a1281[] = {{a1279, "hot", "chunks without skin, bone and dark flesh", 1000, a1280, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "The table has no column for the pack: precooked and raw tuna share it. The 90 min of older advice are out of date."},
    {a1279, "raw", "chunks without skin, bone and dark flesh", 1000, a1280, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "The table has no column for the pack: precooked and raw tuna share it. The 90 min of older advice are out of date. The guide speaks of water or oil in the jar; packing raw tuna without added liquid is printed elsewhere only."}};
constexpr condition a1282[] = {{"Use fresh tuna kept on ice, or thawed in the refrigerator, and not smoked.", {}, "not smoked", "", false, false},
    {"Bake it 2 1/2 to 4 hours at 250 F or 1 hour at 350 F, or steam it 2 to 4 hours, until it is 165 to 175 F inside.", a80, "meat precooked", "", false, false},
    {"Refrigerate it overnight to firm it.", a80, "chilled", "", false, false},
    {"The pieces go in raw.", a146, "meat not precooked", "", false, false},
    {"Take off the skin and cut the meat from the bones.", {}, "skin and bones removed", "", false, false},
    {"Leave out every bone, the fin bases and the dark flesh.", {}, "bones removed", "", false, false},
    {"Press the chunks gently into a solid pack.", {}, "", "", false, false},
    {"Add water or oil up to the headspace.", a80, "covered with liquid", "", false, false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false, false}};
constexpr citation a1283[] = {{"usda-guide-5", "5", "5-14"}};
constexpr sv a1284[] = {"minced game",
    "chopped wild game",
    "game mince"};
constexpr sv a1285[] = {"venison",
    "deer",
    "deer meat",
    "bear",
    "bear meat",
    "carne de venado",
    "venado",
    "ground venison",
    "ground deer",
    "ground deer meat",
    "deer burger",
    "venison burger",
    "venison mince",
    "minced venison",
    "ground bear",
    "ground bear meat",
    "venison sausage"};
constexpr table a1286[] = {{a542, "hot", "patties, balls, links or loose", 1000, a236, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "The same table as ground or chopped meat, which names bear and venison."}};
constexpr condition a1287[] = {{"Take no meat from a deer or elk that looked sick; keep brain and spine away from the meat.", {}, "", "", false, false},
    {"Use fresh meat, never cured, brined or smoked.", {}, "not smoked", "", false, false},
    {"Ground venison takes 1 part of pork fat to 3 or 4 parts of venison, mixed in before grinding.", {}, "", "", false, false},
    {"Shape it into patties or balls, stuff it in casings cut to links of 3 to 4 inches, or leave it loose; no bread, flour or egg in it.", {}, "not thickened", "", false, false},
    {"Cook it until lightly browned.", {}, "meat precooked", "", false, false},
    {"Drain off excess fat.", {}, "fat removed", "", false, false},
    {"Cover with boiling meat broth, tomato juice or water; the liquid is part of the process.", {}, "covered with liquid", "", false, false}};
constexpr sv a1288[] = {"wild game strips",
    "wild game cubes",
    "wild game chunks",
    "cubed wild game",
    "elk strips",
    "elk cubes",
    "elk chunks",
    "elk stew meat"};
constexpr sv a1289[] = {"venison",
    "deer",
    "deer meat",
    "bear",
    "bear meat",
    "carne de venado",
    "venado",
    "venison cubes",
    "venison chunks",
    "venison strips",
    "venison stew meat",
    "cubed venison",
    "deer cubes",
    "deer chunks",
    "deer strips",
    "deer stew meat",
    "bear cubes",
    "bear chunks",
    "bear strips"};
constexpr table a1290[] = {{a706, "hot", "strips, cubes or chunks, large bones removed", 1000, a236, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "The same table as meat in strips, cubes or chunks, which names bear and venison. Extension pages name elk beside deer; their own times were not read."},
    {a706, "raw", "strips, cubes or chunks, large bones removed", 1000, a236, "low-acid-dial", "low-acid-weighted", "", {}, "seen", 2, true, "The same table as meat in strips, cubes or chunks, which names bear and venison. Extension pages name elk beside deer; their own times were not read. One copy of the 1994 text lists the hot pack alone in its dial table."}};
constexpr condition a1291[] = {{"Take no meat from a deer or elk that looked sick; keep brain and spine away from the meat.", {}, "", "", false, false},
    {"Use fresh meat, or thawed in the refrigerator; never cured, brined, corned or smoked meat.", {}, "not smoked", "", false, false},
    {"Use well chilled meat.", {}, "chilled", "", false, false},
    {"Soak strong-tasting game 1 hour in water with 1 tbsp of salt to the quart, and rinse it.", {}, "", "", false, false},
    {"Cut off gristle, bruised spots and excess fat.", {}, "fat removed", "", false, false},
    {"Take out the large bones: meat on the bone has no tested process here.", {}, "bones removed", "", false, false},
    {"Cut it in strips, cubes or chunks; the guide sets no size, one Extension page makes the strips 1 inch wide.", {}, "", "", false, false},
    {"Use no flour, batter or other thickener.", {}, "not thickened", "", false, false},
    {"Roast, stew or brown the meat in a little fat until rare.", a80, "meat precooked", "", false, false},
    {"Fill the jars loosely.", {}, "packed loosely", "", false, false},
    {"Cover with boiling broth, drippings, water or tomato juice.", a80, "covered with liquid", "", false, false},
    {"The pieces go in raw.", a146, "meat not precooked", "", false, false},
    {"Add no liquid.", a146, "no liquid added", "", false, false}};
constexpr citation a1292[] = {{"usda-guide-5", "5", "5-6"},
    {"pnw-361", "", ""}};
constexpr sv a1293[] = {"pickled yellow pepper rings",
    "yellow pepper rings",
    "pickled banana pepper rings",
    "banana pepper rings",
    "pickled yellow banana peppers",
    "pickled sliced banana peppers",
    "aros de chile amarillo encurtidos",
    "aros de pimiento amarillo encurtidos"};
constexpr sv a1294[] = {"pickled peppers",
    "pickled pepper",
    "pimientos encurtidos",
    "pimientos en vinagre",
    "pickled yellow peppers",
    "pickled chiles",
    "pickled chilies",
    "pickled chillies",
    "pickled chile peppers",
    "pickled chili peppers",
    "pickled chilli peppers",
    "chiles encurtidos",
    "chiles en vinagre",
    "pickled banana peppers",
    "pickled banana pepper",
    "pickled pepper rings",
    "hot pepper rings",
    "pickled hot pepper rings"};
constexpr table a1295[] = {{a558, "raw", "yellow (banana) peppers in 1/4 inch rings", 500, a152, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a1296[] = {{"Wash the peppers and cut them in rings 1/4 inch thick.", {}, "", "", false, false},
    {"The liquid is 4 parts of cider vinegar to 1 part of water; use vinegar labeled 5 % acidity or more, and no more water than that.", {}, "", "", false, false},
    {"Cover the rings with the boiling liquid.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, fewer peppers. Not allowed: less vinegar, more water or more peppers.", {}, "", "", false, false}};
constexpr sv a1297[] = {"banana-pepper"};
constexpr recipe_part a1298[] = {{a1297, "lb", {25, 10}, {3, 1}, "", {0, 1}, part_limit::between, part_role::low_acid, true, false, false, "", "", "1/4 inch rings"},
    {a93, "cup", {5, 1}, {5, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "cider"},
    {a111, "cup", {125, 100}, {125, 100}, "", {0, 1}, part_limit::most, part_role::water, false, false, false, "", "", ""},
    {a158, "tsp", {5, 1}, {5, 1}, "", {0, 1}, part_limit::free, part_role::salt, false, false, false, "", "", ""},
    {a183, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "1/2 tbsp per pint"},
    {a182, "tbsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", "1 tbsp per pint"}};
constexpr tested_recipe a1299[] = {{"", "", "pint", 4, 4, a1298}};
constexpr sv a1300[] = {"bread-and-butter zucchini",
    "pickled bread-and-butter zucchini",
    "bread-and-butter courgettes",
    "bread-and-butter pickled zucchini",
    "bread-and-butter pickled courgettes"};
constexpr table a1301[] = {{a120, "hot", "sliced zucchini and onions, salted 2 h", 500, a517, "", "", "boiling-water-3", {}, "seen", 2, true, "All its numbers were read, once."}};
constexpr condition a1302[] = {{"Wash and slice the zucchini, and slice the onions thin.", {}, "", "", false, false},
    {"Let them stand 2 hours with the salt in water, then drain well.", {}, "drained", "", false, false},
    {"Use vinegar labeled 5 % acidity or more, in the full amount; never thin it or measure it short. No water goes into the pickling liquid.", {}, "", "", false, false},
    {"Simmer the slices in the sweet vinegar.", {}, "boiled before filling", "", false, false},
    {"Fill the jars hot and cover with the liquid.", {}, "covered with liquid", "", false, false},
    {"Allowed changes: more vinegar, less zucchini or onion, more sugar. Not allowed: less vinegar, added water, more zucchini or onion.", {}, "", "", false, false}};
constexpr sv a1303[] = {"zucchini"};
constexpr recipe_part a1304[] = {{a1303, "cup", {16, 1}, {16, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "fresh, sliced"},
    {a223, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, false, false, false, "", "", "thinly sliced"},
    {a158, "cup", {5, 10}, {5, 10}, "", {0, 1}, part_limit::free, part_role::salt, false, false, true, "", "", "2 h soak, drained"},
    {a93, "cup", {4, 1}, {4, 1}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", "white"},
    {a94, "cup", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""},
    {a182, "tbsp", {4, 1}, {4, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a183, "tbsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""},
    {a339, "tsp", {2, 1}, {2, 1}, "", {0, 1}, part_limit::free, part_role::spice, false, false, false, "", "", ""}};
constexpr tested_recipe a1305[] = {{"", "", "pint", 8, 9, a1304}};
constexpr sv a1306[] = {"zucchini-pineapple",
    "pineapple zucchini",
    "zucchini with pineapple juice",
    "zucchini in pineapple juice",
    "mock pineapple",
    "courgettes in pineapple juice",
    "courgette-pineapple"};
constexpr sv a1307[] = {"half-inch-cubes",
    "shredded"};
constexpr table a1308[] = {{a1307, "hot", "1/2-inch cubes or shreds of peeled zucchini in pineapple and lemon juice", 500, a993, "", "", "boiling-water-3", {}, "seen", 2, true, ""}};
constexpr condition a1309[] = {{"Keep to the printed recipe: the ratio of zucchini to bottled lemon juice and canned unsweetened pineapple juice is the safety. Neither juice may be cut, and no more zucchini may go in.", {}, "", "", false, false},
    {"Use canned unsweetened pineapple juice; plain zucchini has no process.", {}, "", "", false, false},
    {"Peel the zucchini and cut it in 1/2-inch cubes or shred it.", {}, "peeled", "", false, false},
    {"Bring everything to a boil and simmer 20 minutes.", {}, "boiled before filling", "", false, false},
    {"Fill the jars with the hot zucchini and cover with the hot cooking liquid.", {}, "covered with liquid", "", false, false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false, false}};
constexpr sv a1310[] = {"pineapple-juice"};
constexpr recipe_part a1311[] = {{a1303, "quart", {4, 1}, {4, 1}, "", {0, 1}, part_limit::most, part_role::low_acid, true, false, false, "", "", "peeled, 1/2 inch cubes or shredded"},
    {a1310, "floz", {46, 1}, {46, 1}, "", {0, 1}, part_limit::least, part_role::acid_food, false, false, false, "", "", "canned, unsweetened"},
    {a581, "cup", {15, 10}, {15, 10}, "", {0, 1}, part_limit::least, part_role::acid, false, false, false, "", "", ""},
    {a94, "cup", {3, 1}, {3, 1}, "", {0, 1}, part_limit::free, part_role::sugar, false, false, false, "", "", ""}};
constexpr tested_recipe a1312[] = {{"", "", "pint", 8, 9, a1311}};
constexpr citation a1313[] = {{"usda-guide-2", "2", "2-22"},
    {"florida-zucchini-pineapple", "", ""}};
constexpr process a1314[] = {{"apple-butter", "apple butter", a85, {}, "Apples cooked down with cider, vinegar, sugar and spices, by the printed recipe; not pumpkin or banana butter.", food_class::acid, recipe_kind::fixed, a89, a90, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a99, "", "", a100},
    {"apple-juice", "apple juice", a101, a102, "Clear strained apple juice; not cider that is fermented, and not juice of pears or elderberries.", food_class::acid, recipe_kind::plain, a105, a106, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a100},
    {"apple-rings-spiced", "spiced apple rings", a107, {}, "Rings of firm tart apples in a spiced syrup with vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a109, a110, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a117, "", "", a118},
    {"apples-sliced", "sliced apples", a119, {}, "Peeled and cored slices of apple in water or syrup.", food_class::acid, recipe_kind::plain, a126, a127, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a128},
    {"applesauce", "applesauce", a129, a130, "Apples cooked to a smooth or chunky sauce, with or without sugar.", food_class::acid, recipe_kind::plain, a136, a137, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a128},
    {"apricots", "apricots", a138, {}, "Apricots in halves or slices, peeled or not, in water, juice or syrup.", food_class::acid, recipe_kind::plain, a145, a147, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a148},
    {"asparagus-pickled", "pickled asparagus", a149, {}, "Whole asparagus spears in equal parts of vinegar and water, by the printed recipe.", food_class::acid, recipe_kind::fixed, a153, a154, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a162, "", "", a163},
    {"asparagus", "asparagus", a164, {}, "Asparagus spears, whole or cut.", food_class::low_acid, recipe_kind::plain, a169, a170, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a171},
    {"baby-carrots-pickled", "pickled baby carrots", a172, a173, "Whole peeled baby carrots in sweet vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a179, a180, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a185, "The USDA table, read once, names pints; half-pints with the same times are printed by University of Missouri Extension.", "", a186},
    {"beans-baked", "baked beans", a187, a188, "Dried beans baked in the printed molasses sauce.", food_class::low_acid, recipe_kind::fixed, a192, a193, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a201, "", "", a202},
    {"beans-dilled", "dilled beans", a203, a204, "Green or yellow snap beans, trimmed to 4 inches, in equal parts of vinegar and water, by the printed recipe.", food_class::acid, recipe_kind::fixed, a207, a208, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a213, "", "", a214},
    {"beans-dry-with-sauce", "dried beans with tomato or molasses sauce", a215, a188, "Dried beans in one of the printed thin sauces.", food_class::low_acid, recipe_kind::fixed, a217, a218, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a232, "", "", a202},
    {"beans-dry", "dried beans or peas", a233, a234, "Ripe dry beans and peas of any variety, soaked and boiled before filling.", food_class::low_acid, recipe_kind::plain, a237, a238, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a171},
    {"beans-lima-fresh", "fresh lima beans", a239, a240, "Fresh green lima beans out of the pod; dried ones go by the table of dried beans.", food_class::low_acid, recipe_kind::plain, a248, a249, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a250},
    {"beans-snap", "snap and Italian beans", a251, a252, "Green and wax snap beans and Italian beans, in the pod.", food_class::low_acid, recipe_kind::plain, a257, a258, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a259},
    {"beets-pickled-no-sugar", "no-sugar-added pickled beets", a260, {}, "Cooked beets, sliced or whole baby beets, in vinegar with sucralose, by the printed recipe.", food_class::acid, recipe_kind::fixed, a263, a264, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a268, "", "", a269},
    {"beets-pickled", "pickled beets", a270, {}, "Cooked beets, sliced or whole baby beets, in sweet spiced vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a272, a273, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a275, "", "", a276},
    {"beets", "beets", a277, {}, "Beets without their tops, unpickled.", food_class::low_acid, recipe_kind::plain, a281, a282, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a283},
    {"bell-peppers-pickled", "pickled bell peppers", a284, a285, "Bell peppers in strips, in sweet vinegar and water, by the printed recipe.", food_class::acid, recipe_kind::fixed, a288, a289, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a292, "", "", a293},
    {"berries-whole", "whole berries", a294, {}, "Blackberries, blueberries, currants, dewberries, gooseberries, huckleberries, loganberries and raspberries; not elderberries, mulberries or strawberries.", food_class::acid, recipe_kind::plain, a296, a297, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a298},
    {"berry-syrup", "berry syrup", a299, {}, "Sweetened juice of blueberries, cherries, grapes, raspberries or strawberries; never of elderberries.", food_class::acid, recipe_kind::fixed, a300, a301, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a305, "", "", a298},
    {"cantaloupe-pickles-no-sugar-added", "cantaloupe pickles without sugar", a306, a307, "Cubes of under-ripe cantaloupe in vinegar with a sweetener that stands heat, by the printed recipe.", food_class::acid, recipe_kind::fixed, a308, a309, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a313, "", "", a314},
    {"cantaloupe-pickles", "cantaloupe pickles", a315, a307, "Cubes of under-ripe cantaloupe in a spiced vinegar syrup, by the printed recipe; plain melon has no process.", food_class::acid, recipe_kind::fixed, a316, a317, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a319, "", "", a314},
    {"carrots-pickled", "pickled carrots", a320, a173, "Peeled carrots in rounds about 1/2 inch thick, in sweet vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a322, a323, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a326, "The USDA table, read once, names pints; half-pints with the same times are printed by University of Missouri Extension.", "", a186},
    {"carrots", "carrots", a327, {}, "Carrots, peeled and cut.", food_class::low_acid, recipe_kind::plain, a330, a331, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a332},
    {"cauliflower-or-brussels-sprouts-pickled", "pickled cauliflower or Brussels sprouts", a333, {}, "Cauliflower flowerets or small whole Brussels sprouts in sweet undiluted vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a335, a336, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a341, "", "", a342},
    {"cayenne-pepper-sauce", "cayenne pepper sauce", a343, a344, "Hot peppers with canned diced tomatoes, onions, garlic and cider vinegar, pureed, by the printed recipe.", food_class::acid, recipe_kind::fixed, a345, a346, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a351, "", "", a352},
    {"chayote-jicama-slaw", "chayote and jicama slaw", a353, {}, "Julienned chayote and jicama with chopped peppers in cider vinegar and water, by the printed recipe.", food_class::acid, recipe_kind::fixed, a354, a355, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a359, "", "", a342},
    {"cherries-whole", "whole cherries", a360, {}, "Sweet or sour cherries, with or without their pits, in water, juice or syrup.", food_class::acid, recipe_kind::plain, a363, a364, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a314},
    {"chicken-with-bones", "chicken or rabbit with bones", a365, a366, "Chicken and rabbit in pieces with the bones in.", food_class::low_acid, recipe_kind::plain, a368, a369, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a370},
    {"chicken-without-bones", "chicken or rabbit without bones", a371, a366, "Chicken and rabbit in pieces off the bone.", food_class::low_acid, recipe_kind::plain, a373, a374, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a370},
    {"chile-con-carne", "chile con carne", a375, a376, "The printed recipe of ground beef, dried beans and tomatoes; no chili of one's own.", food_class::low_acid, recipe_kind::fixed, a378, a379, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a387, "", "", a388},
    {"chutney-cranberry-orange", "cranberry orange chutney", a389, a390, "Cranberries simmered with onion, raisins, vinegar and orange juice, by the printed recipe.", food_class::acid, recipe_kind::fixed, a392, a393, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a399, "", "", a400},
    {"chutney-mango", "mango chutney", a401, a390, "Hard unripe mango cooked with onion, raisins, vinegar and sugar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a402, a403, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a406, "", "", a407},
    {"clams", "clams", a408, {}, "Clams, whole or minced.", food_class::low_acid, recipe_kind::plain, a413, a414, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a415},
    {"corn-cream-style", "cream style corn", a416, a417, "Corn cut through the middle of the kernels, with the scrapings of the cob and water.", food_class::low_acid, recipe_kind::plain, a421, a422, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a332},
    {"corn-whole-kernel", "whole kernel corn", a423, a417, "Whole kernels cut from the cob.", food_class::low_acid, recipe_kind::plain, a427, a428, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a429},
    {"crab-apples-spiced", "spiced crab apples", a430, {}, "Whole crab apples in a spiced vinegar syrup, by the printed recipe.", food_class::acid, recipe_kind::fixed, a432, a433, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a436, "", "", a148},
    {"crab-king-dungeness", "king or Dungeness crab", a437, {}, "Meat of king crab and Dungeness crab; blue crab is frozen instead.", food_class::low_acid, recipe_kind::plain, a441, a442, {0, 0, 0, {}}, a443, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a415},
    {"dill-pickles-fermented", "fermented dill pickles", a444, a445, "Whole 4-inch pickling cucumbers, fully fermented in salt brine with dill; not half-sour ones.", food_class::acid, recipe_kind::fixed, a447, a448, {30, 180, 185, a38}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a453, "", "", a454},
    {"easy-hot-sauce", "easy hot sauce", a455, a344, "Canned diced tomatoes with Serrano peppers and white vinegar, milled, by the printed recipe.", food_class::acid, recipe_kind::fixed, a456, a457, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a460, "", "", a461},
    {"figs", "figs", a462, {}, "Whole, firm ripe, uncracked figs in light syrup with acid in every jar.", food_class::acid, recipe_kind::plain, a466, a467, {0, 0, 0, {}}, a468, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a469},
    {"fish-pint-jars", "fish other than tuna, by the pint-jar table", a470, a471, "Blue, mackerel, salmon, steelhead, trout and other fatty fish, and halibut; not tuna, not smoked fish.", food_class::low_acid, recipe_kind::plain, a476, a477, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a478},
    {"fish-quart-jars", "fish other than tuna, by the quart-jar table", a479, a471, "Fatty fish and halibut in straight-sided wide-mouth quart jars; not tuna, not smoked fish.", food_class::low_acid, recipe_kind::plain, a483, a484, {0, 0, 0, {}}, {}, {20, 3, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a485},
    {"fish-smoked", "smoked fish", a486, a487, "Lightly smoked salmon, rockfish, sole, cod, flounder and other fish; no other smoked seafood.", food_class::low_acid, recipe_kind::plain, a491, a492, {0, 0, 0, {}}, {}, {0, 4, 16, 22, 8, 7, 0, 24, a146}, {}, {}, "The time is printed by USDA and Pacific Northwest Extension; the dial pressures were carried over from the table for fish in pints and could not be read again.", "", a493},
    {"fruit-cocktail", "fruit cocktail", a494, {}, "Cubed yellow peaches and pears with green seedless grapes and a few maraschino cherries in syrup.", food_class::acid, recipe_kind::fixed, a496, a497, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a503, "", "", a504},
    {"fruit-purees", "fruit purees", a505, a130, "Strained, cooked pulp of acid fruit, with or without sugar; several fruits are excluded.", food_class::acid, recipe_kind::plain, a508, a509, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a510},
    {"grape-juice", "grape juice", a511, a102, "Strained grape juice, sweetened to taste or not; not whole grapes put in water.", food_class::acid, recipe_kind::plain, a512, a513, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a514},
    {"grapefruit-orange-sections", "grapefruit and orange sections", a515, {}, "Peeled sections of grapefruit alone, or of grapefruit and orange in equal parts.", food_class::acid, recipe_kind::plain, a518, a519, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a520},
    {"grapes-whole", "whole grapes", a521, {}, "Whole tight-skinned seedless grapes in syrup.", food_class::acid, recipe_kind::plain, a524, a525, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a407},
    {"green-tomatoes-sweet-pickled", "sweet pickled green tomatoes", a526, {}, "Sliced green tomatoes and onions in sweet spiced vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a527, a528, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a532, "", "", a533},
    {"greens", "spinach and other greens", a534, {}, "Spinach, chard, kale, collards, mustard, turnip and beet greens; not head cabbage.", food_class::low_acid, recipe_kind::plain, a537, a538, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a539},
    {"ground-meat", "ground or chopped meat", a540, a541, "Ground or chopped bear, beef, lamb, pork, veal and venison, and fresh sausage.", food_class::low_acid, recipe_kind::plain, a543, a544, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a545},
    {"hot-peppers-pickled", "pickled hot peppers", a546, a547, "Long hot peppers with sweet peppers, whole and slit or quartered, in vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a549, a550, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a554, "", "", a555},
    {"jalapeno-rings-pickled", "pickled jalapeño rings", a556, a557, "Jalapeño peppers in 1/4-inch rings, soaked in pickling lime and rinsed, in cider vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a559, a560, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a564, "", "", a565},
    {"jam-blueberry-spice", "blueberry-spice jam", a566, a567, "Crushed blueberries with powdered pectin, lemon juice and a spice, by the printed recipe.", food_class::acid, recipe_kind::fixed, a568, a569, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a575, "", "", a576},
    {"jam-pear-apple", "pear-apple jam", a577, a578, "Finely chopped pears and apples with liquid pectin and bottled lemon juice, by the printed recipe.", food_class::acid, recipe_kind::fixed, a579, a580, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a584, "", "", a585},
    {"jam-without-added-pectin", "jam without added pectin", a586, a587, "Crushed apricots, peaches or the listed berries boiled with sugar to the jellying point, without pectin; or jam with bought pectin by the directions in its package.", food_class::acid, recipe_kind::fixed, a588, a589, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a597, "", "", a598},
    {"jellies-remade-soft", "remade soft jelly", a599, a600, "Jelly that stayed soft, recooked with powdered pectin, with liquid pectin or without pectin.", food_class::acid, recipe_kind::fixed, a601, a602, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a607, "", "", a608},
    {"jelly-golden-pepper", "golden pepper jelly", a609, a610, "Strained juice of yellow bell and serrano peppers with vinegar, sugar and liquid pectin, by the printed recipe.", food_class::acid, recipe_kind::fixed, a615, a616, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a619, "The table for sterile jars is in the USDA guide; the longer one for clean jars is printed by the National Center for Home Food Preservation and was read in part.", "", a620},
    {"jelly-grape-plum", "grape-plum jelly", a621, a600, "Juice of ripe plums and Concord-type grapes with powdered pectin, by the printed recipe.", food_class::acid, recipe_kind::fixed, a622, a623, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a627, "", "", a620},
    {"jelly-strawberry-rhubarb", "strawberry-rhubarb jelly", a628, a600, "Juice of ripe strawberries and red rhubarb with liquid pectin, by the printed recipe.", food_class::acid, recipe_kind::fixed, a579, a629, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a633, "", "", a585},
    {"jelly-without-added-pectin", "jelly without added pectin", a634, a635, "Strained juice of apples, blackberries, crab apples, grapes or plums boiled with sugar to the jellying point; or jelly with bought pectin by the directions in its package.", food_class::acid, recipe_kind::fixed, a636, a637, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a648, "", "", a649},
    {"jicama-bread-and-butter", "bread-and-butter pickled jicama", a650, {}, "Cubed jicama with onion and red bell pepper in sweet undiluted vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a652, a653, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a655, "", "", a656},
    {"jicama-relish-spicy", "spicy jicama relish", a657, {}, "Diced jicama with bell peppers, onions, hot peppers, white vinegar and sugar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a658, a659, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a663, "", "", a664},
    {"ketchup-blender", "blender ketchup", a665, a666, "Blended tomatoes, onions and sweet peppers with vinegar and sugar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a667, a668, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a671, "", "", a672},
    {"ketchup-country-western", "country western ketchup", a673, a666, "Sieved tomatoes with chiles, vinegar and spices, by the printed recipe; no onions.", food_class::acid, recipe_kind::fixed, a674, a675, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a681, "", "", a672},
    {"mango-sauce", "mango sauce", a682, {}, "Puree of slightly under-ripe to just-ripe mango with lemon juice and ascorbic acid, by the printed recipe.", food_class::acid, recipe_kind::fixed, a683, a684, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a690, "The guide prints this table, but one state Extension says that it has no guideline for mango sauce; the stricter position stands here.", "", a691},
    {"mangoes-green", "green mangoes", a692, {}, "Peeled slices of green, firm mango in light or medium syrup; ripe mango has no process.", food_class::acid, recipe_kind::plain, a693, a694, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "The USDA guide has no table for green mangoes; these numbers are the national center's, from a Georgia Extension book, and only part of them could be read again.", "", a695},
    {"meat-stock-beef", "beef stock", a696, a697, "Stock of beef bones, strained.", food_class::low_acid, recipe_kind::plain, a699, a700, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a701},
    {"meat-stock-poultry", "chicken or turkey stock", a702, a697, "Stock of chicken or turkey bones, strained.", food_class::low_acid, recipe_kind::plain, a699, a703, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a701},
    {"meat-strips-cubes-chunks", "meat in strips, cubes or chunks", a704, a705, "Bear, beef, lamb, pork, veal and venison in strips, cubes or chunks.", food_class::low_acid, recipe_kind::plain, a707, a708, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a545},
    {"mexican-tomato-sauce", "Mexican tomato sauce", a709, {}, "Tomatoes cooked with chiles, onions and a little vinegar, by the printed recipe.", food_class::low_acid, recipe_kind::fixed, a710, a711, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a714, "", "", a715},
    {"mincemeat-pie-filling", "mincemeat pie filling", a716, a717, "Mincemeat of ground beef, or of ground venison with sausage, with suet, apples, raisins and cider, by the printed recipe.", food_class::low_acid, recipe_kind::fixed, a719, a720, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a727, "", "", a728},
    {"mixed-vegetables-pickled", "pickled mixed vegetables", a729, {}, "Cucumbers, onions, celery, carrots, red pepper and cauliflower in vinegar with mustard, by the printed recipe.", food_class::acid, recipe_kind::fixed, a732, a733, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a738, "", "", a739},
    {"mixed-vegetables", "mixed vegetables", a740, {}, "Carrots, whole kernel corn, green beans, lima beans, tomatoes and zucchini, in other proportions too, or with other vegetables in their place.", food_class::low_acid, recipe_kind::frame, a742, a743, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, a744, {}, "", "", a745},
    {"mushrooms-marinated-whole", "marinated whole mushrooms", a746, {}, "Small whole grown mushrooms in a marinade of vinegar, bottled lemon juice and oil, by the printed recipe.", food_class::acid, recipe_kind::fixed, a748, a749, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a755, "", "", a656},
    {"mushrooms", "mushrooms", a756, {}, "Grown mushrooms, small to medium, with closed caps.", food_class::low_acid, recipe_kind::plain, a760, a761, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a762},
    {"nectarines", "nectarines", a763, {}, "Yellow-fleshed nectarines in halves or slices, with their skins, in water, juice or syrup; never white-fleshed ones.", food_class::acid, recipe_kind::plain, a764, a765, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a504},
    {"okra-dilled", "dilled okra", a766, {}, "Small whole okra pods in equal parts of vinegar and water, by the printed recipe.", food_class::acid, recipe_kind::fixed, a767, a768, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a771, "", "", a772},
    {"okra", "okra", a773, {}, "Okra pods, unpickled.", food_class::low_acid, recipe_kind::plain, a775, a776, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a777},
    {"onions", "onions", a778, {}, "Onions, whole if at most 1 inch across, or in 1-inch pieces; from university Extension, not from the USDA guide.", food_class::low_acid, recipe_kind::plain, a780, a781, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "The USDA guide has no table for onions; these numbers are printed by university Extension.", "", a782},
    {"oysters", "oysters", a783, {}, "Shucked oysters.", food_class::low_acid, recipe_kind::plain, a786, a787, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a788},
    {"peaches", "peaches", a789, {}, "Yellow-fleshed peaches in halves or slices, peeled, in water, juice or syrup; never white-fleshed ones.", food_class::acid, recipe_kind::plain, a790, a791, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a792},
    {"pearl-onions-pickled", "pickled pearl onions", a793, {}, "Peeled white pearl onions in sweet vinegar, by the printed recipe; no larger onions and no slices.", food_class::acid, recipe_kind::fixed, a794, a795, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a798, "", "", a799},
    {"pears-asian", "Asian pears", a800, {}, "Peeled and cored Asian pears in halves or slices, with bottled lemon juice in every jar.", food_class::acid, recipe_kind::plain, a801, a802, {0, 0, 0, {}}, a803, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a804},
    {"pears", "pears", a805, {}, "Peeled and cored halves of European pears in water, juice or syrup; not Asian pears.", food_class::acid, recipe_kind::plain, a807, a808, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a809},
    {"peas-green", "green peas", a810, a811, "Green or English peas out of the pod.", food_class::low_acid, recipe_kind::plain, a813, a814, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a777},
    {"peppers-marinated", "marinated peppers", a815, a816, "Peeled bell, Hungarian, banana or jalapeño peppers in vinegar, bottled lemon juice and oil, by the printed recipe.", food_class::acid, recipe_kind::fixed, a818, a819, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a823, "", "", a799},
    {"peppers", "peppers", a824, a376, "Hot or sweet peppers, with chiles, jalapenos, pimientos and bell peppers; unpickled.", food_class::low_acid, recipe_kind::plain, a826, a827, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a828},
    {"piccalilli", "piccalilli", a829, a830, "Chopped green tomatoes, peppers, onions and cabbage in sweet vinegar; not the mustard pickle of that name.", food_class::acid, recipe_kind::fixed, a831, a832, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a835, "", "", a836},
    {"pickles-14-day-sweet", "14-day sweet pickles", a837, a838, "Cucumbers of 2 to 5 inches, whole, in strips or sliced, cured 14 days in brine and sweet vinegar.", food_class::acid, recipe_kind::fixed, a840, a841, {30, 180, 185, a38}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a843, "", "", a844},
    {"pickles-bread-and-butter-squash", "squash bread-and-butter pickles", a845, a846, "Slender zucchini or yellow summer squash in place of the cucumbers of bread-and-butter pickles.", food_class::acid, recipe_kind::fixed, a847, a848, {30, 180, 185, a38}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a851, "", "", a852},
    {"pickles-bread-and-butter", "bread-and-butter pickles", a853, a854, "Sliced cucumbers and onions in sweet undiluted vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a855, a856, {30, 180, 185, a38}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a858, "", "", a852},
    {"pickles-no-sugar-sweet-slices", "no-sugar-added sweet pickle slices", a859, a854, "Cucumbers in 1/4-inch slices in cider vinegar and water with sucralose, by the printed recipe.", food_class::acid, recipe_kind::fixed, a860, a861, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a863, "", "", a864},
    {"pickles-quick-fresh-pack-dill", "quick fresh-pack dill pickles", a865, a445, "Whole cucumbers of 3 to 5 inches, brined 12 hours, in vinegar and water with dill, by the printed recipe.", food_class::acid, recipe_kind::fixed, a866, a867, {30, 180, 185, a38}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a869, "", "", a870},
    {"pickles-quick-sweet", "quick sweet pickles", a871, a854, "Cucumbers of 3 to 4 inches in slices or strips, in sweet undiluted vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a874, a875, {30, 180, 185, a38}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a877, "", "", a878},
    {"pickles-reduced-sodium-sliced-dill", "reduced-sodium sliced dill pickles", a879, a880, "Cucumbers in 1/4-inch slices with dill in sweet undiluted vinegar, with little salt, by the printed recipe.", food_class::acid, recipe_kind::fixed, a881, a882, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a884, "", "", a885},
    {"pickles-reduced-sodium-sliced-sweet", "reduced-sodium sliced sweet pickles", a886, a887, "Cucumbers in 1/4-inch slices simmered in vinegar, then covered with sweet vinegar syrup, by the printed recipe.", food_class::acid, recipe_kind::fixed, a888, a889, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a891, "", "", a885},
    {"pickles-sweet-gherkin", "sweet gherkin pickles", a892, a893, "Whole cucumbers of at most 1 1/2 inches, cured four days in sweet vinegar syrup, by the printed recipe.", food_class::acid, recipe_kind::fixed, a894, a895, {30, 180, 185, a38}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a900, "", "", a870},
    {"pie-filling-apple", "apple pie filling", a901, a902, "Blanched slices of fresh apple in a syrup with cook-type modified corn starch, by the printed recipe.", food_class::acid, recipe_kind::fixed, a903, a904, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a909, "", "", a910},
    {"pie-filling-blueberry", "blueberry pie filling", a911, a902, "Blueberries, fresh or frozen, in a syrup with cook-type modified corn starch, by the printed recipe.", food_class::acid, recipe_kind::fixed, a912, a913, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a920, "", "", a921},
    {"pie-filling-cherry", "cherry pie filling", a922, a902, "Pitted sour cherries, fresh or frozen, in a syrup with cook-type modified corn starch, by the printed recipe.", food_class::acid, recipe_kind::fixed, a923, a924, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a932, "", "", a921},
    {"pie-filling-green-tomato", "green tomato pie filling", a933, a934, "Green tomatoes and tart apples cooked with raisins, vinegar and lemon juice, by the printed recipe.", food_class::acid, recipe_kind::fixed, a936, a937, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a940, "", "", a941},
    {"pie-filling-peach", "peach pie filling", a942, a902, "Blanched slices of fresh yellow peaches in a syrup with cook-type modified corn starch, by the printed recipe.", food_class::acid, recipe_kind::fixed, a943, a944, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a947, "", "", a948},
    {"pineapple", "pineapple", a949, {}, "Peeled slices or cubes of firm ripe pineapple in water, juice or syrup.", food_class::acid, recipe_kind::plain, a951, a952, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a953},
    {"plums", "plums", a954, {}, "Plums, whole, or freestone kinds in halves, in water or syrup.", food_class::acid, recipe_kind::plain, a956, a957, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a953},
    {"potatoes-sweet", "sweet potatoes", a958, a959, "Sweet potatoes, whole if small, or in even pieces.", food_class::low_acid, recipe_kind::plain, a962, a963, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a964},
    {"potatoes-white", "white potatoes", a965, a959, "White potatoes, peeled, whole if small, or in cubes.", food_class::low_acid, recipe_kind::plain, a968, a969, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a970},
    {"poultry-other-with-bones", "turkey, duck, goose or game birds with bones", a971, a972, "Turkey, duck, goose and game birds in pieces with the bones in; from university Extension.", food_class::low_acid, recipe_kind::plain, a973, a974, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "The USDA table names chicken and rabbit; university Extension uses its numbers for these birds.", "", a975},
    {"poultry-other-without-bones", "turkey, duck, goose or game birds without bones", a976, a972, "Turkey, duck, goose and game birds in pieces off the bone; from university Extension.", food_class::low_acid, recipe_kind::plain, a977, a978, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "The USDA table names chicken and rabbit; university Extension uses its numbers for these birds.", "", a975},
    {"pumpkin", "pumpkin", a979, {}, "Pumpkin in cubes, never mashed or pureed.", food_class::low_acid, recipe_kind::plain, a982, a983, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a539},
    {"relish-chayote-pear", "chayote and pear relish", a984, a830, "Chayote and Seckel pears in 1/2-inch cubes with peppers and onion, in cider vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a985, a986, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a990, "", "", a991},
    {"relish-corn", "corn relish", a992, a830, "Whole kernel corn with peppers, celery and onion in sweet vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a994, a995, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a999, "", "", a1000},
    {"relish-green-tomato", "green tomato relish", a1001, a830, "Finely chopped hard green tomatoes, peppers and onions in vinegar with mustard, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1002, a1003, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1006, "", "", a1007},
    {"relish-pepper-onion", "pepper-onion relish", a1008, a830, "Finely chopped onions and bell peppers boiled down in vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1009, a1010, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1012, "", "", a1013},
    {"relish-pickle", "pickle relish", a1014, a830, "Chopped cucumbers, peppers and onion in sweet undiluted vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1015, a1016, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1019, "", "", a1000},
    {"relish-tangy-tomatillo", "tangy tomatillo relish", a1020, a830, "Chopped tomatillos, plum tomatoes, jicama, peppers and onion in sweet cider vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1021, a1022, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1026, "", "", a1027},
    {"rhubarb", "stewed rhubarb", a1028, {}, "Rhubarb stalks in pieces, stewed with sugar in their own juice.", food_class::acid, recipe_kind::plain, a1030, a1031, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a1032},
    {"salsa-chile-ii", "chile salsa II", a1033, a1034, "Tomatoes with mixed mild and hot chiles, onions and a little vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1035, a1036, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1040, "The numbers rest on a single reading, in a private copy of an Extension recipe.", "", a1041},
    {"salsa-chile", "chile salsa", a1042, a1034, "Tomatoes, chiles and onions with vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1043, a1044, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1046, "", "", a1047},
    {"salsa-choice", "choice salsa", a1048, a1049, "Seeded tomatoes with onions and peppers, split as the cook likes, and lemon or lime juice.", food_class::acid, recipe_kind::fixed, a1050, a1051, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1055, "Published by the National Center for Home Food Preservation, not in the USDA guide; the times above 1,000 ft could not be read again.", "", a1056},
    {"salsa-cranberry-spicy", "spicy cranberry salsa", a1057, a1058, "Cranberries with red onions, Serrano peppers, cider vinegar, sugar and honey, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1059, a1060, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1062, "The numbers rest on a single reading, on a page of the National Center for Home Food Preservation.", "", a1063},
    {"salsa-mango", "mango salsa", a1064, a1058, "Hard green mangoes with red bell pepper, onion and cider vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1065, a1066, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1068, "", "", a1069},
    {"salsa-paste-tomatoes", "tomato salsa with paste tomatoes", a1070, a1049, "Paste tomatoes with chiles, jalapenos, onions and lemon or lime juice, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1071, a1072, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1077, "", "", a1078},
    {"salsa-peach-apple", "peach apple salsa", a1079, a1058, "Roma tomatoes, hard peaches and tart apples with onions, bell peppers and cider vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1080, a1081, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1084, "", "", a1085},
    {"salsa-peach", "peach salsa", a1086, a1058, "Hard, unripe yellow peaches with red bell pepper, onion and cider vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1087, a1088, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1090, "", "", a1091},
    {"salsa-slicing-tomatoes", "tomato salsa with slicing tomatoes", a1092, a1049, "Slicing tomatoes with chiles, jalapenos, onions and vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1093, a1094, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1097, "", "", a1098},
    {"salsa-tomatillo-green", "tomatillo green salsa", a1099, a1100, "Tomatillos or green tomatoes with green chiles, jalapenos, onions and lemon or lime juice, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1101, a1102, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1105, "", "", a1106},
    {"salsa-tomato-green-chile", "tomato and green chile salsa", a1107, a1108, "Tomatoes with as many long green chiles, onions and vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1109, a1110, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1112, "", "", a1113},
    {"salsa-tomato-tomato-paste", "tomato and tomato paste salsa", a1114, a1049, "Slicing tomatoes with canned tomato paste, onions, peppers and lemon or lime juice, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1115, a1116, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1120, "", "", a1121},
    {"sauerkraut", "sauerkraut", a1122, {}, "Shredded cabbage, fully fermented with canning salt.", food_class::acid, recipe_kind::fixed, a1125, a1126, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1128, "", "", a1129},
    {"soups-with-seafood", "soup with seafood", a1130, a1131, "Soup with any fish or shellfish, of the cook's own choice inside these rules.", food_class::low_acid, recipe_kind::frame, a1133, a1134, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 50, 0, {}}, a1135, {}, "", "", a1136},
    {"soups", "soup without seafood", a1137, a1131, "Vegetable, dried bean or pea, meat or poultry soup of the cook's own choice inside these rules.", food_class::low_acid, recipe_kind::frame, a1139, a1140, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 50, 0, {}}, a1141, {}, "", "", a1142},
    {"spaghetti-sauce-with-meat", "spaghetti sauce with meat", a1143, a1144, "Tomato sauce with ground beef or sausage and vegetables, by the printed recipe.", food_class::low_acid, recipe_kind::fixed, a1146, a1147, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1152, "", "", a1153},
    {"spaghetti-sauce-without-meat", "spaghetti sauce without meat", a1154, a1144, "Tomato sauce with vegetables cooked soft in oil, by the printed recipe.", food_class::low_acid, recipe_kind::fixed, a1155, a1156, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1159, "", "", a1160},
    {"spread-peach-pineapple", "peach-pineapple spread", a1161, {}, "Drained pulp of peaches, nectarines, apricots or plums with crushed pineapple, with little or no sugar.", food_class::acid, recipe_kind::fixed, a1163, a1164, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1168, "", "", a1169},
    {"squash-winter", "winter squash", a1170, {}, "Acorn, banana, buttercup, butternut, golden delicious and hubbard squash in cubes, never mashed or pureed; not spaghetti squash.", food_class::low_acid, recipe_kind::plain, a1171, a1172, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a539},
    {"succotash", "succotash", a1173, {}, "Whole kernel corn with fresh lima beans, with or without tomatoes.", food_class::low_acid, recipe_kind::fixed, a1175, a1176, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1179, "", "", a539},
    {"three-bean-salad-pickled", "pickled three-bean salad", a1180, a204, "Green or yellow beans, canned kidney and garbanzo beans and vegetables in vinegar, lemon juice and oil.", food_class::acid, recipe_kind::fixed, a1181, a1182, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1186, "", "", a214},
    {"tomatillos", "tomatillos", a1187, a1188, "Whole tomatillos out of their husks, covered with boiling water, with acid in every jar.", food_class::acid, recipe_kind::plain, a1195, a1196, {0, 0, 0, {}}, a1197, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a1198},
    {"tomato-juice", "tomato juice", a1199, a1200, "Juice pressed from cooked tomatoes, without vegetables, with acid in every jar.", food_class::acid, recipe_kind::plain, a1204, a1205, {0, 0, 0, {}}, a1197, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "The weighted option at 15 psi rests on a partial reading and on an equipment maker's copy of the USDA table.", "", a1206},
    {"tomato-ketchup", "tomato ketchup", a1207, a666, "Sieved tomatoes with onions, cider vinegar and spices, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1208, a1209, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1211, "", "", a1212},
    {"tomato-paste", "tomato paste", a1213, a1214, "Tomatoes with some sweet red pepper, sieved and cooked down to a paste; half-pints.", food_class::acid, recipe_kind::fixed, a1216, a1217, {0, 0, 0, {}}, a1218, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1220, "The USDA guide has no table for tomato paste; these numbers are from one older university bulletin, read in a copy.", "", a1221},
    {"tomato-sauce", "standard tomato sauce", a1222, a1223, "Sauce of pressed tomatoes alone, thin or thick, with acid in every jar.", food_class::acid, recipe_kind::plain, a1225, a1226, {0, 0, 0, {}}, a1197, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a1227},
    {"tomato-taco-sauce", "tomato taco sauce", a1228, {}, "Paste tomatoes with onions, peppers and vinegar, cooked thick, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1229, a1230, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1232, "", "", a1233},
    {"tomato-vegetable-juice-blend", "tomato and vegetable juice blend", a1234, {}, "Juice pressed from tomatoes with a little celery, onion, carrot and pepper; acid in every jar.", food_class::acid, recipe_kind::fixed, a1235, a1236, {0, 0, 0, {}}, a1197, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1239, "", "", a1240},
    {"tomatoes-crushed", "crushed tomatoes", a1241, a1242, "Peeled, quartered and crushed tomatoes without added liquid, with acid in every jar.", food_class::acid, recipe_kind::plain, a1247, a1248, {0, 0, 0, {}}, a1197, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "The times in boiling water were read twice. Several pressure options rest on a partial reading, or on an equipment maker's copy of the USDA table.", "", a1249},
    {"tomatoes-whole-juice", "whole or halved tomatoes in tomato juice", a1250, a1251, "Peeled tomatoes, whole or halved, covered with tomato juice, with acid in every jar.", food_class::acid, recipe_kind::plain, a1255, a1256, {0, 0, 0, {}}, a1197, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a1257},
    {"tomatoes-whole-raw-no-liquid", "raw whole or halved tomatoes without added liquid", a1258, a1259, "Peeled raw tomatoes, whole or halved, pressed until their juice fills the jar; acid in every jar.", food_class::acid, recipe_kind::plain, a1260, a1261, {0, 0, 0, {}}, a1197, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a1262},
    {"tomatoes-whole-water", "whole or halved tomatoes in water", a1263, a1264, "Peeled tomatoes, whole or halved, covered with water, with acid in every jar.", food_class::acid, recipe_kind::plain, a1265, a1266, {0, 0, 0, {}}, a1197, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a1267},
    {"tomatoes-with-okra-or-zucchini", "tomatoes with okra or zucchini", a1268, {}, "Peeled tomatoes with okra or with zucchini, about 3 lb to 1 lb.", food_class::low_acid, recipe_kind::fixed, a1270, a1271, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1276, "", "", a1277},
    {"tuna", "tuna", a1278, {}, "Tuna, precooked or raw; not smoked.", food_class::low_acid, recipe_kind::plain, a1281, a1282, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 24, a80}, {}, {}, "", "", a1283},
    {"wild-game-ground", "ground or chopped wild game", a1284, a1285, "Ground or chopped bear and venison.", food_class::low_acid, recipe_kind::plain, a1286, a1287, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a545},
    {"wild-game-strips", "wild game in strips, cubes or chunks", a1288, a1289, "Bear and venison in strips, cubes or chunks; elk by university Extension.", food_class::low_acid, recipe_kind::plain, a1290, a1291, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, {}, "", "", a1292},
    {"yellow-pepper-rings-pickled", "pickled yellow pepper rings", a1293, a1294, "Yellow banana peppers in 1/4-inch rings in cider vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1295, a1296, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1299, "", "", a533},
    {"zucchini-bread-and-butter", "bread-and-butter zucchini", a1300, a846, "Sliced zucchini and onions in sweet undiluted vinegar, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1301, a1302, {30, 180, 185, a38}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1305, "", "", a991},
    {"zucchini-pineapple", "zucchini-pineapple", a1306, {}, "Peeled zucchini in cubes or shreds, simmered in pineapple juice and lemon juice, by the printed recipe.", food_class::acid, recipe_kind::fixed, a1308, a1309, {0, 0, 0, {}}, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, a1312, "", "", a1313}};
constexpr sv a1315[] = {"vinegar",
    "table vinegar",
    "vinagre"};
constexpr sv a1316[] = {"acidifier",
    "liquid"};
constexpr citation a1317[] = {{"usda-sr-27", "02048", ""},
    {"usda-sr-27", "02053", ""},
    {"usda-household-list", "02048", ""}};
constexpr measure_weight a1318[] = {{"liquid", "cup", 238000, 239000, a1317},
    {"liquid", "tbsp", 14900, 15000, a1317},
    {"liquid", "tsp", 5000, 5000, a1317}};
constexpr sv a1319[] = {"white vinegar",
    "distilled vinegar",
    "distilled white vinegar",
    "white distilled vinegar",
    "spirit vinegar",
    "white spirit vinegar",
    "vinagre blanco",
    "vinagre de alcohol"};
constexpr citation a1320[] = {{"usda-sr-27", "02053", ""}};
constexpr measure_weight a1321[] = {{"liquid", "cup", 238000, 238000, a1320},
    {"liquid", "tbsp", 14900, 14900, a1320},
    {"liquid", "tsp", 5000, 5000, a1320}};
constexpr sv a1322[] = {"cider vinegar",
    "apple cider vinegar",
    "apple vinegar",
    "vinagre de manzana",
    "vinagre de sidra"};
constexpr citation a1323[] = {{"usda-sr-27", "02048", ""},
    {"usda-household-list", "02048", ""}};
constexpr measure_weight a1324[] = {{"liquid", "cup", 239000, 239000, a1323},
    {"liquid", "tbsp", 14900, 15000, a1323},
    {"liquid", "tsp", 5000, 5000, a1323}};
constexpr sv a1325[] = {"four percent vinegar",
    "vinegar of 4 percent",
    "vinegar of four percent",
    "weak vinegar",
    "low acid vinegar"};
constexpr sv a1326[] = {"homemade vinegar",
    "home made vinegar",
    "scrap vinegar",
    "raw homemade vinegar",
    "vinagre casero"};
constexpr sv a1327[] = {"homemade",
    "acidifier",
    "liquid"};
constexpr sv a1328[] = {"cleaning vinegar",
    "industrial vinegar",
    "cleaning strength vinegar",
    "vinagre de limpieza"};
constexpr sv a1329[] = {"rice vinegar",
    "rice wine vinegar",
    "seasoned rice vinegar",
    "vinagre de arroz"};
constexpr sv a1330[] = {"wine vinegar",
    "red wine vinegar",
    "white wine vinegar",
    "champagne vinegar",
    "sherry vinegar",
    "vinagre de vino",
    "vinagre de jerez"};
constexpr citation a1331[] = {{"usda-sr-27", "02068", ""}};
constexpr measure_weight a1332[] = {{"liquid", "cup", 239000, 239000, a1331},
    {"liquid", "tbsp", 14900, 14900, a1331},
    {"liquid", "tsp", 5000, 5000, a1331}};
constexpr sv a1333[] = {"balsamic vinegar",
    "white balsamic vinegar",
    "balsamic",
    "vinagre balsámico"};
constexpr citation a1334[] = {{"usda-sr-27", "02069", ""}};
constexpr measure_weight a1335[] = {{"liquid", "cup", 255000, 255000, a1334},
    {"liquid", "tbsp", 16000, 16000, a1334},
    {"liquid", "tsp", 5300, 5300, a1334}};
constexpr sv a1336[] = {"malt vinegar",
    "brown malt vinegar",
    "distilled malt vinegar",
    "vinagre de malta"};
constexpr sv a1337[] = {"flavored vinegar",
    "flavoured vinegar",
    "herb vinegar",
    "fruit vinegar",
    "coconut vinegar",
    "cane vinegar",
    "pickle brine",
    "pickle juice"};
constexpr sv a1338[] = {"lemon juice",
    "zumo de limón",
    "zumo de limon"};
constexpr citation a1339[] = {{"usda-sr-27", "09152", ""},
    {"usda-sr-27", "09153", ""},
    {"usda-household-list", "09153", ""}};
constexpr measure_weight a1340[] = {{"liquid", "cup", 244000, 244000, a1339},
    {"liquid", "tbsp", 15000, 15200, a1339}};
constexpr sv a1341[] = {"bottled lemon juice",
    "lemon juice bottled",
    "commercially bottled lemon juice",
    "lemon juice from concentrate",
    "reconstituted lemon juice",
    "jugo de limón amarillo embotellado"};
constexpr citation a1342[] = {{"usda-sr-27", "09153", ""},
    {"usda-household-list", "09153", ""}};
constexpr measure_weight a1343[] = {{"liquid", "cup", 244000, 244000, a1342},
    {"liquid", "tbsp", 15000, 15200, a1342}};
constexpr sv a1344[] = {"fresh lemon juice",
    "freshly squeezed lemon juice",
    "fresh squeezed lemon juice",
    "juice of a lemon",
    "juice of lemon",
    "home squeezed lemon juice"};
constexpr sv a1345[] = {"not-bottled",
    "acidifier",
    "liquid"};
constexpr citation a1346[] = {{"usda-sr-27", "09152", ""}};
constexpr measure_weight a1347[] = {{"liquid", "cup", 244000, 244000, a1346}};
constexpr sv a1348[] = {"lime juice",
    "zumo de lima"};
constexpr citation a1349[] = {{"usda-sr-27", "09160", ""},
    {"usda-sr-27", "09161", ""},
    {"usda-household-list", "09161", ""}};
constexpr measure_weight a1350[] = {{"liquid", "cup", 242000, 246000, a1349}};
constexpr sv a1351[] = {"bottled lime juice",
    "lime juice bottled",
    "commercially bottled lime juice",
    "lime juice from concentrate",
    "reconstituted lime juice"};
constexpr citation a1352[] = {{"usda-sr-27", "09161", ""},
    {"usda-household-list", "09161", ""}};
constexpr measure_weight a1353[] = {{"liquid", "cup", 246000, 246000, a1352},
    {"liquid", "tbsp", 15400, 15400, a1352}};
constexpr sv a1354[] = {"fresh lime juice",
    "freshly squeezed lime juice",
    "fresh squeezed lime juice",
    "juice of a lime",
    "juice of lime"};
constexpr citation a1355[] = {{"usda-sr-27", "09160", ""}};
constexpr measure_weight a1356[] = {{"liquid", "cup", 242000, 242000, a1355}};
constexpr sv a1357[] = {"key lime juice",
    "bottled key lime juice",
    "fresh key lime juice"};
constexpr sv a1358[] = {"citric acid",
    "citric acid powder",
    "citric acid crystals",
    "powdered citric acid",
    "ácido cítrico"};
constexpr sv a1359[] = {"acidifier"};
constexpr sv a1360[] = {"ascorbic acid",
    "vitamin c",
    "vitamin c powder",
    "pure ascorbic acid",
    "ácido ascórbico"};
constexpr citation a1361[] = {{"nchfp-ascorbic-acid", "", ""}};
constexpr measure_weight a1362[] = {{"powder", "tsp", 3000, 3000, a1361}};
constexpr sv a1363[] = {"color keeper",
    "colour keeper",
    "fruit protector",
    "anti browning powder"};
constexpr sv a1364[] = {"cream of tartar",
    "tartaric acid",
    "potassium bitartrate",
    "crémor tártaro"};
constexpr citation a1365[] = {{"usda-sr-27", "18373", ""},
    {"usda-household-list", "18373", ""}};
constexpr measure_weight a1366[] = {{"powder", "tsp", 3000, 3000, a1365}};
constexpr sv a1367[] = {"baking soda",
    "bicarbonate of soda",
    "bicarb",
    "sodium bicarbonate",
    "bicarbonato de sodio"};
constexpr citation a1368[] = {{"usda-sr-27", "18372", ""},
    {"usda-household-list", "18372", ""}};
constexpr measure_weight a1369[] = {{"powder", "tsp", 4600, 4600, a1368}};
constexpr sv a1370[] = {"baking powder",
    "polvo de hornear"};
constexpr citation a1371[] = {{"usda-sr-27", "18369", ""},
    {"usda-household-list", "18369", ""}};
constexpr measure_weight a1372[] = {{"powder", "tsp", 4600, 4600, a1371}};
constexpr sv a1373[] = {"aspirin",
    "aspirins",
    "canning tablet",
    "canning tablets",
    "tomato canning tablet",
    "tomato canning tablets",
    "canning powder"};
constexpr sv a1374[] = {"water",
    "hot water",
    "boiling water",
    "tap water",
    "fresh water",
    "cold water",
    "distilled water",
    "agua"};
constexpr sv a1375[] = {"water",
    "liquid"};
constexpr citation a1376[] = {{"usda-sr-27", "14429", ""},
    {"usda-household-list", "14429", ""}};
constexpr measure_weight a1377[] = {{"liquid", "cup", 237000, 237000, a1376}};
constexpr sv a1378[] = {"ice",
    "ice cubes",
    "crushed ice",
    "ice water",
    "hielo"};
constexpr sv a1379[] = {"apple juice",
    "jugo de manzana",
    "zumo de manzana"};
constexpr sv a1380[] = {"liquid"};
constexpr citation a1381[] = {{"usda-sr-27", "09016", ""},
    {"usda-household-list", "09016", ""}};
constexpr measure_weight a1382[] = {{"liquid", "cup", 248000, 248000, a1381}};
constexpr sv a1383[] = {"apple cider",
    "sweet cider",
    "sweet apple cider",
    "fresh apple cider",
    "sidra dulce"};
constexpr sv a1384[] = {"crab apple juice",
    "crabapple juice"};
constexpr sv a1385[] = {"blackberry juice",
    "jugo de mora"};
constexpr citation a1386[] = {{"usda-sr-27", "09043", ""}};
constexpr measure_weight a1387[] = {{"liquid", "cup", 250000, 250000, a1386}};
constexpr sv a1388[] = {"cranberry juice",
    "unsweetened cranberry juice",
    "raspberry juice",
    "strawberry juice",
    "blueberry juice",
    "cherry juice",
    "berry juice",
    "mixed fruit juice"};
constexpr sv a1389[] = {"grape juice",
    "concord grape juice",
    "white grape juice",
    "jugo de uva"};
constexpr citation a1390[] = {{"usda-sr-27", "09135", ""},
    {"usda-household-list", "09135", ""}};
constexpr measure_weight a1391[] = {{"liquid", "cup", 253000, 253000, a1390}};
constexpr sv a1392[] = {"grapefruit juice",
    "jugo de toronja"};
constexpr citation a1393[] = {{"usda-sr-27", "09123", ""},
    {"usda-sr-27", "09128", ""},
    {"usda-household-list", "09123", ""},
    {"usda-household-list", "09128", ""}};
constexpr measure_weight a1394[] = {{"liquid", "cup", 247000, 247000, a1393}};
constexpr sv a1395[] = {"orange juice",
    "fresh orange juice",
    "jugo de naranja",
    "zumo de naranja"};
constexpr citation a1396[] = {{"usda-sr-27", "09206", ""},
    {"usda-sr-27", "09207", ""},
    {"usda-household-list", "09206", ""},
    {"usda-household-list", "09207", ""}};
constexpr measure_weight a1397[] = {{"liquid", "cup", 248000, 249000, a1396}};
constexpr sv a1398[] = {"pineapple juice",
    "canned pineapple juice",
    "unsweetened pineapple juice",
    "jugo de piña"};
constexpr citation a1399[] = {{"usda-sr-27", "09273", ""},
    {"usda-household-list", "09273", ""}};
constexpr measure_weight a1400[] = {{"liquid", "cup", 250000, 250000, a1399}};
constexpr sv a1401[] = {"plum juice",
    "jugo de ciruela"};
constexpr sv a1402[] = {"prune juice"};
constexpr citation a1403[] = {{"usda-sr-27", "09294", ""},
    {"usda-household-list", "09294", ""}};
constexpr measure_weight a1404[] = {{"liquid", "cup", 256000, 256000, a1403}};
constexpr sv a1405[] = {"pomegranate juice"};
constexpr citation a1406[] = {{"usda-sr-27", "09442", ""}};
constexpr measure_weight a1407[] = {{"liquid", "cup", 249000, 249000, a1406}};
constexpr sv a1408[] = {"fruit nectar",
    "peach nectar",
    "apricot nectar",
    "pear nectar",
    "fruit syrup",
    "syrup from canned fruit"};
constexpr sv a1409[] = {"carrot juice",
    "celery juice",
    "beet juice"};
constexpr citation a1410[] = {{"usda-sr-27", "11655", ""},
    {"usda-household-list", "11655", ""}};
constexpr measure_weight a1411[] = {{"liquid", "cup", 236000, 236000, a1410}};
constexpr sv a1412[] = {"vegetable juice",
    "tomato vegetable juice",
    "vegetable juice cocktail"};
constexpr citation a1413[] = {{"usda-sr-27", "11578", ""},
    {"usda-household-list", "11578", ""}};
constexpr measure_weight a1414[] = {{"liquid", "cup", 242000, 253000, a1413}};
constexpr sv a1415[] = {"coconut water",
    "agua de coco"};
constexpr sv a1416[] = {"broth",
    "stock",
    "chicken broth",
    "chicken stock",
    "beef broth",
    "beef stock",
    "vegetable broth",
    "vegetable stock",
    "fish stock",
    "bone broth",
    "consommé",
    "consomme",
    "caldo"};
constexpr sv a1417[] = {"bouillon",
    "bouillon cube",
    "bouillon cubes",
    "stock cube",
    "stock cubes",
    "bouillon powder",
    "soup base",
    "soup mix",
    "onion soup mix"};
constexpr sv a1418[] = {"gravy",
    "cream soup",
    "cream of mushroom soup",
    "cream of chicken soup",
    "white sauce",
    "roux"};
constexpr sv a1419[] = {"thickener"};
constexpr sv a1420[] = {"whey",
    "sourdough starter",
    "fermentation starter"};
constexpr sv a1421[] = {"dairy",
    "liquid"};
constexpr sv a1422[] = {"coffee",
    "espresso",
    "brewed coffee",
    "café"};
constexpr sv a1423[] = {"tea",
    "brewed tea",
    "kombucha",
    "té"};
constexpr sv a1424[] = {"soda",
    "cola",
    "lemonade",
    "ginger ale",
    "soft drink",
    "refresco"};
constexpr sv a1425[] = {"wine",
    "red wine",
    "white wine",
    "cooking wine",
    "port",
    "sherry",
    "vermouth",
    "vino"};
constexpr sv a1426[] = {"alcohol",
    "liquid"};
constexpr sv a1427[] = {"beer",
    "ale",
    "lager",
    "stout",
    "hard cider",
    "cerveza"};
constexpr sv a1428[] = {"brandy",
    "rum",
    "whiskey",
    "whisky",
    "bourbon",
    "vodka",
    "tequila",
    "gin",
    "cognac",
    "liqueur",
    "orange liqueur",
    "amaretto",
    "kirsch",
    "ron"};
constexpr sv a1429[] = {"soy sauce",
    "soya sauce",
    "tamari",
    "shoyu",
    "salsa de soja"};
constexpr sv a1430[] = {"salt",
    "liquid"};
constexpr citation a1431[] = {{"usda-sr-27", "16123", ""},
    {"usda-household-list", "16123", ""}};
constexpr measure_weight a1432[] = {{"liquid", "cup", 255000, 255000, a1431},
    {"liquid", "tbsp", 16000, 16000, a1431},
    {"liquid", "tsp", 5300, 5300, a1431}};
constexpr sv a1433[] = {"fish sauce",
    "oyster sauce",
    "hoisin sauce"};
constexpr sv a1434[] = {"worcestershire sauce",
    "worcester sauce",
    "salsa inglesa"};
constexpr sv a1435[] = {"hot sauce",
    "hot pepper sauce",
    "pepper sauce",
    "chili sauce",
    "chile sauce",
    "sriracha",
    "salsa picante"};
constexpr sv a1436[] = {"barbecue sauce",
    "bbq sauce",
    "barbeque sauce",
    "steak sauce"};
constexpr sv a1437[] = {"salsa",
    "ready made salsa",
    "picante sauce",
    "taco sauce",
    "enchilada sauce"};
constexpr sv a1438[] = {"spaghetti sauce",
    "pasta sauce",
    "marinara",
    "marinara sauce",
    "pizza sauce"};
constexpr sv a1439[] = {"pesto",
    "basil pesto",
    "tahini"};
constexpr sv a1440[] = {"fat"};
constexpr sv a1441[] = {"miso",
    "miso paste"};
constexpr sv a1442[] = {"liquid smoke",
    "humo líquido"};
constexpr sv a1443[] = {"butter",
    "salted butter",
    "unsalted butter",
    "sweet butter",
    "melted butter",
    "mantequilla",
    "manteca de vaca"};
constexpr sv a1444[] = {"dairy",
    "fat"};
constexpr citation a1445[] = {{"usda-sr-27", "01001", ""},
    {"usda-household-list", "01001", ""}};
constexpr measure_weight a1446[] = {{"solid", "cup", 227000, 227000, a1445},
    {"solid", "tbsp", 14200, 14200, a1445}};
constexpr sv a1447[] = {"margarine",
    "oleo",
    "margarina"};
constexpr citation a1448[] = {{"usda-household-list", "04132", ""}};
constexpr measure_weight a1449[] = {{"solid", "tbsp", 14100, 14100, a1448}};
constexpr sv a1450[] = {"ghee",
    "clarified butter"};
constexpr sv a1451[] = {"cocoa butter",
    "cacao butter",
    "manteca de cacao"};
constexpr sv a1452[] = {"lard",
    "pork fat",
    "manteca de cerdo"};
constexpr citation a1453[] = {{"usda-sr-27", "04002", ""},
    {"usda-household-list", "04002", ""}};
constexpr measure_weight a1454[] = {{"solid", "cup", 205000, 205000, a1453},
    {"solid", "tbsp", 12800, 12800, a1453}};
constexpr sv a1455[] = {"shortening",
    "vegetable shortening",
    "solid vegetable fat"};
constexpr citation a1456[] = {{"usda-sr-27", "04031", ""},
    {"usda-household-list", "04031", ""}};
constexpr measure_weight a1457[] = {{"solid", "cup", 205000, 205000, a1456},
    {"solid", "tbsp", 12800, 12800, a1456}};
constexpr sv a1458[] = {"suet",
    "beef suet",
    "sebo"};
constexpr sv a1459[] = {"bacon fat",
    "bacon grease",
    "bacon drippings",
    "drippings",
    "chicken fat",
    "schmaltz"};
constexpr sv a1460[] = {"oil",
    "cooking oil",
    "aceite"};
constexpr sv a1461[] = {"olive oil",
    "extra virgin olive oil",
    "virgin olive oil",
    "aceite de oliva"};
constexpr citation a1462[] = {{"usda-sr-27", "04053", ""},
    {"usda-household-list", "04053", ""}};
constexpr measure_weight a1463[] = {{"liquid", "cup", 216000, 216000, a1462},
    {"liquid", "tbsp", 13500, 13500, a1462},
    {"liquid", "tsp", 4500, 4500, a1462}};
constexpr sv a1464[] = {"vegetable oil",
    "soybean oil",
    "rapeseed oil",
    "sunflower oil",
    "safflower oil",
    "aceite vegetal",
    "aceite de girasol"};
constexpr citation a1465[] = {{"usda-sr-27", "04034", ""},
    {"usda-sr-27", "04506", ""},
    {"usda-household-list", "04034", ""},
    {"usda-household-list", "04506", ""}};
constexpr measure_weight a1466[] = {{"liquid", "cup", 218000, 218000, a1465},
    {"liquid", "tbsp", 13600, 13600, a1465},
    {"liquid", "tsp", 4500, 4500, a1465}};
constexpr sv a1467[] = {"canola oil",
    "aceite de canola"};
constexpr citation a1468[] = {{"usda-sr-27", "04582", ""},
    {"usda-household-list", "04582", ""}};
constexpr measure_weight a1469[] = {{"liquid", "cup", 218000, 218000, a1468},
    {"liquid", "tbsp", 14000, 14000, a1468},
    {"liquid", "tsp", 4500, 4500, a1468}};
constexpr sv a1470[] = {"corn oil",
    "maize oil",
    "aceite de maíz"};
constexpr citation a1471[] = {{"usda-sr-27", "04518", ""},
    {"usda-household-list", "04518", ""}};
constexpr measure_weight a1472[] = {{"liquid", "cup", 218000, 218000, a1471},
    {"liquid", "tbsp", 13600, 13600, a1471},
    {"liquid", "tsp", 4500, 4500, a1471}};
constexpr sv a1473[] = {"salad oil",
    "aceite para ensalada"};
constexpr citation a1474[] = {{"usda-sr-27", "04034", ""},
    {"usda-sr-27", "04518", ""},
    {"usda-household-list", "04034", ""},
    {"usda-household-list", "04518", ""}};
constexpr measure_weight a1475[] = {{"liquid", "cup", 218000, 218000, a1474},
    {"liquid", "tbsp", 13600, 13600, a1474},
    {"liquid", "tsp", 4500, 4500, a1474}};
constexpr sv a1476[] = {"sesame oil",
    "toasted sesame oil",
    "peanut oil",
    "walnut oil",
    "avocado oil",
    "flavored oil"};
constexpr sv a1477[] = {"coconut oil",
    "palm oil"};
constexpr sv a1478[] = {"garlic oil",
    "garlic in oil",
    "infused oil",
    "herb oil"};
constexpr sv a1479[] = {"milk",
    "whole milk",
    "skim milk",
    "low fat milk",
    "fresh milk",
    "leche"};
constexpr citation a1480[] = {{"usda-sr-27", "01077", ""},
    {"usda-household-list", "01077", ""}};
constexpr measure_weight a1481[] = {{"liquid", "cup", 244000, 244000, a1480}};
constexpr sv a1482[] = {"dry milk",
    "powdered milk",
    "milk powder",
    "leche en polvo"};
constexpr sv a1483[] = {"dairy"};
constexpr sv a1484[] = {"evaporated milk",
    "leche evaporada"};
constexpr citation a1485[] = {{"usda-sr-27", "01096", ""},
    {"usda-household-list", "01096", ""}};
constexpr measure_weight a1486[] = {{"liquid", "cup", 252000, 252000, a1485}};
constexpr sv a1487[] = {"condensed milk",
    "sweetened condensed milk",
    "leche condensada"};
constexpr citation a1488[] = {{"usda-sr-27", "01095", ""},
    {"usda-household-list", "01095", ""}};
constexpr measure_weight a1489[] = {{"liquid", "cup", 306000, 306000, a1488}};
constexpr sv a1490[] = {"buttermilk",
    "suero de leche"};
constexpr citation a1491[] = {{"usda-sr-27", "01088", ""},
    {"usda-household-list", "01088", ""}};
constexpr measure_weight a1492[] = {{"liquid", "cup", 245000, 245000, a1491}};
constexpr sv a1493[] = {"coconut milk",
    "coconut cream",
    "cream of coconut",
    "leche de coco"};
constexpr sv a1494[] = {"fat",
    "liquid"};
constexpr sv a1495[] = {"plant milk",
    "soy milk",
    "soymilk",
    "soya milk",
    "almond milk",
    "oat milk",
    "rice milk"};
constexpr sv a1496[] = {"cream",
    "heavy cream",
    "whipping cream",
    "double cream",
    "single cream",
    "half and half",
    "light cream",
    "crema",
    "nata"};
constexpr sv a1497[] = {"dairy",
    "fat",
    "liquid"};
constexpr citation a1498[] = {{"usda-sr-27", "01050", ""},
    {"usda-sr-27", "01053", ""}};
constexpr measure_weight a1499[] = {{"liquid", "cup", 238000, 240000, a1498}};
constexpr sv a1500[] = {"sour cream",
    "soured cream",
    "crème fraîche",
    "creme fraiche",
    "crema agria"};
constexpr citation a1501[] = {{"usda-sr-27", "01056", ""}};
constexpr measure_weight a1502[] = {{"smooth", "cup", 230000, 230000, a1501}};
constexpr sv a1503[] = {"yogurt",
    "yoghurt",
    "greek yogurt",
    "plain yogurt",
    "kefir",
    "yogur"};
constexpr citation a1504[] = {{"usda-sr-27", "01116", ""}};
constexpr measure_weight a1505[] = {{"smooth", "cup", 245000, 245000, a1504}};
constexpr sv a1506[] = {"ice cream",
    "helado"};
constexpr sv a1507[] = {"cheese",
    "cheddar",
    "cheddar cheese",
    "mozzarella",
    "queso"};
constexpr citation a1508[] = {{"usda-sr-27", "01009", ""}};
constexpr measure_weight a1509[] = {{"shredded", "cup", 113000, 113000, a1508},
    {"diced", "cup", 132000, 132000, a1508}};
constexpr sv a1510[] = {"parmesan",
    "parmesan cheese",
    "pecorino",
    "hard grating cheese"};
constexpr citation a1511[] = {{"usda-sr-27", "01032", ""},
    {"usda-household-list", "01032", ""}};
constexpr measure_weight a1512[] = {{"grated", "cup", 100000, 100000, a1511},
    {"grated", "tbsp", 5000, 5000, a1511}};
constexpr sv a1513[] = {"cottage cheese",
    "ricotta",
    "paneer",
    "requesón"};
constexpr sv a1514[] = {"cream cheese",
    "queso crema"};
constexpr citation a1515[] = {{"usda-sr-27", "01017", ""},
    {"usda-household-list", "01017", ""}};
constexpr measure_weight a1516[] = {{"smooth", "cup", 232000, 232000, a1515},
    {"smooth", "tbsp", 14500, 14500, a1515}};
constexpr sv a1517[] = {"egg",
    "eggs",
    "whole egg",
    "whole eggs",
    "hard boiled egg",
    "hard boiled eggs",
    "huevo",
    "huevos"};
constexpr sv a1518[] = {"egg"};
constexpr citation a1519[] = {{"usda-sr-27", "01123", ""},
    {"usda-household-list", "01123", ""}};
constexpr measure_weight a1520[] = {{"large", "piece", 50000, 50000, a1519},
    {"medium", "piece", 44000, 44000, a1519}};
constexpr sv a1521[] = {"egg white",
    "egg whites",
    "clara de huevo",
    "claras de huevo"};
constexpr citation a1522[] = {{"usda-sr-27", "01124", ""},
    {"usda-household-list", "01124", ""}};
constexpr measure_weight a1523[] = {{"large", "piece", 33000, 33400, a1522}};
constexpr sv a1524[] = {"egg yolk",
    "egg yolks",
    "yema de huevo",
    "yemas de huevo"};
constexpr citation a1525[] = {{"usda-sr-27", "01125", ""},
    {"usda-household-list", "01125", ""}};
constexpr measure_weight a1526[] = {{"large", "piece", 16600, 17000, a1525}};
constexpr sv a1527[] = {"mayonnaise",
    "mayo",
    "salad dressing",
    "ranch dressing",
    "mayonesa"};
constexpr sv a1528[] = {"egg",
    "fat"};
constexpr sv a1529[] = {"chocolate",
    "dark chocolate",
    "chocolate chips",
    "milk chocolate"};
constexpr sv a1530[] = {"cocoa",
    "cocoa powder",
    "cacao powder",
    "unsweetened cocoa",
    "cacao en polvo"};
constexpr sv a1531[] = {"apple",
    "apples",
    "eating apple",
    "eating apples",
    "cooking apple",
    "cooking apples",
    "fresh apple",
    "fresh apples",
    "manzana",
    "manzanas"};
constexpr citation a1532[] = {{"usda-sr-27", "09003", ""}};
constexpr citation a1533[] = {{"usda-sr-27", "09003", ""},
    {"usda-sr-27", "09004", ""},
    {"usda-household-list", "09004", ""}};
constexpr citation a1534[] = {{"usda-sr-27", "09003", ""},
    {"usda-sr-27", "09004", ""}};
constexpr citation a1535[] = {{"usda-sr-27", "09003", ""},
    {"usda-sr-27", "09004", ""},
    {"usda-household-list", "09003", ""}};
constexpr measure_weight a1536[] = {{"chopped", "cup", 125000, 125000, a1532},
    {"sliced", "cup", 109000, 110000, a1533},
    {"large", "piece", 216000, 223000, a1534},
    {"medium", "piece", 138000, 182000, a1535},
    {"small", "piece", 132000, 149000, a1534}};
constexpr sv a1537[] = {"tart apple",
    "tart apples",
    "firm tart apples",
    "granny smith",
    "granny smiths",
    "granny smith apple",
    "granny smith apples",
    "bramley",
    "bramley apple",
    "bramley apples",
    "manzana verde",
    "manzanas verdes"};
constexpr citation a1538[] = {{"usda-sr-27", "09502", ""}};
constexpr measure_weight a1539[] = {{"sliced", "cup", 109000, 109000, a1538},
    {"large", "piece", 206000, 206000, a1538},
    {"medium", "piece", 167000, 167000, a1538},
    {"small", "piece", 144000, 144000, a1538}};
constexpr sv a1540[] = {"crab apple",
    "crab apples",
    "crabapple",
    "crabapples"};
constexpr citation a1541[] = {{"usda-sr-27", "09077", ""}};
constexpr measure_weight a1542[] = {{"sliced", "cup", 110000, 110000, a1541}};
constexpr sv a1543[] = {"applesauce",
    "apple sauce",
    "apple puree"};
constexpr citation a1544[] = {{"usda-sr-27", "09019", ""},
    {"usda-household-list", "09019", ""}};
constexpr measure_weight a1545[] = {{"smooth", "cup", 244000, 244000, a1544}};
constexpr sv a1546[] = {"apple butter"};
constexpr sv a1547[] = {"apricot",
    "apricots",
    "fresh apricots",
    "albaricoque",
    "albaricoques",
    "chabacano",
    "chabacanos",
    "damasco",
    "damascos"};
constexpr citation a1548[] = {{"usda-sr-27", "09021", ""}};
constexpr citation a1549[] = {{"usda-sr-27", "09021", ""},
    {"usda-household-list", "09021", ""}};
constexpr measure_weight a1550[] = {{"halves", "cup", 155000, 155000, a1548},
    {"sliced", "cup", 165000, 165000, a1548},
    {"whole", "piece", 35000, 35000, a1549}};
constexpr sv a1551[] = {"dried apricot",
    "dried apricots"};
constexpr citation a1552[] = {{"usda-sr-27", "09032", ""}};
constexpr measure_weight a1553[] = {{"halves", "cup", 130000, 130000, a1552}};
constexpr sv a1554[] = {"banana",
    "bananas",
    "plantain",
    "plantains",
    "plátano",
    "plátanos"};
constexpr citation a1555[] = {{"usda-sr-27", "09040", ""},
    {"usda-household-list", "09040", ""}};
constexpr citation a1556[] = {{"usda-sr-27", "09040", ""}};
constexpr measure_weight a1557[] = {{"sliced", "cup", 150000, 150000, a1555},
    {"mashed", "cup", 225000, 225000, a1556},
    {"medium", "piece", 118000, 118000, a1555}};
constexpr sv a1558[] = {"berry",
    "berries",
    "mixed berries",
    "baya",
    "bayas",
    "frutos rojos"};
constexpr sv a1559[] = {"blackberry",
    "blackberries",
    "mora",
    "moras",
    "zarzamora",
    "zarzamoras"};
constexpr citation a1560[] = {{"usda-sr-27", "09042", ""},
    {"usda-household-list", "09042", ""}};
constexpr measure_weight a1561[] = {{"whole", "cup", 144000, 144000, a1560}};
constexpr sv a1562[] = {"boysenberry",
    "boysenberries"};
constexpr citation a1563[] = {{"usda-sr-27", "09057", ""}};
constexpr measure_weight a1564[] = {{"frozen", "cup", 132000, 132000, a1563}};
constexpr sv a1565[] = {"dewberry",
    "dewberries"};
constexpr sv a1566[] = {"gooseberry",
    "gooseberries",
    "grosella espinosa"};
constexpr citation a1567[] = {{"usda-sr-27", "09107", ""}};
constexpr measure_weight a1568[] = {{"whole", "cup", 150000, 150000, a1567}};
constexpr sv a1569[] = {"loganberry",
    "loganberries"};
constexpr citation a1570[] = {{"usda-sr-27", "09167", ""}};
constexpr measure_weight a1571[] = {{"frozen", "cup", 147000, 147000, a1570}};
constexpr sv a1572[] = {"raspberry",
    "raspberries",
    "red raspberries",
    "black raspberries",
    "frambuesa",
    "frambuesas"};
constexpr citation a1573[] = {{"usda-sr-27", "09302", ""},
    {"usda-household-list", "09302", ""}};
constexpr measure_weight a1574[] = {{"whole", "cup", 123000, 123000, a1573}};
constexpr sv a1575[] = {"strawberry",
    "strawberries",
    "fresh strawberries",
    "fresa",
    "fresas",
    "frutilla",
    "frutillas"};
constexpr citation a1576[] = {{"usda-sr-27", "09316", ""}};
constexpr citation a1577[] = {{"usda-sr-27", "09316", ""},
    {"usda-household-list", "09316", ""}};
constexpr measure_weight a1578[] = {{"whole", "cup", 144000, 144000, a1576},
    {"halves", "cup", 152000, 152000, a1576},
    {"sliced", "cup", 166000, 166000, a1577},
    {"smooth", "cup", 232000, 232000, a1576},
    {"large", "piece", 18000, 18000, a1577},
    {"medium", "piece", 12000, 12000, a1577},
    {"small", "piece", 7000, 7000, a1576}};
constexpr sv a1579[] = {"blueberry",
    "blueberries",
    "bilberry",
    "bilberries",
    "huckleberry",
    "huckleberries",
    "arándano azul",
    "arándanos azules"};
constexpr citation a1580[] = {{"usda-sr-27", "09050", ""},
    {"usda-household-list", "09050", ""}};
constexpr measure_weight a1581[] = {{"whole", "cup", 145000, 148000, a1580}};
constexpr sv a1582[] = {"cranberry",
    "cranberries",
    "fresh cranberries",
    "arándano rojo",
    "arándanos rojos"};
constexpr citation a1583[] = {{"usda-sr-27", "09078", ""}};
constexpr measure_weight a1584[] = {{"chopped", "cup", 110000, 110000, a1583},
    {"whole", "cup", 100000, 100000, a1583}};
constexpr sv a1585[] = {"dried cranberry",
    "dried cranberries",
    "sweetened dried cranberries"};
constexpr sv a1586[] = {"red currant",
    "red currants",
    "redcurrant",
    "redcurrants",
    "black currant",
    "black currants",
    "blackcurrant",
    "blackcurrants",
    "fresh currants",
    "grosella",
    "grosellas"};
constexpr citation a1587[] = {{"usda-sr-27", "09083", ""},
    {"usda-sr-27", "09084", ""}};
constexpr measure_weight a1588[] = {{"whole", "cup", 112000, 112000, a1587}};
constexpr sv a1589[] = {"elderberry",
    "elderberries",
    "elderberry juice",
    "saúco",
    "bayas de saúco"};
constexpr citation a1590[] = {{"usda-sr-27", "09088", ""}};
constexpr measure_weight a1591[] = {{"whole", "cup", 145000, 145000, a1590}};
constexpr sv a1592[] = {"mulberry",
    "mulberries"};
constexpr citation a1593[] = {{"usda-sr-27", "09190", ""}};
constexpr measure_weight a1594[] = {{"whole", "cup", 140000, 140000, a1593}};
constexpr sv a1595[] = {"cantaloupe",
    "cantaloupes",
    "cantaloupe melon",
    "muskmelon",
    "muskmelons",
    "rockmelon",
    "rock melon"};
constexpr citation a1596[] = {{"usda-sr-27", "09181", ""},
    {"usda-household-list", "09181", ""}};
constexpr citation a1597[] = {{"usda-sr-27", "09181", ""}};
constexpr measure_weight a1598[] = {{"cubed", "cup", 160000, 160000, a1596},
    {"diced", "cup", 156000, 156000, a1597},
    {"balls", "cup", 177000, 177000, a1597},
    {"large", "piece", 814000, 814000, a1597},
    {"medium", "piece", 552000, 552000, a1597},
    {"small", "piece", 441000, 441000, a1597}};
constexpr sv a1599[] = {"melon",
    "melons",
    "honeydew",
    "honeydew melon",
    "casaba",
    "melón",
    "melones"};
constexpr citation a1600[] = {{"usda-sr-27", "09183", ""},
    {"usda-sr-27", "09184", ""},
    {"usda-household-list", "09184", ""}};
constexpr measure_weight a1601[] = {{"diced", "cup", 170000, 170000, a1600}};
constexpr sv a1602[] = {"watermelon",
    "watermelons",
    "sandía",
    "sandías"};
constexpr citation a1603[] = {{"usda-sr-27", "09326", ""},
    {"usda-household-list", "09326", ""}};
constexpr measure_weight a1604[] = {{"diced", "cup", 152000, 152000, a1603}};
constexpr sv a1605[] = {"watermelon rind",
    "watermelon rinds"};
constexpr sv a1606[] = {"cherry",
    "cherries",
    "fresh cherries",
    "cereza",
    "cerezas"};
constexpr citation a1607[] = {{"usda-sr-27", "09063", ""},
    {"usda-sr-27", "09070", ""}};
constexpr citation a1608[] = {{"usda-sr-27", "09070", ""},
    {"usda-household-list", "09070", ""}};
constexpr measure_weight a1609[] = {{"pitted", "cup", 154000, 155000, a1607},
    {"whole", "piece", 6800, 8200, a1608}};
constexpr sv a1610[] = {"sweet cherry",
    "sweet cherries",
    "bing cherries",
    "black cherries"};
constexpr citation a1611[] = {{"usda-sr-27", "09070", ""}};
constexpr measure_weight a1612[] = {{"pitted", "cup", 154000, 154000, a1611},
    {"whole", "piece", 6800, 8200, a1608}};
constexpr sv a1613[] = {"sour cherry",
    "sour cherries",
    "tart cherry",
    "tart cherries",
    "pie cherries",
    "morello cherries",
    "guinda",
    "guindas"};
constexpr citation a1614[] = {{"usda-sr-27", "09063", ""}};
constexpr measure_weight a1615[] = {{"pitted", "cup", 155000, 155000, a1614}};
constexpr sv a1616[] = {"maraschino cherry",
    "maraschino cherries",
    "cocktail cherries",
    "cereza al marrasquino"};
constexpr citation a1617[] = {{"usda-sr-27", "09328", ""}};
constexpr measure_weight a1618[] = {{"whole", "piece", 5000, 5000, a1617}};
constexpr sv a1619[] = {"dried cherry",
    "dried cherries"};
constexpr sv a1620[] = {"citron",
    "citrons",
    "candied citron",
    "citron peel",
    "cidra"};
constexpr sv a1621[] = {"coconut",
    "coconuts",
    "coconut meat",
    "shredded coconut",
    "flaked coconut",
    "desiccated coconut",
    "coco"};
constexpr sv a1622[] = {"date",
    "dates",
    "pitted dates",
    "dátil",
    "dátiles"};
constexpr citation a1623[] = {{"usda-sr-27", "09087", ""}};
constexpr measure_weight a1624[] = {{"chopped", "cup", 147000, 147000, a1623}};
constexpr sv a1625[] = {"fig",
    "figs",
    "fresh figs",
    "higo",
    "higos"};
constexpr citation a1626[] = {{"usda-sr-27", "09089", ""}};
constexpr measure_weight a1627[] = {{"large", "piece", 64000, 64000, a1626},
    {"medium", "piece", 50000, 50000, a1626},
    {"small", "piece", 40000, 40000, a1626}};
constexpr sv a1628[] = {"dried fig",
    "dried figs"};
constexpr citation a1629[] = {{"usda-sr-27", "09094", ""}};
constexpr measure_weight a1630[] = {{"whole", "cup", 149000, 149000, a1629},
    {"whole", "piece", 8400, 8400, a1629}};
constexpr sv a1631[] = {"grape",
    "grapes",
    "seedless grapes",
    "green grapes",
    "red grapes",
    "concord grape",
    "concord grapes",
    "uva",
    "uvas"};
constexpr citation a1632[] = {{"usda-sr-27", "09132", ""},
    {"usda-household-list", "09132", ""}};
constexpr measure_weight a1633[] = {{"whole", "cup", 151000, 160000, a1632}};
constexpr sv a1634[] = {"grapefruit",
    "grapefruits",
    "grapefruit sections",
    "pomelo",
    "pomelos",
    "toronja",
    "toronjas"};
constexpr citation a1635[] = {{"usda-sr-27", "09111", ""}};
constexpr measure_weight a1636[] = {{"sections", "cup", 230000, 230000, a1635}};
constexpr sv a1637[] = {"guava",
    "guavas",
    "guayaba",
    "guayabas"};
constexpr citation a1638[] = {{"usda-sr-27", "09139", ""}};
constexpr measure_weight a1639[] = {{"raw", "cup", 165000, 165000, a1638}};
constexpr sv a1640[] = {"kiwi",
    "kiwis",
    "kiwifruit",
    "kiwi fruit"};
constexpr citation a1641[] = {{"usda-sr-27", "09148", ""}};
constexpr measure_weight a1642[] = {{"sliced", "cup", 180000, 180000, a1641}};
constexpr sv a1643[] = {"lemon",
    "lemons",
    "fresh lemon",
    "fresh lemons",
    "lemon slice",
    "lemon slices",
    "meyer lemon",
    "meyer lemons"};
constexpr sv a1644[] = {"not-bottled"};
constexpr citation a1645[] = {{"usda-sr-27", "09150", ""},
    {"usda-household-list", "09150", ""}};
constexpr measure_weight a1646[] = {{"peeled", "piece", 58000, 58000, a1645}};
constexpr sv a1647[] = {"lemon peel",
    "lemon rind",
    "lemon zest",
    "candied lemon peel"};
constexpr citation a1648[] = {{"usda-sr-27", "09156", ""}};
constexpr measure_weight a1649[] = {{"grated", "tbsp", 6000, 6000, a1648},
    {"grated", "tsp", 2000, 2000, a1648}};
constexpr sv a1650[] = {"lime",
    "limes",
    "fresh lime",
    "fresh limes",
    "persian lime",
    "lime slices",
    "lima ácida"};
constexpr citation a1651[] = {{"usda-sr-27", "09159", ""}};
constexpr measure_weight a1652[] = {{"whole", "piece", 67000, 67000, a1651}};
constexpr sv a1653[] = {"lime peel",
    "lime rind",
    "lime zest"};
constexpr sv a1654[] = {"key lime",
    "key limes"};
constexpr sv a1655[] = {"orange",
    "oranges",
    "orange sections",
    "orange slices",
    "mandarin",
    "mandarins",
    "mandarin orange",
    "mandarin oranges",
    "tangerine",
    "tangerines",
    "clementine",
    "clementines",
    "naranja",
    "naranjas"};
constexpr citation a1656[] = {{"usda-sr-27", "09200", ""},
    {"usda-sr-27", "09218", ""},
    {"usda-household-list", "09200", ""}};
constexpr citation a1657[] = {{"usda-sr-27", "09200", ""},
    {"usda-household-list", "09200", ""}};
constexpr measure_weight a1658[] = {{"sections", "cup", 180000, 195000, a1656},
    {"medium", "piece", 131000, 131000, a1657}};
constexpr sv a1659[] = {"orange peel",
    "orange rind",
    "orange zest",
    "candied orange peel",
    "piel de naranja",
    "cáscara de naranja"};
constexpr citation a1660[] = {{"usda-sr-27", "09216", ""}};
constexpr measure_weight a1661[] = {{"grated", "tbsp", 6000, 6000, a1660},
    {"grated", "tsp", 2000, 2000, a1660}};
constexpr sv a1662[] = {"mango",
    "mangos",
    "mangoes",
    "ripe mango",
    "ripe mangoes",
    "manga"};
constexpr citation a1663[] = {{"usda-sr-27", "09176", ""},
    {"usda-household-list", "09176", ""}};
constexpr measure_weight a1664[] = {{"cubed", "cup", 165000, 165000, a1663},
    {"whole", "piece", 207000, 336000, a1663}};
constexpr sv a1665[] = {"green mango",
    "green mangos",
    "green mangoes",
    "unripe mango",
    "unripe mangos",
    "unripe mangoes",
    "mango verde",
    "mangos verdes"};
constexpr sv a1666[] = {"mango puree",
    "mango purée",
    "mango pulp",
    "pulpa de mango"};
constexpr sv a1667[] = {"nectarine",
    "nectarines",
    "yellow nectarines",
    "nectarina",
    "nectarinas"};
constexpr citation a1668[] = {{"usda-sr-27", "09191", ""}};
constexpr citation a1669[] = {{"usda-sr-27", "09191", ""},
    {"usda-household-list", "09191", ""}};
constexpr measure_weight a1670[] = {{"sliced", "cup", 143000, 143000, a1668},
    {"large", "piece", 156000, 156000, a1668},
    {"medium", "piece", 136000, 142000, a1669},
    {"small", "piece", 129000, 129000, a1668}};
constexpr sv a1671[] = {"white nectarine",
    "white nectarines",
    "white flesh nectarine",
    "white flesh nectarines"};
constexpr sv a1672[] = {"papaya",
    "papayas",
    "pawpaw",
    "pawpaws",
    "lechosa"};
constexpr citation a1673[] = {{"usda-sr-27", "09226", ""},
    {"usda-household-list", "09226", ""}};
constexpr measure_weight a1674[] = {{"cubed", "cup", 140000, 145000, a1673}};
constexpr sv a1675[] = {"passion fruit",
    "passion fruits",
    "maracuyá"};
constexpr sv a1676[] = {"peach",
    "peaches",
    "yellow peach",
    "yellow peaches",
    "yellow flesh peaches",
    "fresh peach",
    "fresh peaches",
    "durazno",
    "duraznos",
    "melocotón",
    "melocotones"};
constexpr citation a1677[] = {{"usda-sr-27", "09236", ""},
    {"usda-household-list", "09236", ""}};
constexpr citation a1678[] = {{"usda-sr-27", "09236", ""}};
constexpr measure_weight a1679[] = {{"sliced", "cup", 154000, 170000, a1677},
    {"large", "piece", 175000, 175000, a1678},
    {"medium", "piece", 98000, 150000, a1677},
    {"small", "piece", 130000, 130000, a1678}};
constexpr sv a1680[] = {"white peach",
    "white peaches",
    "white flesh peach",
    "white flesh peaches",
    "white fleshed peaches",
    "durazno blanco",
    "melocotón blanco"};
constexpr sv a1681[] = {"canned peach",
    "canned peaches",
    "tinned peaches"};
constexpr sv a1682[] = {"pear",
    "pears",
    "fresh pear",
    "fresh pears",
    "bartlett pear",
    "bartlett pears",
    "bosc pears",
    "anjou pears",
    "pera",
    "peras"};
constexpr citation a1683[] = {{"usda-sr-27", "09252", ""}};
constexpr citation a1684[] = {{"usda-sr-27", "09252", ""},
    {"usda-household-list", "09252", ""}};
constexpr measure_weight a1685[] = {{"cubed", "cup", 161000, 161000, a1683},
    {"sliced", "cup", 140000, 140000, a1683},
    {"large", "piece", 230000, 230000, a1683},
    {"medium", "piece", 166000, 178000, a1684},
    {"small", "piece", 148000, 148000, a1683}};
constexpr sv a1686[] = {"seckel pear",
    "seckel pears"};
constexpr sv a1687[] = {"asian pear",
    "asian pears",
    "nashi",
    "nashi pear",
    "nashi pears",
    "apple pear",
    "apple pears",
    "pera asiática"};
constexpr citation a1688[] = {{"usda-sr-27", "09340", ""},
    {"usda-household-list", "09340", ""}};
constexpr measure_weight a1689[] = {{"large", "piece", 275000, 275000, a1688},
    {"small", "piece", 122000, 122000, a1688}};
constexpr sv a1690[] = {"persimmon",
    "persimmons",
    "sharon fruit",
    "caqui",
    "caquis"};
constexpr citation a1691[] = {{"usda-sr-27", "09263", ""}};
constexpr measure_weight a1692[] = {{"whole", "piece", 168000, 168000, a1691}};
constexpr sv a1693[] = {"pineapple",
    "pineapples",
    "fresh pineapple",
    "crushed pineapple",
    "pineapple chunks",
    "piña",
    "piñas",
    "ananá",
    "ananás"};
constexpr citation a1694[] = {{"usda-sr-27", "09266", ""},
    {"usda-household-list", "09266", ""}};
constexpr citation a1695[] = {{"usda-sr-27", "09354", ""}};
constexpr measure_weight a1696[] = {{"chunks", "cup", 155000, 165000, a1694},
    {"crushed", "cup", 195000, 195000, a1695}};
constexpr sv a1697[] = {"canned pineapple",
    "tinned pineapple",
    "canned crushed pineapple",
    "canned pineapple chunks"};
constexpr citation a1698[] = {{"usda-sr-27", "09268", ""},
    {"usda-household-list", "09268", ""}};
constexpr measure_weight a1699[] = {{"chunks", "cup", 181000, 181000, a1695},
    {"crushed", "cup", 195000, 195000, a1695},
    {"sliced", "cup", 162000, 162000, a1695},
    {"undrained", "cup", 249000, 249000, a1698}};
constexpr sv a1700[] = {"plum",
    "plums",
    "fresh plums",
    "damson",
    "damsons",
    "greengage",
    "greengages",
    "italian prune plums",
    "prune plums",
    "ciruela",
    "ciruelas"};
constexpr citation a1701[] = {{"usda-sr-27", "09279", ""}};
constexpr citation a1702[] = {{"usda-sr-27", "09279", ""},
    {"usda-household-list", "09279", ""}};
constexpr measure_weight a1703[] = {{"sliced", "cup", 165000, 165000, a1701},
    {"whole", "piece", 66000, 66000, a1702}};
constexpr sv a1704[] = {"prune",
    "prunes",
    "dried plum",
    "dried plums",
    "ciruela pasa",
    "ciruelas pasas"};
constexpr citation a1705[] = {{"usda-sr-27", "09291", ""}};
constexpr measure_weight a1706[] = {{"pitted", "cup", 174000, 174000, a1705}};
constexpr sv a1707[] = {"pomegranate",
    "pomegranates",
    "pomegranate seeds",
    "pomegranate arils",
    "granada",
    "granadas"};
constexpr citation a1708[] = {{"usda-sr-27", "09286", ""}};
constexpr measure_weight a1709[] = {{"arils", "cup", 174000, 174000, a1708}};
constexpr sv a1710[] = {"quince",
    "quinces",
    "membrillo",
    "membrillos"};
constexpr citation a1711[] = {{"usda-sr-27", "09296", ""}};
constexpr measure_weight a1712[] = {{"whole", "piece", 92000, 92000, a1711}};
constexpr sv a1713[] = {"raisin",
    "raisins",
    "dark raisins",
    "seedless raisins",
    "pasa",
    "pasas",
    "uva pasa",
    "uvas pasas"};
constexpr citation a1714[] = {{"usda-sr-27", "09298", ""}};
constexpr citation a1715[] = {{"usda-sr-27", "09298", ""},
    {"usda-household-list", "09298", ""}};
constexpr measure_weight a1716[] = {{"packed", "cup", 165000, 165000, a1714},
    {"not-packed", "cup", 145000, 145000, a1715}};
constexpr sv a1717[] = {"golden raisin",
    "golden raisins",
    "white raisin",
    "white raisins",
    "sultana",
    "sultanas",
    "pasas rubias"};
constexpr citation a1718[] = {{"usda-sr-27", "09297", ""}};
constexpr measure_weight a1719[] = {{"packed", "cup", 165000, 165000, a1718},
    {"not-packed", "cup", 145000, 145000, a1718}};
constexpr sv a1720[] = {"dried currant",
    "dried currants",
    "zante currant",
    "zante currants"};
constexpr citation a1721[] = {{"usda-sr-27", "09085", ""}};
constexpr measure_weight a1722[] = {{"not-packed", "cup", 144000, 144000, a1721}};
constexpr sv a1723[] = {"rhubarb",
    "rhubarb stalk",
    "rhubarb stalks",
    "ruibarbo"};
constexpr citation a1724[] = {{"usda-sr-27", "09307", ""}};
constexpr measure_weight a1725[] = {{"diced", "cup", 122000, 122000, a1724}};
constexpr sv a1726[] = {"tamarind",
    "tamarinds",
    "tamarind paste",
    "tamarind pulp",
    "tamarindo"};
constexpr sv a1727[] = {"fruit whole pieces",
    "whole fruit pieces",
    "fruit pieces",
    "mixed fruit",
    "fruit",
    "fresh fruit",
    "fruta",
    "frutas"};
constexpr sv a1728[] = {"dried fruit",
    "dried fruits",
    "mixed dried fruit",
    "candied fruit",
    "frutas secas"};
constexpr sv a1729[] = {"jam",
    "jams",
    "fruit preserves",
    "marmalade",
    "mermelada"};
constexpr sv a1730[] = {"soft jelly",
    "soft jellies",
    "unset jelly",
    "runny jelly"};
constexpr sv a1731[] = {"jelly",
    "jellies",
    "jalea"};
constexpr sv a1732[] = {"frozen blueberry",
    "frozen blueberries",
    "thawed blueberries"};
constexpr sv a1733[] = {"frozen sour cherry",
    "frozen sour cherries",
    "frozen tart cherries",
    "thawed sour cherries"};
constexpr sv a1734[] = {"bean",
    "beans",
    "frijol",
    "frijoles",
    "poroto",
    "porotos",
    "alubia",
    "alubias",
    "judías"};
constexpr sv a1735[] = {"kidney bean",
    "kidney beans",
    "red kidney bean",
    "red kidney beans",
    "red bean",
    "red beans"};
constexpr sv a1736[] = {"black bean",
    "black beans",
    "frijoles negros",
    "caraota",
    "caraotas"};
constexpr sv a1737[] = {"pinto bean",
    "pinto beans",
    "frijol pinto",
    "frijoles pintos"};
constexpr sv a1738[] = {"white bean",
    "white beans",
    "navy bean",
    "navy beans",
    "great northern bean",
    "great northern beans",
    "cannellini",
    "cannellini beans",
    "haricot beans"};
constexpr sv a1739[] = {"garbanzo bean",
    "garbanzo beans",
    "garbanzo",
    "garbanzos",
    "chickpea",
    "chickpeas",
    "chick peas"};
constexpr sv a1740[] = {"butter bean",
    "butter beans"};
constexpr sv a1741[] = {"canned kidney bean",
    "canned kidney beans",
    "canned red kidney bean",
    "canned red kidney beans",
    "red kidney bean canned",
    "red kidney beans canned",
    "tinned kidney beans"};
constexpr citation a1742[] = {{"usda-sr-27", "16335", ""}};
constexpr citation a1743[] = {{"usda-sr-27", "16034", ""},
    {"usda-household-list", "16034", ""}};
constexpr measure_weight a1744[] = {{"drained", "cup", 158000, 158000, a1742},
    {"undrained", "cup", 256000, 256000, a1743}};
constexpr sv a1745[] = {"canned garbanzo bean",
    "canned garbanzo beans",
    "garbanzo bean canned",
    "garbanzo beans canned",
    "canned chickpeas",
    "tinned chickpeas",
    "garbanzos en lata"};
constexpr citation a1746[] = {{"usda-sr-27", "16359", ""}};
constexpr citation a1747[] = {{"usda-sr-27", "16058", ""},
    {"usda-household-list", "16058", ""}};
constexpr measure_weight a1748[] = {{"drained", "cup", 152000, 152000, a1746},
    {"undrained", "cup", 240000, 240000, a1747}};
constexpr sv a1749[] = {"canned black bean",
    "canned black beans",
    "tinned black beans"};
constexpr citation a1750[] = {{"usda-sr-27", "16018", ""}};
constexpr measure_weight a1751[] = {{"undrained", "cup", 240000, 240000, a1750}};
constexpr sv a1752[] = {"canned pinto bean",
    "canned pinto beans"};
constexpr citation a1753[] = {{"usda-sr-27", "16345", ""}};
constexpr citation a1754[] = {{"usda-sr-27", "16044", ""}};
constexpr measure_weight a1755[] = {{"drained", "cup", 169000, 169000, a1753},
    {"undrained", "cup", 240000, 240000, a1754}};
constexpr sv a1756[] = {"canned white bean",
    "canned white beans",
    "canned navy beans",
    "canned great northern beans",
    "tinned haricot beans"};
constexpr citation a1757[] = {{"usda-sr-27", "16026", ""},
    {"usda-sr-27", "16039", ""},
    {"usda-sr-27", "16051", ""},
    {"usda-household-list", "16051", ""}};
constexpr measure_weight a1758[] = {{"undrained", "cup", 262000, 262000, a1757}};
constexpr sv a1759[] = {"baked beans",
    "baked bean",
    "pork and beans"};
constexpr sv a1760[] = {"refried beans",
    "refried bean",
    "mashed beans",
    "bean puree",
    "frijoles refritos"};
constexpr sv a1761[] = {"low-acid-puree"};
constexpr citation a1762[] = {{"usda-sr-27", "16103", ""},
    {"usda-household-list", "16103", ""}};
constexpr measure_weight a1763[] = {{"smooth", "cup", 238000, 252000, a1762}};
constexpr sv a1764[] = {"hummus",
    "houmous",
    "bean dip"};
constexpr sv a1765[] = {"bean cooking liquid",
    "bean liquid",
    "liquid of the beans",
    "bean broth",
    "aquafaba"};
constexpr sv a1766[] = {"dried bean",
    "dried beans",
    "dry bean",
    "dry beans",
    "dried beans or peas",
    "frijoles secos"};
constexpr sv a1767[] = {"dried-legume"};
constexpr citation a1768[] = {{"usda-sr-27", "16014", ""},
    {"usda-sr-27", "16024", ""},
    {"usda-sr-27", "16032", ""},
    {"usda-sr-27", "16037", ""},
    {"usda-sr-27", "16042", ""}};
constexpr measure_weight a1769[] = {{"dry", "cup", 183000, 208000, a1768}};
constexpr sv a1770[] = {"dried pinto bean",
    "dried pinto beans",
    "dry pinto beans"};
constexpr citation a1771[] = {{"usda-sr-27", "16042", ""}};
constexpr measure_weight a1772[] = {{"dry", "cup", 193000, 193000, a1771}};
constexpr sv a1773[] = {"dried red kidney bean",
    "dried red kidney beans",
    "dry red kidney beans",
    "dried kidney bean",
    "dried kidney beans",
    "dry kidney beans"};
constexpr citation a1774[] = {{"usda-sr-27", "16027", ""},
    {"usda-sr-27", "16032", ""}};
constexpr measure_weight a1775[] = {{"dry", "cup", 184000, 184000, a1774}};
constexpr sv a1776[] = {"dried black bean",
    "dried black beans",
    "dry black beans"};
constexpr citation a1777[] = {{"usda-sr-27", "16014", ""}};
constexpr measure_weight a1778[] = {{"dry", "cup", 194000, 194000, a1777}};
constexpr sv a1779[] = {"dried navy bean",
    "dried navy beans",
    "dry navy beans",
    "dried haricot beans"};
constexpr citation a1780[] = {{"usda-sr-27", "16037", ""}};
constexpr measure_weight a1781[] = {{"dry", "cup", 208000, 208000, a1780}};
constexpr sv a1782[] = {"dried great northern bean",
    "dried great northern beans",
    "dry great northern beans",
    "dried white beans"};
constexpr citation a1783[] = {{"usda-sr-27", "16024", ""}};
constexpr measure_weight a1784[] = {{"dry", "cup", 183000, 183000, a1783}};
constexpr sv a1785[] = {"dried lima bean",
    "dried lima beans",
    "dry lima beans",
    "dried butter beans"};
constexpr citation a1786[] = {{"usda-sr-27", "16071", ""},
    {"usda-sr-27", "16074", ""}};
constexpr measure_weight a1787[] = {{"dry", "cup", 178000, 202000, a1786}};
constexpr sv a1788[] = {"dried garbanzo bean",
    "dried garbanzo beans",
    "dried chickpeas",
    "dry chickpeas",
    "garbanzos secos"};
constexpr citation a1789[] = {{"usda-sr-27", "16056", ""}};
constexpr measure_weight a1790[] = {{"dry", "cup", 200000, 200000, a1789}};
constexpr sv a1791[] = {"dried black eyed pea",
    "dried black eyed peas",
    "dry black eyed peas",
    "dried cowpeas"};
constexpr citation a1792[] = {{"usda-sr-27", "16062", ""}};
constexpr measure_weight a1793[] = {{"dry", "cup", 167000, 167000, a1792}};
constexpr sv a1794[] = {"split pea",
    "split peas",
    "dried pea",
    "dried peas",
    "dry peas",
    "yellow split peas",
    "green split peas"};
constexpr citation a1795[] = {{"usda-sr-27", "16085", ""}};
constexpr measure_weight a1796[] = {{"dry", "cup", 197000, 197000, a1795}};
constexpr sv a1797[] = {"lentil",
    "lentils",
    "red lentils",
    "dried lentils",
    "lenteja",
    "lentejas"};
constexpr citation a1798[] = {{"usda-sr-27", "16069", ""},
    {"usda-sr-27", "16144", ""}};
constexpr measure_weight a1799[] = {{"dry", "cup", 192000, 192000, a1798}};
constexpr sv a1800[] = {"soybean",
    "soybeans",
    "soya beans",
    "dried soybeans",
    "soja"};
constexpr citation a1801[] = {{"usda-sr-27", "16108", ""}};
constexpr measure_weight a1802[] = {{"dry", "cup", 186000, 186000, a1801}};
constexpr sv a1803[] = {"tofu",
    "bean curd",
    "tempeh"};
constexpr sv a1804[] = {"peanut",
    "peanuts",
    "groundnut",
    "groundnuts",
    "cacahuete",
    "cacahuetes",
    "maní"};
constexpr citation a1805[] = {{"usda-sr-27", "16087", ""}};
constexpr measure_weight a1806[] = {{"raw", "cup", 146000, 146000, a1805}};
constexpr sv a1807[] = {"peanut butter",
    "mantequilla de maní",
    "crema de cacahuete"};
constexpr citation a1808[] = {{"usda-sr-27", "16097", ""},
    {"usda-sr-27", "16098", ""}};
constexpr measure_weight a1809[] = {{"smooth", "cup", 258000, 258000, a1808}};
constexpr sv a1810[] = {"almond",
    "almonds",
    "almendra",
    "almendras"};
constexpr citation a1811[] = {{"usda-sr-27", "12061", ""}};
constexpr measure_weight a1812[] = {{"whole", "cup", 143000, 143000, a1811}};
constexpr sv a1813[] = {"walnut",
    "walnuts",
    "nuez de castilla"};
constexpr citation a1814[] = {{"usda-sr-27", "12155", ""}};
constexpr measure_weight a1815[] = {{"chopped", "cup", 117000, 117000, a1814}};
constexpr sv a1816[] = {"pecan",
    "pecans",
    "nuez pecana"};
constexpr citation a1817[] = {{"usda-sr-27", "12142", ""}};
constexpr measure_weight a1818[] = {{"chopped", "cup", 109000, 109000, a1817}};
constexpr sv a1819[] = {"nut",
    "nuts",
    "mixed nuts",
    "hazelnut",
    "hazelnuts",
    "cashew",
    "cashews",
    "pine nuts",
    "pistachios",
    "nueces"};
constexpr sv a1820[] = {"rice",
    "white rice",
    "long grain rice",
    "cooked rice",
    "arroz"};
constexpr sv a1821[] = {"grain-or-pasta"};
constexpr citation a1822[] = {{"usda-sr-27", "20044", ""},
    {"usda-household-list", "20044", ""}};
constexpr measure_weight a1823[] = {{"raw", "cup", 185000, 185000, a1822}};
constexpr sv a1824[] = {"brown rice",
    "arroz integral"};
constexpr citation a1825[] = {{"usda-sr-27", "20036", ""}};
constexpr measure_weight a1826[] = {{"raw", "cup", 185000, 185000, a1825}};
constexpr sv a1827[] = {"wild rice"};
constexpr sv a1828[] = {"barley",
    "pearl barley",
    "pearled barley",
    "cebada"};
constexpr citation a1829[] = {{"usda-sr-27", "20005", ""},
    {"usda-household-list", "20005", ""}};
constexpr measure_weight a1830[] = {{"raw", "cup", 200000, 200000, a1829}};
constexpr sv a1831[] = {"oats",
    "oat",
    "rolled oats",
    "oatmeal",
    "avena"};
constexpr sv a1832[] = {"quinoa",
    "quinua"};
constexpr citation a1833[] = {{"usda-sr-27", "20035", ""}};
constexpr measure_weight a1834[] = {{"raw", "cup", 170000, 170000, a1833}};
constexpr sv a1835[] = {"bulgur",
    "bulgur wheat",
    "couscous",
    "cracked wheat"};
constexpr citation a1836[] = {{"usda-sr-27", "20012", ""},
    {"usda-sr-27", "20028", ""},
    {"usda-household-list", "20012", ""},
    {"usda-household-list", "20028", ""}};
constexpr measure_weight a1837[] = {{"raw", "cup", 140000, 173000, a1836}};
constexpr sv a1838[] = {"wheat berries",
    "wheat",
    "farro",
    "spelt",
    "trigo"};
constexpr sv a1839[] = {"hominy",
    "pozole corn",
    "maíz pozolero",
    "mote"};
constexpr citation a1840[] = {{"usda-sr-27", "20030", ""}};
constexpr measure_weight a1841[] = {{"canned", "cup", 165000, 165000, a1840}};
constexpr sv a1842[] = {"pasta",
    "macaroni",
    "spaghetti",
    "penne",
    "elbow macaroni",
    "small pasta",
    "orzo",
    "vermicelli",
    "fideo",
    "fideos"};
constexpr citation a1843[] = {{"usda-sr-27", "20099", ""}};
constexpr measure_weight a1844[] = {{"elbows", "cup", 105000, 105000, a1843}};
constexpr sv a1845[] = {"noodle",
    "noodles",
    "egg noodles",
    "rice noodles",
    "ramen",
    "tallarines"};
constexpr sv a1846[] = {"dumpling",
    "dumplings",
    "gnocchi"};
constexpr sv a1847[] = {"bread",
    "breadcrumbs",
    "bread crumbs",
    "crackers",
    "cracker crumbs",
    "pan",
    "pan rallado"};
constexpr sv a1848[] = {"grain-or-pasta",
    "thickener"};
constexpr sv a1849[] = {"tortilla",
    "tortillas",
    "tortilla chips"};
constexpr sv a1850[] = {"meat",
    "stew meat",
    "carne"};
constexpr sv a1851[] = {"meat"};
constexpr sv a1852[] = {"beef",
    "stewing beef",
    "beef cubes",
    "beef chunks",
    "carne de res",
    "carne de vaca"};
constexpr sv a1853[] = {"ground beef",
    "minced beef",
    "beef mince",
    "mince",
    "hamburger",
    "hamburger meat",
    "ground chuck",
    "carne molida",
    "carne picada"};
constexpr sv a1854[] = {"veal",
    "ternera"};
constexpr sv a1855[] = {"lamb",
    "mutton",
    "cordero"};
constexpr sv a1856[] = {"goat",
    "goat meat",
    "cabrito"};
constexpr sv a1857[] = {"venison",
    "deer",
    "deer meat",
    "elk",
    "moose",
    "game",
    "venado"};
constexpr sv a1858[] = {"ground venison",
    "minced venison",
    "venison mince",
    "ground deer",
    "ground deer meat"};
constexpr sv a1859[] = {"bear",
    "bear meat"};
constexpr sv a1860[] = {"pork",
    "pork cubes",
    "pork shoulder",
    "pork loin",
    "fresh pork",
    "carne de cerdo",
    "cerdo",
    "puerco"};
constexpr sv a1861[] = {"ground pork",
    "minced pork",
    "pork mince"};
constexpr sv a1862[] = {"salt pork",
    "fatback",
    "tocino salado"};
constexpr sv a1863[] = {"meat",
    "cured-meat"};
constexpr sv a1864[] = {"ham",
    "hams",
    "ham hock",
    "ham hocks",
    "smoked ham",
    "cooked ham",
    "jamón"};
constexpr sv a1865[] = {"bacon",
    "bacon slices",
    "streaky bacon",
    "pancetta",
    "tocino",
    "tocineta",
    "panceta"};
constexpr sv a1866[] = {"sausage",
    "sausages",
    "pork sausage",
    "italian sausage",
    "fresh sausage",
    "sausage meat",
    "salchicha",
    "salchichas",
    "longaniza"};
constexpr sv a1867[] = {"chorizo",
    "pepperoni",
    "salami",
    "smoked sausage",
    "summer sausage",
    "hot dog",
    "hot dogs",
    "frankfurter",
    "frankfurters",
    "bologna"};
constexpr sv a1868[] = {"corned beef",
    "brined beef",
    "dried beef",
    "beef jerky",
    "jerky"};
constexpr sv a1869[] = {"liver",
    "liver pate",
    "pate",
    "organ meat",
    "organ meats",
    "heart",
    "tongue",
    "hígado"};
constexpr sv a1870[] = {"rabbit",
    "rabbits",
    "rabbit meat",
    "hare",
    "squirrel",
    "conejo"};
constexpr sv a1871[] = {"chicken",
    "chickens",
    "chicken breast",
    "chicken breasts",
    "chicken thighs",
    "chicken meat",
    "cooked chicken",
    "pollo"};
constexpr sv a1872[] = {"poultry"};
constexpr sv a1873[] = {"ground chicken",
    "chicken mince",
    "ground turkey",
    "turkey mince",
    "ground poultry"};
constexpr sv a1874[] = {"turkey",
    "turkeys",
    "turkey meat",
    "turkey breast",
    "pavo",
    "guajolote"};
constexpr sv a1875[] = {"duck",
    "ducks",
    "goose",
    "game bird",
    "game birds",
    "pheasant",
    "quail",
    "pato"};
constexpr sv a1876[] = {"fish",
    "white fish",
    "cod",
    "halibut",
    "trout",
    "mackerel",
    "bluefish",
    "steelhead",
    "pescado"};
constexpr sv a1877[] = {"seafood"};
constexpr sv a1878[] = {"salmon",
    "salmón"};
constexpr sv a1879[] = {"tuna",
    "tuna fish",
    "albacore",
    "atún"};
constexpr sv a1880[] = {"smoked fish",
    "smoked salmon",
    "smoked trout",
    "pescado ahumado"};
constexpr sv a1881[] = {"seafood",
    "cured-meat"};
constexpr sv a1882[] = {"anchovy",
    "anchovies",
    "anchovy paste",
    "sardine",
    "sardines",
    "anchoa",
    "anchoas"};
constexpr sv a1883[] = {"clam",
    "clams",
    "clam meat",
    "clam meats",
    "almeja",
    "almejas"};
constexpr sv a1884[] = {"clam juice",
    "clam liquor",
    "clam broth"};
constexpr sv a1885[] = {"seafood",
    "liquid"};
constexpr sv a1886[] = {"oyster",
    "oysters",
    "oyster meat",
    "ostra",
    "ostras",
    "ostión",
    "ostiones"};
constexpr sv a1887[] = {"mussel",
    "mussels",
    "scallop",
    "scallops",
    "mejillón",
    "mejillones"};
constexpr sv a1888[] = {"shrimp",
    "shrimps",
    "prawn",
    "prawns",
    "camarón",
    "camarones",
    "gamba",
    "gambas"};
constexpr sv a1889[] = {"crab meat",
    "crabmeat",
    "crab",
    "crabs",
    "dungeness crab",
    "king crab",
    "cangrejo",
    "jaiba"};
constexpr sv a1890[] = {"lobster",
    "lobsters",
    "crayfish",
    "crawfish",
    "langosta"};
constexpr sv a1891[] = {"squid",
    "octopus",
    "calamari",
    "calamar",
    "pulpo"};
constexpr sv a1892[] = {"salt",
    "common salt",
    "cooking salt",
    "sal"};
constexpr citation a1893[] = {{"usda-sr-27", "02047", ""},
    {"usda-household-list", "02047", ""}};
constexpr measure_weight a1894[] = {{"dry", "cup", 292000, 292000, a1893},
    {"dry", "tbsp", 18000, 18000, a1893},
    {"dry", "tsp", 6000, 6000, a1893}};
constexpr sv a1895[] = {"canning salt",
    "pickling salt",
    "canning and pickling salt",
    "canning or pickling salt",
    "preserving salt",
    "pure salt without additives",
    "sal para encurtir",
    "sal para conservas"};
constexpr citation a1896[] = {{"wisconsin-canning-salt", "", ""},
    {"usda-sr-27", "02047", ""}};
constexpr measure_weight a1897[] = {{"dry", "cup", 220000, 292000, a1896}};
constexpr sv a1898[] = {"table salt",
    "iodized salt",
    "iodised salt",
    "non iodized salt",
    "fine salt",
    "sal de mesa",
    "sal fina",
    "sal yodada"};
constexpr sv a1899[] = {"kosher salt",
    "coarse salt",
    "flake salt",
    "flaked salt",
    "sal kosher",
    "sal gruesa"};
constexpr sv a1900[] = {"sea salt",
    "fine sea salt",
    "himalayan salt",
    "pink himalayan salt",
    "rock salt",
    "sal de mar",
    "sal marina"};
constexpr sv a1901[] = {"lite salt",
    "light salt",
    "reduced sodium salt",
    "low sodium salt",
    "half salt"};
constexpr sv a1902[] = {"salt substitute",
    "potassium chloride",
    "salt replacer",
    "sustituto de sal"};
constexpr sv a1903[] = {"curing salt",
    "pink curing salt",
    "saltpeter",
    "saltpetre",
    "sodium nitrite"};
constexpr sv a1904[] = {"seasoned salt",
    "garlic salt",
    "onion salt",
    "celery salt",
    "seasoning salt"};
constexpr sv a1905[] = {"salt",
    "spice"};
constexpr sv a1906[] = {"pickling lime",
    "calcium hydroxide",
    "slaked lime",
    "hydrated lime",
    "food grade lime",
    "cal"};
constexpr sv a1907[] = {"calcium chloride",
    "pickle crisping granules",
    "pickle crisper",
    "firming granules",
    "cloruro de calcio"};
constexpr sv a1908[] = {"alum",
    "alum powder",
    "potassium alum",
    "alumbre"};
constexpr sv a1909[] = {"grape leaf",
    "grape leaves",
    "oak leaves",
    "cherry leaves",
    "horseradish leaves",
    "hoja de parra"};
constexpr sv a1910[] = {"black pepper",
    "ground black pepper",
    "pepper",
    "ground pepper",
    "cracked black pepper",
    "cracked pepper",
    "pimienta",
    "pimienta negra",
    "pimienta molida"};
constexpr sv a1911[] = {"spice"};
constexpr citation a1912[] = {{"usda-sr-27", "02030", ""}};
constexpr citation a1913[] = {{"usda-sr-27", "02030", ""},
    {"usda-household-list", "02030", ""}};
constexpr measure_weight a1914[] = {{"ground", "tbsp", 6900, 6900, a1912},
    {"ground", "tsp", 2100, 2300, a1913}};
constexpr sv a1915[] = {"black peppercorn",
    "black peppercorns",
    "peppercorn",
    "peppercorns",
    "whole black pepper",
    "whole black peppercorns",
    "pimienta en grano"};
constexpr measure_weight a1916[] = {{"whole", "tsp", 2900, 2900, a1912}};
constexpr sv a1917[] = {"white pepper",
    "ground white pepper",
    "white peppercorns",
    "pimienta blanca"};
constexpr citation a1918[] = {{"usda-sr-27", "02032", ""}};
constexpr measure_weight a1919[] = {{"ground", "tbsp", 7100, 7100, a1918},
    {"ground", "tsp", 2400, 2400, a1918}};
constexpr sv a1920[] = {"sichuan pepper",
    "szechuan pepper",
    "pink peppercorns",
    "green peppercorns"};
constexpr sv a1921[] = {"cayenne pepper",
    "cayenne",
    "ground cayenne",
    "ground cayenne pepper",
    "ground red pepper",
    "red pepper powder",
    "pimienta de cayena"};
constexpr citation a1922[] = {{"usda-sr-27", "02031", ""}};
constexpr measure_weight a1923[] = {{"ground", "tbsp", 5300, 5300, a1922},
    {"ground", "tsp", 1800, 1800, a1922}};
constexpr sv a1924[] = {"crushed red pepper",
    "crushed red pepper flakes",
    "red pepper flakes",
    "hot pepper flakes",
    "chile flakes",
    "chili flakes",
    "chilli flakes",
    "dried pepper flakes",
    "chile triturado"};
constexpr sv a1925[] = {"dried red pepper",
    "dried red peppers",
    "dried hot red pepper",
    "dried hot red peppers",
    "dried chile",
    "dried chiles",
    "dried chili peppers",
    "dried chillies",
    "dried hot peppers",
    "chile seco",
    "chiles secos",
    "chile de árbol"};
constexpr citation a1926[] = {{"usda-sr-27", "11962", ""}};
constexpr measure_weight a1927[] = {{"whole", "piece", 500, 500, a1926}};
constexpr sv a1928[] = {"ancho chile",
    "ancho chiles",
    "dried ancho",
    "pasilla chile",
    "pasilla chiles",
    "guajillo chile",
    "guajillo chiles",
    "chile ancho",
    "chile pasilla",
    "chile guajillo"};
constexpr citation a1929[] = {{"usda-sr-27", "11978", ""},
    {"usda-sr-27", "11982", ""}};
constexpr measure_weight a1930[] = {{"whole", "piece", 7000, 17000, a1929}};
constexpr sv a1931[] = {"chipotle",
    "chipotles",
    "chipotle powder",
    "chipotle pepper",
    "chipotle peppers",
    "dried chipotle"};
constexpr sv a1932[] = {"chipotles in adobo",
    "chipotle in adobo",
    "chipotle peppers in adobo"};
constexpr sv a1933[] = {"chili powder",
    "chilli powder",
    "chile powder",
    "ground chile",
    "ground chili",
    "ground chilli",
    "chile en polvo"};
constexpr citation a1934[] = {{"usda-sr-27", "02009", ""}};
constexpr citation a1935[] = {{"usda-sr-27", "02009", ""},
    {"usda-household-list", "02009", ""}};
constexpr measure_weight a1936[] = {{"ground", "tbsp", 8000, 8000, a1934},
    {"ground", "tsp", 2600, 2700, a1935}};
constexpr sv a1937[] = {"paprika",
    "sweet paprika",
    "hot paprika",
    "smoked paprika",
    "ground paprika",
    "pimentón",
    "pimentón dulce"};
constexpr citation a1938[] = {{"usda-sr-27", "02028", ""}};
constexpr citation a1939[] = {{"usda-sr-27", "02028", ""},
    {"usda-household-list", "02028", ""}};
constexpr measure_weight a1940[] = {{"ground", "tbsp", 6800, 6800, a1938},
    {"ground", "tsp", 2100, 2300, a1939}};
constexpr sv a1941[] = {"mustard seed",
    "mustard seeds",
    "whole mustard seed",
    "yellow mustard seed",
    "yellow mustard seeds",
    "brown mustard seed",
    "brown mustard seeds",
    "semilla de mostaza",
    "semillas de mostaza"};
constexpr sv a1942[] = {"dry mustard",
    "dried mustard",
    "mustard powder",
    "ground mustard",
    "ground mustard seed",
    "powdered mustard",
    "english mustard powder",
    "mostaza en polvo",
    "mostaza seca"};
constexpr citation a1943[] = {{"usda-sr-27", "02024", ""}};
constexpr measure_weight a1944[] = {{"ground", "tbsp", 6300, 6300, a1943},
    {"ground", "tsp", 2000, 2000, a1943}};
constexpr sv a1945[] = {"celery seed",
    "celery seeds",
    "semilla de apio",
    "semillas de apio"};
constexpr citation a1946[] = {{"usda-sr-27", "02007", ""}};
constexpr citation a1947[] = {{"usda-sr-27", "02007", ""},
    {"usda-household-list", "02007", ""}};
constexpr measure_weight a1948[] = {{"whole", "tbsp", 6500, 6500, a1946},
    {"whole", "tsp", 2000, 2000, a1947}};
constexpr sv a1949[] = {"dill seed",
    "dill seeds",
    "semilla de eneldo",
    "semillas de eneldo"};
constexpr citation a1950[] = {{"usda-sr-27", "02016", ""}};
constexpr measure_weight a1951[] = {{"whole", "tbsp", 6600, 6600, a1950},
    {"whole", "tsp", 2100, 2100, a1950}};
constexpr sv a1952[] = {"dried dill weed",
    "dried dill",
    "dill weed",
    "dillweed",
    "eneldo seco"};
constexpr citation a1953[] = {{"usda-sr-27", "02017", ""}};
constexpr measure_weight a1954[] = {{"dried", "tbsp", 3100, 3100, a1953},
    {"dried", "tsp", 1000, 1000, a1953}};
constexpr sv a1955[] = {"coriander seed",
    "coriander seeds",
    "ground coriander",
    "whole coriander",
    "semilla de cilantro",
    "semillas de cilantro"};
constexpr citation a1956[] = {{"usda-sr-27", "02013", ""}};
constexpr measure_weight a1957[] = {{"whole", "tbsp", 5000, 5000, a1956},
    {"whole", "tsp", 1800, 1800, a1956}};
constexpr sv a1958[] = {"cumin",
    "ground cumin",
    "cumin seed",
    "cumin seeds",
    "comino",
    "comino molido"};
constexpr citation a1959[] = {{"usda-sr-27", "02014", ""}};
constexpr measure_weight a1960[] = {{"whole", "tbsp", 6000, 6000, a1959},
    {"whole", "tsp", 2100, 2100, a1959}};
constexpr sv a1961[] = {"caraway seed",
    "caraway seeds",
    "caraway",
    "alcaravea"};
constexpr citation a1962[] = {{"usda-sr-27", "02005", ""}};
constexpr measure_weight a1963[] = {{"whole", "tbsp", 6700, 6700, a1962},
    {"whole", "tsp", 2100, 2100, a1962}};
constexpr sv a1964[] = {"fennel",
    "fennel seed",
    "fennel seeds",
    "ground fennel",
    "semilla de hinojo"};
constexpr citation a1965[] = {{"usda-sr-27", "02018", ""}};
constexpr measure_weight a1966[] = {{"whole", "tbsp", 5800, 5800, a1965},
    {"whole", "tsp", 2000, 2000, a1965}};
constexpr sv a1967[] = {"fenugreek",
    "fenugreek seed",
    "fenugreek seeds",
    "fenogreco"};
constexpr citation a1968[] = {{"usda-sr-27", "02019", ""}};
constexpr measure_weight a1969[] = {{"whole", "tbsp", 11100, 11100, a1968},
    {"whole", "tsp", 3700, 3700, a1968}};
constexpr sv a1970[] = {"anise seed",
    "anise seeds",
    "aniseed",
    "anise",
    "star anise",
    "anís"};
constexpr citation a1971[] = {{"usda-sr-27", "02002", ""}};
constexpr measure_weight a1972[] = {{"whole", "tbsp", 6700, 6700, a1971},
    {"whole", "tsp", 2100, 2100, a1971}};
constexpr sv a1973[] = {"cardamom",
    "ground cardamom",
    "cardamom pods",
    "cardamomo"};
constexpr citation a1974[] = {{"usda-sr-27", "02006", ""}};
constexpr measure_weight a1975[] = {{"ground", "tbsp", 5800, 5800, a1974},
    {"ground", "tsp", 2000, 2000, a1974}};
constexpr sv a1976[] = {"poppy seed",
    "poppy seeds",
    "sesame seed",
    "sesame seeds",
    "nigella seeds"};
constexpr citation a1977[] = {{"usda-sr-27", "02033", ""}};
constexpr measure_weight a1978[] = {{"whole", "tbsp", 8800, 8800, a1977},
    {"whole", "tsp", 2800, 2800, a1977}};
constexpr sv a1979[] = {"ground cinnamon",
    "cinnamon",
    "cinnamon powder",
    "powdered cinnamon",
    "canela",
    "canela molida"};
constexpr citation a1980[] = {{"usda-sr-27", "02010", ""}};
constexpr citation a1981[] = {{"usda-sr-27", "02010", ""},
    {"usda-household-list", "02010", ""}};
constexpr measure_weight a1982[] = {{"ground", "tbsp", 7800, 7800, a1980},
    {"ground", "tsp", 2300, 2600, a1981}};
constexpr sv a1983[] = {"cinnamon stick",
    "cinnamon sticks",
    "stick cinnamon",
    "stick of cinnamon",
    "sticks of cinnamon",
    "cinnamon bark",
    "whole cinnamon",
    "canela en rama"};
constexpr sv a1984[] = {"ground cloves",
    "ground clove",
    "clove powder",
    "powdered cloves",
    "clavo molido"};
constexpr citation a1985[] = {{"usda-sr-27", "02011", ""}};
constexpr measure_weight a1986[] = {{"ground", "tbsp", 6500, 6500, a1985},
    {"ground", "tsp", 2100, 2100, a1985}};
constexpr sv a1987[] = {"whole cloves",
    "whole clove",
    "cloves",
    "clove",
    "clavo",
    "clavos",
    "clavo de olor",
    "clavos de olor"};
constexpr sv a1988[] = {"ground allspice",
    "allspice powder",
    "powdered allspice",
    "pimienta gorda molida"};
constexpr citation a1989[] = {{"usda-sr-27", "02001", ""}};
constexpr measure_weight a1990[] = {{"ground", "tbsp", 6000, 6000, a1989},
    {"ground", "tsp", 1900, 1900, a1989}};
constexpr sv a1991[] = {"whole allspice",
    "allspice",
    "allspice berry",
    "allspice berries",
    "pimienta gorda",
    "pimienta de jamaica"};
constexpr sv a1992[] = {"ground ginger",
    "ginger powder",
    "powdered ginger",
    "dried ginger",
    "jengibre molido",
    "jengibre en polvo"};
constexpr citation a1993[] = {{"usda-sr-27", "02021", ""}};
constexpr measure_weight a1994[] = {{"ground", "tbsp", 5200, 5200, a1993},
    {"ground", "tsp", 1800, 1800, a1993}};
constexpr sv a1995[] = {"ground nutmeg",
    "nutmeg",
    "grated nutmeg",
    "nuez moscada"};
constexpr citation a1996[] = {{"usda-sr-27", "02025", ""}};
constexpr measure_weight a1997[] = {{"ground", "tbsp", 7000, 7000, a1996},
    {"ground", "tsp", 2200, 2200, a1996}};
constexpr sv a1998[] = {"ground mace",
    "mace",
    "macis"};
constexpr citation a1999[] = {{"usda-sr-27", "02022", ""}};
constexpr measure_weight a2000[] = {{"ground", "tbsp", 5300, 5300, a1999},
    {"ground", "tsp", 1700, 1700, a1999}};
constexpr sv a2001[] = {"ground pumpkin pie spice",
    "pumpkin pie spice",
    "pumpkin spice",
    "apple pie spice",
    "mixed spice"};
constexpr citation a2002[] = {{"usda-sr-27", "02035", ""}};
constexpr measure_weight a2003[] = {{"ground", "tbsp", 5600, 5600, a2002},
    {"ground", "tsp", 1700, 1700, a2002}};
constexpr sv a2004[] = {"turmeric",
    "ground turmeric",
    "turmeric powder",
    "cúrcuma"};
constexpr citation a2005[] = {{"usda-sr-27", "02043", ""}};
constexpr measure_weight a2006[] = {{"ground", "tbsp", 9400, 9400, a2005},
    {"ground", "tsp", 3000, 3000, a2005}};
constexpr sv a2007[] = {"saffron",
    "saffron threads",
    "annatto",
    "achiote",
    "azafrán"};
constexpr citation a2008[] = {{"usda-sr-27", "02037", ""}};
constexpr measure_weight a2009[] = {{"dried", "tbsp", 2100, 2100, a2008},
    {"dried", "tsp", 700, 700, a2008}};
constexpr sv a2010[] = {"curry powder",
    "curry",
    "garam masala",
    "polvo de curry"};
constexpr citation a2011[] = {{"usda-sr-27", "02015", ""}};
constexpr citation a2012[] = {{"usda-sr-27", "02015", ""},
    {"usda-household-list", "02015", ""}};
constexpr measure_weight a2013[] = {{"ground", "tbsp", 6300, 6300, a2011},
    {"ground", "tsp", 2000, 2000, a2012}};
constexpr sv a2014[] = {"juniper berry",
    "juniper berries",
    "enebro"};
constexpr sv a2015[] = {"bay leaf",
    "bay leaves",
    "laurel",
    "hoja de laurel",
    "hojas de laurel"};
constexpr citation a2016[] = {{"usda-sr-27", "02004", ""}};
constexpr measure_weight a2017[] = {{"crumbled", "tbsp", 1800, 1800, a2016},
    {"crumbled", "tsp", 600, 600, a2016}};
constexpr sv a2018[] = {"oregano",
    "dried oregano",
    "dried oregano leaves",
    "oregano leaves",
    "ground oregano",
    "mexican oregano",
    "orégano",
    "orégano seco"};
constexpr citation a2019[] = {{"usda-sr-27", "02027", ""}};
constexpr citation a2020[] = {{"usda-sr-27", "02027", ""},
    {"usda-household-list", "02027", ""}};
constexpr measure_weight a2021[] = {{"leaves", "tsp", 1000, 1000, a2019},
    {"ground", "tsp", 1500, 1800, a2020}};
constexpr sv a2022[] = {"dried basil",
    "dried basil leaves",
    "dry basil",
    "ground basil",
    "albahaca seca"};
constexpr citation a2023[] = {{"usda-sr-27", "02003", ""}};
constexpr measure_weight a2024[] = {{"leaves", "tbsp", 2100, 2100, a2023},
    {"leaves", "tsp", 700, 700, a2023},
    {"ground", "tbsp", 4500, 4500, a2023},
    {"ground", "tsp", 1400, 1400, a2023}};
constexpr sv a2025[] = {"dried thyme",
    "dried thyme leaves",
    "ground thyme",
    "tomillo seco"};
constexpr citation a2026[] = {{"usda-sr-27", "02042", ""}};
constexpr measure_weight a2027[] = {{"leaves", "tbsp", 2700, 2700, a2026},
    {"leaves", "tsp", 1000, 1000, a2026},
    {"ground", "tbsp", 4300, 4300, a2026},
    {"ground", "tsp", 1400, 1400, a2026}};
constexpr sv a2028[] = {"dried parsley",
    "dried parsley flakes",
    "parsley flakes",
    "perejil seco"};
constexpr citation a2029[] = {{"usda-sr-27", "02029", ""}};
constexpr citation a2030[] = {{"usda-sr-27", "02029", ""},
    {"usda-household-list", "02029", ""}};
constexpr measure_weight a2031[] = {{"dried", "tsp", 500, 500, a2029},
    {"dried", "tbsp", 1300, 1600, a2030}};
constexpr sv a2032[] = {"dried cilantro",
    "dried coriander leaf",
    "dried coriander leaves",
    "cilantro seco"};
constexpr citation a2033[] = {{"usda-sr-27", "02012", ""}};
constexpr measure_weight a2034[] = {{"dried", "tbsp", 1800, 1800, a2033},
    {"dried", "tsp", 600, 600, a2033}};
constexpr sv a2035[] = {"dried marjoram",
    "marjoram",
    "mejorana"};
constexpr citation a2036[] = {{"usda-sr-27", "02023", ""}};
constexpr measure_weight a2037[] = {{"dried", "tbsp", 1700, 1700, a2036},
    {"dried", "tsp", 600, 600, a2036}};
constexpr sv a2038[] = {"dried rosemary",
    "romero seco"};
constexpr citation a2039[] = {{"usda-sr-27", "02036", ""}};
constexpr measure_weight a2040[] = {{"dried", "tbsp", 3300, 3300, a2039},
    {"dried", "tsp", 1200, 1200, a2039}};
constexpr sv a2041[] = {"dried sage",
    "rubbed sage",
    "ground sage",
    "salvia seca"};
constexpr citation a2042[] = {{"usda-sr-27", "02038", ""}};
constexpr measure_weight a2043[] = {{"ground", "tbsp", 2000, 2000, a2042},
    {"ground", "tsp", 700, 700, a2042}};
constexpr sv a2044[] = {"dried tarragon",
    "estragón seco"};
constexpr citation a2045[] = {{"usda-sr-27", "02041", ""}};
constexpr measure_weight a2046[] = {{"leaves", "tbsp", 1800, 1800, a2045},
    {"leaves", "tsp", 600, 600, a2045},
    {"ground", "tbsp", 4800, 4800, a2045},
    {"ground", "tsp", 1600, 1600, a2045}};
constexpr sv a2047[] = {"dried savory",
    "savory",
    "summer savory",
    "ajedrea"};
constexpr citation a2048[] = {{"usda-sr-27", "02039", ""}};
constexpr measure_weight a2049[] = {{"ground", "tbsp", 4400, 4400, a2048},
    {"ground", "tsp", 1400, 1400, a2048}};
constexpr sv a2050[] = {"dried mint",
    "dried spearmint",
    "menta seca"};
constexpr citation a2051[] = {{"usda-sr-27", "02066", ""}};
constexpr measure_weight a2052[] = {{"dried", "tbsp", 1600, 1600, a2051},
    {"dried", "tsp", 500, 500, a2051}};
constexpr sv a2053[] = {"italian seasoning",
    "mixed herbs",
    "mixed dried herbs",
    "dried herbs",
    "dried herb",
    "herbes de provence",
    "poultry seasoning",
    "bouquet garni"};
constexpr sv a2054[] = {"dried spice",
    "dried spices",
    "spice",
    "spices",
    "mixed spices",
    "especias"};
constexpr sv a2055[] = {"mixed pickling spice",
    "mixed pickling spices",
    "pickling spice",
    "pickling spices",
    "whole pickling spice",
    "whole mixed pickling spice",
    "especias para encurtir"};
constexpr sv a2056[] = {"taco seasoning",
    "fajita seasoning",
    "chili seasoning",
    "chili seasoning mix",
    "salsa mix",
    "seasoning mix",
    "sazón"};
constexpr sv a2057[] = {"garlic powder",
    "granulated garlic",
    "powdered garlic",
    "ajo en polvo"};
constexpr citation a2058[] = {{"usda-sr-27", "02020", ""}};
constexpr citation a2059[] = {{"usda-sr-27", "02020", ""},
    {"usda-household-list", "02020", ""}};
constexpr measure_weight a2060[] = {{"ground", "tbsp", 9700, 9700, a2058},
    {"ground", "tsp", 2800, 3100, a2059}};
constexpr sv a2061[] = {"dried garlic",
    "dried minced garlic",
    "garlic flakes",
    "dehydrated garlic",
    "ajo seco"};
constexpr sv a2062[] = {"onion powder",
    "granulated onion",
    "powdered onion",
    "cebolla en polvo"};
constexpr citation a2063[] = {{"usda-sr-27", "02026", ""}};
constexpr citation a2064[] = {{"usda-sr-27", "02026", ""},
    {"usda-household-list", "02026", ""}};
constexpr measure_weight a2065[] = {{"ground", "tbsp", 6900, 6900, a2063},
    {"ground", "tsp", 2100, 2400, a2064}};
constexpr sv a2066[] = {"dried onion",
    "dried onions",
    "dried minced onion",
    "minced dried onion",
    "onion flakes",
    "dried onion flakes",
    "dehydrated onion",
    "cebolla seca",
    "cebolla deshidratada"};
constexpr citation a2067[] = {{"usda-sr-27", "11284", ""},
    {"usda-household-list", "11284", ""}};
constexpr measure_weight a2068[] = {{"flakes", "cup", 56000, 56000, a2067},
    {"flakes", "tbsp", 5000, 5000, a2067}};
constexpr sv a2069[] = {"dried vegetables",
    "dehydrated vegetables",
    "vegetable flakes",
    "dried bell pepper",
    "dried celery",
    "dried carrots"};
constexpr sv a2070[] = {"fresh basil",
    "basil",
    "basil leaves",
    "fresh basil leaves",
    "thai basil",
    "albahaca",
    "albahaca fresca"};
constexpr sv a2071[] = {"fresh-herb"};
constexpr citation a2072[] = {{"usda-sr-27", "02044", ""}};
constexpr measure_weight a2073[] = {{"chopped", "tbsp", 2650, 2650, a2072}};
constexpr sv a2074[] = {"cilantro",
    "fresh cilantro",
    "cilantro leaves",
    "fresh coriander",
    "coriander leaves",
    "coriander leaf",
    "culantro",
    "cilantro fresco"};
constexpr citation a2075[] = {{"usda-sr-27", "11165", ""}};
constexpr measure_weight a2076[] = {{"leaves", "cup", 16000, 16000, a2075}};
constexpr sv a2077[] = {"parsley",
    "fresh parsley",
    "flat leaf parsley",
    "curly parsley",
    "italian parsley",
    "perejil",
    "perejil fresco"};
constexpr citation a2078[] = {{"usda-sr-27", "11297", ""}};
constexpr measure_weight a2079[] = {{"chopped", "cup", 60000, 60000, a2078},
    {"chopped", "tbsp", 3800, 3800, a2078}};
constexpr sv a2080[] = {"fresh dill",
    "dill",
    "fresh dill weed",
    "dill fronds",
    "dill sprig",
    "dill sprigs",
    "eneldo",
    "eneldo fresco"};
constexpr citation a2081[] = {{"usda-sr-27", "02045", ""}};
constexpr measure_weight a2082[] = {{"sprigs", "cup", 8900, 8900, a2081}};
constexpr sv a2083[] = {"dill head",
    "dill heads",
    "head of dill",
    "heads of dill",
    "fresh dill head",
    "fresh dill heads",
    "dill flower",
    "dill flowers"};
constexpr sv a2084[] = {"fresh thyme",
    "thyme",
    "thyme sprig",
    "thyme sprigs",
    "thyme leaves",
    "tomillo",
    "tomillo fresco"};
constexpr citation a2085[] = {{"usda-sr-27", "02049", ""}};
constexpr measure_weight a2086[] = {{"leaves", "tsp", 800, 800, a2085}};
constexpr sv a2087[] = {"fresh oregano",
    "fresh oregano leaves",
    "oregano sprigs",
    "fresh marjoram",
    "orégano fresco"};
constexpr sv a2088[] = {"fresh rosemary",
    "rosemary",
    "rosemary sprig",
    "rosemary sprigs",
    "romero",
    "romero fresco"};
constexpr citation a2089[] = {{"usda-sr-27", "02063", ""}};
constexpr measure_weight a2090[] = {{"leaves", "tbsp", 1700, 1700, a2089},
    {"leaves", "tsp", 700, 700, a2089}};
constexpr sv a2091[] = {"fresh sage",
    "sage",
    "sage leaves",
    "salvia"};
constexpr sv a2092[] = {"fresh mint",
    "mint",
    "mint leaves",
    "spearmint",
    "peppermint",
    "menta",
    "hierbabuena"};
constexpr sv a2093[] = {"fresh tarragon",
    "tarragon",
    "estragón"};
constexpr sv a2094[] = {"chives",
    "chive",
    "fresh chives",
    "garlic chives",
    "cebollino"};
constexpr citation a2095[] = {{"usda-sr-27", "11156", ""},
    {"usda-household-list", "11156", ""}};
constexpr measure_weight a2096[] = {{"chopped", "tbsp", 3000, 3000, a2095},
    {"chopped", "tsp", 1000, 1000, a2095}};
constexpr sv a2097[] = {"epazote",
    "fresh epazote"};
constexpr citation a2098[] = {{"usda-sr-27", "11984", ""}};
constexpr measure_weight a2099[] = {{"raw", "tbsp", 800, 800, a2098},
    {"raw", "piece", 2000, 2000, a2098}};
constexpr sv a2100[] = {"lemongrass",
    "lemon grass",
    "limoncillo"};
constexpr citation a2101[] = {{"usda-sr-27", "11972", ""}};
constexpr measure_weight a2102[] = {{"raw", "cup", 67000, 67000, a2101},
    {"raw", "tbsp", 4800, 4800, a2101}};
constexpr sv a2103[] = {"fresh herb",
    "fresh herbs",
    "herbs",
    "herb",
    "hierbas frescas"};
constexpr sv a2104[] = {"ginger",
    "fresh ginger",
    "ginger root",
    "fresh ginger root",
    "gingerroot",
    "root ginger",
    "jengibre",
    "jengibre fresco"};
constexpr citation a2105[] = {{"usda-sr-27", "11216", ""}};
constexpr measure_weight a2106[] = {{"grated", "tsp", 2000, 2000, a2105},
    {"sliced", "cup", 96000, 96000, a2105}};
constexpr sv a2107[] = {"crystallized ginger",
    "crystallised ginger",
    "candied ginger",
    "stem ginger",
    "jengibre confitado"};
constexpr sv a2108[] = {"fresh turmeric",
    "turmeric root",
    "galangal",
    "fresh galangal"};
constexpr sv a2109[] = {"prepared mustard",
    "prepared yellow mustard",
    "yellow mustard",
    "mustard",
    "dijon mustard",
    "whole grain mustard",
    "english mustard",
    "mostaza"};
constexpr citation a2110[] = {{"usda-sr-27", "02046", ""},
    {"usda-household-list", "02046", ""}};
constexpr measure_weight a2111[] = {{"smooth", "cup", 249000, 249000, a2110},
    {"smooth", "tsp", 5000, 5000, a2110}};
constexpr sv a2112[] = {"prepared horseradish",
    "horseradish sauce",
    "horseradish in vinegar"};
constexpr citation a2113[] = {{"usda-sr-27", "02055", ""},
    {"usda-household-list", "02055", ""}};
constexpr measure_weight a2114[] = {{"drained", "tbsp", 15000, 15000, a2113},
    {"drained", "tsp", 5000, 5000, a2113}};
constexpr sv a2115[] = {"vanilla",
    "vanilla extract",
    "vanilla essence",
    "vanilla bean",
    "vainilla"};
constexpr citation a2116[] = {{"usda-sr-27", "02050", ""},
    {"usda-household-list", "02050", ""}};
constexpr measure_weight a2117[] = {{"liquid", "cup", 208000, 208000, a2116},
    {"liquid", "tbsp", 13000, 13000, a2116},
    {"liquid", "tsp", 4200, 4200, a2116}};
constexpr sv a2118[] = {"almond extract",
    "almond essence",
    "almond flavoring",
    "extracto de almendra"};
constexpr sv a2119[] = {"lemon extract",
    "orange extract",
    "mint extract",
    "peppermint extract",
    "maple extract",
    "rum extract",
    "rose water",
    "flavoring",
    "flavouring"};
constexpr sv a2120[] = {"blue food colour",
    "blue food color",
    "blue food coloring",
    "blue food colouring"};
constexpr sv a2121[] = {"red food colour",
    "red food color",
    "red food coloring",
    "red food colouring"};
constexpr sv a2122[] = {"yellow food colour",
    "yellow food color",
    "yellow food coloring",
    "yellow food colouring"};
constexpr sv a2123[] = {"green food colour",
    "green food color",
    "green food coloring",
    "green food colouring",
    "food colour",
    "food color",
    "food coloring",
    "food colouring",
    "colorante"};
constexpr sv a2124[] = {"yeast",
    "dry yeast",
    "baker's yeast",
    "nutritional yeast",
    "levadura"};
constexpr citation a2125[] = {{"usda-sr-27", "18375", ""}};
constexpr citation a2126[] = {{"usda-sr-27", "18375", ""},
    {"usda-household-list", "18375", ""}};
constexpr measure_weight a2127[] = {{"dry", "tbsp", 12000, 12000, a2125},
    {"dry", "tsp", 4000, 4000, a2126}};
constexpr sv a2128[] = {"msg",
    "monosodium glutamate"};
constexpr sv a2129[] = {"meat tenderizer",
    "meat tenderiser"};
constexpr sv a2130[] = {"sugar",
    "white sugar",
    "granulated sugar",
    "table sugar",
    "cane sugar",
    "beet sugar",
    "caster sugar",
    "superfine sugar",
    "preserving sugar",
    "azúcar",
    "azúcar blanca"};
constexpr citation a2131[] = {{"usda-sr-27", "19335", ""}};
constexpr citation a2132[] = {{"usda-sr-27", "19335", ""},
    {"usda-household-list", "19335", ""}};
constexpr measure_weight a2133[] = {{"dry", "cup", 200000, 200000, a2131},
    {"dry", "tsp", 4200, 4200, a2132}};
constexpr sv a2134[] = {"brown sugar",
    "light brown sugar",
    "dark brown sugar",
    "packed brown sugar",
    "muscovado",
    "muscovado sugar",
    "piloncillo",
    "panela",
    "jaggery",
    "azúcar morena"};
constexpr citation a2135[] = {{"usda-sr-27", "19334", ""}};
constexpr measure_weight a2136[] = {{"packed", "cup", 220000, 220000, a2135},
    {"packed", "tsp", 4600, 4600, a2135},
    {"not-packed", "cup", 145000, 145000, a2135},
    {"not-packed", "tsp", 3000, 3000, a2135}};
constexpr sv a2137[] = {"raw sugar",
    "turbinado sugar",
    "turbinado",
    "demerara sugar",
    "demerara",
    "coconut sugar",
    "azúcar mascabado"};
constexpr citation a2138[] = {{"usda-sr-27", "19908", ""}};
constexpr measure_weight a2139[] = {{"dry", "cup", 202000, 202000, a2138},
    {"dry", "tsp", 4600, 4600, a2138}};
constexpr sv a2140[] = {"jam sugar",
    "gelling sugar",
    "sugar with pectin"};
constexpr sv a2141[] = {"sugar",
    "pectin"};
constexpr sv a2142[] = {"powdered sugar",
    "confectioners sugar",
    "confectioners' sugar",
    "icing sugar",
    "azúcar glas"};
constexpr sv a2143[] = {"sugar",
    "thickener"};
constexpr citation a2144[] = {{"usda-sr-27", "19336", ""},
    {"usda-household-list", "19336", ""}};
constexpr citation a2145[] = {{"usda-sr-27", "19336", ""}};
constexpr measure_weight a2146[] = {{"not-sifted", "cup", 120000, 120000, a2144},
    {"not-sifted", "tbsp", 8000, 8000, a2144},
    {"sifted", "cup", 100000, 100000, a2145}};
constexpr sv a2147[] = {"fructose",
    "dextrose",
    "glucose",
    "glucose powder",
    "fructosa"};
constexpr sv a2148[] = {"sweetener"};
constexpr sv a2149[] = {"honey",
    "clear honey",
    "runny honey",
    "raw honey",
    "miel",
    "miel de abeja"};
constexpr citation a2150[] = {{"usda-sr-27", "19296", ""},
    {"usda-household-list", "19296", ""}};
constexpr measure_weight a2151[] = {{"liquid", "cup", 339000, 339000, a2150},
    {"liquid", "tbsp", 21000, 21000, a2150}};
constexpr sv a2152[] = {"maple syrup",
    "pure maple syrup",
    "jarabe de arce",
    "miel de maple"};
constexpr citation a2153[] = {{"usda-sr-27", "19353", ""},
    {"usda-household-list", "19353", ""}};
constexpr measure_weight a2154[] = {{"liquid", "cup", 315000, 315000, a2153},
    {"liquid", "tbsp", 20000, 20000, a2153}};
constexpr sv a2155[] = {"pancake syrup",
    "table syrup",
    "rice syrup",
    "malt syrup",
    "sorghum",
    "sorghum syrup"};
constexpr citation a2156[] = {{"usda-sr-27", "19352", ""},
    {"usda-sr-27", "19355", ""},
    {"usda-sr-27", "19360", ""}};
constexpr measure_weight a2157[] = {{"liquid", "cup", 315000, 332000, a2156}};
constexpr sv a2158[] = {"sugar syrup",
    "simple syrup",
    "canning syrup",
    "light syrup",
    "heavy syrup",
    "almíbar"};
constexpr sv a2159[] = {"corn syrup",
    "light corn syrup",
    "dark corn syrup",
    "white corn syrup",
    "glucose syrup",
    "jarabe de maíz"};
constexpr citation a2160[] = {{"usda-sr-27", "19349", ""},
    {"usda-sr-27", "19350", ""},
    {"usda-household-list", "19350", ""}};
constexpr measure_weight a2161[] = {{"liquid", "cup", 328000, 341000, a2160},
    {"liquid", "tbsp", 20000, 22000, a2160}};
constexpr sv a2162[] = {"golden syrup",
    "cane syrup"};
constexpr sv a2163[] = {"molasses",
    "light molasses",
    "treacle",
    "unsulphured molasses",
    "melaza"};
constexpr citation a2164[] = {{"usda-sr-27", "19304", ""}};
constexpr measure_weight a2165[] = {{"liquid", "cup", 337000, 337000, a2164},
    {"liquid", "tbsp", 20000, 20000, a2164}};
constexpr sv a2166[] = {"dark molasses",
    "blackstrap molasses",
    "blackstrap",
    "black treacle"};
constexpr citation a2167[] = {{"usda-sr-27", "19304", ""},
    {"usda-household-list", "19305", ""}};
constexpr measure_weight a2168[] = {{"liquid", "cup", 337000, 337000, a2167},
    {"liquid", "tbsp", 20000, 20000, a2167}};
constexpr sv a2169[] = {"agave syrup",
    "agave nectar",
    "agave",
    "jarabe de agave"};
constexpr citation a2170[] = {{"usda-sr-27", "19912", ""}};
constexpr measure_weight a2171[] = {{"liquid", "tsp", 6900, 6900, a2170}};
constexpr sv a2172[] = {"granular sucralose",
    "sucralose sweetener",
    "sucralose sweetener granular",
    "granulated sucralose",
    "granular sucralose sweetener",
    "sucralose"};
constexpr sv a2173[] = {"stevia",
    "stevia powder",
    "monk fruit sweetener",
    "monk fruit"};
constexpr sv a2174[] = {"erythritol",
    "xylitol",
    "sorbitol",
    "maltitol",
    "allulose"};
constexpr sv a2175[] = {"artificial sweetener",
    "artificial sweeteners",
    "sugar substitute",
    "sugar substitutes",
    "sweetener",
    "aspartame",
    "saccharin",
    "edulcorante"};
constexpr sv a2176[] = {"cinnamon candy",
    "cinnamon candies",
    "red cinnamon candy",
    "red cinnamon candies",
    "red hot cinnamon candy",
    "red hot cinnamon candies"};
constexpr sv a2177[] = {"candy",
    "candies",
    "caramel",
    "caramels",
    "marshmallow",
    "marshmallows",
    "gelatin dessert",
    "flavored gelatin"};
constexpr sv a2178[] = {"pectin",
    "fruit pectin",
    "pectina"};
constexpr sv a2179[] = {"pectin"};
constexpr sv a2180[] = {"powdered pectin",
    "regular powdered pectin",
    "dry pectin",
    "powdered fruit pectin",
    "pectina en polvo"};
constexpr sv a2181[] = {"liquid pectin",
    "liquid fruit pectin",
    "pectina líquida"};
constexpr sv a2182[] = {"pectin",
    "liquid"};
constexpr sv a2183[] = {"low sugar pectin",
    "no sugar pectin",
    "reduced sugar pectin",
    "low or no sugar pectin",
    "low methoxyl pectin",
    "instant pectin",
    "freezer jam pectin",
    "calcium pectin"};
constexpr sv a2184[] = {"thickener",
    "thickening",
    "starch",
    "almidón",
    "fécula"};
constexpr sv a2185[] = {"flour",
    "wheat flour",
    "all purpose flour",
    "plain flour",
    "white flour",
    "bread flour",
    "self rising flour",
    "self raising flour",
    "whole wheat flour",
    "harina",
    "harina de trigo"};
constexpr citation a2186[] = {{"usda-sr-27", "20080", ""},
    {"usda-sr-27", "20081", ""},
    {"usda-sr-27", "20083", ""},
    {"usda-household-list", "20080", ""},
    {"usda-household-list", "20081", ""},
    {"usda-household-list", "20083", ""}};
constexpr measure_weight a2187[] = {{"not-sifted", "cup", 120000, 137000, a2186}};
constexpr sv a2188[] = {"rice flour",
    "potato flour",
    "chickpea flour",
    "besan",
    "almond flour",
    "coconut flour",
    "oat flour",
    "rye flour",
    "masa harina",
    "masa"};
constexpr sv a2189[] = {"cornmeal",
    "corn meal",
    "corn flour",
    "polenta",
    "grits",
    "harina de maíz"};
constexpr citation a2190[] = {{"usda-sr-27", "20016", ""},
    {"usda-sr-27", "20020", ""},
    {"usda-sr-27", "20022", ""},
    {"usda-household-list", "20022", ""}};
constexpr measure_weight a2191[] = {{"dry", "cup", 117000, 157000, a2190}};
constexpr sv a2192[] = {"cornstarch",
    "corn starch",
    "cornflour",
    "maize starch",
    "fécula de maíz"};
constexpr citation a2193[] = {{"usda-sr-27", "20027", ""}};
constexpr citation a2194[] = {{"usda-household-list", "20027", ""}};
constexpr measure_weight a2195[] = {{"dry", "cup", 128000, 128000, a2193},
    {"dry", "tbsp", 8064, 8064, a2194}};
constexpr sv a2196[] = {"modified corn starch cook type",
    "cook type modified corn starch",
    "cook type modified starch",
    "cook type starch",
    "cook type canning starch",
    "canning starch",
    "modified corn starch for canning",
    "heat stable modified corn starch"};
constexpr sv a2197[] = {"instant modified starch",
    "instant modified corn starch",
    "instant starch",
    "instant canning starch",
    "modified starch",
    "modified corn starch",
    "modified food starch"};
constexpr sv a2198[] = {"tapioca",
    "tapioca pearls",
    "pearl tapioca",
    "quick cooking tapioca",
    "tapioca starch",
    "tapioca flour",
    "cassava starch",
    "sago"};
constexpr citation a2199[] = {{"usda-sr-27", "20068", ""},
    {"usda-household-list", "20068", ""}};
constexpr measure_weight a2200[] = {{"pearls", "cup", 152000, 152000, a2199}};
constexpr sv a2201[] = {"arrowroot",
    "arrowroot powder",
    "arrowroot starch",
    "arrowroot flour",
    "arruruz"};
constexpr citation a2202[] = {{"usda-sr-27", "20003", ""}};
constexpr measure_weight a2203[] = {{"dry", "cup", 128000, 128000, a2202}};
constexpr sv a2204[] = {"potato starch",
    "potato flakes",
    "fécula de papa"};
constexpr sv a2205[] = {"xanthan gum",
    "guar gum",
    "locust bean gum",
    "psyllium",
    "glucomannan",
    "goma xantana"};
constexpr sv a2206[] = {"gelatin",
    "gelatine",
    "unflavored gelatin",
    "gelatina"};
constexpr sv a2207[] = {"agar",
    "agar agar",
    "carrageenan"};
constexpr sv a2208[] = {"chia seed",
    "chia seeds",
    "chia",
    "flax seed",
    "flaxseed",
    "flaxseeds",
    "linseed"};
constexpr sv a2209[] = {"onion",
    "onions",
    "yellow onion",
    "yellow onions",
    "white onion",
    "white onions",
    "red onion",
    "red onions",
    "brown onion",
    "brown onions",
    "spanish onion",
    "spanish onions",
    "sweet onion",
    "sweet onions",
    "small onion",
    "small onions",
    "fresh onion",
    "fresh onions",
    "bulb onion",
    "bulb onions",
    "cebolla",
    "cebollas",
    "cebolla blanca",
    "cebolla morada",
    "cebolla roja"};
constexpr citation a2210[] = {{"usda-sr-27", "11282", ""},
    {"usda-household-list", "11282", ""}};
constexpr citation a2211[] = {{"usda-sr-27", "11282", ""}};
constexpr measure_weight a2212[] = {{"chopped", "cup", 160000, 160000, a2210},
    {"chopped", "tbsp", 10000, 10000, a2211},
    {"sliced", "cup", 115000, 115000, a2211},
    {"large", "piece", 150000, 150000, a2211},
    {"medium", "piece", 110000, 110000, a2210},
    {"small", "piece", 70000, 70000, a2211}};
constexpr sv a2213[] = {"onion slice",
    "onion slices",
    "slice of onion",
    "slices of onion"};
constexpr measure_weight a2214[] = {{"slice", "piece", 9000, 38000, a2210}};
constexpr sv a2215[] = {"pearl onion",
    "pearl onions",
    "white pearl onions",
    "boiling onion",
    "boiling onions",
    "pickling onion",
    "pickling onions",
    "silverskin onion",
    "silverskin onions",
    "cebollita",
    "cebollitas"};
constexpr sv a2216[] = {"green onion",
    "green onions",
    "spring onion",
    "spring onions",
    "scallion",
    "scallions",
    "salad onion",
    "salad onions",
    "cebolleta",
    "cebolletas"};
constexpr citation a2217[] = {{"usda-sr-27", "11291", ""},
    {"usda-household-list", "11291", ""}};
constexpr citation a2218[] = {{"usda-sr-27", "11291", ""}};
constexpr measure_weight a2219[] = {{"chopped", "cup", 100000, 100000, a2217},
    {"chopped", "tbsp", 6000, 6000, a2218},
    {"large", "piece", 25000, 25000, a2218},
    {"medium", "piece", 15000, 15000, a2217},
    {"small", "piece", 5000, 5000, a2218}};
constexpr sv a2220[] = {"shallot",
    "shallots",
    "echalote",
    "echalotes",
    "chalota",
    "chalotas"};
constexpr citation a2221[] = {{"usda-sr-27", "11677", ""},
    {"usda-household-list", "11677", ""}};
constexpr measure_weight a2222[] = {{"chopped", "tbsp", 10000, 10000, a2221}};
constexpr sv a2223[] = {"leek",
    "leeks",
    "puerro",
    "puerros"};
constexpr citation a2224[] = {{"usda-sr-27", "11246", ""}};
constexpr measure_weight a2225[] = {{"whole", "piece", 89000, 89000, a2224}};
constexpr sv a2226[] = {"garlic",
    "garlic clove",
    "garlic cloves",
    "clove of garlic",
    "cloves of garlic",
    "fresh garlic",
    "ajo",
    "ajos",
    "diente de ajo",
    "dientes de ajo"};
constexpr citation a2227[] = {{"usda-sr-27", "11215", ""},
    {"usda-household-list", "11215", ""}};
constexpr citation a2228[] = {{"usda-sr-27", "11215", ""}};
constexpr measure_weight a2229[] = {{"clove", "piece", 3000, 3000, a2227},
    {"minced", "cup", 136000, 136000, a2228},
    {"minced", "tsp", 2800, 2800, a2228}};
constexpr sv a2230[] = {"peppers",
    "sweet or hot peppers",
    "mixed peppers",
    "fresh peppers",
    "fresh pepper",
    "chopped peppers",
    "peppers of any kind",
    "hot or sweet peppers",
    "sweet pepper",
    "sweet peppers",
    "capsicum peppers",
    "red peppers",
    "yellow peppers",
    "orange peppers",
    "pimientos frescos"};
constexpr citation a2231[] = {{"usda-sr-27", "11333", ""},
    {"usda-sr-27", "11670", ""},
    {"usda-sr-27", "11819", ""},
    {"usda-sr-27", "11821", ""},
    {"usda-sr-27", "11977", ""},
    {"usda-household-list", "11333", ""},
    {"usda-household-list", "11821", ""}};
constexpr measure_weight a2232[] = {{"chopped", "cup", 105000, 150000, a2231}};
constexpr sv a2233[] = {"bell pepper",
    "bell peppers",
    "sweet bell pepper",
    "sweet bell peppers",
    "capsicum",
    "capsicums",
    "sweet capsicum",
    "pimiento morrón",
    "pimientos morrones",
    "pimiento morron",
    "pimientos morrones frescos"};
constexpr citation a2234[] = {{"usda-sr-27", "11333", ""},
    {"usda-sr-27", "11821", ""},
    {"usda-household-list", "11333", ""},
    {"usda-household-list", "11821", ""}};
constexpr citation a2235[] = {{"usda-sr-27", "11333", ""},
    {"usda-sr-27", "11821", ""}};
constexpr citation a2236[] = {{"usda-sr-27", "11333", ""},
    {"usda-sr-27", "11821", ""},
    {"usda-sr-27", "11951", ""}};
constexpr measure_weight a2237[] = {{"chopped", "cup", 149000, 149000, a2234},
    {"chopped", "tbsp", 9300, 9300, a2234},
    {"sliced", "cup", 92000, 92000, a2235},
    {"large", "piece", 164000, 186000, a2236},
    {"medium", "piece", 119000, 119000, a2234},
    {"small", "piece", 74000, 74000, a2235}};
constexpr sv a2238[] = {"green bell pepper",
    "green bell peppers",
    "green pepper",
    "green peppers",
    "sweet green pepper",
    "sweet green peppers",
    "green capsicum",
    "green capsicums",
    "pimiento verde",
    "pimientos verdes"};
constexpr citation a2239[] = {{"usda-sr-27", "11333", ""},
    {"usda-household-list", "11333", ""}};
constexpr citation a2240[] = {{"usda-sr-27", "11333", ""}};
constexpr measure_weight a2241[] = {{"chopped", "cup", 149000, 149000, a2239},
    {"chopped", "tbsp", 9300, 9300, a2239},
    {"sliced", "cup", 92000, 92000, a2240},
    {"large", "piece", 164000, 164000, a2240},
    {"medium", "piece", 119000, 119000, a2239},
    {"small", "piece", 74000, 74000, a2240}};
constexpr sv a2242[] = {"red bell pepper",
    "red bell peppers",
    "sweet red pepper",
    "sweet red peppers",
    "red capsicum",
    "red capsicums",
    "pimiento rojo",
    "pimientos rojos"};
constexpr citation a2243[] = {{"usda-sr-27", "11821", ""},
    {"usda-household-list", "11821", ""}};
constexpr citation a2244[] = {{"usda-sr-27", "11821", ""}};
constexpr measure_weight a2245[] = {{"chopped", "cup", 149000, 149000, a2243},
    {"chopped", "tbsp", 9300, 9300, a2243},
    {"sliced", "cup", 92000, 92000, a2244},
    {"large", "piece", 164000, 164000, a2244},
    {"medium", "piece", 119000, 119000, a2243},
    {"small", "piece", 74000, 74000, a2244}};
constexpr sv a2246[] = {"yellow bell pepper",
    "yellow bell peppers",
    "sweet yellow pepper",
    "sweet yellow peppers",
    "yellow capsicum",
    "yellow capsicums",
    "pimiento amarillo",
    "pimientos amarillos"};
constexpr citation a2247[] = {{"usda-sr-27", "11951", ""}};
constexpr measure_weight a2248[] = {{"large", "piece", 186000, 186000, a2247}};
constexpr sv a2249[] = {"orange bell pepper",
    "orange bell peppers",
    "sweet orange pepper",
    "sweet orange peppers",
    "orange capsicum"};
constexpr sv a2250[] = {"banana pepper",
    "banana peppers",
    "yellow banana pepper",
    "yellow banana peppers",
    "sweet banana pepper",
    "sweet banana peppers",
    "yellow wax pepper",
    "yellow wax peppers"};
constexpr citation a2251[] = {{"usda-sr-27", "11976", ""}};
constexpr measure_weight a2252[] = {{"large", "piece", 75000, 75000, a2251},
    {"medium", "piece", 46000, 46000, a2251},
    {"small", "piece", 33000, 33000, a2251}};
constexpr sv a2253[] = {"hungarian pepper",
    "hungarian peppers",
    "hungarian wax pepper",
    "hungarian wax peppers",
    "hot wax pepper",
    "hot wax peppers"};
constexpr citation a2254[] = {{"usda-sr-27", "11981", ""}};
constexpr measure_weight a2255[] = {{"whole", "piece", 27000, 27000, a2254}};
constexpr sv a2256[] = {"pimento",
    "pimentos",
    "pimiento",
    "pimientos",
    "pimento pepper",
    "pimento peppers",
    "cherry pimento"};
constexpr citation a2257[] = {{"usda-sr-27", "11943", ""},
    {"usda-household-list", "11943", ""}};
constexpr measure_weight a2258[] = {{"canned", "cup", 192000, 192000, a2257},
    {"canned", "tbsp", 12000, 12000, a2257},
    {"canned", "piece", 66000, 66000, a2257}};
constexpr sv a2259[] = {"chile pepper",
    "chile peppers",
    "chili pepper",
    "chili peppers",
    "chilli pepper",
    "chilli peppers",
    "chile",
    "chiles",
    "chilies",
    "chilli",
    "chillies",
    "fresh chile",
    "fresh chiles",
    "fresh chilies",
    "fresh chillies",
    "chiles frescos"};
constexpr citation a2260[] = {{"usda-sr-27", "11670", ""},
    {"usda-sr-27", "11819", ""}};
constexpr citation a2261[] = {{"usda-sr-27", "11670", ""},
    {"usda-sr-27", "11819", ""},
    {"usda-household-list", "11670", ""},
    {"usda-household-list", "11819", ""}};
constexpr measure_weight a2262[] = {{"chopped", "cup", 150000, 150000, a2260},
    {"whole", "piece", 45000, 45000, a2261}};
constexpr sv a2263[] = {"hot pepper",
    "hot peppers",
    "hot chile",
    "hot chiles",
    "hot chile pepper",
    "hot chile peppers",
    "hot chili pepper",
    "hot chili peppers",
    "green chilli",
    "green chillies",
    "red chilli",
    "red chillies",
    "ají",
    "ajíes",
    "ají picante",
    "pimiento picante",
    "pimientos picantes"};
constexpr citation a2264[] = {{"usda-sr-27", "11670", ""},
    {"usda-sr-27", "11819", ""},
    {"usda-sr-27", "11977", ""}};
constexpr measure_weight a2265[] = {{"chopped", "cup", 105000, 150000, a2264}};
constexpr sv a2266[] = {"long green chile",
    "long green chiles",
    "long green chili",
    "long green chilies",
    "green chile",
    "green chiles",
    "green chilies",
    "anaheim pepper",
    "anaheim peppers",
    "anaheim chile",
    "anaheim chiles",
    "hatch chile",
    "hatch chiles",
    "new mexico chile",
    "new mexico chiles",
    "new mexico pepper",
    "california chile",
    "california chiles",
    "chile verde largo"};
constexpr sv a2267[] = {"hot long pepper",
    "hot long peppers",
    "long hot pepper",
    "long hot peppers"};
constexpr sv a2268[] = {"hot finger pepper",
    "hot finger peppers",
    "finger pepper",
    "finger peppers",
    "hot finger chile",
    "hot finger chiles"};
constexpr sv a2269[] = {"small hot pepper",
    "small hot peppers",
    "small hot chile",
    "small hot chiles",
    "thai chile",
    "thai chiles",
    "bird chile",
    "bird chiles",
    "bird's eye chilli",
    "bird's eye chillies"};
constexpr sv a2270[] = {"jalapeno pepper",
    "jalapeno peppers",
    "jalapeno",
    "jalapenos",
    "jalapeño",
    "jalapeños",
    "jalapeño pepper",
    "jalapeño peppers",
    "fresh jalapeno",
    "fresh jalapenos",
    "chile jalapeño",
    "chiles jalapeños"};
constexpr citation a2271[] = {{"usda-sr-27", "11979", ""}};
constexpr measure_weight a2272[] = {{"sliced", "cup", 90000, 90000, a2271},
    {"whole", "piece", 14000, 14000, a2271}};
constexpr sv a2273[] = {"serrano pepper",
    "serrano peppers",
    "serrano",
    "serranos",
    "serrano chile",
    "serrano chiles",
    "chile serrano",
    "chiles serranos"};
constexpr citation a2274[] = {{"usda-sr-27", "11977", ""}};
constexpr measure_weight a2275[] = {{"chopped", "cup", 105000, 105000, a2274},
    {"whole", "piece", 6100, 6100, a2274}};
constexpr sv a2276[] = {"habanero pepper",
    "habanero peppers",
    "habanero",
    "habaneros",
    "habanero chile",
    "habanero chiles",
    "scotch bonnet",
    "scotch bonnets",
    "scotch bonnet pepper",
    "scotch bonnet peppers",
    "chile habanero"};
constexpr sv a2277[] = {"poblano pepper",
    "poblano peppers",
    "poblano",
    "poblanos",
    "poblano chile",
    "poblano chiles",
    "chile poblano",
    "chiles poblanos"};
constexpr sv a2278[] = {"fresh cayenne pepper",
    "fresh cayenne peppers",
    "cayenne peppers",
    "red cayenne peppers"};
constexpr sv a2279[] = {"canned green chile",
    "canned green chiles",
    "canned chiles",
    "canned chile peppers",
    "canned green chilies",
    "tinned green chillies",
    "roasted green chiles canned"};
constexpr citation a2280[] = {{"usda-sr-27", "11329", ""},
    {"usda-sr-27", "11980", ""}};
constexpr measure_weight a2281[] = {{"chopped", "cup", 136000, 139000, a2280}};
constexpr sv a2282[] = {"canned jalapeno",
    "canned jalapenos",
    "canned jalapeno peppers",
    "pickled jalapeno",
    "pickled jalapenos",
    "jalapeños en escabeche"};
constexpr citation a2283[] = {{"usda-sr-27", "11632", ""}};
constexpr citation a2284[] = {{"usda-sr-27", "11632", ""},
    {"usda-household-list", "11632", ""}};
constexpr measure_weight a2285[] = {{"chopped", "cup", 136000, 136000, a2283},
    {"sliced", "cup", 104000, 104000, a2284}};
constexpr sv a2286[] = {"tomato",
    "tomatoes",
    "red tomato",
    "red tomatoes",
    "ripe tomato",
    "ripe tomatoes",
    "fresh tomato",
    "fresh tomatoes",
    "heirloom tomato",
    "heirloom tomatoes",
    "vine tomatoes",
    "jitomate",
    "jitomates",
    "tomate",
    "tomates",
    "tomate rojo",
    "tomates rojos"};
constexpr citation a2287[] = {{"usda-sr-27", "11529", ""},
    {"usda-household-list", "11529", ""}};
constexpr citation a2288[] = {{"usda-sr-27", "11529", ""}};
constexpr measure_weight a2289[] = {{"chopped", "cup", 180000, 180000, a2287},
    {"sliced", "cup", 180000, 180000, a2288},
    {"large", "piece", 182000, 182000, a2288},
    {"medium", "piece", 123000, 123000, a2287},
    {"small", "piece", 91000, 91000, a2288}};
constexpr sv a2290[] = {"paste tomato",
    "paste tomatoes",
    "paste type tomato",
    "paste type tomatoes",
    "tomatoes paste type",
    "sauce tomatoes",
    "canning tomatoes"};
constexpr measure_weight a2291[] = {{"chopped", "cup", 180000, 180000, a2288}};
constexpr sv a2292[] = {"plum tomato",
    "plum tomatoes",
    "plum type tomato",
    "plum type tomatoes",
    "roma tomato",
    "roma tomatoes",
    "roma",
    "romas",
    "italian tomato",
    "italian tomatoes",
    "italian plum tomatoes",
    "san marzano tomatoes",
    "jitomate guaje",
    "jitomate saladet",
    "tomate pera"};
constexpr measure_weight a2293[] = {{"chopped", "cup", 180000, 180000, a2288},
    {"whole", "piece", 62000, 62000, a2288}};
constexpr sv a2294[] = {"slicing tomato",
    "slicing tomatoes",
    "beefsteak tomato",
    "beefsteak tomatoes",
    "salad tomatoes",
    "tomate bola"};
constexpr measure_weight a2295[] = {{"chopped", "cup", 180000, 180000, a2288},
    {"large", "piece", 182000, 182000, a2288},
    {"medium", "piece", 123000, 123000, a2287},
    {"small", "piece", 91000, 91000, a2288}};
constexpr sv a2296[] = {"yellow tomato",
    "yellow tomatoes"};
constexpr citation a2297[] = {{"usda-sr-27", "11696", ""}};
constexpr measure_weight a2298[] = {{"chopped", "cup", 139000, 139000, a2297},
    {"whole", "piece", 212000, 212000, a2297}};
constexpr sv a2299[] = {"orange tomato",
    "orange tomatoes"};
constexpr citation a2300[] = {{"usda-sr-27", "11695", ""}};
constexpr measure_weight a2301[] = {{"chopped", "cup", 158000, 158000, a2300},
    {"whole", "piece", 111000, 111000, a2300}};
constexpr sv a2302[] = {"cherry tomato",
    "cherry tomatoes",
    "grape tomato",
    "grape tomatoes",
    "tomates cherry"};
constexpr measure_weight a2303[] = {{"whole", "cup", 149000, 149000, a2287},
    {"whole", "piece", 17000, 17000, a2287}};
constexpr sv a2304[] = {"green tomato",
    "green tomatoes",
    "unripe tomato",
    "unripe tomatoes",
    "tomate verde inmaduro"};
constexpr citation a2305[] = {{"usda-sr-27", "11527", ""}};
constexpr measure_weight a2306[] = {{"chopped", "cup", 180000, 180000, a2305},
    {"large", "piece", 182000, 182000, a2305},
    {"medium", "piece", 123000, 123000, a2305},
    {"small", "piece", 91000, 91000, a2305}};
constexpr sv a2307[] = {"tomatillo",
    "tomatillos",
    "husk tomato",
    "husk tomatoes",
    "tomate de cáscara",
    "tomates de cáscara",
    "miltomate",
    "miltomates"};
constexpr citation a2308[] = {{"usda-sr-27", "11954", ""}};
constexpr citation a2309[] = {{"usda-sr-27", "11954", ""},
    {"usda-household-list", "11954", ""}};
constexpr measure_weight a2310[] = {{"chopped", "cup", 132000, 132000, a2308},
    {"medium", "piece", 34000, 34000, a2309}};
constexpr sv a2311[] = {"canned diced tomato",
    "canned diced tomatoes",
    "diced canned tomatoes",
    "tomatoes canned diced",
    "tinned chopped tomatoes",
    "chopped tinned tomatoes",
    "canned chopped tomatoes"};
constexpr citation a2312[] = {{"usda-sr-27", "11531", ""}};
constexpr measure_weight a2313[] = {{"undrained", "cup", 240000, 240000, a2312}};
constexpr sv a2314[] = {"canned tomato",
    "canned tomatoes",
    "canned whole tomatoes",
    "whole canned tomatoes",
    "tinned tomatoes",
    "tinned plum tomatoes"};
constexpr citation a2315[] = {{"usda-sr-27", "11531", ""},
    {"usda-household-list", "11531", ""}};
constexpr measure_weight a2316[] = {{"undrained", "cup", 240000, 240000, a2315}};
constexpr sv a2317[] = {"canned crushed tomatoes",
    "crushed canned tomatoes",
    "tinned crushed tomatoes"};
constexpr citation a2318[] = {{"usda-sr-27", "11693", ""}};
constexpr measure_weight a2319[] = {{"undrained", "cup", 242000, 242000, a2318}};
constexpr sv a2320[] = {"stewed tomato",
    "stewed tomatoes",
    "canned stewed tomatoes"};
constexpr citation a2321[] = {{"usda-sr-27", "11533", ""},
    {"usda-household-list", "11533", ""}};
constexpr measure_weight a2322[] = {{"undrained", "cup", 255000, 255000, a2321}};
constexpr sv a2323[] = {"sun dried tomato",
    "sun dried tomatoes",
    "sundried tomato",
    "sundried tomatoes",
    "dried tomato",
    "dried tomatoes"};
constexpr citation a2324[] = {{"usda-sr-27", "11955", ""}};
constexpr measure_weight a2325[] = {{"pieces", "cup", 54000, 54000, a2324}};
constexpr sv a2326[] = {"tomato juice",
    "jugo de tomate",
    "zumo de tomate"};
constexpr citation a2327[] = {{"usda-sr-27", "11540", ""},
    {"usda-household-list", "11540", ""}};
constexpr measure_weight a2328[] = {{"liquid", "cup", 243000, 243000, a2327}};
constexpr sv a2329[] = {"tomato puree",
    "tomato purée",
    "strained tomatoes",
    "passata",
    "puré de tomate"};
constexpr citation a2330[] = {{"usda-sr-27", "11547", ""},
    {"usda-household-list", "11547", ""}};
constexpr measure_weight a2331[] = {{"smooth", "cup", 250000, 250000, a2330}};
constexpr sv a2332[] = {"tomato sauce",
    "plain tomato sauce",
    "canned tomato sauce",
    "salsa de tomate"};
constexpr citation a2333[] = {{"usda-sr-27", "11549", ""},
    {"usda-household-list", "11549", ""}};
constexpr measure_weight a2334[] = {{"smooth", "cup", 245000, 245000, a2333}};
constexpr sv a2335[] = {"tomato paste",
    "canned tomato paste",
    "tomato concentrate",
    "concentrado de tomate",
    "pasta de tomate"};
constexpr citation a2336[] = {{"usda-sr-27", "11546", ""},
    {"usda-household-list", "11546", ""}};
constexpr measure_weight a2337[] = {{"smooth", "cup", 262000, 262000, a2336},
    {"smooth", "tbsp", 16000, 16000, a2336}};
constexpr sv a2338[] = {"tomato ketchup",
    "ketchup",
    "catsup",
    "tomato catsup",
    "catchup"};
constexpr citation a2339[] = {{"usda-sr-27", "11935", ""},
    {"usda-household-list", "11935", ""}};
constexpr measure_weight a2340[] = {{"smooth", "cup", 240000, 240000, a2339},
    {"smooth", "tbsp", 15000, 17000, a2339}};
constexpr sv a2341[] = {"beet",
    "beets",
    "beetroot",
    "beetroots",
    "red beet",
    "red beets",
    "remolacha",
    "remolachas",
    "betabel",
    "betabeles"};
constexpr citation a2342[] = {{"usda-sr-27", "11080", ""}};
constexpr citation a2343[] = {{"usda-sr-27", "11081", ""},
    {"usda-household-list", "11081", ""}};
constexpr measure_weight a2344[] = {{"raw", "cup", 136000, 136000, a2342},
    {"raw", "piece", 82000, 82000, a2342},
    {"cooked-sliced", "cup", 170000, 170000, a2343},
    {"cooked-sliced", "piece", 50000, 50000, a2343}};
constexpr sv a2345[] = {"carrot",
    "carrots",
    "fresh carrot",
    "fresh carrots",
    "zanahoria",
    "zanahorias"};
constexpr citation a2346[] = {{"usda-sr-27", "11124", ""}};
constexpr citation a2347[] = {{"usda-sr-27", "11124", ""},
    {"usda-household-list", "11124", ""}};
constexpr measure_weight a2348[] = {{"chopped", "cup", 128000, 128000, a2346},
    {"grated", "cup", 110000, 110000, a2347},
    {"sliced", "cup", 122000, 122000, a2346},
    {"large", "piece", 72000, 72000, a2346},
    {"medium", "piece", 61000, 72000, a2347},
    {"small", "piece", 50000, 50000, a2346}};
constexpr sv a2349[] = {"baby carrot",
    "baby carrots",
    "peeled baby carrots"};
constexpr citation a2350[] = {{"usda-sr-27", "11960", ""}};
constexpr citation a2351[] = {{"usda-sr-27", "11960", ""},
    {"usda-household-list", "11960", ""}};
constexpr measure_weight a2352[] = {{"large", "piece", 15000, 15000, a2350},
    {"medium", "piece", 10000, 10000, a2351}};
constexpr sv a2353[] = {"celery",
    "celery stalk",
    "celery stalks",
    "celery stick",
    "celery sticks",
    "celery rib",
    "celery ribs",
    "celery stem",
    "celery stems",
    "apio"};
constexpr citation a2354[] = {{"usda-sr-27", "11143", ""},
    {"usda-household-list", "11143", ""}};
constexpr citation a2355[] = {{"usda-sr-27", "11143", ""}};
constexpr measure_weight a2356[] = {{"chopped", "cup", 101000, 120000, a2354},
    {"chopped", "tbsp", 7500, 7500, a2355},
    {"large", "piece", 64000, 64000, a2355},
    {"medium", "piece", 40000, 40000, a2354},
    {"small", "piece", 17000, 17000, a2355}};
constexpr sv a2357[] = {"celeriac",
    "celery root",
    "celery roots",
    "celeriacs",
    "apionabo"};
constexpr citation a2358[] = {{"usda-sr-27", "11141", ""}};
constexpr measure_weight a2359[] = {{"raw", "cup", 156000, 156000, a2358}};
constexpr sv a2360[] = {"fennel bulb",
    "fennel bulbs",
    "bulb fennel",
    "florence fennel",
    "finocchio",
    "hinojo"};
constexpr citation a2361[] = {{"usda-sr-27", "11957", ""}};
constexpr measure_weight a2362[] = {{"sliced", "cup", 87000, 87000, a2361},
    {"sliced", "piece", 234000, 234000, a2361}};
constexpr sv a2363[] = {"parsnip",
    "parsnips",
    "chirivía",
    "chirivías"};
constexpr citation a2364[] = {{"usda-sr-27", "11298", ""}};
constexpr measure_weight a2365[] = {{"sliced", "cup", 133000, 133000, a2364}};
constexpr sv a2366[] = {"turnip",
    "turnips",
    "nabo",
    "nabos"};
constexpr citation a2367[] = {{"usda-sr-27", "11564", ""}};
constexpr measure_weight a2368[] = {{"cubed", "cup", 130000, 130000, a2367},
    {"large", "piece", 183000, 183000, a2367},
    {"medium", "piece", 122000, 122000, a2367},
    {"small", "piece", 61000, 61000, a2367}};
constexpr sv a2369[] = {"rutabaga",
    "rutabagas",
    "swede",
    "swedes",
    "colinabo"};
constexpr citation a2370[] = {{"usda-sr-27", "11435", ""}};
constexpr measure_weight a2371[] = {{"cubed", "cup", 140000, 140000, a2370},
    {"large", "piece", 772000, 772000, a2370},
    {"medium", "piece", 386000, 386000, a2370},
    {"small", "piece", 192000, 192000, a2370}};
constexpr sv a2372[] = {"radish",
    "radishes",
    "rábano",
    "rábanos"};
constexpr citation a2373[] = {{"usda-sr-27", "11429", ""}};
constexpr citation a2374[] = {{"usda-sr-27", "11429", ""},
    {"usda-household-list", "11429", ""}};
constexpr measure_weight a2375[] = {{"sliced", "cup", 116000, 116000, a2373},
    {"large", "piece", 9000, 9000, a2373},
    {"medium", "piece", 4500, 4500, a2374},
    {"small", "piece", 2000, 2000, a2373}};
constexpr sv a2376[] = {"daikon",
    "daikon radish",
    "daikon radishes",
    "mooli",
    "white radish"};
constexpr citation a2377[] = {{"usda-sr-27", "11430", ""}};
constexpr measure_weight a2378[] = {{"sliced", "cup", 116000, 116000, a2377},
    {"sliced", "piece", 338000, 338000, a2377}};
constexpr sv a2379[] = {"kohlrabi",
    "kohlrabis"};
constexpr citation a2380[] = {{"usda-sr-27", "11241", ""}};
constexpr measure_weight a2381[] = {{"raw", "cup", 135000, 135000, a2380}};
constexpr sv a2382[] = {"potato",
    "potatoes",
    "white potato",
    "white potatoes",
    "red potatoes",
    "russet potatoes",
    "new potatoes",
    "papa",
    "papas",
    "patata",
    "patatas"};
constexpr citation a2383[] = {{"usda-sr-27", "11352", ""}};
constexpr citation a2384[] = {{"usda-sr-27", "11352", ""},
    {"usda-sr-27", "11354", ""}};
constexpr measure_weight a2385[] = {{"diced", "cup", 150000, 150000, a2383},
    {"large", "piece", 369000, 369000, a2383},
    {"medium", "piece", 213000, 213000, a2383},
    {"small", "piece", 92000, 170000, a2384}};
constexpr sv a2386[] = {"mashed potato",
    "mashed potatoes",
    "puré de papas"};
constexpr sv a2387[] = {"sweet potato",
    "sweet potatoes",
    "yam",
    "yams",
    "kumara",
    "camote",
    "camotes",
    "batata",
    "batatas",
    "boniato"};
constexpr citation a2388[] = {{"usda-sr-27", "11507", ""}};
constexpr measure_weight a2389[] = {{"cubed", "cup", 133000, 133000, a2388},
    {"cubed", "piece", 130000, 130000, a2388}};
constexpr sv a2390[] = {"horseradish",
    "horseradish root",
    "fresh horseradish",
    "grated horseradish",
    "rábano picante"};
constexpr sv a2391[] = {"jicama",
    "jicamas",
    "jícama",
    "jícamas",
    "yam bean",
    "yam beans",
    "yambean",
    "mexican turnip"};
constexpr citation a2392[] = {{"usda-sr-27", "11603", ""}};
constexpr measure_weight a2393[] = {{"sliced", "cup", 120000, 120000, a2392},
    {"cubed", "cup", 130000, 130000, a2392},
    {"large", "piece", 1200000, 1200000, a2392},
    {"medium", "piece", 659000, 659000, a2392},
    {"small", "piece", 365000, 365000, a2392}};
constexpr sv a2394[] = {"chayote",
    "chayotes",
    "chayote squash",
    "mirliton",
    "mirlitons",
    "christophine",
    "choko",
    "chokos"};
constexpr citation a2395[] = {{"usda-sr-27", "11149", ""}};
constexpr measure_weight a2396[] = {{"cubed", "cup", 132000, 132000, a2395},
    {"cubed", "piece", 203000, 203000, a2395}};
constexpr sv a2397[] = {"cabbage",
    "cabbages",
    "white cabbage",
    "green cabbage",
    "head cabbage",
    "cabbage head",
    "repollo",
    "repollos",
    "col",
    "coles"};
constexpr citation a2398[] = {{"usda-sr-27", "11109", ""},
    {"usda-household-list", "11109", ""}};
constexpr citation a2399[] = {{"usda-sr-27", "11109", ""}};
constexpr measure_weight a2400[] = {{"shredded", "cup", 70000, 70000, a2398},
    {"chopped", "cup", 89000, 89000, a2399},
    {"large", "piece", 1248000, 1248000, a2399},
    {"medium", "piece", 908000, 908000, a2399},
    {"small", "piece", 714000, 714000, a2399}};
constexpr sv a2401[] = {"red cabbage",
    "red cabbages",
    "purple cabbage",
    "col lombarda"};
constexpr citation a2402[] = {{"usda-sr-27", "11112", ""},
    {"usda-household-list", "11112", ""}};
constexpr citation a2403[] = {{"usda-sr-27", "11112", ""}};
constexpr measure_weight a2404[] = {{"shredded", "cup", 70000, 70000, a2402},
    {"chopped", "cup", 89000, 89000, a2403},
    {"large", "piece", 1134000, 1134000, a2403},
    {"medium", "piece", 839000, 839000, a2403},
    {"small", "piece", 567000, 567000, a2403}};
constexpr sv a2405[] = {"chinese cabbage",
    "napa cabbage",
    "napa",
    "chinese leaves",
    "bok choy",
    "pak choi",
    "pak choy"};
constexpr citation a2406[] = {{"usda-sr-27", "11116", ""},
    {"usda-sr-27", "11119", ""}};
constexpr measure_weight a2407[] = {{"shredded", "cup", 70000, 76000, a2406}};
constexpr sv a2408[] = {"sauerkraut",
    "kraut",
    "chucrut"};
constexpr citation a2409[] = {{"usda-sr-27", "11439", ""},
    {"usda-household-list", "11439", ""}};
constexpr measure_weight a2410[] = {{"undrained", "cup", 236000, 236000, a2409}};
constexpr sv a2411[] = {"cauliflower",
    "cauliflowers",
    "cauliflower flowerets",
    "cauliflower florets",
    "coliflor"};
constexpr citation a2412[] = {{"usda-sr-27", "11135", ""},
    {"usda-household-list", "11135", ""}};
constexpr measure_weight a2413[] = {{"chopped", "cup", 100000, 107000, a2412},
    {"floweret", "piece", 13000, 13000, a2412}};
constexpr sv a2414[] = {"broccoli",
    "broccoli florets",
    "brócoli",
    "brécol"};
constexpr citation a2415[] = {{"usda-sr-27", "11090", ""},
    {"usda-household-list", "11090", ""}};
constexpr measure_weight a2416[] = {{"chopped", "cup", 88000, 91000, a2415}};
constexpr sv a2417[] = {"brussels sprouts",
    "brussels sprout",
    "brussel sprouts",
    "sprouts",
    "coles de bruselas"};
constexpr citation a2418[] = {{"usda-sr-27", "11098", ""}};
constexpr measure_weight a2419[] = {{"raw", "cup", 88000, 88000, a2418},
    {"raw", "piece", 19000, 19000, a2418}};
constexpr sv a2420[] = {"artichoke",
    "artichokes",
    "globe artichoke",
    "artichoke hearts",
    "alcachofa",
    "alcachofas"};
constexpr citation a2421[] = {{"usda-sr-27", "11007", ""}};
constexpr measure_weight a2422[] = {{"large", "piece", 162000, 162000, a2421},
    {"medium", "piece", 128000, 128000, a2421}};
constexpr sv a2423[] = {"jerusalem artichoke",
    "jerusalem artichokes",
    "sunchoke",
    "sunchokes",
    "topinambur"};
constexpr citation a2424[] = {{"usda-sr-27", "11226", ""},
    {"usda-household-list", "11226", ""}};
constexpr measure_weight a2425[] = {{"sliced", "cup", 150000, 150000, a2424}};
constexpr sv a2426[] = {"asparagus",
    "asparagus spear",
    "asparagus spears",
    "espárrago",
    "espárragos"};
constexpr citation a2427[] = {{"usda-sr-27", "11011", ""}};
constexpr measure_weight a2428[] = {{"raw", "cup", 134000, 134000, a2427},
    {"large", "piece", 20000, 20000, a2427},
    {"medium", "piece", 16000, 16000, a2427},
    {"small", "piece", 12000, 12000, a2427}};
constexpr sv a2429[] = {"cucumber",
    "cucumbers",
    "slicing cucumber",
    "slicing cucumbers",
    "english cucumber",
    "english cucumbers",
    "pepino",
    "pepinos"};
constexpr citation a2430[] = {{"usda-sr-27", "11205", ""},
    {"usda-sr-27", "11206", ""},
    {"usda-household-list", "11205", ""},
    {"usda-household-list", "11206", ""}};
constexpr citation a2431[] = {{"usda-sr-27", "11206", ""}};
constexpr measure_weight a2432[] = {{"sliced", "cup", 104000, 119000, a2430},
    {"chopped", "cup", 133000, 133000, a2431},
    {"large", "piece", 280000, 301000, a2430},
    {"medium", "piece", 201000, 201000, a2431},
    {"small", "piece", 158000, 158000, a2431}};
constexpr sv a2433[] = {"pickling cucumber",
    "pickling cucumbers",
    "pickle cucumber",
    "pickle cucumbers",
    "gherkin cucumbers",
    "kirby cucumber",
    "kirby cucumbers",
    "pepinillos frescos"};
constexpr sv a2434[] = {"pickle",
    "pickles",
    "dill pickle",
    "dill pickles",
    "sweet pickle",
    "sweet pickles",
    "gherkin",
    "gherkins",
    "pickle relish",
    "sweet pickle relish",
    "relish",
    "pepinillo",
    "pepinillos"};
constexpr sv a2435[] = {"zucchini",
    "zucchinis",
    "courgette",
    "courgettes",
    "green summer squash",
    "calabacín",
    "calabacines",
    "calabacita",
    "calabacitas"};
constexpr citation a2436[] = {{"usda-sr-27", "11477", ""}};
constexpr measure_weight a2437[] = {{"chopped", "cup", 124000, 124000, a2436},
    {"sliced", "cup", 113000, 113000, a2436},
    {"large", "piece", 323000, 323000, a2436},
    {"medium", "piece", 196000, 196000, a2436},
    {"small", "piece", 118000, 118000, a2436}};
constexpr sv a2438[] = {"yellow summer squash",
    "yellow squash",
    "summer squash",
    "crookneck squash",
    "straightneck squash",
    "crookneck",
    "calabaza de verano"};
constexpr citation a2439[] = {{"usda-sr-27", "11467", ""},
    {"usda-sr-27", "11641", ""}};
constexpr measure_weight a2440[] = {{"sliced", "cup", 113000, 127000, a2439}};
constexpr sv a2441[] = {"butternut squash",
    "butternut squashes",
    "butternut",
    "butternut pumpkin"};
constexpr citation a2442[] = {{"usda-sr-27", "11485", ""}};
constexpr measure_weight a2443[] = {{"cubed", "cup", 140000, 140000, a2442}};
constexpr sv a2444[] = {"winter squash",
    "acorn squash",
    "hubbard squash",
    "kabocha",
    "kabocha squash",
    "delicata squash",
    "buttercup squash"};
constexpr citation a2445[] = {{"usda-sr-27", "11482", ""},
    {"usda-sr-27", "11489", ""},
    {"usda-sr-27", "11643", ""}};
constexpr measure_weight a2446[] = {{"cubed", "cup", 116000, 140000, a2445}};
constexpr sv a2447[] = {"spaghetti squash",
    "vegetable spaghetti"};
constexpr citation a2448[] = {{"usda-sr-27", "11492", ""}};
constexpr measure_weight a2449[] = {{"cubed", "cup", 101000, 101000, a2448}};
constexpr sv a2450[] = {"pumpkin",
    "pumpkins",
    "calabaza",
    "calabazas",
    "zapallo"};
constexpr citation a2451[] = {{"usda-sr-27", "11422", ""}};
constexpr measure_weight a2452[] = {{"cubed", "cup", 116000, 116000, a2451}};
constexpr sv a2453[] = {"pumpkin puree",
    "pumpkin purée",
    "canned pumpkin",
    "mashed pumpkin",
    "pumpkin butter",
    "squash puree"};
constexpr citation a2454[] = {{"usda-sr-27", "11424", ""},
    {"usda-household-list", "11424", ""}};
constexpr measure_weight a2455[] = {{"smooth", "cup", 245000, 245000, a2454}};
constexpr sv a2456[] = {"eggplant",
    "eggplants",
    "aubergine",
    "aubergines",
    "brinjal",
    "berenjena",
    "berenjenas"};
constexpr citation a2457[] = {{"usda-sr-27", "11209", ""}};
constexpr measure_weight a2458[] = {{"cubed", "cup", 82000, 82000, a2457}};
constexpr sv a2459[] = {"okra",
    "okras",
    "okra pod",
    "okra pods",
    "lady's fingers",
    "ladies' fingers",
    "bhindi",
    "quimbombó",
    "quimbombo"};
constexpr citation a2460[] = {{"usda-sr-27", "11278", ""}};
constexpr measure_weight a2461[] = {{"raw", "cup", 100000, 100000, a2460}};
constexpr sv a2462[] = {"corn",
    "sweet corn",
    "sweetcorn",
    "corn kernels",
    "corn kernel",
    "whole kernel corn",
    "kernel corn",
    "yellow corn",
    "white corn",
    "fresh corn",
    "corn on the cob",
    "corn cut from the cob",
    "maíz",
    "maíz dulce",
    "elote",
    "granos de elote",
    "choclo"};
constexpr citation a2463[] = {{"usda-sr-27", "11167", ""},
    {"usda-sr-27", "11168", ""},
    {"usda-sr-27", "11900", ""},
    {"usda-sr-27", "11901", ""}};
constexpr citation a2464[] = {{"usda-sr-27", "11178", ""}};
constexpr citation a2465[] = {{"usda-sr-27", "11167", ""},
    {"usda-sr-27", "11900", ""}};
constexpr measure_weight a2466[] = {{"kernels", "cup", 145000, 157000, a2463},
    {"frozen", "cup", 136000, 136000, a2464},
    {"ear-large", "piece", 143000, 143000, a2465},
    {"ear-medium", "piece", 90000, 102000, a2465},
    {"ear-small", "piece", 73000, 73000, a2465}};
constexpr sv a2467[] = {"cream style corn",
    "creamed corn",
    "cream corn",
    "corn cream style"};
constexpr citation a2468[] = {{"usda-sr-27", "11174", ""},
    {"usda-household-list", "11174", ""}};
constexpr measure_weight a2469[] = {{"canned", "cup", 256000, 256000, a2468}};
constexpr sv a2470[] = {"baby corn",
    "young corn",
    "baby sweetcorn"};
constexpr sv a2471[] = {"mushroom",
    "mushrooms",
    "white mushroom",
    "white mushrooms",
    "button mushroom",
    "button mushrooms",
    "champignon",
    "champignons",
    "crimini mushrooms",
    "cultivated mushrooms",
    "champiñón",
    "champiñones"};
constexpr citation a2472[] = {{"usda-sr-27", "11260", ""},
    {"usda-household-list", "11260", ""}};
constexpr citation a2473[] = {{"usda-sr-27", "11260", ""}};
constexpr measure_weight a2474[] = {{"sliced", "cup", 70000, 70000, a2472},
    {"whole", "cup", 96000, 96000, a2473},
    {"large", "piece", 23000, 23000, a2473},
    {"medium", "piece", 18000, 18000, a2473},
    {"small", "piece", 10000, 10000, a2473}};
constexpr sv a2475[] = {"wild mushroom",
    "wild mushrooms",
    "shiitake",
    "shiitake mushrooms",
    "morel",
    "morels",
    "chanterelle",
    "chanterelles",
    "oyster mushroom",
    "oyster mushrooms",
    "portobello",
    "portobello mushrooms",
    "seta",
    "setas"};
constexpr sv a2476[] = {"dried mushroom",
    "dried mushrooms",
    "dried porcini",
    "dried shiitake"};
constexpr sv a2477[] = {"avocado",
    "avocados",
    "avocadoes",
    "guacamole",
    "aguacate",
    "aguacates",
    "palta",
    "paltas"};
constexpr citation a2478[] = {{"usda-sr-27", "09037", ""}};
constexpr measure_weight a2479[] = {{"cubed", "cup", 150000, 150000, a2478},
    {"sliced", "cup", 146000, 146000, a2478},
    {"smooth", "cup", 230000, 230000, a2478}};
constexpr sv a2480[] = {"nopal",
    "nopales",
    "nopalitos",
    "cactus paddle",
    "cactus paddles"};
constexpr citation a2481[] = {{"usda-sr-27", "11963", ""}};
constexpr measure_weight a2482[] = {{"sliced", "cup", 86000, 86000, a2481}};
constexpr sv a2483[] = {"mixed vegetables",
    "mixed vegetable",
    "frozen mixed vegetables",
    "vegetables",
    "vegetable",
    "verduras"};
constexpr sv a2484[] = {"spinach",
    "spinach leaves",
    "espinaca",
    "espinacas"};
constexpr sv a2485[] = {"leafy-green"};
constexpr citation a2486[] = {{"usda-sr-27", "11457", ""},
    {"usda-household-list", "11457", ""}};
constexpr measure_weight a2487[] = {{"leaves", "cup", 30000, 30000, a2486}};
constexpr sv a2488[] = {"kale",
    "col rizada"};
constexpr citation a2489[] = {{"usda-sr-27", "11233", ""}};
constexpr measure_weight a2490[] = {{"leaves", "cup", 16000, 16000, a2489}};
constexpr sv a2491[] = {"swiss chard",
    "chard",
    "silverbeet",
    "acelga",
    "acelgas"};
constexpr citation a2492[] = {{"usda-sr-27", "11147", ""}};
constexpr measure_weight a2493[] = {{"leaves", "cup", 36000, 36000, a2492}};
constexpr sv a2494[] = {"collard greens",
    "collards",
    "collard"};
constexpr citation a2495[] = {{"usda-sr-27", "11161", ""}};
constexpr measure_weight a2496[] = {{"chopped", "cup", 36000, 36000, a2495}};
constexpr sv a2497[] = {"mustard greens",
    "mustard leaves",
    "greens",
    "turnip greens",
    "beet greens"};
constexpr citation a2498[] = {{"usda-sr-27", "11270", ""},
    {"usda-sr-27", "11568", ""}};
constexpr measure_weight a2499[] = {{"chopped", "cup", 55000, 56000, a2498}};
constexpr sv a2500[] = {"lettuce",
    "lettuces",
    "iceberg lettuce",
    "romaine",
    "romaine lettuce",
    "lechuga"};
constexpr citation a2501[] = {{"usda-sr-27", "11252", ""}};
constexpr measure_weight a2502[] = {{"shredded", "cup", 72000, 72000, a2501}};
constexpr sv a2503[] = {"green bean",
    "green beans",
    "snap bean",
    "snap beans",
    "string bean",
    "string beans",
    "french bean",
    "french beans",
    "fresh green beans",
    "haricot vert",
    "haricots verts",
    "runner bean",
    "runner beans",
    "judía verde",
    "judías verdes",
    "ejote",
    "ejotes",
    "vainita",
    "vainitas"};
constexpr citation a2504[] = {{"usda-sr-27", "11052", ""}};
constexpr measure_weight a2505[] = {{"cut", "cup", 100000, 100000, a2504}};
constexpr sv a2506[] = {"yellow bean",
    "yellow beans",
    "wax bean",
    "wax beans",
    "yellow wax bean",
    "yellow wax beans",
    "yellow snap beans",
    "butter wax beans"};
constexpr citation a2507[] = {{"usda-sr-27", "11722", ""}};
constexpr measure_weight a2508[] = {{"cut", "cup", 100000, 100000, a2507}};
constexpr sv a2509[] = {"lima bean",
    "lima beans",
    "baby lima beans",
    "fresh lima beans",
    "green lima beans",
    "fordhook lima beans",
    "haba lima"};
constexpr citation a2510[] = {{"usda-sr-27", "11031", ""}};
constexpr measure_weight a2511[] = {{"shelled", "cup", 156000, 156000, a2510}};
constexpr sv a2512[] = {"green pea",
    "green peas",
    "pea",
    "peas",
    "garden peas",
    "english peas",
    "shelled peas",
    "petits pois",
    "guisante",
    "guisantes",
    "chícharo",
    "chícharos",
    "arveja",
    "arvejas"};
constexpr citation a2513[] = {{"usda-sr-27", "11304", ""}};
constexpr measure_weight a2514[] = {{"shelled", "cup", 145000, 145000, a2513}};
constexpr sv a2515[] = {"snow pea",
    "snow peas",
    "sugar snap pea",
    "sugar snap peas",
    "snap peas",
    "mangetout",
    "edible podded peas"};
constexpr citation a2516[] = {{"usda-sr-27", "11300", ""}};
constexpr measure_weight a2517[] = {{"whole", "cup", 63000, 63000, a2516},
    {"chopped", "cup", 98000, 98000, a2516}};
constexpr sv a2518[] = {"black eyed pea",
    "black eyed peas",
    "blackeyed peas",
    "cowpea",
    "cowpeas",
    "field pea",
    "field peas",
    "crowder peas",
    "southern peas"};
constexpr citation a2519[] = {{"usda-sr-27", "11191", ""}};
constexpr measure_weight a2520[] = {{"shelled", "cup", 145000, 145000, a2519}};
constexpr sv a2521[] = {"broad bean",
    "broad beans",
    "fava bean",
    "fava beans",
    "fresh fava beans",
    "haba",
    "habas"};
constexpr citation a2522[] = {{"usda-sr-27", "11088", ""}};
constexpr measure_weight a2523[] = {{"shelled", "cup", 109000, 109000, a2522}};
constexpr sv a2524[] = {"edamame",
    "green soybean",
    "green soybeans"};
constexpr citation a2525[] = {{"usda-sr-27", "11211", ""}};
constexpr measure_weight a2526[] = {{"shelled", "cup", 118000, 118000, a2525}};
constexpr sv a2527[] = {"bean sprouts",
    "bean sprout",
    "mung bean sprouts",
    "alfalfa sprouts"};
constexpr citation a2528[] = {{"usda-sr-27", "11043", ""},
    {"usda-household-list", "11043", ""}};
constexpr measure_weight a2529[] = {{"raw", "cup", 104000, 104000, a2528}};
constexpr sv a2530[] = {"olive",
    "olives",
    "black olive",
    "black olives",
    "ripe olives",
    "green olive",
    "green olives",
    "aceituna",
    "aceitunas"};
constexpr citation a2531[] = {{"usda-sr-27", "09193", ""}};
constexpr measure_weight a2532[] = {{"ripe", "tbsp", 8400, 8400, a2531}};
constexpr sv a2533[] = {"caper",
    "capers",
    "alcaparra",
    "alcaparras"};
constexpr citation a2534[] = {{"usda-sr-27", "02054", ""}};
constexpr measure_weight a2535[] = {{"drained", "tbsp", 8600, 8600, a2534}};
constexpr sv a2536[] = {"seaweed",
    "kelp",
    "nori",
    "wakame",
    "kombu"};
constexpr sv a2537[] = {"kimchi"};
constexpr ingredient a2538[] = {{"vinegar", a1315, acidity::acid, "", a1316, 0, a1318},
    {"white-vinegar", a1319, acidity::acid, "vinegar", a1316, 0, a1321},
    {"cider-vinegar", a1322, acidity::acid, "vinegar", a1316, 0, a1324},
    {"four-percent-vinegar", a1325, acidity::acid, "", a1316, 4, {}},
    {"homemade-vinegar", a1326, acidity::acid, "", a1327, 0, {}},
    {"cleaning-vinegar", a1328, acidity::acid, "", a1316, 0, {}},
    {"rice-vinegar", a1329, acidity::acid, "", a1316, 0, {}},
    {"wine-vinegar", a1330, acidity::acid, "", a1316, 0, a1332},
    {"balsamic-vinegar", a1333, acidity::acid, "", a1316, 0, a1335},
    {"malt-vinegar", a1336, acidity::acid, "", a1316, 0, {}},
    {"flavored-vinegar", a1337, acidity::acid, "", a1316, 0, {}},
    {"lemon-juice", a1338, acidity::acid, "", a1316, 0, a1340},
    {"bottled-lemon-juice", a1341, acidity::acid, "lemon-juice", a1316, 0, a1343},
    {"fresh-lemon-juice", a1344, acidity::acid, "", a1345, 0, a1347},
    {"lime-juice", a1348, acidity::acid, "", a1316, 0, a1350},
    {"bottled-lime-juice", a1351, acidity::acid, "lime-juice", a1316, 0, a1353},
    {"fresh-lime-juice", a1354, acidity::acid, "", a1345, 0, a1356},
    {"key-lime-juice", a1357, acidity::acid, "", a1345, 0, {}},
    {"citric-acid", a1358, acidity::acid, "", a1359, 0, {}},
    {"ascorbic-acid", a1360, acidity::acid, "", {}, 0, a1362},
    {"produce-protector", a1363, acidity::neutral, "", {}, 0, {}},
    {"cream-of-tartar", a1364, acidity::neutral, "", {}, 0, a1366},
    {"baking-soda", a1367, acidity::neutral, "", {}, 0, a1369},
    {"baking-powder", a1370, acidity::neutral, "", {}, 0, a1372},
    {"aspirin", a1373, acidity::neutral, "", {}, 0, {}},
    {"water", a1374, acidity::neutral, "", a1375, 0, a1377},
    {"ice", a1378, acidity::neutral, "", a111, 0, {}},
    {"apple-juice", a1379, acidity::acid, "", a1380, 0, a1382},
    {"apple-cider", a1383, acidity::acid, "", a1380, 0, {}},
    {"crab-apple-juice", a1384, acidity::acid, "", a1380, 0, {}},
    {"blackberry-juice", a1385, acidity::acid, "", a1380, 0, a1387},
    {"cranberry-juice", a1388, acidity::acid, "", a1380, 0, {}},
    {"grape-juice", a1389, acidity::acid, "", a1380, 0, a1391},
    {"grapefruit-juice", a1392, acidity::acid, "", a1380, 0, a1394},
    {"orange-juice", a1395, acidity::acid, "", a1380, 0, a1397},
    {"pineapple-juice", a1398, acidity::acid, "", a1380, 0, a1400},
    {"plum-juice", a1401, acidity::acid, "", a1380, 0, {}},
    {"prune-juice", a1402, acidity::acid, "", a1380, 0, a1404},
    {"pomegranate-juice", a1405, acidity::acid, "", a1380, 0, a1407},
    {"fruit-nectar", a1408, acidity::acid, "", a1380, 0, {}},
    {"carrot-juice", a1409, acidity::low_acid, "", a1380, 0, a1411},
    {"vegetable-juice", a1412, acidity::borderline, "", a1380, 0, a1414},
    {"coconut-water", a1415, acidity::low_acid, "", a1380, 0, {}},
    {"broth", a1416, acidity::low_acid, "", a1380, 0, {}},
    {"bouillon", a1417, acidity::low_acid, "", a198, 0, {}},
    {"gravy", a1418, acidity::low_acid, "", a1419, 0, {}},
    {"whey", a1420, acidity::low_acid, "", a1421, 0, {}},
    {"coffee", a1422, acidity::low_acid, "", a1380, 0, {}},
    {"tea", a1423, acidity::low_acid, "", a1380, 0, {}},
    {"soda-drink", a1424, acidity::acid, "", a1380, 0, {}},
    {"wine", a1425, acidity::acid, "", a1426, 0, {}},
    {"beer", a1427, acidity::borderline, "", a1426, 0, {}},
    {"spirits", a1428, acidity::neutral, "", a1426, 0, {}},
    {"soy-sauce", a1429, acidity::borderline, "", a1430, 0, a1432},
    {"fish-sauce", a1433, acidity::low_acid, "", a1430, 0, {}},
    {"worcestershire-sauce", a1434, acidity::acid, "", a1380, 0, {}},
    {"hot-sauce", a1435, acidity::acid, "", a1380, 0, {}},
    {"barbecue-sauce", a1436, acidity::acid, "", {}, 0, {}},
    {"salsa", a1437, acidity::borderline, "", {}, 0, {}},
    {"spaghetti-sauce", a1438, acidity::low_acid, "", {}, 0, {}},
    {"pesto", a1439, acidity::low_acid, "", a1440, 0, {}},
    {"miso", a1441, acidity::low_acid, "", {}, 0, {}},
    {"liquid-smoke", a1442, acidity::neutral, "", a1380, 0, {}},
    {"butter", a1443, acidity::neutral, "", a1444, 0, a1446},
    {"margarine", a1447, acidity::neutral, "", a1440, 0, a1449},
    {"ghee", a1450, acidity::neutral, "", a1444, 0, {}},
    {"cocoa-butter", a1451, acidity::neutral, "", a1440, 0, {}},
    {"lard", a1452, acidity::neutral, "", a1440, 0, a1454},
    {"shortening", a1455, acidity::neutral, "", a1440, 0, a1457},
    {"suet", a1458, acidity::neutral, "", a1440, 0, {}},
    {"bacon-fat", a1459, acidity::neutral, "", a1440, 0, {}},
    {"oil", a1460, acidity::neutral, "", a1440, 0, {}},
    {"olive-oil", a1461, acidity::neutral, "oil", a1440, 0, a1463},
    {"vegetable-oil", a1464, acidity::neutral, "oil", a1440, 0, a1466},
    {"canola-oil", a1467, acidity::neutral, "vegetable-oil", a1440, 0, a1469},
    {"corn-oil", a1470, acidity::neutral, "vegetable-oil", a1440, 0, a1472},
    {"salad-oil", a1473, acidity::neutral, "oil", a1440, 0, a1475},
    {"sesame-oil", a1476, acidity::neutral, "oil", a1440, 0, {}},
    {"coconut-oil", a1477, acidity::neutral, "oil", a1440, 0, {}},
    {"garlic-oil", a1478, acidity::low_acid, "", a1440, 0, {}},
    {"milk", a1479, acidity::low_acid, "", a1421, 0, a1481},
    {"dry-milk", a1482, acidity::low_acid, "", a1483, 0, {}},
    {"evaporated-milk", a1484, acidity::low_acid, "", a1421, 0, a1486},
    {"condensed-milk", a1487, acidity::low_acid, "", a1421, 0, a1489},
    {"buttermilk", a1490, acidity::borderline, "", a1421, 0, a1492},
    {"coconut-milk", a1493, acidity::low_acid, "", a1494, 0, {}},
    {"plant-milk", a1495, acidity::low_acid, "", a1380, 0, {}},
    {"cream", a1496, acidity::low_acid, "", a1497, 0, a1499},
    {"sour-cream", a1500, acidity::borderline, "", a1444, 0, a1502},
    {"yogurt", a1503, acidity::borderline, "", a1483, 0, a1505},
    {"ice-cream", a1506, acidity::low_acid, "", a1483, 0, {}},
    {"cheese", a1507, acidity::low_acid, "", a1483, 0, a1509},
    {"parmesan-cheese", a1510, acidity::low_acid, "cheese", a1483, 0, a1512},
    {"cottage-cheese", a1513, acidity::low_acid, "", a1483, 0, {}},
    {"cream-cheese", a1514, acidity::borderline, "", a1444, 0, a1516},
    {"egg", a1517, acidity::low_acid, "", a1518, 0, a1520},
    {"egg-white", a1521, acidity::low_acid, "", a1518, 0, a1523},
    {"egg-yolk", a1524, acidity::low_acid, "", a1518, 0, a1526},
    {"mayonnaise", a1527, acidity::borderline, "", a1528, 0, {}},
    {"chocolate", a1529, acidity::low_acid, "", a1440, 0, {}},
    {"cocoa", a1530, acidity::low_acid, "", {}, 0, {}},
    {"apple", a1531, acidity::acid, "", {}, 0, a1536},
    {"tart-apple", a1537, acidity::acid, "apple", {}, 0, a1539},
    {"crab-apple", a1540, acidity::acid, "", {}, 0, a1542},
    {"applesauce", a1543, acidity::acid, "", {}, 0, a1545},
    {"apple-butter", a1546, acidity::acid, "", {}, 0, {}},
    {"apricot", a1547, acidity::acid, "", {}, 0, a1550},
    {"dried-apricot", a1551, acidity::acid, "", {}, 0, a1553},
    {"banana", a1554, acidity::low_acid, "", {}, 0, a1557},
    {"berry", a1558, acidity::acid, "", {}, 0, {}},
    {"blackberry", a1559, acidity::acid, "berry", {}, 0, a1561},
    {"boysenberry", a1562, acidity::acid, "berry", {}, 0, a1564},
    {"dewberry", a1565, acidity::acid, "berry", {}, 0, {}},
    {"gooseberry", a1566, acidity::acid, "berry", {}, 0, a1568},
    {"loganberry", a1569, acidity::acid, "berry", {}, 0, a1571},
    {"raspberry", a1572, acidity::acid, "berry", {}, 0, a1574},
    {"strawberry", a1575, acidity::acid, "berry", {}, 0, a1578},
    {"blueberry", a1579, acidity::acid, "", {}, 0, a1581},
    {"cranberry", a1582, acidity::acid, "", {}, 0, a1584},
    {"dried-cranberry", a1585, acidity::acid, "", {}, 0, {}},
    {"currant", a1586, acidity::acid, "", {}, 0, a1588},
    {"elderberry", a1589, acidity::borderline, "", {}, 0, a1591},
    {"mulberry", a1592, acidity::borderline, "", {}, 0, a1594},
    {"cantaloupe", a1595, acidity::low_acid, "", {}, 0, a1598},
    {"melon", a1599, acidity::low_acid, "", {}, 0, a1601},
    {"watermelon", a1602, acidity::low_acid, "", {}, 0, a1604},
    {"watermelon-rind", a1605, acidity::low_acid, "", {}, 0, {}},
    {"cherry", a1606, acidity::acid, "", {}, 0, a1609},
    {"sweet-cherry", a1610, acidity::acid, "cherry", {}, 0, a1612},
    {"sour-cherry", a1613, acidity::acid, "cherry", {}, 0, a1615},
    {"maraschino-cherry", a1616, acidity::acid, "", {}, 0, a1618},
    {"dried-cherry", a1619, acidity::acid, "", {}, 0, {}},
    {"citron", a1620, acidity::neutral, "", {}, 0, {}},
    {"coconut", a1621, acidity::low_acid, "", {}, 0, {}},
    {"date", a1622, acidity::low_acid, "", {}, 0, a1624},
    {"fig", a1625, acidity::low_acid, "", {}, 0, a1627},
    {"dried-fig", a1628, acidity::low_acid, "", {}, 0, a1630},
    {"grape", a1631, acidity::acid, "", {}, 0, a1633},
    {"grapefruit", a1634, acidity::acid, "", {}, 0, a1636},
    {"guava", a1637, acidity::borderline, "", {}, 0, a1639},
    {"kiwi", a1640, acidity::acid, "", {}, 0, a1642},
    {"lemon", a1643, acidity::acid, "", a1644, 0, a1646},
    {"lemon-peel", a1647, acidity::acid, "", {}, 0, a1649},
    {"lime", a1650, acidity::acid, "", a1644, 0, a1652},
    {"lime-peel", a1653, acidity::acid, "", {}, 0, {}},
    {"key-lime", a1654, acidity::acid, "", {}, 0, {}},
    {"orange", a1655, acidity::acid, "", {}, 0, a1658},
    {"orange-peel", a1659, acidity::acid, "", {}, 0, a1661},
    {"mango", a1662, acidity::borderline, "", {}, 0, a1664},
    {"green-mango", a1665, acidity::acid, "mango", {}, 0, {}},
    {"mango-puree", a1666, acidity::borderline, "", {}, 0, {}},
    {"nectarine", a1667, acidity::acid, "", {}, 0, a1670},
    {"white-nectarine", a1671, acidity::low_acid, "", {}, 0, {}},
    {"papaya", a1672, acidity::low_acid, "", {}, 0, a1674},
    {"passion-fruit", a1675, acidity::acid, "", {}, 0, {}},
    {"peach", a1676, acidity::acid, "", {}, 0, a1679},
    {"white-peach", a1680, acidity::low_acid, "", {}, 0, {}},
    {"canned-peach", a1681, acidity::acid, "", {}, 0, {}},
    {"pear", a1682, acidity::acid, "", {}, 0, a1685},
    {"seckel-pear", a1686, acidity::acid, "pear", {}, 0, {}},
    {"asian-pear", a1687, acidity::low_acid, "", {}, 0, a1689},
    {"persimmon", a1690, acidity::borderline, "", {}, 0, a1692},
    {"pineapple", a1693, acidity::acid, "", {}, 0, a1696},
    {"canned-pineapple", a1697, acidity::acid, "pineapple", {}, 0, a1699},
    {"plum", a1700, acidity::acid, "", {}, 0, a1703},
    {"prune", a1704, acidity::acid, "", {}, 0, a1706},
    {"pomegranate", a1707, acidity::acid, "", {}, 0, a1709},
    {"quince", a1710, acidity::acid, "", {}, 0, a1712},
    {"raisin", a1713, acidity::acid, "", {}, 0, a1716},
    {"golden-raisin", a1717, acidity::acid, "raisin", {}, 0, a1719},
    {"dried-currant", a1720, acidity::acid, "", {}, 0, a1722},
    {"rhubarb", a1723, acidity::acid, "", {}, 0, a1725},
    {"tamarind", a1726, acidity::acid, "", {}, 0, {}},
    {"whole-fruit-pieces", a1727, acidity::acid, "", {}, 0, {}},
    {"mixed-dried-fruit", a1728, acidity::acid, "", {}, 0, {}},
    {"jam", a1729, acidity::acid, "", {}, 0, {}},
    {"soft-jelly", a1730, acidity::acid, "", {}, 0, {}},
    {"jelly", a1731, acidity::acid, "", {}, 0, {}},
    {"frozen-blueberry", a1732, acidity::acid, "", {}, 0, {}},
    {"frozen-sour-cherry", a1733, acidity::acid, "", {}, 0, {}},
    {"bean", a1734, acidity::low_acid, "", {}, 0, {}},
    {"kidney-bean", a1735, acidity::low_acid, "", {}, 0, {}},
    {"black-bean", a1736, acidity::low_acid, "", {}, 0, {}},
    {"pinto-bean", a1737, acidity::low_acid, "", {}, 0, {}},
    {"white-bean", a1738, acidity::low_acid, "", {}, 0, {}},
    {"garbanzo-bean", a1739, acidity::low_acid, "", {}, 0, {}},
    {"butter-bean", a1740, acidity::low_acid, "", {}, 0, {}},
    {"canned-kidney-bean", a1741, acidity::low_acid, "kidney-bean", {}, 0, a1744},
    {"canned-garbanzo-bean", a1745, acidity::low_acid, "garbanzo-bean", {}, 0, a1748},
    {"canned-black-bean", a1749, acidity::low_acid, "black-bean", {}, 0, a1751},
    {"canned-pinto-bean", a1752, acidity::low_acid, "pinto-bean", {}, 0, a1755},
    {"canned-white-bean", a1756, acidity::low_acid, "white-bean", {}, 0, a1758},
    {"baked-bean", a1759, acidity::low_acid, "", {}, 0, {}},
    {"refried-bean", a1760, acidity::low_acid, "", a1761, 0, a1763},
    {"hummus", a1764, acidity::low_acid, "", a1761, 0, {}},
    {"bean-cooking-liquid", a1765, acidity::low_acid, "", a1380, 0, {}},
    {"dried-bean", a1766, acidity::low_acid, "", a1767, 0, a1769},
    {"dried-pinto-bean", a1770, acidity::low_acid, "dried-bean", a1767, 0, a1772},
    {"dried-red-kidney-bean", a1773, acidity::low_acid, "dried-bean", a1767, 0, a1775},
    {"dried-black-bean", a1776, acidity::low_acid, "dried-bean", a1767, 0, a1778},
    {"dried-navy-bean", a1779, acidity::low_acid, "dried-bean", a1767, 0, a1781},
    {"dried-great-northern-bean", a1782, acidity::low_acid, "dried-bean", a1767, 0, a1784},
    {"dried-lima-bean", a1785, acidity::low_acid, "dried-bean", a1767, 0, a1787},
    {"dried-garbanzo-bean", a1788, acidity::low_acid, "dried-bean", a1767, 0, a1790},
    {"dried-black-eyed-pea", a1791, acidity::low_acid, "dried-bean", a1767, 0, a1793},
    {"split-pea", a1794, acidity::low_acid, "", a1767, 0, a1796},
    {"lentil", a1797, acidity::low_acid, "", a1767, 0, a1799},
    {"soybean", a1800, acidity::low_acid, "", a1767, 0, a1802},
    {"tofu", a1803, acidity::low_acid, "", {}, 0, {}},
    {"peanut", a1804, acidity::low_acid, "", a1440, 0, a1806},
    {"peanut-butter", a1807, acidity::low_acid, "", a1440, 0, a1809},
    {"almond", a1810, acidity::low_acid, "", a1440, 0, a1812},
    {"walnut", a1813, acidity::low_acid, "", a1440, 0, a1815},
    {"pecan", a1816, acidity::low_acid, "", a1440, 0, a1818},
    {"mixed-nuts", a1819, acidity::low_acid, "", a1440, 0, {}},
    {"rice", a1820, acidity::low_acid, "", a1821, 0, a1823},
    {"brown-rice", a1824, acidity::low_acid, "", a1821, 0, a1826},
    {"wild-rice", a1827, acidity::low_acid, "", a1821, 0, {}},
    {"barley", a1828, acidity::low_acid, "", a1821, 0, a1830},
    {"oats", a1831, acidity::low_acid, "", a1821, 0, {}},
    {"quinoa", a1832, acidity::low_acid, "", a1821, 0, a1834},
    {"bulgur", a1835, acidity::low_acid, "", a1821, 0, a1837},
    {"wheat-berries", a1838, acidity::low_acid, "", a1821, 0, {}},
    {"hominy", a1839, acidity::low_acid, "", a1821, 0, a1841},
    {"pasta", a1842, acidity::low_acid, "", a1821, 0, a1844},
    {"noodle", a1845, acidity::low_acid, "", a1821, 0, {}},
    {"dumpling", a1846, acidity::low_acid, "", a1821, 0, {}},
    {"bread", a1847, acidity::low_acid, "", a1848, 0, {}},
    {"tortilla", a1849, acidity::low_acid, "", a1848, 0, {}},
    {"meat", a1850, acidity::low_acid, "", a1851, 0, {}},
    {"beef", a1852, acidity::low_acid, "", a1851, 0, {}},
    {"ground-beef", a1853, acidity::low_acid, "", a1851, 0, {}},
    {"veal", a1854, acidity::low_acid, "", a1851, 0, {}},
    {"lamb", a1855, acidity::low_acid, "", a1851, 0, {}},
    {"goat", a1856, acidity::low_acid, "", a1851, 0, {}},
    {"venison", a1857, acidity::low_acid, "", a1851, 0, {}},
    {"ground-venison", a1858, acidity::low_acid, "", a1851, 0, {}},
    {"bear-meat", a1859, acidity::low_acid, "", a1851, 0, {}},
    {"pork", a1860, acidity::low_acid, "", a1851, 0, {}},
    {"ground-pork", a1861, acidity::low_acid, "", a1851, 0, {}},
    {"salt-pork", a1862, acidity::low_acid, "", a1863, 0, {}},
    {"ham", a1864, acidity::low_acid, "", a1863, 0, {}},
    {"bacon", a1865, acidity::low_acid, "", a1863, 0, {}},
    {"sausage", a1866, acidity::low_acid, "", a1851, 0, {}},
    {"cured-sausage", a1867, acidity::low_acid, "", a1863, 0, {}},
    {"corned-beef", a1868, acidity::low_acid, "", a1863, 0, {}},
    {"liver", a1869, acidity::low_acid, "", a1851, 0, {}},
    {"rabbit", a1870, acidity::low_acid, "", a1851, 0, {}},
    {"chicken", a1871, acidity::low_acid, "", a1872, 0, {}},
    {"ground-chicken", a1873, acidity::low_acid, "", a1872, 0, {}},
    {"turkey", a1874, acidity::low_acid, "", a1872, 0, {}},
    {"duck", a1875, acidity::low_acid, "", a1872, 0, {}},
    {"fish", a1876, acidity::low_acid, "", a1877, 0, {}},
    {"salmon", a1878, acidity::low_acid, "fish", a1877, 0, {}},
    {"tuna", a1879, acidity::low_acid, "", a1877, 0, {}},
    {"smoked-fish", a1880, acidity::low_acid, "", a1881, 0, {}},
    {"anchovy", a1882, acidity::low_acid, "", a1877, 0, {}},
    {"clam", a1883, acidity::low_acid, "", a1877, 0, {}},
    {"clam-juice", a1884, acidity::low_acid, "", a1885, 0, {}},
    {"oyster", a1886, acidity::low_acid, "", a1877, 0, {}},
    {"mussel", a1887, acidity::low_acid, "", a1877, 0, {}},
    {"shrimp", a1888, acidity::low_acid, "", a1877, 0, {}},
    {"crab-meat", a1889, acidity::low_acid, "", a1877, 0, {}},
    {"lobster", a1890, acidity::low_acid, "", a1877, 0, {}},
    {"squid", a1891, acidity::low_acid, "", a1877, 0, {}},
    {"salt", a1892, acidity::neutral, "", a198, 0, a1894},
    {"canning-salt", a1895, acidity::neutral, "salt", a198, 0, a1897},
    {"table-salt", a1898, acidity::neutral, "salt", a198, 0, a1894},
    {"kosher-salt", a1899, acidity::neutral, "", a198, 0, {}},
    {"sea-salt", a1900, acidity::neutral, "", a198, 0, {}},
    {"lite-salt", a1901, acidity::neutral, "", {}, 0, {}},
    {"salt-substitute", a1902, acidity::neutral, "", {}, 0, {}},
    {"curing-salt", a1903, acidity::neutral, "", a198, 0, {}},
    {"seasoned-salt", a1904, acidity::neutral, "", a1905, 0, {}},
    {"pickling-lime", a1906, acidity::neutral, "", {}, 0, {}},
    {"calcium-chloride", a1907, acidity::neutral, "", {}, 0, {}},
    {"alum", a1908, acidity::neutral, "", {}, 0, {}},
    {"grape-leaf", a1909, acidity::neutral, "", {}, 0, {}},
    {"black-pepper", a1910, acidity::neutral, "", a1911, 0, a1914},
    {"black-peppercorn", a1915, acidity::neutral, "", a1911, 0, a1916},
    {"white-pepper", a1917, acidity::neutral, "", a1911, 0, a1919},
    {"sichuan-pepper", a1920, acidity::neutral, "", a1911, 0, {}},
    {"cayenne-pepper", a1921, acidity::neutral, "", a1911, 0, a1923},
    {"crushed-red-pepper", a1924, acidity::neutral, "", a1911, 0, {}},
    {"dried-red-pepper", a1925, acidity::neutral, "", a1911, 0, a1927},
    {"large-dried-chile", a1928, acidity::neutral, "", a1911, 0, a1930},
    {"chipotle", a1931, acidity::neutral, "", a1911, 0, {}},
    {"chipotle-in-adobo", a1932, acidity::low_acid, "", {}, 0, {}},
    {"chili-powder", a1933, acidity::neutral, "", a1911, 0, a1936},
    {"paprika", a1937, acidity::neutral, "", a1911, 0, a1940},
    {"mustard-seed", a1941, acidity::neutral, "", a1911, 0, {}},
    {"dry-mustard", a1942, acidity::neutral, "", a1911, 0, a1944},
    {"celery-seed", a1945, acidity::neutral, "", a1911, 0, a1948},
    {"dill-seed", a1949, acidity::neutral, "", a1911, 0, a1951},
    {"dried-dill-weed", a1952, acidity::neutral, "", a1911, 0, a1954},
    {"coriander-seed", a1955, acidity::neutral, "", a1911, 0, a1957},
    {"cumin", a1958, acidity::neutral, "", a1911, 0, a1960},
    {"caraway-seed", a1961, acidity::neutral, "", a1911, 0, a1963},
    {"fennel", a1964, acidity::neutral, "", a1911, 0, a1966},
    {"fenugreek", a1967, acidity::neutral, "", a1911, 0, a1969},
    {"anise-seed", a1970, acidity::neutral, "", a1911, 0, a1972},
    {"cardamom", a1973, acidity::neutral, "", a1911, 0, a1975},
    {"poppy-seed", a1976, acidity::neutral, "", a1911, 0, a1978},
    {"ground-cinnamon", a1979, acidity::neutral, "", a1911, 0, a1982},
    {"cinnamon-stick", a1983, acidity::neutral, "", a1911, 0, {}},
    {"ground-cloves", a1984, acidity::neutral, "", a1911, 0, a1986},
    {"whole-cloves", a1987, acidity::neutral, "", a1911, 0, {}},
    {"ground-allspice", a1988, acidity::neutral, "", a1911, 0, a1990},
    {"whole-allspice", a1991, acidity::neutral, "", a1911, 0, {}},
    {"ground-ginger", a1992, acidity::neutral, "", a1911, 0, a1994},
    {"ground-nutmeg", a1995, acidity::neutral, "", a1911, 0, a1997},
    {"ground-mace", a1998, acidity::neutral, "", a1911, 0, a2000},
    {"ground-pumpkin-pie-spice", a2001, acidity::neutral, "", a1911, 0, a2003},
    {"turmeric", a2004, acidity::neutral, "", a1911, 0, a2006},
    {"saffron", a2007, acidity::neutral, "", a1911, 0, a2009},
    {"curry-powder", a2010, acidity::neutral, "", a1911, 0, a2013},
    {"juniper-berry", a2014, acidity::neutral, "", a1911, 0, {}},
    {"bay-leaf", a2015, acidity::neutral, "", a1911, 0, a2017},
    {"oregano", a2018, acidity::neutral, "", a1911, 0, a2021},
    {"dried-basil", a2022, acidity::neutral, "", a1911, 0, a2024},
    {"dried-thyme", a2025, acidity::neutral, "", a1911, 0, a2027},
    {"dried-parsley", a2028, acidity::neutral, "", a1911, 0, a2031},
    {"dried-cilantro", a2032, acidity::neutral, "", a1911, 0, a2034},
    {"dried-marjoram", a2035, acidity::neutral, "", a1911, 0, a2037},
    {"dried-rosemary", a2038, acidity::neutral, "", a1911, 0, a2040},
    {"dried-sage", a2041, acidity::neutral, "", a1911, 0, a2043},
    {"dried-tarragon", a2044, acidity::neutral, "", a1911, 0, a2046},
    {"dried-savory", a2047, acidity::neutral, "", a1911, 0, a2049},
    {"dried-mint", a2050, acidity::neutral, "", a1911, 0, a2052},
    {"italian-seasoning", a2053, acidity::neutral, "", a1911, 0, {}},
    {"dried-spices", a2054, acidity::neutral, "", a1911, 0, {}},
    {"mixed-pickling-spice", a2055, acidity::neutral, "", a1911, 0, {}},
    {"seasoning-mix", a2056, acidity::neutral, "", a1911, 0, {}},
    {"garlic-powder", a2057, acidity::neutral, "", a1911, 0, a2060},
    {"dried-garlic", a2061, acidity::low_acid, "", {}, 0, {}},
    {"onion-powder", a2062, acidity::neutral, "", a1911, 0, a2065},
    {"dried-onion", a2066, acidity::low_acid, "", {}, 0, a2068},
    {"dried-vegetables", a2069, acidity::low_acid, "", {}, 0, {}},
    {"fresh-basil", a2070, acidity::low_acid, "", a2071, 0, a2073},
    {"fresh-cilantro", a2074, acidity::low_acid, "", a2071, 0, a2076},
    {"fresh-parsley", a2077, acidity::low_acid, "", a2071, 0, a2079},
    {"fresh-dill", a2080, acidity::low_acid, "", a2071, 0, a2082},
    {"dill-head", a2083, acidity::low_acid, "", a2071, 0, {}},
    {"fresh-thyme", a2084, acidity::low_acid, "", a2071, 0, a2086},
    {"fresh-oregano", a2087, acidity::low_acid, "", a2071, 0, {}},
    {"fresh-rosemary", a2088, acidity::low_acid, "", a2071, 0, a2090},
    {"fresh-sage", a2091, acidity::low_acid, "", a2071, 0, {}},
    {"fresh-mint", a2092, acidity::low_acid, "", a2071, 0, {}},
    {"fresh-tarragon", a2093, acidity::low_acid, "", a2071, 0, {}},
    {"chives", a2094, acidity::low_acid, "", a2071, 0, a2096},
    {"epazote", a2097, acidity::low_acid, "", a2071, 0, a2099},
    {"lemongrass", a2100, acidity::low_acid, "", a2071, 0, a2102},
    {"fresh-herbs", a2103, acidity::low_acid, "", a2071, 0, {}},
    {"fresh-ginger", a2104, acidity::low_acid, "", {}, 0, a2106},
    {"crystallized-ginger", a2107, acidity::neutral, "", a94, 0, {}},
    {"fresh-turmeric", a2108, acidity::low_acid, "", {}, 0, {}},
    {"prepared-mustard", a2109, acidity::borderline, "", {}, 0, a2111},
    {"prepared-horseradish", a2112, acidity::borderline, "", {}, 0, a2114},
    {"vanilla", a2115, acidity::neutral, "", {}, 0, a2117},
    {"almond-extract", a2118, acidity::neutral, "", {}, 0, {}},
    {"other-extract", a2119, acidity::neutral, "", {}, 0, {}},
    {"blue-food-colour", a2120, acidity::neutral, "", {}, 0, {}},
    {"red-food-colour", a2121, acidity::neutral, "", {}, 0, {}},
    {"yellow-food-colour", a2122, acidity::neutral, "", {}, 0, {}},
    {"green-food-colour", a2123, acidity::neutral, "", {}, 0, {}},
    {"yeast", a2124, acidity::neutral, "", {}, 0, a2127},
    {"msg", a2128, acidity::neutral, "", {}, 0, {}},
    {"meat-tenderizer", a2129, acidity::neutral, "", {}, 0, {}},
    {"sugar", a2130, acidity::neutral, "", a94, 0, a2133},
    {"brown-sugar", a2134, acidity::neutral, "sugar", a94, 0, a2136},
    {"raw-sugar", a2137, acidity::neutral, "sugar", a94, 0, a2139},
    {"jam-sugar", a2140, acidity::neutral, "", a2141, 0, {}},
    {"powdered-sugar", a2142, acidity::neutral, "", a2143, 0, a2146},
    {"fructose", a2147, acidity::neutral, "", a2148, 0, {}},
    {"honey", a2149, acidity::neutral, "", a2148, 0, a2151},
    {"maple-syrup", a2152, acidity::neutral, "", a2148, 0, a2154},
    {"pancake-syrup", a2155, acidity::neutral, "", a2148, 0, a2157},
    {"sugar-syrup", a2158, acidity::neutral, "", a2148, 0, {}},
    {"corn-syrup", a2159, acidity::neutral, "", a2148, 0, a2161},
    {"golden-syrup", a2162, acidity::neutral, "", a2148, 0, {}},
    {"molasses", a2163, acidity::neutral, "", a2148, 0, a2165},
    {"dark-molasses", a2166, acidity::neutral, "molasses", a2148, 0, a2168},
    {"agave-syrup", a2169, acidity::neutral, "", a2148, 0, a2171},
    {"granular-sucralose", a2172, acidity::neutral, "", a2148, 0, {}},
    {"stevia", a2173, acidity::neutral, "", a2148, 0, {}},
    {"sugar-alcohol", a2174, acidity::neutral, "", a2148, 0, {}},
    {"artificial-sweetener", a2175, acidity::neutral, "", a2148, 0, {}},
    {"cinnamon-candy", a2176, acidity::neutral, "", a2148, 0, {}},
    {"candy", a2177, acidity::neutral, "", a2148, 0, {}},
    {"pectin", a2178, acidity::neutral, "", a2179, 0, {}},
    {"powdered-pectin", a2180, acidity::neutral, "pectin", a2179, 0, {}},
    {"liquid-pectin", a2181, acidity::neutral, "pectin", a2182, 0, {}},
    {"low-sugar-pectin", a2183, acidity::neutral, "", a2179, 0, {}},
    {"thickener", a2184, acidity::neutral, "", a1419, 0, {}},
    {"wheat-flour", a2185, acidity::low_acid, "", a1419, 0, a2187},
    {"other-flour", a2188, acidity::low_acid, "", a1419, 0, {}},
    {"cornmeal", a2189, acidity::low_acid, "", a1419, 0, a2191},
    {"cornstarch", a2192, acidity::neutral, "", a1419, 0, a2195},
    {"cook-type-starch", a2196, acidity::neutral, "", a1419, 0, {}},
    {"instant-modified-starch", a2197, acidity::neutral, "", a1419, 0, {}},
    {"tapioca", a2198, acidity::neutral, "", a1419, 0, a2200},
    {"arrowroot", a2201, acidity::neutral, "", a1419, 0, a2203},
    {"potato-starch", a2204, acidity::neutral, "", a1419, 0, {}},
    {"gum-thickener", a2205, acidity::neutral, "", a1419, 0, {}},
    {"gelatin", a2206, acidity::neutral, "", a1419, 0, {}},
    {"agar", a2207, acidity::neutral, "", a1419, 0, {}},
    {"chia-seed", a2208, acidity::low_acid, "", a1419, 0, {}},
    {"onion", a2209, acidity::low_acid, "", {}, 0, a2212},
    {"onion-slice", a2213, acidity::low_acid, "onion", {}, 0, a2214},
    {"pearl-onion", a2215, acidity::low_acid, "", {}, 0, {}},
    {"green-onion", a2216, acidity::low_acid, "", {}, 0, a2219},
    {"shallot", a2220, acidity::low_acid, "", {}, 0, a2222},
    {"leek", a2223, acidity::low_acid, "", {}, 0, a2225},
    {"garlic", a2226, acidity::low_acid, "", {}, 0, a2229},
    {"pepper", a2230, acidity::low_acid, "", {}, 0, a2232},
    {"bell-pepper", a2233, acidity::low_acid, "pepper", {}, 0, a2237},
    {"green-bell-pepper", a2238, acidity::low_acid, "bell-pepper", {}, 0, a2241},
    {"red-bell-pepper", a2242, acidity::low_acid, "bell-pepper", {}, 0, a2245},
    {"yellow-bell-pepper", a2246, acidity::low_acid, "bell-pepper", {}, 0, a2248},
    {"orange-bell-pepper", a2249, acidity::low_acid, "bell-pepper", {}, 0, {}},
    {"banana-pepper", a2250, acidity::low_acid, "pepper", {}, 0, a2252},
    {"hungarian-pepper", a2253, acidity::low_acid, "pepper", {}, 0, a2255},
    {"pimento", a2256, acidity::low_acid, "pepper", {}, 0, a2258},
    {"chile-pepper", a2259, acidity::low_acid, "pepper", {}, 0, a2262},
    {"hot-pepper", a2263, acidity::low_acid, "chile-pepper", {}, 0, a2265},
    {"long-green-chile", a2266, acidity::low_acid, "chile-pepper", {}, 0, {}},
    {"hot-long-pepper", a2267, acidity::low_acid, "hot-pepper", {}, 0, {}},
    {"hot-finger-pepper", a2268, acidity::low_acid, "hot-pepper", {}, 0, {}},
    {"small-hot-pepper", a2269, acidity::low_acid, "hot-pepper", {}, 0, {}},
    {"jalapeno-pepper", a2270, acidity::low_acid, "hot-pepper", {}, 0, a2272},
    {"serrano-pepper", a2273, acidity::low_acid, "hot-pepper", {}, 0, a2275},
    {"habanero-pepper", a2276, acidity::low_acid, "hot-pepper", {}, 0, {}},
    {"poblano-pepper", a2277, acidity::low_acid, "chile-pepper", {}, 0, {}},
    {"fresh-cayenne-pepper", a2278, acidity::low_acid, "hot-pepper", {}, 0, {}},
    {"canned-green-chile", a2279, acidity::low_acid, "", {}, 0, a2281},
    {"canned-jalapeno", a2282, acidity::low_acid, "", {}, 0, a2285},
    {"tomato", a2286, acidity::borderline, "", {}, 0, a2289},
    {"paste-tomato", a2290, acidity::borderline, "tomato", {}, 0, a2291},
    {"plum-tomato", a2292, acidity::borderline, "paste-tomato", {}, 0, a2293},
    {"slicing-tomato", a2294, acidity::borderline, "tomato", {}, 0, a2295},
    {"yellow-tomato", a2296, acidity::borderline, "tomato", {}, 0, a2298},
    {"orange-tomato", a2299, acidity::borderline, "tomato", {}, 0, a2301},
    {"cherry-tomato", a2302, acidity::borderline, "", {}, 0, a2303},
    {"green-tomato", a2304, acidity::borderline, "", {}, 0, a2306},
    {"tomatillo", a2307, acidity::borderline, "", {}, 0, a2310},
    {"canned-diced-tomato", a2311, acidity::borderline, "", {}, 0, a2313},
    {"canned-whole-tomato", a2314, acidity::borderline, "", {}, 0, a2316},
    {"canned-crushed-tomato", a2317, acidity::borderline, "", {}, 0, a2319},
    {"stewed-tomato", a2320, acidity::borderline, "", {}, 0, a2322},
    {"sun-dried-tomato", a2323, acidity::borderline, "", {}, 0, a2325},
    {"tomato-juice", a2326, acidity::borderline, "", a1380, 0, a2328},
    {"tomato-puree", a2329, acidity::borderline, "", {}, 0, a2331},
    {"tomato-sauce", a2332, acidity::borderline, "", {}, 0, a2334},
    {"tomato-paste", a2335, acidity::borderline, "", {}, 0, a2337},
    {"tomato-ketchup", a2338, acidity::acid, "", {}, 0, a2340},
    {"beet", a2341, acidity::low_acid, "", {}, 0, a2344},
    {"carrot", a2345, acidity::low_acid, "", {}, 0, a2348},
    {"baby-carrot", a2349, acidity::low_acid, "carrot", {}, 0, a2352},
    {"celery", a2353, acidity::low_acid, "", {}, 0, a2356},
    {"celeriac", a2357, acidity::low_acid, "", {}, 0, a2359},
    {"fennel-bulb", a2360, acidity::low_acid, "", {}, 0, a2362},
    {"parsnip", a2363, acidity::low_acid, "", {}, 0, a2365},
    {"turnip", a2366, acidity::low_acid, "", {}, 0, a2368},
    {"rutabaga", a2369, acidity::low_acid, "", {}, 0, a2371},
    {"radish", a2372, acidity::low_acid, "", {}, 0, a2375},
    {"daikon", a2376, acidity::low_acid, "", {}, 0, a2378},
    {"kohlrabi", a2379, acidity::low_acid, "", {}, 0, a2381},
    {"potato", a2382, acidity::low_acid, "", {}, 0, a2385},
    {"mashed-potato", a2386, acidity::low_acid, "", a1761, 0, {}},
    {"sweet-potato", a2387, acidity::low_acid, "", {}, 0, a2389},
    {"horseradish-root", a2390, acidity::low_acid, "", {}, 0, {}},
    {"jicama", a2391, acidity::low_acid, "", {}, 0, a2393},
    {"chayote", a2394, acidity::low_acid, "", {}, 0, a2396},
    {"cabbage", a2397, acidity::low_acid, "", {}, 0, a2400},
    {"red-cabbage", a2401, acidity::low_acid, "cabbage", {}, 0, a2404},
    {"chinese-cabbage", a2405, acidity::low_acid, "", {}, 0, a2407},
    {"sauerkraut", a2408, acidity::acid, "", {}, 0, a2410},
    {"cauliflower", a2411, acidity::low_acid, "", {}, 0, a2413},
    {"broccoli", a2414, acidity::low_acid, "", {}, 0, a2416},
    {"brussels-sprouts", a2417, acidity::low_acid, "", {}, 0, a2419},
    {"artichoke", a2420, acidity::low_acid, "", {}, 0, a2422},
    {"jerusalem-artichoke", a2423, acidity::low_acid, "", {}, 0, a2425},
    {"asparagus", a2426, acidity::low_acid, "", {}, 0, a2428},
    {"cucumber", a2429, acidity::low_acid, "", {}, 0, a2432},
    {"pickling-cucumber", a2433, acidity::low_acid, "cucumber", {}, 0, {}},
    {"pickle", a2434, acidity::acid, "", {}, 0, {}},
    {"zucchini", a2435, acidity::low_acid, "", {}, 0, a2437},
    {"yellow-summer-squash", a2438, acidity::low_acid, "", {}, 0, a2440},
    {"butternut-squash", a2441, acidity::low_acid, "", {}, 0, a2443},
    {"winter-squash", a2444, acidity::low_acid, "", {}, 0, a2446},
    {"spaghetti-squash", a2447, acidity::low_acid, "", {}, 0, a2449},
    {"pumpkin", a2450, acidity::low_acid, "", {}, 0, a2452},
    {"pumpkin-puree", a2453, acidity::low_acid, "", a1761, 0, a2455},
    {"eggplant", a2456, acidity::low_acid, "", {}, 0, a2458},
    {"okra", a2459, acidity::low_acid, "", {}, 0, a2461},
    {"corn-kernels", a2462, acidity::low_acid, "", {}, 0, a2466},
    {"cream-style-corn", a2467, acidity::low_acid, "", {}, 0, a2469},
    {"baby-corn", a2470, acidity::low_acid, "", {}, 0, {}},
    {"mushroom", a2471, acidity::low_acid, "", {}, 0, a2474},
    {"other-mushroom", a2475, acidity::low_acid, "", {}, 0, {}},
    {"dried-mushroom", a2476, acidity::low_acid, "", {}, 0, {}},
    {"avocado", a2477, acidity::low_acid, "", {}, 0, a2479},
    {"nopal", a2480, acidity::low_acid, "", {}, 0, a2482},
    {"mixed-vegetables", a2483, acidity::low_acid, "", {}, 0, {}},
    {"spinach", a2484, acidity::low_acid, "", a2485, 0, a2487},
    {"kale", a2488, acidity::low_acid, "", a2485, 0, a2490},
    {"swiss-chard", a2491, acidity::low_acid, "", a2485, 0, a2493},
    {"collard-greens", a2494, acidity::low_acid, "", a2485, 0, a2496},
    {"mustard-greens", a2497, acidity::low_acid, "", a2485, 0, a2499},
    {"lettuce", a2500, acidity::low_acid, "", a2485, 0, a2502},
    {"green-bean", a2503, acidity::low_acid, "", {}, 0, a2505},
    {"yellow-bean", a2506, acidity::low_acid, "", {}, 0, a2508},
    {"lima-bean", a2509, acidity::low_acid, "", {}, 0, a2511},
    {"green-pea", a2512, acidity::low_acid, "", {}, 0, a2514},
    {"snow-pea", a2515, acidity::low_acid, "", {}, 0, a2517},
    {"black-eyed-pea", a2518, acidity::low_acid, "", {}, 0, a2520},
    {"broad-bean", a2521, acidity::low_acid, "", {}, 0, a2523},
    {"edamame", a2524, acidity::low_acid, "", {}, 0, a2526},
    {"bean-sprouts", a2527, acidity::low_acid, "", {}, 0, a2529},
    {"olive", a2530, acidity::low_acid, "", {}, 0, a2532},
    {"caper", a2533, acidity::low_acid, "", {}, 0, a2535},
    {"seaweed", a2536, acidity::low_acid, "", {}, 0, {}},
    {"kimchi", a2537, acidity::borderline, "", {}, 0, {}}};
constexpr sv a2539[] = {"pumpkin butter",
    "squash butter",
    "winter squash butter",
    "butternut butter",
    "spiced pumpkin butter",
    "mantequilla de calabaza"};
constexpr citation a2540[] = {{"nchfp-pumpkin-butter", "", ""},
    {"kstate-pumpkin", "", ""}};
constexpr sv a2541[] = {"pumpkin puree",
    "pumpkin purée",
    "pureed pumpkin",
    "puréed pumpkin",
    "mashed pumpkin",
    "pumpkin mash",
    "canned pumpkin puree",
    "pure de calabaza",
    "puré de calabaza"};
constexpr citation a2542[] = {{"usda-guide-4", "", ""},
    {"nchfp-pumpkin-butter", "", ""},
    {"kstate-pumpkin", "", ""}};
constexpr sv a2543[] = {"mashed winter squash",
    "winter squash puree",
    "pureed winter squash",
    "mashed squash",
    "squash puree",
    "pureed squash",
    "butternut squash puree",
    "mashed butternut squash",
    "acorn squash puree",
    "hubbard squash puree"};
constexpr citation a2544[] = {{"usda-guide-4", "", ""},
    {"nchfp-pumpkin-butter", "", ""}};
constexpr sv a2545[] = {"pumpkin pie filling",
    "pumpkin pie mix",
    "pumpkin custard",
    "pumpkin pie",
    "squash pie filling",
    "sweet potato pie filling"};
constexpr citation a2546[] = {{"nchfp-pumpkin-butter", "", ""},
    {"psu-not-to-can", "", ""}};
constexpr sv a2547[] = {"spaghetti squash",
    "vegetable spaghetti",
    "spaghetti marrow",
    "noodle squash",
    "calabaza espagueti"};
constexpr citation a2548[] = {{"osu-winter-squash", "", ""},
    {"clemson-winter-squash", "", ""}};
constexpr sv a2549[] = {"mashed sweet potatoes",
    "mashed sweet potato",
    "sweet potato puree",
    "pureed sweet potatoes",
    "sweet potato mash",
    "candied mashed sweet potatoes",
    "pure de camote",
    "puré de camote"};
constexpr citation a2550[] = {{"usda-guide-4", "", ""},
    {"nchfp-baby-food", "", ""}};
constexpr sv a2551[] = {"sweet potato butter",
    "sweetpotato butter",
    "yam butter",
    "sweet potato spread"};
constexpr citation a2552[] = {{"nchfp-baby-food", "", ""},
    {"nchfp-pumpkin-butter", "", ""}};
constexpr sv a2553[] = {"mashed potatoes",
    "mashed potato",
    "potato puree",
    "potato mash",
    "creamed potatoes",
    "riced potatoes",
    "pure de papas",
    "puré de papas",
    "pure de patatas",
    "puré de patatas"};
constexpr citation a2554[] = {{"missouri-leftovers", "", ""},
    {"nchfp-baby-food", "", ""}};
constexpr sv a2555[] = {"potato soup",
    "cream of potato soup",
    "potato leek soup",
    "leek and potato soup",
    "loaded potato soup",
    "baked potato soup",
    "sopa de papa",
    "crema de papa"};
constexpr citation a2556[] = {{"clemson-soups", "", ""},
    {"kstate-creamed-soup", "", ""}};
constexpr sv a2557[] = {"refried beans",
    "mashed beans",
    "bean paste",
    "bean puree",
    "bean dip",
    "frijoles refritos",
    "refritos",
    "frijoles molidos",
    "bean spread",
    "pureed beans"};
constexpr citation a2558[] = {{"nchfp-baby-food", "", ""},
    {"psu-not-to-can", "", ""}};
constexpr sv a2559[] = {"hummus",
    "houmous",
    "humus",
    "chickpea dip",
    "chickpea puree",
    "chickpea spread",
    "pure de garbanzos",
    "puré de garbanzos",
    "hummus bi tahini"};
constexpr citation a2560[] = {{"psu-not-to-can", "", ""},
    {"nchfp-baby-food", "", ""},
    {"psu-fats-oils", "", ""}};
constexpr sv a2561[] = {"vegetable puree",
    "vegetable purée",
    "pureed vegetables",
    "puréed vegetables",
    "carrot puree",
    "mashed carrots",
    "pea puree",
    "mushy peas",
    "corn puree",
    "spinach puree",
    "pureed spinach",
    "kale puree",
    "cauliflower puree",
    "parsnip puree",
    "mashed parsnips",
    "beet puree",
    "pure de verduras",
    "puré de verduras"};
constexpr citation a2562[] = {{"usda-guide-1", "", ""},
    {"nchfp-baby-food", "", ""}};
constexpr sv a2563[] = {"vegetable baby food",
    "meat baby food",
    "baby food puree",
    "pureed baby food",
    "pureed meat",
    "pureed chicken",
    "pureed beef",
    "savory baby food",
    "savoury baby food",
    "papilla de verduras",
    "papilla de carne"};
constexpr citation a2564[] = {{"nchfp-baby-food", "", ""},
    {"usda-guide-1", "", ""}};
constexpr sv a2565[] = {"bananas",
    "banana",
    "canned bananas",
    "banana slices",
    "plantains",
    "plantain",
    "platano",
    "plátano",
    "platanos",
    "plátanos",
    "banano",
    "bananos"};
constexpr citation a2566[] = {{"extension-banana-answer", "", ""},
    {"kstate-low-acid-fruits", "", ""}};
constexpr sv a2567[] = {"banana butter",
    "banana jam",
    "banana puree",
    "banana purée",
    "mashed bananas",
    "mashed banana",
    "banana spread",
    "monkey butter",
    "mermelada de platano",
    "mermelada de plátano"};
constexpr citation a2568[] = {{"nchfp-fruit-puree", "", ""},
    {"kstate-fruit-purees", "", ""}};
constexpr sv a2569[] = {"cantaloupe",
    "cantaloupes",
    "cantaloup",
    "muskmelon",
    "muskmelons",
    "rockmelon",
    "melon cantaloupe",
    "cantaloupe in syrup",
    "canned cantaloupe"};
constexpr citation a2570[] = {{"kstate-melons", "", ""},
    {"sdsu-cantaloupe", "", ""}};
constexpr sv a2571[] = {"watermelon",
    "watermelons",
    "watermelon flesh",
    "watermelon chunks",
    "watermelon juice",
    "canned watermelon",
    "watermelon puree",
    "sandia",
    "sandía",
    "sandias",
    "sandías"};
constexpr citation a2572[] = {{"kstate-melons", "", ""},
    {"kstate-low-acid-fruits", "", ""}};
constexpr sv a2573[] = {"honeydew",
    "honeydew melon",
    "honeydew melons",
    "melon",
    "melons",
    "canned melon",
    "melon in syrup",
    "melon balls",
    "casaba melon",
    "galia melon",
    "canary melon",
    "melones",
    "melon puree",
    "melon verde"};
constexpr citation a2574[] = {{"kstate-melons", "", ""},
    {"nchfp-fruit-puree", "", ""}};
constexpr sv a2575[] = {"white peaches",
    "white peach",
    "white-flesh peaches",
    "white-fleshed peaches",
    "white peach jam",
    "white peach salsa",
    "donut peaches",
    "saturn peaches",
    "duraznos blancos",
    "melocotones blancos"};
constexpr citation a2576[] = {{"wisconsin-white-peaches", "", ""},
    {"umaine-updates", "", ""}};
constexpr sv a2577[] = {"white nectarines",
    "white nectarine",
    "white-flesh nectarines",
    "white-fleshed nectarines",
    "white nectarine jam",
    "nectarinas blancas"};
constexpr sv a2578[] = {"ripe mango",
    "ripe mangoes",
    "ripe mangos",
    "canned ripe mango",
    "ripe mango slices",
    "ripe mango in syrup",
    "ripe mango puree",
    "mango maduro",
    "mangos maduros",
    "mango pulp",
    "mango puree"};
constexpr citation a2579[] = {{"osu-mangoes", "", ""},
    {"nchfp-mango-sauce", "", ""},
    {"nchfp-fruit-puree", "", ""}};
constexpr sv a2580[] = {"papaya",
    "papayas",
    "ripe papaya",
    "green papaya",
    "papaya puree",
    "papaya jam",
    "papaya in syrup",
    "fruta bomba",
    "lechosa"};
constexpr citation a2581[] = {{"kstate-low-acid-fruits", "", ""},
    {"nchfp-fruit-puree", "", ""}};
constexpr sv a2582[] = {"persimmons",
    "persimmon",
    "fuyu persimmons",
    "hachiya persimmons",
    "wild persimmons",
    "kaki",
    "kakis",
    "caqui",
    "caquis",
    "sharon fruit",
    "persimmon puree",
    "persimmon butter",
    "persimmon pulp"};
constexpr citation a2583[] = {{"aces-persimmons", "", ""},
    {"kstate-fruit-purees", "", ""}};
constexpr sv a2584[] = {"elderberries",
    "elderberry",
    "elder berries",
    "american elderberries",
    "black elderberries",
    "canned elderberries",
    "elderberry sauce",
    "elderberry puree",
    "sauco",
    "saúco",
    "bayas de sauco"};
constexpr citation a2585[] = {{"minnesota-elderberries", "", ""},
    {"umaine-updates", "", ""},
    {"extension-elderberry-answer", "", ""}};
constexpr sv a2586[] = {"elderberry juice",
    "elderberry syrup",
    "elderberry cordial",
    "elderberry concentrate",
    "elderberry extract",
    "elderberry tincture",
    "jarabe de sauco",
    "jarabe de saúco"};
constexpr citation a2587[] = {{"minnesota-elderberries", "", ""},
    {"umaine-updates", "", ""}};
constexpr sv a2588[] = {"coconut",
    "coconuts",
    "coconut meat",
    "fresh coconut",
    "grated coconut",
    "shredded coconut",
    "coconut flakes",
    "coconut jam",
    "coconut puree",
    "coco rallado",
    "coco fresco"};
constexpr citation a2589[] = {{"nchfp-fruit-puree", "", ""},
    {"psu-fats-oils", "", ""}};
constexpr sv a2590[] = {"coconut milk",
    "coconut cream",
    "cream of coconut",
    "coconut curry",
    "coconut curry sauce",
    "coconut soup",
    "thai curry",
    "leche de coco",
    "crema de coco"};
constexpr sv a2591[] = {"avocado",
    "avocados",
    "canned avocado",
    "avocado slices",
    "mashed avocado",
    "avocado puree",
    "aguacate",
    "aguacates",
    "palta",
    "paltas"};
constexpr citation a2592[] = {{"usda-guide-2", "", ""},
    {"kstate-avocado", "", ""}};
constexpr sv a2593[] = {"guacamole",
    "guac",
    "avocado dip",
    "avocado salsa",
    "guacamole dip",
    "avocado sauce"};
constexpr citation a2594[] = {{"kstate-avocado", "", ""},
    {"psu-not-to-can", "", ""},
    {"njaes-salsa", "", ""}};
constexpr sv a2595[] = {"dates",
    "date",
    "fresh dates",
    "date puree",
    "date paste",
    "date butter",
    "date syrup",
    "medjool dates",
    "datiles",
    "dátiles"};
constexpr citation a2596[] = {{"kstate-fruit-purees", "", ""},
    {"kstate-low-acid-fruits", "", ""}};
constexpr sv a2597[] = {"fig puree",
    "fig purée",
    "pureed figs",
    "fig paste",
    "fig butter",
    "fig sauce",
    "pure de higo",
    "puré de higo"};
constexpr citation a2598[] = {{"nchfp-fruit-puree", "", ""},
    {"usda-guide-2", "", ""}};
constexpr sv a2599[] = {"asian pear puree",
    "asian pear purée",
    "asian pear sauce",
    "asian pear butter",
    "nashi puree",
    "nashi pear puree",
    "pureed asian pears"};
constexpr sv a2600[] = {"strawberries",
    "strawberry",
    "whole strawberries",
    "canned strawberries",
    "strawberries in syrup",
    "sliced strawberries",
    "fresas",
    "frutillas",
    "fresas en almibar",
    "fresas en almíbar"};
constexpr citation a2601[] = {{"usda-guide-2", "", ""}};
constexpr sv a2602[] = {"orange curd",
    "raspberry curd",
    "strawberry curd",
    "passion fruit curd",
    "passionfruit curd",
    "mango curd",
    "blackberry curd",
    "cranberry curd",
    "grapefruit curd",
    "rhubarb curd",
    "key lime curd",
    "fruit curd"};
constexpr citation a2603[] = {{"extension-orange-curd", "", ""},
    {"nchfp-lemon-curd", "", ""}};
constexpr sv a2604[] = {"lemon curd",
    "lemon curds",
    "lemon cheese",
    "lime curd",
    "cuajada de limon"};
constexpr citation a2605[] = {{"nchfp-lemon-curd", "", ""},
    {"nchfp-lemon-curd-blog", "", ""}};
constexpr sv a2606[] = {"summer squash",
    "zucchini",
    "zucchinis",
    "courgette",
    "courgettes",
    "yellow squash",
    "crookneck squash",
    "pattypan squash",
    "patty pan squash",
    "vegetable marrow",
    "marrows",
    "calabacin",
    "calabacín",
    "calabacita",
    "calabacitas",
    "zapallitos"};
constexpr citation a2607[] = {{"clemson-summer-squash", "", ""},
    {"kstate-summer-squash", "", ""}};
constexpr sv a2608[] = {"eggplant",
    "eggplants",
    "aubergine",
    "aubergines",
    "brinjal",
    "canned eggplant",
    "berenjena",
    "berenjenas",
    "baba ganoush",
    "eggplant dip"};
constexpr citation a2609[] = {{"usda-guide-4", "", ""},
    {"nchfp-eggplant", "", ""}};
constexpr sv a2610[] = {"ratatouille",
    "ratatouilles",
    "vegetable stew with eggplant",
    "eggplant and tomato stew",
    "pisto",
    "samfaina"};
constexpr citation a2611[] = {{"wisconsin-mixtures", "", ""},
    {"usda-guide-4", "", ""}};
constexpr sv a2612[] = {"cabbage",
    "cabbages",
    "green cabbage",
    "red cabbage",
    "white cabbage",
    "savoy cabbage",
    "napa cabbage",
    "chinese cabbage",
    "head cabbage",
    "canned cabbage",
    "shredded cabbage",
    "repollo",
    "repollos",
    "col",
    "coles",
    "col lombarda"};
constexpr citation a2613[] = {{"idaho-cabbage", "", ""},
    {"usda-guide-4", "", ""}};
constexpr sv a2614[] = {"cabbage soup",
    "soup with cabbage",
    "borscht with cabbage",
    "cabbage and bean soup",
    "cabbage and sausage soup",
    "cabbage roll soup",
    "sopa de col",
    "sopa de repollo"};
constexpr citation a2615[] = {{"clemson-soups", "", ""},
    {"preserve-soup-tips", "", ""}};
constexpr sv a2616[] = {"broccoli",
    "broccoli florets",
    "broccoli spears",
    "calabrese",
    "broccoli rabe",
    "rapini",
    "brocoli",
    "brócoli",
    "brecol"};
constexpr citation a2617[] = {{"missouri-broccoli", "", ""},
    {"idaho-cabbage", "", ""}};
constexpr sv a2618[] = {"cauliflower",
    "cauliflowers",
    "cauliflower florets",
    "cauli",
    "canned cauliflower",
    "romanesco",
    "coliflor",
    "coliflores"};
constexpr sv a2619[] = {"brussels sprouts",
    "brussels sprout",
    "brussel sprouts",
    "canned brussels sprouts",
    "coles de bruselas",
    "repollitos de bruselas"};
constexpr citation a2620[] = {{"idaho-cabbage", "", ""},
    {"nchfp-brussels-sprouts", "", ""}};
constexpr sv a2621[] = {"celery",
    "celery sticks",
    "celery stalks",
    "chopped celery",
    "canned celery",
    "celery pieces",
    "celery hearts",
    "apio",
    "apios"};
constexpr sv a2622[] = {"lettuce",
    "lettuces",
    "salad",
    "salad greens",
    "leaf lettuce",
    "iceberg lettuce",
    "romaine",
    "romaine lettuce",
    "cos lettuce",
    "arugula",
    "rocket",
    "endive",
    "lechuga",
    "lechugas",
    "ensalada"};
constexpr citation a2623[] = {{"usda-guide-4", "", ""}};
constexpr sv a2624[] = {"cucumbers",
    "cucumber",
    "plain cucumbers",
    "unpickled cucumbers",
    "canned cucumbers",
    "slicing cucumbers",
    "pepino",
    "pepinos",
    "english cucumbers"};
constexpr citation a2625[] = {{"usda-guide-4", "", ""},
    {"usda-guide-6", "", ""}};
constexpr sv a2626[] = {"radishes",
    "radish",
    "red radishes",
    "daikon",
    "daikon radish",
    "mooli",
    "canned radishes",
    "rabano",
    "rábano",
    "rabanos",
    "rábanos"};
constexpr sv a2627[] = {"artichokes",
    "artichoke",
    "globe artichokes",
    "artichoke hearts",
    "canned artichokes",
    "artichoke bottoms",
    "alcachofa",
    "alcachofas",
    "corazones de alcachofa"};
constexpr citation a2628[] = {{"sdsu-artichoke", "", ""},
    {"usda-guide-4", "", ""}};
constexpr sv a2629[] = {"snow peas",
    "snow pea",
    "sugar snap peas",
    "sugar snaps",
    "snap peas",
    "mangetout",
    "mange tout",
    "edible-pod peas",
    "sugar peas",
    "pea pods",
    "chinese peas",
    "tirabeques",
    "chicharos chinos"};
constexpr citation a2630[] = {{"usda-guide-4", "", ""},
    {"psu-peas", "", ""}};
constexpr sv a2631[] = {"garlic",
    "garlic cloves",
    "canned garlic",
    "whole garlic",
    "minced garlic",
    "garlic paste",
    "roasted garlic",
    "black garlic",
    "ajo",
    "ajos",
    "dientes de ajo"};
constexpr citation a2632[] = {{"kstate-garlic", "", ""}};
constexpr sv a2633[] = {"wild mushrooms",
    "wild mushroom",
    "foraged mushrooms",
    "morels",
    "morel mushrooms",
    "chanterelles",
    "chanterelle",
    "porcini",
    "ceps",
    "boletes",
    "bolete",
    "king bolete",
    "puffballs",
    "chicken of the woods",
    "hen of the woods",
    "setas silvestres",
    "hongos silvestres",
    "wild boletes"};
constexpr citation a2634[] = {{"usda-guide-4", "", ""},
    {"wisconsin-mixtures", "", ""}};
constexpr sv a2635[] = {"horseradish",
    "grated horseradish",
    "horseradish sauce",
    "prepared horseradish",
    "creamed horseradish",
    "horseradish root",
    "rabano picante",
    "rábano picante"};
constexpr citation a2636[] = {{"usda-guide-6", "", ""}};
constexpr sv a2637[] = {"kimchi",
    "kimchee",
    "kim chi",
    "napa kimchi",
    "radish kimchi",
    "cabbage kimchi"};
constexpr sv a2638[] = {"own pickle recipe",
    "pickles by an own recipe",
    "own recipe pickles",
    "homemade pickle recipe",
    "half-sour pickles",
    "refrigerator pickles",
    "quick refrigerator pickles",
    "relish without vinegar",
    "pickles without vinegar",
    "sugar-free relish by an own recipe"};
constexpr sv a2639[] = {"garlic in oil",
    "garlic oil",
    "garlic confit",
    "roasted garlic in oil",
    "garlic-infused oil",
    "infused garlic oil",
    "ajo en aceite",
    "ajos en aceite",
    "aceite de ajo",
    "pickled garlic in oil"};
constexpr citation a2640[] = {{"nchfp-garlic-oil", "", ""},
    {"psu-oil", "", ""}};
constexpr sv a2641[] = {"herbs in oil",
    "herb oil",
    "infused oil",
    "herb-infused oil",
    "flavored oil",
    "flavoured oil",
    "basil in oil",
    "rosemary oil",
    "basil oil",
    "chili oil",
    "chilli oil",
    "aceite de hierbas",
    "aceite aromatizado"};
constexpr citation a2642[] = {{"extension-pesto-answer", "", ""},
    {"psu-oil", "", ""}};
constexpr sv a2643[] = {"vegetables in oil",
    "peppers in oil",
    "roasted peppers in oil",
    "mushrooms in oil",
    "eggplant in oil",
    "artichokes in oil",
    "artichoke hearts in oil",
    "marinated artichokes",
    "marinated artichoke hearts",
    "dried tomatoes in oil",
    "sun-dried tomatoes in oil",
    "sundried tomatoes in oil",
    "tomatoes in oil",
    "giardiniera in oil",
    "antipasto",
    "verduras en aceite",
    "pimientos en aceite",
    "berenjenas en aceite"};
constexpr citation a2644[] = {{"psu-oil", "", ""},
    {"psu-fats-oils", "", ""}};
constexpr sv a2645[] = {"pesto",
    "basil pesto",
    "green pesto",
    "red pesto",
    "pesto sauce",
    "pesto genovese",
    "sun-dried tomato pesto",
    "pistou",
    "chimichurri",
    "cilantro pesto",
    "salsa pesto"};
constexpr citation a2646[] = {{"nchfp-pesto", "", ""},
    {"extension-pesto-answer", "", ""}};
constexpr sv a2647[] = {"eggs",
    "egg",
    "hard-boiled eggs",
    "boiled eggs",
    "canned eggs",
    "fresh eggs",
    "scrambled eggs",
    "quail eggs",
    "huevos",
    "huevo",
    "huevos duros"};
constexpr citation a2648[] = {{"psu-not-to-can", "", ""},
    {"nchfp-pickled-eggs", "", ""}};
constexpr sv a2649[] = {"pickled eggs",
    "pickled egg",
    "beet eggs",
    "red beet eggs",
    "pickled quail eggs",
    "huevos en vinagre",
    "huevos en escabeche"};
constexpr citation a2650[] = {{"nchfp-pickled-eggs", "", ""},
    {"psu-not-to-can", "", ""}};
constexpr sv a2651[] = {"nuts",
    "nut meats",
    "nutmeats",
    "pecans",
    "pecan",
    "walnuts",
    "walnut",
    "almonds",
    "almond",
    "hazelnuts",
    "cashews",
    "chestnuts",
    "pistachios",
    "roasted nuts",
    "canned nuts",
    "nueces",
    "nuez",
    "almendras",
    "castañas"};
constexpr citation a2652[] = {{"nchfp-nuts", "", ""},
    {"osu-nuts", "", ""}};
constexpr sv a2653[] = {"pecan pie filling",
    "pecan pie",
    "pecan pie in a jar",
    "walnut pie filling",
    "nut pie filling"};
constexpr citation a2654[] = {{"nchfp-nuts", "", ""}};
constexpr sv a2655[] = {"lard",
    "tallow",
    "rendered lard",
    "rendered fat",
    "bacon grease",
    "bacon fat",
    "beef tallow",
    "suet",
    "schmaltz",
    "duck fat",
    "dripping",
    "cooking oil",
    "olive oil",
    "manteca",
    "manteca de cerdo",
    "sebo"};
constexpr citation a2656[] = {{"psu-fats-oils", "", ""}};
constexpr sv a2657[] = {"confit",
    "duck confit",
    "goose confit",
    "pork confit",
    "confit de canard",
    "meat packed in lard",
    "meat in lard",
    "lard-packed meat",
    "potted meat",
    "rillettes",
    "carne en manteca",
    "sausage in lard",
    "chicharron en manteca"};
constexpr citation a2658[] = {{"psu-fats-oils", "", ""},
    {"usda-guide-5", "", ""}};
constexpr sv a2659[] = {"milk",
    "whole milk",
    "raw milk",
    "goat milk",
    "goats milk",
    "cow milk",
    "evaporated milk",
    "canned milk",
    "skim milk",
    "leche",
    "leche de vaca",
    "leche de cabra"};
constexpr citation a2660[] = {{"kentucky-dairy", "", ""},
    {"clemson-dairy", "", ""},
    {"osu-emergencies", "", ""}};
constexpr sv a2661[] = {"cream",
    "heavy cream",
    "whipping cream",
    "double cream",
    "single cream",
    "half and half",
    "clotted cream",
    "crema",
    "nata",
    "crema de leche"};
constexpr citation a2662[] = {{"kentucky-dairy", "", ""},
    {"kstate-creamed-soup", "", ""}};
constexpr sv a2663[] = {"butter",
    "canned butter",
    "bottled butter",
    "salted butter",
    "unsalted butter",
    "ghee",
    "clarified butter",
    "brown butter",
    "herb butter",
    "garlic butter",
    "mantequilla",
    "manteca de vaca"};
constexpr citation a2664[] = {{"usu-not-to-store", "", ""},
    {"clemson-dairy", "", ""},
    {"osu-emergencies", "", ""}};
constexpr sv a2665[] = {"cheese",
    "cheeses",
    "hard cheese",
    "cheddar",
    "cheddar cheese",
    "canned cheese",
    "melted cheese",
    "gouda",
    "feta",
    "parmesan",
    "swiss cheese",
    "queso",
    "quesos",
    "queso curado"};
constexpr citation a2666[] = {{"clemson-dairy", "", ""},
    {"kentucky-dairy", "", ""}};
constexpr sv a2667[] = {"soft cheese",
    "cream cheese",
    "cottage cheese",
    "ricotta",
    "mozzarella",
    "brie",
    "goat cheese",
    "queso fresco",
    "requeson",
    "requesón",
    "queso crema",
    "cheesecake",
    "cheesecake in a jar"};
constexpr citation a2668[] = {{"clemson-dairy", "", ""}};
constexpr sv a2669[] = {"cheese sauce",
    "nacho cheese",
    "queso dip",
    "alfredo",
    "alfredo sauce",
    "white sauce",
    "bechamel",
    "béchamel",
    "fondue",
    "macaroni cheese sauce",
    "salsa de queso",
    "salsa bechamel",
    "salsa blanca"};
constexpr citation a2670[] = {{"kstate-creamed-soup", "", ""},
    {"clemson-dairy", "", ""},
    {"psu-not-to-can", "", ""}};
constexpr sv a2671[] = {"yogurt",
    "yoghurt",
    "greek yogurt",
    "sour cream",
    "buttermilk",
    "kefir",
    "creme fraiche",
    "crème fraîche",
    "soured cream",
    "yogur",
    "crema agria"};
constexpr citation a2672[] = {{"kentucky-dairy", "", ""}};
constexpr sv a2673[] = {"dulce de leche",
    "cajeta",
    "caramel sauce",
    "caramel",
    "caramels",
    "salted caramel",
    "salted caramel sauce",
    "butterscotch sauce",
    "butterscotch",
    "condensed milk",
    "sweetened condensed milk",
    "toffee sauce",
    "manjar",
    "arequipe",
    "leche condensada",
    "milk jam"};
constexpr sv a2674[] = {"chocolate sauce",
    "fudge sauce",
    "hot fudge",
    "hot fudge sauce",
    "chocolate syrup",
    "chocolate fudge sauce",
    "chocolate topping",
    "chocolate spread",
    "salsa de chocolate",
    "chocolate ganache"};
constexpr citation a2675[] = {{"nchfp-chocolate", "", ""},
    {"clemson-chocolate", "", ""}};
constexpr sv a2676[] = {"custard",
    "custards",
    "pudding",
    "puddings",
    "vanilla pudding",
    "rice pudding",
    "custard pie filling",
    "pastry cream",
    "cream pie filling",
    "flan",
    "natillas",
    "arroz con leche"};
constexpr citation a2677[] = {{"psu-not-to-can", "", ""},
    {"kentucky-dairy", "", ""}};
constexpr sv a2678[] = {"bread",
    "bread loaves in jars",
    "bread in a jar",
    "canned bread",
    "quick bread",
    "quick bread in a jar",
    "banana bread",
    "banana bread in a jar",
    "zucchini bread",
    "pumpkin bread",
    "applesauce bread",
    "brown bread",
    "boston brown bread",
    "pan en frasco",
    "gingerbread in a jar"};
constexpr citation a2679[] = {{"psu-breads", "", ""},
    {"usu-not-to-store", "", ""}};
constexpr sv a2680[] = {"cake",
    "cake in a jar",
    "canned cake",
    "jar cake",
    "cakes in jars",
    "brownies in a jar",
    "fruit cake in a jar",
    "cheesecake cups in jars",
    "muffins in a jar",
    "pastel en frasco",
    "bizcocho en frasco"};
constexpr citation a2681[] = {{"psu-breads", "", ""}};
constexpr sv a2682[] = {"flour",
    "wheat flour",
    "white flour",
    "whole wheat flour",
    "cornmeal",
    "corn flour",
    "masa harina",
    "cake mix",
    "cookie mix",
    "cookie mix in a jar",
    "pancake mix",
    "bread mix",
    "harina",
    "harinas"};
constexpr citation a2683[] = {{"wisconsin-dry-canning", "", ""},
    {"missouri-dry-canning", "", ""},
    {"psu-dry-canning", "", ""}};
constexpr sv a2684[] = {"dry-canned beans",
    "oven-canned beans",
    "oven-canned rice",
    "dry-canned rice",
    "dry canned goods",
    "oven-canned dry goods",
    "dried vegetables in jars",
    "dried fruit in heated jars",
    "dried foods in heated jars",
    "dry goods",
    "dried soup mix"};
constexpr sv a2685[] = {"rice",
    "cooked rice",
    "canned rice",
    "white rice",
    "brown rice",
    "wild rice",
    "rice in a jar",
    "fried rice",
    "spanish rice",
    "arroz",
    "arroz cocido",
    "arroces",
    "jambalaya",
    "risotto"};
constexpr citation a2686[] = {{"clemson-soups", "", ""},
    {"psu-not-to-can", "", ""}};
constexpr sv a2687[] = {"pasta",
    "noodles",
    "noodle",
    "macaroni",
    "egg noodles",
    "lasagna",
    "lasagne",
    "ravioli",
    "ramen noodles",
    "couscous",
    "cooked pasta",
    "fideos",
    "macarrones",
    "tallarines"};
constexpr sv a2688[] = {"spaghetti",
    "spaghetti in sauce",
    "spaghetti and meatballs",
    "spaghetti in a jar",
    "spaghetti rings",
    "macaroni and cheese",
    "mac and cheese",
    "pasta in sauce",
    "goulash with macaroni",
    "american goulash",
    "espaguetis",
    "espagueti"};
constexpr citation a2689[] = {{"psu-not-to-can", "", ""},
    {"kstate-creamed-soup", "", ""}};
constexpr sv a2690[] = {"barley",
    "pearl barley",
    "beef barley soup",
    "mushroom barley soup",
    "oats",
    "oatmeal",
    "porridge",
    "quinoa",
    "bulgur",
    "wheat berries",
    "cooked grain",
    "grits",
    "polenta",
    "millet",
    "cebada",
    "avena",
    "trigo"};
constexpr citation a2691[] = {{"kstate-creamed-soup", "", ""},
    {"ucanr-soup", "", ""}};
constexpr sv a2692[] = {"tamales",
    "tamale",
    "tamal",
    "tamale pie",
    "masa",
    "hallacas",
    "humitas",
    "dumplings",
    "dumpling",
    "chicken and dumplings",
    "pierogi",
    "gnocchi",
    "burritos"};
constexpr sv a2693[] = {"stuffed peppers",
    "stuffed pepper",
    "stuffed bell peppers",
    "stuffed pepper soup",
    "cabbage rolls",
    "stuffed cabbage",
    "golumpki",
    "sarma",
    "dolma",
    "stuffed grape leaves",
    "chiles rellenos",
    "pimientos rellenos",
    "unstuffed cabbage rolls"};
constexpr sv a2694[] = {"cream soup",
    "cream soups",
    "creamed soup",
    "cream of mushroom soup",
    "cream of chicken soup",
    "cream of celery soup",
    "cream of broccoli soup",
    "broccoli cheese soup",
    "cream of asparagus soup",
    "bisque",
    "lobster bisque",
    "sopa crema",
    "crema de champiñones",
    "crema de verduras"};
constexpr citation a2695[] = {{"kstate-creamed-soup", "", ""},
    {"clemson-soups", "", ""}};
constexpr sv a2696[] = {"chowder",
    "clam chowder",
    "new england clam chowder",
    "corn chowder",
    "fish chowder",
    "seafood chowder",
    "potato chowder",
    "salmon chowder",
    "oyster stew",
    "sopa de almejas con leche"};
constexpr sv a2697[] = {"noodle soup",
    "chicken noodle soup",
    "beef noodle soup",
    "turkey noodle soup",
    "chicken and rice soup",
    "chicken rice soup",
    "turkey rice soup",
    "minestrone",
    "alphabet soup",
    "soup with pasta",
    "soup with rice",
    "sopa de fideo",
    "sopa de fideos",
    "caldo con arroz"};
constexpr sv a2698[] = {"pureed soup",
    "puréed soup",
    "blended soup",
    "split pea soup",
    "thick pea soup",
    "pumpkin soup",
    "squash soup",
    "butternut squash soup",
    "carrot soup",
    "pureed vegetable soup",
    "crema de calabaza",
    "sopa de calabaza"};
constexpr citation a2699[] = {{"nchfp-baby-food", "", ""},
    {"clemson-soups", "", ""}};
constexpr sv a2700[] = {"tomato soup",
    "cream of tomato soup",
    "creamy tomato soup",
    "condensed tomato soup",
    "thick tomato soup",
    "tomato bisque",
    "tomato basil soup",
    "sopa de tomate",
    "crema de tomate",
    "sopa de jitomate"};
constexpr citation a2701[] = {{"kstate-creamed-soup", "", ""}};
constexpr sv a2702[] = {"stew",
    "stews",
    "beef stew",
    "thickened stew",
    "meat stew",
    "beef stew with vegetables",
    "venison stew",
    "lamb stew",
    "irish stew",
    "chicken stew",
    "hunters stew",
    "goulash",
    "estofado",
    "guisado",
    "guiso"};
constexpr citation a2703[] = {{"missouri-leftovers", "", ""},
    {"pnw-361", "", ""},
    {"clemson-soups", "", ""}};
constexpr sv a2704[] = {"brunswick stew",
    "burgoo",
    "kentucky burgoo",
    "georgia stew",
    "camp stew",
    "squirrel stew"};
constexpr citation a2705[] = {{"nchfp-meat-faq", "", ""}};
constexpr sv a2706[] = {"green chile stew",
    "green chili stew",
    "green chile stew with pork",
    "pork green chile",
    "green chile pork stew",
    "chile verde",
    "chili verde",
    "pork chile verde",
    "pork and green chile stew",
    "carne con chile verde"};
constexpr citation a2707[] = {{"osu-own-chili", "", ""},
    {"pnw-361", "", ""}};
constexpr sv a2708[] = {"own chili",
    "own chili recipe",
    "homemade chili",
    "chili without beans",
    "chili without meat",
    "white chili",
    "white chicken chili",
    "turkey chili",
    "venison chili",
    "vegetarian chili",
    "thick chili",
    "thickened chili",
    "chili with cornstarch",
    "chili casero",
    "hot dog chili"};
constexpr citation a2709[] = {{"osu-own-chili", "", ""},
    {"usda-guide-5", "", ""}};
constexpr sv a2710[] = {"gravy",
    "gravies",
    "brown gravy",
    "turkey gravy",
    "sausage gravy",
    "country gravy",
    "white gravy",
    "meat gravy",
    "beef and gravy",
    "beef tips in gravy",
    "chicken in gravy",
    "salsa de carne"};
constexpr citation a2711[] = {{"iowa-thickeners-2018", "", ""},
    {"psu-not-to-can", "", ""}};
constexpr sv a2712[] = {"thickened sauce",
    "thick sauce",
    "enchilada sauce",
    "red enchilada sauce",
    "green enchilada sauce",
    "sweet and sour sauce",
    "stir-fry sauce",
    "teriyaki sauce",
    "curry sauce",
    "mole",
    "mole sauce",
    "sloppy joe sauce",
    "sloppy joes",
    "salsa espesa",
    "salsa para enchiladas"};
constexpr sv a2713[] = {"pie filling with cornstarch",
    "pie filling with flour",
    "pie filling with tapioca",
    "apple pie filling with cornstarch",
    "apple pie filling with flour",
    "cherry pie filling with cornstarch",
    "pie filling with cornflour",
    "pie filling with instant starch",
    "pie filling with instant modified starch",
    "relleno de pay con maicena"};
constexpr citation a2714[] = {{"iowa-thickeners-2022", "", ""},
    {"usda-guide-2", "", ""}};
constexpr sv a2715[] = {"own salsa",
    "own salsa recipe",
    "homemade salsa",
    "salsa by an own recipe",
    "family salsa recipe",
    "fresh salsa",
    "pico de gallo",
    "restaurant salsa",
    "roasted salsa",
    "black bean salsa",
    "corn and bean salsa",
    "corn and black bean salsa",
    "cowboy caviar",
    "salsa fresca"};
constexpr citation a2716[] = {{"njaes-salsa", "", ""},
    {"nebraska-salsa", "", ""}};
constexpr sv a2717[] = {"barbecue sauce",
    "bbq sauce",
    "barbeque sauce",
    "own barbecue sauce",
    "homemade barbecue sauce",
    "mustard barbecue sauce",
    "brown sauce",
    "steak sauce",
    "salsa barbacoa",
    "salsa bbq"};
constexpr citation a2718[] = {{"ohio-bbq", "", ""}};
constexpr sv a2719[] = {"leftovers",
    "leftover stew",
    "leftover soup",
    "leftover casserole",
    "table leftovers",
    "holiday leftovers",
    "cooked meals",
    "ready meals",
    "casserole",
    "casseroles",
    "meals in a jar",
    "dinner in a jar",
    "sobras",
    "restos"};
constexpr citation a2720[] = {{"missouri-leftovers", "", ""},
    {"illinois-leftovers", "", ""}};
constexpr sv a2721[] = {"bacon",
    "canned bacon",
    "bacon bits",
    "bacon slices",
    "streaky bacon",
    "back bacon",
    "pancetta",
    "salt pork",
    "tocino",
    "tocineta",
    "panceta",
    "beicon"};
constexpr citation a2722[] = {{"clemson-cured-meats", "", ""},
    {"osu-emergencies", "", ""}};
constexpr sv a2723[] = {"bacon jam",
    "bacon onion jam",
    "onion bacon jam",
    "bacon marmalade",
    "bacon spread",
    "mermelada de tocino"};
constexpr citation a2724[] = {{"extension-bacon-jam", "", ""},
    {"clemson-bacon-jam", "", ""}};
constexpr sv a2725[] = {"ham",
    "hams",
    "smoked ham",
    "cured ham",
    "country ham",
    "canned ham",
    "ham chunks",
    "ham cubes",
    "gammon",
    "prosciutto",
    "ham hocks",
    "jamon",
    "jamón",
    "jamones"};
constexpr sv a2726[] = {"corned beef",
    "brined meat",
    "corned meat",
    "corned venison",
    "salt beef",
    "pastrami",
    "brined beef",
    "brined chicken",
    "brined turkey",
    "carne en salmuera",
    "carne curada",
    "cured meat",
    "cured meats"};
constexpr citation a2727[] = {{"clemson-cured-meats", "", ""}};
constexpr sv a2728[] = {"hot dogs",
    "hot dog",
    "frankfurters",
    "frankfurter",
    "wieners",
    "smoked sausage",
    "cured sausage",
    "kielbasa",
    "bologna",
    "salami",
    "summer sausage",
    "pepperoni",
    "smoked bratwurst",
    "vienna sausages",
    "cocktail sausages",
    "salchichas",
    "salchicha",
    "salchichon",
    "salchichón",
    "mortadela"};
constexpr citation a2729[] = {{"clemson-cured-meats", "", ""},
    {"usda-guide-5", "", ""}};
constexpr sv a2730[] = {"smoked oysters",
    "smoked clams",
    "smoked mussels",
    "smoked shellfish",
    "smoked shrimp",
    "smoked scallops",
    "smoked seafood",
    "smoked octopus",
    "ostras ahumadas",
    "mejillones ahumados",
    "almejas ahumadas",
    "mariscos ahumados"};
constexpr citation a2731[] = {{"nchfp-smoked-fish", "", ""}};
constexpr sv a2732[] = {"blue crab",
    "blue crabs",
    "blue crab meat",
    "blue crabmeat",
    "soft-shell crab",
    "soft shell crabs",
    "jaiba",
    "jaibas",
    "cangrejo azul"};
constexpr citation a2733[] = {{"usda-guide-5", "", ""}};
constexpr sv a2734[] = {"lobster",
    "lobsters",
    "lobster meat",
    "lobster tails",
    "crayfish",
    "crawfish",
    "langoustines",
    "rock lobster",
    "spiny lobster",
    "langosta",
    "langostas",
    "bogavante",
    "langostinos"};
constexpr citation a2735[] = {{"usda-guide-5", "", ""},
    {"umaine-lobster", "", ""},
    {"pnw-361", "", ""}};
constexpr sv a2736[] = {"bone-in beef",
    "bone-in pork",
    "bone-in lamb",
    "bone-in venison",
    "pork chops with bones",
    "bone-in pork chops",
    "ribs",
    "spare ribs",
    "spareribs",
    "short ribs",
    "oxtail",
    "oxtails",
    "pork ribs",
    "lamb chops",
    "costillas",
    "costillas de cerdo",
    "rabo de res",
    "chuletas con hueso"};
constexpr sv a2737[] = {"breaded meat",
    "floured meat",
    "meat coated with flour",
    "battered meat",
    "fried chicken",
    "breaded chicken",
    "chicken fried steak",
    "schnitzel",
    "breaded pork chops",
    "fish sticks",
    "battered fish",
    "milanesa",
    "milanesas",
    "pollo frito"};
constexpr citation a2738[] = {{"iowa-thickeners-2018", "", ""},
    {"usda-guide-5", "", ""}};
constexpr sv a2739[] = {"meatloaf",
    "meat loaf",
    "meatloaf in a jar",
    "canned meatloaf",
    "meatballs with breadcrumbs",
    "meatballs with rice",
    "porcupine meatballs",
    "ham loaf",
    "pastel de carne",
    "albondigas con arroz",
    "albóndigas con arroz"};
constexpr citation a2740[] = {{"pnw-361", "", ""},
    {"usda-guide-5", "", ""}};
constexpr sv a2741[] = {"pate",
    "pâté",
    "liver pate",
    "liver pâté",
    "liver spread",
    "liverwurst",
    "liver sausage",
    "meat spread",
    "deviled ham",
    "foie gras",
    "paté",
    "pate de higado",
    "paté de hígado",
    "leberwurst"};
constexpr citation a2742[] = {{"nchfp-baby-food", "", ""},
    {"psu-fats-oils", "", ""}};
constexpr sv a2743[] = {"pet food",
    "dog food",
    "cat food",
    "homemade dog food",
    "homemade pet food",
    "canned dog food",
    "raw pet food",
    "comida para perros",
    "comida para gatos",
    "alimento para mascotas"};
constexpr citation a2744[] = {{"pnw-361", "", ""},
    {"clemson-soups", "", ""}};
constexpr untested_food a2745[] = {{"pumpkin-butter", "pumpkin butter", a2539, "Batches made by one recipe came out with different acid and different thickness, and pumpkin butters of home canners reached pH 5.4. With both unknown no time can be set, not even where lemon juice or vinegar is added.", "Keep it in the refrigerator or the freezer. Or can `pumpkin` in cubes under pressure and cook the butter when the jar is opened.", a2540},
    {"pumpkin-puree", "mashed or pureed pumpkin", a2541, "The mash is thick and low in acid, and how thick it is differs from batch to batch, so heat reaches the middle of the jar at no known pace. USDA took back its old directions and allows cubes alone.", "Can `pumpkin` in 1-inch cubes and mash them after opening, or freeze the puree.", a2542},
    {"winter-squash-puree", "mashed or pureed winter squash", a2543, "As with pumpkin, the thickness of the mash varies and the heat creeps through it. USDA withdrew its old directions for mashed squash.", "Can `squash-winter` in cubes and mash it when the jar is opened, or freeze the puree.", a2544},
    {"pumpkin-pie-filling", "pumpkin pie filling", a2545, "It is pumpkin puree, too thick for any known time, with eggs and milk on top of it. Neither the puree nor custard fillings have directions for canning.", "Can `pumpkin` in cubes and mix the filling on the day, or freeze the puree.", a2546},
    {"spaghetti-squash", "spaghetti squash", a2547, "The table for winter squash was made with cubes that stay cubes. The flesh of spaghetti squash falls apart into strands when it is heated, so that table does not fit it.", "Cook it and freeze the strands, or can another winter squash by `squash-winter`.", a2548},
    {"sweet-potato-puree", "mashed or pureed sweet potatoes", a2549, "The table is for pieces covered with water or syrup. A mash has no liquid that could carry the heat inward, and pureed vegetables have no process at all.", "Can `potatoes-sweet` in pieces and mash them after opening, or freeze the mash.", a2550},
    {"sweet-potato-butter", "sweet potato butter", a2551, "It is a low-acid puree cooked down until it is thicker still. Pureed vegetables have no process, and pumpkin butter shows that acid and thickness cannot be foreseen.", "Freeze it, or can `potatoes-sweet` in pieces and cook the butter from an opened jar.", a2552},
    {"mashed-potatoes", "mashed potatoes", a2553, "Mashed potato is too thick: the heat cannot reach the centre of the jar in a time that anybody has measured. Milk and butter in it have no place in a canning jar either.", "Can `potatoes-white` peeled and in cubes and mash them after opening, or freeze the mash.", a2554},
    {"potato-soup", "potato soup", a2555, "Potatoes cooked soft enough for this soup thicken it, and most recipes add flour, milk or cream as well. Soups that are thick or hold milk are outside the soup table.", "Can potato cubes in broth by the rules of `soups`, then thicken and add milk after opening; or freeze the soup.", a2556},
    {"refried-beans", "refried beans", a2557, "Mashed beans are a dense low-acid puree, often with lard in it. Pureed vegetables have no process, since nobody has determined a time for them.", "Can whole beans by `beans-dry` and mash them after opening, or freeze the refried beans.", a2558},
    {"hummus", "hummus", a2559, "It is a stiff paste of chickpeas, sesame and oil. Dense purees have no process, and oil keeps heat away from what should be killed.", "Can whole chickpeas by `beans-dry` and blend the hummus from an opened jar, or freeze it.", a2560},
    {"vegetable-puree", "pureed vegetables", a2561, "The times for vegetables hold for pieces in liquid. Times for purees have not been determined for home use, and USDA asks that none be canned.", "Can the vegetable in pieces by its own table, such as `carrots`, `peas-green` or `greens`, and puree it when serving; or freeze the puree.", a2562},
    {"baby-food-vegetables", "baby food of vegetables or meat", a2563, "Proper times for pureed vegetables, red meat and poultry have not been determined for home use. Baby food of fruit alone is another matter and has a table.", "Can the vegetable or meat in pieces by its own table and blend it when serving; boil the blended food, simmer it 10 minutes and let it cool. What is left belongs in the refrigerator, for 2 days at most.", a2564},
    {"bananas", "bananas", a2565, "Bananas lie around pH 4.5 to 5.2, mostly over the line for boiling water. The USDA guide has no table for them, and none was found elsewhere.", "Freeze them, peeled and whole or mashed, or dry them.", a2566},
    {"banana-butter", "banana butter", a2567, "Banana puree is named among the fruit purees that must not be canned: too little acid, too dense. Lemon juice or pineapple by taste does not make a tested recipe of it.", "Freeze it or keep it in the refrigerator. A spread with a process is `apple-butter`.", a2568},
    {"cantaloupe", "cantaloupe", a2569, "Cantaloupe has a pH over 6 and is a low-acid food by itself. There is no process for plain melon or melon in syrup, under pressure or in boiling water.", "Freeze it in cubes or balls. The relative with a recipe is `cantaloupe-pickles`, in a strong vinegar syrup.", a2570},
    {"watermelon", "watermelon", a2571, "Watermelon is low in acid, about pH 5.2 to 5.6, and melons alone are not suited for canning. A botulism outbreak of 2011 was traced to watermelon jelly.", "Freeze the flesh. Pickles of the rind and jelly need a tested recipe from a publication; this edition holds none.", a2572},
    {"honeydew", "honeydew and other melons", a2573, "All melons are low-acid, with a pH around 6. None may be canned by itself, nor as a puree.", "Freeze the melon in pieces, with or without syrup; the texture may change.", a2574},
    {"white-peaches", "white-flesh peaches", a2575, "White peaches can have a pH over 4.6, and no way to acidify them has been worked out. No process fits them, be it as fruit, jam, salsa or pie filling; the table `peaches` is for yellow flesh.", "Freeze them, or can yellow-flesh fruit by `peaches`.", a2576},
    {"white-nectarines", "white-flesh nectarines", a2577, "Like white peaches they are bred to be sweet, and their pH can be over 4.6. The nectarine table was made with yellow flesh and covers no other.", "Freeze them, or can yellow-flesh fruit by `nectarines`.", a2576},
    {"ripe-mango", "ripe mangoes", a2578, "Mangoes lose acid as they ripen, and ripe ones are low-acid. Ripe mango has no process plain, nor as a simple puree. Publications differ about sauce: NCHFP prints an acidified recipe, Oregon State knows no guideline it would give.", "Freeze or dry ripe mangoes. With a process are `mangoes-green`, `mango-sauce` and `chutney-mango`.", a2579},
    {"papaya", "papaya", a2580, "Papaya is a low-acid fruit, pH 5.2 to 6.0. It is not in the USDA tables, and its puree is named among those that must not be canned.", "Freeze it or eat it fresh.", a2581},
    {"persimmons", "persimmons", a2582, "Their pH hovers at 4.6, on either side of the line, and the pulp is dense. No tested recipe exists, neither in boiling water nor under pressure.", "Freeze them, whole or as pulp.", a2583},
    {"elderberries", "elderberries", a2584, "Measurements of recent years put them near pH 4.8, on average, so they are low-acid. USDA still names them in its old list of berries and one Oregon answer treats them like blackberries; later Extension pages refuse any process.", "Freeze the berries. Other berries go by `berries-whole`.", a2585},
    {"elderberry-juice", "elderberry juice or syrup", a2586, "The juice is as low in acid as the berries, about pH 4.8. Honey or sugar does not make it acid, and no process for juice or syrup is published.", "Freeze the juice and cook syrup in small amounts for the refrigerator. A syrup with a table is `berry-syrup`, made of other berries.", a2587},
    {"coconut", "coconut", a2588, "Coconut is low-acid, pH 5.5 to 7.8, and rich in fat. It stands among the fruits whose puree must not be canned, and no other form has a table.", "Freeze or dry the grated flesh.", a2589},
    {"coconut-milk", "coconut milk", a2590, "It is pressed from a low-acid fruit without a process and is mostly fat and water. Fat shields spores from the heat, so no time of another food can be lent to it.", "Freeze it. For curries can meat or vegetables by their tables, and stir the coconut milk in when the jar is opened.", a2589},
    {"avocado", "avocado", a2591, "Avocado is a low-acid fruit, about pH 6.3 to 6.6, soft and full of fat. The fruit part of the USDA guide holds no table for it.", "Freeze it, halved, sliced or mashed, with lemon juice on all cut sides.", a2592},
    {"guacamole", "guacamole", a2593, "It is mashed avocado: dense, fatty and far from acid even with lime juice. A salsa recipe does not cover it, since no low-acid food may be added to a tested salsa.", "Freeze mashed avocado with lemon juice and finish the dip when it is thawed. Salsa for jars is `salsa-choice`.", a2594},
    {"dates", "dates", a2595, "K-State counts dates among the low-acid fruits and takes their puree out of the fruit-puree table. The USDA guide has no table for them in any form.", "Freeze paste and puree, and keep dried dates dry and closed, without heating the jar.", a2596},
    {"fig-puree", "fig puree", a2597, "Figs lie above pH 4.6 and are canned only whole, with lemon juice or citric acid in each jar. Their puree is excluded from the puree table by every edition of the guide.", "Can whole `figs` with their acid and mash them after opening, or freeze the puree.", a2598},
    {"asian-pear-puree", "Asian pear puree", a2599, "Asian pears average about pH 4.7 and need lemon juice even in pieces. NCHFP excludes their puree from the fruit-puree table.", "Can them in pieces by `pears-asian`, or freeze the puree.", a2598},
    {"strawberries", "strawberries in syrup", a2600, "They are acid enough, but the USDA table for whole berries does not name them, and no other table for plain strawberries was found.", "Freeze them, or make `berry-syrup`, `jelly-strawberry-rhubarb` or jam by `jam-without-added-pectin`.", a2601},
    {"fruit-curds", "curd of other fruit", a2602, "Curd holds much butter and egg, and only the acid of bottled lemon juice carries it. Oranges have less acid than lemons, and Extension knows no recipe for orange curd that would keep on the shelf.", "Freeze it. NCHFP prints one recipe for canned lemon curd; this edition holds no table of it.", a2603},
    {"lemon-curd", "lemon curd", a2604, "A recipe exists: NCHFP prints a boiling-water process for one lemon curd in half-pints, with bottled lemon juice and special steps. This edition holds no table of it, so no plan can be compared, and other curd recipes have none.", "Follow that publication to the letter, or freeze the curd, or keep it in the refrigerator for up to 4 weeks.", a2605},
    {"summer-squash", "summer squash or zucchini alone", a2606, "The old times were withdrawn: no record of the tests was found and they could not be repeated. Cooked slices turn soft and pack together, and how much is in the jar changes the heating.", "Freeze, dry or pickle it. With a process are `zucchini-bread-and-butter`, `zucchini-pineapple` and `tomatoes-with-okra-or-zucchini`.", a2607},
    {"eggplant", "eggplant", a2608, "Eggplant is a low-acid vegetable, and the vegetable part of the guide has no table for it. NCHFP gives directions for the freezer only.", "Freeze it in slices, scalded 4 minutes in water with lemon juice.", a2609},
    {"ratatouille", "ratatouille", a2610, "Eggplant has no canning directions and zucchini has none alone; a mixture may hold only what has directions of its own. So no time can be given for the mixture.", "Freeze it. A neighbour with a table is `tomatoes-with-okra-or-zucchini`.", a2611},
    {"cabbage", "cabbage", a2612, "Canning is not recommended for the cabbage family, and no tested process for plain cabbage exists. Kale, collards and other leaves have a table of their own all the same, under `greens`.", "Freeze or dry it, or ferment it and can it as `sauerkraut`.", a2613},
    {"cabbage-soup", "soup with cabbage", a2614, "Every solid in a canned soup must have canning directions of its own, and cabbage has none. It is the usual example in the publications.", "Can the soup without cabbage by `soups` and add the cabbage when it is heated, or freeze it.", a2615},
    {"broccoli", "broccoli", a2616, "Missouri Extension does not recommend home canning of broccoli, and no table exists. Of the cabbage family only the leafy greens have one.", "Scald it 3 minutes and freeze it.", a2617},
    {"cauliflower", "plain cauliflower", a2618, "Plain cauliflower is not recommended for home canning and has no table; the one exception is a tested pickle.", "Freeze it, or pickle it by `cauliflower-or-brussels-sprouts-pickled`.", a2617},
    {"brussels-sprouts", "plain Brussels sprouts", a2619, "They belong to the cabbage family, for which canning is not recommended, and have no table unless pickled.", "Freeze them, or pickle them by `cauliflower-or-brussels-sprouts-pickled`.", a2620},
    {"celery", "celery alone", a2621, "Celery has no current canning directions; Wisconsin names it as an ingredient to leave out of mixtures. It may stand in recipes that were tested with it, in the amount they print.", "Freeze or dry it for cooking. It is part of `tomato-vegetable-juice-blend` and `spaghetti-sauce-without-meat`.", a2611},
    {"lettuce", "lettuce and leafy salad", a2622, "The greens table of the guide is for spinach and leaves cooked like it; lettuce and salad leaves are in no table.", "Eat them fresh. Leaves for cooking, such as spinach or chard, go by `greens`.", a2623},
    {"cucumbers", "plain cucumbers", a2624, "A cucumber alone is low-acid, about pH 5.1 to 5.8, and stands in no table. Every process for it is for pickles, where vinegar or fermenting makes the acid.", "Pickle them by a tested recipe, such as `pickles-quick-fresh-pack-dill`, `pickles-bread-and-butter` or `dill-pickles-fermented`.", a2625},
    {"radishes", "radishes", a2626, "Radishes are low-acid roots, pH 5.5 to 6.5, and the guide prints no table for them; that of beets or carrots does not cover them.", "Eat them fresh. Roots with a table are `beets` and `carrots`.", a2623},
    {"artichokes", "artichokes", a2627, "Artichokes are low-acid, about pH 5.5 to 6.0, and no table for them alone is published. South Dakota's sheet offers freezing and drying for the hearts.", "Freeze the hearts, boiled 7 minutes, or dry them in thin strips.", a2628},
    {"edible-pod-peas", "snow peas or sugar snap peas", a2629, "The table for peas is for shelled ones. For peas eaten with the pod the publications give freezing only.", "Freeze them after a short scalding. Peas that have filled their pods are shelled and go by `peas-green`.", a2630},
    {"garlic", "plain garlic", a2631, "Garlic is low-acid and would need pressure, which takes most of its flavour, so no times were developed for it.", "Freeze or dry it, or keep it in wine or vinegar in the refrigerator.", a2632},
    {"wild-mushrooms", "wild mushrooms", a2633, "The table was made with grown mushrooms and the guide tells not to can wild ones. In mixtures, too, they count as an ingredient without directions.", "Freeze or dry them. Grown ones go by `mushrooms`.", a2634},
    {"horseradish", "horseradish", a2635, "The guide prints grated horseradish with vinegar as a sauce for the refrigerator; it has no canner process.", "Keep the sauce refrigerated; it loses its bite within 1 to 2 months.", a2636},
    {"kimchi", "kimchi", a2637, "The fermented foods with a canning table are sauerkraut and dill pickles, each with a fixed share of salt. Kimchi has many recipes, with garlic, fish or fruit in them, and none has a table.", "Keep it in the refrigerator, as kraut that is not canned. Plain kraut goes by `sauerkraut`.", a2636},
    {"own-pickles", "pickles by an own recipe", a2638, "What makes a pickle keep is enough vinegar for that very amount of vegetable, evenly through the jar. The shares of vinegar, water and food in a tested recipe may not be changed, and a ratio alone is no test.", "Use a tested recipe, such as `pickles-bread-and-butter`, `relish-pickle` or `beets-pickled`; keep other pickles in the refrigerator.", a2636},
    {"garlic-in-oil", "garlic in oil", a2639, "Garlic is low-acid, and the oil keeps out the air, without which botulinum spores can grow. There is no process, and it may not be left in the warm either.", "Freeze it for several months, or keep it at 40 F or lower for at most 4 days. Older copies print 7 or 10 days; the newest says 4.", a2640},
    {"herbs-in-oil", "herbs in oil", a2641, "Both herbs and oil are low-acid, and under oil there is no air. No canning directions exist for them.", "Make a little, keep it in the refrigerator and use it within 2 to 3 days, or freeze it.", a2642},
    {"vegetables-in-oil", "vegetables in oil", a2643, "Oil around a vegetable keeps off air and shields spores from heat. Only three recipes with a little oil were tested, each with plenty of acid.", "Use `peppers-marinated`, `mushrooms-marinated-whole` or `three-bean-salad-pickled` as printed; keep anything else in the refrigerator for at most 3 days, or freeze it.", a2644},
    {"pesto", "pesto", a2645, "Pesto is an uncooked mixture of herbs, garlic, nuts and oil, low-acid and dense. There are no canning directions for it, not under pressure either.", "Freeze it, or keep it in the refrigerator for at most 3 days.", a2646},
    {"eggs", "eggs", a2647, "Eggs are dense and low-acid, pH 6.4 to 9. No research-tested directions exist for canning them, plain or pickled.", "Keep them in the refrigerator, or freeze them out of the shell.", a2648},
    {"pickled-eggs", "pickled eggs", a2649, "Vinegar soaks slowly into a whole egg, and its middle may stay low-acid for long. Home-pickled eggs kept at room temperature caused a case of botulism, and no shelf process is known.", "Keep them in the refrigerator all the time, out of it for 2 hours at most, and eat them within 2 to 3 months.", a2650},
    {"nuts", "nuts", a2651, "USDA never had directions for nut meats. A Georgia procedure was taken back, since it made a vacuum only, nobody had shown that it kills anything, and moisture in the jar may let bacteria grow.", "Keep nuts dry and closed in the refrigerator, a year, or in the freezer. NCHFP has directions for green peanuts; this edition holds no table of them.", a2652},
    {"pecan-pie-filling", "pecan pie filling", a2653, "NCHFP knows of no tested recommendation for canning it, and nut meats have none either.", "Freeze the baked pie, up to 3 to 4 months. Fruit fillings with a table are `pie-filling-apple` and `pie-filling-cherry`.", a2654},
    {"lard", "lard, tallow and cooking fat", a2655, "Fat surrounds spores and protects them from the heat, creeps under the lid, and turns rancid in time. There is no table for it, and hot fat poured into jars has had no process at all.", "Keep rendered fat in the refrigerator or the freezer.", a2656},
    {"confit", "meat packed in fat", a2657, "The meat tables ask that fat be taken off and broth, water or juice poured on. Fat keeps heat from spores and spoils the seal, so a jar filled up with it has no process.", "Can lean meat by `meat-strips-cubes-chunks` or `poultry-other-without-bones`, or keep confit in the refrigerator or freezer.", a2658},
    {"milk", "milk", a2659, "Milk is a low-acid food, and there is no science-based way of canning any dairy food at home. USDA, NCHFP and Extension all advise against it.", "Freeze it, or buy it dried or in tins.", a2660},
    {"cream", "cream", a2661, "Cream is low-acid like milk and rich in fat, which hinders the heat. No home process exists for it, nor for foods with cream in them.", "Freeze it, and add cream to canned foods only when they are served.", a2662},
    {"butter", "butter", a2663, "Directions that go round only melt the butter into hot jars, which is no canning at all. Nobody has tested a process, and under a lid there is no air and little to stop botulism.", "Freeze it.", a2664},
    {"hard-cheese", "hard cheese", a2665, "Hard cheese keeps by being dry, salty and full of helpful bacteria. Melting it into jars in boiling water may add water and kills those bacteria; nobody has tested what then grows.", "Keep it waxed or wrapped in a cool place or the refrigerator, or freeze it.", a2666},
    {"soft-cheese", "soft cheese", a2667, "Soft cheese holds more water than hard cheese and is low-acid. Clemson calls the claim that it can be canned a major concern; there is no tested process.", "Keep it in the refrigerator, or freeze it where a softer texture does no harm.", a2668},
    {"cheese-sauce", "cheese sauce and white sauce", a2669, "It joins two things that have no place in a canning jar: dairy, which is low-acid, and flour or starch, which slows the heat.", "Make it fresh, or freeze it.", a2670},
    {"yogurt", "yogurt and sour cream", a2671, "Dairy foods have no science-based home process, the soured ones included.", "Keep it in the refrigerator for the days that its kind allows, or freeze it for cooking.", a2672},
    {"condensed-milk-caramel", "dulce de leche and caramel sauce", a2673, "They are made of milk, cream or butter, and no dairy food has a home process. Sugar makes them thick, which slows the heat further.", "Keep them in the refrigerator, or freeze them.", a2666},
    {"chocolate-sauce", "chocolate sauce and fudge sauce", a2674, "Chocolate sauces are low-acid. USDA, NCHFP and the Extension services have no tested recipe, neither for boiling water nor for a pressure canner.", "Freeze the sauce; it stays soft enough for a spoon.", a2675},
    {"custard", "custard and pudding", a2676, "Milk, eggs and starch come together here; each of them alone is reason enough that no directions exist.", "Make it fresh.", a2677},
    {"bread-in-a-jar", "bread baked in a jar", a2678, "This is no canning: the lid goes on after baking and nothing is processed. Many such breads are above pH 4.6 and moist, and spores that outlive the oven can grow in the closed jar.", "Bake it in a pan and freeze it.", a2679},
    {"cake-in-a-jar", "cake baked in a jar", a2680, "A cake closed up hot in its jar has had no canning process; it is moist, low in acid and without much air. Heat-stable bacteria outlive the oven, and many such cakes came out underbaked.", "Bake it in a pan and freeze it.", a2681},
    {"flour", "flour and dry mixes in heated jars", a2682, "Heating dry goods in jars in the oven moves the moisture in them about, and damp spots in a closed jar let moulds and bacteria grow. It is no canning, and flour and powders have no table.", "Fill them cold into clean dry jars or bags that close well, and keep them cool and dry or in the freezer.", a2683},
    {"oven-dry-beans", "dry beans and dry foods heated in jars", a2684, "Dry foods still hold water, 11 to 30 percent by Wisconsin's count. In heated, closed jars it gathers in spots where bacteria can grow; the method is called dry canning, and Extension advises against it.", "Store them unheated, dry and closed. Beans for the canner are soaked and boiled first, by `beans-dry`.", a2683},
    {"rice", "rice", a2685, "Rice swells and thickens what it lies in, so heat goes slowly to the middle of the jar. It may not go into a canned food and has no table alone.", "Cook it fresh and add it when the jar is opened; cooked rice can be frozen.", a2686},
    {"pasta", "pasta and noodles", a2687, "Pasta gives off starch, swells and keeps the heat from the centre of the jar. No table has pasta in it.", "Boil it fresh. Sauce for it goes by `spaghetti-sauce-without-meat` or `spaghetti-sauce-with-meat`.", a2686},
    {"spaghetti-in-jars", "spaghetti or pasta dishes in jars", a2688, "The tested sauces were tested without noodles. With them the jar is thicker and stops heating as measured.", "Can the sauce by `spaghetti-sauce-with-meat` and boil the pasta when it is served, or freeze the dish.", a2689},
    {"barley", "barley and other grains", a2690, "Barley and other grains swell, thicken the liquid and slow the heat; they are on the list of what may not go into jars.", "Cook grains fresh and stir them into `soups` after opening, or freeze them cooked.", a2691},
    {"tamales", "tamales", a2692, "Dough in a jar is starch without moving liquid, and starch keeps the heat from the middle. Nothing made of dough has a table.", "Freeze them. The filling can be canned alone, such as `meat-strips-cubes-chunks`.", a2689},
    {"stuffed-vegetables", "stuffed peppers and cabbage rolls", a2693, "The stuffing is a packed lump of meat and rice, and rice may not go into jars. A pepper table covers empty peppers in liquid, no stuffed ones, and cabbage has none.", "Freeze them. Apart from each other `peppers` and `ground-meat` have tables.", a2686},
    {"cream-soup", "cream soup", a2694, "Milk and cream are low-acid and may not be canned, and the flour that thickens such soups slows the heat.", "Can the vegetables or meat in broth by `soups`, and add milk and thickening after opening; or freeze the soup.", a2695},
    {"chowder", "chowder with milk", a2696, "Chowder is thickened and holds milk or cream, and neither may go into a jar. The tables for soup are for thin ones.", "Can a base of vegetables and broth by `soups`, with seafood by `soups-with-seafood`, and add milk and flour after opening.", a2695},
    {"noodle-soup", "soup with noodles or rice", a2697, "Noodles, rice and other pasta thicken the soup in the jar and slow the heat; the soup table forbids them by name.", "Can the soup without them by `soups` and cook noodles or rice in it when the jar is opened.", a2615},
    {"pureed-soup", "pureed soup", a2698, "The soup table is for pieces in liquid, half of each. A soup that is blended, or whose peas have boiled to mush, is a low-acid puree, and for those no time has been determined.", "Can the pieces in broth by `soups`, or cubes by `pumpkin` and `squash-winter`, and blend after opening; or freeze the soup.", a2699},
    {"cream-of-tomato-soup", "thickened or creamy tomato soup", a2700, "Thickened or creamed tomato soup should not be canned: flour and milk slow the heat and take the acid away. Soups of one's own with onion and basil have no table either.", "Can `tomato-juice`, `tomato-vegetable-juice-blend` or `tomatoes-crushed` and make the soup from an opened jar.", a2701},
    {"stew", "stew", a2702, "A stew as it is served is too thick and too full of solids, and thickened stews cannot be canned. No table is published for stew of one's own.", "Can meat and vegetables thin, half solids and half broth, by the rules of `soups`, and thicken after opening; or freeze the stew.", a2703},
    {"brunswick-stew", "Brunswick stew", a2704, "NCHFP says that no process may be estimated for it: recipes differ, and each would need tests of its own.", "Freeze it.", a2705},
    {"green-chile-stew", "green chile stew with meat", a2706, "No publication prints a time for it, and the chiles alone have a process for half-pints and pints only. A time cannot be worked out at home.", "Freeze it, or can meat by `meat-strips-cubes-chunks` and chiles by `peppers` in separate jars and join them when serving.", a2707},
    {"own-chili", "chili by an own recipe", a2708, "The time for chile con carne belongs to the printed recipe alone, which may not be thickened. Another chili has no time, however alike it looks.", "Make `chile-con-carne` as printed, in pints, or freeze the chili.", a2709},
    {"gravy", "gravy", a2710, "Flour or starch thickens the liquid that should carry the heat, so tested times are too short for it; meat coated with flour is refused for the same reason.", "Can stock by `meat-stock-beef` or `meat-stock-poultry`, and meat by its own table, and make the gravy when the jar is opened.", a2711},
    {"thickened-sauces", "sauces thickened with flour or starch", a2712, "No thickener may be added to a recipe that was tested without one: it slows the heat into the middle of the jar. Sauces of one's own have no table in any case.", "Freeze them. Sauces with a table are `mexican-tomato-sauce`, `tomato-sauce` and `tomato-taco-sauce`; thicken after opening.", a2711},
    {"starch-pie-filling", "pie filling thickened with flour, cornstarch or tapioca", a2713, "Flour, cornstarch and tapioca set early and hold back the heat; the published fillings were tested with one cook-type modified corn starch and no other. The instant kind is not for canning.", "Use that starch in `pie-filling-apple`, `pie-filling-blueberry`, `pie-filling-cherry` or `pie-filling-peach`, or can the filling without any and thicken it when baking.", a2714},
    {"own-salsa", "salsa by an own recipe", a2715, "Salsa mixes acid tomatoes with low-acid onions and peppers, and only tested recipes are known to hold enough acid. No other low-acid food, such as corn or beans, may be added to them.", "Take a tested recipe; `salsa-choice` leaves the shares of onion and pepper to the cook. Keep salsa of your own in the refrigerator for up to a week, or freeze it up to a year.", a2716},
    {"barbecue-sauce", "barbecue sauce", a2717, "Many recipes are not fit for jars: their acid and thickness are unknown. NCHFP prints one tested barbecue sauce, of which this edition holds no table, so no plan can be compared.", "Follow that recipe to the letter, or freeze a sauce of your own. Neighbours with a table are `ketchup-country-western` and `tomato-taco-sauce`.", a2718},
    {"leftovers", "leftovers", a2719, "Putting a cooked dish into jars and heating it until the lids seal is no process. Sauces and stews are canned only by tested recipes, from food prepared as they say.", "Freeze them, or keep them in the refrigerator for 3 to 4 days and heat them to 165 F.", a2720},
    {"bacon", "bacon", a2721, "Bacon is cured and very fat. Cured meat has no science-based process, the fresh-meat times may not be used for it, and fat hinders both the heat and the seal.", "Freeze it. One 3/4-inch cube may flavour a jar of `beans-dry-with-sauce`, as that recipe says.", a2722},
    {"bacon-jam", "bacon jam", a2723, "It has the name of a jam, but bacon and onions are low-acid, and boiling water is for acid jams of fruit. Clemson warns of botulism where it is kept at room temperature.", "Keep it in the refrigerator or freezer. Jam for jars is made of fruit, such as `jam-pear-apple`.", a2724},
    {"ham", "ham", a2725, "Curing changes how firm, dry and salty the meat is, and so how heat goes through it; no process has been worked out, and that for fresh pork does not cover ham.", "Freeze it. Fresh pork goes by `meat-strips-cubes-chunks`.", a2722},
    {"corned-beef", "corned beef and brined meat", a2726, "No science-based process exists for cured, brined or corned meat. Salt and cure change the meat, and liquid soaks in during canning, so the fresh-meat times prove nothing.", "Freeze it. Beef that is not brined goes by `meat-strips-cubes-chunks`.", a2727},
    {"cured-sausage", "cured or smoked sausage", a2728, "The sausage in the table for ground meat is fresh, browned and in liquid. Cured meats have no process, sausages among them.", "Freeze them. Fresh sausage goes by `ground-meat`.", a2729},
    {"smoked-shellfish", "smoked shellfish", a2730, "The tested process is for smoked fish alone, and NCHFP asks that other smoked seafood be frozen.", "Freeze it. Not smoked, `oysters` and `clams` have tables; smoked fish goes by `fish-smoked`.", a2731},
    {"blue-crab", "blue crab", a2732, "The crab table was made for king and Dungeness crab, and the guide sends blue crab to the freezer.", "Freeze the meat. The other two kinds go by `crab-king-dungeness`.", a2733},
    {"lobster", "lobster", a2734, "The seafood tables of the guide hold fish, clams, oysters and two kinds of crab; lobster and crayfish are not there, and a time of another shellfish may not be borrowed.", "Freeze it. The University of Maine gives 9 to 12 months for whole lobsters and 3 to 6 months for the meat.", a2735},
    {"bone-in-red-meat", "red meat with the bones", a2736, "Times with bones exist for poultry and rabbit only. The tables for red meat are for meat off the bone, in strips, cubes or chunks.", "Bone it and can it by `meat-strips-cubes-chunks`, and cook the bones for `meat-stock-beef`; or freeze the pieces.", a2733},
    {"floured-meat", "breaded or floured meat", a2737, "Flour and batter come off in the jar and thicken the liquid, which slows the heat. Meat coated with them is not canned.", "Freeze it. Plain meat goes by `meat-strips-cubes-chunks` or `chicken-without-bones`.", a2738},
    {"meatloaf", "meatloaf", a2739, "Ground meat is canned as small browned pieces in liquid. A loaf that fills the jar, with bread or egg in it, has never been given a research-based time.", "Freeze it, or can browned patties or crumbles by `ground-meat` and make the loaf from them.", a2740},
    {"pate", "pate and liver spread", a2741, "It is pureed meat, dense, fat and low-acid. USDA says that times for pureed meat have not been determined for home use.", "Freeze it.", a2742},
    {"pet-food", "pet food", a2743, "Most of it is minced meat with vegetables and grain. Meat and mixtures may be canned only with a research-based time, and grain may not go in; botulism harms animals as well.", "Freeze it, or can the meat alone by `ground-meat` or `chicken-without-bones` and mix it when feeding.", a2744}};
constexpr citation a2746[] = {{"fda-ph-list", "", ""}};
constexpr sv a2747[] = {"anchovy"};
constexpr sv a2748[] = {"vegetables-in-oil"};
constexpr sv a2749[] = {"apples-sliced",
    "apple"};
constexpr citation a2750[] = {{"ph-handbook", "", ""}};
constexpr sv a2751[] = {"applesauce"};
constexpr sv a2752[] = {"fruit-nectar"};
constexpr sv a2753[] = {"apricots"};
constexpr sv a2754[] = {"apricots",
    "apricot"};
constexpr sv a2755[] = {"artichokes",
    "artichoke"};
constexpr sv a2756[] = {"artichokes"};
constexpr sv a2757[] = {"pears-asian"};
constexpr citation a2758[] = {{"ph-compiled", "", ""}};
constexpr citation a2759[] = {{"ph-extension", "", ""}};
constexpr citation a2760[] = {{"fda-ph-older", "", ""}};
constexpr sv a2761[] = {"avocado"};
constexpr sv a2762[] = {"baby-corn"};
constexpr sv a2763[] = {"bananas",
    "banana"};
constexpr sv a2764[] = {"pesto"};
constexpr sv a2765[] = {"bean"};
constexpr sv a2766[] = {"beans-dry",
    "black-bean"};
constexpr sv a2767[] = {"beans-dry",
    "kidney-bean"};
constexpr sv a2768[] = {"refried-beans",
    "refried-bean"};
constexpr sv a2769[] = {"beans-snap",
    "green-bean"};
constexpr sv a2770[] = {"beans-snap",
    "yellow-bean"};
constexpr sv a2771[] = {"beer"};
constexpr sv a2772[] = {"beets",
    "beet"};
constexpr sv a2773[] = {"berries-whole",
    "blackberry"};
constexpr sv a2774[] = {"spirits"};
constexpr sv a2775[] = {"bread-in-a-jar",
    "bread"};
constexpr sv a2776[] = {"bread-in-a-jar"};
constexpr sv a2777[] = {"broccoli"};
constexpr sv a2778[] = {"brussels-sprouts"};
constexpr sv a2779[] = {"butter"};
constexpr sv a2780[] = {"yogurt",
    "buttermilk"};
constexpr sv a2781[] = {"cabbage",
    "red-cabbage"};
constexpr sv a2782[] = {"squid"};
constexpr sv a2783[] = {"caper"};
constexpr sv a2784[] = {"carrots",
    "carrot"};
constexpr sv a2785[] = {"hard-cheese",
    "cheese"};
constexpr sv a2786[] = {"soft-cheese",
    "cottage-cheese"};
constexpr sv a2787[] = {"soft-cheese",
    "cream-cheese"};
constexpr sv a2788[] = {"parmesan-cheese"};
constexpr sv a2789[] = {"cherries-whole",
    "cherry"};
constexpr sv a2790[] = {"chives"};
constexpr sv a2791[] = {"chowder"};
constexpr sv a2792[] = {"clams",
    "clam"};
constexpr sv a2793[] = {"coconut-milk"};
constexpr sv a2794[] = {"coconut"};
constexpr sv a2795[] = {"corn-syrup"};
constexpr sv a2796[] = {"jelly-without-added-pectin"};
constexpr sv a2797[] = {"crab-meat"};
constexpr sv a2798[] = {"bread"};
constexpr sv a2799[] = {"potato-soup"};
constexpr sv a2800[] = {"cucumbers",
    "cucumber"};
constexpr sv a2801[] = {"berries-whole",
    "currant"};
constexpr sv a2802[] = {"thickened-sauces"};
constexpr sv a2803[] = {"dates",
    "date"};
constexpr sv a2804[] = {"pickle"};
constexpr sv a2805[] = {"egg-white"};
constexpr sv a2806[] = {"egg-yolk"};
constexpr sv a2807[] = {"eggplant"};
constexpr sv a2808[] = {"elderberries"};
constexpr sv a2809[] = {"thickened-sauces",
    "salsa"};
constexpr sv a2810[] = {"figs"};
constexpr sv a2811[] = {"fish-sauce"};
constexpr sv a2812[] = {"flour",
    "wheat-flour"};
constexpr sv a2813[] = {"fruit-cocktail"};
constexpr sv a2814[] = {"candy"};
constexpr sv a2815[] = {"berries-whole",
    "gooseberry"};
constexpr sv a2816[] = {"grapefruit-orange-sections",
    "grapefruit"};
constexpr sv a2817[] = {"grapes-whole",
    "grape"};
constexpr sv a2818[] = {"hominy"};
constexpr sv a2819[] = {"leek"};
constexpr sv a2820[] = {"lemon"};
constexpr sv a2821[] = {"lettuce"};
constexpr sv a2822[] = {"lime-juice"};
constexpr sv a2823[] = {"lime"};
constexpr sv a2824[] = {"cream-soup"};
constexpr sv a2825[] = {"berries-whole",
    "loganberry"};
constexpr sv a2826[] = {"mangoes-green"};
constexpr sv a2827[] = {"ripe-mango"};
constexpr sv a2828[] = {"maple-syrup"};
constexpr sv a2829[] = {"mayonnaise"};
constexpr sv a2830[] = {"honeydew"};
constexpr sv a2831[] = {"honeydew",
    "melon"};
constexpr sv a2832[] = {"milk"};
constexpr sv a2833[] = {"condensed-milk-caramel",
    "condensed-milk"};
constexpr sv a2834[] = {"milk",
    "evaporated-milk"};
constexpr sv a2835[] = {"molasses"};
constexpr sv a2836[] = {"mushrooms",
    "mushroom"};
constexpr sv a2837[] = {"mussel"};
constexpr sv a2838[] = {"nectarines",
    "nectarine"};
constexpr sv a2839[] = {"olive"};
constexpr sv a2840[] = {"onions",
    "onion"};
constexpr sv a2841[] = {"pearl-onions-pickled"};
constexpr sv a2842[] = {"orange"};
constexpr sv a2843[] = {"other-mushroom"};
constexpr sv a2844[] = {"oysters",
    "oyster"};
constexpr sv a2845[] = {"smoked-shellfish"};
constexpr sv a2846[] = {"papaya"};
constexpr sv a2847[] = {"parsnip"};
constexpr sv a2848[] = {"pate",
    "liver"};
constexpr sv a2849[] = {"peaches",
    "peach"};
constexpr sv a2850[] = {"canned-peach"};
constexpr sv a2851[] = {"peanut-butter"};
constexpr sv a2852[] = {"pears",
    "pear"};
constexpr sv a2853[] = {"green-pea"};
constexpr sv a2854[] = {"beans-dry",
    "garbanzo-bean"};
constexpr sv a2855[] = {"beans-dry",
    "split-pea"};
constexpr sv a2856[] = {"peppers",
    "pepper"};
constexpr sv a2857[] = {"peppers",
    "green-bell-pepper"};
constexpr sv a2858[] = {"persimmons",
    "persimmon"};
constexpr sv a2859[] = {"peppers",
    "pimento"};
constexpr sv a2860[] = {"canned-pineapple"};
constexpr sv a2861[] = {"plums",
    "plum"};
constexpr sv a2862[] = {"plums"};
constexpr sv a2863[] = {"pomegranate"};
constexpr sv a2864[] = {"pork"};
constexpr sv a2865[] = {"potato"};
constexpr sv a2866[] = {"mashed-potatoes",
    "mashed-potato"};
constexpr sv a2867[] = {"prune-juice"};
constexpr sv a2868[] = {"pumpkin"};
constexpr sv a2869[] = {"quince"};
constexpr sv a2870[] = {"radishes"};
constexpr sv a2871[] = {"berries-whole",
    "raspberry"};
constexpr sv a2872[] = {"jam-without-added-pectin"};
constexpr sv a2873[] = {"salmon"};
constexpr sv a2874[] = {"sauerkraut"};
constexpr sv a2875[] = {"green-onion"};
constexpr sv a2876[] = {"shrimp"};
constexpr sv a2877[] = {"soy-sauce"};
constexpr sv a2878[] = {"greens",
    "spinach"};
constexpr sv a2879[] = {"vegetable-puree"};
constexpr sv a2880[] = {"strawberries",
    "strawberry"};
constexpr sv a2881[] = {"potatoes-sweet",
    "sweet-potato"};
constexpr sv a2882[] = {"tamarind"};
constexpr sv a2883[] = {"tea"};
constexpr sv a2884[] = {"three-bean-salad-pickled"};
constexpr sv a2885[] = {"tofu"};
constexpr sv a2886[] = {"tomatillos",
    "tomatillo"};
constexpr sv a2887[] = {"tomato-puree"};
constexpr sv a2888[] = {"tomatoes-whole-water",
    "tomatoes-crushed",
    "tomatoes-whole-raw-no-liquid",
    "tomatoes-whole-juice"};
constexpr sv a2889[] = {"canned-whole-tomato"};
constexpr sv a2890[] = {"tuna"};
constexpr sv a2891[] = {"turnip"};
constexpr sv a2892[] = {"vegetable-juice"};
constexpr sv a2893[] = {"cider-vinegar"};
constexpr sv a2894[] = {"watermelon"};
constexpr sv a2895[] = {"wine"};
constexpr sv a2896[] = {"worcestershire-sauce"};
constexpr sv a2897[] = {"yeast"};
constexpr ph_entry a2898[] = {{"Abalone", {}, 610, 650, "", "seen", a2746},
    {"Abalone mushroom", {}, 500, 500, "", "seen", a2746},
    {"Ackees", {}, 550, 550, "", "seen", a2746},
    {"Aloe juice", {}, 600, 680, "", "seen", a2746},
    {"Aloe vera", {}, 610, 610, "", "seen", a2746},
    {"Anchovies", a2747, 650, 650, "", "seen", a2746},
    {"Anchovies, stuffed with capers, in olive oil", {}, 558, 558, "", "seen", a2746},
    {"Antipasto", a2748, 560, 560, "", "seen", a2746},
    {"Apple juice", a638, 335, 400, "", "seen", a2746},
    {"Apple juice, Delicious", {}, 355, 433, "", "seen", a2746},
    {"Apple juice, Golden Delicious", {}, 378, 394, "", "seen", a2746},
    {"Apple juice, Golden Delicious, frozen", {}, 361, 393, "", "seen", a2746},
    {"Apple juice, Grimes", {}, 355, 382, "", "seen", a2746},
    {"Apple juice, Grimes, frozen", {}, 353, 363, "", "seen", a2746},
    {"Apple juice, Jonathan", {}, 349, 362, "", "seen", a2746},
    {"Apple juice, Jonathan, frozen", {}, 318, 331, "", "seen", a2746},
    {"Apple juice, mixed", {}, 348, 369, "", "seen", a2746},
    {"Apple juice, Stayman", {}, 354, 362, "", "seen", a2746},
    {"Apple juice, Willowtwig", {}, 328, 337, "", "seen", a2746},
    {"Apple juice, Willowtwig, frozen", {}, 320, 327, "", "seen", a2746},
    {"Apple juice, Winesap", {}, 357, 365, "", "seen", a2746},
    {"Apple juice, Winesap, frozen", {}, 342, 352, "", "seen", a2746},
    {"Apple, baked with sugar", {}, 320, 355, "", "seen", a2746},
    {"Apples", a2749, 290, 330, "", "seen", a2750},
    {"Apples, Delicious", {}, 390, 390, "", "seen", a2746},
    {"Apples, eating", a91, 330, 400, "", "seen", a2746},
    {"Apples, Golden Delicious", {}, 360, 360, "", "seen", a2746},
    {"Apples, Jonathan", {}, 333, 333, "", "seen", a2746},
    {"Apples, McIntosh", {}, 334, 334, "", "seen", a2746},
    {"Apples, Winesap", {}, 347, 347, "", "seen", a2746},
    {"Applesauce", a2751, 310, 360, "", "seen", a2746},
    {"Apricot filling", {}, 405, 543, "", "seen", a2746},
    {"Apricot nectar", a2752, 378, 378, "", "seen", a2746},
    {"Apricots", a2753, 330, 480, "The list runs to 4.80, yet the guide cans apricots without added acid: the table decides.", "seen", a2746},
    {"Apricots", a2754, 360, 400, "", "seen", a2750},
    {"Apricots, canned", {}, 340, 378, "", "seen", a2746},
    {"Apricots, dried, stewed", {}, 330, 351, "", "seen", a2746},
    {"Apricots, pureed", {}, 342, 383, "", "seen", a2746},
    {"Apricots, strained", {}, 372, 395, "", "memory", a2746},
    {"Arrowroot crackers", {}, 663, 680, "", "memory", a2746},
    {"Arrowroot gruel", {}, 637, 687, "", "memory", a2746},
    {"Artichokes", a2755, 550, 600, "", "seen", a2746},
    {"Artichokes, canned", a2756, 570, 600, "", "seen", a2746},
    {"Artichokes, canned, acidified", {}, 430, 460, "", "seen", a2746},
    {"Artichokes, French, cooked", {}, 560, 600, "", "memory", a2746},
    {"Artichokes, Jerusalem, cooked", {}, 593, 600, "", "seen", a2746},
    {"Asian pears", a2757, 470, 470, "", "seen", a2758},
    {"Asian pears", a2757, 470, 470, "", "seen", a2759},
    {"Asparagus", a155, 600, 670, "", "seen", a2746},
    {"Asparagus", a155, 540, 580, "", "seen", a2750},
    {"Asparagus", a155, 400, 600, "", "seen", a2760},
    {"Asparagus, buds", {}, 670, 670, "", "seen", a2746},
    {"Asparagus, canned", {}, 500, 600, "", "memory", a2746},
    {"Asparagus, canned", {}, 520, 530, "", "seen", a2760},
    {"Asparagus, cooked", {}, 603, 616, "", "memory", a2746},
    {"Asparagus, fresh", {}, 580, 580, "", "seen", a2746},
    {"Asparagus, frozen, cooked", {}, 635, 648, "", "memory", a2746},
    {"Asparagus, green, canned", {}, 520, 532, "", "memory", a2746},
    {"Asparagus, stalks", {}, 610, 610, "", "seen", a2746},
    {"Asparagus, strained", {}, 480, 509, "", "memory", a2746},
    {"Avocados", a2761, 627, 658, "", "seen", a2746},
    {"Baby corn", a2762, 520, 520, "", "seen", a2746},
    {"Baby food soup, unstrained", {}, 595, 605, "", "memory", a2746},
    {"Bamboo shoots", {}, 510, 620, "", "seen", a2746},
    {"Bamboo shoots, preserved", {}, 350, 460, "", "memory", a2746},
    {"Bananas", a2763, 450, 520, "", "seen", a2746},
    {"Bananas", a2763, 450, 470, "", "seen", a2750},
    {"Bananas, red", {}, 458, 475, "", "memory", a2746},
    {"Bananas, yellow", {}, 500, 529, "", "memory", a2746},
    {"Barley, cooked", {}, 519, 532, "", "memory", a2746},
    {"Basil pesto", a2764, 490, 490, "", "memory", a2746},
    {"Bass, sea, broiled", {}, 658, 678, "", "memory", a2746},
    {"Bass, striped, broiled", {}, 650, 670, "", "memory", a2746},
    {"Beans", a2765, 560, 650, "", "seen", a2746},
    {"Beans", a2765, 500, 600, "", "seen", a2750},
    {"Beans", a2765, 570, 620, "", "seen", a2760},
    {"Beans, black", a2766, 578, 602, "", "seen", a2746},
    {"Beans, Boston style", {}, 505, 542, "", "memory", a2746},
    {"Beans, kidney", a2767, 540, 600, "", "seen", a2746},
    {"Beans, lima", a1177, 650, 650, "", "seen", a2746},
    {"Beans, pork and tomato sauce, canned", {}, 510, 580, "", "seen", a2746},
    {"Beans, refried", a2768, 590, 590, "", "memory", a2746},
    {"Beans, soy", {}, 600, 660, "", "seen", a2746},
    {"Beans, string", a2769, 560, 560, "", "seen", a2746},
    {"Beans, vegetarian, tomato sauce, canned", {}, 532, 532, "", "memory", a2746},
    {"Beans, wax", a2770, 530, 570, "", "seen", a2746},
    {"Beef steaks, rib, raw", {}, 550, 590, "", "seen", a2746},
    {"Beef, frozen", {}, 525, 530, "", "seen", a2746},
    {"Beef, raw, flank muscle", {}, 573, 590, "", "seen", a2746},
    {"Beef, raw, round muscle", {}, 552, 552, "", "seen", a2746},
    {"Beer", a2771, 400, 500, "", "seen", a2750},
    {"Beets", a2772, 530, 660, "", "seen", a2746},
    {"Beets", a2772, 490, 550, "", "seen", a2750},
    {"Beets", a2772, 490, 560, "", "seen", a2760},
    {"Beets, canned", {}, 490, 580, "", "memory", a2746},
    {"Beets, canned", {}, 490, 490, "", "seen", a2760},
    {"Beets, canned, acidified", {}, 430, 460, "", "seen", a2746},
    {"Beets, chopped", {}, 532, 556, "", "memory", a2746},
    {"Beets, cooked", {}, 523, 650, "", "memory", a2746},
    {"Beets, strained", {}, 532, 556, "", "memory", a2746},
    {"Blackberries", a2773, 320, 360, "", "seen", a2750},
    {"Blackberries, Washington", {}, 385, 450, "", "seen", a2746},
    {"Blackberry juice", a640, 384, 384, "", "seen", a2746},
    {"Blueberries, frozen", a916, 311, 322, "", "seen", a2746},
    {"Blueberries, Maine", {}, 312, 333, "", "seen", a2746},
    {"Bluefish, fillet, broiled", {}, 609, 650, "", "memory", a2746},
    {"Bran flakes", {}, 545, 567, "", "memory", a2746},
    {"Brandy", a2774, 312, 506, "", "seen", a2746},
    {"Bread", a2775, 540, 540, "", "seen", a2759},
    {"Bread, Boston brown", a2776, 653, 653, "", "memory", a2746},
    {"Bread, cracked wheat", {}, 543, 550, "", "memory", a2746},
    {"Bread, nut and date", {}, 513, 560, "", "memory", a2746},
    {"Bread, pumpernickel", {}, 540, 540, "", "memory", a2746},
    {"Bread, rye", {}, 520, 590, "", "memory", a2746},
    {"Bread, white", {}, 500, 620, "", "memory", a2746},
    {"Bread, white", {}, 500, 600, "", "seen", a2750},
    {"Bread, whole wheat", {}, 547, 585, "", "memory", a2746},
    {"Broccoli", a2777, 630, 685, "", "seen", a2746},
    {"Broccoli, canned", {}, 520, 600, "", "memory", a2746},
    {"Broccoli, cooked", {}, 630, 652, "", "memory", a2746},
    {"Broccoli, frozen, cooked", {}, 630, 685, "", "memory", a2746},
    {"Brussels sprouts", a2778, 600, 630, "", "seen", a2746},
    {"Butter", a2779, 610, 640, "", "seen", a2746},
    {"Buttermilk", a2780, 441, 483, "", "memory", a2746},
    {"Buttermilk", a2780, 450, 450, "", "seen", a2759},
    {"Cabbage", a833, 520, 680, "", "seen", a2746},
    {"Cabbage", a833, 520, 540, "", "seen", a2750},
    {"Cabbage", a833, 520, 600, "", "seen", a2760},
    {"Cabbage, green", a833, 550, 675, "", "seen", a2746},
    {"Cabbage, green", a833, 540, 690, "", "seen", a2760},
    {"Cabbage, red", a2781, 540, 600, "", "seen", a2746},
    {"Cabbage, red", a2781, 560, 600, "", "memory", a2746},
    {"Cabbage, Savoy", a833, 630, 630, "", "seen", a2746},
    {"Cabbage, white", a833, 620, 620, "", "seen", a2746},
    {"Cactus", {}, 470, 470, "", "seen", a2746},
    {"Calamari (squid)", a2782, 580, 580, "", "memory", a2746},
    {"Cantaloupe", a310, 613, 658, "", "seen", a2746},
    {"Capers", a2783, 600, 600, "", "memory", a2746},
    {"Carp", {}, 600, 600, "", "memory", a2746},
    {"Carrots", a2784, 588, 640, "", "seen", a2746},
    {"Carrots", a2784, 490, 530, "", "seen", a2750},
    {"Carrots", a2784, 490, 520, "", "seen", a2760},
    {"Carrots, boiled (variety Imperator)", {}, 570, 570, "", "seen", a2746},
    {"Carrots, canned", {}, 518, 522, "", "seen", a2746},
    {"Carrots, chopped", {}, 530, 556, "", "memory", a2746},
    {"Carrots, cooked", {}, 558, 603, "", "memory", a2746},
    {"Carrots, juice", {}, 640, 640, "", "seen", a2746},
    {"Carrots, pureed", {}, 455, 580, "", "memory", a2746},
    {"Carrots, raw (variety Imperator)", {}, 610, 610, "", "seen", a2746},
    {"Carrots, strained", {}, 510, 510, "", "memory", a2746},
    {"Cauliflower", a735, 560, 560, "", "seen", a2746},
    {"Cauliflower, cooked", {}, 645, 680, "", "memory", a2746},
    {"Caviar, American", {}, 570, 600, "", "memory", a2746},
    {"Celery", a734, 570, 600, "", "seen", a2746},
    {"Celery knob, cooked", {}, 571, 585, "", "memory", a2746},
    {"Celery, cooked", {}, 537, 592, "", "memory", a2746},
    {"Cereal, strained", {}, 644, 645, "", "memory", a2746},
    {"Chayote (mirliton), cooked", {}, 600, 630, "", "memory", a2746},
    {"Cheese", a2785, 480, 640, "", "seen", a2750},
    {"Cheese, American, mild", {}, 498, 498, "", "memory", a2746},
    {"Cheese, Camembert", {}, 744, 744, "", "memory", a2746},
    {"Cheese, Cheddar", a2785, 590, 590, "", "memory", a2746},
    {"Cheese, cottage", a2786, 475, 502, "", "memory", a2746},
    {"Cheese, cream", a2787, 410, 479, "", "memory", a2746},
    {"Cheese, Edam", {}, 540, 540, "", "memory", a2746},
    {"Cheese, Parmesan", a2788, 520, 530, "", "memory", a2746},
    {"Cheese, Roquefort", {}, 510, 598, "", "memory", a2746},
    {"Cheese, Stilton", {}, 570, 570, "", "memory", a2746},
    {"Cheese, Swiss Gruyere", {}, 568, 662, "", "memory", a2746},
    {"Cherimoya, raw", {}, 540, 540, "", "memory", a2746},
    {"Cherries", a2789, 320, 400, "", "seen", a2750},
    {"Cherries", a2789, 320, 410, "", "seen", a2758},
    {"Cherries, black, canned", {}, 382, 393, "", "memory", a2746},
    {"Cherries, California", {}, 401, 454, "", "seen", a2746},
    {"Cherries, frozen", {}, 332, 337, "", "memory", a2746},
    {"Cherries, maraschino", a501, 347, 352, "", "memory", a2746},
    {"Cherries, red, water pack", {}, 325, 382, "", "seen", a2746},
    {"Cherries, Royal Ann", {}, 380, 383, "", "seen", a2746},
    {"Chicory", {}, 590, 605, "", "memory", a2746},
    {"Chili sauce, acidified", {}, 277, 370, "", "memory", a2746},
    {"Chives", a2790, 520, 610, "", "seen", a2746},
    {"Chives", a2790, 520, 631, "", "memory", a2746},
    {"Chrysanthemum drink", {}, 650, 650, "", "memory", a2746},
    {"Cider", {}, 290, 330, "", "seen", a2750},
    {"Clam chowder, New England", a2791, 640, 640, "", "memory", a2746},
    {"Clams", a2792, 600, 710, "", "memory", a2746},
    {"Coconut milk", a2793, 610, 700, "", "memory", a2746},
    {"Coconut, fresh", a2794, 550, 780, "", "memory", a2746},
    {"Coconut, preserved", {}, 380, 700, "", "memory", a2746},
    {"Cod liver", {}, 620, 620, "", "memory", a2746},
    {"Codfish, boiled", {}, 530, 610, "", "memory", a2746},
    {"Conch", {}, 752, 840, "", "memory", a2746},
    {"Congee", {}, 640, 640, "", "memory", a2746},
    {"Corn", a996, 590, 750, "", "seen", a2746},
    {"Corn", a996, 600, 650, "", "seen", a2750},
    {"Corn starch", a1004, 400, 700, "", "seen", a2746},
    {"Corn syrup", a2795, 500, 500, "", "seen", a2746},
    {"Corn, canned", {}, 590, 650, "", "memory", a2746},
    {"Corn, canned", {}, 600, 600, "", "seen", a2760},
    {"Corn, frozen, cooked", {}, 733, 768, "", "memory", a2746},
    {"Corn, on the cob, cooked", {}, 622, 704, "", "memory", a2746},
    {"Corn, sweet", a996, 730, 730, "", "seen", a2746},
    {"Crabapple jelly", a2796, 293, 302, "", "memory", a2746},
    {"Crabmeat", a2797, 650, 700, "", "memory", a2746},
    {"Crabmeat, cooked", {}, 662, 698, "", "memory", a2746},
    {"Crackers", a2798, 650, 850, "", "seen", a2750},
    {"Cranberries", a394, 230, 270, "", "seen", a2758},
    {"Cranberry juice, canned", {}, 230, 252, "", "memory", a2746},
    {"Cranberry sauce", {}, 240, 240, "", "memory", a2746},
    {"Cream of asparagus", {}, 610, 610, "", "memory", a2746},
    {"Cream of coconut, canned", {}, 551, 587, "", "memory", a2746},
    {"Cream of potato soup", a2799, 600, 600, "", "memory", a2746},
    {"Cream, 20 percent", {}, 650, 668, "", "memory", a2746},
    {"Cream, 40 percent", {}, 644, 680, "", "memory", a2746},
    {"Cucumbers", a2800, 512, 578, "", "seen", a2746},
    {"Cucumbers", a2800, 510, 570, "", "seen", a2760},
    {"Cucumbers, dill pickles", {}, 320, 370, "", "seen", a2746},
    {"Cucumbers, pickled", {}, 420, 460, "", "seen", a2746},
    {"Currants, red", a2801, 290, 290, "", "seen", a2758},
    {"Curry paste, acidified", {}, 460, 480, "", "memory", a2746},
    {"Curry sauce", a2802, 600, 600, "", "memory", a2746},
    {"Cuttlefish", {}, 630, 630, "", "memory", a2746},
    {"Dates", a2803, 620, 640, "", "seen", a2750},
    {"Dates", a2803, 414, 488, "", "seen", a2758},
    {"Dates, canned", {}, 620, 640, "", "memory", a2746},
    {"Dill pickles", a2804, 320, 350, "", "seen", a2760},
    {"Eel", {}, 620, 620, "", "memory", a2746},
    {"Egg white", a2805, 796, 796, "", "memory", a2746},
    {"Egg white", a2805, 700, 900, "", "seen", a2759},
    {"Egg yolk", a2806, 610, 610, "", "memory", a2746},
    {"Egg yolk", a2806, 640, 640, "", "seen", a2759},
    {"Eggplant", a2807, 450, 530, "", "seen", a2746},
    {"Eggplant", a2807, 550, 650, "", "memory", a2746},
    {"Eggs, fresh white", {}, 760, 800, "", "seen", a2750},
    {"Eggs, new-laid, whole", {}, 658, 658, "", "memory", a2746},
    {"Elderberries", a2808, 360, 380, "This list is older. Newer Extension figures are 4.7 to 5.2, and elderberries have no process.", "seen", a2758},
    {"Enchilada sauce", a2809, 440, 470, "", "memory", a2746},
    {"Fennel (anise)", a897, 548, 588, "", "memory", a2746},
    {"Fennel, cooked", {}, 588, 602, "", "memory", a2746},
    {"Figs", a2810, 460, 460, "At or above 4.6: the table adds acid to every jar, and with it figs are an acid food.", "seen", a2759},
    {"Figs, Calimyrna", {}, 505, 598, "", "seen", a2746},
    {"Figs, canned", {}, 492, 500, "", "memory", a2746},
    {"Fish sauce", a2811, 497, 628, "", "memory", a2746},
    {"Flounder, boiled", {}, 610, 650, "", "memory", a2746},
    {"Flounder, fillet, broiled", {}, 639, 689, "", "memory", a2746},
    {"Flour", a2812, 600, 630, "", "seen", a2746},
    {"Flour, wheat", a2812, 550, 650, "", "seen", a2750},
    {"Four-bean salad", {}, 560, 560, "", "seen", a2746},
    {"Fruit cocktail", a2813, 360, 400, "", "seen", a2746},
    {"Garlic", a156, 580, 580, "", "memory", a2746},
    {"Gelatin dessert", a2814, 260, 260, "", "memory", a2746},
    {"Gelatin, plain, jelled", {}, 608, 608, "", "memory", a2746},
    {"Ginger", a397, 560, 590, "", "memory", a2746},
    {"Ginseng drink", {}, 600, 650, "", "memory", a2746},
    {"Gooseberries", a2815, 280, 310, "", "memory", a2746},
    {"Gooseberries", a2815, 280, 300, "", "seen", a2750},
    {"Gooseberries", a2815, 280, 310, "", "seen", a2758},
    {"Graham crackers", {}, 710, 792, "", "memory", a2746},
    {"Grapefruit", a2816, 300, 375, "", "seen", a2746},
    {"Grapefruit", a2816, 300, 330, "", "seen", a2750},
    {"Grapefruit juice, canned", {}, 290, 325, "", "memory", a2746},
    {"Grapefruit, canned", {}, 308, 332, "", "memory", a2746},
    {"Grapes", a2817, 350, 450, "", "seen", a2750},
    {"Grapes, canned", {}, 350, 450, "", "memory", a2746},
    {"Grapes, Concord", a500, 280, 300, "", "seen", a2746},
    {"Grapes, Lady Finger", {}, 351, 358, "", "memory", a2746},
    {"Grapes, Malaga", {}, 371, 378, "", "memory", a2746},
    {"Grapes, Niagara", {}, 280, 327, "", "seen", a2746},
    {"Grapes, Ribier", {}, 370, 380, "", "memory", a2746},
    {"Grapes, seedless", a2817, 290, 382, "", "seen", a2746},
    {"Grapes, Tokay", {}, 350, 384, "", "memory", a2746},
    {"Grass jelly", {}, 580, 720, "", "memory", a2746},
    {"Greens, mixed, chopped", {}, 505, 522, "", "memory", a2746},
    {"Greens, mixed, strained", {}, 522, 530, "", "memory", a2746},
    {"Grenadine syrup", {}, 231, 231, "", "memory", a2746},
    {"Guava jelly", {}, 373, 373, "", "memory", a2746},
    {"Guava nectar", {}, 550, 550, "", "memory", a2746},
    {"Haddock, fillet, broiled", {}, 617, 682, "", "memory", a2746},
    {"Hearts of palm", {}, 570, 570, "", "memory", a2746},
    {"Herring", {}, 610, 610, "", "memory", a2746},
    {"Hominy", a2818, 680, 800, "", "seen", a2750},
    {"Hominy, cooked", {}, 600, 600, "", "seen", a2746},
    {"Honey", a686, 390, 390, "", "seen", a2746},
    {"Honey", a686, 370, 420, "", "memory", a2746},
    {"Honey aloe", {}, 470, 470, "", "memory", a2746},
    {"Horseradish, freshly ground", {}, 535, 535, "", "seen", a2746},
    {"Huckleberries, cooked with sugar", {}, 338, 343, "", "memory", a2746},
    {"Jackfruit", {}, 480, 680, "", "memory", a2746},
    {"Jam, fruit", {}, 350, 450, "", "seen", a2746},
    {"Jams, fruit", {}, 350, 400, "", "seen", a2750},
    {"Jellies, fruit", {}, 300, 350, "", "seen", a2746},
    {"Jellies, fruit", {}, 280, 340, "", "seen", a2750},
    {"Jujube", {}, 520, 520, "", "memory", a2746},
    {"Kale, cooked", {}, 640, 680, "", "seen", a2746},
    {"Kale, cooked", {}, 636, 680, "", "memory", a2746},
    {"Ketchup", a228, 389, 392, "", "seen", a2746},
    {"Kippered herring", {}, 575, 620, "", "memory", a2746},
    {"Kohlrabi, cooked", {}, 570, 580, "", "seen", a2746},
    {"Kohlrabi, cooked", {}, 575, 582, "", "memory", a2746},
    {"Kumquat, Florida", {}, 364, 425, "", "memory", a2746},
    {"Leeks", a2819, 550, 617, "", "seen", a2746},
    {"Leeks", a2819, 550, 600, "", "seen", a2760},
    {"Leeks, cooked", {}, 549, 610, "", "memory", a2746},
    {"Lemon filling", {}, 309, 324, "", "seen", a2746},
    {"Lemon juice", a571, 200, 260, "", "seen", a2746},
    {"Lemons", a2820, 220, 240, "", "seen", a2750},
    {"Lentil soup", {}, 580, 580, "", "memory", a2746},
    {"Lentils, cooked", {}, 630, 680, "", "seen", a2746},
    {"Lettuce", a2821, 580, 600, "", "seen", a2746},
    {"Lettuce", a2821, 580, 615, "", "memory", a2746},
    {"Lettuce, Boston", {}, 589, 605, "", "memory", a2746},
    {"Lettuce, iceberg", a2821, 570, 613, "", "memory", a2746},
    {"Lime juice", a2822, 200, 235, "", "seen", a2746},
    {"Limes", a2823, 200, 280, "", "seen", a2746},
    {"Limes", a2823, 180, 200, "", "seen", a2750},
    {"Lobster bisque", a2824, 690, 690, "", "memory", a2746},
    {"Lobster soup", {}, 570, 570, "", "memory", a2746},
    {"Lobster, cooked", {}, 710, 743, "", "memory", a2746},
    {"Loganberries", a2825, 270, 350, "", "seen", a2746},
    {"Loquat", {}, 510, 510, "", "memory", a2746},
    {"Lotus root", {}, 690, 690, "", "memory", a2746},
    {"Lychee", {}, 470, 501, "", "memory", a2746},
    {"Macaroni, cooked", {}, 510, 641, "", "memory", a2746},
    {"Mackerel, canned", {}, 590, 640, "", "memory", a2746},
    {"Mackerel, king, boiled", {}, 626, 650, "", "memory", a2746},
    {"Mackerel, Spanish, broiled", {}, 607, 636, "", "memory", a2746},
    {"Mangoes, Alphonso", {}, 457, 457, "", "seen", a2746},
    {"Mangoes, green", a2826, 340, 480, "The list runs above 4.6; only hard green mango has tables, and the table decides.", "seen", a2746},
    {"Mangoes, ripe", a2827, 580, 600, "Ripe mango is low in acid and has no process of its own; the tables are for green fruit.", "seen", a2746},
    {"Maple syrup", a2828, 515, 515, "", "seen", a2746},
    {"Maple syrup", a2828, 650, 700, "", "seen", a2750},
    {"Maple syrup, light (acidified)", {}, 460, 460, "", "memory", a2746},
    {"Matzos", {}, 570, 570, "", "memory", a2746},
    {"Mayhaw", {}, 327, 386, "", "memory", a2746},
    {"Mayonnaise", a2829, 430, 430, "", "seen", a2759},
    {"Meat, ripened", {}, 580, 580, "", "seen", a2759},
    {"Meat, unripened", {}, 700, 700, "", "seen", a2759},
    {"Melba toast", {}, 508, 530, "", "memory", a2746},
    {"Melon, casaba", a2830, 578, 600, "", "memory", a2746},
    {"Melon, honeydew", a2831, 600, 667, "", "seen", a2746},
    {"Melon, Persian", {}, 590, 638, "", "memory", a2746},
    {"Melons", a2831, 578, 667, "", "seen", a2758},
    {"Milk", a2832, 650, 670, "", "seen", a2759},
    {"Milk, acidophilus", {}, 409, 425, "", "memory", a2746},
    {"Milk, acidophilus", {}, 400, 400, "", "seen", a2759},
    {"Milk, condensed", a2833, 633, 633, "", "memory", a2746},
    {"Milk, cow", a2832, 640, 680, "", "memory", a2746},
    {"Milk, cow", a2832, 630, 660, "", "seen", a2750},
    {"Milk, evaporated", a2834, 590, 630, "", "memory", a2746},
    {"Milk, goat", a2832, 648, 648, "", "memory", a2746},
    {"Milk, imitation, reconstituted", {}, 610, 720, "", "seen", a2746},
    {"Milk, peptonized", {}, 710, 710, "", "memory", a2746},
    {"Milk, sour, fine curd", {}, 470, 565, "", "memory", a2746},
    {"Milk, whole powder, reconstituted", {}, 650, 650, "", "seen", a2746},
    {"Milkfish", {}, 530, 530, "", "memory", a2746},
    {"Mint jelly", {}, 301, 301, "", "seen", a2746},
    {"Molasses", a2835, 500, 550, "", "seen", a2746},
    {"Molasses", a2835, 490, 540, "", "memory", a2746},
    {"Muscadine grapes", {}, 320, 340, "", "memory", a2746},
    {"Mushroom soup, cream of, canned", {}, 595, 640, "", "memory", a2746},
    {"Mushroom, straw", {}, 490, 490, "", "memory", a2746},
    {"Mushrooms", a2836, 600, 670, "", "seen", a2746},
    {"Mushrooms", a2836, 620, 620, "", "seen", a2760},
    {"Mushrooms, cooked", {}, 600, 622, "", "memory", a2746},
    {"Mussels", a2837, 600, 685, "", "memory", a2746},
    {"Mustard", a736, 355, 600, "", "memory", a2746},
    {"Mutton, leg muscle", {}, 560, 700, "", "seen", a2746},
    {"Nata de coco", {}, 500, 500, "", "memory", a2746},
    {"Nectarines", a2838, 392, 418, "", "seen", a2746},
    {"Noodles, boiled", {}, 608, 650, "", "memory", a2746},
    {"Oatmeal, cooked", {}, 620, 660, "", "memory", a2746},
    {"Oats, rolled, cooked", {}, 595, 595, "", "seen", a2746},
    {"Oats, rolled, raw", {}, 595, 595, "", "seen", a2746},
    {"Octopus", a2782, 600, 650, "", "memory", a2746},
    {"Okra, cooked", {}, 550, 660, "", "seen", a2746},
    {"Okra, cooked", {}, 550, 640, "", "seen", a2760},
    {"Olives", a2839, 360, 380, "", "seen", a2750},
    {"Olives, black", a2839, 600, 700, "", "seen", a2746},
    {"Olives, green", a2839, 360, 380, "", "seen", a2760},
    {"Olives, green, fermented", {}, 360, 460, "", "seen", a2746},
    {"Olives, ripe", a2839, 600, 750, "", "seen", a2746},
    {"Olives, ripe", a2839, 600, 650, "", "seen", a2760},
    {"Onions", a2840, 530, 580, "", "seen", a2760},
    {"Onions, pickled", a2841, 370, 460, "", "seen", a2746},
    {"Onions, red", a2840, 530, 580, "", "seen", a2746},
    {"Onions, white", a2840, 537, 585, "", "seen", a2746},
    {"Onions, yellow", a2840, 532, 560, "", "seen", a2746},
    {"Orange filling", {}, 379, 465, "", "seen", a2746},
    {"Orange juice (ARS list)", a396, 420, 420, "", "seen", a2746},
    {"Orange juice, California", {}, 330, 419, "", "seen", a2746},
    {"Orange juice, canned", {}, 353, 369, "", "seen", a2746},
    {"Orange juice, Florida", {}, 330, 415, "", "seen", a2746},
    {"Orange marmalade", {}, 300, 333, "", "memory", a2746},
    {"Oranges", a2842, 300, 400, "", "seen", a2750},
    {"Oranges, Florida", {}, 369, 434, "", "seen", a2746},
    {"Oranges, Florida, color added", {}, 360, 390, "", "memory", a2746},
    {"Oyster mushrooms", a2843, 500, 600, "", "memory", a2746},
    {"Oysters", a2844, 568, 617, "", "memory", a2746},
    {"Oysters", a2844, 610, 660, "", "seen", a2750},
    {"Oysters, smoked", a2845, 600, 600, "", "memory", a2746},
    {"Palm, heart of", {}, 670, 670, "", "seen", a2746},
    {"Papaya", a2846, 520, 600, "", "seen", a2746},
    {"Papaya marmalade", {}, 353, 400, "", "memory", a2746},
    {"Parsley", a1150, 570, 600, "", "seen", a2746},
    {"Parsnip", a2847, 530, 530, "", "seen", a2760},
    {"Parsnips", a2847, 530, 570, "", "seen", a2746},
    {"Parsnips, cooked", {}, 545, 565, "", "memory", a2746},
    {"Pate", a2848, 590, 590, "", "memory", a2746},
    {"Pea soup, cream of, canned", {}, 570, 570, "", "memory", a2746},
    {"Peaches", a2849, 330, 405, "", "seen", a2746},
    {"Peaches (ARS list)", a2849, 380, 380, "", "seen", a2746},
    {"Peaches", a2849, 340, 360, "", "seen", a2750},
    {"Peaches, canned", a2850, 370, 420, "", "memory", a2746},
    {"Peaches, cooked with sugar", {}, 355, 372, "", "memory", a2746},
    {"Peaches, frozen", {}, 328, 335, "", "memory", a2746},
    {"Peanut butter", a2851, 628, 628, "", "memory", a2746},
    {"Peanut soup", {}, 750, 750, "", "memory", a2746},
    {"Pear nectar", a2752, 403, 403, "", "memory", a2746},
    {"Pears", a2852, 360, 400, "", "seen", a2750},
    {"Pears, Bartlett", a2852, 350, 460, "", "seen", a2746},
    {"Pears, Bartlett (ARS list)", a2852, 386, 386, "", "seen", a2746},
    {"Pears, canned", {}, 400, 407, "", "memory", a2746},
    {"Pears, Seckel, cooked with sugar", {}, 404, 421, "", "memory", a2746},
    {"Peas", a2853, 580, 700, "", "seen", a2746},
    {"Peas", a2853, 580, 640, "", "seen", a2750},
    {"Peas, canned", {}, 570, 600, "", "seen", a2746},
    {"Peas, chick (garbanzo)", a2854, 648, 680, "", "seen", a2746},
    {"Peas, cooked", {}, 622, 688, "", "memory", a2746},
    {"Peas, dried", a2855, 650, 680, "", "seen", a2746},
    {"Peas, dried (split green), cooked", {}, 645, 680, "", "memory", a2746},
    {"Peas, dried (split yellow), cooked", {}, 643, 662, "", "memory", a2746},
    {"Peas, frozen", {}, 640, 670, "", "seen", a2746},
    {"Peas, frozen, cooked", {}, 640, 670, "", "memory", a2746},
    {"Peas, pureed", {}, 490, 585, "", "memory", a2746},
    {"Peas, strained", {}, 591, 612, "", "memory", a2746},
    {"Pepper", a383, 515, 515, "", "seen", a2760},
    {"Peppers", a2856, 465, 545, "", "seen", a2746},
    {"Peppers, green", a2857, 520, 593, "", "seen", a2746},
    {"Perch, red sea, fresh", {}, 680, 680, "", "seen", a2746},
    {"Persimmons", a2858, 442, 470, "", "seen", a2746},
    {"Pickles, dill", a2804, 320, 360, "", "seen", a2750},
    {"Pickles, fresh pack", {}, 510, 540, "", "seen", a2746},
    {"Pickles, sour", {}, 300, 340, "", "seen", a2750},
    {"Pimento", a2859, 460, 520, "", "seen", a2750},
    {"Pimiento", a2859, 440, 490, "", "seen", a2746},
    {"Pimiento", a2859, 460, 490, "", "seen", a2760},
    {"Pimiento, canned, acidified", {}, 440, 460, "", "memory", a2746},
    {"Pineapple", a1166, 320, 400, "", "seen", a2746},
    {"Pineapple filling", {}, 342, 362, "", "seen", a2746},
    {"Pineapple juice, canned", a1310, 330, 360, "", "memory", a2746},
    {"Pineapple, canned", a2860, 335, 410, "", "memory", a2746},
    {"Plum nectar", {}, 345, 345, "", "memory", a2746},
    {"Plums", a2861, 280, 300, "", "seen", a2750},
    {"Plums", a2861, 280, 450, "", "seen", a2758},
    {"Plums, blue", {}, 280, 340, "", "seen", a2746},
    {"Plums, Damson", a2862, 290, 310, "", "memory", a2746},
    {"Plums, frozen", {}, 322, 342, "", "memory", a2746},
    {"Plums, Green Gage", {}, 360, 430, "", "memory", a2746},
    {"Plums, Green Gage, canned", {}, 322, 332, "", "memory", a2746},
    {"Plums, red", {}, 360, 430, "", "seen", a2746},
    {"Plums, spiced", {}, 364, 364, "", "memory", a2746},
    {"Plums, yellow", {}, 390, 445, "", "memory", a2746},
    {"Pollock, fillet, broiled", {}, 672, 682, "", "memory", a2746},
    {"Pomegranate", a2863, 293, 320, "", "seen", a2746},
    {"Porgy, broiled", {}, 640, 649, "", "memory", a2746},
    {"Pork and beans, ready to serve", {}, 570, 570, "", "memory", a2746},
    {"Pork, loin", a2864, 560, 693, "", "seen", a2746},
    {"Pork, normal", {}, 617, 617, "", "seen", a2746},
    {"Pork, pale soft", {}, 588, 588, "", "seen", a2746},
    {"Potato soup", a2799, 590, 590, "", "memory", a2746},
    {"Potatoes", a2865, 540, 590, "", "seen", a2746},
    {"Potatoes", a2865, 560, 600, "", "seen", a2750},
    {"Potatoes", a2865, 610, 610, "", "seen", a2760},
    {"Potatoes, mashed", a2866, 510, 510, "", "memory", a2746},
    {"Potatoes, tubers", {}, 570, 570, "", "seen", a2746},
    {"Prune juice", a2867, 395, 397, "", "memory", a2746},
    {"Prunes, dried, stewed", {}, 363, 392, "", "seen", a2746},
    {"Prunes, pureed", {}, 360, 430, "", "memory", a2746},
    {"Prunes, strained", {}, 358, 383, "", "memory", a2746},
    {"Puffed rice", {}, 627, 640, "", "memory", a2746},
    {"Puffed wheat", {}, 526, 577, "", "memory", a2746},
    {"Pumpkin", a2868, 499, 550, "", "seen", a2746},
    {"Pumpkin", a2868, 480, 520, "", "seen", a2750},
    {"Pumpkin", a2868, 480, 520, "", "seen", a2760},
    {"Quince", a2869, 312, 340, "", "seen", a2758},
    {"Quince jelly", {}, 370, 370, "", "memory", a2746},
    {"Quince juice", {}, 363, 363, "", "seen", a2746},
    {"Quince, fresh, stewed", {}, 312, 340, "", "memory", a2746},
    {"Radishes, red", a2870, 585, 605, "", "seen", a2746},
    {"Radishes, red", a2870, 580, 650, "", "seen", a2760},
    {"Radishes, white", {}, 552, 569, "", "seen", a2746},
    {"Radishes, white", {}, 550, 570, "", "seen", a2760},
    {"Raisins, seedless", a722, 380, 410, "", "memory", a2746},
    {"Rambutan", {}, 490, 490, "", "memory", a2746},
    {"Raspberries", a2871, 322, 395, "", "seen", a2746},
    {"Raspberries", a2871, 320, 360, "", "seen", a2750},
    {"Raspberries, black", a2871, 325, 325, "", "seen", a2746},
    {"Raspberries, frozen", {}, 318, 326, "", "memory", a2746},
    {"Raspberries, New Jersey", {}, 350, 382, "", "memory", a2746},
    {"Raspberry jam", a2872, 287, 317, "", "memory", a2746},
    {"Raspberry juice, black", {}, 378, 378, "", "seen", a2746},
    {"Rattan", {}, 520, 520, "", "memory", a2746},
    {"Razor clams", {}, 620, 620, "", "memory", a2746},
    {"Razor shell (sea asparagus)", {}, 600, 600, "", "memory", a2746},
    {"Red ginseng", {}, 550, 550, "", "memory", a2746},
    {"Red pepper relish", {}, 310, 362, "", "memory", a2746},
    {"Rennet dessert, raspberry", {}, 627, 627, "", "memory", a2746},
    {"Rennet dessert, vanilla", {}, 649, 649, "", "memory", a2746},
    {"Rhubarb", a631, 310, 340, "", "seen", a2746},
    {"Rhubarb (ARS list)", a631, 300, 300, "", "seen", a2746},
    {"Rhubarb", a631, 310, 320, "", "seen", a2750},
    {"Rhubarb, California, stewed", {}, 320, 334, "", "memory", a2746},
    {"Rhubarb, canned", {}, 340, 340, "", "seen", a2746},
    {"Rice, brown, cooked", {}, 620, 680, "", "memory", a2746},
    {"Rice, brown, cooked", {}, 620, 670, "", "seen", a2760},
    {"Rice, white, cooked", {}, 600, 670, "", "seen", a2746},
    {"Rice, wild, cooked", {}, 600, 650, "", "memory", a2746},
    {"Rice, wild, cooked", {}, 600, 640, "", "seen", a2760},
    {"Rolls, white", {}, 546, 552, "", "memory", a2746},
    {"Romaine", a2821, 578, 606, "", "memory", a2746},
    {"Salmon", a2873, 610, 630, "", "seen", a2750},
    {"Salmon, fresh, boiled", {}, 585, 650, "", "memory", a2746},
    {"Salmon, fresh, broiled", {}, 536, 640, "", "memory", a2746},
    {"Sardines", a2747, 570, 660, "", "memory", a2746},
    {"Sardines in olive oil", {}, 542, 593, "", "memory", a2746},
    {"Satay sauce", {}, 500, 500, "", "memory", a2746},
    {"Sauerkraut", a2874, 330, 360, "", "seen", a2746},
    {"Sauerkraut", a2874, 340, 360, "", "seen", a2750},
    {"Sauerkraut", a2874, 340, 360, "", "seen", a2760},
    {"Scallions", a2875, 620, 620, "", "memory", a2746},
    {"Scallops", a2837, 600, 600, "", "memory", a2746},
    {"Scotch broth", {}, 592, 592, "", "memory", a2746},
    {"Sea snail (top shell)", {}, 600, 600, "", "memory", a2746},
    {"Shad roe, sauteed", {}, 570, 590, "", "memory", a2746},
    {"Shallots, cooked", {}, 530, 570, "", "memory", a2746},
    {"Sherbet, raspberry", {}, 369, 369, "", "memory", a2746},
    {"Sherry wine", {}, 337, 337, "", "memory", a2746},
    {"Shrimp", a2876, 650, 700, "", "memory", a2746},
    {"Shrimp", a2876, 680, 700, "", "seen", a2750},
    {"Shrimp paste", {}, 500, 677, "", "memory", a2746},
    {"Shrimp sauce", {}, 701, 727, "", "memory", a2746},
    {"Smelts, sauteed", {}, 667, 690, "", "memory", a2746},
    {"Soda crackers", {}, 565, 732, "", "memory", a2746},
    {"Soft drinks", {}, 200, 400, "", "seen", a2750},
    {"Sorrel", {}, 370, 370, "", "seen", a2746},
    {"Soup, broccoli cheese, condensed", {}, 560, 560, "", "memory", a2746},
    {"Soup, chicken broth, ready to serve", {}, 580, 580, "", "memory", a2746},
    {"Soup, corn, condensed", {}, 680, 680, "", "memory", a2746},
    {"Soup, cream of celery, condensed", {}, 620, 620, "", "memory", a2746},
    {"Soup, cream of mushroom, condensed", {}, 600, 620, "", "memory", a2746},
    {"Soup, cream of potato, condensed", {}, 580, 580, "", "memory", a2746},
    {"Soup, cream of shrimp, condensed", {}, 581, 581, "", "memory", a2746},
    {"Soup, cream style corn, condensed", {}, 570, 580, "", "memory", a2746},
    {"Soup, minestrone, condensed", {}, 540, 540, "", "memory", a2746},
    {"Soup, New England clam chowder, condensed", {}, 600, 600, "", "memory", a2746},
    {"Soup, oyster stew, condensed", {}, 630, 630, "", "memory", a2746},
    {"Soup, tomato rice, condensed", {}, 550, 550, "", "memory", a2746},
    {"Soy infant formula", {}, 660, 700, "", "memory", a2746},
    {"Soy sauce", a2877, 440, 540, "", "memory", a2746},
    {"Soybean milk", {}, 700, 700, "", "memory", a2746},
    {"Spaghetti, cooked", {}, 597, 640, "", "memory", a2746},
    {"Spinach", a2878, 550, 680, "", "seen", a2746},
    {"Spinach", a2878, 510, 570, "", "seen", a2750},
    {"Spinach, chopped", {}, 538, 552, "", "memory", a2746},
    {"Spinach, cooked", {}, 660, 720, "", "seen", a2746},
    {"Spinach, frozen", {}, 630, 650, "", "seen", a2746},
    {"Spinach, frozen, cooked", {}, 630, 652, "", "memory", a2746},
    {"Spinach, pureed", a2879, 550, 622, "", "memory", a2746},
    {"Spinach, strained", {}, 563, 579, "", "memory", a2746},
    {"Squash", {}, 500, 540, "", "seen", a2750},
    {"Squash, acorn, cooked", {}, 518, 649, "", "seen", a2746},
    {"Squash, Hubbard, cooked", {}, 600, 620, "", "seen", a2746},
    {"Squash, white, cooked", {}, 552, 580, "", "seen", a2746},
    {"Squash, white, cooked", {}, 550, 570, "", "seen", a2760},
    {"Squash, yellow, cooked", {}, 579, 600, "", "seen", a2746},
    {"Squash, yellow, cooked", {}, 580, 600, "", "seen", a2760},
    {"Squid", a2782, 600, 650, "", "memory", a2746},
    {"Strawberries", a2880, 300, 390, "", "seen", a2746},
    {"Strawberries", a2880, 300, 350, "", "seen", a2750},
    {"Strawberries, California", {}, 332, 350, "", "memory", a2746},
    {"Strawberries, frozen", {}, 321, 332, "", "memory", a2746},
    {"Sturgeon", {}, 620, 620, "", "memory", a2746},
    {"Sugar", a94, 500, 600, "", "seen", a2746},
    {"Sweet potatoes", a2881, 530, 560, "", "seen", a2746},
    {"Sweet potatoes", a2881, 530, 560, "", "seen", a2750},
    {"Swiss chard, cooked", {}, 617, 678, "", "memory", a2746},
    {"Tamarind", a2882, 300, 300, "", "memory", a2746},
    {"Tangerine", a2842, 332, 448, "", "memory", a2746},
    {"Tangerine", a2842, 332, 448, "", "seen", a2758},
    {"Taro syrup", {}, 450, 450, "", "memory", a2746},
    {"Tea", a2883, 720, 720, "", "memory", a2746},
    {"Three-bean salad", a2884, 540, 540, "", "seen", a2746},
    {"Tofu (soybean curd)", a2885, 720, 720, "", "seen", a2746},
    {"Tomatillo", a2886, 383, 383, "", "seen", a2746},
    {"Tomato juice", a222, 410, 460, "", "seen", a2746},
    {"Tomato paste", a1118, 350, 470, "", "seen", a2746},
    {"Tomato puree", a2887, 430, 447, "", "seen", a2746},
    {"Tomatoes", a2888, 430, 490, "", "seen", a2746},
    {"Tomatoes", a385, 400, 440, "", "seen", a2750},
    {"Tomatoes, canned", a2889, 350, 470, "", "memory", a2746},
    {"Tomatoes, strained", a2887, 432, 458, "", "memory", a2746},
    {"Tomatoes, vine-ripened", {}, 442, 465, "", "seen", a2746},
    {"Trout, sea, sauteed", {}, 620, 633, "", "memory", a2746},
    {"Truffle", {}, 530, 650, "", "memory", a2746},
    {"Tuna", a2890, 590, 610, "", "seen", a2750},
    {"Tuna, canned", {}, 590, 620, "", "memory", a2746},
    {"Turnip greens, cooked", {}, 540, 620, "", "memory", a2746},
    {"Turnips", a2891, 529, 590, "", "memory", a2746},
    {"Turnips", a2891, 520, 560, "", "seen", a2750},
    {"Turnips", a2891, 520, 520, "", "seen", a2759},
    {"Vegetable juice", a2892, 390, 430, "", "memory", a2746},
    {"Vegetable soup, canned", {}, 516, 516, "", "memory", a2746},
    {"Vegetable soup, chopped", {}, 498, 502, "", "memory", a2746},
    {"Vegetable soup, strained", {}, 499, 500, "", "memory", a2746},
    {"Vermicelli, cooked", {}, 580, 650, "", "memory", a2746},
    {"Vinegar", a93, 240, 340, "", "seen", a2746},
    {"Vinegar, cider", a2893, 310, 310, "", "seen", a2746},
    {"Water chestnut", {}, 600, 620, "", "memory", a2746},
    {"Water, drinking", {}, 650, 800, "", "seen", a2750},
    {"Watercress", {}, 588, 618, "", "memory", a2746},
    {"Watermelon", a2894, 518, 560, "", "seen", a2746},
    {"Wax gourd drink", {}, 720, 720, "", "memory", a2746},
    {"Wine", a2895, 230, 380, "", "memory", a2746},
    {"Wines", {}, 280, 380, "", "seen", a2750},
    {"Worcestershire sauce", a2896, 363, 400, "", "memory", a2746},
    {"Yams, cooked", {}, 550, 681, "", "memory", a2746},
    {"Yeast", a2897, 565, 565, "", "memory", a2746},
    {"Youngberries, frozen", {}, 300, 370, "", "memory", a2746},
    {"Zucchini, cooked", {}, 569, 610, "", "seen", a2746},
    {"Zwieback", {}, 484, 494, "", "memory", a2746}};
constexpr citation a2899[] = {{"psu-tomato-acid", "", ""},
    {"usda-guide-3", "3", ""}};
constexpr example a2900[] = {{"citric acid", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 1/2 tsp citric acid per quart\n", {}},
    {"ascorbic acid for the color beside the lemon juice", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 2 tbsp bottled lemon juice per quart and 1/4 tsp ascorbic acid\n", {}}};
constexpr sv a2901[] = {"7:7 acid-does-not-count"};
constexpr example a2902[] = {{"ascorbic acid", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 1/2 tsp ascorbic acid per quart\n", a2901},
    {"cream of tartar", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 1 tsp cream of tartar per quart\n", a2901},
    {"vinegar in figs", "food: figs\npack: hot\njar: pint\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 2 tbsp vinegar per pint\n", a2901}};
constexpr citation a2903[] = {{"usda-guide-3", "3", ""},
    {"usda-guide-5", "5", ""},
    {"psu-tomato-acid", "", ""},
    {"rutgers-salsa", "", ""}};
constexpr example a2904[] = {{"king crab with citric acid", "food: king crab\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 80 min\naltitude: 4600 ft\nacid: 1 tsp citric acid per pint\n", {}},
    {"tomatoes with lemon juice in each jar", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 2 tbsp bottled lemon juice per quart\n", {}},
    {"salsa with all of its vinegar", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a2905[] = {"9:7 acid-missing"};
constexpr sv a2906[] = {"7:7 acid-missing"};
constexpr sv a2907[] = {"3:5 acid-missing"};
constexpr example a2908[] = {{"king crab without acid", "food: king crab\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 80 min\naltitude: 4600 ft\nacid: none\n", a2905},
    {"tomatoes without acid", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: none\n", a2906},
    {"salsa without its vinegar", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 3 tsp canning salt\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a2907}};
constexpr citation a2909[] = {{"psu-tomato-acid", "", ""},
    {"usda-guide-3", "3", ""},
    {"njaes-salsa", "", ""}};
constexpr example a2910[] = {{"bottled lemon juice", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 2 tbsp bottled lemon juice per quart\n", {}},
    {"bottled lemon juice in a jam", "food: jam-pear-apple\ningredients:\n  - 2 cups pears, peeled, cored, finely chopped\n  - 1 cup apples, peeled, cored, finely chopped\n  - 6 1/2 cups sugar\n  - 1/3 cup bottled lemon juice\n  - 6 oz liquid pectin\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 10 min\naltitude: 4600 ft\n", {}}};
constexpr sv a2911[] = {"7:7 acid-not-bottled"};
constexpr sv a2912[] = {"6:5 acid-not-bottled"};
constexpr example a2913[] = {{"fresh lemon juice", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 2 tbsp fresh lemon juice per quart\n", a2911},
    {"bottled or not is not said", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 2 tbsp lemon juice per quart\n", a2911},
    {"lemon juice of an unsaid kind in a jam", "food: jam-pear-apple\ningredients:\n  - 2 cups pears, peeled, cored, finely chopped\n  - 1 cup apples, peeled, cored, finely chopped\n  - 6 1/2 cups sugar\n  - 1/3 cup lemon juice\n  - 6 oz liquid pectin\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 10 min\naltitude: 4600 ft\n", a2912}};
constexpr example a2914[] = {{"king crab with 4 tablespoons of lemon juice to the pint", "food: king crab\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 80 min\naltitude: 4600 ft\nacid: 4 tbsp bottled lemon juice per pint\n", {}},
    {"a quart of tomatoes with half a teaspoon of citric acid", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 1/2 tsp citric acid per quart\n", {}}};
constexpr sv a2915[] = {"9:7 acid-too-little"};
constexpr sv a2916[] = {"7:7 acid-too-little"};
constexpr sv a2917[] = {"6:5 acid-too-little"};
constexpr example a2918[] = {{"king crab with half of the acid", "food: king crab\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 80 min\naltitude: 4600 ft\nacid: 1/2 tsp citric acid per pint\n", a2915},
    {"the lemon juice of a pint in a quart of tomatoes", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 1 tbsp bottled lemon juice per quart\n", a2916},
    {"salsa with three quarters of its vinegar", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 3/4 cup vinegar (5 %)\n  - 3 tsp canning salt\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a2917}};
constexpr example a2919[] = {{"a dial at 4,600 ft", "food: beets\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 30 min\naltitude: 4600 ft\n", {}},
    {"a weighted gauge at 8,600 ft", "food: beets\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 8600 ft\n", {}}};
constexpr sv a2920[] = {"8:11 altitude-by-extension"};
constexpr example a2921[] = {{"a dial at 8,600 ft", "food: beets\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 15 psi\ntime: 30 min\naltitude: 8600 ft\n", a2920}};
constexpr citation a2922[] = {{"usda-guide-2", "2", ""},
    {"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""},
    {"sdsu-onion", "", ""}};
constexpr example a2923[] = {{"carrots at 4,600 ft", "food: carrots\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\n", {}}};
constexpr sv a2924[] = {"8:11 altitude-outside-table"};
constexpr sv a2925[] = {"7:11 altitude-outside-table"};
constexpr example a2926[] = {{"carrots in a hut at 10,400 ft", "food: carrots\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 10400 ft\n", a2924},
    {"salsa in a hut at 10,400 ft", "food: chile salsa\nas-published: true\npack: hot\njar: pint\nmethod: boiling-water\ntime: 40 min\naltitude: 10400 ft\n", a2925}};
constexpr citation a2927[] = {{"usda-guide-1", "1", ""},
    {"usda-guide-3", "3", ""}};
constexpr example a2928[] = {{"a teaspoon of citric acid to the pint", "food: king crab\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 80 min\naltitude: 4600 ft\nacid: 1 tsp citric acid per pint\n", {}},
    {"onions in pounds, as the salsa recipe has them", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a2929[] = {"9:7 amount-unknown"};
constexpr sv a2930[] = {"5:5 amount-unknown"};
constexpr example a2931[] = {{"some citric acid", "food: king crab\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 80 min\naltitude: 4600 ft\nacid: some citric acid\n", a2929},
    {"onions without an amount", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a2930}};
constexpr citation a2932[] = {{"usda-guide-4", "4", "4-5"},
    {"clemson-soups", "", ""},
    {"extension-beans-answer", "", ""}};
constexpr example a2933[] = {{"white beans, soaked and boiled", "food: white beans\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [beans rehydrated]\n", {}}};
constexpr sv a2934[] = {"9:12 beans-not-rehydrated"};
constexpr sv a2935[] = {"1:1 beans-not-rehydrated"};
constexpr example a2936[] = {{"white beans put in dry", "food: white beans\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [beans not rehydrated]\n", a2934},
    {"white beans with no word on soaking", "food: white beans\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", a2935}};
constexpr citation a2937[] = {{"nchfp-smoked-fish", "", ""},
    {"pnw-450", "", ""}};
constexpr example a2938[] = {{"smoked trout in a canner of 22 quarts", "food: smoked trout\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 110 min\naltitude: 4600 ft\nwater: 4 qt\ncanner: {volume: 22 qt}\n", {}}};
constexpr sv a2939[] = {"10:18 canner-too-large"};
constexpr example a2940[] = {{"smoked trout in a canner of 23 quarts", "food: smoked trout\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 110 min\naltitude: 4600 ft\nwater: 4 qt\ncanner: {volume: 23 qt}\n", a2939}};
constexpr citation a2941[] = {{"nchfp-pop-quiz", "", ""},
    {"clemson-pressure-saucepan", "", ""},
    {"nchfp-multi-cooker", "", ""}};
constexpr example a2942[] = {{"a canner for seven quarts", "food: white potatoes\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 35 min\naltitude: 4600 ft\ncanner: {quarts: 7, pints: 9, volume: 16 qt}\n", {}}};
constexpr sv a2943[] = {"9:18 canner-too-small"};
constexpr sv a2944[] = {"10:18 canner-too-small"};
constexpr example a2945[] = {{"a pot for three quart jars", "food: white potatoes\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 35 min\naltitude: 4600 ft\ncanner: {quarts: 3}\n", a2943},
    {"a pot of eight quarts", "food: white potatoes\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 35 min\naltitude: 4600 ft\ncanner: {volume: 8 qt}\n", a2943},
    {"smoked trout in a canner of 12 quarts", "food: smoked trout\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 110 min\naltitude: 4600 ft\nwater: 4 qt\ncanner: {volume: 12 qt}\n", a2944}};
constexpr citation a2946[] = {{"clemson-dairy", "", ""},
    {"kentucky-dairy", "", ""},
    {"kstate-creamed-soup", "", ""}};
constexpr example a2947[] = {{"the recipe as printed", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a2948[] = {"8:5 dairy-in-jar"};
constexpr example a2949[] = {{"with dairy", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\n  - 1 cup heavy cream\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a2948}};
constexpr citation a2950[] = {{"nchfp-pickled-eggs", "", ""},
    {"usda-guide-6", "6", ""}};
constexpr sv a2951[] = {"8:5 egg-in-jar"};
constexpr example a2952[] = {{"with egg", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\n  - 2 eggs\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a2951}};
constexpr citation a2953[] = {{"usda-guide-1", "1", ""},
    {"nchfp-process-time", "", ""}};
constexpr example a2954[] = {{"everything said", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", {}},
    {"tomatoes with their acid", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 2 tbsp bottled lemon juice per quart\n", {}}};
constexpr sv a2955[] = {"1:1 fact-missing"};
constexpr example a2956[] = {{"no altitude", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\n", a2955},
    {"13 psi on a gauge that is not named", "food: green beans\npack: hot\njar: pint\nmethod: pressure\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", a2955},
    {"king crab with no word on the acid", "food: king crab\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 80 min\naltitude: 4600 ft\n", a2955},
    {"tomatoes with no word on the acid", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\n", a2955},
    {"salsa at an altitude that is not named", "food: chile salsa\nas-published: true\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\n", a2955}};
constexpr citation a2957[] = {{"psu-oil", "", ""},
    {"psu-fats-oils", "", ""},
    {"usda-guide-6", "6", ""}};
constexpr example a2958[] = {{"no fat, as tested", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", {}},
    {"the oil of a tested salad", "food: pickled three-bean salad\ningredients:\n  - 1 1/2 cups green beans, cut\n  - 1 1/2 cups canned kidney beans, drained\n  - 1 cup canned garbanzo beans, drained\n  - 1/2 cup onion, thinly sliced\n  - 1/2 cup celery, sliced\n  - 1/2 cup green bell pepper, sliced\n  - 1/2 cup vinegar\n  - 1/4 cup bottled lemon juice\n  - 3/4 cup sugar\n  - 1/4 cup vegetable oil\n  - 1 1/4 cups water\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a2959[] = {"8:5 fat-in-jar"};
constexpr sv a2960[] = {"12:5 fat-in-jar"};
constexpr example a2961[] = {{"oil in the salsa", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\n  - 1/2 cup olive oil\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a2959},
    {"twice the oil of a tested salad", "food: pickled three-bean salad\ningredients:\n  - 1 1/2 cups green beans, cut\n  - 1 1/2 cups canned kidney beans, drained\n  - 1 cup canned garbanzo beans, drained\n  - 1/2 cup onion, thinly sliced\n  - 1/2 cup celery, sliced\n  - 1/2 cup green bell pepper, sliced\n  - 1/2 cup vinegar\n  - 1/4 cup bottled lemon juice\n  - 3/4 cup sugar\n  - 1/2 cup vegetable oil\n  - 1 1/4 cups water\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a2960}};
constexpr citation a2962[] = {{"usda-guide-3", "3", ""},
    {"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""}};
constexpr example a2963[] = {{"chicken off the bone", "food: boneless chicken\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", {}},
    {"salsa by the name of its recipe", "food: chile salsa\nas-published: true\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a2964[] = {"1:7 food-ambiguous"};
constexpr sv a2965[] = {"1:15 food-ambiguous"};
constexpr example a2966[] = {{"chicken, with or without bones", "food: chicken\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", a2964},
    {"beans of some kind", "ingredients: [7 lb beans]\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", a2965},
    {"salsa of some kind", "food: salsa\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a2964}};
constexpr citation a2967[] = {{"usda-guide-2", "2", ""},
    {"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""}};
constexpr example a2968[] = {{"potatoes in half-inch cubes", "food: white potatoes\nform: half-inch-cubes\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 40 min\naltitude: 4600 ft\n", {}},
    {"pears in halves", "food: pears\nform: halved\npack: hot\njar: quart\nmethod: boiling-water\ntime: 35 min\naltitude: 4600 ft\n", {}}};
constexpr sv a2969[] = {"2:7 form-not-tested"};
constexpr example a2970[] = {{"sliced potatoes", "food: white potatoes\nform: sliced\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 40 min\naltitude: 4600 ft\n", a2969},
    {"pears left whole", "food: pears\nform: whole\npack: hot\njar: quart\nmethod: boiling-water\ntime: 35 min\naltitude: 4600 ft\n", a2969}};
constexpr citation a2971[] = {{"usda-guide-1", "1", ""},
    {"pnw-421", "", ""}};
constexpr example a2972[] = {{"the 15 psi weight at 4,600 ft", "food: onions\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", {}}};
constexpr sv a2973[] = {"6:11 gauge-cannot-hold"};
constexpr example a2974[] = {{"a dial number on a weighted gauge", "food: onions\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 13 psi\ntime: 40 min\naltitude: 4600 ft\n", a2973}};
constexpr citation a2975[] = {{"iowa-gauges", "", ""},
    {"missouri-gauges", "", ""}};
constexpr example a2976[] = {{"a dial that reads 2 psi high, run 2 psi higher", "food: beets\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\ngauge-error: +2 psi\npressure: 15 psi\ntime: 35 min\naltitude: 4600 ft\n", {}}};
constexpr sv a2977[] = {"6:14 gauge-error-too-large"};
constexpr example a2978[] = {{"a dial that reads 3 psi high", "food: beets\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\ngauge-error: +3 psi\npressure: 16 psi\ntime: 35 min\naltitude: 4600 ft\n", a2977}};
constexpr citation a2979[] = {{"missouri-gauges", "", ""},
    {"pnw-421", "", ""}};
constexpr example a2980[] = {{"a weighted gauge and nothing else", "food: onions\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", {}}};
constexpr sv a2981[] = {"6:14 gauge-error-unused"};
constexpr example a2982[] = {{"a weighted gauge beside a dial that reads 1 psi high", "food: onions\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\ngauge-error: +1 psi\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", a2981}};
constexpr citation a2983[] = {{"usda-guide-1", "1", ""},
    {"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""},
    {"kstate-ten-tips", "", ""}};
constexpr example a2984[] = {{"carrots with 1 inch", "food: carrots\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\nheadspace: 1 in\n", {}}};
constexpr sv a2985[] = {"9:12 headspace-too-large"};
constexpr sv a2986[] = {"7:12 headspace-too-large"};
constexpr example a2987[] = {{"carrots with 2 inches", "food: carrots\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\nheadspace: 2 in\n", a2985},
    {"applesauce with 1 1/2 inches", "food: applesauce\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\nheadspace: 1 1/2 in\n", a2986}};
constexpr example a2988[] = {{"chicken with 1 1/4 inches", "food: bone-in chicken\npack: raw\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nheadspace: 1 1/4 in\n", {}},
    {"salsa with 1/2 inch", "food: chile salsa\nas-published: true\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\nheadspace: 1/2 in\n", {}}};
constexpr sv a2989[] = {"9:12 headspace-too-small"};
constexpr sv a2990[] = {"8:12 headspace-too-small"};
constexpr example a2991[] = {{"chicken with the 1 inch of vegetables", "food: bone-in chicken\npack: raw\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nheadspace: 1 in\n", a2989},
    {"salsa with the 1/4 inch of jam", "food: chile salsa\nas-published: true\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\nheadspace: 1/4 in\n", a2990}};
constexpr citation a2992[] = {{"usda-guide-5", "5", ""},
    {"uaf-fish-quarts", "", ""}};
constexpr example a2993[] = {{"trout in pints, which has no heat-up of its own", "food: fish in pint jars\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 100 min\naltitude: 4600 ft\n", {}}};
constexpr sv a2994[] = {"9:10 heat-up-too-short"};
constexpr example a2995[] = {{"trout in quarts, heated for 10 minutes", "food: trout in quart jars\npack: raw\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 160 min\naltitude: 4600 ft\nheat-up: 10 min\nwater: 3 qt\n", a2994}};
constexpr citation a2996[] = {{"missouri-leftovers", "", ""},
    {"nal-leftovers", "", ""},
    {"illinois-leftovers", "", ""}};
constexpr example a2997[] = {{"soup filled on the day it is cooked", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", {}}};
constexpr sv a2998[] = {"12:7 held-cold"};
constexpr example a2999[] = {{"soup kept cold overnight and boiled again", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [reheated to a boil]\nheld: {for: 14 h, at: 38 F}\n", a2998}};
constexpr citation a3000[] = {{"nal-leftovers", "", ""},
    {"illinois-leftovers", "", ""}};
constexpr sv a3001[] = {"12:7 held-too-long"};
constexpr example a3002[] = {{"soup kept in the refrigerator for four days", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [reheated to a boil]\nheld: {for: 96 h, at: 38 F}\n", a3001}};
constexpr example a3003[] = {{"soup filled an hour and a half after cooking", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nheld: {for: 1 h 30 min, at: 72 F}\n", {}}};
constexpr sv a3004[] = {"11:7 held-too-warm"};
constexpr example a3005[] = {{"soup left on the counter for the afternoon", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nheld: {for: 5 h, at: 68 F}\n", a3004}};
constexpr example a3006[] = {{"pack and gauge said", "food: carrots\npack: raw\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3007[] = {"1:1 holds-either-way"};
constexpr example a3008[] = {{"15 psi on a gauge that is not named", "food: carrots\npack: raw\njar: quart\nmethod: pressure\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", a3007},
    {"carrots whose pack is not named", "food: carrots\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", a3007}};
constexpr citation a3009[] = {{"usda-guide-1", "1", ""},
    {"usda-guide-3", "3", ""},
    {"wisconsin-mixtures", "", ""}};
constexpr example a3010[] = {{"beets by their plain name", "ingredients: |\n  8 lb beets, peeled\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3011[] = {"2:3 ingredient-unknown"};
constexpr sv a3012[] = {"3:5 ingredient-unknown"};
constexpr sv a3013[] = {"8:5 ingredient-unknown"};
constexpr example a3014[] = {{"a slip of the pen", "ingredients: |\n  8 lb beetz, boiled and peeled\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", a3011},
    {"a mix that nobody can look into", "ingredients:\n  - 8 lb beets, peeled\n  - 2 cups of the usual mix\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", a3012},
    {"a seasoning that nobody can look into", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\n  - 2 tbsp secret seasoning\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a3013}};
constexpr citation a3015[] = {{"nchfp-jar-sizes", "", ""},
    {"nchfp-process-time", "", ""},
    {"kstate-odd-jars", "", ""}};
constexpr example a3016[] = {{"carrots in pints", "food: carrots\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3017[] = {"3:6 jar-in-between"};
constexpr example a3018[] = {{"carrots in half-pints", "food: carrots\npack: hot\njar: half-pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\n", a3017},
    {"carrots in 500 mL jars", "food: carrots\npack: hot\njar: 500 mL\nmethod: pressure\ngauge: weighted\npressure: 103 kPa\ntime: 30 min\naltitude: 1403 m\n", a3017}};
constexpr citation a3019[] = {{"usda-guide-1", "1", ""},
    {"usda-guide-7", "7", ""}};
constexpr example a3020[] = {{"jars boiled for a five-minute jam", "food: jam-pear-apple\ningredients:\n  - 2 cups pears, peeled, cored, finely chopped\n  - 1 cup apples, peeled, cored, finely chopped\n  - 6 1/2 cups sugar\n  - 1/3 cup bottled lemon juice\n  - 6 oz liquid pectin\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 5 min\naltitude: 900 ft\nprepared: [jars sterilized]\n", {}},
    {"ten minutes instead", "food: jam-pear-apple\ningredients:\n  - 2 cups pears, peeled, cored, finely chopped\n  - 1 cup apples, peeled, cored, finely chopped\n  - 6 1/2 cups sugar\n  - 1/3 cup bottled lemon juice\n  - 6 oz liquid pectin\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 10 min\naltitude: 900 ft\n", {}},
    {"apple juice in boiled jars", "food: apple juice\npack: hot\njar: quart\nmethod: boiling-water\ntime: 5 min\naltitude: 900 ft\nprepared: [jars sterilized]\n", {}}};
constexpr sv a3021[] = {"13:12 jar-sterilization"};
constexpr sv a3022[] = {"1:1 jar-sterilization"};
constexpr example a3023[] = {{"clean jars for a five-minute jam", "food: jam-pear-apple\ningredients:\n  - 2 cups pears, peeled, cored, finely chopped\n  - 1 cup apples, peeled, cored, finely chopped\n  - 6 1/2 cups sugar\n  - 1/3 cup bottled lemon juice\n  - 6 oz liquid pectin\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 5 min\naltitude: 900 ft\nprepared: [jars not sterilized]\n", a3021},
    {"nothing said about the jars", "food: jam-pear-apple\ningredients:\n  - 2 cups pears, peeled, cored, finely chopped\n  - 1 cup apples, peeled, cored, finely chopped\n  - 6 1/2 cups sugar\n  - 1/3 cup bottled lemon juice\n  - 6 oz liquid pectin\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 5 min\naltitude: 900 ft\n", a3022},
    {"apple juice with no word on the jars", "food: apple juice\npack: hot\njar: quart\nmethod: boiling-water\ntime: 5 min\naltitude: 900 ft\n", a3022}};
constexpr citation a3024[] = {{"nchfp-jar-sizes", "", ""},
    {"kstate-odd-jars", "", ""},
    {"njaes-salsa", "", ""}};
constexpr example a3025[] = {{"venison and white bean soup in quarts", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", {}},
    {"salsa in pints", "food: chile salsa\nas-published: true\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3026[] = {"5:6 jar-too-large"};
constexpr sv a3027[] = {"3:6 jar-too-large"};
constexpr sv a3028[] = {"4:6 jar-too-large"};
constexpr example a3029[] = {{"venison and white bean soup in half-gallon jars", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: half-gallon\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 2 h\naltitude: 4600 ft\n", a3026},
    {"green beans in 1-litre jars", "food: green beans\npack: hot\njar: 1 L\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 25 min\naltitude: 4600 ft\n", a3027},
    {"mushrooms in quarts", "food: mushrooms\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 45 min\naltitude: 4600 ft\n", a3027},
    {"salsa in quarts", "food: chile salsa\nas-published: true\npack: hot\njar: quart\nmethod: boiling-water\ntime: 35 min\naltitude: 4600 ft\n", a3028}};
constexpr example a3030[] = {{"green beans in a pressure canner at 4,600 ft", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3031[] = {"4:9 low-acid-needs-pressure"};
constexpr example a3032[] = {{"green beans boiled for three hours", "food: green beans\npack: hot\njar: pint\nmethod: boiling-water\ntime: 3 h\naltitude: 4600 ft\n", a3031},
    {"potatoes in a steam canner", "food: white potatoes\npack: hot\njar: quart\nmethod: steam canner\ntime: 40 min\naltitude: 4600 ft\n", a3031}};
constexpr citation a3033[] = {{"usda-guide-4", "4", ""},
    {"nchfp-pumpkin-butter", "", ""},
    {"kstate-pumpkin", "", ""},
    {"nchfp-fruit-puree", "", ""}};
constexpr example a3034[] = {{"pumpkin in 1-inch cubes", "food: pumpkin\nform: 1-inch-cubes\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 90 min\naltitude: 4600 ft\n", {}},
    {"applesauce by its own table", "food: applesauce\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3035[] = {"2:7 low-acid-puree"};
constexpr sv a3036[] = {"8:5 low-acid-puree"};
constexpr example a3037[] = {{"pureed pumpkin", "food: pumpkin\nform: pureed\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 90 min\naltitude: 4600 ft\n", a3035},
    {"refried beans", "food: dried pinto beans\nform: mashed-beans\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [beans rehydrated]\n", a3035},
    {"pumpkin puree in the salsa", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\n  - 1 cup pumpkin puree\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a3036},
    {"mashed apples by the table of slices", "food: sliced apples\nform: mashed\npack: hot\njar: pint\nmethod: boiling-water\ntime: 30 min\naltitude: 4600 ft\n", a3035}};
constexpr citation a3038[] = {{"rutgers-salsa", "", ""},
    {"usda-guide-3", "3", ""},
    {"usda-guide-6", "6", ""},
    {"njaes-salsa", "", ""}};
constexpr example a3039[] = {{"exactly the tested onions", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", {}},
    {"one pepper for another", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb jalapeno peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", {}},
    {"half of the onions", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1/2 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3040[] = {"5:5 low-acid-share-too-high"};
constexpr sv a3041[] = {"8:5 low-acid-share-too-high"};
constexpr sv a3042[] = {"4:5 low-acid-share-too-high"};
constexpr example a3043[] = {{"a quarter more onion", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 1/4 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a3040},
    {"corn in the salsa", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\n  - 2 cups corn\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a3041},
    {"more cucumbers and onions than the vinegar was tested for", "food: bread-and-butter pickles\ningredients:\n  - 6 lb pickling cucumbers, sliced\n  - 10 cups onions, thinly sliced\n  - 4 cups vinegar (5 %)\n  - 4 1/2 cups sugar\npack: hot\njar: pint\nmethod: boiling-water\ntime: 15 min\naltitude: 4600 ft\n", a3042},
    {"fresh cilantro cooked in", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\n  - 1 cup cilantro, chopped\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a3041}};
constexpr citation a3044[] = {{"usda-guide-1", "1", ""},
    {"usda-guide-7", "7", ""},
    {"nchfp-equipment", "", ""},
    {"psu-equipment", "", ""}};
constexpr example a3045[] = {{"beets in a pressure canner with a 15 psi weight", "food: beets\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3046[] = {"4:9 method-not-accepted"};
constexpr sv a3047[] = {"5:9 method-not-accepted"};
constexpr example a3048[] = {{"beets in the oven", "food: beets\npack: hot\njar: pint\nmethod: oven\ntime: 90 min\naltitude: 4600 ft\n", a3046},
    {"chicken in an electric multi-cooker", "food: boneless chicken\npack: raw\njar: pint\nmethod: electric pressure cooker\ntime: 75 min\naltitude: 4600 ft\n", a3046},
    {"a slip of the pen", "food: beets\npack: hot\njar: pint\nmethod: presure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", a3046},
    {"hot jam turned upside down", "food: pear-apple jam\nas-published: true\npack: hot\njar: half-pint\nmethod: inversion\ntime: 10 min\naltitude: 4600 ft\n", a3047}};
constexpr example a3049[] = {{"bread-and-butter pickles at 182 F", "food: bread-and-butter pickles\npack: hot\njar: pint\nmethod: low-temperature\ntime: 30 min\naltitude: 4600 ft\nas-published: true\ntemperature: 182 F\n", {}}};
constexpr sv a3050[] = {"4:9 method-not-for-food"};
constexpr example a3051[] = {{"chile salsa at 182 F", "food: chile salsa\npack: hot\njar: pint\nmethod: low-temperature\ntime: 30 min\naltitude: 4600 ft\nas-published: true\ntemperature: 182 F\n", a3050},
    {"sauerkraut at 182 F", "food: sauerkraut\npack: hot\njar: pint\nmethod: low-temperature\ntime: 30 min\naltitude: 4600 ft\nas-published: true\ntemperature: 182 F\nprepared: [fully fermented]\n", a3050}};
constexpr citation a3052[] = {{"usda-guide-1", "1", ""},
    {"nchfp-pumpkin-butter", "", ""},
    {"wisconsin-mixtures", "", ""},
    {"clemson-soups", "", ""}};
constexpr example a3053[] = {{"onions by their own table", "food: onions\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3054[] = {"1:7 no-tested-process"};
constexpr sv a3055[] = {"2:5 no-tested-process"};
constexpr sv a3056[] = {"4:3 no-tested-process"};
constexpr example a3057[] = {{"cauliflower, which has no table", "food: cauliflower\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", a3054},
    {"onions and carrots in one jar", "ingredients:\n  - 4 lb onions, peeled\n  - 3 lb carrots, sliced\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", a3055},
    {"carrots among the onions", "food: onions\ningredients: |\n  4 lb onions, peeled\n  1 lb carrots, sliced\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", a3056},
    {"pumpkin butter", "food: pumpkin butter\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 15 min\naltitude: 4600 ft\n", a3054}};
constexpr citation a3058[] = {{"usda-guide-2", "2", ""},
    {"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""},
    {"wisconsin-white-peaches", "", ""}};
constexpr example a3059[] = {{"snap beans with nothing but what the table has", "food: green beans\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 20 min\naltitude: 4600 ft\nprepared: [covered with liquid]\n", {}}};
constexpr sv a3060[] = {"9:12 not-in-process"};
constexpr sv a3061[] = {"8:12 not-in-process"};
constexpr example a3062[] = {{"snap beans that were smoked", "food: green beans\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 20 min\naltitude: 4600 ft\nprepared: [lightly smoked]\n", a3060},
    {"smoke in the salsa", "food: chile salsa\nas-published: true\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\nprepared: [lightly smoked]\n", a3061}};
constexpr citation a3063[] = {{"usda-guide-3", "3", ""},
    {"usda-guide-6", "6", ""},
    {"njaes-salsa", "", ""}};
constexpr example a3064[] = {{"the recipe as printed", "food: bread-and-butter pickles\ningredients:\n  - 6 lb pickling cucumbers, sliced\n  - 8 cups onions, thinly sliced\n  - 4 cups vinegar (5 %)\n  - 4 1/2 cups sugar\npack: hot\njar: pint\nmethod: boiling-water\ntime: 15 min\naltitude: 4600 ft\n", {}},
    {"the recipe with another dried spice", "food: bread-and-butter pickles\ningredients:\n  - 6 lb pickling cucumbers, sliced\n  - 8 cups onions, thinly sliced\n  - 4 cups vinegar (5 %)\n  - 4 1/2 cups sugar\n  - 1 tsp ground cinnamon\npack: hot\njar: pint\nmethod: boiling-water\ntime: 15 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3065[] = {"7:5 not-in-recipe"};
constexpr sv a3066[] = {"8:5 not-in-recipe"};
constexpr example a3067[] = {{"apples in the pickles", "food: bread-and-butter pickles\ningredients:\n  - 6 lb pickling cucumbers, sliced\n  - 8 cups onions, thinly sliced\n  - 4 cups vinegar (5 %)\n  - 4 1/2 cups sugar\n  - 2 cups apples, chopped\npack: hot\njar: pint\nmethod: boiling-water\ntime: 15 min\naltitude: 4600 ft\n", a3065},
    {"raisins in the salsa", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\n  - 1 cup raisins\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a3066}};
constexpr citation a3068[] = {{"usda-guide-5", "5", ""},
    {"clemson-soups", "", ""}};
constexpr example a3069[] = {{"beef stock brought back to a boil", "food: beef stock\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 25 min\naltitude: 4600 ft\nprepared: [bones removed, fat removed, reheated to a boil]\n", {}}};
constexpr sv a3070[] = {"9:40 not-reheated"};
constexpr sv a3071[] = {"11:7 not-reheated"};
constexpr example a3072[] = {{"beef stock filled cold", "food: beef stock\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 25 min\naltitude: 4600 ft\nprepared: [bones removed, fat removed, not reheated]\n", a3070},
    {"soup from the refrigerator with no word on reheating", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nheld: {for: 14 h, at: 38 F}\n", a3071}};
constexpr example a3073[] = {{"carrots, which are in the guide", "food: carrots\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3074[] = {"1:7 numbers-by-extension"};
constexpr example a3075[] = {{"onions, which are not", "food: onions\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", a3074}};
constexpr citation a3076[] = {{"kstate-soup-note", "", ""},
    {"wisconsin-mixtures", "", ""}};
constexpr example a3077[] = {{"soup of carrots and onions in pints", "food: vegetable soup\nas-published: true\ningredients: [2 lb carrots, 1 lb onions]\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 60 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3078[] = {"3:29 other-position"};
constexpr example a3079[] = {{"soup with corn in quarts", "food: vegetable soup\nas-published: true\ningredients: [2 lb carrots, 1 lb whole kernel corn]\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", a3078}};
constexpr citation a3080[] = {{"usda-guide-3", "3", ""},
    {"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""},
    {"usda-guide-6", "6", ""}};
constexpr example a3081[] = {{"green beans just as the table says", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3082[] = {"6:11 over-required",
    "7:7 over-required"};
constexpr sv a3083[] = {"6:7 over-required"};
constexpr sv a3084[] = {"8:14 over-required"};
constexpr example a3085[] = {{"green beans longer and at a higher pressure", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\n", a3082},
    {"salsa for five minutes more", "food: chile salsa\nas-published: true\npack: hot\njar: pint\nmethod: boiling-water\ntime: 25 min\naltitude: 4600 ft\n", a3083},
    {"pickles at 190 F", "food: bread-and-butter pickles\npack: hot\njar: pint\nmethod: low-temperature\ntime: 30 min\naltitude: 4600 ft\nas-published: true\ntemperature: 190 F\n", a3084}};
constexpr example a3086[] = {{"beets in a hot pack", "food: beets\nform: sliced\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", {}},
    {"sliced apples in a hot pack", "food: sliced apples\npack: hot\njar: pint\nmethod: boiling-water\ntime: 30 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3087[] = {"3:7 pack-not-tested"};
constexpr sv a3088[] = {"2:7 pack-not-tested"};
constexpr example a3089[] = {{"beets packed raw", "food: beets\nform: sliced\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", a3087},
    {"sliced apples packed raw", "food: sliced apples\npack: raw\njar: pint\nmethod: boiling-water\ntime: 30 min\naltitude: 4600 ft\n", a3088}};
constexpr citation a3090[] = {{"clemson-soups", "", ""},
    {"kstate-creamed-soup", "", ""},
    {"usda-guide-3", "3", ""}};
constexpr sv a3091[] = {"8:5 pasta-or-grain-in-jar"};
constexpr example a3092[] = {{"with pasta or grain", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\n  - 2 cups macaroni\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a3091}};
constexpr citation a3093[] = {{"usda-guide-1", "1", ""},
    {"nist-sp811", "", ""}};
constexpr example a3094[] = {{"a plan that can be read", "title: Green beans, first picking\nfood: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3095[] = {"6:1 plan-unreadable",
    "7:7 plan-unreadable"};
constexpr sv a3096[] = {"4:1 plan-unreadable"};
constexpr example a3097[] = {{"a time without a unit and a key spelled wrong", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npresure: 13 psi\ntime: 20\naltitude: 4600 ft\n", a3095},
    {"a key that stands twice", "food: green beans\npack: hot\njar: pint\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", a3096}};
constexpr citation a3098[] = {{"nchfp-equipment", "", ""},
    {"sdsu-how-not-to-can", "", ""}};
constexpr example a3099[] = {{"15 psi on a weighted gauge", "food: boneless chicken\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3100[] = {"6:11 pressure-too-high"};
constexpr example a3101[] = {{"20 psi to save time", "food: boneless chicken\npack: raw\njar: pint\nmethod: pressure\ngauge: dial\npressure: 20 psi\ntime: 75 min\naltitude: 4600 ft\n", a3100}};
constexpr citation a3102[] = {{"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""},
    {"usda-guide-3", "3", ""},
    {"pnw-421", "", ""}};
constexpr example a3103[] = {{"13 psi on a dial at 4,600 ft", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", {}},
    {"14 psi on a dial that reads 1 psi high", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\ngauge-error: +1 psi\npressure: 14 psi\ntime: 20 min\naltitude: 4600 ft\n", {}},
    {"crushed tomatoes at 8 psi with the time of that pressure", "food: crushed tomatoes\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 8 psi\ntime: 20 min\naltitude: 4600 ft\nacid: 2 tbsp bottled lemon juice per quart\n", {}}};
constexpr sv a3104[] = {"6:11 pressure-too-low"};
constexpr sv a3105[] = {"7:11 pressure-too-low"};
constexpr example a3106[] = {{"the pressure for sea level on a dial", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 11 psi\ntime: 20 min\naltitude: 4600 ft\n", a3104},
    {"the 10 psi weight in the mountains", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 10 psi\ntime: 20 min\naltitude: 4600 ft\n", a3104},
    {"13 psi on a dial that reads 1 psi high", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\ngauge-error: +1 psi\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", a3105},
    {"tomato juice below the lowest pressure of its table", "food: tomato juice\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 7 psi\ntime: 20 min\naltitude: 4600 ft\nacid: 1 tbsp bottled lemon juice per pint\n", a3104}};
constexpr citation a3107[] = {{"usda-guide-3", "3", ""},
    {"usda-guide-4", "4", ""},
    {"usda-guide-6", "6", ""},
    {"clemson-soups", "", ""},
    {"wisconsin-mixtures", "", ""}};
constexpr example a3108[] = {{"venison and white bean soup by the published rules", "title: Venison and white bean soup\nfood: soups\nas-published: true\ningredients:\n  - 3 lb venison cubes, trimmed\n  - 2 lb dried white beans, rinsed\n  - 2 lb onions, peeled\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [beans rehydrated, meat precooked]\n", {}},
    {"salsa with its ingredients", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", {}},
    {"salsa made as published", "food: chile salsa\nas-published: true\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3109[] = {"1:1 recipe-not-shown"};
constexpr sv a3110[] = {"2:15 recipe-not-shown"};
constexpr sv a3111[] = {"3:5 recipe-not-shown"};
constexpr example a3112[] = {{"soup with no word on the rules", "title: Venison and white bean soup\nfood: soups\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", a3109},
    {"a chili of one's own", "food: chile con carne\nas-published: false\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [beans rehydrated]\n", a3110},
    {"salsa by its name alone", "food: chile salsa\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a3109},
    {"salsa without its main food", "food: chile salsa\ningredients:\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a3111}};
constexpr citation a3113[] = {{"usda-guide-2", "2", ""},
    {"usda-guide-7", "7", ""}};
constexpr example a3114[] = {{"one measure of pectin", "food: jam-pear-apple\ningredients:\n  - 2 cups pears, peeled, cored, finely chopped\n  - 1 cup apples, peeled, cored, finely chopped\n  - 6 1/2 cups sugar\n  - 1/3 cup bottled lemon juice\n  - 6 oz liquid pectin\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 10 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3115[] = {"7:5 recipe-part-too-large"};
constexpr sv a3116[] = {"4:5 recipe-part-too-large"};
constexpr example a3117[] = {{"too much pectin", "food: jam-pear-apple\ningredients:\n  - 2 cups pears, peeled, cored, finely chopped\n  - 1 cup apples, peeled, cored, finely chopped\n  - 6 1/2 cups sugar\n  - 1/3 cup bottled lemon juice\n  - 9 oz liquid pectin\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 10 min\naltitude: 4600 ft\n", a3115},
    {"peach jam with more sugar than printed", "food: jam without added pectin\ningredients:\n  - 5 1/2 cups peaches, crushed\n  - 6 cups sugar\n  - 2 tbsp lemon juice\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 10 min\naltitude: 4600 ft\n", a3116}};
constexpr citation a3118[] = {{"usda-guide-2", "2", ""},
    {"usda-guide-3", "3", ""},
    {"usda-guide-7", "7", ""}};
constexpr example a3119[] = {{"all of the fruit", "food: jam-pear-apple\ningredients:\n  - 2 cups pears, peeled, cored, finely chopped\n  - 1 cup apples, peeled, cored, finely chopped\n  - 6 1/2 cups sugar\n  - 1/3 cup bottled lemon juice\n  - 6 oz liquid pectin\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 10 min\naltitude: 4600 ft\n", {}},
    {"half a batch", "food: jam-pear-apple\ningredients:\n  - 1 cup pears, peeled, cored, finely chopped\n  - 1/2 cup apples, peeled, cored, finely chopped\n  - 3 1/4 cups sugar\n  - 2 2/3 tbsp bottled lemon juice\n  - 3 oz liquid pectin\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 10 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3120[] = {"4:5 recipe-part-too-small"};
constexpr sv a3121[] = {"3:5 recipe-part-too-small"};
constexpr example a3122[] = {{"half of the apples", "food: jam-pear-apple\ningredients:\n  - 2 cups pears, peeled, cored, finely chopped\n  - 1/2 cup apples, peeled, cored, finely chopped\n  - 6 1/2 cups sugar\n  - 1/3 cup bottled lemon juice\n  - 6 oz liquid pectin\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 10 min\naltitude: 4600 ft\n", a3120},
    {"pie filling without its apple juice", "food: apple pie filling\ningredients:\n  - 6 quarts apples, sliced\n  - 5 1/2 cups sugar\n  - 1 1/2 cups cook-type modified corn starch\n  - 2 1/2 cups water\n  - 3/4 cup bottled lemon juice\npack: hot\njar: quart\nmethod: boiling-water\ntime: 35 min\naltitude: 4600 ft\n", a3121}};
constexpr citation a3123[] = {{"usda-guide-6", "6", ""}};
constexpr example a3124[] = {{"3 tbsp to each 5 lb", "food: sauerkraut\ningredients:\n  - 25 lb cabbage, shredded\n  - 15 tbsp canning salt\npack: raw\njar: quart\nmethod: boiling-water\ntime: 35 min\naltitude: 4600 ft\nprepared: [fully fermented]\n", {}}};
constexpr sv a3125[] = {"4:5 salt-reduced-in-ferment"};
constexpr sv a3126[] = {"3:5 salt-reduced-in-ferment"};
constexpr example a3127[] = {{"one tablespoon short", "food: sauerkraut\ningredients:\n  - 25 lb cabbage, shredded\n  - 14 tbsp canning salt\npack: raw\njar: quart\nmethod: boiling-water\ntime: 35 min\naltitude: 4600 ft\nprepared: [fully fermented]\n", a3125},
    {"no salt at all", "food: sauerkraut\ningredients:\n  - 25 lb cabbage, shredded\npack: raw\njar: quart\nmethod: boiling-water\ntime: 35 min\naltitude: 4600 ft\nprepared: [fully fermented]\n", a3126}};
constexpr example a3128[] = {{"soup with the jar half full of solids", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 60 min\naltitude: 4600 ft\nsolids: 1/2\n", {}}};
constexpr sv a3129[] = {"11:9 solids-over-half"};
constexpr example a3130[] = {{"soup with three quarters of the jar full of solids", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 60 min\naltitude: 4600 ft\nsolids: 3/4\n", a3129}};
constexpr citation a3131[] = {{"nchfp-steam-canner", "", ""},
    {"wisconsin-steam-canner", "", ""}};
constexpr example a3132[] = {{"sliced apples for 30 minutes", "food: apples\nform: sliced\npack: hot\njar: pint\nmethod: steam\ntime: 30 min\naltitude: 4600 ft\n", {}},
    {"figs in pints at 900 ft", "food: figs\npack: hot\njar: pint\nmethod: steam\ntime: 45 min\naltitude: 900 ft\nacid: 1 tbsp bottled lemon juice per pint\n", {}}};
constexpr sv a3133[] = {"4:9 steam-time-too-long"};
constexpr example a3134[] = {{"quarts of tomatoes in water", "food: tomatoes in water\npack: hot\njar: quart\nmethod: steam\ntime: 55 min\naltitude: 4600 ft\nacid: 2 tbsp bottled lemon juice per quart\n", a3133},
    {"figs in pints at 4,600 ft", "food: figs\npack: hot\njar: pint\nmethod: steam\ntime: 55 min\naltitude: 4600 ft\nacid: 1 tbsp bottled lemon juice per pint\n", a3133},
    {"quarts of tomatoes packed raw", "food: tomatoes-whole-raw-no-liquid\npack: raw\njar: quart\nmethod: steam\ntime: 95 min\naltitude: 4600 ft\nacid: 2 tbsp bottled lemon juice per quart\n", a3133}};
constexpr citation a3135[] = {{"usda-guide-2", "2", ""},
    {"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""},
    {"usda-guide-6", "6", ""}};
constexpr example a3136[] = {{"peeled potatoes in fresh water", "food: white potatoes\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 40 min\naltitude: 4600 ft\nprepared: [peeled, boiled before filling, fresh water used]\n", {}}};
constexpr sv a3137[] = {"9:12 step-left-out"};
constexpr sv a3138[] = {"12:3 step-left-out"};
constexpr sv a3139[] = {"1:1 step-left-out"};
constexpr example a3140[] = {{"potatoes with their skins", "food: white potatoes\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 40 min\naltitude: 4600 ft\nprepared: [unpeeled, boiled before filling, fresh water used]\n", a3137},
    {"potatoes in their starchy cooking water", "food: white potatoes\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 40 min\naltitude: 4600 ft\nprepared: |\n  peeled\n  boiled before filling\n  cooking water used\n", a3138},
    {"sauerkraut with no word on its ferment", "food: sauerkraut\ningredients:\n  - 25 lb cabbage, shredded\n  - 15 tbsp canning salt\npack: raw\njar: quart\nmethod: boiling-water\ntime: 35 min\naltitude: 4600 ft\n", a3139}};
constexpr citation a3141[] = {{"usda-guide-1", "1", ""},
    {"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""}};
constexpr example a3142[] = {{"okra with every step said", "food: okra\nform: whole\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\nheadspace: 1 in\nvent: 10 min\nprepared: [boiled before filling, covered with liquid]\n", {}}};
constexpr sv a3143[] = {"1:1 step-reminder"};
constexpr example a3144[] = {{"okra with no word on the headspace", "food: okra\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\nvent: 10 min\nprepared: [boiled before filling, covered with liquid]\n", a3143}};
constexpr citation a3145[] = {{"usda-guide-7", "7", ""}};
constexpr example a3146[] = {{"the full sugar", "food: jam-pear-apple\ningredients:\n  - 2 cups pears, peeled, cored, finely chopped\n  - 1 cup apples, peeled, cored, finely chopped\n  - 6 1/2 cups sugar\n  - 1/3 cup bottled lemon juice\n  - 6 oz liquid pectin\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 10 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3147[] = {"5:5 sugar-reduced-in-jam"};
constexpr sv a3148[] = {"3:5 sugar-reduced-in-jam"};
constexpr example a3149[] = {{"half a cup short", "food: jam-pear-apple\ningredients:\n  - 2 cups pears, peeled, cored, finely chopped\n  - 1 cup apples, peeled, cored, finely chopped\n  - 6 cups sugar\n  - 1/3 cup bottled lemon juice\n  - 6 oz liquid pectin\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 10 min\naltitude: 4600 ft\n", a3147},
    {"jam with no sugar", "food: jam-pear-apple\ningredients:\n  - 2 cups pears, peeled, cored, finely chopped\n  - 1 cup apples, peeled, cored, finely chopped\n  - 1/3 cup bottled lemon juice\n  - 6 oz liquid pectin\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 10 min\naltitude: 4600 ft\n", a3148}};
constexpr citation a3150[] = {{"usda-guide-1", "1", ""},
    {"usda-guide-2", "2", ""},
    {"uga-bulletin-989", "", ""},
    {"oregon-mangoes", "", ""}};
constexpr example a3151[] = {{"trout in pint jars", "food: fish in pint jars\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 100 min\naltitude: 4600 ft\n", {}},
    {"crushed tomatoes, whose table is read", "food: crushed tomatoes\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 2 tbsp bottled lemon juice per quart\n", {}}};
constexpr sv a3152[] = {"1:7 table-not-verified"};
constexpr example a3153[] = {{"tomato paste by an old bulletin", "food: tomato paste\nas-published: true\npack: hot\njar: half-pint\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\n", a3152}};
constexpr example a3154[] = {{"exactly 180 F", "food: bread-and-butter pickles\npack: hot\njar: pint\nmethod: low-temperature\ntime: 30 min\naltitude: 4600 ft\nas-published: true\ntemperature: 180 F\n", {}}};
constexpr sv a3155[] = {"8:14 temperature-too-low"};
constexpr example a3156[] = {{"one degree less", "food: bread-and-butter pickles\npack: hot\njar: pint\nmethod: low-temperature\ntime: 30 min\naltitude: 4600 ft\nas-published: true\ntemperature: 179 F\n", a3155}};
constexpr citation a3157[] = {{"clemson-soups", "", ""},
    {"iowa-thickeners", "", ""},
    {"usda-guide-2", "2", ""},
    {"usda-guide-4", "4", ""}};
constexpr example a3158[] = {{"venison cubes in plain broth", "food: wild-game-strips\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [meat precooked, not thickened, covered with liquid]\n", {}},
    {"apple pie filling with its tested starch", "food: apple pie filling\ningredients:\n  - 6 quarts apples, sliced\n  - 5 1/2 cups sugar\n  - 1 1/2 cups cook-type modified corn starch\n  - 2 1/2 cups water\n  - 5 cups apple juice\n  - 3/4 cup bottled lemon juice\npack: hot\njar: quart\nmethod: boiling-water\ntime: 35 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3159[] = {"9:12 thickener-in-jar"};
constexpr sv a3160[] = {"8:5 thickener-in-jar"};
constexpr sv a3161[] = {"5:5 thickener-in-jar"};
constexpr example a3162[] = {{"green beans in thickened sauce", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 20 min\naltitude: 4600 ft\nprepared: [thickened]\n", a3159},
    {"cornstarch in the salsa", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\n  - 2 tbsp cornstarch\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", a3160},
    {"too much starch in apple pie filling", "food: apple pie filling\ningredients:\n  - 6 quarts apples, sliced\n  - 5 1/2 cups sugar\n  - 2 cups cook-type modified corn starch\n  - 2 1/2 cups water\n  - 5 cups apple juice\n  - 3/4 cup bottled lemon juice\npack: hot\njar: quart\nmethod: boiling-water\ntime: 35 min\naltitude: 4600 ft\n", a3161}};
constexpr citation a3163[] = {{"usda-guide-2", "2", ""},
    {"usda-guide-3", "3", ""},
    {"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""},
    {"nchfp-process-time", "", ""}};
constexpr example a3164[] = {{"quarts of green beans for 25 minutes", "food: green beans\npack: raw\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 25 min\naltitude: 4600 ft\n", {}},
    {"salsa for the 20 minutes of 4,600 ft", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3165[] = {"7:7 time-too-short"};
constexpr sv a3166[] = {"9:7 time-too-short"};
constexpr sv a3167[] = {"11:7 time-too-short"};
constexpr example a3168[] = {{"quarts of green beans with the time for pints", "food: green beans\npack: raw\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", a3165},
    {"venison and white bean soup one minute short", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 1 h 14 min\naltitude: 4600 ft\n", a3166},
    {"salsa for the 15 minutes of sea level", "food: chile salsa\ningredients:\n  - 5 lb tomatoes, peeled and chopped\n  - 2 lb chile peppers, seeded and chopped\n  - 1 lb onions, chopped\n  - 1 cup vinegar (5 %)\n  - 3 tsp canning salt\npack: hot\njar: pint\nmethod: boiling-water\ntime: 15 min\naltitude: 4600 ft\n", a3167},
    {"crushed tomatoes with the time of one pressure and another pressure", "food: crushed tomatoes\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 8 psi\ntime: 15 min\naltitude: 4600 ft\nacid: 2 tbsp bottled lemon juice per quart\n", a3165}};
constexpr citation a3169[] = {{"usda-guide-1", "1", ""},
    {"kstate-venting", "", ""},
    {"pnw-421", "", ""}};
constexpr example a3170[] = {{"vented for 10 minutes", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\nvent: 10 min\n", {}}};
constexpr sv a3171[] = {"9:7 vent-too-short"};
constexpr example a3172[] = {{"vented for 7 minutes", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\nvent: 7 min\n", a3171}};
constexpr example a3173[] = {{"bought vinegar", "food: bread-and-butter pickles\ningredients:\n  - 6 lb pickling cucumbers, sliced\n  - 8 cups onions, thinly sliced\n  - 4 cups vinegar (5 %)\n  - 4 1/2 cups sugar\npack: hot\njar: pint\nmethod: boiling-water\ntime: 15 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3174[] = {"7:7 vinegar-homemade"};
constexpr sv a3175[] = {"5:5 vinegar-homemade"};
constexpr example a3176[] = {{"homemade vinegar in each jar", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 4 tbsp homemade vinegar per quart\n", a3174},
    {"homemade vinegar in pickles", "food: bread-and-butter pickles\ningredients:\n  - 6 lb pickling cucumbers, sliced\n  - 8 cups onions, thinly sliced\n  - 4 cups homemade vinegar\n  - 4 1/2 cups sugar\npack: hot\njar: pint\nmethod: boiling-water\ntime: 15 min\naltitude: 4600 ft\n", a3175}};
constexpr example a3177[] = {{"5 % vinegar", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 4 tbsp vinegar per quart\nvinegar: 5 %\n", {}},
    {"5 % vinegar in pickles", "food: bread-and-butter pickles\ningredients:\n  - 6 lb pickling cucumbers, sliced\n  - 8 cups onions, thinly sliced\n  - 4 cups vinegar (5 %)\n  - 4 1/2 cups sugar\npack: hot\njar: pint\nmethod: boiling-water\ntime: 15 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3178[] = {"8:10 vinegar-too-weak"};
constexpr sv a3179[] = {"5:5 vinegar-too-weak"};
constexpr example a3180[] = {{"4 % vinegar in tomatoes", "food: tomatoes in water\npack: hot\njar: quart\nmethod: boiling-water\ntime: 55 min\naltitude: 4600 ft\nacid: 4 tbsp vinegar per quart\nvinegar: 4 %\n", a3178},
    {"4 % vinegar in pickles", "food: bread-and-butter pickles\ningredients:\n  - 6 lb pickling cucumbers, sliced\n  - 8 cups onions, thinly sliced\n  - 4 cups vinegar (4 %)\n  - 4 1/2 cups sugar\npack: hot\njar: pint\nmethod: boiling-water\ntime: 15 min\naltitude: 4600 ft\n", a3179}};
constexpr citation a3181[] = {{"usda-guide-5", "5", ""},
    {"nchfp-smoked-fish", "", ""}};
constexpr example a3182[] = {{"smoked trout with 4 quarts of water", "food: smoked trout\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 110 min\naltitude: 4600 ft\nwater: 4 qt\ncanner: {quarts: 7, volume: 16 qt}\n", {}}};
constexpr sv a3183[] = {"9:8 water-too-little"};
constexpr example a3184[] = {{"smoked trout with 3 quarts of water", "food: smoked trout\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 110 min\naltitude: 4600 ft\nwater: 3 qt\ncanner: {quarts: 7, volume: 16 qt}\n", a3183}};
constexpr citation a3185[] = {{"usda-guide-6", "6", ""},
    {"usda-guide-2", "2", ""}};
constexpr example a3186[] = {{"no water, as tested", "food: bread-and-butter pickles\ningredients:\n  - 6 lb pickling cucumbers, sliced\n  - 8 cups onions, thinly sliced\n  - 4 cups vinegar (5 %)\n  - 4 1/2 cups sugar\npack: hot\njar: pint\nmethod: boiling-water\ntime: 15 min\naltitude: 4600 ft\n", {}},
    {"all of the water of a tested filling", "food: apple pie filling\ningredients:\n  - 6 quarts apples, sliced\n  - 5 1/2 cups sugar\n  - 1 1/2 cups cook-type modified corn starch\n  - 2 1/2 cups water\n  - 5 cups apple juice\n  - 3/4 cup bottled lemon juice\npack: hot\njar: quart\nmethod: boiling-water\ntime: 35 min\naltitude: 4600 ft\n", {}}};
constexpr sv a3187[] = {"7:5 water-too-much"};
constexpr sv a3188[] = {"6:5 water-too-much"};
constexpr example a3189[] = {{"water added to the vinegar", "food: bread-and-butter pickles\ningredients:\n  - 6 lb pickling cucumbers, sliced\n  - 8 cups onions, thinly sliced\n  - 4 cups vinegar (5 %)\n  - 4 1/2 cups sugar\n  - 2 cups water\npack: hot\njar: pint\nmethod: boiling-water\ntime: 15 min\naltitude: 4600 ft\n", a3187},
    {"more water in a pie filling", "food: apple pie filling\ningredients:\n  - 6 quarts apples, sliced\n  - 5 1/2 cups sugar\n  - 1 1/2 cups cook-type modified corn starch\n  - 3 cups water\n  - 5 cups apple juice\n  - 3/4 cup bottled lemon juice\npack: hot\njar: quart\nmethod: boiling-water\ntime: 35 min\naltitude: 4600 ft\n", a3188}};
constexpr example a3190[] = {{"beets, peeled, in fresh water", "food: beets\nform: sliced\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\nprepared: [peeled, fresh water used]\n", {}}};
constexpr sv a3191[] = {"2:7 word-unknown",
    "4:6 word-unknown",
    "10:12 word-unknown"};
constexpr example a3192[] = {{"three slips of the pen", "food: beets\nform: slised\npack: hot\njar: pnit\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\nprepared: [peeld, fresh water used]\n", a3191}};
constexpr example a3193[] = {{"asparagus with a word that has its place", "food: asparagus\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\nprepared: [covered with liquid]\n", {}}};
constexpr sv a3194[] = {"9:12 word-without-place"};
constexpr sv a3195[] = {"8:12 word-without-place"};
constexpr example a3196[] = {{"asparagus boiled before a raw pack", "food: asparagus\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\nprepared: [boiled before filling]\n", a3194},
    {"salsa pressed into the jar", "food: chile salsa\nas-published: true\npack: hot\njar: pint\nmethod: boiling-water\ntime: 20 min\naltitude: 4600 ft\nprepared: [packed tightly]\n", a3195}};
constexpr check_rule a3197[] = {{"acid-does-not-count", "The acid is one of those that the table names", "error", "rejects", "2026.11.2", "\"{found}\" is not an acid that the table for {food} counts. It asks for: {required}.", "", "Ascorbic acid, which is vitamin C, keeps fruit from turning brown and hardly lowers the pH. It is easily mistaken for citric acid. Tablets sold for canning tomatoes do not do it either. A table counts only the acids that were tested, each in its own amount: tomatoes have three, figs two, and Asian pears bottled lemon juice alone. An acid that the table leaves out may be strong or weak; for this food nobody has measured what it does in the jar. You may add it for color or taste, on top of an acid that counts.", "Add to each jar an acid that counts: {required}.", a2899, a2900, a2902},
    {"acid-missing", "The acid that a process names goes in", "error", "rejects", "2026.11.1", "The plan adds {found}; the process for {food} asks for this: {required}.", "", "Where a published process adds acid, to every jar or in its recipe, that acid is part of what was tested, and no heat in the tables replaces it: tomatoes need it in a pressure canner too. Acids are not alike. Citric acid and bottled lemon juice have a known strength, fresh lemon juice varies, vinegar of 5 % is weaker, and vitamin C keeps the color and hardly makes food sour. Without the acid, a jar that gets only the heat for acid food can let botulism spores grow.", "Add the tested acid: {required}.", a2903, a2904, a2908},
    {"acid-not-bottled", "Lemon and lime juice is the bottled kind that was tested", "error", "rejects", "2026.11.2", "\"{found}\" is not bottled juice, and the process for {food} was tested with bottled juice.", "\"{found}\" does not say whether the juice is bottled, and only bottled juice was tested. {instead}", "Bottled lemon and lime juice are made to an even strength. A fresh lemon may be strong or weak, and nobody can taste the difference well enough. The tested amount is an amount of bottled juice, so the same amount of another juice leaves the acid of the jar unknown. That matters most in food near the line of pH 4.6, such as tomatoes, figs and salsa: too little acid there lets botulism spores grow. Squeeze fresh lemon over the food when you serve it.", "Use bottled juice, at least as much as the process asks for, and write \"bottled\" in the plan.", a2909, a2910, a2913},
    {"acid-too-little", "There is as much acid as the process asks for", "error", "rejects", "2026.11.1", "The plan adds {found}; the process for {food} asks for more: {required}.", "", "Where acid goes into every jar, its amount belongs to the size of the jar: a quart needs twice what a pint needs. In a tested recipe it goes into the batch and belongs to the amount of the main food. With less, the food in the jar is not the food that was tested, and its pH may rise above 4.6, where botulism spores can grow. More acid than the process asks for does no harm. Where it tastes too sharp, a little sugar takes the edge off.", "Add this much: {required}.", a2903, a2914, a2918},
    {"altitude-by-extension", "It is said where a number for this altitude does not come from USDA", "note", "none", "2026.11.1", "At {found} the pressure on a dial is {required}. {reason}", "", "The USDA tables raise the dial pressure by 1 psi for every 2,000 ft and stop at 8,000 ft with 14 psi. One university Extension goes a step further, in a leaflet of its own, with 15 psi up to 10,000 ft. That fits the row and is accepted, and you should know whose number it is. For a weighted gauge the question does not come up: the USDA table has 15 psi for everything above 1,000 ft.", "Use a weighted gauge at 15 psi if you have one, or ask your local Extension office.", a3, a2919, a2921},
    {"altitude-outside-table", "The tables reach the altitude of the kitchen", "error", "untested", "2026.11.1", "The kitchen lies at {found}; the published tables are used for {required}.", "", "The higher the kitchen, the cooler boiling water, and the cooler the steam at the same reading on the gauge. The tables answer this band by band: with more minutes in boiling water, with more pressure in a pressure canner. The USDA columns for a dial stop at 8,000 ft; for low-acid food one university goes on to 10,000 ft with 15 psi. Higher up there is no published number, and 15 psi is the most that home canners are run at, so there is no room left to add any. Nobody has tested what a longer time would do there instead.", "Freeze or refrigerate the food, or can it in a kitchen that lies lower.", a2922, a2923, a2926},
    {"amount-unknown", "An amount that decides can be read", "error", "incomplete", "2026.11.1", "The amount in \"{found}\" cannot be compared with the published one, which is given as {required}.", "", "A pinch, a splash or \"to taste\" is fine for dried spices. It is not enough where an amount decides how the food keeps: the acid in each jar, the vinegar, onions or peppers of a recipe, the salt of a ferment. There the plan needs a number and a unit, and for acid in each jar also the size of the jar. Cups and pounds are turned into each other only where a published weight for that food and cut is known; \"2 large onions\" may be too vague. Written in the measure of the publication it can be compared, and you can measure it again next time.", "Write a number with its unit. {instead}", a2927, a2928, a2931},
    {"beans-not-rehydrated", "Dried beans and peas have taken up their water before filling", "error", "rejects", "2026.11.1", "The plan says \"{found}\". The process for {food} needs dried beans or peas that were soaked and boiled first. {reason}", "The plan does not say whether the dried beans or peas were soaked and boiled first. {reason}", "A dry bean drinks more than its own size in water. In the jar it takes that water from the liquid that should carry the heat, swells, and fills the jar tightly, so the middle heats too late. Only beans that were soaked and boiled first have been tested. A jar of beans that went in dry may look fine and still carry botulism; an Extension expert told the owner of such jars to throw them away. \"1 lb dry beans\" in a plan says how they were bought and not how they were filled, so the plan has to say it.", "Soak and boil the beans or peas as the process says, and list `beans rehydrated` under `prepared`.", a2932, a2933, a2936},
    {"canner-too-large", "The canner is no larger than the one the process was tested in", "error", "rejects", "2026.11.1", "The plan's canner holds {found}; the process for {food} was tested in {required}.", "", "The slow heating and the slow cooling of the canner are part of the process. Smoked fish was tested in canners of 16 to 22 quarts with a fixed amount of cool water, so that heating up took as long as in the test. In another canner the same water heats at another pace. A newer copy of the directions says \"16 quarts or larger\"; the narrower range is the one kept here.", "Use {required}, or freeze the fish.", a2937, a2938, a2940},
    {"canner-too-small", "The canner is as large as the process needs", "error", "rejects", "2026.11.1", "The canner in the plan is too small: it holds {found}, and the published size is {required}.", "", "The heat of warming up and cooling down is part of the tested process. A small pot warms and cools faster, so its jars get less heat, even at the right pressure for the right time. The published times belong to canners that hold at least four quart jars standing upright on the rack with the lid closed. Such a canner takes about 10 to 12 quarts of water when full. A few foods need more: smoked fish was tested in canners of 16 to 22 quarts.", "Use a larger pressure canner; the published size is {required}.", a2941, a2942, a2945},
    {"dairy-in-jar", "Milk, cream, butter and cheese stay out of the jar", "error", "rejects", "2026.11.2", "\"{found}\" does not belong in the jar: the tested recipe for {food} has {required}.", "", "Milk, cream, butter and cheese are low in acid, and their fat and protein thicken a mixture and shield germs from heat. In a salsa or a soup they undo what the recipe does to let heat and acid reach every part. No process for canning them at home is published, neither in boiling water nor under pressure, and no time can be borrowed from a food without them. The dish itself is fine: the milk just joins it later.", "Leave it out, and stir it in when you heat the food for the table.", a2946, a2947, a2949},
    {"egg-in-jar", "Eggs stay out of the jar", "error", "rejects", "2026.11.2", "\"{found}\" does not belong in the jar: the tested recipe for {food} has {required}.", "", "Eggs are low in acid, and a whole egg is so dense that vinegar takes long to reach its middle. A person fell ill with botulism from home-pickled eggs that had stood at room temperature. No process for the shelf is published, neither for plain nor for pickled eggs, and beaten eggs thicken a sauce besides. Pickled eggs are a food for the refrigerator, out of it for two hours at most.", "Leave them out, and add boiled eggs when you serve the food; keep pickled eggs in the refrigerator.", a2950, a2947, a2952},
    {"fact-missing", "The plan says everything that decides", "error", "incomplete", "2026.11.1", "", "The plan does not say {reason}.", "To find the right line in a table one needs the food, the pack, the jar, the method and the altitude, and the gauge for a pressure canner; to compare the plan with it, the time and the pressure or temperature. Some foods need a little more, such as the acid for tomatoes. This check never fills a gap with what is usual, because the usual value may not be yours: 15 minutes for salsa are right at sea level and too short in a mountain town. Where every possible answer would pass, the plan is accepted with a note.", "Add a line for it, with what is true in your kitchen. {instead}", a2953, a2954, a2956},
    {"fat-in-jar", "Fat and oil stay within the tested recipe", "error", "rejects", "2026.11.2", "\"{found}\" is more fat than the tested recipe for {food} allows: {required}.", "", "Fat coats germs and shields them from heat and from acid, and it can creep under the lid and keep the jar from sealing. Under a layer of oil there is also no air, which is what botulism spores like. A few pickles were tested with a measured amount of oil: marinated peppers, marinated mushrooms and three-bean salad. There that much is part of the recipe, and less of it is fine. Nowhere else does oil, butter or lard go in.", "Allowed in the jar: {required}. Stir oil or butter in when you serve the food.", a2957, a2958, a2961},
    {"food-ambiguous", "The name of the food means one table", "error", "incomplete", "2026.11.1", "\"{found}\" can mean several foods, and each has a table of its own: {choices}.", "", "Everyday names cover foods that heat very differently, or that hold very different acid. \"Beans\" may be green pods, which need 20 minutes in pints, or dried seeds, which need 75. \"Salsa\" may mean a dozen tested recipes, each with its own balance of tomatoes, vegetables and acid. Taking the longest time would not settle it, because the preparation differs too. So the plan has to say which one is on the table.", "Write as `food` the one you have, by a name that fits it alone.", a2962, a2963, a2966},
    {"form-not-tested", "The food is cut or prepared in a form that its table covers", "error", "rejects", "2026.11.1", "For {food} the table covers these forms: {choices}. The plan says {found}.", "", "Size and shape decide how fast the heat reaches the middle of each piece, and how well the liquid can move between the pieces. Slices that lie flat on each other, or pieces larger than the tested ones, heat later than the table counts on. A time therefore holds for the forms it was tested with. Another form may look like a small change in the kitchen and still be a different process for the jar.", "Prepare the food in one of these forms: {choices}.", a2967, a2968, a2970},
    {"gauge-cannot-hold", "The pressure is one that a weighted gauge can hold", "error", "rejects", "2026.11.1", "The plan has {found} on a weighted gauge. A weight holds {choices}, and nothing in between.", "", "A weighted gauge is a weight that the steam lifts at a fixed pressure. It is made for 5, 10 and 15 psi and has no steps in between. Numbers such as 11 or 13 psi come from the dial column of the table. Taking a number from one column and the gauge from the other can end below what the table asks for: in a kitchen above 1,000 ft, low-acid food needs the 15 psi weight. On a canner with both gauges the weight decides.", "Use the weight that the table gives for your altitude, and write its pressure in the plan.", a2971, a2972, a2974},
    {"gauge-error-too-large", "The dial is close enough to be corrected for", "error", "rejects", "2026.11.1", "The plan gives the dial an error of {found}. It can be corrected for only when it is {required}.", "", "A dial that reads high is the dangerous kind: it shows more pressure than the canner has. Even 1 psi costs more than a tenth of the effect of a 20-minute process, and 2 psi about three tenths. When the error is small and known, the canner is run that much higher. Beyond 2 psi, Extension offices say to replace the gauge; some already do so at 1 psi. Have a dial tested every year, before its first use, and after it was dropped or knocked. A weighted gauge needs no such test.", "Replace the dial, or use a canner with a weighted gauge, before you can.", a2975, a2976, a2978},
    {"gauge-error-unused", "With a weighted gauge the error of a dial is left aside", "note", "none", "2026.11.1", "The plan gives a dial error of {found} and a weighted gauge. The weight sets the pressure, so the error is not used.", "", "A weight cannot read wrong: it lifts at its pressure, as long as it is not chipped and its vent is clean. Many canners have a dial beside it, and the two may not agree by a pound or more. The weight decides then, and the dial only shows how the canner warms up and cools down. Its error matters again on the day you can by the dial alone.", "Go by the weight, and have the dial tested before you can by the dial alone.", a2979, a2980, a2982},
    {"headspace-too-large", "The headspace is not much larger than the published one", "warning", "none", "2026.11.1", "The plan leaves {found} of headspace; the table asks for {required}.", "", "The process drives air out of the jar, and that is what pulls the lid down afterwards. With much more room than the table asks for there is more air than the process may drive out: the seal can turn out weak or fail, and the food at the top turns dark. The heat still reaches the food, so this does not count against the plan. It costs jars and looks, and it is easy to put right.", "Fill the jar up to {required} below the rim.", a2983, a2984, a2987},
    {"headspace-too-small", "The headspace is at least the published one", "error", "rejects", "2026.11.1", "The plan leaves {found} of headspace; the table asks for {required}.", "", "Headspace is the room between the food with its liquid and the rim of the jar. In the canner the food swells and the liquid bubbles. With too little room it is pushed out under the lid, and what sticks to the rim can keep the jar from sealing. Starchy food such as corn, peas and lima beans swells most. The process was also tested with that fill, not with a fuller jar. Most low-acid food takes 1 inch, raw poultry 1 1/4, fruit, tomatoes, salsa and pickles mostly 1/2, jams 1/4. A millimeter less counts as reading precision.", "Leave {required} between the food and the rim.", a2983, a2988, a2991},
    {"heat-up-too-short", "The canner is heated as long as the process asks before venting", "error", "rejects", "2026.11.1", "The plan heats the canner for {found} before venting; the process for {food} asks for {required}.", "", "Usually the time until steam flows does not matter, because the process was tested without counting it. Fish in quart jars is different. It is packed raw, cold and solid, and the slow warming with the vent open is part of its process: 20 minutes on high heat, then 10 minutes of venting once steam flows steadily. Together they never take less than 30 minutes. A canner that is hurried starts the clock with jars that are still too cold in the middle.", "Heat the canner with the vent open for at least {required} before the venting time begins.", a2992, a2993, a2995},
    {"held-cold", "Food is canned fresh and not as leftovers", "warning", "none", "2026.11.1", "The plan keeps the cooked food for {found} before canning. Extension advises against canning leftovers.", "", "Food that was cooled within two hours and kept at 40 F or colder for up to three days is within the published limits for keeping, and it is brought back to a boil before filling. Canning it is another matter: University of Missouri Extension says not to can leftovers, and no Extension page that allows it was found. Every step of cooling and waiting lets in something the process was not tested with. A dish that was thickened, or made without a tested recipe, has no process however well it was kept.", "Can the food on the day it is cooked, or freeze it instead.", a2996, a2997, a2999},
    {"held-too-long", "Cooked food is not kept for days before canning", "error", "rejects", "2026.11.1", "The plan keeps the cooked food for {found}; before canning it may be kept for {required}.", "", "Cold slows bacteria down and does not stop them. The published advice is to use cooked food from the refrigerator within 3 to 4 days; this check takes the shorter one, because a jar is meant to stand for months. A process is tested on fresh food with few germs in it, and food that is close to spoiling gives it more to do than it was tested for. No time in the tables makes old food young again.", "Can a fresh batch, and freeze the cooked food you want to keep longer while it is still good.", a3000, a2997, a3002},
    {"held-too-warm", "Cooked food does not stand warm for long", "error", "rejects", "2026.11.1", "The plan keeps the cooked food for {found}; it may stand for {required}.", "", "Between 40 and 140 F bacteria grow fast, and some of them leave poisons in the food that later heat does not take away. So canning does not mend food that has stood too long. The limit is two hours in all, counting every stretch between cooking and filling, and one hour at more than 90 F. Food that has to wait is kept at 140 F or hotter, or cooled fast in shallow pans and kept at 40 F or colder.", "If the food has already stood that long, discard it; otherwise can it or chill it within the limit.", a3000, a3003, a3005},
    {"holds-either-way", "What is left open makes no difference", "note", "none", "2026.11.1", "The plan does not say the {field}. On that point the table is met for {reason} alike.", "", "A gap in a plan matters only where the answer would change the result. At 4,600 ft a dial needs 13 psi and a weighted gauge 15 psi; a plan with 15 psi has enough on both. The tables for raw and hot pack often print the same minutes, and then the time is enough for either. In such a case nothing is asked for. The preparation still follows the pack you use.", "Add the {field} to the plan when you know it.", a3, a3006, a3008},
    {"ingredient-unknown", "Every line of the ingredients is a known food", "error", "incomplete", "2026.11.1", "The line \"{found}\" is not understood. {instead}", "", "Everything in the jar counts. A spoon of flour makes the liquid thick, so that the heat comes later to the middle; a vegetable takes acid away from a salsa or has no process of its own. A line that is not understood could be any of these, or just a word spelled another way. Passing over it would mean to judge a different jar from the one you fill, so the plan stays incomplete until every line is clear.", "Write the amount, the food by its plain name, and behind a comma how it is cut, as in `2 cups onions, chopped`. Leave out what is not in the jar.", a3009, a3010, a3014},
    {"jar-in-between", "A jar that is not listed takes the time of the next larger one", "note", "none", "2026.11.1", "The table does not list {found} jars, so the {required} holds for them. {reason}", "", "Tables list a few sizes, mostly pint and quart. A jar that is smaller than a listed one, or lies between two, takes the time of the next larger size: half-pints and 12 oz jars the pint time, 24 oz jars the quart time. The food in it gets a little more than it needs, and never less. A metric jar goes by what it really holds, and 500 mL is a little more than a US pint.", "Go by the {required}.", a3015, a3016, a3018},
    {"jar-sterilization", "Jars are boiled empty before filling where the process is under 10 minutes", "error", "rejects", "2026.11.2", "The process for {food} is shorter than {instead}, and the plan says \"{found}\". Such a process needs jars that were boiled empty before filling: {required}.", "The process for {food} is shorter than {instead}, and the plan does not say that the jars were boiled empty before filling: {required}.", "A process of ten minutes or more also takes care of the jar itself. A shorter one does not, and mold or yeast left in the jar can spoil the food. So the empty jars are boiled first, covered by an inch of water: 10 minutes up to 1,000 ft and a minute more for each further 1,000 ft. Five-minute processes are those of jams, apple juice and some pickles up to 1,000 ft; higher up their times reach ten minutes, and clean hot jars are enough.", "Boil the empty jars for the time named and add `jars sterilized` to `prepared`; or leave the filled jars in the canner for ten minutes instead.", a3019, a3020, a3023},
    {"jar-too-large", "The jar is no larger than the largest one in the table", "error", "rejects", "2026.11.1", "For {food} the table lists {required}; the plan says {found}. {reason}", "", "The middle of a bigger jar heats later, and how much later depends on the food. No formula turns the time for one jar into the time for a bigger one; somebody has to measure it. So a jar that is larger than every listed one has no tested process, however long it stays in the canner: salsa, for one, has no process in quarts. The other way round is fine: a jar that is smaller than a listed one takes the time of the next larger size in the table.", "Use {required}, and the time that the table gives for them.", a3024, a3025, a3029},
    {"low-acid-needs-pressure", "Low-acid food is canned under pressure", "error", "rejects", "2026.11.1", "The plan says {found} for {food}. This counts as low-acid food, and its published processes all use a pressure canner. {reason}", "", "Meat, poultry, fish, fresh vegetables and mixtures with them count as low-acid food: their pH is above 4.6. Inside a closed jar, without air, spores of the botulism germ can wake up in such food and make a poison that nobody sees, smells or tastes. Boiling water never gets hotter than about 212 F, and at 4,600 ft it boils at about 204 F. The spores live through that, so a longer boil is no way around it. Steam under pressure reaches 240 F and more, and that heat is what the published times count on.", "Can it in a pressure canner by the table for {food}, or freeze it.", a34, a3030, a3032},
    {"low-acid-puree", "Food is not mashed or pureed unless its table says so", "error", "rejects", "2026.11.1", "The plan says \"{found}\"; no published process for {food} has that. {reason}", "", "In a jar of pieces the liquid between them moves and carries the heat inward. A thick puree hardly moves, and the middle of the jar stays cool for a long time. How thick it is changes from batch to batch, so for low-acid food no single time fits. USDA took back its old directions for mashed pumpkin and squash, and pumpkin butter has no process either, not even with acid added. Cubes in liquid have been tested. Acid fruit is another matter: applesauce and other fruit purees have tables of their own, with their own times.", "Can the food in a form that its table covers and mash it after opening, or freeze the puree. For acid fruit use the table of its sauce or puree.", a3033, a3034, a3037},
    {"low-acid-share-too-high", "Low-acid vegetables, herbs and meat stay within the tested recipe", "error", "rejects", "2026.11.2", "\"{found}\" is more low-acid food than the tested recipe for {food} allows: {required}.", "", "A tested recipe balances low-acid food, such as onions, peppers, corn, garlic, meat and fresh herbs, against tomatoes, fruit, vinegar or lemon juice. More of the one without more of the other raises the pH, and above 4.6 botulism spores can grow. It can make the mixture thicker too, so that heat reaches the middle later. Fewer onions or peppers are fine, as long as nothing else fills the gap. One kind of pepper may stand for another, and one kind of onion for another, with the total unchanged.", "Allowed in the jar: {required}. Stir more in when you open it.", a3038, a3039, a3043},
    {"method-not-accepted", "The method is one that published processes use", "error", "rejects", "2026.11.1", "The method \"{found}\" is not accepted. {reason}", "", "A published time belongs to one way of heating: it was worked out by measuring the heat inside filled jars in that kind of canner. Another appliance heats the jars in its own way, whatever its display shows, so no time in the tables fits it. Some old ways give the closed jar no heat at all. The lid may still pull down, but a seal only shows that the lid is tight. It does not show that the food in the jar got hot enough for long enough.", "Use a method with published processes. {instead}", a3044, a3045, a3048},
    {"method-not-for-food", "A method is used only for the foods whose publication names it", "error", "rejects", "2026.11.2", "The publication for {food} does not name {method}.", "", "Low-temperature pasteurization holds jars at 180 to 185 F instead of boiling them. It was tested for a few cucumber pickles whose recipes name it, such as bread-and-butter pickles and fresh-pack dills; their vinegar or their ferment does much of the work. Sauerkraut, beets, beans, salsa, fruit and pickles with reduced salt are not among them. For those the milder heat was never shown to be enough, however sour the food tastes.", "Use a method that is published for this food. {instead}", a38, a3049, a3051},
    {"no-tested-process", "A published process covers the food", "error", "untested", "2026.11.1", "{reason} Without a tested process nobody can say how long is long enough.", "", "A process time comes from measuring how heat reaches the slowest spot in jars of that very food. How thick it is, how much acid it holds and how the pieces lie together all change it, so the time for one food cannot be lent to another, and a longer time is still a guess. A mixture needs a process of its own, such as a tested recipe for salsa or the rules for soup. Many good foods have no canning process at all. \"Untested\" does not mean that the food is bad; it means that the freezer or the refrigerator is the place for it.", "Keep to a published process, or freeze or refrigerate the food. {instead}", a3052, a3053, a3057},
    {"not-in-process", "Nothing is done to the food that its process does not have", "error", "rejects", "2026.11.1", "The plan says \"{found}\". {reason}", "", "A published process covers one food prepared in one way. Smoke dries the flesh and changes how heat goes through it, so smoked fish has a table of its own and smoked meat has none. Gathered mushrooms differ too much from each other for one tested time. White-fleshed peaches can be too low in acid for the times of yellow ones. What a table does not name was not tested with its minutes.", "Leave that out, or use the table of the food as you have it; if there is none, freeze it.", a3058, a3059, a3062},
    {"not-in-recipe", "Nothing goes in that the tested recipe does not have and no rule allows", "error", "untested", "2026.11.2", "No test is known of {food} with \"{found}\". {reason}", "", "A process time belongs to one mixture. Dried spices may be changed, more vinegar or bottled lemon juice is allowed, and outside of jams and ferments so are salt and sugar. Other things, such as fruit, pectin or a firming salt, may change how thick the mixture is, how acid it is, or how the pieces take up the vinegar. It may do no harm; nobody has measured it, and so the time cannot be lent to it. \"Untested\" does not mean that it tastes bad: it is a dish for the refrigerator.", "Leave it out and add it when you open the jar, or look for a tested recipe that has it.", a3063, a3064, a3067},
    {"not-reheated", "Chilled food is boiling hot again before it is filled", "error", "rejects", "2026.11.1", "Before it goes into the jars, chilled food has to be {required}; the plan says \"{found}\". {reason}", "", "The published hot-pack times start from jars that are filled boiling hot. Cold food needs far longer until its middle is hot, and the table knows nothing of that wait. So stock that was cooled to lift off the fat, or soup from the refrigerator, is brought back to a full boil, not just warmed, and filled at once. A cold jar in a hot canner can also crack.", "Bring the food to a boil just before filling, and list `reheated to a boil` under `prepared`.", a3068, a3069, a3072},
    {"numbers-by-extension", "Numbers that the USDA guide does not print say who prints them", "note", "none", "2026.11.1", "{reason}", "", "Most numbers here are those of the USDA guide. For a few foods the guide has no table and a university Extension service prints one, or a part of a row could be read in one place only. Such numbers are used, and it is said that they are not the guide's own.", "Ask your local Extension office if you want the guide's own word.", a23, a3073, a3075},
    {"other-position", "Another published position on this mixture is named", "note", "none", "2026.11.1", "{reason} Some Extension pages go by the longest time of any part, and by the jar limits of each; the table used here does not ask for it.", "", "Published advice on mixtures differs. The USDA soup table has one time for every soup without seafood, because half of the jar is thin liquid. Some Extension pages say instead to look up each part, to take the longest time among them, and to keep to the smallest jar limit. The verdict goes by the table that was tested for soup; this note tells you where the other advice is stricter.", "Nothing has to change; a longer time up to the one named here does no harm but to the texture.", a3076, a3077, a3079},
    {"over-required", "More than the table asks for is accepted", "note", "none", "2026.11.1", "The plan has {found}; the table asks for {required}. More than that is accepted.", "", "The numbers in the tables are the least that was tested to be enough. A longer time, a higher pressure up to 15 psi, or water above 185 F in low-temperature pasteurization makes the process no weaker; it costs texture and color. It earns nothing back either. A longer time does not make up for a pressure that is too low, and a higher pressure never shortens the time, unless the table itself prints a shorter time for that pressure, as it does for tomatoes.", "Keep it if you like, but never trade the time against the pressure or the temperature.", a3080, a3081, a3085},
    {"pack-not-tested", "The pack is one that the table has for this food", "error", "rejects", "2026.11.1", "The plan has a {found} pack; the table for {food} gives a {required} pack only.", "", "In a hot pack the food is heated in water, broth or sauce and filled while hot; in a raw pack it goes into the jar uncooked. The two start at different temperatures and fill the jar differently, because cooking shrinks food, softens it and drives air out. A time that was tested for one pack says nothing about the other. For some foods only one pack was ever tested, and for the other nobody can say how long the middle of the jar would need.", "Use the {required} pack, and prepare the food as its process says.", a2967, a3086, a3089},
    {"pasta-or-grain-in-jar", "Pasta, rice and other grains stay out of the jar", "error", "rejects", "2026.11.2", "\"{found}\" does not belong in the jar: the tested recipe for {food} has {required}.", "", "Pasta, rice, barley and other grains are starchy and low in acid. In the jar they swell, take up the liquid that should carry the heat, and set to a dense mass. Heat passes through it slowly, so the middle stays cool for longer than the tested time allows, and botulism spores can live on there. They come out of the jar soft in any case. No home process is published for a jar with them.", "Leave it out, cook it fresh, and combine it with the food when you open the jar.", a3090, a2947, a3092},
    {"plan-unreadable", "The text can be read as a plan", "error", "incomplete", "2026.11.1", "{reason}", "", "A plan is a list of keys with values, and every amount has its unit. A text is not guessed at: \"time 75\" may mean minutes or a slip of the pen, a key that is spelled wrong would be left out of the judgment, and a key that stands twice says two things. Each of these could turn a plan that fails into one that passes. So the whole text is read to its end, everything that is not clear is named at once with its place, and the plan is judged when all of it is put right.", "{instead}", a3093, a3094, a3097},
    {"pressure-too-high", "The pressure stays within what home canners are run at", "error", "rejects", "2026.11.1", "The plan has {found}; the published limit for a home pressure canner is {required}.", "", "No table asks for more than 15 psi, and the published guidance is not to go above it, not even with a newer canner that could. More pressure does not buy a shorter time either: the times were tested near 240 F, and a time for one pressure cannot be worked out for another. What is left is strain on the canner and softer food. A high kitchen does not need more: the 15 psi weight holds for low-acid food up to 10,000 ft.", "Run the canner at the pressure that the table gives for your gauge and altitude.", a3098, a3099, a3101},
    {"pressure-too-low", "The pressure reaches the published one for the gauge and the altitude", "error", "rejects", "2026.11.1", "The plan has {found}; at {altitude} the table asks for at least {required}. {reason}", "", "In a canner the pressure makes the heat. High in the mountains the air presses less, so the same reading on the gauge means cooler steam, and the tables ask for more pressure the higher the kitchen lies. With too little the whole load stays too cool, and botulism spores in low-acid food can live on. A weight has no steps between 10 and 15 psi. A dial that reads high shows more than the canner has, so its error is added. Tomatoes and fruit have lower pressures of their own; where a table offers several, each belongs to its own time.", "For the whole time, hold at least {required}.", a3102, a3103, a3106},
    {"recipe-not-shown", "A process that belongs to a recipe comes with that recipe", "error", "incomplete", "2026.11.1", "", "The plan does not show that {food} is made as published. {reason}.", "Some processes belong to a printed recipe, such as salsa, pickles, jam or chile con carne: their time was tested with those amounts, and more onion or less vinegar makes another food of it. So the ingredients are compared with the recipe line by line, at the scale of its main food. Others, such as soup, leave the choice to the cook inside fixed rules: only ingredients with canning directions of their own, half of the jar liquid, nothing that thickens. The name of the dish alone shows neither, and a family recipe under the same name has no tested time.", "Add the key `ingredients` with a line for each, such as `- 5 lb tomatoes, chopped`, so that they can be compared; or, if you follow the published recipe and its rules exactly, write `as-published: true`. If you do not, freeze the dish.", a3107, a3108, a3112},
    {"recipe-part-too-large", "What thickens a tested recipe or makes it denser stays within it", "error", "rejects", "2026.11.2", "\"{found}\" is more than the tested recipe for {food} allows: {required}.", "", "Dried fruit, ketchup, molasses, pectin and, in a jam with a printed range, sugar make a mixture thicker. Heat then takes longer to reach the middle of the jar than it did in the test, and the printed time may be too short. Too much pectin or sugar also spoils the set. Where a recipe prints a range, both of its ends count. For a larger batch make the recipe again, because a doubled jam may not set.", "Allowed here: {required}.", a3113, a3114, a3117},
    {"recipe-part-too-small", "What a tested recipe needs to be acid or thin enough is there in full", "error", "rejects", "2026.11.2", "The plan has {found}; the tested recipe for {food} has {required}.", "", "Tomatoes, fruit and their juices bring acid into a mixture, thin liquids carry the heat inward, and pectin makes the set. With less of one of them the mixture may be less acid, thicker or softer than the one that was tested, and the printed time no longer belongs to it. What is missing cannot be made up for with something else, nor with a longer time. A smaller batch is no trouble: cut every part of the recipe alike.", "Use {required}.", a3118, a3119, a3122},
    {"salt-reduced-in-ferment", "The salt of a ferment is not cut", "error", "rejects", "2026.11.2", "The plan has {found}; the tested ferment has {required}.", "", "In sauerkraut and fermented pickles salt decides which bacteria grow. With enough of it, those that make acid win; with less, others may, and the acid that the canning process counts on never forms. So this salt is part of the process and not a seasoning. Salt substitutes and reduced-sodium salts do not do the same, and the salt of a brine poured on top does not make up for salt missing in the cabbage. In pickles made with vinegar, salt is only taste.", "Use {required}, and can the ferment only when it has ended.", a3123, a3124, a3127},
    {"solids-over-half", "The jar holds no more solids than the process allows", "error", "rejects", "2026.11.1", "The plan fills {found} of the jar with solids; the process for {food} allows {required}.", "", "The soup process leaves the choice of vegetables, beans and meat to the cook, and it can do so because half of every jar is liquid. Liquid moves and carries the heat between the pieces. With more solids the jar gets denser and the middle heats later than the tested time counts on. That is also why the solids go in loosely and nothing that thickens goes in. A thicker soup is made after opening.", "Fill solids into {required}, and top up with the hot liquid.", a1136, a3128, a3130},
    {"steam-time-too-long", "An atmospheric steam canner runs for at most 45 minutes", "error", "rejects", "2026.11.2", "A steam canner runs for {required}, altitude included; this takes {found}.", "", "A steam canner holds only a few quarts of water, and it may not be opened to add more. In a longer run it can boil dry; then the steam fails, the jars cool, and nobody sees it. So it takes only food whose whole time, with the minutes that the altitude adds, fits into 45. Figs in pints just fit up to 1,000 ft and no longer above. Tomatoes packed raw without liquid take 85 minutes and more anywhere.", "Use a boiling-water canner for the same time, kept filled over the jars, or the pressure process of the table if it has one.", a3131, a3132, a3134},
    {"step-left-out", "No step of the published preparation is left out", "error", "rejects", "2026.11.1", "The plan says \"{found}\"; the process for {food} has \"{required}\". {reason}", "The plan does not say \"{required}\", and the process for {food} depends on it. {reason}", "A published process is more than minutes and pressure. Peeling takes off soil and the germs in it, boiling drives out air and gives the jar a hot start, fresh water keeps starch out, and liquid over the food carries the heat. A ferment that has ended has made its acid. The time was tested with these steps. Leave one out and the jar in the canner is not the jar in the test: it may start cooler, be packed denser, hold less acid, or more germs than the time was made for.", "Do this step as the process says, and list `{required}` under `prepared`.", a3135, a3136, a3140},
    {"step-reminder", "Steps that the plan leaves unsaid are named", "note", "none", "2026.11.1", "{reason}", "", "A plan need not repeat every step of the directions. Peeling, boiling, headspace and venting belong to the process all the same, because the time was tested with them. So whatever the plan does not mention is named here once, with its number, to be ticked off in the kitchen. A reminder changes nothing in the verdict. If the plan says that such a step is done differently, that is no reminder any more but a reason to reject it.", "Do this as it stands; it is part of the published process.", a3141, a3142, a3144},
    {"sugar-reduced-in-jam", "The sugar of a jam or jelly is not cut", "error", "rejects", "2026.11.2", "The plan has {found}; the tested recipe for {food} has {required}.", "", "In jam and jelly, sugar holds the water that mold and yeast need, and together with fruit acid and pectin it makes the set. The short process counts on that. With less sugar, or with a sweetener in its place, it is another product: it may stay runny, and it may mold. Recipes with less sugar exist; they use a pectin made for it, and its directions are then the recipe. In canned fruit and most pickles sugar is only taste and may be left out.", "Use {required}, or follow the directions of a pectin made for less sugar.", a3145, a3146, a3149},
    {"table-not-verified", "The numbers of the table were confirmed in a publication", "error", "untested", "2026.11.1", "The only table found for {food} with this pack and jar is not used. {reason}", "", "Every number in this edition is meant to be read again in a current publication before anybody cans by it. For a few tables that did not work out: only an old copy was at hand, or another publication speaks against it, and then the stricter one counts. Such a table is shown, so that you can see what it says, but a plan that only it covers is not accepted. A wrong digit in a process time does not show on the jar.", "Ask your local Extension office for the current table, or choose a jar or food whose table is verified.", a3150, a3151, a3153},
    {"temperature-too-low", "Low-temperature pasteurization holds the water at 180 F or more", "error", "rejects", "2026.11.2", "The plan holds the water at {found}; low-temperature pasteurization needs {required}.", "", "This gentle treatment keeps pickles crisp, and it has no heat to spare. Below 180 F, if only for a moment, the germs that spoil pickles can live on. Above 185 F nothing is lost but crispness. So a thermometer stands in the water, which covers the jars by an inch, and the full 30 minutes count only while it shows at least 180 F. Boiling water does the same job without a thermometer.", "Hold the water at {required} for the whole time, by a thermometer, or use the boiling-water process.", a38, a3154, a3156},
    {"thickener-in-jar", "No flour, starch or other thickener goes into the jar unless the tested recipe has it", "error", "rejects", "2026.11.1", "The plan says \"{found}\". {reason}", "", "Heat gets to the middle of a jar because thin liquid moves and carries it. Flour, starch and batter make the liquid thick, so it hardly moves, and the middle stays cooler for longer than the tested time allows; botulism spores can live on there. How thick a batch turns out differs from cook to cook. Only a few tested recipes have a thickener: fruit pie fillings take cook-type modified corn starch, corn relish a little flour, green tomato relish a little cornstarch. There the kind and the amount were tested too, and another starch behaves differently.", "Can it thin, and thicken it when the jar is opened and heated for the table. A tested recipe that has a thickener takes its own kind, never more than printed.", a3157, a3158, a3162},
    {"time-too-short", "The time is at least the published one for the food, the pack and the jar", "error", "rejects", "2026.11.1", "The plan has {found}; for {food} in {jar} jars the table asks for at least {required}. {reason}", "", "The published time is what the slowest spot in the jar needs to get hot and stay hot long enough. It was tested for that food, that pack and that size of jar. With less, germs in the middle can live on, in low-acid food botulism spores, and the jar will look and seal like any other. Minutes count from the moment the canner reaches its pressure or the water its full boil, and start again if it drops. In boiling water the time grows with the altitude, because water boils cooler up there; under pressure the altitude changes the pressure and never the time.", "Run the canner for at least {required}, counted from its pressure, its full boil or, in low-temperature pasteurization, from 180 F. {reason}", a3163, a3164, a3168},
    {"vent-too-short", "The canner is vented long enough", "error", "rejects", "2026.11.1", "The plan vents the canner for {found}; the published directions ask for {required}.", "", "Before the vent is closed, the canner is full of air. Air mixed with steam heats the jars less than steam alone at the same pressure: the gauge shows the right number and the food stays cooler. A full, steady jet of steam drives the air out. This belongs to every load in every pressure canner, and its minutes do not count toward the process time. One canner maker prints 7 minutes for its own canner; the USDA directions say 10, and 10 is what this check goes by.", "Let a steady jet of steam flow for {required}, then close the vent.", a3169, a3170, a3172},
    {"vinegar-homemade", "Vinegar is bought, with its strength on the label", "error", "rejects", "2026.11.2", "\"{found}\" has no known strength, and the process for {food} rests on vinegar of 5 %.", "", "Homemade vinegar turns out differently from batch to batch, and its strength is not known. Pickles, salsas and tomatoes rest on enough acid, evenly, in every part of every jar; too little lets botulism spores grow. A sour taste says little about strength. Vinegar from a shop carries its strength on the label, and the tested recipes count on 5 %.", "Use bought vinegar labeled 5 % or more, in the full amount, and keep the homemade one for the table.", a3123, a3173, a3176},
    {"vinegar-too-weak", "Vinegar has at least 5 % acid", "error", "rejects", "2026.11.2", "The plan has {found}; the tested amounts are amounts of vinegar with {required} acid.", "", "Recipes count on vinegar of 5 % acid, also labeled 50 grain. Weaker vinegar, such as some rice and wine vinegars, brings less acid in the same cup, and botulism spores may then grow in the jar. More of the weak vinegar is no way out: it brings more water too, and nobody has tested that. Where 4 % vinegar went in by mistake: less than 24 hours after canning move the jars to the refrigerator; later than that throw the food away.", "Use vinegar labeled 5 % or more, in the full amount.", a3123, a3177, a3180},
    {"water-too-little", "The canner holds as much water as the process asks for", "error", "rejects", "2026.11.1", "The plan puts {found} of water in the canner; the process for {food} asks for {required}.", "", "Most loads start with 2 to 3 inches of hot water in the canner. A few processes name an amount of their own, because they run so long that less water could boil away, and because the time to heat that much water is part of the test. For smoked fish it is 4 quarts of cool tap water, not less and not heated beforehand. A canner that runs dry loses its steam, and with it the heat around the jars.", "Put {required} of water in the canner before the jars go in.", a3181, a3182, a3184},
    {"water-too-much", "No more water goes into the jar than was tested", "error", "rejects", "2026.11.2", "\"{found}\" is more water or thin liquid than the tested recipe for {food} allows: {required}.", "", "Water thins the vinegar or lemon juice. The food in the jar soaks it up and ends with less acid than in the test, and where the pH rises above 4.6 botulism spores can grow. Each recipe has its own measure: some pickles are tested with as much water as vinegar, bread-and-butter pickles with none. So the share of one recipe says nothing about another. Water for a soak that is poured off does not stay in the jar and does not belong in the list.", "Use no more water than the tested recipe: {required}. A pickle that tastes too sharp takes more sugar, not more water.", a3185, a3186, a3189},
    {"word-unknown", "Words from a fixed list are spelled as in the list", "error", "incomplete", "2026.11.1", "\"{found}\" is no word that `{field}` knows.", "", "For the jar, the form and the preparation a plan uses words from a fixed list, so that each of them means exactly one thing in the tables. A word outside the list cannot be compared. It is not passed over either: it may be the very thing that decides, such as \"unpeeled\" or a jar that is too large. Mostly it is a slip of the pen and quickly mended.", "Use a word from the list. {instead}", a23, a3190, a3192},
    {"word-without-place", "Every word under `prepared` has its place in the process", "error", "incomplete", "2026.11.1", "The plan says \"{found}\". {reason}", "", "A process was tested with its own steps and no others. A word that belongs to none of them may be harmless, or it may say that the food in the jar is not the food in the test: boiled before a raw pack, pressed where it should lie loosely, or with the skin left on. These rules cannot tell which, so they do not pass over it.", "Take the word out if it does not describe what you do; if it does, prepare the food as the process says.", a2962, a3193, a3196}};

constexpr edition data = {"jarproof tested processes", "2026.11.2", "The USDA Complete Guide to Home Canning (2015 revision), parts 2 to 7, with tables of the National Center for Home Food Preservation and of university Extension where a food names them.", "A check reads the plan, not the kitchen: it cannot see the food, the gauge, the seal or what was really done. Follow the current USDA Complete Guide to Home Canning, ask your local Extension office, and keep to local rules.", "A metric jar goes by its true volume: 250 mL, 500 mL and 1 L hold a little more than a half-pint (237 mL), a pint (473 mL) and a quart (946 mL), and no published table gives them those times.", 10000, a0, a17, a28, a78, a79, a82, a83, a84, a1314, a2538, a2745, a2898, a3197};

}  // namespace

const edition& builtin_edition() noexcept { return data; }

}  // namespace jarproof
