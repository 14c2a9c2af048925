import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { PlotDatesInput, PlotOfGrowOutInput } from "@/lib/schemas/grow-outs/plot-of-grow-out";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { growOutOf } from "./grow-out-of";
import { plotFor } from "./plot-for";

/**
 * Puts a grow-out on a plot, one on record or one that is entered with it, from a day on. Roots that are replanted stand on a second plot: the
 * day on which they left the first is then written there. Refused: no plot, a plot on which it stands already, days out of their order.
 */
export async function putOnPlot(
  db: Database,
  actor: Actor,
  growOutId: string,
  input: PlotOfGrowOutInput,
): Promise<Outcome<Performed<{ growOutPlotId: string }>>> {
  const known = await growOutOf(db.read, growOutId);
  if (!known.ok) return known;
  const title = `Grow-out ${known.value.name} put on a plot`;
  return perform(db, actor, { action: "record", title }, async (change, tx) => {
    const growOut = known.value;
    const plot = await plotFor(tx, change, input, growOut.stewardId);
    const faults: Refusal[] = [...(plot.ok ? [] : plot.refusals), ...orderFaults(input.fromOn, input.toOn)];
    const stands = await tx.growOutPlot.findMany({ where: { growOutId }, orderBy: { id: "asc" } });
    if (plot.ok && plot.value === null)
      faults.push(refusal("missing", ["plot"], "", "stands here", "choose the plot, or write the new one’s name"));
    if (plot.ok && stands.some((stand) => stand.plotId === plot.value)) {
      const needed = "put the days there right, or choose another plot";
      faults.push(refusal("on-it-already", ["plot"], "this plot", "is where it stands already", needed));
    }
    const earlier = stands.findLast((stand) => stand.toOn === null);
    if (input.leftOn !== null && !earlier) {
      const wrong = "cannot be the day on which it left: it stood on no plot before";
      faults.push(refusal("no-earlier-plot", ["leftOn"], input.leftOn.text, wrong, "leave it empty"));
    }
    if (input.leftOn !== null && input.fromOn !== null && input.fromOn.last < input.leftOn.first) {
      const wrong = "lies after the day on which it came to the next plot";
      faults.push(
        refusal("out-of-order", ["leftOn"], input.leftOn.text, wrong, "roots are lifted before they are replanted"),
      );
    }
    if (faults.length > 0 || !plot.ok || plot.value === null) return refused(...faults);
    const growOutPlotId = uuidv7();
    const days = { fromOn: input.fromOn?.text ?? null, toOn: input.toOn?.text ?? null };
    if (input.leftOn !== null && earlier) await change.update("GrowOutPlot", earlier.id, { toOn: input.leftOn.text });
    await change.create("GrowOutPlot", { id: growOutPlotId, growOutId, plotId: plot.value, ...days });
    change.touch(growOut.varietyId);
    return accepted({ growOutPlotId });
  });
}

/** Puts the days on one plot right. */
export async function correctPlotDates(
  db: Database,
  actor: Actor,
  growOutPlotId: string,
  input: PlotDatesInput,
): Promise<Outcome<Performed<{ growOutId: string }>>> {
  const stand = await standOf(db, growOutPlotId);
  if (!stand.ok) return stand;
  const { growOut, plot } = stand.value;
  const operation = { action: "correct" as const, title: `Grow-out ${growOut.name}: days on ${plot.name} put right` };
  return perform(db, actor, operation, async (change) => {
    const faults = orderFaults(input.fromOn, input.toOn);
    if (faults.length > 0) return refused(...faults);
    const days = { fromOn: input.fromOn?.text ?? null, toOn: input.toOn?.text ?? null };
    await change.update("GrowOutPlot", growOutPlotId, days);
    change.touch(growOut.varietyId);
    return accepted({ growOutId: growOut.id });
  });
}

/** Takes a grow-out off a plot on which it never stood. The plot stays on record. */
export async function takeOffPlot(
  db: Database,
  actor: Actor,
  growOutPlotId: string,
): Promise<Outcome<Performed<{ growOutId: string }>>> {
  const stand = await standOf(db, growOutPlotId);
  if (!stand.ok) return stand;
  const { growOut, plot } = stand.value;
  const operation = { action: "correct" as const, title: `Grow-out ${growOut.name}: it never stood on ${plot.name}` };
  return perform(db, actor, operation, async (change) => {
    await change.remove("GrowOutPlot", [growOutPlotId]);
    change.touch(growOut.varietyId);
    return accepted({ growOutId: growOut.id });
  });
}

async function standOf(db: Database, id: string) {
  const stand = await db.read.growOutPlot.findUnique({ where: { id }, include: { growOut: true, plot: true } });
  if (stand) return accepted(stand);
  return refused(refusal("unknown", ["plot"], id, "is no plot of this grow-out", "choose one of the list"));
}

function orderFaults(from: FuzzyDate | null, to: FuzzyDate | null): Refusal[] {
  if (from === null || to === null || from.first <= to.last) return [];
  return [
    refusal(
      "out-of-order",
      ["toOn"],
      to.text,
      "lies before the day on which it came there",
      "write the earlier day first",
    ),
  ];
}
