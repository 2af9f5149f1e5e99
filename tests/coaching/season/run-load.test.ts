import type { Run } from "../../../src/coaching/record/run";
import { likeness, runLoad, weekLoad } from "../../../src/coaching/season/run-load";
import { refuse } from "../../../src/outcome";

const run = (row: number, day: number, exertion: number | null, minutes: number | null): Run => ({
  row,
  day,
  minute: null,
  athlete: "Ada",
  kind: "easy",
  minutes,
  exertion,
  km: null,
});

test("runs of one day add up, rest days are 0, runs outside the week are not read", () => {
  const runs = [
    run(2, 20_000 - 7, 9, 100),
    run(3, 20_000 - 6, 5, 60),
    run(4, 20_000 - 4, 7, 60),
    run(5, 20_000, 3, 30),
    run(6, 20_000, 6, 50),
    run(7, 20_000 + 1, 9, null),
  ];
  const week = weekLoad(runs, 20_000);
  if (!week.ok) throw new Error(week.refusal.code);
  expect(week.value.days).toEqual([300, 0, 420, 0, 0, 0, 390]);
  expect(week.value.total).toBe(1110);
  expect(week.value).toEqual((likeness([300, 0, 420, 0, 0, 0, 390]) as { value: object }).value);
});

test("an unrated run in the week refuses the sum", () => {
  const runs = [run(2, 20_000, 5, 60), run(3, 19_994, null, 45)];
  expect(weekLoad(runs, 20_000)).toEqual(refuse("run-not-rated", { row: 3, day: 19_994 }));
  const untimed = [run(2, 20_000, 5, 60), run(3, 19_994, 6, null)];
  expect(weekLoad(untimed, 20_000)).toEqual(refuse("run-not-rated", { row: 3, day: 19_994 }));
});

test("exertion ends at 10 and minutes at a day", () => {
  expect(runLoad(10, 1440)).toEqual({ ok: true, value: 14_400 });
  expect(runLoad(0, 60)).toEqual({ ok: true, value: 0 });
  expect(runLoad(-1, 60)).toEqual(refuse("exertion-impossible", { exertion: -1 }));
  expect(runLoad(10.1, 60)).toEqual(refuse("exertion-impossible", { exertion: 10.1 }));
  expect(runLoad(5, 1441)).toEqual(refuse("minutes-impossible", { minutes: 1441 }));
  expect(runLoad(5, 0)).toEqual(refuse("minutes-impossible", { minutes: 0 }));
});

test("seven equal days have a sum, and no spread to divide by; so has a week without a run", () => {
  const runs = [0, 1, 2, 3, 4, 5, 6].map((back) => run(2 + back, 20_000 - back, 5, 60));
  const alike = { monotony: null, strain: null };
  expect(weekLoad(runs, 20_000)).toEqual({
    ok: true,
    value: { days: Array(7).fill(300), total: 2100, ...alike },
  });
  expect(weekLoad(runs, 20_007)).toEqual({
    ok: true,
    value: { days: Array(7).fill(0), total: 0, ...alike },
  });
});

test("a run that cannot be is refused by its row", () => {
  expect(weekLoad([run(9, 20_000, 5, 0)], 20_000)).toEqual(
    refuse("minutes-impossible", { minutes: 0, row: 9 }),
  );
});
