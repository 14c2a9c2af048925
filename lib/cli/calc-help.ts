import type { Calculation, CalculationKey } from "@/lib/schemas/calculations/calculation";

/** One line a calculation: its name and what it is called. */
export function calcNames(all: readonly Calculation[]): string {
  const width = Math.max(...all.map(({ name }) => name.length));
  return all.map(({ name, title }) => `${name.padEnd(width)}  ${title}\n`).join("");
}

/** What goes in, what comes out, by which formula, from where. */
export function calcHelp(calculation: Calculation): string {
  const { name, title, answers, whenToDoubt, formula, symbols, source, input, output, example } = calculation;
  const parts = [
    `${name}: ${title}`,
    "",
    answers,
    `When to doubt it: ${whenToDoubt}`,
    "",
    "Formula",
    ...formula.map((line) => `  ${line}`),
    ...symbols.map(({ symbol, meaning }) => `    ${symbol}: ${meaning}`),
    "",
    "Input, one JSON object a line",
    ...keyLines(input),
    `  for example ${JSON.stringify(example)}`,
    "",
    "Output, one JSON object a line; a refused input gives {error: {message, path}}",
    ...keyLines(output),
    "",
    "Source",
    ...source.map((line) => `  ${line}`),
  ];
  return `${parts.join("\n")}\n`;
}

function keyLines(keys: readonly CalculationKey[]): string[] {
  return keys.map(({ key, shape, meaning, usual }) => {
    const usually = usual === undefined ? "" : `; where left out: ${usual}`;
    return `  ${key}: ${shape}. ${meaning}${usually}`;
  });
}
