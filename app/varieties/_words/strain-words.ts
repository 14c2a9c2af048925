import type { Option } from "@/components/ui";

/** What a strain can be to its variety, as forms offer it. */
export const relationOptions: readonly Option[] = [
  { value: "same", words: "the same" },
  { value: "selected from", words: "selected from it" },
  { value: "possibly the same", words: "possibly the same" },
  { value: "crossed with", words: "crossed with another" },
];

/** What a strain is to its variety, in words: `possibly the same as the variety`. */
export function relationInWords(relation: string | null): string {
  if (relation === null) return "what it is to the variety nobody has said";
  if (relation === "same") return "grown side by side and the same";
  if (relation === "possibly the same") return "possibly the same: nobody has grown them side by side";
  return relation === "selected from" ? "selected from the variety" : "crossed with another";
}
