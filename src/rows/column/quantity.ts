import { type Quantity, type Unit, unitOf } from "../value/units";

/** What a column of one quantity may hold, in its base unit. Bounds are common practice, no source. */
export type PlausibleRange = {
  readonly quantity: Quantity;
  readonly base: Unit;
  /** Units tried on the whole column when neither heading nor cell names one. */
  readonly rivals: readonly Unit[];
  readonly low: number;
  /** The same where no unit is named: less is another unit. Nothing at all, 0, is the same in any. */
  readonly lowUnnamed: number;
  readonly high: number;
  /** Seconds and milliseconds differ a thousandfold, so one cell settles itself. */
  readonly cellSettlesUnit: boolean;
};

function range(
  base: string,
  low: number,
  high: number,
  rivals: readonly string[] = [],
  cellSettlesUnit = false,
  lowUnnamed = low,
): PlausibleRange {
  const unit = unitOf(base)!;
  return {
    quantity: unit.quantity,
    base: unit,
    rivals: rivals.map((word) => unitOf(word)!),
    low,
    lowUnnamed,
    high,
    cellSettlesUnit,
  };
}

/** Bounds outside which a value is rather a slip of the finger. */
export const plausible = {
  loadKg: range("kg", 1, 350, ["lb"]),
  speed: range("m/s", 0.08, 3.5, ["cm/s", "mm/s"]),
  heightCm: range("cm", 3, 130, ["m", "mm"]),
  // Nobody drops from a third of a centimetre: 0.3 is metres.
  dropCm: range("cm", 0, 120, ["m", "mm"], false, 1),
  landingCm: range("cm", 0, 150, ["m", "mm"], false, 1),
  contactS: range("s", 0.08, 1.2, ["ms"], true),
  flightS: range("s", 0.1, 1, ["ms"], true),
  barKg: range("kg", 1, 40),
  plateKg: range("kg", 0.1, 60),
  thicknessCm: range("cm", 0.2, 15, ["mm"]),
  km: range("km", 0.03, 300),
} as const;
