import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import { addYears, type CivilDay } from "@/lib/science/dates/civil-day";
import { type PlantsRead, plantSelections, plantsRead } from "../grow-outs/plants-of-grow-out";

interface Head {
  readonly id: string;
  readonly name: string;
  readonly varietyId: string;
  readonly variety: string;
  readonly seedCoat: string | null;
  readonly cropKey: string;
  readonly crop: string;
  readonly seedParentsPlanned: number | null;
  readonly sownLast: string | null;
  readonly endedOn: string | null;
}

/** A grow-out's plants to be marked and scored, with the traits that there are and everybody who may have scored. */
export interface PlantsGrid extends PlantsRead {
  readonly growOut: Head;
  readonly people: readonly { readonly stewardId: string; readonly name: string }[];
}

/** The grid of a grow-out; null where there is no such grow-out. One statement. */
export async function readPlantsGrid(db: Database, growOutId: string): Promise<PlantsGrid | null> {
  const heads: Selection<Head> = {
    columns: {
      ...{
        id: "text",
        name: "text",
        varietyId: "text",
        variety: "text",
        seedCoat: "text",
        cropKey: "text",
        crop: "text",
      },
      ...{ seedParentsPlanned: "number", sownLast: "text", endedOn: "text" },
    },
    rows: sql`SELECT g."id", g."name", g."varietyId", v."name" AS "variety", v."seedCoat", c."key" AS "cropKey", c."commonName" AS "crop", g."seedParentsPlanned", g."sownLast", g."endedOn"
      FROM "GrowOut" g JOIN "Variety" v ON v."id" = g."varietyId" JOIN "Crop" c ON c."id" = v."cropId" WHERE g."id" = ${growOutId}`,
  };
  const people: Selection<{ stewardId: string; name: string }> = {
    columns: { stewardId: "text", name: "text" },
    rows: sql`SELECT p."stewardId", p."name" FROM "Person" p ORDER BY p."id"`,
  };
  const found = await readTogether(db, { heads, people, ...plantSelections(growOutId) });
  const [growOut] = found.heads;
  return growOut ? { growOut, people: found.people, ...plantsRead(found) } : null;
}

/** true while the plants may still stand: then today is a likely day to have looked at them */
export function mayStand({ sownLast, endedOn }: Pick<Head, "sownLast" | "endedOn">, today: CivilDay): boolean {
  return endedOn === null && (sownLast === null || sownLast >= addYears(today, -2));
}
