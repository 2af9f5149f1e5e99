import type { Cells } from "./cells";
import { unitsBeside } from "./column/units-beside";
import { carriedDown } from "./header/carried-down";
import type { ColumnDecision, ColumnQuestion } from "./header/decide-columns";
import { questionsOfReading } from "./header/questions-of-reading";
import type { IssueLog } from "./issue-log";
import type { LayoutName } from "./layout/choose-layout";
import { daysOfTitles } from "./layout/days-of-titles";
import type { TabQuestion } from "./layout/tab-question";
import { rowSamples, tabQuestions } from "./layout/tab-questions";
import { tablesBeside } from "./layout/tables-beside";
import { joinedNames } from "./name/joined-names";
import { noNameAnswers } from "./name/name-answers";
import { named } from "./name/named-reading";
import type { Reading } from "./reading";
import { type RowOf, viewReaders } from "./table/read-view";
import type { TableName } from "./table-name";
import type { TableView } from "./table-view";
import { lieOfRange } from "./understanding/lie-of-range";
import { besideOf, optionsOf, together } from "./understanding/of-all-beside";
import type { ReadOptions } from "./understanding/read-options";
import { unrecognised } from "./understanding/unrecognised";
import { wordsForFigures } from "./words-for-figures";

/** How a range was understood, beside what was read from it. */
export type Understanding<T extends TableName> = {
  readonly reading: Reading<RowOf[T]>;
  readonly layout: LayoutName;
  /** Row of the header from 1; 0 when there is none. */
  readonly headerRow: number;
  readonly columns: readonly ColumnDecision[];
  readonly questions: readonly ColumnQuestion[];
  readonly tabQuestions: readonly TabQuestion[];
};

/**
 * Reads a range as one of the tables: finds its header, then turns every row into a record or into
 * issues by cell. Nothing is thrown for bad cells and nothing is left out unsaid: the four counts add
 * up to the rows given.
 *
 * Issues for the whole table: `no-header` (facts `needed`), `column-missing` (facts `field`).
 */
export function readTable<T extends TableName>(
  table: T,
  cells: Cells,
  options: ReadOptions = {},
): Reading<RowOf[T]> {
  return understandTable(table, cells, options).reading;
}

/** The notes of a reading with those that stand where figures would. */
function withWordsKept<Row extends object>(reading: Reading<Row>, log: IssueLog): Reading<Row> {
  const words = wordsForFigures(log, reading.records);
  return words.length === 0 ? reading : { ...reading, notes: [...(reading.notes ?? []), ...words] };
}

/** Reads a range and says how its columns were understood and what has to be asked. */
export function understandTable<T extends TableName>(
  table: T,
  written: Cells,
  options: ReadOptions = {},
): Understanding<T> {
  const cells = unitsBeside(joinedNames(written, options.answers));
  // None of them is the table where not one heading of it is there.
  const beside = besideOf(table, tablesBeside(cells));
  if (beside.length === 0) return understandOne(table, cells, options);
  return together(
    cells,
    beside.map((one) => understandOne(table, one.cells, optionsOf(one, options))),
  );
}

function understandOne<T extends TableName>(
  table: T,
  written: Cells,
  options: ReadOptions,
): Understanding<T> {
  const cells = daysOfTitles(table, written, options);
  const lie = lieOfRange(table, cells, options);
  const { view, missing, year } = lie;
  const { name: layout, unfolded } = lie.layout;
  const { end } = lie.context;
  const about = {
    headerRow: (lie.found?.row ?? -1) + 1,
    columns: carriedDown(lie.decided?.decisions ?? [], view),
  };
  const asked = lie.decided?.questions ?? [];
  const readView = viewReaders[table] as (view: TableView) => Reading<RowOf[T]>;
  const reader = (of: TableView) => named(readView(of), options.names ?? noNameAnswers);
  // A header that lacks one thing says more than rows of which none can be read without it; athlete and
  // lift may stand above the rows, unless a column that nobody explains may be the one.
  const [lacking, ...others] = missing;
  const mayStandAbove = lacking === "athlete" || lacking === "exercise";
  const lacksOne =
    layout === "blocks one under another" &&
    lacking !== undefined &&
    others.length === 0 &&
    (!mayStandAbove || lie.decided!.header.unknown.length > 0);
  if (unfolded !== null) {
    const reading = withWordsKept(unfolded.read<RowOf[T]>(reader, year), unfolded.log);
    // A tab that is said to hold jumps, and of which not one is found, is not passed over.
    const silent = options.said === true && reading.rowsRead + reading.rowsReported === 0;
    if (!(lacksOne && reading.rowsRead === 0) && !silent) {
      const questions = [
        ...unfolded.unread.questions,
        ...asked.filter(({ column }) => unfolded.passesOver?.(column - 1)),
        ...questionsOfReading(reading, cells, lie.found?.first ?? 0, end),
      ];
      // A grid that holds no sets is not asked for its lift.
      const samples =
        layout === "dates across" ? [] : rowSamples(cells, unfolded.headerRow + 1, end);
      const ofTab = tabQuestions(reading.issues, unfolded.asks, samples);
      return { reading, layout, ...about, questions, tabQuestions: ofTab };
    }
  }
  if (view !== null && missing.length === 0) {
    const plain = withWordsKept(reader(view), view.log);
    const questions = [...asked, ...questionsOfReading(plain, cells, view.first, end)];
    return { reading: plain, layout: "plain rows", ...about, questions, tabQuestions: [] };
  }
  return { ...unrecognised(lie), layout: "not recognised", ...about, questions: asked };
}
