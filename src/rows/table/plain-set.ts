import type { LiftingSet, SetKind } from "../../coaching/record/lifting-set";
import { reserveInWords, reserveOfEffort } from "../value/reserve-in-words";

/** What plain rows of one kind share: where each figure stands, and what words there mean. */
export type PlainColumns = {
  readonly athlete: number;
  readonly exercise: number;
  readonly set: number;
  readonly reps: number;
  readonly load: number;
  readonly speed: number;
  readonly bar: number;
  readonly tool: number;
  readonly gym: number;
  readonly reserve: number;
  readonly effort: number;
  readonly by: number;
  readonly note: number;
  readonly movedWell: number;
  readonly repColumns: readonly number[];
  readonly setSpeedIs: LiftingSet["setSpeedIs"];
  readonly speedIs: "mean" | "peak" | null;
  readonly kind: SetKind;
  /** What a cell of the moved-well column says. */
  readonly movedWellOf: ReadonlyMap<unknown, boolean | null>;
};

/**
 * A set whose row says every figure exactly as it is read, so that nothing needs to be kept twice: the
 * coach's own cells are the record, and each figure is looked up when asked for. Tables of a million
 * rows are read so without a second copy of them.
 */
export class PlainSet implements LiftingSet {
  constructor(
    readonly row: number,
    readonly day: number,
    private readonly line: readonly unknown[],
    private readonly at: PlainColumns,
    /** Column of the fastest repetition, −1 without any. */
    private readonly fastest: number,
  ) {}

  get kind(): SetKind {
    return this.at.kind;
  }
  get minute(): null {
    return null;
  }
  get athlete(): string {
    return this.line[this.at.athlete] as string;
  }
  get exercise(): string {
    return this.line[this.at.exercise] as string;
  }
  get set(): number | null {
    return numberAt(this.line, this.at.set);
  }
  get reps(): number | null {
    return numberAt(this.line, this.at.reps);
  }
  get loadKg(): number | null {
    return numberAt(this.line, this.at.load);
  }
  get repSpeeds(): readonly (number | null)[] {
    const { line } = this;
    const { repColumns } = this.at;
    let filled = repColumns.length;
    while (filled > 0 && typeof line[repColumns[filled - 1]!] !== "number") filled--;
    const speeds: (number | null)[] = [];
    for (let rep = 0; rep < filled; rep++) speeds.push(numberAt(line, repColumns[rep]!));
    return speeds;
  }
  get fastestRep(): number {
    return this.fastest < 0 ? 0 : (this.line[this.fastest] as number);
  }
  get setSpeed(): number | null {
    return this.fastest >= 0 ? null : numberAt(this.line, this.at.speed);
  }
  get setSpeedIs(): "mean of reps" | "best rep" | null {
    return this.setSpeed === null ? null : this.at.setSpeedIs;
  }
  get speedIs(): "mean" | "peak" | null {
    return this.at.speedIs;
  }
  get tool(): string {
    return textAt(this.line, this.at.tool);
  }
  get barKg(): number | null {
    return numberAt(this.line, this.at.bar);
  }
  get gym(): string {
    return textAt(this.line, this.at.gym);
  }
  get movedWell(): boolean | null {
    return this.at.movedWellOf.get(this.line[this.at.movedWell]) ?? null;
  }
  get repsInReserve(): number | null {
    const { line, at } = this;
    return (
      numberAt(line, at.reserve) ??
      reserveOfEffort(numberAt(line, at.effort)) ??
      reserveInWords(this.note)
    );
  }
  get by(): string {
    return textAt(this.line, this.at.by);
  }
  get note(): string {
    return textAt(this.line, this.at.note);
  }

  /** The same set as a record of its own. */
  record(): LiftingSet {
    const { row, day, minute, athlete, exercise, set, kind, reps, loadKg, repSpeeds } = this;
    const { setSpeed, setSpeedIs, speedIs, tool, barKg, gym, movedWell, repsInReserve } = this;
    const { by, note } = this;
    return {
      ...{ row, day, minute, athlete, exercise, set, kind, reps, loadKg, repSpeeds },
      ...{ setSpeed, setSpeedIs, speedIs, tool, barKg, gym, movedWell, repsInReserve, by, note },
    };
  }
}

function numberAt(line: readonly unknown[], index: number): number | null {
  const cell = index < 0 ? "" : line[index];
  return typeof cell === "number" ? cell : null;
}

function textAt(line: readonly unknown[], index: number): string {
  return index < 0 ? "" : (line[index] as string);
}
