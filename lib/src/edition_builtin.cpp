// Generated from the rule folder, edition 2026.11.1, by `jarproof rules --embed rules`. Do not edit.
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
    {"extension-beans-answer", "Answer 859353, beans canned without soaking", "Ask Extension", "", "https://ask2.extension.org/kb/faq.php?id=859353"}};
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
constexpr band_set a10[] = {{"low-acid-dial", "Dial gauge, low-acid food", "dial", a2, a3},
    {"low-acid-weighted", "Weighted gauge, low-acid food", "weighted", a4, a3},
    {"extension-dial", "Dial gauge, Extension leaflet", "dial", a5, a1},
    {"boiling-water-4", "Boiling water, fruit and tomato tables", "", a6, a7},
    {"boiling-water-3", "Boiling water, jam, pickle and juice tables", "", a8, a9}};
constexpr sv a11[] = {"half pint",
    "half-pints",
    "1/2 pint",
    "8 oz jar"};
constexpr citation a12[] = {{"kstate-odd-jars", "", ""},
    {"usda-guide-1", "1", ""}};
constexpr sv a13[] = {"12-ounce",
    "12 oz jar"};
constexpr citation a14[] = {{"kstate-odd-jars", "", ""}};
constexpr sv a15[] = {"pints",
    "pt"};
constexpr citation a16[] = {{"usda-guide-1", "1", ""}};
constexpr sv a17[] = {"pint-and-a-half",
    "1 1/2 pint",
    "1 1/2 pints",
    "1.5 pint",
    "1½ pint"};
constexpr sv a18[] = {"quarts",
    "qt"};
constexpr sv a19[] = {"half gallon",
    "half-gallons",
    "1/2 gallon",
    "2 quart"};
constexpr citation a20[] = {{"psu-half-gallon", "", ""},
    {"iowa-half-gallon", "", ""}};
constexpr jar_size a21[] = {{"half-pint", "half-pint", 8, a11, "", a12},
    {"12-oz", "12 oz", 12, a13, "", a14},
    {"pint", "pint", 16, a15, "", a16},
    {"pint-and-half", "pint-and-a-half", 24, a17, "", a14},
    {"quart", "quart", 32, a18, "", a16},
    {"half-gallon", "half-gallon", 64, a19, "Half-gallon jars have a tested process for apple juice and grape juice only.", a20}};
constexpr sv a22[] = {"pressure canner",
    "pressure canning",
    "pressure canned",
    "pressure can",
    "stovetop pressure canner",
    "steam pressure canner"};
constexpr int a23[] = {5,
    10,
    15};
constexpr int a24[] = {34,
    35,
    69,
    70,
    103,
    105};
constexpr citation a25[] = {{"usda-guide-1", "1", ""},
    {"kstate-venting", "", ""},
    {"pnw-421", "", ""},
    {"nchfp-equipment", "", ""},
    {"nchfp-pop-quiz", "", ""},
    {"iowa-gauges", "", ""},
    {"missouri-gauges", "", ""},
    {"wyoming-pressure", "", ""}};
constexpr sv a26[] = {"boiling water",
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
constexpr citation a27[] = {{"usda-guide-1", "1", ""},
    {"nchfp-safety", "", ""}};
constexpr sv a28[] = {"steam canner",
    "steam canning",
    "atmospheric steam",
    "atmospheric steam canner",
    "atmospheric steam canning"};
constexpr citation a29[] = {{"nchfp-steam-canner", "", ""},
    {"wisconsin-steam-canner", "", ""},
    {"nchfp-equipment", "", ""}};
constexpr sv a30[] = {"low temperature",
    "low-temperature pasteurization",
    "low-temperature pasteurisation",
    "low-temp pasteurization",
    "low-temp pasteurisation",
    "low-temperature treatment",
    "pasteurization",
    "pasteurisation"};
constexpr citation a31[] = {{"nchfp-low-temperature", "", ""},
    {"usda-guide-6", "6", ""}};
constexpr sv a32[] = {"oven",
    "oven canning",
    "oven method",
    "oven processing",
    "oven heat",
    "conventional oven",
    "convection oven",
    "electric oven",
    "gas oven",
    "toaster oven"};
constexpr citation a33[] = {{"msu-unsafe-methods", "", ""},
    {"sdsu-how-not-to-can", "", ""},
    {"nchfp-equipment", "", ""}};
constexpr sv a34[] = {"open kettle",
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
constexpr citation a35[] = {{"msu-unsafe-methods", "", ""},
    {"kstate-mistakes", "", ""},
    {"nchfp-equipment", "", ""}};
constexpr sv a36[] = {"inversion",
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
constexpr citation a37[] = {{"missouri-inversion", "", ""},
    {"kstate-mistakes", "", ""},
    {"illinois-unsafe-methods", "", ""}};
constexpr sv a38[] = {"dishwasher",
    "dish washer",
    "dishwasher canning",
    "dishwasher method",
    "dishwasher cycle"};
constexpr citation a39[] = {{"msu-unsafe-methods", "", ""},
    {"nchfp-equipment", "", ""}};
constexpr sv a40[] = {"microwave",
    "microwave oven",
    "microwave canning",
    "microwave method",
    "microwaving"};
constexpr citation a41[] = {{"msu-unsafe-methods", "", ""},
    {"nchfp-equipment", "", ""},
    {"illinois-unsafe-methods", "", ""}};
constexpr sv a42[] = {"slow cooker",
    "slow-cooker canning",
    "slow-cooker method",
    "slow cooking"};
constexpr citation a43[] = {{"illinois-unsafe-methods", "", ""}};
constexpr sv a44[] = {"sun",
    "sun canning",
    "sun method",
    "sunlight",
    "solar",
    "solar canning",
    "solar cooker",
    "solar oven"};
constexpr citation a45[] = {{"kstate-mistakes", "", ""},
    {"illinois-unsafe-methods", "", ""}};
constexpr sv a46[] = {"paraffin",
    "paraffin wax",
    "paraffin seal",
    "paraffin sealing",
    "wax",
    "wax seal",
    "wax sealing",
    "melted wax"};
constexpr sv a47[] = {"canning powder",
    "canning powders",
    "preserving powder",
    "aspirin",
    "aspirin canning",
    "aspirin method",
    "canning tablets",
    "preservative tablets",
    "preserving tablets"};
constexpr citation a48[] = {{"nchfp-equipment", "", ""},
    {"sdsu-how-not-to-can", "", ""},
    {"nchfp-vegetable-questions", "", ""},
    {"missouri-aspirin", "", ""}};
constexpr sv a49[] = {"dry canning",
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
constexpr citation a50[] = {{"nchfp-dry-canning", "", ""},
    {"psu-dry-canning", "", ""},
    {"missouri-dry-canning", "", ""}};
constexpr sv a51[] = {"electric pressure cooker",
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
constexpr citation a52[] = {{"nchfp-multi-cooker", "", ""},
    {"wisconsin-multi-cooker", "", ""}};
constexpr sv a53[] = {"pressure cooker",
    "pressure cooker canning",
    "pressure cooking",
    "small pressure cooker",
    "stovetop pressure cooker",
    "pressure saucepan",
    "pressure saucepot",
    "pressure pan",
    "pressure pot"};
constexpr citation a54[] = {{"clemson-pressure-saucepan", "", ""},
    {"psu-equipment", "", ""}};
constexpr sv a55[] = {"vacuum sealing",
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
constexpr citation a56[] = {{"usu-vacuum", "", ""},
    {"ncsu-vacuum", "", ""}};
constexpr sv a57[] = {"air fryer",
    "air-fryer canning",
    "air frying",
    "airfryer"};
constexpr citation a58[] = {{"illinois-unsafe-methods", "", ""},
    {"psu-equipment", "", ""},
    {"nchfp-equipment", "", ""},
    {"wisconsin-steam-canner", "", ""}};
constexpr sv a59[] = {"sous vide",
    "sous-vide canning",
    "sous-vide cooker",
    "sous-vide bath",
    "sous-vide circulator",
    "immersion circulator"};
constexpr citation a60[] = {{"usda-guide-1", "1", ""},
    {"illinois-unsafe-methods", "", ""},
    {"psu-equipment", "", ""},
    {"nchfp-equipment", "", ""}};
constexpr sv a61[] = {"steam oven",
    "steam-oven canning",
    "combi oven",
    "combi steam oven",
    "combination steam oven"};
constexpr sv a62[] = {"pressure fryer",
    "pressure-fryer canning",
    "pressure frying"};
constexpr sv a63[] = {"smoker",
    "smoker canning",
    "smokehouse",
    "pellet smoker",
    "grill",
    "pellet grill",
    "barbecue"};
constexpr citation a64[] = {{"illinois-unsafe-methods", "", ""},
    {"psu-equipment", "", ""},
    {"nchfp-equipment", "", ""},
    {"wisconsin-steam-canner", "", ""},
    {"nchfp-smoked-fish", "", ""}};
constexpr sv a65[] = {"cold water",
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
constexpr citation a66[] = {{"nchfp-safety", "", ""},
    {"illinois-unsafe-methods", "", ""},
    {"psu-equipment", "", ""}};
constexpr sv a67[] = {"hot fill",
    "hot filling",
    "hot fill and hold",
    "hot fill hold",
    "hot tap water",
    "hot tap water bath",
    "tap water bath",
    "tap water"};
constexpr citation a68[] = {{"msu-unsafe-methods", "", ""},
    {"illinois-unsafe-methods", "", ""},
    {"psu-equipment", "", ""}};
constexpr sv a69[] = {"electric canner",
    "electric canning machine",
    "automatic canner",
    "automatic canning machine",
    "automatic electric canner",
    "electric automatic canner",
    "canning machine",
    "canning appliance"};
constexpr citation a70[] = {{"illinois-unsafe-methods", "", ""},
    {"psu-equipment", "", ""}};
constexpr method a71[] = {{"pressure", "pressure canner", a22, true, "", "", 10, 15, a23, a24, 4, 10, 2, 0, a25},
    {"boiling-water", "boiling-water canner", a26, true, "", "", 0, 0, {}, {}, 0, 0, 0, 0, a27},
    {"steam", "atmospheric steam canner", a28, true, "", "", 0, 0, {}, {}, 0, 0, 0, 45, a29},
    {"low-temperature", "low-temperature pasteurization", a30, true, "", "", 0, 0, {}, {}, 0, 0, 0, 0, a31},
    {"oven", "oven canning", a32, false, "Dry oven heat enters a jar slowly and the temperature of an oven varies, and there are no tested times for it. Jars can also shatter.", "Process low-acid food in a pressure canner by the food's table; a boiling-water canner is for acid food.", 0, 0, {}, {}, 0, 0, 0, 0, a33},
    {"open-kettle", "open-kettle canning", a34, false, "The jar gets no heat once the lid is on, so microbes in it live on. The lid may pull down all the same and look sealed, which adds the risk of botulism.", "Process the closed jars in a canner, by the method and for the full time of the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, a35},
    {"inversion", "turning jars over (inversion)", a36, false, "Turning hot jars over is open-kettle canning by another name. So short a contact with hot food does not kill mold or yeast, and many jars do not seal.", "Leave the jars upright and process them in a canner, by the method and for the full time of the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, a37},
    {"dishwasher", "dishwasher canning", a38, false, "A dishwasher never gets as hot as boiling water (212 F): even a sanitizing cycle reaches only about 171 to 180 F.", "Process the filled jars in a canner, by the method and for the full time of the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, a39},
    {"microwave", "microwave canning", a40, false, "A microwave oven heats unevenly, so nothing assures that all of the food in the jar gets hot enough.", "Process the filled jars in a canner, by the method and for the full time of the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, a41},
    {"slow-cooker", "slow-cooker canning", a42, false, "Extension counts the slow cooker among the appliances that are very dangerous for canning, and allows a boiling-water canner or a pressure canner in its place.", "Process low-acid food in a pressure canner, by a tested recipe and for its full time.", 0, 0, {}, {}, 0, 0, 0, 0, a43},
    {"sun", "sun canning", a44, false, "The heat of the sun cannot be relied on even for acid food, and for low-acid food it is never enough.", "Process the filled jars in a canner, by the method and for the full time of the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, a45},
    {"paraffin", "sealing with paraffin or wax", a46, false, "Under a cover of wax mold can grow. Mold on a jelly can carry poisons, the mycotoxins.", "Close the jars with new two-piece lids and process them in a canner by the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, a43},
    {"canning-powder", "canning powders, aspirin or tablets in place of heat", a47, false, "Canning powders do not preserve food and cannot stand in for heat. Aspirin is too weak to be relied on against spoilage: it does not stop enzymes, and no vacuum forms in the jar.", "Process the filled jars in a canner, by the method and for the full time of the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, a48},
    {"dry-canning", "dry canning", a49, false, "Tested vegetable times count on liquid in the jar to carry the heat; spores survive dry heat longer, and botulism can follow. Dry goods heated in jars in an oven are untested too: in pockets of moisture bacteria or mold can grow.", "Cover vegetables with liquid as their table says and pressure can them; keep dry goods as they are, closed and cool, or frozen.", 0, 0, {}, {}, 0, 0, 0, 0, a50},
    {"electric-multi-cooker", "electric pressure cooker or multi-cooker", a51, false, "The USDA times were made for stovetop canners that hold four or more upright quart jars. These cookers warm up and cool down differently, no measurements of the heat inside the jars back them, and several models that were tested did not get hot enough. A canning button changes none of this.", "Use a stovetop pressure canner that holds at least four quart jars upright on its rack.", 0, 0, {}, {}, 0, 0, 0, 0, a52},
    {"pressure-saucepan", "pressure cooker or pressure saucepan", a53, false, "A small pot heats and cools too quickly, and the heat of warming up and cooling down is part of the tested process.", "Use a pressure canner that holds at least four quart jars upright on its rack; if your pot is one, write \"pressure\" as the method.", 0, 0, {}, {}, 0, 0, 0, 0, a54},
    {"vacuum-sealing", "vacuum sealing", a55, false, "Taking the air out does not preserve food by itself, and a lack of oxygen favors the bacteria of botulism. Perishable food still has to be kept cold.", "Keep vacuum-sealed perishable food in the refrigerator or freezer, or can it in a canner by a tested process.", 0, 0, {}, {}, 0, 0, 0, 0, a56},
    {"air-fryer", "air-fryer canning", a57, false, "No published process heats jars in an air fryer, so nobody can say how long would be enough. Extension allows boiling-water canners and pressure canners, and steam canners for acid food.", "Process low-acid food in a pressure canner by the food's table; a boiling-water canner is for acid food.", 0, 0, {}, {}, 0, 0, 0, 0, a58},
    {"sous-vide", "sous-vide canning", a59, false, "No published process uses a sous-vide bath. Low-acid food needs 240 to 250 F, and a bath of water cannot get hotter than boiling.", "Process low-acid food in a pressure canner by the food's table; a boiling-water canner is for acid food.", 0, 0, {}, {}, 0, 0, 0, 0, a60},
    {"steam-oven", "steam-oven canning", a61, false, "No published process heats jars in a steam oven. Extension allows boiling-water canners and pressure canners, and steam canners for acid food.", "Process low-acid food in a pressure canner by the food's table; a boiling-water canner is for acid food.", 0, 0, {}, {}, 0, 0, 0, 0, a58},
    {"pressure-fryer", "pressure-fryer canning", a62, false, "No published process heats jars in a pressure fryer. Extension allows boiling-water canners and pressure canners, and steam canners for acid food.", "Use a pressure canner that holds at least four quart jars upright on its rack.", 0, 0, {}, {}, 0, 0, 0, 0, a58},
    {"smoker", "canning in a smoker or on a grill", a63, false, "No published process heats jars in a smoker or on a grill. Extension allows boiling-water canners and pressure canners, and steam canners for acid food.", "Process the jars in a pressure canner; for fish that was smoked first there is a table of its own.", 0, 0, {}, {}, 0, 0, 0, 0, a64},
    {"cold-water", "cold-water canning", a65, false, "No published process does without heat. Even boiling water does not kill the spores of botulism in low-acid food, and cold water does less.", "Process low-acid food in a pressure canner by the food's table; if you mean food that goes into the jar raw, write \"raw\" as the pack and the canner as the method.", 0, 0, {}, {}, 0, 0, 0, 0, a66},
    {"hot-fill", "hot filling without processing", a67, false, "No published process leaves it at hot food in the jar or hot water from the tap. A closed jar that gets no tested heat is open-kettle canning: microbes live on under a lid that looks sealed.", "Fill the jars hot and then process them in a canner, by the method and for the full time of the food's table.", 0, 0, {}, {}, 0, 0, 0, 0, a68},
    {"electric-canner", "automatic electric canner", a69, false, "The automatic electric canner on sale is made for acid foods and goes by recipes of its own; USDA times do not apply to it. Extension allows boiling-water canners and pressure canners.", "Use the maker's own acid recipes in it and nothing else; process low-acid food in a stovetop pressure canner.", 0, 0, {}, {}, 0, 0, 0, 0, a70}};
constexpr form_word a72[] = {{"whole", "left whole", ""},
    {"spears", "whole spears, 4 to 6 inches long", ""},
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
    {"butter", "cooked down to a butter", "low-acid-puree"}};
constexpr sv a73[] = {"hot"};
constexpr sv a74[] = {"raw",
    "hot"};
constexpr prepared_word a75[] = {{"beans rehydrated", "dried beans or peas soaked and boiled until they have taken up their water", "", "", {}},
    {"beans not rehydrated", "dried beans or peas put in dry", "beans rehydrated", "not-in-process", {}},
    {"meat precooked", "meat, poultry or seafood cooked before filling", "meat not precooked", "", {}},
    {"meat not precooked", "meat, poultry or seafood put in raw", "meat precooked", "", {}},
    {"boiled before filling", "boiled, simmered or steamed before filling, as long as the process says", "", "", {}},
    {"not boiled before filling", "put in without that cooking", "boiled before filling", "", {}},
    {"boiled 5 min", "boiled or simmered for 5 minutes before filling", "", "", {}},
    {"boiled under 5 min", "boiled or simmered for less than 5 minutes before filling", "boiled 5 min", "", {}},
    {"reheated to a boil", "brought back to a boil before filling", "", "", a73},
    {"not reheated", "put in without reheating", "reheated to a boil", "", {}},
    {"jars sterilized", "empty jars boiled before filling", "", "", a74},
    {"peeled", "skins taken off", "", "", {}},
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
    {"not thickened", "no flour, starch, batter or other thickener used", "", "", a74},
    {"thickened", "flour, starch, batter or another thickener used", "not thickened", "thickener-in-jar", {}},
    {"not smoked", "put in unsmoked", "lightly smoked", "", a74},
    {"lightly smoked", "lightly smoked", "not smoked", "not-in-process", {}},
    {"chilled", "chilled in the refrigerator or on ice, as long as the process says", "", "", {}},
    {"not chilled", "put in without chilling", "chilled", "", {}},
    {"boiled in acidified water", "boiled 2 minutes in water with lemon juice or citric acid", "", "", {}},
    {"not boiled in acidified water", "put in without that boiling", "boiled in acidified water", "", {}},
    {"cultivated mushrooms", "grown mushrooms", "", "", {}},
    {"wild mushrooms", "gathered mushrooms", "cultivated mushrooms", "not-in-process", {}}};
constexpr sv a76[] = {"washed",
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
constexpr sv a77[] = {"asparagus",
    "asparagus spears",
    "esparragos",
    "espárragos"};
constexpr sv a78[] = {"whole",
    "spears",
    "1-inch-pieces"};
constexpr int a79[] = {30};
constexpr int a80[] = {40};
constexpr jar_minutes a81[] = {{"pint", a79},
    {"quart", a80}};
constexpr table a82[] = {{a78, "hot", "spears, whole or cut in 1-inch pieces", 1000, a81, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "One state copy covers with the cooking liquid; the guide uses boiling water. Older charts with 25 and 30 min are out of date."},
    {a78, "raw", "spears, whole or cut in 1-inch pieces", 1000, a81, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Older charts with 25 and 30 min are out of date."}};
constexpr sv a83[] = {"raw"};
constexpr condition a84[] = {{"Use spears of 4 to 6 inches with tight tips, whole or in 1-inch pieces.", {}, "", "", false},
    {"Boil them 2 to 3 minutes in water.", a73, "boiled before filling", "", false},
    {"Fill the jars loosely.", a73, "packed loosely", "", false},
    {"Fill the jars tightly, without crushing the spears.", a83, "packed tightly", "", false},
    {"Cover with boiling water.", {}, "covered with liquid", "", false}};
constexpr citation a85[] = {{"usda-guide-4", "4", "4-5"}};
constexpr sv a86[] = {"baked beans",
    "boston baked beans",
    "molasses baked beans",
    "home-baked beans"};
constexpr sv a87[] = {"beans",
    "pork and beans"};
constexpr sv a88[] = {"as-recipe"};
constexpr int a89[] = {65};
constexpr int a90[] = {75};
constexpr jar_minutes a91[] = {{"pint", a89},
    {"quart", a90}};
constexpr table a92[] = {{a88, "hot", "rehydrated dry beans baked in molasses sauce", 1000, a91, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "One state copy allows the tomato sauces here too; the guide bakes in molasses sauce."}};
constexpr condition a93[] = {{"Pour 3 cups of water over each cup of dry beans, boil 2 minutes, take them off the heat and let them stand 1 hour.", {}, "beans rehydrated", "beans-not-rehydrated", true},
    {"Pour the soaking water away.", {}, "drained", "", false},
    {"Heat the beans to a boil in fresh water.", {}, "boiled before filling", "", false},
    {"Cover them with the printed molasses sauce and bake 4 to 5 hours at 350 F, adding water about every hour so that they stay covered.", {}, "covered with liquid", "", false},
    {"At most seven 3/4-inch pieces of pork, ham or bacon go into a batch.", {}, "", "", false},
    {"Leave the beans whole: mashed beans have no tested process.", {}, "", "low-acid-puree", false},
    {"Fill the jars hot.", {}, "", "", false}};
constexpr citation a94[] = {{"usda-guide-4", "4", "4-6"}};
constexpr sv a95[] = {"beans in tomato sauce",
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
constexpr sv a96[] = {"whole",
    "in-sauce"};
constexpr table a97[] = {{a96, "hot", "rehydrated dry beans in hot thin tomato or molasses sauce", 1000, a91, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Copies differ on whether 3 quarts of bean cooking liquid follow the tomato sauce; no process number depends on it."}};
constexpr condition a98[] = {{"Pour 3 cups of water over each cup of dry beans, boil 2 minutes, take them off the heat and let them stand 1 hour.", {}, "beans rehydrated", "beans-not-rehydrated", true},
    {"Pour the soaking water away.", {}, "drained", "", false},
    {"Heat the beans to a boil in fresh water and keep that water for the sauce.", {}, "boiled before filling", "", false},
    {"Make one of the printed sauces, no thicker than printed, and heat it to a boil.", {}, "not thickened", "", false},
    {"Fill the jars three quarters full of hot beans and add at most one 3/4-inch cube of pork, ham or bacon.", {}, "", "", false},
    {"Cover with the hot sauce.", {}, "covered with liquid", "", false},
    {"This time is shorter than that of plain dried beans and holds with the printed sauces only.", {}, "", "", false},
    {"Leave the beans whole: mashed beans have no tested process.", {}, "", "low-acid-puree", false}};
constexpr sv a99[] = {"dried beans",
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
constexpr sv a100[] = {"beans",
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
constexpr sv a101[] = {"whole"};
constexpr int a102[] = {90};
constexpr jar_minutes a103[] = {{"pint", a90},
    {"quart", a102}};
constexpr table a104[] = {{a101, "hot", "mature dry seeds of any variety, fully rehydrated and pre-boiled", 1000, a103, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "One Extension copy asks for the long soak in the refrigerator, the guide for a cool place. An equipment maker's copy drops the 1-hour stand of the short soak; not used."}};
constexpr condition a105[] = {{"Soak the dry beans 12 to 18 hours in a cool place, best in the refrigerator; or boil them 2 minutes, take them off the heat and let them stand 1 hour.", {}, "beans rehydrated", "beans-not-rehydrated", true},
    {"Pour the soaking water away.", {}, "drained", "", false},
    {"Cover with fresh water and boil 30 minutes.", {}, "boiled before filling", "", false},
    {"Fill the jars with the hot beans and cover with the hot cooking water.", {}, "covered with liquid", "", false},
    {"Leave the beans whole: mashed or refried beans have no tested process.", {}, "", "low-acid-puree", false}};
constexpr sv a106[] = {"fresh lima beans",
    "fresh lima bean",
    "green lima beans",
    "green lima bean",
    "fresh limas",
    "green limas",
    "fresh shelled lima beans",
    "shelled green lima beans",
    "fresh baby lima beans"};
constexpr sv a107[] = {"beans",
    "lima beans",
    "lima bean",
    "limas",
    "baby lima beans",
    "baby limas",
    "butter beans",
    "butter bean",
    "bush beans",
    "pole beans"};
constexpr sv a108[] = {"small",
    "large"};
constexpr int a109[] = {50};
constexpr jar_minutes a110[] = {{"pint", a80},
    {"quart", a109}};
constexpr jar_minutes a111[] = {{"pint", a80}};
constexpr sv a112[] = {"small"};
constexpr jar_minutes a113[] = {{"quart", a109}};
constexpr sv a114[] = {"large"};
constexpr table a115[] = {{a108, "hot", "shelled green seeds", 1000, a110, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "An equipment maker's copy asks 1 1/4 in for every quart; the guide asks 1 in for hot pack."},
    {a108, "raw", "shelled green seeds, small or large", 1000, a111, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, ""},
    {a112, "raw", "shelled green seeds, small beans", 1500, a113, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "An equipment maker's copy asks 1 1/4 in for every quart; the guide asks 1 1/2 in for small beans."},
    {a114, "raw", "shelled green seeds, large beans", 1250, a113, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, ""}};
constexpr condition a116[] = {{"Use fresh green beans out of the pod, not dried ones.", {}, "", "", false},
    {"Heat the beans to a boil in water.", a73, "boiled before filling", "", false},
    {"Fill the jars loosely.", a73, "packed loosely", "", false},
    {"Fill the jars loosely; do not press or shake the beans down, for they swell.", a83, "packed loosely", "", false},
    {"In raw quarts small beans need more headspace than large ones, and both more than pints.", a83, "", "", false},
    {"Cover with boiling water.", {}, "covered with liquid", "", false}};
constexpr citation a117[] = {{"usda-guide-4", "4", "4-7"}};
constexpr sv a118[] = {"green beans",
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
constexpr sv a119[] = {"beans",
    "romano beans",
    "bush beans",
    "pole beans"};
constexpr sv a120[] = {"whole",
    "1-inch-pieces"};
constexpr int a121[] = {20};
constexpr int a122[] = {25};
constexpr jar_minutes a123[] = {{"pint", a121},
    {"quart", a122}};
constexpr table a124[] = {{a120, "hot", "whole or cut in 1-inch pieces", 1000, a123, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Blog copies with 1/2 in headspace are not used."},
    {a120, "raw", "whole or cut in 1-inch pieces", 1000, a123, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Blog copies with 1/2 in headspace are not used."}};
constexpr condition a125[] = {{"Leave the pods whole or cut them in 1-inch pieces.", {}, "", "", false},
    {"Bring the beans to a boil in water.", a73, "boiled before filling", "", false},
    {"Boil them 5 minutes.", a73, "boiled 5 min", "", false},
    {"Fill the jars loosely.", a73, "packed loosely", "", false},
    {"Cover with the boiling cooking liquid or with boiling water.", a73, "covered with liquid", "", false},
    {"Fill the jars tightly.", a83, "packed tightly", "", false},
    {"Cover with boiling water.", a83, "covered with liquid", "", false}};
constexpr citation a126[] = {{"usda-guide-4", "4", "4-8"}};
constexpr sv a127[] = {"beets",
    "beet",
    "beetroot",
    "beetroots",
    "red beets",
    "baby beets",
    "betabel",
    "betabeles",
    "remolacha",
    "remolachas"};
constexpr sv a128[] = {"whole",
    "half-inch-cubes",
    "sliced"};
constexpr int a129[] = {35};
constexpr jar_minutes a130[] = {{"pint", a79},
    {"quart", a129}};
constexpr table a131[] = {{a128, "hot", "small whole, or 1/2-inch cubes or slices", 1000, a130, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Some copies of the 1994 text head the weighted table \"hot and raw\"; a misprint, no raw directions exist."}};
constexpr condition a132[] = {{"Boil the beets 15 to 25 minutes, with the root and an inch of stem on, until the skins slip.", {}, "boiled before filling", "", false},
    {"Peel them and trim off stems and roots.", {}, "peeled", "", false},
    {"Leave only small beets whole, best 1 to 2 inches across; cut the others in 1/2-inch cubes or slices, and halve or quarter very large slices.", {}, "", "", false},
    {"Use fresh hot water, not the water they were boiled in.", {}, "fresh water used", "", false},
    {"Cover the beets with it.", {}, "covered with liquid", "", false}};
constexpr citation a133[] = {{"usda-guide-4", "4", "4-9"}};
constexpr sv a134[] = {"carrots",
    "carrot",
    "sliced carrots",
    "diced carrots",
    "zanahoria",
    "zanahorias"};
constexpr sv a135[] = {"sliced",
    "diced"};
constexpr jar_minutes a136[] = {{"pint", a122},
    {"quart", a79}};
constexpr table a137[] = {{a135, "hot", "peeled, sliced or diced", 1000, a136, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, ""},
    {a135, "raw", "peeled, sliced or diced", 1000, a136, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "An undated bulletin lets the liquid reach within 1/2 in; the guide asks 1 in."}};
constexpr condition a138[] = {{"Wash the carrots, peel them and wash them again.", {}, "peeled", "", false},
    {"Slice or dice them; roots of 1 to 1 1/4 inches across are best.", {}, "", "", false},
    {"Bring them to a boil in water.", a73, "boiled before filling", "", false},
    {"Simmer them 5 minutes.", a73, "boiled 5 min", "", false},
    {"Cover with the hot cooking liquid or with hot water.", a73, "covered with liquid", "", false},
    {"Fill the jars tightly.", a83, "packed tightly", "", false},
    {"Cover with hot water.", a83, "covered with liquid", "", false}};
constexpr citation a139[] = {{"usda-guide-4", "4", "4-10"}};
constexpr sv a140[] = {"chicken with bones",
    "bone-in chicken",
    "chicken on the bone",
    "bone-in chicken pieces",
    "rabbit with bones",
    "bone-in rabbit",
    "rabbit on the bone",
    "chicken or rabbit with bones",
    "pollo con hueso",
    "conejo con hueso"};
constexpr sv a141[] = {"chicken",
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
constexpr sv a142[] = {"with-bones",
    "pieces"};
constexpr table a143[] = {{a142, "hot", "pieces cut to fit the jar, with bones", 1250, a91, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Blog copies print 1 in headspace; the guide asks 1 1/4 in."},
    {a142, "raw", "pieces cut to fit the jar, with bones", 1250, a91, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Blog copies print 1 in headspace; the guide asks 1 1/4 in."}};
constexpr condition a144[] = {{"Use fresh meat, or thawed in the refrigerator; never cured, brined, corned or smoked meat.", {}, "not smoked", "", false},
    {"Chill a dressed chicken 6 to 12 hours.", {}, "chilled", "", false},
    {"Soak a dressed rabbit 1 hour in water with 1 tbsp of salt to the quart, and rinse it.", {}, "", "", false},
    {"Cut off excess fat.", {}, "fat removed", "", false},
    {"Cut it in pieces that fit the jar and leave the bones in: this time is too short for boneless meat.", {}, "bones left in", "", false},
    {"Leave the giblets out.", {}, "", "", false},
    {"Use no flour, batter or other thickener.", {}, "not thickened", "", false},
    {"Boil, steam or bake the meat until about two thirds done.", a73, "meat precooked", "", false},
    {"Cover with hot broth.", a73, "covered with liquid", "", false},
    {"The pieces go in raw.", a83, "meat not precooked", "", false},
    {"Fill the jars loosely.", a83, "packed loosely", "", false},
    {"Add no liquid.", a83, "no liquid added", "", false}};
constexpr citation a145[] = {{"usda-guide-5", "5", "5-5"}};
constexpr sv a146[] = {"chicken without bones",
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
constexpr sv a147[] = {"without-bones",
    "pieces"};
constexpr table a148[] = {{a147, "hot", "pieces cut to fit the jar, without bones", 1250, a103, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Blog copies print 1 in headspace; the guide asks 1 1/4 in."},
    {a147, "raw", "pieces cut to fit the jar, without bones", 1250, a103, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Blog copies print 1 in headspace; the guide asks 1 1/4 in."}};
constexpr condition a149[] = {{"Use fresh meat, or thawed in the refrigerator; never cured, brined, corned or smoked meat.", {}, "not smoked", "", false},
    {"Chill a dressed chicken 6 to 12 hours.", {}, "chilled", "", false},
    {"Soak a dressed rabbit 1 hour in water with 1 tbsp of salt to the quart, and rinse it.", {}, "", "", false},
    {"Cut off excess fat.", {}, "fat removed", "", false},
    {"Take the meat off the bones and cut it in pieces that fit the jar.", {}, "bones removed", "", false},
    {"Leave the giblets out.", {}, "", "", false},
    {"Use no flour, batter or other thickener.", {}, "not thickened", "", false},
    {"Boil, steam or bake the meat until about two thirds done.", a73, "meat precooked", "", false},
    {"Cover with hot broth.", a73, "covered with liquid", "", false},
    {"The pieces go in raw.", a83, "meat not precooked", "", false},
    {"Fill the jars loosely.", a83, "packed loosely", "", false},
    {"Add no liquid.", a83, "no liquid added", "", false}};
constexpr sv a150[] = {"chile con carne",
    "chili con carne",
    "chilli con carne",
    "chili con carne with beans",
    "chile con carne with beans",
    "chili with beef and beans"};
constexpr sv a151[] = {"chili",
    "chile",
    "chilli"};
constexpr jar_minutes a152[] = {{"pint", a90}};
constexpr table a153[] = {{a88, "hot", "ground beef, beans, tomatoes; fixed USDA recipe, 9 pints", 1000, a152, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Blogs and private lists with 90 min for quarts are not published tests. One Extension page stresses that the time belongs to the printed recipe, not to a chili of one's own."}};
constexpr condition a154[] = {{"Keep to the printed recipe: a chili of your own has no tested process.", {}, "", "", false},
    {"Soak the dried beans 12 to 18 hours in cold water in a cool place and simmer them 30 minutes in fresh water.", {}, "beans rehydrated", "beans-not-rehydrated", true},
    {"Pour away the soaking water and the water they were cooked in.", {}, "drained", "", false},
    {"Brown the ground beef with the onions and peppers.", {}, "meat precooked", "", false},
    {"Drain off the fat.", {}, "fat removed", "", false},
    {"Add the tomatoes, the beans and the seasoning and bring to a simmer.", {}, "boiled before filling", "", false},
    {"Simmer 5 minutes.", {}, "boiled 5 min", "", false},
    {"Do not thicken it.", {}, "not thickened", "", false},
    {"Pint jars at most: no quart process exists.", {}, "", "", false}};
constexpr citation a155[] = {{"usda-guide-5", "5", "5-8"}};
constexpr sv a156[] = {"clams",
    "clam",
    "whole clams",
    "minced clams",
    "shelled clams",
    "clam meat",
    "almeja",
    "almejas"};
constexpr sv a157[] = {"whole",
    "minced"};
constexpr int a158[] = {60};
constexpr int a159[] = {70};
constexpr jar_minutes a160[] = {{"half-pint", a158},
    {"pint", a159}};
constexpr table a161[] = {{a157, "hot", "whole or minced meats", 1000, a160, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, ""}};
constexpr condition a162[] = {{"Keep the clams alive on ice until you can them.", {}, "", "", false},
    {"Scrub them, steam 5 minutes and take out the meat; save the juice.", {}, "meat precooked", "", false},
    {"Wash the meat in water with 1 tsp of salt to the quart and rinse it.", {}, "", "", false},
    {"Boil the meat 2 minutes.", {}, "boiled before filling", "", false},
    {"That water holds 2 tbsp of lemon juice or 1/2 tsp of citric acid to the gallon.", {}, "boiled in acidified water", "", false},
    {"Drain it; for minced clams grind it.", {}, "drained", "", false},
    {"Fill the jars loosely.", {}, "packed loosely", "", false},
    {"Cover with hot clam juice, and boiling water if it runs short.", {}, "covered with liquid", "", false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false}};
constexpr citation a163[] = {{"usda-guide-5", "5", "5-9"}};
constexpr sv a164[] = {"cream style corn",
    "cream-style corn",
    "cream corn"};
constexpr sv a165[] = {"corn",
    "sweet corn",
    "sweetcorn",
    "maize",
    "elote",
    "elotes",
    "maiz",
    "maíz"};
constexpr sv a166[] = {"cream-style"};
constexpr int a167[] = {85};
constexpr jar_minutes a168[] = {{"pint", a167}};
constexpr table a169[] = {{a166, "hot", "kernels cut at mid-depth plus cob scrapings", 1000, a168, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Copies of the 1994 text add a raw row of 95 min to the weighted table alone, without directions; left out. One state sheet prints 55 min in its dial table; every other copy has 85, which stands."}};
constexpr condition a170[] = {{"Scald the husked ears 4 minutes in boiling water.", {}, "blanched", "", false},
    {"Cut the kernels off through the middle and scrape the cobs.", {}, "", "", false},
    {"Add 2 cups of boiling water to each quart of corn and scrapings.", {}, "covered with liquid", "", false},
    {"Heat it to a boil.", {}, "boiled before filling", "", false},
    {"Only corn, water and, if liked, salt go in: no milk, cream, flour or starch.", {}, "not thickened", "", false},
    {"No quart process exists: such thick food heats too slowly in the middle of a large jar.", {}, "", "", false}};
constexpr sv a171[] = {"whole kernel corn",
    "whole-kernel corn",
    "corn kernels",
    "kernel corn",
    "cut corn",
    "corn cut off the cob",
    "corn off the cob",
    "granos de elote"};
constexpr sv a172[] = {"kernels"};
constexpr int a173[] = {55};
constexpr jar_minutes a174[] = {{"pint", a173},
    {"quart", a167}};
constexpr table a175[] = {{a172, "hot", "kernels cut at about 3/4 depth, cob not scraped", 1000, a174, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "An undated bulletin prints 2/3 depth and 2 cups of water to the quart; the guide has 3/4 and 1 cup."},
    {a172, "raw", "kernels cut at about 3/4 depth, cob not scraped", 1000, a174, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, ""}};
constexpr condition a176[] = {{"Scald the husked ears 3 minutes in boiling water.", {}, "blanched", "", false},
    {"Cut the kernels off at about 3/4 of their depth; never scrape the cob.", {}, "", "", false},
    {"Add 1 cup of hot water to each quart of kernels and heat it to a boil.", a73, "boiled before filling", "", false},
    {"Simmer it 5 minutes.", a73, "boiled 5 min", "", false},
    {"Fill the jars with the corn and its cooking liquid.", a73, "covered with liquid", "", false},
    {"Fill the jars without shaking or pressing down.", a83, "packed loosely", "", false},
    {"Cover with fresh boiling water.", a83, "covered with liquid", "", false}};
constexpr citation a177[] = {{"usda-guide-4", "4", "4-11"}};
constexpr sv a178[] = {"king crab",
    "king crabs",
    "king crab meat",
    "king crabmeat",
    "dungeness crab",
    "dungeness crabs",
    "dungeness crab meat",
    "dungeness crabmeat",
    "king and dungeness crab meat"};
constexpr sv a179[] = {"picked-meat"};
constexpr int a180[] = {80};
constexpr jar_minutes a181[] = {{"half-pint", a159},
    {"pint", a180}};
constexpr table a182[] = {{a179, "hot", "cooked picked meat, hot water added", 1000, a181, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "The table has no column for the pack: cooked meat covered with hot water is written as hot."}};
constexpr condition a183[] = {{"Only king crab and Dungeness crab; freeze blue crab.", {}, "", "", false},
    {"Simmer the crabs 20 minutes in water with 1/4 cup of lemon juice and 2 tbsp of salt (up to 1 cup) to the gallon; cool them and pick the meat.", {}, "meat precooked", "", false},
    {"Soak the meat 2 minutes in cold water with 2 cups of lemon juice or 4 cups of white vinegar, and 2 tbsp of salt (up to 1 cup), to the gallon.", {}, "", "", false},
    {"Drain it and squeeze the water out.", {}, "drained", "", false},
    {"Put 6 oz of meat in a half-pint or 12 oz in a pint.", {}, "", "", false},
    {"Citric acid or lemon juice goes into every jar.", {}, "", "", false},
    {"Cover with hot water.", {}, "covered with liquid", "", false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false}};
constexpr acid_choice a184[] = {{"citric acid", 1000, "1 tsp citric acid for a pint, 1/2 tsp for a half-pint"},
    {"bottled lemon juice", 12000, "4 tbsp bottled lemon juice for a pint, 2 tbsp for a half-pint"}};
constexpr sv a185[] = {"fish in pint jars",
    "fish in half-pint jars",
    "salmon in pint jars",
    "salmon in pints",
    "trout in pint jars",
    "trout in pints",
    "mackerel in pint jars"};
constexpr sv a186[] = {"fish",
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
constexpr sv a187[] = {"lengths",
    "with-bones"};
constexpr int a188[] = {100};
constexpr jar_minutes a189[] = {{"half-pint", a188},
    {"12-oz", a188}};
constexpr jar_minutes a190[] = {{"pint", a188}};
constexpr table a191[] = {{a187, "raw", "3.5 inch lengths, bone-in", 1000, a189, "low-acid-dial", "low-acid-weighted", {}, "seen-part", 2, true, "Read: half-pint and 12 oz jars take the pint time; the pressures near sea level. Carried over from the pint table: the pressures of the higher bands."},
    {a187, "raw", "3.5 inch lengths, bone-in", 1000, a190, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Newer text adds halibut, skin and bones taken out."}};
constexpr condition a192[] = {{"Gut the fish within 2 hours of the catch and keep it on ice; thaw frozen fish in the refrigerator.", {}, "chilled", "", false},
    {"Use fish that is not smoked: smoked fish has its own, longer process.", {}, "not smoked", "", false},
    {"Take off head, tail, fins and scales; the bones may stay. Halibut loses skin and bones.", {}, "", "", false},
    {"Cut it in lengths of 3 1/2 inches.", {}, "", "", false},
    {"The fish goes in raw.", {}, "meat not precooked", "", false},
    {"Add no liquid.", {}, "no liquid added", "", false}};
constexpr citation a193[] = {{"usda-guide-5", "5", "5-10"}};
constexpr sv a194[] = {"fish in quart jars",
    "fish in quarts",
    "salmon in quart jars",
    "salmon in quarts",
    "trout in quart jars",
    "trout in quarts"};
constexpr sv a195[] = {"fillets",
    "chunks"};
constexpr int a196[] = {160};
constexpr jar_minutes a197[] = {{"quart", a196}};
constexpr table a198[] = {{a195, "raw", "jar-length fillets or chunks, packed solid", 1000, a197, "low-acid-dial", "low-acid-weighted", {}, "memory", 1, false, "Minutes and pressures come from memory alone: nobody could read this table again, so a plan that only this table covers is untested. The packing and the heat-up were read. Older pages say that quart jars are not for fish."}};
constexpr condition a199[] = {{"Gut the fish within 2 hours of the catch and keep it on ice; thaw frozen fish in the refrigerator.", {}, "chilled", "", false},
    {"Use fish that is not smoked.", {}, "not smoked", "", false},
    {"Use straight-sided wide-mouth quart jars.", {}, "", "", false},
    {"Pack fillets or chunks as long as the jar solidly, raw.", {}, "meat not precooked", "", false},
    {"No liquid is needed; halibut may take up to 4 tbsp of oil in a jar.", {}, "no liquid added", "", false},
    {"Put 2 to 3 inches of water, about 3 quarts, in the canner.", {}, "", "", false},
    {"Heat the canner on high for 20 minutes with the vent open; once steam flows steadily, vent 10 minutes more. Heating and venting together never take less than 30 minutes.", {}, "", "", false}};
constexpr citation a200[] = {{"usda-guide-5", "5", "5-11"},
    {"uaf-fish-quarts", "", ""}};
constexpr sv a201[] = {"smoked fish",
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
constexpr sv a202[] = {"fish",
    "salmon",
    "trout",
    "salmón",
    "pescado",
    "trucha"};
constexpr sv a203[] = {"pieces"};
constexpr int a204[] = {110};
constexpr jar_minutes a205[] = {{"half-pint", a204},
    {"pint", a204}};
constexpr table a206[] = {{a203, "raw", "pieces standing upright in the jar", 1000, a205, "low-acid-dial", "", {}, "seen-part", 1, true, "The table has no column for the pack; the fish goes in cold, so it is written as raw. Read: the altitude bands and, in a university bulletin, 110 min for pints; half-pints may take the pint time. From memory: the pressures of the dial bands. A recipe page with 100 min is not used."},
    {a203, "raw", "pieces standing upright in the jar", 1000, a205, "", "low-acid-weighted", {}, "seen-part", 2, true, "The table has no column for the pack; the fish goes in cold, so it is written as raw. Read: 110 min at 10 psi in a university bulletin, 10 and 15 psi in an equipment maker's copy; half-pints may take the pint time."}};
constexpr condition a207[] = {{"Smoke the fish lightly only, by a tested method.", {}, "lightly smoked", "", false},
    {"Can it at once, or after at most 1 day in the refrigerator; do not taste it before.", {}, "", "", false},
    {"Use a pressure canner of 16 to 22 quarts, never a smaller one.", {}, "", "", false},
    {"Put 4 quarts of cool tap water in the canner, no less, and do not heat it beforehand.", {}, "", "", false},
    {"Stand the pieces upright in the jar, loosely or tightly.", {}, "", "", false},
    {"Add no liquid.", {}, "no liquid added", "", false},
    {"Half-pint and pint jars only, no quarts, no tin cans; freeze other smoked seafood.", {}, "", "", false}};
constexpr citation a208[] = {{"usda-guide-5", "5", "5-13"},
    {"nchfp-smoked-fish", "", ""},
    {"pnw-450", "", ""}};
constexpr sv a209[] = {"greens",
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
constexpr sv a210[] = {"leaves"};
constexpr jar_minutes a211[] = {{"pint", a159},
    {"quart", a102}};
constexpr table a212[] = {{a210, "hot", "wilted leaves, tough stems and midribs removed", 1000, a211, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "A web copy carries a stray 100 min footnote that belongs to soup with seafood."}};
constexpr condition a213[] = {{"Use fresh leaves and take out tough stems and midribs.", {}, "", "", false},
    {"Steam them 3 to 5 minutes, 1 lb at a time.", {}, "blanched", "", false},
    {"All leaves must be well wilted before they are filled.", {}, "boiled before filling", "", false},
    {"Fill the jars loosely.", {}, "packed loosely", "", false},
    {"Use fresh boiling water, not the water of the steamer.", {}, "fresh water used", "", false},
    {"Cover the leaves with it.", {}, "covered with liquid", "", false}};
constexpr citation a214[] = {{"usda-guide-4", "4", ""}};
constexpr sv a215[] = {"ground meat",
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
constexpr sv a216[] = {"meat",
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
constexpr sv a217[] = {"patties",
    "balls",
    "links",
    "loose"};
constexpr table a218[] = {{a217, "hot", "patties, balls, links or loose ground meat", 1000, a103, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Copies differ on the salt, 1 or 2 tsp to the quart; it is flavor only."}};
constexpr condition a219[] = {{"Use fresh meat and fresh sausage, never cured, brined, corned or smoked.", {}, "not smoked", "", false},
    {"Ground venison takes 1 part of pork fat to 3 or 4 parts of venison, mixed in before grinding.", {}, "", "", false},
    {"Shape it into patties or balls, stuff it in casings cut to links of 3 to 4 inches, or leave it loose; no bread, flour or egg in it.", {}, "not thickened", "", false},
    {"Cook it until lightly browned.", {}, "meat precooked", "", false},
    {"Drain off excess fat.", {}, "fat removed", "", false},
    {"Cover with boiling meat broth, tomato juice or water; the liquid is part of the process.", {}, "covered with liquid", "", false}};
constexpr citation a220[] = {{"usda-guide-5", "5", "5-6"}};
constexpr sv a221[] = {"beef stock",
    "beef broth",
    "beef bone broth",
    "beef bone stock"};
constexpr sv a222[] = {"stock",
    "stocks",
    "broth",
    "broths",
    "meat stock",
    "meat broth",
    "bone broth",
    "bone stock"};
constexpr sv a223[] = {"stock"};
constexpr table a224[] = {{a223, "hot", "strained broth, meat picked off the bones may go back in", 1000, a123, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "The guide lets meat picked from the bones go back in and sets no size. A University of Wisconsin Extension chart (so headed where it was read) keeps 20 and 25 min for bits of at most 1/4 inch and asks 75 and 90 min for larger pieces; the safer reading is taken."}};
constexpr condition a225[] = {{"Crack or saw fresh beef bones, rinse them and simmer them 3 to 4 hours in water.", {}, "boiled before filling", "", false},
    {"Take the bones out.", {}, "bones removed", "", false},
    {"Let the stock cool and take off the fat.", {}, "fat removed", "", false},
    {"Only bits of meat picked from these bones, at most 1/4 inch in size, may go back in.", {}, "", "", false},
    {"This is no process for jars packed with meat or vegetables.", {}, "", "", false},
    {"Reheat the stock to a boil before filling.", {}, "reheated to a boil", "not-reheated", false},
    {"Add nothing that thickens it.", {}, "not thickened", "", false}};
constexpr citation a226[] = {{"usda-guide-5", "5", "5-7"},
    {"wisconsin-stock-chart", "", ""}};
constexpr sv a227[] = {"chicken stock",
    "chicken broth",
    "chicken bone broth",
    "turkey stock",
    "turkey broth",
    "turkey bone broth",
    "poultry stock",
    "poultry broth"};
constexpr condition a228[] = {{"Simmer the large carcass bones 30 to 45 minutes in water, until the meat comes off easily.", {}, "boiled before filling", "", false},
    {"Take the bones out.", {}, "bones removed", "", false},
    {"Let the stock cool and take off the fat.", {}, "fat removed", "", false},
    {"Only bits of meat picked from these bones, at most 1/4 inch in size, may go back in.", {}, "", "", false},
    {"This is no process for jars packed with meat or vegetables.", {}, "", "", false},
    {"Reheat the stock to a boil before filling.", {}, "reheated to a boil", "not-reheated", false},
    {"Add nothing that thickens it.", {}, "not thickened", "", false}};
constexpr sv a229[] = {"meat strips",
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
constexpr sv a230[] = {"meat",
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
constexpr sv a231[] = {"strips",
    "cubes",
    "chunks"};
constexpr table a232[] = {{a231, "hot", "strips, cubes or chunks, large bones removed", 1000, a103, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, ""},
    {a231, "raw", "strips, cubes or chunks, large bones removed", 1000, a103, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "One copy of the 1994 text lists the hot pack alone in its dial table; the other copies list hot and raw."}};
constexpr condition a233[] = {{"Use fresh meat, or thawed in the refrigerator; never cured, brined, corned or smoked meat.", {}, "not smoked", "", false},
    {"Use well chilled meat.", {}, "chilled", "", false},
    {"Soak strong-tasting game 1 hour in water with 1 tbsp of salt to the quart, and rinse it.", {}, "", "", false},
    {"Cut off gristle, bruised spots and excess fat.", {}, "fat removed", "", false},
    {"Take out the large bones: meat on the bone has no tested process here.", {}, "bones removed", "", false},
    {"Cut it in strips, cubes or chunks; the guide sets no size, one Extension page makes the strips 1 inch wide.", {}, "", "", false},
    {"Use no flour, batter or other thickener.", {}, "not thickened", "", false},
    {"Roast, stew or brown the meat in a little fat until rare.", a73, "meat precooked", "", false},
    {"Fill the jars loosely.", {}, "packed loosely", "", false},
    {"Cover with boiling broth, drippings, water or tomato juice.", a73, "covered with liquid", "", false},
    {"The pieces go in raw.", a83, "meat not precooked", "", false},
    {"Add no liquid.", a83, "no liquid added", "", false}};
constexpr sv a234[] = {"mexican tomato sauce",
    "mexican-style tomato sauce",
    "mexican tomato sauce with chiles"};
constexpr table a235[] = {{a88, "hot", "chopped peeled tomatoes with peeled chiles and onions", 1000, a123, "low-acid-dial", "low-acid-weighted", {}, "seen", 1, true, "Some copies head the upper weighted band \"above 1001 ft\"; the guide says above 1,000 ft. One private page uses boiling water: wrong."}};
constexpr condition a236[] = {{"Keep to the printed recipe; its 1/2 cup of vinegar is flavor and does not make the sauce fit for boiling water.", {}, "", "", false},
    {"Peel the tomatoes and the chiles, and take the seeds out of the chiles.", {}, "peeled", "", false},
    {"Use no more chiles and onions, and no fewer tomatoes, than printed.", {}, "", "", false},
    {"Simmer it covered for 10 minutes and fill the jars while it is hot.", {}, "boiled before filling", "", false}};
constexpr citation a237[] = {{"usda-guide-3", "3", "3-15"}};
constexpr sv a238[] = {"mincemeat",
    "mincemeat pie filling",
    "mincemeat filling",
    "festive mincemeat",
    "festive mincemeat pie filling"};
constexpr sv a239[] = {"mince",
    "minced meat"};
constexpr jar_minutes a240[] = {{"quart", a102}};
constexpr table a241[] = {{a88, "hot", "ground meat, suet, apples, raisins", 1000, a240, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "The table prints its last dial band as 6,000 to 8,000 ft, so 6,000 ft stands in two bands; read as 6,001 like every other table of the guide. At exactly 6,000 ft, 14 psi is the safer reading."}};
constexpr condition a242[] = {{"Keep to the printed recipe; it holds meat and suet, so only a pressure canner will do.", {}, "", "", false},
    {"Cook the meat before it is ground with the suet and the apples.", {}, "meat precooked", "", false},
    {"Peel and core the apples.", {}, "peeled", "", false},
    {"Simmer the whole mixture for 1 hour, stirring often, and fill the jars while it is hot.", {}, "boiled before filling", "", false},
    {"Add no flour, starch or other thickener.", {}, "not thickened", "", false},
    {"The table lists quart jars only; a smaller jar takes the quart time.", {}, "", "", false}};
constexpr citation a243[] = {{"usda-guide-2", "2", "2-28"}};
constexpr sv a244[] = {"mixed vegetables",
    "mixed veg",
    "mixed vegetable",
    "vegetable mix",
    "vegetable mixture"};
constexpr sv a245[] = {"mixed"};
constexpr table a246[] = {{a245, "hot", "carrots, whole kernel corn, cut green beans, lima beans, tomatoes, diced zucchini, or allowed swaps", 1000, a103, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "One garbled state copy prints other quart times; the guide's table stands. Most copies bar winter squash, a later one bars squash altogether."}};
constexpr condition a247[] = {{"Every vegetable must have canning directions of its own; zucchini is allowed here, diced.", {}, "", "", false},
    {"Leave out leafy greens, dried beans, cream style corn, sweet potatoes and winter squash, and any squash but the zucchini.", {}, "", "", false},
    {"Prepare each vegetable as for canning it alone, such as corn scalded and cut from the cob.", {}, "", "", false},
    {"Peel whatever its own directions peel, such as carrots.", {}, "peeled", "", false},
    {"Mix them, cover with water and bring to a boil.", {}, "boiled before filling", "", false},
    {"Boil 5 minutes.", {}, "boiled 5 min", "", false},
    {"Fill the jars with the hot pieces and their liquid.", {}, "covered with liquid", "", false}};
constexpr sv a248[] = {"asparagus",
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
constexpr citation a249[] = {{"usda-guide-4", "4", "4-12"}};
constexpr sv a250[] = {"mushrooms",
    "mushroom",
    "button mushrooms",
    "white mushrooms",
    "cultivated mushrooms",
    "domestic mushrooms",
    "champiñones",
    "champinones"};
constexpr sv a251[] = {"whole",
    "cut"};
constexpr int a252[] = {45};
constexpr jar_minutes a253[] = {{"half-pint", a252},
    {"pint", a252}};
constexpr table a254[] = {{a251, "hot", "small whole, larger ones cut", 1000, a253, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, ""}};
constexpr condition a255[] = {{"Use only grown mushrooms, small to medium, with closed caps; never wild ones.", {}, "cultivated mushrooms", "", false},
    {"Soak them 10 minutes in cold water and wash them; leave small ones whole and cut large ones.", {}, "", "", false},
    {"Cover them with water and bring to a boil.", {}, "boiled before filling", "", false},
    {"Boil 5 minutes.", {}, "boiled 5 min", "", false},
    {"Use fresh hot water, not the water they were boiled in.", {}, "fresh water used", "", false},
    {"Cover the mushrooms with it.", {}, "covered with liquid", "", false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false}};
constexpr citation a256[] = {{"usda-guide-4", "4", "4-13"}};
constexpr sv a257[] = {"okra",
    "okras",
    "okra pods",
    "lady's fingers",
    "ladies' fingers",
    "bhindi",
    "quimbombo",
    "quimbombó"};
constexpr jar_minutes a258[] = {{"pint", a122},
    {"quart", a80}};
constexpr table a259[] = {{a120, "hot", "pods whole or cut in 1-inch pieces", 1000, a258, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, ""}};
constexpr condition a260[] = {{"Cover with hot water, boil 2 minutes and drain.", {}, "boiled before filling", "", false},
    {"Fill the jars with the hot okra and its cooking liquid.", {}, "covered with liquid", "", false}};
constexpr citation a261[] = {{"usda-guide-4", "4", "4-14"}};
constexpr sv a262[] = {"onions",
    "onion",
    "pearl onions",
    "pearl onion",
    "boiling onions",
    "yellow onions",
    "white onions",
    "red onions",
    "cebolla",
    "cebollas"};
constexpr jar_minutes a263[] = {{"pint", a80},
    {"quart", a80}};
constexpr table a264[] = {{a120, "hot", "whole, at most 1 inch across, or 1-inch pieces", 1000, a263, "extension-dial", "low-acid-weighted", {}, "seen", 1, true, "Not in the USDA guide; two Extension pages agree on the minutes. One allows whole onions up to 1 inch across, the other cuts 1-inch sections; only the latter prints the dial bands above 2,000 ft."}};
constexpr condition a265[] = {{"Wash the onions and peel them.", {}, "peeled", "", false},
    {"Leave onions whole only up to 1 inch across; cut larger ones in 1-inch pieces.", {}, "", "", false},
    {"Bring them to a boil in water.", {}, "boiled before filling", "", false},
    {"Boil 5 minutes.", {}, "boiled 5 min", "", false},
    {"Fill the jars hot and cover with the cooking liquid or with boiling water.", {}, "covered with liquid", "", false}};
constexpr citation a266[] = {{"sdsu-onion", "", ""},
    {"extension-onion-answer", "", ""}};
constexpr sv a267[] = {"oysters",
    "oyster",
    "shucked oysters",
    "oyster meats",
    "ostra",
    "ostras",
    "ostion",
    "ostiones",
    "ostión"};
constexpr sv a268[] = {"shucked"};
constexpr jar_minutes a269[] = {{"half-pint", a90},
    {"pint", a90}};
constexpr table a270[] = {{a268, "hot", "shucked meats", 1000, a269, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "The table has no column for the pack: meats covered with hot water are written as hot. Newer text says fresh boiling water, older text hot water."}};
constexpr condition a271[] = {{"Keep the oysters alive on ice until you can them.", {}, "", "", false},
    {"Heat them in the shell 5 to 7 minutes at 400 F, cool them briefly in ice water and shuck them.", {}, "meat precooked", "", false},
    {"Wash the meats in water with 1/2 cup of salt to the gallon, and drain.", {}, "drained", "", false},
    {"Cover with fresh boiling water.", {}, "covered with liquid", "", false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false}};
constexpr citation a272[] = {{"usda-guide-5", "5", "5-12"}};
constexpr sv a273[] = {"green peas",
    "green pea",
    "english peas",
    "english pea",
    "garden peas",
    "garden pea",
    "shelling peas",
    "fresh green peas",
    "petits pois"};
constexpr sv a274[] = {"peas",
    "pea",
    "guisantes",
    "chicharos",
    "chícharos",
    "arvejas"};
constexpr sv a275[] = {"shelled"};
constexpr table a276[] = {{a275, "hot", "shelled young seeds", 1000, a263, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Old Canadian tables with 45 min for quarts are out of date and not used."},
    {a275, "raw", "shelled young seeds", 1000, a263, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Old Canadian tables with 45 min for quarts are out of date and not used."}};
constexpr condition a277[] = {{"Use young green peas out of the pod: no peas with edible pods, no field peas, no dried peas.", {}, "", "", false},
    {"Cover with boiling water, bring to a boil and boil 2 minutes.", a73, "boiled before filling", "", false},
    {"Fill the jars loosely.", a73, "packed loosely", "", false},
    {"Add the cooking liquid.", a73, "covered with liquid", "", false},
    {"Fill the jars without shaking or pressing down.", a83, "packed loosely", "", false},
    {"Add boiling water.", a83, "covered with liquid", "", false}};
constexpr sv a278[] = {"peppers",
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
constexpr sv a279[] = {"whole",
    "quartered"};
constexpr jar_minutes a280[] = {{"half-pint", a129},
    {"pint", a129}};
constexpr table a281[] = {{a279, "hot", "small whole and flattened, large quartered; cored, seeded, peeled", 1000, a280, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "The guide covers with fresh boiled water, one state copy with the cooking liquid. Equipment makers' copies peel chiles only; the guide peels all."}};
constexpr condition a282[] = {{"Take out cores and seeds; leave small peppers whole and quarter large ones. Wear gloves for hot peppers.", {}, "", "", false},
    {"Slit the skins, blister them in the heat or scald them, and peel.", {}, "peeled", "", false},
    {"Flatten whole peppers.", {}, "", "", false},
    {"Fill the jars loosely.", {}, "packed loosely", "", false},
    {"Cover with fresh boiled water.", {}, "covered with liquid", "", false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false}};
constexpr citation a283[] = {{"usda-guide-4", "4", "4-15"}};
constexpr sv a284[] = {"sweet potatoes",
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
constexpr sv a285[] = {"potatoes",
    "potato"};
constexpr sv a286[] = {"whole",
    "even-pieces"};
constexpr jar_minutes a287[] = {{"pint", a89},
    {"quart", a102}};
constexpr table a288[] = {{a286, "hot", "peeled, whole small or uniform pieces", 1000, a287, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, ""}};
constexpr condition a289[] = {{"Use small to medium roots within 1 to 2 months of harvest.", {}, "", "", false},
    {"Boil or steam them 15 to 20 minutes, until partly soft.", {}, "boiled before filling", "", false},
    {"Peel them, and cut larger ones so that all pieces are of one size.", {}, "peeled", "", false},
    {"Do not mash or puree them: no tested process exists for that; mash them after opening.", {}, "", "low-acid-puree", false},
    {"Use fresh boiling water or syrup, not the cooking water.", {}, "fresh water used", "", false},
    {"Cover the pieces with it; never pack them dry.", {}, "covered with liquid", "", false}};
constexpr citation a290[] = {{"usda-guide-4", "4", "4-16"}};
constexpr sv a291[] = {"white potatoes",
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
constexpr sv a292[] = {"whole",
    "half-inch-cubes"};
constexpr jar_minutes a293[] = {{"pint", a129},
    {"quart", a80}};
constexpr table a294[] = {{a292, "hot", "peeled, whole 1 to 2 inches diameter, or 1/2-inch cubes", 1000, a293, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "Equipment makers' copies allow whole potatoes up to 2 1/2 in across; the guide says 1 to 2 in."}};
constexpr condition a295[] = {{"Peel the potatoes: the process was worked out on peeled ones.", {}, "peeled", "", false},
    {"Leave whole only potatoes of 1 to 2 inches across; cut others in 1/2-inch cubes. Keep them from browning in water with ascorbic acid.", {}, "", "", false},
    {"Boil cubes 2 minutes or whole potatoes 10 minutes.", {}, "boiled before filling", "", false},
    {"Drain them.", {}, "drained", "", false},
    {"Use fresh boiling water, never the starchy cooking water.", {}, "fresh water used", "", false},
    {"Cover every piece with it.", {}, "covered with liquid", "", false},
    {"Do not mash or puree them: no tested process exists for that; mash them after opening.", {}, "", "low-acid-puree", false}};
constexpr citation a296[] = {{"usda-guide-4", "4", "4-17"}};
constexpr sv a297[] = {"turkey with bones",
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
constexpr sv a298[] = {"turkey",
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
constexpr table a299[] = {{a142, "hot", "pieces cut to fit the jar, with bones", 1250, a91, "low-acid-dial", "low-acid-weighted", {}, "seen-part", 2, true, "No table of its own in the USDA guide. University Extension says these birds may be canned like chicken; read there: the birds, the minutes, the headspace and the pressure near sea level. Carried over from the chicken table: the pressures of the higher bands."},
    {a142, "raw", "pieces cut to fit the jar, with bones", 1250, a91, "low-acid-dial", "low-acid-weighted", {}, "seen-part", 2, true, "No table of its own in the USDA guide. University Extension says these birds may be canned like chicken; read there: the birds, the minutes, the headspace and the pressure near sea level. Carried over from the chicken table: the pressures of the higher bands."}};
constexpr condition a300[] = {{"Use fresh meat, or thawed in the refrigerator; never cured, brined, corned or smoked meat.", {}, "not smoked", "", false},
    {"Chill the dressed birds.", {}, "chilled", "", false},
    {"Strong-tasting game birds may be soaked 1 hour in water with 1 tbsp of salt to the quart; then leave out salt in the jar.", {}, "", "", false},
    {"Cut off excess fat.", {}, "fat removed", "", false},
    {"Cut it in pieces that fit the jar and leave the bones in: this time is too short for boneless meat.", {}, "bones left in", "", false},
    {"Leave the giblets out.", {}, "", "", false},
    {"Use no flour, batter or other thickener.", {}, "not thickened", "", false},
    {"Boil, steam or bake the meat until about two thirds done.", a73, "meat precooked", "", false},
    {"Cover with hot broth.", a73, "covered with liquid", "", false},
    {"The pieces go in raw.", a83, "meat not precooked", "", false},
    {"Fill the jars loosely.", a83, "packed loosely", "", false},
    {"Add no liquid.", a83, "no liquid added", "", false}};
constexpr citation a301[] = {{"psu-poultry", "", ""},
    {"usda-guide-5", "5", ""}};
constexpr sv a302[] = {"turkey without bones",
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
constexpr table a303[] = {{a147, "hot", "pieces cut to fit the jar, without bones", 1250, a103, "low-acid-dial", "low-acid-weighted", {}, "seen-part", 2, true, "No table of its own in the USDA guide. University Extension says these birds may be canned like chicken; read there: the birds, the minutes, the headspace and the pressure near sea level. Carried over from the chicken table: the pressures of the higher bands."},
    {a147, "raw", "pieces cut to fit the jar, without bones", 1250, a103, "low-acid-dial", "low-acid-weighted", {}, "seen-part", 2, true, "No table of its own in the USDA guide. University Extension says these birds may be canned like chicken; read there: the birds, the minutes, the headspace and the pressure near sea level. Carried over from the chicken table: the pressures of the higher bands."}};
constexpr condition a304[] = {{"Use fresh meat, or thawed in the refrigerator; never cured, brined, corned or smoked meat.", {}, "not smoked", "", false},
    {"Chill the dressed birds.", {}, "chilled", "", false},
    {"Strong-tasting game birds may be soaked 1 hour in water with 1 tbsp of salt to the quart; then leave out salt in the jar.", {}, "", "", false},
    {"Cut off excess fat.", {}, "fat removed", "", false},
    {"Take the meat off the bones and cut it in pieces that fit the jar.", {}, "bones removed", "", false},
    {"Leave the giblets out.", {}, "", "", false},
    {"Use no flour, batter or other thickener.", {}, "not thickened", "", false},
    {"Boil, steam or bake the meat until about two thirds done.", a73, "meat precooked", "", false},
    {"Cover with hot broth.", a73, "covered with liquid", "", false},
    {"The pieces go in raw.", a83, "meat not precooked", "", false},
    {"Fill the jars loosely.", a83, "packed loosely", "", false},
    {"Add no liquid.", a83, "no liquid added", "", false}};
constexpr sv a305[] = {"pumpkin",
    "pumpkins",
    "pie pumpkin",
    "pie pumpkins",
    "sugar pumpkin",
    "sugar pumpkins",
    "pumpkin cubes",
    "cubed pumpkin"};
constexpr sv a306[] = {"1-inch-cubes"};
constexpr jar_minutes a307[] = {{"pint", a173},
    {"quart", a102}};
constexpr table a308[] = {{a306, "hot", "peeled, 1-inch cubes", 1000, a307, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "A garden page with 55 min for quarts and a blog with 20 min are unsafe and not used."}};
constexpr condition a309[] = {{"Use pumpkins with a hard rind and ripe flesh without strings.", {}, "", "", false},
    {"Peel it and cut it in 1-inch cubes: cubes are the only tested form.", {}, "peeled", "", false},
    {"Boil the cubes 2 minutes in water.", {}, "boiled before filling", "", false},
    {"Do not mash or puree it: no tested process exists for that; mash it after opening.", {}, "", "low-acid-puree", false},
    {"Fill the jars with the cubes and their cooking liquid.", {}, "covered with liquid", "", false}};
constexpr sv a310[] = {"seafood soup",
    "fish soup",
    "clam soup",
    "soup with seafood",
    "soup with fish",
    "sopa de mariscos",
    "sopa de pescado"};
constexpr sv a311[] = {"soup"};
constexpr jar_minutes a312[] = {{"pint", a188},
    {"quart", a188}};
constexpr table a313[] = {{a311, "hot", "soup containing any seafood; jars half solids, half liquid", 1000, a312, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "The guide prints this time as a footnote to the soup table, for pints and quarts alike; an equipment maker's copy lacks it."}};
constexpr condition a314[] = {{"Every solid ingredient must have canning directions of its own, and is prepared as for its hot pack; so no cabbage.", {}, "", "", false},
    {"Peel whatever its own directions peel, such as carrots, potatoes and onions.", {}, "peeled", "", false},
    {"Prepare the seafood as for canning it alone: only kinds that have canning directions (so no shrimp and no blue crab).", {}, "", "", false},
    {"No noodles, other pasta, rice, barley, dumplings, flour, starch, cream, milk or other thickener go in; add them after opening.", {}, "not thickened", "", false},
    {"If dried beans or peas are in it, pour 3 cups of water over each cup, boil 2 minutes, let them stand 1 hour off the heat, heat to a boil and drain.", {}, "beans rehydrated", "beans-not-rehydrated", false},
    {"If meat or poultry is in it, cook it tender and let it cool.", {}, "meat precooked", "", false},
    {"Take the bones out.", {}, "bones removed", "", false},
    {"Take off the fat.", {}, "fat removed", "", false},
    {"If mushrooms are in it, use grown ones, never wild ones.", {}, "cultivated mushrooms", "", false},
    {"Drain all solids.", {}, "drained", "", false},
    {"Cover them with hot broth, tomatoes or water and bring to a boil.", {}, "boiled before filling", "", false},
    {"Boil 5 minutes.", {}, "boiled 5 min", "", false},
    {"Fill the solids in loosely, without pressing.", {}, "packed loosely", "", false},
    {"Fill up with the hot liquid.", {}, "covered with liquid", "", false}};
constexpr sv a315[] = {"asparagus",
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
constexpr citation a316[] = {{"usda-guide-4", "4", ""},
    {"clemson-soups", "", ""}};
constexpr sv a317[] = {"vegetable soup",
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
constexpr jar_minutes a318[] = {{"pint", a158},
    {"quart", a90}};
constexpr table a319[] = {{a311, "hot", "vegetable, dried bean or pea, meat or poultry; jars half solids, half liquid", 1000, a318, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "One Extension newsletter asks for the longest time of any single ingredient instead, 60 to 90 min in most cases; the guide's times are the least that is accepted."}};
constexpr condition a320[] = {{"Every solid ingredient must have canning directions of its own, and is prepared as for its hot pack; so no cabbage.", {}, "", "", false},
    {"Peel whatever its own directions peel, such as carrots, potatoes and onions.", {}, "peeled", "", false},
    {"No noodles, other pasta, rice, barley, dumplings, flour, starch, cream, milk or other thickener go in; add them after opening.", {}, "not thickened", "", false},
    {"If dried beans or peas are in it, pour 3 cups of water over each cup, boil 2 minutes, let them stand 1 hour off the heat, heat to a boil and drain.", {}, "beans rehydrated", "beans-not-rehydrated", false},
    {"If meat or poultry is in it, cook it tender and let it cool.", {}, "meat precooked", "", false},
    {"Take the bones out.", {}, "bones removed", "", false},
    {"Take off the fat.", {}, "fat removed", "", false},
    {"If mushrooms are in it, use grown ones, never wild ones.", {}, "cultivated mushrooms", "", false},
    {"No seafood of any kind: it needs the longer process.", {}, "", "", false},
    {"Drain all solids.", {}, "drained", "", false},
    {"Cover them with hot broth, tomatoes or water and bring to a boil.", {}, "boiled before filling", "", false},
    {"Boil 5 minutes.", {}, "boiled 5 min", "", false},
    {"Fill the solids in loosely, without pressing.", {}, "packed loosely", "", false},
    {"Fill up with the hot liquid.", {}, "covered with liquid", "", false}};
constexpr sv a321[] = {"asparagus",
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
constexpr citation a322[] = {{"usda-guide-4", "4", ""},
    {"clemson-soups", "", ""},
    {"kstate-soup-note", "", ""}};
constexpr sv a323[] = {"spaghetti sauce with meat",
    "spaghetti meat sauce",
    "meat spaghetti sauce",
    "meat sauce",
    "pasta sauce with meat",
    "spaghetti sauce with ground beef",
    "spaghetti sauce with sausage"};
constexpr sv a324[] = {"spaghetti sauce",
    "pasta sauce"};
constexpr jar_minutes a325[] = {{"pint", a158},
    {"quart", a159}};
constexpr table a326[] = {{a88, "hot", "sieved tomatoes with browned ground beef or sausage and vegetables, cooked down by nearly one half", 1000, a325, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, ""}};
constexpr condition a327[] = {{"Put the cooked tomatoes through a sieve or a food mill.", {}, "", "", false},
    {"Brown the ground beef or sausage before it goes into the sauce.", {}, "meat precooked", "", false},
    {"Keep to the printed recipe: never more onion, pepper, celery, garlic or mushrooms than it says; less is fine.", {}, "", "", false},
    {"Use only grown mushrooms, never wild ones.", {}, "cultivated mushrooms", "", false},
    {"Simmer the sauce uncovered until it has cooked down by nearly half, and fill the jars while it is hot.", {}, "boiled before filling", "", false},
    {"Let it thicken by cooking down alone; add no flour or starch.", {}, "not thickened", "", false}};
constexpr citation a328[] = {{"usda-guide-3", "3", "3-14"}};
constexpr sv a329[] = {"spaghetti sauce without meat",
    "meatless spaghetti sauce",
    "vegetarian spaghetti sauce",
    "pasta sauce without meat",
    "meatless pasta sauce"};
constexpr table a330[] = {{a88, "hot", "sieved tomatoes with sauteed vegetables, cooked down by nearly one half", 1000, a123, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "One copy heads both of its tables as weighted; the first is plainly the dial table."}};
constexpr condition a331[] = {{"Put the cooked tomatoes through a sieve or a food mill.", {}, "", "", false},
    {"Put no meat in: with meat the longer process holds.", {}, "", "", false},
    {"Cook the vegetables soft in oil, with no more oil than printed.", {}, "", "", false},
    {"Keep to the printed recipe: never more onion, pepper, celery, garlic or mushrooms than it says; less is fine.", {}, "", "", false},
    {"Use only grown mushrooms, never wild ones.", {}, "cultivated mushrooms", "", false},
    {"Simmer the sauce uncovered until it has cooked down by nearly half, and fill the jars while it is hot.", {}, "boiled before filling", "", false},
    {"Let it thicken by cooking down alone; add no flour or starch.", {}, "not thickened", "", false}};
constexpr citation a332[] = {{"usda-guide-3", "3", "3-13"}};
constexpr sv a333[] = {"winter squash",
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
constexpr table a334[] = {{a306, "hot", "peeled, 1-inch cubes", 1000, a307, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "The guide sends winter squash to the pumpkin table. A garden page with 55 min for quarts and a blog with 20 min are unsafe and not used."}};
constexpr condition a335[] = {{"Use squash with a hard rind and ripe flesh without strings; spaghetti squash does not stay in cubes and is not covered.", {}, "", "", false},
    {"Peel it and cut it in 1-inch cubes: cubes are the only tested form.", {}, "peeled", "", false},
    {"Boil the cubes 2 minutes in water.", {}, "boiled before filling", "", false},
    {"Do not mash or puree it: no tested process exists for that; mash it after opening.", {}, "", "low-acid-puree", false},
    {"Fill the jars with the cubes and their cooking liquid.", {}, "covered with liquid", "", false}};
constexpr sv a336[] = {"succotash",
    "corn and lima beans"};
constexpr jar_minutes a337[] = {{"pint", a158},
    {"quart", a167}};
constexpr table a338[] = {{a245, "hot", "whole kernel corn and shelled green lima beans, tomatoes optional", 1000, a337, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "One state copy soaks dried limas; the guide's recipe takes fresh green ones. Copies that print 1 lb of corn for 15 lb hold a slip."},
    {a245, "raw", "whole kernel corn and shelled green lima beans, tomatoes optional", 1000, a337, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "One state copy soaks dried limas; the guide's recipe takes fresh green ones. Copies that print 1 lb of corn for 15 lb hold a slip."}};
constexpr condition a339[] = {{"Use fresh green lima beans out of the pod, not dried ones.", {}, "", "", false},
    {"Scald the ears of corn and cut the kernels off as for whole kernel corn.", {}, "blanched", "", false},
    {"Mix the vegetables, cover with water and bring to a boil.", a73, "boiled before filling", "", false},
    {"Boil gently 5 minutes.", a73, "boiled 5 min", "", false},
    {"Fill the jars with the vegetables and their cooking liquid.", a73, "covered with liquid", "", false},
    {"Mix equal parts of the prepared vegetables.", a83, "", "", false},
    {"Fill the jars without shaking or pressing down.", a83, "packed loosely", "", false},
    {"Cover with fresh boiling water.", a83, "covered with liquid", "", false}};
constexpr sv a340[] = {"tomatoes with okra",
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
constexpr sv a341[] = {"okra-whole",
    "okra-1-inch-pieces",
    "zucchini-sliced",
    "zucchini-cubed"};
constexpr table a342[] = {{a341, "hot", "peeled quartered tomatoes with okra (whole or 1-inch pieces) or zucchini (sliced or cubed)", 1000, a130, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, ""}};
constexpr condition a343[] = {{"Take about 3 lb of tomatoes to 1 lb of okra or zucchini; more okra or zucchini is not tested.", {}, "", "", false},
    {"Peel and core the tomatoes and quarter them.", {}, "peeled", "", false},
    {"Leave okra pods whole or cut them in 1-inch pieces; slice or cube zucchini.", {}, "", "", false},
    {"Bring the tomatoes to a boil and simmer them 10 minutes before the vegetable goes in.", {}, "boiled before filling", "", false},
    {"Boil them gently 5 minutes more with the vegetable.", {}, "boiled 5 min", "", false},
    {"At most 4 or 5 pearl onions, or 2 slices of onion, may go into each jar.", {}, "", "", false},
    {"Added acid does not make this mixture fit for boiling water.", {}, "", "", false}};
constexpr citation a344[] = {{"usda-guide-3", "3", "3-12"}};
constexpr sv a345[] = {"tuna",
    "tuna fish",
    "albacore",
    "albacore tuna",
    "atun",
    "atún"};
constexpr sv a346[] = {"chunks"};
constexpr jar_minutes a347[] = {{"half-pint", a188},
    {"pint", a188}};
constexpr table a348[] = {{a346, "hot", "chunks without skin, bone and dark flesh", 1000, a347, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "The table has no column for the pack: precooked and raw tuna share it. The 90 min of older advice are out of date."},
    {a346, "raw", "chunks without skin, bone and dark flesh", 1000, a347, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "The table has no column for the pack: precooked and raw tuna share it. The 90 min of older advice are out of date. The guide speaks of water or oil in the jar; packing raw tuna without added liquid is printed elsewhere only."}};
constexpr condition a349[] = {{"Use fresh tuna kept on ice, or thawed in the refrigerator, and not smoked.", {}, "not smoked", "", false},
    {"Bake it 2 1/2 to 4 hours at 250 F or 1 hour at 350 F, or steam it 2 to 4 hours, until it is 165 to 175 F inside.", a73, "meat precooked", "", false},
    {"Refrigerate it overnight to firm it.", a73, "chilled", "", false},
    {"The pieces go in raw.", a83, "meat not precooked", "", false},
    {"Take off the skin and cut the meat from the bones.", {}, "skin and bones removed", "", false},
    {"Leave out every bone, the fin bases and the dark flesh.", {}, "bones removed", "", false},
    {"Press the chunks gently into a solid pack.", {}, "", "", false},
    {"Add water or oil up to the headspace.", a73, "covered with liquid", "", false},
    {"Half-pint and pint jars only: no quart process exists.", {}, "", "", false}};
constexpr citation a350[] = {{"usda-guide-5", "5", "5-14"}};
constexpr sv a351[] = {"minced game",
    "chopped wild game",
    "game mince"};
constexpr sv a352[] = {"venison",
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
constexpr table a353[] = {{a217, "hot", "patties, balls, links or loose", 1000, a103, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "The same table as ground or chopped meat, which names bear and venison."}};
constexpr condition a354[] = {{"Take no meat from a deer or elk that looked sick; keep brain and spine away from the meat.", {}, "", "", false},
    {"Use fresh meat, never cured, brined or smoked.", {}, "not smoked", "", false},
    {"Ground venison takes 1 part of pork fat to 3 or 4 parts of venison, mixed in before grinding.", {}, "", "", false},
    {"Shape it into patties or balls, stuff it in casings cut to links of 3 to 4 inches, or leave it loose; no bread, flour or egg in it.", {}, "not thickened", "", false},
    {"Cook it until lightly browned.", {}, "meat precooked", "", false},
    {"Drain off excess fat.", {}, "fat removed", "", false},
    {"Cover with boiling meat broth, tomato juice or water; the liquid is part of the process.", {}, "covered with liquid", "", false}};
constexpr sv a355[] = {"wild game strips",
    "wild game cubes",
    "wild game chunks",
    "cubed wild game",
    "elk strips",
    "elk cubes",
    "elk chunks",
    "elk stew meat"};
constexpr sv a356[] = {"venison",
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
constexpr table a357[] = {{a231, "hot", "strips, cubes or chunks, large bones removed", 1000, a103, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "The same table as meat in strips, cubes or chunks, which names bear and venison. Extension pages name elk beside deer; their own times were not read."},
    {a231, "raw", "strips, cubes or chunks, large bones removed", 1000, a103, "low-acid-dial", "low-acid-weighted", {}, "seen", 2, true, "The same table as meat in strips, cubes or chunks, which names bear and venison. Extension pages name elk beside deer; their own times were not read. One copy of the 1994 text lists the hot pack alone in its dial table."}};
constexpr condition a358[] = {{"Take no meat from a deer or elk that looked sick; keep brain and spine away from the meat.", {}, "", "", false},
    {"Use fresh meat, or thawed in the refrigerator; never cured, brined, corned or smoked meat.", {}, "not smoked", "", false},
    {"Use well chilled meat.", {}, "chilled", "", false},
    {"Soak strong-tasting game 1 hour in water with 1 tbsp of salt to the quart, and rinse it.", {}, "", "", false},
    {"Cut off gristle, bruised spots and excess fat.", {}, "fat removed", "", false},
    {"Take out the large bones: meat on the bone has no tested process here.", {}, "bones removed", "", false},
    {"Cut it in strips, cubes or chunks; the guide sets no size, one Extension page makes the strips 1 inch wide.", {}, "", "", false},
    {"Use no flour, batter or other thickener.", {}, "not thickened", "", false},
    {"Roast, stew or brown the meat in a little fat until rare.", a73, "meat precooked", "", false},
    {"Fill the jars loosely.", {}, "packed loosely", "", false},
    {"Cover with boiling broth, drippings, water or tomato juice.", a73, "covered with liquid", "", false},
    {"The pieces go in raw.", a83, "meat not precooked", "", false},
    {"Add no liquid.", a83, "no liquid added", "", false}};
constexpr citation a359[] = {{"usda-guide-5", "5", "5-6"},
    {"pnw-361", "", ""}};
constexpr process a360[] = {{"asparagus", "asparagus", a77, {}, "Asparagus spears, whole or cut.", food_class::low_acid, recipe_kind::plain, a82, a84, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a85},
    {"beans-baked", "baked beans", a86, a87, "Dried beans baked in the printed molasses sauce.", food_class::low_acid, recipe_kind::fixed, a92, a93, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a94},
    {"beans-dry-with-sauce", "dried beans with tomato or molasses sauce", a95, a87, "Dried beans in one of the printed thin sauces.", food_class::low_acid, recipe_kind::fixed, a97, a98, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a94},
    {"beans-dry", "dried beans or peas", a99, a100, "Ripe dry beans and peas of any variety, soaked and boiled before filling.", food_class::low_acid, recipe_kind::plain, a104, a105, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a85},
    {"beans-lima-fresh", "fresh lima beans", a106, a107, "Fresh green lima beans out of the pod; dried ones go by the table of dried beans.", food_class::low_acid, recipe_kind::plain, a115, a116, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a117},
    {"beans-snap", "snap and Italian beans", a118, a119, "Green and wax snap beans and Italian beans, in the pod.", food_class::low_acid, recipe_kind::plain, a124, a125, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a126},
    {"beets", "beets", a127, {}, "Beets without their tops, unpickled.", food_class::low_acid, recipe_kind::plain, a131, a132, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a133},
    {"carrots", "carrots", a134, {}, "Carrots, peeled and cut.", food_class::low_acid, recipe_kind::plain, a137, a138, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a139},
    {"chicken-with-bones", "chicken or rabbit with bones", a140, a141, "Chicken and rabbit in pieces with the bones in.", food_class::low_acid, recipe_kind::plain, a143, a144, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a145},
    {"chicken-without-bones", "chicken or rabbit without bones", a146, a141, "Chicken and rabbit in pieces off the bone.", food_class::low_acid, recipe_kind::plain, a148, a149, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a145},
    {"chile-con-carne", "chile con carne", a150, a151, "The printed recipe of ground beef, dried beans and tomatoes; no chili of one's own.", food_class::low_acid, recipe_kind::fixed, a153, a154, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a155},
    {"clams", "clams", a156, {}, "Clams, whole or minced.", food_class::low_acid, recipe_kind::plain, a161, a162, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a163},
    {"corn-cream-style", "cream style corn", a164, a165, "Corn cut through the middle of the kernels, with the scrapings of the cob and water.", food_class::low_acid, recipe_kind::plain, a169, a170, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a139},
    {"corn-whole-kernel", "whole kernel corn", a171, a165, "Whole kernels cut from the cob.", food_class::low_acid, recipe_kind::plain, a175, a176, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a177},
    {"crab-king-dungeness", "king or Dungeness crab", a178, {}, "Meat of king crab and Dungeness crab; blue crab is frozen instead.", food_class::low_acid, recipe_kind::plain, a182, a183, a184, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a163},
    {"fish-pint-jars", "fish other than tuna, by the pint-jar table", a185, a186, "Blue, mackerel, salmon, steelhead, trout and other fatty fish, and halibut; not tuna, not smoked fish.", food_class::low_acid, recipe_kind::plain, a191, a192, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a193},
    {"fish-quart-jars", "fish other than tuna, by the quart-jar table", a194, a186, "Fatty fish and halibut in straight-sided wide-mouth quart jars; not tuna, not smoked fish.", food_class::low_acid, recipe_kind::plain, a198, a199, {}, {20, 3, 0, 0, 0, 0, 0, 0, {}}, {}, "", a200},
    {"fish-smoked", "smoked fish", a201, a202, "Lightly smoked salmon, rockfish, sole, cod, flounder and other fish; no other smoked seafood.", food_class::low_acid, recipe_kind::plain, a206, a207, {}, {0, 4, 16, 22, 8, 7, 0, 24, a83}, {}, "The time is printed by USDA and Pacific Northwest Extension; the dial pressures were carried over from the table for fish in pints and could not be read again.", a208},
    {"greens", "spinach and other greens", a209, {}, "Spinach, chard, kale, collards, mustard, turnip and beet greens; not head cabbage.", food_class::low_acid, recipe_kind::plain, a212, a213, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a214},
    {"ground-meat", "ground or chopped meat", a215, a216, "Ground or chopped bear, beef, lamb, pork, veal and venison, and fresh sausage.", food_class::low_acid, recipe_kind::plain, a218, a219, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a220},
    {"meat-stock-beef", "beef stock", a221, a222, "Stock of beef bones, strained.", food_class::low_acid, recipe_kind::plain, a224, a225, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a226},
    {"meat-stock-poultry", "chicken or turkey stock", a227, a222, "Stock of chicken or turkey bones, strained.", food_class::low_acid, recipe_kind::plain, a224, a228, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a226},
    {"meat-strips-cubes-chunks", "meat in strips, cubes or chunks", a229, a230, "Bear, beef, lamb, pork, veal and venison in strips, cubes or chunks.", food_class::low_acid, recipe_kind::plain, a232, a233, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a220},
    {"mexican-tomato-sauce", "Mexican tomato sauce", a234, {}, "Tomatoes cooked with chiles, onions and a little vinegar, by the printed recipe.", food_class::low_acid, recipe_kind::fixed, a235, a236, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a237},
    {"mincemeat-pie-filling", "mincemeat pie filling", a238, a239, "Mincemeat of ground beef, or of ground venison with sausage, with suet, apples, raisins and cider, by the printed recipe.", food_class::low_acid, recipe_kind::fixed, a241, a242, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a243},
    {"mixed-vegetables", "mixed vegetables", a244, {}, "Carrots, whole kernel corn, green beans, lima beans, tomatoes and zucchini, in other proportions too, or with other vegetables in their place.", food_class::low_acid, recipe_kind::frame, a246, a247, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, a248, "", a249},
    {"mushrooms", "mushrooms", a250, {}, "Grown mushrooms, small to medium, with closed caps.", food_class::low_acid, recipe_kind::plain, a254, a255, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a256},
    {"okra", "okra", a257, {}, "Okra pods, unpickled.", food_class::low_acid, recipe_kind::plain, a259, a260, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a261},
    {"onions", "onions", a262, {}, "Onions, whole if at most 1 inch across, or in 1-inch pieces; from university Extension, not from the USDA guide.", food_class::low_acid, recipe_kind::plain, a264, a265, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "The USDA guide has no table for onions; these numbers are printed by university Extension.", a266},
    {"oysters", "oysters", a267, {}, "Shucked oysters.", food_class::low_acid, recipe_kind::plain, a270, a271, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a272},
    {"peas-green", "green peas", a273, a274, "Green or English peas out of the pod.", food_class::low_acid, recipe_kind::plain, a276, a277, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a261},
    {"peppers", "peppers", a278, a151, "Hot or sweet peppers, with chiles, jalapenos, pimientos and bell peppers; unpickled.", food_class::low_acid, recipe_kind::plain, a281, a282, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a283},
    {"potatoes-sweet", "sweet potatoes", a284, a285, "Sweet potatoes, whole if small, or in even pieces.", food_class::low_acid, recipe_kind::plain, a288, a289, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a290},
    {"potatoes-white", "white potatoes", a291, a285, "White potatoes, peeled, whole if small, or in cubes.", food_class::low_acid, recipe_kind::plain, a294, a295, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a296},
    {"poultry-other-with-bones", "turkey, duck, goose or game birds with bones", a297, a298, "Turkey, duck, goose and game birds in pieces with the bones in; from university Extension.", food_class::low_acid, recipe_kind::plain, a299, a300, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "The USDA table names chicken and rabbit; university Extension uses its numbers for these birds.", a301},
    {"poultry-other-without-bones", "turkey, duck, goose or game birds without bones", a302, a298, "Turkey, duck, goose and game birds in pieces off the bone; from university Extension.", food_class::low_acid, recipe_kind::plain, a303, a304, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "The USDA table names chicken and rabbit; university Extension uses its numbers for these birds.", a301},
    {"pumpkin", "pumpkin", a305, {}, "Pumpkin in cubes, never mashed or pureed.", food_class::low_acid, recipe_kind::plain, a308, a309, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a214},
    {"soups-with-seafood", "soup with seafood", a310, a311, "Soup with any fish or shellfish, of the cook's own choice inside these rules.", food_class::low_acid, recipe_kind::frame, a313, a314, {}, {0, 0, 0, 0, 0, 0, 50, 0, {}}, a315, "", a316},
    {"soups", "soup without seafood", a317, a311, "Vegetable, dried bean or pea, meat or poultry soup of the cook's own choice inside these rules.", food_class::low_acid, recipe_kind::frame, a319, a320, {}, {0, 0, 0, 0, 0, 0, 50, 0, {}}, a321, "", a322},
    {"spaghetti-sauce-with-meat", "spaghetti sauce with meat", a323, a324, "Tomato sauce with ground beef or sausage and vegetables, by the printed recipe.", food_class::low_acid, recipe_kind::fixed, a326, a327, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a328},
    {"spaghetti-sauce-without-meat", "spaghetti sauce without meat", a329, a324, "Tomato sauce with vegetables cooked soft in oil, by the printed recipe.", food_class::low_acid, recipe_kind::fixed, a330, a331, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a332},
    {"squash-winter", "winter squash", a333, {}, "Acorn, banana, buttercup, butternut, golden delicious and hubbard squash in cubes, never mashed or pureed; not spaghetti squash.", food_class::low_acid, recipe_kind::plain, a334, a335, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a214},
    {"succotash", "succotash", a336, {}, "Whole kernel corn with fresh lima beans, with or without tomatoes.", food_class::low_acid, recipe_kind::fixed, a338, a339, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a214},
    {"tomatoes-with-okra-or-zucchini", "tomatoes with okra or zucchini", a340, {}, "Peeled tomatoes with okra or with zucchini, about 3 lb to 1 lb.", food_class::low_acid, recipe_kind::fixed, a342, a343, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a344},
    {"tuna", "tuna", a345, {}, "Tuna, precooked or raw; not smoked.", food_class::low_acid, recipe_kind::plain, a348, a349, {}, {0, 0, 0, 0, 0, 0, 0, 24, a73}, {}, "", a350},
    {"wild-game-ground", "ground or chopped wild game", a351, a352, "Ground or chopped bear and venison.", food_class::low_acid, recipe_kind::plain, a353, a354, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a220},
    {"wild-game-strips", "wild game in strips, cubes or chunks", a355, a356, "Bear and venison in strips, cubes or chunks; elk by university Extension.", food_class::low_acid, recipe_kind::plain, a357, a358, {}, {0, 0, 0, 0, 0, 0, 0, 0, {}}, {}, "", a359}};
constexpr citation a361[] = {{"usda-guide-1", "1", ""},
    {"usda-guide-5", "5", "5-9"}};
constexpr example a362[] = {{"king crab with citric acid", "food: king crab\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 80 min\naltitude: 4600 ft\nacid: 1 tsp citric acid per pint\n", {}}};
constexpr sv a363[] = {"9:7 acid-missing"};
constexpr example a364[] = {{"king crab with vinegar", "food: king crab\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 80 min\naltitude: 4600 ft\nacid: 4 tbsp vinegar per pint\n", a363}};
constexpr example a365[] = {{"king crab with 4 tablespoons of lemon juice to the pint", "food: king crab\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 80 min\naltitude: 4600 ft\nacid: 4 tbsp bottled lemon juice per pint\n", {}}};
constexpr sv a366[] = {"9:7 acid-too-little"};
constexpr example a367[] = {{"king crab with half of the acid", "food: king crab\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 80 min\naltitude: 4600 ft\nacid: 1/2 tsp citric acid per pint\n", a366}};
constexpr example a368[] = {{"a dial at 4,600 ft", "food: beets\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 30 min\naltitude: 4600 ft\n", {}},
    {"a weighted gauge at 8,600 ft", "food: beets\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 8600 ft\n", {}}};
constexpr sv a369[] = {"8:11 altitude-by-extension"};
constexpr example a370[] = {{"a dial at 8,600 ft", "food: beets\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 15 psi\ntime: 30 min\naltitude: 8600 ft\n", a369}};
constexpr citation a371[] = {{"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""},
    {"sdsu-onion", "", ""}};
constexpr example a372[] = {{"carrots at 4,600 ft", "food: carrots\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\n", {}}};
constexpr sv a373[] = {"8:11 altitude-outside-table"};
constexpr example a374[] = {{"carrots in a hut at 10,400 ft", "food: carrots\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 10400 ft\n", a373}};
constexpr example a375[] = {{"a teaspoon of citric acid to the pint", "food: king crab\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 80 min\naltitude: 4600 ft\nacid: 1 tsp citric acid per pint\n", {}}};
constexpr sv a376[] = {"9:7 amount-unknown"};
constexpr example a377[] = {{"some citric acid", "food: king crab\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 80 min\naltitude: 4600 ft\nacid: some citric acid\n", a376}};
constexpr citation a378[] = {{"usda-guide-4", "4", "4-5"},
    {"clemson-soups", "", ""},
    {"extension-beans-answer", "", ""}};
constexpr example a379[] = {{"white beans, soaked and boiled", "food: white beans\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [beans rehydrated]\n", {}}};
constexpr sv a380[] = {"9:12 beans-not-rehydrated"};
constexpr sv a381[] = {"1:1 beans-not-rehydrated"};
constexpr example a382[] = {{"white beans put in dry", "food: white beans\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [beans not rehydrated]\n", a380},
    {"white beans with no word on soaking", "food: white beans\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", a381}};
constexpr citation a383[] = {{"nchfp-smoked-fish", "", ""},
    {"pnw-450", "", ""}};
constexpr example a384[] = {{"smoked trout in a canner of 22 quarts", "food: smoked trout\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 110 min\naltitude: 4600 ft\nwater: 4 qt\ncanner: {volume: 22 qt}\n", {}}};
constexpr sv a385[] = {"10:18 canner-too-large"};
constexpr example a386[] = {{"smoked trout in a canner of 23 quarts", "food: smoked trout\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 110 min\naltitude: 4600 ft\nwater: 4 qt\ncanner: {volume: 23 qt}\n", a385}};
constexpr citation a387[] = {{"nchfp-pop-quiz", "", ""},
    {"clemson-pressure-saucepan", "", ""},
    {"nchfp-multi-cooker", "", ""}};
constexpr example a388[] = {{"a canner for seven quarts", "food: white potatoes\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 35 min\naltitude: 4600 ft\ncanner: {quarts: 7, pints: 9, volume: 16 qt}\n", {}}};
constexpr sv a389[] = {"9:18 canner-too-small"};
constexpr sv a390[] = {"10:18 canner-too-small"};
constexpr example a391[] = {{"a pot for three quart jars", "food: white potatoes\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 35 min\naltitude: 4600 ft\ncanner: {quarts: 3}\n", a389},
    {"a pot of eight quarts", "food: white potatoes\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 35 min\naltitude: 4600 ft\ncanner: {volume: 8 qt}\n", a389},
    {"smoked trout in a canner of 12 quarts", "food: smoked trout\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 110 min\naltitude: 4600 ft\nwater: 4 qt\ncanner: {volume: 12 qt}\n", a390}};
constexpr citation a392[] = {{"usda-guide-1", "1", ""},
    {"nchfp-process-time", "", ""}};
constexpr example a393[] = {{"everything said", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a394[] = {"1:1 fact-missing"};
constexpr example a395[] = {{"no altitude", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\n", a394},
    {"13 psi on a gauge that is not named", "food: green beans\npack: hot\njar: pint\nmethod: pressure\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", a394},
    {"king crab with no word on the acid", "food: king crab\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 80 min\naltitude: 4600 ft\n", a394}};
constexpr example a396[] = {{"chicken off the bone", "food: boneless chicken\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", {}}};
constexpr sv a397[] = {"1:7 food-ambiguous"};
constexpr sv a398[] = {"1:15 food-ambiguous"};
constexpr example a399[] = {{"chicken, with or without bones", "food: chicken\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", a397},
    {"beans of some kind", "ingredients: [7 lb beans]\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", a398}};
constexpr example a400[] = {{"potatoes in half-inch cubes", "food: white potatoes\nform: half-inch-cubes\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 40 min\naltitude: 4600 ft\n", {}}};
constexpr sv a401[] = {"2:7 form-not-tested"};
constexpr example a402[] = {{"sliced potatoes", "food: white potatoes\nform: sliced\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 40 min\naltitude: 4600 ft\n", a401}};
constexpr citation a403[] = {{"usda-guide-1", "1", ""},
    {"pnw-421", "", ""}};
constexpr example a404[] = {{"the 15 psi weight at 4,600 ft", "food: onions\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", {}}};
constexpr sv a405[] = {"6:11 gauge-cannot-hold"};
constexpr example a406[] = {{"a dial number on a weighted gauge", "food: onions\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 13 psi\ntime: 40 min\naltitude: 4600 ft\n", a405}};
constexpr citation a407[] = {{"iowa-gauges", "", ""},
    {"missouri-gauges", "", ""}};
constexpr example a408[] = {{"a dial that reads 2 psi high, run 2 psi higher", "food: beets\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\ngauge-error: +2 psi\npressure: 15 psi\ntime: 35 min\naltitude: 4600 ft\n", {}}};
constexpr sv a409[] = {"6:14 gauge-error-too-large"};
constexpr example a410[] = {{"a dial that reads 3 psi high", "food: beets\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\ngauge-error: +3 psi\npressure: 16 psi\ntime: 35 min\naltitude: 4600 ft\n", a409}};
constexpr citation a411[] = {{"missouri-gauges", "", ""},
    {"pnw-421", "", ""}};
constexpr example a412[] = {{"a weighted gauge and nothing else", "food: onions\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", {}}};
constexpr sv a413[] = {"6:14 gauge-error-unused"};
constexpr example a414[] = {{"a weighted gauge beside a dial that reads 1 psi high", "food: onions\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\ngauge-error: +1 psi\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", a413}};
constexpr citation a415[] = {{"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""},
    {"kstate-ten-tips", "", ""}};
constexpr example a416[] = {{"carrots with 1 inch", "food: carrots\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\nheadspace: 1 in\n", {}}};
constexpr sv a417[] = {"9:12 headspace-too-large"};
constexpr example a418[] = {{"carrots with 2 inches", "food: carrots\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\nheadspace: 2 in\n", a417}};
constexpr example a419[] = {{"chicken with 1 1/4 inches", "food: bone-in chicken\npack: raw\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nheadspace: 1 1/4 in\n", {}}};
constexpr sv a420[] = {"9:12 headspace-too-small"};
constexpr example a421[] = {{"chicken with the 1 inch of vegetables", "food: bone-in chicken\npack: raw\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nheadspace: 1 in\n", a420}};
constexpr citation a422[] = {{"usda-guide-5", "5", ""},
    {"uaf-fish-quarts", "", ""}};
constexpr example a423[] = {{"trout in pints, which has no heat-up of its own", "food: fish in pint jars\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 100 min\naltitude: 4600 ft\n", {}}};
constexpr sv a424[] = {"1:7 table-not-verified",
    "9:10 heat-up-too-short"};
constexpr example a425[] = {{"trout in quarts, heated for 10 minutes", "food: trout in quart jars\npack: raw\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 160 min\naltitude: 4600 ft\nheat-up: 10 min\nwater: 3 qt\n", a424}};
constexpr citation a426[] = {{"missouri-leftovers", "", ""},
    {"nal-leftovers", "", ""},
    {"illinois-leftovers", "", ""}};
constexpr example a427[] = {{"soup filled on the day it is cooked", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", {}}};
constexpr sv a428[] = {"12:7 held-cold"};
constexpr example a429[] = {{"soup kept cold overnight and boiled again", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [reheated to a boil]\nheld: {for: 14 h, at: 38 F}\n", a428}};
constexpr citation a430[] = {{"nal-leftovers", "", ""},
    {"illinois-leftovers", "", ""}};
constexpr sv a431[] = {"12:7 held-too-long"};
constexpr example a432[] = {{"soup kept in the refrigerator for four days", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [reheated to a boil]\nheld: {for: 96 h, at: 38 F}\n", a431}};
constexpr example a433[] = {{"soup filled an hour and a half after cooking", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nheld: {for: 1 h 30 min, at: 72 F}\n", {}}};
constexpr sv a434[] = {"11:7 held-too-warm"};
constexpr example a435[] = {{"soup left on the counter for the afternoon", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nheld: {for: 5 h, at: 68 F}\n", a434}};
constexpr example a436[] = {{"pack and gauge said", "food: carrots\npack: raw\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", {}}};
constexpr sv a437[] = {"1:1 holds-either-way"};
constexpr example a438[] = {{"15 psi on a gauge that is not named", "food: carrots\npack: raw\njar: quart\nmethod: pressure\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", a437},
    {"carrots whose pack is not named", "food: carrots\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", a437}};
constexpr citation a439[] = {{"usda-guide-1", "1", ""},
    {"wisconsin-mixtures", "", ""}};
constexpr example a440[] = {{"beets by their plain name", "ingredients: |\n  8 lb beets, peeled\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", {}}};
constexpr sv a441[] = {"2:3 ingredient-unknown"};
constexpr sv a442[] = {"3:5 ingredient-unknown"};
constexpr example a443[] = {{"a slip of the pen", "ingredients: |\n  8 lb beetz, boiled and peeled\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", a441},
    {"a mix that nobody can look into", "ingredients:\n  - 8 lb beets, peeled\n  - 2 cups of the usual mix\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", a442}};
constexpr citation a444[] = {{"nchfp-jar-sizes", "", ""},
    {"nchfp-process-time", "", ""},
    {"kstate-odd-jars", "", ""}};
constexpr example a445[] = {{"carrots in pints", "food: carrots\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\n", {}}};
constexpr sv a446[] = {"3:6 jar-in-between"};
constexpr example a447[] = {{"carrots in half-pints", "food: carrots\npack: hot\njar: half-pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\n", a446},
    {"carrots in 500 mL jars", "food: carrots\npack: hot\njar: 500 mL\nmethod: pressure\ngauge: weighted\npressure: 103 kPa\ntime: 30 min\naltitude: 1403 m\n", a446}};
constexpr citation a448[] = {{"nchfp-jar-sizes", "", ""},
    {"kstate-odd-jars", "", ""}};
constexpr example a449[] = {{"venison and white bean soup in quarts", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", {}}};
constexpr sv a450[] = {"5:6 jar-too-large"};
constexpr sv a451[] = {"3:6 jar-too-large"};
constexpr example a452[] = {{"venison and white bean soup in half-gallon jars", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: half-gallon\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 2 h\naltitude: 4600 ft\n", a450},
    {"green beans in 1-litre jars", "food: green beans\npack: hot\njar: 1 L\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 25 min\naltitude: 4600 ft\n", a451},
    {"mushrooms in quarts", "food: mushrooms\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 45 min\naltitude: 4600 ft\n", a451}};
constexpr example a453[] = {{"green beans in a pressure canner at 4,600 ft", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a454[] = {"4:9 low-acid-needs-pressure"};
constexpr example a455[] = {{"green beans boiled for three hours", "food: green beans\npack: hot\njar: pint\nmethod: boiling-water\ntime: 3 h\naltitude: 4600 ft\n", a454},
    {"potatoes in a steam canner", "food: white potatoes\npack: hot\njar: quart\nmethod: steam canner\ntime: 40 min\naltitude: 4600 ft\n", a454}};
constexpr citation a456[] = {{"usda-guide-4", "4", ""},
    {"nchfp-pumpkin-butter", "", ""},
    {"kstate-pumpkin", "", ""}};
constexpr example a457[] = {{"pumpkin in 1-inch cubes", "food: pumpkin\nform: 1-inch-cubes\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 90 min\naltitude: 4600 ft\n", {}}};
constexpr sv a458[] = {"2:7 low-acid-puree"};
constexpr example a459[] = {{"pureed pumpkin", "food: pumpkin\nform: pureed\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 90 min\naltitude: 4600 ft\n", a458},
    {"refried beans", "food: dried pinto beans\nform: mashed-beans\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [beans rehydrated]\n", a458}};
constexpr citation a460[] = {{"usda-guide-1", "1", ""},
    {"nchfp-equipment", "", ""},
    {"psu-equipment", "", ""}};
constexpr example a461[] = {{"beets in a pressure canner with a 15 psi weight", "food: beets\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", {}}};
constexpr sv a462[] = {"4:9 method-not-accepted"};
constexpr example a463[] = {{"beets in the oven", "food: beets\npack: hot\njar: pint\nmethod: oven\ntime: 90 min\naltitude: 4600 ft\n", a462},
    {"chicken in an electric multi-cooker", "food: boneless chicken\npack: raw\njar: pint\nmethod: electric pressure cooker\ntime: 75 min\naltitude: 4600 ft\n", a462},
    {"a slip of the pen", "food: beets\npack: hot\njar: pint\nmethod: presure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", a462}};
constexpr citation a464[] = {{"usda-guide-1", "1", ""},
    {"wisconsin-mixtures", "", ""},
    {"clemson-soups", "", ""}};
constexpr example a465[] = {{"onions by their own table", "food: onions\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", {}}};
constexpr sv a466[] = {"1:7 no-tested-process"};
constexpr sv a467[] = {"2:5 no-tested-process"};
constexpr sv a468[] = {"4:3 no-tested-process"};
constexpr example a469[] = {{"cauliflower, which has no table", "food: cauliflower\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", a466},
    {"onions and carrots in one jar", "ingredients:\n  - 4 lb onions, peeled\n  - 3 lb carrots, sliced\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", a467},
    {"carrots among the onions", "food: onions\ningredients: |\n  4 lb onions, peeled\n  1 lb carrots, sliced\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", a468}};
constexpr example a470[] = {{"snap beans with nothing but what the table has", "food: green beans\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 20 min\naltitude: 4600 ft\nprepared: [covered with liquid]\n", {}}};
constexpr sv a471[] = {"9:12 not-in-process"};
constexpr example a472[] = {{"snap beans that were smoked", "food: green beans\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 20 min\naltitude: 4600 ft\nprepared: [lightly smoked]\n", a471}};
constexpr citation a473[] = {{"usda-guide-5", "5", ""},
    {"clemson-soups", "", ""}};
constexpr example a474[] = {{"beef stock brought back to a boil", "food: beef stock\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 25 min\naltitude: 4600 ft\nprepared: [bones removed, fat removed, reheated to a boil]\n", {}}};
constexpr sv a475[] = {"9:40 not-reheated"};
constexpr sv a476[] = {"11:7 not-reheated"};
constexpr example a477[] = {{"beef stock filled cold", "food: beef stock\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 25 min\naltitude: 4600 ft\nprepared: [bones removed, fat removed, not reheated]\n", a475},
    {"soup from the refrigerator with no word on reheating", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nheld: {for: 14 h, at: 38 F}\n", a476}};
constexpr example a478[] = {{"carrots, which are in the guide", "food: carrots\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\n", {}}};
constexpr sv a479[] = {"1:7 numbers-by-extension"};
constexpr example a480[] = {{"onions, which are not", "food: onions\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 40 min\naltitude: 4600 ft\n", a479}};
constexpr citation a481[] = {{"kstate-soup-note", "", ""},
    {"wisconsin-mixtures", "", ""}};
constexpr example a482[] = {{"soup of carrots and onions in pints", "food: vegetable soup\nas-published: true\ningredients: [2 lb carrots, 1 lb onions]\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 60 min\naltitude: 4600 ft\n", {}}};
constexpr sv a483[] = {"3:29 other-position"};
constexpr example a484[] = {{"soup with corn in quarts", "food: vegetable soup\nas-published: true\ningredients: [2 lb carrots, 1 lb whole kernel corn]\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", a483}};
constexpr example a485[] = {{"green beans just as the table says", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a486[] = {"6:11 over-required",
    "7:7 over-required"};
constexpr example a487[] = {{"green beans longer and at a higher pressure", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\n", a486}};
constexpr example a488[] = {{"beets in a hot pack", "food: beets\nform: sliced\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", {}}};
constexpr sv a489[] = {"3:7 pack-not-tested"};
constexpr example a490[] = {{"beets packed raw", "food: beets\nform: sliced\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\n", a489}};
constexpr citation a491[] = {{"usda-guide-1", "1", ""},
    {"nist-sp811", "", ""}};
constexpr example a492[] = {{"a plan that can be read", "title: Green beans, first picking\nfood: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a493[] = {"6:1 plan-unreadable",
    "7:7 plan-unreadable"};
constexpr sv a494[] = {"4:1 plan-unreadable"};
constexpr example a495[] = {{"a time without a unit and a key spelled wrong", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npresure: 13 psi\ntime: 20\naltitude: 4600 ft\n", a493},
    {"a key that stands twice", "food: green beans\npack: hot\njar: pint\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", a494}};
constexpr citation a496[] = {{"nchfp-equipment", "", ""},
    {"sdsu-how-not-to-can", "", ""}};
constexpr example a497[] = {{"15 psi on a weighted gauge", "food: boneless chicken\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", {}}};
constexpr sv a498[] = {"6:11 pressure-too-high"};
constexpr example a499[] = {{"20 psi to save time", "food: boneless chicken\npack: raw\njar: pint\nmethod: pressure\ngauge: dial\npressure: 20 psi\ntime: 75 min\naltitude: 4600 ft\n", a498}};
constexpr citation a500[] = {{"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""},
    {"pnw-421", "", ""}};
constexpr example a501[] = {{"13 psi on a dial at 4,600 ft", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", {}},
    {"14 psi on a dial that reads 1 psi high", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\ngauge-error: +1 psi\npressure: 14 psi\ntime: 20 min\naltitude: 4600 ft\n", {}}};
constexpr sv a502[] = {"6:11 pressure-too-low"};
constexpr sv a503[] = {"7:11 pressure-too-low"};
constexpr example a504[] = {{"the pressure for sea level on a dial", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 11 psi\ntime: 20 min\naltitude: 4600 ft\n", a502},
    {"the 10 psi weight in the mountains", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 10 psi\ntime: 20 min\naltitude: 4600 ft\n", a502},
    {"13 psi on a dial that reads 1 psi high", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\ngauge-error: +1 psi\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", a503}};
constexpr citation a505[] = {{"usda-guide-4", "4", ""},
    {"clemson-soups", "", ""},
    {"wisconsin-mixtures", "", ""}};
constexpr example a506[] = {{"venison and white bean soup by the published rules", "title: Venison and white bean soup\nfood: soups\nas-published: true\ningredients:\n  - 3 lb venison cubes, trimmed\n  - 2 lb dried white beans, rinsed\n  - 2 lb onions, peeled\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [beans rehydrated, meat precooked]\n", {}}};
constexpr sv a507[] = {"1:1 recipe-not-shown"};
constexpr sv a508[] = {"2:15 recipe-not-shown"};
constexpr example a509[] = {{"soup with no word on the rules", "title: Venison and white bean soup\nfood: soups\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\n", a507},
    {"a chili of one's own", "food: chile con carne\nas-published: false\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [beans rehydrated]\n", a508}};
constexpr example a510[] = {{"soup with the jar half full of solids", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 60 min\naltitude: 4600 ft\nsolids: 1/2\n", {}}};
constexpr sv a511[] = {"11:9 solids-over-half"};
constexpr example a512[] = {{"soup with three quarters of the jar full of solids", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 60 min\naltitude: 4600 ft\nsolids: 3/4\n", a511}};
constexpr example a513[] = {{"peeled potatoes in fresh water", "food: white potatoes\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 40 min\naltitude: 4600 ft\nprepared: [peeled, boiled before filling, fresh water used]\n", {}}};
constexpr sv a514[] = {"9:12 step-left-out"};
constexpr sv a515[] = {"12:3 step-left-out"};
constexpr example a516[] = {{"potatoes with their skins", "food: white potatoes\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 40 min\naltitude: 4600 ft\nprepared: [unpeeled, boiled before filling, fresh water used]\n", a514},
    {"potatoes in their starchy cooking water", "food: white potatoes\npack: hot\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 40 min\naltitude: 4600 ft\nprepared: |\n  peeled\n  boiled before filling\n  cooking water used\n", a515}};
constexpr citation a517[] = {{"usda-guide-1", "1", ""},
    {"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""}};
constexpr example a518[] = {{"okra with every step said", "food: okra\nform: whole\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\nheadspace: 1 in\nvent: 10 min\nprepared: [boiled before filling, covered with liquid]\n", {}}};
constexpr sv a519[] = {"1:1 step-reminder"};
constexpr example a520[] = {{"okra with no word on the headspace", "food: okra\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 25 min\naltitude: 4600 ft\nvent: 10 min\nprepared: [boiled before filling, covered with liquid]\n", a519}};
constexpr citation a521[] = {{"usda-guide-5", "5", ""},
    {"usda-guide-1", "1", ""}};
constexpr example a522[] = {{"trout in pint jars", "food: fish in pint jars\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 100 min\naltitude: 4600 ft\n", {}}};
constexpr sv a523[] = {"1:7 table-not-verified"};
constexpr example a524[] = {{"trout in quart jars", "food: trout in quart jars\npack: raw\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 160 min\naltitude: 4600 ft\nheat-up: 20 min\nwater: 3 qt\n", a523}};
constexpr citation a525[] = {{"clemson-soups", "", ""},
    {"usda-guide-4", "4", ""}};
constexpr example a526[] = {{"venison cubes in plain broth", "food: wild-game-strips\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 75 min\naltitude: 4600 ft\nprepared: [meat precooked, not thickened, covered with liquid]\n", {}}};
constexpr sv a527[] = {"9:12 thickener-in-jar"};
constexpr example a528[] = {{"green beans in thickened sauce", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 20 min\naltitude: 4600 ft\nprepared: [thickened]\n", a527}};
constexpr citation a529[] = {{"usda-guide-4", "4", ""},
    {"usda-guide-5", "5", ""},
    {"nchfp-process-time", "", ""}};
constexpr example a530[] = {{"quarts of green beans for 25 minutes", "food: green beans\npack: raw\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 25 min\naltitude: 4600 ft\n", {}}};
constexpr sv a531[] = {"7:7 time-too-short"};
constexpr sv a532[] = {"9:7 time-too-short"};
constexpr example a533[] = {{"quarts of green beans with the time for pints", "food: green beans\npack: raw\njar: quart\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\n", a531},
    {"venison and white bean soup one minute short", "title: Venison and white bean soup\nfood: soups\nas-published: true\npack: hot\njar: quart\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 1 h 14 min\naltitude: 4600 ft\n", a532}};
constexpr citation a534[] = {{"usda-guide-1", "1", ""},
    {"kstate-venting", "", ""},
    {"pnw-421", "", ""}};
constexpr example a535[] = {{"vented for 10 minutes", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\nvent: 10 min\n", {}}};
constexpr sv a536[] = {"9:7 vent-too-short"};
constexpr example a537[] = {{"vented for 7 minutes", "food: green beans\npack: hot\njar: pint\nmethod: pressure\ngauge: dial\npressure: 13 psi\ntime: 20 min\naltitude: 4600 ft\nvent: 7 min\n", a536}};
constexpr citation a538[] = {{"usda-guide-5", "5", ""},
    {"nchfp-smoked-fish", "", ""}};
constexpr example a539[] = {{"smoked trout with 4 quarts of water", "food: smoked trout\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 110 min\naltitude: 4600 ft\nwater: 4 qt\ncanner: {quarts: 7, volume: 16 qt}\n", {}}};
constexpr sv a540[] = {"9:8 water-too-little"};
constexpr example a541[] = {{"smoked trout with 3 quarts of water", "food: smoked trout\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 110 min\naltitude: 4600 ft\nwater: 3 qt\ncanner: {quarts: 7, volume: 16 qt}\n", a540}};
constexpr example a542[] = {{"beets, peeled, in fresh water", "food: beets\nform: sliced\npack: hot\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\nprepared: [peeled, fresh water used]\n", {}}};
constexpr sv a543[] = {"2:7 word-unknown",
    "4:6 word-unknown",
    "10:12 word-unknown"};
constexpr example a544[] = {{"three slips of the pen", "food: beets\nform: slised\npack: hot\njar: pnit\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\nprepared: [peeld, fresh water used]\n", a543}};
constexpr example a545[] = {{"asparagus with a word that has its place", "food: asparagus\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\nprepared: [covered with liquid]\n", {}}};
constexpr sv a546[] = {"9:12 word-without-place"};
constexpr example a547[] = {{"asparagus boiled before a raw pack", "food: asparagus\npack: raw\njar: pint\nmethod: pressure\ngauge: weighted\npressure: 15 psi\ntime: 30 min\naltitude: 4600 ft\nprepared: [boiled before filling]\n", a546}};
constexpr check_rule a548[] = {{"acid-missing", "Each jar gets an acid that the process names", "error", "rejects", "2026.11.1", "The plan adds {found}; the process for {food} asks for this in each jar: {required}.", "", "Where a published process puts acid into every jar, the kind of acid and its amount are part of what was tested. The process was never tried without it, so pressure alone does not replace it. Acids are not alike: citric acid and bottled lemon juice have a known strength, fresh lemon juice varies, vinegar is weaker, and vitamin C keeps the color and hardly makes food sour. An acid that the process does not name is a guess.", "Add to each jar: {required}.", a361, a362, a364},
    {"acid-too-little", "Each jar gets as much acid as the process asks for", "error", "rejects", "2026.11.1", "The plan adds {found}; the process for {food} asks for more in each jar: {required}.", "", "Acid is measured into every jar, never into the pot, so that each jar gets its share. The amount belongs to the size of the jar: a quart needs twice what a pint needs. With less, the food in the jar is not the food that was tested, and no one can say how it keeps. More acid than the table asks for does no harm, and a little sugar at the table takes the sharpness off.", "Add to each jar: {required}.", a361, a365, a367},
    {"altitude-by-extension", "It is said where a number for this altitude does not come from USDA", "note", "none", "2026.11.1", "At {found} the pressure on a dial is {required}. {reason}", "", "The USDA tables raise the dial pressure by 1 psi for every 2,000 ft and stop at 8,000 ft with 14 psi. One university Extension goes a step further, in a leaflet of its own, with 15 psi up to 10,000 ft. That fits the row and is accepted, and you should know whose number it is. For a weighted gauge the question does not come up: the USDA table has 15 psi for everything above 1,000 ft.", "Use a weighted gauge at 15 psi if you have one, or ask your local Extension office.", a3, a368, a370},
    {"altitude-outside-table", "The tables reach the altitude of the kitchen", "error", "untested", "2026.11.1", "The kitchen lies at {found}; the published tables are used for {required}.", "", "The higher the kitchen, the cooler the steam at the same reading on the gauge. The tables answer this with more pressure, band by band. The USDA tables for a dial stop at 8,000 ft, and one university goes on to 10,000 ft with 15 psi. Higher up there is no published number, and 15 psi is the most that home canners are run at, so there is no room left to add any. Nobody has tested what a longer time would do there instead.", "Freeze or refrigerate the food, or can it in a kitchen that lies lower.", a371, a372, a374},
    {"amount-unknown", "An amount that decides can be read", "error", "incomplete", "2026.11.1", "The amount in \"{found}\" is not clear, so it cannot be compared with the published one.", "", "A pinch, a splash or \"to taste\" is fine for salt. It is not enough where an amount decides how the food keeps, such as the acid that goes into each jar. For that the plan needs a number, a unit and the size of the jar it is meant for, because a quart needs twice as much as a pint. Once it is written that way it can be compared, and you can measure it again next time.", "Write a number with its unit, and what it is meant for. {instead}", a16, a375, a377},
    {"beans-not-rehydrated", "Dried beans and peas have taken up their water before filling", "error", "rejects", "2026.11.1", "The plan says \"{found}\". The process for {food} needs dried beans or peas that were soaked and boiled first. {reason}", "The plan does not say whether the dried beans or peas were soaked and boiled first. {reason}", "A dry bean drinks more than its own size in water. In the jar it takes that water from the liquid that should carry the heat, swells, and fills the jar tightly, so the middle heats too late. Only beans that were soaked and boiled first have been tested. A jar of beans that went in dry may look fine and still carry botulism; an Extension expert told the owner of such jars to throw them away. \"1 lb dry beans\" in a plan says how they were bought and not how they were filled, so the plan has to say it.", "Soak and boil the beans or peas as the process says, and list `beans rehydrated` under `prepared`.", a378, a379, a382},
    {"canner-too-large", "The canner is no larger than the one the process was tested in", "error", "rejects", "2026.11.1", "The plan's canner holds {found}; the process for {food} was tested in {required}.", "", "The slow heating and the slow cooling of the canner are part of the process. Smoked fish was tested in canners of 16 to 22 quarts with a fixed amount of cool water, so that heating up took as long as in the test. In another canner the same water heats at another pace. A newer copy of the directions says \"16 quarts or larger\"; the narrower range is the one kept here.", "Use {required}, or freeze the fish.", a383, a384, a386},
    {"canner-too-small", "The canner is as large as the process needs", "error", "rejects", "2026.11.1", "The canner in the plan is too small: it holds {found}, and the published size is {required}.", "", "The heat of warming up and cooling down is part of the tested process. A small pot warms and cools faster, so its jars get less heat, even at the right pressure for the right time. The published times belong to canners that hold at least four quart jars standing upright on the rack with the lid closed. Such a canner takes about 10 to 12 quarts of water when full. A few foods need more: smoked fish was tested in canners of 16 to 22 quarts.", "Use a larger pressure canner; the published size is {required}.", a387, a388, a391},
    {"fact-missing", "The plan says everything that decides", "error", "incomplete", "2026.11.1", "", "The plan does not say {reason}.", "To find the right line in a table one needs the food, the pack, the jar, the method, the gauge and the altitude; to compare the plan with it, the pressure and the time. Some foods need a little more, such as the acid or the water in the canner. This check never fills a gap with what is usual, because the usual value may not be yours: 11 psi on a dial is right at sea level and too low in a mountain town. Where every possible answer would pass, the plan is accepted with a note; where one of them would not, it waits for you to say.", "Add a line for it, with what is true in your kitchen. {instead}", a392, a393, a395},
    {"food-ambiguous", "The name of the food means one table", "error", "incomplete", "2026.11.1", "\"{found}\" can mean several foods, and each has a table of its own: {choices}.", "", "Everyday names cover foods that heat very differently. \"Beans\" may be green pods, which need 20 minutes in pints, or dried seeds, which need 75. Chicken on the bone needs less time than chicken off the bone. Taking the longest time would not settle it, because the preparation differs too. So the plan has to say which one is on the table.", "Write as `food` the one you have, by a name that fits it alone.", a3, a396, a399},
    {"form-not-tested", "The food is cut or prepared in a form that its table covers", "error", "rejects", "2026.11.1", "For {food} the table covers these forms: {choices}. The plan says {found}.", "", "Size and shape decide how fast the heat reaches the middle of each piece, and how well the liquid can move between the pieces. Slices that lie flat on each other, or pieces larger than the tested ones, heat later than the table counts on. A time therefore holds for the forms it was tested with. Another form may look like a small change in the kitchen and still be a different process for the jar.", "Prepare the food in one of these forms: {choices}.", a3, a400, a402},
    {"gauge-cannot-hold", "The pressure is one that a weighted gauge can hold", "error", "rejects", "2026.11.1", "The plan has {found} on a weighted gauge. A weight holds {choices}, and nothing in between.", "", "A weighted gauge is a weight that the steam lifts at a fixed pressure. It is made for 5, 10 and 15 psi and has no steps in between. Numbers such as 11 or 13 psi come from the dial column of the table. Taking a number from one column and the gauge from the other can end below what the table asks for: in a kitchen above 1,000 ft, low-acid food needs the 15 psi weight. On a canner with both gauges the weight decides.", "Use the weight that the table gives for your altitude, and write its pressure in the plan.", a403, a404, a406},
    {"gauge-error-too-large", "The dial is close enough to be corrected for", "error", "rejects", "2026.11.1", "The plan gives the dial an error of {found}. It can be corrected for only when it is {required}.", "", "A dial that reads high is the dangerous kind: it shows more pressure than the canner has. Even 1 psi costs more than a tenth of the effect of a 20-minute process, and 2 psi about three tenths. When the error is small and known, the canner is run that much higher. Beyond 2 psi, Extension offices say to replace the gauge; some already do so at 1 psi. Have a dial tested every year, before its first use, and after it was dropped or knocked. A weighted gauge needs no such test.", "Replace the dial, or use a canner with a weighted gauge, before you can.", a407, a408, a410},
    {"gauge-error-unused", "With a weighted gauge the error of a dial is left aside", "note", "none", "2026.11.1", "The plan gives a dial error of {found} and a weighted gauge. The weight sets the pressure, so the error is not used.", "", "A weight cannot read wrong: it lifts at its pressure, as long as it is not chipped and its vent is clean. Many canners have a dial beside it, and the two may not agree by a pound or more. The weight decides then, and the dial only shows how the canner warms up and cools down. Its error matters again on the day you can by the dial alone.", "Go by the weight, and have the dial tested before you can by the dial alone.", a411, a412, a414},
    {"headspace-too-large", "The headspace is not much larger than the published one", "warning", "none", "2026.11.1", "The plan leaves {found} of headspace; the table asks for {required}.", "", "The process drives air out of the jar, and that is what pulls the lid down afterwards. With much more room than the table asks for there is more air than the process may drive out: the seal can turn out weak or fail, and the food at the top turns dark. The heat still reaches the food, so this does not count against the plan. It costs jars and looks, and it is easy to put right.", "Fill the jar up to {required} below the rim.", a415, a416, a418},
    {"headspace-too-small", "The headspace is at least the published one", "error", "rejects", "2026.11.1", "The plan leaves {found} of headspace; the table asks for {required}.", "", "Headspace is the room between the food with its liquid and the rim of the jar. In the canner the food swells and the liquid bubbles. With too little room, food and liquid are pushed out under the lid, and what sticks to the rim can keep the jar from sealing. Starchy food such as corn, peas and lima beans swells most. The process was also tested with that fill, not with a fuller jar. Most low-acid food takes 1 inch; poultry and rabbit take 1 1/4 inches. A millimeter less counts as reading precision.", "Leave {required} between the food and the rim.", a415, a419, a421},
    {"heat-up-too-short", "The canner is heated as long as the process asks before venting", "error", "rejects", "2026.11.1", "The plan heats the canner for {found} before venting; the process for {food} asks for {required}.", "", "Usually the time until steam flows does not matter, because the process was tested without counting it. Fish in quart jars is different. It is packed raw, cold and solid, and the slow warming with the vent open is part of its process: 20 minutes on high heat, then 10 minutes of venting once steam flows steadily. Together they never take less than 30 minutes. A canner that is hurried starts the clock with jars that are still too cold in the middle.", "Heat the canner with the vent open for at least {required} before the venting time begins.", a422, a423, a425},
    {"held-cold", "Food is canned fresh and not as leftovers", "warning", "none", "2026.11.1", "The plan keeps the cooked food for {found} before canning. Extension advises against canning leftovers.", "", "Food that was cooled within two hours and kept at 40 F or colder for up to three days is within the published limits for keeping, and it is brought back to a boil before filling. Canning it is another matter: University of Missouri Extension says not to can leftovers, and no Extension page that allows it was found. Every step of cooling and waiting lets in something the process was not tested with. A dish that was thickened, or made without a tested recipe, has no process however well it was kept.", "Can the food on the day it is cooked, or freeze it instead.", a426, a427, a429},
    {"held-too-long", "Cooked food is not kept for days before canning", "error", "rejects", "2026.11.1", "The plan keeps the cooked food for {found}; before canning it may be kept for {required}.", "", "Cold slows bacteria down and does not stop them. The published advice is to use cooked food from the refrigerator within 3 to 4 days; this check takes the shorter one, because a jar is meant to stand for months. A process is tested on fresh food with few germs in it, and food that is close to spoiling gives it more to do than it was tested for. No time in the tables makes old food young again.", "Can a fresh batch, and freeze the cooked food you want to keep longer while it is still good.", a430, a427, a432},
    {"held-too-warm", "Cooked food does not stand warm for long", "error", "rejects", "2026.11.1", "The plan keeps the cooked food for {found}; it may stand for {required}.", "", "Between 40 and 140 F bacteria grow fast, and some of them leave poisons in the food that later heat does not take away. So canning does not mend food that has stood too long. The limit is two hours in all, counting every stretch between cooking and filling, and one hour at more than 90 F. Food that has to wait is kept at 140 F or hotter, or cooled fast in shallow pans and kept at 40 F or colder.", "If the food has already stood that long, discard it; otherwise can it or chill it within the limit.", a430, a433, a435},
    {"holds-either-way", "What is left open makes no difference", "note", "none", "2026.11.1", "The plan does not say the {field}. On that point the table is met for {reason} alike.", "", "A gap in a plan matters only where the answer would change the result. At 4,600 ft a dial needs 13 psi and a weighted gauge 15 psi; a plan with 15 psi has enough on both. The tables for raw and hot pack often print the same minutes, and then the time is enough for either. In such a case nothing is asked for. The preparation still follows the pack you use.", "Add the {field} to the plan when you know it.", a3, a436, a438},
    {"ingredient-unknown", "Every line of the ingredients is a known food", "error", "incomplete", "2026.11.1", "The line \"{found}\" names no food that this edition knows.", "", "Everything in the jar counts. A spoon of flour or a cup of rice makes the liquid thick, so that the heat comes later to the middle; a vegetable may have no process of its own. A line that is not understood could be any of these, or just a word spelled another way. Passing over it would mean to judge a different jar from the one you fill, so the plan stays incomplete until every line is clear.", "These rules know foods that have a table of their own, written as in `7 lb green beans, washed`; salt, water, seasonings and foods without a table are not known to them yet. {instead}", a439, a440, a443},
    {"jar-in-between", "A jar that is not listed takes the time of the next larger one", "note", "none", "2026.11.1", "The table does not list {found} jars, so the {required} holds for them. {reason}", "", "Tables list a few sizes, mostly pint and quart. A jar that is smaller than a listed one, or lies between two, takes the time of the next larger size: half-pints and 12 oz jars the pint time, 24 oz jars the quart time. The food in it gets a little more than it needs, and never less. A metric jar goes by what it really holds, and 500 mL is a little more than a US pint.", "Go by the {required}.", a444, a445, a447},
    {"jar-too-large", "The jar is no larger than the largest one in the table", "error", "rejects", "2026.11.1", "For {food} the table lists {required}; the plan says {found}. {reason}", "", "The middle of a bigger jar heats later, and how much later depends on the food. No formula turns the time for one jar into the time for a bigger one; somebody has to measure it. So a jar that is larger than every listed one has no tested process, however long it stays in the canner. The other way round is fine: a jar that is smaller than a listed one takes the time of the next larger size in the table.", "Use {required}, and the time that the table gives for them.", a448, a449, a452},
    {"low-acid-needs-pressure", "Low-acid food is canned under pressure", "error", "rejects", "2026.11.1", "The plan says {found} for {food}. This counts as low-acid food, and its published processes all use a pressure canner.", "", "Meat, poultry, fish, fresh vegetables and mixtures with them count as low-acid food: their pH is above 4.6. Inside a closed jar, without air, spores of the botulism germ can wake up in such food and make a poison that nobody sees, smells or tastes. Boiling water never gets hotter than about 212 F, and at 4,600 ft it boils at about 204 F. The spores live through that, so a longer boil is no way around it. Steam under pressure reaches 240 F and more, and that heat is what the published times count on.", "Can it in a pressure canner by the table for {food}, or freeze it.", a27, a453, a455},
    {"low-acid-puree", "Low-acid food is not mashed or pureed", "error", "rejects", "2026.11.1", "The plan says {found}, and no published process covers {food} in that form. {reason}", "", "In a jar of pieces the liquid between them moves and carries the heat inward. A thick puree hardly moves, so the heat creeps, and the middle of the jar stays cool for a long time. How thick it is changes from batch to batch, so no single time fits. USDA took back its old directions for mashed pumpkin and squash, and pumpkin butter has no process either, not even with acid added. Cubes in liquid have been tested; a puree is made from them when the jar is opened.", "Can the food in a form that its table covers and mash it after opening, or freeze the puree.", a456, a457, a459},
    {"method-not-accepted", "The method is one that published processes use", "error", "rejects", "2026.11.1", "The method \"{found}\" is not accepted. {reason}", "", "A published time belongs to one way of heating: it was worked out by measuring the heat inside filled jars in that kind of canner. Another appliance heats the jars in its own way, whatever its display shows, so no time in the tables fits it. Some old ways give the closed jar no heat at all. The lid may still pull down, but a seal only shows that the lid is tight. It does not show that the food in the jar got hot enough for long enough.", "Use a method with published processes. {instead}", a460, a461, a463},
    {"no-tested-process", "A published process covers the food", "error", "untested", "2026.11.1", "{reason} Without a tested process nobody can say how long is long enough.", "", "A process time comes from measuring how heat reaches the slowest spot in jars of that very food. How thick the food is, how much acid it holds and how the pieces lie together all change it, so the time for one food cannot be lent to another, and a longer time is still a guess. A mixture needs a process of its own, such as the ones for soup or mixed vegetables. Many good foods have no canning process at all. \"Untested\" does not mean that the food is bad; it means that the freezer or the refrigerator is the place for it.", "Keep to a published process, or freeze or refrigerate the food. {instead} These rules hold low-acid foods only: fruit, tomatoes, pickles and jams have published processes in other parts of the USDA guide.", a464, a465, a469},
    {"not-in-process", "Nothing is done to the food that its process does not have", "error", "rejects", "2026.11.1", "The plan says \"{found}\". {reason}", "", "A published process covers one food prepared in one way. Smoke dries the flesh and changes how heat goes through it, so smoked fish has a table of its own and smoked meat has none. Gathered mushrooms differ too much from each other for one tested time. What a table does not name was not tested with its minutes.", "Leave that out, or use the table of the food as you have it; if there is none, freeze it.", a3, a470, a472},
    {"not-reheated", "Chilled food is boiling hot again before it is filled", "error", "rejects", "2026.11.1", "Before it goes into the jars, chilled food has to be {required}; the plan says \"{found}\". {reason}", "", "The published hot-pack times start from jars that are filled boiling hot. Cold food needs far longer until its middle is hot, and the table knows nothing of that wait. So stock that was cooled to lift off the fat, or soup from the refrigerator, is brought back to a full boil, not just warmed, and filled at once. A cold jar in a hot canner can also crack.", "Bring the food to a boil just before filling, and list `reheated to a boil` under `prepared`.", a473, a474, a477},
    {"numbers-by-extension", "Numbers that the USDA guide does not print say who prints them", "note", "none", "2026.11.1", "{reason}", "", "Most numbers here are those of the USDA guide. For a few foods the guide has no table and a university Extension service prints one, or a part of a row could be read in one place only. Such numbers are used, and it is said that they are not the guide's own.", "Ask your local Extension office if you want the guide's own word.", a16, a478, a480},
    {"other-position", "Another published position on this mixture is named", "note", "none", "2026.11.1", "{reason} Some Extension pages go by the longest time of any part, and by the jar limits of each; the table used here does not ask for it.", "", "Published advice on mixtures differs. The USDA soup table has one time for every soup without seafood, because half of the jar is thin liquid. Some Extension pages say instead to look up each part, to take the longest time among them, and to keep to the smallest jar limit. The verdict goes by the table that was tested for soup; this note tells you where the other advice is stricter.", "Nothing has to change; a longer time up to the one named here does no harm but to the texture.", a481, a482, a484},
    {"over-required", "More than the table asks for is accepted", "note", "none", "2026.11.1", "The plan has {found}; the table asks for {required}. More than that is accepted.", "", "The numbers in the tables are the least that was tested to be enough. A longer time, or a higher pressure up to 15 psi, costs texture and color and does not make the process weaker. It earns nothing back either. A longer time does not make up for a pressure that is too low, and a higher pressure never shortens the time, because the times cannot be worked out from one pressure to another.", "Keep it if you like, but never shorten the time for a higher pressure or lower the pressure for a longer time.", a3, a485, a487},
    {"pack-not-tested", "The pack is one that the table has for this food", "error", "rejects", "2026.11.1", "The plan has a {found} pack; the table for {food} gives a {required} pack only.", "", "In a hot pack the food is heated in water, broth or sauce and filled while hot; in a raw pack it goes into the jar uncooked. The two start at different temperatures and fill the jar differently, because cooking shrinks food, softens it and drives air out. A time that was tested for one pack says nothing about the other. For some foods only one pack was ever tested, and for the other nobody can say how long the middle of the jar would need.", "Use the {required} pack, and prepare the food as its process says.", a3, a488, a490},
    {"plan-unreadable", "The text can be read as a plan", "error", "incomplete", "2026.11.1", "{reason}", "", "A plan is a list of keys with values, and every amount has its unit. A text is not guessed at: \"time 75\" may mean minutes or a slip of the pen, a key that is spelled wrong would be left out of the judgment, and a key that stands twice says two things. Each of these could turn a plan that fails into one that passes. So the whole text is read to its end, everything that is not clear is named at once with its place, and the plan is judged when all of it is put right.", "{instead}", a491, a492, a495},
    {"pressure-too-high", "The pressure stays within what home canners are run at", "error", "rejects", "2026.11.1", "The plan has {found}; the published limit for a home pressure canner is {required}.", "", "No table asks for more than 15 psi, and the published guidance is not to go above it, not even with a newer canner that could. More pressure does not buy a shorter time either: the times were tested near 240 F, and a time for one pressure cannot be worked out for another. What is left is strain on the canner and softer food. A high kitchen does not need more: the 15 psi weight holds for low-acid food up to 10,000 ft.", "Run the canner at the pressure that the table gives for your gauge and altitude.", a496, a497, a499},
    {"pressure-too-low", "The pressure reaches the published one for the gauge and the altitude", "error", "rejects", "2026.11.1", "The plan has {found}; at {altitude} the table asks for at least {required}. {reason}", "", "Heat is what makes the food keep, and in a canner the pressure makes the heat. High in the mountains the air presses less, so the same reading on the gauge means cooler steam. That is why the tables ask for more pressure the higher the kitchen lies. With too little pressure the whole load stays too cool for the whole time, and botulism spores in the middle of the jars can live on. A weighted gauge has no steps between 10 and 15 psi, so above 1,000 ft low-acid food takes the 15 psi weight. A dial that reads high shows more than the canner has, so its error is added to what the table asks for.", "For the whole time, hold at least {required}.", a500, a501, a504},
    {"recipe-not-shown", "A process that belongs to a recipe comes with that recipe", "error", "incomplete", "2026.11.1", "", "The plan does not show that {food} is made as published. {reason}.", "Some processes belong to a printed recipe, such as chile con carne or spaghetti sauce: their time was tested with those amounts, and more onion or less tomato makes another food of it. Others, such as soup, leave the choice to the cook inside fixed rules: only ingredients with canning directions of their own, half of the jar liquid, nothing that thickens. The name of the dish alone tells neither. A family recipe under the same name has no tested time, and the freezer is the place for it.", "If you follow the published recipe and its rules exactly, write `as-published: true`; if not, freeze the dish.", a505, a506, a509},
    {"solids-over-half", "The jar holds no more solids than the process allows", "error", "rejects", "2026.11.1", "The plan fills {found} of the jar with solids; the process for {food} allows {required}.", "", "The soup process leaves the choice of vegetables, beans and meat to the cook, and it can do so because half of every jar is liquid. Liquid moves and carries the heat between the pieces. With more solids the jar gets denser and the middle heats later than the tested time counts on. That is also why the solids go in loosely and nothing that thickens goes in. A thicker soup is made after opening.", "Fill solids into {required}, and top up with the hot liquid.", a316, a510, a512},
    {"step-left-out", "No step of the published preparation is left out", "error", "rejects", "2026.11.1", "The plan says \"{found}\"; the process for {food} has \"{required}\". {reason}", "The plan does not say \"{required}\", and the process for {food} depends on it. {reason}", "A published process is more than minutes and pressure. Peeling takes off soil and the germs in it, boiling drives out air and gives the jar a hot start, fresh water keeps starch out, and liquid over the food carries the heat. The time was tested with these steps. Leave one out and the jar in the canner is not the jar in the test: it may start cooler, be packed denser, or hold more germs than the time was made for.", "Do this step as the process says, and list `{required}` under `prepared`.", a3, a513, a516},
    {"step-reminder", "Steps that the plan leaves unsaid are named", "note", "none", "2026.11.1", "{reason}", "", "A plan need not repeat every step of the directions. Peeling, boiling, headspace and venting belong to the process all the same, because the time was tested with them. So whatever the plan does not mention is named here once, with its number, to be ticked off in the kitchen. A reminder changes nothing in the verdict. If the plan says that such a step is done differently, that is no reminder any more but a reason to reject it.", "Do this as it stands; it is part of the published process.", a517, a518, a520},
    {"table-not-verified", "The numbers of the table were confirmed in a publication", "error", "untested", "2026.11.1", "The only table found for {food} with this pack and jar is not verified. {reason}", "", "Every number in this edition is meant to be read again in a publication before anybody cans by it. For a few tables that was not possible: the page could not be opened, or only somebody's memory of it was at hand. Such a table is shown, so that you can see what it says, but a plan that only it covers is not accepted. A wrong digit in a process time does not show on the jar.", "Ask your local Extension office for the current table, or choose a jar or food whose table is verified.", a521, a522, a524},
    {"thickener-in-jar", "No flour, starch or other thickener goes into the jar", "error", "rejects", "2026.11.1", "The plan says \"{found}\". {reason}", "", "Heat gets to the middle of a jar because thin liquid moves and carries it. Flour, starch and batter make the liquid thick, so it hardly moves, and the middle stays cooler for longer than any tested time allows for. Botulism spores can live on there. How thick a batch turns out differs from cook to cook, so no home process was ever tested for low-acid food thickened this way.", "Can it thin, and thicken it when the jar is opened and heated for the table.", a525, a526, a528},
    {"time-too-short", "The time is at least the published one for the food, the pack and the jar", "error", "rejects", "2026.11.1", "The plan has {found}; for {food} in {jar} jars the table asks for at least {required}.", "", "The published time is what the slowest spot in the jar needs to get hot and to stay hot long enough. It was tested for that food, that pack and that size of jar. With less time, botulism spores in the middle can live on, and the jar will look and seal like any other. The minutes count only once the canner has reached its pressure; heating up and venting come on top. If the pressure drops below the published one, the whole time starts again. In a pressure canner the altitude changes the pressure and never the time.", "Run the canner for at least {required}, counted from the moment it reaches its pressure.", a529, a530, a533},
    {"vent-too-short", "The canner is vented long enough", "error", "rejects", "2026.11.1", "The plan vents the canner for {found}; the published directions ask for {required}.", "", "Before the vent is closed, the canner is full of air. Air mixed with steam heats the jars less than steam alone at the same pressure: the gauge shows the right number and the food stays cooler. A full, steady jet of steam drives the air out. This belongs to every load in every pressure canner, and its minutes do not count toward the process time. One canner maker prints 7 minutes for its own canner; the USDA directions say 10, and 10 is what this check goes by.", "Let a steady jet of steam flow for {required}, then close the vent.", a534, a535, a537},
    {"water-too-little", "The canner holds as much water as the process asks for", "error", "rejects", "2026.11.1", "The plan puts {found} of water in the canner; the process for {food} asks for {required}.", "", "Most loads start with 2 to 3 inches of hot water in the canner. A few processes name an amount of their own, because they run so long that less water could boil away, and because the time to heat that much water is part of the test. For smoked fish it is 4 quarts of cool tap water, not less and not heated beforehand. A canner that runs dry loses its steam, and with it the heat around the jars.", "Put {required} of water in the canner before the jars go in.", a538, a539, a541},
    {"word-unknown", "Words from a fixed list are spelled as in the list", "error", "incomplete", "2026.11.1", "\"{found}\" is no word that `{field}` knows.", "", "For the jar, the form and the preparation a plan uses words from a fixed list, so that each of them means exactly one thing in the tables. A word outside the list cannot be compared. It is not passed over either: it may be the very thing that decides, such as \"unpeeled\" or a jar that is too large. Mostly it is a slip of the pen and quickly mended.", "Use a word from the list. {instead}", a16, a542, a544},
    {"word-without-place", "Every word under `prepared` has its place in the process", "error", "incomplete", "2026.11.1", "The plan says \"{found}\". {reason}", "", "A process was tested with its own steps and no others. A word that belongs to none of them may be harmless, or it may say that the food in the jar is not the food in the test: boiled before a raw pack, pressed where it should lie loosely, or with the skin left on. These rules cannot tell which, so they do not pass over it.", "Take the word out if it does not describe what you do; if it does, prepare the food as the process says.", a3, a545, a547}};

constexpr edition data = {"jarproof low-acid tables", "2026.11.1", "Low-acid foods of the USDA Complete Guide to Home Canning (2015 revision), parts 2 to 5, with the university Extension tables for onions and for poultry other than chicken.", "A check reads the plan, not the kitchen: it cannot see the food, the gauge, the seal or what was really done. Follow the current USDA Complete Guide to Home Canning, ask your local Extension office, and keep to local rules.", "A metric jar goes by its true volume: 250 mL, 500 mL and 1 L hold a little more than a half-pint (237 mL), a pint (473 mL) and a quart (946 mL), and no published table gives them those times.", 10000, a0, a10, a21, a71, a72, a75, a76, a360, a548};

}  // namespace

const edition& builtin_edition() noexcept { return data; }

}  // namespace jarproof
