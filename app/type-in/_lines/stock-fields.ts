import type { LineProposal } from "@/lib/exchange/notebook-lines/proposal";
import type { Certainty, FactKind } from "@/lib/exchange/notebook-lines/reading";
import { field, type LineField, lotField } from "./line-field";
import { numberShown } from "./told-numbers";

/** What a line says of seed in the jar: tested, given, weighed, thrown away. */
export function stockFields(proposal: LineProposal, certain: (kind: FactKind) => Certainty): LineField[] {
  const { germination, given, onHand, discarded } = proposal;
  const tests = germination.flatMap((test, place) => {
    if (!test.isTest) return [];
    const text = test.up && test.of ? `${numberShown(test.up)} of ${numberShown(test.of)}` : test.words;
    return [
      field(`test.${place}`, "tested", text, certain("germination"), "test"),
      ...lotField(`testLot.${place}`, "of lot", test.lot),
    ];
  });
  const gifts = given.flatMap((gift, place) => [
    field(`given.${place}`, `given to ${gift.to}`, gift.amount?.words ?? null, certain("given"), "amount"),
    ...lotField(`givenLot.${place}`, "of lot", gift.lot),
  ]);
  const [thrown] = discarded;
  return [
    ...tests,
    ...gifts,
    ...(onHand === null ? [] : [field("onHand", "in the jar", onHand.words, certain("on-hand"), "amount")]),
    ...(thrown === undefined
      ? []
      : [field("discarded", "thrown away", thrown?.words ?? null, certain("discarded"), "amount")]),
  ];
}
