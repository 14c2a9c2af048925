import { describe, expect, it } from "vitest";
import { writeCsv } from "@/lib/exchange/notebook-folder/write-csv";
import { writeNotebookFolder, writeTable } from "@/lib/exchange/notebook-folder/write-notebook-folder";
import { emptyNotebook } from "@/lib/schemas/notebook/rows";
import { notebookOf, small } from "./small-notebook";

const text = (bytes: Uint8Array | undefined) => new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);

describe("a table", () => {
  it("is CSV by RFC 4180: CRLF, UTF-8 without a mark, quotes only where they must be", () => {
    const bytes = writeCsv(
      ["lot", "notes"],
      [
        ["Élan 1", 'a "b"'],
        [null, "x,y"],
        ["plain", "two\nlines"],
        ["one;two", "a\rb"],
      ],
    );
    expect(text(bytes)).toBe('lot,notes\r\nÉlan 1,"a ""b"""\r\n,"x,y"\r\nplain,"two\nlines"\r\none;two,"a\rb"\r\n');
  });

  it("writes numbers as shortest plain decimals", () => {
    expect(text(writeCsv(["grams"], [[0.1 + 0.2], [1e-7], [18]]))).toBe(
      "grams\r\n0.30000000000000004\r\n0.0000001\r\n18\r\n",
    );
  });

  it("leaves what looks like a formula as it is, unless it is for a spreadsheet", () => {
    const rows = [
      ["=1+1", -5],
      ["-3.5", "+x"],
      ["@a", "-b"],
    ];
    expect(text(writeCsv(["a", "b"], rows))).toBe("a,b\r\n=1+1,-5\r\n-3.5,+x\r\n@a,-b\r\n");
    expect(text(writeCsv(["a", "b"], rows, "spreadsheet"))).toBe("\ufeffa,b\r\n'=1+1,-5\r\n-3.5,'+x\r\n'@a,'-b\r\n");
  });
});

describe("a notebook folder", () => {
  it("has the seven files with all their columns, whatever is in it", () => {
    const files = writeNotebookFolder(emptyNotebook());
    expect([...files.keys()]).toEqual([
      "stewards.csv",
      "varieties.csv",
      "grow_outs.csv",
      "lots.csv",
      "plants.csv",
      "tests.csv",
      "ledger.csv",
    ]);
    expect(text(files.get("lots.csv"))).toBe(
      "lot,variety,holder,year,kind,from,thousand_seed_grams,inbreeding,notes\r\n",
    );
    expect(text(files.get("tests.csv"))).toBe("test,lot,date,replicate,sown,day,normal,abnormal,hard,fresh,dead\r\n");
  });

  it("writes shares, sources and dates as they are read", () => {
    const { growOuts, lots } = notebookOf(small);
    expect(text(writeTable("growOuts", growOuts)).split("\r\n").slice(1)).toEqual([
      "K,Hollow Kale,Orla Fennwick,,2001-05,Kale 1,100,60,,4,2,3,plants,,,",
      "P,Bent Pea,Orla Fennwick,,2001-05,Pea 1:0.4;Pea 2:0.6,100,80,,,,20,equal,,,",
      "S,Marsh Spinach,Orla Fennwick,,2001-05,Spinach 1,100,80,30,5,,20,cv 0.5,,,",
      "",
    ]);
    expect(text(writeTable("lots", lots)).split("\r\n")).toContain(
      "Pea 5,Bent Pea,Orla Fennwick,2002,blend,Pea 3:0.5;Pea 1:0.5,,,",
    );
    expect(text(writeTable("lots", lots)).split("\r\n")).toContain("Pea 2,Bent Pea,The Seed Shelf,1998~,founder,,,,");
  });

  it("puts extra columns after its own, by name, and gives each further table a file", () => {
    const row = { cells: { steward: "Orla" }, extra: { b: "2", Ä: "3", a: "1" } };
    expect(text(writeTable("stewards", [row]))).toBe("steward,place,kind,a,b,Ä\r\nOrla,,,1,2,3\r\n");
    const further = { file: "places.csv", columns: ["name", "note"], rows: [{ cells: { note: "dry", name: "Loft" } }] };
    expect(text(writeNotebookFolder(emptyNotebook(), [further]).get("places.csv"))).toBe("name,note\r\nLoft,dry\r\n");
  });
});
