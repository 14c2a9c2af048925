import type { FateOfRecord } from "@/lib/schemas/field/field-delivery";
import type { FieldPack } from "@/lib/schemas/field/field-pack";
import type { FieldRecord } from "@/lib/schemas/field/field-records";

/*
 * The rows of the phone's own store. What a person recorded is never rewritten: only what the registry said of it is put beside it.
 */

/** A record before its place among the records of its phone is known: the store gives it that. */
export type NewRecord = FieldRecord extends infer R
  ? R extends FieldRecord
    ? Omit<R, "deviceId" | "sequence">
    : never
  : never;

/** `unsent` is the phone's own word; the others are the registry's. */
export type StateOfRecord = "unsent" | FateOfRecord;

export interface KeptRecord {
  readonly id: string;
  readonly sequence: number;
  readonly growOutId: string;
  readonly record: FieldRecord;
  readonly state: StateOfRecord;
  /** why it is held back, asked about or refused, as the registry put it */
  readonly sentence: string | null;
  /** the registry's clock as it answered; null: not yet */
  readonly answeredAt: string | null;
  /** the phone's clock as it was last saved to a file */
  readonly savedAt?: string;
  /** the registry would not have it, it stands in a file, and a person has put it out of the way: it stays here, and holds up nothing */
  readonly putAway?: boolean;
}

export interface KeptPack {
  readonly growOutId: string;
  readonly pack: FieldPack;
  /** the phone's clock as it was stored */
  readonly keptAt: string;
}

/** A picture, shrunk already, under the hash that its record names. Its bytes go once the registry has it. */
export interface KeptPhoto {
  readonly hash: string;
  readonly growOutId: string;
  readonly bytes: Blob | null;
  readonly takenAt: string;
  /** 0: still to be sent; 1: the registry has it */
  readonly sent: 0 | 1;
  /** why the registry would not have it */
  readonly sentence: string | null;
  /** the phone's clock as it was last saved to a file */
  readonly savedAt?: string;
  /** as of a record */
  readonly putAway?: boolean;
}

/** This phone, as its records name it. */
export interface Device {
  readonly id: string;
  readonly name: string;
}

/** What the phone remembers of itself, each under its name. */
export interface Settings {
  readonly device: Device;
  /** the last place given to a record */
  readonly sequence: number;
  readonly hand: "left" | "right";
  /** what was begun on a screen and is no record yet, by the screen */
  readonly drafts: Readonly<Record<string, string>>;
  /** when the registry last answered, by the phone's clock */
  readonly heardAt: string;
  /** milliseconds by which the phone's clock is ahead of the registry's */
  readonly clockAhead: number;
  /** the registry asked for a sign-in, and has not had it yet */
  readonly signInAsked: boolean;
}
export type SettingName = keyof Settings;

export interface KeptSetting {
  readonly name: SettingName;
  readonly value: Settings[SettingName];
}
