import { describe, expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { figuresOfVariety } from "@/lib/registry/figures/read-figures";
import { bookNotebookLines } from "@/lib/registry/notebook-typing/book-notebook-lines";
import {
  cropsToType,
  holdersToType,
  numbersBeginning,
  varietiesToType,
  varietyToGoOn,
} from "@/lib/registry/notebook-typing/typing-ground";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { twoYears } from "./bookings";

describe("what typing begins with", () => {
  it("is the crop list with who mates how: spinach has separate sexes, maize none", async () => {
    const crops = await cropsToType(await emptyRegistry());
    expect(crops.length).toBeGreaterThan(50);
    expect(crops.find((crop) => crop.name === "Spinach")?.mates.sexes).toBe("separate");
  });

  it("is a variety with its lots and what they came from, for lines that go on from them", async () => {
    const db = await emptyRegistry();
    const { value } = granted(await bookNotebookLines(db, ownerHere(), twoYears()));
    const found = await varietyToGoOn(db, value.varietyId);
    const [jar, first, second] = found?.lots ?? [];
    expect([jar?.years, first?.parents, second?.parents]).toEqual([
      null,
      [{ id: jar?.id, share: 1 }],
      [{ id: first?.id, share: 1 }],
    ]);
    expect(second?.years).toEqual({ first: 1996, last: 1996 });
    expect((await varietiesToType(db)).map((variety) => variety.name)).toEqual(["Hollow Pea"]);
    expect(await varietyToGoOn(db, "none")).toBeNull();
  });

  it("is which lot numbers of a word are given already, in any letter case", async () => {
    const db = await emptyRegistry();
    granted(await bookNotebookLines(db, ownerHere(), twoYears()));
    expect((await numbersBeginning(db, "HOLLOW")).sort()).toEqual(["Hollow 1", "Hollow 2", "Hollow 3"]);
    expect(await numbersBeginning(db, "Mere")).toEqual([]);
  });
});

describe("the page of a variety's further lines", () => {
  it("takes a dozen statements at most, with the settings that every page reads", async () => {
    let statements = 0;
    const db = await emptyRegistry({ onStatement: () => (statements += 1) });
    const { value } = granted(await bookNotebookLines(db, ownerHere(), twoYears()));
    await figuresOfVariety(db, value.varietyId);
    statements = 0;
    await varietyToGoOn(db, value.varietyId);
    await holdersToType(db);
    expect(statements).toBeLessThanOrEqual(11);
  });
});
