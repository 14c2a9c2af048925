/** What was looked at. */
export type VerifiedPart = "file" | "references" | "rules" | "ledgers" | "lineage" | "photos" | "history" | "release";

/** Something that verifying found. A fault contradicts itself or is broken; a note is as people entered it, and for a person to settle. */
export interface Finding {
  readonly part: VerifiedPart;
  readonly severity: "fault" | "note";
  readonly sentence: string;
}

export function fault(part: VerifiedPart, sentence: string): Finding {
  return { part, severity: "fault", sentence };
}

export function note(part: VerifiedPart, sentence: string): Finding {
  return { part, severity: "note", sentence };
}

/** How many findings of one part are told one by one; the rest is counted. */
export const mostTold = 20;

/** The findings of a part as they are told: the first ones, and one that counts the others. */
export function told(findings: readonly Finding[]): Finding[] {
  const [first] = findings;
  if (!first || findings.length <= mostTold) return [...findings];
  const rest = findings.slice(mostTold);
  const severity = rest.some((each) => each.severity === "fault") ? ("fault" as const) : ("note" as const);
  return [
    ...findings.slice(0, mostTold),
    { part: first.part, severity, sentence: `and ${rest.length} more of this kind` },
  ];
}
