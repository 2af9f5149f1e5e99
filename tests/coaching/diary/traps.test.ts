import type { Finding } from "../../../src/coaching/diary/finding";
import { seededChance } from "../../../src/coaching/diary/seeded-chance";
import { squadDiffered } from "../../../src/coaching/diary/squad-differed";
import { itemsOfAthlete, whatDiffered } from "../../../src/coaching/diary/what-differed";
import type { DiaryDay } from "../../../src/coaching/record/diary-day";
import { chance } from "../../bench/seasons/chance";
import { diaryDay, gymDay, run, seasonOf } from "./constructed";

const sessions = 32;
const noise = chance(4711);
const wobble = Array.from({ length: sessions }, () => 2.5 * noise.normal());

function found(
  percents: readonly (number | null)[],
  diary: readonly DiaryDay[],
  more: { runs?: ReturnType<typeof run>[]; starts?: ReadonlyMap<number, number> } = {},
): ReadonlyMap<string, Finding> {
  const items = itemsOfAthlete({
    athlete: "Priya Tellander",
    hold: seasonOf(percents),
    diary,
    runs: more.runs ?? [],
    starts: more.starts ?? new Map(),
  });
  const findings = whatDiffered(items, seededChance("traps"));
  return new Map(findings.map((finding) => [finding.item, finding]));
}
const short = (s: number) => s % 4 === 1;
const nights = (s: number) => (short(s) ? 5.2 : 7.6) + 0.3 * Math.sin(7 * s);

test("short nights before slow days are found, with their counts", () => {
  const percents = wobble.map((w, s) => w - (short(s) ? 8 : 0));
  const sleep = found(
    percents,
    percents.map((_, s) => diaryDay(gymDay(s), { sleepH: nights(s) })),
  ).get("sleep")!;
  expect(sleep.word).toBe("goes together");
  expect(sleep.days).toBe(sessions);
  expect(sleep.difference!).toBeGreaterThan(1.5);
  expect(sleep.low!).toBeLessThan(8 / 2.4);
  expect(sleep.high!).toBeGreaterThan(8 / 2.4);
  expect(sleep.side).toBe("under");
  expect(sleep.daysWith).toBe(8);
  expect(sleep.oddIs).toBe("slow");
  expect(sleep.oddDays + sleep.otherDays).toBe(sessions);
  expect(sleep.oddDaysWith + sleep.otherDaysWith).toBe(8);
});

test("a slide of speed and of sleep over the season is a trend in both, not a link", () => {
  const percents = wobble.map((w, s) => 0.6 * w - 0.5 * s);
  const own = chance(99);
  const diary = percents.map((_, s) =>
    diaryDay(gymDay(s), { sleepH: 8 - 0.08 * s + 0.2 * own.normal() }),
  );
  expect(found(percents, diary).get("sleep")!.word).toBe("no link seen");
});

test("a step in both, as night shifts from one date, is not a link between days either", () => {
  const percents = wobble.map((w, s) => w - (s >= 16 ? 8 : 0));
  const own = chance(98);
  const diary = percents.map((_, s) =>
    diaryDay(gymDay(s), { sleepH: (s >= 16 ? 6 : 8) + 0.3 * own.normal() }),
  );
  expect(found(percents, diary).get("sleep")!.word).toBe("no link seen");
});

test("slow Thursdays with short Wednesday nights are a timetable, not a link", () => {
  const percents = wobble.map((w, s) => w - (s % 2 === 1 ? 6 : 0));
  const own = chance(97);
  const diary = percents.map((_, s) =>
    diaryDay(gymDay(s), { sleepH: (s % 2 === 1 ? 6 : 8) + 0.3 * own.normal() }),
  );
  expect(found(percents, diary).get("sleep")!.word).toBe("no link seen");
});

test("what is written after the session cannot explain it, and is counted", () => {
  const percents = wobble.map((w, s) => w - (short(s) ? 8 : 0));
  const starts = new Map(percents.map((_, s) => [gymDay(s), 18 * 60]));
  const diary = (minute: number) =>
    percents.map((_, s) =>
      diaryDay(gymDay(s), { minute, mood: short(s) ? 2 : 4 + (s % 3 ? 0 : 1) }),
    );
  expect(found(percents, diary(20 * 60), { starts }).get("mood")).toBeUndefined();
  const before = found(percents, diary(8 * 60), { starts }).get("mood")!;
  expect(before.word).toBe("goes together");
  const mixed = diary(8 * 60).map((row, s) => (s < 3 ? { ...row, minute: 20 * 60 } : row));
  const some = found(percents, mixed, { starts }).get("mood")!;
  expect(some.writtenAfter).toBe(3);
  expect(some.days).toBe(sessions - 3);
});

test("the same note every day explains nothing", () => {
  const percents = wobble.map((w, s) => w - (short(s) ? 8 : 0));
  const diary = percents.map((_, s) => diaryDay(gymDay(s), { newToday: "new shoes", sleepH: 8 }));
  const findings = found(percents, diary);
  expect(findings.get("something new")!.word).toBe("always the same");
  expect(findings.get("sleep")!.word).toBe("always the same");
});

test("below twelve days, or four with and without, there is not enough to say", () => {
  const percents = wobble.map((w, s) => w - (short(s) ? 8 : 0));
  const few = percents.slice(0, 11).map((_, s) => diaryDay(gymDay(s), { sleepH: nights(s) }));
  expect(found(percents, few).get("sleep")!).toMatchObject({
    word: "not enough days",
    days: 11,
    difference: null,
    p: null,
  });
  const rare = percents.map((_, s) => diaryDay(gymDay(s), { carbsInSession: s < 3 }));
  expect(found(percents, rare).get("carbs in session")!).toMatchObject({
    word: "not enough days",
    daysWith: 3,
  });
});

test("food notes and body mass are no items, whatever is written", () => {
  const percents = wobble.map((w, s) => w - (short(s) ? 8 : 0));
  const diary = percents.map((_, s) =>
    diaryDay(gymDay(s), { foodNote: short(s) ? "no breakfast" : "porridge", note: "58 kg" }),
  );
  expect([...found(percents, diary).keys()]).toEqual([]);
});

test("yesterday's run counts with its load, a day without a run as zero, an unclear run not at all", () => {
  const hard = (s: number) => s % 5 === 2;
  const percents = wobble.map((w, s) => 0.6 * w - (hard(s) ? 9 : 0));
  const runs = percents.flatMap((_, s) => [
    run(gymDay(s) - 1, hard(s) ? 80 : 40, hard(s) ? 8 : 3),
    ...(s === 4 ? [run(gymDay(s) - 1, 30, null)] : []),
  ]);
  const load = found(percents, [], { runs }).get("run the day before")!;
  expect(load.word).toBe("goes together");
  expect(load.side).toBe("over");
  expect(load.difference!).toBeLessThan(0);
  expect(load.days).toBe(sessions - 1);
});

test("many items at once: the adjusted value is what decides", () => {
  const own = chance(5);
  const diary = wobble.map((_, s) =>
    diaryDay(gymDay(s), {
      sleepH: 7.5 + own.normal(),
      sleepQuality: own.whole(1, 5),
      soreness: own.whole(1, 5),
      fatigue: own.whole(1, 5),
      stress: own.whole(1, 5),
      mood: own.whole(1, 5),
    }),
  );
  for (const finding of found(wobble, diary).values()) {
    if (finding.p === null) continue;
    expect(finding.adjustedP!).toBeGreaterThanOrEqual(finding.p);
    expect(finding.itemsLookedAt).toBe(6);
    expect(finding.word).toBe("no link seen");
  }
});

test("athletes together: one who sleeps long and lifts well makes no link, a shared one is found", () => {
  const squad = (effect: number) =>
    [0, 1, 2, 3, 4].map((who) => {
      const own = chance(600 + who);
      const nightsOf = Array.from({ length: sessions }, () => own.normal());
      const percents = nightsOf.map((night) => 8 * who + 2.5 * own.normal() + effect * night);
      const diary = nightsOf.map((night, s) =>
        diaryDay(gymDay(s), { sleepH: 5.5 + who + 0.7 * night }),
      );
      return itemsOfAthlete({
        athlete: `Athlete ${who}`,
        hold: seasonOf(percents),
        diary,
        runs: [],
        starts: new Map(),
      });
    });
  const [level] = squadDiffered(squad(0), seededChance("squad"));
  expect(level).toMatchObject({
    word: "no link seen",
    athletes: 5,
    athlete: "",
    days: 5 * sessions,
  });
  const [link] = squadDiffered(squad(1), seededChance("squad"));
  expect(link!.word).toBe("goes together");
});

test("the same rows give the same answer every time", () => {
  const diary = wobble.map((_, s) => diaryDay(gymDay(s), { sleepH: nights(s) }));
  expect(found(wobble, diary)).toEqual(found(wobble, diary));
});
