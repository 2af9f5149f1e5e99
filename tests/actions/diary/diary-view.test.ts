import type { DiaryView } from "../../../src/actions/messages";
import { serveRequest } from "../../../src/actions/requests";
import { memoryWorkbook } from "../memory-workbook";
import { sampleCells, sampleClub } from "../sample-club";

const today = "2026-06-28";
const view = (book: ReturnType<typeof sampleClub>, athlete: string) =>
  serveRequest(book, "diaryView", { today, athlete }) as DiaryView;
const [foodAt, newAt, noteAt, privateAt] = [9, 10, 11, 12];

/** The sample's Diary with other words on some rows of one athlete. */
function diaryWith(athlete: string, words: Readonly<Record<string, readonly [number, string][]>>) {
  return sampleCells("Diary").map((row) => {
    const said = row[1] === athlete ? words[String(row[0])] : undefined;
    if (!said) return row;
    const changed = [...row];
    for (const [at, text] of said) changed[at] = text;
    return changed;
  });
}
const slow = "2026-06-23";
const tomas = "Tomas Reyerson";
const calm = view(sampleClub(), tomas);

test("at most three days are asked about, each with its value, its size and what stood out", () => {
  expect(calm.days.map(({ day }) => day)).toEqual([slow, "2026-06-09"]);
  expect(calm.days[0]).toMatchObject({
    dayWords: "23 Jun",
    value: "box jump −8 %",
    size: "2 own wobbles below usual",
    answerTo: "Diary L223",
    noAnswer: "",
  });
  for (const { stoodOut } of calm.days) expect(stoodOut.length).toBeGreaterThan(0);
});

test("the picture holds every session, the unusual ones marked, and says the same in words", () => {
  const { sessions, inWords } = calm.picture!;
  expect(sessions.filter(({ side }) => side !== 0).map(({ day }) => day)).toEqual([
    "2026-06-09",
    slow,
  ]);
  expect(inWords).toContain(`${sessions.length} sessions from 7 Apr to 23 Jun`);
  expect(inWords).toContain("unusual: 9 Jun (slow), 23 Jun (slow)");
});

test("what differed is the formula's: counts of days in every sentence, items without a link in one", () => {
  expect(calm.items.length).toBeGreaterThan(1);
  const [together, ...none] = calm.items.filter(({ item }) => item === "Others");
  expect(together!.words).toMatch(
    /^No link to be seen in \d+ days: [^.]+, [^.]+\. The season's slow drift/,
  );
  expect(none).toEqual([]);
  for (const { words } of calm.items) expect(words).toMatch(/\d+ days?/);
});

test("words of pain come before anything else, with the caution, and mark the picture", () => {
  const Diary = diaryWith(tomas, { [slow]: [[noteAt, "shin sore at night"]] });
  const told = view(sampleClub({ Diary }), tomas);
  expect(told.first).toMatch(/^1 day with words of pain or illness: 23 Jun \(sore\).*doctor/);
  expect(told.days[0]!.stoodOut[0]).toMatch(/^Look first: sore/);
  expect(told.picture!.marks).toContainEqual({ day: slow, kind: "pain or illness" });
  // They are shown; they move no figure.
  expect(told.items).toEqual(calm.items);
});

test("pain written since the last session is in the picture, which goes on to it", () => {
  const since = "2026-06-27";
  const row: unknown[] = [since, tomas];
  row[noteAt] = "achilles 3/10";
  const Diary = [...sampleCells("Diary"), Array.from(row, (cell) => cell ?? "")];
  const { picture, first } = view(sampleClub({ Diary }), tomas);
  expect(first).toMatch(/27 Jun \(achilles 3\/10\)/);
  expect([calm.picture!.to, picture!.to]).toEqual([slow, since]);
  expect(picture!.marks).toContainEqual({ day: since, kind: "pain or illness" });
});

test("a private row gives no word, only that it is there", () => {
  const Diary = diaryWith(tomas, {
    [slow]: [
      [noteAt, "xylophone lesson, shin sore"],
      [foodAt, "xylophone cake"],
      [newAt, "xylophone"],
      [privateAt, "y"],
    ],
  });
  const told = view(sampleClub({ Diary }), tomas);
  expect(JSON.stringify(told)).not.toMatch(/xylophone|sore at/i);
  expect(told.first).toContain("23 Jun (private row)");
  expect(told.days[0]!.stoodOut).toContain("1 private row not shown");
  expect(told.picture!.marks).not.toContainEqual({ day: slow, kind: "note" });
});

test("nothing of another athlete is in the view", () => {
  const book = sampleClub();
  const names = sampleCells("Athletes").map(([name]) => String(name));
  for (const athlete of [tomas, "Joss Whitterby", "Priya Tellander"]) {
    const text = JSON.stringify(view(book, athlete));
    for (const name of names) if (name !== athlete) expect(text).not.toContain(name);
  }
  expect(JSON.stringify(view(book, "Priya Tellander"))).not.toMatch(/Achilles|night shifts/);
});

test("food and body mass are read as written: no mark, no item, no figure comes of them", () => {
  const words = Object.fromEntries(
    sampleCells("Diary")
      .filter((row) => row[1] === tomas)
      .map((row, at) => [String(row[0]), [[foodAt, at % 2 ? "no breakfast" : "porridge"]]]),
  ) as Record<string, [number, string][]>;
  const Diary = diaryWith(tomas, words).map((row, at) => [
    ...row,
    at === 0 ? "Body mass (kg)" : 58 + (at % 3),
  ]);
  const told = view(sampleClub({ Diary }), tomas);
  expect(told.picture).toEqual(calm.picture);
  expect(told.items).toEqual(calm.items);
  expect(told.days[0]!.stoodOut).toContainEqual(expect.stringMatching(/food: “/));
  expect(JSON.stringify(told)).not.toMatch(/body mass/i);
});

test("without a diary or a season the view says so and breaks nothing", () => {
  const empty = memoryWorkbook({ Athletes: [["Athlete"], ["Wren Castellow"]] });
  expect(view(empty, "Wren Castellow")).toEqual({
    athlete: "Wren Castellow",
    first: "",
    picture: null,
    days: [],
    noDays: "No day beyond this athlete's own wobble.",
    items: [],
    noItems: "No diary rows or runs beside this athlete's sessions.",
  });
});

test("an unusual day without a Diary row says so in place of a field", () => {
  const Diary = sampleCells("Diary").filter((row) => !(row[0] === slow && row[1] === tomas));
  const [day] = view(sampleClub({ Diary }), tomas).days;
  expect(day).toMatchObject({ day: slow, answerTo: null });
  expect(day!.noAnswer).toContain(`Diary has no row of ${tomas} on 23 Jun`);
});

test("an answer written is among what stood out when the diary is read again", () => {
  const book = sampleClub();
  const answer = "up all night with the kiln";
  serveRequest(book, "writeDiaryAnswer", { today, athlete: tomas, day: slow, answer });
  expect(view(book, tomas).days[0]!.stoodOut).toContain(`note: “${answer}”`);
  expect(book.values(book.tabNamed("Diary").id)[222]![noteAt]).toBe(answer);
});
