import { useMemo } from "react";
import { type FieldState, fieldState } from "@/lib/field/screen-state";
import type { FieldPack } from "@/lib/schemas/field/field-pack";
import type { FieldBody, FieldKind } from "@/lib/schemas/field/field-records";
import { usePhone, usePhoneNow } from "../_components/phone-context";

/** What every screen of a grow-out works with. */
export interface Work {
  readonly growOutId: string;
  readonly pack: FieldPack;
  readonly state: FieldState;
  /** Stores what was done, with a tick of the phone where it has one; false where it could not be, and why is told at the foot. */
  record<K extends FieldKind>(kind: K, body: FieldBody<K>, words: string): Promise<boolean>;
  undo(record: string): Promise<boolean>;
}

export function useWork(growOutId: string): Work | null {
  const phone = usePhone();
  const now = usePhoneNow();
  const pack = now.packs.find((each) => each.growOutId === growOutId)?.pack;
  const rows = useMemo(() => now.rows.filter((row) => row.growOutId === growOutId), [now.rows, growOutId]);
  const state = useMemo(() => (pack ? fieldState(pack, rows) : null), [pack, rows]);
  if (!pack || !state) return null;
  return {
    growOutId,
    pack,
    state,
    record: async (kind, body, words) => ticked(await phone.record(growOutId, kind, body, words)),
    undo: async (record) => ticked(await phone.undo(growOutId, record)),
  };
}

function ticked(kept: object | null): boolean {
  if (kept === null) return false;
  navigator.vibrate?.(12);
  return true;
}
