import type { RestoreGround } from "@/lib/registry/varieties/read-restore";
import { count } from "@/lib/schemas/lots/form-fields";

/** Living seeds that a mix is reckoned for where neither variety nor crop says how many plants it wants. */
const usualSeeds = 100;

/** What the page was asked, as it stands in the address. */
export interface RestoreAsked {
  /** living seeds of the mix */
  readonly seeds: number;
  /** as it was typed, where it is no count */
  readonly seedsTyped: string | null;
  /** lots that go in against what stands there */
  readonly also: ReadonlySet<string>;
  /** lots with foreign genes are compared, too, by their native genes alone */
  readonly foreign: boolean;
  /** why; without it nothing is overruled */
  readonly although: string;
}

type Address = Readonly<Record<string, string | readonly string[] | undefined>>;

/** Reads the address; what it does not say is as the next grow-out asks. */
export function restoreAsked(address: Address, { seedsWanted }: Pick<RestoreGround, "seedsWanted">): RestoreAsked {
  const typed = [address.seeds ?? ""].flat()[0] ?? "";
  const read = count(typed);
  return {
    seeds: read.ok ? read.value : (seedsWanted?.seeds ?? usualSeeds),
    seedsTyped: typed === "" || read.ok ? null : typed,
    also: new Set([address.also ?? []].flat().flatMap((each) => each.split(","))),
    foreign: address.foreign === "yes",
    although: ([address.although ?? ""].flat()[0] ?? "").trim(),
  };
}
