/** Headings of the Plates table, as coaches write them; the first of each is ours. */
export const platesColumns = {
  mass: [
    "mass",
    "plate",
    "plate mass",
    "kg",
    "lb",
    "weight",
    "stamped mass",
    "gewicht",
    "scheibe",
    "plates",
  ],
  thickness: ["thickness", "thick", "cm", "mm", "dicke", "height", "width"],
  owned: ["number owned", "owned", "number", "how many", "count", "anzahl", "pieces", "qty"],
} as const;
