import type { Option } from "@/components/ui";
import type { Moment } from "@/lib/schemas/grow-outs/field-kinds";
import type { Bearing } from "@/lib/science/isolation/bearings";
import type { IsolationMethodName } from "@/lib/science/isolation/isolation-grade";

/** The choices of the forms about neighbours, in a grower's words. */

export const bearingOptions: readonly (Option & { value: Bearing })[] = [
  { value: "N", words: "north" },
  { value: "NE", words: "north-east" },
  { value: "E", words: "east" },
  { value: "SE", words: "south-east" },
  { value: "S", words: "south" },
  { value: "SW", words: "south-west" },
  { value: "W", words: "west" },
  { value: "NW", words: "north-west" },
];

export const evidenceOptions: readonly Option[] = [
  { value: "seen", words: "seen" },
  { value: "told", words: "told" },
  { value: "assumed", words: "assumed" },
];

export const methodOptions: readonly (Option & { value: IsolationMethodName; note: string })[] = [
  { value: "distance", words: "distance", note: "a plot far from the others" },
  { value: "time", words: "time", note: "sown early or late, so that flowering does not meet" },
  { value: "barrier", words: "barrier", note: "a tall crop, a hedge or a wood between" },
  { value: "cage", words: "cage", note: "netting that shuts insects out, or in" },
  { value: "bags", words: "bags", note: "flowers bagged before they opened" },
  { value: "hand pollination", words: "hand pollination", note: "taped or bagged, pollen by hand, fruit tagged" },
];

export const organOptions: readonly Option[] = [
  { value: "flower", words: "in flower" },
  { value: "pollen", words: "shedding pollen" },
];

export const momentOptions: readonly (Option & { value: Moment })[] = [
  { value: "first", words: "the first" },
  { value: "half", words: "half of them" },
  { value: "last", words: "the last" },
];

/** The words of a stored value, or the value itself where it was written otherwise. */
export function wordsOf(options: readonly Option[], value: string): string {
  return options.find((option) => option.value === value)?.words ?? value;
}

export const privacyHint =
  "names of neighbours, and where exactly they live, are private: what stands here goes into your own copies and on no lot, label or packet";
