import { plateChange } from "../../coaching/next-week/rack/plate-change";
import type { RackShare } from "../../coaching/next-week/rack/rack-plan";
import { exerciseKey } from "../../coaching/record/exercise-key";
import { cautions } from "../../words/cautions";
import { datedDay } from "../../words/days";
import { changeWords, clock, listWords, pageWords } from "../../words/pages";
import type { RackLine, RackPage } from "../page-messages";
import { madeWithout } from "./made-without";
import { gymSessions, type PrintableWeek, type PrintedSession } from "./printable-week";
import { roomPlan } from "./room-plan";
import { platesNeeded, stacksOf } from "./room-plates";
import { shortNames } from "./short-names";
import { sideOf, sideWords } from "./side-words";

/** The rack plan of every gym session of a week, one page each. */
export function rackPages(week: PrintableWeek): readonly RackPage[] {
  // Who lifts without a bar takes no place at a rack.
  return gymSessions(week)
    .map((group) => group.filter(({ session }) => session.instead === null))
    .filter((group) => group.length > 0)
    .map((group) => rackPage(week, group));
}

function rackPage(week: PrintableWeek, group: readonly PrintedSession[]): RackPage {
  const { numbers } = week;
  const { plan, warning } = roomPlan(group, week.state.read.rows.rules);
  const { day, minute } = group[0]!.session;
  const barred = group.filter(({ line }) => line.who.noJumps).map(({ line }) => line.athlete);
  return {
    without: madeWithout(
      week,
      group.map(({ line }) => line.athlete),
    ),
    when: `${datedDay(day)}, ${clock(minute)}`,
    lifters: group.length,
    minutes: Math.ceil(plan.minutes),
    warning,
    racks: plan.racks.map((share, at) => ({
      name: pageWords.rack(at + 1),
      bar: pageWords.bar(numbers.withUnit(share.barKg)),
      ...rackLines(week, group, share),
    })),
    stacks: stacksOf(week, group),
    noJumps:
      barred.length === 0 ? "" : pageWords.noJumpsFor(listWords(barred.map(shortNames(group)))),
    ...platesNeeded(week, group, plan),
    unit: numbers.unit,
    cautions,
  };
}

/** Every turn with the plates to change: markers first from an empty bar, then the lifts. */
function rackLines(
  week: PrintableWeek,
  group: readonly PrintedSession[],
  { turns, barKg }: RackShare,
): Pick<RackPage["racks"][number], "lines" | "back"> {
  const { numbers } = week;
  const sessions = turns.map(
    (turn) => group.find(({ line }) => line.athlete === turn.athlete)!.session,
  );
  const nameIn = shortNames(group);
  const lifts = new Set(group.map(({ session }) => exerciseKey(session.exercise)));
  // Where more than one lift is done that evening, whose is which is said.
  const named = (athlete: string, exercise: string) =>
    lifts.size === 1 ? nameIn(athlete) : `${nameIn(athlete)}, ${exercise}`;
  let on: readonly number[] = [];
  const change = (to: readonly number[]) => {
    const words = changeWords(plateChange(on, to), numbers);
    on = to;
    return words;
  };
  const markers = sessions.map(({ markerKg }) => {
    const side = sideOf(week, barKg, markerKg);
    return {
      marker: markerKg === null ? "–" : numbers.mass(markerKg),
      markerChange: side === null ? "" : change(side),
    };
  });
  const lines: RackLine[] = turns.map((turn, at) => {
    const { bands, sets, reps } = sessions[at]!;
    const slower = bands.flatMap(({ loadKg }) =>
      loadKg === null || loadKg >= turn.loadKg ? [] : [numbers.mass(loadKg)],
    );
    return {
      athlete: named(turn.athlete, sessions[at]!.exercise),
      ...markers[at]!,
      load: numbers.mass(turn.loadKg),
      plates: sideWords(week, barKg, turn.loadKg),
      side: turn.plates,
      change: change(turn.plates),
      sets: `${sets}×${reps}`,
      slower: [...new Set(slower)].join("; "),
    };
  });
  const first = turns[0]!;
  const again = turns.length > 1 && sessions.some(({ sets }) => sets > 1);
  return {
    lines,
    back: again
      ? pageWords.back(nameIn(first.athlete), changeWords(plateChange(on, first.plates), numbers))
      : "",
  };
}
