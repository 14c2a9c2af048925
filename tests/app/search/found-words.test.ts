import { describe, expect, it } from "vitest";
import { foundLine } from "@/app/search/_words/found-words";
import type { Found } from "@/lib/registry/search/find";

const found: Found = {
  kind: "lot",
  id: "1",
  title: "Quern 14",
  of: "Hollow Pea",
  page: { kind: "lot", id: "1" },
  as: null,
  excerpt: null,
  meant: false,
};

describe("a find in words", () => {
  it("leads to the record's page and says what it belongs to", () => {
    expect(foundLine(found)).toMatchObject({ href: "/lots/1", of: "of Hollow Pea", found: null });
    expect(foundLine({ ...found, kind: "test", page: { kind: "test", id: "t" } })).toMatchObject({ href: "/tests/t" });
    expect(foundLine({ ...found, kind: "steward", page: { kind: "steward", id: "s" } }).href).toBe(
      "/stewards/s/correct",
    );
  });

  it("says in which words it was found, where that is not the name", () => {
    expect(foundLine({ ...found, as: "note", excerpt: "jar by the stairs" }).found).toBe("note: jar by the stairs");
    expect(foundLine({ ...found, as: "label code" }).found).toBe("label code");
  });
});
