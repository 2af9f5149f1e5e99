import { effortWords } from "../../value/reserve-in-words";
import { type SpeedList, speedList } from "../../value/speed-list";
import { type Unit, unitOf } from "../../value/units";
import { leastLoad, type SetGroup, schemeGroups } from "./scheme";
import type { SchemeSense } from "./scheme-order";

/** A load that is written apart from its sets. */
export type BareLoad = {
  readonly load: number;
  readonly unit: Unit | null;
  readonly written: string;
};

/** Collects what the tokens of one cell of sets say, from left to right. */
export class SchemeTokens {
  readonly groups: SetGroup[] = [];
  readonly bareLoads: BareLoad[] = [];
  /** Sets and repetitions could be either way round. */
  unsettled = false;
  private readonly words: string[] = [];
  private readonly speeds: (number | null)[] = [];
  /** How many groups stand left of each speed. */
  private readonly groupsBefore: number[] = [];

  constructor(
    private readonly sense: SchemeSense,
    private readonly speedCount: number,
    private readonly notes: string[],
  ) {}

  /** Words beside the figures. */
  get note(): string {
    return [this.words.join(" "), ...this.notes].filter(Boolean).join("; ");
  }

  /** False where the token says nothing that can be read. */
  take(token: string): boolean {
    const bare = token.replace(/^@/, "");
    const read = this.takeSets(token, bare) ?? this.takeFigure(token, bare);
    while (this.groupsBefore.length < this.speeds.length)
      this.groupsBefore.push(this.groups.length);
    return read;
  }

  /** Two loads may be a range, three are a ladder. */
  takeLadder(): void {
    const { groups, bareLoads, speeds } = this;
    if (groups.length > 0 || bareLoads.length < 3 || this.note !== "" || speeds.length > 0) return;
    for (const { load, unit } of bareLoads.splice(0))
      groups.push({ load, unit, reps: null, sets: 1 });
  }

  /** Speeds, each at its own set where they are written behind their sets. */
  speedsOfSets(): readonly (number | null)[] {
    return besideTheirSets(this.speeds, this.groupsBefore, this.groups);
  }

  /** A rating, an effort or sets; null for anything else. */
  private takeSets(token: string, bare: string): boolean | null {
    const ramp = rampIn(bare);
    const paired = loadAndSpeed.exec(bare);
    // "3/10" rates something out of ten.
    if (/^\d{1,2}\/10$/.test(bare)) this.words.push(token);
    else if (this.isEffort(token)) this.notes.push(`RPE ${bare}`);
    else if (ramp !== null) this.groups.push(...ramp);
    else if (paired !== null) {
      const [, load, unit, speed] = paired;
      this.groups.push({ load: asNumber(load!), unit: unitOf(unit), reps: null, sets: 1 });
      this.speeds.push(asNumber(speed!));
    } else if (/^\d[\dx.,+kglbs]*$/i.test(bare) && /x/i.test(bare)) return this.takeScheme(bare);
    else return null;
    return true;
  }

  private takeScheme(bare: string): boolean {
    const { sense, speedCount, speeds } = this;
    const found = schemeGroups(bare.toLowerCase(), sense, speedCount + speeds.length);
    if (found === null) return false;
    if (found === "unsettled") this.unsettled = true;
    else this.groups.push(...found);
    return true;
  }

  /** A load apart, speeds, or a word. */
  private takeFigure(token: string, bare: string): boolean {
    const number = /^(\d+(?:[.,]\d+)?|[.,]\d+)(kg|lbs?)?$/i.exec(bare);
    if (number !== null) {
      const value = asNumber(number[1]!);
      if (number[2] !== undefined || value >= leastLoad)
        this.bareLoads.push({ load: value, unit: unitOf(number[2]), written: bare });
      else if (value < 3.5 && /[.,]/.test(bare)) this.speeds.push(value);
      else return false;
      return true;
    }
    if (/\d/.test(bare) && isSpeeds(speedList(bare))) {
      this.speeds.push(...speedList(bare).speeds);
      return true;
    }
    if (/\d/.test(token) && (this.groups.length === 0 || /^[\d.,?]+$/.test(token))) return false;
    this.words.push(token);
    return true;
  }

  private isEffort(token: string): boolean {
    const { groups, bareLoads, notes } = this;
    return (
      effortAtSign.test(token) &&
      (this.unsettled || hasLoads(groups, bareLoads)) &&
      notes.every(isNoEffort)
    );
  }
}

/**
 * "80x5x3 @8": behind sets and their load an effort of 6 to 10 (common practice, no source), as no bar moves
 * at 8 m/s. Behind a load alone, "80 @8", it may be repetitions.
 */
const effortAtSign = /^@(?:[6-9](?:[.,][05])?|10)$/;
const isNoEffort = (note: string) => !effortWords.test(note);
const hasLoads = (groups: readonly SetGroup[], bare: readonly BareLoad[]) =>
  groups.length > 0 && (bare.length === 1 || groups.every(({ load }) => load !== null));

/** "80/0.62" is a set's load and speed. */
const loadAndSpeed = /^(\d{2,3}(?:[.,]\d+)?)(kg|lbs?)?\/([012]?[.,]\d{1,3})$/i;
const asNumber = (text: string) => Number(text.replace(",", "."));

/** "60/70/80" and "60/70/80x3": one set at each load. */
function rampIn(token: string): SetGroup[] | null {
  const parts = /^(\d+(?:[.,]\d+)?(?:\/\d+(?:[.,]\d+)?)+)(kg|lbs?)?(?:x(\d{1,2}))?$/i.exec(token);
  if (parts === null) return null;
  const loads = parts[1]!.split("/").map(asNumber);
  if (loads.some((load) => load < leastLoad)) return null;
  const reps = parts[3] === undefined ? null : Number(parts[3]);
  if (reps === null && loads.length < 3) return null;
  return loads.map((load) => ({ load, unit: unitOf(parts[2]), reps, sets: 1 }));
}

/** Speeds written behind their own sets ("60x5 .7 70x5 .65 80x5") keep to them. */
function besideTheirSets(
  speeds: readonly (number | null)[],
  groupsBefore: readonly number[],
  groups: readonly SetGroup[],
): readonly (number | null)[] {
  const setsBefore = (count: number) =>
    groups.slice(0, count).reduce((sum, { sets }) => sum + sets, 0);
  const all = setsBefore(groups.length);
  const placed = Array<number | null>(all).fill(null);
  const next = new Map<number, number>();
  for (const [at, speed] of speeds.entries()) {
    const behind = groupsBefore[at]!;
    const place = next.get(behind) ?? setsBefore(behind - 1);
    if (behind === 0 || place >= setsBefore(behind)) return speeds;
    placed[place] = speed;
    next.set(behind, place + 1);
  }
  return groups.length > 1 && speeds.length > 0 ? placed : speeds;
}

/** Figures and marks for missing ones, none of them in doubt. */
function isSpeeds({ unread, unsure }: SpeedList): boolean {
  return unread.length + unsure.length === 0;
}
