import { usualLineSettings } from "../bar-speed/line-settings";
import { withSquadSpread } from "../bar-speed/squad-spread";
import { allLines, squadZeroLoad } from "../bar-speed/squad-zero-load";
import type { Day } from "../calendar/day";
import type { Athlete } from "../record/athlete";
import { nameKey } from "../record/name-key";
import type { Plate } from "../record/plate";
import { type BaselineWindow, baselineWindow } from "../series/baseline-window";
import { grouped } from "../series/grouped";
import { addDays, gymDays } from "../series/season-start";
import type { AthleteRows, SquadIndex } from "../series/squad-index";
import { type ChosenMeasures, squadMeasures } from "./measures/chosen-measures";
import { jumpMeasure } from "./measures/jump-measure";
import { replacedLiftNotes, replacedTestNotes } from "./measures/replaced-notes";
import type { SeasonMeasure } from "./measures/season-measure";
import { type LiftSeason, liftSeason, ownLine, speedMeasure } from "./measures/speed-measure";
import type { HoldNote, MeasureKind } from "./season-hold";

/** One athlete's season, laid out by session. */
export type AthleteSeason = {
  readonly rows: AthleteRows;
  readonly details: Athlete | undefined;
  readonly window: BaselineWindow;
  /** Days with any measure that can be compared, in order. */
  readonly sessions: readonly Day[];
  readonly baselineSessions: number;
  readonly measures: readonly SeasonMeasure[];
  /** Values of each measure by session, percent, NaN where missing. */
  readonly values: readonly (readonly number[])[];
  readonly notes: readonly HoldNote[];
};

/** Lays every athlete's season out: which values, which baseline, which sessions. */
export function squadSeasons(given: {
  readonly index: SquadIndex;
  readonly athletes: readonly Athlete[];
  readonly plates: readonly Plate[];
  readonly seasonStart: Day;
  readonly baselineSessions: number;
}): readonly AthleteSeason[] {
  const { index, athletes, plates, seasonStart, baselineSessions } = given;
  const details = new Map(athletes.map((athlete) => [nameKey(athlete.athlete), athlete]));
  const { choose, testDaysOf } = squadMeasures(index, seasonStart, plates);

  const begun = [...index.athletes.values()].map((rows) => {
    const own = details.get(rows.key);
    const window = (days: ReadonlySet<Day>) =>
      baselineWindow(
        [...days].sort((a, b) => a - b),
        seasonStart,
        baselineSessions,
        own,
      );
    const anyRow = window(gymDays(rows));
    const chosen = choose(rows, { from: anyRow.from, baselineTo: anyRow.to });
    const chosenWindow = window(chosenDays(rows, chosen));
    const days = { from: chosenWindow.from, baselineTo: chosenWindow.to };
    const lift = chosen.lift === null ? null : liftSeason(rows.lifts.get(chosen.lift)!, days);
    return { rows, details: own, window: chosenWindow, days, chosen, lift };
  });

  // One lift's lines steady one another.
  const lifting = begun.flatMap(({ chosen, lift }) => (lift ? [{ key: chosen.lift, lift }] : []));
  const knowledge = new Map(
    [...grouped(lifting, ({ key }) => key)].map(([key, squad]) => [
      key,
      liftKnowledge(squad.map(({ lift }) => lift)),
    ]),
  );

  return begun.map(({ rows, details: own, window, days, chosen, lift }) => {
    const notes: HoldNote[] = [];
    const measures: SeasonMeasure[] = [];
    const add = (
      kind: MeasureKind,
      of: string,
      measure: SeasonMeasure | null,
      hasBaseline = false,
    ) => {
      const facts = { kind, of };
      if (measure) measures.push(measure);
      else if (hasBaseline) notes.push({ code: "no-falling-line", facts });
      else notes.push({ code: "measure-not-followed", facts });
    };
    if (lift) {
      const { prior, settings } = knowledge.get(chosen.lift)!;
      const measure = speedMeasure(lift, prior, settings);
      add("bar speed", lift.of, measure, lift.baselineRows.length > 0);
      notes.push(...replacedLiftNotes(rows, chosen.lift!));
    }
    const followed = [chosen.height, chosen.third?.test];
    const addJump = (kind: Parameters<typeof jumpMeasure>[0], test: string) => {
      const name = rows.jumps.get(test)![0]!.test;
      const tested = testDaysOf(rows, test);
      add(kind, test, jumpMeasure(kind, name, tested, days));
      const own = { name, days: tested };
      notes.push(...replacedTestNotes(rows, kind, own, followed, testDaysOf));
    };
    if (chosen.height !== null) addJump("jump height", chosen.height);
    if (chosen.third) addJump(chosen.third.kind, chosen.third.test);
    return laidOut({ rows, details: own, window, measures, notes });
  });
}

/** What a squad's seasons of one lift say together: spread around lines, speed at zero load. */
function liftKnowledge(squad: readonly LiftSeason[]) {
  const settings = withSquadSpread(
    squad.map((lift) => ({ rows: lift.baselineRows, line: ownLine(lift, usualLineSettings) })),
    usualLineSettings,
  );
  const prior = squadZeroLoad(
    squad.map((lift) => ownLine(lift, settings)),
    settings,
    allLines,
  );
  return { prior, settings };
}

/** Lays measures out by session. */
export function laidOut({
  rows,
  details,
  window,
  measures,
  notes,
}: Pick<AthleteSeason, "rows" | "details" | "window" | "measures" | "notes">): AthleteSeason {
  const days = new Set<Day>();
  for (const { percents } of measures) for (const day of percents.keys()) days.add(day);
  const sessions = [...days].sort((a, b) => a - b);
  return {
    rows,
    details,
    window,
    sessions,
    baselineSessions: sessions.filter((day) => day <= window.to).length,
    measures,
    values: measures.map(({ percents }) => sessions.map((day) => percents.get(day) ?? Number.NaN)),
    notes: [...notes, ...measures.flatMap((measure) => measure.notes)],
  };
}

function chosenDays(rows: AthleteRows, { lift, height, third }: ChosenMeasures): ReadonlySet<Day> {
  const days = new Set<Day>();
  if (lift !== null) addDays(rows.lifts.get(lift)!, days);
  if (height !== null) addDays(rows.jumps.get(height)!, days);
  if (third !== null) addDays(rows.jumps.get(third.test)!, days);
  return days;
}
