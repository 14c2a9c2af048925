import type { CivilDay } from "@/lib/science/dates/civil-day";
import { type CropHabit, habitOf } from "../circle/crop-habits";
import { type Person, type PersonName, person } from "../circle/people";
import { yearTold } from "../circle/weather";
import type { Book } from "./book";
import { dayBetween, daysOf, yearOf, yearsFrom } from "./calendar";
import { type TestTold, testJar } from "./germination";
import { countPlants, freshSeed, type GrowOut, type Sowing, seedsFor } from "./grow-out";
import { Jar, weighed, weightOf } from "./jar";
import type { VarietyTold } from "./variety-history";
import { Words } from "./words";
import { tellHarvest, tellShed } from "./working-year";
import { writeGrowOut } from "./write-grow-out";
import { writeVariety } from "./write-variety";

/** A lot that comes without its parents on record. */
export interface Founding {
  readonly holder: PersonName;
  /** when it was harvested, as far as anybody knows */
  readonly year?: string;
  /** when it came in; `grams` empty: nobody weighed it */
  readonly on: string;
  readonly grams: number | null;
  readonly other?: string;
  readonly notes?: string;
  readonly inbreeding?: number;
  readonly lives?: number;
  readonly seedWeightUnknown?: boolean;
}

export interface Gift {
  readonly to: PersonName;
  readonly on: string;
  readonly grams?: number;
  readonly kind?: "gift" | "loan" | "return" | "exchange" | "safety duplicate" | "to a library";
  readonly purpose?: string;
  readonly told?: string;
  readonly replyDue?: string;
  readonly notes?: string;
}

/** Tells the history of one variety, year by year, and writes all that follows from it into the book. */
export class Telling extends Words {
  readonly habit: CropHabit;
  readonly jars: Jar[] = [];
  readonly standing: GrowOut[] = [];
  /** who said at the last letter that there is still seed */
  readonly heard = new Set<string>();
  readonly #growOuts = new Map<string, GrowOut | null>();
  year = 1996;
  #lots = 0;

  constructor(book: Book, variety: VarietyTold) {
    super(book, variety);
    this.habit = habitOf(variety.crop);
    writeVariety(book, variety);
  }

  /** A day as this person writes it. */
  written(who: Person, day: CivilDay): string {
    return who.dates === "month" && yearOf(day) < 2012 ? day.slice(0, 7) : day;
  }

  // ------------------------------------------------------------------------------------------ lots

  founder(told: Founding): Jar {
    const lot = this.#nextLot();
    const draws = this.draws(`founder ${lot}`);
    const holder = person(told.holder);
    const seedWeight = threeDigits(draws.near(this.habit.seedWeight, 0.1));
    const from = daysOf(told.year ?? told.on).last;
    const seed = { share: 1, fresh: told.lives ?? draws.near(this.habit.fresh, 0.04), years: 0 };
    const jar = new Jar({
      lot,
      holder,
      year: told.year ?? "",
      seedWeight,
      halfLife: this.habit.halfLife,
      seed: [seed],
      from,
    });
    this.#write(jar, "founder", null, told.notes, told.inbreeding, told.seedWeightUnknown);
    if (told.grams !== null) {
      const grams = jar.bring(told.on, told.grams);
      this.book.write("ledger.csv", { lot, date: told.on, kind: "received", grams, other: told.other });
    }
    return jar;
  }

  harvest(growOut: GrowOut, told: { year?: number; seedsOfEach?: number; grams?: number; notes?: string } = {}): Jar {
    const lot = this.#nextLot();
    const draws = this.draws(`harvest ${lot}`);
    const year = told.year ?? growOut.harvestYear;
    const weather = yearTold(year);
    const day = dayBetween(year, this.habit.harvested, draws);
    const seedWeight = threeDigits(draws.near(this.habit.seedWeight, 0.12) * (weather.harvest < 0.7 ? 0.94 : 1));
    const written =
      growOut.by.dates === "month" && year < 2012 ? String(year) : draws.chance(0.5) ? day : day.slice(0, 7);
    const seed = freshSeed(this.habit, weather.fresh, draws);
    const jar = new Jar({
      lot,
      holder: growOut.by,
      year: written,
      seedWeight,
      halfLife: this.habit.halfLife,
      seed: [seed],
      from: day,
    });
    this.#write(jar, "harvest", growOut.name, told.notes);
    const each = told.seedsOfEach ?? growOut.sowing.seedsOfEach ?? this.habit.seedsOfEach * weather.harvest;
    const seeds = growOut.counts.seedParents * each * draws.near(1, 0.2);
    const grams = jar.bring(
      this.written(growOut.by, day),
      told.grams ?? growOut.sowing.grams ?? weighed((seeds * seedWeight) / 1000),
    );
    this.book.write("ledger.csv", {
      lot,
      date: this.written(growOut.by, day),
      kind: "harvested",
      grams,
      other: growOut.name,
    });
    growOut.lots.push(jar);
    tellHarvest(this, growOut, jar, this.written(growOut.by, day), grams);
    tellShed(this, jar, day, this.habit, grams);
    return jar;
  }

  /** Part of a lot in another hand. */
  give(jar: Jar, gift: Gift): Jar {
    const to = person(gift.to);
    const day = daysOf(gift.on).last;
    const wanted = gift.grams ?? this.#usualGift(jar, to, day);
    const lot = this.#nextLot();
    const from = daysOf(gift.on).first;
    const part = new Jar({
      lot,
      holder: to,
      year: jar.year,
      seedWeight: jar.seedWeight,
      halfLife: this.habit.halfLife,
      seed: jar.seedOn(from),
      from,
    });
    this.#write(part, "split", jar.lot, gift.notes);
    const date = this.written(jar.holder, gift.on);
    const grams = jar.take(date, wanted >= jar.grams ? jar.grams : Math.min(jar.grams, weighed(wanted)));
    this.book.write("ledger.csv", { lot: jar.lot, date, kind: "given", grams, other: to.name, notes: `as ${lot}` });
    part.bring(date, grams);
    this.book.write("ledger.csv", { lot, date, kind: "received", grams, other: jar.lot });
    const kind =
      gift.kind ?? (to.kind === "library" ? "to a library" : to.kind === "genebank" ? "safety duplicate" : "gift");
    this.book.write("transfers.csv", {
      kind,
      lot: jar.lot,
      new_lot: lot,
      from_steward: jar.holder.name,
      to_steward: to.name,
      on: date,
      amount: grams,
      unit: "g",
      purpose: gift.purpose,
      told: gift.told,
      reply_due: gift.replyDue,
    });
    return part;
  }

  /** Seed that leaves the circle or goes over a counter, to whoever came. */
  handOut(jar: Jar, date: string, grams: number, other: string, notes?: string): void {
    const taken = jar.take(date, grams);
    this.book.write("ledger.csv", { lot: jar.lot, date, kind: "given", grams: taken, other, notes });
  }

  /** Sown where this notebook does not reach. */
  sownElsewhere(jar: Jar, date: string, other: string): void {
    this.book.write("ledger.csv", { lot: jar.lot, date, kind: "sown", grams: jar.take(date, jar.grams), other });
  }

  /** Mixes parts of lots into one; the shares are those of the living seeds. */
  blend(
    parts: readonly (readonly [jar: Jar, grams: number])[],
    who: PersonName,
    on: CivilDay,
    reason: string,
    notes?: string,
  ): Jar {
    const holder = person(who);
    const lot = this.#nextLot();
    const living = parts.map(([jar, grams]) => (grams / jar.seedWeight) * jar.living(on));
    const sum = living.reduce((total, each) => total + each, 0);
    const shares = living.slice(0, -1).map((each) => Math.round((each / sum) * 100) / 100);
    shares.push(Math.round((1 - shares.reduce((total, each) => total + each, 0)) * 100) / 100);
    const grams = parts.reduce((total, [, each]) => total + each, 0);
    const seeds = parts.reduce((total, [jar, each]) => total + each / jar.seedWeight, 0);
    const years = parts.map(([jar]) => jar.harvested.slice(0, 4)).sort();
    const [oldest, newest] = [years[0], years.at(-1)];
    const seed = parts.flatMap(([jar, each]) =>
      jar.seedOn(on).map((part) => ({ ...part, share: (part.share * each) / jar.seedWeight / seeds })),
    );
    const year = oldest === newest ? String(newest) : `[${oldest}..${newest}]`;
    const jar = new Jar({
      lot,
      holder,
      year,
      seedWeight: threeDigits(grams / seeds),
      halfLife: this.habit.halfLife,
      seed,
      from: on,
    });
    this.#write(jar, "blend", parts.map(([part], place) => `${part.lot}:${shares[place]}`).join(";"), notes);
    for (const [part, each] of parts) {
      const taken = part.take(on, each);
      this.book.write("ledger.csv", { lot: part.lot, date: on, kind: "blended-out", grams: taken, other: lot });
      jar.bring(on, taken);
      this.book.write("ledger.csv", { lot, date: on, kind: "blended-in", grams: taken, other: part.lot });
    }
    this.book.write("makings.csv", { lot, kind: "blend", on, reason, steward: who });
    return jar;
  }

  // ------------------------------------------------------------------------------------------ in the field

  sow(told: Sowing): GrowOut {
    const by = person(told.by);
    const plot = told.plot ?? this.draws(`plot ${told.by} ${this.year}`).pick(by.plots);
    const name = `${this.variety.word} ${this.year} ${plot}`;
    if (this.#growOuts.has(name)) throw new RangeError(`${name} is sown twice`);
    this.#growOuts.set(name, null);
    const draws = this.draws(`sow ${name}`);
    const sown = told.on ? `${this.year}-${told.on}` : dayBetween(this.year, this.habit.sown, draws);
    const parents = told.from.map((each) => (each instanceof Jar ? ([each, 1 / told.from.length] as const) : each));
    const living = parents.reduce((sum, [jar, share]) => sum + share * jar.living(sown), 0);
    const wanted = told.seeds ?? seedsFor(told.plants ?? told.standing ?? this.habit.plants, living, this.habit);
    const seeds =
      told.seeds ??
      Math.max(4, Math.min(wanted, ...parents.map(([jar, share]) => Math.floor((jar.seeds * 0.97) / share))));
    const written = told.writtenAs ?? this.written(by, sown);
    for (const [jar, share] of parents) {
      const grams = jar.take(written, Math.min(jar.grams, weightOf(Math.ceil(seeds * share), jar.seedWeight)));
      this.book.write("ledger.csv", { lot: jar.lot, date: written, kind: "sown", grams, other: name });
    }
    const counts = countPlants(told, seeds, living, this.habit, this.variety.crop === "spinach", draws);
    const shares =
      told.shares ?? (draws.chance(0.5) ? "equal" : `cv ${draws.near(this.habit.variation, 0.5).toFixed(1)}`);
    const growOut: GrowOut = {
      name,
      by,
      sowing: told,
      sown,
      harvestYear: this.year + this.habit.yearsToSeed,
      counts,
      shares,
      lots: [],
    };
    writeGrowOut(this, growOut, written, plot, parents);
    this.#growOuts.set(name, growOut);
    if (told.outcome === undefined) this.standing.push(growOut);
    return growOut;
  }

  growOut(name: string): GrowOut {
    const found = this.#growOuts.get(name);
    if (!found) throw new RangeError(`${name} was not sown`);
    return found;
  }

  // ------------------------------------------------------------------------------------------ in the shed

  test(jar: Jar, day: CivilDay, told: TestTold = {}): void {
    testJar(this.book, jar, day, this.written(jar.holder, day), this.habit, told, this.draws(`test ${jar.lot} ${day}`));
  }

  weigh(jar: Jar, date: string, grams: number, notes?: string): void {
    this.book.write("ledger.csv", { lot: jar.lot, date, kind: "weighed", grams: jar.setTo(date, grams), notes });
  }

  discard(jar: Jar, date: string, notes: string): void {
    if (jar.grams === 0) return;
    const grams = jar.take(date, jar.grams);
    this.book.write("ledger.csv", { lot: jar.lot, date, kind: "discarded", grams, notes });
  }

  // ------------------------------------------------------------------------------------------ who has what

  /** Jars with seed in them, the newest first; those that stand apart only if asked for. */
  jarsOf(who?: string, withApart = false): Jar[] {
    const held = this.jars.filter(
      (jar) => jar.grams > 0 && (withApart || !jar.apart) && (who === undefined || jar.holder.name === who),
    );
    return held.sort((a, b) =>
      a.harvested < b.harvested ? 1 : a.harvested > b.harvested ? -1 : a.lot < b.lot ? 1 : -1,
    );
  }

  newest(who: PersonName): Jar {
    const [jar] = this.jarsOf(who);
    if (!jar) throw new RangeError(`${who} has no ${this.variety.word} in ${this.year}`);
    return jar;
  }

  lot(number: number): Jar {
    const jar = this.jars[number - 1];
    if (!jar) throw new RangeError(`${this.variety.word} has no lot ${number} yet`);
    return jar;
  }

  /** A grow-out and some more; of small seed a bigger part, since nobody counts it. */
  #usualGift(jar: Jar, to: Person, day: CivilDay): number {
    const toGrow = this.gramsToGrow(jar, day);
    return to.kind === "grower"
      ? Math.min(jar.grams * 0.35, Math.max(toGrow * 1.4, jar.grams * 0.08))
      : Math.min(jar.grams * 0.3, Math.max(toGrow * 1.6, jar.grams * 0.18));
  }

  gramsToGrow(jar: Jar, day: CivilDay, plants?: number): number {
    return weightOf(seedsFor(plants ?? this.habit.plants, jar.living(day), this.habit), jar.seedWeight);
  }

  /** Years since a jar was last tested, or since its harvest. */
  yearsUntested(jar: Jar, day: CivilDay): number {
    return yearsFrom(jar.tested?.day ?? jar.harvested, day);
  }

  #nextLot(): string {
    this.#lots += 1;
    return `${this.variety.word} ${String(this.#lots).padStart(2, "0")}`;
  }

  #write(
    jar: Jar,
    kind: string,
    from: string | null,
    notes?: string,
    inbreeding?: number,
    weightUnknown = false,
  ): void {
    this.jars.push(jar);
    const unknown =
      weightUnknown || (kind !== "blend" && jar.from < "2005" && this.draws(`seed weight ${jar.lot}`).chance(0.3));
    this.book.write("lots.csv", {
      lot: jar.lot,
      variety: this.variety.name,
      holder: jar.holder.name,
      year: jar.year,
      kind,
      from,
      thousand_seed_grams: unknown ? null : jar.seedWeight,
      inbreeding,
      notes,
    });
  }
}

function threeDigits(value: number): number {
  return Number(value.toPrecision(3));
}
