import { studentLimit } from "../../../statistics/limits";
import { speedOnLine } from "../../bar-speed/expected-speed";
import { usualLineSettings } from "../../bar-speed/line-settings";
import type { LoadSpeedLine } from "../../bar-speed/load-speed-line";

/**
 * How far under its usual speed a set at a load may fall and still be usual for an athlete, m/s: half
 * the 80 % prediction interval of one set on a new day, t·√(SE² + day SD² + set SD²). One ordinary day
 * in ten falls under it, as many as are called below usual. At the usual spreads it is about 0.06 m/s,
 * where the first band of the load drop begins.
 */
export function usualWidth(line: LoadSpeedLine, loadKg: number): number {
  const { error } = speedOnLine(line, loadKg);
  const spread = Math.sqrt(error ** 2 + line.daySd ** 2 + line.setSd ** 2);
  return studentLimit(80, usualLineSettings.spreadFreedom) * spread;
}
