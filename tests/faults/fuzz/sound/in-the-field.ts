import { waysOfSettling } from "@/lib/schemas/field/settle-field";
import { moments, organs, passStages, stages, thinnings, timings } from "@/lib/schemas/grow-outs/field-kinds";
import { pollenFindings } from "@/lib/schemas/grow-outs/foreign-pollen";
import { crossRoles, growOutPurposes } from "@/lib/schemas/grow-outs/plan-grow-out";
import { waysTogether } from "@/lib/schemas/harvests/put-together";
import { intents } from "@/lib/schemas/plants/plant-cells";
import { bearings } from "@/lib/science/isolation/bearings";
import { evidenceWords, isolationGrades, isolationMethods } from "@/lib/science/isolation/isolation-grade";
import { harvestThatWaits, inTheRows, toSow } from "./ground";
import type { Here, SoundRecipes } from "./sound-form";

const ofRows = async (here: Here) => ({ growOutId: await here.growOut(inTheRows) });

/** A harvest that is told by plants of the rows, or by bags that were counted. */
async function harvest(here: Here): Promise<Record<string, string>> {
  const how = {
    on: here.one(["2025-09-20", "2025-09"]),
    note: here.some("dry pods"),
    mouldyPercent: here.some("0", "4"),
  };
  if (here.drawn.chance(0.5)) {
    const bags = Object.fromEntries([0, 1, 2].map((bag) => [`bags.${bag}.amount`, here.one(["12", "9.5", "20"])]));
    const bulked = here.one(["kept apart", "all together"]);
    return { ...how, bulked, told: "count", each: "grams", seedParents: "3", ...bags };
  }
  const where = { ...(await ofRows(here)), name: { in: ["1", "2", "3"] } };
  const plants = await here.read.plant.findMany({ where, orderBy: { name: "asc" } });
  const rows = plants.flatMap(({ id }, place) => [
    [`plants.${place}.plant`, id],
    [`plants.${place}.fate`, place === 2 ? here.one(["not taken", "lost: eaten"]) : "kept"],
    ...(place === 2 ? [] : [[`plants.${place}.amount`, here.one(["30", "44"])]]),
  ]);
  return { ...how, bulked: "all together", told: "plants", each: "seeds", ...Object.fromEntries(rows) };
}

async function bags(here: Here) {
  return here.read.harvest.findFirstOrThrow({ where: { ...(await ofRows(here)), bulked: "kept apart" } });
}

async function plan(here: Here, name: string): Promise<Record<string, string>> {
  const cross = here.drawn.chance(0.3);
  const roles: Record<string, string> = cross
    ? { "parents.0.role": crossRoles[0], "parents.1.role": crossRoles[1] }
    : {};
  return {
    ...{ name, purpose: here.some(...growOutPurposes), steward: "Orla Fennwick" },
    ...{ "parents.0.lot": await here.lot("Pea 1"), "parents.1.lot": await here.lot("Pea 2"), ...roles },
    ...(cross ? {} : { "parents.0.share": "60", "parents.1.share": "40" }),
    ...{ plantsPlanned: here.some("80"), seedParentsPlanned: here.some("40"), note: here.some("by the wall") },
  };
}

const why = "read the sheet wrongly";

/** Forms of grow-outs and of what came home from the field. */
export const formsOfField: SoundRecipes = {
  "app/field/_actions/settle.ts": {
    settleRecord: async (here) => {
      const { id } = await here.read.fieldRecord.findFirstOrThrow({ where: { state: "question", kind: "count" } });
      const how = here.one(waysOfSettling);
      return { bound: [id, [], "/season"], fields: { how, on: "2025-07-01", why: "the calendar was wrong" } };
    },
    answerSame: async (here) => {
      const { id } = await here.read.question.findFirstOrThrow({
        where: { plantId: { not: null }, otherPlantId: { not: null }, answeredAt: null },
      });
      return { bound: [id, "/season"], fields: { same: here.one(["one", "two"]), why: "stood in front of it" } };
    },
    plantAlone: async (here) => {
      const { id } = await here.read.plant.findFirstOrThrow({ where: { sameAsId: { not: null } } });
      return { bound: [id, "/season"], fields: { why: "they are two" } };
    },
  },
  "app/grow-outs/[id]/plants/_grid/store.ts": {
    storePlants: async (here) => {
      const { growOutId } = await ofRows(here);
      const plant = await here.read.plant.findFirstOrThrow({ where: { growOutId, name: "1" } });
      const rows = [
        { key: plant.id, added: false, cells: { cell: { text: here.one(["B", "C2"]), was: plant.cell ?? "" } } },
        {
          key: "new-1",
          added: true,
          cells: { tag: { text: here.fresh("77"), was: "" }, intent: { text: here.one(intents), was: "" } },
        },
      ];
      return { bound: [growOutId], given: { on: here.one(["2025-07-20", "2025-08"]), stewardId: "", rows } };
    },
  },
  "app/grow-outs/[id]/plants/add/add-these-plants.ts": {
    addThesePlants: async (here) => ({
      bound: [await here.growOut(inTheRows)],
      fields: {
        ...(here.drawn.chance(0.5)
          ? { tag: here.fresh("Red") }
          : { letters: "N", from: "40", to: "44", cell: "A", perCell: "2" }),
        intent: here.some(...intents),
        on: "2025-07-15",
        words: here.some("long pods"),
      },
    }),
  },
  "app/grow-outs/_actions/end.ts": {
    end: async (here) => ({
      bound: [await here.growOut(inTheRows)],
      fields: { end: here.one(["seed kept", "failed"]), endedOn: "2025-10-10", cause: "the hens" },
    }),
  },
  "app/grow-outs/_actions/field.ts": {
    writeCounts: async (here) => ({
      bound: [await here.growOut(inTheRows)],
      fields: {
        "thinned.plants": "55",
        "thinned.on": "2025-06-01",
        "thinned.thinnedBy": here.some(...thinnings),
        "flowering.plants": here.some("44"),
      },
    }),
    putCountRight: async (here) => {
      const { id } = await here.read.stageCount.findFirstOrThrow({ where: { ...(await ofRows(here)), stage: "up" } });
      return {
        bound: [id],
        fields: { stage: here.one(stages.slice(1, 3)), plants: here.one(["58", "61"]), on: "2025-05-11", why },
      };
    },
    writeWalk: async (here) => ({
      bound: [await here.growOut(inTheRows)],
      fields: {
        ...{
          on: "2025-06-28",
          stage: here.some(...passStages),
          timing: here.one([...timings, "not said"]),
          looked: "48",
        },
        ...(here.drawn.chance(0.5)
          ? { "pulled.sick": "1", "pulled.off-type-colour": here.some("1") }
          : { noneFound: "yes" }),
      },
    }),
    putPassRight: async (here) => {
      const { id } = await here.read.roguePass.findFirstOrThrow({ where: await ofRows(here) });
      return {
        bound: [id],
        fields: {
          on: "2025-06-26",
          timing: "before",
          pulled: here.one(["0", "1", "3"]),
          looked: "48",
          reason: "weak",
          why,
        },
      };
    },
    writeFlowering: async (here) => ({
      bound: [await here.growOut(inTheRows)],
      fields: { "flower.last": here.one(["2025-07-20", "2025-07-31"]), note: here.some("bees in it") },
    }),
    putFloweringRight: async (here) => {
      const where = { ...(await ofRows(here)), moment: "first" };
      const { id } = await here.read.floweringNote.findFirstOrThrow({ where });
      return {
        bound: [id],
        fields: { organ: organs[0], moment: moments[0], on: here.one(["2025-06-29", "2025-07-02"]), why },
      };
    },
    takeFieldRecordBack: async (here) => {
      const { growOutId } = await ofRows(here);
      const where = { growOutId };
      const table = here.one(["StageCount", "RoguePass", "FloweringNote"]);
      const row =
        table === "StageCount"
          ? await here.read.stageCount.findFirstOrThrow({ where })
          : table === "RoguePass"
            ? await here.read.roguePass.findFirstOrThrow({ where })
            : await here.read.floweringNote.findFirstOrThrow({ where });
      return { bound: [growOutId, table, row.id], fields: { why } };
    },
  },
  "app/grow-outs/_actions/foreign-pollen.ts": {
    sayForeignPollen: async (here) => ({
      bound: [await here.growOut(inTheRows)],
      fields: {
        percent: here.one(["2", "0.5"]),
        finding: here.one(pollenFindings.slice(2)),
        words: here.fresh("purple flowers"),
        why: "asked again",
      },
    }),
  },
  "app/grow-outs/_actions/harvest.ts": {
    enterHarvest: async (here) => ({
      bound: [await here.growOut(inTheRows)],
      fields: { ...(await harvest(here)), number: here.some(here.fresh("Pea of the rows")) },
    }),
    enterHarvestOfField: async (here) => {
      const { growOutId } = await ofRows(here);
      return { bound: [growOutId, await harvestThatWaits(here.db, growOutId)], fields: await harvest(here) };
    },
    putHarvestRight: async (here) => ({
      bound: [(await bags(here)).id],
      fields: { ...(await harvest(here)), reason: "weighed again" },
    }),
  },
  "app/grow-outs/_actions/neighbours.ts": {
    enterNeighbour: async (here) => ({
      bound: [await here.growOut(inTheRows)],
      fields: {
        ...{ what: "peas of another garden", distance: here.some("40", "120.5"), bearing: here.some(...bearings) },
        ...{ plants: here.some("12"), howSure: here.some(...evidenceWords), windowFirst: here.some("2025-06-20") },
      },
    }),
    putNeighbourRight: async (here) => {
      const { growOutId } = await ofRows(here);
      const { id } = await here.read.neighbourSource.findFirstOrThrow({ where: { growOutId } });
      return {
        bound: [growOutId, id],
        fields: { what: "field peas", distance: here.one(["85", "95"]), note: here.some("paced") },
      };
    },
    takeNeighbourOut: async (here) => {
      const { growOutId } = await ofRows(here);
      const { id } = await here.read.neighbourSource.findFirstOrThrow({ where: { growOutId } });
      return { bound: [growOutId, id] };
    },
    noteNeighbourFlowering: async (here) => {
      const { growOutId } = await ofRows(here);
      const { id } = await here.read.neighbourSource.findFirstOrThrow({ where: { growOutId } });
      return {
        bound: [growOutId, id],
        fields: { organ: "flower", moment: here.one(moments), on: "2025-07-03", correct: here.some("yes") },
      };
    },
    enterLook: async (here) => ({
      bound: [await here.growOut(here.one([inTheRows, toSow]))],
      fields: { on: here.one(["2025-06-12", "2025-06"]) },
    }),
    nobodyLooked: async (here) => ({ bound: [await here.growOut("K1")] }),
    enterMethod: async (here) => ({
      bound: [await here.growOut(inTheRows)],
      fields: {
        method: here.one(isolationMethods),
        evidence: here.some(...evidenceWords),
        fromOn: here.some("2025-06-20"),
      },
    }),
    putMethodRight: async (here) => {
      const { growOutId } = await ofRows(here);
      const { id } = await here.read.isolationMethod.findFirstOrThrow({ where: { growOutId } });
      return { bound: [growOutId, id], fields: { method: here.one(["barrier", "cage"]), note: here.some("a hedge") } };
    },
    takeMethodOut: async (here) => {
      const { growOutId } = await ofRows(here);
      const { id } = await here.read.isolationMethod.findFirstOrThrow({ where: { growOutId } });
      return { bound: [growOutId, id] };
    },
    claimForLots: async (here) => ({
      bound: [await here.growOut(inTheRows)],
      fields: {
        grade: here.one(isolationGrades),
        reasons: here.fresh("a hedge between"),
        [`lot:${await here.lot("Pea 9")}`]: "yes",
      },
    }),
  },
  "app/grow-outs/_actions/plan.ts": {
    makePlan: async (here) => ({
      bound: [await here.variety("Bent Pea")],
      fields: { ...(await plan(here, here.fresh("Peas"))), newPlot: here.some(here.fresh("The new bed")) },
    }),
    putRight: async (here) => ({
      bound: [await here.growOut(toSow)],
      fields: { ...(await plan(here, toSow)), reason: "another mix", ...here.stood({ name: toSow }) },
    }),
  },
  "app/grow-outs/_actions/plot.ts": {
    put: async (here) => ({
      bound: [await here.growOut(toSow)],
      fields: { newPlot: here.fresh("The long bed"), areaM2: here.some("40"), fromOn: here.some("2026-04") },
    }),
    putDaysRight: async (here) => {
      const { growOutId } = await ofRows(here);
      const stand = await here.read.growOutPlot.findFirstOrThrow({ where: { growOutId, fromOn: { not: null } } });
      return {
        bound: [growOutId, stand.id],
        fields: { fromOn: here.one(["2025-04-21", "2025-04"]), toOn: here.some("2025-10") },
      };
    },
    takeOff: async (here) => {
      const { growOutId } = await ofRows(here);
      const stand = await here.read.growOutPlot.findFirstOrThrow({ where: { growOutId, fromOn: { not: null } } });
      return { bound: [growOutId, stand.id] };
    },
  },
  "app/grow-outs/_actions/put-together.ts": {
    putBagsTogether: async (here) => {
      const { id, growOutId } = await bags(here);
      const fields = {
        on: "2025-11-02",
        way: here.one(waysTogether),
        leftOut: here.some("0"),
        wanted: here.one(["60", "80"]),
      };
      return { bound: [growOutId, id, true], fields };
    },
  },
  "app/grow-outs/_actions/sow.ts": {
    sow: async (here) => ({
      bound: [await here.growOut(toSow)],
      fields: {
        ...{
          on: here.one(["2026-04-18", "2026-04"]),
          "parts.0.lot": await here.lot("Pea 1"),
          "parts.0.amount": here.one(["50", "120.5"]),
        },
        ...{ "parts.0.unit": "g", override: here.some("all that is needed"), note: here.some("in two rows") },
      },
    }),
  },
};
