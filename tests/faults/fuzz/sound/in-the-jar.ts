import { moistureMethods } from "@/lib/schemas/drying/drying-forms";
import { claimKinds, claimSureness } from "@/lib/schemas/lots/lineage-claims";
import { containerKinds, placeKinds } from "@/lib/schemas/lots/record-container";
import { quarantined } from "./ground";
import type { Here, SoundRecipes } from "./sound-form";

const day = (here: Here) => here.one(["2026-04-03", "2026-04", "2025", "2025-11-12"]);
const jar = (here: Here) => here.one(["Pea 1", "Pea 2"]);

/** Entries and amounts that the two full jars can bear. */
async function someEntry(here: Here) {
  const lotId = await here.lot(jar(here));
  const entry = await here.read.ledgerEntry.findFirstOrThrow({ where: { lotId, kind: "weighed" } });
  return { lotId, entryId: entry.id };
}

async function aTransfer(here: Here, kind: string) {
  return here.read.transfer.findFirstOrThrow({
    where: { kind, promises: { some: { words: "brings as much again" } } },
  });
}

async function aTest(here: Here, name: string) {
  return here.read.germinationTest.findFirstOrThrow({ where: { name }, include: { replicates: true } });
}

const count = (normal: number, day: number | null = 7) => ({
  day,
  normal,
  abnormal: 1,
  hard: null,
  fresh: null,
  dead: null,
});

/** Forms of lots, their ledgers, tests and hand-overs. */
export const formsOfJars: SoundRecipes = {
  "app/lots/[id]/claims/actions.ts": {
    tell: async (here) => {
      const kind = here.one(claimKinds);
      const parent = kind === "unknown before" ? "" : here.one(["Pea 2", quarantined]);
      const words = here.fresh("it came from the mill");
      const fields = { kind, parent, words, teller: here.some("Osk Tarn"), howSure: here.some(...claimSureness) };
      return { bound: [await here.lot("Pea 1")], fields };
    },
    putClaimRight: async (here) => {
      const claim = await here.read.lineageClaim.findFirstOrThrow({ where: { kind: "unknown before" } });
      return {
        bound: [claim.id],
        fields: { kind: "unknown before", words: here.fresh("nobody knows"), why: "misheard" },
      };
    },
    judge: async (here) => {
      const claim = await here.read.lineageClaim.findFirstOrThrow({ where: { kind: "unknown before" } });
      return { bound: [claim.id], fields: { standing: here.one(["open", "set aside"]), reason: "asked again" } };
    },
  },
  "app/lots/[id]/give/action.ts": {
    giveFromLot: async (here) => {
      const kind = here.one(["gift", "loan", "exchange", "safety duplicate", "to a library"]);
      const loan: Record<string, string> = kind === "loan" ? { promise: "as much again", replyDue: "2028-10" } : {};
      const hand = here.one(["The Seed Shelf", "Osk Tarn"]);
      const to = kind === "to a library" ? "The Seed Shelf" : hand;
      const fields = { kind, on: day(here), amount: here.one(["5", "2.5", "12"]), unit: here.one(["g"]), ...loan };
      const kept = { "told.no-promise": "yes", override: "they know the seed", note: here.some("in a paper bag") };
      return { bound: [await here.lot("Pea 1")], fields: { ...fields, ...kept, holder: to } };
    },
  },
  "app/lots/[id]/same/actions.ts": {
    merge: async (here) => ({
      bound: [await here.lot("Pea 1"), quarantined],
      fields: { leads: here.one(["this", "other"]), parentage: "yes", why: "one sack, two labels" },
    }),
    twoLots: async (here) => ({
      bound: [await here.lot("Pea 1"), await here.lot("Pea 2")],
      fields: { why: here.fresh("two sacks") },
    }),
    standAlone: async (here) => ({ bound: [await here.lot("M 4")], fields: { why: "it was another sack" } }),
  },
  "app/lots/[id]/status/actions.ts": {
    decide: async (here) => {
      const found = here.one(["same", "own strain", "different", "spoiled"]);
      const fields = {
        found,
        on: "2026-09-01",
        how: "grown beside it",
        strain: "Over the hill",
        grownUnrecorded: "yes",
      };
      return { bound: [await here.lot(quarantined)], fields };
    },
    move: async (here) => ({
      bound: [await here.lot("Pea 1")],
      fields: { status: here.one(["hold", "closed", "circle only"]), on: day(here), reason: "looked at it" },
    }),
  },
  "app/lots/_actions/containers.ts": {
    addContainer: async (here) => ({
      bound: [await here.lot(jar(here))],
      fields: {
        ...{ code: here.fresh("J"), kind: here.some(...containerKinds), amount: here.some("12.5", "0"), unit: "g" },
        ...{ place: here.fresh("Shelf"), placeKind: here.some(...placeKinds), sealedOn: here.some("2026-01") },
      },
    }),
    moveContainer: async (here) => {
      const container = await here.read.container.findFirstOrThrow();
      const fields = {
        code: container.code ?? "",
        kind: "jar",
        unit: "g",
        amount: here.one(["3", "4.25"]),
        note: "moved",
      };
      return { bound: [container.lotId, container.id], fields };
    },
  },
  "app/lots/_actions/correct.ts": {
    putLotRight: async (here) => ({
      bound: [await here.lot(jar(here))],
      fields: {
        thousandSeedGrams: here.one(["240", "261.5"]),
        treatment: "none",
        reason: "counted again",
        notes: here.fresh("n"),
        ...here.stood({ treatment: "none", thousandSeedGrams: "250" }),
      },
    }),
  },
  "app/lots/_actions/drying.ts": {
    readMoisture: async (here) => ({
      bound: [await here.lot(jar(here))],
      fields: { on: day(here), percent: here.one(["8", "9.5"]), method: here.some(...moistureMethods) },
    }),
    layOut: async (here) => ({
      bound: [await here.lot("Pea 2")],
      fields: { on: day(here), startGrams: "150", startPercent: "13", targetPercent: here.one(["6", "7"]) },
    }),
    writeDried: async (here) => {
      const drying = await here.read.drying.findFirstOrThrow({ where: { endGrams: null } });
      return { bound: [drying.lotId, drying.id], fields: { on: "2026-10-02", endGrams: here.one(["185", "190.5"]) } };
    },
  },
  "app/lots/_actions/ledger.ts": {
    writeEntry: async (here) => {
      const kind = here.one(["received", "tested", "discarded", "weighed"]);
      const unit = here.one(kind === "weighed" ? ["g"] : ["g", "seeds"]);
      const amount = kind === "weighed" ? "3200" : here.one(unit === "g" ? ["10", "1.5"] : ["40"]);
      const words = { other: here.some("Osk Tarn"), notes: here.some("on the kitchen scales") };
      return { bound: [await here.lot(jar(here))], fields: { on: day(here), kind, amount, unit, ...words } };
    },
    putEntryRight: async (here) => {
      const { lotId, entryId } = await someEntry(here);
      const fields = { on: "2020-03-02", kind: "weighed", amount: here.one(["3990", "4100.5"]), unit: "g" };
      return { bound: [lotId, entryId], fields: { ...fields, reason: "read the scales wrongly" } };
    },
    takeEntryBack: async (here) => {
      const lotId = await here.lot("M 1");
      const entry = await here.read.ledgerEntry.findFirstOrThrow({ where: { lotId, kind: "received" } });
      return { bound: [lotId, entry.id], fields: { reason: "another jar" } };
    },
    weighSeeds: async (here) => ({
      bound: [await here.lot(jar(here))],
      fields: { on: day(here), "counts.0.seeds": "100", "counts.0.grams": here.one(["25", "24.2"]), note: "dry" },
    }),
  },
  "app/lots/_actions/part-and-mix.ts": {
    mixLots: async (here) => {
      const ids = [await here.lot("Pea 1"), await here.lot("Pea 2")];
      const parts = ids.flatMap((id) => [
        [`in.${id}`, "yes"],
        [`amount.${id}`, here.one(["20", "35.5"])],
        [`unit.${id}`, "g"],
        [`living.${id}`, "80"],
      ]);
      const why = {
        on: day(here),
        reason: "two small jars",
        override: "tried in the kitchen",
        number: here.fresh("Mix"),
      };
      return { fields: { ...Object.fromEntries(parts), ...why, holder: "Orla Fennwick" } };
    },
    partLot: async (here) => ({
      bound: [await here.lot(jar(here))],
      fields: {
        ...{
          amount: here.one(["15", "7.5"]),
          unit: "g",
          on: day(here),
          number: here.fresh("Part"),
          reason: "for the hill",
        },
        ...{ holder: "Osk Tarn", override: "they know the seed" },
      },
    }),
  },
  "app/lots/_actions/record.ts": {
    enterLot: async (here) => ({
      fields: {
        ...{ number: here.fresh("Found"), variety: "Bent Pea", origin: here.one(["received", "purchased", "found"]) },
        ...{
          year: here.some("2019", "1998~"),
          amount: here.one(["30", "0.5"]),
          amountKind: "weighed",
          amountOn: "2026-05-01",
        },
        ...{
          holder: "Orla Fennwick",
          founderLines: here.some("one", "many"),
          story: here.some("it was always here"),
        },
      },
    }),
  },
  "app/sharing/_actions/transfers.ts": {
    takeIn: async (here) => ({
      fields: {
        ...{
          kind: here.one(["gift", "exchange"]),
          on: day(here),
          variety: "Bent Pea",
          holder: "Orla Fennwick",
        },
        ...{
          giverWords: "somebody at the market",
          number: here.fresh("Came"),
          amount: here.some("12", "3.5"),
          unit: "g",
        },
        ...{ story: here.fresh("their grandmother's"), looked: here.some("no beetles") },
      },
    }),
    putTransferRight: async (here) => {
      const { id } = await aTransfer(here, "loan");
      const fields = {
        on: "2026-03-02",
        amount: here.one(["19", "21.5"]),
        unit: "g",
        conditions: here.some("as much again"),
      };
      return { bound: [id], fields: { ...fields, replyDue: "2027-10", reason: "weighed again" } };
    },
    writeAnswer: async (here) => ({
      bound: [(await aTransfer(here, "loan")).id],
      fields: { on: "2026-08-02", words: here.fresh("they came up well") },
    }),
    promiseKept: async (here) => {
      const { id } = await here.read.promise.findFirstOrThrow({ where: { keptOn: null } });
      return { bound: [id, "/lots"], fields: { on: here.one(["2026-09-09", "2026-09"]) } };
    },
    promiseLetGo: async (here) => {
      const { id } = await here.read.promise.findFirstOrThrow({ where: { keptOn: null } });
      return { bound: [id, "/lots"], fields: { reason: "the school is closed" } };
    },
    holderSaid: async (here) => ({
      bound: [await here.variety("Bent Pea"), "Orla Fennwick"],
      fields: {
        still: here.one(["yes", "no", "unknown"]),
        on: here.some("2026-02"),
        grams: here.some("12"),
        note: "by the gate",
      },
    }),
  },
  "app/tests/_actions/store.ts": {
    storeTest: async (here) => ({
      given: {
        ...{
          lotId: await here.lot("Pea 1"),
          name: here.fresh("T"),
          on: day(here),
          basis: here.one(["normal seedlings", "sprouted"]),
        },
        ...{ method: "paper roll", temperature: "20", preTreatment: null, finalCountDay: 10, note: null },
        replicates: [1, 2].map((name) => ({ name: String(name), sown: 25, counts: [count(here.drawn.whole(20))] })),
        seedsUsed: here.drawn.one([{ book: "no" }, { book: "by-seed-weight" }, { book: "weighed", grams: 12.5 }]),
      },
    }),
    storeCounts: async (here) => {
      const { id, replicates } = await aTest(here, "P9");
      return {
        given: {
          testId: id,
          counts: replicates.map((each) => ({ ...count(here.drawn.whole(20)), replicateId: each.id })),
        },
      };
    },
    storeCorrection: async (here) => {
      const { replicates } = await aTest(here, "T1");
      const replicateId = { in: replicates.map((each) => each.id) };
      const old = await here.read.testCount.findFirstOrThrow({ where: { replicateId, day: 5 } });
      const instead = here.drawn.chance(0.7) ? count(here.drawn.whole(9), 5) : null;
      return { given: { countId: old.id, instead, reason: "read the wrong row" } };
    },
  },
};
