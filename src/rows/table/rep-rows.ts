import type { LiftingSet } from "../../coaching/record/lifting-set";

type Growing = { -readonly [Key in keyof LiftingSet]: LiftingSet[Key] } & {
  repSpeeds: (number | null)[];
};

/** Puts rows of single repetitions together to sets, as they follow one another. */
export class RepRows {
  private open: Growing | null = null;
  private lastRep = 0;

  /** The row's set when it starts one, "no-record" when it goes on with the set before. */
  join(row: LiftingSet, rep: number | null, speed: number | null): LiftingSet | "no-record" {
    const { open } = this;
    const place = rep ?? this.lastRep + 1;
    if (open !== null && place > this.lastRep && sameSet(open, row)) {
      while (open.repSpeeds.length < place - 1) open.repSpeeds.push(null);
      open.repSpeeds.push(speed);
      open.reps = place;
      open.movedWell = open.movedWell === false ? false : (row.movedWell ?? open.movedWell);
      open.repsInReserve = row.repsInReserve ?? open.repsInReserve;
      if (row.note !== "") open.note = open.note === "" ? row.note : `${open.note}; ${row.note}`;
      this.lastRep = place;
      return "no-record";
    }
    const first: (number | null)[] = [];
    for (let missing = 1; missing < (rep ?? 1); missing++) first.push(null);
    first.push(speed);
    const started: Growing = { ...row, repSpeeds: first, reps: rep ?? 1 };
    this.open = started;
    this.lastRep = rep ?? 1;
    return started;
  }
}

function sameSet(open: Growing, row: LiftingSet): boolean {
  return (
    open.day === row.day &&
    open.athlete === row.athlete &&
    open.exercise === row.exercise &&
    open.set === row.set &&
    open.kind === row.kind &&
    (row.loadKg === null || open.loadKg === row.loadKg)
  );
}
