import { studentLimit } from "../../statistics/limits";
import { speedOnLine } from "../bar-speed/expected-speed";
import { usualLineSettings } from "../bar-speed/line-settings";
import type { LoadSpeedLine } from "../bar-speed/load-speed-line";

/**
 * Slowest speed still usual for an athlete at a load, m/s: the low end of the 80 % prediction interval
 * of one set on a new day, speed − t·√(SE² + day SD² + set SD²). One ordinary day in ten falls under
 * it, as many as are called below usual. At the usual spreads it lies about 0.06 m/s under the line,
 * where the first band of the load drop begins.
 */
export function usualLow(line: LoadSpeedLine, loadKg: number): number {
  const { speed, error } = speedOnLine(line, loadKg);
  const spread = Math.sqrt(error ** 2 + line.daySd ** 2 + line.setSd ** 2);
  return speed - studentLimit(80, usualLineSettings.spreadFreedom) * spread;
}
