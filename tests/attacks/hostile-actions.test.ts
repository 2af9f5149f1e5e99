import { readFileSync } from "node:fs";
import { join } from "node:path";
import type {
  AthleteView,
  DiaryView,
  Done,
  RowCheckView,
  SetUpView,
  SquadView,
  WeekView,
} from "../../src/actions/messages";
import { type requests, serveRequest } from "../../src/actions/requests";
import type { CellData } from "../../src/local-host/workbook-data";
import { plainTab } from "../../src/local-host/workbook-data";
import { memoryWorkbook } from "../actions/memory-workbook";
import { local } from "../local-host/built";
import { hostileClub } from "./corpus/hostile-club";
import { formulas, hostileText, keys } from "./corpus/hostile-text";

const today = "2026-06-28";
const club = hostileClub();
const names = club.Athletes!.slice(1).map(([name]) => name as string);
const week = { today, monday: null, changes: [] };

type Held = {
  readonly ask: (name: string, message: object) => unknown;
  /** Every cell of a tab: what it shows, and its formula or "". */
  readonly cells: (tab: string) => readonly { readonly value: unknown; readonly formula: string }[];
  readonly close: () => void;
};

const inMemory = async (): Promise<Held> => {
  const book = memoryWorkbook(club);
  return {
    ask: (name, message) => serveRequest(book, name, message),
    cells: (tab) => {
      const { id } = book.tabNamed(tab);
      const written = book.formulas(id);
      return book
        .values(id)
        .flatMap((row, i) => row.map((value, j) => ({ value, formula: written[i]![j]! })));
    },
    close: () => {},
  };
};
const onThePlatform = async (): Promise<Held> => {
  const cell = (value: unknown): CellData | null =>
    value === "" ? null : { value: value as string | number };
  const host = await local.openHost({
    workbook: {
      name: "Quillbeck",
      tabs: Object.entries(club).map(([name, rows]) =>
        plainTab(
          name,
          rows.map((row) => row.map(cell)),
        ),
      ),
      names: [],
      properties: {},
    },
    bundleSource: readFileSync(join(__dirname, "../../dist/code.js"), "utf8"),
    files: {},
  });
  return {
    ask: (name, message) => host.run(name, [message]),
    cells: (tab) => {
      const range = host.tab(tab).getDataRange();
      const written = range.getFormulas();
      return range
        .getValues()
        .flatMap((row, i) => row.map((value, j) => ({ value, formula: written[i]![j]! })));
    },
    close: host.dispose,
  };
};

const before = Object.getOwnPropertyNames(Object.prototype);
const functionsBefore = Object.getOwnPropertyNames(Function.prototype);

describe.each([
  ["a workbook in memory", inMemory],
  ["the platform's services", onThePlatform],
] as const)("hostile text in %s", (_, open) => {
  let held: Held;
  beforeAll(async () => {
    held = await open();
  });
  afterAll(() => held.close());
  afterEach(() => {
    expect(Object.getOwnPropertyNames(Object.prototype)).toEqual(before);
    expect(Object.getOwnPropertyNames(Function.prototype)).toEqual(functionsBefore);
  });
  /** What is asked, as the sidebar gets it: plain JSON, nothing lost on the way. */
  const asked = <View>(name: keyof typeof requests, message: object): View => {
    const answer = held.ask(name, message);
    const plain = JSON.parse(JSON.stringify(answer)) as View;
    expect(plain).toEqual(answer);
    return plain;
  };

  test("each athlete has a line of her own, whatever she is called", () => {
    const { lines } = asked<SquadView>("squadView", { today });
    const shown = lines.map(({ athlete }) => athlete);
    expect(new Set(shown).size).toBe(shown.length);
    for (const key of keys) expect(shown).toContain(key);
    for (const text of formulas) expect(shown).toContain(text.trim());
    // “=1+1” stands there three times but for spaces, Tomas Reyerson twice but for signs nobody sees.
    expect(shown.length).toBe(names.length - 3);
  });

  test.each(keys)("the athlete %s has her own sets, diary and session", (athlete) => {
    const view = asked<AthleteView>("athleteView", { today, athlete });
    expect(view.line.athlete).toBe(athlete);
    expect(view.loadSpeed?.points.length).toBe(12);
    expect(asked<DiaryView>("diaryView", { today, athlete }).athlete).toBe(athlete);
  });

  test("rows, set up and all papers are answered in words and figures", () => {
    const { problems } = asked<RowCheckView>("rowCheck", { today });
    expect(problems.map(({ kind }) => kind)).toContain("name-letters");
    // A rule named for a prototype's key is a rule nobody knows.
    expect(problems.filter(({ kind }) => kind === "rule-unknown")).toHaveLength(keys.length);
    for (const { found, why, toDo } of problems) {
      expect((found + why + toDo).length).toBeLessThan(1_500);
    }
    const { rules } = asked<SetUpView>("setUpView", { today });
    for (const value of Object.values(rules)) expect(typeof value).toBe("number");
    for (const kind of ["cards", "rack plan", "week page", "pictures"]) {
      expect(asked("printPages", { ...week, kind })).toBeTruthy();
    }
  });

  test("a week is written: text that begins like a formula stays text, and every formula is ours", () => {
    const view = asked<WeekView>("weekView", week);
    const { said } = asked<Done>("writeWeek", {
      today,
      monday: view.monday,
      changes: [],
      athletes: null,
    });
    expect(said).toMatch(/\d+ rows new/);
    const cells = held.cells("Next week");
    const texts = cells.map(({ value }) => value);
    const lines = view.lines.filter(({ sessions }) => sessions.length > 0);
    expect(lines.length).toBeGreaterThan(20);
    for (const { athlete } of lines) expect(texts).toContain(athlete);
    const foreign = cells.filter(
      ({ formula }) =>
        formula !== "" &&
        hostileText.some((text) => text.length > 6 && formula.includes(text.slice(0, 200))),
    );
    expect(foreign).toEqual([]);
    // What the coach typed stands untouched in the tabs it came from.
    const athletes = held.cells("Athletes");
    expect(athletes.filter(({ formula }) => formula !== "")).toEqual([]);
    for (const name of names) expect(athletes.map(({ value }) => value)).toContain(name);
  });

  test("clean tabs, season, diary answers and remembered answers keep every text a text", () => {
    for (const text of formulas) {
      asked("answerName", { today, written: text, athlete: "__proto__", same: true });
      asked("forgetName", { today, written: text });
    }
    asked<Done>("writeSeason", { today });
    for (const { value, formula } of held.cells("Season"))
      expect([value, formula]).toEqual([value, ""]);
  });
});
