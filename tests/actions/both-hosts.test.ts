import { nextWeekHeadings } from "../../src/words/next-week-tab";
import { bothHosts } from "./both-hosts";
import type { HeldWorkbook } from "./held-workbook";

// One contract: whatever holds the workbook, the same requests leave the same cells and sentences.
const today = "2026-06-28";
const monday = "2026-06-29";
const tomas = "Tomas Reyerson";
const headings = Object.keys(nextWeekHeadings);
const place = (heading: keyof typeof nextWeekHeadings) => headings.indexOf(heading) + 1;
const writeWeek = { today, monday, changes: [], athletes: null };
const takeBack = { today, monday };

const ends: Record<string, unknown[]> = {};

describe.each(bothHosts)("on %s", (host, open) => {
  let book: HeldWorkbook;
  let seen: unknown[];
  beforeAll(async () => {
    book = await open();
    seen = [];
    ends[host] = seen;
  });
  afterAll(() => book.close());
  const week = () => book.standing("Next week");
  const rowOf = (athlete: string) => week().findIndex((row, i) => i >= 4 && row[0] === athlete) + 1;

  test("a first writing adds a line a session, and writing again changes nothing", () => {
    expect(book.ask("writeWeek", writeWeek).said).toMatch(/^\d+ rows new\.$/);
    const first = week();
    expect(first[3]).toEqual(Object.values(nextWeekHeadings));
    expect(first.length).toBeGreaterThan(10);
    expect(book.ask("writeWeek", writeWeek).said).toMatch(/^\d+ rows the same\.$/);
    expect(week()).toEqual(first);
    seen.push(first);
  });

  test("the formula beside a typed speed names the cells of its own row", () => {
    const row = rowOf(tomas);
    expect(week()[row - 1]![place("today") - 1]).toMatch(
      new RegExp(`^=DAY_LOAD\\(C${row},[\\d.]+,G${row},`),
    );
  });

  test("a change is written into its lines alone; typed speeds and the coach's own cells stay", () => {
    const row = rowOf(tomas);
    book.type("Next week", row, place("typed"), ".79 .80 .78");
    book.type("Next week", row, place("assistance"), "sled, easy");
    const before = week();
    const load = Number(before[row - 1]![place("load") - 1]);
    const changes = [{ athlete: tomas, loadKg: load - 5 }];
    const { said } = book.ask("writeWeek", { ...writeWeek, changes });
    expect(said).toMatch(/rows? changed, \d+ rows the same\. Yours, kept: L\d+\.$/);
    const after = week();
    expect(after[row - 1]!.slice(0, 3)).toEqual([tomas, before[row - 1]![1], ".79 .80 .78"]);
    expect(after[row - 1]![place("assistance") - 1]).toBe("sled, easy");
    expect(Number(after[row - 1]![place("load") - 1])).toBe(load - 5);
    const others = (rows: string[][]) => rows.filter(([athlete]) => athlete !== tomas);
    expect(others(after)).toEqual(others(before));
    // Asked again without the change, as by a sidebar opened anew.
    book.ask("writeWeek", writeWeek);
    expect(week()).toEqual(after);
    seen.push(said, after);
  });

  test("taking back leaves only the row with something of the coach's", () => {
    const { said } = book.ask("takeBackWeek", takeBack);
    expect(said).toMatch(/^Taken back: \d+ rows\. Yours, kept: C\d+, L\d+\.$/);
    expect(
      week()
        .slice(4)
        .flatMap(([athlete]) => athlete || []),
    ).toEqual([tomas]);
    seen.push(said, week());
  });

  test("the season is written once, and a coach's cell in it stays", () => {
    const { said } = book.ask("writeSeason", { today });
    expect(said).toMatch(/^Season: \d+ weeks, \d+ cells written\.( Most are 16 to 20 weeks|$)/);
    book.type("Season", 4, 3, "camp");
    expect(book.ask("writeSeason", { today }).said).toMatch(
      /^Season: \d+ weeks, nothing to change\. Yours, kept: C4\.( |$)/,
    );
    expect(book.standing("Season")[3]![2]).toBe("camp");
    seen.push(said, book.standing("Season"));
  });

  test("an answer goes into the athlete's Diary row of that day, as text whatever it begins with", () => {
    const before = book.standing("Diary");
    const at = before.findIndex((row, i) => i > 0 && row[0] !== "" && row[1] === tomas);
    const row = at >= 0 ? at : before.findIndex((line, i) => i > 0 && line.includes(tomas));
    const day = before[row]!.find((text) => /^\d{4}-\d{2}-\d{2}$/.test(text))!;
    const { said } = book.ask("writeDiaryAnswer", {
      today,
      athlete: tomas,
      day,
      answer: "=new shoes",
    });
    const changed = book
      .standing("Diary")
      .flatMap((line, i) =>
        line.flatMap((text, j) => (text === (before[i]?.[j] ?? "") ? [] : [[i, text]])),
      );
    expect(changed).toHaveLength(1);
    expect(String(changed[0]![1])).toMatch(/=new shoes$/);
    expect(changed[0]![0]).toBe(row);
    seen.push(said);
  });
});

test("both end with the same cells and said the same", () => {
  const [memory, platform] = bothHosts.map(([host]) => ends[host]);
  expect(memory!.length).toBe(8);
  expect(platform).toEqual(memory);
});
