import { execFile } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { temporaryFolder } from "@/tests/setup/registry";

interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

const data = path.join(temporaryFolder(), "data");

function cli(name: string, args: readonly string[], folder = data): Promise<Ended> {
  return new Promise((resolve) => {
    const child = execFile(
      process.execPath,
      ["--import", "tsx", `lib/cli/${name}.ts`, ...args],
      { env: { ...process.env, KINROW_DATA: folder }, maxBuffer: 64 * 2 ** 20 },
      (error, out, err) => resolve({ code: typeof error?.code === "number" ? error.code : error ? 1 : 0, out, err }),
    );
    child.stdin?.end();
  });
}

function folderOf(files: Readonly<Record<string, string>>): string {
  const folder = path.join(temporaryFolder(), "folder");
  mkdirSync(folder);
  for (const [name, text] of Object.entries(files)) writeFileSync(path.join(folder, name), text);
  return folder;
}

describe("npm run import", () => {
  beforeAll(async () => {
    expect((await cli("import", ["tests/reference/notebook"])).code).toBe(0);
  });

  it("lists exactly the faults of a faulty folder on standard error, ends with 1 and writes nothing", async () => {
    const empty = path.join(temporaryFolder(), "data");
    const ended = await cli("import", ["tests/reference/notebook-faulty"], empty);
    const faults = ended.err.split("\n").filter((line) => line && !line.startsWith("warning:"));
    const expected = readFileSync("tests/reference/notebook-faulty/expected-faults.txt", "utf8").trim().split("\n");
    expect(faults.map((line) => line.split(":").slice(0, 2).join(":")).sort()).toEqual(expected.sort());
    expect(ended.code).toBe(1);
    expect((await cli("figures", [], empty)).out).toBe("");
  });

  it("says of the same folder again that nothing was changed", async () => {
    const ended = await cli("import", ["tests/reference/notebook"]);
    expect([ended.code, ended.out]).toEqual([
      0,
      "The registry holds every row of this folder already; nothing was changed.\n",
    ]);
  });

  it("asks before it changes what is there: without a terminal and without --yes it ends with 2", async () => {
    const later = folderOf({
      "lots.csv": "lot,variety,kind,thousand_seed_grams\nKiko 125,Bellman's Thimble,founder,1.5\n",
    });
    const asked = await cli("import", [later]);
    expect(asked.code).toBe(2);
    expect(asked.out).toContain('lot Kiko 125: thousand_seed_grams from "1.27" to "1.5"');
    expect((await cli("import", [later, "--check"])).code).toBe(0);
    const agreed = await cli("import", [later, "--yes"]);
    expect(agreed.code).toBe(0);
    expect((await cli("import", [later])).out).toContain("nothing was changed");
  });

  it("ends with 2 on a wrong call and on a folder that is not there", async () => {
    expect((await cli("import", [])).code).toBe(2);
    expect((await cli("import", ["tests", "--force"])).err).toContain("--force is no option here");
    const missing = await cli("import", ["no-such-folder"]);
    expect([missing.code, missing.err]).toEqual([
      2,
      'There is no folder "no-such-folder"; name the folder that holds the CSV files.\n',
    ]);
  });
});

describe("npm run export", () => {
  it("refuses a folder that holds files, so that nothing is written over", async () => {
    const ended = await cli("export", ["tests/reference"]);
    expect(ended.code).toBe(2);
    expect(ended.err).toContain("holds files already");
  });

  it("writes a folder that brings the same registry into an empty one", async () => {
    const folder = path.join(temporaryFolder(), "out");
    const other = path.join(temporaryFolder(), "data");
    const again = path.join(temporaryFolder(), "again");
    expect((await cli("export", [folder])).code).toBe(0);
    expect((await cli("import", [folder], other)).code).toBe(0);
    expect((await cli("export", [again], other)).code).toBe(0);
    const bytes = (place: string) =>
      readdirSync(place).map((name) => [name, readFileSync(path.join(place, name), "utf8")]);
    expect(bytes(again)).toEqual(bytes(folder));
  });
});

describe("npm run figures", () => {
  it("prints a line of JSON a lot, in code-point order, or only of the lots that are named", async () => {
    const all = (await cli("figures", [])).out
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line).lot as string);
    expect(all).toEqual([...all].sort((a, b) => (a < b ? -1 : 1)));
    const one = await cli("figures", ["Dubi 33"]);
    expect(
      one.out
        .trim()
        .split("\n")
        .map((line) => JSON.parse(line).lot),
    ).toEqual(["Dubi 33"]);
  });

  it("says which lot is not there", async () => {
    const ended = await cli("figures", ["Dubi 999"]);
    expect([ended.code, ended.err]).toEqual([
      1,
      '"Dubi 999" is no lot of this registry; write a lot number as it stands there\n',
    ]);
  });
});
