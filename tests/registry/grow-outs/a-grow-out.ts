import { uuidv7 } from "uuidv7";
import type { Database, Prisma } from "@/lib/db";
import { foldName } from "@/lib/registry/names/fold-name";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { parseDate } from "@/lib/science/dates/parse-date";
import { granted } from "../../setup/registry";
import { aVariety } from "../lots/lots-in-tests";

/** A day, or what is known of one. */
export const on = (text: string): FuzzyDate => granted(parseDate(text));

/** The three columns of a date as it is stored. */
export function dated(text: string): { on: string; onFirst: string; onLast: string } {
  const { first, last } = on(text);
  return { on: text, onFirst: first, onLast: last };
}

/** A grow-out as it stands in the tables, sown on 1 May 2026 unless told; maize unless told. */
export async function aGrowOut(
  db: Database,
  more: Partial<Prisma.GrowOutUncheckedCreateInput> & { cropKey?: string } = {},
): Promise<string> {
  const { cropKey = "maize-field", name = "Sallow 2026", ...fields } = more;
  const varietyId = fields.varietyId ?? (await aVariety(db, `Variety of ${name}`, cropKey));
  const id = uuidv7();
  const sown = fields.sown === undefined ? "2026-05-01" : fields.sown;
  const days = sown === null ? {} : { sown, sownFirst: on(sown).first, sownLast: on(sown).last };
  await db.write.growOut.create({
    data: { name, nameKey: foldName(name), ...days, ...fields, id, varietyId },
  });
  return id;
}

/** The numbers of a grow-out that its figures are worked out from. */
export async function numbersOf(db: Database, id: string) {
  return db.read.growOut.findUniqueOrThrow({
    where: { id },
    select: {
      seedsSown: true,
      plantsStanding: true,
      malesStanding: true,
      roguedBeforePollen: true,
      roguedAfterPollen: true,
    },
  });
}
