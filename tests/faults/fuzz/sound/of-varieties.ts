import { createHash } from "node:crypto";
import { uuidv7 } from "uuidv7";
import { ownerHere } from "@/lib/access/actor";
import { perform } from "@/lib/registry/change-set/perform";
import { recordSteward } from "@/lib/registry/stewards/record-steward";
import { tellStory } from "@/lib/registry/varieties/tell-story";
import { seedCoatColours, seedCoatPatterns } from "@/lib/schemas/varieties/seed-coat-words";
import { stewardKinds } from "@/lib/schemas/varieties/steward";
import { aims, plantParts, sensitivities, strainRelations } from "@/lib/schemas/varieties/variety";
import { accepted } from "@/lib/science/outcome";
import { granted } from "@/tests/setup/registry";
import { alike } from "./ground";
import type { Here, SoundRecipes } from "./sound-form";

const owner = ownerHere();
const bent = (here: Here) => here.variety("Bent Pea");

/** Something that can be taken back, told just now. */
async function toldJustNow(here: Here): Promise<string> {
  const told = granted(await tellStory(here.db, owner, await bent(here), { words: here.fresh("a story") }));
  return told.changeSetId ?? "";
}

/** A picture's row, entered just now: of what was erased for good nothing is left for the next one. */
async function pictureJustNow(here: Here): Promise<string> {
  const id = uuidv7();
  const hash = createHash("sha256").update(here.fresh("picture")).digest("hex");
  const row = { id, hash, width: 800, height: 600, bytes: 90_000, varietyId: await bent(here) };
  await perform(here.db, owner, { action: "picture", title: "A picture" }, async (change) => {
    await change.create("Photo", { ...row, caption: "who held it" });
    change.touchNothing();
    return accepted(null);
  }).then(granted);
  return id;
}

async function aPicture(here: Here) {
  return here.read.photo.findFirstOrThrow({ where: { hash: "a".repeat(64) } });
}

async function booking(here: Here) {
  const told = (value: number) => ({ words: String(value), value, low: value, high: value, approximate: false });
  const lot = { line: 0, year: "1990", firstSeen: null, words: "from the mill", person: null, assumed: false };
  const [founder, harvest] = [here.fresh("Mill"), here.fresh("Bed")];
  const nothing = {
    ...{
      emerged: null,
      roguedBeforePollen: null,
      roguedAfterPollen: null,
      roguedUntimed: null,
      seedParentsCounted: null,
    },
    ...{ outcome: null, isolation: [], neighbours: [] },
  };
  return {
    variety: { id: await bent(here) },
    holder: here.one(["Orla Fennwick", "Osk Tarn"]),
    lines: [
      { words: "peas from the mill", year: "1990", kind: "received" },
      { words: "sown, 40 plants, seed of 30", year: "1991", kind: "grow-out" },
    ],
    lots: [
      { ...lot, ref: "a", number: founder, kind: "founder", growOut: null, parents: [] },
      { ...lot, ref: "b", line: 1, number: harvest, kind: "harvest", year: "1991", growOut: "g", parents: [] },
    ],
    growOuts: [
      {
        ...{
          ref: "g",
          line: 1,
          year: "1991",
          sown: "1991-04",
          parents: [{ lot: "a", share: 1 }],
          seedsSown: told(100),
        },
        ...{
          plantsStanding: told(40),
          seedParents: told(30),
          seedShares: here.drawn.one(["equal", null]),
          bulked: null,
          ...nothing,
        },
      },
    ],
    entries: [
      {
        line: 0,
        lot: "a",
        on: "1990",
        kind: "received",
        amount: { ...told(200), unit: "g" },
        other: null,
        manner: null,
      },
    ],
    tests: [{ line: 1, lot: "b", on: "1992-02", up: told(18), of: told(20), days: 10, words: "18 of 20" }],
  };
}

/** Forms of varieties, traits and stewards, of pictures, own values, settings and the history. */
export const formsOfVarieties: SoundRecipes = {
  "app/crops/_actions/own-value.ts": {
    storeOwnValue: async (here) => {
      const { id, key } = await here.read.crop.findFirstOrThrow({ where: { key: "pea" } });
      return {
        bound: [{ id, key, field: here.one(["plantsMin", "isolationHomeMinM"]) }],
        fields: { value: here.one(["3", "5"]), reason: "ours are few", source: here.some("Osk") },
      };
    },
    dropOwnValue: async (here) => ({ bound: [(await here.read.cropOverride.findFirstOrThrow()).id, "oat"] }),
  },
  "app/history/_actions/undo.ts": {
    takeBack: async (here) => ({ bound: [await toldJustNow(here)] }),
  },
  "app/methods/tables/_actions/table-value.ts": {
    storeTableValue: async (here) => ({
      bound: [{ table: "oil-content", row: "Oat", field: "oilPercentLow" }],
      fields: { value: here.one(["3", "4.5"]), reason: "naked oats", source: here.some("the mill") },
    }),
    dropTableValue: async (here) => ({
      bound: [(await here.read.tableOverride.findFirstOrThrow()).id, "/methods/tables"],
    }),
  },
  "app/pictures/_actions/pictures.ts": {
    putPictureRight: async (here) => ({
      bound: [(await aPicture(here)).id],
      fields: { caption: here.fresh("the row by the wall"), takenOn: here.some("1988"), why: "another year" },
    }),
    takePictureAway: async (here) => ({
      bound: [(await aPicture(here)).id, "/varieties"],
      fields: { whyAway: "blurred" },
    }),
    erasePicture: async (here) => ({
      bound: [await pictureJustNow(here), "/varieties"],
      fields: { why: "they asked for it" },
    }),
  },
  "app/settings/_actions/store.ts": {
    storeSettings: async (here) => ({
      fields: {
        ...{ renewalPlan: here.one(["75", "80"]), renewalUrgent: "50", confirmedYears: here.one(["2", "5"]) },
        ...{ units: here.one(["metric", "imperial"]), hemisphere: here.one(["north", "south"]) },
      },
    }),
  },
  "app/stewards/_actions/store.ts": {
    storeSteward: async (here) => ({
      fields: {
        name: here.fresh("Sedge Marron"),
        kind: here.some(...stewardKinds),
        place: here.some("Low Barrow"),
        note: here.some("n"),
      },
    }),
    storeStewardCorrection: async (here) => ({
      bound: [await here.steward("Orla Fennwick")],
      fields: {
        name: "Orla Fennwick",
        kind: "grower",
        place: here.one(["High Barrow", "the mill"]),
        ...here.stood({ kind: "grower" }),
      },
    }),
    forgetPerson: async (here) => {
      const name = here.fresh("Whin Tollard");
      granted(await recordSteward(here.db, owner, { name }));
      return { bound: [await here.steward(name)] };
    },
  },
  "app/type-in/_actions/book.ts": {
    bookLines: async (here) => ({ given: await booking(here) }),
    takeLinesBack: async (here) => ({ bound: [await toldJustNow(here)] }),
    takenNumbers: async (here) => ({ bound: [here.one(["Pea", "Kale"])] }),
  },
  "app/varieties/[id]/traits/_form/trait-deeds.ts": {
    defineThisTrait: async (here) => {
      const kind = here.one(["count", "measure", "scale", "yes-no", "category", "date"]);
      const own: Readonly<Record<string, Record<string, string>>> = {
        measure: { unit: "cm", direction: "target", target: "80" },
        scale: { scaleLow: "1", scaleHigh: "5", steps: "1 = weak\n5 = strong" },
        category: { choices: "white\npurple", wanted: "white", direction: "target" },
      };
      const fields = { name: here.fresh("trait"), scope: here.one(["variety", "crop"]), kind, ...own[kind] };
      return { bound: [await bent(here)], fields };
    },
    changeThisTrait: async (here) => {
      const { id } = await here.read.trait.findFirstOrThrow({ where: { name: "length of pod" } });
      const fields = {
        name: "length of pod",
        scope: "variety",
        kind: "measure",
        unit: here.one(["mm", "in"]),
        direction: "higher",
      };
      return { bound: [await bent(here), id], fields };
    },
    takeTraitAway: async (here) => {
      const { id } = await here.read.trait.findFirstOrThrow({ where: { name: "length of pod" } });
      return { bound: [await bent(here), id] };
    },
  },
  "app/varieties/_actions/add.ts": {
    storeAddition: async (here) => {
      const additions: Readonly<Record<string, () => Promise<Record<string, string>>>> = {
        name: async () => ({ name: here.fresh("Hill pea"), kind: here.some("old", "local"), source: here.some("Osk") }),
        same: async () => ({ other: await here.variety(alike), source: "the seed looks alike" }),
        strain: async () => ({
          ...{ name: here.fresh("Of the hill"), keptFrom: here.some("1980"), relation: here.some(...strainRelations) },
          ...{ steward: here.some("Osk Tarn") },
        }),
        trait: async () => ({
          trait: here.fresh("pod"),
          allowed: "green",
          offType: here.some("purple"),
          part: here.some(...plantParts),
        }),
        word: async () => ({ steward: "Osk Tarn", still: here.one(["yes", "no"]), on: here.some("2026-01") }),
        story: async () => ({
          words: here.fresh("she sowed it by the moon"),
          teller: here.some("Osk Tarn"),
          about: here.some("195X"),
        }),
      };
      const what = here.one(Object.keys(additions));
      return { bound: [await bent(here), what], fields: (await additions[what]?.()) ?? {} };
    },
  },
  "app/varieties/_actions/correct.ts": {
    storeCorrection: async (here) => ({
      bound: [await bent(here)],
      fields: {
        ...{
          name: here.one(["Bent Pea", here.fresh("Bent Pea")]),
          aim: here.some(...aims),
          sensitivity: here.one(sensitivities),
        },
        ...{ plantsWanted: here.one(["60", "80"]), note: here.some("n"), reason: "asked the keeper" },
        ...here.stood({ note: "n" }),
      },
    }),
    storeTraitCorrection: async (here) => ({
      bound: [(await here.read.typeTrait.findFirstOrThrow()).id],
      fields: {
        trait: "grain",
        allowed: here.fresh("grey to brown"),
        offType: here.some("white"),
        reason: "seen again",
      },
    }),
    storeStrainCorrection: async (here) => ({
      bound: [(await here.read.strain.findFirstOrThrow()).id],
      fields: { name: "Tarn's", place: here.fresh("the hill"), keptFrom: "1981", reason: "asked again" },
    }),
    storeSeedCoat: async (here) => ({
      bound: [await bent(here)],
      fields: {
        pattern: here.one(seedCoatPatterns),
        ground: here.one(seedCoatColours),
        second: here.one(seedCoatColours),
      },
    }),
  },
  "app/varieties/_actions/kinship.ts": {
    storeKinship: async (here) => {
      const kind = here.one(["unrelated", "same source", "coancestry"]);
      const lots = { first: "Pea 1", second: "Pea 2" };
      return {
        bound: [await bent(here)],
        fields: { ...lots, kind, coancestry: kind === "coancestry" ? "0.25" : "", how: "told" },
      };
    },
    putKinshipRight: async (here) => {
      const { id } = await here.read.founderKinship.findFirstOrThrow();
      const fields = { kind: "coancestry", coancestry: here.one(["0.2", "0.5"]), how: "asked again", why: "misheard" };
      return { bound: [await here.variety("Grey Morrow"), id], fields };
    },
    dropKinship: async (here) => {
      const { id } = await here.read.founderKinship.findFirstOrThrow();
      return { bound: [await here.variety("Grey Morrow"), id], fields: { why: "nobody knows" } };
    },
  },
  "app/varieties/_actions/record.ts": {
    storeVariety: async (here) => ({
      fields: {
        ...{ name: here.fresh("Marrow of the hill"), crop: here.one(["pea", "kale"]), aim: here.some(...aims) },
        ...{ otherCrop: here.drawn.chance(0.2) ? here.fresh("hill vetch") : "", story: here.some("from the hill") },
      },
    }),
  },
};
