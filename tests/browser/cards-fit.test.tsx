import { readFileSync } from "node:fs";
import render from "preact-render-to-string";
import type { CardPage } from "../../src/actions/page-messages";
import { serveRequest } from "../../src/actions/requests";
import { dayFromIso, isoFromDay } from "../../src/coaching/calendar/day";
import { Card } from "../../src/pages/card";
import { sampleClub } from "../actions/sample-club";
import { launchBrowser } from "./browser";

/** A5 is 210 mm high. */
const pagePx = (210 / 25.4) * 96;

test("every card of the sample's season fits its one A5 page", async () => {
  const { context, close } = await launchBrowser();
  const paper = await context.newPage();
  await paper.emulateMedia({ media: "print" });
  const styles = readFileSync("dist/Sidebar.html", "utf8").match(/<style>[\s\S]*?<\/style>/g)!;
  const last = dayFromIso("2026-06-29")!;
  let cards = 0;
  const over: string[] = [];
  for (let monday = dayFromIso("2026-04-20")!; monday <= last; monday += 7) {
    const asked = { kind: "cards", changes: [], monday: isoFromDay(monday) };
    const printed = serveRequest(sampleClub(), "printPages", {
      ...asked,
      today: isoFromDay(monday - 1),
    }) as { readonly cards: readonly CardPage[] };
    const pages = printed.cards.map((card) => render(<Card card={card} />)).join("");
    await paper.setContent(
      `<!doctype html><html lang="en-GB"><head><meta charset="utf-8">${styles.join("")}</head><body><div id="pages">${pages}</div></body></html>`,
    );
    const heights = await paper.evaluate(() =>
      [...document.querySelectorAll("#pages article")].map((one) => one.scrollHeight),
    );
    cards += heights.length;
    heights.forEach((height, at) => {
      const { athlete, when } = printed.cards[at]!;
      if (height > pagePx) over.push(`${athlete}, ${when}: ${height}`);
    });
  }
  await close();
  expect(cards).toBeGreaterThan(150);
  expect(over).toEqual([]);
});
