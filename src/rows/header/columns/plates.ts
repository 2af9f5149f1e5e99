import { headings } from "./headings";

/** Headings of the Plates table, as coaches write them; the first of each is ours. */
export const platesColumns = {
  mass: headings("mass|plate|plate mass|kg|lb|weight|stamped mass|gewicht|scheibe|plates"),
  thickness: headings("thickness|starke|thick|how thick|cm|mm|dicke|height|width"),
  owned: headings("number owned|owned|have|number|how many|count|anzahl|stuck|pieces|qty"),
} as const;
