import type { Plate } from "../../record/plate";

/** How the bar moved for a coach without a device, or that the athlete is ill. */
export type ByEye = "fast" | "usual" | "slow" | "ill";

/** What was seen of today's marker or first set: one list of speeds a set, in order, or by eye. */
export type SeenToday =
  | { readonly kind: "nothing" }
  | { readonly kind: "speeds"; readonly sets: readonly (readonly number[])[] }
  | { readonly kind: "by eye"; readonly word: ByEye };

/** The plan, and the load under it that the gym's plates make; null where they make the plan, or are not listed. */
type Planned = { readonly loadKg: number; readonly builtKg: number | null };
type AsPlanned = Planned & {
  readonly kind: "as planned";
  readonly above: boolean;
  /** m/s over usual, where it is so much that another load or a misread set is likelier than a good day. */
  readonly doubtful?: number;
};
/** Slower than usual, and the plan is the bar alone or less. */
type NothingLighter = {
  readonly kind: "nothing lighter";
  readonly loadKg: number;
  readonly slower: number | null;
};
type Lighter = {
  readonly kind: "lighter";
  readonly loadKg: number;
  /** Real share off the plan, after rounding to loads that exist. */
  readonly share: number;
  readonly slower: number | null;
  readonly setsLeft: number;
  /** kg of each plate on one side; empty when plates were not given. */
  readonly plates: readonly number[];
};
type NoHeavyWork = { readonly kind: "no heavy work"; readonly slower: number | null };

/** What a set leaves of the plan once nothing is in doubt. */
export type LeftOfPlan = AsPlanned | NothingLighter | Lighter | NoHeavyWork;

/** The day's decision. `slower` is m/s under usual, null when judged by eye. */
export type DayDecision =
  | LeftOfPlan
  | (Planned & {
      readonly kind: "before the set";
      /** Slowest speed that keeps the plan, m/s; null without a usual speed. */
      readonly keepsFrom: number | null;
    })
  | {
      readonly kind: "repeat the marker";
      readonly slower: number;
      /** What to lift if the repeated marker says the same. */
      readonly ifSame: Lighter | NoHeavyWork;
    };

export type DayPlan = {
  readonly plannedKg: number;
  readonly setsLeft: number;
  /** Usual speed of the set that was seen, m/s; null for a squad without a device. */
  readonly usualSpeed: number | null;
  /** Low end of this athlete's usual speeds, m/s: a set at or under it is unusual; null judges by bands alone. */
  readonly lowSpeed?: number | null;
  readonly stepKg: number;
  /** Share off a clearly slow day, and when judged slow by eye, fraction. */
  readonly usualDrop: number;
  /** The bar, and plates of the gym: without any, loads are told by the step; null where no bar is known. */
  readonly gym: { readonly plates: readonly Plate[]; readonly barKg: number } | null;
};
