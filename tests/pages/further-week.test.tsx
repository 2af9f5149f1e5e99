import render from "preact-render-to-string";
import type { PrintedPages } from "../../src/actions/page-messages";
import { serveRequest } from "../../src/actions/requests";
import { Pages } from "../../src/pages/pages";
import { sampleClub } from "./sample-club";

const book = sampleClub();
const page = (monday: string) => {
  const given = { today: "2026-06-28", kind: "week page", monday, changes: [] };
  const pages = serveRequest(book, "printPages", given) as PrintedPages;
  if (pages.kind !== "week page") throw new Error("another page");
  const html = render(<Pages pages={pages} />);
  return { ...pages.paper, text: html.replace(/<[^>]+>/g, " ").replace(/\s+/g, " ") };
};

test("a page with a week further ahead is of the last week with rows, and names the planned week by its day", () => {
  const next = page("2026-06-29");
  const further = page("2026-07-06");
  expect(further.title).toBe("Week of 22 June, for the head coach");
  expect(further.title).toBe(next.title);
  expect(further.lines.map(({ sessions }) => sessions)).toEqual(
    next.lines.map(({ sessions }) => sessions),
  );
  expect(next.text).toContain("Next week is a race week for");
  expect(next.text).toContain("Next week, sets × reps");
  expect(further.text).toContain("The week of 6 Jul is a race week for nobody.");
  expect(further.text).toContain("The week of 6 Jul, sets × reps");
  expect(further.text).not.toContain("Next week");
});

test("no week is left out between the last rows and those planned: a race in it stands among the weeks ahead", () => {
  const [first, second] = page("2026-07-06").weeks;
  expect([first!.week, second!.week]).toEqual(["29 Jun", "6 Jul"]);
  expect(first!.race).toContain("R4");
  expect(first!.gym).toMatch(/^race week for/);
});
