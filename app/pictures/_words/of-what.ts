import type { PhotoWhole } from "@/lib/registry/photos/read-photo";

/** What a picture is of, in words and by its page: the nearest record that it names. */
export function ofWhat({ variety, lot, growOut, plant, test, trait }: PhotoWhole["of"]): {
  readonly words: string;
  readonly page: string;
} {
  if (growOut) {
    const of = `grow-out ${growOut.name}`;
    return { words: plant ? `plant ${plant.name} of ${of}` : of, page: `/grow-outs/${growOut.id}` };
  }
  if (test) return { words: `test ${test.name}`, page: `/tests/${test.id}` };
  if (lot) return { words: `lot ${lot.number}`, page: `/lots/${lot.id}` };
  if (trait && variety)
    return { words: `${trait.name} of ${variety.name}`, page: `/varieties/${variety.id}/traits/${trait.id}` };
  if (variety) return { words: variety.name, page: `/varieties/${variety.id}` };
  return { words: trait?.name ?? plant?.name ?? "something unsaid", page: "/varieties" };
}
