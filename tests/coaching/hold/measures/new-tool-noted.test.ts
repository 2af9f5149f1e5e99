import { newToolNoted } from "../../../../src/coaching/hold/measures/new-tool-noted";
import type { SeasonHold } from "../../../../src/coaching/hold/season-hold";
import { squadHold } from "../../../../src/coaching/hold/squad-hold";
import { usualRules } from "../../../../src/coaching/record/squad-rules";
import { squadIndex } from "../../../../src/coaching/series/squad-index";
import { noteStatement, noteWords } from "../../../../src/words/reasons-notes";
import { inventedSeason, jumpAttempt, liftingSet, sessionDay } from "../../series/invented-season";

const name = "Ilka Brandmoor";
const [since, from, to] = [sessionDay(12), sessionDay(11), sessionDay(14)];
const fallen = (kind: "bar speed" | "jump height", over: Partial<SeasonHold> = {}) =>
  ({
    word: "slipping",
    value: { kind, of: kind === "bar speed" ? "Back squat" : "CMJ" },
    sinceDay: since,
    sinceFrom: from,
    sinceTo: to,
    ...over,
  }) as SeasonHold;
const rowsWith = (day: number, note: string) =>
  squadIndex(
    {
      sets: [liftingSet({ day, note })],
      jumps: [jumpAttempt({ day, test: "CMJ", heightCm: 40, note })],
    },
    sessionDay(30),
  ).of(name)!;
const noted = (note: string, day = since, hold = fallen("jump height")) =>
  newToolNoted(hold, rowsWith(day, note)).map(({ facts }) => facts.day);

test("a note of another tool, mat or shoes on a day a change may have begun is told of it", () => {
  expect(noted("new shoes, new mat")).toEqual([since]);
  expect(noted("new encoder today", since, fallen("bar speed"))).toEqual([since]);
  for (const note of [
    "New jump mat",
    "mat changed",
    "borrowed sensor",
    "floor is new",
    "Neue Matte",
  ])
    expect([note, noted(note)]).toEqual([note, [since]]);
  for (const note of ["", "new PB", "shoes wet", "mat", "renewed effort", "another good day"])
    expect([note, noted(note)]).toEqual([note, []]);
});

test("only where the change may have begun, to a week before, and only beside a change", () => {
  const note = "new mat";
  expect([from - 7, to].map((day) => noted(note, day))).toEqual([[from - 7], [to]]);
  expect([from - 8, to + 1].map((day) => noted(note, day))).toEqual([[], []]);
  const sure = fallen("jump height", { sinceFrom: null, sinceTo: null });
  expect([since, since + 1].map((day) => noted(note, day, sure))).toEqual([[since], []]);
  expect(noted(note, since, fallen("jump height", { word: "holding", sinceDay: null }))).toEqual(
    [],
  );
});

test("beside a fall that began with a new mat stands what to look at first; on paper what is noted", () => {
  const { sets, jumps } = inventedSeason(name, 30, (s) => (s < 15 ? 1 : 0.85), 1);
  const told = (note: string) =>
    squadHold({
      index: squadIndex(
        {
          sets: sets.map((set) => (set.day === sessionDay(15) ? { ...set, note } : set)),
          jumps: jumps.map((one) => (one.day === sessionDay(15) ? { ...one, note } : one)),
        },
        sessionDay(29),
      ),
      plates: [],
      athletes: [],
      rules: usualRules,
    }).of(name);
  expect(told("windy").notes.map(({ code }) => code)).not.toContain("new-tool-noted");
  const hold = told("new mat and encoder, new tool");
  expect(hold.word).toBe("slipping");
  const note = hold.notes.find(({ code }) => code === "new-tool-noted")!;
  expect(noteStatement(note)).toMatch(
    /^A note of \d+ \w+ tells of another tool, mat, shoes or floor\.$/,
  );
  expect(noteWords(note)).toMatch(
    /floor: look at that first\. If it reads otherwise, new baseline/,
  );
});
