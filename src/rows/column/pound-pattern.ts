/** More kilograms than a runner mostly lifts (common practice, no source). */
const heavyKg = 160;
/** As many different loads tell enough. */
const most = 8;

/**
 * Loads on a 45 lb bar with pairs of 5 and 10 lb end in 5, or are whole fives, and run high (135, 185,
 * 225); loads in kg rarely all do. Common practice, no source.
 */
export class PoundPattern {
  private count = 0;
  private endInFive = 0;
  private wholeFives = 0;
  private heavy = 0;
  private readonly distinct = new Set<number>();

  see(value: number): void {
    this.count++;
    if (value % 10 === 5) this.endInFive++;
    if (value % 5 === 0) this.wholeFives++;
    if (value > heavyKg) this.heavy++;
    if (this.distinct.size < most) this.distinct.add(value);
  }

  get likely(): boolean {
    const { count, endInFive, wholeFives, heavy, distinct } = this;
    if (heavy > count / 2) return true;
    const several = distinct.size >= 5;
    const fives = endInFive >= 0.8 * count || (several && wholeFives === count);
    if (heavy > count / 8 && distinct.size >= 4 && fives) return true;
    return several && endInFive === count;
  }
}
