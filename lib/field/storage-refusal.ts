import { type Refusal, refusal } from "@/lib/science/outcome";

/*
 * What can go wrong between a tap and the phone's memory, in plain words. Whatever happens, what was tapped stays on the screen until it is stored.
 */

/** The names under which browsers and the store report that the connection to the memory is gone; after sleep some phones drop it. */
const lostConnection = ["DatabaseClosedError", "InvalidStateError", "OpenFailedError"];

interface Fault {
  readonly name?: unknown;
  readonly message?: unknown;
  readonly inner?: unknown;
}

/** True where opening the store once more may help. */
export function isLostConnection(fault: unknown): boolean {
  return storageFaults(fault).some(
    ({ name, message }) =>
      lostConnection.includes(String(name)) ||
      (/connection/i.test(String(message)) && /lost|closing/i.test(String(message))),
  );
}

/** True where the phone has no room left. */
export function isFull(fault: unknown): boolean {
  return storageFaults(fault).some(
    ({ name, message }) => name === "QuotaExceededError" || /quota/i.test(String(message)),
  );
}

/** The fault as a refusal that says what to do. */
export function storageRefusal(fault: unknown): Refusal {
  if (isFull(fault)) {
    return refusal(
      "storage-full",
      [],
      "this record",
      "could not be stored: the phone's memory is full",
      "send what waits here or save it to a file, make room on the phone, then tap again; what was stored before is safe",
    );
  }
  return refusal(
    "not-stored",
    [],
    "this record",
    `could not be stored (${String(storageFaults(fault)[0]?.name ?? "unknown reason")})`,
    "tap again; if that does not help, close this page and open it anew, and write this one on paper meanwhile",
  );
}

/** A fault with those that lie under it. */
export function storageFaults(fault: unknown): Fault[] {
  const found: Fault[] = [];
  let next: unknown = fault;
  while (typeof next === "object" && next !== null && found.length < 5) {
    const each: Fault = next;
    found.push(each);
    next = each.inner;
  }
  return found;
}
