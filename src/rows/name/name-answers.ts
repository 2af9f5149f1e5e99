import { nameKey } from "../../coaching/record/name-key";
import { PlainSet } from "../table/plain-set";

/** The coach's answers about spellings. Nothing is merged that is not listed here. */
export type NameAnswers = {
  /** Another spelling, and the athlete it is. */
  readonly same: readonly { readonly written: string; readonly athlete: string }[];
  /** Pairs that were asked about and are two athletes; with `nobody`, a name that is none of the squad's. */
  readonly different: readonly { readonly written: string; readonly athlete: string }[];
};

export const noNameAnswers: NameAnswers = { same: [], different: [] };

/** Records with every answered spelling replaced by the athlete's name; the others as they are. */
export function withNames<Row extends { readonly athlete: string }>(
  records: readonly Row[],
  answers: NameAnswers,
): readonly Row[] {
  if (answers.same.length === 0) return records;
  const meant = new Map(answers.same.map(({ written, athlete }) => [nameKey(written), athlete]));
  return records.map((record) => {
    const athlete = meant.get(nameKey(record.athlete));
    return athlete === undefined || athlete === record.athlete ? record : renamed(record, athlete);
  });
}

/** A record is copied with the name put right; a set looked up in its row becomes a record first. */
function renamed<Row extends { readonly athlete: string }>(record: Row, athlete: string): Row {
  return record instanceof PlainSet
    ? ({ ...record.record(), athlete } as unknown as Row)
    : { ...record, athlete };
}

/** Stands for the athlete where a name is none of the squad's: somebody has left, or never was in it. */
export const nobody = "";

/** True when the pair was answered as two athletes, or the name as none of the squad's. */
export function saidDifferent(answers: NameAnswers, written: string, athlete: string): boolean {
  const others = new Set([nobody, nameKey(athlete)]);
  return answers.different.some(
    (pair) => nameKey(pair.written) === nameKey(written) && others.has(nameKey(pair.athlete)),
  );
}
