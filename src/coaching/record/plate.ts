/** One plate mass of this gym. */
export type Plate = {
  readonly row: number;
  readonly massKg: number;
  /** The figure on the plate, as stacks are written, where it is not its kg: 45 in a gym of pounds. */
  readonly stamped?: number;
  /** Measured by the coach: plates of one mass differ in thickness between makers. */
  readonly thicknessCm: number;
  readonly owned: number | null;
};
