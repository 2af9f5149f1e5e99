import { type Day, dateOfDay } from "../calendar/day";
import type { Athlete } from "../record/athlete";
import type { AvailabilitySpell } from "../record/availability-spell";
import { nameKey } from "../record/name-key";
import { type BodyPart, bodyParts } from "./body-part";
import { type MayDoOn, mayDoOn } from "./spell-on";

/** Why nothing is proposed. Medical reasons are not among them: `out` is all that is said. */
export type NotProposed = "out" | "not-cleared" | "under-18-no-supervisor" | "see-a-doctor";

/** What an athlete may be given on a day. */
export type WhoMay = {
  readonly mayDo: MayDoOn;
  /** Null when sets may be proposed. */
  readonly not: NotProposed | null;
  /** Jumps and hops are taken out. */
  readonly noJumps: boolean;
  /** Part of the body that takes exercises out, as the coach wrote it; "" for none. */
  readonly site: string;
  /** Parts for which exercises give way to their alternatives. */
  readonly limits: readonly BodyPart[];
};

/** Pain of 0–10 from which a site takes lifts out without a word of `modified` (common practice, no source). */
export const limitingPain = 4;

/** Pain that ends the session and goes to a doctor or physiotherapist, and pregnancy, which needs a qualified person’s plan (common practice, no source). */
const stops =
  /(?<!\p{L})(bones?|shins?|stress fractures?|nights?(?!\P{L}*shift)|chest|dizz\p{L}*|limp\p{L}*|pregnan\p{L}*|schwanger\p{L}*|enceinte|embaraz\p{L}*|incinta|zwanger\p{L}*|gravid\p{L}*|femur|tibial?|\p{L}*knochen\p{L}*|schienbein\p{L}*|stressfraktur\p{L}*|ermüdungsbr[uü]ch\p{L}*|nachts?(?!\P{L}*schicht)|nächt\p{L}*|brust\p{L}*|schwind\p{L}*|hink\p{L}*|humpel\p{L}*)(?!\p{L})/iu;
/** Whose word a limit is, where nobody may decide it but them. */
const licensed =
  /(?<!\p{L})(dr|doc|doctor|physio\p{L}*|physicians?|midwi\p{L}*|obstetric\p{L}*|hebamme|arzt|ärzt\p{L}*)(?!\p{L})/iu;
/** Pain that takes jumps out at any grade until asked about (common practice, no source). */
const noJumping = /(?<!\p{L})(achilles\p{L}*|calf|calves|waden?)(?!\p{L})/iu;
const jumpsForbidden =
  /\b(no|without|avoid)( any| box| drop)? (jump(s|ing)?|hop(s|ping)|plyo(s|metrics)?|impact)\b(?! (limit|restrict))|(?<!\p{L})(keine sprünge|nicht springen)(?!\p{L})/iu;

/**
 * Who may lift on a day: the Availability table decides first, then age. An athlete under 18 needs a
 * supervisor named by that day; a clearance needs a name; pain in bone, at night, in the chest, or
 * with limping stops everything, until a doctor or physiotherapist has signed what is allowed without
 * pain: jumps stay out then, too.
 */
export function whoMay(
  athlete: Athlete | null,
  name: string,
  spells: readonly AvailabilitySpell[],
  day: Day,
): WhoMay {
  const mayDo = mayDoOn(spells, name, day);
  const open = openOn(spells, name, day);
  const painful = open.filter(({ mayDo: may, pain }) => may === "modified" || (pain ?? 0) > 0);
  // What is forbidden stays so for as long as its spell, whatever else is allowed, and whoever has cleared it.
  const forbidden = open.filter((spell) => jumpsForbidden.test(wordsOf(spell)));
  const said = painful.map(wordsOf).join("; ");
  const not: NotProposed | null =
    mayDo === "out"
      ? "out"
      : mayDo === "not cleared"
        ? "not-cleared"
        : painful.some((spell) => stops.test(wordsOf(spell)) && !isDecided(spell))
          ? "see-a-doctor"
          : athlete && isUnder18(athlete, day) && !supervised(athlete, day)
            ? "under-18-no-supervisor"
            : null;
  const limiting = painful.filter(
    ({ mayDo: may, pain }) => may === "modified" || (pain ?? 0) >= limitingPain,
  );
  const limits = [...new Set(limiting.flatMap(({ site }) => bodyParts(site)))];
  return {
    mayDo,
    not,
    limits,
    noJumps:
      forbidden.length > 0 ||
      limits.some((part) => part !== "arm") ||
      [noJumping, stops].some((words) => words.test(said)),
    site: [...new Set([...painful, ...forbidden].map(({ site }) => site))]
      .filter((site) => site !== "")
      .join(", "),
  };
}

const wordsOf = ({ site, note }: AvailabilitySpell) => `${site} ${note}`;

/** A doctor or physiotherapist has said what is allowed, and no pain is written beside it. */
const isDecided = ({ mayDo, by, pain }: AvailabilitySpell) =>
  mayDo === "modified" && licensed.test(by) && !((pain ?? 0) > 0);

/**
 * Spells of the day, back to the last that began with `full` or `cleared`: a later spell about
 * something else does not heal an earlier site that is still open.
 */
function openOn(
  spells: readonly AvailabilitySpell[],
  name: string,
  day: Day,
): readonly AvailabilitySpell[] {
  const open = spells.filter(
    ({ athlete, from, until }) =>
      nameKey(athlete) === nameKey(name) && from <= day && (until === null || until >= day),
  );
  const freed = Math.max(
    ...open.map(({ mayDo, from }) => (mayDo === "full" || mayDo === "cleared" ? from : -Infinity)),
  );
  return open.filter(({ from }) => from >= freed);
}

/**
 * By the mark, else by the birth year: until the year of the 18th birthday has ended, as the birthday
 * itself is not recorded.
 */
export function isUnder18(athlete: Athlete, day: Day): boolean {
  if (athlete.under18 !== null) return athlete.under18;
  return athlete.birthYear !== null && dateOfDay(day).year - athlete.birthYear <= 18;
}

function supervised(athlete: Athlete, day: Day): boolean {
  if (athlete.supervisor.trim() === "") return false;
  return (athlete.supervisorFrom ?? day) <= day;
}
