import { type Chance, chance, rounded } from "./chance";
import { type Member, members } from "./club";
import { type GymDay, gymDays } from "./gym-days";
import { stackUpTo } from "./plates";
import { dayOf, isoOf } from "./season-days";
import { contactOfJoss, formOn } from "./stories";
import { type Dated, inOrderOfDay, type SampleCell, type SampleTable } from "./table";

const headings =
  "Date,Athlete,Test,Height (cm),Stack,Cleared?,Drop height (cm),Landing height (cm),Contact time (ms),Flight time (ms),Note";
const jumpSd = 1.2;
const contactSd = 6;
const attemptSd = 0.4;
const contactAttemptSd = 3;

/** These two are measured by the stack they clear, the others by a tape against the wall. */
const byStack = new Set(["Priya Tellander", "Hamid Sorley"]);
/** These two jump on a contact mat that gives flight time too. */
const onMat = new Set(["Kofi Anstruther", "Ilka Brandmoor"]);

/** Every jump attempt up to today: straight-leg box jumps, and drop jumps from 20 or 30 cm. */
export function jumpTable(): SampleTable {
  const rows: Dated[] = [];
  for (const member of members) {
    const random = chance(member.seed * 1000 + 500);
    for (const gymDay of gymDays(member)) {
      const { day } = gymDay;
      for (const row of [...boxJumps(member, day, random), ...dropJumps(member, gymDay, random)]) {
        rows.push({ day, row: [isoOf(day), member.athlete, ...row] });
      }
    }
  }
  return { name: "Jumps", rows: [headings.split(","), ...inOrderOfDay(rows)] };
}

function boxJumps(member: Member, day: number, random: Chance): readonly (readonly SampleCell[])[] {
  const today = member.boxJumpCm * (1 + formOn(member, day).jump) + jumpSd * random.normal();
  const attempts = [attemptSd * random.normal(), attemptSd * random.normal()];
  if (jumpsStopped(member, day)) return [];
  if (byStack.has(member.athlete)) {
    const best = stackUpTo(today);
    const rest: SampleCell[] = [null, null, null, null, null];
    return [
      ["box jump", null, best.text, "y", ...rest],
      ["box jump", null, best.nextText, "n", ...rest],
    ];
  }
  return attempts.map((extra) => {
    // Read off the tape to half a centimetre.
    const height = Math.round(2 * (today + extra)) / 2;
    return ["box jump", height, null, null, null, null, null, null, null];
  });
}

function dropJumps(
  member: Member,
  { day, markerOnly }: GymDay,
  random: Chance,
): readonly (readonly SampleCell[])[] {
  const { athlete, experience, boxJumpCm } = member;
  const noise = contactSd * random.normal();
  const told = athlete === "Joss Whitterby" ? contactOfJoss.get(day) : undefined;
  const attempts = [0, 1].map(() => ({
    contact: contactAttemptSd * random.normal(),
    flightCm: jumpSd * random.normal(),
  }));
  const stopped = jumpsStopped(member, day) && told === undefined;
  if (markerOnly || stopped || (athlete === "Dario Quell" && day === dayOf("2026-06-02")))
    return [];
  return attempts.map(({ contact, flightCm }, i) => {
    // The days told of Joss are means of two attempts, and as far apart as two usually are.
    const apart = i === 0 ? contact : -attempts[0]!.contact;
    const ms = told === undefined ? member.contactMs + noise + contact : told + apart;
    const riseM = (0.6 * boxJumpCm + flightCm) / 100;
    const flight = onMat.has(athlete) ? rounded(1000 * Math.sqrt((8 * riseM) / 9.81), 0) : null;
    const drop = experience === "novice" ? 20 : 30;
    return ["drop jump", null, null, null, drop, null, Math.round(ms), flight, null];
  });
}

/** From mid June Joss jumps no more, but for the one test on 23 June. */
function jumpsStopped({ athlete }: Member, day: number): boolean {
  return athlete === "Joss Whitterby" && day >= dayOf("2026-06-15");
}
