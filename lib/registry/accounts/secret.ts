import { createHmac, randomBytes } from "node:crypto";
import { chmodSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

const kept = new Map<string, string>();

/** The secret that signs the cookies of a data folder; made when it is first needed, readable by its owner alone. */
export function secretOf(folder: string): string {
  const known = kept.get(folder);
  if (known) return known;
  const place = path.join(folder, "sharing");
  const file = path.join(place, "secret");
  mkdirSync(place, { recursive: true, mode: 0o700 });
  chmodSync(place, 0o700);
  try {
    writeFileSync(file, randomBytes(48).toString("base64url"), { mode: 0o600, flag: "wx" });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
    chmodSync(file, 0o600);
  }
  const secret = readFileSync(file, "utf8");
  kept.set(folder, secret);
  return secret;
}

/** What is only to be recognised again and not read: a keyed hash. */
export function veiled(folder: string, text: string): string {
  return createHmac("sha256", secretOf(folder)).update(text).digest("base64url");
}
