"use server";

import { revalidatePath } from "next/cache";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { type BookedNotebook, bookNotebookLines } from "@/lib/registry/notebook-typing/book-notebook-lines";
import { numbersBeginning } from "@/lib/registry/notebook-typing/typing-ground";
import { NotebookBookingSchema } from "@/lib/schemas/notebook-typing/notebook-booking";
import { parsed } from "@/lib/schemas/parsed";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { current } from "../../_session/current";

export interface Booked extends BookedNotebook {
  readonly changeSetId: string;
}

/** Books what stands on the screen, as one operation. */
export async function bookLines(given: unknown): Promise<Outcome<Booked>> {
  const { db, actor } = await current("record");
  const booking = parsed(NotebookBookingSchema, given);
  if (!booking.ok) return booking;
  const booked = await bookNotebookLines(db, actor, booking.value);
  if (!booked.ok) return booked;
  revalidatePath("/", "layout");
  return accepted({ ...booked.value.value, changeSetId: booked.value.changeSetId ?? "" });
}

/** Takes the whole booking back. */
export async function takeLinesBack(changeSetId: string): Promise<Outcome<{ undone: number }>> {
  const { db, actor } = await current("record");
  const undone = await undoChangeSet(db, actor, changeSetId);
  if (!undone.ok) return undone;
  revalidatePath("/", "layout");
  return accepted(undone.value.value);
}

/** Lot numbers of a word that are given already. */
export async function takenNumbers(stem: string): Promise<string[]> {
  const { db } = await current("record");
  return stem.trim() === "" ? [] : numbersBeginning(db, stem.trim());
}
