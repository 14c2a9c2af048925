import { renderToStaticMarkup } from "react-dom/server";
import { expect, it } from "vitest";
import { Jar } from "@/components/jar";
import { amountInWords, jarInWords } from "@/components/jar/jar-words";

const plain = (text: string) => text.replaceAll("\u00a0", " ");
const contents = {
  grams: 168.8,
  seeds: { value: 1240, low: 1150, high: 1330, grade: "assumed" as const },
  alive: { value: 980, low: 860, high: 1090, grade: "counted" as const },
  reserved: 480,
  free: { value: 500, low: 380, high: 610, grade: "counted" as const },
};

it("an amount is worded by how it is known", () => {
  expect(plain(amountInWords(contents.seeds))).toBe("1,150–1,330 seeds");
  expect(plain(amountInWords({ value: 1236.4, grade: "assumed" }))).toBe("about 1,240 seeds");
  expect(plain(amountInWords({ value: 1236, grade: "counted" }))).toBe("1,236 seeds");
  expect(amountInWords({ value: 0, grade: "counted" })).toBe("none");
  expect(amountInWords(null)).toBe("unknown");
});

it("the whole jar is said in words, with what was assumed and what is unknown", () => {
  expect(jarInWords(contents, "about 2029")).toBe(
    "On hand 168.8 g, 1,150–1,330 seeds (assumed); alive 860–1,090 seeds; kept back about 480 seeds; free 380–610 seeds; good until about 2029.",
  );
  const none = { value: 0, grade: "counted" as const };
  expect(jarInWords({ grams: 0, seeds: none, alive: none, reserved: null, free: none })).toBe(
    "On hand 0 g, none; alive none; kept back unknown; free none.",
  );
  expect(jarInWords({ grams: null, seeds: null, alive: null, reserved: null, free: null }, null)).toBe(
    "On hand unknown; alive unknown; kept back unknown; free unknown; how long it keeps is unknown.",
  );
});

it("the drawing hatches what is alive by assumption and leaves open what was not tested", () => {
  const hatched = renderToStaticMarkup(
    <Jar {...contents} alive={{ ...contents.alive, grade: "assumed" }} until={null} />,
  );
  expect(hatched).toContain("<pattern");
  const open = renderToStaticMarkup(<Jar {...contents} alive={null} free={null} until={null} />);
  expect(open).not.toContain("<pattern");
  expect(open).toContain("alive <tspan");
  expect(open).toContain(">unknown</tspan>");
});
