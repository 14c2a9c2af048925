import type { Device, KeptRecord } from "./kept-rows";

/** The name under which a phone's records are saved. */
export function recordsFileName(device: Device, savedAt: string): string {
  return `kinrow-field-${device.name.replace(/[^\p{L}\p{N}]+/gu, "-")}-${savedAt.slice(0, 10)}.json`;
}

/** Records as a file that carries them home: what `fieldFile` of the schemas reads at the desk. */
export function recordsFile(device: Device, rows: readonly KeptRecord[], savedAt: string): string {
  const { id, name } = device;
  const records = rows.map((row) => row.record);
  return `${JSON.stringify({ kind: "kinrow field records", version: 1, device: { id, name }, savedAt, records })}\n`;
}
