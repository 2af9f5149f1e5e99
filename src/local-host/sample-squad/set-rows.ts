import { type Chance, chance, rounded } from "./chance";
import { type Member, members } from "./club";
import { type Gear, gearOf } from "./gear";
import { type GymDay, gymDays } from "./gym-days";
import { type Block, blockOn, markerLoad, toStep } from "./ladder";
import { dayOf, isoOf } from "./season-days";
import { setMess } from "./set-mess";
import { formOn } from "./stories";
import { type Dated, inOrderOfDay, type SampleCell, type SampleTable } from "./table";

const headings =
  "Date,Time,Athlete,Exercise,Set,Kind,Reps,Load (kg),Rep speeds (m/s),Speed is,Tool,Bar mass (kg),Gym,Movement ok?,Reps in reserve,By,Note";

/** Mean bar speed at a load for a best squat of `bestKg`, m/s (invented club; common shape). */
const speedAt = (loadKg: number, bestKg: number) => 0.28 + 1.45 * (1 - loadKg / bestKg);
const repLoss = 0.015;
const setLoss = 0.01;
const repSd = 0.015;
const kgOfPound = 0.45359237;

/** Every set of the season up to today: a warm-up, the marker, and the work sets of the block. */
export function setTable(): SampleTable {
  const rows: Dated[] = [];
  for (const member of members) {
    const random = chance(member.seed * 1000);
    for (const gymDay of gymDays(member)) rows.push(...session(member, gymDay, random));
  }
  return { name: "Sets", rows: [headings.split(","), ...setMess(inOrderOfDay(rows))] };
}

type Lifted = {
  readonly kind: "warm-up" | "marker" | "work";
  readonly set: number | null;
  readonly reps: number;
  readonly loadKg: number;
  readonly speeds: readonly number[];
};

function session(member: Member, { day, markerOnly }: GymDay, random: Chance): readonly Dated[] {
  const gear = gearOf(member, day);
  const wobble = member.athlete === "Maren Aspholt" ? 0.06 : 0.03;
  const usualKg = member.bestKg * (1 + formOn(member, day).squat);
  const bestKg = usualKg * (1 + wobble * random.normal());
  const block = blockOn(member, day);
  const marker = markerLoad(member);
  const sets: Lifted[] = [
    { kind: "warm-up", set: null, reps: 5, loadKg: toStep(marker * 0.7, 2.5), speeds: [] },
    lifted("marker", null, 3, loadIn(gear, marker), bestKg, gear, random),
  ];
  for (let set = 1; set <= (markerOnly ? 0 : block.sets); set++) {
    const load = loadIn(gear, day === dayOf("2026-06-23") ? lighter(member, block) : block.loadKg);
    sets.push(lifted("work", set, block.reps, load, bestKg, gear, random));
  }
  return sets.map((done) => ({
    day,
    row: rowOf(member, day, gear, typedOn(member, day, done), usualKg),
  }));
}

/** Plates in pounds come in steps of 5 lb. */
function loadIn(gear: Gear, loadKg: number): number {
  return gear.inPounds ? toStep(loadKg / kgOfPound, 5) * kgOfPound : loadKg;
}

/** On 23 June Tomas's marker was slow and the card said 80 instead of 85. */
function lighter({ athlete }: Member, { loadKg }: Block): number {
  return athlete === "Tomas Reyerson" ? loadKg - 5 : loadKg;
}

function lifted(
  kind: "marker" | "work",
  set: number | null,
  reps: number,
  loadKg: number,
  bestKg: number,
  gear: Gear,
  random: Chance,
): Lifted {
  const speeds: number[] = [];
  let fresh = speedAt(loadKg, bestKg) * (1 - setLoss * ((set ?? 1) - 1));
  for (let rep = 0; rep < reps; rep++) {
    const speed = fresh + repSd * random.normal() + gear.readsMore;
    speeds.push(rounded(Math.max(0.2, speed), 2));
    fresh *= 1 - repLoss;
  }
  return { kind, set, reps, loadKg, speeds };
}

const tomasOn: Readonly<Record<string, readonly number[]>> = {
  "2026-05-05 marker": [0.86, 0.85, 0.86],
  "2026-05-05 1": [0.63, 0.62, 0.61, 0.61, 0.6],
  "2026-06-23 marker": [0.79, 0.8, 0.78],
};
const kofisLoss = new Map([
  [4, 0.12],
  [5, 0.2],
]);

/** Two days told rep by rep elsewhere, and the sets at which Kofi fell away on 28 May. */
function typedOn({ athlete }: Member, day: number, done: Lifted): Lifted {
  if (athlete === "Tomas Reyerson") {
    const typed = tomasOn[`${isoOf(day)} ${done.set ?? done.kind}`];
    return typed ? { ...done, speeds: typed } : done;
  }
  const loss = kofisLoss.get(done.set ?? 0);
  if (athlete !== "Kofi Anstruther" || day !== dayOf("2026-05-28") || loss === undefined)
    return done;
  return { ...done, speeds: done.speeds.map((speed) => rounded(speed * (1 - loss), 2)) };
}

function rowOf(
  { athlete }: Member,
  day: number,
  gear: Gear,
  { kind, set, reps, loadKg, speeds }: Lifted,
  usualKg: number,
): readonly SampleCell[] {
  const work = kind === "work";
  const kneesIn = athlete === "Wren Castellow" && day === dayOf("2026-05-14") && work;
  const load = gear.inPounds ? `${Math.round(loadKg / kgOfPound)} lb` : loadKg;
  return [
    isoOf(day),
    "18:00",
    athlete,
    "back squat",
    set,
    kind,
    reps,
    load,
    speeds.map((speed) => speed.toFixed(2)).join(" "),
    speeds.length === 0 ? null : "mean",
    speeds.length === 0 ? null : gear.tool,
    gear.bar,
    gear.gym,
    work ? (kneesIn ? "n" : "y") : null,
    work ? inReserve(usualKg, loadKg, reps, set ?? 1) : null,
    gear.gym === "home" ? "NQ" : day % 7 === 5 ? "MG" : "TP",
    kneesIn ? "knees in" : null,
  ];
}

/** What a careful lifter says is left: by Epley's equation (1985), one fewer, and fewer each set. */
function inReserve(bestKg: number, loadKg: number, reps: number, set: number): number {
  return Math.max(0, Math.floor(30 * (bestKg / loadKg - 1) - reps - 1 - 0.25 * (set - 1)));
}
