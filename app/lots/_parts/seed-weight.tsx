import { plainNumber, significant } from "@/lib/display/numbers";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import { weighingsInWords } from "./told-of-lot";

/** What a thousand seeds of a lot weigh, and the portions by which that is known. */
export function SeedWeight({ read: { lot, notes } }: { read: LotRead }) {
  const grams = lot.thousandSeedGrams;
  return (
    <>
      <p>
        {grams === null
          ? "Nobody has counted and weighed its seeds: grams cannot be turned into seeds exactly."
          : `A thousand seeds weigh ${plainNumber(grams, 2)} g: ${significant(1000 / grams, 3)} seeds in a gram.`}
      </p>
      {weighingsInWords(notes).map((weighing) => (
        <p key={weighing.id} className="counts quiet">
          {weighing.words}
        </p>
      ))}
    </>
  );
}
