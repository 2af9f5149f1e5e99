import { plainWords } from "../header/header-words";
import { isDitto } from "../value/ditto";
import type { Choices } from "./choice-column";

/** A column with a few possible words, for the cells that hold one of them or nothing. */
export class PlainChoice<T> {
  private readonly seen = new Map<unknown, T | undefined>();

  constructor(
    private readonly index: number,
    private readonly known: Choices<T>,
  ) {}

  /** What the row's cell chooses, null when it is empty, undefined for any other word. */
  of(line: readonly unknown[]): T | null | undefined {
    if (this.index < 0) return null;
    const cell = line[this.index];
    if (cell === "") return null;
    const before = this.seen.get(cell);
    return before !== undefined || typeof cell !== "string" ? before : this.look(cell);
  }

  private look(cell: string): T | undefined {
    const choice = isDitto(cell) ? undefined : this.known.get(plainWords(cell));
    if (choice !== undefined) this.seen.set(cell, choice);
    return choice;
  }
}
