import type { RowCheckView } from "../../src/actions/messages";
import { rowCheck } from "../../src/actions/row-check/row-check";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { memoryWorkbook } from "./memory-workbook";

// Sets with tries of a jump beside them are two tables of one tab; names, days and figures are invented.

const today = dayFromIso("2026-05-12")!;
const told = (...rows: readonly (readonly unknown[])[]) =>
  (
    rowCheck(
      memoryWorkbook({
        Athletes: [["Athlete"], ["Imke Rauvold"]],
        Gym: [
          ["Date", "Athlete", "Lift", "kg", "Reps", "S1 m/s", "S2 m/s", "CMJ 1", "CMJ 2"],
          ...rows,
        ],
      }),
      today,
    ) as RowCheckView
  ).problems.map(({ cell, kind }) => `${cell} ${kind}`);
const row = (day: string, load: unknown = 65, jump: unknown = 38.1) => [
  ...[day, "Imke Rauvold", "Squat", load, 5, 0.74, 0.72, jump, 37.9],
];

test("columns of jumps that are read are not told to be unused, nor are those of sets", () => {
  expect(told(row("2026-05-05"), row("2026-05-07"))).toEqual([]);
});

test("a day both tables read, and find fault with, is told once; each one’s own cells are told", () => {
  expect(told(row("2026-05-05"), row("2026-05-07"), row("2026-15-15"))).toHaveLength(1);
  expect(
    told(row("2026-05-05", "heavy"), row("2026-05-07", 65, "x?1")).map((one) => one.slice(0, 2)),
  ).toEqual(["D2", "H3"]);
});
