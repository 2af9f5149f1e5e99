import { mostReps } from "../../../src/coaching/blocks/repetition-load";
import { proposeLine } from "../../../src/coaching/next-week/propose-line";
import type { LineChange } from "../../../src/coaching/next-week/proposed-line";
import type { AvailabilitySpell } from "../../../src/coaching/record/availability-spell";
import type { Plate } from "../../../src/coaching/record/plate";
import type { Race } from "../../../src/coaching/record/race";
import type { Run } from "../../../src/coaching/record/run";
import { lineReasonWords } from "../../../src/words/week";
import { jossModified } from "../availability/joss-modified";
import { athlete, clubRuns, day, plates, race, session, squadRows, state } from "./written-squad";

const name = "Joss Whitterby";
const monday = day("2026-05-11");
const lifted = ["2026-04-28", "2026-04-30", "2026-05-05", "2026-05-07"].flatMap((iso) =>
  session(name, iso, { sets: 5, reps: 5, loadKg: 85, markerKg: 67.5 }),
);
const line = (
  over: Partial<Parameters<typeof squadRows>[0]> = {},
  rest: Partial<Parameters<typeof proposeLine>[0]> = {},
) =>
  proposeLine({
    athlete: athlete(name),
    name,
    state: state(name),
    rows: squadRows({ sets: lifted, runs: clubRuns(name, monday), ...over }),
    monday,
    asOf: monday - 1,
    ...rest,
  });
const spell = (over: Partial<AvailabilitySpell>) => jossModified(monday - 7, over);

test("an athlete of the sets whom the Athletes table does not list gets two sessions all the same", () => {
  const found = line({}, { athlete: null });
  expect(found.not).toBeNull();
  expect(found.sessions.map(({ loadKg, sets }) => [loadKg, sets])).toEqual(
    line().sessions.map(({ loadKg, sets }) => [loadKg, sets]),
  );
  expect(found.sessions).toHaveLength(2);
});

test("sessions a week follow the Athletes table, one at least and two at most", () => {
  const count = (sessionsAWeek: number | null) =>
    line({}, { athlete: athlete(name, { sessionsAWeek }) }).sessions.length;
  expect([0, 1, 2, 3, null].map(count)).toEqual([1, 1, 2, 2, 2]);
});

test("nothing is proposed without sets, and the coach is asked to look", () => {
  const found = line({ sets: [] });
  expect(found).toMatchObject({
    not: "no-sets-yet",
    sessions: [],
    outlook: [],
    exercise: "",
    odd: true,
  });
  expect(found.reasons).toEqual([{ code: "no-sets-yet", facts: {} }]);
});

test("words of an absence up to the week's Sunday stand beside it, and are put before the coach", () => {
  const told = (iso: string) => {
    const absences = [{ day: day(iso), from: day(iso), words: "away, camp", place: "Gym E3" }];
    const found = line({}, { state: state(name, { absences }) });
    return [found.odd, found.reasons.filter(({ code }) => code === "absence").map(lineReasonWords)];
  };
  expect(told("2026-05-17")).toEqual([
    true,
    [
      "Absence written for 17 May (Gym E3): “away, camp”. Ask before anything is lifted, and write in the Availability tab what is allowed.",
    ],
  ]);
  expect(told("2026-05-18")).toEqual([false, []]);
});

test("who is out is left in peace; who waits for a word is put before the coach", () => {
  expect(line({ availability: [spell({ mayDo: "out" })] })).toMatchObject({
    not: "out",
    sessions: [],
    odd: false,
  });
  const cleared = line({ availability: [spell({ mayDo: "cleared", by: "" })] });
  expect(cleared).toMatchObject({ not: "not-cleared", sessions: [], odd: true });
  const young = line({}, { athlete: athlete(name, { birthYear: null, under18: true }) });
  expect(young).toMatchObject({ not: "under-18-no-supervisor", sessions: [], odd: true });
});

test("out on the first days of the week only: the days after are asked about", () => {
  const spells = [
    spell({ mayDo: "out", until: monday + 1 }),
    spell({ mayDo: "full", from: monday + 2 }),
  ];
  const found = line({ availability: spells });
  expect(found.not).toBeNull();
  for (const one of found.sessions) expect(one.day).toBeGreaterThan(monday + 1);
});

/** Intervals in the afternoon of every day: two hours before the usual session. */
const daily: readonly Run[] = Array.from({ length: 7 }, (_, at) => ({
  ...clubRuns(name, monday)[0]!,
  day: monday + at,
  minute: 16 * 60,
}));

test("a key run too near on every day leaves no day, and the coach's own choice stands", () => {
  const found = line({ runs: daily });
  expect(found).toMatchObject({ not: "no-day", sessions: [], odd: true });
  expect(found.reasons.map(lineReasonWords).join(" ")).not.toMatch(/undefined|NaN/);
  const chosen = line({ runs: daily }, { change: { day: monday + 2 } });
  expect(chosen.not).toBeNull();
  expect(chosen.sessions.map((one) => one.day)).toEqual([monday + 2]);
});

test("a day chosen by hand moves the first session, and the second stays two days away", () => {
  const usual = line().sessions.map((one) => one.day - monday);
  expect(usual).toEqual([1, 3]);
  const moved = (change: LineChange) =>
    line({}, { change }).sessions.map((one) => one.day - monday);
  // Thursday and Tuesday are two days apart; of the usual days only Thursday is two from Monday.
  expect(moved({ day: monday + 3 })).toEqual([3, 1]);
  expect(moved({ day: monday })).toEqual([0, 3]);
  expect(moved({ day: monday + 2 })).toEqual([2]);
});

test("a load by hand is kept, and takes no step by session from it", () => {
  const [one] = line({}, { change: { loadKg: 60, sets: 2 } }).sessions;
  expect(one).toMatchObject({ loadKg: 60, sets: 2, otherwise: null });
});

test("a session tells its repetitions in reserve by the guard, and none for another exercise", () => {
  const guarded = (change: LineChange = {}) =>
    line({}, { state: state(name, { strengthLowKg: 110 }), change }).sessions[0]!;
  const one = guarded();
  expect(one.reserve!.reps).toBeCloseTo(mostReps(one.loadKg / 110) - one.reps, 9);
  expect(guarded({ noRack: true }).reserve).toBeNull();
  expect(line().sessions[0]!.reserve).not.toBeNull();
});

test("words of pain or illness in the diary halve the contacts and are asked after", () => {
  const unwell = line(
    {},
    { state: state(name, { unwellDay: { day: monday - 1, place: "Gym E3" } }) },
  );
  expect(unwell.sessions[0]!.contacts).toBe(line({}).sessions[0]!.contacts / 2);
  expect(unwell.reasons.map(({ code }) => code)).toEqual(
    expect.arrayContaining(["unwell-held", "contacts-halved", "unwell"]),
  );
  expect(line({}).reasons.map(({ code }) => code)).not.toContain("unwell");
});

test("soreness and a day well below usual halve the contacts; above usual is said and adds nothing", () => {
  const stated = (over: Parameters<typeof state>[1]) => line({}, { state: state(name, over) });
  const usual = stated({}).sessions[0]!.contacts;
  expect(usual).toBeGreaterThan(0);
  expect(stated({ lastWord: "well below usual" }).sessions[0]!.contacts).toBe(usual / 2);
  expect(stated({ lastWord: "below usual" }).sessions[0]!.contacts).toBe(usual);
  const above = stated({ lastWord: "above usual" });
  expect(above.sessions[0]!.contacts).toBe(usual);
  expect(above.reasons.map(({ code }) => code)).toContain("above-usual");
  expect(stated({}).reasons.map(({ code }) => code)).not.toContain("above-usual");
});

test("a line is put before the coach for whatever was not as it should be, and only then", () => {
  const odd = (over: Parameters<typeof state>[1], rows = {}) =>
    line(rows, { state: state(name, over) }).odd;
  const unmoved = lifted.map((set) => ({ ...set, movedWell: null }));
  expect(odd({})).toBe(false);
  expect([
    odd({ word: "slipping" }),
    odd({ lastWord: "well below usual" }),
    odd({ soreness: { day: monday - 1, value: 7 } }),
    odd({ unwellDay: { day: monday - 1, place: "Gym E3" } }),
    odd({}, { sets: lifted.map((set) => ({ ...set, movedWell: false })) }),
    odd({}, { sets: unmoved }),
    odd({}, { availability: [spell({})] }),
    odd({}, { sets: lifted.filter((set) => set.day < day("2026-05-01")) }),
  ]).toEqual(Array(8).fill(true));
  // Where the coach writes down nobody's movement the note above all lines says so, not each line.
  expect(odd({ movementKept: false }, { sets: unmoved })).toBe(false);
});

test("hours to the next race are counted from the session's start, a race without a time from midnight", () => {
  const hours = (races: readonly Race[]) => line({ races }).sessions.map((one) => one.hoursToRace);
  // Sessions on Tuesday and Thursday at 18:00. To Wednesday week at 10:00 are 7 days and 16 hours.
  expect(hours([])).toEqual([null, null]);
  expect(hours([race("2026-05-20", 10)])).toEqual([7 * 24 + 16, 5 * 24 + 16]);
  expect(hours([race("2026-05-20", 10, { startMinute: null })])).toEqual([7 * 24 + 6, 5 * 24 + 6]);
  // Further than three weeks ahead is not told; nor is a race that is over.
  expect(hours([race("2026-06-06", 10), race("2026-05-01", 10)])).toEqual([null, null]);
});

test("plates written down one of each make no pair: what cannot be built is said", () => {
  const single: readonly Plate[] = plates.map((plate) => ({ ...plate, owned: 1 }));
  const found = line({ plates: single });
  // The bar alone is 20 kg.
  expect(found.sessions[0]).toMatchObject({ loadKg: 20, plates: [] });
  expect(found.reasons.map(({ code }) => code)).toContain("plates-short");
});

test("no plate thin enough for the drop: another exercise stands for the drop jump", () => {
  const thick = plates.map((plate) => ({ ...plate, thicknessCm: 45 }));
  const codes = (rows: readonly Plate[]) =>
    line({ plates: rows }, { athlete: athlete(name) }).sessions[0]!.items.filter(
      ({ insteadOf, reason }) => insteadOf === "plate-to-plate drop jump" && reason === "no-plate",
    ).length;
  expect([codes(plates), codes(thick)]).toEqual([0, 1]);
});

const refusedBefore = (found: ReturnType<typeof line>) =>
  found.reasons
    .filter(({ code }) => code === "day-before-race")
    .map(({ facts }) => [Number(facts.day) - monday, facts.hours, facts.limit, facts.matters]);

test("a usual day refused before a race is named, with its hours and the rule", () => {
  // An A race on Saturday at 10:00 leaves Monday and Tuesday; Thursday 18:00 is 40 h before it.
  const found = line({ races: [race("2026-05-16", 10)] });
  expect(found.sessions.map((one) => one.day - monday)).toEqual([1]);
  expect(refusedBefore(found)).toEqual([[3, 40, 72, "A"]]);
});

test("a refused day beside the proposed one is not named: it would not have been a second session", () => {
  const sets = ["2026-04-28", "2026-04-29", "2026-05-05", "2026-05-06"].flatMap((iso) =>
    session(name, iso, { sets: 5, reps: 5, loadKg: 85, markerKg: 67.5 }),
  );
  // Who lifts on Tuesdays and Wednesdays: Wednesday is refused, but Tuesday is the day before it.
  const found = line({ sets, races: [race("2026-05-16", 10)] });
  expect(found.sessions.map((one) => one.day - monday)).toEqual([1]);
  expect(refusedBefore(found)).toEqual([[3, 40, 72, "A"]]);
});

test("races on Wednesday and Sunday leave no day: each usual day is named, or else the first refused", () => {
  const plain = { matters: null };
  const races = [race("2026-05-13", 10, plain), race("2026-05-17", 10, plain)];
  // Tuesday 18:00 is 16 h before Wednesday's race; a race nobody marked counts as the least.
  expect(line({ races }).not).toBe("no-day");
  expect(refusedBefore(line({ races }))).toEqual([[1, 16, 48, "C"]]);
  const others = ["2026-04-29", "2026-05-03", "2026-05-06"].flatMap((iso) =>
    session(name, iso, { sets: 5, reps: 5, loadKg: 85, markerKg: 67.5 }),
  );
  // Who lifts on Wednesdays and Sundays: the evenings after the races, 8 h later, are named as such.
  const after = line({ races, sets: others });
  expect(refusedBefore(after)).toEqual([]);
  expect(
    after.reasons.flatMap(({ code, facts }) => (code === "day-after-race" ? [facts] : [])),
  ).toEqual([
    { day: monday + 2, hours: 8, race: "R2", matters: "C", limit: 48 },
    { day: monday + 6, hours: 8, race: "R2", matters: "C", limit: 48 },
  ]);
});

test("usual days that a race moves are named though as many days are found", () => {
  // A B race on Saturday at 14:00: Thursday 18:00 is 44 h before it, so Monday and Wednesday.
  const found = line({ races: [race("2026-05-16", 14, { race: "R3 meeting", matters: "B" })] });
  expect(found.sessions.map((one) => one.day - monday)).toEqual([0, 2]);
  expect(found.reasons.map(lineReasonWords)).toContain(
    "Thu 14 May refused: 44 h before R3 meeting, a B race (rule: 48 h).",
  );
  // The day after a race on Monday evening is a usual day too.
  const monday10 = line({ races: [race("2026-05-11", 19, { race: "R3 meeting", matters: "B" })] });
  expect(monday10.sessions.map((one) => one.day - monday)).not.toContain(1);
  expect(monday10.reasons.map(lineReasonWords)).toContain(
    "Tue 12 May refused: 23 h after R3 meeting, a B race (rule: 48 h).",
  );
  expect(
    line()
      .reasons.map(({ code }) => code)
      .join(" "),
  ).not.toMatch(/day-/);
  // A race on Sunday evening takes the weekend, on which nobody lifts here.
  const sunday = line({ races: [race("2026-05-17", 20, { matters: "B" })] });
  expect(sunday.days!.all.filter(({ refused }) => refused !== null).length).toBeGreaterThan(0);
  expect(sunday.reasons.map(({ code }) => code).join(" ")).not.toMatch(/day-/);
});

test("who comes back from a break, or runs in race week, lands half as often, and that is said", () => {
  const jumps = (found: ReturnType<typeof line>) => [
    found.sessions[0]!.contacts,
    found.reasons.some(({ code }) => code === "contacts-halved"),
  ];
  const long = ["2026-04-14", "2026-04-16"].flatMap((iso) =>
    session(name, iso, { sets: 5, reps: 5, loadKg: 85, markerKg: 67.5 }),
  );
  expect(jumps(line())).toEqual([60, false]);
  expect(jumps(line({ sets: long }))).toEqual([30, true]);
  expect(jumps(line({ races: [race("2026-05-16", 10)] }))).toEqual([30, true]);
  // Ten days after a marathon are not over: 3 May to 12 May.
  const marathon = race("2026-05-03", 9, { distanceKm: 42.2 });
  expect(jumps(line({ races: [marathon] }))).toEqual([30, true]);
  // What the coach asks for is not called halved; without jumps there is nothing to halve.
  expect(jumps(line({ sets: long }, { change: { contacts: 40 } }))).toEqual([40, false]);
  const achilles = spell({ site: "Achilles" });
  expect(jumps(line({ sets: long, availability: [achilles] }))).toEqual([0, false]);
});

test("a marker from another gym's plates is the nearest under it that these make", () => {
  const abroad = (markerKg: number) =>
    ["2026-04-28", "2026-05-05"].flatMap((iso) =>
      session(name, iso, { sets: 5, reps: 5, loadKg: 85, markerKg }),
    );
  // 160 lb are 72.57 kg; the club's plates make 72.5.
  const found = line({ sets: abroad(160 * 0.45359237) }).sessions[0]!;
  expect([found.markerKg, found.items.find(({ kind }) => kind === "marker")!.loadKg]).toEqual([
    72.5, 72.5,
  ]);
  expect(line({ sets: abroad(15) }).sessions[0]!.markerKg).toBe(15);
  // Without a Plates table nothing is known of the plates, and the marker stays as it was.
  const kept = line({ sets: abroad(160 * 0.45359237), plates: [] }).sessions[0]!;
  expect(kept.markerKg).toBeCloseTo(72.5748, 4);
});

test("where no marker is taken the first work set decides, at its load, for the sets after it", () => {
  const usualLead = (kind: "marker" | "work", kg: number) => {
    if (kind === "marker" && kg === 67.5) return { usual: 0.86, low: 0.8 };
    return kind === "work" && kg === 85 ? { usual: 0.6, low: 0.55 } : null;
  };
  const first = (sets: typeof lifted) =>
    line({ sets }, { state: state(name, { usualLead }) }).sessions[0]!;
  const marked = { markerKg: 67.5, usualLeadSpeed: 0.86, lowLeadSpeed: 0.8, setsAfterLead: 5 };
  const bare = { markerKg: null, usualLeadSpeed: 0.6, lowLeadSpeed: 0.55, setsAfterLead: 4 };
  expect(first(lifted)).toMatchObject({ loadKg: 85, sets: 5, ...marked });
  const work = first(lifted.filter(({ kind }) => kind === "work"));
  expect(work).toMatchObject({ loadKg: 85, sets: 5, ...bare });
  expect(work.bands[0]!.from).toBe(0.56);
  // A usual speed that nobody knows leaves no bands, and nothing to type against.
  expect(line().sessions[0]).toMatchObject({ usualLeadSpeed: null, lowLeadSpeed: null, bands: [] });
});

test("the bar that no row weighs is 45 lb to a coach of pounds, 20 kg to others", () => {
  const sets = lifted.map((set) => ({ ...set, barKg: null }));
  expect(line({ sets }).sessions[0]!.barKg).toBe(20);
  expect(line({ sets }, { unit: "lb" }).sessions[0]!.barKg).toBeCloseTo(45 * 0.45359237, 9);
});

test("a weekday lifted on once is no usual day: a race that takes it is not told", () => {
  const once = session(name, "2026-05-02", { sets: 5, reps: 5, loadKg: 85, markerKg: 67.5 });
  // A B race on Monday 18 May at 8:00 takes Saturday evening, 38 h before it, and Sunday's.
  const races = [race("2026-05-18", 8, { matters: "B" })];
  const found = line({ sets: [...lifted, ...once], races });
  expect(found.step!.weekdays).toEqual([1, 3, 5]);
  expect(found.days!.all.find((one) => one.day === monday + 5)!.refused).not.toBeNull();
  expect(found.reasons.map(({ code }) => code)).not.toContain("day-before-race");
});

test("once a fortnight is a rhythm: nothing is taken off, its step goes on; a month without is a break", () => {
  const fortnightly = ["2026-03-17", "2026-03-31", "2026-04-14", "2026-04-28"].flatMap((iso) =>
    session(name, iso, { sets: 3, reps: 5, loadKg: 85, markerKg: 67.5 }),
  );
  const about = athlete(name, { sessionsAWeek: null });
  const planned = (from: number) =>
    line({ sets: fortnightly, runs: [] }, { athlete: about, monday: from, asOf: from - 1 });
  const next = planned(monday);
  expect(next.sessionsAWeek).toBe(0.5);
  expect(next.reasons[0]).toMatchObject({ code: "step-up", facts: { fromKg: 85, toKg: 87.5 } });
  // 26 May is 28 days after the last session: 14 more than usual, 20 % off and half the sets.
  const away = planned(day("2026-05-25"));
  expect(away.reasons[0]).toEqual({ code: "restart", facts: { days: 14, percent: 20 } });
  expect(away.sessions[0]).toMatchObject({ loadKg: 67.5, sets: 2 });
  // Who is down for once a week is away a week longer than that.
  const weekly = line(
    { sets: fortnightly, runs: [] },
    { athlete: athlete(name, { sessionsAWeek: 1 }) },
  );
  expect(weekly.reasons[0]).toMatchObject({ code: "restart", facts: { days: 7 } });
});
