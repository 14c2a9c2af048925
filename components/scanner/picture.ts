/** A picture as a canvas gives it: four bytes a pixel. */
export interface Picture {
  readonly data: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

/** Part of a video's frame, as shares of its height: the whole middle, and its heart, where a small code has pixels enough. */
const parts = [1, 0.5] as const;
const mostPixels = 640;
const photoSides = [1600, 800] as const;

/** The middle of what the camera sees, square; wide and narrow in turn, by the number of the look. Null before there is a frame. */
export function middleOfFrame(video: HTMLVideoElement, canvas: HTMLCanvasElement, look: number): Picture | null {
  const { videoWidth: width, videoHeight: height } = video;
  if (width === 0 || height === 0) return null;
  const side = Math.round(Math.min(width, height) * (parts[look % parts.length] ?? 1));
  const left = Math.round((width - side) / 2);
  const top = Math.round((height - side) / 2);
  return drawn(canvas, video, [left, top, side, side], [Math.min(side, mostPixels), Math.min(side, mostPixels)]);
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
