import type { PersonName } from "../circle/people";
import { Draws } from "../telling/draws";
import type { Jar } from "../telling/jar";
import type { Telling } from "../telling/telling";

/** In March 2024 Thirza Orrick passed her jars to Tamsel Vike: of each variety the newest whole, the older ones emptied. */
export function thirzaHandsOver(tell: Telling): void {
  const jars = tell.jarsOf("Thirza Orrick", true);
  if (jars.length === 0) return;
  const on = `2024-03-${new Draws(`hand over ${tell.variety.word}`).whole(15, 18)}`;
  jars.forEach((jar, newer) => {
    const notes = "the whole jar, when the landing cupboard was cleared";
    if (newer > 0 && !jar.kept) tell.discard(jar, on, "cleared when the house was given up");
    else tell.give(jar, { to: "Tamsel Vike", on, grams: jar.grams, purpose: "to keep it on", notes }).kept = jar.kept;
  });
  const line = { variety: tell.variety.name, steward: "Thirza Orrick", on: "2024-03-20", still: "no" };
  tell.book.write("confirmations.csv", { ...line, note: "all with Tamsel Vike now" });
}

/** In February 2009, after Nab Hurdlestone's death, his shed was cleared. What was still labelled went to somebody who would grow it. */
export function nabsShed(tell: Telling, jar: Jar, to: PersonName, notes: string): Jar {
  const saved = tell.give(jar, {
    to,
    on: "2009-02-21",
    grams: jar.grams,
    purpose: "saved from the shed at Cleavehead",
    notes,
  });
  for (const old of tell.jarsOf("Nab Hurdlestone"))
    tell.discard(old, "2009-02-22", "mouse-eaten, thrown out with the tin");
  tell.book.write("confirmations.csv", {
    variety: tell.variety.name,
    steward: "Nab Hurdlestone",
    on: "2009-02-22",
    still: "no",
    note: "died in December 2008; the shed is cleared",
  });
  return saved;
}
