import type { ReadinessGap, ReadinessPart } from "./readiness";

/** A part of the day, or how many earlier readings it still needs; null when not taken that day. */
export type PartOrGap = { readonly part: ReadinessPart } | { readonly gap: ReadinessGap } | null;
