import { zipSync } from "fflate";
import type { Drawn } from "./drawn";
import type { Folder } from "./mangled-folder";

/** A folder as a zip: packed by another library than the one that unpacks, and often not as it should be. */
export function mangledArchive(folder: Folder, drawn: Drawn): Uint8Array {
  const top = drawn.one(["", "notebook/", "a/b/", "", "notebook/"]);
  const paths = [...folder]
    .filter(([name]) => name !== "" && name !== "__proto__")
    .map(([name, bytes]) => [top + name, bytes] as const);
  const files: Record<string, Uint8Array> = Object.fromEntries(paths);
  const [first] = paths;
  const dice = drawn.whole(14);
  if (dice === 0)
    files[
      drawn.one([
        "../lots.csv",
        "a/../../lots.csv",
        "/etc/lots.csv",
        "C:/lots.csv",
        "a\\..\\lots.csv",
        "lots.csv/",
        "./lots.csv",
        "con",
        "\u202elots.csv",
      ])
    ] = first?.[1] ?? new Uint8Array();
  if (dice === 1) files["second/lots.csv"] = first?.[1] ?? new Uint8Array();
  if (dice === 2) files["zeros.csv"] = new Uint8Array(3_000_000);
  if (dice === 3) files["inner.zip"] = zipSync({ "lots.csv": new Uint8Array(10) });
  if (dice === 4) for (let place = 0; place < 300; place += 1) files[`many/${place}.csv`] = new Uint8Array();
  const packed = zipSync(files, { level: drawn.chance(0.5) ? 6 : 0 });
  if (dice === 5) return packed.slice(0, drawn.whole(packed.length));
  if (dice === 6) return asLink(packed);
  if (dice === 7) return statedOtherwise(packed, drawn);
  if (dice === 8) return twice(packed);
  if (dice < 12) return packed;
  const bytes = Uint8Array.from(packed);
  for (let left = 1 + drawn.whole(6); left > 0; left -= 1) bytes[drawn.whole(bytes.length)] = drawn.whole(256);
  return bytes;
}

/** Where the directory at the end of an archive tells of its entries. */
function entriesAt(bytes: Uint8Array): number[] {
  const found: number[] = [];
  for (let at = 0; at + 4 < bytes.length; at += 1)
    if (bytes[at] === 0x50 && bytes[at + 1] === 0x4b && bytes[at + 2] === 1 && bytes[at + 3] === 2) found.push(at);
  return found;
}

/** The first file says that it is a symbolic link (the mode's upper bits, of a Unix maker). */
function asLink(packed: Uint8Array): Uint8Array {
  const bytes = Uint8Array.from(packed);
  const [at] = entriesAt(bytes);
  if (at === undefined) return bytes;
  const view = new DataView(bytes.buffer);
  view.setUint16(at + 4, 0x0314, true);
  view.setUint32(at + 38, (0o120777 << 16) >>> 0, true);
  return bytes;
}

/** An entry that states another size, checksum, way of packing or place than its own. */
function statedOtherwise(packed: Uint8Array, drawn: Drawn): Uint8Array {
  const bytes = Uint8Array.from(packed);
  const at = drawn.one(entriesAt(bytes));
  if (at === undefined) return bytes;
  new DataView(bytes.buffer).setUint32(
    at + drawn.one([8, 10, 16, 20, 24, 28, 32, 42]),
    drawn.one([0, 1, 0xffff, 0x7fffffff, 0xffffffff]),
    true,
  );
  return bytes;
}

/** Two entries of the same name: one name is written over another of the same length. */
function twice(packed: Uint8Array): Uint8Array {
  const bytes = Uint8Array.from(packed);
  const [one, two] = entriesAt(bytes);
  if (one === undefined || two === undefined) return bytes;
  const view = new DataView(bytes.buffer);
  const length = view.getUint16(one + 28, true);
  if (length === view.getUint16(two + 28, true)) bytes.set(bytes.slice(one + 46, one + 46 + length), two + 46);
  return bytes;
}
