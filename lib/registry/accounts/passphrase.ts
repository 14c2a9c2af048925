import { randomBytes, type ScryptOptions, scrypt, timingSafeEqual } from "node:crypto";

/*
 * scrypt (RFC 7914) with N = 2^16, r = 8, p = 2: 64 MiB a hash, one of the settings that OWASP's Password Storage Cheat Sheet holds equal.
 * The settings stand in each hash, so that later ones can be harder.
 */
const cost = { N: 65_536, r: 8, p: 2 } as const;
const saltBytes = 16;
const keyBytes = 32;

/** The hash of a passphrase as it is stored: `scrypt:N:r:p:salt:key`. Unicode is brought to NFKC, so that every keyboard types the same. */
export async function hashPassphrase(passphrase: string): Promise<string> {
  const salt = new Uint8Array(randomBytes(saltBytes));
  const key = await derived(passphrase, salt, keyBytes, cost);
  return ["scrypt", cost.N, cost.r, cost.p, inWords(salt), inWords(key)].join(":");
}

/** True where the passphrase is the one that was hashed; takes as long where it is not. */
export async function isPassphrase(passphrase: string, hash: string): Promise<boolean> {
  const [kind, N, r, p, salt, key] = hash.split(":");
  if (kind !== "scrypt" || !salt || !key) return false;
  const wanted = bytesOf(key);
  const settings = { N: Number(N), r: Number(r), p: Number(p) };
  return timingSafeEqual(await derived(passphrase, bytesOf(salt), wanted.length, settings), wanted);
}

const inWords = (bytes: Uint8Array) => Buffer.from(bytes).toString("base64url");
const bytesOf = (words: string) => new Uint8Array(Buffer.from(words, "base64url"));

let last: Promise<unknown> = Promise.resolve();

/** One after the other: many knocks at once must not take all the memory. */
function derived(passphrase: string, salt: Uint8Array, bytes: number, { N, r, p }: ScryptOptions): Promise<Uint8Array> {
  const options = { N, r, p, maxmem: 256 * (N ?? 1) * (r ?? 1) };
  const next = last.then(
    () =>
      new Promise<Uint8Array>((resolve, reject) => {
        scrypt(passphrase.normalize("NFKC"), salt, bytes, options, (error, key) =>
          error ? reject(error) : resolve(new Uint8Array(key)),
        );
      }),
  );
  last = next.catch(() => undefined);
  return next;
}
