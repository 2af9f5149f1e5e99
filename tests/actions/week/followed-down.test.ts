import { weekView } from "../../../src/actions/week/week-view";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { memoryWorkbook } from "../memory-workbook";

const name = "Finn Albury";

/** One evening: a marker of 70 kg at a speed, then three fives at a load, as fast as it. */
const evening = (iso: string, marker: number, loadKg: number) => {
  const [year, month, date] = iso.split("-").map(Number);
  const day = new Date(year!, month! - 1, date!);
  const first = marker - 0.014 * (loadKg - 70);
  const speeds = (...all: number[]) => all.map((one) => one.toFixed(2)).join(" ");
  const of = (kind: string, set: number | "", reps: number, kg: number, all: string) => [
    ...[day, name, "back squat", kind, set, reps, kg, all],
    ...[kind === "work" ? "y" : "", "A"],
  ];
  return [
    of("marker", "", 3, 70, speeds(marker, marker + 0.01, marker - 0.01)),
    ...[1, 2, 3].map((set) =>
      of("work", set, 5, loadKg, speeds(first, first - 0.01, first - 0.02, first - 0.02)),
    ),
  ];
};
const head = ["Date", "Athlete", "Exercise", "Kind", "Set", "Reps", "Load (kg)", "Speeds"];
const next = (rows: readonly unknown[][], today: string) => {
  const book = memoryWorkbook({
    Athletes: [
      ["Athlete", "Experience", "Birth year", "Sessions a week"],
      [name, "trained", 1998, 2],
    ],
    Sets: [[...head, "Movement ok?", "Tool"], ...rows],
  });
  const [line] = weekView(book, dayFromIso(today)!, null, []).lines;
  const [first] = line!.sessions;
  return { ...line!, first: first! };
};
const of = (marker: number, loadKg: number, ...days: string[]) =>
  days.flatMap((one) => evening(`2026-${one}`, marker, loadKg));

// Tuesdays and Thursdays, as fast as ever at 85 kg; then five weeks of 0.08 m/s slower, which took 5 kg off each day.
const home = of(0.92, 85, "04-07", "04-09", "04-14", "04-16", "04-21", "04-23", "04-28", "04-30");
const slow = ["05-05", "05-07", "05-12", "05-14", "05-19", "05-21", "05-26", "05-28"];

test("five weeks of slow days end in a plan at what was lifted, and in a card that the same speed keeps", () => {
  const { why, first } = next([...home, ...of(0.84, 80, ...slow)], "2026-05-31");
  expect(why[0]).toMatch(/^Slipping, and 85 kg kept on none of the 8 days since 5 May: planned/);
  expect(first.loadKg).toBe(80);
  const [kept] = first.bands;
  expect(kept!.lift).toBe("80 kg");
  expect(Number.parseFloat(kept!.speed)).toBeLessThanOrEqual(0.84);
});

test("at that load, and as slow, it stays there for weeks", () => {
  const more = of(0.84, 80, "06-02", "06-04", "06-09", "06-11", "06-16", "06-18");
  const { first } = next([...home, ...of(0.84, 80, ...slow), ...more], "2026-06-21");
  expect(first.loadKg).toBe(80);
});
