import { speedOnLine } from "../../../src/coaching/bar-speed/expected-speed";
import { lineFit } from "../../../src/coaching/bar-speed/line-fit";
import { usualLineSettings } from "../../../src/coaching/bar-speed/line-settings";
import { lineRows } from "../../../src/coaching/bar-speed/squad-lines";
import {
  moreIsWorse,
  usualReadinessSettings as usual,
  usualSpread,
} from "../../../src/coaching/readiness/readiness-settings";
import { speedToday } from "../../../src/coaching/readiness/speed-today";
import { squadReadiness } from "../../../src/coaching/readiness/squad-readiness";
import { squadSpreads } from "../../../src/coaching/readiness/squad-spreads";
import type { DiaryDay } from "../../../src/coaching/record/diary-day";
import { exerciseKey } from "../../../src/coaching/record/exercise-key";
import type { JumpAttempt } from "../../../src/coaching/record/jump-attempt";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { diaryDay } from "../diary/constructed";
import { inventedSeason, jumpAttempt, liftingSet } from "../series/invented-season";

const today = 20_600;
const athlete = "Ilka Brandmoor";
type Rows = { sets?: LiftingSet[]; jumps?: JumpAttempt[]; diary?: DiaryDay[] };
const read = (rows: Rows) =>
  squadReadiness({ index: squadIndex(rows, today), plates: [] })(athlete);
const only = (rows: Rows) => {
  const { parts } = read(rows);
  expect(parts).toHaveLength(1);
  return parts[0]!;
};
/** What was done on so many days before today and on it, 0 being today. */
const on = <Row>(daysAgo: readonly number[], one: (day: number, ago: number) => Row) =>
  daysAgo.map((ago) => one(today - ago, ago));
const weekly = (weeks: number) => Array.from({ length: weeks + 1 }, (_, at) => 7 * (weeks - at));

const boxJumps = (daysAgo: readonly number[], last = 40) =>
  on(daysAgo, (day, ago) => jumpAttempt({ day, heightCm: ago === 0 ? last : 40 }));
const dropJumps = (daysAgo: readonly number[], last = 0.2, of: Partial<JumpAttempt> = {}) =>
  on(daysAgo, (day, ago) =>
    jumpAttempt({ day, test: "drop jump", contactS: ago === 0 ? last : 0.2, ...of }),
  );

test("a jump a quarter lower says what it was and is usually, in centimetres", () => {
  expect(only({ jumps: boxJumps(weekly(6), 30) })).toMatchObject({
    part: "jump",
    of: "box jump",
    unit: "cm",
    today: expect.closeTo(30, 9),
    usual: expect.closeTo(40, 9),
    pastRows: 6,
  });
  expect(read({ jumps: boxJumps(weekly(6), 30) })).toMatchObject({
    word: "well below usual",
    reason: { part: "jump" },
  });
});

test("a contact that lengthened is below usual, in seconds", () => {
  const contact = only({ jumps: dropJumps(weekly(6), 0.26) });
  expect(contact).toMatchObject({ of: "drop jump", unit: "s", usual: expect.closeTo(0.2, 9) });
  expect(contact.today).toBeCloseTo(0.26, 9);
  expect(contact.z).toBeLessThan(-2);
});

test("of two tests on a day the one with more earlier days speaks, of equals the height", () => {
  const six = weekly(6);
  const speaking = (jumps: JumpAttempt[]) => only({ jumps }).of;
  expect(speaking([...boxJumps(six), ...dropJumps(six)])).toBe("box jump");
  expect(speaking([...dropJumps(six), ...boxJumps(six)])).toBe("box jump");
  expect(speaking([...boxJumps(weekly(5)), ...dropJumps(six)])).toBe("drop jump");
  expect(speaking([...dropJumps(six), ...boxJumps(weekly(5))])).toBe("drop jump");
  // Of two heights the first by name, whichever was written first.
  const hops = boxJumps(six).map((jump) => ({ ...jump, test: "hop" }));
  expect(speaking([...boxJumps(six), ...hops])).toBe("box jump");
  // A height before a contact, whatever they are called.
  expect(speaking([...dropJumps(six), ...hops])).toBe("hop");
  expect(speaking([...hops, ...boxJumps(six)])).toBe("box jump");
  // A test that was not taken today does not speak.
  expect(speaking([...boxJumps(six.slice(0, -1)), ...dropJumps(weekly(4))])).toBe("drop jump");
});

test("a test with two earlier days asks for two more, one from a new drop for all four", () => {
  expect(read({ jumps: boxJumps(weekly(2)) }).needed).toEqual([
    { part: "jump", of: "box jump", rows: 2 },
  ]);
  const higher = dropJumps([0], 0.2, { dropCm: 45 });
  const drops = [...dropJumps(weekly(6).slice(0, -1), 0.2, { dropCm: 30 }), ...higher];
  expect(read({ jumps: drops }).needed).toEqual([{ part: "jump", of: "drop jump", rows: 4 }]);
});

const nights = (daysAgo: readonly number[], of: (ago: number) => Partial<DiaryDay>) =>
  on(daysAgo, (day, ago) => diaryDay(day, { athlete, ...of(ago) }));

test("sleep is said in hours and soreness in points, each beside the mean of the days before", () => {
  const diary = nights([4, 3, 2, 1, 0], (ago) => ({
    sleepH: ago === 0 ? 5 : 7 + 0.5 * (ago % 2),
    soreness: ago === 0 ? 5 : 2,
  }));
  const { parts } = read({ diary });
  expect(parts).toMatchObject([
    { part: "sleep", of: "", unit: "h", today: 5, usual: 7.25, pastRows: 4 },
    { part: "soreness", of: "", unit: "points", today: 5, usual: 2, pastRows: 4 },
  ]);
  // Short of sleep and sore are both bad.
  for (const { z } of parts) expect(z).toBeLessThan(-1);
});

test("a diary item with one earlier night asks for three more, one left blank today for none", () => {
  const diary = nights([1, 0], (ago) => ({ sleepH: 7, mood: ago === 0 ? null : 3 }));
  expect(read({ diary }).needed).toEqual([{ part: "sleep", of: "", rows: 3 }]);
});

const work = (day: number, of: Partial<LiftingSet> = {}) => liftingSet({ day, set: 1, ...of });
const marker = (day: number) =>
  liftingSet({ day, set: null, kind: "marker", loadKg: 40, repSpeeds: [0.94] });

test("without a marker today the earlier first sets speak where four days have one, else all days", () => {
  const markers = on([28, 25, 21, 18, 14, 11, 7, 4], marker);
  const with4 = [...markers, ...on([28, 21, 14, 7, 0], (day) => work(day))];
  expect(only({ sets: with4 }).pastRows).toBe(4);
  const with3 = [...markers, ...on([21, 14, 7, 0], (day) => work(day))];
  expect(only({ sets: with3 }).pastRows).toBe(8);
});

test("a bar is held against the twenty latest sessions of the last eight weeks, to the day", () => {
  const sets = (daysAgo: readonly number[]) => on(daysAgo, (day) => work(day));
  expect(only({ sets: sets([57, 56, 40, 30, 20, 0]) }).pastRows).toBe(4);
  expect(only({ sets: sets(Array.from({ length: 26 }, (_, at) => 50 - 2 * at)) }).pastRows).toBe(
    20,
  );
});

test("sets without a load are no session to hold a bar against, and no bar today", () => {
  const loaded = on([35, 28, 21, 14, 0], (day) => work(day));
  const blank = [work(today - 7, { loadKg: null })];
  expect(only({ sets: [...loaded, ...blank] }).pastRows).toBe(4);
  const noneToday = [...loaded.slice(0, -1), work(today, { loadKg: null })];
  expect(read({ sets: noneToday })).toMatchObject({ parts: [], needed: [] });
});

test("of two lifts of the day the one with more earlier sessions speaks, whichever stands first", () => {
  const squats = on(weekly(6), (day) => work(day));
  const presses = on(weekly(4), (day) => work(day, { exercise: "bench press", loadKg: 40 }));
  expect(only({ sets: [...presses, ...squats] }).of).toBe("back squat");
  expect(only({ sets: [...squats, ...presses] }).of).toBe("back squat");
  // Of two done equally often the first by name.
  const rows = on(weekly(6), (day) => work(day, { exercise: "hip thrust" }));
  expect(only({ sets: [...squats, ...rows] }).of).toBe("back squat");
});

/** A lift's earlier days and today, by what the squad knows of it. */
const speedOf = (sets: readonly LiftingSet[]) => {
  const index = squadIndex({ sets }, today);
  const { lift } = squadSpreads(index, [], usual, usualLineSettings);
  const known = lift(exerciseKey("back squat"));
  const own = index.of(athlete)!.lifts.get(exerciseKey("back squat"))!;
  return { own, known, read: speedToday(own, today, known, usual) };
};

test("today's bar is as sure as the line at its load, in percent of the usual speed there", () => {
  const loads = [60, 65, 70, 62.5, 67.5, 72.5];
  const { own, known, read } = speedOf(
    on(weekly(6), (day, ago) =>
      work(day, { loadKg: ago === 0 ? 75 : loads[ago / 7 - 1]!, repSpeeds: [0.6 + 0.001 * ago] }),
    ),
  );
  const line = lineFit(lineRows(own.slice(0, -1)), today, known.prior, known.settings)!;
  expect(read!.lineError).toBeCloseTo((100 * speedOnLine(line, 75).error) / read!.usual, 12);
});

test("a bar so heavy that the line has no speed for it is held against nothing", () => {
  const { read } = speedOf(
    on(weekly(6), (day, ago) =>
      work(
        day,
        ago === 0 ? { loadKg: 400 } : { loadKg: 60 + ago / 7, repSpeeds: [0.7 - ago / 700] },
      ),
    ),
  );
  expect(read).toBeNull();
});

test("a marker lifted after the first work set speaks for its day all the same", () => {
  const { read } = speedOf(on(weekly(6), (day) => [work(day, { set: null }), marker(day)]).flat());
  expect(read!.today).toBe(0.94);
  for (const { value } of read!.past) expect(value).toBeCloseTo(read!.offLine, 9);
});

test("an earlier day is read by its first set, as today is, whatever the later ones moved at", () => {
  const speeds = [0.7, 0.6, 0.55];
  const sets = on(weekly(6), (day) =>
    speeds.map((speed, at) => work(day, { set: at + 1, repSpeeds: [speed] })),
  ).flat();
  const { read } = speedOf(sets);
  expect(read!.past).toHaveLength(6);
  for (const { value } of read!.past) expect(value).toBeCloseTo(read!.offLine, 9);
});

test("what goes together is read from each athlete's most frequent lift and test", () => {
  const { sets, jumps } = inventedSeason(athlete, 20);
  const knows = (rows: Rows) =>
    squadSpreads(squadIndex(rows, sets.at(-1)!.day + 1), [], usual, usualLineSettings);
  const seen = knows({ sets, jumps }).ties();
  expect(seen.speedWithJump).not.toBe(usual.speedWithJump);
  expect(seen.withDiary).toBe(usual.withDiary);
  const press = work(sets.at(-1)!.day, { exercise: "bench press" });
  expect(knows({ sets: [press, ...sets], jumps }).ties()).toEqual(seen);
  expect(knows({ sets: [...sets, press], jumps }).ties()).toEqual(seen);
  // Of two lifts done equally often, the first by name.
  const even = sets.map((set, s) => ({
    ...set,
    exercise: "hip thrust",
    repSpeeds: [0.7 + 0.01 * (s % 5)],
  }));
  expect(knows({ sets: [...sets, ...even], jumps }).ties()).toEqual(seen);
  expect(knows({ sets }).ties().speedWithJump).toBe(usual.speedWithJump);
  expect(knows({ jumps }).ties().speedWithJump).toBe(usual.speedWithJump);
});

test("a lift, test or item nobody has leaves the usual spread", () => {
  const { speed, jump, item } = squadSpreads(
    squadIndex(inventedSeason(athlete, 8), today),
    [],
    usual,
    usualLineSettings,
  );
  expect(speed("hip thrust")).toBeCloseTo(usualSpread.speed.sd, 12);
  expect(jump("hop")).toBeCloseTo(usualSpread.jump.sd, 12);
  expect(item("mood")).toBeCloseTo(usualSpread.mood.sd, 12);
});

test("whatever is asked in points wobbles alike until the squad's own rows say more", () => {
  const { item } = squadSpreads(squadIndex({ sets: [] }, today), [], usual, usualLineSettings);
  const inPoints = ["sleep quality", "soreness", "fatigue", "stress", "mood"] as const;
  expect(inPoints.map(item)).toEqual(inPoints.map(() => expect.closeTo(0.7, 12)));
  expect(inPoints.map((one) => usualSpread[one].least)).toEqual(inPoints.map(() => 0.5));
  expect([...moreIsWorse]).toEqual(["soreness", "fatigue", "stress"]);
});
