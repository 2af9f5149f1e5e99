import { place, reps, type SetRows } from "../set-rows";

/** One athlete's sets of one day: how many, mean load and speed, and squares and products about them. */
export type DaySums = {
  readonly day: number;
  sets: number;
  kg: number;
  speed: number;
  kgKg: number;
  kgSpeed: number;
  speedSpeed: number;
};

/** One athlete's days, and the marker sets' load and speeds. */
export type AthleteSums = {
  readonly days: DaySums[];
  readonly markers: number[];
  markerKg: number;
};

/** One pass over the rows, with nothing checked: fastest repetition against load, summed by day. */
export function daySums({ cells }: SetRows): ReadonlyMap<string, AthleteSums> {
  const found = new Map<string, AthleteSums>();
  for (let at = 1; at < cells.length; at++) {
    const row = cells[at] as readonly unknown[];
    let speed = 0;
    for (let rep = place.rep; rep < place.rep + reps; rep++) {
      const one = row[rep];
      if (typeof one !== "number") break;
      if (one > speed) speed = one;
    }
    const kg = row[place.load] as number;
    const day = Math.floor((row[place.day] as Date).getTime() / 86_400_000);
    const name = row[place.athlete] as string;
    let one = found.get(name);
    if (one === undefined) {
      one = { days: [], markers: [], markerKg: 0 };
      found.set(name, one);
    }
    if (row[place.kind] === "marker") {
      one.markers.push(speed);
      one.markerKg = kg;
    }
    let sums = one.days[one.days.length - 1];
    if (sums === undefined || sums.day !== day) {
      sums = { day, sets: 0, kg: 0, speed: 0, kgKg: 0, kgSpeed: 0, speedSpeed: 0 };
      one.days.push(sums);
    }
    sums.sets++;
    const [kgOff, speedOff] = [kg - sums.kg, speed - sums.speed];
    sums.kg += kgOff / sums.sets;
    sums.speed += speedOff / sums.sets;
    sums.kgKg += kgOff * (kg - sums.kg);
    sums.kgSpeed += kgOff * (speed - sums.speed);
    sums.speedSpeed += speedOff * (speed - sums.speed);
  }
  return found;
}
