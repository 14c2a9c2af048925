import rows from "./published-advice.json";

/** A published rule of thumb for numbers of plants, and how far its source was read. */
export interface PublishedAdvice {
  readonly what: string;
  readonly advice: string;
  readonly source: string;
  readonly read: string;
}

/** Published numbers of plants, side by side: they answer different questions and do not agree. */
export const publishedAdvice: readonly PublishedAdvice[] = rows;
