import { create } from "qrcode";
import sharp from "sharp";
import type { Picture } from "@/components/scanner/picture";

/** How a code lies in a picture: pixels a module, how far it is turned, blurred and lit. */
export interface Lie {
  readonly pixels: number;
  readonly degrees?: number;
  /** standard deviation of the blur, in pixels */
  readonly blur?: number;
  /** shares of white that black and white come to: 0.35 and 0.6 is a grey day */
  readonly black?: number;
  readonly white?: number;
}

/** A code made by the package `qrcode`, turned and blurred by `sharp`, in the middle of a picture of 480 by 480 pixels, or of so many. */
export async function pictureOfCode(text: string, lie: Lie, side = 480): Promise<Picture> {
  const { modules } = create(text, { errorCorrectionLevel: "M" });
  const squares = Array.from(modules.data, (dark, place) =>
    dark ? `<rect x="${place % modules.size}" y="${Math.floor(place / modules.size)}" width="1" height="1"/>` : "",
  ).join("");
  const size = modules.size * lie.pixels;
  const [black, white] = [lie.black ?? 0, lie.white ?? 1].map((share) => Math.round(share * 255));
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${side}" height="${side}" viewBox="0 0 ${side} ${side}">
    <rect width="${side}" height="${side}" fill="rgb(${white},${white},${white})"/>
    <g transform="translate(${side / 2} ${side / 2}) rotate(${lie.degrees ?? 0}) translate(${-size / 2} ${-size / 2}) scale(${lie.pixels})"
      fill="rgb(${black},${black},${black})" shape-rendering="${lie.degrees ? "auto" : "crispEdges"}">${squares}</g></svg>`;
  let drawn = sharp(Buffer.from(svg)).flatten();
  if (lie.blur) drawn = drawn.blur(lie.blur);
  const { data, info } = await drawn.ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return { data: new Uint8ClampedArray(data), width: info.width, height: info.height };
}

/** The middle of a picture, a share of it, drawn so large at most: what a canvas does for the scanner, done by `sharp`. */
export async function middleOf(picture: Picture, share: number, most: number): Promise<Picture> {
  const side = Math.round(picture.height * share);
  const left = Math.round((picture.width - side) / 2);
  const { width, height } = picture;
  const { data, info } = await sharp(picture.data, { raw: { width, height, channels: 4 } })
    .extract({ left, top: left, width: side, height: side })
    .resize(Math.min(side, most))
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { data: new Uint8ClampedArray(data), width: info.width, height: info.height };
}
