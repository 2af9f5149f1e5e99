import { accept, type Outcome, refuse } from "../../outcome";

/**
 * Loss of bar speed within a set: (fastest − last) / fastest, a fraction. From the fastest
 * repetition, not the first; to the last, not the slowest (Sánchez-Medina & González-Badillo 2011,
 * Med Sci Sports Exerc 43(9):1725–34).
 *
 * @param speeds m/s, one a repetition in the order done
 * @returns 0 when the last repetition was the fastest. Refuses `loss-few-reps` below two
 * repetitions (one repetition cannot lose) and `loss-speed-impossible` for a speed that is not above 0.
 */
export function velocityLoss(speeds: readonly number[]): Outcome<number> {
  if (speeds.length < 2) return refuse("loss-few-reps", { reps: speeds.length });
  let fastest = 0;
  for (let rep = 0; rep < speeds.length; rep++) {
    const speed = speeds[rep]!;
    if (!(speed > 0) || !Number.isFinite(speed)) {
      return refuse("loss-speed-impossible", { rep: rep + 1, speed });
    }
    fastest = Math.max(fastest, speed);
  }
  return accept((fastest - speeds[speeds.length - 1]!) / fastest);
}
