import { cardPages } from "../../../src/actions/pages/card-pages";
import { printableWeek } from "../../../src/actions/pages/printable-week";
import { rackPages } from "../../../src/actions/pages/rack-pages";
import { squadView } from "../../../src/actions/squad/squad-view";
import { proposedWeek } from "../../../src/actions/week/proposed-week";
import { weekToWrite } from "../../../src/actions/week/week-to-write";
import { weekView } from "../../../src/actions/week/week-view";
import { gymStepKg } from "../../../src/coaching/blocks/gym-step";
import { isoFromDay } from "../../../src/coaching/calendar/day";
import { decideToday } from "../../../src/coaching/next-week/on-the-day/decide-today";
import { kgFromPounds } from "../../../src/coaching/units/mass";
import { firstDay, wobble } from "../../coaching/series/invented-season";
import { memoryWorkbook } from "../memory-workbook";

/** Three weeks of 3×5 at 155 lb in a gym of pounds, a marker of three at 115 lb before each. */
const ada = "Ada Fenwright";
const di = "Di Pellworth";
const speeds = (lb: number, count: number, day: number) =>
  Array.from({ length: count }, (_, at) =>
    (1.6 - 0.0042 * lb + 0.02 * wobble(day) - 0.006 * at).toFixed(2),
  ).join(" ");
const session = (name: string, day: number, markers: boolean) => {
  const row = (kind: string, set: unknown, reps: number, lb: number) => {
    return [isoFromDay(day), name, "squat", set, kind, reps, lb, speeds(lb, reps, day), 45, "y", 3];
  };
  return [
    ...(markers ? [row("marker", "", 3, 115)] : []),
    ...[1, 2, 3].map((set) => row("work", set, 5, 155)),
  ];
};
const days = [0, 1, 2].flatMap((week) => [1, 3].map((at) => firstDay + 7 * week + at));
type Tables = Readonly<Record<string, readonly (readonly unknown[])[]>>;
const gymTables: Tables = {
  Athletes: [
    ["Athlete", "Experience"],
    [ada, "trained"],
    [di, "trained"],
  ],
  Sets: [
    ["Date", "Athlete", "Exercise", "Set", "Kind", "Reps", "Load (lb)", "Rep speeds"].concat(
      "Bar mass (lb)",
      "Movement ok?",
      "Reps in reserve",
    ),
    ...days.flatMap((day) => [...session(ada, day, true), ...session(di, day, false)]),
  ],
  Plates: [
    ["Mass (lb)", "Thickness (in)", "Number owned"],
    ...[45, 35, 25, 10, 5, 2.5].map((lb) => [lb, 1, 8]),
  ],
};
const gym = (besides: Tables = {}) => memoryWorkbook({ ...besides, ...gymTables });
const sunday = firstDay + 20;

test("in a gym of pounds a step is 5 lb, and the reason names the load that stands on the line", () => {
  const line = weekView(gym(), sunday, null, []).lines.find(({ athlete }) => athlete === ada)!;
  // 155 lb are 70.31 kg, 160 are 72.57.
  expect(line.sessions[0]!.loadKg).toBeCloseTo(kgFromPounds(160), 6);
  expect(line.why[0]).toBe("Moved well, volume done, speed held: a step on, 155 to 160 lb.");
  expect(line.ahead[0]!.steps[0]).toMatchObject({ block: "5×3", loadKg: 72.57 });
  expect(line.sessions[0]!.markerKg).toBe(52.16);
});

test("stacks of pound plates have heights, and what is built of them is named as it is stamped", () => {
  const jumps = days.flatMap((day) => [
    [isoFromDay(day), ada, "box jump", "3x45+25", "y", ""],
    [isoFromDay(day), ada, "drop jump", "", "", 30],
  ]);
  const book = gym({
    Jumps: [["Date", "Athlete", "Test", "Stack", "Cleared?", "Drop height (cm)"], ...jumps],
  });
  const week = printableWeek(book, sunday, null, []);
  const [card] = cardPages(week).filter(({ athlete }) => athlete === ada);
  const amounts = card!.jumps.lines.map(({ amount }) => amount).join("; ");
  // Plates an inch thick each: four of them are 10.2 cm; eight owned, and 30 cm wished for, eight are 20.3.
  expect(amounts).toContain("10.2 cm (3×45+25)");
  expect(amounts).toMatch(/from 20\.3 cm \(8×(45|35|25|10|5|2\.5)\)/);
  const [plan] = rackPages(week);
  const needed = new Map(plan!.plates.map(({ plate, stack, drop }) => [plate, [stack, drop]]));
  expect(needed.get("45")![0]).toBe(3);
  expect(needed.get("25")![0]).toBe(1);
  expect([...needed.values()].map(([, drop]) => drop)).toContain(8);
  const line = weekView(book, sunday, null, []).lines.find(({ athlete }) => athlete === ada)!;
  expect(line.sessions[0]!.stack).toBe("3×45+25");
  expect(squadView(book, sunday).lines[0]!.why).not.toMatch(/gave no height/);
});

test("the card and the phone take the same load for a slow marker", () => {
  const week = printableWeek(gym(), sunday, null, []);
  const card = cardPages(week).find(({ athlete }) => athlete === ada)!;
  // 5 % off 160 lb is 152, built as 150; 10 % off is 144, built as 140.
  expect(card.bands.map(({ lift }) => lift)).toEqual(["160", "150", "140", ""]);
  // Three weeks of rows leave the line's own interval wide: just past the band the marker is repeated.
  expect(card.bands[1]!.again).toMatch(/^\d\.\d\d( to \d\.\d\d)?: repeat the set first$/);
  const { session } = week.sessions.find(({ line }) => line.athlete === ada)!;
  const usual = session.usualLeadSpeed!;
  const phone = (slower: number) => {
    const seen = { kind: "speeds", sets: [[usual - slower], [usual - slower]] } as const;
    const plan = { plannedKg: session.loadKg, setsLeft: 5, usualSpeed: usual, usualDrop: 0.1 };
    const { plates } = week;
    const day = { ...plan, stepKg: gymStepKg(plates), gym: { plates, barKg: session.barKg } };
    const said = decideToday(seen, day);
    return said.ok && said.value.kind === "lighter" ? said.value.loadKg : null;
  };
  expect(phone(0.08)).toBeCloseTo(kgFromPounds(150), 6);
  expect(phone(0.13)).toBeCloseTo(kgFromPounds(140), 6);
});

test.each([
  ["the gym's plates listed", true],
  ["no table of plates", false],
])(
  "where no row names the bar it is one of 45 lb: loads are those of pound plates, %s",
  (_, listed) => {
    const without = (table: string, drop: RegExp) => {
      const [head = [], ...rows] = gymTables[table]!;
      const kept = head.map((name) => !drop.test(String(name)));
      return [head, ...rows].map((row) => row.filter((_cell, at) => kept[at]));
    };
    const { Plates: plates, ...tables } = gymTables;
    const book = memoryWorkbook({
      ...tables,
      Sets: without("Sets", /^Bar/),
      ...(listed && { Plates: plates! }),
    });
    const line = weekView(book, sunday, null, []).lines.find(({ athlete }) => athlete === ada)!;
    const session = line.sessions[0]!;
    // A step on from 155: 160 is 45 and 57.5 a side; 5 % off it is built as 150, 10 % as 140.
    expect(session).toMatchObject({ platesWords: "45 + 10 + 2.5 a side", markerKg: 52.16 });
    expect(session.bands.map(({ lift }) => lift)).toEqual([
      ...["160 lb", "150 lb", "140 lb", "no heavy work"],
    ]);
    const cells = weekToWrite(proposedWeek(book, sunday, null, []), [ada]).lines[0]!.cells("lb");
    const inCell = (cell: typeof cells.today) =>
      typeof cell === "function" ? cell((column) => `<${column}>`) : null;
    expect([cells.marker, cells.load]).toEqual([115, 160]);
    expect(inCell(cells.plates)).toEqual({
      formula: '=IF(<load>=160,"45 + 10 + 2.5","45 + 10 + 2.5 make 160")',
    });
    const typed = inCell(cells.today);
    expect(JSON.stringify(typed)).toMatch(/,5,<marker>,\\"\\",45,/);
    const [plan] = rackPages(printableWeek(book, sunday, null, []));
    expect(plan!.racks[0]!.lines[0]).toMatchObject({ load: "160", plates: "45 + 10 + 2.5" });
  },
);

test("who does no marker set is judged on the first work set, the same on card, sidebar and phone", () => {
  const card = cardPages(printableWeek(gym(), sunday, null, []));
  const own = card.find(({ athlete }) => athlete === di)!;
  // Work sets of 1.6 − 0.0042·160 at 160 lb for their fastest repetition, the mean of five 0.012 under it.
  expect(own).toMatchObject({ marker: null, noBands: null });
  expect(Number(own.firstSet)).toBeCloseTo(1.6 - 0.0042 * 160 - 0.012, 1);
  expect(own.bands.map(({ lift }) => lift)).toEqual(["160", "150", "140", ""]);
  expect(own.lift.say).toMatch(/under the speed floor/);
  expect(card.find(({ athlete }) => athlete === ada)!.firstSet).toBe("");
  const cells = weekToWrite(proposedWeek(gym(), sunday, null, []), [di])
    .lines.find(({ athlete }) => athlete === di)!
    .cells("lb");
  const typed = typeof cells.today === "function" ? cells.today((column) => `<${column}>`) : null;
  // Five sets of three, and four after the one that decides.
  expect(JSON.stringify(typed)).toMatch(
    new RegExp(`"=DAY_LOAD\\(<typed>,${Number(own.firstSet)},<load>,4,5,<load>,`),
  );
});

test.each([
  [[20, 2.5, 1.25], 2.5],
  [[20, 2.5], 5],
  [[20, 1.25, 0.5], 2.5],
  [[20, kgFromPounds(2.5)], kgFromPounds(5)],
  [[], 2.5],
])("plates of %p kg: a step of %p kg", (masses, step) => {
  const plates = masses.map((massKg) => ({ row: 2, massKg, thicknessCm: 1, owned: null }));
  expect(gymStepKg(plates)).toBeCloseTo(step, 9);
});
