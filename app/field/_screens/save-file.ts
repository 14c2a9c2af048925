import type { Device, KeptRecord } from "@/lib/field/kept-rows";
import { recordsFile, recordsFileName } from "@/lib/field/records-file";

/** Saves records to a file, and answers when, by the phone's clock; null where the person closed the phone's own window of sharing. */
export async function saveRecords(device: Device, rows: readonly KeptRecord[]): Promise<string | null> {
  const savedAt = new Date().toISOString();
  const name = recordsFileName(device, savedAt);
  return (await saved(new File([recordsFile(device, rows, savedAt)], name, { type: "application/json" })))
    ? savedAt
    : null;
}

/** Saves a picture to a file of its own, likewise. */
export async function savePhoto(hash: string, bytes: Blob): Promise<string | null> {
  const file = new File([bytes], `kinrow-photo-${hash.slice(0, 12)}.jpg`, { type: bytes.type || "image/jpeg" });
  return (await saved(file)) ? new Date().toISOString() : null;
}

async function saved(file: File): Promise<boolean> {
  const shares = { files: [file], title: file.name };
  if (navigator.canShare?.(shares)) {
    try {
      await navigator.share(shares);
      return true;
    } catch (fault) {
      // who closes the phone's own window of sharing wants no file either
      if (fault instanceof DOMException && fault.name === "AbortError") return false;
    }
  }
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  return true;
}
