import type { NotebookBooking } from "@/lib/schemas/notebook-typing/notebook-booking";
import type { Mating } from "@/lib/science/crops/mating";
import { type Refusal, refusal } from "@/lib/science/outcome";
import { plantFaults } from "./grow-out-rows";
import { shareFaults } from "./share-faults";
import { testFaults } from "./test-rows";

/** Everything in a booking that cannot be, beside what its lots are checked for. */
export function bookingFaults(booking: NotebookBooking, profile: Mating): Refusal[] {
  const { lots, growOuts, tests } = booking;
  return [
    ...lots.flatMap((lot, index) => shareFaults(lot.parents, ["lots", index, "parents"])),
    ...lots.flatMap((lot, index) => lotFaults(lot, ["lots", index], growOuts)),
    ...growOuts.flatMap((growOut, index) => [
      ...shareFaults(growOut.parents, ["growOuts", index, "parents"]),
      ...plantFaults(growOut, profile, ["growOuts", index]),
    ]),
    ...tests.flatMap((test, index) => testFaults(test, ["tests", index])),
  ];
}

/** A harvest has its grow-out, a blend and a split their parents, a founder none. */
function lotFaults(
  lot: NotebookBooking["lots"][number],
  path: (string | number)[],
  growOuts: NotebookBooking["growOuts"],
): Refusal[] {
  const grown = lot.growOut !== null && growOuts.some((growOut) => growOut.ref === lot.growOut);
  if (lot.kind === "harvest" && !grown) {
    return [
      refusal(
        "no-grow-out",
        [...path, "growOut"],
        lot.growOut,
        "is no grow-out of these lines",
        "say which one it was harvested from",
      ),
    ];
  }
  if (lot.kind === "split" && lot.parents.length !== 1) {
    return [
      refusal(
        "split-of-one",
        [...path, "parents"],
        lot.parents.length,
        "lots are split here",
        "a split is part of one lot",
      ),
    ];
  }
  if (lot.kind === "blend" && lot.parents.length < 2) {
    return [
      refusal(
        "blend-of-several",
        [...path, "parents"],
        lot.parents.length,
        "lots are mixed here",
        "a blend is mixed of two or more",
      ),
    ];
  }
  return [];
}
