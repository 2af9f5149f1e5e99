import type { Plate } from "../../record/plate";
import { kgFromPounds, type MassUnit } from "../../units/mass";

const unlisted = (massesKg: readonly number[]): readonly Plate[] =>
  massesKg.map((massKg) => ({ row: 0, massKg, thicknessCm: 0, owned: null }));

/** Plates of a gym that has not written its own down (common masses); heights are not known. */
const usualPlates: Readonly<Record<MassUnit, readonly Plate[]>> = {
  kg: unlisted([25, 20, 15, 10, 5, 2.5, 1.25]),
  lb: unlisted([45, 35, 25, 10, 5, 2.5].map(kgFromPounds)),
};

/** The plates to load with: the gym's own where they are listed, else the usual ones of its unit. */
export const gymPlates = (listed: readonly Plate[], unit: MassUnit = "kg"): readonly Plate[] =>
  listed.length > 0 ? listed : usualPlates[unit];
