import type { RowCheckView, SetUpView, SquadView } from "../../src/actions/messages";
import { type RequestName, serveRequest } from "../../src/actions/requests";
import { memoryWorkbook } from "./memory-workbook";

const today = "2026-06-12";
const stays = "Nils Quarrington";
const left = "Tove Fennwick";
const set = (day: string, who: string) => [day, who, "back squat", 80];
const club = (...athletes: string[]) =>
  memoryWorkbook({
    Athletes: [["Athlete"], ...athletes.map((athlete) => [athlete])],
    Sets: [
      ["Date", "Athlete", "Exercise", "Load (kg)"],
      set("2026-06-08", stays),
      set("2026-06-08", left),
      set("2026-06-10", left),
    ],
  });
const ask = <Answer>(book: ReturnType<typeof club>, name: RequestName, more: object = {}) =>
  serveRequest(book, name, { today, ...more }) as Answer;
const gone = { written: left, athlete: "", same: false };

test("who has left is asked about once: said to be not in the squad, nothing is left to check, and the rows are still told of", () => {
  const book = club(stays);
  const before = ask<RowCheckView>(book, "rowCheck");
  expect(before.names.map(({ name, rows, toDo }) => [name, rows, toDo])).toEqual([
    [
      left,
      2,
      "Say here who this is, or that they are not in the squad; or correct the name, or add the athlete to the Athletes table.",
    ],
  ]);
  const after = ask<RowCheckView>(book, "answerName", gone);
  expect(after.names).toEqual([]);
  expect(after.summary).toBe(before.summary);
  expect(after.summary).toBe("4 of 4 rows read, 2 under a name that is not among the athletes");
  expect(ask<SquadView>(book, "squadView").toCheck).toBe(0);
  expect(ask<SetUpView>(book, "setUpView").names).toEqual([
    { spelling: left, athlete: "", same: false },
  ]);
  ask(book, "forgetName", { written: left, athlete: "" });
  expect(ask<RowCheckView>(book, "rowCheck").names).toHaveLength(1);
});

test("a nickname is linked with an athlete it is not spelt like, in sets and races, and that can be taken back", () => {
  const book = memoryWorkbook({
    Athletes: [["Athlete"], ["Theodora Vance"], [stays]],
    Sets: [["Date", "Athlete", "Exercise", "Load (kg)"], set("2026-06-08", "Teddy")],
    Races: [
      ["Date", "Race", "Who"],
      ["2026-06-20", "Quillbeck 10k", "Teddy"],
    ],
  });
  const before = ask<RowCheckView>(book, "rowCheck");
  expect(before.names.map(({ name, rows, near }) => [name, rows, near])).toEqual([
    ["Teddy", 2, []],
  ]);
  expect(before.athletes).toEqual(["Theodora Vance", stays]);
  const teddy = { written: "Teddy", athlete: "Theodora Vance", same: true };
  const after = ask<RowCheckView>(book, "answerName", teddy);
  expect([after.names, after.summary]).toEqual([[], "4 of 4 rows read"]);
  expect(ask<SetUpView>(book, "setUpView").names).toEqual([
    { spelling: "Teddy", athlete: "Theodora Vance", same: true },
  ]);
  ask(book, "forgetName", { written: "Teddy" });
  expect(ask<RowCheckView>(book, "rowCheck").names).toEqual(before.names);
});

test("whoever comes back to the Athletes table counts again, whatever was said before", () => {
  const book = club(stays);
  ask(book, "answerName", gone);
  book.type("Athletes", 3, 1, left);
  expect(ask<SquadView>(book, "squadView").lines.map(({ athlete }) => athlete)).toContain(left);
  expect(ask<RowCheckView>(book, "rowCheck").summary).toBe("5 of 5 rows read");
});

test("a name near an athlete's that is none of the squad's is not offered as that athlete's", () => {
  const book = club(stays, "Tove Fenwick");
  expect(ask<RowCheckView>(book, "rowCheck").names[0]!.near).toEqual(["Tove Fenwick"]);
  const why = () =>
    ask<SquadView>(book, "squadView")
      .lines.map((line) => line.why)
      .join(" ");
  expect(why()).toContain(left);
  expect(ask<RowCheckView>(book, "answerName", gone).names).toEqual([]);
  expect(why()).not.toContain(left);
});

test("without a table of athletes whoever has rows is in the squad: a name is never said not to be", () => {
  const book = memoryWorkbook({
    Sets: [
      ["Date", "Athlete", "Exercise", "Load (kg)"],
      set("2026-06-08", "Tove Fennwick"),
      set("2026-06-10", "Tove Fenwick"),
    ],
  });
  const { names, athletes } = ask<RowCheckView>(book, "rowCheck");
  expect(names.map(({ name }) => name)).toEqual(["Tove Fenwick"]);
  expect(athletes).toEqual([]);
});
