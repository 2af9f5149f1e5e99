import { answerColumn } from "../../../src/actions/answers/answer-column";
import { answerName } from "../../../src/actions/answers/answer-name";
import { printPages } from "../../../src/actions/pages/print-pages";
import { serveRequest } from "../../../src/actions/requests";
import { squadView } from "../../../src/actions/squad/squad-view";
import { weekView } from "../../../src/actions/week/week-view";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { memoryWorkbook } from "../memory-workbook";

const today = dayFromIso("2026-06-10")!;
const days = ["05-12", "05-15", "05-19", "05-22", "05-26", "05-29", "06-02", "06-05"];
const sets = (name: string) =>
  days.map((day) => [`2026-${day}`, name, "back squat", 1, 5, 80, "0.62 0.61 0.60 0.59 0.58"]);
const workbook = (spells: readonly unknown[][], name = "Jo", tab = "Availability") =>
  memoryWorkbook({
    Athletes: [
      ["Athlete", "Group"],
      ["Jo Renwick", "track"],
      ["Petra Sands", "road"],
    ],
    Sets: [
      ["Date", "Athlete", "Exercise", "Set", "Reps", "Load (kg)", "Rep speeds (m/s)"],
      ...sets(name),
      ...sets("Petra Sands"),
    ],
    [tab]: [["Athlete", "From", "May do"], ...spells],
  });
const lineOf = (book: ReturnType<typeof workbook>, athlete: string) =>
  weekView(book, today, null, []).lines.find((line) => line.athlete === athlete)!;
const whyOf = (book: ReturnType<typeof workbook>, athlete: string) =>
  squadView(book, today).lines.find((line) => line.athlete === athlete)!.why;

test("who has rows under a name that is asked about is not told to begin, but where they wait", () => {
  const book = workbook([]);
  const wait = "8 rows under “Jo” may be Jo Renwick: say so under Rows";
  const line = lineOf(book, "Jo Renwick");
  expect([line.brief, line.why[0], line.odd]).toEqual([wait.replace(/:.*/, ""), `${wait}.`, true]);
  expect(line.why.join(" ")).not.toContain("No work sets in the rows yet");
  expect(whyOf(book, "Jo Renwick")).toBe(`too few rows (no sets or jumps recorded). ${wait}`);
  expect(lineOf(book, "Petra Sands").why.join(" ")).not.toContain("under “");
  answerName(book, "Jo", "Jo Renwick", true);
  expect(lineOf(book, "Jo Renwick").sessions.length).toBeGreaterThan(0);
  expect(whyOf(book, "Jo Renwick")).not.toContain("under Rows");
});

test("a line read first for a name that waits says so in the list, not the usual hold", () => {
  const alone = lineOf(workbook([], "Jo Renwick"), "Petra Sands");
  expect([alone.odd, alone.brief.includes("under “")]).toEqual([false, false]);
  const line = lineOf(workbook([], "Petra Sandz"), "Petra Sands");
  expect([line.odd, line.brief]).toEqual([true, "8 rows under “Petra Sandz” may be Petra Sands"]);
});

test("a spell with a bad day and a bad word is named once", () => {
  const line = lineOf(
    workbook([["Jo Renwick", "soon", "protocol day 2"]], "Jo Renwick"),
    "Jo Renwick",
  );
  expect(line.why.filter((one) => one.startsWith("Availability"))).toEqual([
    "Availability B2 does not count: read it before anything is lifted.",
  ]);
});

test("a spell that was left out is named before anything is lifted, also under a name that is asked about", () => {
  const told = "Availability C2 does not count: read it before anything is lifted";
  const unread = (name: string) => workbook([[name, "2026-06-09", "protocol day 2"]], "Jo Renwick");
  const line = lineOf(unread("Jo Renwick"), "Jo Renwick");
  expect([line.why[0], line.odd, line.sessions.length > 0]).toEqual([`${told}.`, true, true]);
  // It comes before a step up, in the list as well, whatever the tab is called.
  expect(line.brief).toBe("Availability C2 does not count");
  const tab = "Availability: spring";
  const renamed = workbook([["Jo Renwick", "2026-06-09", "protocol day 2"]], "Jo Renwick", tab);
  expect(lineOf(renamed, "Jo Renwick").brief).toBe(`${tab} C2 does not count`);
  expect(lineOf(unread("Petra"), "Petra Sands").why[0]).toBe(`${told}.`);
  expect(whyOf(unread("Jo Renwick"), "Jo Renwick")).toContain(`. ${told}`);
  const mayDo = (spells: readonly unknown[][]) =>
    squadView(workbook(spells, "Jo Renwick"), today).lines.find(
      ({ athlete }) => athlete === "Jo Renwick",
    )!.mayDo;
  expect(mayDo([["Jo Renwick", "2026-06-09", "protocol day 2"]])).toBe(
    "unclear: a row was not read",
  );
  const out = ["Jo Renwick", "2026-06-01", "out"];
  expect(mayDo([out, ["Jo Renwick", "2026-06-09", "protocol day 2"]])).toBe("out");
  expect(lineOf(unread("Jo Renwick"), "Petra Sands").why.join(" ")).not.toContain("does not count");
});

test("a tab of which nothing counts yet is named above the week", () => {
  const book = memoryWorkbook({
    Athletes: [["Athlete"], ["Jo Renwick"]],
    Sets: [
      ["Date", "Athlete", "Exercise", "Set", "Reps", "Load (kg)", "Rep speeds (m/s)"],
      ...sets("Jo Renwick"),
    ],
    June: [
      ["Date", "Meet", "Location"],
      ["2026-06-20", "Mill ten", "away"],
    ],
  });
  expect(weekView(book, today, null, []).notes).toContain(
    "Nothing of “June” counts yet: say under Set up what it is.",
  );
});

test("rows whose dates wait for the coach's word are counted above the week, until it is given", () => {
  const book = memoryWorkbook({
    Athletes: [["Athlete"], ["Jo Renwick"]],
    Gym: [
      ["Date", "Athlete", "Exercise", "Set", "Reps", "Load (kg)", "Rep speeds (m/s)"],
      // The same day and month either way, which counts; the seven others could be two days each.
      ...["05/05", "08/05", "11/05", "12/05", "01/06", "03/06", "05/06", "08/06"].map((day) => [
        `${day}/2026`,
        ...sets("Jo Renwick")[0]!.slice(1),
      ]),
    ],
  });
  const { notes } = weekView(book, today, null, []);
  expect(notes).toContain(
    "7 rows of Gym do not count until what is asked under Set up is answered.",
  );
  const { id } = book.tabs().find(({ name }) => name === "Gym")!;
  answerColumn(book, id, { heading: "Date", column: 1, dateOrder: "day first" });
  expect(weekView(book, today, null, []).notes.join(" ")).not.toContain("do not count");
});

test("rows whose athlete or lift nobody names wait for the coach's word, too", () => {
  const plain = ["Date", "Athlete", "Exercise", "Set", "Reps", "Load (kg)", "Rep speeds (m/s)"];
  const book = memoryWorkbook({
    Athletes: [["Athlete"], ["Jo Renwick"]],
    Sets: [plain, ...sets("Jo Renwick")],
    "Block 3": [
      ["12.5.2026", "", "", ""],
      ["SQUAT", "kg", "reps", "m/s"],
      [1, 80, 5, 0.62],
      [2, 80, 5, 0.6],
    ],
  });
  const { id } = book.tabNamed("Block 3");
  serveRequest(book, "answerTable", { today: "2026-06-10", tabId: id, table: "Sets" });
  const { notes } = weekView(book, today, null, []);
  expect(notes).toContain(
    "2 rows of Block 3 do not count until what is asked under Set up is answered.",
  );
});

test("a spell under a name that may be two athletes' is told of both before anything is lifted, on paper too", () => {
  const book = (spell: readonly unknown[]) =>
    memoryWorkbook({
      Athletes: [["Athlete"], ["Jo Renwick"], ["Jan Renwick"], ["Petra Sands"]],
      Sets: [
        ["Date", "Athlete", "Exercise", "Set", "Reps", "Load (kg)", "Rep speeds (m/s)"],
        ...["Jo Renwick", "Jan Renwick", "Petra Sands"].flatMap(sets),
      ],
      Availability: [["Athlete", "From", "Until", "May do"], spell],
    });
  const out = book(["Renwick, J", "2026-06-09", "", "out"]);
  const told = "Availability A2 does not count";
  for (const athlete of ["Jo Renwick", "Jan Renwick"]) {
    const line = lineOf(out, athlete);
    expect([line.brief, line.odd]).toEqual([told, true]);
    expect(line.why[0]).toBe(`${told}: read it before anything is lifted.`);
  }
  expect(lineOf(out, "Petra Sands").why.join()).not.toContain("Availability");
  const asked = (of: typeof out) => {
    const pages = printPages(of, today, "cards", null, []);
    return pages.kind === "cards"
      ? [...new Set(pages.cards.map((card) => `${card.athlete}: ${card.without.ask}`))].sort()
      : [];
  };
  expect(asked(out)).toEqual([
    "Jan Renwick: Availability A2",
    "Jo Renwick: Availability A2",
    "Petra Sands: ",
  ]);
  // One that is over, or limits nothing, holds nobody back.
  for (const spell of [
    ["Renwick, J", "2026-05-01", "2026-06-09", "out"],
    ["Renwick, J", "2026-06-09", "", "full"],
  ])
    expect(lineOf(book(spell), "Jo Renwick").why.join()).not.toContain("Availability");
  answerName(out, "Renwick, J", "Jan Renwick", true);
  expect(lineOf(out, "Jan Renwick").sessions).toEqual([]);
  expect(lineOf(out, "Jo Renwick").why.join()).not.toContain("Availability");
});
