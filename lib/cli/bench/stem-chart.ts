import { layStems, orderTree } from "@/components/stem-chart/layout/lay-stems";
import { nearestLot } from "@/components/stem-chart/nearest";
import type { StemLot, StemTree } from "@/components/stem-chart/stem";
import { type BenchRow, medianMilliseconds } from "./rows";

const lots = 600;
const hands = 8;

/** 600 lots of one variety over sixty years in eight hands: harvests, gifts, blends, years that failed. The same every time. */
export function manyStems(): StemTree {
  const kinds = ["harvest", "harvest", "split", "harvest", "blend", "harvest", "split", "failed"] as const;
  const tree: StemLot[] = [];
  const bearing: string[] = [];
  for (let i = 0; i < lots; i += 1) {
    const kind = i < 3 ? "founder" : (kinds[(i * 7) % kinds.length] ?? "harvest");
    const from = bearing.length === 0 ? [] : [bearing[Math.max(0, bearing.length - 1 - ((i * 13) % 24))] ?? ""];
    const second = bearing[Math.max(0, bearing.length - 2 - ((i * 5) % 40))];
    if (kind === "blend" && second && second !== from[0]) from.push(second);
    const year = 1965 + Math.floor((i / lots) * 60);
    const size = 4 + ((i * 37) % 220);
    tree.push({
      id: `lot ${i}`,
      number: `Bench ${i}`,
      kind,
      at: { first: year, last: year + 1 },
      band: `hand ${(i * 3) % hands}`,
      parents: kind === "founder" ? [] : from.map((id) => ({ id, share: 1 / from.length })),
      size: kind === "harvest" ? { low: size, high: size } : null,
      kept: { low: 1 - i / 900, high: 1 - i / 900 },
      foreign: i % 41 === 0 ? { rate: 0.02, how: null } : null,
      living: i > lots - 60,
      variety: null,
    });
    if (kind !== "failed") bearing.push(`lot ${i}`);
  }
  const bands = Array.from({ length: hands }, (_, hand) => ({
    key: `hand ${hand}`,
    name: `Hand ${hand}`,
    place: null,
  }));
  return { lots: tree, claims: [], bands };
}

/**
 * Laying a stem chart out, from its lots to its last label, on a desk and on a phone; and the script of one frame while it is moved: the
 * picture moves by the browser alone, and what is pointed at is looked up.
 */
export async function benchStemChart(): Promise<BenchRow[]> {
  const tree = manyStems();
  const asked = { selected: null, compared: null, traced: null };
  const timed = (width: number, zoom: number) =>
    medianMilliseconds(9, () => layStems(orderTree(tree), { ...asked, width, zoom }));
  const desk = await timed(1180, 1);
  const phone = await timed(340, 5);
  const picture = layStems(orderTree(tree), { ...asked, width: 1180, zoom: 5 });
  let turn = 0;
  const frame = await medianMilliseconds(99, () => {
    turn += 1;
    return nearestLot(picture, (turn * 97) % picture.width, (turn * 61) % picture.height, 22);
  });
  return [
    row(`a stem chart of ${lots} lots laid out, on a desk`, desk, 200),
    row(`the same on a phone, drawn near`, phone, 200),
    row("script of a frame while it is moved", frame, 8),
  ];
}

function row(what: string, took: number, bound: number): BenchRow {
  return { what, measured: `${took.toFixed(took < 10 ? 2 : 0)} ms`, bound: `under ${bound} ms`, within: took < bound };
}
