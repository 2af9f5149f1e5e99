import type { Day } from "../calendar/day";
import type { SquadRules } from "../record/squad-rules";
import { onsetRange } from "./evidence/onset-range";
import { seasonLimit } from "./evidence/season-limit";
import { suddenChange } from "./evidence/sudden-change";
import { visibleFall } from "./evidence/visible-fall";
import { type WordOfSeason, wordOfSeason } from "./evidence/word-of-season";
import { fallenValue, holdMeasure, valueThatMoved } from "./hold-measure";
import { type HoldSettings, usualHoldSettings } from "./hold-settings";
import { plannedSessions } from "./measures/planned-sessions";
import type { HoldMeasure, HoldNote, HoldWord, SeasonHold } from "./season-hold";
import { missingRows, rowNotes } from "./season-notes";
import type { AthleteSeason } from "./squad-seasons";
import { type WatchedSeason, watchedSeason } from "./watched-season";
import { oldAfterDays } from "./word-caveats";
import type { SquadYardsticks } from "./yardsticks/squad-yardsticks";

/** Reading to a step errs by step/√12, uniform within it. */
const stepError = 0.29;

/** One athlete's season judged on its last session, with everything a reader may ask about it. */
export function judgedSeason(
  season: AthleteSeason,
  yardsticks: SquadYardsticks,
  rules: SquadRules,
  asOf: Day,
  settings: HoldSettings = usualHoldSettings,
): SeasonHold {
  const { sessions, baselineSessions, window, rows } = season;
  const planned = plannedSessions(season, rules.seasonWeeks);
  const levels = yardsticks.levelsOf(season);
  const watched = watchedSeason(
    season.measures.map(({ kind, stepPercent, loadErrors, earlier }, m) => ({
      values: season.values[m]!,
      earlier,
      level: levels[m]!,
      squadError: Math.max(yardsticks.errorOf(kind), stepError * stepPercent),
      ...(loadErrors ? { loadError: sessions.map((day) => loadErrors.get(day) ?? 0) } : {}),
    })),
    baselineSessions,
    planned,
    { ...settings, serial: yardsticks.serial, betweenMeasures: yardsticks.between },
  );
  const limit = seasonLimit(rules.falseFlagRate, planned, watched.measures.length);
  const judged = wordOfSeason(watched, limit);
  const { evidence } = judged;
  const sudden = judged.word === "holding" ? suddenChange(watched) : null;
  const word = sudden?.word ?? judged.word;
  const since = sudden?.since ?? judged.since;
  const onsets = sudden ? ([sudden.lastBefore, sudden.since] as const) : onsetsOf(judged);
  const measures = watched.measures.map((_, m) => holdMeasure(season, watched, m, since));
  const fall = word === "too few rows" ? null : visibleFall(watched);
  const steady = () =>
    fallenValue(measures, fall) ?? valueThatMoved(stillRead(measures, season, watched), word);
  const moved = () => (word === "holding" ? steady() : valueThatMoved(measures, word));
  const value = sudden ? measures[sudden.measure]! : moved();
  const notes: HoldNote[] = [...season.notes, ...rowNotes(season, watched, rules)];
  if (sudden) notes.push({ code: "sudden-change", facts: { kind: value!.kind, of: value!.of } });
  return {
    athlete: rows.athlete,
    asOf,
    word: spoken(word, season),
    sinceDay: since === null ? null : sessions[since]!,
    sinceFrom: onsets ? sessions[onsets[0]]! : null,
    sinceTo: onsets ? sessions[onsets[1]]! : null,
    value,
    measures,
    visibleFall: fall,
    evidenceLow: evidence?.low.total ?? 0,
    evidenceHigh: evidence?.high.total ?? 0,
    limit,
    baseline: {
      from: baselineSessions > 0 ? sessions[0]! : null,
      to: baselineSessions > 0 ? sessions[baselineSessions - 1]! : null,
      sessions: baselineSessions,
      own: window.own,
    },
    sessions: sessions.map((day, s) => ({
      day,
      inBaseline: s < baselineSessions,
      percents: percentsOf(season, watched, s),
    })),
    needed: word === "too few rows" ? missingRows(season, watched, rules) : [],
    notes,
  };
}

/** Between which sessions a lasting change began; null where there is none. */
function onsetsOf({ word, evidence }: WordOfSeason): readonly [number, number] | null {
  if (evidence === null || (word !== "slipping" && word !== "rising")) return null;
  return onsetRange(word === "slipping" ? evidence.low.byOnset : evidence.high.byOnset);
}

/** What each measure read in a session, percent from its baseline; null where it read nothing. */
const percentsOf = (
  season: AthleteSeason,
  watched: WatchedSeason,
  session: number,
): readonly (number | null)[] =>
  watched.measures.map(({ values, baselineMean, place }) => {
    const value = values[session]!;
    return Number.isNaN(value) ? null : season.measures[place]!.plainPercent(value - baselineMean);
  });

/** The measures read of late, all where none was: a figure of weeks ago says nothing of who holds now. */
function stillRead(
  measures: readonly HoldMeasure[],
  { sessions }: AthleteSeason,
  watched: WatchedSeason,
): readonly HoldMeasure[] {
  const recent = measures.filter((_, m) => {
    const { values } = watched.measures[m]!;
    const from = sessions[sessions.length - 1]! - oldAfterDays;
    return sessions.some((day, s) => day >= from && !Number.isNaN(values[s]!));
  });
  return recent.length > 0 ? recent : measures;
}

/** A novice is expected to rise: holding is `level`. */
function spoken(word: WordOfSeason["word"], { details }: AthleteSeason): HoldWord {
  return word === "holding" && details?.experience === "novice" ? "level" : word;
}
