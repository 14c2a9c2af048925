/** A name as it is compared: trimmed, Unicode NFC, blanks folded, ’ read as ', letter case folded. */
export function foldName(name: string): string {
  return sameName(name).toLowerCase();
}

/** A name as it is stored and matched in files: as above, letter case kept. */
export function sameName(name: string): string {
  return name.normalize("NFC").replaceAll("’", "'").replace(/\s+/g, " ").trim();
}
