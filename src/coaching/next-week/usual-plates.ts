import type { Plate } from "../record/plate";

/** Plates of a gym that has not written its own down (common masses); heights are not known. */
export const usualPlates: readonly Plate[] = [25, 20, 15, 10, 5, 2.5, 1.25].map((massKg) => ({
  row: 0,
  massKg,
  thicknessCm: 0,
  owned: null,
}));
