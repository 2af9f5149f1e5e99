import { changeOf, otherTurnsOf, withChanges } from "../../../src/actions/messages/week-change";

const athlete = "Tomas Reyerson";
const turn = "hip thrust";

test("changes to one athlete add up, the later of a field counting", () => {
  const priya = "Priya Tellander";
  const before = [
    { athlete: priya, sets: 2 },
    { athlete, loadKg: 82.5 },
  ];
  expect(withChanges(before, [{ athlete: priya, sets: 3, block: "5×3" }])).toEqual([
    { athlete: priya, sets: 3, block: "5×3" },
    { athlete, loadKg: 82.5 },
  ]);
});

test("a change of another turn's load stands beside what was changed of the week", () => {
  const first = withChanges([{ athlete, loadKg: 80 }], [{ athlete, turn, loadKg: 90 }]);
  const changes = withChanges(first, [{ athlete, turn, loadKg: 95 }]);
  expect(changes).toEqual([
    { athlete, loadKg: 80 },
    { athlete, turn, loadKg: 95 },
  ]);
  expect(changeOf(changes, athlete)).toEqual({ loadKg: 80 });
  expect(changeOf(changes, athlete, turn)).toEqual({ loadKg: 95 });
  expect(otherTurnsOf(changes, athlete)).toEqual(new Map([[turn, { loadKg: 95 }]]));
  const both = withChanges(changes, [{ athlete, turn, block: "5×3" }]);
  expect(otherTurnsOf(both, athlete).get(turn)).toEqual({ loadKg: 95, block: "5×3" });
});

test("an athlete spelled in another way, or the first turn named by its empty name, is the same", () => {
  const changes = withChanges(
    [{ athlete, loadKg: 80 }],
    [{ athlete: " tomas  REYERSON", turn: "", sets: 3 }],
  );
  expect(changes).toHaveLength(1);
  expect(changeOf(changes, athlete)).toEqual({ loadKg: 80, sets: 3 });
  expect(otherTurnsOf(changes, athlete).size).toBe(0);
});

test("where nothing was changed there is nothing", () => {
  const changes = [{ athlete, turn, sets: 2 }];
  expect(changeOf(changes, athlete)).toEqual({});
  expect(otherTurnsOf(changes, athlete).size).toBe(0);
  expect(otherTurnsOf([{ athlete, turn, loadKg: 90 }], "Priya Tellander").size).toBe(0);
});

test("taken back as proposed, all that was changed of the athlete goes and the others' changes stay", () => {
  const priya = { athlete: "Priya Tellander", sets: 2 };
  const before = [{ athlete, loadKg: 80 }, priya, { athlete, turn, loadKg: 90 }];
  const back = { athlete: "tomas reyerson", asProposed: true } as const;
  expect(withChanges(before, [back])).toEqual([priya, back]);
  // Changes made after it are put on top of it, on an earlier list as on this one.
  const later = withChanges([back], [{ athlete: "tomas reyerson", sets: 3 }]);
  expect(withChanges(before, later)).toEqual([priya, { ...back, sets: 3 }]);
});
