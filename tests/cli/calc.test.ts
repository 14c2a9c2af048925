import { spawnSync } from "node:child_process";
import { Readable, Writable } from "node:stream";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { linesOf } from "@/lib/cli/calc-lines";
import { runCalc } from "@/lib/cli/calc-run";
import { calculations } from "@/lib/schemas/calculations";

async function calc(words: string[], input: string | string[] = "") {
  const written = { output: "", errors: "" };
  const into = (kind: keyof typeof written) =>
    new Writable({
      write(chunk, _encoding, done) {
        written[kind] += String(chunk);
        done();
      },
    });
  const chunks = typeof input === "string" ? [Buffer.from(input)] : input.map((piece) => Buffer.from(piece));
  const code = await runCalc(words, { input: Readable.from(chunks), output: into("output"), errors: into("errors") });
  return { code, ...written, lines: written.output.trimEnd().split("\n") };
}

describe("calc NAME", () => {
  it("answers line for line in the order that they came, and exits 0", async () => {
    const { code, lines } = await calc(["reserve"], '{"seedsPerGrowOut": 10}\n{"seedsPerGrowOut": 20}\n');
    expect(lines.map((line) => (JSON.parse(line) as { seeds: number }).seeds)).toEqual([170, 190]);
    expect(code).toBe(0);
  });

  it("answers a refused line with message and path, goes on, and exits 1", async () => {
    const { code, lines } = await calc(["reserve"], '{"seedsPerGrowOut": -1}\nnot json\n\n{"seedsPerGrowOut": 20}\n');
    expect(lines.map((line) => JSON.parse(line))).toMatchObject([
      {
        error: {
          message: "-1 cannot stand for seedsPerGrowOut; a whole number, 1 or more, is needed",
          path: ["seedsPerGrowOut"],
        },
      },
      { error: { path: [] } },
      { error: { message: "the line is empty; write one JSON object in { } on each line", path: [] } },
      { seeds: 190 },
    ]);
    expect(code).toBe(1);
  });

  it("needs no line feed at the end, and reads line ends of other systems", async () => {
    const { lines } = await calc(["reserve"], '\uFEFF{"seedsPerGrowOut": 10}\r\n{"seedsPerGrowOut": 20}');
    expect(lines).toHaveLength(2);
  });

  it("writes 10,000 lines that come in pieces, none lost", async () => {
    const text = '{"seedsPerGrowOut": 10}\n'.repeat(10_000);
    const pieces = text.match(/[\s\S]{1,4099}/g) ?? [];
    const { lines } = await calc(["reserve"], pieces);
    expect(lines).toHaveLength(10_000);
    expect(new Set(lines).size).toBe(1);
  });
});

describe("calc without a name", () => {
  it("lists every name", async () => {
    const { code, output } = await calc([]);
    for (const { name } of calculations) expect(output).toContain(name);
    expect(code).toBe(0);
  });
});

describe("calc NAME --help", () => {
  it.each(calculations.map(({ name }) => name))(
    "%s prints what goes in, what comes out and the source",
    async (name) => {
      const { code, output } = await calc([name, "--help"]);
      expect(code).toBe(0);
      for (const head of ["Formula", "Input", "Output", "Source", "for example"]) expect(output).toContain(head);
    },
  );
});

describe("a wrong command", () => {
  it("exits 2 and names the calculations there are", async () => {
    const { code, errors, output } = await calc(["seed-count"]);
    expect(code).toBe(2);
    expect(errors).toContain('"seed-count" is no calculation');
    expect(errors).toContain("effective-size");
    expect(output).toBe("");
  });

  it("exits 2 at an option or a second name that it does not know", async () => {
    expect((await calc(["reserve", "--verbose"])).code).toBe(2);
    expect((await calc(["reserve", "lineage"])).code).toBe(2);
  });
});

it("a line end inside JSON text is no end of the line", async () => {
  const lines: string[] = [];
  for await (const line of linesOf(Readable.from([Buffer.from('"a\u2028b"\n"c"')]))) lines.push(line);
  expect(lines).toEqual(['"a\u2028b"', '"c"']);
});

it("runs from a shell, with its exit code", () => {
  const root = fileURLToPath(new URL("../..", import.meta.url));
  const run = (words: string[], input: string) =>
    spawnSync(process.execPath, ["--import", "tsx", "lib/cli/calc.ts", ...words], {
      cwd: root,
      input,
      encoding: "utf8",
    });
  const good = run(["effective-size"], '{"pollenParents": 40, "seedParents": 10, "selfIncompatible": true}\n');
  expect(good.stderr).toBe("");
  expect(good.status).toBe(0);
  expect((JSON.parse(good.stdout) as { effectiveSize: number }).effectiveSize).toBeCloseTo(23.364, 3);
  expect(run(["effective-size"], "{}\n").status).toBe(1);
  expect(run(["nothing"], "").status).toBe(2);
});
