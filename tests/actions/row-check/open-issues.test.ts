import { serveRequest } from "../../../src/actions/requests";
import { rowCheck } from "../../../src/actions/row-check/row-check";
import { squadView } from "../../../src/actions/squad/squad-view";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { memoryWorkbook } from "../memory-workbook";

const iso = "2026-05-29";
const today = dayFromIso(iso)!;

test("a comment across a tab is listed until it is said to be right, what is to be mended stays", () => {
  const book = memoryWorkbook({
    Athletes: [["Athlete"], ["Wren Castellow"]],
    Sets: [
      ["Date", "Athlete", "Exercise", "Reps", "Load (kg)"],
      ["2026-05-12", "Wren Castellow", "back squat", 5, 80],
      ["Half-term – no gym"],
      ["2026-05-26", "Wren Castellow", "back squat", 5, "heavy"],
    ],
  });
  const listed = () => rowCheck(book, today).problems.map(({ cell, right }) => [cell, right]);
  const set = "Sets, Half-term – no gym";
  expect(listed()).toEqual([
    ["A3", set],
    ["E4", null],
  ]);
  serveRequest(book, "answerSet", { today: iso, set });
  expect([listed(), squadView(book, today).toCheck]).toEqual([[["E4", null]], 1]);
  serveRequest(book, "forgetSet", { today: iso, set });
  expect(listed()).toHaveLength(2);
});

test("a state of now among the athletes is listed until it is said to be right, for each athlete by itself", () => {
  const book = memoryWorkbook({
    Athletes: [
      ["Athlete", "Status"],
      ["Wren Castellow", "injured"],
      ["Tove Fennwick", "injured"],
    ],
  });
  const listed = () => rowCheck(book, today).problems.map(({ right }) => right);
  const [set] = listed();
  expect(listed()).toEqual([
    "Athletes, Wren Castellow: injured",
    "Athletes, Tove Fennwick: injured",
  ]);
  serveRequest(book, "answerSet", { today: iso, set });
  expect(listed()).toEqual(["Athletes, Tove Fennwick: injured"]);
});
