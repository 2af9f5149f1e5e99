import { printPages } from "../../../src/actions/pages/print-pages";
import { serveRequest } from "../../../src/actions/requests";
import { weekView } from "../../../src/actions/week/week-view";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { memoryWorkbook } from "../memory-workbook";

const name = "Finn Albury";
const head = ["Date", "Athlete", "Exercise", "Kind", "Set", "Reps", "Load (kg)", "Speeds"];
const more = ["Movement ok?", "Tool"];

/** One evening: a marker of 70 kg at a speed, then three fives. */
const evening = (iso: string, marker: number, loadKg: number, tool = "A") => {
  const [year, month, date] = iso.split("-").map(Number);
  const day = new Date(year!, month! - 1, date!);
  const speeds = (...all: number[]) => all.map((one) => one.toFixed(2)).join(" ");
  return [
    [
      day,
      name,
      "back squat",
      "marker",
      "",
      3,
      70,
      speeds(marker, marker + 0.01, marker - 0.01),
      "",
      tool,
    ],
    ...[1, 2, 3].map((set) => {
      const first = marker - 0.014 * (loadKg - 70);
      const all = speeds(first, first - 0.01, first - 0.02, first - 0.02, first - 0.03);
      return [day, name, "back squat", "work", set, 5, loadKg, all, "y", tool];
    }),
  ];
};
const bookOf = (rows: readonly unknown[][], experience: string) =>
  memoryWorkbook({
    Athletes: [
      ["Athlete", "Experience", "Birth year", "Sessions a week"],
      [name, experience, 1998, 2],
    ],
    Sets: [[...head, ...more], ...rows],
  });
const next = (rows: readonly unknown[][], experience: string, today = "2026-04-19") => {
  const book = bookOf(rows, experience);
  const [line] = weekView(book, dayFromIso(today)!, null, []).lines;
  return { loads: line!.sessions.map(({ loadKg }) => loadKg), why: line!.why };
};

test("slow days of the first weeks are judged as their cards were, by the days before them", () => {
  // Against all four days 0.84 and 0.85 are hardly slow; against the two before them they took 5 kg off.
  const usual = [...evening("2026-04-07", 0.92, 85), ...evening("2026-04-09", 0.91, 85)];
  const slow = [...evening("2026-04-14", 0.85, 80), ...evening("2026-04-16", 0.84, 80)];
  for (const experience of ["trained", "novice"]) {
    const { loads, why } = next([...usual, ...slow], experience);
    expect(loads).toEqual([85, 85]);
    expect(why[0]).toBe("80 kg last session, a slow day: planned on from 85 kg.");
  }
});

test("lighter sets behind a usual marker are the plan from then on, and asked about", () => {
  const usual = [...evening("2026-04-07", 0.92, 85), ...evening("2026-04-09", 0.91, 85)];
  const { loads, why } = next([...usual, ...evening("2026-04-14", 0.92, 80)], "trained");
  expect(loads).toEqual([80, 80]);
  expect(why.join(" ")).toMatch(/Lighter than the 85 kg before it, and no row says why/);
});

test("so are those of a new tool, whose line is of the latest sessions alone", () => {
  const days = ["04-07", "04-09", "04-14", "04-16", "04-21", "04-23", "04-28", "04-30"];
  const before = days.flatMap((one) => evening(`2026-${one}`, 0.92, 85));
  const tool = ["05-05", "05-07"].flatMap((one) => evening(`2026-${one}`, 0.97, 85, "B"));
  const slow = ["05-12", "05-14"].flatMap((one) => evening(`2026-${one}`, 0.9, 80, "B"));
  const { loads, why } = next([...before, ...tool, ...slow], "trained", "2026-05-17");
  expect(loads).toEqual([85, 85]);
  expect(why[0]).toBe("80 kg last session, a slow day: planned on from 85 kg.");
});

test("while another tool is in use week and card say whose speeds decide the day, and no longer once it is not", () => {
  const days = (tool: string, ...all: string[]) =>
    all.flatMap((one) => evening(`2026-${one}`, 0.92, 85, tool));
  const home = days("A", "04-07", "04-09", "04-14", "04-16", "04-21", "04-23", "04-28", "04-30");
  const away = [...home, ...days("B", "05-05", "05-07")];
  const said =
    "The speeds that decide the day are with another tool (B; baseline: A): with any other judge by eye.";
  expect(next(away, "trained", "2026-05-10").why).toContain(said);
  // What a coach wrote under “tool” stays off paper.
  const onCard = "The speeds are of last time’s tool and gym: with another judge by eye.";
  const pages = printPages(bookOf(away, "trained"), dayFromIso("2026-05-10")!, "cards", null, []);
  expect(
    pages.kind === "cards" && pages.cards.map(({ lift }) => lift.say.includes(onCard)),
  ).toEqual([true, true]);
  // Beside the cell for the day's speed, too, which a phone shows alone.
  const inTab = (rows: readonly unknown[][], today: string, monday: string) => {
    const book = bookOf(rows, "trained");
    serveRequest(book, "writeWeek", { today, monday, changes: [], athletes: null });
    const tab = book.tabs().find(({ name: one }) => one === "Next week")!;
    return book.values(tab.id).flatMap((row) => (row[0] === name ? [String(row[12])] : []));
  };
  expect(inTab(away, "2026-05-10", "2026-05-11")[0]).toMatch(
    /\. If the bar tool is not last time’s, judge by eye\.$/,
  );
  expect(inTab(home, "2026-05-03", "2026-05-04").join()).not.toMatch(/another tool/);
  expect(next(home, "trained", "2026-05-03").why).not.toContain(said);
  const back = [...away, ...days("A", "05-12", "05-14")];
  expect(next(back, "trained", "2026-05-17").why).not.toContain(said);
});

test("and those back with the tool of before, whose cards were made from the other tool's speeds", () => {
  const home = ["04-07", "04-09", "04-14", "04-16", "04-21", "04-23", "04-28", "04-30"];
  const away = ["05-05", "05-07", "05-12", "05-14"];
  const before = [
    ...home.flatMap((one) => evening(`2026-${one}`, 0.92, 85)),
    ...away.flatMap((one) => evening(`2026-${one}`, 0.98, 85, "B")),
  ];
  // As fast as ever by tool A; 0.06 m/s under what tool B has shown, by which the card took 5 kg off.
  const back = ["05-19", "05-21"].flatMap((one) => evening(`2026-${one}`, 0.92, 80));
  const { loads, why } = next([...before, ...back], "trained", "2026-05-24");
  expect(loads).toEqual([85, 85]);
  expect(why[0]).toBe("80 kg last session, a slow day: planned on from 85 kg.");
});

test("in turn with another tool each day is judged by its own weekday's, and the card with it", () => {
  const week = (tuesday: string, thursday: string, slow = false) => [
    ...evening(`2026-${tuesday}`, slow ? 0.84 : 0.9, slow ? 80 : 85),
    ...evening(`2026-${thursday}`, 0.97, 85, "B"),
  ];
  const rows = [
    ...week("04-07", "04-09"),
    ...week("04-14", "04-16"),
    ...week("04-21", "04-23"),
    ...week("04-28", "04-30"),
  ];
  const [line] = weekView(bookOf(rows, "trained"), dayFromIso("2026-05-03")!, null, []).lines;
  const fastest = line!.sessions.map(({ dayWords, bands }) => [dayWords, bands[0]!.speed]);
  expect(fastest).toEqual([
    ["Tue 5 May", "0.85 or faster"],
    ["Thu 7 May", "0.91 or faster"],
  ]);
  // A new tool since a Thursday, for good, is no turn: the next Tuesday is by the one in use.
  const since = [...week("04-07", "04-09", false), ...week("04-14", "04-16")].map((row) =>
    row.map((cell) => (cell === "B" ? "A" : cell)),
  );
  const days = ["04-23", "04-26"].flatMap((one) => evening(`2026-${one}`, 0.97, 85, "B"));
  const [now] = weekView(
    bookOf([...since, ...days], "trained"),
    dayFromIso("2026-04-26")!,
    null,
    [],
  ).lines;
  expect(now!.why.join()).toMatch(/The speeds that decide the day are with another tool \(B;/);
  expect(now!.sessions.map(({ bands }) => bands[0]!.speed)).toEqual([
    "0.91 or faster",
    "0.91 or faster",
  ]);
  // By tool B both an ordinary Tuesday and a slow one would be slow.
  const slow = [...rows, ...week("05-05", "05-07", true).slice(0, 4)];
  const { loads, why } = next(slow, "trained", "2026-05-10");
  expect(loads[0]).toBe(85);
  expect(why[0]).toBe("80 kg last session, a slow day: planned on from 85 kg.");
  const usual = evening("2026-05-05", 0.9, 80);
  expect(next([...rows, ...usual], "trained", "2026-05-10").why.join(" ")).toMatch(
    /Lighter than the 85 kg before it, and no row says why/,
  );
});
