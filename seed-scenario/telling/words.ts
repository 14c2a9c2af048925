import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { PersonName } from "../circle/people";
import type { Book, LotDetail } from "./book";
import { Draws } from "./draws";
import type { Jar } from "./jar";
import type { VarietyTold } from "./variety-history";

/** What is said and seen of a variety beside its seed: stories, observations, warnings, words about single lots. */
export class Words {
  constructor(
    readonly book: Book,
    readonly variety: VarietyTold,
  ) {}

  /** Chance for one thing of this variety. */
  draws(what: string): Draws {
    return new Draws(`${this.variety.word}: ${what}`);
  }

  story(
    words: string,
    teller: string,
    more: { lot?: string; growOut?: string; writtenBy?: PersonName; told?: string; about?: string } = {},
  ): void {
    this.book.write("stories.csv", {
      variety: this.variety.name,
      lot: more.lot,
      grow_out: more.growOut,
      words,
      teller,
      steward: more.writtenBy,
      told_on: more.told,
      about: more.about,
      consent: "may be shared in the circle",
    });
  }

  saw(
    on: string,
    words: string,
    more: { lot?: string; growOut?: string; value?: number; unit?: string; sure?: string; by?: PersonName } = {},
  ): void {
    this.book.write("observations.csv", {
      variety: more.lot || more.growOut ? null : this.variety.name,
      lot: more.lot,
      grow_out: more.growOut,
      on,
      words,
      value: more.value,
      unit: more.unit,
      how_sure: more.sure,
      steward: more.by,
    });
  }

  warn(
    lot: string | null,
    kind: string,
    reason: string,
    on: CivilDay,
    by: PersonName,
    closed?: readonly [on: CivilDay, how: string],
  ): void {
    const line = { variety: lot ? null : this.variety.name, lot, kind, reason, on, steward: by };
    this.book.write("warnings.csv", { ...line, closed_on: closed?.[0], closed_how: closed?.[1] });
  }

  /** What is said of a lot beside its row. */
  detail(jar: Jar, detail: Omit<LotDetail, "lot">): void {
    this.book.write("lot_details.csv", { lot: jar.lot, ...detail });
  }
}
