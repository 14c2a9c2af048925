/** So many records go in one heap at most. */
export const mostAtOnce = 200;
