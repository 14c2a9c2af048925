/** Why there is no camera: the page is not opened by https; the browser has none for pages; not allowed; none there; another app has it. */
export type CameraMissing = "insecure" | "none-for-pages" | "not-allowed" | "not-there" | "taken" | "failed";

/** What is missing, in words, and what to do. */
export const missingInWords: Readonly<Record<CameraMissing, string>> = {
  insecure:
    "The camera opens only where the registry is reached by its https address. Take a photo of the code, or type what stands beside it.",
  "none-for-pages": "This browser gives no camera to pages. Take a photo of the code, or type what stands beside it.",
  "not-allowed":
    "The camera was not allowed. Allow it for this address in the browser’s settings and try again, or type what stands beside the code.",
  "not-there": "No camera was found on this device. Type what stands beside the code.",
  taken: "Another app holds the camera. Close it and try again, or type what stands beside the code.",
  failed: "The camera did not start. Try again, take a photo of the code, or type what stands beside it.",
};

/** What is missing before anything is asked of the person; null where a camera can be asked for. */
export function missingHere(): CameraMissing | null {
  if (!window.isSecureContext) return "insecure";
  return navigator.mediaDevices?.getUserMedia === undefined ? "none-for-pages" : null;
}

const names: Readonly<Record<string, CameraMissing>> = {
  NotAllowedError: "not-allowed",
  SecurityError: "not-allowed",
  NotFoundError: "not-there",
  OverconstrainedError: "not-there",
  NotReadableError: "taken",
  AbortError: "taken",
};

/** What the browser's refusal means (Media Capture and Streams, getUserMedia). */
export function missingBy(error: unknown): CameraMissing {
  return (error instanceof Error ? names[error.name] : undefined) ?? "failed";
}

/** The camera that looks away from the person, else any. */
export function openCamera(): Promise<MediaStream> {
  return navigator.mediaDevices.getUserMedia({
    audio: false,
    video: { facingMode: { ideal: "environment" }, width: { ideal: 1280 }, height: { ideal: 720 } },
  });
}

export function closeCamera(stream: MediaStream | null): void {
  for (const track of stream?.getTracks() ?? []) track.stop();
}

/** Whether the camera has a light that a page may switch (Image Capture; not on every phone). */
export function hasLight(stream: MediaStream): boolean {
  const [track] = stream.getVideoTracks();
  const able: MediaTrackCapabilities & { torch?: boolean | boolean[] } = track?.getCapabilities?.() ?? {};
  return [able.torch ?? false].flat().includes(true);
}

/** Switches the light; false where the camera would not. */
export async function switchLight(stream: MediaStream, on: boolean): Promise<boolean> {
  const light: MediaTrackConstraintSet & { torch: boolean } = { torch: on };
  try {
    await stream.getVideoTracks()[0]?.applyConstraints({ advanced: [light] });
    return true;
  } catch {
    return false;
  }
}
