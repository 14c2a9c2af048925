import type { Database } from "@/lib/db";
import { lineageOfRecords } from "../../figures/lineage-of-records";
import { readLineage } from "../../figures/read-records";
import { type Finding, fault, note } from "./finding";

/**
 * Lineage: no lot is its own ancestor, shares come to one, no parent is of another crop or missing. Counts of plants that cannot be are a note.
 * Crop by crop, since a cross stays within its crop.
 */
export async function checkLineage(db: Database): Promise<{ looked: number; findings: Finding[] }> {
  const crops = await db.read.crop.findMany({
    where: { varieties: { some: {} } },
    select: { id: true, commonName: true },
    orderBy: { id: "asc" },
  });
  const findings: Finding[] = [];
  let looked = 0;
  for (const crop of crops) {
    const records = await readLineage(db, [crop.id]);
    looked += records.lots.length;
    const followed = lineageOfRecords(records);
    if (!followed.ok)
      findings.push(...followed.refusals.map((each) => fault("lineage", `${crop.commonName}: ${each.sentence}.`)));
    else
      findings.push(
        ...followed.value.impossible.map((each) => note("lineage", `${crop.commonName}: ${each.sentence}.`)),
      );
  }
  return { looked, findings };
}
