import type { WeekView } from "../../src/actions/messages";
import { serveRequest } from "../../src/actions/requests";
import { sampleClub } from "../actions/sample-club";
import { sampleRows } from "./sample-rows";

test.each([
  ["2026-06-28", "2026-06-29", ["Dario Quell", "Oona Petrakell", "Priya Tellander"]],
  ["2026-05-31", "2026-06-01", ["Priya Tellander", "Oona Petrakell", "Kofi Anstruther"]],
])("on %s whoever wrote one in reserve last is read first, and told so", (today, monday, some) => {
  const work = sampleRows("Sets").filter(
    (row) => row.Exercise === "back squat" && row.Kind === "work" && row.Date! <= today,
  );
  const lastDay = (athlete: string) =>
    work
      .filter((row) => row.Athlete === athlete)
      .map((row) => row.Date!)
      .sort()
      .pop();
  const few = (athlete: string) =>
    work.some(
      (row) =>
        row.Athlete === athlete &&
        row.Date === lastDay(athlete) &&
        row["Reps in reserve"] !== "" &&
        Number(row["Reps in reserve"]) < 2,
    );
  expect(some.filter(few)).toEqual(some);
  const changes: [] = [];
  const view = serveRequest(sampleClub(), "weekView", { today, monday, changes }) as WeekView;
  for (const { athlete, odd, why, sessions } of view.lines) {
    if (!few(athlete)) continue;
    expect([athlete, odd]).toEqual([athlete, true]);
    expect(why.filter((one) => /left in reserve last session/.test(one))).toHaveLength(1);
    // What is proposed keeps the two by what was seen, too.
    for (const { ifWritten } of sessions) expect(ifWritten[0]).not.toMatch(/fewer than the two/);
  }
});
