import { renderToStaticMarkup } from "react-dom/server";
import { expect, it } from "vitest";
import { MixedJar } from "@/components/jar";

const plain = (text: string) => text.replaceAll("\u00a0", " ");

it("each lot is a layer as high as its share, hatched where what lives is assumed, and said in words", () => {
  const drawn = plain(
    renderToStaticMarkup(
      <MixedJar
        layers={[
          { name: "Ham 3", share: 0.25, grade: "counted" },
          { name: "Ham 9", share: 0.75, grade: "assumed" },
        ]}
      />,
    ),
  );
  expect(drawn).toContain('aria-label="a jar mixed of lot Ham 3 25 % and lot Ham 9 75 %"');
  // the glass holds from 246 up to 84: a quarter of 162 is 40.5
  expect(drawn).toContain("M0 246Q83 251 170 246V205.5");
  expect(drawn).toMatch(/fill="url\(#[^"]*-hatch\)"/);
  expect(drawn).toContain("75 % assumed");
});

it("without shares the jar stands open", () => {
  const open = renderToStaticMarkup(<MixedJar layers={[]} />);
  expect(open).toContain('aria-label="a jar, the shares in it not known"');
  expect(open).not.toContain("var(--counted)");
});
