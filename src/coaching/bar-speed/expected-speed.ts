import type { LineFit } from "./line-fit";
import { t90 } from "./line-settings";
import type { LoadSpeedLine } from "./load-speed-line";

/** Speed of a first set at a load, m/s, with its 90 % prediction interval. */
export type ExpectedSpeed = {
  readonly speed: number;
  readonly low: number;
  readonly high: number;
};

/**
 * Speed that a load usually moves at, and the interval in which nine of ten new sets fall: the line's
 * own uncertainty, the day's and the set's together, speed ± t·√(SE² + daySd² + setSd²).
 */
export function expectedSpeed(
  line: LineFit & Pick<LoadSpeedLine, "daySd" | "setSd">,
  loadKg: number,
): ExpectedSpeed {
  const { speed, error } = speedOnLine(line, loadKg);
  const half = t90 * Math.sqrt(error ** 2 + line.daySd ** 2 + line.setSd ** 2);
  return { speed, low: speed - half, high: speed + half };
}

/** The line's speed at a load and its standard error, m/s. */
export function speedOnLine(line: LineFit, loadKg: number): { speed: number; error: number } {
  const variance =
    line.interceptVariance + 2 * loadKg * line.covariance + loadKg ** 2 * line.slopeVariance;
  return { speed: line.intercept + line.slope * loadKg, error: Math.sqrt(Math.max(0, variance)) };
}
