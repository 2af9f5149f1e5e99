import type { LoadSpeedLine } from "./load-speed-line";

/** Speed of the first set at a load, m/s, with its 90 % prediction interval. */
export type ExpectedSpeed = {
  readonly speed: number;
  readonly low: number;
  readonly high: number;
};

export function expectedSpeed(_line: LoadSpeedLine, _loadKg: number): ExpectedSpeed {
  throw new Error("being written");
}
