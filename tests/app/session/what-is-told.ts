import type { Role } from "@/lib/access/actor";
import { type Circle, secrets } from "../../registry/privacy/a-circle";

/** What each role sees of what is private (beside the owner, who sees all): its own desk's borrowers, and whom it writes to. */
const seenBy: Readonly<Record<Role, readonly string[]>> = {
  owner: Object.keys(secrets),
  steward: [],
  librarian: ["contact", "address", "borrower", "borrowerInWords"],
  helper: [],
  reader: [],
  public: [],
};

export const roles = Object.keys(seenBy) as Role[];

/** The names of the secrets that stand in what a role got and may not see. */
export function told(role: Role, body: string): string[] {
  const plain = body.replaceAll("&#x27;", "'").replaceAll("&amp;", "&");
  return Object.entries(secrets).flatMap(([name, secret]) =>
    plain.includes(secret) && !seenBy[role].includes(name) ? [name] : [],
  );
}

export const nowhere = "00000000-0000-7000-8000-000000000000";

/** The changing steps of an address, for the records that everybody sees and for those that are held back. */
export function subjectsOf(circle: Circle, route: string, held: boolean): Record<string, string> {
  const crop = "pea";
  const of: Readonly<Record<string, string>> = held
    ? { lots: circle.lots.held, varieties: circle.varieties.held, "grow-outs": circle.growOuts.held }
    : { lots: circle.lots.berts, varieties: circle.varieties.shared, "grow-outs": circle.growOuts.berts };
  const first = route.split("/")[1] ?? "";
  const named: Readonly<Record<string, string>> = {
    id: { ...of, stewards: circle.stewards.bert, sharing: circle.transfers.lent }[first] ?? nowhere,
    variety: of.varieties ?? nowhere,
    varietyId: of.varieties ?? nowhere,
    key: crop,
    field: "plantsMin",
    name: "reserve",
    what: "story",
  };
  const steps = [...route.matchAll(/\[(?:\.\.\.)?(\w+)\]/g)].map((found) => found[1] ?? "");
  return Object.fromEntries(steps.map((step) => [step, named[step] ?? nowhere]));
}
