import type { AthleteState } from "./athlete-state";

/** Sore, unwell, or well below usual on the last day. */
export const isStrained = ({
  soreness,
  unwellDay,
  lastWord,
}: Pick<AthleteState, "soreness" | "unwellDay" | "lastWord">): boolean =>
  soreness !== null || unwellDay !== null || lastWord === "well below usual";
