import { dayFromIso } from "../../src/coaching/calendar/day";
import * as rows from "./readers";

const day = (iso: string) => dayFromIso(iso) as number;
const counts = (r: {
  rowsRead: number;
  rowsReported: number;
  rowsBlank: number;
  rowsHeading: number;
}) => [r.rowsRead, r.rowsReported, r.rowsBlank, r.rowsHeading];
const found = (r: {
  issues: readonly { code: string; cell: string; found: string; facts: object }[];
}) => r.issues.map(({ code, cell, found }) => [code, cell, found]);

test("sets: other column order, an extra column, pounds, decimal comma and speeds in one cell", () => {
  const reading = rows.readSets([
    ["Lift", "Weather", "Name", "Load (lb)", "Rep speeds", "Date", "Satz", "OK?"],
    ["squat", "rain", " Kofi  Anstruther", 225, "0,62 0,60 0,57", new Date(2026, 4, 12), 1, "y"],
    ["squat", "", "Kofi Anstruther", "185 lb", "0.62/0.61", "2026-05-12", 2, "N"],
    ["squat", "", "Kofi Anstruther", "60 kg", "0.82", "12/05/2026", 3, ""],
    ["", "", "", "", "", "", "", ""],
  ]);
  expect(found(reading)).toEqual([["date-order-unsettled", "F4", "12/05/2026"]]);
  expect(counts(reading)).toEqual([2, 1, 1, 1]);
  expect(reading.records[0]).toMatchObject({
    row: 2,
    day: day("2026-05-12"),
    athlete: "Kofi Anstruther",
    exercise: "squat",
    set: 1,
    kind: "work",
    loadKg: 225 * 0.45359237,
    repSpeeds: [0.62, 0.6, 0.57],
    movedWell: true,
  });
  expect(reading.records[1]?.movedWell).toBe(false);
});

test("a speed typed 62 is reported with its cell and the mend 0.62; the set stays", () => {
  const reading = rows.readSets([
    ["Date", "Athlete", "Exercise", "Set", "Load", "Rep 1", "Rep 2", "Rep 3"],
    ["2026-05-12", "Ilka", "squat", 1, 65, 0.66, 62, 0.63],
    ["2026-05-12", "Ilka", "squat", 2, 820, 0.66, 0.62, 0.63],
    ["2026-05-12", "Ilka", "squat", 2, 65, "0.58?", 0.62, 0.63],
    ["2026-05-12", "Ilka", "squat", 1, 65, 0.66, 62, 0.63],
  ]);
  expect(reading.issues.map(({ code, cell, facts }) => [code, cell, facts.mend])).toEqual([
    ["implausible", "G2", 0.62],
    ["implausible", "E3", 82],
    ["unsure", "F4", 0.58],
    ["doubled-row", "A5", undefined],
  ]);
  expect(reading.records[0]?.repSpeeds).toEqual([0.66, null, 0.63]);
  expect(counts(reading)).toEqual([3, 1, 0, 1]);
});

test("one row a repetition becomes one set", () => {
  const reading = rows.readSets([
    ["Date", "Athlete", "Exercise", "Set", "Rep", "Load", "Speed"],
    ["2026-05-12", "Ilka", "squat", 1, 1, 65, 0.66],
    ["2026-05-12", "Ilka", "squat", 1, 2, 65, 0.64],
    ["2026-05-12", "Ilka", "squat", 2, 1, 65, 0.65],
  ]);
  expect(reading.records.map((set) => [set.row, set.set, set.reps, set.repSpeeds])).toEqual([
    [2, 1, 2, [0.66, 0.64]],
    [4, 2, 1, [0.65]],
  ]);
  expect(counts(reading)).toEqual([3, 0, 0, 1]);
});

test("whole-column padding is no data", () => {
  const padding = Array.from({ length: 1000 }, () => ["", "", "", false]);
  const reading = rows.readDiary([
    ["Date", "Athlete", "Sleep (h)", "Private"],
    ["2026-05-12", "Ilka", "7:30", true],
    ...padding,
  ]);
  expect(counts(reading)).toEqual([1, 0, 1000, 1]);
  expect(reading.records[0]).toMatchObject({ sleepH: 7.5, private: true });
});

test("jumps: heights in metres, stacks, contact in ms, flight in s", () => {
  const reading = rows.readJumps([
    ["Day", "Athlete", "Test", "Height (m)", "Plates", "Contact ms", "Flight (s)", "Landing cm"],
    ["2026-04-14", "Ilka", "box jump", "0,42", "5x15+5", "", "", ""],
    ["2026-04-14", "Ilka", "drop jump", "", "", 182, 0.49, 30],
    ["2026-04-14", "Ilka", "drop jump", "", "", ".196", 490, ""],
    ["2026-04-14", "Ilka", "drop jump", "", "", 17, 0.5, ""],
  ]);
  expect(found(reading)).toEqual([["implausible", "F5", "17"]]);
  expect(reading.records[0]).toMatchObject({ heightCm: 42, stackKg: [15, 15, 15, 15, 15, 5] });
  expect(reading.records[1]).toMatchObject({ contactS: 0.182, flightS: 0.49, landingCm: 30 });
  expect(reading.records[2]).toMatchObject({ contactS: 0.196, flightS: 0.49 });
});

test("athletes, availability, runs, races, plates and rules", () => {
  const athletes = rows.readAthletes([
    ["Name", "Event", "Experience", "Born", "Supervisor", "Sessions/week"],
    ["Bea Lindqvale", "1500 m", "novice", 2009, "M. Aspholt from 5 May 2026", 2],
    ["bea  lindqvale", "", "", "", "", ""],
    ["Oona Petrakell", "half marathon", "8 years", 1993, "", 1],
  ]);
  expect(athletes.records[0]).toMatchObject({
    experience: "novice",
    birthYear: 2009,
    supervisor: "M. Aspholt",
    supervisorFrom: day("2026-05-05"),
    sessionsAWeek: 2,
  });
  expect(found(athletes)).toEqual([
    ["athlete-twice", "A3", "bea lindqvale"],
    ["word-unknown", "C4", "8 years"],
  ]);
  const availability = rows.readAvailability([
    ["Athlete", "From", "Until", "May do", "By whom", "Pain 0-10"],
    ["Dario Quell", "18/5/2026", "1/6/2026", "out", "club doctor", ""],
    ["Joss Whitterby", "9/6/2026", "", "perhaps", "", 3],
  ]);
  expect(availability.records).toMatchObject([
    { from: day("2026-05-18"), until: day("2026-06-01"), mayDo: "out" },
  ]);
  expect(found(availability)).toEqual([["word-unknown", "D3", "perhaps"]]);
  expect(counts(availability)).toEqual([1, 1, 0, 1]);
  const runs = rows.readRuns([
    ["Date", "Athlete", "Kind", "Minutes", "RPE", "Distance (mi)"],
    ["2026-06-16", "Ilka", "Intervals", "1:05:00", 7, 10],
    ["2026-06-17", "Ilka", "easy", "5:30", 3, ""],
  ]);
  expect(runs.records[0]).toMatchObject({
    kind: "interval",
    minutes: 65,
    exertion: 7,
    km: 16.09344,
  });
  expect(found(runs)).toEqual([["length-unsettled", "D3", "5:30"]]);
  const races = rows.readRaces([
    ["Race", "Date", "Start time", "Who", "Distance", "Matters"],
    ["R5", "2026-08-02", "10:00", "", "half marathon", "A"],
    ["R3", "2026-06-13", "", "Track", "5,000 m", "b"],
  ]);
  expect(races.records).toMatchObject([
    { startMinute: 600, who: "all", distanceKm: 21.0975, matters: "A" },
    { startMinute: null, who: "Track", distanceKm: 5, matters: "B" },
  ]);
  const plates = rows.readPlates([
    ["Mass (kg)", "Thickness (mm)", "Number owned"],
    [5, 21, 4],
    [15, "34", 10],
    [15, 36, 2],
  ]);
  expect(plates.records.map((plate) => [plate.massKg, plate.thicknessCm])).toEqual([
    [5, 2.1],
    [15, 3.4],
  ]);
  expect(found(plates)).toEqual([["plate-twice", "A4", "15"]]);
  const rules = rows.readRules([
    ["Rule", "Value"],
    ["Velocity loss cap", "15 %"],
    ["Load off on a slow day", 10],
    ["Colour of the bar", 3],
  ]);
  expect(rules.records).toEqual([{ row: 2, key: "velocityLossCap", value: 0.15 }]);
  expect(rules.issues.map(({ code, facts }) => [code, facts.mend])).toEqual([
    ["rule-out-of-bounds", 0.1],
    ["rule-unknown", undefined],
  ]);
});

test("in a list of speeds the mend is the whole cell with one piece put right", () => {
  const reading = rows.readSets([
    ["Date", "Athlete", "Exercise", "Load", "Rep speeds"],
    ["2026-05-12", "Ilka", "squat", 65, "0.67 62 0.65"],
    ["2026-05-12", "Ilka", "squat", 67.5, "0,62/6,1/0,60"],
  ]);
  expect(
    reading.issues.map(({ cell, facts }) => [cell, facts.piece, facts.mendPiece, facts.mend]),
  ).toEqual([
    ["E2", "62", 0.62, "0.67 0.62 0.65"],
    ["E3", "6.1", 0.61, "0,62/0,61/0,60"],
  ]);
  expect(reading.records.map(({ repSpeeds }) => repSpeeds)).toEqual([
    [0.67, null, 0.65],
    [0.62, null, 0.6],
  ]);
});

test("75 hours of sleep are reported with 7.5 as the mend", () => {
  const reading = rows.readDiary([
    ["Date", "Athlete", "Sleep h"],
    ["2026-05-12", "Ilka", 75],
  ]);
  expect(reading.issues.map(({ cell, facts }) => [cell, facts.mend])).toEqual([["C2", 7.5]]);
});

test("a set of an unknown kind is left out, as it may be a warm-up; warm-ups numbered in words are known", () => {
  const reading = rows.readSets([
    ["Date", "Athlete", "Exercise", "Load", "Kind"],
    ["2026-05-12", "Ilka", "squat", 40, "warm-up 2"],
    ["2026-05-12", "Ilka", "squat", 50, "Marker set"],
    ["2026-05-12", "Ilka", "squat", 60, "feeler"],
    ["2026-05-12", "Ilka", "squat", 65, ""],
  ]);
  expect(reading.records.map(({ kind }) => kind)).toEqual(["warm-up", "marker", "work"]);
  expect(found(reading)).toEqual([["word-unknown", "E4", "feeler"]]);
  expect(counts(reading)).toEqual([3, 1, 0, 1]);
});
