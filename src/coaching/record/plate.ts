/** One plate mass of this gym. */
export type Plate = {
  readonly row: number;
  readonly massKg: number;
  /** Measured by the coach: plates of one mass differ in thickness between makers. */
  readonly thicknessCm: number;
  readonly owned: number | null;
};
