import fc from "fast-check";
import { create } from "qrcode";
import { describe, expect, it } from "vitest";
import { isTagOf, readTagCode, tagCodeText } from "@/lib/schemas/field/tag-code";

const growOut = "019a0000-0000-7000-8000-00000000001f";
const another = "019a0000-0000-7000-8000-000000000020";

function refusalOf(text: string): string | undefined {
  const read = readTagCode(text);
  return read.ok ? undefined : read.refusals[0]?.code;
}

describe("the code of a tag", () => {
  // By hand: the grow-out's id ends in 0x1f, so its short code is 22233; the check character of T2223312 by the hybrid system of ISO 7064
  // with M = 42 (values: T 29, 2 2, 3 3, 1 1). P: 42 → (42+29)=29 → 58-43=15; +2=17 → 34; +2=36 → 72-43=29; +2=31 → 62-43=19; +3=22 → 44-43=1;
  // +3=4 → 8; +1=9 → 18; +2=20 → 40. c = (43 - 40) mod 42 = 3, the character 3.
  it("says the tag and its grow-out, and ends in a check character worked by hand", () => {
    expect(tagCodeText("12", growOut)).toBe("KINROW:T22233123");
    expect(readTagCode("KINROW:T22233123")).toEqual({ ok: true, value: { tag: "12", growOut: "22233" } });
  });

  it("gives back any tag as it is written, of a grow-out or of none", () => {
    const tags = fc.string({ unit: "grapheme", minLength: 1, maxLength: 15 }).filter((tag) => {
      const written = tag.normalize("NFC").trim();
      return written !== "" && written.length <= 60;
    });
    fc.assert(
      fc.property(tags, fc.option(fc.uuid()), (tag, id) => {
        const read = readTagCode(tagCodeText(tag, id));
        if (!read.ok) throw new Error(read.refusals[0]?.sentence);
        expect(read.value.tag).toBe(tag.normalize("NFC").trim());
        expect(id === null ? read.value.growOut : isTagOf(read.value, id)).toBe(id === null ? null : true);
      }),
    );
  });

  it("belongs to its grow-out, or to any where it was printed for none", () => {
    const of = (text: string, id: string) => {
      const read = readTagCode(text);
      return read.ok && isTagOf(read.value, id);
    };
    expect(of(tagCodeText("7", growOut), growOut)).toBe(true);
    expect(of(tagCodeText("7", growOut), another)).toBe(false);
    expect(of(tagCodeText("7", null), another)).toBe(true);
  });

  // ISO/IEC 18004, table of capacities: version 1 (21 modules) holds 20 alphanumeric characters at level M.
  it("has 21 modules on a side up to a tag of six characters", () => {
    expect(create(tagCodeText("A-1234", growOut), { errorCorrectionLevel: "M" }).modules.size).toBe(21);
    expect(create(tagCodeText("A-12345", growOut), { errorCorrectionLevel: "M" }).modules.size).toBe(25);
  });

  it("is read in small letters and with blanks about it", () => {
    expect(readTagCode(" kinrow:t22233123\n").ok).toBe(true);
  });

  it("with any one character changed is refused", () => {
    const code = tagCodeText("A-12", growOut);
    for (let place = "KINROW:T".length; place < code.length; place += 1) {
      for (const other of "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ%+-./$") {
        if (other === code[place]) continue;
        expect(refusalOf(`${code.slice(0, place)}${other}${code.slice(place + 1)}`)).toBeDefined();
      }
    }
  });

  it("is refused where it is something else", () => {
    for (const text of ["", "12", "https://example.org/12", "KINROW:", "KINROW:22222222A", "T22233123"])
      expect(refusalOf(text), text).toBe("no-tag-code");
    expect(refusalOf("KINROW:T22233124")).toBe("tag-code-check");
    expect(refusalOf(tagCodeText(" ", null))).toBe("tag-code-empty");
    expect(refusalOf(tagCodeText("7".repeat(61), null))).toBe("too-long");
  });

  it("tells what to do instead", () => {
    const read = readTagCode("https://example.org/12");
    if (read.ok) throw new Error("it was taken");
    expect(read.refusals[0]?.sentence).toBe(
      '"https://example.org/12" is no code of a plant tag; scan a tag, or type what is written on it',
    );
  });
});
