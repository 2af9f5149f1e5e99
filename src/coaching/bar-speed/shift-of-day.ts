import type { LineFit } from "./line-fit";
import type { LoadSpeedLine } from "./load-speed-line";

/**
 * How far the whole line lies higher or lower today, m/s: the mean distance of today's sets from the
 * line, drawn toward none by what a set's own error may account for,
 * daySd²/(daySd² + setSd²/sets).
 *
 * @param sets today's marker or first work sets, at least one
 */
export function shiftOfDay(
  line: LineFit & Pick<LoadSpeedLine, "daySd" | "setSd">,
  sets: readonly { readonly loadKg: number; readonly speed: number }[],
): number {
  let sum = 0;
  for (const { loadKg, speed } of sets) sum += speed - line.intercept - line.slope * loadKg;
  const trust = line.daySd ** 2 / (line.daySd ** 2 + line.setSd ** 2 / sets.length);
  return (trust * sum) / sets.length;
}

/** Load, kg, that moves at a speed on the line shifted by so many m/s. */
export function loadAtSpeed(line: LineFit, speed: number, shift = 0): number {
  return (speed - line.intercept - shift) / line.slope;
}
