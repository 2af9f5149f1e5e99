import { nameKey } from "../../coaching/record/name-key";

/** A coach's change to a proposal. */
export type WeekChange = FieldsChanged & {
  readonly athlete: string;
  /** The turn whose block or load is changed; absent or "" for the week and its first turn. A change with one changes nothing else. */
  readonly turn?: string;
};

/** What a change of an athlete's week sets. */
export type FieldsChanged = {
  /** All that was changed of the athlete's week before is taken back. */
  readonly asProposed?: true;
  readonly leaveOut?: boolean;
  readonly block?: string;
  readonly loadKg?: number;
  readonly sets?: number;
  readonly sessions?: number;
  readonly day?: string;
  readonly contacts?: number;
  readonly stack?: string;
  readonly noRack?: boolean;
};

/** Changes with one key are about the same: one athlete, however spelled, and one turn of the week. */
const keyOf = ({ athlete, turn = "" }: WeekChange) => `${nameKey(athlete)}\n${turn}`;

/** Newer changes on top of earlier ones, the later of each field counting; "as proposed" takes back those of its athlete alone. */
export function withChanges(
  before: readonly WeekChange[],
  newer: readonly WeekChange[],
): readonly WeekChange[] {
  const all = new Map(before.map((one) => [keyOf(one), one]));
  for (const one of newer) {
    const athlete = nameKey(one.athlete);
    const takenBack = [...all].filter(([, { athlete: whose }]) => nameKey(whose) === athlete);
    if (one.asProposed) for (const [key] of takenBack) all.delete(key);
    all.set(keyOf(one), { ...all.get(keyOf(one)), ...one });
  }
  return [...all.values()];
}

/** What was changed of an athlete's week and its first turn, or of another turn of it. */
export function changeOf(
  changes: readonly WeekChange[],
  athlete: string,
  turn = "",
): FieldsChanged {
  const key = keyOf({ athlete, turn });
  const {
    athlete: _,
    turn: __,
    ...fields
  } = changes.find((one) => keyOf(one) === key) ?? {
    athlete,
  };
  return fields;
}

/** What a change sets of another turn than the week's first. */
export type TurnChanged = Pick<FieldsChanged, "block" | "loadKg">;

/** What was changed of an athlete's other turns, by turn. */
export function otherTurnsOf(
  changes: readonly WeekChange[],
  athlete: string,
): ReadonlyMap<string, TurnChanged> {
  const key = nameKey(athlete);
  return new Map(
    changes.flatMap(({ athlete: whose, turn = "", block, loadKg }): [string, TurnChanged][] => {
      if (turn === "" || nameKey(whose) !== key) return [];
      const set = {
        ...(block !== undefined && { block }),
        ...(loadKg !== undefined && { loadKg }),
      };
      return Object.keys(set).length === 0 ? [] : [[turn, set]];
    }),
  );
}
