import { type Rule, rule } from "./rule";

const aside = () => ({ fact: null, certainty: "sure" }) as const;

/** Numbers that are none of the seed's: they are kept as words, and no other rule may read into them. */
export const setAsideRule: Rule = rule("set-aside", [
  [
    "(house|no|number|nr|page|row|rows|bed|beds|plot|strip|field|block|box|shelf|drawer|line|jar|tin|bag|packet|lot|tray|pot|terrace|column|stake|label|peg|rank|room|flat|day|week|about|aged|age) (no|number|nr)? (.)? {number}",
    aside,
  ],
  [
    "(paid|cost|costs|costing|price|worth|charged|fee|sold for|bought for) (me|us|him|her|about|only|just)? (£|€)? {number} (pounds|pound|shillings|shilling|pence|p|crowns|euros|euro|dollars|dollar|cents|guineas|marks|francs|each)?",
    aside,
  ],
  ["(£|€) {number}", aside],
  ["{number} (£|€|shillings|shilling|pence|crowns|euros|euro|dollars|cents|guineas|francs)", aside],
  [
    "(for|at)? {number} (miles|mile|km|kilometres|metres|meters|metre|m|yards|yard|feet|foot|ft|inches|inch|cm|mm|acres|acre|paces|steps|degrees|degree) (away|off|apart|long|wide|high|tall|deep|up|down|square|of rain|of frost)?",
    aside,
  ],
  [
    "(for|in|after|at|of|about|kept|saved|within)? {number} (years|year|months|month|weeks|week|days|day|hours|hour|minutes|nights|times|o'clock|am|pm) (old|ago|late|early|running|in a row|older|on|of rain)?",
    aside,
  ],
  [
    "{number} (rows|row|beds|beds|trays|tray|pots|pot|stations|hills|plots|strips|hens|people|children|friends|visitors|sacks of manure|varieties|kinds|sorts|colours|degrees|°)",
    aside,
  ],
  ["<keep> (from)? (one|1) in {number}", aside],
  // two stands: which of them is meant is not said
  ["{number} (and|+|plus) {number} (<plants>|<mothers>)", aside],
  ["(from|off) (that|this|those|these) {number} (<plants>|<ears>|<pods>|<fruits>)", aside],
  [
    "(bees|flies|insects|something) (got|came|were|get) (in|into|inside|through) (the|a)? (cage|net|netting|fleece|bags|tunnel)",
    aside,
  ],
  ["(no|not|never|without) (roguing|rogued|rogueing|rogues pulled)", aside],
  ["(<mothers>|<plants>|numbers|nos) (no|nos|number|numbers)? {number} (-|to|and) {number}", aside],
  ["<pull> (about|only)? {number} (%|percent|per cent) (of them|of the plants)?", aside],

  ["(kept|saved|took|ate|sold) all (of it|the seed|of the seed)", aside],
  [
    "(gave|sold|swapped|sent|ate|bought|got|given|fetched) (only|just)? {number} <plants> (to {name}|from {name}|away)?",
    aside,
  ],
  // a cross made on purpose, a spacing: no years and no counts
  ["(crossed|cross)? {number} (x|×) {number}", aside],
  // all but so many of what is not said; "5 of them from Osk's seed" tells of a part of the plants
  ["(lost <all>|<cause> <ate> <all>|all died|all dead) (but|except|bar|save) {rest}", aside],
  ["{number} (of them|of these|of those|of which) (from|were) {rest}", aside],
  [
    "(only|just)? {number} mother? (roots|bulbs|corms|tubers) (stored|lifted|dug|sound|kept over winter|clamped)",
    aside,
  ],
  ["(roguing|off-types|off types|rogues|crosses) (:)? (about)? {number} (%|percent|per cent)", aside],
  ["{number} (%|percent|per cent) (off-type|off-types|off type|off types|rogues|crossed|dead|lost|loss)", aside],
  ["{number} (%|percent|per cent) / {number} (%|percent|per cent)", aside],
  ["{number} (st|nd|rd|th)", aside],
  ["{number} (°|degrees) (c|f)?", aside],
  ["(kept|saved|stored) {number} (back|hens|chickens)", aside],
]);
