import { sameName } from "../names/fold-name";

/**
 * The name under which a plant with a tag is kept in its grow-out: the tag itself, or "12 (2)" where a plant 12 stands already. The tag stays
 * as it was written, on the mark: two plants with one tag are a question, not a mistake to be put right here.
 */
export function freeName(taken: ReadonlySet<string>, tag: string): string {
  const name = sameName(tag);
  if (!taken.has(name)) return name;
  let number = 2;
  while (taken.has(`${name} (${number})`)) number += 1;
  return `${name} (${number})`;
}
