import { blendRule } from "./blends";
import { germinationRule } from "./germination";
import { discardedRule, harvestRule, onHandRule, seedWeightRule } from "./harvest";
import { failedRule, lostRule } from "./mishaps";
import { emergedRule, flaggedRule, grownRule, plantsRule, purposeRule } from "./plants";
import { crossRule, isolationRule, neighbourRule } from "./pollen";
import { offTypesRule, roguesRule } from "./rogues";
import type { Rule } from "./rule";
import { seedParentsRule, sharesRule } from "./seed-parents";
import { setAsideRule } from "./set-aside";
import { gapRule, seedsSownRule, sownFromRule } from "./sowing";
import { givenRule, receivedRule, splitRule } from "./transfers";
import { dayRule, harvestYearRule, yearRule } from "./years";

/** All rules, each tried at every word that is still free. The longest reading is taken; of equal ones that of the earlier rule. */
export const RULES: readonly Rule[] = [
  sharesRule,
  seedParentsRule,
  roguesRule,
  seedsSownRule,
  plantsRule,
  emergedRule,
  flaggedRule,
  grownRule,
  germinationRule,
  seedWeightRule,
  onHandRule,
  blendRule,
  sownFromRule,
  splitRule,
  givenRule,
  receivedRule,
  harvestRule,
  discardedRule,
  gapRule,
  failedRule,
  lostRule,
  crossRule,
  neighbourRule,
  isolationRule,
  offTypesRule,
  purposeRule,
  harvestYearRule,
  yearRule,
  dayRule,
  setAsideRule,
];
