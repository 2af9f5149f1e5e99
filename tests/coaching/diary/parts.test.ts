import { aroundLevel } from "../../../src/coaching/diary/around-level";
import type { ComparedDays } from "../../../src/coaching/diary/link";
import { closestStream } from "../../../src/coaching/diary/permutation";
import { seededChance } from "../../../src/coaching/diary/seeded-chance";
import { symptomDays } from "../../../src/coaching/diary/symptom-day";
import { symptomWords } from "../../../src/coaching/diary/symptom-words";
import { unusualDays } from "../../../src/coaching/diary/unusual-day";
import { diaryDay, gymDay, run, seasonOf } from "./constructed";

test("dealing out two small groups agrees with counting all ways", () => {
  // 4 against 5 values: 126 ways, one as far apart (worked by counting).
  const values = [12.1, 13.4, 11.8, 14, 10.2, 11, 11.5, 9.8, 10.9];
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const groups: ComparedDays = {
    days: values.map((_, at) => at),
    item: values.map((_, at) => (at < 4 ? 1 : 0)),
    itemCentred: values.map((_, at) => (at < 4 ? 5 / 9 : -4 / 9)),
    itemBeyond: [],
    streams: [{ value: null, beyond: values.map((value) => value - mean), sizes: values }],
    strata: [values.map((_, at) => at)],
  };
  const { p } = closestStream([groups], seededChance("two groups"));
  // Two-sided by the distance: 1 of 126; 1,999 shuffles err by 0.002 (one standard error).
  expect(p).toBeGreaterThan(1 / 126 - 0.006);
  expect(p).toBeLessThan(1 / 126 + 0.006);
});

test("a slow drift leaves no distance, one odd day leaves its own", () => {
  const drift = Array.from({ length: 20 }, (_, s) => 2 * s);
  for (const distance of aroundLevel(drift).slice(4, 16)) expect(distance!.away).toBeCloseTo(0, 10);
  const odd = Array.from({ length: 20 }, (_, s) => (s === 9 ? -8 : 0));
  const distances = aroundLevel(odd).map((one) => one!.away);
  expect(distances[9]).toBe(-8);
  expect(distances.filter((away) => away !== 0)).toHaveLength(1);
  expect(aroundLevel([1, 2, null, 3])).toEqual([null, null, null, null]);
});

test("words of pain and illness are found whole, denied ones are not", () => {
  expect(symptomWords("Left Achilles painful, slight fever")).toEqual(["painful", "fever"]);
  expect(symptomWords("Achilles stiff in the morning, shin tender")).toEqual(["stiff", "tender"]);
  expect(symptomWords("no pain today, pain-free run, without soreness")).toEqual([]);
  expect(symptomWords("pain free all week")).toEqual([]);
  expect(symptomWords("illusion, painter, scold")).toEqual([]);
  expect(symptomWords("no more pain, no  more  aches, no  cough, zero soreness")).toEqual([]);
  expect(symptomWords("no moreover pain")).toEqual(["pain"]);
  expect(symptomWords("no sleep, knee pain")).toEqual(["pain"]);
  expect(symptomWords("casino pain")).toEqual(["pain"]);
  // Only the pain itself can be free, not what is written further on.
  expect(symptomWords("knee pain, a free day")).toEqual(["pain"]);
  expect(symptomWords("shoulder pain freestyle")).toEqual(["pain"]);
  expect(symptomWords("")).toEqual([]);
});

test("a note in German is read for pain and illness too, compounds and all", () => {
  expect(symptomWords("Schienbein zwickt seit Sonntag")).toEqual(["zwickt"]);
  expect(symptomWords("leichte Knieschmerzen, Halsweh und Fieber")).toEqual([
    "knieschmerzen",
    "halsweh",
    "fieber",
  ]);
  expect(symptomWords("Brustdrücken im Anstieg, Oberschenkelverletzung")).toEqual([
    "brustdrücken",
    "oberschenkelverletzung",
  ]);
  expect(
    symptomWords("schmerzfrei, ohne Schmerzen, keine Zerrung, kein Husten, nicht krank"),
  ).toEqual([]);
  expect(symptomWords("Brustschwimmen, neue Schuhe, gut geschlafen")).toEqual([]);
});

test("symptom days are listed latest first; private words stay private", () => {
  const rows = [
    diaryDay(20_000, { note: "calf sore" }),
    diaryDay(20_004, { note: "chest cold", private: true }),
    diaryDay(20_009, { note: "fever" }),
    diaryDay(20_002, { note: "fine" }),
  ];
  expect(symptomDays(rows, 20_005)).toEqual([
    { day: 20_004, symptoms: [], private: true },
    { day: 20_000, symptoms: ["sore"], private: false },
  ]);
});

test("an unusual day tells what stood out on it and the day before", () => {
  const percents = Array.from({ length: 16 }, (_, s) => (s === 10 ? -9 : s % 3 === 0 ? 1 : -0.5));
  const day = gymDay(10);
  const diary = [
    ...percents.map((_, s) =>
      diaryDay(gymDay(s), { sleepH: s === 10 ? 4.5 : 7.5 + 0.2 * (s % 3) }),
    ),
    diaryDay(day - 1, { note: "late train", newToday: "new shoes" }),
    diaryDay(day - 1, { note: "row about something else", private: true }),
  ];
  const runs = percents.map((_, s) => run(gymDay(s) - 1, s === 10 ? 90 : 40 + (s % 3), 5));
  const races = [
    {
      row: 2,
      day: day - 3,
      startMinute: null,
      race: "R1",
      who: "all",
      distanceKm: 10,
      surface: "road",
      matters: "B" as const,
    },
    {
      row: 3,
      day: day + 3,
      startMinute: null,
      race: "R2",
      who: "all",
      distanceKm: 10,
      surface: "road",
      matters: "A" as const,
    },
  ];
  const unusual = unusualDays({ hold: seasonOf(percents), diary, runs, races });
  expect(unusual).toHaveLength(1);
  const [one] = unusual;
  expect(one!.day).toBe(day);
  expect(one!.size).toBeLessThan(-2);
  expect(one!.stoodOut.map(({ item }) => item)).toEqual(["sleep", "run the day before"]);
  expect(one!.written.map(({ text }) => text)).toEqual(["new shoes", "late train"]);
  expect(one!.privateRows).toBe(1);
  expect(one!.race).toEqual({ race: "R1", daysAgo: 3 });
});
