import type { Transaction } from "@/lib/db";
import type { NotebookBooking } from "@/lib/schemas/notebook-typing/notebook-booking";
import type { ChangeWriter } from "../change-set/writer";
import type { DateReader, StoredDate } from "./booked-date";
import type { LotsOfBooking } from "./lots-of-booking";

/** What the parts of a booking are written with. */
export interface BookingPlace {
  readonly change: ChangeWriter;
  readonly tx: Transaction;
  readonly booking: NotebookBooking;
  readonly varietyId: string;
  readonly varietyName: string;
  readonly holderId: string | null;
  readonly lots: LotsOfBooking;
  readonly dates: DateReader;
  /** the date that each line is about */
  readonly lineDates: readonly (StoredDate | null)[];
}
