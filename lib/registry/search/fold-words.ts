import { foldName } from "../names/fold-name";

/** Words as they are searched: as names are compared, and without accents (é found by e). */
export function foldWords(words: string): string {
  return foldName(words).normalize("NFD").replace(/\p{M}/gu, "");
}
