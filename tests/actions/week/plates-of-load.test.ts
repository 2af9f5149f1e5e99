import { weekView } from "../../../src/actions/week/week-view";
import { writeProposedWeek } from "../../../src/actions/week/write-proposed-week";
import { dayFromIso } from "../../../src/coaching/calendar/day";
import { platesOfOtherLoadWords } from "../../../src/words/week";
import { opened } from "../../local-host/opened";
import { sampleClub } from "../sample-club";

test("plates stand beside the load they make, and say which load that is once the coach changes it", async () => {
  const club = sampleClub();
  writeProposedWeek(
    club,
    dayFromIso("2026-06-28")!,
    dayFromIso("2026-06-29")!,
    [],
    ["Tomas Reyerson"],
  );
  const { id } = club.tabNamed("Next week");
  const [values, formulas] = [club.values(id), club.formulas(id)];
  const at = values.findIndex(([athlete]) => athlete === "Tomas Reyerson");
  const shown = async (load: unknown) => {
    const cells = values.map((row) => row.map(() => null as unknown));
    cells[at]![6] = load;
    cells[at]![7] = formulas[at]![7];
    const host = await opened({ "Next week": cells });
    return host.workbook().tabs[0]!.cells[at]![7]!.value;
  };
  const [planned] = [values[at]![6]];
  expect(planned).toBe(85);
  expect(await shown(planned)).toBe("25 + 5 + 2.5");
  expect(await shown(75)).toBe("25 + 5 + 2.5 make 85");
  expect(await shown("77,5")).toBe("25 + 5 + 2.5 make 85");
  expect(await shown(null)).toBe("25 + 5 + 2.5 make 85");
});

test("the opened athlete's reasons name the coach's own cells of the line in the tab", () => {
  const club = sampleClub();
  const [today, monday] = [dayFromIso("2026-06-28")!, dayFromIso("2026-06-29")!];
  const why = () =>
    weekView(club, today, monday, []).lines.flatMap(({ athlete, why: all }) =>
      all.some((one) => one.startsWith("Yours")) ? [[athlete, all.at(-1)]] : [],
    );
  writeProposedWeek(club, today, monday, [], null);
  expect(why()).toEqual([]);
  const at = club
    .values(club.tabNamed("Next week").id)
    .findIndex(([athlete]) => athlete === "Tomas Reyerson");
  club.type("Next week", at + 1, 7, 75);
  expect(why()).toEqual([
    ["Tomas Reyerson", `Yours in the tab, not as proposed here: G${at + 1}.`],
  ]);
});

test("one plate makes its load, and so does the bar alone", () => {
  expect(platesOfOtherLoadWords([25], 70)).toBe("25 makes 70");
  expect(platesOfOtherLoadWords([], 20)).toBe("empty bar makes 20");
});
