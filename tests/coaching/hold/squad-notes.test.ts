import { squadHold } from "../../../src/coaching/hold/squad-hold";
import { squadSeasons } from "../../../src/coaching/hold/squad-seasons";
import { squadYardsticks } from "../../../src/coaching/hold/yardsticks/squad-yardsticks";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";
import { usualRules } from "../../../src/coaching/record/squad-rules";
import { squadIndex } from "../../../src/coaching/series/squad-index";
import { noteWords } from "../../../src/words/reasons-notes";
import { chance } from "../../bench/seasons/chance";
import { inventedSeason, jumpAttempt, liftingSet, sessionDay } from "../series/invented-season";

/** Athletes whose speed errs by 3 %, each session's error being so much of the last. */
function squad(athletes: number, serial: number, sessions = 30): LiftingSet[] {
  const noise = chance(20_260);
  return Array.from({ length: athletes }, (_, a) => {
    let error = noise.normal();
    return Array.from({ length: sessions }, (__, s) => {
      if (s > 0) error = serial * error + Math.sqrt(1 - serial ** 2) * noise.normal();
      return liftingSet({
        day: sessionDay(s),
        athlete: `Runner ${a + 1}`,
        repSpeeds: [0.7 * (1 + 0.03 * error)],
      });
    });
  }).flat();
}
const last = sessionDay(29);
const notesOf = (sets: LiftingSet[]) =>
  squadHold({
    index: squadIndex({ sets }, last),
    plates: [],
    athletes: [],
    rules: usualRules,
  }).notes.filter(({ code }) => code === "serial-correlation");
const yardsticks = (sets: LiftingSet[]) => {
  const index = squadIndex({ sets }, last);
  const seasons = squadSeasons({
    index,
    athletes: [],
    plates: [],
    seasonStart: sessionDay(0),
    baselineSessions: 6,
  });
  return squadYardsticks(seasons);
};

test("sessions that err like the one before are said of a squad of ten, not of nine", () => {
  const [note] = notesOf(squad(40, 0.5));
  expect(Number(note?.facts.correlation)).toBeGreaterThan(0.4);
  expect(Number(note?.facts.correlation)).toBeLessThan(0.6);
  expect(notesOf(squad(9, 0.5))).toEqual([]);
  // Just a tenth is said, less than that is not.
  expect(notesOf(squad(40, 0.16)).map(({ facts }) => facts.correlation)).toEqual([0.1]);
  expect(notesOf(squad(40, 0.15))).toEqual([]);
  expect(notesOf(squad(40, 0))).toEqual([]);
});

test("the wobble is that of a session, though neighbours err alike and hide some of it", () => {
  // Six readings of correlation 0.5 show √((6 − 2.344)/5) = 0.855 of their true 3 %: 2.57 %.
  const error = yardsticks(squad(80, 0.5)).errorOf("bar speed");
  expect(error).toBeGreaterThan(2.8);
  expect(error).toBeLessThan(3.25);
  const plain = yardsticks(squad(80, 0)).errorOf("bar speed");
  expect(plain).toBeGreaterThan(2.8);
  expect(plain).toBeLessThan(3.25);
});

test("a reading missed leaves the athlete's other readings of the baseline in the squad's wobble", () => {
  const steady = Array.from({ length: 12 }, (_, s) => ({ s, heightCm: 40 * (1 + 0.08 * (s % 2)) }));
  const jumps = steady
    .filter(({ s }) => s !== 3)
    .map(({ s, heightCm }) => jumpAttempt({ day: sessionDay(s), heightCm }));
  const seasons = squadSeasons({
    index: squadIndex({ sets: inventedSeason("Ilka Brandmoor", 12).sets, jumps }, last),
    athletes: [],
    plates: [],
    seasonStart: sessionDay(0),
    baselineSessions: 6,
  });
  expect(seasons[0]!.values[1]!.slice(0, 6).filter(Number.isNaN)).toHaveLength(1);
  // Two kinds of readings 7.7 % apart wobble by more than the usual 4 %.
  expect(squadYardsticks(seasons).errorOf("jump height")).toBeCloseTo(
    Math.sqrt((10 * 4 ** 2 + 1.2 * (100 * Math.log(1.08)) ** 2) / (10 + 4)),
    9,
  );
});

test("a season without a baseline yet, and one of a single reading, hold no squad up", () => {
  const few = [
    ...squad(12, 0.5),
    liftingSet({ day: last, athlete: "Wren Castellow", exercise: "bench press" }),
  ];
  expect(Number.isFinite(yardsticks(few).errorOf("bar speed"))).toBe(true);
  // No drop jumps at all: the usual typical error stands for them.
  expect(yardsticks(few).errorOf("contact time")).toBeCloseTo(4.5, 9);
});

const holdOf = (rows: { sets?: LiftingSet[]; jumps?: ReturnType<typeof jumpAttempt>[] }) =>
  squadHold({
    index: squadIndex(rows, last),
    plates: [],
    athletes: [],
    rules: usualRules,
  }).of("Ilka Brandmoor");
const calm = inventedSeason("Ilka Brandmoor", 30);

test("a blank in place of the bar or of mean and peak is a setting of its own, shown as blank", () => {
  const after = (change: Partial<LiftingSet>) =>
    calm.sets.map((set) => (set.day < sessionDay(20) ? set : { ...set, ...change }));
  const before = (change: Partial<LiftingSet>) =>
    calm.sets.map((set) => (set.day < sessionDay(20) ? { ...set, ...change } : set));
  const changes = (sets: LiftingSet[]) =>
    holdOf({ sets }).notes.map(({ facts }) => [facts.what, facts.before, facts.after]);
  expect(changes(after({ barKg: null }))).toEqual([["barKg", 20, ""]]);
  expect(changes(before({ speedIs: null }))).toEqual([["speedIs", "", "mean"]]);
});

test("drops from a height after drops whose height was not written down are not compared", () => {
  const drops = Array.from({ length: 30 }, (_, s) =>
    jumpAttempt({
      day: sessionDay(s),
      test: "drop jump",
      contactS: 0.2 + 0.002 * (s % 3),
      dropCm: s < 20 ? null : 40,
    }),
  );
  const hold = holdOf({ jumps: drops });
  expect(hold.notes).toContainEqual({
    code: "drop-height-changed",
    facts: { test: "drop jump", sessions: 10, sinceDay: sessionDay(20), usualCm: "" },
  });
  expect(hold.measures[0]!.rowsAfter).toBe(14);
});

test("a test taken twice in a long season is said not to be followed", () => {
  const jumps = [3, 20].map((s) =>
    jumpAttempt({ day: sessionDay(s), test: "drop jump", contactS: 0.2 }),
  );
  const notes = holdOf({ sets: calm.sets, jumps }).notes;
  expect(notes).toContainEqual({
    code: "measure-not-followed",
    facts: { kind: "contact time", of: "drop jump" },
  });
});

test("a height taken twice in a long season is said not to be followed", () => {
  const jumps = [13, 20].map((s) => jumpAttempt({ day: sessionDay(s), heightCm: 40 }));
  expect(holdOf({ sets: calm.sets, jumps }).notes).toContainEqual({
    code: "measure-not-followed",
    facts: { kind: "jump height", of: "box jump" },
  });
});

test("a lift without a load on the bar gives no line to hold a season against", () => {
  const unloaded = calm.sets.map((set) => ({ ...set, loadKg: 0 }));
  const hold = holdOf({ sets: unloaded, jumps: calm.jumps });
  expect(hold.notes).toContainEqual({
    code: "no-falling-line",
    facts: { kind: "bar speed", of: "back squat" },
  });
  expect(hold.measures.map(({ kind }) => kind)).not.toContain("bar speed");
});

test("a baseline whose heavier sets moved faster is not called too short", () => {
  // Load and speed taken for each other's day: 60 to 85 kg at 1.4 to 1.9 m/s.
  const sets = calm.sets.map((set, at) => {
    const speed = 1.4 + 0.1 * (at % 6);
    return { ...set, loadKg: 60 + 5 * (at % 6), repSpeeds: [speed, speed, speed] };
  });
  const { notes } = holdOf({ sets, jumps: calm.jumps });
  const [note] = notes.filter(({ code }) => code === "no-falling-line");
  expect(noteWords(note!)).toBe(
    "Back squat speed is not followed: in the baseline it does not fall as the load rises. Check loads and speeds of those days.",
  );
  expect(notes.map(({ code }) => code)).not.toContain("measure-not-followed");
});

test("of two lifts done equally often the season follows the first by name", () => {
  const other = calm.sets.map((set) => ({ ...set, exercise: "front squat" }));
  const followed = (sets: LiftingSet[]) => holdOf({ sets }).value?.of;
  expect(followed([...other, ...calm.sets])).toBe("back squat");
  // One more day of the other decides for it.
  const fewer = calm.sets.filter(({ day }) => day !== sessionDay(3));
  expect(followed([...fewer, ...other])).toBe("front squat");
});

test("every athlete of a lift has a say in each one's line, not the last alone", () => {
  const own = (names: readonly string[]) =>
    squadSeasons({
      index: squadIndex(
        { sets: names.flatMap((name) => inventedSeason(name, 12, () => 1, name.length).sets) },
        last,
      ),
      athletes: [],
      plates: [],
      seasonStart: sessionDay(0),
      baselineSessions: 6,
    })[0]!;
  const names = ["Ilka Brandmoor", "Tomas Reyerson", "Wren Castellow"];
  const all = own(names);
  const two = own([names[0]!, names[2]!]);
  expect(all.rows.athlete).toBe("Ilka Brandmoor");
  expect(all.values).not.toEqual(two.values);
  // The first of them too has a say in the second's.
  const second = (share: number) =>
    squadSeasons({
      index: squadIndex(
        {
          sets: names.flatMap((name, a) =>
            inventedSeason(name, 12, () => 1, name.length).sets.map((set) =>
              a === 0 ? { ...set, repSpeeds: set.repSpeeds.map((v) => v! * share) } : set,
            ),
          ),
        },
        last,
      ),
      athletes: [],
      plates: [],
      seasonStart: sessionDay(0),
      baselineSessions: 6,
    })[1]!;
  expect(second(1).values).not.toEqual(second(1.2).values);
});
