import type { Database } from "@/lib/db";
import type { RowOf } from "../change-set/records";
import { bytesOfPhoto } from "./keep-file";

/** A picture with what it is of, each by name; null where it is of no such. */
export interface PhotoWhole {
  readonly photo: RowOf<"Photo">;
  /** false: its file is gone, or is not what was stored */
  readonly there: boolean;
  readonly takenBy: string | null;
  readonly of: {
    readonly variety: { readonly id: string; readonly name: string } | null;
    readonly lot: { readonly id: string; readonly number: string } | null;
    readonly growOut: { readonly id: string; readonly name: string } | null;
    readonly plant: { readonly id: string; readonly name: string } | null;
    readonly test: { readonly id: string; readonly name: string } | null;
    readonly trait: { readonly id: string; readonly name: string } | null;
  };
}

/** One picture with what it is of; null where there is none, or none that the one who asks may see. */
export async function readPhoto(db: Database, id: string): Promise<PhotoWhole | null> {
  const named = { select: { id: true, name: true } };
  const found = await db.read.photo.findUnique({
    where: { id },
    include: {
      ...{ variety: named, growOut: named, plant: named, test: named, trait: named },
      lot: { select: { id: true, number: true } },
      steward: { select: { person: { select: { name: true } } } },
    },
  });
  if (!found) return null;
  const { variety, lot, growOut, plant, test, trait, steward, ...photo } = found;
  return {
    photo,
    there: (await bytesOfPhoto(db.location, photo.hash)).state === "whole",
    takenBy: steward?.person?.name ?? null,
    of: { variety, lot, growOut, plant, test, trait },
  };
}

/** Whether somebody may see a picture: one of the records that have it is theirs to see. */
export async function seesPhoto(db: Database, hash: string): Promise<boolean> {
  return (await db.read.photo.findFirst({ where: { hash }, select: { id: true } })) !== null;
}
