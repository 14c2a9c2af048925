import { Dexie } from "dexie";
import { IDBFactory, IDBKeyRange } from "fake-indexeddb";
import type { KeptRecord, NewRecord } from "@/lib/field/kept-rows";
import { newRecord } from "@/lib/field/new-record";
import { FieldStore } from "@/lib/field/store";
import type { Outcome } from "@/lib/science/outcome";

let phones = 0;

function nextName(): string {
  phones += 1;
  return `phone ${phones}`;
}

/** A phone with nothing on it; `name` opens the same phone's memory once more. */
export function phone(name = nextName()): { readonly store: FieldStore; readonly name: string } {
  return { store: new FieldStore(name), name };
}

/** Gives the runtime a browser's memory, empty. */
export function emptyMemory(): void {
  Dexie.dependencies.indexedDB = new IDBFactory();
  Dexie.dependencies.IDBKeyRange = IDBKeyRange;
}

export const growOutId = "01976000-0000-7000-8000-000000000001";
export const noon = { at: Date.parse("2026-08-01T12:00:00.000Z"), offset: 120 };

/** A walk in which so many were looked at, none found. */
export function walk(looked: number): NewRecord {
  const body = { stage: "leaf", timing: "before", looked, pulled: [], left: null, note: null } as const;
  return newRecord("walk", { ...body, pulled: [] }, { growOutId, stewardId: null }, noon);
}

/** What an outcome gives; a refusal fails the test with its sentence. */
export function given<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.refusals.map((each) => each.sentence).join(" "));
  return outcome.value;
}

export const lookedAt = (row: KeptRecord): number | null =>
  row.record.kind === "walk" ? row.record.body.looked : null;

/** What a newer page does when it opens the store: another version, with a table that this one does not know. */
export function madeNewer(name: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const request = Dexie.dependencies.indexedDB.open(name, 20);
    request.onupgradeneeded = () => request.result.createObjectStore("of-a-newer-page");
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      request.result.close();
      resolve();
    };
  });
}
