import { runCell } from "../../../src/rows/layout/shorthand/run-cell";

/** "easy 45 min 10 km @4 (hilly)" for the run a cell says; its kind for any other. */
const said = (cell: unknown, bare: "minutes" | "km" | null = null) => {
  const one = runCell(cell, bare);
  if (one.is === "none") return `none: ${one.note}`;
  if (one.is !== "run") return one.is;
  const { kind, minutes, km, exertion, note } = one.run;
  return [kind, minutes, km, exertion && `@${exertion}`, note && `(${note})`]
    .filter((part) => part !== "")
    .join(" | ");
};

test.each([
  ["45 min easy", "easy | 45 min"],
  ["easy, 45min", "easy | 45min"],
  ["10 km tempo", "race pace | 10 km"],
  ["10k tempo", "race pace | 10 km"],
  ["6 miles long", "long | 6 mi"],
  ["6mi", "6 mi"],
  ["12,5 km", "12,5 km"],
  ["1:20:00 long", "long | 1:20:00"],
  ["1h20 long run", "long | 1h20 | (run)"],
  ["long run", "long | (run)"],
  ["1,5 Std", "1,5 Std"],
  ["90 mins", "90 mins"],
  ["40 minutes", "40 minutes"],
  ["40 minuten", "40 minuten"],
  ["2 hours", "2 hours"],
  ["2 hrs", "2 hrs"],
  ["60' @4", "60 min | @4"],
  ["easy@4flat", "easy | @4 | (flat)"],
  ["60’ rpe 4.5", "60 min | @4.5"],
  ["45 min effort 6", "45 min | @6"],
  ["45 min exertion 10", "45 min | @10"],
  ["45 min 7/10", "45 min | @7"],
  ["45 min rpe 5-6", "45 min | @5-6"],
  ["60' @ 4–5 hilly", "60 min | @4–5 | (hilly)"],
  ["8x400", "interval | (8x400)"],
  ["8 × 400 m @8", "interval | @8 | (8 × 400 m)"],
  ["5x1 km", "interval | (5x1 km)"],
  ["4x3 min hills", "interval | (4x3 min)"],
  ["6x400 tempo", "race pace | (6x400)"],
  ["45 min (hilly) route", "45 min | (hilly route)"],
  ["race pace 40 min", "race pace | 40 min | (pace)"],
  ["10 km 45 min", "45 min | 10 km"],
  ["renntempo", "race pace"],
])("a run written “%s”", (cell, meant) => {
  expect(said(cell)).toBe(meant);
});

test.each([
  [45, "figure-unsettled"],
  ["45", "figure-unsettled"],
  ["45 easy", "figure-unsettled"],
  ["", "none: "],
  [false, "none: "],
  [0, "none: "],
  ["n/a", "none: "],
  ["rest", "none: rest"],
  ["45 min bike", "none: 45 min bike"],
  ["Radfahren 60", "none: Radfahren 60"],
  ["swimming", "none: swimming"],
  ["cycling 2h", "none: cycling 2h"],
  ["felt ill", "none: felt ill"],
  [" 0 ", "none: "],
  [" swimming ", "none: swimming"],
  ["@4", "none: @4"],
  ["ditto", "ditto"],
  ["as Tue", "as-weekday"],
  [true, "unread"],
  [new Date(2026, 4, 1), "unread"],
  ["45 min 2x", "unread"],
  ["45 50", "unread"],
  ["bikes 45 min", "45 min | (bikes)"],
])("no run that can be told: %p", (cell, meant) => {
  expect(said(cell)).toBe(meant);
});

test("what a bare figure is, once somebody has said; two of a kind are not told apart", () => {
  expect(said(45, "minutes")).toBe("45");
  expect(runCell(45, "minutes")).toMatchObject({ run: { minutes: "45", km: "" } });
  expect(runCell("45 easy", "minutes")).toMatchObject({ run: { kind: "easy", minutes: "45" } });
  expect(runCell("12,5 easy", "km")).toMatchObject({
    run: { kind: "easy", minutes: "", km: "12,5" },
  });
  expect(runCell("45 10 km", "minutes")).toMatchObject({ run: { minutes: "45", km: "10 km" } });
  expect(runCell("10 45 min", "km")).toMatchObject({ run: { minutes: "45 min", km: "10" } });
  expect(runCell("10.55", "km")).toMatchObject({ run: { km: "10.55" } });
  expect(said("45 50 min", "minutes")).toBe("unread");
  expect(said("10 12 km", "km")).toBe("unread");
});

test.each([
  ["60 min @ easy", "easy | 60 min"],
  ["60 min langer Lauf", "long | 60 min | (langer Lauf)"],
])("a run “%s” is %s", (cell, run) => {
  expect(said(cell)).toBe(run);
});
