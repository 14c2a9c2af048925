import { dateInWords } from "@/lib/display/dates";
import type { LineProposal } from "@/lib/exchange/notebook-lines/proposal";
import type { Certainty, Count, FactKind } from "@/lib/exchange/notebook-lines/reading";
import { countField, field, isAssumed, type LineField } from "./line-field";

type Certain = (kind: FactKind) => Certainty;

const all: Count = { words: "all", value: null, low: null, high: null, approximate: false };
const some: Count = { ...all, words: "some" };

/** What a line says of plants in the ground, and of the seed that they gave. */
export function growingFields(proposal: LineProposal, certain: Certain): LineField[] {
  const { sown, seedsSown, sownAmount, emerged, plantsStanding, failure } = proposal;
  return [
    ...(sown === null ? [] : [field("sown", "sown on", dateInWords(sown), certain("sown-on"), "date")]),
    ...(seedsSown === null ? [] : [countField("seedsSown", "seeds sown", seedsSown, certain("seeds-sown"))]),
    ...(sownAmount === null ? [] : [field("sownAmount", "sown", sownAmount.words, certain("sown-amount"), "amount")]),
    ...(emerged === null ? [] : [countField("emerged", "came up", emerged, certain("emerged"))]),
    countField("plantsStanding", "plants standing", plantsStanding, certain("plants")),
    ...rogueFields(proposal, certain),
    ...(proposal.kind === "grow-out" ? seedFields(proposal, certain) : []),
    ...(failure === null
      ? []
      : [field("failure", "no seed", failure === "" ? null : failure, certain("failed"), "words")]),
  ];
}

/** Plants pulled, by when; where nobody says, before pollen is asked for, since that is what counts. */
function rogueFields({ rogues, lots }: LineProposal, certain: Certain): LineField[] {
  const passes = [
    { timing: "before", key: "roguedBefore", label: "pulled before pollen" },
    { timing: "after", key: "roguedAfter", label: "pulled after pollen" },
    { timing: null, key: "roguedUntimed", label: "pulled, when not said" },
  ] as const;
  const said = passes.flatMap(({ timing, key, label }) => {
    const pass = rogues.find((each) => each.timing === timing);
    return pass ? [countField(key, label, pass.count ?? some, certain("rogued"))] : [];
  });
  const asked = said.length === 0 && lots.some((lot) => lot.kind === "harvest");
  return asked ? [countField("roguedBefore", "pulled before pollen", null, "sure")] : said;
}

function seedFields(proposal: LineProposal, certain: Certain): LineField[] {
  const kept = proposal.lots.some((lot) => lot.kind === "harvest");
  const certainty: Certainty = isAssumed(proposal, "seed-kept") ? "doubtful" : "sure";
  const whether: LineField = {
    ...field("seedKept", "seed kept", kept ? "yes" : "no", certainty, "kept"),
    canDrop: false,
  };
  if (!kept) return [whether];
  const { harvested, seedShares } = proposal;
  const shares = seedShares === null ? null : seedShares === "equal" ? "the same" : "not the same";
  const amount = harvested.length > 0 ? harvested.map((each) => each.words).join(" and ") : null;
  const told: FactKind = isAssumed(proposal, "amount-taken-as-harvest") ? "amount" : "harvested";
  return [
    whether,
    seedParents(proposal, certain),
    field("seedShares", "seed from each", shares, certain("shares"), "shares"),
    field("harvested", "seed harvested", amount, certain(told), "amount"),
  ];
}

/** Ears and pods are not plants: their number stands with doubt. */
function seedParents({ allKept, seedParents, seedParentsCounted }: LineProposal, certain: Certain): LineField {
  const told = allKept && seedParents === null ? all : seedParents;
  const shown = countField("seedParents", "seed parents", told, certain("seed-parents"));
  if (shown.text === null || seedParentsCounted === null || seedParentsCounted === "plants") return shown;
  return { ...shown, text: `${shown.text} ${seedParentsCounted}`, certainty: "doubtful" };
}
