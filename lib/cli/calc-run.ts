import { Readable, type Writable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { calculationNamed, calculations } from "@/lib/schemas/calculations";
import type { Calculation } from "@/lib/schemas/calculations/calculation";
import { calcHelp, calcNames } from "./calc-help";
import { linesOf } from "./calc-lines";

export interface CalcStreams {
  readonly input: Readable;
  readonly output: Writable;
  readonly errors: Writable;
}

/** What the command answers to a shell. */
const ALL_ANSWERED = 0;
const SOME_REFUSED = 1;
const WRONG_COMMAND = 2;

/** Runs the command with these words after `calc`; gives the exit code. */
export async function runCalc(words: readonly string[], streams: CalcStreams): Promise<number> {
  const options = words.filter((word) => word.startsWith("-"));
  const names = words.filter((word) => !word.startsWith("-"));
  const strange = options.find((option) => option !== "--help" && option !== "-h") ?? names[1];
  if (strange !== undefined) {
    streams.errors.write(`"${strange}" is not known here; write calc -- NAME < input.jsonl, or calc -- NAME --help\n`);
    return WRONG_COMMAND;
  }
  const [name] = names;
  if (name === undefined) {
    streams.output.write(calcNames(calculations));
    return ALL_ANSWERED;
  }
  const calculation = calculationNamed(name);
  if (!calculation) {
    streams.errors.write(`"${name}" is no calculation; choose one of these:\n${calcNames(calculations)}`);
    return WRONG_COMMAND;
  }
  if (options.length > 0) {
    streams.output.write(calcHelp(calculation));
    return ALL_ANSWERED;
  }
  return answerLines(calculation, streams);
}

async function answerLines(calculation: Calculation, { input, output }: CalcStreams): Promise<number> {
  let code = ALL_ANSWERED;
  async function* answers() {
    for await (const line of linesOf(input)) {
      const answer = answerLine(calculation, line);
      if ("error" in answer) code = SOME_REFUSED;
      yield `${JSON.stringify(answer)}\n`;
    }
  }
  try {
    await pipeline(Readable.from(answers()), output, { end: false });
  } catch (fault) {
    // whoever read the answers has heard enough (`| head`)
    if ((fault as NodeJS.ErrnoException).code !== "EPIPE") throw fault;
  }
  return code;
}

/** The answer to one line: a result, or `{error: {message, path}}` of the first fault. */
export function answerLine(calculation: Calculation, line: string): object {
  try {
    const outcome = calculation.run(JSON.parse(line));
    if (outcome.ok) return outcome.value;
    const [first] = outcome.refusals;
    return { error: { message: first?.sentence ?? "refused", path: first?.path ?? [] } };
  } catch (fault) {
    const wrong = line.trim() === "" ? "the line is empty" : `the line cannot be read: ${(fault as Error).message}`;
    return { error: { message: `${wrong}; write one JSON object in { } on each line`, path: [] } };
  }
}
