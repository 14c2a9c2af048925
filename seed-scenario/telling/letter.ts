import { letterYears, silent } from "../circle/letters";
import { everybody } from "../circle/people";
import { dayBetween } from "./calendar";
import type { Telling } from "./telling";

/** The circle's letter of a January: who still has it? Whoever had it once and has none now says no, once. */
export function sendLetter(tell: Telling, year: number): void {
  if (!letterYears.includes(year)) return;
  for (const { name, years } of everybody) {
    if (silent(name, tell.variety.word, year) || year > years[1]) continue;
    const [jar] = tell.jarsOf(name);
    const on = dayBetween(year, ["01-04", "01-30"], tell.draws(`letter ${name} ${year}`));
    const line = { variety: tell.variety.name, steward: name, on };
    if (jar) {
      const grams = Math.round(jar.grams * 10) / 10 || null;
      tell.book.write("confirmations.csv", { ...line, lot: jar.lot, still: "yes", grams });
      tell.heard.add(name);
    } else if (tell.heard.delete(name)) {
      tell.book.write("confirmations.csv", { ...line, still: "no", note: "none left" });
    }
  }
}
