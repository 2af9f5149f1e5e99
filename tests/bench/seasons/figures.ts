import type { Said } from "./product";
import type { SimulatedAthlete } from "./world";

/** How right speeds and strength were, over the sessions asked after. */
export type Figures = {
  /** RMSE of the expected speed against the true one, m/s, and share of new sets in its interval. */
  readonly speedError: number;
  readonly speedCovered: number;
  /** RMSE of strength, share of the true one: every line's figure, and those not refused. */
  readonly strengthError: number;
  readonly shownError: number;
  readonly shownCovered: number;
  readonly refused: number;
};

/** Takes sessions from `from` on of each athlete. */
export function figures(
  seasons: readonly { readonly athlete: SimulatedAthlete; readonly said: readonly Said[] }[],
  from: (athlete: SimulatedAthlete) => number,
): Figures {
  const speedOffs: number[] = [];
  const inSpeed: number[] = [];
  const lineOffs: number[] = [];
  const shownOffs: number[] = [];
  const inShown: number[] = [];
  let asked = 0;
  for (const { athlete, said } of seasons) {
    for (let s = from(athlete); s < athlete.sessions.length; s++) {
      const { trueSpeed, speed } = athlete.sessions[s]!;
      const trueKg = athlete.trueStrengthKg[s]!;
      const { expected, lineKg, estimate } = said[s]!;
      if (expected) {
        speedOffs.push(expected.speed - trueSpeed);
        if (speed !== null) inSpeed.push(between(speed, expected));
      }
      asked++;
      if (lineKg !== null) lineOffs.push(lineKg / trueKg - 1);
      if (!estimate) continue;
      shownOffs.push(estimate.kg / trueKg - 1);
      inShown.push(between(trueKg, estimate));
    }
  }
  return {
    speedError: rootMeanSquare(speedOffs),
    speedCovered: mean(inSpeed),
    strengthError: rootMeanSquare(lineOffs),
    shownError: rootMeanSquare(shownOffs),
    shownCovered: mean(inShown),
    refused: 1 - shownOffs.length / asked,
  };
}

function between(value: number, range: { readonly low: number; readonly high: number }): number {
  return value >= range.low && value <= range.high ? 1 : 0;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(mean(values.map((value) => value ** 2)));
}
