import { cardPages } from "../../src/actions/pages/card-pages";
import { printableWeek } from "../../src/actions/pages/printable-week";
import { weekPaper } from "../../src/actions/pages/week-paper";
import { weekView } from "../../src/actions/week/week-view";
import { dayFromIso } from "../../src/coaching/calendar/day";
import { sampleClub } from "../actions/sample-club";

/** Sunday before the week of the track race on 4 July. */
const sunday = dayFromIso("2026-06-28")!;

test.each([
  [0.5, ": 3 sets become 2, 5 become 2", "fewer sets"],
  [0.3, ": 3 sets become 1, 5 become 2", "fewer sets"],
  [1, "", "all sets"],
])(
  "of %p of the sets kept before an A race the sidebar and the page say what becomes of them",
  (kept, said, ahead) => {
    const book = sampleClub({
      Rules: [
        ["Rule", "Value"],
        ["Sets kept in the week of an A race", kept],
      ],
    });
    const { notes, lines } = weekView(book, sunday, null, []);
    expect(notes[notes.length - 1]).toMatch(new RegExp(`^\\d athletes in race week${said}\\.$`));
    const cut = lines.flatMap(({ why }) => why).filter((one) => one.startsWith("Race week: sets"));
    expect(cut.length > 0).toBe(kept < 1);
    const { sentences, weeks } = weekPaper(printableWeek(book, sunday, null, []));
    expect(sentences.join(" ")).toMatch(new RegExp(`is a race week for \\w+${said}\\.`));
    expect(weeks[0]!.gym).toContain(`: ${ahead}, nothing heavy`);
  },
);

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
    lift.say.startsWith("Fewer sets before the race."),
  ]);
  expect(said).toContainEqual(["Tue", true]);
  expect(said).not.toContainEqual(["Mon", true]);
  const [card] = cards.filter(({ lift }) => lift.say.startsWith("Fewer sets"));
  expect(card!.about).toMatch(/Race: R4, Mon 6 Jul\.$/);
});
