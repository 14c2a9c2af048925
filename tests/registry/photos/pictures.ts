import sharp, { type Sharp } from "sharp";

/** A picture of two colours, so many pixels wide and high: the left half red, the right half blue. */
export function halves(width: number, height: number): Sharp {
  const left = Math.floor(width / 2);
  const blue = { create: { width: width - left, height, channels: 3 as const, background: "#1030c0" } };
  return sharp({ create: { width, height, channels: 3, background: "#c02010" } }).composite([
    { input: blue, left, top: 0 },
  ]);
}

/** A JPEG as a phone makes it: with the place where it was taken, the camera, the day, and words. */
export async function withPlace(width = 60, height = 40): Promise<Uint8Array> {
  const bytes = await halves(width, height)
    .withExif({
      IFD0: { Make: "Cameramaker", ImageDescription: "behind the house", DateTime: "2026:07:04 08:00:00" },
      IFD3: { GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 0/1", GPSLongitudeRef: "E", GPSLongitude: "7/1 12/1 0/1" },
    })
    .withXmp("<x:xmpmeta xmlns:x='adobe:ns:meta/'><note>behind the house</note></x:xmpmeta>")
    .jpeg()
    .toBuffer();
  return Uint8Array.from(bytes);
}

/** A picture in which no part is like another, which JPEG cannot make small. */
export async function noise(side: number): Promise<Uint8Array> {
  const raw = new Uint8Array(side * side * 3);
  let state = 1;
  for (let at = 0; at < raw.length; at += 1) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    raw[at] = state >>> 24;
  }
  const bytes = await sharp(raw, { raw: { width: side, height: side, channels: 3 } })
    .png()
    .toBuffer();
  return Uint8Array.from(bytes);
}

/** The markers of a JPEG's segments up to its picture data, in hexadecimal. */
export function segmentsOf(jpeg: Uint8Array): string[] {
  const markers: string[] = [];
  for (let at = 2; at < jpeg.length; ) {
    const marker = jpeg[at + 1] ?? 0;
    markers.push(marker.toString(16));
    if (marker === 0xda) break;
    at += 2 + (jpeg[at + 2] ?? 0) * 256 + (jpeg[at + 3] ?? 0);
  }
  return markers;
}
