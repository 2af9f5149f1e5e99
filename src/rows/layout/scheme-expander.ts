import { exerciseKey } from "../../coaching/record/exercise-key";
import { anyTicked } from "../table/open-boxes";
import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { isDitto } from "../value/ditto";
import { countedGroups } from "./counted-groups";
import type { Placed } from "./flat-rows";
import { noLift } from "./no-lift";
import type { SchemeRow } from "./scheme-row";
import { asWeekday } from "./shorthand/as-weekday";
import { emitSets } from "./shorthand/emit-sets";
import { withFiguresBeside } from "./shorthand/figures-beside";
import { type SchemePart, type SchemeSense, schemeSense } from "./shorthand/scheme-order";
import { SessionMemory } from "./shorthand/session-memory";
import { problemOf, type SetGroup, setCell } from "./shorthand/set-cell";
import {
  noSpeeds,
  ownSpeeds,
  type SpeedsBeside,
  speedsIn,
  tellSpeeds,
} from "./shorthand/speeds-beside";
import { figuresFor } from "./shorthand/spread-speeds";
import type { TabAnswers } from "./tab-answers";
import type { Unfolded } from "./unfolded";
import { withWords } from "./with-words";

const loadless: SetGroup = { load: null, unit: null, reps: null, sets: 1 };

/** Writes the rows of a log of shorthand out as sets, one row after another. */
export class SchemeExpander {
  private readonly memory = new SessionMemory();
  private readonly sense: SchemeSense;
  private readonly areTicked: boolean;

  constructor(
    private readonly view: TableView,
    private readonly into: Unfolded,
    private readonly tab: TabAnswers,
    order: readonly SchemePart[] | null,
  ) {
    this.sense = schemeSense(order, tab.setsFirst);
    this.areTicked = anyTicked(view);
  }

  sets(read: SchemeRow): void {
    const { fields } = this.view;
    const { row, line } = read;
    const speedAt = fields.speed?.index ?? read.scheme;
    const listed = fields.speed === undefined ? noSpeeds : speedsIn(line[speedAt]);
    const said = setCell(line[read.scheme], this.sense, listed.speeds.length);
    const weekday = said.is === "as-weekday" ? said.weekday : asWeekday(read.exercise);
    if (weekday !== null) {
      this.copy(read, weekday, listed, speedAt, said.is === "as-weekday");
      return;
    }
    const counted = said.is === "none" && this.counts(line);
    if (said.is === "none" && !counted) {
      noLift(this.view, this.into, read, said.note, listed);
      return;
    }
    const groups = this.groupsOf(read, said, counted);
    if (groups === null) {
      this.unread(read, problemOf(said), read.scheme);
      return;
    }
    if (groups.length === 0) {
      this.keep(read, groups);
      return;
    }
    const { into } = this;
    const beside = { speeds: listed.speeds, column: speedAt };
    const own = said.is === "sets" ? ownSpeeds(into, row, said.speeds, beside) : null;
    const speeds = own === null ? beside : { speeds: own, column: read.scheme };
    // The load's own cell says why there is none.
    const load: Placed | undefined = counted ? [line[read.scheme], read.scheme] : read.shared.load;
    const shared = { ...read.shared, load };
    const agreed = withFiguresBeside(into, row, read.scheme, groups, shared);
    const { note } = said.is === "sets" ? said : { note: "" };
    this.write({ ...read, shared: agreed.shared }, agreed.groups, speeds, note);
    tellSpeeds(into, row, speedAt, fields.speed?.heading ?? "", listed);
  }

  /** The sets that a row says, counts or repeats; null where that cannot be read. */
  private groupsOf(
    read: SchemeRow,
    said: ReturnType<typeof setCell>,
    counted: boolean,
  ): readonly SetGroup[] | null {
    if (said.is === "sets") return countedGroups(this.view, this.into, read, said.groups);
    if (counted) return countedGroups(this.view, this.into, read, [loadless]);
    return said.is === "ditto" ? this.repeated(read) : null;
  }

  /** The athlete's sets before, or their load alone where the row counts its own. */
  private repeated(read: SchemeRow): readonly SetGroup[] | null {
    const groups = this.memory.before(read.athlete)?.groups ?? [];
    const [first] = groups;
    if (first === undefined) return null;
    if (!this.counts(read.line)) return groups;
    const { load, unit } = first;
    return countedGroups(this.view, this.into, read, [{ ...loadless, load, unit }]);
  }

  /** Sets or repetitions are counted beside a load, which may be missing: they were done. */
  private counts(line: readonly unknown[]): boolean {
    const { scheme, setCount, reps } = this.view.fields;
    return (
      scheme === undefined &&
      [setCount, reps].some((column) => Number(line[column?.index ?? -1]) > 0)
    );
  }

  /** Load and scheme of that weekday's session, never its speeds. */
  private copy(
    read: SchemeRow,
    weekday: number,
    listed: SpeedsBeside,
    speedAt: number,
    inScheme: boolean,
  ): void {
    const column = this.view.fields.exercise!.index;
    const written = inScheme ? read.scheme : column;
    const own = read.exercise;
    const copied = isBlank(own) || isDitto(own) || asWeekday(own) !== null;
    const all = read.day === null ? [] : this.memory.onWeekday(read.athlete, weekday, read.day);
    const keyOf = (exercise: unknown) => exerciseKey(String(exercise));
    // Of several lifts a row that names one repeats that one.
    const found =
      copied || all.length === 1
        ? all
        : all.filter(({ exercise }) => keyOf(exercise) === keyOf(own));
    const [first, ...others] = found;
    if (first === undefined || found.some(({ groups }) => groups.length === 0)) {
      this.unread(read, "nothing-to-repeat", written);
      return;
    }
    if (first.athlete !== read.athlete)
      this.into.log.addAtSource("copied-from-near-name", read.row, written, {
        from: first.athlete,
        earlierRow: first.row + 1,
      });
    let speeds = listed.speeds;
    if (others.length > 0 && speeds.some((speed) => speed !== null)) {
      // Nothing says which lift they are of.
      const sets = found
        .flatMap(({ groups }) => groups)
        .reduce((sum, group) => sum + group.sets, 0);
      this.into.log.addAtSource("speeds-too-many", read.row, speedAt, {
        speeds: speeds.length,
        sets,
      });
      speeds = [];
    }
    for (const session of found) {
      const exercise = copied ? session.exercise : own;
      const note = session === first ? read.note : undefined;
      this.write(
        { ...read, exercise, note, shared: { ...read.shared, exercise: [exercise, column] } },
        session.groups,
        { speeds, column: speedAt },
        "",
      );
    }
    const heading = this.view.fields.speed?.heading ?? "";
    tellSpeeds(this.into, read.row, speedAt, heading, listed);
  }

  /** A row that gives no sets: a mark below it must not repeat what stands further up. */
  private unread(read: SchemeRow, code: string, column: number): void {
    this.into.report(code, read.row, column);
    this.keep(read, []);
  }

  private keep(read: SchemeRow, groups: readonly SetGroup[]): void {
    const { row, athlete, day, exercise } = read;
    this.memory.keep(day, { athlete, row, exercise, groups });
  }

  private write(
    read: SchemeRow,
    groups: readonly SetGroup[],
    { speeds, column }: { readonly speeds: readonly (number | null)[]; readonly column: number },
    cellNote: string,
  ): void {
    const { row, scheme } = read;
    this.keep(read, groups);
    const { done } = read.shared;
    // A speed says that all sets of the row were done, whether or not its box is ticked.
    const wasDone = this.areTicked && speeds.some((speed) => speed !== null);
    const shared =
      done && wasDone ? { ...read.shared, done: [true, done[1]] as const } : read.shared;
    const note = withWords(read.note, cellNote, scheme);
    const worded = column === scheme ? null : figuresFor(this.view.fields.speed!.words);
    const sets = groups.reduce((sum, group) => sum + group.sets, 0);
    const shorthandSets = this.memory.setsBefore(read, sets);
    emitSets(
      this.into,
      { row, schemeColumn: scheme, speedColumn: column, shared, note, shorthandSets },
      groups,
      speeds,
      worded ?? this.tab.speeds ?? null,
    );
  }
}
