import { existsSync, readFileSync, writeFileSync } from "node:fs";
import type { Database } from "@/lib/db";
import type { Drawn } from "./drawn";
import { oddWord, soundWord } from "./odd-words";

interface Learnt {
  readonly fields: Set<string>;
  /** words that a refusal said would be right, by field */
  readonly words: Map<string, Set<string>>;
}

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

/** What is known of each form: which fields it reads, and which words its own refusals ask for. It begins knowing nothing. */
export class FieldBook {
  private readonly forms = new Map<string, Learnt>();
  private ids: readonly (readonly string[])[] = [];
  private byTable: ReadonlyMap<string, readonly string[]> = new Map();
  private names: readonly string[] = [];
  private crop = "";

  /** What an earlier portion of a long run learnt, where it left a file. */
  recall(file: string): void {
    if (!existsSync(file)) return;
    const forms = JSON.parse(readFileSync(file, "utf8")) as Record<string, Record<string, string[]>>;
    for (const [key, words] of Object.entries(forms))
      this.forms.set(key, {
        fields: new Set(Object.keys(words)),
        words: new Map(Object.entries(words).map(([field, each]) => [field, new Set(each)])),
      });
  }

  /** Leaves what was learnt for the next portion. */
  leave(file: string): void {
    const forms = [...this.forms].map(([key, { fields, words }]) => {
      const named = [...fields].filter((field) => field !== "__proto__");
      return [key, Object.fromEntries(named.map((field) => [field, [...(words.get(field) ?? [])]]))] as const;
    });
    writeFileSync(file, JSON.stringify(Object.fromEntries(forms)));
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
    this.names = [...lots.map((lot) => lot.number), ...[...varieties, ...people, ...growOuts].map((each) => each.name)];
  }

  /** What a form's action is called with, by the names of what it takes. Forged: something that no page of ours would send. */
  argumentsOf(key: string, takes: readonly string[], drawn: Drawn): { all: unknown[]; shown: string; forged: boolean } {
    const learnt = this.of(key);
    const form = new FormData();
    const plain: Record<string, unknown> = {};
    const evenly = drawn.chance(0.75);
    for (const field of learnt.fields) {
      if (drawn.chance(evenly ? 0.15 : 0.5)) continue;
      const value = this.value(learnt, field, drawn, evenly ? 0.03 : 0.3);
      form.append(field, value);
      put(plain, field, value);
    }
    if (drawn.chance(0.1))
      form.append(drawn.one(["__proto__", "id", "$ACTION_ID_x", "constructor", "role", "stewardId"]), oddWord(drawn));
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
  heard(key: string, fields: ReadonlySet<string>, answer: unknown): void {
    const learnt = this.of(key);
    for (const field of fields)
      if (field !== "then" && field !== "toJSON" && learnt.fields.size < 60) learnt.fields.add(field);
    const refusals = (answer as { refusals?: unknown } | null)?.refusals;
    if (!Array.isArray(refusals)) return;
    for (const each of refusals as { path?: unknown; needed?: unknown }[]) {
      if (!Array.isArray(each.path) || typeof each.needed !== "string") continue;
      const field = each.path.join(".");
      if (field !== "" && learnt.fields.size < 60) learnt.fields.add(field);
      const words = /\b(?:choose|write) ([\w -]+(?:, [\w -]+)+)/.exec(each.needed)?.[1]?.split(", ") ?? [];
      const known = learnt.words.get(field) ?? new Set();
      for (const word of words) known.add(word);
      learnt.words.set(field, known);
    }
  }

  private of(key: string): Learnt {
    const learnt = this.forms.get(key) ?? { fields: new Set(), words: new Map() };
    this.forms.set(key, learnt);
    return learnt;
  }

  private id(drawn: Drawn): string {
    return drawn.one(drawn.one(this.ids));
  }

  private value(learnt: Learnt, field: string, drawn: Drawn, odd: number): string {
    if (drawn.chance(odd)) return oddWord(drawn);
    const words = [...(learnt.words.get(field) ?? [])];
    if (words.length > 0 && drawn.chance(0.8)) return drawn.one(words);
    if (/(^|\.)(on|date|day|from|to|sown|due|fromOn|toOn|endedOn|sealedOn|first|last)$/i.test(field))
      return drawn.one(["2026-05-01", "2026-08", "2024", "2025-10-12", "2021~"]);
    if (/unit/i.test(field)) return drawn.one(["g", "g", "seeds", "packets", "ears"]);
    if (
      /(lot|variety|steward|holder|parent|partner|crop|growOut|strain|place|plot|test|harvest)/i.test(field) &&
      drawn.chance(0.8)
    )
      return drawn.chance(0.5) ? drawn.one(this.names) : drawn.chance(0.8) ? this.id(drawn) : "pea";
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
