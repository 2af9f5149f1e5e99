import { expectedSpeed, speedOnLine } from "../../../src/coaching/bar-speed/expected-speed";
import { squadLines } from "../../../src/coaching/bar-speed/squad-lines";
import { strengthEstimate } from "../../../src/coaching/bar-speed/strength-estimate";
import { squadHold } from "../../../src/coaching/hold/squad-hold";
import { type SquadRules, usualRules } from "../../../src/coaching/record/squad-rules";
import { holdWords } from "../../../src/words/reasons-hold";
import type { SimulatedSquad } from "./squad";

/** What the product says of one athlete after one session. */
export type Said = {
  readonly word: string;
  /** Session that the word's date is, −1 without one. */
  readonly since: number;
  /** The loss that would show, percent; null before there is a word. */
  readonly visibleFall: number | null;
  /** Speed expected before the session for its load, m/s; null without a line. */
  readonly expected: { readonly speed: number; readonly low: number; readonly high: number } | null;
  /** Strength after the session, kg: the line's figure, and the estimate where it is not refused. */
  readonly lineKg: number | null;
  readonly estimate: { readonly kg: number; readonly low: number; readonly high: number } | null;
};

const exercise = "back squat";

/**
 * Asks after every session, on its day and with the rows up to it, as a coach's sheet would.
 *
 * @param withLines also ask for speeds and strength, which takes as long again
 * @returns by athlete and session
 */
export function productSays(
  squad: SimulatedSquad,
  withLines: boolean,
  rules: SquadRules = usualRules,
): readonly Said[][] {
  const { athletes, details, days, upTo } = squad;
  const said: Said[][] = athletes.map(() => []);
  const places = athletes.map(
    ({ sessions }) => new Map(sessions.map(({ day }, place) => [day, place])),
  );
  let linesBefore: ReturnType<typeof squadLines> | null = null;
  for (const day of days) {
    const index = upTo(day);
    const hold = squadHold({ index, plates: [], athletes: details, rules });
    const lines = withLines ? squadLines({ index, exercise }) : null;
    athletes.forEach(({ name, sessions }, a) => {
      const place = places[a]!.get(day);
      if (place === undefined) return;
      const season = hold.of(name);
      const before = linesBefore?.(name);
      const now = lines?.(name);
      const strength = now?.ok ? strengthEstimate(now.value, rules.minimumSpeed) : null;
      said[a]!.push({
        word: holdWords(season),
        visibleFall: season.visibleFall,
        since: season.sinceDay === null ? -1 : places[a]!.get(season.sinceDay)!,
        expected: before?.ok ? expectedSpeed(before.value, sessions[place]!.loadKg) : null,
        lineKg: now?.ok
          ? (rules.minimumSpeed - speedOnLine(now.value, 0).speed - now.value.firstSet.offset) /
            now.value.slope
          : null,
        estimate: strength?.ok ? strength.value : null,
      });
    });
    linesBefore = lines;
  }
  return said;
}
