import type { Day } from "../../calendar/day";
import { heightStep } from "../../jumps/height-step";
import { isOfOne, type TestDay } from "../../jumps/test-day";
import type { HoldNote, MeasureKind } from "../season-hold";
import { earlierRuns } from "./earlier-runs";
import {
  commonest,
  logScale,
  type SeasonDays,
  type SeasonMeasure,
  stretchedBaseline,
} from "./season-measure";
import { settingChanged } from "./setting-notes";

/** What a test day says of each kind of value. */
export const valueOfKind: Record<
  Exclude<MeasureKind, "bar speed">,
  (day: TestDay) => number | null
> = {
  "jump height": ({ heightCm }) => heightCm,
  "reactive strength": ({ reactiveStrength }) => reactiveStrength,
  "contact time": ({ contactS }) => contactS,
};

/**
 * A jump test as a season's measure on a log scale; contact time counts downward, a longer contact is
 * a loss. Days from another drop height than most of the baseline are not compared, and said; nor is one
 * value a day, which may be the best of several, with the mean of several, where the baseline has but one kind.
 *
 * @param test as the coach writes it
 * @returns null when no day of the baseline has the value
 */
export function jumpMeasure(
  kind: Exclude<MeasureKind, "bar speed">,
  test: string,
  all: readonly TestDay[],
  given: SeasonDays,
): SeasonMeasure | null {
  const value = valueOfKind[kind];
  const { from } = given;
  const season = all.filter((day) => day.day >= from && (value(day) ?? 0) > 0);
  const { baselineTo } = stretchedBaseline(
    season.map(({ day }) => day),
    given,
  );
  const baseline = season.filter(({ day }) => day <= baselineTo);
  if (baseline.length === 0) return null;
  const usualDrop = commonest(baseline.map(({ dropCm }) => dropCm)) ?? null;
  const dropped = (all: readonly TestDay[]) => all.filter(({ dropCm }) => dropCm === usualDrop);
  const others = season.filter(({ dropCm }) => dropCm !== usualDrop);
  const kinds = new Set(dropped(baseline).map(isOfOne));
  const compared = (day: TestDay) => kinds.has(isOfOne(day));
  const days = dropped(season).filter(compared);
  const uncompared = dropped(season).filter((day) => !compared(day));
  const scale = logScale(kind === "contact time");
  const percents = new Map<Day, number>();
  for (const day of days) percents.set(day.day, scale.percentOf(value(day)!));

  const before = dropped(all).filter(
    (day) => day.day < from && (value(day) ?? 0) > 0 && compared(day),
  );

  const notes: HoldNote[] = [];
  if (others.length > 0) {
    notes.push({
      code: "drop-height-changed",
      facts: { test, sessions: others.length, sinceDay: others[0]!.day, usualCm: usualDrop ?? "" },
    });
  }
  if (uncompared.length > 0) {
    const how = { before: days[0]!.attempts, after: uncompared[0]!.attempts, of: test };
    notes.push(
      settingChanged(
        uncompared.map(({ day }) => day),
        { what: "attempts", ...how },
      ),
    );
  }
  const notRead = all.reduce(
    (sum, { day, heightsNotRead }) => sum + (day >= from ? heightsNotRead : 0),
    0,
  );
  if (notRead > 0) notes.push({ code: "heights-not-read", facts: { test, attempts: notRead } });
  const step = kind === "jump height" ? heightStep(days) : null;
  const usualHeights = baseline.map((day) => value(day)!);
  const meanHeight = usualHeights.reduce((sum, height) => sum + height, 0) / usualHeights.length;
  return {
    kind,
    of: test,
    percents,
    earlier: earlierRuns(
      before.map((day) => ({ day: day.day, percent: scale.percentOf(value(day)!) })),
    ),
    loadErrors: null,
    stepPercent: (100 * (step ?? 0)) / meanHeight,
    valueAt: scale.valueAt,
    plainPercent: scale.plainPercent,
    notes,
  };
}
