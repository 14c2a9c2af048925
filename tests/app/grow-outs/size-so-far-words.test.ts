import { describe, expect, it } from "vitest";
import { sizeSoFarExplanation } from "@/app/grow-outs/_words/size-so-far-explanation";
import { sizeWords } from "@/app/grow-outs/_words/size-so-far-words";
import { standingInWords } from "@/app/grow-outs/[id]/_counts/counts-table";
import { type SizeGround, sizeSoFar } from "@/lib/registry/grow-outs/size-so-far";
import { calculationNamed } from "@/lib/schemas/calculations";

function ground(record: Partial<SizeGround["record"]> = {}, more: Partial<SizeGround> = {}): SizeGround {
  const unknown = {
    ...{
      seedsSown: null,
      plantsStanding: null,
      malesStanding: null,
      roguedBeforePollen: null,
      roguedAfterPollen: null,
    },
    ...{ seedParents: null, seedShares: null, selfingRate: null, foreignPollen: null },
  };
  return {
    record: { id: "g", name: "Sallow 2026", varietyId: "v", ...unknown, ...record },
    profile: { matingSystem: "outcrossing", selfIncompatible: "no", outcrossingPctMin: 95, outcrossingPctMax: 100 },
    ...{ counts: [], passes: [], clonal: false, inbreeding: 0, seedParentsMeant: null, over: false, clusters: false },
    ...{ seedTaken: false, floor: 40 },
    ...more,
  };
}

const words = (of: SizeGround) => sizeWords(sizeSoFar(of), of);

// Sizes by hand: 4·Nf·Nm/(Nm + 3·Nf).
describe("what a grow-out counts as, in words", () => {
  it("says before any seed is taken from how many it would be what", () => {
    const said = words(ground({ plantsStanding: 62 }, { seedParentsMeant: 40 }));
    expect(said.figure).toBe("up to 62");
    expect(said.sentence).toBe(
      "is what it would count as by now, if seed is kept alike from all 62 that stand; from the 40 meant for seed, 55; from a single plant, 3.8. No seed is taken yet.",
    );
    expect(said).toMatchObject({ floor: "The crop’s floor is 40.", narrow: false, narrows: null });
  });

  it("asks for the count that is missing before seed is taken", () => {
    const said = words(ground({ seedsSown: 80 }));
    expect(said.sentence).toContain("all 80 that may stand");
    expect(said.narrows).toBe(
      "Count the plants that stand, or that flower: by what is on record so far they may be any number up to 80.",
    );
  });

  it("gives a span once seed is taken, says what is missing and what counting it would make of the span", () => {
    const said = words(ground({ seedsSown: 60, seedParents: 10, seedShares: "equal" }, { seedTaken: true }));
    expect(said.figure).toBe("10–27");
    expect(said.sentence).toContain("the plants that stood were not counted");
    expect(said.narrows).toBe(
      "Count the plants that flower, or find their number in the notes: 10–27 would become 10 with 10, 27 with 60.",
    );
    expect(said).toMatchObject({ narrow: true, floor: "The crop’s floor is 40: it is a bottleneck." });
  });

  it("asks for the shares where they narrow it most", () => {
    const said = words(ground({ plantsStanding: 60, seedParents: 40 }, { seedTaken: true }));
    expect(said.narrows).toBe("Write whether the seed was taken alike from each: 3.8–53 would become 53 if it was.");
    expect(said.floor).toBe("The crop’s floor is 40, which lies within.");
  });

  it("says where no seed came, where nothing is counted, and what cannot be", () => {
    expect(words(ground({}, { over: true })).figure).toBe("no seed");
    expect(words(ground()).sentence).toContain("Nothing is counted yet that bounds it");
    const impossible = words(ground({ plantsStanding: 9, seedParents: 10, seedShares: "equal" }, { seedTaken: true }));
    expect(impossible).toMatchObject({ figure: "unknown" });
    expect(impossible.sentence).toContain("10 seed parents are more than the 9 that shed pollen");
  });
});

describe("how it comes about", () => {
  it("is a command line that gives the same span", () => {
    const of = ground({ seedsSown: 60, seedParents: 10, seedShares: "equal" }, { seedTaken: true });
    const explanation = sizeSoFarExplanation(sizeSoFar(of), of);
    const input = JSON.parse(/^echo '(.*)' \|/.exec(explanation?.calc ?? "")?.[1] ?? "null");
    const answer = calculationNamed("effective-size-span")?.run(input);
    expect(answer).toMatchObject({ ok: true, value: { narrows: [{ missing: "pollenParents" }] } });
    if (answer?.ok) expect((answer.value as { low: number }).low).toBeCloseTo(10, 9);
    expect(explanation?.answer).toBe("10–27");
    expect(explanation?.inputs).toContainEqual({ name: "pollen parents", value: "between 10 and 60" });
  });

  it("names the inbreeding that was assumed where all else is known", () => {
    const of = ground(
      { plantsStanding: 50, seedParents: 40, seedShares: "equal" },
      { seedTaken: true, inbreeding: null },
    );
    const explanation = sizeSoFarExplanation(sizeSoFar(of), of);
    expect(explanation?.assumed.some((sentence) => sentence.includes("that of the lots sown is not known"))).toBe(true);
    expect(explanation?.answer).toBe("47");
  });
});

describe("the plants standing that the figures take", () => {
  const rest = { note: null, stewardId: null, replacesId: null };
  const day = (on: string) => ({ on, onFirst: on, onLast: on });
  const counts = [
    { id: "1", stage: "flowering" as const, plants: 40, males: null, thinnedBy: null, ...day("2026-07-20"), ...rest },
  ];
  const pass = { id: "2", stage: null, timing: "before", looked: null, pulled: 3, reason: null, left: null };
  const passes = [{ ...pass, ...day("2026-07-01"), ...rest }];

  it("are explained where they are more than the last count", () => {
    expect(standingInWords({ plantsStanding: 43 }, { counts, passes })).toBe(
      "For the figures 43 stood before the first pass: the 40 in flower, and 3 pulled before they were counted.",
    );
    expect(standingInWords({ plantsStanding: 40 }, { counts, passes: [] })).toBeNull();
  });

  it("are said to differ where a hand wrote another number", () => {
    expect(standingInWords({ plantsStanding: 50 }, { counts, passes })).toContain(
      "by the counts and passes it would be 43",
    );
  });
});
