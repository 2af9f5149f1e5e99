import { proposeLine } from "../../../../src/coaching/next-week/propose-line";
import { athlete, day, race, session, squadRows, state } from "../written-squad";

const name = "Tomas Reyerson";
const at85 = { sets: 3, reps: 5, loadKg: 85, markerKg: 67.5 };

test("after weeks in which races moved the gym it is back on its usual days", () => {
  // Tuesday and Thursday; then Monday and Wednesday before three Saturday races.
  const own = ["2026-04-14", "2026-04-16"];
  const moved = [
    "2026-04-20",
    "2026-04-22",
    "2026-04-27",
    "2026-04-29",
    "2026-05-04",
    "2026-05-06",
  ];
  const races = ["2026-04-25", "2026-05-02", "2026-05-09"].map((iso) =>
    race(iso, 11, { matters: "C" }),
  );
  const days = (rows: Parameters<typeof squadRows>[0]) =>
    proposeLine({
      athlete: athlete(name),
      name,
      state: state(name),
      rows: squadRows({
        sets: [...own, ...moved].flatMap((iso) => session(name, iso, at85)),
        ...rows,
      }),
      monday: day("2026-05-18"),
      asOf: day("2026-05-10"),
    }).sessions.map((one) => one.day - day("2026-05-18"));
  expect(days({ races })).toEqual([1, 3]);
  expect(days({})).toEqual([0, 2]);
});
