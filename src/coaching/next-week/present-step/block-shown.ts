import { type Block, isSame, rotation } from "../../blocks/block";
import { halfSetsOf, restartAfter } from "../../blocks/restart";
import { type Day, mondayOf } from "../../calendar/day";
import { blockOf, type LiftSession } from "./lift-session";
import type { PlannedLoad } from "./planned-loads";

/** Which block of the rotation sessions show, and since when. */
export type BlockShown = {
  readonly block: Block;
  /** The session that tells it. */
  readonly like: LiftSession;
  /** Place of the first session of the latest run at this block and load. */
  readonly since: number;
  /** Sessions whose few sets are by plan: they do not say which block of the rotation it is. */
  readonly isFew: (at: number) => boolean;
  /** Of so many planned sets those asked for of the last session: four, where four are done time and again. */
  readonly setsAsked: (sets: number) => number;
  /** Four, where no session of the last twelve weeks had more and several had as many; no limit otherwise. */
  readonly mostSets: number;
};

/**
 * Reads the block from the last session whose sets tell it.
 *
 * @param sessions of one athlete's lift, in order, at least one
 * @param plans what each of them stands for, and later ones
 * @param plannedSets sets of a block that a day's week plans
 */
export function blockShown(
  sessions: readonly LiftSession[],
  plans: readonly PlannedLoad[],
  plannedSets: (block: Block, day: Day) => number,
  sessionsAWeek: number,
): BlockShown {
  const end = sessions.length - 1;
  const last = sessions[end]!;
  const { loadKg } = plans[end]!;
  const isFew = fewByPlan(sessions, plans, plannedSets);
  // A lighter week says nothing of the plan's repetitions.
  const isLight = (at: number) => ["light", "extra"].includes(plans[at]!.less ?? "");
  const samePlan = (at: number) =>
    plans[at]!.loadKg === loadKg &&
    (sessions[at]!.reps === last.reps || isLight(at) || isLight(end));
  const tellsNothing = (at: number) => isFew(at) || isBetween(sessions[at]!);
  let shown = end;
  while (shown > 0 && tellsNothing(shown) && samePlan(shown - 1)) shown--;
  const back = halvedFrom(sessions, shown, sessionsAWeek);
  // Fewer sets in the last week before time off, as before its race, are not the block that was halved.
  const before =
    back > 0 ? blockShown(sessions.slice(0, back), plans, plannedSets, sessionsAWeek) : null;
  const isHalved = before !== null && isHalfOf(before.block, sessions[shown]!);
  const like = isHalved ? before.like : sessions[shown]!;
  const block = isHalved ? before.block : blockOf(like);
  const sameStep = (at: number) =>
    samePlan(at) && (tellsNothing(at) || isSame(blockOf(sessions[at]!), block));
  let since = end;
  while (since > 0 && sameStep(since - 1)) since--;
  // A race's week of few sets before the first that tells the block is of the one before it, at its load.
  if (since > 0 && samePlan(since - 1)) while (since < end && tellsNothing(since)) since++;
  // Four sets time and again are what is asked for, not five with one missed.
  const isUsual = isBetween(last) && sessions[end - 1]?.sets === last.sets;
  const mostSets = foursAreMost(sessions) ? fourSets : Number.POSITIVE_INFINITY;
  return {
    block,
    like,
    since,
    isFew,
    setsAsked: (sets) => Math.min(sets, isUsual ? last.sets : mostSets),
    mostSets,
  };
}

/** Of each session, whether its few sets are by plan. A slow day takes load off, no sets: it shows the block as others do. */
export function fewByPlan(
  sessions: readonly LiftSession[],
  plans: readonly PlannedLoad[],
  plannedSets: (block: Block, day: Day) => number,
): (at: number) => boolean {
  const fullest = rotation[0]!;
  return (at) =>
    plannedSets(fullest, sessions[at]!.day) < fullest.sets || withFewSets.includes(plans[at]!.less);
}
const withFewSets: readonly PlannedLoad["less"][] = ["eased", "light", "noted", "extra"];

/** Four sets lie between the blocks: those before at the same load show whether of three or of five. */
const isBetween = ({ sets }: LiftSession) => sets === fourSets;
const fourSets = 4;
/** So many sessions of four say that a coach asks for no fifth, over so many days (common practice, no source). */
const timesFour = 4;
const foursDays = 84;

/** Whether four sets are what a coach asks for where the rotation has five. */
function foursAreMost(sessions: readonly LiftSession[]): boolean {
  const last = sessions[sessions.length - 1]!;
  const late = sessions.filter(({ day }) => day > last.day - foursDays);
  return late.every(({ sets }) => sets <= fourSets) && late.filter(isBetween).length >= timesFour;
}

/** Place of the first session after time off in the week of one at a place, where it asks for half the sets; -1 for none. */
function halvedFrom(sessions: readonly LiftSession[], at: number, sessionsAWeek: number): number {
  const week = mondayOf(sessions[at]!.day);
  return sessions.findIndex(
    ({ day, gap }) => mondayOf(day) === week && restartAfter(gap, sessionsAWeek)?.halfSets,
  );
}

/** Half the sets of the first week after time off are of the block before it. */
const isHalfOf = (block: Block, { sets, reps }: LiftSession): boolean =>
  reps === block.reps && sets === halfSetsOf(block.sets);
