import { seasonLimit } from "../../../src/coaching/hold/evidence/season-limit";
import { fallenValue, holdMeasure, valueThatMoved } from "../../../src/coaching/hold/hold-measure";
import { judgedSeason } from "../../../src/coaching/hold/judged-season";
import { plannedSessions } from "../../../src/coaching/hold/measures/planned-sessions";
import type { HoldMeasure, SeasonHold } from "../../../src/coaching/hold/season-hold";
import { squadHold } from "../../../src/coaching/hold/squad-hold";
import type { AthleteSeason } from "../../../src/coaching/hold/squad-seasons";
import { squadSeasons } from "../../../src/coaching/hold/squad-seasons";
import { watchedSeason } from "../../../src/coaching/hold/watched-season";
import type { LevelPrior } from "../../../src/coaching/hold/yardsticks/last-season-level";
import type { SquadYardsticks } from "../../../src/coaching/hold/yardsticks/squad-yardsticks";
import { squadYardsticks } from "../../../src/coaching/hold/yardsticks/squad-yardsticks";
import type { Athlete } from "../../../src/coaching/record/athlete";
import { usualRules } from "../../../src/coaching/record/squad-rules";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { athleteRow, inventedSeason, sessionDay } from "../series/invented-season";

const name = "Ilka Brandmoor";
const holdOf = (
  rows: ReturnType<typeof inventedSeason>,
  of: Partial<Athlete> = {},
  rules = usualRules,
  asOf = sessionDay(29),
) =>
  squadHold({
    index: squadIndex(rows, asOf),
    plates: [],
    athletes: [athleteRow({ athlete: name, ...of })],
    rules,
  }).of(name);

test("a rise has its likeliest first session, and days that hold it", () => {
  const rise = holdOf(inventedSeason(name, 30, (s) => (s < 14 ? 1 : 1.08)));
  expect(rise.word).toBe("rising");
  expect(Math.abs(rise.sinceDay! - sessionDay(14))).toBeLessThanOrEqual(7);
  expect(rise.sinceFrom!).toBeLessThanOrEqual(sessionDay(14));
  expect(rise.sinceTo!).toBeGreaterThanOrEqual(sessionDay(14));
  expect(rise.evidenceHigh).toBeGreaterThan(rise.limit);
  expect(rise.evidenceLow).toBeLessThan(rise.limit);
  const fall = holdOf(inventedSeason(name, 30, (s) => (s < 14 ? 1 : 0.92)));
  expect(fall.word).toBe("slipping");
  expect(fall.evidenceLow).toBeGreaterThan(fall.limit);
});

test("while there are too few rows for a word no fall is said to be one that would show", () => {
  const young = holdOf(inventedSeason(name, 7));
  expect(young).toMatchObject({ word: "too few rows", visibleFall: null });
  expect(young.measures).not.toEqual([]);
  expect(holdOf(inventedSeason(name, 8)).visibleFall).not.toBeNull();
});

/** A squad's fallen season, judged as it is and with something of it changed. */
const judgedWith = (change: (season: AthleteSeason, yardsticks: SquadYardsticks) => SeasonHold) => {
  const rows = inventedSeason(name, 20, (s) => (s < 12 ? 1 : 0.94));
  // The bar is heavier by far since then, and slower by what the usual line says.
  const sets = rows.sets.map((set) =>
    set.day > sessionDay(11)
      ? { ...set, loadKg: set.loadKg! + 25, repSpeeds: set.repSpeeds.map((v) => v! - 0.29) }
      : set,
  );
  const index = squadIndex({ sets }, sessionDay(19));
  const [season] = squadSeasons({
    ...{ index, athletes: [], plates: [], seasonStart: sessionDay(0), baselineSessions: 6 },
  });
  return change(season!, squadYardsticks([season!]));
};
const judge = (season: AthleteSeason, yardsticks: SquadYardsticks) =>
  judgedSeason(season, yardsticks, usualRules, sessionDay(19));

const withoutDoubt = (season: AthleteSeason): AthleteSeason => ({
  ...season,
  measures: season.measures.map((one) => ({ ...one, loadErrors: null })),
});
const said = (level: LevelPrior | null) => (season: AthleteSeason, yardsticks: SquadYardsticks) =>
  judge(season, { ...yardsticks, levelsOf: () => [level] });

test("a fall at loads far from the baseline's is believed less, for the slope is not sure", () => {
  const asIs = judgedWith(said(null));
  const sure = judgedWith((season, yardsticks) => said(null)(withoutDoubt(season), yardsticks));
  expect(asIs.evidenceLow).toBeLessThan(0.9 * sure.evidenceLow);
});

test("what last season says of the level is part of the judgement", () => {
  const evidence = (level: LevelPrior | null) =>
    judgedWith((season, yardsticks) => said(level)(withoutDoubt(season), yardsticks)).evidenceLow;
  // The usual level was higher still, or already as low.
  expect(evidence({ mean: 3, variance: 4 })).toBeGreaterThan(1.1 * evidence(null));
  expect(evidence({ mean: -5, variance: 4 })).toBeLessThan(0.9 * evidence(null));
});

test("a season that holds has no first day of a change", () => {
  const calm = holdOf(inventedSeason(name, 30));
  expect(calm).toMatchObject({
    word: "holding",
    sinceDay: null,
    sinceFrom: null,
    sinceTo: null,
    baseline: { from: sessionDay(0), to: sessionDay(5), sessions: 6, own: false },
  });
});

test("own dates without a session among them are a baseline of none", () => {
  const rows = inventedSeason(name, 12);
  const before = { baselineFrom: sessionDay(0) - 9, baselineTo: sessionDay(0) - 2 };
  expect(holdOf(rows, before)).toMatchObject({
    word: "too few rows",
    visibleFall: null,
    baseline: { from: null, to: null, sessions: 0, own: true },
  });
});

test("the chart has every session, the baseline's marked, each value about the baseline's mean", () => {
  const rows = inventedSeason(name, 12);
  const { sessions, measures } = holdOf(rows);
  expect(sessions.map(({ day }) => day)).toEqual(
    Array.from({ length: 12 }, (_, s) => sessionDay(s)),
  );
  expect(sessions.filter(({ inBaseline }) => inBaseline)).toEqual(sessions.slice(0, 6));
  // Jump heights are on a log scale: their mean over the baseline is the geometric one.
  const heights = rows.jumps.filter(({ test }) => test === "box jump").map((j) => j.heightCm!);
  const usual = Math.exp(heights.slice(0, 6).reduce((sum, cm) => sum + Math.log(cm), 0) / 6);
  const at = measures.findIndex(({ kind }) => kind === "jump height");
  expect(measures[at]!.baselineValue).toBeCloseTo(usual, 9);
  for (const [s, { percents }] of sessions.entries()) {
    expect(percents[at]).toBeCloseTo(100 * (heights[s]! / usual - 1), 9);
  }
  // Drop jumps were done on every fourth session.
  const contacts = sessions.map(({ percents }) => percents[2]);
  expect(contacts.map((percent) => percent !== null)).toEqual(
    Array.from({ length: 12 }, (_, s) => s % 4 === 0),
  );
});

test("without a change, now is the last four readings after the baseline", () => {
  const rows = inventedSeason(name, 20);
  const jump = holdOf(rows).measures.find(({ kind }) => kind === "jump height")!;
  const heights = rows.jumps.filter(({ test }) => test === "box jump").map((j) => j.heightCm!);
  const last = Math.exp(heights.slice(-4).reduce((sum, cm) => sum + Math.log(cm), 0) / 4);
  expect(jump).toMatchObject({ baselineRows: 6, rowsAfter: 14, rowsSince: 4 });
  expect(jump.nowValue).toBeCloseTo(last, 9);
  expect(jump.change).toBeCloseTo(100 * (last / jump.baselineValue - 1), 9);
  expect(jump.changeError! / jump.wobble).toBeCloseTo(Math.sqrt(1 / 4 + 1 / 6), 9);
});

const missing = Number.NaN;
test("readings missed do not count among the last four, and none at all say nothing", () => {
  const values = (...after: number[]) => [0, 0, 0, ...after];
  const read = (...after: number[]) => {
    const watched = watchedSeason([{ values: values(...after), squadError: 3 }], 3, 20);
    const season = {
      measures: [
        {
          kind: "bar speed",
          of: "squat",
          plainPercent: (p: number) => 2 * p,
          valueAt: (p: number) => p,
        },
      ],
    } as unknown as AthleteSeason;
    return holdMeasure(season, watched, 0, null);
  };
  expect(read(9, 1, missing, 2, 3, missing, 4, missing)).toMatchObject({
    rowsSince: 4,
    rowsAfter: 5,
    nowValue: 2.5,
  });
  expect(read(9, 5, missing)).toMatchObject({ rowsSince: 2, rowsAfter: 2, nowValue: 7 });
  expect(read(missing, missing)).toMatchObject({
    rowsSince: 0,
    rowsAfter: 0,
    change: null,
    changeError: null,
    nowValue: null,
  });
});

const measure = (change: number | null, changeError: number | null = 1, of = "squat") =>
  ({ kind: "bar speed", of, change, changeError }) as HoldMeasure;

test("the value that moved most against its uncertainty, on the word's side, is named", () => {
  const first = measure(-2);
  const most = measure(-6, 2);
  const up = measure(5);
  const none = measure(null, null);
  const unsure = measure(-8, 5);
  const all = [first, none, most, unsure, up];
  expect(valueThatMoved(all, "slipping")).toBe(most);
  expect(valueThatMoved(all, "rising")).toBe(up);
  expect(valueThatMoved(all, "holding")).toBe(first);
  // A value without a session since the baseline says nothing of it.
  expect(valueThatMoved([none, up], "holding")).toBe(up);
  expect(valueThatMoved([none], "holding")).toBe(none);
  expect(valueThatMoved([measure(-3), measure(-3, 1, "bench")], "slipping")?.of).toBe("squat");
  expect(valueThatMoved([none, up], "rising")).toBe(up);
  expect(valueThatMoved([], "slipping")).toBeNull();
});

test("with another tool since the baseline, the jumps that are still followed say what holds", () => {
  const rows = inventedSeason(name, 16);
  const sets = rows.sets.map((set) =>
    set.day > sessionDay(5) ? { ...set, tool: "bar tool B" } : set,
  );
  const { word, value } = holdOf({ ...rows, sets });
  expect(word).toBe("holding");
  expect(value).toMatchObject({ kind: "jump height", rowsSince: 4 });
});

test("a value last compared over two weeks ago is not what holds while another is read, alone it still is", () => {
  const rows = inventedSeason(name, 30);
  const since = (first: number) =>
    rows.sets.map((set) => (set.day >= sessionDay(first) ? { ...set, tool: "bar tool B" } : set));
  const last = sessionDay(29);
  const kept = [29, 28, 27, 26, 25, 24, 23, 22, 21, 20].find((s) => last - sessionDay(s - 1) > 14)!;
  expect(holdOf({ ...rows, sets: since(kept + 1) }).value!.kind).toBe("bar speed");
  expect(holdOf({ ...rows, sets: since(kept) }).value!.kind).toBe("jump height");
  expect(holdOf({ ...rows, jumps: [], sets: since(kept) }).value!.kind).toBe("bar speed");
  // Jumps begun since have no baseline that they could hold.
  const late = rows.jumps.filter((jump) => jump.day > sessionDay(26));
  expect(holdOf({ ...rows, jumps: late, sets: since(kept) }).value?.kind).toBe("bar speed");
});

/** Sessions so many days apart, six of them the baseline. */
const planned = (count: number, apart: number, sessionsAWeek: number | null, weeks = 20) =>
  plannedSessions(
    {
      sessions: Array.from({ length: count }, (_, s) => 20_000 + apart * s),
      baselineSessions: Math.min(6, count),
      details: sessionsAWeek === null ? undefined : { sessionsAWeek },
    } as unknown as AthleteSeason,
    weeks,
  );

test("sessions planned are weeks times sessions a week less the baseline, as the table says or as seen", () => {
  expect(planned(10, 3, 3)).toBe(20 * 3 - 6);
  // 15 sessions over 14 × 4 + 1 days: 15/(57/7) a week.
  expect(planned(15, 4, null)).toBe(Math.round((20 * 15 * 7) / 57) - 6);
  // Two sessions of one week are two a week, not more; one a month is one a week.
  expect(planned(2, 1, null)).toBe(2 * 20 - 2);
  expect(planned(10, 30, null)).toBe(20 - 6);
});

test("at least eight are planned, and never fewer than were done", () => {
  expect(planned(7, 7, 1, 10)).toBe(8);
  expect(planned(40, 3, 1, 10)).toBe(34);
  expect(planned(0, 1, 2)).toBe(8);
});

test("the season's limit is that of the sessions planned and the values followed", () => {
  const rows = inventedSeason(name, 30);
  const rules = { ...usualRules, seasonWeeks: 24, falseFlagRate: 0.1 };
  expect(holdOf(rows, { sessionsAWeek: 2 }, rules).limit).toBeCloseTo(
    seasonLimit(0.1, 2 * 24 - 6, 3),
    12,
  );
});

test("beside holding the value is named that has clearly fallen by as much as would show, if one has", () => {
  const jump = measure(-9, 2, "box jump");
  const all = [measure(1), measure(-6, 2, "bench"), jump];
  expect(fallenValue(all, 5)).toBe(jump);
  expect(fallenValue(all, 9)).toBe(jump);
  expect(fallenValue(all, 9.1)).toBeNull();
  // Two standard errors at least.
  expect(fallenValue([measure(-6, 3)], 5)?.change).toBe(-6);
  expect(fallenValue([measure(-6, 3.1)], 5)).toBeNull();
  expect(fallenValue([measure(null, null), measure(-9, null)], 5)).toBeNull();
  expect(fallenValue(all, null)).toBeNull();
});

test("a jump that fell while the bar holds its speed is what is told of a holding athlete", () => {
  const rows = inventedSeason(name, 28);
  const weekly = rows.jumps.filter(({ day, test }) => test === "box jump" && day % 7 === 5);
  const season = (level: number) =>
    holdOf({
      sets: rows.sets,
      jumps: weekly.map((one) => ({
        ...one,
        heightCm: one.heightCm! * (one.day > sessionDay(20) ? level : 1),
      })),
    });
  const fallen = season(0.92);
  expect(fallen.word).toBe("holding");
  expect(fallen.value).toMatchObject({ kind: "jump height", of: "box jump" });
  expect(season(1).value?.kind).toBe("bar speed");
});
