import { inBase, type Unit } from "../value/units";
import type { PlausibleRange } from "./quantity";

/** Fewer figures than these tell nothing of a column. */
const fewest = 5;

/** How many figures of a column are plausible in each unit it may be in, and their bounds in the base unit. */
export class UnitsThatFit {
  /** Least and greatest plausible value in the base unit. */
  least = Number.POSITIVE_INFINITY;
  most = Number.NEGATIVE_INFINITY;
  readonly units: readonly Unit[];
  private readonly fits: number[];
  private count = 0;

  constructor(private readonly range: PlausibleRange) {
    this.units = [range.base, ...range.rivals];
    this.fits = this.units.map(() => 0);
  }

  see(value: number): void {
    const { range, units, fits } = this;
    // Nought is plausible in any unit where it is in one, and tells none of them.
    if (value !== 0 || range.low > 0) this.count++;
    for (let at = 0; at < units.length; at++) {
      const base = inBase(value, units[at]!);
      if (base >= range.lowUnnamed && base <= range.high) fits[at]!++;
    }
    const base = inBase(value, range.base);
    if (base < range.low || base > range.high) return;
    if (base < this.least) this.least = base;
    if (base > this.most) this.most = base;
  }

  /** Half of the figures are plausible in the base unit: a few odd cells are reported one by one. */
  get isBase(): boolean {
    return this.fits[0]! >= this.count / 2;
  }

  /** The units that a whole column may be in which does not fit the base unit. */
  get others(): readonly Unit[] {
    const { units, fits, count } = this;
    return count < fewest || this.isBase ? [] : units.filter((_, at) => fits[at]! >= 0.8 * count);
  }
}
