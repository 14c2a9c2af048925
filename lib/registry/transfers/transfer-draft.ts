import type { NewRowOf } from "../change-set/records";

/** What giving left in the tables. */
export interface GivenSeed {
  readonly transferId: string;
  /** the lot in the other hand; null where it left the registry, or never left its holder */
  readonly newLotId: string | null;
  readonly newNumber: string | null;
}

/** A transfer about to be written. */
export type TransferDraft = NewRowOf<"Transfer"> & { readonly id: string };

/** Seed that is being taken in: the lot is written with it where nothing else is answered. */
export type TransferTakenIn = Omit<TransferDraft, "lotId"> & { readonly lotId: string | null };
