import { restOf } from "@/lib/science/lineage/mixture-ends";
import type { Ends } from "@/lib/science/lineage/span-lots";

/** A part of a lot's making by rank; share null: not known. */
export interface Part {
  readonly rank: number;
  readonly share: number | null;
}

/**
 * The least and the greatest coancestry between lots that still have offspring to come, worked through parents first.
 *
 *     Θ(new, X) = a [ Σ w_A Θ(A, X) + r · Θ(U, X) ]       r = 1 − Σ w: what the parts of unknown share U hold together
 *     Θ(U, X) lies between the least and the greatest of Θ(A, X) over those parts, for its shares are mixed in some way
 *
 * Both ends are kept beside each other, each in a square over the lots in use; a lot gives its place back after its last offspring.
 */
export class CoancestryEnds {
  private readonly low: Float64Array;
  private readonly high: Float64Array;
  /** by rank; -1: no place, because nothing descends from it or all has */
  private readonly placeOf = new Map<number, number>();
  private readonly free: number[] = [];
  private next = 0;

  constructor(private readonly places: number) {
    this.low = new Float64Array(places * places);
    this.high = new Float64Array(places * places);
  }

  between(a: number, b: number): Ends {
    const at = this.at(a) * this.places + this.at(b);
    return { low: this.low[at] as number, high: this.high[at] as number };
  }

  /** Takes a place for a lot whose own coancestry stands; `own` is θ, `passing` is a. */
  take(rank: number, parts: readonly Part[], own: Ends, passing: Ends): void {
    const place = this.free.pop() ?? this.next++;
    const { places, low, high } = this;
    const rest = restOf(parts);
    const from = parts.map((part) => ({ share: part.share, row: this.at(part.rank) * places }));
    for (const x of this.placeOf.values()) {
      let least = Number.POSITIVE_INFINITY;
      let most = 0;
      let sumLow = 0;
      let sumHigh = 0;
      for (const { share, row } of from) {
        const [one, other] = [low[row + x] as number, high[row + x] as number];
        if (share === null) {
          if (one < least) least = one;
          if (other > most) most = other;
        } else {
          sumLow += share * one;
          sumHigh += share * other;
        }
      }
      if (rest > 0) {
        sumLow += rest * least;
        sumHigh += rest * most;
      }
      this.write(place, x, passing.low * sumLow, passing.high * sumHigh);
    }
    this.write(place, place, own.low, own.high);
    this.placeOf.set(rank, place);
  }

  /** Says how near two lots are; of a lot without a place nobody will ask. */
  tell(a: number, b: number, { low, high }: Ends): void {
    if (!this.placeOf.has(a) || !this.placeOf.has(b)) return;
    this.write(this.at(a), this.at(b), low, high);
  }

  giveBack(rank: number): void {
    const place = this.placeOf.get(rank);
    if (place === undefined) return;
    this.placeOf.delete(rank);
    this.free.push(place);
  }

  private at(rank: number): number {
    return this.placeOf.get(rank) ?? 0;
  }

  private write(a: number, b: number, low: number, high: number): void {
    const { places } = this;
    this.low[a * places + b] = low;
    this.low[b * places + a] = low;
    this.high[a * places + b] = high;
    this.high[b * places + a] = high;
  }
}
