import type { Athlete } from "../../../src/coaching/record/athlete";
import type { JumpAttempt } from "../../../src/coaching/record/jump-attempt";
import type { LiftingSet } from "../../../src/coaching/record/lifting-set";

/** Monday 6 April 2026. */
export const firstDay = 20_549;

export function liftingSet(of: Partial<LiftingSet> & Pick<LiftingSet, "day">): LiftingSet {
  return {
    row: 2,
    minute: null,
    athlete: "Ilka Brandmoor",
    exercise: "back squat",
    set: 1,
    kind: "work",
    reps: 3,
    loadKg: 60,
    repSpeeds: [0.7, 0.69, 0.68],
    setSpeed: null,
    setSpeedIs: null,
    speedIs: "mean",
    tool: "bar tool A",
    barKg: 20,
    gym: "club",
    movedWell: true,
    repsInReserve: null,
    by: "",
    note: "",
    ...of,
  };
}

export function jumpAttempt(of: Partial<JumpAttempt> & Pick<JumpAttempt, "day">): JumpAttempt {
  return {
    row: 2,
    athlete: "Ilka Brandmoor",
    test: "box jump",
    heightCm: null,
    stackKg: [],
    cleared: null,
    dropCm: null,
    landingCm: null,
    contactS: null,
    flightS: null,
    note: "",
    ...of,
  };
}

export function athleteRow(of: Partial<Athlete> & Pick<Athlete, "athlete">): Athlete {
  return {
    row: 2,
    group: "",
    event: "",
    experience: "trained",
    birthYear: null,
    under18: null,
    supervisor: "",
    supervisorFrom: null,
    baselineFrom: null,
    baselineTo: null,
    sessionsAWeek: 2,
    notes: "",
    ...of,
  };
}

/** Day of a session: Tuesdays and Thursdays from the season's first week. */
export const sessionDay = (session: number) =>
  firstDay + 7 * Math.floor(session / 2) + (session % 2 === 0 ? 1 : 3);

/** Steady, unequal wobble between −1 and 1, the same on every run. */
export const wobble = (n: number) => Math.sin(12.9898 * (n + 1)) * Math.cos(4.1414 * (n + 2));

/**
 * A season of two sessions a week: three work sets and a box jump each, a drop jump every fourth
 * session; `level` is what each session's true level is, as a share of the first.
 */
export function inventedSeason(
  athlete: string,
  sessions: number,
  level: (session: number) => number = () => 1,
  seed = 0,
): { sets: LiftingSet[]; jumps: JumpAttempt[] } {
  const sets: LiftingSet[] = [];
  const jumps: JumpAttempt[] = [];
  for (let s = 0; s < sessions; s++) {
    const day = sessionDay(s);
    const loadKg = 60 + 2.5 * (s % 3);
    const off = 1 + 0.03 * wobble(s + 31 * seed);
    const first = (1.4 - 0.0115 * loadKg) * level(s) * off;
    for (let set = 1; set <= 3; set++) {
      const speed = first * (1 - 0.01 * (set - 1));
      sets.push(
        liftingSet({ athlete, day, set, loadKg, repSpeeds: [speed, speed * 0.98, speed * 0.97] }),
      );
    }
    const heightCm = 42 * level(s) * (1 + 0.03 * wobble(2 * s + 17 * seed));
    jumps.push(jumpAttempt({ athlete, day, heightCm }));
    if (s % 4 === 0) {
      const contactS = (0.19 / level(s)) * (1 + 0.02 * wobble(3 * s + 7 * seed));
      jumps.push(jumpAttempt({ athlete, day, test: "drop jump", contactS }));
    }
  }
  return { sets, jumps };
}
