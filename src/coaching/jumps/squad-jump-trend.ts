import { accept, type Outcome, refuse } from "../../outcome";
import { normalDeviate } from "../../statistics/limits";
import { judgedSeason } from "../hold/judged-season";
import { jumpMeasure } from "../hold/measures/jump-measure";
import type { SeasonHold } from "../hold/season-hold";
import { type AthleteSeason, laidOut } from "../hold/squad-seasons";
import { squadYardsticks } from "../hold/yardsticks/squad-yardsticks";
import type { Athlete } from "../record/athlete";
import { nameKey } from "../record/name-key";
import type { Plate } from "../record/plate";
import type { SquadRules } from "../record/squad-rules";
import { baselineWindow } from "../series/baseline-window";
import { seasonStart as usualSeasonStart } from "../series/season-start";
import type { SquadIndex } from "../series/squad-index";
import { heightStep } from "./height-step";
import type { JumpTrend } from "./jump-trend";
import { type TestDay, testDays } from "./test-day";

/**
 * Every athlete's trend in one jump test on the index's last day, judged as a season with this one
 * measure; ask by name.
 *
 * Refuses `athlete-not-in-jumps`, `no-such-test` for this athlete and `test-without-heights`.
 */
export function squadJumpTrend({
  index,
  test,
  plates,
  athletes,
  rules,
  seasonStart = usualSeasonStart(index),
}: {
  readonly index: SquadIndex;
  readonly test: string;
  readonly plates: readonly Plate[];
  /** Rows of the Athletes table, for baseline dates and experience; may be empty. */
  readonly athletes: readonly Athlete[];
  readonly rules: SquadRules;
  readonly seasonStart?: number;
}): (athlete: string) => Outcome<JumpTrend> {
  const key = nameKey(test);
  const details = new Map(athletes.map((one) => [nameKey(one.athlete), one]));
  const seasons = new Map<string, { season: AthleteSeason; days: readonly TestDay[] }>();
  for (const rows of index.athletes.values()) {
    const days = testDays(rows.jumps.get(key) ?? [], plates);
    const tested = days.flatMap(({ day, heightCm }) => (heightCm === null ? [] : [day]));
    const own = details.get(rows.key);
    const window = baselineWindow(tested, seasonStart, rules.baselineSessions, own);
    const range = { from: window.from, baselineTo: window.to };
    const measure = jumpMeasure("jump height", test, days, range);
    const season = laidOut({
      rows,
      // Gym sessions a week say nothing about how often this test is taken.
      details: own && { ...own, sessionsAWeek: null },
      window,
      measures: measure ? [measure] : [],
      notes: [],
    });
    seasons.set(rows.key, { season, days });
  }
  const yardsticks = squadYardsticks([...seasons.values()].map(({ season }) => season));
  return (name) => {
    const rows = index.of(name);
    if (!rows) return refuse("athlete-not-in-jumps", { athlete: name });
    if (!rows.jumps.has(key)) return refuse("no-such-test", { athlete: rows.athlete, test });
    const { season, days } = seasons.get(rows.key)!;
    if (days.every(({ heightCm }) => heightCm === null)) {
      return refuse("test-without-heights", { athlete: rows.athlete, test });
    }
    return accept(trend(judgedSeason(season, yardsticks, rules, index.asOf), season, days));
  };
}

function trend(hold: SeasonHold, season: AthleteSeason, days: readonly TestDay[]): JumpTrend {
  const heights = new Map(days.map(({ day, heightCm }) => [day, heightCm]));
  const { sessions } = season;
  // The baseline the word rests on: it may run on to a third test day.
  const ended = hold.value?.baselineRows ?? season.baselineSessions;
  const baseline = sessions.slice(0, ended);
  const after = sessions.slice(ended);
  const { sinceDay } = hold;
  const now = sinceDay === null ? after.slice(-4) : after.filter((day) => day >= sinceDay);
  const mean = (of: readonly number[]) =>
    of.length === 0 ? null : of.reduce((sum, day) => sum + heights.get(day)!, 0) / of.length;
  const baselineCm = mean(baseline);
  const nowCm = mean(now);
  const wobble = hold.value ? hold.value.wobble / 100 : null;
  const both = baselineCm !== null && nowCm !== null;
  return {
    word: hold.word,
    baselineCm,
    nowCm,
    change: both ? nowCm / baselineCm - 1 : null,
    smallestChange:
      both && wobble !== null
        ? normalDeviate(0.95) * wobble * Math.sqrt(1 / baseline.length + 1 / now.length)
        : null,
    wobble,
    sinceDay,
    baselineDays: baseline.length,
    nowDays: now.length,
    daysNeeded: hold.needed[0]?.rows ?? 0,
    stepCm: heightStep(days.filter(({ day }) => sessions.includes(day))),
    notes: hold.notes,
  };
}
