import { afterAll, beforeEach, describe, expect, it, vi } from "vitest";
import { figuresBeside, mostSpansHere } from "@/lib/registry/figures/figures-beside";
import { figuresOfRecords } from "@/lib/registry/figures/figures-of-records";
import type { AllRecords, GrowOutRecord, LotRecord } from "@/lib/registry/figures/records";
import { pageCalculations } from "@/lib/worker/long-calculations";

const crosser = { matingSystem: "outcrossing", selfIncompatible: "no", outcrossingPctMin: 90, outcrossingPctMax: 100 };
const ask = vi.spyOn(pageCalculations(), "ask");
beforeEach(() => {
  ask.mockClear();
});
afterAll(() => pageCalculations().close());

/** A line in which every fiftieth grow-out was not counted, every third is of two lots, and one lot of nobody knows which share. */
function records(lotsWanted: number): AllRecords {
  const lots: LotRecord[] = [];
  const growOuts: GrowOutRecord[] = [];
  for (let i = 0; i < lotsWanted; i += 1) {
    const founder = i < 5;
    lots.push({
      ...{
        id: `L${i}`,
        number: `Beside ${i}`,
        varietyId: "v",
        holder: null,
        parents: [],
        inbreeding: founder ? 0 : null,
      },
      ...{ kind: founder ? "founder" : "harvest", growOutId: founder ? null : `G${i}`, thousandSeedGrams: null },
    });
    if (founder) continue;
    const two = i % 3 === 0;
    const shares = i === 12 ? [null, null] : [0.7, 0.3];
    const parents = two
      ? [3, 4].map((back, k) => ({ id: `L${i - back}`, share: shares[k] ?? null }))
      : [{ id: `L${i - 2}`, share: 1 }];
    growOuts.push({
      ...{ id: `G${i}`, name: `grown ${i}`, varietyId: "v", parents, plantsStanding: 90, malesStanding: null },
      ...{
        roguedBeforePollen: 2,
        seedParents: i % 50 === 7 ? null : 30,
        seedShares: "equal",
        selfingRate: 0,
        foreignPollen: 0,
      },
    });
  }
  return {
    varieties: [{ id: "v", name: "Beside", profile: crosser, clonal: false }],
    lots,
    growOuts,
    ledger: new Map(),
    tests: new Map(),
  };
}

/** Points and spans of each lot, and of one in the middle the words of what was assumed as well, which are put together when they are asked for. */
const plain = (outcome: Awaited<ReturnType<typeof figuresBeside>>) =>
  outcome.ok &&
  outcome.value.map(({ lot, coancestry, founders, span, ...rest }) => ({
    ...{ lot, coancestry, founders },
    span: span && { kept: span.diversityRetained, theta: span.coancestry, size: span.effectiveSize, since: span.since },
    assumed: lot === "Beside 40" ? [rest.assumed, span?.assumed] : null,
  }));

describe("figures beside the server", () => {
  it("of many lots with gaps come from the thread, and are what they are here", async () => {
    const many = records(mostSpansHere + 100);
    const beside = await figuresBeside(many);
    expect(ask).toHaveBeenCalledOnce();
    expect(ask.mock.calls[0]?.[0]).toBe("lineage-span");
    expect((await ask.mock.results[0]?.value.answer)?.ok).toBe(true);
    const here = figuresOfRecords(many);
    expect(here.ok && here.value.some(({ span }) => span !== null)).toBe(true);
    expect(plain(beside)).toEqual(plain(here));
  });

  it("of few lots, and where every line is known, ask no thread", async () => {
    const few = records(60);
    expect(plain(await figuresBeside(few))).toEqual(plain(figuresOfRecords(few)));
    const { growOuts, ...rest } = records(mostSpansHere + 100);
    const counted = growOuts.map((each) => ({
      ...each,
      seedParents: 30,
      parents: each.parents.slice(0, 1).map(({ id }) => ({ id, share: 1 })),
    }));
    await figuresBeside({
      ...rest,
      lots: rest.lots.map((lot, i) => ({ ...lot, founderLines: i < 5 ? "many" : null })),
      growOuts: counted,
    });
    expect(ask).not.toHaveBeenCalled();
  });

  it("are worked out here where the thread ends without an answer", async () => {
    const many = records(mostSpansHere + 100);
    const asked = figuresBeside(many);
    pageCalculations().close();
    expect(plain(await asked)).toEqual(plain(figuresOfRecords(many)));
  });

  it("are refused as they are here: a lot that is its own ancestor", async () => {
    const ring = records(40);
    const growOuts = ring.growOuts.map((each) =>
      each.id === "G8" ? { ...each, parents: [{ id: "L10", share: 1 }] } : each,
    );
    const [beside, here] = [await figuresBeside({ ...ring, growOuts }), figuresOfRecords({ ...ring, growOuts })];
    expect(beside).toEqual(here);
    expect(!beside.ok && beside.refusals[0]?.code).toBe("cycle");
  });
});
