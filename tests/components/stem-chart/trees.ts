import type { StemKind, StemLot, StemTree } from "@/components/stem-chart/stem";

/** A lot for a tree in a test: by number, year and parents; a share each, even unless said. */
export function lot(id: string, year: number | null, parents: readonly string[], more: Partial<StemLot> = {}): StemLot {
  const kind: StemKind = parents.length === 0 ? "founder" : "harvest";
  return {
    id,
    number: id,
    kind,
    at: year === null ? null : { first: year, last: year + 1 },
    band: "Ada",
    parents: parents.map((parent) => ({ id: parent, share: 1 / parents.length })),
    size: parents.length === 0 ? null : { low: 40, high: 40 },
    kept: { low: 0.9, high: 0.9 },
    foreign: null,
    living: null,
    variety: null,
    ...more,
  };
}

export function tree(lots: readonly StemLot[], more: Partial<StemTree> = {}): StemTree {
  const keys = [...new Set(lots.map(({ band }) => band))];
  return { lots, claims: [], bands: keys.map((key) => ({ key, name: key, place: null })), ...more };
}

/** Even chances from a number, the same every time (Park & Miller 1988, minimal standard: 16807 x mod 2^31 − 1). */
export function chances(seed: number): () => number {
  // Small seeds begin with small numbers: spread first.
  let state = (((seed * 48271 + 11) * 7919) % 2147483646) + 1;
  return () => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
}

/** A tree of some lots over forty years in up to six hands, with everything that a tree can have. */
export function randomTree(seed: number, most = 60): StemTree {
  const chance = chances(seed);
  const whole = (below: number) => Math.floor(chance() * below);
  const count = 3 + whole(most - 3);
  const hands = 1 + whole(6);
  const lots: StemLot[] = [];
  for (let place = 0; place < count; place += 1) {
    const earlier = lots.filter(({ kind }) => kind !== "failed");
    const from = place < 2 || chance() < 0.04 ? [] : [earlier[Math.max(0, earlier.length - 1 - whole(7))]];
    if (from.length > 0 && chance() < 0.2) from.push(earlier[whole(earlier.length)]);
    const parents = [...new Set(from.flatMap((each) => each?.id ?? []))];
    const kinds: StemKind[] = ["harvest", "harvest", "split", "failed"];
    const kind = parents.length === 0 ? "founder" : parents.length > 1 ? "blend" : (kinds[whole(4)] ?? "harvest");
    const before = Math.max(1985, ...from.map((each) => Math.floor(each?.at?.first ?? 1985)));
    const year = before + whole(4);
    const size = 3 + whole(200);
    lots.push(
      lot(`Lot ${place}`, chance() < 0.05 ? null : year, parents, {
        kind: parents.length > 1 && chance() < 0.5 ? "harvest" : kind,
        band: `Hand ${whole(hands)}`,
        at: chance() < 0.05 ? { first: year - 4, last: year + 5 } : { first: year, last: year + 1 },
        size: chance() < 0.2 ? null : { low: size, high: chance() < 0.2 ? size * 2 : size },
        kept: chance() < 0.2 ? null : { low: 0.5 + chance() / 2, high: 1 },
        foreign: chance() < 0.1 ? { rate: chance() < 0.5 ? null : chance() / 10, how: null } : null,
        living: chance() < 0.3,
      }),
    );
  }
  return tree(lots);
}
