import { stampedOn } from "../../coaching/jumps/stack-height";
import type { RackPlan } from "../../coaching/next-week/rack/rack-plan";
import { listWords } from "../../words/pages";
import { stackWords } from "../../words/week";
import type { RackPage } from "../page-messages";
import type { PrintableWeek, PrintedSession } from "./printable-week";
import { shortNames } from "./short-names";
import { sideOf } from "./side-words";

/** Box-jump stacks of a session, lowest first, with who jumps onto each. */
export function stacksOf(
  { numbers }: PrintableWeek,
  group: readonly PrintedSession[],
): RackPage["stacks"] {
  const nameIn = shortNames(group);
  const stacks = new Map<string, { cm: number; height: string; athletes: string[] }>();
  for (const { line, session } of group) {
    const { stackKg, stackCm, contacts } = session;
    if (contacts === 0 || (stackKg.length === 0 && stackCm === null)) continue;
    const stack = stackKg.length === 0 ? "box" : numbers.marked(stackWords(stackKg));
    const height = stackCm === null ? "–" : numbers.cm(stackCm);
    const key = `${stack} ${height}`;
    const kept = stacks.get(key) ?? { cm: stackCm ?? 0, height, athletes: [] };
    stacks.set(key, { ...kept, athletes: [...kept.athletes, line.athlete] });
  }
  return [...stacks]
    .sort((a, b) => a[1].cm - b[1].cm)
    .map(([key, { height, athletes }]) => ({
      stack: key.slice(0, key.length - height.length - 1),
      height,
      athletes: listWords(athletes.map(nameIn)),
    }));
}

/**
 * Plates on the bars, all at their markers or all at their heaviest, and in the box-jump and drop-jump
 * stacks that take most, against the number owned.
 */
export function platesNeeded(
  week: PrintableWeek,
  group: readonly PrintedSession[],
  { racks }: RackPlan,
): Pick<RackPage, "plates" | "short"> {
  const { plates, numbers } = week;
  const markerSide = (athlete: string): readonly number[] => {
    const { markerKg, barKg } = group.find(({ line }) => line.athlete === athlete)!.session;
    return sideOf(week, barKg, markerKg) ?? [];
  };
  // No drop jumps, no stack for them.
  const drops = group.map(({ session }) =>
    session.items.some(({ exercise, contacts }) => /drop jump/.test(exercise) && contacts > 0)
      ? session.drop.stackKg
      : [],
  );
  const lifts = racks.map(({ turns }) => turns.map((turn) => turn.plates));
  const markers = racks.map(({ turns }) => turns.map(({ athlete }) => markerSide(athlete)));
  const count = (list: readonly number[], massKg: number) =>
    list.filter((mass) => Math.abs(mass - massKg) < 1e-6).length;
  const rows = [...plates]
    .sort((a, b) => b.massKg - a.massKg)
    .map((plate) => {
      const { massKg, owned } = plate;
      const stamped = stampedOn(plate);
      const atOnce = (sides: readonly (readonly (readonly number[])[])[]) =>
        sides.reduce(
          (sum, ofRack) => sum + 2 * Math.max(0, ...ofRack.map((side) => count(side, massKg))),
          0,
        );
      const bars = Math.max(atOnce(markers), atOnce(lifts));
      const stack = Math.max(0, ...group.map(({ session }) => count(session.stackKg, stamped)));
      const drop = Math.max(0, ...drops.map((stackKg) => count(stackKg, stamped)));
      return { massKg, bars, stack, drop, owned };
    })
    .filter(({ bars, stack, drop }) => bars + stack + drop > 0);
  const short = rows.filter(
    ({ bars, stack, drop, owned }) => owned !== null && bars + stack + drop > owned,
  );
  const named = (some: typeof rows) => some.map(({ massKg }) => numbers.withUnit(massKg));
  // What the bars alone lack is not had by jumping at another time.
  const forBars = ({ bars, owned }: (typeof rows)[number]) => bars > (owned ?? bars);
  // Where a number is not written down, nothing lacking is known, which is not that nothing lacks.
  const open = short.length === 0 && rows.some(({ owned }) => owned === null);
  return {
    plates: rows.map(({ massKg, bars, stack, drop, owned }) => ({
      plate: numbers.mass(massKg),
      bars,
      stack,
      drop,
      owned: owned === null ? "–" : String(owned),
      spare: owned === null ? "–" : String(owned - bars - stack - drop).replace("-", "−"),
    })),
    short: open
      ? null
      : {
          bars: named(short.filter(forBars)),
          stacks: named(short.filter((one) => !forBars(one))),
        },
  };
}
