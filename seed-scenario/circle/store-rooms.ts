import type { Book } from "../telling/book";
import type { Jar } from "../telling/jar";
import { everybody, type Person } from "./people";

/** A second place, in another building, where half of some lots stands. */
const appleLoft = {
  name: "apple loft",
  keeper: "Mirabeth Undercroft",
  building: "Cross House orchard",
  words: ["Rust", "Coal"],
} as const;

/** Writes where seed is kept, and a container for each lot that has seed in it. */
export function writeStoreRooms(book: Book, jars: readonly Jar[]): void {
  for (const { name, store } of everybody) {
    const { temperature, humidity } = store;
    const line = { name: store.name, steward: name, kind: store.kind, building: store.building, note: store.note };
    book.write("places.csv", { ...line, temperature_c: temperature, relative_humidity_percent: humidity });
  }
  book.write("places.csv", {
    name: appleLoft.name,
    steward: appleLoft.keeper,
    kind: "cupboard",
    building: appleLoft.building,
    note: "so that not everything is under one roof",
  });
  const codes = new Map<string, number>();
  for (const jar of jars) if (jar.grams > 0) writeContainers(book, jar, codes);
}

function writeContainers(book: Book, jar: Jar, codes: Map<string, number>): void {
  const { holder } = jar;
  const halved = holder.name === appleLoft.keeper && appleLoft.words.some((word) => jar.lot.startsWith(word));
  const part = halved ? Math.round(jar.grams * 50) / 100 : jar.grams;
  const parts: [place: string, grams: number][] = [[holder.store.name, part]];
  if (halved) parts.push([appleLoft.name, Math.round((jar.grams - part) * 100) / 100]);
  for (const [place, amount] of parts) {
    book.write("containers.csv", {
      code: nextCode(holder, codes),
      lot: jar.lot,
      place: `${place} (${holder.name})`,
      kind: holder.store.jar,
      amount,
      unit: "g",
      sealed_on: jar.from,
      last_opened: jar.lastDay > jar.from ? jar.lastDay : null,
      desiccant: holder.store.desiccant,
    });
  }
}

function nextCode({ initials }: Person, codes: Map<string, number>): string {
  const number = (codes.get(initials) ?? 0) + 1;
  codes.set(initials, number);
  return `${initials} ${String(number).padStart(3, "0")}`;
}
