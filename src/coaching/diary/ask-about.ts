import type { Day } from "../calendar/day";
import type { UnusualDay } from "./unusual-day";

/** An athlete remembers what was different for about four weeks (common practice, no source). */
const rememberedDays = 28;

/**
 * The unusual days most worth asking the athlete about: those still remembered before older ones,
 * among them days with words of pain or illness first, then the furthest from usual.
 */
export function askAbout(days: readonly UnusualDay[], asOf: Day, count = 3): readonly UnusualDay[] {
  const old = ({ day }: UnusualDay) => Number(asOf - day > rememberedDays);
  const unwell = ({ written }: UnusualDay) =>
    Number(written.some(({ symptoms }) => symptoms.length > 0));
  return [...days]
    .sort(
      (a, b) =>
        old(a) - old(b) ||
        unwell(b) - unwell(a) ||
        Math.abs(b.size) - Math.abs(a.size) ||
        b.day - a.day,
    )
    .slice(0, count);
}
