import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readNotebookFolder } from "@/lib/exchange/notebook-folder/read-notebook-folder";
import { writeNotebookFolder } from "@/lib/exchange/notebook-folder/write-notebook-folder";
import { sameName } from "@/lib/registry/names/fold-name";
import { ledgerKinds, stewardKinds } from "@/lib/schemas/notebook/kinds";
import { emptyNotebook, type Notebook } from "@/lib/schemas/notebook/rows";
import { parseDate } from "@/lib/science/dates/parse-date";
import { referenceFolder } from "./folder-of-files";

// Whatever a person may write: quotes, commas, semicolons, line breaks, formulas, other scripts.
const anyText = fc
  .oneof(
    fc.string({ unit: "binary", minLength: 1, maxLength: 30 }),
    fc.stringMatching(/^[a-z ",;:'\r\n\t=+\-@#|]{1,20}$/),
    fc.constantFrom(
      '"',
      '""',
      ",",
      "\n",
      "\r",
      "\r\n",
      "=1+1",
      "-5",
      "'x",
      "\ufeffx",
      " lead",
      "trail ",
      "0012",
      "1e5",
    ),
  )
  .map((text) => text.replaceAll("\0", "0"))
  .filter((text) => text.trim() !== "" && !/\p{Surrogate}/u.test(text));
const anyName = anyText
  .map((text) => text.normalize("NFC").replace(/\s+/g, " ").trim())
  .filter((text) => text !== "" && text === text.normalize("NFC"));
const orNull = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
const anyDate = fc
  .constantFrom("1987", "1987-05", "1987-05-20", "1991~", "1991?", "198X", "1987/1991", "[1987..1991]", "1987/..")
  .map((text) => {
    const read = parseDate(text);
    if (!read.ok) throw new Error(text);
    return read.value;
  });
const anyGrams = fc.oneof(
  fc.double({ min: 1e-12, max: 1e12, noNaN: true }),
  fc.integer({ min: 1, max: 1_000_000 }).map((tenths) => tenths / 10),
);
const noExtra = fc.constant({});

/** Rows that belong together: distinct names, ledger entries that only bring in. */
const anyNotebook: fc.Arbitrary<Notebook> = fc
  .record({
    stewards: fc.uniqueArray(anyName, { selector: sameName, maxLength: 4 }),
    varieties: fc.uniqueArray(anyName, { selector: sameName, minLength: 1, maxLength: 3 }),
    lots: fc.uniqueArray(anyName, { selector: sameName, minLength: 1, maxLength: 5 }),
  })
  .chain(({ stewards, varieties, lots }) => {
    const steward = stewards.length === 0 ? fc.constant(null) : orNull(fc.constantFrom(...stewards));
    const variety = fc.constantFrom(...varieties);
    return fc.record({
      stewards: fc.tuple(
        ...stewards.map((name) =>
          fc.record({
            cells: fc.record({
              steward: fc.constant(name),
              place: orNull(anyText),
              kind: orNull(fc.constantFrom(...stewardKinds)),
            }),
            extra: fc.constantFrom<Record<string, string>>({}, { "seen, when": '"twice"\n' }),
          }),
        ),
      ),
      varieties: fc.tuple(
        ...varieties.map((name) =>
          fc.record({
            cells: fc.record({
              variety: fc.constant(name),
              crop: fc.constantFrom("pea", "kale", "hedge-foot vetch"),
              story: orNull(anyText),
              type_description: orNull(anyText),
            }),
            extra: noExtra,
          }),
        ),
      ),
      lots: fc.tuple(
        ...lots.map((name) =>
          fc.record({
            cells: fc.record({
              lot: fc.constant(name),
              variety,
              holder: steward,
              year: orNull(anyDate),
              kind: fc.constant("founder" as const),
              from: fc.constant(null),
              thousand_seed_grams: orNull(anyGrams),
              inbreeding: orNull(fc.double({ min: 0, max: 1, noNaN: true }).map((share) => share + 0)),
              notes: orNull(anyText),
            }),
            extra: noExtra,
          }),
        ),
      ),
      ledger: fc.array(
        fc.record({
          cells: fc.record({
            lot: fc.constantFrom(...lots),
            date: anyDate,
            kind: fc.constantFrom(...ledgerKinds.slice(0, 3)),
            grams: anyGrams,
            other: orNull(anyText),
            notes: orNull(anyText),
          }),
          extra: noExtra,
        }),
        { maxLength: 8 },
      ),
    });
  })
  .map((some) => ({ ...emptyNotebook(), ...some }));

const bare = (notebook: Notebook | null) =>
  Object.fromEntries(
    Object.entries(notebook ?? {}).map(([table, rows]) => [
      table,
      rows.map(({ cells, extra }: { cells: object; extra: object }) => ({ cells, extra })),
    ]),
  );

describe("a notebook", () => {
  it("that is written reads back as the same notebook, whatever stands in its cells", () => {
    fc.assert(
      fc.property(anyNotebook, (notebook) => {
        const read = readNotebookFolder(writeNotebookFolder(notebook));
        expect(read.faults).toEqual([]);
        expect(bare(read.notebook)).toEqual(bare(notebook));
      }),
      { numRuns: 300 },
    );
  });

  it("that was read and written gives the same bytes from then on", () => {
    const { notebook } = readNotebookFolder(referenceFolder("notebook"));
    const first = writeNotebookFolder(notebook as Notebook);
    const again = readNotebookFolder(first);
    expect(again.faults).toEqual([]);
    expect(bare(again.notebook)).toEqual(bare(notebook));
    expect(writeNotebookFolder(again.notebook as Notebook)).toEqual(first);
  });

  it("survives as the registry's own, read a second time", () => {
    fc.assert(
      fc.property(anyNotebook, (notebook) => {
        const files = writeNotebookFolder(notebook);
        const existing = readNotebookFolder(files).notebook as Notebook;
        const again = readNotebookFolder(files, { existing });
        expect(again.faults).toEqual([]);
        expect(bare(again.notebook)).toEqual(bare(existing));
      }),
      { numRuns: 100 },
    );
  });
});
