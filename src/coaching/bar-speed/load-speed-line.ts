import type { Day } from "../calendar/day";

/**
 * Bar speed against load for one athlete and one lift: speed = intercept + slope · load, with the
 * uncertainty of both.
 */
export type LoadSpeedLine = {
  /** Speed at zero load, m/s. */
  readonly intercept: number;
  /** m/s per kg, below zero. */
  readonly slope: number;
  /** Variances and covariance of intercept and slope. */
  readonly interceptVariance: number;
  readonly covariance: number;
  readonly slopeVariance: number;
  /** SD of single sets around the line, m/s, steadied while sets are few. */
  readonly residualSd: number;
  /** SD of whole days and of sets within a day, m/s, as the line and its intervals assume them. */
  readonly daySd: number;
  readonly setSd: number;
  readonly setsUsed: number;
  readonly daysUsed: number;
  readonly lightestKg: number;
  readonly heaviestKg: number;
  /** Days and loads among the recent sets, those whose weight is at least 0.1. */
  readonly recentDays: number;
  readonly recentLightestKg: number;
  readonly recentHeaviestKg: number;
  readonly lastDay: Day;
  /** Sets left out since they were taken with another tool, figure, bar or gym than the latest. */
  readonly otherSettingSets: number;
};
