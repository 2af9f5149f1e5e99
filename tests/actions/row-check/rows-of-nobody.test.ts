import { readWorkbook } from "../../../src/actions/read-workbook";
import { rowsOfNobody } from "../../../src/actions/row-check/rows-of-nobody";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { memoryWorkbook } from "../memory-workbook";

const today = dayFromIso("2026-06-12")!;
const day = "2026-06-10";
const tables = (who: string): Readonly<Record<string, readonly (readonly unknown[])[]>> => ({
  Sets: [
    ["Date", "Athlete", "Exercise", "Load (kg)"],
    [day, who, "back squat", 80],
  ],
  Jumps: [
    ["Date", "Athlete", "Test", "Height (cm)"],
    [day, who, "box jump", 50],
  ],
  Diary: [
    ["Date", "Athlete", "Note"],
    [day, who, "calm"],
  ],
  Runs: [
    ["Date", "Athlete", "Kind", "Minutes"],
    [day, who, "easy", 40],
  ],
  Availability: [
    ["Athlete", "From", "May do"],
    [who, day, "full"],
  ],
});
const nobodys = (tabs: Parameters<typeof memoryWorkbook>[0]) =>
  rowsOfNobody(readWorkbook(memoryWorkbook(tabs), today));
const Athletes = [["Athlete"], ["Nils Quarrington"]];

test.each(Object.keys(tables("")))(
  "a row of %s under a name that is no athlete's is told",
  (tab) => {
    expect(nobodys({ Athletes, [tab]: tables("Tove Fennwick")[tab]! })).toBe(1);
    expect(nobodys({ Athletes, [tab]: tables("Nils Quarrington")[tab]! })).toBe(0);
  },
);

test("without a table of athletes everybody is one", () => {
  expect(nobodys(tables("Tove Fennwick"))).toBe(0);
});
