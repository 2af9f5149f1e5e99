import type { LineSettings } from "../bar-speed/line-settings";
import { squadLift } from "../bar-speed/squad-lift";
import { lineRows } from "../bar-speed/squad-lines";
import { testDays } from "../jumps/test-day";
import type { Plate } from "../record/plate";
import type { SquadIndex } from "../series/squad-index";
import { itemByDay } from "./diary-items";
import { jumpValues } from "./jump-values";
import { pastValues, pooledSpread } from "./past-values";
import type { ReadinessItem } from "./readiness";
import { type ReadinessSettings, usualSpread } from "./readiness-settings";
import { speedToday } from "./speed-today";

export type SquadSpreads = ReturnType<typeof squadSpreads>;

/** What the squad knows, worked out when first asked for. */
export function squadSpreads(
  index: SquadIndex,
  plates: readonly Plate[],
  settings: ReadinessSettings,
  lineSettings: LineSettings,
) {
  const athletes = [...index.athletes.values()];
  const upTo = index.asOf + 1;
  const lift = once((name: string) =>
    squadLift(
      athletes.map((athlete) => {
        const sets = athlete.lifts.get(name) ?? [];
        return lineRows(sets, sets[sets.length - 1]?.setting);
      }),
      index.asOf,
      lineSettings,
    ),
  );
  return {
    lift,
    speed: once((name: string) =>
      pooledSpread(
        athletes.map((athlete) => {
          const sets = athlete.lifts.get(name) ?? [];
          const last = sets[sets.length - 1];
          if (!last) return [];
          return speedToday(sets, last.day, lift(name), settings)?.past ?? [];
        }),
        usualSpread.speed.sd,
      ),
    ),
    jump: once((test: string) =>
      pooledSpread(
        athletes.map((athlete) => {
          const days = testDays(athlete.jumps.get(test) ?? [], plates);
          const values = jumpValues(days, days[days.length - 1]);
          return values ? pastValues(values.dated, upTo, settings) : [];
        }),
        usualSpread.jump.sd,
      ),
    ),
    item: once((item: ReadinessItem) =>
      pooledSpread(
        athletes.map(({ diary }) => pastValues(itemByDay(diary, item), upTo, settings)),
        usualSpread[item].sd,
      ),
    ),
  };
}

function once<Key, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const known = new Map<Key, Value>();
  return (key) => {
    if (!known.has(key)) known.set(key, work(key));
    return known.get(key)!;
  };
}
