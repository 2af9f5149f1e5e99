/**
 * Rows for the examples: two athletes of an invented club, Tuesdays and Thursdays from 7 April 2026.
 * Tomas Reyerson's speeds fall after seven sessions; Ilka Brandmoor's stay but for one day.
 */
const first = Date.UTC(2026, 3, 7);
const dayMs = 86_400_000;

const sessionDay = (session: number): string =>
  new Date(first + (7 * (session >> 1) + 2 * (session % 2)) * dayMs).toISOString().slice(0, 10);

const tomas = [71, 69, 70, 72, 70, 69, 70, 66, 65, 64, 65, 63, 64, 63];
const ilka = [80, 82, 81, 79, 81, 80, 82, 80, 79, 72, 80, 82, 81, 80];

/** Two work sets a session, lighter and heavier by turns. */
function sessions(athlete: string, speeds: readonly number[], loadKg: number): unknown[][] {
  return speeds.flatMap((hundredths, session) => {
    const heavier = session % 2 === 0 ? 0 : 25;
    const speed = (hundredths - 1.2 * heavier) / 100;
    return [1, 2].map((set) => [
      sessionDay(session),
      athlete,
      "back squat",
      set,
      loadKg + heavier,
      Number((speed - 0.01 * (set - 1)).toFixed(3)),
    ]);
  });
}

export const exampleSets: readonly (readonly unknown[])[] = [
  ["date", "athlete", "exercise", "set", "load kg", "mean speed m/s"],
  ...sessions("Tomas Reyerson", tomas, 80),
  ...sessions("Ilka Brandmoor", ilka, 60),
];

export const exampleJumps: readonly (readonly unknown[])[] = [
  ["date", "athlete", "test", "height cm"],
  ...tomas.map((hundredths, at) => [
    sessionDay(at),
    "Tomas Reyerson",
    "box jump",
    Number((44 + 0.4 * (hundredths - 70)).toFixed(1)),
  ]),
  ...ilka.map((hundredths, at) => [
    sessionDay(at),
    "Ilka Brandmoor",
    "box jump",
    Number((42 + 0.3 * (hundredths - 80)).toFixed(1)),
  ]),
];

const nights = [7.5, 8, 7.6, 7.9, 7.7, 8.1, 7.4, 7.8, 7.6, 8, 7.7, 7.5, 7.9, 4.5];

export const exampleDiary: readonly (readonly unknown[])[] = [
  ["date", "athlete", "sleep h", "soreness", "note"],
  ...nights.map((hours, at) => [sessionDay(at), "Tomas Reyerson", hours, at === 13 ? 4 : 2, ""]),
  ...nights.map((_, at) => [
    sessionDay(at),
    "Ilka Brandmoor",
    at === 9 ? 5 : 7.5 + 0.2 * (at % 3),
    2,
    at === 9 ? "late train home" : "",
  ]),
];
