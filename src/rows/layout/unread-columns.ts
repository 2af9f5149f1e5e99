import type { Cells } from "../cells";
import type { ColumnQuestion } from "../header/decide-columns";
import { plainWords } from "../header/header-words";
import { sampleColumn, threeSamples } from "../header/value-fit";
import type { IssueLog } from "../issue-log";
import { foundText } from "../value/found-text";

/**
 * Filled columns of a layout that nothing explains: each heading is asked about once, wherever it
 * stands, until the coach says that it is left alone.
 */
export class UnreadColumns {
  readonly questions: ColumnQuestion[] = [];
  private readonly said = new Set<string | number>();

  constructor(
    private readonly source: Cells,
    private readonly log: IssueLog,
    /** Columns the coach said to leave alone, from 0. */
    private readonly leftAlone: readonly number[],
  ) {}

  /**
   * A column with something in `row`; `head` is the row of its heading. Reports `heading-unknown`
   * at the heading, or at the cell where there is none; not where the column is only `beside` the figures.
   */
  see(head: number, row: number, column: number, beside = false): void {
    const headingAt = (at: number) => foundText(this.source[head]![at]).trim();
    const keyOf = (at: number) => plainWords(headingAt(at)) || at;
    const heading = headingAt(column);
    const key = keyOf(column);
    if (this.said.has(key) || this.leftAlone.some((at) => keyOf(at) === key)) return;
    this.said.add(key);
    if (!beside) this.log.addAtSource("heading-unknown", heading === "" ? row : head, column);
    this.questions.push({
      column: column + 1,
      heading,
      about: "meaning",
      samples: threeSamples(sampleColumn(this.source, row, this.source.length, column)),
      guess: null,
      choices: [],
    });
  }
}
