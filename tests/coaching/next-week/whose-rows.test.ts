import { proposeLine } from "../../../src/coaching/next-week/propose-line";
import type { AvailabilitySpell } from "../../../src/coaching/record/availability-spell";
import type { SquadRows } from "../../../src/coaching/record/squad-rows";
import { usualRules } from "../../../src/coaching/record/squad-rules";
import { jumpAttempt } from "../series/invented-season";
import { athlete, clubRuns, day, plates, race, session, squadRows, state } from "./written-squad";

/** Sunday 10 May: 5×5 at 70 kg was lifted on Tuesday and Thursday; a step is held for one week. */
const name = "Ilka Brandmoor";
const other = "Wren Oldacre";
const monday = day("2026-05-11");
const rules = { ...usualRules, holdWeeks: 1, firstHold: 1 };
const at70 = { sets: 5, reps: 5, loadKg: 70, markerKg: 55 };
const lifted = ["2026-05-05", "2026-05-07"].flatMap((iso) => session(name, iso, at70));
type Given = Parameters<typeof proposeLine>[0];
const line = (rows: Partial<SquadRows> = {}, over: Partial<Given> = {}) =>
  proposeLine({
    athlete: athlete(name),
    name,
    state: state(name, { strengthLowKg: 110 }),
    rows: squadRows({ sets: lifted, rules, ...rows }),
    monday,
    asOf: monday - 1,
    ...over,
  });
const codes = ({ reasons }: ReturnType<typeof line>) => reasons.map(({ code }) => code);
const spell = (over: Partial<AvailabilitySpell>): AvailabilitySpell => ({
  row: 2,
  athlete: name,
  mayDo: "full",
  by: "",
  site: "",
  pain: null,
  note: "",
  from: monday,
  until: null,
  ...over,
});

/** Jumps go with a sore Achilles tendon, lifts stay. */
const achilles = spell({ site: "Achilles", pain: 2 });

test("other athletes' runs move nobody's gym days", () => {
  const key = clubRuns(other, monday).flatMap((run) =>
    [0, 1, 2, 3, 4, 5, 6].map((weekday) => ({ ...run, day: monday + weekday, minute: 18 * 60 })),
  );
  expect(line({ runs: key })).toEqual(line());
  expect(line({ runs: key.map((run) => ({ ...run, athlete: name })) })).not.toEqual(line());
});

test("what others lifted this week does not begin an athlete's own", () => {
  const asOf = monday + 1;
  const others = session(other, "2026-05-12", at70);
  const next = (sets: SquadRows["sets"]) => line({ sets }, { asOf, monday: monday + 7 });
  expect(next([...lifted, ...others])).toEqual(next(lifted));
  expect(codes(next(lifted))[0]).toBe("ahead");
});

test("a session lifted on Monday begins the week, a marker alone does not", () => {
  const begun = session(name, "2026-05-11", at70);
  const next = (sets: SquadRows["sets"]) =>
    line({ sets: [...lifted, ...sets] }, { asOf: monday + 1, monday: monday + 7 });
  expect(codes(next(begun))).not.toContain("ahead");
  // Wherever its rows stand.
  const above = line({ sets: [...begun, ...lifted] }, { asOf: monday + 1, monday: monday + 7 });
  expect(codes(above)).not.toContain("ahead");
  expect(codes(next(begun.filter(({ kind }) => kind === "marker")))[0]).toBe("ahead");
});

test("days of this week that went by without a session are not counted on", () => {
  expect(codes(line({}, { asOf: monday - 1, monday: monday + 7 }))[0]).toBe("ahead");
  // Nothing lifted by Friday, when both gym days are over: the last session stays that of 7 May.
  const friday = line({}, { asOf: monday + 4, monday: monday + 7 });
  expect(codes(friday)).toContain("restart");
  expect(codes(friday)).not.toContain("ahead");
});

test("on the evening of the last gym day nothing of the week is counted on that was not lifted", () => {
  const thursday = (over: Partial<Given> = {}) =>
    line({}, { asOf: monday + 3, monday: monday + 7, ...over });
  expect(codes(thursday())).not.toContain("ahead");
  // The last session stays the one that was lifted, and so does what was seen of it.
  const slow = { strengthLowKg: 110, lastWord: "well below usual" as const };
  const held = thursday({ state: state(name, slow) });
  expect(held.reasons.some(({ code }) => /^(?:last-well-below|restart)$/.test(code))).toBe(true);
});

test("a week with another exercise in the lift's place is no week of the lift", () => {
  const none = line({ rules: { ...rules, racks: 0 } }, { monday: monday + 7 });
  expect(none.sessions[0]!.instead).not.toBeNull();
  expect(codes(none)).not.toContain("ahead");
});

test("speed lost in the last session holds this week, and is over once a week went as planned", () => {
  const lost = { state: state(name, { strengthLowKg: 110, heldSpeed: false }) };
  expect(codes(line({}, lost))).toContain("speed-lost");
  expect(codes(line({}, { ...lost, monday: monday + 7 }))).not.toContain("speed-lost");
});

test("who may not lift has no weeks ahead either", () => {
  const out = line({ availability: [spell({ mayDo: "out", until: monday + 6 })] });
  expect(out).toMatchObject({ not: "out", sessions: [], outlook: [] });
  const nextWeek = spell({ mayDo: "out", from: monday + 7, until: monday + 13 });
  expect(codes(line({ availability: [nextWeek] }, { monday: monday + 7 }))[0]).toBe("out");
});

test("where no rack is free nothing of the bar is left, the marker neither", () => {
  const [first] = line({}, { change: { noRack: true } }).sessions;
  expect(first!.items.map(({ kind }) => kind)).not.toContain("marker");
  expect(first).toMatchObject({ markerKg: null, plates: [], reserve: null });
  expect(line().sessions[0]!.items.map(({ kind }) => kind)).toContain("marker");
});

const drop = (dropCm: number, contactS: number) =>
  jumpAttempt({ day: monday - 5, athlete: name, test: "drop jump", dropCm, contactS });

test("a novice lands less and drops from 20 cm, and that is said", () => {
  const novice = line(
    { jumps: [drop(30, 0.2)] },
    { athlete: athlete(name, { experience: "novice" }) },
  );
  const trained = line({ jumps: [drop(30, 0.2)] });
  expect([novice, trained].map(({ sessions: [one] }) => [one!.contacts, one!.drop.cm])).toEqual([
    [40, 20],
    [60, 30],
  ]);
  expect([novice, trained].map((one) => codes(one).includes("novice-drop"))).toEqual([true, false]);
});

test("why a drop is lower is said where there are drop jumps, and not where nothing lands", () => {
  const long = { jumps: [drop(30, 0.26)] };
  expect(codes(line(long))).toContain("contact-long");
  const none = line({ ...long, availability: [achilles] });
  expect(none.sessions.map(({ contacts }) => contacts)).toEqual([0, 0]);
  expect(codes(none)).not.toContain("contact-long");
});

test("jumps halved are said as soon as one session has any", () => {
  const sore = { state: state(name, { soreness: { day: monday - 1, value: 8 } }) };
  const [first] = line({}, sore).sessions;
  const until = { ...achilles, until: first!.day };
  const some = line({ availability: [until] }, sore);
  expect(some.sessions.map(({ contacts }) => contacts > 0)).toEqual([false, true]);
  expect(codes(some)).toContain("contacts-halved");
});

test("who was not to jump for a week or more lands half as much when it is over, a week or two", () => {
  const contacts = (from: number, until: number) => {
    const { sessions, reasons } = line({
      availability: [{ ...achilles, from: monday + from, until: monday + until }],
    });
    return [sessions[0]!.contacts, reasons.some(({ code }) => code === "contacts-halved")];
  };
  expect(contacts(-28, -1)).toEqual([30, true]);
  // Seven of the fourteen days before Tuesday, and six.
  expect(contacts(-28, -7)).toEqual([30, true]);
  expect(contacts(-28, -8)).toEqual([60, false]);
  expect(contacts(-3, -1)).toEqual([60, false]);
});

test("a block set by hand is not stepped on within the week", () => {
  const bySession = { rules: { ...rules, stepBySession: 1 } };
  const each = (change?: Given["change"]) =>
    line(bySession, change && { change }).sessions.map(
      ({ sets, reps, loadKg }) => `${sets}×${reps} ${loadKg}`,
    );
  expect(each()).toEqual(["3×5 72.5", "5×3 75"]);
  expect(each({ block: { sets: 5, reps: 3 } })).toEqual(["5×3 72.5", "5×3 72.5"]);
  expect(each({ loadKg: 65 })).toEqual(["3×5 65", "3×5 65"]);
});

test("after a marathon nothing is taken off twice: a session since it was eased already", () => {
  const races = [race("2026-05-03", 9, { distanceKm: 42.195 })];
  const since = line({ races });
  expect(codes(since)[0]).toBe("after-marathon");
  expect(since.sessions[0]!.loadKg).toBe(70);
  const before = ["2026-04-28", "2026-04-30"].flatMap((iso) => session(name, iso, at70));
  const first = line({ races, sets: before });
  expect(codes(first)[0]).toBe("after-marathon");
  // Ten per cent off 70 kg is 63, on this gym's plates 62.5.
  expect(first.sessions[0]!.loadKg).toBe(62.5);
});

test("a race week whose sets are few enough already cuts none, and says nothing of it", () => {
  const threes = ["2026-05-05", "2026-05-07"].flatMap((iso) =>
    session(name, iso, { ...at70, sets: 3 }),
  );
  const races = [race("2026-05-16", 10)];
  const kept = line({ races, sets: threes, rules: { ...rules, raceWeekSets: 3 } });
  expect(kept.kind).toBe("race week");
  expect(codes(kept)).not.toContain("race-week");
});

test("the marker is the last one written with its load", () => {
  const blank = session(name, "2026-05-08", { ...at70, markerKg: 1 })
    .filter(({ kind }) => kind === "marker")
    .map((set) => ({ ...set, loadKg: null }));
  expect(line({ sets: [...lifted, ...blank] }).sessions[0]!.markerKg).toBe(55);
});

test("a plate without a thickness makes no height", () => {
  const flat = plates.map((one) => (one.massKg === 20 ? { ...one, thicknessCm: 0 } : one));
  const [first] = line({ plates: flat, jumps: [drop(30, 0.2)] }).sessions;
  expect(first!.drop.stackKg.length).toBeGreaterThan(0);
  expect(first!.drop.stackKg).not.toContain(20);
});

test("fewer sets set by hand are no race week's", () => {
  const fewer = line({}, { change: { sets: 1 } });
  expect(fewer.sessions[0]!.sets).toBe(1);
  expect(codes(fewer)).not.toContain("race-week");
});

test("without a strength estimate, or reserves written down, none is told", () => {
  const unwritten = ["2026-05-05", "2026-05-07"].flatMap((iso) =>
    session(name, iso, at70, { repsInReserve: null }),
  );
  const [first] = line({ sets: unwritten }, { state: state(name) }).sessions;
  expect(first!.reserve).toBeNull();
});

test("assistance is one set before an A race, two in other weeks", () => {
  const sets = (races: SquadRows["races"]) =>
    line({ races })
      .sessions[0]!.items.filter(({ kind }) => kind === "assistance")
      .map((item) => item.sets);
  expect([sets([race("2026-05-16", 10)]), sets([])]).toEqual([
    [1, 1],
    [2, 2],
  ]);
});

test("a key run two days before counts where the coach asks for two days", () => {
  const saturday = { ...clubRuns(name, monday)[0]!, day: monday - 2, minute: 20 * 60 };
  const mondays = ["2026-04-27", "2026-05-04"].flatMap((iso) => session(name, iso, at70));
  const first = (hoursToKeyRun: number) =>
    line({ sets: mondays, runs: [saturday], rules: { ...rules, hoursToKeyRun } }).sessions[0]!.day;
  // Saturday 20:00 to Monday 18:00 is 46 hours.
  expect([first(46), first(48)]).toEqual([monday, monday + 1]);
});

test("another lift's sets above the main lift's are not taken for it in the weeks ahead", () => {
  const bench = session(
    name,
    "2026-05-04",
    { ...at70, sets: 1, loadKg: 40 },
    { exercise: "bench" },
  );
  const ahead = (sets: SquadRows["sets"]) => line({ sets }).outlook.map(({ loadKg }) => loadKg);
  expect(new Set(ahead(lifted)).size).toBeGreaterThan(1);
  expect(ahead([...bench, ...lifted])).toEqual(ahead(lifted));
});
