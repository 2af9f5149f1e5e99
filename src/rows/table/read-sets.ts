import type { LiftingSet, SetKind } from "../../coaching/record/lifting-set";
import { choiceColumn, yesNoColumn } from "../column/choice-column";
import { dayColumn, newDayAside } from "../column/day-column";
import { minuteColumn } from "../column/minute-column";
import { numberColumn } from "../column/number-column";
import { plausible } from "../column/quantity";
import { type Aside, quantityColumn } from "../column/quantity-column";
import { speedColumn } from "../column/speed-column";
import { textColumn } from "../column/text-column";
import type { Reading } from "../reading";
import type { TableView } from "../table-view";
import { reportBlankLoads } from "./blank-loads";
import { DoubledRows } from "./doubled-rows";
import { reportBlank, reportDoubled } from "./needed";
import { PlainRows } from "./plain-rows";
import type { PlainSet } from "./plain-set";
import { questionDays } from "./question-days";
import { type LineResult, readLines } from "./read-lines";
import { RepRows } from "./rep-rows";
import { setKinds, speedKinds, speedMeaning } from "./set-kinds";
import { setNumberColumn } from "./set-number-column";
import { setBounds, setNumbers } from "./set-numbers";

/** From so many rows on, rows that say everything plainly are looked up in place, not copied. */
const manyRows = 250;

/** Rows of the Sets table: one row a set, or one row a repetition put together to sets. */
export function readSetRows(view: TableView, plainFrom: number = manyRows): Reading<LiftingSet> {
  const { fields, repColumns } = view;
  const dayAside = newDayAside();
  const aside: Aside = { note: "", perHand: false };
  const readDay = dayColumn(view, fields.day, true, dayAside);
  const readMinute = minuteColumn(view, fields.minute);
  const name = textColumn(view, fields.athlete);
  const lift = textColumn(view, fields.exercise);
  const setNumber = setNumberColumn(view, fields.set);
  const repNumber = numberColumn(view, fields.rep, setBounds.rep);
  const kindOf = choiceColumn(view, fields.kind, setKinds, "drop if unknown");
  const repsDone = numberColumn(view, fields.reps, setBounds.reps);
  const written = setNumbers(view);
  const load = quantityColumn(view, fields.load, plausible.loadKg, aside, false, written.load);
  const speeds = speedColumn(view, fields.speed, written.speed);
  const repReaders = repColumns.map((column, rep) =>
    quantityColumn(view, column, plausible.speed, null, false, written.repSpeeds[rep]),
  );
  const meaning = speedMeaning(fields.speed?.words ?? "");
  const speedIs = choiceColumn(view, fields.speedIs, speedKinds);
  const tool = textColumn(view, fields.tool);
  const bar = quantityColumn(view, fields.bar, plausible.barKg, null, false, written.bar);
  const gym = textColumn(view, fields.gym);
  const movedWell = yesNoColumn(view, fields.movedWell);
  const reserve = numberColumn(view, fields.reserve, setBounds.reserve);
  const by = textColumn(view, fields.by);
  const note = textColumn(view, fields.note);
  const doubled = new DoubledRows(view);
  const repRows = new RepRows();
  const oneRowPerRep = fields.rep !== undefined;
  const blankLoads: { row: number; exercise: string }[] = [];
  const loadedLifts = new Set<string>();
  let lastLoaded = "";
  const carries = [fields.day, fields.athlete, fields.exercise].some((one) => one?.carried);
  const plainRows =
    oneRowPerRep || carries || view.end - view.first < plainFrom
      ? null
      : new PlainRows(view, written, dayAside, meaning);
  const repCells: (number | null)[] = repReaders.map(() => null);

  const readPlainly = (set: PlainSet, line: readonly unknown[], row: number) => {
    const { exercise } = set;
    if (exercise !== lastLoaded) loadedLifts.add(exercise);
    lastLoaded = exercise;
    const earlier = plainRows?.mayRepeat ? doubled.earlier(line, row) : -1;
    return earlier < 0 ? set : reportDoubled(view, row, earlier);
  };

  const readLine = (line: readonly unknown[], row: number): LineResult<LiftingSet> => {
    const set = plainRows === null ? null : plainRows.read(line, row);
    return set === null ? readWithCare(line, row) : readPlainly(set, line, row);
  };

  const readWithCare = (line: readonly unknown[], row: number): LineResult<LiftingSet> => {
    const issuesBefore = view.log.issues.length;
    const day = readDay(line, row);
    if (day === null) return null;
    const athlete = name(line, row);
    if (athlete === "") return reportBlank(view, fields.athlete, row);
    const exercise = lift(line, row);
    if (exercise === "") return reportBlank(view, fields.exercise, row);
    const numbered = setNumber(line, row);
    const kind: SetKind = kindOf(line, row) ?? numbered.kind ?? "work";
    // A set of an unknown kind may be a warm-up, and a warm-up never counts as work.
    if (view.log.dropped.has(row)) return null;
    const rep = repNumber(line, row);
    const minute = readMinute(line, row) ?? dayAside.minute;
    aside.note = "";
    aside.perHand = false;
    const loadKg = load(line, row);
    const { perHand } = aside;
    const cellNote = aside.note;
    const listed = speeds(line, row);
    const repsRead =
      repReaders.length === 0 ? listed.reps.length : readReps(repReaders, line, row, repCells);
    // Three equal sets without number, time or single repetitions are three sets, not one typed thrice.
    if (
      (numbered.set !== null && !oneRowPerRep) ||
      rep !== null ||
      minute !== null ||
      repsRead > 2
    ) {
      const earlier = doubled.earlier(line, row);
      if (earlier >= 0) {
        // What is wrong in it was already said of the earlier row.
        view.log.issues.length = issuesBefore;
        return reportDoubled(view, row, earlier);
      }
    }
    if (loadKg !== null) {
      if (exercise !== lastLoaded) loadedLifts.add(exercise);
      lastLoaded = exercise;
    } else if (isEmpty(line[fields.load?.index ?? -1])) blankLoads.push({ row, exercise });
    const reps = repsDone(line, row);
    const single = repReaders.length > 0 && repsRead > 0 ? null : listed.single;
    const asRep = single !== null && (oneRowPerRep || meaning.ofReps || reps === 1);
    const speedsAre = speedIs(line, row) ?? meaning.speedIs;
    const withTool = tool(line, row);
    const barKg = bar(line, row);
    const where = gym(line, row);
    const well = movedWell(line, row);
    const inReserve = reserve(line, row);
    const writtenBy = by(line, row);
    const noted = note(line, row);
    const repSpeeds = repReaders.length === 0 ? listed.reps : repCells.slice(0, repsRead);
    const plain: LiftingSet = {
      row: row + 1,
      day,
      minute,
      athlete,
      exercise,
      set: numbered.set,
      kind,
      reps: oneRowPerRep ? null : reps,
      loadKg,
      repSpeeds: asRep ? [single] : repSpeeds,
      setSpeed: asRep ? null : single,
      setSpeedIs: asRep || single === null ? null : meaning.setSpeedIs,
      speedIs: speedsAre,
      tool: withTool,
      barKg,
      gym: where,
      movedWell: well,
      repsInReserve: inReserve,
      by: writtenBy,
      note: joined(noted, cellNote),
    };
    const set = perHand ? { ...plain, loadPerHand: true } : plain;
    if (!oneRowPerRep) return set;
    return repRows.join(set, rep, single);
  };

  const reading = readLines<LiftingSet>(view, readLine);
  reportBlankLoads(view, blankLoads, loadedLifts);
  return questionDays(view, reading);
}

/** Reads a row's repetitions into `into`; how many there are, up to the last one read. */
function readReps(
  readers: readonly ((line: readonly unknown[], row: number) => number | null)[],
  line: readonly unknown[],
  row: number,
  into: (number | null)[],
): number {
  let filled = 0;
  for (let at = 0; at < readers.length; at++) {
    const speed = (readers[at] as (typeof readers)[number])(line, row);
    into[at] = speed;
    if (speed !== null) filled = at + 1;
  }
  return filled;
}

function isEmpty(cell: unknown): boolean {
  return cell === "" || cell === undefined || cell === null;
}

function joined(one: string, other: string): string {
  return one === "" || other === "" ? one + other : `${one}; ${other}`;
}
