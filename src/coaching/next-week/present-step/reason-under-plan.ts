import type { Day } from "../../calendar/day";
import { harderThanPlan } from "./harder-than-plan";
import type { LiftSession } from "./lift-session";

/** What a session's load is judged by. */
export type LiftedDay = Omit<LiftSession, "all" | "work" | "isBuiltUp" | "isHeaviest">;

/**
 * Why a day asked for less than its plan: a slow day, eased for or after a race, a lighter week, as noted
 * beside a set, harder than the plan though lighter, taken down within the day, or besides the
 * week as it was written.
 */
export type LessOn = "slow" | "eased" | "light" | "noted" | "heavy" | "down" | "extra";
/** The same as the rows of a day tell it by themselves; "may not" where what the athlete may do was limited. */
export type AskedLess = Exclude<LessOn, "light" | "heavy" | "down" | "extra"> | "may not" | null;

/** A lighter week is one (common practice, no source). */
export const lightDays = 7;

/** A session under its plan, or taken down from it within the day, and those it is seen beside. */
export type UnderPlan = {
  readonly session: LiftedDay;
  /** As the rows of its day tell it. */
  readonly asked: AskedLess;
  readonly planKg: number;
  /** Begun under its plan. */
  readonly isUnder: boolean;
  readonly isDown: boolean;
  readonly after: LiftedDay | undefined;
  /** The last session at its plan. */
  readonly whole: LiftedDay;
  /** Most sets at the present plan. */
  readonly fullSets: number;
  /** Besides the sessions of the written week, all of which were done. */
  readonly isExtra: boolean;
  /** First day of a lighter week under it; null outside one. */
  readonly lightFrom: Day | null;
};

/** Why less was lifted, from the day's own rows, then from the sessions around it; null where nothing tells. */
export function reasonUnderPlan(given: UnderPlan): LessOn | "may not" | null {
  const { session, asked, isUnder, isDown, whole, fullSets, lightFrom } = given;
  const { day, sets } = session;
  if (isUnder && given.isExtra && asked !== "may not") return "extra";
  const isLight = isUnder && sets < fullSets && day - (lightFrom ?? day) < lightDays;
  if (isLight && (asked === null || asked === "noted")) return "light";
  if (asked !== null) return asked;
  // Back at its plan within the week, it was of that day, whoever judged it, and by what.
  if (isUnder && isBackWithinWeek(given)) return "slow";
  if (isUnder && harderThanPlan(session, whole)) return "heavy";
  return isDown ? "down" : null;
}

const isBackWithinWeek = ({ session: { day }, after, planKg }: UnderPlan) =>
  after !== undefined && after.loadKg >= planKg && after.day - day <= lightDays;
