import render from "preact-render-to-string";
import type { PrintedPages } from "../../src/actions/page-messages";
import { serveRequest } from "../../src/actions/requests";
import { Pages } from "../../src/pages/pages";
import { sampleClub } from "./sample-club";

const book = sampleClub();
const drawn = (kind: PrintedPages["kind"]) =>
  render(
    <Pages
      pages={
        serveRequest(book, "printPages", {
          today: "2026-06-28",
          kind,
          monday: "2026-06-29",
          changes: [],
        }) as PrintedPages
      }
    />,
  );
const words = (html: string) => html.replace(/<[^>]+>/g, " ").replace(/\s+/g, " ");
const cards = drawn("cards");
const tomas = cards.split("<article").find((one) => one.includes("Tomas Reyerson"))!;

test("a card follows the session: warm-up, marker, jumps, lift, assistance, then two lines of cautions", () => {
  const text = words(tomas);
  const places = [
    "Warm up",
    "Marker set",
    "Your mean decides",
    "Jumps",
    "Back squat",
    "Assistance",
  ].map((part) => text.indexOf(part));
  expect(places.every((place) => place >= 0)).toBe(true);
  expect([...places].sort((a, b) => a - b)).toEqual(places);
  expect(/<footer>(.*?)<\/footer>/.exec(tomas)![1]!.match(/<p>/g)).toHaveLength(2);
  expect(text).toContain("Not medical advice".toLowerCase());
});

test("a card has a line to write on for every set, and a box for each of three marker repetitions", () => {
  const sets = /<table class="sets">(.*?)<\/table>/.exec(tomas)![1]!;
  expect(sets.match(/<th scope="row">/g)).toHaveLength(2);
  expect(/<p class="boxes">(.*?)<\/p>/.exec(tomas)![1]!.match(/class="box"/g)).toHaveLength(4);
});

test("every drawing is a real one: no figure on a page is missing or not a number", () => {
  for (const html of [cards, drawn("rack plan"), drawn("week page")]) {
    expect(html).not.toMatch(/NaN|undefined|null|Infinity/);
    expect(html.match(/<svg/g)!.length).toBeGreaterThan(10);
  }
});

test("the head coach's page draws a season for each athlete and says every word it colours", () => {
  const html = drawn("week page");
  expect(html.match(/<svg/g)).toHaveLength(12);
  for (const [, word] of html.matchAll(/<span class="word [a-z]+">([^<]*)</g)) {
    expect(word).toMatch(/^(slipping|rising|too few rows)/);
  }
});

test("a name typed with signs of a page is printed as typed", () => {
  const pages = serveRequest(book, "printPages", {
    today: "2026-06-28",
    kind: "week page",
    monday: "2026-06-29",
    changes: [],
  }) as Extract<PrintedPages, { kind: "week page" }>;
  const [first] = pages.paper.lines;
  const html = render(
    <Pages
      pages={{
        ...pages,
        paper: { ...pages.paper, lines: [{ ...first!, athlete: "<img src=x>" }] },
      }}
    />,
  );
  expect(html).not.toContain("<img");
  expect(html).toContain("&lt;img src=x>");
});
