import { readFileSync } from "node:fs";
import { join } from "node:path";
import { readCsvFolder } from "../../src/local-host/files/read-csv-folder";
import type * as Node from "../../src/local-host/node";
import type { OpenHost } from "../../src/local-host/open-host";
import { dayNumber, sampleFolder } from "./sample-rows";

// The built add-on, in the built local workbook, on the sample: what a coach would read.
const dist = join(__dirname, "../../dist");
const { openHost } = require(join(dist, "local/node.cjs")) as typeof Node;
const bundleSource = readFileSync(join(dist, "code.js"), "utf8");

let host: OpenHost;
beforeAll(async () => {
  const read = readCsvFolder(sampleFolder, new Set(["SQUAD_TABLE", "ROW_CHECK"]));
  if (!read.ok) throw new Error(read.refusal.code);
  host = await openHost({ workbook: read.value.workbook, bundleSource, files: {} });
});
afterAll(() => host.dispose());

async function rows(formula: string): Promise<readonly (readonly unknown[])[]> {
  const answer = await host.evaluate(formula);
  if (!answer.ok) throw new Error(`${formula}: ${answer.sentence}`);
  return answer.values;
}

const squads = new Map<string, readonly (readonly unknown[])[]>();
/** The Squad tab's line of an athlete, by heading, as of a day. */
async function line(athlete: string, asOf: string) {
  const known =
    squads.get(asOf) ??
    (await rows(
      `=SQUAD_TABLE(Athletes!A:J, Availability!A:H, Sets!A:Q, Jumps!A:K, Diary!A:M, Races!A:G, "${asOf}", Plates!A:C, Rules!A:B)`,
    ));
  squads.set(asOf, known);
  const found = known.find(([name]) => name === athlete);
  if (!found) throw new Error(`${athlete} has no line`);
  const [, mayDo, word, since, value, change, wobble, wouldShow, , last, , notes] = found;
  return { mayDo, word, since, value, change, wobble, wouldShow, last, notes } as {
    readonly word: string;
    readonly since: string;
    readonly change: number;
    readonly wobble: number;
    readonly wouldShow: number;
    readonly notes: string;
  } & Readonly<Record<"mayDo" | "value" | "last", unknown>>;
}

const today = "2026-06-28";
/** Every Tuesday and Thursday from the fifth week on. */
const gymDays = Array.from({ length: 8 }, (_, week) => dayNumber("2026-05-05") + 7 * week)
  .flatMap((tuesday) => [tuesday, tuesday + 2])
  .map((day) => new Date(day * 86_400_000).toISOString().slice(0, 10));

async function wordsOf(athlete: string): Promise<readonly string[]> {
  const words: string[] = [];
  for (const day of gymDays) words.push((await line(athlete, day)).word);
  return words;
}

/** Days between the day a cell names ("12 May (± 21 days)") and another. */
function daysFrom(since: string, iso: string): number {
  const [, date, month] = /^(\d+) (\w{3})/.exec(since)!;
  const at = new Date(`${date} ${month} 2026 00:00 UTC`).toISOString().slice(0, 10);
  return dayNumber(at) - dayNumber(iso);
}

test("Tomas is slipping since about 12 May in squat speed, first said between 9 June and today", async () => {
  const { word, since, value, change } = await line("Tomas Reyerson", today);
  expect([word, value]).toEqual(["slipping", "back squat speed"]);
  expect(Math.abs(daysFrom(since, "2026-05-12"))).toBeLessThanOrEqual(10);
  // At about 60 % of best, 1 % of best is 1.0 to 1.1 % of speed; the mean since onset is half-way down.
  expect(change).toBeLessThan(-0.05);
  expect(change).toBeGreaterThan(-0.11);
  expect((await line("Tomas Reyerson", "2026-06-08")).word).toBe("holding");
});

test.each(["Wren Castellow", "Bea Lindqvale"])("%s, a novice, is rising", async (athlete) => {
  expect(await line(athlete, today)).toMatchObject({ word: "rising", value: "back squat speed" });
  expect(await wordsOf(athlete)).not.toContain("slipping");
});

test("Ilka holds all season, and on 16 June stands above her usual", async () => {
  expect(new Set(await wordsOf("Ilka Brandmoor"))).toEqual(new Set(["holding"]));
  const [[word, size] = []] = await rows(
    '=READINESS("Ilka Brandmoor", Sets!A:Q, Jumps!A:K, Diary!A:M, "2026-06-16")',
  );
  expect(word).toBe("above usual");
  expect(size).toBeGreaterThan(1.28);
});

test("Kofi's 28 May left the usual from set 4; his season holds", async () => {
  const usual = async (day: string) =>
    (await rows(`=SET_TO_SET("Kofi Anstruther", Sets!A:Q, "back squat", "${day}")`))[0]!;
  const [, lastVsFirst, usualLast, leftAt, words] = await usual("2026-05-28");
  expect(leftAt).toBe(4);
  expect(lastVsFirst).toBeLessThan(-0.15);
  expect(usualLast).toBeGreaterThan(-0.1);
  expect(words).toMatch(/^slower than usual from set 4/);
  expect((await usual("2026-05-26"))[3]).toBe("–");
  expect(new Set(await wordsOf("Kofi Anstruther"))).toEqual(new Set(["holding"]));
});

test("Oona holds on one session a week, with a loss that would show wider than Kofi's", async () => {
  const oona = await line("Oona Petrakell", today);
  expect(oona.word).toBe("holding");
  expect(oona.wouldShow).toBeGreaterThan((await line("Kofi Anstruther", today)).wouldShow);
});

test("Dario is out with fever, then cleared, and never slipping", async () => {
  expect((await line("Dario Quell", "2026-05-21")).mayDo).toBe("out");
  expect((await line("Dario Quell", "2026-06-01")).mayDo).toBe("out");
  expect((await line("Dario Quell", "2026-06-02")).mayDo).toBe("cleared");
  expect(await wordsOf("Dario Quell")).not.toContain("slipping");
});

test.each(["Priya Tellander", "Hamid Sorley"])(
  "%s is never slipping and holds today",
  async (athlete) => {
    const words = await wordsOf(athlete);
    expect(words).not.toContain("slipping");
    expect(words.at(-1)).toBe("holding");
  },
);

test("Priya's short nights are counted beside her slow days, and no cause is named", async () => {
  const found = await rows(
    '=WHAT_DIFFERED("Priya Tellander", Sets!A:Q, Jumps!A:K, Diary!A:M, Runs!A:G, "2026-06-28")',
  );
  // Of all the diary's items sleep comes first, with more short nights before slow days than others.
  expect(found[0]!.slice(0, 2)).toEqual(["Priya Tellander", "sleep"]);
  const counts = /(\d+) of (\d+) slow days had sleep under [\d.]+ h, (\d+) of (\d+) other days/;
  const [shortSlow, slow, shortOther, other] = counts
    .exec(found[0]!.join(" "))!
    .slice(1)
    .map(Number) as [number, number, number, number];
  expect(slow + other).toBe(32);
  expect(shortSlow / slow).toBeGreaterThan(2 * (shortOther / other));
  expect(found.flat().join(" ")).not.toMatch(/because|caused/i);
});

test("Nils's new tool is said and not taken for a rise", async () => {
  expect(await wordsOf("Nils Quarrington")).not.toContain("rising");
  const { word, notes } = await line("Nils Quarrington", today);
  expect(word).toBe("holding");
  expect(notes).toMatch(/from 2 Jun with another tool \(bar tool B; baseline: bar tool A\)/);
});

test("Joss's contact time slips while his squat does not, and he may do modified training", async () => {
  const { word, value, since, mayDo } = await line("Joss Whitterby", today);
  expect([word, value, mayDo]).toEqual(["slipping", "contact time", "modified"]);
  expect(Math.abs(daysFrom(since, "2026-06-02"))).toBeLessThanOrEqual(10);
  const [[ofSquat] = []] = await rows('=SEASON_HOLD("Joss Whitterby", Sets!A:Q, "", "2026-06-28")');
  expect(ofSquat).toBe("holding");
});

test("Maren has too few rows for her first six sessions, then holds", async () => {
  for (const day of ["2026-05-26", "2026-06-11"]) {
    expect((await line("Maren Aspholt", day)).word).toMatch(/^too few rows/);
  }
  expect((await line("Maren Aspholt", "2026-06-18")).word).toBe("holding");
  const { word, wobble } = await line("Maren Aspholt", today);
  expect(word).toBe("holding");
  expect(wobble).toBeGreaterThan(0.045);
});
