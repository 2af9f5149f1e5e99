import type { LiftingSet, SetKind } from "../../coaching/record/lifting-set";
import { choiceColumn, yesNoColumn } from "../column/choice-column";
import { dayColumn } from "../column/day-column";
import { minuteColumn } from "../column/minute-column";
import { numberColumn } from "../column/number-column";
import { plausible } from "../column/quantity";
import { type Aside, quantityColumn } from "../column/quantity-column";
import { speedColumn } from "../column/speed-column";
import { textColumn } from "../column/text-column";
import type { TableView } from "../table-view";
import { isBlank } from "../value/blank";
import { isMark } from "../value/no-value";
import { reserveInWords, reserveOfEffort } from "../value/reserve-in-words";
import { reportBlank, reportDoubled } from "./needed";
import { notDoneCells } from "./not-done";
import { type LineResult, wordsAlone } from "./read-lines";
import { RepRows } from "./rep-rows";
import { setKinds, speedKinds } from "./set-kinds";
import { setNumberColumn } from "./set-number-column";
import { type SetNumbers, setBounds } from "./set-numbers";
import type { SetsBeingRead } from "./sets-being-read";

/** Reader of any row of the Sets table, cell by cell, with all that a cell may mean. */
export function carefulSetReader({
  view,
  numbers,
  days,
  meaning,
  doubled,
  loads,
  boxes,
}: SetsBeingRead): (line: readonly unknown[], row: number) => LineResult<LiftingSet> {
  const { fields } = view;
  const aside: Aside = { note: "", perHand: false };
  const readDay = dayColumn(view, fields.day, true, days);
  const readMinute = minuteColumn(view, fields.minute);
  const name = textColumn(view, fields.athlete, true);
  const lift = textColumn(view, fields.exercise, true);
  const setNumber = setNumberColumn(view, fields.set);
  const repNumber = numberColumn(view, fields.rep, setBounds.rep);
  const kindOf = choiceColumn(view, fields.kind, setKinds, "drop if unknown");
  const repsDone = numberColumn(view, fields.reps, setBounds.reps);
  const load = quantityColumn(view, fields.load, plausible.loadKg, aside, false, numbers.load);
  const speeds = speedsReader(view, numbers);
  const speedIs = choiceColumn(view, fields.speedIs, speedKinds);
  const tool = textColumn(view, fields.tool);
  const bar = quantityColumn(view, fields.bar, plausible.barKg, null, false, numbers.bar);
  const gym = textColumn(view, fields.gym);
  const movedWell = yesNoColumn(view, fields.movedWell);
  const reserve = numberColumn(view, fields.reserve, setBounds.reserve);
  const effort = numberColumn(view, fields.effort, setBounds.effort);
  const by = textColumn(view, fields.by);
  const note = textColumn(view, fields.note);
  const repRows = new RepRows();
  const oneRowPerRep = fields.rep !== undefined;
  const { note: noted, ...others } = fields;
  const known = [...Object.values(others), ...view.repColumns];
  const notDone = notDoneCells(view);

  return (line, row) => {
    // Under merged cells words alone are no set of the athlete above.
    if (known.every(({ index }) => isBlank(line[index])) && wordsAlone(line, fields.athlete) >= 0)
      return null;
    const issuesBefore = view.log.issues.length;
    const day = readDay(line, row);
    if (day === null) return null;
    const athlete = name(line, row);
    if (athlete === "") return reportBlank(view, fields.athlete, row);
    const exercise = lift(line, row);
    const words = notDone(line);
    if (words.length > 0 || boxes.isPlan(line, row, { athlete, day })) {
      const noteAt = noted?.index ?? -1;
      for (const column of [...words, noteAt]) {
        const said = String(line[column] ?? "").trim();
        // Of a mark in a figure's place nothing is to be known but that there is none.
        if (said !== "" && (column === noteAt || !isMark(said)))
          view.log.keep(row, column, said, { athlete, day });
      }
      return "no-record";
    }
    if (exercise === "") return reportBlank(view, fields.exercise, row);
    const numbered = setNumber(line, row);
    const kind: SetKind = kindOf(line, row) ?? numbered.kind ?? "work";
    // A set of an unknown kind may be a warm-up, and a warm-up never counts as work.
    if (view.log.dropped.has(row)) return null;
    const rep = repNumber(line, row);
    const minute = readMinute(line, row) ?? days.minute;
    aside.note = "";
    aside.perHand = false;
    const loadKg = load(line, row);
    const { perHand } = aside;
    const cellNote = aside.note;
    const { repSpeeds, single } = speeds(line, row);
    // Three equal sets without number, time or single repetitions are three sets, not one typed thrice.
    const isOne = (numbered.set !== null && !oneRowPerRep) || rep !== null || minute !== null;
    const earlier = isOne || repSpeeds.length > 2 ? doubled.earlier(line, row) : -1;
    if (earlier >= 0) {
      // What is wrong in it was already said of the earlier row.
      view.log.issues.length = issuesBefore;
      return reportDoubled(view, row, earlier);
    }
    if (loadKg !== null) loads.see(exercise);
    else if (isEmpty(line[fields.load?.index ?? -1])) loads.miss(row, exercise);
    const reps = repsDone(line, row);
    const asRep = single !== null && (oneRowPerRep || meaning.ofReps || reps === 1);
    const setSpeed = asRep ? null : single;
    const said = joined(note(line, row), cellNote);
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
      setSpeed,
      setSpeedIs: setSpeed === null ? null : meaning.setSpeedIs,
      speedIs: speedIs(line, row) ?? meaning.speedIs,
      tool: tool(line, row),
      barKg: bar(line, row),
      gym: gym(line, row),
      movedWell: movedWell(line, row),
      repsInReserve:
        reserve(line, row) ?? reserveOfEffort(effort(line, row)) ?? reserveInWords(said),
      by: by(line, row),
      note: said,
    };
    const set = perHand ? { ...plain, loadPerHand: true } : plain;
    return oneRowPerRep ? repRows.join(set, rep, single) : set;
  };
}

type SpeedsOfSet = {
  readonly repSpeeds: readonly (number | null)[];
  /** The set's one speed, where no repetition's was kept. */
  readonly single: number | null;
};

/** Reader of a set's speeds: each in a column of its own, or all in one. Reports `speeds-twice`. */
function speedsReader(
  view: TableView,
  numbers: SetNumbers,
): (line: readonly unknown[], row: number) => SpeedsOfSet {
  const { speed } = view.fields;
  const inOne = speedColumn(view, speed, numbers.speed);
  const apartReaders = view.repColumns.map((column, rep) =>
    quantityColumn(view, column, plausible.speed, null, false, numbers.repSpeeds[rep]),
  );
  return (line, row) => {
    const { reps, single } = inOne(line, row);
    const apart = upToLastRead(apartReaders.map((rep) => rep(line, row)));
    const twice = apart.length > 0 && reps.length > 0 && `${apart}` !== `${reps}`;
    if (twice) view.log.add("speeds-twice", row, speed!.index, line[speed!.index]);
    const repSpeeds = twice ? [] : apart.length > 0 ? apart : reps;
    return { repSpeeds, single: repSpeeds.length > 0 ? null : single };
  };
}

function upToLastRead(speeds: readonly (number | null)[]): readonly (number | null)[] {
  let end = speeds.length;
  while (end > 0 && speeds[end - 1] === null) end--;
  return speeds.slice(0, end);
}

function isEmpty(cell: unknown): boolean {
  return cell === "" || cell === undefined || cell === null;
}

function joined(one: string, other: string): string {
  return one === "" || other === "" ? one + other : `${one}; ${other}`;
}
