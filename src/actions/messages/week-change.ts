import { nameKey } from "../../coaching/record/name-key";

/** A coach's change to a proposal. */
export type WeekChange = FieldsChanged & {
  readonly athlete: string;
  /** The turn whose load is changed; absent or "" for the week and its first turn. A change with one changes nothing else. */
  readonly turn?: string;
};

/** What a change of an athlete's week sets. */
export type FieldsChanged = {
  readonly leaveOut?: boolean;
  readonly block?: string;
  readonly loadKg?: number;
  readonly sets?: number;
  readonly day?: string;
  readonly contacts?: number;
  readonly stack?: string;
  readonly noRack?: boolean;
};

/** Changes with one key are about the same: one athlete, however spelled, and one turn of the week. */
const keyOf = ({ athlete, turn = "" }: WeekChange) => `${nameKey(athlete)}\n${turn}`;

/** Newer changes on top of earlier ones, the later of each field counting. */
export function withChanges(
  before: readonly WeekChange[],
  newer: readonly WeekChange[],
): readonly WeekChange[] {
  const all = new Map(before.map((one) => [keyOf(one), one]));
  for (const one of newer) all.set(keyOf(one), { ...all.get(keyOf(one)), ...one });
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

/** The loads changed of an athlete's other turns, kg, by turn. */
export function turnLoadsOf(
  changes: readonly WeekChange[],
  athlete: string,
): ReadonlyMap<string, number> {
  const key = nameKey(athlete);
  return new Map(
    changes.flatMap(({ athlete: whose, turn = "", loadKg }): [string, number][] =>
      turn === "" || loadKg === undefined || nameKey(whose) !== key ? [] : [[turn, loadKg]],
    ),
  );
}
