import type { LiftingSet, SetKind } from "../../coaching/record/lifting-set";
import { choiceColumn } from "../column/choice-column";
import { minuteColumn } from "../column/minute-column";
import { numberColumn } from "../column/number-column";
import { plausible } from "../column/quantity";
import { type Aside, quantityColumn } from "../column/quantity-column";
import type { CellReader } from "../table-view";
import { reportDoubled } from "./needed";
import type { LineResult } from "./read-lines";
import { RepRows } from "./rep-rows";
import { setDetails } from "./set-details";
import { setKinds } from "./set-kinds";
import { setNumberColumn } from "./set-number-column";
import { setBounds } from "./set-numbers";
import type { SetsBeingRead } from "./sets-being-read";
import { type SpeedsOfSet, speedsOfSet } from "./speeds-of-set";
import { whoseSet } from "./whose-set";

/** Reader of any row of the Sets table, cell by cell, with all that a cell may mean; and of its cells alone. */
export function carefulSetReader(being: SetsBeingRead): {
  readonly read: CellReader<LineResult<LiftingSet>>;
  readonly cells: readonly CellReader<unknown>[];
} {
  const { view, numbers, days, meaning, doubled, loads } = being;
  const { fields, log } = view;
  const aside: Aside = { note: "", perHand: false };
  const readWhose = whoseSet(being);
  const readMinute = minuteColumn(view, fields.minute);
  const setNumber = setNumberColumn(view, fields.set);
  const repNumber = numberColumn(view, fields.rep, setBounds.rep);
  const kindOf = choiceColumn(view, fields.kind, setKinds, "drop if unknown");
  const repsDone = numberColumn(view, fields.reps, setBounds.reps);
  const load = quantityColumn(view, fields.load, plausible.loadKg, aside, false, numbers.load);
  const speeds = speedsOfSet(view, numbers);
  const details = setDetails(view, numbers);
  const repRows = new RepRows();
  const oneRowPerRep = fields.rep !== undefined;

  const read: CellReader<LineResult<LiftingSet>> = (line, row) => {
    const issuesBefore = log.issues.length;
    const whose = readWhose(line, row);
    if (whose === null || whose === "no-record") return whose;
    const { day, athlete, exercise } = whose;
    const { set, kind: numberedAs } = setNumber(line, row);
    const kind: SetKind = kindOf(line, row) ?? numberedAs ?? "work";
    // A set of an unknown kind may be a warm-up, and a warm-up never counts as work.
    if (log.dropped.has(row)) return null;
    const rep = repNumber(line, row);
    const minute = readMinute(line, row) ?? days.minute;
    aside.note = "";
    aside.perHand = false;
    const loadKg = load(line, row);
    const { perHand, note: besideLoad } = aside;
    const told = speeds(line, row);
    // Three equal sets without number, time or single repetitions are three sets, not one typed thrice.
    const isOne = (set !== null && !oneRowPerRep) || rep !== null || minute !== null;
    const earlier = isOne || told.repSpeeds.length > 2 ? doubled.earlier(line, row) : -1;
    if (earlier >= 0) {
      // What is wrong in it was already said of the earlier row.
      log.issues.length = issuesBefore;
      return reportDoubled(view, row, earlier);
    }
    if (loadKg !== null) loads.see(exercise);
    else if (isEmpty(line[fields.load?.index ?? -1])) loads.miss(row, exercise);
    const reps = repsDone(line, row);
    const asRep = oneRowPerRep || meaning.ofReps || reps === 1;
    const { repSpeeds, setSpeed, setSpeedIs } = speedsMeant(told, asRep, meaning.setSpeedIs);
    const { speedIs, tool, barKg, gym, movedWell, repsInReserve, by, note } = details(
      line,
      row,
      besideLoad,
    );
    // Written out one by one: a record spread from others is slow to make and to read.
    const plain: LiftingSet = {
      row: row + 1,
      day,
      minute,
      athlete,
      exercise,
      set,
      kind,
      reps: oneRowPerRep ? null : reps,
      loadKg,
      repSpeeds,
      setSpeed,
      setSpeedIs,
      speedIs: speedIs ?? meaning.speedIs,
      tool,
      barKg,
      gym,
      movedWell,
      repsInReserve,
      by,
      note,
    };
    const one = perHand ? { ...plain, loadPerHand: true } : plain;
    return oneRowPerRep ? repRows.join(one, rep, told.single) : one;
  };
  const cells = [
    readMinute,
    setNumber,
    repNumber,
    kindOf,
    repsDone,
    load,
    speeds,
    (line: readonly unknown[], row: number) => details(line, row, ""),
  ];
  return { read, cells };
}

/** A speed alone is the set's, or that of its one repetition. */
function speedsMeant(
  { repSpeeds, single }: SpeedsOfSet,
  asRep: boolean,
  setSpeedIs: LiftingSet["setSpeedIs"],
): Pick<LiftingSet, "repSpeeds" | "setSpeed" | "setSpeedIs"> {
  if (single === null) return { repSpeeds, setSpeed: null, setSpeedIs: null };
  if (asRep) return { repSpeeds: [single], setSpeed: null, setSpeedIs: null };
  return { repSpeeds, setSpeed: single, setSpeedIs };
}

function isEmpty(cell: unknown): boolean {
  return cell === "" || cell === undefined || cell === null;
}
