/** The posterior is followed down to e^−25 of its top: a part of 1e-10 lies beyond. */
export const DEPTH = 25;
export const EVERYWHERE = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY] as const;
