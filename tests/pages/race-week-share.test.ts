import { cardPages } from "../../src/actions/pages/card-pages";
import { printableWeek } from "../../src/actions/pages/printable-week";
import { weekPaper } from "../../src/actions/pages/week-paper";
import { weekView } from "../../src/actions/week/week-view";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { sampleClub } from "../actions/sample-club";

/** Sunday before the week of the track race on 4 July. */
const sunday = dayFromIso("2026-06-28")!;

test.each([
  [0.5, "about half the sets, load kept"],
  [0.8, "about 80 % of the sets, load kept"],
  [1, "all sets, load kept"],
])("of %p of the sets kept before an A race the sidebar and the page say so", (kept, said) => {
  const book = sampleClub({
    Rules: [
      ["Rule", "Value"],
      ["Sets kept in the week of an A race", kept],
    ],
  });
  const { notes, lines } = weekView(book, sunday, null, []);
  expect(notes[notes.length - 1]).toMatch(new RegExp(`in race week: ${said}\\.$`));
  const cut = lines.flatMap(({ why }) => why).filter((one) => one.startsWith("Race week: sets"));
  expect(cut.length > 0).toBe(kept < 1);
  const { sentences, weeks } = weekPaper(printableWeek(book, sunday, null, []));
  expect(sentences.join(" ")).toContain(`: ${said}.`);
  expect(weeks[0]!.gym).toContain(`${said}, nothing heavy`);
});

test("the card of a session that prepares a race early in the week after says why its sets are few", () => {
  const book = sampleClub({
    Races: [
      ["Date", "Race", "Athlete or group", "Matters"],
      ["2026-07-06", "R4", "all", "A"],
    ],
  });
  const cards = cardPages(printableWeek(book, sunday, null, []));
  const said = cards.map(({ when, lift }) => [
    when.slice(0, 3),
    lift.say.startsWith("Fewer sets before the race, load kept."),
  ]);
  expect(said).toContainEqual(["Tue", true]);
  expect(said).not.toContainEqual(["Mon", true]);
  const [card] = cards.filter(({ lift }) => lift.say.startsWith("Fewer sets"));
  expect(card!.about).toMatch(/Race: R4, Mon 6 Jul\.$/);
});
