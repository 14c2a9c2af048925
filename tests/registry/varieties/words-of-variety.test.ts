import { describe, expect, it } from "vitest";
import { readings } from "@/lib/registry/search/read-indexed";
import { addOtherName } from "@/lib/registry/varieties/add-other-name";
import { addStrain } from "@/lib/registry/varieties/add-strain";
import { addTypeTrait } from "@/lib/registry/varieties/add-type-trait";
import { chooseSeedCoat } from "@/lib/registry/varieties/choose-seed-coat";
import { correctTypeTrait } from "@/lib/registry/varieties/correct-type-trait";
import { readVariety } from "@/lib/registry/varieties/read-variety";
import { tellPossiblySame } from "@/lib/registry/varieties/tell-possibly-same";
import { tellStory } from "@/lib/registry/varieties/tell-story";
import { defaultSettings } from "@/lib/schemas/settings";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { owner, withSteward, withVariety } from "./with-variety";

describe("another name", () => {
  it("is added once, also where another variety has it", async () => {
    const db = await emptyRegistry();
    const [one, other] = [await withVariety(db), await withVariety(db, "Mere Pea")];
    granted(await addOtherName(db, owner, one, { name: "Grey Sugar", kind: "old", source: "told by Aldis" }));
    granted(await addOtherName(db, owner, other, { name: "Grey Sugar" }));
    const again = await addOtherName(db, owner, one, { name: "grey  sugar" });
    expect(again.ok ? "" : again.refusals[0]?.code).toBe("name-there");
    expect(await db.read.varietyName.count()).toBe(2);
  });

  it("is refused where it is the variety's own name", async () => {
    const db = await emptyRegistry();
    const outcome = await addOtherName(db, owner, await withVariety(db), { name: "HOLLOW PEA" });
    expect(outcome.ok ? "" : outcome.refusals[0]?.code).toBe("name-there");
  });
});

describe("possibly the same", () => {
  const says = { source: "Aldis, who grew both" };

  it("is told once of a pair, and stands on both pages", async () => {
    const db = await emptyRegistry();
    const [one, other] = [await withVariety(db), await withVariety(db, "Mere Pea")];
    granted(await tellPossiblySame(db, owner, one, { other, ...says }));
    const again = await tellPossiblySame(db, owner, other, { other: one, ...says });
    expect(again.ok ? "" : again.refusals[0]?.code).toBe("told-already");
    const read = async (id: string) => (await readVariety(db, id, defaultSettings, "2026-11-27"))?.possiblySame;
    expect(await read(one)).toEqual([{ varietyId: other, name: "Mere Pea", says: says.source }]);
    expect(await read(other)).toEqual([{ varietyId: one, name: "Hollow Pea", says: says.source }]);
    const found = await readings.VarietyName?.(db, null);
    expect(found?.[0]?.texts[0]).toMatchObject({ words: "Mere Pea", as: "possibly the same as" });
  });

  it("is refused of the variety itself, of one that is not here, and without a word of who says so", async () => {
    const db = await emptyRegistry();
    const one = await withVariety(db);
    const code = async (input: Record<string, string>) => {
      const outcome = await tellPossiblySame(db, owner, one, input);
      return outcome.ok ? "" : `${outcome.refusals[0]?.code} ${outcome.refusals[0]?.path.join(".")}`;
    };
    expect(await code({ other: one, ...says })).toBe("same-variety other");
    expect(await code({ other: "nobody", ...says })).toBe("unknown-variety other");
    expect(await code({ other: one })).toMatch(/source$/);
  });
});

describe("a strain", () => {
  it("keeps its keeper and its years as written", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db);
    const stewardId = await withSteward(db);
    const typed = { name: "Aldis's keeping", steward: "aldis thornwick", keptFrom: "198X", relation: "selected from" };
    granted(await addStrain(db, owner, id, typed));
    expect(await db.read.strain.findFirstOrThrow()).toMatchObject({ stewardId, keptFrom: "198X", keptTo: null });
  });

  it("is refused with a steward who is not here, with the nearest name", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db);
    await withSteward(db);
    const outcome = await addStrain(db, owner, id, { name: "x", steward: "Aldis Thornwik" });
    expect(outcome.ok ? "" : outcome.refusals[0]?.sentence).toContain('did you mean "Aldis Thornwick"?');
  });

  it("is refused where it ends before it began, or under a name that the variety has already", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db);
    const crossed = await addStrain(db, owner, id, { name: "a", keptFrom: "1990", keptTo: "1980" });
    expect(crossed.ok ? "" : crossed.refusals[0]?.code).toBe("dates-crossed");
    granted(await addStrain(db, owner, id, { name: "a", keptFrom: "1990", keptTo: "1990" }));
    const twice = await addStrain(db, owner, id, { name: "A" });
    expect(twice.ok ? "" : twice.refusals[0]?.code).toBe("name-taken");
  });
});

describe("a line of the type description", () => {
  it("stands once a trait and is corrected with a reason", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db);
    granted(await addTypeTrait(db, owner, id, { trait: "Seed colour", allowed: "grey to buff", part: "seed" }));
    const again = await addTypeTrait(db, owner, id, { trait: "seed  colour", allowed: "white" });
    expect(again.ok ? "" : again.refusals[0]?.code).toBe("trait-there");
    const line = await db.read.typeTrait.findFirstOrThrow();
    const typed = { trait: "Seed colour", allowed: "grey", offType: "white", part: "seed" };
    const silent = await correctTypeTrait(db, owner, line.id, typed);
    expect(silent.ok ? "" : silent.refusals[0]?.code).toBe("reason-missing");
    granted(await correctTypeTrait(db, owner, line.id, { ...typed, reason: "buff came from a cross" }));
    expect(await db.read.typeTrait.findFirstOrThrow()).toMatchObject({ allowed: "grey", offType: "white" });
  });

  it("is refused where it says nothing of the trait", async () => {
    const db = await emptyRegistry();
    const outcome = await addTypeTrait(db, owner, await withVariety(db), { trait: "Seed colour", allowed: "" });
    expect(outcome.ok ? null : outcome.refusals[0]?.path).toEqual(["allowed"]);
  });
});

describe("a story", () => {
  it("stands in the teller's words, with the years it is about as a span", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db);
    const words = "It came over the pass in a hat.\nNobody knows whose.";
    granted(await tellStory(db, owner, id, { words, teller: "Odalind", about: "193X" }));
    expect(await db.read.story.findFirstOrThrow()).toMatchObject({
      words,
      about: "193X",
      aboutFirst: "1930-01-01",
      aboutLast: "1939-12-31",
    });
  });

  it("is refused with a date that is none", async () => {
    const db = await emptyRegistry();
    const outcome = await tellStory(db, owner, await withVariety(db), { words: "x", toldOn: "May-96" });
    expect(outcome.ok ? null : outcome.refusals[0]?.path).toEqual(["toldOn"]);
  });
});

describe("a seed-coat mark", () => {
  it("is chosen, and drawn from the name again when it is given up", async () => {
    const db = await emptyRegistry();
    const id = await withVariety(db);
    granted(await chooseSeedCoat(db, owner, id, { pattern: "eye", ground: "cream", second: "wine" }));
    const chosen = await db.read.variety.findUniqueOrThrow({ where: { id } });
    expect(JSON.parse(chosen.seedCoat ?? "")).toEqual({ pattern: "eye", ground: "cream", second: "wine" });
    granted(await chooseSeedCoat(db, owner, id, null));
    expect((await db.read.variety.findUniqueOrThrow({ where: { id } })).seedCoat).toBeNull();
  });

  it("is refused in a colour that is none", async () => {
    const db = await emptyRegistry();
    const outcome = await chooseSeedCoat(db, owner, await withVariety(db), {
      pattern: "eye",
      ground: "mauve",
      second: "wine",
    });
    expect(outcome.ok ? null : outcome.refusals[0]?.path).toEqual(["ground"]);
  });
});
