import type { Locator, Page } from "playwright-core";
import { sameTapWithin } from "@/lib/field/tap-filter";

/** What is tapped at one plant: each line is one tap. */
export type TapScript = readonly string[];

/**
 * Forty plants by four traits, as it is written: the intent, a step of the scale, yes or no, a category, a count, and on to the next plant. Six taps a
 * plant, one of them "the same as last" where that is so.
 */
export function tapsOfPlant(number: number): TapScript {
  return [
    number % 4 === 0 ? "Watch" : "Keep",
    String((number % 9) + 1),
    number % 2 === 0 ? "Yes" : "No",
    number > 1 && number % 3 === 0 ? "Same as last" : (["low", "middle", "high"][number % 3] ?? "low"),
    String(number % 5),
    "Next plant",
  ];
}

/** A thumb that counts its taps, and is no faster than a thumb: what lands twice within a quarter of a second is held to be water. */
export class Thumb {
  taps = 0;
  #last = 0;

  constructor(readonly page: Page) {}

  async tap(what: Locator): Promise<void> {
    await what.waitFor();
    const since = performance.now() - this.#last;
    if (since < sameTapWithin + 20) await this.page.waitForTimeout(sameTapWithin + 20 - since);
    await what.click();
    this.#last = performance.now();
    this.taps += 1;
  }

  /** What is asked now at a plant. */
  asked(name: string): Locator {
    const asked = this.page.getByRole("region", { name: "What is asked now" });
    const begins = name === "Same as last" || name === "Next plant";
    return asked.getByRole("button", begins ? { name: new RegExp(`^${name}`) } : { name, exact: true });
  }

  async run(script: TapScript): Promise<void> {
    for (const each of script) await this.tap(this.asked(each));
  }

  button(name: string | RegExp, exact = true): Locator {
    return this.page.getByRole("button", typeof name === "string" ? { name, exact } : { name });
  }
}
