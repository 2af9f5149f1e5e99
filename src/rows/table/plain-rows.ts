import type { TableView } from "../table-view";
import type { PlainColumns } from "./plain-set";
import type { speedMeaning } from "./set-kinds";

/** Tells whether a row's cells say exactly what was read from them, so that the cells can stand for it. */
export class PlainRows {
  private readonly at: PlainColumns;
  private readonly meanings = new Map<PlainColumns["speedIs"], PlainColumns>();
  private readonly movedWellOf = new Map<unknown, boolean | null>();
  private last: PlainColumns;

  constructor({ fields, repColumns }: TableView, meaning: ReturnType<typeof speedMeaning>) {
    const place = (field: string) => fields[field]?.index ?? -1;
    this.at = {
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
      by: place("by"),
      note: place("note"),
      movedWell: place("movedWell"),
      repColumns: repColumns.map(({ index }) => index),
      setSpeedIs: meaning.setSpeedIs,
      speedIs: meaning.speedIs,
      movedWellOf: this.movedWellOf,
    };
    this.last = this.at;
    this.meanings.set(meaning.speedIs, this.at);
  }

  /** The columns of a row whose speeds are means, peaks or not told; one object for all such rows. */
  columns(speedIs: PlainColumns["speedIs"]): PlainColumns {
    if (this.last.speedIs !== speedIs) {
      this.last = this.meanings.get(speedIs) ?? { ...this.at, speedIs };
      this.meanings.set(speedIs, this.last);
    }
    return this.last;
  }

  haveReps(line: readonly unknown[], read: readonly (number | null)[]): boolean {
    const { repColumns } = this.at;
    for (let rep = 0; rep < repColumns.length; rep++)
      if (!saysNumber(line[repColumns[rep]!], read[rep]!)) return false;
    return true;
  }

  hasSpeed(line: readonly unknown[], single: number | null): boolean {
    return numberStands(line, this.at.speed, single);
  }

  hasNumbers(
    line: readonly unknown[],
    set: number | null,
    reps: number | null,
    loadKg: number | null,
    barKg: number | null,
    inReserve: number | null,
  ): boolean {
    const { at } = this;
    return (
      numberStands(line, at.set, set) &&
      numberStands(line, at.reps, reps) &&
      numberStands(line, at.load, loadKg) &&
      numberStands(line, at.bar, barKg) &&
      numberStands(line, at.reserve, inReserve)
    );
  }

  hasWords(
    line: readonly unknown[],
    athlete: string,
    exercise: string,
    tool: string,
    gym: string,
    by: string,
    note: string,
  ): boolean {
    const { at } = this;
    return (
      line[at.athlete] === athlete &&
      line[at.exercise] === exercise &&
      textStands(line, at.tool, tool) &&
      textStands(line, at.gym, gym) &&
      textStands(line, at.by, by) &&
      textStands(line, at.note, note)
    );
  }

  /** A word there means the same in every row, or the row is none of these: a ditto mark does not. */
  hasMovedWell(line: readonly unknown[], read: boolean | null): boolean {
    const { movedWell } = this.at;
    if (movedWell < 0) return true;
    const cell = line[movedWell];
    const known = this.movedWellOf.get(cell);
    if (known === undefined) this.movedWellOf.set(cell, read);
    return known === undefined || known === read;
  }
}

function numberStands(line: readonly unknown[], index: number, read: number | null): boolean {
  return index < 0 ? read === null : saysNumber(line[index], read);
}

function saysNumber(cell: unknown, read: number | null): boolean {
  return typeof cell === "number" ? cell === read : read === null;
}

function textStands(line: readonly unknown[], index: number, read: string): boolean {
  const cell = index < 0 ? "" : line[index];
  return typeof cell === "string" ? cell === read : read === "";
}
