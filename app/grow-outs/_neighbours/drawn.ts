import type { StripRow } from "@/components/flowering-strip";
import type { Plan, PlanWeight } from "@/components/plot-plan";
import { listed } from "@/lib/display/plurals";
import { distance, type UnitSettings } from "@/lib/display/units";
import type { AssessedNeighbour, Assessment } from "@/lib/registry/neighbours/assess-neighbours";
import type { KnownWindow } from "@/lib/registry/neighbours/windows";
import type { NeighbourVerdict } from "@/lib/science/isolation/neighbour-verdict";
import { bearingOptions, wordsOf } from "./choices";
import { overlapWords, verdictNames, windowWords } from "./verdict-words";

const weights: Readonly<Record<NeighbourVerdict, PlanWeight>> = {
  ok: "ok",
  marginal: "marginal",
  "too-close": "too-close",
  "does-not-cross": "no-matter",
  "rarely-crosses": "no-matter",
  "none-known": "no-matter",
  "same-variety": "no-matter",
  "not-assessed": "not-assessed",
};

/** The neighbourhood as the plot plan draws it: numbers as in the table. */
export function planOf({ neighbours, distances, plotM2 }: Assessment, units: UnitSettings): Plan {
  const rings = distances === null ? [] : [...new Set([distances.min, distances.max])].filter((metres) => metres > 0);
  return {
    plotM2,
    rings: rings.map((metres) => ({ metres, name: distance(metres, units) })),
    neighbours: neighbours.map(({ neighbour, bearing, verdict }, index) => ({
      id: neighbour.id,
      number: index + 1,
      distanceMetres: neighbour.distanceMetres,
      bearing,
      sizeM2: neighbour.sizeM2,
      weight: weights[verdict],
      grade: neighbour.howSure === "seen" ? ("counted" as const) : ("assumed" as const),
    })),
  };
}

/** The plot plan for the ear. */
export function planInWords({ neighbours, distances }: Assessment, units: UnitSettings): string {
  const rings =
    distances === null
      ? "No distances of the rule are known."
      : `Rings at ${listed([...new Set([distances.min, distances.max])].map((metres) => distance(metres, units)))}.`;
  const each = neighbours.map((one, index) => {
    const { neighbour, bearing, verdict } = one;
    const far = neighbour.distanceMetres === null ? "distance unknown" : distance(neighbour.distanceMetres, units);
    const side = bearing === null ? "side unknown" : wordsOf(bearingOptions, bearing);
    return `${index + 1}: ${neighbour.what}, ${far}, ${side}, ${verdictNames[verdict]}`;
  });
  return `Plot plan. ${rings} ${each.length === 0 ? "No neighbour is on record." : `${each.join("; ")}.`}`;
}

/** The flowering of the grow-out and of its neighbours as the strip draws it. */
export function stripOf({ stigma, ownPollen, neighbours, receptive }: Assessment): StripRow[] {
  const rows: StripRow[] = [];
  const own = (id: string, name: string, window: KnownWindow | null, of: StripRow["of"]) => {
    if (window) rows.push({ id, name, window, grade: "counted", of, says: daysOf(of, receptive) });
  };
  if (sameWindow(stigma, ownPollen)) own("own", "this grow-out, in flower", stigma, "stigma");
  else {
    own("stigma", "this grow-out, silks or stigmas", stigma, "stigma");
    own("pollen", "this grow-out, pollen", ownPollen, "own-pollen");
  }
  for (const [index, each] of neighbours.entries()) {
    rows.push({
      id: each.neighbour.id,
      name: `${index + 1} ${each.neighbour.what}`,
      window: each.window ?? { from: null, to: null },
      grade: each.window?.by === "noted" ? "counted" : "assumed",
      of: "neighbour",
      says: each.overlap === null ? undefined : saysOf(each, receptive),
    });
  }
  return rows;
}

function daysOf(of: StripRow["of"], receptive: Assessment["receptive"]): string | undefined {
  return of === "stigma" && receptive?.most !== undefined && receptive.most !== null
    ? overlapWords(receptive, null)
    : undefined;
}

function saysOf({ overlap }: AssessedNeighbour, receptive: Assessment["receptive"]): string {
  return overlap?.most === 0
    ? "apart"
    : overlapWords(overlap, receptive).replace("an unknown number of days", "unknown");
}

function sameWindow(one: KnownWindow | null, other: KnownWindow | null): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

/** The flowering strip for the ear. */
export function stripInWords({ stigma, ownPollen, neighbours, receptive }: Assessment): string {
  const each = neighbours.map(
    (one, index) =>
      `${index + 1}, ${one.neighbour.what}: ${windowWords(one.window)}${one.overlap ? `, together on ${overlapWords(one.overlap, receptive)}` : ""}`,
  );
  return `Flowering strip. This grow-out receives pollen: ${windowWords(stigma)}; sheds: ${windowWords(ownPollen)}. ${each.join("; ")}.`;
}
