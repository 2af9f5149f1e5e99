import * as z from "zod/mini";
import { kept } from "../answers/kept";
import { type WeekChange, withChanges } from "../messages/week-change";
import type { Workbook } from "../workbook";

/** Weeks kept behind the latest one written: older proposals are past. */
const weeksKept = 8;
const change = z.object({
  athlete: z.string(),
  turn: z.optional(z.string()),
  leaveOut: z.optional(z.boolean()),
  block: z.optional(z.string()),
  loadKg: z.optional(z.number()),
  sets: z.optional(z.number()),
  sessions: z.optional(z.number()),
  day: z.optional(z.string()),
  contacts: z.optional(z.number()),
  stack: z.optional(z.string()),
  noRack: z.optional(z.boolean()),
});
const stored = z.record(z.string(), z.array(change));
type Stored = Readonly<Record<string, readonly WeekChange[]>>;

/** What the coach changed of the weeks written, by Monday. */
export const changesKept = kept<Stored>("week changes", stored, {});

/** The changes written for a week before, with newer ones on top, field by field. */
export function withRemembered(
  before: Stored,
  monday: string,
  newer: readonly WeekChange[],
): readonly WeekChange[] {
  return withChanges(before[monday] ?? [], newer);
}

/** Remembers what the coach changed of a week, so that writing again never puts a proposal over it. */
export function rememberChanges(
  workbook: Workbook,
  monday: string,
  changes: readonly WeekChange[],
): void {
  if (changes.length === 0) return;
  const before = changesKept.whole(workbook);
  const next = { ...before, [monday]: setBy(withChanges(before[monday] ?? [], changes)) };
  const kept = Object.keys(next).sort().slice(-weeksKept);
  changesKept.put(workbook, Object.fromEntries(kept.map((week) => [week, next[week]!])));
}

/** A week taken back is proposed afresh. */
export function forgetChanges(workbook: Workbook, monday: string): void {
  const { [monday]: gone, ...others } = changesKept.whole(workbook);
  if (gone) changesKept.put(workbook, others);
}

/** What is still set; that something was taken back need not be remembered. */
const setBy = (changes: readonly WeekChange[]): readonly WeekChange[] =>
  changes.flatMap(({ asProposed: _, ...set }) =>
    Object.keys(set).some((field) => field !== "athlete" && field !== "turn") ? [set] : [],
  );
