import { describe, expect, it } from "vitest";
import { decodeText } from "@/lib/exchange/notebook-folder/decode-text";

describe("bytes that are not UTF-8", () => {
  it("are read as Windows-1252, byte for byte", () => {
    // The 27 characters that Windows-1252 has where Latin-1 has none, in the order of their bytes, as the Unicode
    // Consortium's table CP1252.TXT gives them.
    const special = "€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ";
    const bytes = [0x80, 0x82, 0x83, 0x84, 0x85, 0x86, 0x87, 0x88, 0x89, 0x8a, 0x8b, 0x8c, 0x8e];
    bytes.push(0x91, 0x92, 0x93, 0x94, 0x95, 0x96, 0x97, 0x98, 0x99, 0x9a, 0x9b, 0x9c, 0x9e, 0x9f);
    const read = decodeText(Uint8Array.from([...bytes, 0xc9, 0xff]));
    expect(read.ok && read.value.text).toBe(`${special}Éÿ`);
    expect(read.ok && read.value.notice?.code).toBe("read-windows-1252");
  });
});

describe("UTF-8", () => {
  it("is read without a notice", () => {
    const read = decodeText(new TextEncoder().encode("Élan’s 🌱"));
    expect(read).toEqual({ ok: true, value: { text: "Élan’s 🌱", notice: null } });
  });
});
