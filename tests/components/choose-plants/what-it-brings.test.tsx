import { renderToStaticMarkup } from "react-dom/server";
import { expect, it } from "vitest";
import { type Setting, startSetting } from "@/components/choose-plants/setting";
import { WhatItBrings } from "@/components/choose-plants/what-it-brings";
import { choiceBy, scoredBy } from "@/components/choose-plants/worked";
import { answered } from "../../science/agreement";
import { aGround, aPlant, aTrait } from "./a-ground";

// What stayed is told, not worked out, here: tests/registry/traits/heritability-found.test.ts.
const found = { low: 0.4512, high: 0.8289, from: "4 cycles beside Quern Dent" };
const ground = aGround({
  plants: [182, 175, 168, 171].map((value, at) => aPlant(`${at}`, { scores: { height: [{ by: null, value }] } })),
  traits: [aTrait("height", { heritability: found })],
});

/** The words of the page, one blank between them. */
function told(heritability: Setting["heritability"]): string {
  const setting = { ...startSetting, keep: 1, heritability };
  const choice = answered(choiceBy(ground, setting, scoredBy(ground, setting.scoresOf)));
  const html = renderToStaticMarkup(
    <WhatItBrings ground={ground} setting={setting} choice={choice} change={() => undefined} />,
  );
  return html.replace(/<[^>]*>/g, " ").replace(/\s+/g, " ");
}

it("what stayed of earlier choices is told and offered, and counts only once it is planned with", () => {
  const offered = told({});
  expect(offered).toContain("not said 0.45 to 0.83 stayed over 4 cycles beside Quern Dent Plan with that , for height");
  expect(offered).toContain("What stayed of earlier choices counts once you plan with it");
  const planned = told({ height: [0.45, 0.83] });
  expect(planned).toContain("as it stayed over 4 cycles beside Quern Dent");
  expect(planned).not.toContain("Plan with that");
  const other = told({ height: [0.1, 0.4] });
  expect(other).toContain("as said here 0.45 to 0.83 stayed over 4 cycles beside Quern Dent");
});
