import { runCalc } from "./calc-run";

// npm run --silent calc -- NAME < input.jsonl: one JSON object a line in, one a line out; calc alone lists the names.
process.exitCode = await runCalc(process.argv.slice(2), {
  input: process.stdin,
  output: process.stdout,
  errors: process.stderr,
});
