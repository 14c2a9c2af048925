import { type Balance, balanceOf, bringsIn, tolerableDebtGrams } from "@/lib/registry/ledger/balance";
import { refusal } from "@/lib/science/outcome";
import { type Check, faultAt, grouped } from "./check";
import { type Entry, tainted } from "./entries";
import { isNew } from "./join-lines";

type Line = Entry<"ledger">;

/** Room for the rounding of sums of decimals. */
const ROUNDING_GRAMS = 1e-6;

/** A line as the balance books it. */
export interface BookedLine {
  readonly id: string;
  readonly kind: string;
  readonly amount: number;
  readonly unit: "g";
  readonly onFirst: string;
  readonly onLast: string;
  readonly replacesId: null;
  readonly takenBack: false;
  readonly line: Line;
}

/** Grams are above 0 (`weighed`: 0 too), and no lot gives more than it has. Gives the balances that can be relied on. */
export function checkLedger(check: Check): ReadonlyMap<string, Balance<BookedLine>> {
  for (const line of check.lines.ledger) checkGrams(check, line);
  const strays = check.lines.ledger.filter((line) => tainted(line, "lot"));
  const balances = new Map<string, Balance<BookedLine>>();
  for (const [lot, lines] of grouped(check.lines.ledger, (line) => (tainted(line, "lot") ? null : line.cells.lot))) {
    const booked = mostFavourable(lines);
    if (booked === null) continue;
    const balance = balanceOf(booked, null);
    if (lines.some(isNew)) checkDebt(check, balance, strays);
    if (booked.length === lines.length && !lines.some((line) => tainted(line, ...readColumns)))
      balances.set(lot, balance);
  }
  return balances;
}

const readColumns = ["date", "kind", "grams"];

function checkGrams(check: Check, { cells, draft }: Line): void {
  if (!draft || cells.grams !== 0 || cells.kind === null || cells.kind === "weighed") return;
  draft.faulty.add("grams");
  const needed = "write grams above 0; only a weighing may find nothing";
  check.findings.fault({ ...draft.origin, column: "grams" }, refusal("grams-zero", [], 0, "is too small", needed));
}

/**
 * The lines of a lot as they would do it most good: what a line with a fault takes is left out, what it may bring counts at once.
 * Null where it may bring any amount. So a debt is reported only where it does not follow from another fault.
 */
function mostFavourable(lines: readonly Line[]): BookedLine[] | null {
  const booked: BookedLine[] = [];
  for (const [place, line] of lines.entries()) {
    const id = String(place).padStart(9, "0");
    const { date, kind, grams } = line.cells;
    const common = { id, unit: "g", replacesId: null, takenBack: false, line } as const;
    if (date !== null && kind !== null && grams !== null && !tainted(line, ...readColumns)) {
      booked.push({ ...common, kind, amount: grams, onFirst: date.first, onLast: date.last });
      continue;
    }
    if (kind !== null && kind !== "weighed" && !bringsIn(kind)) continue;
    if (kind === "weighed" || grams === null || tainted(line, "grams")) return null;
    booked.push({ ...common, kind: "received", amount: grams, onFirst: "0000-01-01", onLast: "0000-01-01" });
  }
  return booked;
}

/** The first step that falls below nothing by more than weighing can err, once a lot. */
function checkDebt(check: Check, { steps }: Balance<BookedLine>, strays: Line[]): void {
  const first = steps.findIndex(({ balance }) => balance < -tolerableDebtGrams - ROUNDING_GRAMS);
  const step = steps[first];
  if (step === undefined) return;
  const worst = steps.reduce((least, { balance }) => Math.min(least, balance), 0);
  if (explainedBy(strays, -worst)) return;
  const { line } = step.entry;
  const newBefore = steps.slice(0, first + 1).reverse();
  const newAfter = steps.slice(first + 1);
  const others = [...newBefore, ...newAfter].map(({ entry }) => entry.line).filter(isNew);
  const { lot, kind } = line.cells;
  const wrong = `g ${kind ?? ""} on ${step.day} leave ${lot} at ${tidy(step.balance)} g`;
  const needed = "look for seed that came in and is not written down, or for a slip in the grams";
  const debt = refusal("balance-below-zero", [], step.entry.amount, wrong, needed);
  faultAt(check, isNew(line) ? [line] : others, "grams", debt);
}

/** Seed that came in for a lot that nobody knows may be what is missing here; each such line explains one lot. */
function explainedBy(strays: Line[], missing: number): boolean {
  const place = strays.findIndex(({ cells: { kind, grams } }) => {
    const brings = kind === null || kind === "weighed" || bringsIn(kind);
    return brings && (grams === null || grams + tolerableDebtGrams >= missing);
  });
  if (place === -1) return false;
  strays.splice(place, 1);
  return true;
}

/** Without the rounding of sums of decimals. */
function tidy(grams: number): number {
  return Number(grams.toFixed(6));
}
