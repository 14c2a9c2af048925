import { countFault, faultsAmong, shareFault } from "@/lib/science/limits";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { kernelOverRectangle } from "./kernel-over-rectangle";
import { kernelFaults, type PollenKernel } from "./pollen-kernel";
import { type Rectangle, rectangleFaults, shareGround } from "./rectangle";
import { repeatedIds, type ShareOfSources, shareOfSources } from "./share-of-sources";

export interface PlaneSource extends Rectangle {
  readonly id: string;
  /** part of its pollen that meets our stigmas in time, 0..1 */
  readonly overlap: number;
  /** part of it that makes seed on our plants, 0..1 */
  readonly compatibility: number;
  /** 0 where it was detasselled or cut, 0.5 where half of it sheds none; default 1 */
  readonly shedding?: number;
}

export interface PlaneShareInput {
  readonly kernel: PollenKernel;
  readonly plot: Rectangle;
  /** plantings of the same variety that shed with it */
  readonly ownBorders?: readonly Rectangle[];
  readonly sources: readonly PlaneSource[];
  /** places along each side at which the plot is looked at; default 3 */
  readonly points?: number;
}

/**
 * The share of foreign pollen in a plot, by a kernel over the plane: at the middle of each of points × points equal parts,
 * Σ source/(own + Σ source), averaged. own = ∫ g over the plot and its borders; source = overlap·compatibility·shedding·∫ g.
 *
 * Refused: a source or a border that shares ground with the plot, a border with another; sides that are not above 0; factors outside 0..1.
 * Limits: flat ground, no hedge, no hive; over-states large far fields about twofold near 100 m. Source: after Klein et al. 2003.
 */
export function planeShare(input: PlaneShareInput): Outcome<ShareOfSources> {
  const { kernel, plot, ownBorders = [], sources, points = 3 } = input;
  const faults = planeFaults(input);
  if (faults.length > 0) return refused(...faults);
  const own = [plot, ...ownBorders];
  const parts = sources.map(() => 0);
  for (const place of places(plot, points)) {
    const home = own.reduce((sum, rectangle) => sum + kernelOverRectangle(kernel, place, rectangle), 0);
    const foreign = sources.map((source) => {
      const weight = source.overlap * source.compatibility * (source.shedding ?? 1);
      return weight === 0 ? 0 : weight * kernelOverRectangle(kernel, place, source);
    });
    const whole = foreign.reduce((sum, each) => sum + each, home);
    for (const [index, each] of foreign.entries()) parts[index] = (parts[index] as number) + each / whole / points ** 2;
  }
  return accepted(shareOfSources(sources.map(({ id }, index) => ({ id, share: parts[index] as number }))));
}

function places(plot: Rectangle, points: number): { x: number; y: number }[] {
  const along = Array.from({ length: points }, (_, index) => (index + 0.5) / points);
  return along.flatMap((across) =>
    along.map((up) => ({ x: plot.x + across * plot.width, y: plot.y + up * plot.height })),
  );
}

function planeFaults({ kernel, plot, ownBorders = [], sources, points }: PlaneShareInput): Refusal[] {
  const faults = [
    ...kernelFaults(kernel, ["kernel"]),
    ...rectangleFaults(plot, ["plot"]),
    ...ownBorders.flatMap((border, index) => rectangleFaults(border, ["ownBorders", index])),
    ...sources.flatMap((source, index) => [
      ...rectangleFaults(source, ["sources", index]),
      ...faultsAmong(
        shareFault(["sources", index], "overlap", source.overlap),
        shareFault(["sources", index], "compatibility", source.compatibility),
        shareFault(["sources", index], "shedding", source.shedding),
      ),
    ]),
    ...repeatedIds(sources),
    ...faultsAmong(countFault([], "points", points, 1)),
  ];
  if (points !== undefined && points > mostPoints) {
    faults.push(refusal("too-many-points", ["points"], points, "is more than is worth while", `at most ${mostPoints}`));
  }
  return faults.length > 0 ? faults : groundFaults(plot, ownBorders, sources);
}

const mostPoints = 30;

function groundFaults(plot: Rectangle, borders: readonly Rectangle[], sources: readonly PlaneSource[]): Refusal[] {
  const needed = "two plantings cannot stand on one piece of ground: part them";
  const stands = "shares ground with the plot";
  return [
    ...borders.flatMap((border, index) => {
      if (shareGround(border, plot)) return [refusal("shared-ground", ["ownBorders", index], border, stands, needed)];
      const twice = borders.slice(0, index).some((other) => shareGround(border, other));
      if (!twice) return [];
      return [refusal("shared-ground", ["ownBorders", index], border, "shares ground with another border", needed)];
    }),
    ...sources.flatMap((source, index) =>
      shareGround(source, plot) ? [refusal("shared-ground", ["sources", index], source, stands, needed)] : [],
    ),
  ];
}
