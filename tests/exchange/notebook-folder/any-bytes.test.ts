import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findingLine } from "@/lib/exchange/notebook-folder/finding";
import { readFurtherFiles } from "@/lib/exchange/notebook-folder/read-further-files";
import { readNotebookFolder } from "@/lib/exchange/notebook-folder/read-notebook-folder";
import { notebookTables, tableNames } from "@/lib/schemas/notebook/columns";
import { filesOf } from "./folder-of-files";
import { small } from "./small-notebook";

const sound = filesOf(small);
const names = tableNames.map((table) => notebookTables[table].file);

function expectAnswer(files: Map<string, Uint8Array>): void {
  const { faults, warnings, notebook } = readNotebookFolder(files);
  expect(notebook === null).toBe(faults.length > 0);
  const lines = [...faults, ...warnings].map(findingLine);
  const odd = /[\r\n]|undefined|NaN is|\[object/;
  expect(lines.filter((line) => !/^(warning: )?[a-z_]+\.csv(:\d+)?: \S/.test(line) || odd.test(line))).toEqual([]);
}

describe("the reader", () => {
  it("answers whatever bytes a file has", () => {
    fc.assert(
      fc.property(fc.constantFrom(...names), fc.uint8Array({ maxLength: 300 }), (file, bytes) => {
        expectAnswer(new Map([...sound, [file, bytes]]));
      }),
      { numRuns: 700 },
    );
  });

  it("answers whatever becomes of the bytes of a sound file", () => {
    const change = fc.record({ at: fc.nat(5000), take: fc.nat(6), put: fc.uint8Array({ maxLength: 6 }) });
    fc.assert(
      fc.property(fc.constantFrom(...names), fc.array(change, { minLength: 1, maxLength: 6 }), (file, changes) => {
        let bytes = [...(sound.get(file) ?? [])];
        for (const { at, take, put } of changes) {
          const place = at % (bytes.length + 1);
          bytes = [...bytes.slice(0, place), ...put, ...bytes.slice(place + take)];
        }
        expectAnswer(new Map([...sound, [file, Uint8Array.from(bytes)]]));
      }),
      { numRuns: 800 },
    );
  });

  it("answers whatever a cell says", () => {
    const words = fc.oneof(
      fc.string({ unit: "binary", maxLength: 12 }),
      fc.constantFrom(
        "",
        "0",
        "-1",
        "1e9",
        "1,5",
        "1.5",
        "2001",
        "equal",
        "plants",
        "cv 1",
        "Pea 1",
        "Pea 3:1",
        "K",
        "yes",
        "founder",
        "blend",
        "weighed",
        "Infinity",
        "\0",
        '"',
        ";;;;",
        ":::",
        "__proto__",
        "constructor",
      ),
    );
    fc.assert(
      fc.property(fc.constantFrom(...names), fc.nat(8), fc.nat(11), words, (file, row, column, word) => {
        const rows = (small[file] ?? "")
          .trimEnd()
          .split("\n")
          .map((line) => line.split(","));
        const line = rows[row % rows.length] ?? [];
        line[column % line.length] = `"${word.replaceAll('"', '""')}"`;
        expectAnswer(new Map([...sound, ...filesOf({ [file]: rows.map((cells) => cells.join(",")).join("\n") })]));
      }),
      { numRuns: 600 },
    );
  });

  it("answers for the files of further records too", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("places.csv", "stories.csv", "odd.csv"),
        fc.uint8Array({ maxLength: 200 }),
        (file, bytes) => {
          const { faults, warnings } = readFurtherFiles(new Map([[file, bytes]]));
          for (const finding of [...faults, ...warnings]) expect(findingLine(finding)).toContain(file);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe("a cell with thousands of names", () => {
  it("is answered", () => {
    const parents = Array.from({ length: 5000 }, (_, place) => `Lost ${place}:0.1`).join(";");
    const growOuts = `grow_out,variety,parents\nK,Hollow Kale,${parents}\n`;
    expect(
      readNotebookFolder(new Map([...sound, ...filesOf({ "grow_outs.csv": growOuts })])).faults.length,
    ).toBeGreaterThan(5000);
  });
});

describe("a large notebook", () => {
  it("of 2,000 lots, 50,000 ledger lines and 50,000 test lines is read and checked whole", () => {
    const lots = Array.from({ length: 2000 }, (_, place) => {
      const from = place === 0 ? "founder," : `split,Pea ${place - 1}`;
      return `Pea ${place},Bent Pea,2000,${from}`;
    });
    const ledger = Array.from({ length: 50_000 }, (_, place) => {
      const entry =
        place < 2000 ? "2001,received,1000" : `200${2 + (place % 7)}-05-1${place % 10},given,${(place % 7) + 1}`;
      return `Pea ${place % 2000},${entry},swap ${place % 30},note ${place}`;
    });
    const tests = Array.from({ length: 50_000 }, (_, place) => {
      const test = Math.floor(place / 8);
      return `T${test},Pea ${test % 2000},2003-01-15,${(Math.floor(place / 2) % 4) + 1},100,${place % 2 ? 5 : 10},40,1,0,0,2`;
    });
    const { faults, notebook } = readNotebookFolder(
      filesOf({
        "varieties.csv": "variety,crop\nBent Pea,pea\n",
        "lots.csv": ["lot,variety,year,kind,from", ...lots].join("\n"),
        "ledger.csv": ["lot,date,kind,grams,other,notes", ...ledger].join("\n"),
        "tests.csv": ["test,lot,date,replicate,sown,day,normal,abnormal,hard,fresh,dead", ...tests].join("\n"),
      }),
    );
    expect(faults).toEqual([]);
    expect(notebook?.ledger).toHaveLength(50_000);
    expect(notebook?.tests).toHaveLength(50_000);
  });
});
