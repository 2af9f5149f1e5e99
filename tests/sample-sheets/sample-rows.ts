import { readFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";

export const sampleFolder = join(__dirname, "../../sample-sheets");

/** Rows of one sample table by heading, as the file holds them. */
export function sampleRows(table: string): readonly Readonly<Record<string, string>>[] {
  const text = readFileSync(join(sampleFolder, `${table}.csv`), "utf8");
  return Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data;
}

const dayMs = 86_400_000;
export const dayNumber = (iso: string) => Date.parse(`${iso}T00:00:00Z`) / dayMs;

/** Best squat at the season's start, kg, as the demo squad's table gives it. */
export const bestKg: Readonly<Record<string, number>> = {
  "Ilka Brandmoor": 88,
  "Tomas Reyerson": 112,
  "Wren Castellow": 58,
  "Kofi Anstruther": 138,
  "Oona Petrakell": 76,
  "Dario Quell": 116,
  "Priya Tellander": 82,
  "Hamid Sorley": 95,
  "Bea Lindqvale": 48,
  "Nils Quarrington": 120,
  "Joss Whitterby": 104,
  "Maren Aspholt": 84,
};

export type Residual = { readonly date: string; readonly percentOfBest: number };

/**
 * What best squat each session's marker tells, percent above the season's start: the marker's mean
 * speed turned back through v = 0.28 + 1.45·(1 − L/M), with 1.5 % lost a repetition.
 */
export function markerResiduals(athlete: string, from = "", to = "9"): readonly Residual[] {
  return sampleRows("Sets")
    .filter((row) => row.Athlete === athlete && row.Kind === "marker")
    .filter(({ Date: date }) => date! >= from && date! <= to)
    .map((row) => {
      const reps = row["Rep speeds (m/s)"]!.split(" ").map(
        (speed, i) => Number(speed) / 0.985 ** i,
      );
      const load = row["Load (kg)"]!;
      const kg = load.endsWith("lb") ? 0.45359237 * Number.parseFloat(load) : Number(load);
      const toldKg = kg / (1 - (mean(reps) - 0.28) / 1.45);
      return { date: row.Date!, percentOfBest: 100 * (toldKg / bestKg[athlete]! - 1) };
    });
}

export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Least-squares slope a week. */
export function slopeAWeek(residuals: readonly Residual[]): number {
  const weeks = residuals.map(({ date }) => dayNumber(date) / 7);
  const values = residuals.map(({ percentOfBest }) => percentOfBest);
  const middle = mean(weeks);
  const up = weeks.reduce((sum, week, i) => sum + (week - middle) * values[i]!, 0);
  return up / weeks.reduce((sum, week) => sum + (week - middle) ** 2, 0);
}
