import type { Race } from "../../../src/coaching/record/race";
import { cellOfName } from "../../../src/rows/name/cell-of-name";
import { raceNames, withRaceNames } from "../../../src/rows/name/race-names";

const race = (row: number, who: string): Race => ({
  row,
  day: 20_600,
  startMinute: null,
  race: "mile",
  who,
  distanceKm: null,
  surface: "",
  matters: null,
});
const athletes = [
  { athlete: "Ilka Brandmoor", group: "track" },
  { athlete: "Tomas Reyerson", group: "800/1500" },
];

test("each runner is named beside the row, groups and a race for all are nobody's name", () => {
  const races = [
    race(2, "Ilka Brandmoor; Pim Dorrant"),
    race(3, "all"),
    race(4, "Track"),
    race(5, "track, Wren Castellow"),
    race(6, "ilka brandmoor"),
    race(7, "800/1500"),
  ];
  expect(raceNames(races, athletes)).toEqual([
    { row: 2, athlete: "Ilka Brandmoor" },
    { row: 2, athlete: "Pim Dorrant" },
    { row: 5, athlete: "Wren Castellow" },
  ]);
});

test("an answered spelling is put right, alone or among others; other races stay the very same", () => {
  const answers = {
    same: [
      { written: "T. Reyerson", athlete: "Tomas Reyerson" },
      { written: "T & I", athlete: "Ilka Brandmoor" },
    ],
    different: [],
  };
  const races = [race(2, "Ilka Brandmoor, t. reyerson"), race(3, "T & I"), race(4, "track")];
  const put = withRaceNames(races, answers);
  expect(put).toEqual([
    race(2, "Ilka Brandmoor; Tomas Reyerson"),
    race(3, "Ilka Brandmoor"),
    race(4, "track"),
  ]);
  expect(put[2]).toBe(races[2]);
  expect(withRaceNames(races, { same: [], different: [] })).toBe(races);
});

test("the cell of a name is found where it stands among others, and where the name itself has such a sign", () => {
  const cells = [
    ["Date", "Who"],
    ["2026-06-27", "Ilka Brandmoor; Pim Dorrant"],
    ["2026-06-28", "T & R"],
  ];
  expect(cellOfName(cells, 2, 2, "Pim Dorrant")).toBe("B2");
  expect(cellOfName(cells, 3, 2, "T & R")).toBe("B3");
  expect(cellOfName(cells, 3, null, "t & r")).toBe("B3");
});

test("a name with a comma of its own is no two names nobody knows", () => {
  const listed = [
    { athlete: "Okafor, Anna", group: "track" },
    { athlete: "Renwick, Jo", group: "" },
  ];
  const races = [race(2, "Okafor, Anna; Renwick, Jo"), race(3, "track, Okafor, Anna, Pim")];
  expect(raceNames(races, listed)).toEqual([{ row: 3, athlete: "Pim" }]);
  // An answered spelling among others leads to the athlete.
  const answered = withRaceNames([race(2, "Jo, Okafor, Anna")], {
    same: [{ written: "Jo", athlete: "Renwick, Jo" }],
    different: [],
  });
  expect(raceNames(answered, listed)).toEqual([]);
});

test("names in a race's brackets are asked about where they may be an athlete, and make it theirs once known", () => {
  const listed = [
    { athlete: "Hannah Brightwood", group: "road" },
    { athlete: "Kai Nakatomi", group: "track" },
  ];
  const of = (name: string) => ({ ...race(2, "all"), race: name });
  const asked = (name: string) => raceNames([of(name)], listed).map(({ athlete }) => athlete);
  expect(asked("10k champs (Hannah B, Kai)")).toEqual(["Hannah B", "Kai"]);
  expect(asked("10k champs (Kai) - 7:40 PM")).toEqual(["Kai"]);
  expect([asked("mile (heats)"), asked("mile (road)"), asked("Kai mile")]).toEqual([[], [], []]);
  const who = (name: string, ...same: readonly [string, string][]) =>
    withRaceNames(
      [of(name)],
      { same: same.map(([written, athlete]) => ({ written, athlete })), different: [] },
      listed,
    )[0]!.who;
  expect(who("10k (Kai Nakatomi & road)")).toBe("Kai Nakatomi; road");
  // Until every one of them is known it stays everybody's.
  expect(who("10k (Hannah B, Kai)", ["Kai", "Kai Nakatomi"])).toBe("all");
  expect(
    who("10k (Hannah B, Kai)", ["Kai", "Kai Nakatomi"], ["Hannah B", "Hannah Brightwood"]),
  ).toBe("Hannah Brightwood; Kai Nakatomi");
  expect([who("mile (heats)"), who("mile")]).toEqual(["all", "all"]);
});

test("a name in brackets is found in its cell", () => {
  expect(
    cellOfName(
      [
        ["Date", "Meet"],
        ["2026-06-13", "10k (Hannah B, Kai)"],
      ],
      2,
      1,
      "Kai",
    ),
  ).toBe("B2");
});
