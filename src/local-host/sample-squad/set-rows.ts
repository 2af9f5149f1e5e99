import { type Chance, chance } from "./chance";
import { type Member, members } from "./club";
import { type Gear, gearOf, kgOfPound } from "./gear";
import { type GymDay, gymDays } from "./gym-days";
import { type Block, blockOn, markerLoad, toStep } from "./ladder";
import { type Lifted, lifted, typedOn } from "./lifted-set";
import { dayOf } from "./season-days";
import { setCells } from "./set-cells";
import { setMess } from "./set-mess";
import { formOn } from "./stories";
import { type Dated, inOrderOfDay, type SampleTable } from "./table";

const headings =
  "Date,Time,Athlete,Exercise,Set,Kind,Reps,Load (kg),Rep speeds (m/s),Speed is,Tool,Bar mass (kg),Gym,Movement ok?,Reps in reserve,By,Note";

/** Every set of the season up to today: a warm-up, the marker, and the work sets of the block. */
export function setTable(): SampleTable {
  const rows: Dated[] = [];
  for (const member of members) {
    const random = chance(member.seed * 1000);
    for (const gymDay of gymDays(member)) rows.push(...session(member, gymDay, random));
  }
  return { name: "Sets", rows: [headings.split(","), ...setMess(inOrderOfDay(rows))] };
}

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
    row: setCells(member, day, gear, typedOn(member, day, done), usualKg),
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
