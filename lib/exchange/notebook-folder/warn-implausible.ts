import type { Balance } from "@/lib/registry/ledger/balance";
import { sameName } from "@/lib/registry/names/fold-name";
import { separateSexes } from "@/lib/science/crops/mating";
import type { FuzzyDate } from "@/lib/science/dates/fuzzy-date";
import { PLANTS_SEED_FACTOR } from "@/lib/science/harvest/plants-seed-factor";
import { unusualSeedWeight } from "@/lib/science/seed-weight/unusual-seed-weight";
import { type Check, grouped, profileOf } from "./check";
import type { BookedLine } from "./check-ledger";
import { type Entry, tainted } from "./entries";

/** A weigh-in above the balance by more than this part is worth a look. */
const WEIGH_IN_EXCESS = 0.05;

/** What looks implausible is a warning, never a fault. */
export function warnImplausible(check: Check, balances: ReadonlyMap<string, Balance<BookedLine>>): void {
  for (const lot of check.entries.lots.bearers()) {
    warnSeedWeight(check, lot);
    warnHarvestDate(check, lot);
  }
  for (const growOut of check.entries.growOuts.bearers()) {
    warnCounts(check, growOut);
    for (const { lot } of growOut.cells.parents ?? []) {
      warnSown(check, growOut, growOut.cells.sown, lot, "sown");
    }
  }
  for (const line of check.lines.ledger) {
    if (line.cells.kind === "sown") warnSown(check, line, line.cells.date, line.cells.lot, "date");
  }
  warnWeighIns(check, balances);
  warnSeedOfPlants(check);
}

function warn(
  check: Check,
  { draft }: Pick<Entry<"lots" | "growOuts" | "ledger">, "draft">,
  column: string,
  code: string,
  sentence: string,
) {
  if (draft) check.findings.warn({ ...draft.origin, column }, code, sentence);
}

function warnSeedWeight(check: Check, lot: Entry<"lots">): void {
  const weight = lot.cells.thousand_seed_grams;
  const profile = profileOf(check, lot.cells.variety);
  const unusual = weight === null || profile === null ? null : unusualSeedWeight(weight, profile);
  if (unusual === null || profile === null) return;
  const usual = `${shortNumber(unusual.lightest)} to ${shortNumber(unusual.heaviest)} g`;
  const sentence = `${weight} g for a thousand seeds is far from the ${usual} that are usual for ${profile.commonName}`;
  warn(check, lot, "thousand_seed_grams", "seed-weight-unusual", sentence);
}

function warnHarvestDate(check: Check, lot: Entry<"lots">): void {
  const from = lot.cells.from;
  const growOut = from !== null && "growOut" in from ? check.entries.growOuts.get(from.growOut) : undefined;
  const [year, sown] = [lot.cells.year, growOut?.cells.sown];
  if (!year || !sown || year.last >= sown.first) return;
  warn(
    check,
    lot,
    "year",
    "harvested-before-sown",
    `was harvested in ${year.text}, before ${growOut?.cells.grow_out} was sown (${sown.text})`,
  );
}

function warnSown(
  check: Check,
  where: Entry<"growOuts"> | Entry<"ledger">,
  sown: FuzzyDate | null,
  name: string | null,
  column: string,
): void {
  const lot = check.entries.lots.get(name);
  const year = lot?.cells.year;
  if (!sown || !year || sown.last >= year.first) return;
  const sentence = `${lot?.cells.lot} was sown in ${sown.text}, before it was harvested (${year.text})`;
  warn(check, where, column, "sown-before-harvested", sentence);
}

function warnCounts(check: Check, growOut: Entry<"growOuts">): void {
  const { variety, males_standing: males, seeds_sown: sown, outcome } = growOut.cells;
  const standing = growOut.cells.plants_standing ?? growOut.cells.seed_parents;
  const profile = profileOf(check, variety);
  if (males !== null && profile !== null && !separateSexes(profile)) {
    const sentence = `${males} is kept and not used: ${profile.commonName} is not known to have separate sexes`;
    warn(check, growOut, "males_standing", "males-not-used", sentence);
  }
  if (sown !== null && standing !== null && standing > sown) {
    const column = growOut.cells.plants_standing === null ? "seed_parents" : "plants_standing";
    warn(check, growOut, column, "more-plants-than-seeds", `${standing} plants stood of ${sown} seeds sown`);
  }
  if (outcome === null || growOut.draft === null) return;
  const key = sameName(growOut.cells.grow_out ?? "");
  if (harvestsOf(check).has(key)) {
    const sentence = `says why no seed came ("${outcome}"), and a lot was harvested from it`;
    warn(check, growOut, "outcome", "outcome-with-lot", sentence);
  }
}

const harvests = new WeakMap<Check, Map<string, Entry<"lots">[]>>();

/** The lots of each grow-out, grouped once a check. */
function harvestsOf(check: Check): Map<string, Entry<"lots">[]> {
  const known = harvests.get(check);
  if (known) return known;
  const groups = grouped(check.entries.lots.bearers(), ({ cells: { from } }) =>
    from !== null && "growOut" in from ? from.growOut : null,
  );
  harvests.set(check, groups);
  return groups;
}

function warnWeighIns(check: Check, balances: ReadonlyMap<string, Balance<BookedLine>>): void {
  for (const { steps } of balances.values()) {
    for (const [place, { entry, balance }] of steps.entries()) {
      const before = steps[place - 1]?.balance;
      if (entry.kind !== "weighed" || before === undefined) continue;
      if (balance <= Math.max(0, before) * (1 + WEIGH_IN_EXCESS) + 1e-6) continue;
      const sentence = `${balance} g were weighed where ${shortNumber(before)} g should have been left`;
      warn(check, entry.line, "grams", "weighed-above-balance", sentence);
    }
  }
}

function warnSeedOfPlants(check: Check): void {
  const plants = grouped(check.lines.plants, (plant) => plant.cells.grow_out);
  const harvested = new Map<string, number>();
  for (const [lot, lines] of grouped(check.lines.ledger, (line) => (tainted(line, "lot") ? null : line.cells.lot))) {
    const grams = lines.filter((line) => line.cells.kind === "harvested").map((line) => line.cells.grams ?? 0);
    harvested.set(
      lot,
      grams.reduce((sum, each) => sum + each, 0),
    );
  }
  for (const growOut of check.entries.growOuts.bearers()) {
    const key = sameName(growOut.cells.grow_out ?? "");
    const lots = harvestsOf(check).get(key) ?? [];
    const whole = lots.reduce((sum, { cells }) => sum + (harvested.get(sameName(cells.lot ?? "")) ?? 0), 0);
    const single = (plants.get(key) ?? []).reduce((sum, { cells }) => sum + (cells.seed_grams ?? 0), 0);
    if (whole === 0 || single <= whole * PLANTS_SEED_FACTOR) continue;
    const sentence = `its plants gave ${shortNumber(single)} g of seed, and ${shortNumber(whole)} g were harvested`;
    warn(check, growOut, "seed_shares", "plants-seed-above-harvest", sentence);
  }
}

function shortNumber(value: number): number {
  return Number(value.toPrecision(4));
}
