import { SheetClock } from "../../src/apps-script/sheet-clock";

// Rules of each zone: IANA time zone database, as Node's own internationalisation library has them.
// What the platform does with a cell's date: Apps Script reference, Spreadsheet.getSpreadsheetTimeZone.

const clockOf = (zone: string) => new SheetClock(() => zone);
const local = (year: number, month: number, day: number, hour = 0, minute = 0) =>
  new Date(year, month - 1, day, hour, minute);

test.each([
  ["Europe/Berlin", "2026-05-11T22:00:00Z", local(2026, 5, 12)],
  ["Europe/Berlin", "2026-01-11T23:00:00Z", local(2026, 1, 12)],
  ["America/New_York", "2026-05-12T04:00:00Z", local(2026, 5, 12)],
  ["Pacific/Auckland", "2026-01-11T11:00:00Z", local(2026, 1, 12)],
  ["Pacific/Honolulu", "2026-01-12T10:00:00Z", local(2026, 1, 12)],
  ["Asia/Kolkata", "2026-05-11T18:30:00Z", local(2026, 5, 12)],
  ["Asia/Kathmandu", "2026-05-12T12:45:00Z", local(2026, 5, 12, 18, 30)],
  ["Etc/UTC", "2026-05-12T00:00:00Z", local(2026, 5, 12)],
  ["GMT-07:00", "2026-05-12T07:00:00Z", local(2026, 5, 12)],
  ["GMT+5:30", "2026-05-11T18:30:00Z", local(2026, 5, 12)],
  // A length of time is a moment of 30 December 1899, when many towns still kept their own time.
  ["Europe/Paris", "1899-12-30T00:35:39Z", local(1899, 12, 30, 0, 45)],
])("in %s the moment %s is the day the cell shows", (zone, moment, shown) => {
  expect(clockOf(zone).shown(new Date(moment))).toEqual(shown);
});

test.each([
  ["Europe/Berlin", [2026, 5, 12], "2026-05-11T22:00:00.000Z"],
  ["America/New_York", [2026, 11, 1], "2026-11-01T04:00:00.000Z"],
  ["Pacific/Auckland", [2026, 1, 12], "2026-01-11T11:00:00.000Z"],
  // Clocks go forward at midnight: the day begins at one.
  ["America/Santiago", [2026, 9, 6], "2026-09-06T04:00:00.000Z"],
  ["Africa/Cairo", [2026, 4, 24], "2026-04-23T22:00:00.000Z"],
] as const)("in %s a day begins at its own midnight", (zone, [year, month, date], moment) => {
  expect(clockOf(zone).startOf(year, month, date).toISOString()).toBe(moment);
});

test("every day of two years begins on that day, in every zone there is", () => {
  for (const zone of Intl.supportedValuesOf("timeZone")) {
    const clock = clockOf(zone);
    for (let day = 0; day < 731; day += 1) {
      const wanted = new Date(Date.UTC(2026, 0, 1 + day));
      const [year, month, date] = [
        wanted.getUTCFullYear(),
        wanted.getUTCMonth() + 1,
        wanted.getUTCDate(),
      ];
      const shown = clock.shown(clock.startOf(year, month, date)) as Date;
      const found = [shown.getFullYear(), shown.getMonth() + 1, shown.getDate()];
      if (`${found}` !== `${[year, month, date]}`) expect([zone, found]).toEqual([zone, wanted]);
    }
  }
});

test("only rows with a date that the clocks show differently are new; the coach's own stay as they are", () => {
  const rows = [
    ["Date", "Load"],
    [new Date("2026-05-11T22:00:00Z"), 60],
    ["12 May", 62.5],
  ];
  const shown = clockOf("Europe/Berlin").shown(rows) as unknown[][];
  expect(shown).toEqual([
    ["Date", "Load"],
    [local(2026, 5, 12), 60],
    ["12 May", 62.5],
  ]);
  expect([shown[0] === rows[0], shown[2] === rows[2]]).toEqual([true, true]);
  expect(rows[1]![0]).toEqual(new Date("2026-05-11T22:00:00Z"));
  const own = Intl.DateTimeFormat().resolvedOptions().timeZone;
  expect(clockOf(own).shown(rows)).toBe(rows);
});

test("the zone is asked for once, and not at all where there is no date", () => {
  const zone = jest.fn(() => "Europe/Berlin");
  const clock = new SheetClock(zone);
  clock.shown([["Wren Oddie", 60, "", true]]);
  expect(zone).not.toHaveBeenCalled();
  clock.shown([[local(2026, 5, 12)], [local(2026, 5, 13)]]);
  clock.startOf(2026, 5, 12);
  expect(zone).toHaveBeenCalledTimes(1);
});

test("a zone nobody knows is refused with a sentence", () => {
  expect(() => clockOf("Mars/Olympus").shown(local(2026, 5, 12))).toThrow(
    "The spreadsheet’s time zone, Mars/Olympus, is not known here: choose the one of a city near you",
  );
});
