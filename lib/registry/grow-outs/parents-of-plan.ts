import type { Transaction } from "@/lib/db";
import { type CrossRole, crossRoles } from "@/lib/schemas/grow-outs/plan-grow-out";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { shareFaults } from "../notebook-typing/share-faults";
import { descendingFrom } from "./descends-from";

/** A lot that is to be sown, as a form names it. */
export interface ParentTyped {
  readonly lot: string | null;
  readonly share: number | null;
  /** in a cross; null or left out: its plants are both */
  readonly role?: CrossRole | null;
}

export interface ParentsOfPlan {
  readonly parents: readonly {
    readonly lotId: string;
    readonly share: number | null;
    readonly role: CrossRole | null;
  }[];
  /** what is allowed, and worth saying */
  readonly warnings: readonly Assumption[];
}

interface VarietyOfPlan {
  readonly id: string;
  readonly cropId: string;
}

/**
 * The lots that a grow-out is sown from. Refused: no lot at all, a lot that is not here, of another crop, named twice, or that comes from this very grow-out;
 * shares that are told in part or do not come to all; a cross of which a side has no lot, or a lot no side. A lot of another variety of the crop makes it a cross: allowed, and said.
 */
export async function parentsOfPlan(
  tx: Transaction,
  variety: VarietyOfPlan,
  typed: readonly ParentTyped[],
  growOutId: string | null,
): Promise<Outcome<ParentsOfPlan>> {
  const rows = typed.flatMap((each, index) =>
    each.lot === null ? [] : [{ index, lot: each.lot, share: each.share, role: each.role ?? null }],
  );
  const lots = new Map(
    (
      await tx.lot.findMany({
        where: { id: { in: rows.map((row) => row.lot) } },
        select: {
          id: true,
          number: true,
          status: true,
          variety: { select: { id: true, name: true, cropId: true, crop: true } },
        },
      })
    ).map((lot) => [lot.id, lot]),
  );
  const own =
    growOutId === null
      ? []
      : await descendingFrom(
          tx,
          variety.cropId,
          growOutId,
          rows.map((row) => row.lot),
        );
  const faults: Refusal[] = typed.flatMap((each, index) =>
    each.lot === null && each.share !== null
      ? [refusal("missing", ["parents", index, "lot"], "", "stands here", "choose the lot, or leave its share empty")]
      : [],
  );
  if (rows.length === 0 && faults.length === 0) {
    const needed = "choose the lot that it is sown from; seed that is not here yet is entered as a lot first";
    faults.push(refusal("missing", ["parents", 0, "lot"], "", "stands here", needed));
  }
  const warnings: Assumption[] = [];
  for (const { index, lot: lotId } of rows) {
    const path = ["parents", index, "lot"];
    const lot = lots.get(lotId);
    if (!lot) faults.push(refusal("unknown-lot", path, lotId, "is no lot of this registry", "choose one of the list"));
    else if (lot.variety.cropId !== variety.cropId) {
      const wrong = `is ${lot.variety.crop.commonName}, which does not cross with this crop here`;
      faults.push(refusal("another-crop", path, `lot ${lot.number}`, wrong, "choose a lot of the same crop"));
    } else if (own.includes(lotId)) {
      const needed = "choose the lots that it was sown from; no seed is its own ancestor";
      faults.push(refusal("own-ancestor", path, `lot ${lot.number}`, "comes from this very grow-out", needed));
    } else if (lot.variety.id !== variety.id) {
      const text = `lot ${lot.number} is ${lot.variety.name}: with it this is a cross, and is followed as one`;
      warnings.push({ code: "cross", text });
    }
  }
  const named = rows.map(({ lot, share }) => ({ lot, share }));
  faults.push(...shareFaults(named, ["parents"]).map((fault) => atField(fault, rows)), ...sideFaults(rows));
  if (faults.length > 0) return refused(...faults);
  const alone = rows.length === 1;
  return accepted({
    parents: rows.map(({ lot, share, role }) => ({ lotId: lot, share: alone ? 1 : share, role })),
    warnings,
  });
}

/** In a cross every lot gives seed parents or pollen parents, and there are lots of both. */
function sideFaults(rows: readonly { readonly index: number; readonly role: CrossRole | null }[]): Refusal[] {
  if (rows.every(({ role }) => role === null)) return [];
  const untold = rows.filter(({ role }) => role === null);
  const needed =
    "in a cross each lot gives either the seed parents or the pollen parents: say which, or leave all open";
  if (untold.length > 0)
    return untold.map(({ index }) => refusal("side-missing", ["parents", index, "role"], "", "stands here", needed));
  const [first] = rows;
  if (!first || rows.some(({ role }) => role !== first.role)) return [];
  const other = crossRoles.find((role) => role !== first.role) ?? "";
  const both = `a cross needs a lot of ${other}s, too: choose one, or leave all open`;
  return [refusal("side-missing", ["parents", first.index, "role"], first.role ?? "", "is what all lots give", both)];
}

/** A fault of a list at the field where a hand can put it right. */
function atField(fault: Refusal, rows: readonly { readonly index: number }[]): Refusal {
  const [list, place] = fault.path;
  if (typeof place === "number")
    return { ...fault, given: "this lot", path: [list ?? "", rows[place]?.index ?? 0, "lot"] };
  return { ...fault, path: [list ?? "", rows[0]?.index ?? 0, "share"] };
}
