import { squadHold } from "../../../../src/coaching/hold/squad-hold";
import { usualRules } from "../../../../src/coaching/record/squad-rules";
import { squadIndex } from "../../../../src/coaching/series/squad-index";
import { holdReason } from "../../../../src/words/reasons-hold";
import { noteStatement, noteWords } from "../../../../src/words/reasons-notes";
import { athleteRow, firstDay, jumpAttempt, liftingSet } from "../../series/invented-season";

/** Mondays and Thursdays from 6 April: squats first, a trap bar from so many sessions on; box jumps on all of them. */
const day = (session: number) => firstDay + 7 * Math.floor(session / 2) + 3 * (session % 2);
const hold = (squats: number, sessions: number, speed = (_session: number) => 0.7) => {
  const all = Array.from({ length: sessions }, (_, session) => session);
  const sets = all.map((session) =>
    liftingSet({
      day: day(session),
      exercise: session < squats ? "back squat" : "trap bar deadlift",
      loadKg: session < squats ? 60 : 85,
      repSpeeds: [speed(session) + 0.01 * (session % 2)],
    }),
  );
  const jumps = all.map((session) =>
    jumpAttempt({ day: day(session), heightCm: 40 + (session % 2) }),
  );
  return squadHold({
    index: squadIndex({ sets, jumps }, day(sessions - 1)),
    plates: [],
    athletes: [],
    rules: usualRules,
  }).all[0]!;
};
const notesOf = (season: ReturnType<typeof hold>) =>
  season.notes.filter(({ code }) => code === "setting-changed");

test("a lift given up for another is said, with the day it was last compared and what follows the new one", () => {
  // Eight squat sessions, the last on Thu 30 April; fifteen with the trap bar from Mon 4 May, ever slower.
  const season = hold(8, 23, (session) => (session < 8 ? 0.7 : 0.7 - 0.01 * (session - 8)));
  expect(season.word).toBe("holding");
  expect(holdReason(season)).toContain("; back squat speed last compared on 30 Apr");
  const [note] = notesOf(season);
  expect(noteWords(note!)).toBe(
    "15 sessions from 4 May with another lift (trap bar deadlift; baseline: back squat) are not compared. New baseline dates in the Athletes table would follow them.",
  );
  expect(noteStatement(note!)).not.toContain("Athletes table");
});

test("a lift laid aside for two weeks is not given up, and neither is one that goes on in turn", () => {
  // Last squat Thu 30 April: on Thu 14 May it is fourteen days since, on Mon 18 May eighteen.
  expect(notesOf(hold(8, 12))).toEqual([]);
  expect(notesOf(hold(8, 13))[0]!.facts).toMatchObject({ sessions: 5, ownBaseline: 0 });
  expect(notesOf(hold(23, 23))).toEqual([]);
});

test("of several lifts since then the one done most is named, with its sessions since then alone", () => {
  const on = (exercise: string, ...sessions: number[]) =>
    sessions.map((session) => liftingSet({ day: day(session), exercise, loadKg: 60 }));
  const upTo = (from: number, to: number) =>
    Array.from({ length: to - from }, (_, at) => from + at);
  const season = squadHold({
    index: squadIndex(
      {
        sets: [
          ...on("back squat", ...upTo(0, 8)),
          ...on("hip thrust", 8, 12, 22),
          ...on("trap bar deadlift", 5, 7, ...upTo(9, 23)),
        ],
      },
      day(22),
    ),
    plates: [],
    athletes: [],
    rules: usualRules,
  }).all[0]!;
  expect(notesOf(season).map(({ facts }) => [facts.after, facts.sessions, facts.sinceDay])).toEqual(
    [["trap bar deadlift", 14, day(9)]],
  );
});

test("with baseline dates of its own the new lift is followed, and nothing is said of the old", () => {
  const season = squadHold({
    index: squadIndex(
      {
        sets: Array.from({ length: 20 }, (_, session) =>
          liftingSet({
            day: day(session),
            exercise: session < 8 ? "back squat" : "trap bar deadlift",
            loadKg: 60 + 5 * (session % 3),
          }),
        ),
      },
      day(19),
    ),
    plates: [],
    athletes: [{ ...athleteRow({ athlete: "Ilka Brandmoor" }), baselineFrom: day(8) }],
    rules: usualRules,
  }).all[0]!;
  expect(season.measures.map(({ of }) => of)).toEqual(["trap bar deadlift"]);
  expect(notesOf(season)).toEqual([]);
});

/** Box jumps on the first eight days, another test from then on, beside drop jumps on every day. */
const jumpsOnly = (other: string, sessions: number) =>
  squadHold({
    index: squadIndex(
      {
        jumps: Array.from({ length: sessions }, (_, session) => [
          jumpAttempt({
            day: day(session),
            test: session < 8 ? "box jump" : other,
            heightCm: 40 + (session % 2),
          }),
          jumpAttempt({
            day: day(session),
            test: "drop jump",
            heightCm: 30 + (session % 2),
            contactS: 0.2 + 0.01 * (session % 2),
          }),
        ]).flat(),
      },
      day(sessions - 1),
    ),
    plates: [],
    athletes: [],
    rules: usualRules,
  }).all[0]!;

test("a jump test given up for another is said as a lift is; one that is followed itself takes no other's place", () => {
  const season = jumpsOnly("squat jump", 23);
  expect(holdReason(season)).toContain("; box jump last compared on 30 Apr");
  expect(notesOf(season).map(noteWords)).toEqual([
    "15 sessions from 4 May with another jump test (squat jump; baseline: box jump) are not compared. New baseline dates in the Athletes table would follow them.",
  ]);
  expect(notesOf(jumpsOnly("squat jump", 12))).toEqual([]);
  expect(notesOf(jumpsOnly("box jump", 23))).toEqual([]);
  const withDropJumps = notesOf(jumpsOnly("drop jump", 23));
  expect(withDropJumps.filter(({ facts }) => facts.what === "test")).toEqual([]);
});
