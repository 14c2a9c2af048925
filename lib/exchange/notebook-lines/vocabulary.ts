/** Lists of words and phrases that the patterns share, `<name>` in a pattern. Each is a choice, written `one|other words`. */
export const VOCABULARY: Record<string, string> = {
  // plants and parts of them
  plants: "plants|plant|pl|pls",
  mothers: "mothers|mother|mother plants|mother-plants|seed plants|seed-plants|seed parents|seed-parents|seed mothers",
  ears: "ears|ear|cobs|cob",
  heads: "heads|head|umbels",
  pods: "pods|pod",
  fruits: "fruits|fruit",
  "off-types":
    "off-types|off types|off-type|off type|offtypes|rogues|rogue|wrong ones|bad ones|odd ones|poor ones|weak ones|sick ones|odd plants|wrong plants|bolters|bolter|runts|runt|weaklings|crosses",
  best: "best|finest|strongest|earliest|healthiest|biggest|nicest|truest|good|true|tallest|latest|very best|best looking|good-looking",
  seeds: "seeds|seed|beans|peas|grains|kernels|corns|pips",
  "seeds-many": "seeds|beans|peas|grains|kernels|corns|pips",
  seed: "seed|seeds",

  // what is done
  keep: "kept|saved|took|picked|gathered|collected|harvested|chose|selected|keep|save|kept seed|saved seed|took seed|kept seeds|saved seeds|kept the seed|saved the seed|got seed|had seed|seed kept|seed saved|seed taken|seed gathered|seed collected",
  choose: "kept|saved|chose|selected|picked out",
  pull: "pulled|pulled out|pulled up|rogued|rogued out|threw out|took out|weeded out|rooted out|removed|culled|cut out|dug out|hoed out|had to pull|had to rogue|pull|rogue out",
  pulled:
    "pulled|pulled out|pulled up|rogued|rogued out|thrown out|taken out|weeded out|removed|culled|cut out|dug out|hoed out",
  sow: "sowed|sown|sow|drilled|dibbled|sowing of",
  got: "got|harvested|threshed|cleaned|cleaned up to|yielded|made|brought in|saved|kept|gathered|collected|picked|threshed out|got in|came to|weighed out at",
  give: "gave|sent|passed|handed|posted|given|passed on|gave away|sent off|handed over|donated|deposited",
  mix: "mixed|blended|tipped|put|added|combined|stirred|bulked",
  weigh: "weighed|weighs|weighed in at|weighs in at|jar weighs|jar weighed|weighed the jar|on hand|in the jar",

  // what is seen
  up: "up|came up|come up|came|germinated|sprouted|showed|emerged|grew|chitted|have come up|are up|were up|was up|coming up",
  badly:
    "badly|poorly|very badly|very poorly|thinly|patchily|patchy|thin|slowly|slow|unevenly|weakly|late|rather badly|rather poorly|not well|hardly",
  well: "well|very well|strongly|thickly|evenly|nicely|quickly|fast|like cress",
  poor: "poor|bad|patchy|thin|low|weak|slow|very poor|very bad",
  good: "good|fine|excellent|strong|full|even|very good|high",
  after: "after|in|at|on|within",
  "days-later": "<after> {count:days} days|(by|at|on)? day {count:days}",
  wetted:
    "on paper|on wet paper|on damp paper|on moist paper|on a towel|in a towel|on a damp towel|in a damp towel|in a pot|on a saucer|in compost|in sand|on cotton wool",

  // when pollen flies
  bloom:
    "pollen|pollen shed|pollen flew|pollen had flown|the pollen had flown|the pollen|the pollen flew|flower|flowers|flowering|they flowered|it flowered|the flowers opened|bloom|blooming|shedding|shed|tassel|tasselling|tassels|silking|bolting|pollen was flying",
  timing:
    "before <bloom>|after <bloom>|as seedlings|at the seedling stage|as small plants|at harvest|at picking|early on|in good time before <bloom>|just before <bloom>|just after <bloom>|well before <bloom>|in flower|in full flower|too late",

  // what goes wrong
  cause:
    "blight|hail|a hailstorm|hailstorm|frost|the frost|a late frost|late frost|an early frost|early frost|drought|the drought|dry weather|slugs|slugs and snails|snails|crows|the crows|rooks|pigeons|birds|the birds|mice|rats|voles|rabbits|deer|the deer|boar|wild boar|badgers|goats|the goats|sheep|the sheep|cattle|cows|the cows|hens|the hens|chickens|pigs|flood|the flood|floods|water|rain|the rain|storm|the storm|a storm|gale|the gale|wind|rust|smut|mildew|mould|rot|wilt|virus|mosaic|fly|carrot fly|weevil|weevils|aphids|blackfly|flea beetle|beetles|caterpillars|wireworm|fire|damping off|moles|the mower|the plough|neglect|heat|the cold|cold",
  ate: "had|took|got|ate|killed|destroyed|finished|stripped|flattened|cleared",
  all: "all|it|them|all of it|all of them|it all|them all|the lot|everything|the crop|the whole crop|the whole lot|the plants|every one|every plant|the row|the bed|the seed|whole crop",
};
