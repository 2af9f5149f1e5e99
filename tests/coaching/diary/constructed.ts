import { type Day, dayFromIso } from "../../../src/coaching/calendar/day";
import type { SeasonHold } from "../../../src/coaching/hold/season-hold";
import type { DiaryDay } from "../../../src/coaching/record/diary-day";
import type { Run } from "../../../src/coaching/record/run";

/** Tuesday and Thursday of each week from 7 April 2026. */
export function gymDay(session: number): Day {
  return dayFromIso("2026-04-07")! + 7 * (session >> 1) + 2 * (session % 2);
}

/** A judged season with one value (or a jump beside it) by session, percent; the wobble is 3 %. */
export function seasonOf(
  percents: readonly (number | null)[],
  day: (session: number) => Day = gymDay,
  jump: readonly (number | null)[] | null = null,
): SeasonHold {
  const measure = {
    kind: "bar speed",
    of: "back squat",
    baselineRows: 6,
    rowsAfter: percents.length - 6,
    rowsSince: 4,
    change: 0,
    changeError: 1,
    wobble: 3,
    baselineValue: 0.7,
    nowValue: 0.7,
  } as const;
  return {
    athlete: "Priya Tellander",
    asOf: day(percents.length - 1),
    word: "holding",
    sinceDay: null,
    sinceFrom: null,
    sinceTo: null,
    value: measure,
    measures: jump ? [measure, { ...measure, kind: "jump height", of: "box jump" }] : [measure],
    visibleFall: 3,
    evidenceLow: 0,
    evidenceHigh: 0,
    limit: 2,
    baseline: { from: day(0), to: day(5), sessions: 6, own: false },
    sessions: percents.map((percent, s) => ({
      day: day(s),
      inBaseline: s < 6,
      percents: jump ? [percent, jump[s]!] : [percent],
    })),
    needed: [],
    notes: [],
  };
}

export function diaryDay(day: Day, said: Partial<DiaryDay> = {}): DiaryDay {
  return {
    row: 2,
    day,
    minute: null,
    athlete: "Priya Tellander",
    sleepH: null,
    sleepQuality: null,
    soreness: null,
    fatigue: null,
    stress: null,
    mood: null,
    carbsInSession: null,
    foodNote: "",
    newToday: "",
    note: "",
    private: false,
    ...said,
  };
}

export function run(day: Day, minutes: number | null, exertion: number | null): Run {
  return {
    row: 2,
    day,
    minute: null,
    athlete: "Priya Tellander",
    kind: "easy",
    minutes,
    exertion,
    km: null,
  };
}
