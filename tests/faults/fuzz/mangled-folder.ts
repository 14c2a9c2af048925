import type { Drawn } from "./drawn";
import { oddWord, soundWord } from "./odd-words";

export type Folder = Map<string, Uint8Array>;

const encoder = new TextEncoder();
const decoder = new TextDecoder();

/** A folder as somebody might send it who typed wrongly, had another program, or meant harm: some changes of a sound one. */
export function mangled(sound: ReadonlyMap<string, Uint8Array>, drawn: Drawn): Folder {
  const folder = new Map(sound);
  for (let left = 1 + drawn.whole(3); left > 0; left -= 1) change(folder, drawn);
  return folder;
}

function change(folder: Folder, drawn: Drawn): void {
  const name = drawn.one([...folder.keys()]);
  const bytes = folder.get(name);
  if (bytes === undefined) return;
  const dice = drawn.whole(100);
  if (dice < 55) folder.set(name, encoder.encode(written(rowsChanged(rowsOf(decoder.decode(bytes)), drawn))));
  else if (dice < 65) renamedEverywhere(folder, drawn);
  else if (dice < 78) folder.set(name, bytesChanged(bytes, drawn));
  else if (dice < 88) folder.set(name, otherwiseEncoded(decoder.decode(bytes), drawn));
  else filesChanged(folder, name, bytes, drawn);
}

/** The cells of a plain file, by a reader of its own (RFC 4180), so that what is mangled was not read by what is tried. */
export function rowsOf(text: string): string[][] {
  const rows: string[][] = [[]];
  let cell = "";
  let quoted = false;
  for (let at = 0; at < text.length; at += 1) {
    const sign = text[at] as string;
    if (quoted) {
      if (sign !== '"') cell += sign;
      else if (text[at + 1] === '"') {
        cell += sign;
        at += 1;
      } else quoted = false;
    } else if (sign === '"') quoted = true;
    else if (sign === "," || sign === "\n") {
      rows.at(-1)?.push(cell);
      cell = "";
      if (sign === "\n") rows.push([]);
    } else if (sign !== "\r") cell += sign;
  }
  rows.at(-1)?.push(cell);
  return rows.filter((row) => row.length > 1 || row[0] !== "");
}

export function written(rows: readonly (readonly string[])[], delimiter = ",", end = "\r\n"): string {
  const cell = (text: string) => (/[",;\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  return rows.map((row) => row.map(cell).join(delimiter) + end).join("");
}

function rowsChanged(rows: string[][], drawn: Drawn): string[][] {
  const [header = []] = rows;
  const at = 1 + drawn.whole(Math.max(1, rows.length - 1));
  const row = rows[at] ?? header;
  const column = drawn.whole(Math.max(1, row.length));
  const other = rows[1 + drawn.whole(Math.max(1, rows.length - 1))] ?? header;
  const dice = drawn.whole(100);
  if (dice < 38) row[column] = oddWord(drawn);
  else if (dice < 52) row[column] = soundWord(drawn);
  else if (dice < 62) row[column] = other[drawn.chance(0.7) ? column : drawn.whole(Math.max(1, other.length))] ?? "";
  else if (dice < 67) row[column] = "";
  else if (dice < 72) rows.splice(at, 1);
  else if (dice < 77) rows.splice(at, 0, [...other]);
  else if (dice < 80) rows.push(row.map((cell, place) => (place === 0 ? `${cell} again` : cell)));
  else if (dice < 84) for (const each of rows) each.splice(column, 1);
  else if (dice < 88) header[column] = drawn.chance(0.5) ? oddWord(drawn) : `${header[column] ?? ""}s`;
  else if (dice < 91) header[column] = other[0] === undefined ? "" : (header[drawn.whole(header.length)] ?? "");
  else if (dice < 94)
    for (const [place, each] of rows.entries()) each.push(place === 0 ? "of our own" : soundWord(drawn));
  else if (dice < 96) row.push(oddWord(drawn));
  else if (dice < 98) row[column] = "y".repeat(1 + drawn.whole(200_000));
  else for (let more = drawn.whole(300); more > 0; more -= 1) rows.push([...row]);
  return rows;
}

/** A name that stands in several files becomes another one in all of them: what comes of it may be right, and then has to come in. */
function renamedEverywhere(folder: Folder, drawn: Drawn): void {
  const names = [...folder].flatMap(([, bytes]) =>
    rowsOf(decoder.decode(bytes))
      .slice(1)
      .map((row) => row[0] ?? ""),
  );
  const old = drawn.one(names.length > 0 ? names : [""]);
  const now = drawn.chance(0.6) ? oddWord(drawn) : `${soundWord(drawn)} ${drawn.whole(9)}`;
  if (old === "") return;
  for (const [file, bytes] of folder) {
    const rows = rowsOf(decoder.decode(bytes)).map((row) => row.map((cell) => (cell === old ? now : cell)));
    folder.set(file, encoder.encode(written(rows)));
  }
}

function bytesChanged(bytes: Uint8Array, drawn: Drawn): Uint8Array {
  const at = drawn.whole(bytes.length + 1);
  const dice = drawn.whole(5);
  if (dice === 0) return bytes.slice(0, at);
  if (dice === 1) return drawn.bytes(400);
  if (dice === 2)
    return joined(
      bytes.slice(0, at),
      encoder.encode(drawn.one(['"', "\0", "\r", "\ufeff", ",", "\u202e", '""', "\n\n"])),
      bytes.slice(at),
    );
  return joined(bytes.slice(0, at), drawn.bytes(6), bytes.slice(at + drawn.whole(6)));
}

function otherwiseEncoded(text: string, drawn: Drawn): Uint8Array {
  const dice = drawn.whole(9);
  if (dice === 0) return joined(Uint8Array.of(0xff, 0xfe), new Uint8Array(Buffer.from(text, "utf16le")));
  if (dice === 1) return joined(Uint8Array.of(0xfe, 0xff), new Uint8Array(Buffer.from(text, "utf16le").swap16()));
  if (dice === 2) return new Uint8Array(Buffer.from(text, "utf16le"));
  if (dice === 3) return new Uint8Array(Buffer.from(text.replace(/o/g, "\u00f6"), "latin1"));
  if (dice === 4) return joined(Uint8Array.of(0xef, 0xbb, 0xbf), encoder.encode(text));
  if (dice === 5) return encoder.encode(text.replaceAll("\r\n", drawn.one(["\n", "\r", "\n\r", "\u2028"])));
  return encoder.encode(written(rowsOf(text), drawn.one([";", "\t", ",", "|"]), drawn.one(["\n", "\r\n"])));
}

function filesChanged(folder: Folder, name: string, bytes: Uint8Array, drawn: Drawn): void {
  const dice = drawn.whole(7);
  if (dice === 0) folder.delete(name);
  else if (dice === 1) folder.set(name.toUpperCase(), bytes);
  else if (dice === 2)
    folder.set(
      drawn.one(["notes.txt", "lots (1).csv", "lot.csv", ".DS_Store", "odd.csv", "photos/a.jpg", "x/lots.csv"]),
      drawn.chance(0.5) ? bytes : drawn.bytes(200),
    );
  else if (dice === 3) folder.set(name, new Uint8Array());
  else if (dice === 4) {
    folder.delete(name);
    folder.set(
      drawn.one([
        ` ${name}`,
        `${name} `,
        `${name}.csv`,
        `../${name}`,
        name.replace(".csv", ".CSV"),
        "__proto__",
        "constructor",
      ]),
      bytes,
    );
  } else if (dice === 5) folder.set(name, joined(bytes, bytes));
  else folder.set(name, encoder.encode(`${decoder.decode(bytes)}${"\r\n".repeat(drawn.whole(200))}`));
}

function joined(...parts: readonly Uint8Array[]): Uint8Array {
  return Uint8Array.from(Buffer.concat(parts));
}
