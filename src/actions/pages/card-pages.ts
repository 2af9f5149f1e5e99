import { blockText } from "../../coaching/blocks/block";
import type { SessionBand } from "../../coaching/next-week/proposed-line";
import { athleteNamed } from "../../coaching/record/athlete-named";
import { cautions } from "../../words/cautions";
import { datedDay } from "../../words/days";
import { bandAgainWords, bandParts, clock, pageWords, sentence } from "../../words/pages";
import { loadWords } from "../../words/session";
import { areSpeedsOfLast } from "../../words/week";
import type { CardBand, CardPage } from "../page-messages";
import { aboutWords } from "./about-words";
import { cardSession } from "./card-session";
import { madeWithout } from "./made-without";
import { gymSessions, type PrintableWeek, type PrintedSession } from "./printable-week";
import { roomPlan } from "./room-plan";
import { sideOf, sideWords } from "./side-words";

/** One card for each session of everyone who lifts; those who are out have none. */
export function cardPages(week: PrintableWeek): readonly CardPage[] {
  return gymSessions(week).flatMap((group) => {
    const lifting = group.filter(({ session }) => session.instead === null);
    const { plan } = roomPlan(lifting, week.state.read.rows.rules);
    const rackOf = (athlete: string) =>
      plan.racks.findIndex(({ turns }) => turns.some((turn) => turn.athlete === athlete)) + 1;
    return group.map((one) => cardPage(week, one, rackOf(one.line.athlete)));
  });
}

function cardPage(week: PrintableWeek, one: PrintedSession, rack: number): CardPage {
  const { line, session } = one;
  const { numbers } = week;
  const { withUnit, speed, unit } = numbers;
  const about = athleteNamed(week.state.read.rows.athletes, line.athlete);
  const { jumps, assistance } = cardSession(week, one);
  const codes = line.reasons.map(({ code }) => code);
  return {
    without: madeWithout(week, [line.athlete]),
    athlete: line.athlete,
    about: [sentence(about?.event ?? ""), aboutWords(week, line)]
      .filter((part) => part !== "")
      .join(". "),
    when: `${datedDay(session.day)}, ${clock(session.minute)}`,
    rack: rack > 0 ? pageWords.rack(rack) : "",
    unit,
    marker:
      session.markerKg === null
        ? null
        : {
            load: withUnit(session.markerKg),
            reps: 3,
            plates: sideWords(week, session.barKg, session.markerKg, pageWords.aSide),
            usual: session.usualLeadSpeed === null ? "" : speed(session.usualLeadSpeed),
          },
    bands: session.bands.map((band) => cardBand(week, one, band)),
    shareOff: week.state.read.rows.rules.loadDrop,
    noBands: session.bands.length > 0 ? null : session.instead ? "no marker" : "no speed",
    firstSet:
      session.markerKg === null && session.usualLeadSpeed !== null
        ? speed(session.usualLeadSpeed)
        : "",
    jumps,
    lift: {
      ...liftOf(week, one),
      sets: session.sets,
      reps: session.reps,
      say: [
        codes.includes("race-week") ? pageWords.halfSets : "",
        codes.includes("race-near") && session.sets < session.block.sets
          ? pageWords.setsBeforeRace
          : "",
        areSpeedsOfLast(line, session) ? pageWords.speedsOfLast : "",
        codes.includes("moved-poorly") ? pageWords.poorMovement : "",
        session.otherwise === null
          ? ""
          : pageWords.otherwise(
              blockText(session.otherwise.block),
              withUnit(session.otherwise.loadKg),
            ),
        session.bands.length > 0 ? pageWords.stopRule : pageWords.stopByForm,
      ]
        .filter((part) => part !== "")
        .join(" "),
    },
    assistance,
    cautions,
  };
}

/** The lift's name, load and plates; what stands in its place is loaded by feel, or as last done. */
function liftOf(
  week: PrintableWeek,
  one: PrintedSession,
): Pick<CardPage["lift"], "name" | "load" | "plates"> {
  const { withUnit } = week.numbers;
  const { exercise, instead, loadKg, barKg } = one.session;
  if (!instead) {
    const plates = sideWords(week, barKg, loadKg, pageWords.aSide);
    return { name: sentence(exercise), load: withUnit(loadKg), plates };
  }
  const { load } = loadWords(instead, withUnit);
  const name = `${sentence(instead.exercise)} (${pageWords.instead(exercise)})`;
  return { name, load, plates: "" };
}

/** A band's load on plates that exist, its plates, and the floor under which a set ends. */
function cardBand(week: PrintableWeek, { session }: PrintedSession, band: SessionBand): CardBand {
  const { numbers } = week;
  const parts = { ...bandParts(band, numbers), again: bandAgainWords(band, numbers) };
  const { loadKg, speedFloor } = band;
  if (loadKg === null) {
    return { ...parts, speedAfter: pageWords.orIll, lift: "", plates: "", side: [], floor: "" };
  }
  return {
    ...parts,
    lift: numbers.mass(loadKg),
    plates: sideWords(week, session.barKg, loadKg),
    side: sideOf(week, session.barKg, loadKg) ?? [],
    floor: speedFloor === null ? "" : numbers.speed(speedFloor),
  };
}
