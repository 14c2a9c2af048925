/*
 * The words of what is counted, pulled and noted in a grow-out, as they are stored.
 */

/** What plants are counted at, in the order in which they come. Lifted and replanted: the roots of a crop that seeds in its second year. */
export const stages = ["sown", "up", "thinned", "lifted", "replanted", "standing", "flowering"] as const;
export type Stage = (typeof stages)[number];

/** Thinning is selection when it goes by vigour. */
export const thinnings = ["vigour", "random"] as const;
export type Thinning = (typeof thinnings)[number];

export const timings = ["before", "after"] as const;
export type Timing = (typeof timings)[number];

/** When a rogue pass walks. */
export const passStages = ["seedling", "leaf", "before flower", "in flower", "fruit or ear", "after winter"] as const;

/** Why a plant was pulled. */
export const pullReasons = [
  "off-type colour",
  "off-type form",
  "early or late",
  "suspected cross",
  "bitter",
  "sick",
  "weak",
] as const;
export type PullReason = (typeof pullReasons)[number];

/** Reasons that say a plant lay outside the type description. */
export const offTypeReasons: readonly PullReason[] = [
  "off-type colour",
  "off-type form",
  "early or late",
  "suspected cross",
  "bitter",
];

export const organs = ["flower", "pollen", "silk"] as const;
export type Organ = (typeof organs)[number];

export const moments = ["first", "half", "last"] as const;
export type Moment = (typeof moments)[number];
