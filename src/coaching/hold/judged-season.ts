import type { Day } from "../calendar/day";
import type { SquadRules } from "../record/squad-rules";
import { changeSince } from "./change-since";
import { evidenceLimit } from "./evidence-limit";
import { type HoldSettings, usualHoldSettings } from "./hold-settings";
import { onsetRange } from "./onset-range";
import { plannedSessions } from "./planned-sessions";
import type { HoldMeasure, HoldNote, HoldWord, MissingRows, SeasonHold } from "./season-hold";
import type { AthleteSeason } from "./squad-seasons";
import type { SquadYardsticks } from "./squad-yardsticks";
import { suddenChange } from "./sudden-change";
import { visibleFall } from "./visible-fall";
import { type WatchedSeason, watchedSeason } from "./watched-season";
import { wordOfSeason } from "./word-of-season";

/** Reading to a step errs by step/√12, uniform within it. */
const stepError = 0.29;
/** Sessions after the baseline before a word is given. */
const leastAfter = 2;

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
  const watched = watchedSeason(
    season.measures.map(({ kind, stepPercent, loadErrors }, m) => ({
      values: season.values[m]!,
      squadError: Math.max(yardsticks.errorOf(kind), stepError * stepPercent),
      ...(loadErrors ? { loadError: sessions.map((day) => loadErrors.get(day) ?? 0) } : {}),
    })),
    baselineSessions,
    planned,
    { ...settings, serial: yardsticks.serial },
  );
  const limit = evidenceLimit(rules.falseFlagRate, planned);
  const judged = wordOfSeason(watched, limit);
  const { evidence } = judged;
  const sudden = judged.word === "holding" ? suddenChange(watched) : null;
  const word = sudden?.word ?? judged.word;
  const since = sudden?.since ?? judged.since;
  const onsets = sudden
    ? ([sudden.lastBefore, sudden.since] as const)
    : word === "slipping"
      ? evidence && onsetRange(evidence.low.byOnset)
      : word === "rising"
        ? evidence && onsetRange(evidence.high.byOnset)
        : null;
  const measures = watched.measures.map((_, m) => holdMeasure(season, watched, m, since));
  const value = sudden ? measures[sudden.measure]! : valueThatMoved(measures, word);
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
    visibleFall: word === "too few rows" ? null : visibleFall(watched),
    evidenceLow: evidence?.low.total ?? 0,
    evidenceHigh: evidence?.high.total ?? 0,
    limit,
    baseline: {
      from: sessions[0] !== undefined && baselineSessions > 0 ? sessions[0] : null,
      to: baselineSessions > 0 ? sessions[baselineSessions - 1]! : null,
      sessions: baselineSessions,
      own: window.own,
    },
    sessions: sessions.map((day, s) => ({
      day,
      inBaseline: s < baselineSessions,
      percents: watched.measures.map(({ values, baselineMean, place }) => {
        const value = values[s]!;
        return Number.isNaN(value)
          ? null
          : season.measures[place]!.plainPercent(value - baselineMean);
      }),
    })),
    needed: word === "too few rows" ? missingRows(season, watched, rules) : [],
    notes,
  };
}

/** A novice is expected to rise: holding is `level`. */
function spoken(
  word: ReturnType<typeof wordOfSeason>["word"],
  { details }: AthleteSeason,
): HoldWord {
  return word === "holding" && details?.experience === "novice" ? "level" : word;
}

function holdMeasure(
  season: AthleteSeason,
  watched: WatchedSeason,
  m: number,
  since: number | null,
): HoldMeasure {
  const { place, values, baselineRows, baselineMean, errors } = watched.measures[m]!;
  const measure = season.measures[place]!;
  const last = watched.sessions - 1;
  const from = since ?? recentFrom(values, watched.measures[m]!.baselineSessions, watched);
  const { rows, change, error } = changeSince(watched, m, from);
  return {
    kind: measure.kind,
    of: measure.of,
    baselineRows,
    rowsAfter: changeSince(watched, m, 0).rows,
    rowsSince: rows,
    change: change === null ? null : measure.plainPercent(change),
    changeError: error,
    wobble: errors[last]!,
    baselineValue: measure.valueAt(baselineMean),
    nowValue: change === null ? null : measure.valueAt(baselineMean + change),
  };
}

/** Place of the fourth last row after the baseline: without an onset, "now" is the last four rows. */
function recentFrom(
  values: readonly number[],
  baselineSessions: number,
  { settings }: WatchedSeason,
): number {
  let rows = 0;
  let s = values.length;
  while (s > baselineSessions && rows < settings.recentRows) {
    s--;
    if (!Number.isNaN(values[s]!)) rows++;
  }
  return s;
}

/** The measure that moved most against its uncertainty, on the word's side; otherwise the first. */
function valueThatMoved(measures: readonly HoldMeasure[], word: string): HoldMeasure | null {
  const side = word === "slipping" ? -1 : word === "rising" ? 1 : 0;
  let moved = measures[0] ?? null;
  let most = Number.NEGATIVE_INFINITY;
  if (side === 0) return moved;
  for (const measure of measures) {
    if (measure.change === null || measure.changeError === null) continue;
    const size = (side * measure.change) / measure.changeError;
    if (size > most) {
      most = size;
      moved = measure;
    }
  }
  return moved;
}

/** How many more sessions each measure needs before a word can be given. */
function missingRows(
  season: AthleteSeason,
  watched: WatchedSeason,
  rules: SquadRules,
): readonly MissingRows[] {
  const { sessions, baselineSessions, measures, values, window } = season;
  const baselineOpen = window.own ? 0 : Math.max(0, rules.baselineSessions - baselineSessions);
  const after = sessions.length - baselineSessions;
  const wait = baselineOpen + Math.max(0, leastAfter - after);
  return measures.map(({ kind, of }, m) => {
    const inBaseline = values[m]!.slice(0, baselineSessions).filter((v) => !Number.isNaN(v)).length;
    const short = Math.max(0, watched.settings.leastBaselineRows - inBaseline);
    return { kind, of, rows: Math.max(wait, short, 1) };
  });
}

/** What the rows themselves make a reader wonder about. */
function rowNotes(
  season: AthleteSeason,
  watched: WatchedSeason,
  rules: SquadRules,
): readonly HoldNote[] {
  const notes: HoldNote[] = [];
  const { sessions, baselineSessions, measures, window } = season;
  for (const [m, { kind, of, percents }] of measures.entries()) {
    const followed = watched.measures.find(({ place }) => place === m);
    if (followed && followed.baselineSessions > baselineSessions) {
      const to = sessions[followed.baselineSessions - 1]!;
      notes.push({ code: "baseline-stretched", facts: { kind, of, to } });
    }
    if (followed || sessions.length <= baselineSessions) continue;
    const rows = watched.settings.leastBaselineRows - percents.size;
    const open = rows > 0 && sessions.length < watched.settings.longestBaseline * baselineSessions;
    notes.push(
      open
        ? { code: "measure-needs-rows", facts: { kind, of, rows } }
        : { code: "measure-not-followed", facts: { kind, of } },
    );
  }
  if (window.own && baselineSessions < 4 && sessions.length > baselineSessions) {
    notes.push({ code: "baseline-short", facts: { sessions: baselineSessions } });
  }
  for (const { place, errors } of watched.measures) {
    const { stepPercent, of } = measures[place]!;
    // Said only of a step that a reader could take for wobble.
    if (stepPercent > errors[watched.sessions - 1]!) {
      notes.push({ code: "read-in-steps", facts: { of, percent: stepPercent } });
    }
  }
  const first = sessions[0];
  const last = sessions[sessions.length - 1];
  const weeks = first === undefined || last === undefined ? 0 : (last - first) / 7;
  if (weeks > 2 * rules.seasonWeeks) {
    notes.push({ code: "long-season", facts: { weeks: Math.round(weeks) } });
  }
  return notes;
}
