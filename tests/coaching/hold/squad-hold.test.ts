import { seasonLimit } from "../../../src/coaching/hold/evidence/season-limit";
import { squadHold } from "../../../src/coaching/hold/squad-hold";
import type { Athlete } from "../../../src/coaching/record/athlete";
import { usualRules } from "../../../src/coaching/record/squad-rules";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import {
  athleteRow,
  inventedSeason,
  jumpAttempt,
  liftingSet,
  sessionDay,
} from "../series/invented-season";

type Rows = ReturnType<typeof inventedSeason>;
const squadOf = (...seasons: Rows[]): Rows => ({
  sets: seasons.flatMap(({ sets }) => sets),
  jumps: seasons.flatMap(({ jumps }) => jumps),
});
const holdOf = (rows: Rows, asOf: number, athletes: Athlete[] = []) =>
  squadHold({ index: squadIndex(rows, asOf), plates: [], athletes, rules: usualRules });
const end = sessionDay(29);
const calm = inventedSeason("Ilka Brandmoor", 30);
const fallen = inventedSeason("Tomas Reyerson", 30, (s) => (s < 14 ? 1 : 0.93), 1);
const risen = inventedSeason("Wren Castellow", 30, (s) => 1 + 0.004 * s, 2);

test("a calm season holds, a fall slips from about its day, a steady rise rises", () => {
  const { of } = holdOf(squadOf(calm, fallen, risen), end);
  expect(of("Ilka Brandmoor").word).toBe("holding");
  const slip = of("tomas  REYERSON");
  expect(slip.word).toBe("slipping");
  expect(Math.abs(slip.sinceDay! - sessionDay(14))).toBeLessThanOrEqual(7);
  expect(slip.sinceFrom! <= sessionDay(14) && sessionDay(14) <= slip.sinceTo!).toBe(true);
  expect(slip.value!.change!).toBeGreaterThan(-10);
  expect(slip.value!.change!).toBeLessThan(-4);
  expect(of("Wren Castellow").word).toBe("rising");
});

test("holding names the loss that would show; nothing is needed", () => {
  const hold = holdOf(calm, end).of("Ilka Brandmoor");
  expect(hold.visibleFall!).toBeGreaterThan(1);
  expect(hold.visibleFall!).toBeLessThan(8);
  expect(hold.needed).toEqual([]);
});

test("a novice who holds is level, and a novice's rise stays a rise", () => {
  const novice = (athlete: string) => athleteRow({ athlete, experience: "novice" });
  const { of } = holdOf(squadOf(calm, risen), end, [
    novice("Ilka Brandmoor"),
    novice("Wren Castellow"),
  ]);
  expect(of("Ilka Brandmoor").word).toBe("level");
  expect(of("Wren Castellow").word).toBe("rising");
});

test.each([
  [0, 8],
  [3, 5],
  [5, 3],
  [6, 2],
  [7, 1],
])("after %i sessions %i more are needed", (sessions, more) => {
  const rows = squadOf(inventedSeason("Ilka Brandmoor", sessions), fallen);
  const hold = holdOf(rows, end).of("Ilka Brandmoor");
  expect(hold.word).toBe("too few rows");
  if (sessions === 0) expect(hold.notes[0]!.code).toBe("no-rows");
  else expect(Math.min(...hold.needed.map(({ rows: needed }) => needed))).toBe(more);
});

test("an athlete without rows is told so, under the name asked for", () => {
  expect(holdOf(calm, end).of("Nobody Known")).toEqual({
    athlete: "Nobody Known",
    asOf: end,
    word: "too few rows",
    sinceDay: null,
    sinceFrom: null,
    sinceTo: null,
    value: null,
    measures: [],
    visibleFall: null,
    evidenceLow: 0,
    evidenceHigh: 0,
    limit: seasonLimit(usualRules.falseFlagRate, usualRules.seasonWeeks, 1),
    baseline: { from: null, to: null, sessions: 0, own: false },
    sessions: [],
    needed: [],
    notes: [{ code: "no-rows", facts: { athlete: "Nobody Known" } }],
  });
});

test("with eight sessions there is a word", () => {
  expect(holdOf(inventedSeason("Ilka Brandmoor", 8), end).of("Ilka Brandmoor").word).toBe(
    "holding",
  );
});

test("a new tool that reads 8 % low is said, and never read as a slip", () => {
  const withNewTool = calm.sets.map((set) =>
    set.day < sessionDay(14)
      ? set
      : { ...set, tool: "bar tool B", repSpeeds: set.repSpeeds.map((v) => v! * 0.92) },
  );
  const hold = holdOf({ ...calm, sets: withNewTool }, end).of("Ilka Brandmoor");
  expect(hold.word).toBe("holding");
  expect(hold.notes).toContainEqual({
    code: "setting-changed",
    facts: {
      sessions: 16,
      sinceDay: sessionDay(14),
      what: "tool",
      before: "bar tool A",
      after: "bar tool B",
      ownBaseline: 1,
    },
  });
  expect(hold.measures.find(({ kind }) => kind === "bar speed")!.rowsAfter).toBe(8);
});

test.each([
  ["gym", { gym: "home" }],
  ["speedIs", { speedIs: "peak" }],
  ["barKg", { barKg: 15 }],
] as const)("a change of %s is said as such", (what, change) => {
  const sets = calm.sets.map((set) => (set.day < sessionDay(20) ? set : { ...set, ...change }));
  const hold = holdOf({ ...calm, sets }, end).of("Ilka Brandmoor");
  expect(hold.notes.map(({ code, facts }) => [code, facts.what])).toContainEqual([
    "setting-changed",
    what,
  ]);
});

test("a tool that changes within the baseline is said, and the commoner one is followed", () => {
  const sets = calm.sets.map((set) => (set.day < sessionDay(2) ? { ...set, tool: "old" } : set));
  const hold = holdOf({ ...calm, sets }, end).of("Ilka Brandmoor");
  expect(hold.notes[0]).toMatchObject({
    code: "setting-changed-in-baseline",
    facts: { sessions: 2, before: "bar tool A", after: "old" },
  });
  expect(hold.measures[0]).toMatchObject({ kind: "bar speed", baselineRows: 4 });
});

test("a test taken every fourth session has its own baseline, and says so", () => {
  const hold = holdOf(calm, end).of("Ilka Brandmoor");
  expect(hold.measures.find(({ kind }) => kind === "contact time")).toMatchObject({
    baselineRows: 3,
    rowsAfter: 5,
  });
  expect(hold.notes).toContainEqual({
    code: "baseline-stretched",
    facts: { kind: "contact time", of: "drop jump", to: sessionDay(8) },
  });
});

test("an Achilles: two long contacts running make contact time slip while the squat holds", () => {
  const jumps = calm.jumps.map((jump) =>
    jump.contactS !== null && jump.day >= sessionDay(24)
      ? { ...jump, contactS: jump.day === sessionDay(24) ? 0.221 : 0.243 }
      : jump,
  );
  const hold = holdOf({ ...calm, jumps }, end).of("Ilka Brandmoor");
  expect(hold).toMatchObject({ word: "slipping", value: { kind: "contact time" } });
  expect(hold.value!.change!).toBeLessThan(-12);
  expect(hold.sinceDay).toBe(sessionDay(24));
});

test("one gross misreading is no slip", () => {
  const jumps = calm.jumps.map((jump) =>
    jump.day === sessionDay(20) && jump.heightCm !== null ? { ...jump, heightCm: 20 } : jump,
  );
  expect(holdOf({ ...calm, jumps }, end).of("Ilka Brandmoor").word).toBe("holding");
});

test("own baseline dates count, and setting them anew after a fall makes it hold", () => {
  const { of } = holdOf(fallen, end, [
    athleteRow({
      athlete: "Tomas Reyerson",
      baselineFrom: sessionDay(15),
      baselineTo: sessionDay(20),
    }),
  ]);
  expect(of("Tomas Reyerson")).toMatchObject({
    word: "holding",
    baseline: { from: sessionDay(15), to: sessionDay(20), sessions: 6, own: true },
  });
});

test("own baseline dates with two sessions cannot be followed, and it is said", () => {
  const { of } = holdOf(calm, end, [
    athleteRow({
      athlete: "Ilka Brandmoor",
      baselineFrom: sessionDay(27),
      baselineTo: sessionDay(28),
    }),
  ]);
  expect(of("Ilka Brandmoor").word).toBe("too few rows");
});

test("last season's rows, more than eight weeks back, are not this season's baseline", () => {
  const past = inventedSeason("Ilka Brandmoor", 10, () => 1.2);
  const back = <Row extends { day: number }>(rows: Row[]) =>
    rows.map((row) => ({ ...row, day: row.day - 200 }));
  const both = squadOf(calm, { sets: back(past.sets), jumps: back(past.jumps) });
  const hold = holdOf(both, end);
  expect(hold.seasonStart).toBe(sessionDay(0));
  const alone = holdOf(calm, end).of("Ilka Brandmoor");
  const steadied = hold.of("Ilka Brandmoor");
  expect(steadied.baseline).toEqual(alone.baseline);
  expect(steadied.sessions).toEqual(alone.sessions);
  expect(steadied.word).toBe(alone.word);
  // What they do say is how much the athlete wobbles.
  steadied.measures.forEach((measure, m) => {
    const { change, rowsAfter, wobble } = alone.measures[m]!;
    expect(measure).toMatchObject({ change, rowsAfter });
    expect(measure.wobble).not.toBe(wobble);
    expect(Math.abs(measure.wobble / wobble - 1)).toBeLessThan(0.2);
  });
});

test("many athletes falling from one date in bars and jumps alike are told that no one tool does that", () => {
  const seasons = [0, 1, 2, 3].map((seed) =>
    inventedSeason(`Athlete ${seed}`, 30, (s) => (s < 15 ? 1 : 0.92), seed),
  );
  const hold = holdOf(squadOf(...seasons), end);
  expect(hold.notes).toMatchObject([
    // Of the fourth the speed is named, which another tool reads.
    { code: "one-date", facts: { word: "slipping", athletes: 3, followed: 4, reading: "jumps" } },
  ]);
  expect(hold.notes[0]!.facts.how).toBe("in both");
  const told = hold.all.filter(({ notes }) => notes.some(({ code }) => code === "one-date"));
  expect(told.map(({ athlete }) => athlete)).toEqual(["Athlete 0", "Athlete 1", "Athlete 3"]);
});

test("a fall that leaves no doubt of its day is told of the shared date too", () => {
  const seasons = [0, 1, 2].map((seed) =>
    inventedSeason(`Athlete ${seed}`, 30, (s) => (s < 15 ? 1 : 0.75), seed),
  );
  const rising = inventedSeason("Wren Castellow", 30, (s) => (s < 15 ? 1 : 1.3), 3);
  const { of } = holdOf(squadOf(...seasons, rising, calm), end);
  expect(of("Athlete 1")).toMatchObject({ sinceFrom: sessionDay(15), sinceTo: sessionDay(15) });
  expect(of("Athlete 1").notes).toContainEqual({
    code: "one-date",
    facts: {
      word: "slipping",
      followed: 5,
      athletes: 3,
      day: sessionDay(15),
      reading: "bar speed",
      how: "in both",
    },
  });
  // Neither who rose that day nor who held is told.
  for (const other of ["Wren Castellow", "Ilka Brandmoor"]) {
    expect(of(other).notes.map(({ code }) => code)).not.toContain("one-date");
  }
  expect(of("Wren Castellow")).toMatchObject({ word: "rising", sinceDay: sessionDay(15) });
});

test("who fell before or after the date the others share is not told of it", () => {
  const from = (athlete: string, first: number, seed: number) =>
    inventedSeason(athlete, 30, (s) => (s < first ? 1 : 0.75), seed);
  const { of, notes } = holdOf(
    squadOf(
      from("Athlete 0", 15, 0),
      from("Athlete 1", 15, 1),
      from("Athlete 2", 15, 2),
      from("Tomas Reyerson", 9, 3),
      from("Wren Castellow", 22, 4),
    ),
    end,
  );
  expect(notes.map(({ code }) => code)).toContain("one-date");
  expect(of("Athlete 1").notes.map(({ code }) => code)).toContain("one-date");
  for (const other of ["Tomas Reyerson", "Wren Castellow"]) {
    expect(of(other).word).toBe("slipping");
    expect(of(other).notes.map(({ code }) => code)).not.toContain("one-date");
  }
});

test("rows after the day asked for change nothing", () => {
  const until = holdOf(fallen, sessionDay(18)).of("Tomas Reyerson");
  const cut = {
    sets: fallen.sets.filter(({ day }) => day <= sessionDay(18)),
    jumps: fallen.jumps.filter(({ day }) => day <= sessionDay(18)),
  };
  expect(until).toEqual(holdOf(cut, sessionDay(18)).of("Tomas Reyerson"));
});

test("the order of rows and of athletes changes nothing", () => {
  const rows = squadOf(calm, fallen, risen);
  const numbered = <Row extends { row: number }>(list: Row[]) =>
    list.map((row, i) => ({ ...row, row: i + 2 }));
  const sets = numbered(rows.sets);
  const jumps = numbered(rows.jumps);
  const turned = { sets: [...sets].reverse(), jumps: [...jumps].reverse() };
  expect(holdOf(turned, end).all).toEqual(holdOf({ sets, jumps }, end).all);
});

test("heights in other units of length tell the same season", () => {
  const inches = calm.jumps.map((jump) => ({
    ...jump,
    heightCm: jump.heightCm === null ? null : jump.heightCm / 2.54,
  }));
  const [a, b] = [calm.jumps, inches].map((jumps) =>
    holdOf({ ...calm, jumps }, end).of("Ilka Brandmoor"),
  );
  expect(b!.evidenceLow).toBeCloseTo(a!.evidenceLow, 9);
  expect(b!.measures[1]!.change).toBeCloseTo(a!.measures[1]!.change!, 9);
});

test("warm-ups and sets without a load or a speed are no rows of the season", () => {
  const extra = [
    liftingSet({ day: end + 1, kind: "warm-up", repSpeeds: [0.2] }),
    liftingSet({ day: end + 2, loadKg: null }),
    liftingSet({ day: end + 3, repSpeeds: [] }),
  ];
  const more = { sets: [...calm.sets, ...extra], jumps: calm.jumps };
  const plain = { ...holdOf(calm, end + 9).of("Ilka Brandmoor") };
  expect(holdOf(more, end + 9).of("Ilka Brandmoor")).toEqual(plain);
});

test("a drop jump from another box is not compared, and said", () => {
  const drops = calm.jumps.map((jump) =>
    jump.contactS === null ? jump : { ...jump, dropCm: jump.day > sessionDay(20) ? 45 : 30 },
  );
  const hold = holdOf({ ...calm, jumps: drops }, end).of("Ilka Brandmoor");
  expect(hold.notes.find(({ code }) => code === "drop-height-changed")!.facts).toEqual({
    test: "drop jump",
    sessions: 2,
    sinceDay: sessionDay(24),
    usualCm: 30,
  });
});

test("a stack with a plate nobody measured gives no height, and is counted", () => {
  const jumps = [...calm.jumps, jumpAttempt({ day: end, stackKg: [17] })];
  const hold = holdOf({ ...calm, jumps }, end).of("Ilka Brandmoor");
  expect(hold.notes).toContainEqual({
    code: "heights-not-read",
    facts: { test: "box jump", attempts: 1 },
  });
});
