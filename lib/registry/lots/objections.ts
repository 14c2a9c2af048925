import { type Path, type Refusal, refusal } from "@/lib/science/outcome";

/** Seed taken out of a lot's jar and put into another. */
export type JarAct = "blend" | "split";

/** A lot as far as it matters to whether its seed may go into another jar. */
export interface LotInHand {
  readonly number: string;
  readonly kind: string;
  readonly origin: string | null;
  readonly status: string | null;
  readonly statusReason: string | null;
  readonly treatment: string | null;
  readonly treatmentSubstance: string | null;
  readonly tested: boolean;
  /** reasons of the warnings on it that nobody has closed */
  readonly openWarnings: readonly string[];
}

/** Something that stands against an act in the jar. */
export interface Objection {
  readonly code: ObjectionCode;
  /** of the lot */
  readonly number: string;
  /** follows the lot's number: `is on hold` */
  readonly words: string;
  /** whether a steward may overrule it with a reason that is kept */
  readonly overridable: boolean;
}

export type ObjectionCode =
  | "no-seed-left"
  | "dead"
  | "discarded"
  | "not-for-seed"
  | "on-hold"
  | "in-quarantine"
  | "closed"
  | "warned"
  | "treated"
  | "treatment-unknown"
  | "untested"
  | "strains-not-shown-to-be-one";

const never = new Map<string, [ObjectionCode, string]>([
  ["finished", ["no-seed-left", "is finished: there is no seed in it"]],
  ["dead", ["dead", "is dead: no seed of it comes up"]],
  ["discarded", ["discarded", "was discarded, and nothing comes back from that"]],
  ["not for seed", ["not-for-seed", "is not for seed"]],
]);

const overruled = new Map<string, [ObjectionCode, string]>([
  ["hold", ["on-hold", "is on hold"]],
  ["quarantine", ["in-quarantine", "is in quarantine"]],
  ["closed", ["closed", "is closed: not to be opened"]],
]);

/**
 * What stands against mixing a lot into a blend, or against parting it. Treated seed is never mixed; parted, it takes the word along, and
 * a person says why. Whether seed lives matters to a blend alone: its parts count by their living seeds.
 * Source: trade.md 3.7 (never a suspect lot, an untested lot or an unverified return into a blend).
 */
export function objectionsTo(act: JarAct, lot: LotInHand): Objection[] {
  const found: Objection[] = [];
  const say = (code: ObjectionCode, words: string, overridable: boolean) =>
    found.push({ code, number: lot.number, words, overridable });
  const status = lot.status ?? "";
  const ended = never.get(status);
  const apart = overruled.get(status);
  if (ended) say(...ended, false);
  if (apart) say(apart[0], lot.statusReason ? `${apart[1]} (${lot.statusReason})` : apart[1], true);
  for (const reason of lot.openWarnings) say("warned", `has a warning that is open: ${reason}`, true);
  if (lot.treatment === "chemical")
    say("treated", `is treated seed (${lot.treatmentSubstance ?? "substance not known"})`, act === "split");
  if (lot.treatment === "unknown") say("treatment-unknown", "may be treated: nobody knows", true);
  if (act === "blend") {
    if (lot.treatment === null && fromOutside(lot))
      say("treatment-unknown", "came from outside, and nothing is said of its treatment", true);
    if (!lot.tested) say("untested", "was never tested: nobody knows how much of it lives", true);
  }
  return found;
}

/** A steward's own harvest is untreated unless somebody says so; of seed that came in, nobody knows. */
function fromOutside({ kind, origin }: LotInHand): boolean {
  return kind === "founder" && origin !== "own grow-out";
}

/** Strains of one variety that nobody has shown to be one: grown side by side, and looked at (trade.md 3.7, 3.10). */
export function strainObjections(
  lots: readonly {
    readonly number: string;
    readonly strain: { readonly id: string; readonly name: string; readonly relation: string | null } | null;
  }[],
): Objection[] {
  const groups = new Set(lots.map((lot) => lot.strain?.id ?? null));
  if (groups.size < 2) return [];
  return lots.flatMap(({ number, strain }) => {
    if (strain === null || strain.relation === "same") return [];
    const words = `is of the strain ${strain.name}, not shown to be one with the others`;
    return [{ code: "strains-not-shown-to-be-one" as const, number, words, overridable: true }];
  });
}

/** The refusals that are left when a reason overrules what may be overruled. `pathOf` leads to the lot's field. */
export function refusalsOf(
  objections: readonly Objection[],
  override: string | null,
  pathOf: (number: string) => Path,
): Refusal[] {
  return objections.flatMap((each) => {
    if (each.overridable && override !== null) return [];
    const path = each.overridable ? ["override"] : pathOf(each.number);
    const needed = each.overridable ? "leave it out, or say why it is done all the same" : neededOf(each.code);
    return [refusal(each.code, path, `lot ${each.number}`, each.words, needed)];
  });
}

function neededOf(code: ObjectionCode): string {
  if (code === "treated") return "leave it out: treated seed is kept in its own jar under its own word";
  return "leave it out; if the record is wrong, put its status right first";
}

/** The reason of a making with what was overruled and why, as it is kept: `old lot for breadth; although ...`. */
export function reasonKept(
  reason: string | null,
  objections: readonly Objection[],
  override: string | null,
): string | null {
  if (override === null || objections.length === 0) return reason;
  const against = objections.map((each) => `lot ${each.number} ${each.words}`).join(", ");
  return `${reason === null ? "" : `${reason}; `}although ${against}: ${override}`;
}
