import { expect, it } from "vitest";
import { faultInLines } from "@/lib/log/fault-in-lines";

const folder = process.cwd();
const private_ = "Orsina Plett-Vahl, Quillgate 83";

it("tells the kind, the code and where it arose, and nothing of the message", () => {
  const error = Object.assign(new TypeError(`no such person: ${private_}`), { code: "P2002", digest: "1234567890" });
  const told = faultInLines(error, folder);
  expect(told).toMatchObject({ kind: "TypeError", code: "P2002", mark: "1234567890" });
  expect(told.at[0]).toContain("tests/log/fault-in-lines.test.ts:");
  expect(JSON.stringify(told)).not.toContain(folder);
  expect(JSON.stringify(told)).not.toContain("Orsina");
});

it("is not misled by a message that looks like the frames, or by words in the place of a code", () => {
  const error = Object.assign(new Error(`x\n    at ${private_} (/field:1:2)`), { code: private_, digest: private_ });
  error.name = private_;
  const told = faultInLines(error, folder);
  expect(told.kind).toBe("Error");
  expect(told.at.length).toBeGreaterThan(0);
  expect(JSON.stringify(told)).not.toMatch(/Orsina|Quillgate/);
});

it("tells what it came of, as sparingly, and leaves out the home folder of a person", () => {
  const inner = new RangeError(private_);
  inner.stack = `RangeError: ${private_}\n    at open (/home/aldis/seed/node_modules/x/index.js:4:5)`;
  const told = faultInLines(new Error("outer", { cause: inner }), folder);
  expect(told.cause).toEqual({ kind: "RangeError", at: ["at open (~/seed/node_modules/x/index.js:4:5)"] });
});

it("takes anything that is thrown", () => {
  expect(faultInLines(private_, folder)).toEqual({ kind: "string", at: [] });
  const endless: Error = new Error("round");
  endless.cause = endless;
  expect(JSON.stringify(faultInLines(endless, folder)).length).toBeLessThan(20_000);
});
