import { strToU8 } from "fflate";
import { columnLetters, columnNumber } from "../../a1";
import { largestTab } from "./largest-tab";
import { firstLeft, type LineMove, placeOf, stretchOf } from "./line-move";
import { movedFilters } from "./moved-filters";
import { movedFormula, movedRange, type TabMove, type TabMoves } from "./moved-formula";
import { movedTable } from "./moved-table";
import { relationsOf } from "./relations";
import { slidFormula } from "./slid-formula";
import { type TabElement, tabText, textOf } from "./tab-elements";
import { attribute, escaped, partText, sheetPaths, unescaped, withAttributes } from "./xml-text";
import type { Parts } from "./zip-parts";

/**
 * A file's parts after rows and columns were put in and taken out: all that the grid does not know
 * goes with its row, such as borders, crossed-out text, links, checks, pictures and tables.
 * Formulas of cells stay as they are: the grid has written them anew.
 */
export function movedParts(parts: Parts, moves: TabMoves): Parts {
  const moved = new Map(parts);
  const change = (path: string, make: (text: string) => string) => {
    const text = partText(parts, path);
    const made = make(text);
    if (made !== text) moved.set(path, strToU8(made));
  };
  for (const [tab, path] of sheetPaths(parts)) {
    const move = moves.get(tab) ?? { name: tab, rows: null, columns: null };
    change(path, (text) => movedTab(text, move, (formula) => movedFormula(formula, tab, moves)));
    if (move.rows === null && move.columns === null) continue;
    for (const { kind, path: of } of relationsOf(parts, path)) {
      if (of === null || !parts.has(of)) continue;
      if (kind === "comments") change(of, (text) => movedComments(text, move));
      if (kind === "drawing") change(of, (text) => movedPictures(text, move));
      if (kind === "table") change(of, (text) => movedTable(text, move));
    }
  }
  change("xl/workbook.xml", (text) => movedNames(text, parts, moves));
  return moved;
}

type Formula = (formula: string) => string;

function movedTab(text: string, move: TabMove, formula: Formula): string {
  const tab = tabText(text);
  if (!tab) return text;
  const elements = tab.elements.map((element) => ({
    name: element.name,
    xml: movedElement(element, move, formula),
  }));
  const cells =
    move.rows === null && move.columns === null ? tab.cells : movedCells(tab.cells, move);
  return textOf({ ...tab, cells, elements });
}

function movedCells(text: string, { rows, columns }: TabMove): string {
  const widths = text.replace(/<col\b[^<>]*>/g, (tag) => {
    const [from, end] = [Number(attribute(tag, "min")) - 1, Number(attribute(tag, "max")) - 1];
    const at = stretchOf(columns, from, end, largestTab.columns);
    return at ? withAttributes(tag, { min: `${at[0] + 1}`, max: `${at[1] + 1}` }) : "";
  });
  return widths
    .replace(/<cols\b[^<>]*>\s*<\/cols>/, "")
    .replace(/<row\b[^<>]*?(?:\/>|>[\s\S]*?<\/row>)/g, (row) => {
      const opening = row.slice(0, row.indexOf(">") + 1);
      const place = placeOf(rows, Number(attribute(opening, "r")) - 1);
      if (place === null || place >= largestTab.rows) return "";
      const tag = withAttributes(opening, { r: `${place + 1}` }).replace(/\sspans="[^"]*"/, "");
      const inside = row
        .slice(opening.length)
        .replace(/<c\b[^<>]*?(?:\/>|>[\s\S]*?<\/c>)/g, (cell) => movedCell(cell, place, columns));
      return tag + inside;
    });
}

function movedCell(cell: string, row: number, columns: LineMove | null): string {
  const opening = cell.slice(0, cell.indexOf(">") + 1);
  const letters = /^[A-Z]+/.exec(attribute(opening, "r") ?? "")?.[0];
  const column = letters === undefined ? null : placeOf(columns, columnNumber(letters));
  if (column === null || column >= largestTab.columns) return "";
  const tag = withAttributes(opening, { r: `${columnLetters(column)}${row + 1}` });
  return tag + movedFill(cell.slice(opening.length), column, row);
}

/** An array formula goes with its cell, as large as it was: the grid fills it anew. */
function movedFill(inside: string, column: number, row: number): string {
  return inside.replace(/<f\b[^<>]*\st="array"[^<>]*>/, (tag) => {
    const found = /^([A-Z]+)(\d+):([A-Z]+)(\d+)$/.exec(attribute(tag, "ref") ?? "");
    const start = `${columnLetters(column)}${row + 1}`;
    if (!found) return withAttributes(tag, { ref: start });
    const right = column + columnNumber(found[3]!) - columnNumber(found[1]!);
    const end = `${columnLetters(right)}${row + 1 + Number(found[4]) - Number(found[2])}`;
    return withAttributes(tag, { ref: `${start}:${end}` });
  });
}

const placed =
  /<(mergeCell|hyperlink|ignoredError|protectedRange)\b[^<>]*?(?:\/>|>[\s\S]*?<\/\1>)/g;
const oneCheck = /<dataValidation\b[^<>]*?(?:\/>|>[\s\S]*?<\/dataValidation>)/g;

function movedElement({ name, xml }: TabElement, move: TabMove, formula: Formula): string {
  const lines = move.rows !== null || move.columns !== null;
  switch (name) {
    case "dataValidations":
      return filled(
        xml.replace(oneCheck, (one) => withRanges(withFormulas(one, move, formula), move)),
      );
    case "conditionalFormatting":
      return withRanges(withFormulas(xml, move, formula), move);
    case "hyperlinks":
      return filled(
        xml
          .replace(
            /\slocation="([^"]*)"/g,
            (_, place) => ` location="${escaped(formula(unescaped(place)))}"`,
          )
          .replace(placed, (one) => withRanges(one, move)),
      );
    case "mergeCells":
    case "ignoredErrors":
    case "protectedRanges":
      return filled(xml.replace(placed, (one) => withRanges(one, move)));
    case "autoFilter":
      return withRanges(movedFilters(xml, move), move);
    case "sortState":
      return lines ? "" : xml;
    case "rowBreaks":
    case "colBreaks":
      return filled(
        xml.replace(/<brk\b[^<>]*?(?:\/>|><\/brk>)/g, (tag) => {
          // A break stands after the line it names.
          const at = Number(attribute(tag, "id")) - 1;
          const place = placeOf(name === "rowBreaks" ? move.rows : move.columns, at);
          return place === null ? "" : withAttributes(tag, { id: `${place + 1}` });
        }),
      );
    default:
      return withFormulas(xml, { ...move, rows: null, columns: null }, formula).replace(
        /(<xm:sqref>)([^<]*)(?=<\/xm:sqref>)/g,
        (_, tag, ranges) => tag + movedRanges(ranges, move),
      );
  }
}

/** Nothing for a list whose last part is gone. */
function filled(xml: string): string {
  return /^<(\w+)[^<>]*>\s*<\/\1>$/.test(xml) ? "" : xml;
}

/** Formulas of checks and highlights, which are read as from the first cell of their ranges. */
function withFormulas(xml: string, move: TabMove, formula: Formula): string {
  const ranges = attribute(xml.slice(0, xml.indexOf(">") + 1), "sqref") ?? "";
  const [, letters, row] = /^([A-Z]+)(\d+)/.exec(ranges.trim()) ?? [];
  const gone = (lines: LineMove | null, at: number, most: number) =>
    (firstLeft(lines, at, most) ?? at) - at;
  const [down, right] =
    letters === undefined
      ? [0, 0]
      : [
          gone(move.rows, Number(row) - 1, largestTab.rows),
          gone(move.columns, columnNumber(letters), largestTab.columns),
        ];
  return xml.replace(
    /(<(formula[12]?|xm:f)\b[^<>]*>)([^<]*)(?=<\/\2>)/g,
    (_, tag: string, _name, text: string) =>
      tag + escaped(formula(slidFormula(unescaped(text), down, right))),
  );
}

/** An element with its ranges moved; nothing when all of them are gone, or what was merged is one cell. */
function withRanges(xml: string, move: TabMove): string {
  const end = xml.indexOf(">") + 1;
  const opening = xml.slice(0, end);
  const name = attribute(opening, "sqref") === null ? "ref" : "sqref";
  const ranges = attribute(opening, name);
  if (ranges === null) return xml;
  const moved = movedRanges(ranges, move);
  const merged = opening.startsWith("<mergeCell");
  if (moved === "" || (merged && /^([A-Z]+\d+)(:\1)?$/.test(moved))) return "";
  return withAttributes(opening, { [name]: moved }) + xml.slice(end);
}

function movedRanges(ranges: string, move: TabMove): string {
  return ranges
    .trim()
    .split(/\s+/)
    .flatMap((range) => movedRange(range, move) ?? [])
    .join(" ");
}

function movedComments(text: string, move: TabMove): string {
  return text.replace(/<comment\b[^<>]*?(?:\/>|>[\s\S]*?<\/comment>)/g, (one) =>
    withRanges(one, move),
  );
}

/** Pictures stand from a cell on; where that is gone, from the next that is there. */
function movedPictures(text: string, { rows, columns }: TabMove): string {
  const moved = (lines: LineMove | null, at: string, most: number) =>
    stretchOf(lines, Number(at), most - 1, most)?.[0] ?? Number(at);
  return text
    .replace(/(<xdr:row>)(\d+)(?=<)/g, (_, tag, at) => tag + moved(rows, at, largestTab.rows))
    .replace(
      /(<xdr:col>)(\d+)(?=<)/g,
      (_, tag, at) => tag + moved(columns, at, largestTab.columns),
    );
}

function movedNames(text: string, parts: Parts, moves: TabMoves): string {
  const tabs = [...sheetPaths(parts).keys()];
  return text.replace(
    /(<definedName\b[^<>]*>)([^<]*)<\/definedName>/g,
    (_, tag: string, written: string) => {
      const home = tabs[Number(attribute(tag, "localSheetId") ?? -1)] ?? "";
      const formula = movedFormula(unescaped(written), home, moves);
      // What was to be printed is gone.
      const gone = formula.includes("#REF!") && /\sname="_xlnm\./.test(tag);
      return gone ? "" : `${tag}${escaped(formula)}</definedName>`;
    },
  );
}
