import type { Option } from "@/components/ui";
import { percent } from "@/lib/display/numbers";
import { notKnown, type RenewalLines } from "@/lib/registry/lots/filter-rows";
import type { FilterChoice, LotList } from "@/lib/registry/lots/list-lots";
import { type LotFilter, type LotListQuery, lotFilters } from "@/lib/schemas/lots/list-query";

/** A filter of the list with what can be chosen in it. */
export interface FilterField {
  readonly name: LotFilter;
  readonly label: string;
  /** the wording of no choice */
  readonly empty: string;
  readonly options: readonly Option[];
}

/** The filters in the order in which they stand in the form. */
export function filterFields(choices: LotList["choices"], lines: RenewalLines): FilterField[] {
  const plan = percent(lines.renewalPlan, 0);
  const urgent = percent(lines.renewalUrgent, 0);
  return [
    {
      name: "seed",
      label: "Seed",
      empty: "any amount",
      options: [
        { value: "some", words: "on hand" },
        { value: "none", words: "none left" },
        { value: "unknown", words: "amount not known" },
      ],
    },
    {
      name: "test",
      label: "Germination",
      empty: "tested or not",
      options: [
        { value: "never", words: "never tested" },
        { value: "urgent", words: `below ${urgent}: urgent` },
        { value: "below", words: `below ${plan}: to be renewed` },
        { value: "above", words: `${plan} and better` },
      ],
    },
    { name: "crop", label: "Crop", empty: "all crops", options: choices.crop.map(withCount) },
    { name: "variety", label: "Variety", empty: "all varieties", options: choices.variety.map(withCount) },
    { name: "holder", label: "Holder", empty: "all holders", options: [...choices.holder.map(withCount), open] },
    { name: "status", label: "How it stands", empty: "any way", options: [...choices.status.map(withCount), unsaid] },
    { name: "place", label: "Kept in", empty: "any place", options: [...choices.place.map(withCount), open] },
    { name: "kind", label: "Kind", empty: "all kinds", options: choices.kind.map(withCount) },
  ];
}

/** What the list is narrowed to, each with its words: "germination: never tested". */
export function askedFor(query: LotListQuery, fields: readonly FilterField[]): { name: LotFilter; words: string }[] {
  return lotFilters.flatMap((name) => {
    const value = query[name];
    if (value === null) return [];
    const field = fields.find((each) => each.name === name);
    const words = field?.options.find((option) => option.value === value)?.words ?? value;
    return [{ name, words: `${field?.label.toLowerCase() ?? name}: ${words}` }];
  });
}

const open: Option = { value: notKnown, words: "not known" };
const unsaid: Option = { value: notKnown, words: "nothing said" };

function withCount({ value, words, lots }: FilterChoice): Option {
  return { value, words: `${words} (${lots})` };
}
