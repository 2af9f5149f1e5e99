import { inBase, type Unit } from "../value/units";
import type { PlausibleRange } from "./quantity";

const alike = 0.15;
/** As many different figures tell enough. */
const most = 200;

/**
 * Cells that name their unit beside bare figures: those are in doubt where more of them are like the
 * figure in another unit than like the one in the unit they would be read in, as 140 is like "135 lb"
 * and 80 is like its 61 kg.
 */
export class NamedBeside {
  private readonly bare = new Set<number>();
  private readonly named: { readonly base: number; readonly unit: Unit }[] = [];

  constructor(private readonly range: PlausibleRange) {}

  see(value: number): void {
    if (this.bare.size < most) this.bare.add(value);
  }

  seeNamed(value: number, unit: Unit): void {
    if (unit.quantity === this.range.quantity && this.named.length < most)
      this.named.push({ base: inBase(value, unit), unit });
  }

  /** The other unit that the bare figures may be in; null where there is none. */
  get rival(): Unit | null {
    const { base: usual, rivals, quantity } = this.range;
    const near = (figure: number) =>
      [...this.bare].filter((value) => Math.abs(value - figure) <= alike * figure).length;
    for (const { base, unit } of this.named)
      for (const other of unit !== usual ? [unit] : quantity === "mass" ? rivals : [])
        if (near(base / inBase(1, other)) > near(base)) return other;
    return null;
  }
}
