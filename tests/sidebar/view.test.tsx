import render from "preact-render-to-string";
import type { WeekChange } from "../../src/actions/messages";
import { type State, startState } from "../../src/sidebar/state";
import { Sidebar } from "../../src/sidebar/view/sidebar";
import { rowsReadWords } from "../../src/words/row-check";
import { sidebarWords } from "../../src/words/sidebar";
import { rows, setUp, squad, week } from "./views";

const shown = (state: Partial<State>) =>
  render(<Sidebar state={{ ...startState("2026-06-28"), ...state }} dispatch={() => {}} />);
/** What a reader is told: the text without tags. */
const words = (html: string) => html.replace(/<[^>]+>/g, " ").replace(/\s+/g, " ");

test("the four views are buttons of a named navigation, the open one marked", () => {
  const html = shown({ view: "rows", rows });
  expect(html).toMatch(/<nav class="views" aria-label="Holdline views">/);
  expect(html).toMatch(/aria-current="page"[^>]*>Rows/);
  expect(html.match(/aria-current/g)).toHaveLength(1);
});

test("the number of cells and names to check is told as words beside its figure", () => {
  expect(words(shown({ view: "rows", toCheck: 3 }))).toContain(", 3 to check");
  expect(words(shown({ view: "rows", rows }))).not.toContain("to check");
});

test("the squad lists everybody with word and reason, and the word is never only a colour", () => {
  const text = words(shown({ view: "squad", squad }));
  for (const part of [
    "Tomas Reyerson",
    "slipping",
    "since 12 May",
    "Priya Tellander",
    "too few rows",
  ])
    expect(text).toContain(part);
});

test("the day's word alone is dressed, its reason stands plain after it", () => {
  const [first] = squad.lines;
  const lines = [{ ...first!, todayWhy: "back squat speed 7 % slower than usual" }];
  const html = shown({ view: "squad", squad: { ...squad, lines } });
  expect(html).toMatch(/class="word[^"]*">25 Jun: below usual<\/span>/);
  expect(words(html)).toContain("25 Jun: below usual , back squat speed 7 % slower than usual");
});

test("a name typed with signs of a page is shown as typed", () => {
  const html = shown({ view: "squad", squad });
  expect(html).toContain("&lt;b>Kofi&lt;/b>");
  expect(html).not.toContain("<b>Kofi");
});

test("next week's odd lines stand first with day, sets, load, and the rest after them", () => {
  const text = words(shown({ week }));
  expect(text.indexOf("Read first")).toBeLessThan(text.indexOf("The rest"));
  expect(text).toMatch(/Tomas Reyerson Tue 2×5 85 kg slipping : Load held\./);
  expect(text).toMatch(/Priya Tellander nothing proposed slipping : Not cleared\./);
});

test("write says how many rows and where, take back stands beside it, cautions above it", () => {
  const text = words(shown({ week }));
  expect(text).toMatch(/Lift inside a rack.*Write 1 row In the tab Next week\..*Take back/);
});

test("a week that stands in the tab as proposed can be written again by a quiet button", () => {
  const written = { ...week, isWritten: true, already: "Written: 1 row stands in Next week." };
  expect(words(shown({ week: written }))).toContain(
    "Write again Written: 1 row stands in Next week.",
  );
  expect(shown({ week: written })).not.toContain("btn main");
  expect(shown({ week })).toContain("btn main");
});

test("what is set by hand of one athlete's week can be put back as proposed, and only then", () => {
  const [line, ...others] = week.lines;
  const { athlete } = line!;
  const set = { ...week, lines: [{ ...line!, byHand: true }, ...others] };
  expect(words(shown({ week: set, athlete }))).toContain("As proposed");
  expect(words(shown({ week, athlete }))).not.toContain("As proposed");
});

test("rows deleted in the tab are written again by a button of their own, for the squad and for one athlete", () => {
  const [line, ...others] = week.lines;
  const deleted = { ...week, deleted: 2, lines: [{ ...line!, deleted: 1 }, ...others] };
  expect(words(shown({ week: deleted }))).toContain("Write 2 deleted rows again");
  expect(words(shown({ week: deleted, athlete: line!.athlete }))).toContain(
    "Write 1 deleted row again",
  );
  expect(words(shown({ week }))).not.toContain("deleted");
});

test("an opened athlete's fields all have names, and the bar is drawn with its words", () => {
  const html = shown({ week, athlete: "Tomas Reyerson" });
  for (const name of [
    "Block",
    "Sets a session",
    "Sessions this week",
    "Load, kg",
    "Day",
    "Contacts",
    "Stack",
  ])
    expect(words(html)).toContain(name);
  expect(html).toContain('aria-label="85 kg: 20+10+2.5 a side"');
  expect(html).toContain('aria-label="One plate step lighter"');
});

test("sessions that differ are told one by one above the fields, equal ones together", () => {
  const [line, ...others] = week.lines;
  const [session] = line!.sessions;
  const lead = (second: object) => {
    const sessions = [session!, { ...session!, dayWords: "Thu 2 Jul", ...second }];
    const lines = [{ ...line!, sessions }, ...others];
    const shownWeek = { ...week, lines };
    expect(words(shown({ week: shownWeek })).includes("Load held.; Thu 5×3 87.5")).toBe(
      "sets" in second,
    );
    return words(shown({ week: shownWeek, athlete: "Tomas Reyerson" }));
  };
  expect(lead({})).toContain("2×5 at 85 kg, Tue 30 Jun and Thu 2 Jul. Load held.");
  expect(lead({ sets: 5, reps: 3, loadKg: 87.5 })).toContain(
    "Tue 30 Jun: 2×5 at 85 kg; Thu 2 Jul: 5×3 at 87.5 kg. Load held.",
  );
});

test("another lift on the week's second day stands beside its day in the list", () => {
  const [line, ...others] = week.lines;
  const [session] = line!.sessions;
  const thursday = { ...session!, dayWords: "Thu 2 Jul", instead: "hip thrust, 90 kg" };
  const list = (...sessions: (typeof thursday)[]) =>
    words(shown({ week: { ...week, lines: [{ ...line!, sessions }, ...others] } }));
  expect(list(session!, thursday)).toContain("Load held.; Thu 2×5 hip thrust, 90 kg");
  expect(list({ ...thursday, dayWords: "Tue 30 Jun" }, thursday)).not.toContain("hip thrust");
});

test("block and load of each turn of the week are changed beside its own day, that of the first among the fields", () => {
  const [line, ...others] = week.lines;
  const [session] = line!.sessions;
  const thrust = { ...session!, day: "2026-07-02", dayWords: "Thu 2 Jul", loadKg: 90 };
  const fields = (second: object, changes: readonly WeekChange[] = []) => {
    const sessions = [session!, { ...thrust, ...second }];
    const lines = [{ ...line!, sessions }, ...others];
    return shown({ week: { ...week, lines }, athlete: "Tomas Reyerson", changes });
  };
  const turn = { turn: "hip thrust", lift: "hip thrust" };
  const both = fields(turn);
  expect(both.match(/<output>\d+/g)).toEqual(["<output>85", "<output>90"]);
  expect(both).toContain('aria-label="One plate step heavier, Thu 2 Jul"');
  const blocks = (html: string) => html.match(/aria-label="Block[^"]*"/g);
  expect(blocks(both)).toEqual(['aria-label="Block"', 'aria-label="Block, Thu 2 Jul"']);
  // A block outside the rotation stands among its choices.
  expect(fields({ ...turn, block: "3×8" })).toMatch(/Block, Thu 2 Jul.*<option>3×8/);
  expect(blocks(fields({ ...turn, instead: "leg press, by feel" }))).toHaveLength(1);
  // A second session of the first turn has its load.
  expect(fields({}).match(/<output>/g)).toHaveLength(1);
  expect(fields({ ...turn, instead: "leg press, by feel" }).match(/<output>/g)).toHaveLength(1);
  // Where both were set alike the other's can still be changed.
  const alike = { turn: "back squat in turn", loadKg: 85 };
  expect(fields(alike).match(/<output>85/g)).toHaveLength(2);
  const asked = fields(turn, [{ athlete: "Tomas Reyerson", turn: "hip thrust", loadKg: 95 }]);
  expect(asked.match(/<output>\d+/g)).toEqual(["<output>85", "<output>95"]);
});

test("a day on which nothing may be proposed cannot be chosen: with the fields the way back would be gone", () => {
  const [first, ...others] = week.lines;
  const days = [
    { day: "2026-06-30", label: "Tue 30 Jun", why: "" },
    { day: "2026-07-01", label: "Wed 1 Jul, refused", why: "before-race" },
    { day: "2026-07-02", label: "Thu 2 Jul, refused", why: "may-not-lift" },
  ];
  const lines = [{ ...first!, days }, ...others];
  const html = shown({ week: { ...week, lines }, athlete: "Tomas Reyerson" });
  expect(html).toMatch(/<option[^>]*value="2026-07-02"[^>]*disabled/);
  expect(html.match(/<option[^>]*disabled/g)).toHaveLength(1);
});

test("what was chosen stands in its field until the script answers, and then what the script says", () => {
  const change = { athlete: "Tomas Reyerson", loadKg: 95, contacts: 50 };
  const fields = { week, athlete: "Tomas Reyerson", changes: [change] };
  const waiting = shown({ ...fields, shown: [] });
  expect(waiting).toContain("<output>95</output>");
  expect(waiting).toContain('value="50"');
  const answered = shown({ ...fields, shown: [change] });
  expect(answered).toContain("<output>85</output>");
  expect(answered).toContain('value="40"');
});

test("each problem names its cell, what was found and what to do; only a proposed value is a button", () => {
  const html = shown({ view: "rows", rows });
  const text = words(html);
  expect(text).toMatch(/1204 of 1211 rows read/);
  expect(text).toMatch(/H412.*62.*Write 0\.62 if centimetres/);
  expect(text.match(/Write 0\.62/g)!.length).toBe(2);
  expect(text).toMatch(/Count as Tomas Reyerson.*Not Tomas Reyerson.*Not in the squad/);
  const alone = { ...rows, athletes: [] };
  expect(words(shown({ view: "rows", rows: alone }))).not.toContain("Not in the squad");
});

test("a name spelt like nobody's can be any athlete's, none chosen beforehand; one with a near spelling offers that", () => {
  const [name] = rows.names;
  const named = (near: readonly string[], athletes = rows.athletes) =>
    shown({
      view: "rows",
      rows: { ...rows, athletes, names: [{ ...name!, name: "Teddy", near }] },
    });
  const html = named([]);
  expect(words(html)).toMatch(
    /Who is “Teddy”\? No answer yet Priya Tellander Tomas Reyerson Go to C12 Count as this athlete Not in the squad/,
  );
  expect(html).toMatch(/<option selected value>No answer yet/);
  expect(html).toMatch(/<button[^>]*disabled[^>]*>Count as this athlete/);
  expect(named(["Tomas Reyerson"])).not.toContain("Who is");
  expect(named([], [])).not.toContain("Who is");
});

test("set-up asks one question at a time with three values, and says who can see the sheet", () => {
  const text = words(shown({ view: "setUp", setUp }));
  expect(text).toMatch(/In Sets, what is “v”\? It holds 0\.62, 0\.60, 0\.57/);
  expect(text).toContain("Something else: leave it alone");
  expect(text).toContain("Not found: Runs.");
  expect(text).toContain("Everyone who can open this spreadsheet can read the Diary");
});

test("what the coach said stands in words, with another choice where there is one, and can be forgotten", () => {
  const html = shown({ view: "setUp", setUp });
  expect(words(html)).toMatch(/Sets, “Wt”: lb .*Winter, the lift: back squat .*T\. Reyerson/);
  expect(html).toContain('aria-label="Change: Sets, “Wt”: lb"');
  expect(html).toMatch(/<input type="text" aria-label="Change: Winter, the lift: back squat"/);
  for (const what of ["Sets, “Wt”: lb", "Winter, the lift: back squat", "Kit list, none"])
    expect(html).toContain(`aria-label="Forget: ${what}"`);
  expect(html).not.toContain('aria-label="Forget: Sets, Sets"');
});

test("every rule stands under the name its row takes, with what holds, what is usual and the bounds", () => {
  const text = words(shown({ view: "setUp", setUp }));
  expect(text).toMatch(/Velocity loss cap\s+10 %, set by you; usual 20, allowed 5–50 %/);
  expect(text).toMatch(/Racks in the room\s+3 racks; allowed 0–20 racks/);
});

test.each([
  ["exercise", "In Winter, which lift was done? The rows do not say.", "Lift"],
  ["athlete", "Whose rows are in Winter? They name no athlete.", "Athlete"],
  ["bar", "In Winter, how heavy is the bar, in kg?", "Bar, kg"],
] as const)(
  "the %s of a whole tab is typed, with three cells beside the question",
  (about, asked, label) => {
    const samples = ["95x5x3", "90x5x3", "97.5x5x3"];
    const question = { tabId: 4, tab: "Winter", about, written: "", samples, guess: null };
    const choices = [{ answer: "back squat", words: "back squat" }];
    const html = shown({
      view: "setUp",
      setUp: { ...setUp, questions: [{ ...question, choices }] },
    });
    expect(words(html)).toContain(`${asked} It holds 95x5x3, 90x5x3, 97.5x5x3`);
    expect(html).toMatch(new RegExp(`<span>${label}</span><input type="text"`));
    expect(html).toContain('<option value="back squat">');
    // Nothing typed is nothing to remember.
    expect(html).toMatch(/<button type="button" class="btn" disabled[^>]*>Remember/);
  },
);

test("waiting is a progress bar with its words; a failure is an alert with a way on", () => {
  expect(shown({ busy: "Reading the rows" })).toMatch(/<label>Reading the rows …<progress/);
  const failed = shown({ error: "That tab is no longer there. Check again." });
  expect(failed).toMatch(/role="alert"><p>That tab is no longer there/);
  expect(words(failed)).toContain("Read again");
});

test("what Undo left behind can be read again, another sentence needs no reading", () => {
  expect(words(shown({ said: sidebarWords.undoneSince }))).toContain("Read again");
  expect(words(shown({ said: "15 rows new." }))).not.toContain("Read again");
});

test("empty squads say what to do", () => {
  expect(words(shown({ view: "squad", squad: { ...squad, lines: [] } }))).toContain("Open Set up");
  expect(words(shown({ week: { ...week, lines: [] } }))).toContain("name the athletes");
});

test("a workbook without a row is not called read: where its tabs are told is said", () => {
  const empty = { ...rows, summary: rowsReadWords(0, 0, 0), noRows: true, problems: [], names: [] };
  const text = words(shown({ view: "rows", rows: empty }));
  expect(text).toContain("No rows found yet. Open Set up to see which tabs were read.");
  expect(text).not.toContain("every row is used");
});

test("what can no longer be read is an alert in the view read without it, with one way on", () => {
  const said = "What you said can no longer be read.";
  const damaged = [{ what: "answers", said }] as const;
  const html = shown({ view: "squad", squad: { ...squad, damaged }, rows });
  expect(html).toMatch(/role="alert"><p>What you said can no longer be read\./);
  expect(words(html)).toContain("Forget it");
  expect(words(shown({ view: "rows", squad: { ...squad, damaged }, rows }))).not.toContain(said);
});

test("a column whose heading is wrong is one entry that asks about its heading, the rest folded away", () => {
  const [one] = rows.problems;
  const problems = Array.from({ length: 200 }, (_, row) => ({ ...one!, cell: `D${row + 2}` }));
  const html = shown({ view: "rows", rows: { ...rows, problems } });
  const text = words(html);
  expect(text).toContain("is the heading of column D right?");
  expect(html).toMatch(/<details><summary>199 more like it in column D</);
  expect(text).toContain("The first 100 are shown");
  expect(html.split("<details>")[0]!.match(/Go to D/g)).toHaveLength(1);
});

test("rows typed twice in great number do not ask about the heading over them", () => {
  const [one] = rows.problems;
  const problems = Array.from({ length: 9 }, (_, row) => ({
    ...one!,
    cell: `A${row + 2}`,
    kind: "doubled-row",
  }));
  const text = words(shown({ view: "rows", rows: { ...rows, problems } }));
  expect(text).toContain("8 more like it in column A");
  expect(text).not.toContain("heading of column");
});

test("the rows' page names the tabs no table was found in and the questions that wait; without any it says nothing", () => {
  const told = words(shown({ view: "rows", rows }));
  expect(told).toContain("Left alone: “Shopping”. If one is a table, say which under Set up.");
  expect(told).toContain("To answer under Set up: In Sets, what is “Feel”?");
  const none = words(shown({ view: "rows", rows: { ...rows, leftAlone: [], waiting: "" } }));
  expect(none).not.toMatch(/Left alone|To answer/);
});
