import { renderToStaticMarkup } from "react-dom/server";
import { expect, it } from "vitest";
import { Explained, ExplanationBody, Measured } from "@/components/numbers";
import type { Explanation } from "@/lib/display/explanation";

const explanation: Explanation = {
  title: "Germination of T27",
  answer: "64 %",
  formula: "normal seedlings / seeds sown",
  inputs: [
    { name: "Seeds sown", value: "50", href: "/tests/t27" },
    { name: "Normal seedlings", value: "32" },
  ],
  assumed: ["Dead seeds were not told apart from hard ones."],
  unsure: "Four times the seeds halve the span.",
  sources: ["Clopper and Pearson 1934"],
  calc: "npm run --silent calc -- germination-test",
};

it("an explanation shows its formula, inputs with links, assumptions, doubt, source and command", () => {
  const drawn = renderToStaticMarkup(<ExplanationBody explanation={explanation} />);
  for (const part of [
    explanation.answer,
    explanation.formula,
    "Seeds sown",
    "32",
    ...explanation.assumed,
    "Clopper and Pearson 1934",
  ]) {
    expect(drawn).toContain(part);
  }
  expect(drawn).toContain('href="/tests/t27"');
  expect(drawn).toContain(explanation.unsure);
  expect(drawn).toContain(explanation.calc);
});

it("where nothing was assumed it says so", () => {
  const drawn = renderToStaticMarkup(<ExplanationBody explanation={{ ...explanation, assumed: [] }} />);
  expect(drawn).toContain("Nothing was assumed.");
});

it("a figure opens with the keyboard: it is the browser's own disclosure", () => {
  const drawn = renderToStaticMarkup(<Explained explanation={explanation}>64 %</Explained>);
  expect(drawn).toMatch(/^<details[^>]*><summary/);
});

it("a measured value says when it is assumed or unknown", () => {
  expect(renderToStaticMarkup(<Measured value="23" grade="assumed" />)).toContain("(assumed)");
  expect(renderToStaticMarkup(<Measured value={null} />)).toContain("unknown");
  expect(renderToStaticMarkup(<Measured value={null} span="40–80 %" grade="unknown" />)).not.toContain(
    "unknown</span>",
  );
});
