import { keptMatters } from "../../src/actions/messages";
import { standingText } from "../../src/actions/week/cell-text";
import type { Highlight } from "../../src/actions/workbook";
import { rememberedIn } from "../faults/remembered";

type Rows<Cell> = readonly (readonly Cell[])[];
/** A tab as a host shows it; its number is the host's to choose. */
export type HeldTab = {
  readonly name: string;
  readonly id: number;
  readonly values: Rows<unknown>;
  readonly formulas: Rows<string>;
  readonly highlights: readonly Highlight[];
};

/** Everything in a workbook that a request can change, in words that every host shares. */
export type Standing = {
  readonly cells: Readonly<Record<string, string[][]>>;
  readonly highlights: Readonly<Record<string, readonly Highlight[]>>;
  readonly remembered: unknown;
};

/** Formulas as written, days as text, other text with an apostrophe before it: "'60" is no 60. */
export function whatStands(
  tabs: readonly HeldTab[],
  kept: Readonly<Record<string, string>>,
): Standing {
  const each = <Part>(part: (tab: HeldTab) => Part) =>
    Object.fromEntries(tabs.map((tab) => [tab.name, part(tab)]));
  const made = kept["clean tabs"] ?? "[]";
  const [answers, ...others] = rememberedIn(kept) as unknown[];
  return {
    cells: each((tab) =>
      cellTexts(tab, (value, text) =>
        typeof value === "string" && text === value && text !== "" ? `'${text}` : text,
      ),
    ),
    highlights: each(({ highlights }) => highlights),
    remembered: [byName(answers, tabs), ...others, withNames(JSON.parse(made), tabs), rest(kept)],
  };
}

/** What else is remembered; a text left blank is forgotten, and a host may keep one of its own. */
function rest(kept: Readonly<Record<string, string>>): unknown {
  const known = [...keptMatters, "clean tabs", "local workbook"];
  return Object.entries(kept)
    .filter(([key, text]) => text !== "" && !known.includes(key.split(/[.:]/)[0]!))
    .sort();
}

/** Text of each cell; blank ends of rows and tab cut off. */
export function cellTexts(
  { values, formulas }: Pick<HeldTab, "values" | "formulas">,
  shown = (_: unknown, text: string) => text,
): string[][] {
  const texts = values.map((row, i) => {
    const line = row.map((value, j) => shown(value, standingText(value, formulas[i]?.[j] ?? "")));
    return line.slice(0, line.findLastIndex((text) => text !== "") + 1);
  });
  return texts.slice(0, texts.findLastIndex((row) => row.length > 0) + 1);
}

/** Cells that hold something else than before, of all tabs or some: "Diary 2,3" for C2. */
export function changedCells(
  before: Standing,
  now: Standing,
  tabs: readonly string[] = Object.keys(before.cells),
): string[] {
  const upTo = (was: readonly unknown[] = [], is: readonly unknown[] = []) => [
    ...Array(Math.max(was.length, is.length)).keys(),
  ];
  return tabs.flatMap((tab) => {
    const [was = [], is = []] = [before.cells[tab], now.cells[tab]];
    return upTo(was, is).flatMap((i) =>
      upTo(was[i], is[i]).flatMap((j) =>
        (was[i]?.[j] ?? "") === (is[i]?.[j] ?? "") ? [] : [`${tab} ${i + 1},${j + 1}`],
      ),
    );
  });
}

const nameOf = (tabs: readonly HeldTab[], id: unknown) =>
  tabs.find((tab) => tab.id === id)?.name ?? id;

/** An answer or a memory with each tab's number given as the tab's name. */
export function withNames(value: unknown, tabs: readonly HeldTab[]): unknown {
  if (Array.isArray(value)) return value.map((one) => withNames(one, tabs));
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => [
      key,
      key === "tabId" ? nameOf(tabs, one) : withNames(one, tabs),
    ]),
  );
}

/** What was answered stands by tab, the number first. */
function byName(answers: unknown, tabs: readonly HeldTab[]): unknown {
  if (answers === null || typeof answers !== "object") return answers;
  return Object.fromEntries(
    Object.entries(answers).map(([key, one]) => [
      key,
      ["tables", "columns", "tabs"].includes(key)
        ? (one as [number, unknown][]).map(([id, said]) => [nameOf(tabs, id), said])
        : one,
    ]),
  );
}
