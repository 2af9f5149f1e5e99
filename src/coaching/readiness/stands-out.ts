import type { ReadinessPart } from "./readiness";

/** Standard normal score beyond which one reading in twenty lies, on either side. */
const oneInTwenty = 1.96;

/** True for a part that stands out alone, whatever the day as a whole. */
export const standsOut = ({ z }: Pick<ReadinessPart, "z">): boolean => Math.abs(z) >= oneInTwenty;
