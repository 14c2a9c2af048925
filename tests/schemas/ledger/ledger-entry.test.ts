import { expect, test } from "vitest";
import { ledgerCorrectionSchema, ledgerEntrySchema } from "@/lib/schemas/ledger/ledger-entry";
import { parseForm } from "@/lib/schemas/lots/form-fields";

const typed = { on: "2024-05-20", kind: "sown", amount: "40", unit: "g" };

test("an entry of the desk is read whole", () => {
  const read = parseForm(ledgerEntrySchema("north"), { ...typed, other: "G12", notes: " " });
  expect(read.ok && read.value).toMatchObject({ kind: "sown", amount: 40, unit: "g", other: "G12", notes: null });
});

test("a blend's entries are written by the blend, not at the desk; a correction may keep one", () => {
  expect(parseForm(ledgerEntrySchema("north"), { ...typed, kind: "blended-out" }).ok).toBe(false);
  expect(parseForm(ledgerCorrectionSchema("north"), { ...typed, kind: "blended-out", reason: "misread" }).ok).toBe(
    true,
  );
});

test("date, kind, amount and unit are needed, each said at its field", () => {
  const read = parseForm(ledgerEntrySchema("north"), {});
  expect(read.ok ? [] : read.refusals.map((each) => each.path[0])).toEqual(["on", "amount", "unit", "kind"]);
});

test("a negative amount is refused", () => {
  const read = parseForm(ledgerEntrySchema("north"), { ...typed, amount: "-4" });
  expect(read.ok ? [] : read.refusals.map((each) => each.sentence)).toEqual(["-4 is too small; write 0 or more"]);
});
