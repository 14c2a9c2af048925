import type { Coat } from "@/components/seed-coat";
import { SeedCoatSchema } from "@/lib/schemas/varieties/seed-coat";

/** A variety's chosen seed coat as it is stored, or null: then it is drawn from the name. */
export function storedCoat(text: string | null): Coat | null {
  if (text === null) return null;
  try {
    return SeedCoatSchema.safeParse(JSON.parse(text)).data ?? null;
  } catch {
    return null;
  }
}
