import { printableWeek } from "../../src/actions/pages/printable-week";
import { weekPaper } from "../../src/actions/pages/week-paper";
import { weekView } from "../../src/actions/week-view";
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
