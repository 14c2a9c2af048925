import type { GroundToGrowOn } from "@/lib/registry/varieties/read-grown-otherwise";

/** How many years ahead the page looks. */
export const yearsAhead = 30;

/** A grow-out every so many years, where nobody says otherwise. */
export const usualYearsBetween = 3;

/** How unlike the seed parents give: a coefficient of variation, 0 for alike. */
export const spreads = [
  { cv: 0, words: "alike: the same amount from each" },
  { cv: 0.5, words: "somewhat unlike" },
  { cv: 1, words: "very unlike: a few give most of it" },
] as const;

/** A plan as it stands in the fields and in the address: text, so that what is half typed stays. */
export interface PlanTyped {
  /** ids of the lots that are sown */
  readonly lots: readonly string[];
  /** percent by lot id; empty: nothing was typed */
  readonly shares: Readonly<Record<string, string>>;
  readonly plants: string;
  readonly seedParents: string;
  readonly cv: string;
  readonly every: string;
}

/** An address, or a form, by the names of its fields. */
export type Asked = Readonly<Record<string, string | readonly string[] | undefined>>;

/** The plan that an address or a form holds; an address that says nothing of a plan is as today. Lots that are not of the variety are left out. */
export function planOfAddress(asked: Asked, ground: Pick<GroundToGrowOn, "lots" | "today">): PlanTyped {
  const one = (name: string) => [asked[name] ?? []].flat()[0];
  const said = ["lots", "plants", "seedParents", "every"].some((name) => asked[name] !== undefined);
  const named = said ? [asked.lots ?? []].flat().flatMap((text) => text.split(",")) : (ground.today?.lots ?? []);
  const lots = ground.lots.flatMap(({ id }) => (named.includes(id) ? [id] : []));
  const unlike = one("unlike");
  return {
    lots,
    shares: Object.fromEntries(lots.map((id) => [id, one(`share.${id}`) ?? ""])),
    plants: one("plants") ?? String(ground.today?.size.plants ?? ""),
    seedParents: one("seedParents") ?? String(ground.today?.size.seedParents ?? ""),
    cv: spreads.some(({ cv }) => String(cv) === unlike) && unlike !== undefined ? unlike : "0",
    every: one("every") ?? String(usualYearsBetween),
  };
}

/** The address that holds a plan, with the question mark. */
export function addressOfPlan({ lots, shares, plants, seedParents, cv, every }: PlanTyped): string {
  const query = new URLSearchParams(lots.map((id) => ["lots", id]));
  if (lots.length > 1) for (const id of lots) if (shares[id]) query.set(`share.${id}`, shares[id]);
  query.set("plants", plants);
  query.set("seedParents", seedParents);
  if (cv !== "0") query.set("unlike", cv);
  query.set("every", every);
  return `?${query}`;
}

/** The address at which a grow-out is planned with these numbers. */
export function addressOfGrowOut(varietyId: string, { lots, shares, plants, seedParents }: PlanTyped): string {
  const query = new URLSearchParams({ variety: varietyId });
  for (const id of lots) query.append("lot", id);
  if (lots.length > 1) for (const id of lots) query.append("share", shares[id] ?? "");
  if (plants !== "") query.set("plants", plants);
  if (seedParents !== "") query.set("seedParents", seedParents);
  return `/grow-outs/new?${query}`;
}
