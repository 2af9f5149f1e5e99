import { columnNumber } from "../../a1";
import { largestTab } from "./largest-tab";
import { placeOf, stretchOf } from "./line-move";
import type { TabMove } from "./moved-formula";
import { attribute, withAttributes } from "./xml-text";

/** Which columns of a filter are filtered is counted from its first. */
export function movedFilters(xml: string, { columns }: TabMove): string {
  const [, letters] =
    /^\$?([A-Z]+)/.exec(attribute(xml.slice(0, xml.indexOf(">") + 1), "ref") ?? "") ?? [];
  if (letters === undefined || columns === null) return xml;
  const first = columnNumber(letters);
  const start = stretchOf(columns, first, largestTab.columns - 1, largestTab.columns)?.[0];
  return xml.replace(/<filterColumn\b[^<>]*?(?:\/>|>[\s\S]*?<\/filterColumn>)/g, (filter) => {
    const end = filter.indexOf(">") + 1;
    const place = placeOf(columns, first + Number(attribute(filter.slice(0, end), "colId")));
    if (place === null || start === undefined) return "";
    return withAttributes(filter.slice(0, end), { colId: `${place - start}` }) + filter.slice(end);
  });
}
