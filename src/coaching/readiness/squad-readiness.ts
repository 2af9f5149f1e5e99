import { type LineSettings, usualLineSettings } from "../bar-speed/line-settings";
import { squadLift } from "../bar-speed/squad-lift";
import { lineRows } from "../bar-speed/squad-lines";
import type { Day } from "../calendar/day";
import type { TestDay } from "../jumps/test-day";
import { heightStep, testDays } from "../jumps/test-day";
import type { Plate } from "../record/plate";
import type { AthleteRows, SquadIndex } from "../series/squad-index";
import { againstLine, againstUsual } from "./against-usual";
import { diaryItems, itemByDay } from "./diary-items";
import { type Dated, pastValues, pooledSpread } from "./past-values";
import type { Readiness, ReadinessGap, ReadinessItem, ReadinessPart } from "./readiness";
import {
  moreIsWorse,
  type ReadinessSettings,
  usualReadinessSettings,
  usualSpread,
} from "./readiness-settings";
import { speedToday } from "./speed-part";
import { wordOfDay } from "./word-of-day";

/** A part of the day, or how many earlier readings it still needs; null when not taken that day. */
type PartOrGap = { readonly part: ReadinessPart } | { readonly gap: ReadinessGap } | null;

/**
 * Any day of any athlete against usual; the day left out is the index's last day. Never refuses: a
 * day with nothing to compare is `too few rows`. What the squad's rows say about ordinary spread is
 * read as of the index's last day, once.
 */
export function squadReadiness({
  index,
  plates,
  settings = usualReadinessSettings,
  lineSettings = usualLineSettings,
}: {
  readonly index: SquadIndex;
  readonly plates: readonly Plate[];
  readonly settings?: ReadinessSettings;
  readonly lineSettings?: LineSettings;
}): (athlete: string, day?: Day) => Readiness {
  const squad = squadSpreads(index, plates, settings, lineSettings);
  return (name, day = index.asOf) => {
    const rows = index.of(name);
    const found = rows
      ? [
          speedPart(rows, day, squad, settings),
          jumpPart(rows, day, plates, squad, settings),
          ...diaryItems.map((item) => diaryPart(rows, day, item, squad, settings)),
        ]
      : [];
    const parts = found.flatMap((one) => (one && "part" in one ? one.part : []));
    const scores = new Map(parts.map(({ part, z }) => [part, z]));
    const items = Object.fromEntries(diaryItems.map((item) => [item, scores.get(item) ?? null]));
    const judged = wordOfDay(
      { speed: scores.get("speed") ?? null, jump: scores.get("jump") ?? null, items },
      settings,
    );
    return {
      athlete: rows?.athlete ?? name,
      day,
      word: judged.word,
      size: judged.size,
      reason: parts.find(({ part }) => part === judged.reason) ?? null,
      parts,
      needed: found.flatMap((one) => (one && "gap" in one ? one.gap : [])),
    };
  };
}

type SquadSpreads = ReturnType<typeof squadSpreads>;

/** What the squad knows, worked out when first asked for. */
function squadSpreads(
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

/** The lift of the day with most earlier readings. */
function speedPart(
  rows: AthleteRows,
  day: Day,
  squad: SquadSpreads,
  settings: ReadinessSettings,
): PartOrGap {
  let best: PartOrGap = null;
  let most = -1;
  for (const [lift, sets] of rows.lifts) {
    const now = speedToday(sets, day, squad.lift(lift), settings);
    const of = sets[0]!.set.exercise;
    const today = sets.some((set) => set.day === day && set.loadKg !== null);
    const past = now?.past.length ?? 0;
    if (!today || past <= most) continue;
    most = past;
    const { least } = usualSpread.speed;
    const z = now
      ? againstLine(
          now.offLine,
          now.lineError,
          { past: now.past, squadSd: squad.speed(lift), leastSd: least },
          settings,
        )
      : null;
    best =
      now && z !== null
        ? {
            part: {
              part: "speed",
              of,
              unit: "m/s",
              z,
              today: now.today,
              usual: now.usual,
              pastRows: past,
            },
          }
        : { gap: { part: "speed", of, rows: settings.leastPast - past } };
  }
  return best;
}

/** The jump test of the day with most earlier readings; a height before a contact time. */
function jumpPart(
  rows: AthleteRows,
  day: Day,
  plates: readonly Plate[],
  squad: SquadSpreads,
  settings: ReadinessSettings,
): PartOrGap {
  let best: PartOrGap = null;
  let most = -1;
  for (const [test, attempts] of rows.jumps) {
    const days = testDays(attempts, plates);
    const today = days.find((one) => one.day === day);
    const values = jumpValues(days, today);
    if (!values) continue;
    const past = pastValues(values.dated, day, settings);
    const rank = past.length + (values.unit === "cm" ? 0.5 : 0);
    if (rank <= most) continue;
    most = rank;
    const of = attempts[0]!.test;
    const now = values.dated.find((one) => one.day === day)!.value;
    const usual = {
      past,
      squadSd: Math.max(squad.jump(test), values.leastSd),
      leastSd: usualSpread.jump.least,
    };
    const z = againstUsual(now, usual, settings);
    const mean = past.reduce((sum, value) => sum + value, 0) / past.length;
    best =
      z === null
        ? { gap: { part: "jump", of, rows: settings.leastPast - past.length } }
        : {
            part: {
              part: "jump",
              of,
              unit: values.unit,
              z,
              today: values.valueAt(now),
              usual: values.valueAt(mean),
              pastRows: past.length,
            },
          };
  }
  return best;
}

/** A test's values in percent on days comparable with one of them; more is better. */
function jumpValues(days: readonly TestDay[], like: TestDay | undefined) {
  if (!like) return null;
  const unit = like.heightCm !== null ? "cm" : like.contactS !== null ? "s" : null;
  if (unit === null) return null;
  const sign = unit === "cm" ? 1 : -1;
  const dated: Dated[] = [];
  let sum = 0;
  for (const { day, dropCm, heightCm, contactS } of days) {
    const value = unit === "cm" ? heightCm : contactS;
    if (value === null || !(value > 0) || dropCm !== like.dropCm) continue;
    sum += value;
    dated.push({ day, value: sign * 100 * Math.log(value) });
  }
  if (!dated.some(({ day }) => day === like.day)) return null;
  const step = unit === "cm" ? heightStep(days) : null;
  return {
    unit,
    dated,
    // Reading to a step errs by step/√12.
    leastSd: step === null ? 0 : (29 * step * dated.length) / sum,
    valueAt: (percent: number) => Math.exp((sign * percent) / 100),
  } as const;
}

function diaryPart(
  { diary }: AthleteRows,
  day: Day,
  item: ReadinessItem,
  squad: SquadSpreads,
  settings: ReadinessSettings,
): PartOrGap {
  const values = itemByDay(diary, item);
  const today = values.find((one) => one.day === day);
  if (!today) return null;
  const past = pastValues(values, day, settings);
  const usual = { past, squadSd: squad.item(item), leastSd: usualSpread[item].least };
  const distance = againstUsual(today.value, usual, settings);
  if (distance === null) {
    return { gap: { part: item, of: "", rows: settings.leastPast - past.length } };
  }
  return {
    part: {
      part: item,
      of: "",
      unit: item === "sleep" ? "h" : "points",
      z: moreIsWorse.has(item) ? -distance : distance,
      today: today.value,
      usual: past.reduce((sum, value) => sum + value, 0) / past.length,
      pastRows: past.length,
    },
  };
}

function once<Key, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const known = new Map<Key, Value>();
  return (key) => {
    if (!known.has(key)) known.set(key, work(key));
    return known.get(key)!;
  };
}
