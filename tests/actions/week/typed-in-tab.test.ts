import { proposedWeek } from "../../../src/actions/week/proposed-week";
import { weekToWrite } from "../../../src/actions/week/week-to-write";
import { weekView } from "../../../src/actions/week/week-view";
import type { Written } from "../../../src/actions/workbook";
import { dayFromIso, isoFromDay } from "../../../src/coaching/calendar/day";
import { memoryWorkbook } from "../memory-workbook";
import { writeWeek } from "./write-alone";

const name = "Wren Castellow";
const first = dayFromIso("2026-04-07")!;
/** The Sunday after two weeks of three fives at 75 kg, or 165 lb, twice a week. */
const today = first + 12;
const head = (unit: string) => ["Date", "Athlete", "Exercise", "Reps", `Load (${unit})`, "Good?"];

function weekWritten(unit: "kg" | "lb" = "kg") {
  const book = memoryWorkbook({
    Athletes: [
      ["Athlete", "Sessions a week"],
      [name, 2],
    ],
    Sets: [
      head(unit),
      ...[0, 2, 7, 9].flatMap((days) =>
        [1, 2, 3].map(() => [
          isoFromDay(first + days),
          name,
          "back squat",
          5,
          unit === "kg" ? 75 : 165,
          "yes",
        ]),
      ),
    ],
  });
  writeWeek(book, weekToWrite(proposedWeek(book, today, null, []), null));
  const tab = book.tabs().find((one) => one.name === "Next week")!;
  const headings = book.values(tab.id)[3]!.map(String);
  const clear = (session: number) => {
    const values = [headings.map(() => "")];
    book.alone(() => book.write(tab.id, { row: 4 + session, column: 1, values }));
  };
  const type = (heading: RegExp, value: Written, session: number) => {
    const column = headings.findIndex((one) => heading.test(one)) + 1;
    book.alone(() => book.write(tab.id, { row: 4 + session, column, values: [[value]] }));
  };
  const seen = () => {
    const [line] = weekView(book, today, null, []).lines;
    const { steps } = line!.ahead[0]!;
    return {
      proposed: line!.sessions.map(({ sets, reps, loadKg }) => `${sets}×${reps} ${loadKg}`),
      ahead: steps.slice(0, 3).map(({ block, loadKg }) => `${block} ${loadKg}`),
    };
  };
  return { type, clear, seen };
}

test("a load typed over the written one stays a proposal's neighbour, and the weeks ahead go on from it", () => {
  const { type, seen } = weekWritten();
  const before = { proposed: ["3×5 75", "3×5 75"], ahead: ["3×5 75", "5×3 77.5", "5×3 77.5"] };
  expect(seen()).toEqual(before);
  for (const session of [1, 2]) type(/^Load/, 70, session);
  expect(seen()).toEqual({ ...before, ahead: ["3×5 70", "3×5 70", "3×5 70"] });
  for (const session of [1, 2]) type(/^Load/, "72,5", session);
  expect(seen().ahead[1]).toBe("3×5 72.5");
  // Our own load put back is ours again.
  for (const session of [1, 2]) type(/^Load/, 75, session);
  expect(seen()).toEqual(before);
});

test("sets and repetitions typed over the written ones are counted on as well", () => {
  const { type, seen } = weekWritten();
  for (const session of [1, 2]) type(/^Sets/, "5x3", session);
  expect(seen().ahead).toEqual(["5×3 75", "5×3 75", "5×3 75"]);
  for (const session of [1, 2]) type(/^Load/, 80, session);
  expect(seen().ahead.slice(0, 2)).toEqual(["5×3 80", "5×3 80"]);
});

test("words in place of a load or of sets are counted as nothing typed", () => {
  const { type, seen } = weekWritten();
  const before = seen();
  for (const text of ["75?", "light", "1,000", 0, 999]) {
    type(/^Load/, text, 1);
    expect(seen()).toEqual(before);
  }
  for (const text of ["3x5x2", "0x5", "easy"]) {
    type(/^Sets/, text, 2);
    expect(seen()).toEqual(before);
  }
});

test("in a tab of pounds a typed load is of pounds", () => {
  const { type, seen } = weekWritten("lb");
  for (const session of [1, 2]) type(/^Load/, 155, session);
  // 155 × 0.45359237
  expect(Number(seen().ahead[0]!.split(" ")[1])).toBeCloseTo(70.31, 1);
});

test("a row deleted in the tab is not counted on as lifted, and what was typed in the other one is", () => {
  const { type, clear, seen } = weekWritten();
  clear(1);
  expect(seen()).toEqual({
    proposed: ["3×5 75", "3×5 75"],
    ahead: ["3×5 75", "5×3 77.5", "5×3 77.5"],
  });
  type(/^Load/, 70, 2);
  expect(seen().ahead[0]).toBe("3×5 70");
});
