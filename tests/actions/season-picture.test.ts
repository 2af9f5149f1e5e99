import type { AthleteView } from "../../src/actions/messages/squad";
import { serveRequest } from "../../src/actions/requests";
import { percentWords } from "../../src/words/reasons-figures";
import { sampleClub } from "../pages/sample-club";

const view = (athlete: string) =>
  serveRequest(sampleClub(), "athleteView", { today: "2026-06-28", athlete }) as AthleteView;

test("the season's picture has a band for each value: two of that value's own wobbles", () => {
  const { line, season } = view("Tomas Reyerson");
  const [speed, ...others] = season!.series;
  expect(line.why).toContain(`wobble ${percentWords(speed!.band / 2)}`);
  expect(others.length).toBeGreaterThan(0);
  for (const { band } of others) expect(band).not.toBeCloseTo(speed!.band, 3);
});

test("the days that may hold the change say whether it is a loss or a rise", () => {
  const ways = ["Tomas Reyerson", "Wren Castellow", "Ilka Brandmoor"].map(
    (athlete) => view(athlete).season!.since?.way ?? null,
  );
  expect(ways).toEqual(["low", "high", null]);
});

test("of the season's values a contact time alone is longer where its line lies lower", () => {
  const { season, line } = view("Joss Whitterby");
  const turned = season!.series.filter((one) => one.turned);
  expect(turned.map(({ name }) => name)).toEqual(["contact time"]);
  expect(line.why).toContain("contact time 14 % longer");
  expect(turned[0]!.points.at(-1)!.percent).toBeLessThan(0);
});
