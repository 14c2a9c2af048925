import { sameName } from "@/lib/registry/names/fold-name";
import { readName } from "@/lib/schemas/notebook/cells";
import { readDecimal, writeDecimal } from "@/lib/schemas/notebook/decimal";
import type { LotShare } from "@/lib/schemas/notebook/kinds";
import { type Refusal, refusal } from "@/lib/science/outcome";

/** How far the shares of one list may sum from 1. */
const SLACK = 1e-6 + 1e-12;

/** A lot number is looked for across at most this many semicolons. */
const MOST_PARTS = 5;

export interface ReadLotShares {
  /** empty where there are faults */
  readonly lots: readonly LotShare[];
  /** names that stand nowhere */
  readonly unknown: readonly string[];
  readonly faults: readonly Refusal[];
}

interface Piece {
  readonly name: string;
  /** null: no share was written */
  readonly share: string | null;
}

/**
 * Reads `lot:share;lot:share`. The share may be left out where a single lot stands. Lot numbers may themselves hold a
 * colon or a semicolon: what is known as a lot is read as one.
 */
export function readLotShares(text: string, isLot: (name: string) => boolean): ReadLotShares {
  const pieces = inPieces(text, isLot);
  const faults: Refusal[] = [];
  const unknown = pieces.map(({ name }) => name).filter((name) => !isLot(name));
  const seen = new Set<string>();
  const lots: LotShare[] = [];
  for (const { name, share } of pieces) {
    const key = sameName(name);
    if (seen.has(key)) faults.push(refusal("lot-twice", [], name, "stands twice here", "add its shares together"));
    seen.add(key);
    const read = readShare(share, pieces.length);
    if (typeof read === "number") lots.push({ lot: name, share: read });
    else faults.push(read);
  }
  if (faults.length === 0) {
    const sum = lots.reduce((total, { share }) => total + share, 0);
    if (Math.abs(sum - 1) > SLACK) {
      const given = Number(sum.toPrecision(12));
      faults.push(refusal("shares-sum", [], given, "is the sum of the shares", "write shares that sum to 1"));
    }
  }
  return { lots: faults.length === 0 ? lots : [], unknown, faults };
}

function readShare(share: string | null, lots: number): number | Refusal {
  if (share === null) {
    return lots === 1 ? 1 : refusal("share-missing", [], "", "stands for a share", "write each lot as lot:share");
  }
  const read = readDecimal(share, ",");
  if (!read.ok) return read.refusals[0] ?? refusal("share-not-read", [], share, "is no share", "write it as 0.25");
  if (read.value >= 0 && read.value <= 1) return read.value;
  return refusal("share-out-of-range", [], read.value, "is no share", "write a share from 0 to 1, as 0.25");
}

function inPieces(text: string, isLot: (name: string) => boolean): Piece[] {
  const whole = asName(text);
  if (isLot(whole)) return [{ name: whole, share: null }];
  const parts = text.split(";");
  const pieces: Piece[] = [];
  for (let start = 0; start < parts.length; ) {
    let end = start + 1;
    let piece = asPiece(parts.slice(start, end).join(";"), isLot);
    while (!isLot(piece.name) && end < Math.min(parts.length, start + MOST_PARTS)) {
      end += 1;
      piece = asPiece(parts.slice(start, end).join(";"), isLot);
    }
    if (!isLot(piece.name)) {
      end = start + 1;
      piece = asPiece(parts[start] ?? "", isLot);
    }
    if (piece.name !== "" || piece.share !== null) pieces.push(piece);
    start = end;
  }
  return pieces;
}

function asPiece(text: string, isLot: (name: string) => boolean): Piece {
  const name = asName(text);
  const colon = text.lastIndexOf(":");
  if (colon === -1 || isLot(name)) return { name, share: null };
  return { name: asName(text.slice(0, colon)), share: text.slice(colon + 1).trim() };
}

function asName(text: string): string {
  const read = readName(text, ".");
  return read.ok ? read.value : text.trim();
}

/** Writes a list that reads back as the same lots and shares. */
export function writeLotShares(lots: readonly LotShare[]): string {
  const [only, ...others] = lots;
  if (only !== undefined && others.length === 0 && only.share === 1) return only.lot;
  return lots.map(({ lot, share }) => `${lot}:${writeDecimal(share)}`).join(";");
}
