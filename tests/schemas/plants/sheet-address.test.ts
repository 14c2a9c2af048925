import { create } from "qrcode";
import { describe, expect, it } from "vitest";
import { gridOfSheet, readSheetAddress, sheetAddress } from "@/lib/schemas/plants/sheet-address";

// Their short codes, 22222 and 22233, are worked by hand in tests/science/codes/short-code-of-id.test.ts.
const growOut = "019a0000-0000-7000-8000-00000000001f";
const trait = "019a0000-0000-7000-8000-000000000000";
const rows = Array.from({ length: 30 }, (_, step) => ({ tag: String(step + 1), cell: null }));

describe("the address in the head of a sheet", () => {
  it("tells grow-out, rows, traits and day in capitals", () => {
    const address = sheetAddress("https://kinrow.lan:4707", growOut, rows, [trait], "2026-08-20");
    expect(address).toBe("HTTPS://KINROW.LAN:4707/S/22233/1:30/22222/20260820");
    expect(readSheetAddress(address)).toEqual({
      ok: true,
      value: { growOut: "22233", rows: "1:30", traits: "22222", on: "2026-08-20" },
    });
  });

  it("says where no day was printed and no trait", () => {
    const address = sheetAddress("http://127.0.0.1:4707", growOut, rows, [], null);
    expect(address).toBe("HTTP://127.0.0.1:4707/S/22233/1:30/-/-");
    const read = readSheetAddress(address);
    expect(read.ok && gridOfSheet(growOut, read.value)).toBe(`/grow-outs/${growOut}/plants?sheet=1%3A30`);
  });

  // ISO/IEC 18004: version 4 (33 modules on a side) holds 90 alphanumeric characters at level M.
  it("makes a code of 33 modules with six traits on a home network", () => {
    const address = sheetAddress("https://192.168.178.20:4707", growOut, rows, Array(6).fill(trait), "2026-08-20");
    const { modules, segments } = create(address, { errorCorrectionLevel: "M" });
    expect(modules.size).toBe(33);
    expect(segments.map((segment) => segment.mode.id)).not.toContain("Byte");
  });

  it("is refused where it is something else, or its rows are none", () => {
    const refusalOf = (text: string) => {
      const read = readSheetAddress(text);
      return read.ok ? null : read.refusals[0]?.code;
    };
    expect(refusalOf("KINROW:T22233123")).toBe("no-sheet-code");
    expect(refusalOf("https://example.org/")).toBe("no-sheet-code");
    expect(refusalOf("HTTPS://KINROW.LAN/S/22233/9:1/-/-")).toBe("sheet-rows");
    expect(refusalOf("HTTPS://KINROW.LAN/S/22O33/1:9/-/-")).toBe("sheet-grow-out");
  });
});
