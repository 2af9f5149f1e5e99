import { jStat } from "jstat";

/** Probability of a normal deviate further from 0 than this one, both sides. */
export const normalTwoSided = (z: number): number => 2 * jStat.normal.cdf(-Math.abs(z), 0, 1);
