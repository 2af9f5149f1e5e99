import { knots } from "../../src/local-host/engine/knots";

const sorted = (groups: number[][]) =>
  groups.map((one) => [...one].sort((a, b) => a - b)).sort((a, b) => a[0]! - b[0]!);

test("two circles joined by a path are two groups, and the path is in neither", () => {
  // 1 → 2 → 3 → 1, 3 → 4 → 5, 5 → 6 → 5; 7 leads to 1, 8 to itself, 9 to nothing.
  const next = [[2], [3], [1, 4], [5], [6], [5], [1], [8], []];
  expect(sorted(knots([1, 2, 3, 4, 5, 6, 7, 8, 9], next))).toEqual([[1, 2, 3], [5, 6], [8]]);
});

test("names of nobody are passed over, and without a circle there is no group", () => {
  expect(knots([1, 2], [[2, 99], []])).toEqual([]);
});

test("against reachability by repeated squaring, on graphs of twelve with every density", () => {
  let seed = 7;
  const chance = () => {
    seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
    return seed / 2 ** 32;
  };
  const size = 12;
  const all = Array.from({ length: size }, (_, at) => at);
  for (let round = 0; round < 400; round++) {
    const density = chance() ** 2;
    const edge = all.map(() => all.map(() => chance() < density));
    const reach = edge.map((row) => [...row]);
    for (const middle of all)
      for (const from of all)
        for (const to of all) reach[from]![to] ||= reach[from]![middle]! && reach[middle]![to]!;
    const expected = new Set(
      all
        .filter((one) => reach[one]![one])
        .map((one) => all.filter((other) => reach[one]![other] && reach[other]![one]).join(" ")),
    );
    const found = knots(
      all,
      edge.map((row) => all.filter((to) => row[to])),
    );
    expect(new Set(sorted(found).map((one) => one.join(" ")))).toEqual(expected);
  }
});
