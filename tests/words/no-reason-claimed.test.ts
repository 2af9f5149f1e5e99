import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { AthleteView, DiaryView, SquadView, WeekView } from "../../src/actions/messages";
import { serveRequest } from "../../src/actions/requests";
import { catalogue } from "../../src/catalogue";
import { sampleClub } from "../actions/sample-club";

/** Words that would say one thing brought about another. */
const claim = /\bbecause\b|\bdue to\b|\bcaused? by\b|\bcaus(?:es|ed)\b|\bleads? to\b|\bowing to\b/i;
const root = join(__dirname, "../..");
const said = ["words", "catalogue", "actions", "pages", "sidebar", "charts"].flatMap((folder) =>
  (readdirSync(join(root, "src", folder), { recursive: true }) as string[])
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => join("src", folder, file)),
);

test("the words looked for are found where they stand", () => {
  expect("Slow because of short sleep").toMatch(claim);
  expect("Goes together over 32 days").not.toMatch(claim);
});

test.each([...said, "README.md"])("%s says of nothing that it brought another about", (file) => {
  expect(readFileSync(join(root, file), "utf8")).not.toMatch(claim);
});

test("no formula's example and no sentence about the sample squad says so either", () => {
  const book = sampleClub();
  const today = "2026-06-28";
  const ask = <Answer>(name: string, message: object) =>
    serveRequest(book, name, { today, ...message }) as Answer;
  const squad = ask<SquadView>("squadView", {});
  const athletes = squad.lines.slice(0, 4).map(({ athlete }) => athlete);
  const sentences = JSON.stringify([
    squad,
    ask<WeekView>("weekView", { monday: null, changes: [] }),
    athletes.map((athlete) => ask<AthleteView>("athleteView", { athlete })),
    athletes.map((athlete) => ask<DiaryView>("diaryView", { athlete })),
    catalogue.map(({ summary, examples }) => [summary, examples]),
  ]);
  expect(sentences.length).toBeGreaterThan(10_000);
  expect(sentences).not.toMatch(claim);
});
