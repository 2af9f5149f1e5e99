import type { LineSettings } from "../bar-speed/line-settings";
import { squadLift } from "../bar-speed/squad-lift";
import { latestOfAll } from "../bar-speed/squad-lines";
import { testDays } from "../jumps/test-day";
import type { Plate } from "../record/plate";
import { remembered } from "../series/remembered";
import type { SquadIndex } from "../series/squad-index";
import { diaryItems, itemByDay } from "./diary-items";
import { jumpValues } from "./jump-values";
import { type Dated, pastDays, pooledSpread } from "./past-values";
import type { ReadinessItem } from "./readiness";
import { type ReadinessSettings, usualSpread } from "./readiness-settings";
import { speedToday } from "./speed-today";
import { squadTies } from "./squad-ties";

export type SquadSpreads = ReturnType<typeof squadSpreads>;

/** What the squad knows, worked out when first asked for. */
export function squadSpreads(
  index: SquadIndex,
  plates: readonly Plate[],
  settings: ReadinessSettings,
  lineSettings: LineSettings,
) {
  const athletes = [...index.athletes.values()];
  // A day is no yardstick of itself.
  const before = index.asOf;
  const lift = remembered((name: string) =>
    squadLift(latestOfAll(index, name), index.asOf, lineSettings),
  );
  const speeds = remembered((name: string) =>
    athletes.map((athlete) => {
      const sets = athlete.lifts.get(name) ?? [];
      const last = sets[sets.length - 1];
      return (last && speedToday(sets, last.day, lift(name), settings)?.past) ?? [];
    }),
  );
  const jumps = remembered((test: string) =>
    athletes.map((athlete) => {
      const days = testDays(athlete.jumps.get(test) ?? [], plates);
      const values = jumpValues(days, days[days.length - 1]);
      return values ? pastDays(values.dated, before, settings) : [];
    }),
  );
  const items = remembered((item: ReadinessItem) =>
    athletes.map(({ diary }) => pastDays(itemByDay(diary, item), before, settings)),
  );
  const ties = remembered((_: "squad") =>
    squadTies(
      athletes.map(({ lifts, jumps: tests }, at) => {
        return {
          speed: speeds(longest(lifts))[at]!,
          jump: jumps(longest(tests))[at]!,
          items: new Map(diaryItems.map((item) => [item, items(item)[at]!])),
        };
      }),
      settings,
    ),
  );
  return {
    lift,
    ties: () => ties("squad"),
    speed: remembered((name: string) => pooledSpread(values(speeds(name)), usualSpread.speed.sd)),
    jump: remembered((test: string) => pooledSpread(values(jumps(test)), usualSpread.jump.sd)),
    item: remembered((item: ReadinessItem) =>
      pooledSpread(values(items(item)), usualSpread[item].sd),
    ),
  };
}

const values = (squad: readonly (readonly Dated[])[]) =>
  squad.map((days) => days.map(({ value }) => value));

/** The lift or test with most rows; one nobody has when there is none. */
function longest(rows: ReadonlyMap<string, readonly unknown[]>): string {
  let name = "";
  let most = 0;
  for (const [one, { length }] of rows) {
    if (length <= most) continue;
    name = one;
    most = length;
  }
  return name;
}
