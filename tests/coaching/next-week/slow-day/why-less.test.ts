import { whyLess } from "../../../../src/coaching/next-week/slow-day/why-less";
import { usualRules } from "../../../../src/coaching/record/squad-rules";
import { daysSinceMarathon } from "../../../../src/coaching/season/race-hours";
import { day, movesAt, race, session, state } from "../written-squad";

const name = "Tomas Reyerson";
const speed = (kg: number) => 0.28 + 1.45 * (1 - kg / 112);
const asOf = day("2026-06-14");
const on = (iso: string, slower = 0, note = "") =>
  session(name, iso, { sets: 3, reps: 5, loadKg: 80, markerKg: 60 }, { note }).map((set) =>
    set.kind === "marker" ? { ...set, repSpeeds: [speed(60) - slower] } : set,
  );
const why = (
  iso: string,
  over: Partial<Parameters<typeof whyLess>[1]> = {},
  sets = on(iso),
): ReturnType<typeof whyLess> =>
  whyLess(sets, {
    day: day(iso),
    asOf,
    races: [],
    rules: usualRules,
    state: state(name, movesAt(speed)),
    mayDo: "full",
    ...over,
  });

test("an ordinary day asks for no less; a slow one does", () => {
  expect(why("2026-06-11")).toBeNull();
  expect(why("2026-06-11", {}, on("2026-06-11", 0.12))).toBe("slow");
});

test("a note beside the work sets, though none stands beside the marker, gives the reason; a slow bar comes first", () => {
  const noted = (note: string, slower = 0) => why("2026-06-11", {}, on("2026-06-11", slower, note));
  expect([noted("felt heavy"), noted("new belt")]).toEqual(["noted", null]);
  expect(noted("felt heavy", 0.12)).toBe("slow");
});

test("under a limit, with pain noted beside a set, or in the week of pain in the diary nothing is of a day", () => {
  const slow = (iso: string) => on(iso, 0.12);
  expect(why("2026-06-11", { mayDo: "modified" }, slow("2026-06-11"))).toBe("may not");
  expect(why("2026-06-11", {}, on("2026-06-11", 0.12, "calf pain"))).toBe("may not");
  // A cue and sore legs are no pain.
  for (const note of ["chest up", "bar cold", "quads sore"])
    expect(why("2026-06-11", {}, on("2026-06-11", 0.12, note))).toBe("slow");
  const unwell = {
    state: {
      ...state(name, movesAt(speed)),
      unwellDay: { day: day("2026-06-13"), place: "Gym E3" },
    },
  };
  expect(why("2026-06-08", unwell, slow("2026-06-08"))).toBe("may not");
  expect(why("2026-06-07", unwell, slow("2026-06-07"))).toBe("slow");
});

test("a week before an A race is eased, one before another is not", () => {
  const races = [race("2026-06-13", 10)];
  expect(why("2026-06-09", { races })).toBe("eased");
  expect(why("2026-06-09", { races: [race("2026-06-13", 10, { matters: "B" })] })).toBeNull();
  // Slow besides, it is told as slow.
  expect(why("2026-06-09", { races }, on("2026-06-09", 0.12))).toBe("slow");
});

test("a week whose Monday is eased after a marathon is eased whole", () => {
  const races = [race("2026-05-24", 9, { distanceKm: 42.195, matters: "B" })];
  const eased = (iso: string) => daysSinceMarathon(day(iso), races, usualRules) !== null;
  // The last eased Monday of which a later day is not.
  const mondays = ["2026-05-25", "2026-06-01", "2026-06-08", "2026-06-15", "2026-06-22"];
  const monday = mondays.filter(eased).pop()!;
  const sunday = new Date(Date.parse(monday) + 6 * 86_400_000).toISOString().slice(0, 10);
  expect(why(monday, { races })).toBe("eased");
  expect([eased(sunday), why(sunday, { races })]).toEqual([false, "eased"]);
});
