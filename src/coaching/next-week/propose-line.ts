import { type Day, mondayOf } from "../calendar/day";
import { nameKey } from "../record/name-key";
import type { LineReason } from "./line-reason";
import { inTraining } from "./next-step/gap-before";
import { proposeWeek } from "./propose-week";
import type {
  LineChange,
  LineGiven,
  OutlookWeek,
  ProposedLine,
  ProposedSession,
  ProposedWeek,
} from "./proposed-line";
import { asDone, type Lifted } from "./week/as-done";

export type { LineChange, LineReason, ProposedLine, ProposedSession };

/** Weeks a coach is shown where an athlete would be, the proposed one among them. */
const weeksShown = 4;

/**
 * A week's sets for one athlete, with every reason. A week further ahead is proposed from the weeks
 * before it, each taken to be lifted as it is proposed or as the coach has decided: holds, steps,
 * race weeks and the way back go on as they will be proposed when their turn comes, and the first
 * reason says that they are counted on. So do the weeks shown ahead of the proposed one.
 */
export function proposeLine(given: LineGiven): ProposedLine {
  const { monday } = given;
  const key = nameKey(given.name);
  // Rows of days to come are no rows yet, though the weeks counted on reach past them.
  const own = <Row extends { readonly athlete: string; readonly day: Day }>(rows: readonly Row[]) =>
    rows.filter(({ athlete, day }) => day <= given.asOf && nameKey(athlete) === key);
  const { rows } = given;
  const lifted = own(rows.sets);
  let at: LineGiven = { ...given, rows: { ...rows, sets: lifted, jumps: own(rows.jumps) } };
  for (let week = firstToCome(at); week < monday; week += 7) {
    at = asDone({ ...at, monday: week }, weekDecided(at, week));
  }
  const line = proposeWeek({ ...at, monday });
  const { reasons, sessions } = line;
  const counted = at.rows.sets.length > lifted.length;
  return {
    ...line,
    reasons: counted && sessions.length > 0 ? onTerms(reasons) : reasons,
    outlook: sessions.length > 0 ? weeksAhead({ ...at, monday }, line) : [],
  };
}

/** Monday of the first week whose sessions are still to come: this week's own while none was lifted. */
function firstToCome({ rows, asOf }: LineGiven): Day {
  const monday = mondayOf(asOf);
  let lastDay = Number.NEGATIVE_INFINITY;
  for (const { day, kind } of rows.sets) {
    if (kind === "work" && day > lastDay) lastDay = day;
  }
  return lastDay < monday && inTraining(lastDay, asOf) ? monday : monday + 7;
}

/** A week other than the one asked for, as the coach has decided of it. */
function weekDecided({ change: _, ...given }: LineGiven, monday: Day): Lifted {
  const decided = given.decided?.(monday);
  return decided === "left out"
    ? nothing
    : asTyped(proposeWeek({ ...given, monday, ...(decided && { change: decided }) }), {
        ...given,
        monday,
      });
}

const nothing: Lifted = { sessions: [], step: null };

/** A week's sessions as they stand in the tab, where the coach has typed over them or deleted one. */
function asTyped({ sessions, step }: ProposedWeek, { typed, monday }: LineGiven): Lifted {
  const byHand = typed?.(monday);
  if (byHand === undefined) return { sessions, step };
  return {
    step,
    sessions: sessions.flatMap((one, at) => {
      const typedOver = byHand.get(at + 1) ?? {};
      if (typedOver === "deleted") return [];
      const { loadKg = one.loadKg, sets = one.sets, reps = one.reps } = typedOver;
      const block = reps === one.reps ? one.block : { sets, reps };
      return [{ ...one, loadKg, sets, reps, block }];
    }),
  };
}

function weeksAhead(given: LineGiven, line: ProposedWeek): readonly OutlookWeek[] {
  let at = given;
  let week: Lifted = given.isLeftOut ? nothing : asTyped(line, given);
  const ahead: OutlookWeek[] = [];
  for (let count = 0; count < weeksShown; count++) {
    const { monday } = at;
    const told = new Set<string>();
    for (const { exercise, onLadder, block, sets, loadKg, reserve } of week.sessions) {
      if (!onLadder || told.has(exercise)) continue;
      told.add(exercise);
      ahead.push({ monday, exercise, block, sets, loadKg, reserve });
    }
    at = { ...asDone(at, week), monday: monday + 7 };
    week = weekDecided(at, monday + 7);
  }
  return ahead;
}

/** Nothing has moved well or been done yet: what follows is said on those terms. */
function onTerms(reasons: readonly LineReason[]): readonly LineReason[] {
  return [{ code: "ahead", facts: {} }, ...reasons.map(stepAhead)];
}

const stepAhead = (one: LineReason): LineReason => ({
  ...one,
  ...(one.code === "step-up" && { code: "step-ahead" }),
  ...(one.of && { of: one.of.map(stepAhead) }),
});
