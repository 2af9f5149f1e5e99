import type { WeekView } from "../../src/actions/messages";
import { serveRequest } from "../../src/actions/requests";
import { sampleClub } from "./sample-club";

test("the week looked at is among those to choose from, near or far, each once", () => {
  const book = sampleClub();
  for (const monday of ["2026-06-29", "2026-06-01"]) {
    const view = serveRequest(book, "weekView", { today: "2026-06-28", monday, changes: [] });
    const shown = (view as WeekView).mondays.map((one) => one.monday);
    expect(shown).toContain(monday);
    expect(new Set(shown).size).toBe(shown.length);
  }
});
