/** Ranks that wait, each once; the newest goes out first. One bit a rank. */
export class RankQueue {
  count = 0;
  private readonly bits: Int32Array;
  private word = -1;

  constructor(ranks: number) {
    this.bits = new Int32Array((ranks >> 5) + 1);
  }

  add(rank: number): void {
    const word = rank >> 5;
    const before = this.bits[word] as number;
    const after = before | (1 << (rank & 31));
    if (after === before) return;
    this.bits[word] = after;
    this.count += 1;
    if (word > this.word) this.word = word;
  }

  takeNewest(): number {
    let word = this.word;
    while (this.bits[word] === 0) word -= 1;
    const bits = this.bits[word] as number;
    const place = 31 - Math.clz32(bits);
    this.bits[word] = bits & ~(1 << place);
    this.word = word;
    this.count -= 1;
    return word * 32 + place;
  }
}
