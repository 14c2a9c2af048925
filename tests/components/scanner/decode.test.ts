import { describe, expect, it } from "vitest";
import { codeInPicture } from "@/components/scanner/decode";
import { looks, photoSides } from "@/components/scanner/picture";
import { readTagCode, tagCodeText } from "@/lib/schemas/field/tag-code";
import { type Lie, middleOf, pictureOfCode } from "./codes-drawn";

const growOut = "019a0000-0000-7000-8000-00000000001f";
const tag = tagCodeText("A-12", growOut);

const lies: Readonly<Record<string, Lie>> = {
  "straight, and large": { pixels: 12 },
  "small: three pixels a module": { pixels: 3 },
  "upside down": { pixels: 8, degrees: 180 },
  "turned by 17 degrees": { pixels: 8, degrees: 17 },
  "turned by 45 degrees": { pixels: 8, degrees: 45 },
  "turned by 200 degrees, small": { pixels: 4, degrees: 200 },
  "out of focus": { pixels: 8, blur: 3 },
  "turned and out of focus": { pixels: 8, degrees: 31, blur: 2.5 },
  "on a grey day": { pixels: 8, degrees: 10, blur: 1, black: 0.35, white: 0.6 },
};

describe("a code in a picture", () => {
  for (const [how, lie] of Object.entries(lies)) {
    it(`is read ${how}`, async () => {
      const text = codeInPicture(await pictureOfCode(tag, lie));
      expect(text).toBe(tag);
      expect(readTagCode(text ?? "")).toEqual({ ok: true, value: { tag: "A-12", growOut: "22233" } });
    });
  }

  it("is read whatever tag it says", async () => {
    for (const written of ["1", "37", "204", "row b 3", "Ä-7", "zehnte von links"]) {
      const text = codeInPicture(await pictureOfCode(tagCodeText(written, growOut), { pixels: 6, degrees: 5 }));
      expect(readTagCode(text ?? ""), written).toEqual({ ok: true, value: { tag: written, growOut: "22233" } });
    }
  });

  // A camera of 1280 by 720: a code of 21 modules as small as 63 pixels and as large as 672, nearly all of the frame.
  it("is found by one of the looks, near and far", async () => {
    for (const pixels of [3, 4, 8, 16, 24, 32]) {
      const frame = await pictureOfCode(tag, { pixels, degrees: pixels < 28 ? 7 : 0, blur: 0.5 }, 720);
      const seen = await Promise.all(
        looks.map(async ({ share, side }) => codeInPicture(await middleOf(frame, share, side))),
      );
      expect(seen, `${pixels} pixels a module`).toContain(tag);
    }
  });

  it("is found in a photo, near and far", async () => {
    for (const pixels of [4, 12, 30, 60]) {
      const photo = await pictureOfCode(tag, { pixels, blur: 1 }, 1500);
      const seen = await Promise.all(photoSides.map(async (side) => codeInPicture(await middleOf(photo, 1, side))));
      expect(seen, `${pixels} pixels a module`).toContain(tag);
    }
  });

  it("that is another's is read, and refused as a tag", async () => {
    const text = codeInPicture(await pictureOfCode("https://example.org/12", { pixels: 6 }));
    expect(text).toBe("https://example.org/12");
    const read = readTagCode(text ?? "");
    expect(read.ok ? null : read.refusals[0]?.code).toBe("no-tag-code");
  });

  it("is not found where there is none, or nothing is left of it", async () => {
    expect(codeInPicture(await pictureOfCode(tag, { pixels: 8, black: 1 }))).toBeNull();
    expect(codeInPicture(await pictureOfCode(tag, { pixels: 4, blur: 12 }))).toBeNull();
  });
});
