// npm run faults [-- RUNS [SEED]]: kills the writing process 300 times (or so many) and prints what was found. Exit 1 where anything was lost or broken.
import { killRuns } from "./kill-runs";

const runs = Number(process.argv[2] ?? 300);
const seed = Number(process.argv[3] ?? 20_261_127);

if (!Number.isInteger(runs) || runs < 1 || !Number.isInteger(seed)) {
  console.error("usage: npm run faults [-- RUNS [SEED]]");
  process.exitCode = 2;
} else {
  const begun = performance.now();
  const figures = await killRuns(runs, seed, (line) => console.error(line));
  for (const fault of figures.faults) console.error(fault);
  console.log(
    JSON.stringify({
      ...figures,
      faults: figures.faults.length,
      seed,
      seconds: Math.round((performance.now() - begun) / 1000),
    }),
  );
  process.exitCode = figures.lost + figures.faults.length > 0 ? 1 : 0;
}
