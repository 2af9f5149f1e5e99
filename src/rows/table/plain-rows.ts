import type { SetKind } from "../../coaching/record/lifting-set";
import { saysItself } from "../column/as-written";
import { PlainChoice } from "../column/plain-choice";
import { PlainDays } from "../column/plain-days";
import { PlainWords } from "../column/plain-words";
import { yesNo } from "../value/yes-no";
import { type PlainColumns, PlainSet } from "./plain-set";
import { setKinds, speedKinds } from "./set-kinds";
import type { SetNumbers } from "./set-numbers";
import type { SetsBeingRead } from "./sets-being-read";

/**
 * Reads the rows in which every cell says plainly what it means, and finds in them what reading with
 * care would: real dates or a text known to be one, clean words, numbers within bounds, a load. Any
 * other row is left to be read with care.
 */
export class PlainRows {
  /** Whether the row read last says enough to be found typed twice. */
  mayRepeat = false;
  /** Column of its fastest repetition, −1 without any. */
  private fastest = -1;
  private readonly columns: PlainColumns;
  /** One object for the rows of each kind and each meaning of speed. */
  private readonly kindsSeen: PlainColumns[] = [];
  private readonly movedWellOf = new Map<unknown, boolean | null>();
  private readonly days: PlainDays;
  private readonly kinds: PlainChoice<SetKind>;
  private readonly speedsAre: PlainChoice<"mean" | "peak">;
  private readonly athletes: PlainWords;
  private readonly lifts: PlainWords;
  private readonly words: readonly PlainWords[];
  private readonly minute: number;

  private readonly numbers: SetNumbers;
  private readonly meaning: SetsBeingRead["meaning"];

  constructor({ view, numbers, days, meaning }: Omit<SetsBeingRead, "doubled" | "loads">) {
    const { fields, repColumns } = view;
    this.numbers = numbers;
    this.meaning = meaning;
    const place = (field: string) => fields[field]?.index ?? -1;
    this.columns = {
      athlete: place("athlete"),
      exercise: place("exercise"),
      set: place("set"),
      reps: place("reps"),
      load: place("load"),
      speed: place("speed"),
      bar: place("bar"),
      tool: place("tool"),
      gym: place("gym"),
      reserve: place("reserve"),
      effort: place("effort"),
      by: place("by"),
      note: place("note"),
      movedWell: place("movedWell"),
      repColumns: repColumns.map(({ index }) => index),
      setSpeedIs: meaning.setSpeedIs,
      speedIs: meaning.speedIs,
      kind: "work",
      movedWellOf: this.movedWellOf,
    };
    this.kindsSeen.push(this.columns);
    this.days = new PlainDays(place("day"), days);
    this.kinds = new PlainChoice(place("kind"), setKinds);
    this.speedsAre = new PlainChoice(place("speedIs"), speedKinds);
    this.athletes = new PlainWords(place("athlete"));
    this.lifts = new PlainWords(place("exercise"));
    const others = [place("tool"), place("gym"), place("by"), place("note")];
    this.words = others.filter((index) => index >= 0).map((index) => new PlainWords(index));
    this.minute = place("minute");
  }

  /** @returns null for a row that has to be read with care; `row` counts from 0 */
  read(line: readonly unknown[], row: number): PlainSet | null {
    const day = this.days.of(line);
    if (day === null || (this.minute >= 0 && line[this.minute] !== "")) return null;
    const { columns, numbers } = this;
    if (!this.athletes.stand(line[columns.athlete])) return null;
    if (!this.lifts.stand(line[columns.exercise])) return null;
    const kind = this.kinds.of(line);
    const speedsAre = this.speedsAre.of(line);
    if (kind === undefined || speedsAre === undefined) return null;
    if (numbers.load === null || !saysItself(line[columns.load], numbers.load)) return null;
    if (!this.othersStand(line) || !this.speedsStand(line) || !this.movedWellStands(line))
      return null;
    return new PlainSet(
      row + 1,
      day,
      line,
      this.columnsFor(kind ?? "work", speedsAre ?? this.meaning.speedIs),
      this.fastest,
    );
  }

  private othersStand(line: readonly unknown[]): boolean {
    const { others } = this.numbers;
    for (let at = 0; at < others.length; at++) {
      const cell = line[others[at]!.index];
      if (cell !== "" && !saysItself(cell, others[at]!)) return false;
    }
    const { words } = this;
    for (let at = 0; at < words.length; at++) {
      const cell = line[words[at]!.index];
      if (cell !== "" && !words[at]!.stand(cell)) return false;
    }
    return true;
  }

  private speedsStand(line: readonly unknown[]): boolean {
    const { repSpeeds, speed } = this.numbers;
    let read = 0;
    let speedOfFastest = 0;
    this.fastest = -1;
    for (let rep = 0; rep < repSpeeds.length; rep++) {
      const { index } = repSpeeds[rep]!;
      const cell = line[index];
      if (cell === "") continue;
      if (!saysItself(cell, repSpeeds[rep]!)) return false;
      read = rep + 1;
      if ((cell as number) <= speedOfFastest) continue;
      speedOfFastest = cell as number;
      this.fastest = index;
    }
    const { columns } = this;
    this.mayRepeat = read > 2 || (columns.set >= 0 && line[columns.set] !== "");
    if (speed === null) return true;
    const single = line[speed.index];
    if (single === "") return true;
    // One repetition's speed is a repetition, and so is a figure under "rep speeds".
    if (read === 0 && (this.meaning.ofReps || line[columns.reps] === 1)) return false;
    return saysItself(single, speed);
  }

  private movedWellStands(line: readonly unknown[]): boolean {
    const { movedWell } = this.columns;
    if (movedWell < 0) return true;
    const cell = line[movedWell];
    if (cell === "" || this.movedWellOf.has(cell)) return true;
    const said = yesNo(cell);
    if (said === null) return false;
    this.movedWellOf.set(cell, said);
    return true;
  }

  private columnsFor(kind: SetKind, speedIs: PlainColumns["speedIs"]): PlainColumns {
    const { kindsSeen } = this;
    for (let at = 0; at < kindsSeen.length; at++) {
      const seen = kindsSeen[at]!;
      if (seen.kind === kind && seen.speedIs === speedIs) return seen;
    }
    const columns = { ...this.columns, kind, speedIs };
    kindsSeen.push(columns);
    return columns;
  }
}
