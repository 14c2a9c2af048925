import { zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { archiveLimits } from "@/lib/exchange/archive/archive-limits";
import { filesOfUpload } from "@/lib/exchange/archive/files-of-upload";

const text = (words: string) => new TextEncoder().encode(words);

async function namesOf(uploaded: Record<string, Uint8Array>) {
  const files = await filesOfUpload(new Map(Object.entries(uploaded)));
  return files.ok ? [...files.value.keys()] : files.refusals[0]?.code;
}

describe("an upload", () => {
  it("may be the files of a folder one by one", async () => {
    expect(await namesOf({ "lots.csv": text("lot"), "ledger.csv": text("lot") })).toEqual(["lots.csv", "ledger.csv"]);
  });

  it("may be a zip of the files alone", async () => {
    expect(await namesOf({ "all.zip": zipSync({ "lots.csv": text("lot"), "plots.csv": text("name") }) })).toEqual([
      "lots.csv",
      "plots.csv",
    ]);
  });

  it("may be a zip of the folder, with what the computer left in it", async () => {
    const zip = zipSync({
      "mine/seed/lots.csv": text("lot"),
      "mine/seed/photos/1a.jpg": text(""),
      "mine/seed/.DS_Store": text(""),
      "__MACOSX/mine/seed/._lots.csv": text(""),
      "mine/readme.txt": text("outside"),
    });
    expect(await namesOf({ "seed.zip": zip })).toEqual(["lots.csv", "photos/1a.jpg"]);
  });

  it("takes the deepest folder that holds all where none of the seven files is there", async () => {
    expect(await namesOf({ "a.zip": zipSync({ "a/b/x.csv": text(""), "a/b/c/y.csv": text("") }) })).toEqual([
      "x.csv",
      "c/y.csv",
    ]);
  });

  it("is refused where two folders hold a notebook", async () => {
    const zip = zipSync({ "old/lots.csv": text("lot"), "new/lots.csv": text("lot") });
    expect(await namesOf({ "both.zip": zip })).toBe("two-folders");
  });

  it("is refused where a zip lies among other files", async () => {
    expect(await namesOf({ "a.zip": zipSync({ "lots.csv": text("") }), "lots.csv": text("") })).toBe(
      "archive-among-files",
    );
  });

  it("is refused where its tables have more rows than a page looks through", async () => {
    const limits = { ...archiveLimits, rows: 4 };
    const code = async (uploaded: Record<string, Uint8Array>) => {
      const files = await filesOfUpload(new Map(Object.entries(uploaded)), limits);
      return files.ok ? "taken" : files.refusals[0]?.code;
    };
    expect(await code({ "lots.csv": text("lot\na\nb\n"), "note.txt": text("\n".repeat(9)) })).toBe("taken");
    expect(await code({ "lots.csv": text("lot\na\nb\n"), "ledger.csv": text("lot\na\n") })).toBe("too-many-rows");
    expect(await code({ "a.zip": zipSync({ "lots.csv": text("lot\ra\rb\rc\rd\r") }) })).toBe("too-many-rows");
  });

  it("may hold a spreadsheet's own file, which is no zip of a folder", async () => {
    const sheet = zipSync({ "xl/workbook.xml": text("") });
    expect(await namesOf({ "lots.xlsx": sheet, "ledger.csv": text("lot") })).toEqual(["lots.xlsx", "ledger.csv"]);
    expect(await namesOf({ "lots.xlsx": sheet })).toEqual(["lots.xlsx"]);
  });

  it("is refused where the zip holds nothing", async () => {
    expect(await namesOf({ "a.zip": zipSync({ "__MACOSX/a": text("") }) })).toBe("archive-empty");
  });
});
