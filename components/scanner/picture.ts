/** A picture as a canvas gives it: four bytes a pixel. */
export interface Picture {
  readonly data: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

/**
 * How a frame is looked at, in turn: which share of its height, and drawn how large at most. The whole middle; its heart, where a small code has
 * pixels enough; the whole drawn small, since the reader finds no code whose modules are wider than some 15 pixels.
 */
export const looks = [
  { share: 1, side: 640 },
  { share: 0.5, side: 640 },
  { share: 1, side: 320 },
] as const;
/** The sides at which a photo is looked at, the larger first. */
export const photoSides = [1600, 800, 400] as const;

/** The middle of what the camera sees, square; by the number of the look. Null before there is a frame. */
export function middleOfFrame(video: HTMLVideoElement, canvas: HTMLCanvasElement, look: number): Picture | null {
  const { videoWidth: width, videoHeight: height } = video;
  if (width === 0 || height === 0) return null;
  const how = looks[look % looks.length] ?? looks[0];
  const side = Math.round(Math.min(width, height) * how.share);
  const left = Math.round((width - side) / 2);
  const top = Math.round((height - side) / 2);
  return drawn(canvas, video, [left, top, side, side], [Math.min(side, how.side), Math.min(side, how.side)]);
}

/** A photo from large to small: a code that is blurred when large may be sharp when small. Throws where the file is no picture. */
export async function picturesOfPhoto(file: Blob, canvas: HTMLCanvasElement): Promise<(() => Picture | null)[]> {
  const bitmap = await createImageBitmap(file);
  const { width, height } = bitmap;
  return photoSides.map((side) => () => {
    const scale = Math.min(1, side / Math.max(width, height));
    const size = [Math.max(1, Math.round(width * scale)), Math.max(1, Math.round(height * scale))] as const;
    return drawn(canvas, bitmap, [0, 0, width, height], size);
  });
}

function drawn(
  canvas: HTMLCanvasElement,
  from: CanvasImageSource,
  [left, top, width, height]: readonly [number, number, number, number],
  [wide, high]: readonly [number, number],
): Picture | null {
  canvas.width = wide;
  canvas.height = high;
  const context = canvas.getContext("2d", { willReadFrequently: true });
  if (!context) return null;
  context.drawImage(from, left, top, width, height, 0, 0, wide, high);
  return context.getImageData(0, 0, wide, high);
}
