import type { WeekChange, WeekView } from "../../src/actions/messages";
import { printPages } from "../../src/actions/pages/print-pages";
import { serveRequest } from "../../src/actions/requests";
import { proposedWeek } from "../../src/actions/week/proposed-week";
import { weekToWrite } from "../../src/actions/week/week-to-write";
import { weekView } from "../../src/actions/week/week-view";
import { dayFromIso, isoFromDay } from "../../src/coaching/calendar/day";
import { memoryWorkbook } from "./memory-workbook";
import { writeWeek } from "./week/write-alone";

const names = ["Wren Castellow", "Tomas Reyerson"];
const first = dayFromIso("2026-04-07")!;
const head = ["Date", "Athlete", "Exercise", "Set", "Kind", "Reps", "Load (kg)", "Bar", "Speeds"];
const weeks = [0, 1, 2];
const today = first + 7 * 2 + 5;

/** Three fives on a Tuesday or Thursday; the speed falls by 0.012 m/s a kg, and a thrust is 0.3 m/s quicker. */
const evening = (name: string, exercise: string, days: number, loadKg: number, timed: boolean) =>
  [1, 2, 3].map((set) => {
    const speed = 1.5 - 0.012 * loadKg + 0.01 * (days % 3) + (exercise === "hip thrust" ? 0.3 : 0);
    const reps = [speed, speed, speed - 0.01, speed - 0.02, speed - 0.02];
    const said = timed ? reps.map((one) => one.toFixed(2)).join(" ") : "";
    return [isoFromDay(first + days), name, exercise, set, "work", 5, loadKg, 20, said];
  });
/** Squats on Tuesdays, thrusts on Thursdays. */
const bookOf = ({ timed = true, thrusters = names, thrust = "hip thrust" } = {}) =>
  memoryWorkbook({
    Athletes: [["Athlete", "Sessions a week"], ...names.map((name) => [name, 2])],
    Sets: [
      head,
      ...weeks.flatMap((week) =>
        names.flatMap((name, at) => [
          ...evening(name, "back squat", 7 * week, 75 + 10 * at, true),
          ...evening(
            name,
            thrusters.includes(name) ? thrust : "back squat",
            7 * week + 2,
            thrusters.includes(name) ? 90 + 10 * at : 75 + 10 * at,
            timed,
          ),
        ]),
      ),
    ],
  });
const cardsOf = (book: ReturnType<typeof bookOf>) => {
  const pages = printPages(book, today, "cards", null, []);
  return pages.kind === "cards" ? pages.cards.filter(({ athlete }) => athlete === names[0]) : [];
};
const plansOf = (book: ReturnType<typeof bookOf>) => {
  const pages = printPages(book, today, "rack plan", null, []);
  return pages.kind === "rack plan" ? pages.plans : [];
};

test("each lift in turn has a card with its own plates, its own speeds and what to lift when it is slow", () => {
  const [squat, thrust] = cardsOf(bookOf());
  expect([squat!.lift, thrust!.lift].map(({ name, load, plates }) => [name, load, plates])).toEqual(
    [
      ["Back squat", "75 kg", "25 + 2.5 a side"],
      ["Hip thrust", "90 kg", "25 + 10 a side"],
    ],
  );
  // 1.5 − 0.012·75 is 0.6, 1.8 − 0.012·90 is 0.72; a first set's mean is some hundredths less.
  const usual = [squat!, thrust!].map(({ firstSet }) => Number(firstSet));
  expect(usual[0]).toBeCloseTo(0.59, 1);
  expect(usual[1]! - usual[0]!).toBeCloseTo(0.12, 1);
  expect(thrust!.bands.map(({ lift }) => lift)).toEqual(["90", "85", "80", ""]);
  expect(thrust!.bands[0]!.plates).toBe("25 + 10");
  // The floor is that lift's at that load: a fifth under the fastest repetition.
  const floors = [squat!, thrust!].map(({ bands }) => Number(bands[0]!.floor));
  expect(floors[1]! - floors[0]!).toBeCloseTo(0.8 * 0.12, 1);
});

test("a lift in turn whose speeds were not taken is judged by eye on its card, not by another lift's speeds", () => {
  const [squat, thrust] = cardsOf(bookOf({ timed: false }));
  expect([squat!.noBands, thrust!.noBands]).toEqual([null, "no speed"]);
  expect(thrust!.firstSet).toBe("");
  expect(thrust!.lift.say).toBe("End a set when the movement goes.");
});

test("the rack plan has an evening for each lift, and names them where both are done", () => {
  const lines = (book: ReturnType<typeof bookOf>) =>
    plansOf(book).map(({ racks }) =>
      racks.map((rack) =>
        rack.lines.map(({ athlete, load, sets }) => `${athlete} ${sets} ${load}`),
      ),
    );
  expect(lines(bookOf()).map((racks) => racks.flat().sort())).toEqual([
    ["Tomas 3×5 85", "Wren 3×5 75"],
    ["Tomas 3×5 100", "Wren 3×5 90"],
  ]);
  // On Thursday one thrusts and the other squats: no bar is for both.
  const [, thursday] = lines(bookOf({ thrusters: names.slice(0, 1) }));
  expect(thursday!.map((rack) => rack.join()).sort()).toEqual([
    "Tomas, back squat 3×5 85",
    "Wren, hip thrust 3×5 90",
  ]);
});

test("in the week and its tab a lift in turn stands by its own name, load and step", () => {
  const book = bookOf();
  const line = weekView(book, today, null, []).lines.find(({ athlete }) => athlete === names[0])!;
  expect(line.sessions.map(({ lift, loadKg, instead }) => [lift, loadKg, instead])).toEqual([
    ["", 75, ""],
    ["hip thrust", 90, ""],
  ]);
  expect(line.ahead.map(({ lift, steps }) => [lift, steps.length])).toEqual([
    ["back squat", 4],
    ["hip thrust", 4],
  ]);
  writeWeek(book, weekToWrite(proposedWeek(book, today, null, []), null));
  const tab = book.tabs().find(({ name }) => name === "Next week")!;
  const rows = book.formulas(tab.id).map((row) => String(row[3] ?? ""));
  const said = rows.filter((text) => text.includes("DAY_LOAD"));
  expect(said.map((text) => text.slice(0, 11))).toEqual([
    "=DAY_LOAD(C",
    '="hip thrus',
    "=DAY_LOAD(C",
    '="hip thrus',
  ]);
});

test("a lift in turn whose name would be a formula stays a name in the cell's own", () => {
  const thrust = 'thrust"&HYPERLINK("https://example.org","see")&"';
  const book = bookOf({ thrust });
  writeWeek(book, weekToWrite(proposedWeek(book, today, null, []), null));
  const tab = book.tabs().find(({ name }) => name === "Next week")!;
  const cells = book.formulas(tab.id).map((row) => String(row[3] ?? ""));
  const own = cells.filter((text) => text.includes("HYPERLINK"));
  expect(own.length).toBeGreaterThan(0);
  for (const text of own) {
    // A text in quotes ends at the first quote that is not doubled.
    const [said, ...rest] = /^="((?:[^"]|"")*)"&(DAY_LOAD\(.*)$/.exec(text)!.slice(1);
    expect(said!.replaceAll('""', '"')).toBe(`${thrust}: `);
    expect(rest.join("")).not.toContain("HYPERLINK");
  }
});

test("the head coach's page names the lift that is done in turn", () => {
  const pages = printPages(bookOf(), today, "week page", null, []);
  const lines = pages.kind === "week page" ? pages.paper.lines : [];
  const wren = lines.find(({ athlete }) => athlete === names[0])!;
  expect([wren.next, wren.nextDays]).toEqual([
    "3×5 at 75 kg",
    "Tue and Thu 3×5 hip thrust at 90 kg",
  ]);
});

test("a block set in the sidebar of the lift in turn is that lift's alone, in week, tab and card", () => {
  const book = bookOf();
  const [name] = names;
  const week = { today: isoFromDay(today), monday: null };
  const lineOf = (changes: readonly WeekChange[]) => {
    const view = serveRequest(book, "weekView", { ...week, changes }) as WeekView;
    return view.lines.find(({ athlete }) => athlete === name)!;
  };
  const [squat, thrust] = lineOf([]).sessions;
  const changes = [{ athlete: name!, turn: thrust!.turn, block: "5×3", loadKg: 92.5 }];
  const line = lineOf(changes);
  expect(line.sessions.map(({ block, loadKg }) => `${block} ${loadKg}`)).toEqual([
    `${squat!.block} ${squat!.loadKg}`,
    "5×3 92.5",
  ]);
  expect(line.why.find((one) => /in turn/.test(one))).toMatch(
    new RegExp(`Set by you; ${thrust!.block} at ${thrust!.loadKg} kg was proposed\\.`),
  );
  const monday = isoFromDay(first + 20);
  serveRequest(book, "writeWeek", { ...week, monday, changes, athletes: null });
  expect(lineOf([]).sessions.map(({ block }) => block)).toEqual([squat!.block, "5×3"]);
  expect(cardsOf(book).map(({ lift }) => `${lift.sets}×${lift.reps}`)).toEqual([
    squat!.block,
    "5×3",
  ]);
});

test("a load set in the sidebar of the lift in turn stands in week, tab, card and rack plan, beside the squat's own", () => {
  const book = bookOf();
  const [name] = names;
  const message = (changes: readonly WeekChange[]) => ({ today: isoFromDay(today), changes });
  const lineOf = (changes: readonly WeekChange[]) => {
    const view = serveRequest(book, "weekView", { ...message(changes), monday: null }) as WeekView;
    return view.lines.find(({ athlete }) => athlete === name)!;
  };
  const { turn } = lineOf([]).sessions[1]!;
  const changes = [
    { athlete: name!, loadKg: 70 },
    { athlete: name!, turn, loadKg: 95 },
  ];
  const line = lineOf(changes);
  expect(line.sessions.map(({ loadKg, platesWords }) => [loadKg, platesWords])).toEqual([
    [70, "25 a side"],
    [95, "25 + 10 + 2.5 a side"],
  ]);
  expect(line.why[0]).toMatch(/^Set by you; \d+ kg was proposed\. Its reason: /);
  expect(line.why.find((one) => /in turn/.test(one))).toMatch(
    /^Hip thrust in turn: 3×5 at 95 kg on Thu 30 Apr\. Set by you; 90 kg was proposed\./,
  );
  expect(line.ahead.map(({ steps }) => steps[0]!.loadKg)).toEqual([70, 95]);
  const monday = isoFromDay(first + 20);
  serveRequest(book, "writeWeek", { ...message(changes), monday, athletes: null });
  const tab = book.tabs().find(({ name: one }) => one === "Next week")!;
  const rows = book.values(tab.id).filter((row) => row[0] === name);
  expect(rows.map((row) => [row[6], row[12]])).toEqual([
    [70, expect.anything()],
    [95, "Hip thrust in turn. Set by you; 90 kg was proposed."],
  ]);
  // Opened again, and a later change of the squat's alone: the other stays.
  expect(lineOf([]).sessions.map(({ loadKg }) => loadKg)).toEqual([70, 95]);
  const later = lineOf([{ athlete: name!, loadKg: 72.5 }]);
  expect(later.sessions.map(({ loadKg }) => loadKg)).toEqual([72.5, 95]);
  expect(cardsOf(book).map(({ lift }) => lift.load)).toEqual(["70 kg", "95 kg"]);
  const loads = plansOf(book).map(({ racks }) =>
    racks.flatMap(({ lines }) => lines.map(({ load }) => load)).sort(),
  );
  expect(loads).toEqual([
    ["70", "85"],
    ["100", "95"],
  ]);
  // What was written is counted on in the week after.
  const next = weekView(book, today, first + 27, []);
  const ahead = next.lines.find(({ athlete }) => athlete === name)!;
  expect(ahead.sessions.map(({ loadKg }) => loadKg)).toEqual([70, 95]);
});
