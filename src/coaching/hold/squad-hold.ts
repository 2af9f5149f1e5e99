import type { Day } from "../calendar/day";
import type { Athlete } from "../record/athlete";
import { nameKey } from "../record/name-key";
import type { Plate } from "../record/plate";
import type { SquadRules } from "../record/squad-rules";
import { seasonStart as usualSeasonStart } from "../series/season-start";
import type { SquadIndex } from "../series/squad-index";
import { seasonLimit } from "./evidence/season-limit";
import { judgedSeason } from "./judged-season";
import { newToolNoted } from "./measures/new-tool-noted";
import type { HoldNote, SeasonHold } from "./season-hold";
import { mayShare, sharedDates } from "./shared-change/shared-dates";
import { squadSeasons } from "./squad-seasons";
import { squadYardsticks } from "./yardsticks/squad-yardsticks";

/** A smaller serial correlation is allowed for, and not said. */
const worthSaying = 0.1;

/** The season of a whole squad: what is common to all, and each athlete on asking. */
export type SquadHold = {
  readonly seasonStart: Day;
  /** Never refuses: an athlete without rows is `too few rows` and is told what is missing. */
  readonly of: (athlete: string) => SeasonHold;
  /** All athletes with rows, in order of name. */
  readonly all: readonly SeasonHold[];
  /** What speaks of the whole squad: serial correlation, many changes from one date. */
  readonly notes: readonly HoldNote[];
};

/**
 * Judges every athlete's season on the index's last day: is each holding the speed, power and
 * strength of the baseline. The squad's rows steady each athlete's wobble and line.
 */
export function squadHold({
  index,
  plates,
  athletes,
  rules,
  seasonStart = usualSeasonStart(index),
}: {
  readonly index: SquadIndex;
  readonly plates: readonly Plate[];
  /** Rows of the Athletes table, for baseline dates, experience, sessions a week; may be empty. */
  readonly athletes: readonly Athlete[];
  readonly rules: SquadRules;
  /** Default: first day after the squad's last gap of more than eight weeks. */
  readonly seasonStart?: Day;
}): SquadHold {
  const seasons = squadSeasons({
    index,
    athletes,
    plates,
    seasonStart,
    baselineSessions: rules.baselineSessions,
  });
  const yardsticks = squadYardsticks(seasons);
  const judged = seasons.map((season) => judgedSeason(season, yardsticks, rules, index.asOf));
  const shared = sharedDates(judged);
  const all = judged.map((hold) => ({
    ...hold,
    notes: [
      ...hold.notes,
      ...newToolNoted(hold, index.of(hold.athlete)!),
      ...shared.filter(({ facts }) => mayShare(hold, facts)),
    ],
  }));
  const byKey = new Map(all.map((hold) => [nameKey(hold.athlete), hold]));
  const serial = Math.round(100 * yardsticks.serial) / 100;
  return {
    seasonStart,
    of: (athlete) => byKey.get(nameKey(athlete)) ?? withoutRows(athlete, index.asOf, rules),
    all,
    notes: [
      ...(serial >= worthSaying
        ? [{ code: "serial-correlation", facts: { correlation: serial } }]
        : []),
      ...shared,
    ],
  };
}

function withoutRows(athlete: string, asOf: Day, rules: SquadRules): SeasonHold {
  return {
    athlete,
    asOf,
    word: "too few rows",
    sinceDay: null,
    sinceFrom: null,
    sinceTo: null,
    value: null,
    measures: [],
    visibleFall: null,
    evidenceLow: 0,
    evidenceHigh: 0,
    limit: seasonLimit(rules.falseFlagRate, rules.seasonWeeks, 1),
    baseline: { from: null, to: null, sessions: 0, own: false },
    sessions: [],
    needed: [],
    notes: [{ code: "no-rows", facts: { athlete } }],
  };
}
