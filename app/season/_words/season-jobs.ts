import type { SeasonPlace } from "@/lib/registry/season/records";

/** A job of the year with its months (1 to 12, as the north has them). It may run over the turn of the year. */
export interface SeasonJob {
  readonly place: SeasonPlace;
  readonly words: string;
  readonly from: number;
  readonly to: number;
}

/** The year of a temperate valley with crops sown in spring. A guide to the time of the year, not a verdict. */
export const northernJobs: readonly SeasonJob[] = [
  { place: "desk", words: "plan what is grown out", from: 1, to: 2 },
  { place: "desk", words: "ask the neighbours", from: 3, to: 4 },
  { place: "desk", words: "map the plots", from: 5, to: 6 },
  { place: "desk", words: "type the paper tags in", from: 9, to: 10 },
  { place: "desk", words: "swaps, returns, stories", from: 11, to: 12 },
  { place: "shed", words: "open the jars, weigh", from: 1, to: 2 },
  { place: "shed", words: "germination tests", from: 3, to: 4 },
  { place: "shed", words: "dry the first seed", from: 7, to: 8 },
  { place: "shed", words: "extract, thresh, dry", from: 9, to: 10 },
  { place: "shed", words: "clean, label, put away", from: 11, to: 12 },
  { place: "field", words: "look over stored roots", from: 1, to: 2 },
  { place: "field", words: "replant roots, sow early", from: 3, to: 4 },
  { place: "field", words: "sow, thin, first rogues", from: 5, to: 6 },
  { place: "field", words: "rogue before flower", from: 7, to: 8 },
  { place: "field", words: "flag, then harvest", from: 9, to: 10 },
];

/** The jobs as a hemisphere has them: half a year later in the south. */
export function jobsOf(hemisphere: "north" | "south"): readonly SeasonJob[] {
  if (hemisphere === "north") return northernJobs;
  return northernJobs.map((job) => ({ ...job, from: turned(job.from + 6), to: turned(job.to + 6) }));
}

/** A job as it lies in a strip of twelve months that begins with `first`: its first and last place in it, 0 to 11. */
export function placedInStrip(job: SeasonJob, first: number): { start: number; end: number }[] {
  const places = Array.from({ length: 12 }, (_, index) => turned(first + index));
  const within = (month: number) =>
    job.from <= job.to ? month >= job.from && month <= job.to : month >= job.from || month <= job.to;
  const runs: { start: number; end: number }[] = [];
  places.forEach((month, index) => {
    if (!within(month)) return;
    const last = runs.at(-1);
    if (last && last.end === index - 1) runs[runs.length - 1] = { start: last.start, end: index };
    else runs.push({ start: index, end: index });
  });
  return runs;
}

/** What the hand does in a month. */
export function jobsNow(jobs: readonly SeasonJob[], month: number): readonly SeasonJob[] {
  return jobs.filter((job) => placedInStrip(job, month)[0]?.start === 0);
}

function turned(month: number): number {
  return ((month - 1) % 12) + 1;
}
