import type { AthleteSeason } from "../squad-seasons";

/** Fewest sessions after the baseline that the limit was calibrated for. */
const fewest = 8;

/**
 * Sessions planned after the baseline: weeks of the season times sessions a week, as the Athletes
 * table says or, without it, as often as the athlete has come so far.
 */
export function plannedSessions(season: AthleteSeason, seasonWeeks: number): number {
  const { sessions, baselineSessions, details } = season;
  if (sessions.length === 0) return fewest;
  const weeksSoFar = Math.max(1, (sessions[sessions.length - 1]! - sessions[0]! + 1) / 7);
  const perWeek = details?.sessionsAWeek ?? Math.max(1, sessions.length / weeksSoFar);
  const planned = Math.round(seasonWeeks * perWeek) - baselineSessions;
  return Math.max(fewest, planned, sessions.length - baselineSessions);
}
