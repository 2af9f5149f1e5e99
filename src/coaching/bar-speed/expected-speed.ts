import { studentLimit } from "../../statistics/limits";
import type { LineFit } from "./line-fit";
import type { LoadSpeedLine } from "./load-speed-line";

/** Speed of a first set at a load, m/s, with its 90 % prediction interval. */
export type ExpectedSpeed = {
  readonly speed: number;
  readonly low: number;
  readonly high: number;
};

/**
 * Speed that a first work set with a load usually has, and the interval in which nine of ten new ones
 * fall: the line's own uncertainty and the spread of first sets together, speed ± t·√(SE² + SD²).
 */
export function expectedSpeed(
  line: LineFit & Pick<LoadSpeedLine, "firstSet">,
  loadKg: number,
): ExpectedSpeed {
  const { speed: onLine, error } = speedOnLine(line, loadKg);
  const { offset, sd, freedom } = line.firstSet;
  const speed = onLine + offset;
  const half = studentLimit(90, freedom) * Math.sqrt(error ** 2 + sd ** 2);
  return { speed, low: speed - half, high: speed + half };
}

/** The line's speed at a load and its standard error, m/s. */
export function speedOnLine(line: LineFit, loadKg: number): { speed: number; error: number } {
  const variance =
    line.interceptVariance + 2 * loadKg * line.covariance + loadKg ** 2 * line.slopeVariance;
  return { speed: line.intercept + line.slope * loadKg, error: Math.sqrt(Math.max(0, variance)) };
}
