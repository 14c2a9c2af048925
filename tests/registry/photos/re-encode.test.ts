import { createHash } from "node:crypto";
import { writeFileSync } from "node:fs";
import path from "node:path";
import sharp from "sharp";
import { expect, it } from "vitest";
import { reEncoded } from "@/lib/registry/photos/re-encode";
import { granted, temporaryFolder } from "@/tests/setup/registry";
import { halves, noise, segmentsOf, withPlace } from "./pictures";

const text = (bytes: Uint8Array) => Buffer.from(bytes).toString("latin1");
const codeOf = async (bytes: Uint8Array | string, name = "it") => {
  const outcome = await reEncoded(bytes, name);
  return outcome.ok ? "taken" : (outcome.refusals[0]?.code ?? "");
};

it("leaves nothing of what came with a picture: no place, no camera, no words", async () => {
  const sent = await withPlace();
  expect(text(sent)).toContain("Cameramaker");
  expect(text(sent)).toContain("behind the house");
  expect((await sharp(sent).metadata()).exif).toBeDefined();
  const { jpeg } = granted(await reEncoded(sent, "it"));
  const { exif, xmp, icc, iptc, format } = await sharp(jpeg).metadata();
  expect([exif, xmp, icc, iptc, format]).toEqual([undefined, undefined, undefined, undefined, "jpeg"]);
  for (const word of ["Cameramaker", "house", "Exif", "GPS", "http"]) expect(text(jpeg)).not.toContain(word);
  // By T.81 (JPEG): tables db, c4, dd, the frame c0 and the scan da alone; no application data (e0 to ef) and no comment (fe).
  expect(segmentsOf(jpeg).filter((marker) => !["db", "c4", "dd", "c0", "da"].includes(marker))).toEqual([]);
});

it("turns a picture upright as its camera was held", async () => {
  // Orientation 6 of the Exif standard: to be turned a quarter to the right; the left half comes to stand above.
  const sent = await halves(60, 40)
    .withExif({ IFD0: { Orientation: "6" } })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer();
  const { jpeg, width, height } = granted(await reEncoded(Uint8Array.from(sent), "it"));
  expect([width, height]).toEqual([40, 60]);
  const { data, info } = await sharp(jpeg).raw().toBuffer({ resolveWithObject: true });
  const colour = (x: number, y: number) => [...data.subarray((y * info.width + x) * 3, (y * info.width + x) * 3 + 3)];
  const [redAbove = 0, , blueAbove = 0] = colour(20, 5);
  const [redBelow = 0, , blueBelow = 0] = colour(20, 55);
  expect(redAbove > blueAbove && blueBelow > redBelow).toBe(true);
});

it("is at most 1600 pixels long and 2 MB large, and never made larger than it was", async () => {
  const wide = granted(await reEncoded(Uint8Array.from(await halves(3200, 1000).png().toBuffer()), "it"));
  expect([wide.width, wide.height]).toEqual([1600, 500]);
  const small = granted(await reEncoded(Uint8Array.from(await halves(30, 20).webp().toBuffer()), "it"));
  expect([small.width, small.height]).toEqual([30, 20]);
  const rough = granted(await reEncoded(await noise(1600), "it"));
  expect(rough.bytes).toBeLessThanOrEqual(2 * 1024 * 1024);
  expect(rough.bytes).toBe(rough.jpeg.length);
  expect(rough.hash).toBe(createHash("sha256").update(rough.jpeg).digest("hex"));
});

it("gives the same bytes for the same file, from memory and from the disk, and white where nothing is", async () => {
  const clear = { create: { width: 8, height: 8, channels: 4 as const, background: { r: 0, g: 0, b: 0, alpha: 0 } } };
  const sent = Uint8Array.from(await sharp(clear).png().toBuffer());
  const file = path.join(temporaryFolder(), "a.png");
  writeFileSync(file, sent);
  const [one, two] = [granted(await reEncoded(sent, "it")), granted(await reEncoded(file, "it"))];
  expect(one).toEqual(two);
  expect(Math.min(...(await sharp(one.jpeg).raw().toBuffer()))).toBeGreaterThan(250);
});

it("refuses what is no still picture, by its bytes and not by its name", async () => {
  const gif = await sharp({ create: { width: 4, height: 4, channels: 3, background: "#fff" } })
    .gif()
    .toBuffer();
  const svg = new TextEncoder().encode("<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>");
  const moving = await sharp(
    Uint8Array.from({ length: 96 }, (_one, at) => (at < 48 ? 9 : 200)),
    {
      raw: { width: 4, height: 8, channels: 3, pageHeight: 4 },
    },
  )
    .webp({ loop: 0, delay: [100, 100] })
    .toBuffer();
  const heic = Uint8Array.from([0, 0, 0, 24, ...Buffer.from("ftypheic0000mif1heic")]);
  expect(await codeOf(Uint8Array.from(gif), "a.jpg")).toBe("photo-kind");
  expect(await codeOf(svg, "a.jpg")).toBe("photo-kind");
  expect(await codeOf(new TextEncoder().encode("\ufeff <?xml version='1.0'?><svg/>"))).toBe("photo-kind");
  expect(await codeOf(new TextEncoder().encode("Dear all"), "letter.jpg")).toBe("photo-kind");
  expect(await codeOf(heic)).toBe("photo-kind");
  expect(await codeOf(Uint8Array.from(moving))).toBe("photo-moves");
  expect(await codeOf(new Uint8Array(0))).toBe("photo-empty");
  const outcome = await reEncoded(svg, "a.jpg");
  expect(outcome.ok ? "" : outcome.refusals[0]?.sentence).toBe(
    '"a.jpg" is a drawing or a page of text (SVG, HTML), which can hold a program; choose a photograph as JPEG, PNG, WebP or AVIF',
  );
});

it("refuses a picture that was cut off, one that is damaged, and one that would unpack to a flood", async () => {
  const whole = await halves(400, 300).jpeg().toBuffer();
  expect(await codeOf(Uint8Array.from(whole.subarray(0, whole.length - 300)))).toBe("photo-damaged");
  expect(await codeOf(Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 1, 2, 3))).toBe("photo-damaged");
  // A PNG of some hundred bytes that states 60,000 by 60,000 pixels: its header (by RFC 2083) changed, with a right checksum.
  const bomb = Buffer.from(await halves(4, 4).png().toBuffer());
  bomb.writeUInt32BE(60_000, 16);
  bomb.writeUInt32BE(60_000, 20);
  bomb.writeUInt32BE(checksum(bomb.subarray(12, 29)), 29);
  expect(await codeOf(Uint8Array.from(bomb))).toBe("photo-pixels");
});

/** The checksum of a PNG's chunk, bit by bit (RFC 2083, annex 15). */
function checksum(bytes: Iterable<number>): number {
  let rest = 0xffffffff;
  for (const byte of bytes) {
    rest ^= byte;
    for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  }
  return (rest ^ 0xffffffff) >>> 0;
}
