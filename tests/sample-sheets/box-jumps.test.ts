import type { WeekView } from "../../src/actions/messages";
import { serveRequest } from "../../src/actions/requests";
import { sampleClub } from "../actions/sample-club";
import { sampleRows } from "./sample-rows";

/** Thickness of the club's plates in cm by their mass. */
const thickness = new Map(
  sampleRows("Plates").map((row) => [Number(row["Mass (kg)"]), Number(row["Thickness (cm)"])]),
);
/** Height of "8x20+2.5" or "8×20+2.5", cm. */
const cmOf = (stack: string) =>
  stack.split("+").reduce((sum, part) => {
    const [mass, count = "1"] = part.split(/[x×]/).reverse();
    return sum + Number(count) * thickness.get(Number(mass))!;
  }, 0);

test("no stack of the club's week is as high as one missed on the athlete's last day at it", () => {
  const tries = sampleRows("Jumps").filter(({ Stack }) => Stack !== "");
  const view = serveRequest(sampleClub(), "weekView", {
    today: "2026-06-28",
    monday: "2026-06-29",
    changes: [],
  }) as WeekView;
  const stacked = view.lines.flatMap(({ athlete, sessions }) =>
    sessions.flatMap(({ stack }) => (/^\d+×/.test(stack) ? [{ athlete, cm: cmOf(stack) }] : [])),
  );
  expect(new Set(stacked.map(({ athlete }) => athlete))).toEqual(
    new Set(["Priya Tellander", "Hamid Sorley"]),
  );
  for (const { athlete, cm } of stacked) {
    const own = tries.filter((row) => row.Athlete === athlete);
    const lastDay = own.map((row) => row.Date!).sort()[own.length - 1];
    const missed = own.filter((row) => row.Date === lastDay && row["Cleared?"] === "n");
    expect(missed.length).toBeGreaterThan(0);
    for (const { Stack } of missed) expect(cm).toBeLessThan(cmOf(Stack!) - 1e-6);
  }
});
