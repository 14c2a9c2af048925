import { X509Certificate } from "node:crypto";
import { readFile } from "node:fs/promises";
import path from "node:path";
import { dataFolder } from "@/lib/db";

/** The certificate of the registry's own authority, which a device has to trust once; its key never leaves the data folder. */
export interface Authority {
  /** DER, as every system takes it */
  readonly file: Uint8Array<ArrayBuffer>;
  /** SHA-256, as every system shows it */
  readonly fingerprint: string;
  readonly name: string;
}

/** Reads the authority's certificate; null before the registry was first opened to others. */
export async function readAuthority(folder: string = dataFolder()): Promise<Authority | null> {
  const text = await readFile(path.join(folder, "sharing", "authority.crt"), "utf8").catch(() => null);
  if (text === null) return null;
  const certificate = new X509Certificate(text);
  return {
    file: new Uint8Array(certificate.raw),
    fingerprint: certificate.fingerprint256,
    name: certificate.subject.replace(/^CN=/m, ""),
  };
}
