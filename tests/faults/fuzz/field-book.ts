import { existsSync, readFileSync, writeFileSync } from "node:fs";
import type { Database } from "@/lib/db";
import type { Drawn } from "./drawn";
import { oddWord, soundWord } from "./odd-words";

interface Learnt {
  readonly fields: Set<string>;
  /** words that a refusal said would be right, by field */
  readonly words: Map<string, Set<string>>;
  /** values to which nothing was said while other fields were refused, by field, the newest last */
  readonly passed: Map<string, string[]>;
  /** fields that were missed when they were empty */
  readonly needed: Set<string>;
}

const mostPassed = 12;

/** Tables whose records forms are about; the rest are still met, less often. */
const likely = [
  "Lot",
  "GrowOut",
  "Variety",
  "Steward",
  "Plant",
  "GerminationTest",
  "Transfer",
  "Harvest",
  "LedgerEntry",
  "Trait",
  "NeighbourSource",
  "ChangeSet",
  "Container",
  "Promise",
];

/** The records that a field is about, by how it is called. */
const recordsNamed: readonly (readonly [RegExp, string])[] = [
  [/variety/i, "Variety"],
  [/growOut/i, "GrowOut"],
  [/(lot|parent|partner)/i, "Lot"],
  [/(steward|holder|takenBy|^by$|^from$|^to$|who)/i, "Steward"],
  [/(plot)/i, "Plot"],
  [/(strain)/i, "Strain"],
  [/(trait)/i, "Trait"],
  [/(harvest)/i, "Harvest"],
  [/(test)/i, "GerminationTest"],
  [/(place)/i, "Place"],
  [/(crop)/i, "Crop"],
];

/** What is known of each form: which fields it reads, and which words its own refusals ask for. It begins knowing nothing. */
export class FieldBook {
  private readonly forms = new Map<string, Learnt>();
  private ids: readonly (readonly string[])[] = [];
  private byTable: ReadonlyMap<string, readonly string[]> = new Map();
  private namesOf: ReadonlyMap<string, readonly string[]> = new Map();
  private crop = "";
  /** the field that was put in beside those of the form */
  private beside: string | null = null;

  /** What an earlier portion of a long run learnt, where it left a file. */
  recall(file: string): void {
    if (!existsSync(file)) return;
    const forms = JSON.parse(readFileSync(file, "utf8")) as Record<
      string,
      Record<string, { words: string[]; needed: boolean }>
    >;
    for (const [key, fields] of Object.entries(forms))
      this.forms.set(key, {
        fields: new Set(Object.keys(fields)),
        words: new Map(Object.entries(fields).map(([field, { words }]) => [field, new Set(words)])),
        // Names and numbers of records are others in each portion.
        passed: new Map(),
        needed: new Set(Object.entries(fields).flatMap(([field, { needed }]) => (needed ? [field] : []))),
      });
  }

  /** Leaves what was learnt for the next portion. */
  leave(file: string): void {
    const forms = [...this.forms].map(([key, { fields, words, needed }]) => {
      const named = [...fields].filter((field) => field !== "__proto__");
      const told = (field: string) => ({ words: [...(words.get(field) ?? [])], needed: needed.has(field) });
      return [key, Object.fromEntries(named.map((field) => [field, told(field)]))] as const;
    });
    writeFileSync(file, JSON.stringify(Object.fromEntries(forms)));
  }

  /** Ids of records of every kind that stand. */
  get known(): readonly string[] {
    return this.ids.flat();
  }

  async learnRecords(db: Database): Promise<void> {
    const tables = await db.read.$queryRawUnsafe<{ name: string }[]>(
      "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE '_prisma%' ORDER BY name",
    );
    const ids: string[][] = [];
    const byTable = new Map<string, string[]>();
    for (const { name } of tables) {
      if (name === "Change" || name === "Crop") continue;
      const rows = await db.read.$queryRawUnsafe<{ id: string }[]>(`SELECT "id" FROM "${name}" ORDER BY "id" LIMIT 40`);
      if (rows.length === 0) continue;
      byTable.set(
        name,
        rows.map((row) => row.id),
      );
      const turns = likely.includes(name) ? 5 : 1;
      for (let turn = 0; turn < turns; turn += 1) ids.push(rows.map((row) => row.id));
    }
    this.ids = ids;
    this.crop = (await db.read.crop.findFirstOrThrow({ where: { key: "pea" } })).id;
    this.byTable = byTable;
    const [lots, varieties, people, growOuts] = await Promise.all([
      db.read.lot.findMany({ select: { number: true } }),
      db.read.variety.findMany({ select: { name: true } }),
      db.read.person.findMany({ select: { name: true } }),
      db.read.growOut.findMany({ select: { name: true } }),
    ]);
    this.namesOf = new Map([
      ["Lot", lots.map((lot) => lot.number)],
      ["Variety", varieties.map((each) => each.name)],
      ["Steward", people.map((each) => each.name)],
      ["GrowOut", growOuts.map((each) => each.name)],
    ]);
  }

  /** What a form's action is called with, by the names of what it takes. Forged: something that no page of ours would send. */
  argumentsOf(key: string, takes: readonly string[], drawn: Drawn): { all: unknown[]; shown: string; forged: boolean } {
    const learnt = this.of(key);
    const form = new FormData();
    const plain: Record<string, unknown> = {};
    const evenly = drawn.chance(0.75);
    // Rows and stages that a form has many of are left out whole.
    const parts = new Map<string, boolean>();
    for (const field of learnt.fields) {
      const part = field.includes(".") ? field.slice(0, field.lastIndexOf(".")) : "";
      if (!parts.has(part)) parts.set(part, part !== "" && drawn.chance(evenly ? 0.7 : 0.3));
      if (parts.get(part)) continue;
      if (drawn.chance(learnt.needed.has(field) ? 0.03 : evenly ? 0.35 : 0.5)) continue;
      const value = this.value(learnt, field, drawn, evenly ? 0.02 : 0.3);
      form.append(field, value);
      put(plain, field, value);
    }
    this.beside = null;
    if (drawn.chance(0.1)) {
      this.beside = drawn.one(["__proto__", "id", "$ACTION_ID_x", "constructor", "role", "stewardId"]);
      form.append(this.beside, oddWord(drawn));
    }
    if (drawn.chance(0.03)) form.append(drawn.one([...learnt.fields, "x"]), new File(["a picture"], "x.bin"));
    let forged = false;
    const all = takes.map((name) => {
      const dice = drawn.whole(100);
      if (dice < 3) {
        forged = true;
        return drawn.one<unknown>([
          null,
          undefined,
          0,
          Number.NaN,
          true,
          [],
          {},
          { not: "x" },
          { contains: "" },
          ["x"],
          new Date(0),
          new FormData(),
        ]);
      }
      if (name === "form") return form;
      if (name === "before" || name === "state") return { typed: {}, refusals: [], done: null };
      if (name === "given" || name === "sent") return plain;
      if (name === "at" || name === "crop") return this.place(drawn);
      if (name === "inGramsTyped") return drawn.chance(0.5);
      return dice < 90 ? this.fitting(name, drawn) : dice < 95 ? this.id(drawn) : oddWord(drawn);
    });
    const told = (each: unknown) =>
      each instanceof FormData
        ? [...each].map(([name, value]) => [name, typeof value === "string" ? value.slice(0, 80) : "a file"])
        : each;
    return { all, shown: JSON.stringify(all.map(told)).slice(0, 1500), forged };
  }

  /** A record of the kind that an argument is called by. */
  private fitting(name: string, drawn: Drawn): string {
    const known: Readonly<Record<string, string>> = {
      ...{
        other: "Lot",
        otherId: "Lot",
        recordId: "Lot",
        id: "Transfer",
        countId: "StageCount",
        standId: "GrowOutPlot",
      },
      ...{ steward: "Steward", neighbourId: "NeighbourSource", testId: "GerminationTest", overrideId: "CropOverride" },
    };
    const words: Readonly<Record<string, readonly string[]>> = {
      ...{ leadsTo: ["/lots"], back: ["/methods/tables"], key: ["pea"], stem: ["M ", "Pea"] },
      ...{
        table: ["StageCount", "RoguePass", "FloweringNote", "User"],
        what: ["name", "story", "strain", "trait", "other"],
      },
    };
    const word = words[name];
    if (word) return drawn.one(word);
    const stem = name.replace(/Id$/, "").toLowerCase();
    const table =
      known[name] ??
      [...this.byTable.keys()].find((each) => each.toLowerCase() === stem) ??
      [...this.byTable.keys()].find((each) => each.toLowerCase().endsWith(stem));
    const ids = this.byTable.get(table ?? "") ?? [];
    return ids.length > 0 ? drawn.one(ids) : this.id(drawn);
  }

  private place(drawn: Drawn): Record<string, string> {
    const crop = drawn.one(this.byTable.get("Variety") ?? [""]);
    return {
      id: drawn.chance(0.7) ? this.crop : crop,
      key: "pea",
      field: drawn.one(["plantsMin", "thousandSeedGrams", "x"]),
      table: drawn.one(["oil-content", "isolation", "x"]),
      row: drawn.one(["Oat", "x"]),
    };
  }

  /** Notes which fields were read, and what the answer's refusals say would be right. */
  heard(key: string, fields: ReadonlySet<string>, answer: unknown, given: readonly unknown[] = []): void {
    const learnt = this.of(key);
    for (const field of fields)
      if (field !== "then" && field !== "toJSON" && field !== this.beside && learnt.fields.size < 60)
        learnt.fields.add(field);
    const refusals = (answer as { refusals?: unknown } | null)?.refusals;
    if (!Array.isArray(refusals)) return;
    this.heardOfValues(learnt, refusals, given);
    for (const each of refusals as { code?: unknown; path?: unknown; needed?: unknown }[]) {
      if (!Array.isArray(each.path) || typeof each.needed !== "string") continue;
      const field = each.path.join(".");
      if (field !== "" && learnt.fields.size < 60) learnt.fields.add(field);
      // "write it in digits, as 12" lists no words.
      const listed = /\b(?:choose|write) ([\w -]+(?:, [\w -]+)+)/.exec(each.code === "not-one-of" ? each.needed : "");
      const words = listed?.[1]?.split(", ") ?? [];
      const known = learnt.words.get(field) ?? new Set();
      for (const word of words) known.add(word);
      learnt.words.set(field, known);
    }
  }

  /** Values that were not among what was refused are worth sending again; those that were are not. */
  private heardOfValues(learnt: Learnt, refusals: readonly unknown[], given: readonly unknown[]): void {
    const form = given.find((each) => each instanceof FormData);
    if (!(form instanceof FormData) || refusals.length === 0) return;
    const named = (refusals as { path?: unknown; field?: unknown }[]).map(({ path, field }) =>
      Array.isArray(path) ? path.join(".") : String(field ?? ""),
    );
    const refused = new Set(named);
    for (const field of learnt.fields) {
      const value = form.get(field);
      const passed = (learnt.passed.get(field) ?? []).filter((each) => each !== value);
      if (refused.has(field)) {
        if (value === null || value === "") learnt.needed.add(field);
      } else if (typeof value === "string" && value !== "" && value.length < 100 && !refused.has(""))
        passed.push(value);
      learnt.passed.set(field, passed.slice(-mostPassed));
    }
  }

  private of(key: string): Learnt {
    const learnt = this.forms.get(key) ?? { fields: new Set(), words: new Map(), passed: new Map(), needed: new Set() };
    this.forms.set(key, learnt);
    return learnt;
  }

  private id(drawn: Drawn): string {
    return drawn.one(drawn.one(this.ids));
  }

  private value(learnt: Learnt, field: string, drawn: Drawn, odd: number): string {
    if (drawn.chance(odd)) return oddWord(drawn);
    const passed = learnt.passed.get(field) ?? [];
    if (passed.length > 0 && drawn.chance(0.6)) return drawn.one(passed);
    const words = [...(learnt.words.get(field) ?? [])];
    if (words.length > 0 && drawn.chance(0.8)) return drawn.one(words);
    if (/(^|\.)(on|date|day|from|to|sown|due|fromOn|toOn|endedOn|sealedOn|first|last)$/i.test(field))
      return drawn.one(["2026-05-01", "2026-08", "2024", "2025-10-12", "2021~"]);
    if (/unit/i.test(field)) return drawn.one(["g", "g", "seeds", "packets", "ears"]);
    const named = recordsNamed.find(([pattern]) => pattern.test(field))?.[1];
    if (named && drawn.chance(0.85)) {
      const [ids, names] = [this.byTable.get(named) ?? [], this.namesOf.get(named) ?? []];
      const known = names.length > 0 && drawn.chance(0.4) ? names : ids;
      return known.length > 0 && drawn.chance(0.9) ? drawn.one(known) : drawn.chance(0.7) ? this.id(drawn) : "pea";
    }
    if (/(name|words|note|reason|why|told|number|code|source|what|how|teller)/i.test(field) && drawn.chance(0.8))
      return `${soundWord(drawn)} ${drawn.whole(1000)}`;
    return soundWord(drawn);
  }
}

/** Puts a value at a dotted place: counts.0.seeds stands in a list. */
function put(into: Record<string, unknown>, field: string, value: string): void {
  const steps = field.split(".");
  let at: Record<string, unknown> = into;
  for (const [place, step] of steps.entries()) {
    if (step === "__proto__") return;
    if (place === steps.length - 1) at[step] = value;
    else {
      const next = at[step];
      const inner: Record<string, unknown> =
        typeof next === "object" && next !== null
          ? (next as Record<string, unknown>)
          : /^\d+$/.test(steps[place + 1] ?? "")
            ? ([] as unknown as Record<string, unknown>)
            : {};
      at[step] = inner;
      at = inner;
    }
  }
}
