import render from "preact-render-to-string";
import type { PageKind, PrintedPages } from "../../src/actions/page-messages";
import { serveRequest } from "../../src/actions/requests";
import { Pages } from "../../src/pages/pages";
import { sampleCells, sampleClub } from "../actions/sample-club";

const kinds: readonly PageKind[] = ["cards", "rack plan", "week page", "pictures"];
const [foodAt, newAt, noteAt, privateAt] = [9, 10, 11, 12];
const diary = sampleCells("Diary");

const paper = (kind: PageKind, Diary: readonly (readonly unknown[])[]) => {
  const message = { today: "2026-06-28", kind, monday: null, changes: [] };
  const pages = serveRequest(sampleClub({ Diary }), "printPages", message) as PrintedPages;
  return { sent: JSON.stringify(pages), html: render(<Pages pages={pages} />) };
};
const worded = (row: readonly unknown[], at: number) => {
  const changed = [...row];
  changed[foodAt] = "xylophone soup";
  changed[newAt] = "xylophone shoes";
  changed[noteAt] = "shin sore, fever, xylophone";
  changed[privateAt] = at % 2 === 0 ? "y" : "";
  return changed;
};
const heads = diary[0]!;
const rows = diary.slice(1);

test.each(kinds)("no word of the sample's diary is on the %s", (kind) => {
  const { sent, html } = paper(kind, diary);
  const texts = rows.flatMap((row) =>
    [foodAt, newAt, noteAt].map((at) => String(row[at])).filter((text) => text !== ""),
  );
  expect(texts.length).toBeGreaterThan(6);
  expect(html.length).toBeGreaterThan(2000);
  for (const text of texts) {
    expect(html).not.toContain(text);
    expect(sent).not.toContain(text);
  }
});

test.each(kinds)(
  "whatever is written in notes, of food or of pain, the %s stays the same",
  (kind) => {
    const before = paper(kind, [
      heads,
      ...rows.map((row) => row.map((cell, at) => (at >= foodAt ? "" : cell))),
    ]);
    expect(paper(kind, [heads, ...rows.map(worded)])).toEqual(before);
  },
);

test.each(kinds)(
  "body mass kept in the diary is not on the %s and changes nothing of it",
  (kind) => {
    const weighed = diary.map((row, at) => [...row, at === 0 ? "Body mass (kg)" : 58.1 + (at % 3)]);
    expect(paper(kind, weighed)).toEqual(paper(kind, diary));
  },
);
