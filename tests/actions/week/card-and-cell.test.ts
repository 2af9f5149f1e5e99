import { proposedWeek } from "../../../src/actions/week/proposed-week";
import { weekToWrite } from "../../../src/actions/week/week-to-write";
import { dayLoadFunction } from "../../../src/catalogue/day-load";
import { isoFromDay } from "../../../src/coaching/calendar/day";
import { firstDay, wobble } from "../../coaching/series/invented-season";
import { memoryWorkbook } from "../memory-workbook";

const name = "Ada Fenwright";
const days = [0, 1, 2].flatMap((week) => [1, 3].map((at) => firstDay + 7 * week + at));
const head = ["Date", "Athlete", "Exercise", "Kind", "Reps", "Load (kg)", "Rep speeds"];

/** Three weeks at one load; the gym's plates by mass, kg, and how many of each, none for no table. */
const book = (loadKg: number, barKg: number, plates: readonly (readonly number[])[], off: number) =>
  memoryWorkbook({
    Athletes: [
      ["Athlete", "Experience"],
      [name, "trained"],
    ],
    Sets: [
      [...head, "Bar mass (kg)"],
      ...days.flatMap((day, at) =>
        [["marker", 3, barKg] as const, ...Array(3).fill(["work", 5, loadKg] as const)].map(
          ([kind, reps, kg]) => [
            ...[isoFromDay(day), name, "squat", kind, reps, kg],
            ...[(1.4 - 0.008 * kg + 0.02 * wobble(at)).toFixed(2), barKg],
          ],
        ),
      ),
    ],
    Rules: [
      ["Rule", "Value"],
      ["Load off on a slow day", off],
    ],
    ...(plates.length > 0 && {
      Plates: [
        ["Mass (kg)", "Thickness (cm)", "Number owned"],
        ...plates.map(([kg, owned]) => [kg, 3, owned]),
      ],
    }),
  });

/** What the tab's own formula answers to what is typed for a marker. */
const typedIn = (workbook: ReturnType<typeof book>, monday: number) => {
  const week = proposedWeek(workbook, monday - 1, monday, []);
  const session = week.lines[0]!.line.sessions[0]!;
  const { today } = weekToWrite(week, null).lines[0]!.cells("kg");
  const written = typeof today === "function" ? today((column) => `<${column}>`) : today;
  const formula = (written as { formula: string }).formula;
  const args = formula.slice("=DAY_LOAD(".length, -1).split(",");
  const cells: Readonly<Record<string, unknown>> = {
    "<load>": session.loadKg,
    "<marker>": session.markerKg,
    '""': "",
  };
  const plates = workbook.tabs().find((tab) => tab.name === "Plates");
  const valued = args.map((arg) =>
    arg.includes("!") ? workbook.values(plates!.id) : (cells[arg] ?? Number(arg)),
  );
  return {
    session,
    said: (typed: string) => String(dayLoadFunction.compute([typed, ...valued.slice(1)])),
  };
};

const club = [25, 20, 15, 10, 5, 2.5, 1.25].map((kg) => [kg, 6]);
test.each([
  ["the club's plates", 85, 20, club, 0.1],
  ["half a kilogram a side, too", 121.5, 20, [...club, [0.5, 2], [0.25, 2]], 0.1],
  [
    "few pairs",
    90,
    20,
    [
      [20, 4],
      [10, 2],
      [5, 2],
    ],
    0.1,
  ],
  ["pairs of 15 kg alone", 80, 20, [[15, 6]], 0.2],
  ["no table of plates", 82.5, 20, [], 0.1],
  ["the bar alone, plates listed", 20, 20, club, 0.1],
  ["the bar alone, no table", 20, 20, [], 0.1],
  ["a plate step over the bar, no table", 17.5, 15, [], 0.3],
])("%s: the card's bands and the cell beside a typed speed name one load", (...given) => {
  const [, loadKg, barKg, plates, off] = given;
  const { session, said } = typedIn(book(loadKg, barKg, plates, off), firstDay + 21);
  const usual = Math.round(100 * session.usualLeadSpeed!);
  expect(session.bands.length).toBeGreaterThan(1);
  for (let hundredths = usual + 5; hundredths >= usual - 20; hundredths--) {
    const speed = hundredths / 100;
    const band = session.bands.find(
      ({ from, to }) => (from ?? 0) <= speed + 1e-9 && speed <= (to ?? 9) + 1e-9,
    )!;
    const kgOf = (answer: string) =>
      answer.includes("no heavy work")
        ? null
        : Number(/(?:lift |again: |^)([\d.]+)/.exec(answer)?.[1]);
    const once = said(speed.toFixed(2));
    const twice = said(`${speed.toFixed(2)} then ${speed.toFixed(2)}`);
    expect([speed, kgOf(once), kgOf(twice), once.startsWith("repeat")]).toEqual([
      speed,
      band.loadKg,
      band.loadKg,
      band.repeatFrom !== null && speed >= band.repeatFrom,
    ]);
    if (band.loadKg !== null) expect(band.loadKg).toBeGreaterThanOrEqual(barKg);
  }
});
