import { squadIndex } from "../../../src/coaching/series/squad-index";
import { readAthletes, readDiary, readJumps, readSets } from "../../rows/readers";
import { type Chance, chance } from "./chance";
import { squadCells } from "./squad-cells";
import {
  anotherSeason,
  drawTraits,
  type SimulatedAthlete,
  simulateAthlete,
  type Truth,
  type World,
} from "./world";

/** A squad's season: what is true of it, and what the product reads of it. */
export type SimulatedSquad = {
  readonly athletes: readonly SimulatedAthlete[];
  readonly details: ReturnType<typeof readAthletes>["records"];
  /** Rows up to a day, as a formula sees them when its date is that day. */
  readonly upTo: (day: number) => ReturnType<typeof squadIndex>;
  /** Days on which anybody trained, in order. */
  readonly days: readonly number[];
};

/** How many of a kind a squad has, and how its truth is drawn. */
export type Share = {
  readonly count: number;
  readonly truth: (sessionsPlanned: number, random: Chance) => Truth;
};

/** 1 March 2027. */
const firstDay = 20878;

/** Sessions after the baseline that every change leaves room for. */
const roomAfter = 8;
/** Weeks between two seasons. */
const weeksApart = 12;

export const all = [true, true, true] as const;

export function calm(count: number): Share {
  return { count, truth: () => ({ kind: "calm", size: 0, onset: 0, measures: all }) };
}

/** A lasting change at a session drawn evenly between the baseline's end and eight from the season's. */
export function change(
  count: number,
  kind: "step" | "slide",
  size: number,
  baseline: number,
  measures: readonly boolean[] = all,
): Share {
  return {
    count,
    truth: (planned, random) => ({
      kind,
      size,
      measures,
      onset: random.whole(baseline, Math.max(baseline, planned - roomAfter)),
    }),
  };
}

export function novices(count: number): Share {
  return { count, truth: () => ({ kind: "novice", size: 0, onset: 0, measures: all }) };
}

export type Weeks = {
  readonly weeks: readonly [number, number];
  readonly aWeek: readonly [number, number];
};
export const usualWeeks: Weeks = { weeks: [16, 20], aWeek: [1, 2] };

/** Simulates a squad, writes its rows as cells and reads the cells as the product does. */
export function simulateSquad(
  world: World,
  mix: readonly Share[],
  seed: number,
  { weeks: weekRange, aWeek: visitRange }: Weeks = usualWeeks,
  withDiary = false,
): SimulatedSquad {
  const random = chance(seed);
  const weeks = random.whole(...weekRange);
  const commonErrors = new Map<number, number>();
  for (let week = 0; week < weeks; week++)
    for (const weekday of [1, 3])
      commonErrors.set(firstDay + week * 7 + weekday, random.heavy(world.tails));
  const athletes: SimulatedAthlete[] = [];
  const past: SimulatedAthlete[] = [];
  for (const { count, truth } of mix) {
    for (let i = 0; i < count; i++) {
      const aWeek = random.whole(...visitRange);
      const planned = Math.floor(weeks * aWeek * (1 - world.missed));
      const name = `Runner ${String.fromCharCode(65 + athletes.length)}`;
      const drawn = truth(planned, random);
      const traits = drawTraits(world, random);
      athletes.push(
        simulateAthlete(world, name, traits, drawn, firstDay, weeks, aWeek, commonErrors, random),
      );
      if (!world.pastSeason) continue;
      const before = firstDay - 7 * (weeks + weeksApart);
      const level = anotherSeason(traits, random);
      const calmTruth = { kind: "calm", size: 0, onset: 0, measures: all } as const;
      past.push(
        simulateAthlete(world, name, level, calmTruth, before, weeks, aWeek, commonErrors, random),
      );
    }
  }
  const cells = squadCells([...past, ...athletes], random, withDiary);
  const rows = {
    sets: wholly(readSets(cells.sets)),
    jumps: wholly(readJumps(cells.jumps)),
    diary: withDiary ? wholly(readDiary(cells.diary)) : [],
  };
  const days = [...new Set(athletes.flatMap(({ sessions }) => sessions.map(({ day }) => day)))];
  return {
    athletes,
    details: wholly(readAthletes(cells.athletes)),
    upTo: (day) => squadIndex(rows, day),
    days: days.sort((a, b) => a - b),
  };
}

/**
 * All rows must be read, or the figures would be flattered or spoilt unseen; but for a value that the
 * reader finds implausible: such tails reach a coach's tables too, and the coach is told.
 */
function wholly<Row>(reading: {
  readonly records: readonly Row[];
  readonly issues: readonly { readonly code: string; readonly cell: string }[];
}): readonly Row[] {
  const issue = reading.issues.find(({ code }) => code !== "implausible");
  if (issue) throw new Error(`A simulated row was not read: ${issue.code} in ${issue.cell}`);
  return reading.records;
}
