import { racesOf } from "../../../src/coaching/diary/races-of";
import { athleteRow } from "../series/invented-season";

const race = (name: string, who: string) => ({
  row: 2,
  day: 20_600,
  startMinute: null,
  race: name,
  who,
  distanceKm: 10,
  surface: "road",
  matters: "B" as const,
});
const races = [
  race("club night", "all"),
  race("open mile", ""),
  race("relay", "Priya  TELLANDER"),
  race("track meeting", "Track"),
  race("road relay", "road"),
];
const ofAthlete = (group: string | null) =>
  racesOf(
    races,
    "Priya Tellander",
    group === null ? null : athleteRow({ athlete: "Priya Tellander", group }),
  ).map(({ race: name }) => name);

test("an athlete runs the races under the own name, the group's, and those for all", () => {
  expect(ofAthlete("track")).toEqual(["club night", "open mile", "relay", "track meeting"]);
  expect(ofAthlete("road")).toEqual(["club night", "open mile", "relay", "road relay"]);
});

test("without a group, or without a row in the Athletes table, no group's race is the athlete's", () => {
  expect(ofAthlete("")).toEqual(["club night", "open mile", "relay"]);
  expect(ofAthlete(null)).toEqual(["club night", "open mile", "relay"]);
});

test.each([
  "Ilka Brandmoor; Priya Tellander",
  "Ilka Brandmoor, Priya Tellander",
  "Ilka Brandmoor & priya tellander",
  "Ilka Brandmoor and Priya Tellander",
  "Ilka Brandmoor/Priya Tellander",
  "road + track",
  "road und track",
])("several in one cell each run: %s", (who) => {
  const of = (athlete: string, group: string) =>
    racesOf([race("relay", who)], athlete, athleteRow({ athlete, group })).length;
  expect([of("Priya Tellander", "track"), of("Wren Castellow", "hurdles")]).toEqual([1, 0]);
});

test("a sign that parts nobody names nobody, nor an athlete without a group", () => {
  const details = athleteRow({ athlete: "Wren Castellow", group: "" });
  expect(racesOf([race("mile", "; Ilka Brandmoor")], "Wren Castellow", details)).toEqual([]);
});

test("“and” inside a name parts nothing, and “all” among others is nobody's", () => {
  const of = (who: string, athlete: string) => racesOf([race("mile", who)], athlete, null).length;
  expect(of("Sandor Brandmoor", "Sandor Brandmoor")).toBe(1);
  expect(of("Åand Ruud", "Ruud")).toBe(0);
  expect(of("all, except Priya Tellander", "Ilka Brandmoor")).toBe(0);
});

test.each(["Renwick, Jo; Okafor, Anna", "Okafor, Anna, Renwick, Jo", "Okafor, Anna & Renwick, Jo"])(
  "a name with a comma of its own is found among others: “%s”",
  (who) => {
    const runs = (athlete: string) => racesOf([race("mile", who)], athlete, null).length;
    expect([runs("Okafor, Anna"), runs("Renwick, Jo"), runs("Lindqvist, Anna")]).toEqual([1, 1, 0]);
  },
);
