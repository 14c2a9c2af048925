import { renderToStaticMarkup } from "react-dom/server";
import { expect, test } from "vitest";
import { ButtonLink } from "@/components/ui/button-link";
import { isOffered, Offered, Offering, Way } from "@/components/ui/offered";
import { closedTo } from "@/lib/access/closed-to";

const drawn = (role: Parameters<typeof closedTo>[0]) =>
  renderToStaticMarkup(
    <Offering closed={closedTo(role)}>
      <Way href="/lots/a1/weigh">weigh</Way>
      <Way href="/lots/a1">look</Way>
      <Way href="/lots/a1/status" before=", " otherwise="as it stands">
        decide
      </Way>
      <ButtonLink href="/lots/new">a new lot</ButtonLink>
      <ButtonLink href="/take-out/folder" download>
        all
      </ButtonLink>
      <Offered deed="settings">own value</Offered>
    </Offering>,
  );

const words = (html: string) =>
  html
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ")
    .trim();

test("what a role may not do is not offered, and what it may is there as ever", () => {
  expect(words(drawn("owner"))).toBe("weigh look , decide a new lot all own value");
  expect(words(drawn("librarian"))).toBe("weigh look , decide a new lot");
  expect(words(drawn("reader"))).toBe("look as it stands");
  expect(words(drawn("public"))).toBe("as it stands");
});

test("without a word from the layout everything is offered", () => {
  expect(renderToStaticMarkup(<Way href="/settings">settings</Way>)).toContain('href="/settings"');
});

test("a changing step stands for any, and questions after the address do not matter", () => {
  const closed = { addresses: ["/lots/[id]/status", "/grow-outs/new"], deeds: [] };
  expect(isOffered("/lots/77/status?otherwise=yes", closed)).toBe(false);
  expect(isOffered("/lots/77", closed)).toBe(true);
  expect(isOffered("/grow-outs/new?variety=1#x", closed)).toBe(false);
  expect(isOffered("/grow-outs/77", closed)).toBe(true);
});
