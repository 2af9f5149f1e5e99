import { columnLetters, columnNumber } from "../../a1";
import { placeOf } from "./line-move";
import { movedFilters } from "./moved-filters";
import { movedRange, type TabMove } from "./moved-formula";
import { attribute, withAttributes } from "./xml-text";

const tableRange = /^([A-Z]+)(\d+):([A-Z]+)(\d+)$/;
const oneColumn = /<tableColumn\b[^<>]*?(?:\/>|>[\s\S]*?<\/tableColumn>)/g;

/**
 * A table's part after lines of its tab went elsewhere: its range, and a column for each that stands in
 * it now. A new one has a passing name until it is called as its heading is.
 */
export function movedTable(text: string, move: TabMove): string {
  const opening = /<table\b[^<>]*>/.exec(text)?.[0] ?? "";
  const [, left] = tableRange.exec(attribute(opening, "ref") ?? "") ?? [];
  const range = movedRange(attribute(opening, "ref") ?? "", move);
  const [, from, , to] = tableRange.exec(range ?? "") ?? [];
  // All of it was taken out: a table without a range is left out when the file is written.
  if (left === undefined || from === undefined || to === undefined)
    return text.replace(opening, () => withAttributes(opening, { ref: "" }));
  const columns = [...text.matchAll(oneColumn)].map(([xml]) => xml);
  const byPlace = new Map(
    columns.flatMap((xml, at) => {
      const place = placeOf(move.columns, columnNumber(left) + at);
      return place === null ? [] : [[place, xml] as const];
    }),
  );
  let id = Math.max(
    0,
    ...columns.map((xml) => Number(attribute(xml.slice(0, xml.indexOf(">") + 1), "id"))),
  );
  const now: string[] = [];
  for (let place = columnNumber(from); place <= columnNumber(to); place++) {
    const known = byPlace.get(place);
    if (known === undefined) id++;
    now.push(known ?? `<tableColumn id="${id}" name="${columnLetters(place)}${id}"/>`);
  }
  return text
    .replace(opening, () => withAttributes(opening, { ref: range! }))
    .replace(/<autoFilter\b[^<>]*?(?:\/>|>[\s\S]*?<\/autoFilter>)/, (filter) => {
      const moved = movedFilters(filter, move);
      const end = moved.indexOf(">") + 1;
      const ref = movedRange(attribute(moved.slice(0, end), "ref") ?? "", move);
      return ref === null ? "" : withAttributes(moved.slice(0, end), { ref }) + moved.slice(end);
    })
    .replace(/<sortState\b[^<>]*?(?:\/>|>[\s\S]*?<\/sortState>)/, "")
    .replace(
      /<tableColumns\b[^<>]*>[\s\S]*<\/tableColumns>/,
      () => `<tableColumns count="${now.length}">${now.join("")}</tableColumns>`,
    );
}
