import { z } from "zod";
import { neededChoice } from "./fields";
import { seedCoatColours, seedCoatPatterns } from "./seed-coat-words";

/** A variety's own mark as it was chosen; a variety without one has it drawn from its name. */
export const SeedCoatSchema = z.strictObject({
  pattern: neededChoice(seedCoatPatterns),
  ground: neededChoice(seedCoatColours),
  second: neededChoice(seedCoatColours),
});

export type SeedCoatChoice = z.output<typeof SeedCoatSchema>;

/** A stored mark, or null where none was chosen or what stands there is none. */
export function storedSeedCoat(text: string | null): SeedCoatChoice | null {
  if (text === null) return null;
  try {
    const read = SeedCoatSchema.safeParse(JSON.parse(text));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}
