import { proposeLine } from "../../../../src/coaching/next-week/propose-line";
import type { JumpAttempt } from "../../../../src/coaching/record/jump-attempt";
import { lineReasonWords } from "../../../../src/words/week";
import { jossModified } from "../../availability/joss-modified";
import { jumpAttempt } from "../../series/invented-season";
import { athlete, day, plates, race, session, squadRows, state } from "../written-squad";

const name = "Joss Whitterby";
const monday = day("2026-05-11");
const wednesdays = ["2026-04-22", "2026-04-29", "2026-05-06"];
const jumps = (over: Partial<JumpAttempt> = {}, days: readonly string[] = wednesdays) =>
  days.map((iso) => jumpAttempt({ athlete: name, day: day(iso), ...over }));
const line = (
  over: Partial<Parameters<typeof squadRows>[0]> = {},
  rest: Partial<Parameters<typeof proposeLine>[0]> = {},
) =>
  proposeLine({
    athlete: athlete(name, { sessionsAWeek: 1 }),
    name,
    state: state(name, { lastStackKg: [15, 15, 5] }),
    rows: squadRows({ plates, jumps: jumps(), ...over }),
    monday,
    asOf: monday - 1,
    ...rest,
  });
const said = (one: ReturnType<typeof line>) => one.reasons.map(lineReasonWords);
const alone = "No work sets in the rows, only jumps: no lift is proposed.";

test("who jumps and lifts nothing is told so, with the session’s contacts, last stack and usual day", () => {
  const found = line();
  expect(found).toMatchObject({ not: "no-sets-yet", sessions: [], outlook: [], odd: false });
  expect(said(found)).toEqual([
    `${alone} At most 60 ground contacts a session, box jumps onto 2×15+5.`,
  ]);
  expect(found.days!.best.map(({ day: on }) => on)).toEqual([day("2026-05-13")]);
  expect(found.sessionsAWeek).toBe(1);
});

test("one set in the rows, and the lift is planned as ever; neither sets nor jumps: write the first week", () => {
  const sets = session(name, "2026-05-05", { sets: 5, reps: 5, loadKg: 85, markerKg: 67.5 });
  expect(line({ sets })).toMatchObject({ not: null });
  const others = jumps({ athlete: "Priya Tellander" });
  expect(said(line({ jumps: others }))).toEqual([
    "No work sets in the rows yet: write the first week by hand.",
  ]);
  expect(line({ jumps: jumps({}, ["2026-05-13"]) }).reasons).toEqual([
    { code: "no-sets-yet", facts: {} },
  ]);
});

test("before an A race, after an ultra, two weeks off, sore or slow the contacts are halved", () => {
  const half = [
    `${alone} At most 30 ground contacts a session, box jumps onto 2×15+5.`,
    "Ground contacts halved.",
  ];
  expect(said(line({ races: [race("2026-05-16", 10)] })).slice(0, 2)).toEqual(half);
  expect(said(line({ races: [race("2026-05-04", 6, { distanceKm: 60 })] })).slice(0, 2)).toEqual(
    half,
  );
  expect(said(line({ jumps: jumps({}, ["2026-04-22"]) }))).toEqual(half);
  const slow = line(
    {},
    { state: state(name, { lastStackKg: [15, 15, 5], lastWord: "well below usual" }) },
  );
  expect([said(slow), slow.odd]).toEqual([half, true]);
  const soreness = { day: monday - 1, value: 8 };
  const sore = line({}, { state: state(name, { lastStackKg: [15, 15, 5], soreness }) });
  expect(said(sore).slice(0, 2)).toEqual(half);
});

test("in the week after an ultra no day is left, and that is said", () => {
  const found = line({ races: [race("2026-05-10", 19, { distanceKm: 80, race: "Horn Ultra" })] });
  expect(found).toMatchObject({ not: "no-day", sessions: [] });
  expect(said(found)[0]).toBe(
    "No day of this week keeps the hours asked for around races and key runs.",
  );
  expect(said(found)[1]).toMatch(/^Wed 13 May refused: 71 h after Horn Ultra/);
});

test("a long contact lowers the drop, a novice drops from 20 cm; a good day adds no load to nothing", () => {
  const above = { state: state(name, { lastStackKg: [15, 15, 5], lastWord: "above usual" }) };
  const drops = { test: "drop jump", dropCm: 30, contactS: 0.27 };
  expect(said(line({ jumps: jumps(drops) }, above))).toEqual([
    `${alone} At most 60 ground contacts a session, box jumps onto 2×15+5.`,
    "Drop jump lower: contact was slow, past 0.25 s.",
  ]);
  const novice = athlete(name, { experience: "novice", sessionsAWeek: 1 });
  const ofNovice = line(
    { jumps: jumps({ ...drops, contactS: 0.2 }) },
    { athlete: novice, state: state(name) },
  );
  expect(said(ofNovice)).toEqual([
    `${alone} At most 40 ground contacts a session.`,
    "Novices drop from 20 cm or less.",
  ]);
});

test("who may not jump is given no contacts, and is read first", () => {
  const found = line({
    availability: [jossModified(monday - 7, { mayDo: "modified", site: "Achilles" })],
  });
  expect(said(found)).toEqual([alone, "Achilles: no jumps until asked about."]);
  expect(found.odd).toBe(true);
  expect(line({ availability: [jossModified(monday - 7, { mayDo: "out" })] })).toMatchObject({
    not: "out",
    odd: false,
  });
  expect(line({}, { state: state(name, { word: "slipping" }) }).odd).toBe(true);
});
