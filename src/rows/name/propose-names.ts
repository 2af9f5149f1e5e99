import { nameKey } from "../../coaching/record/name-key";
import { type NameAnswers, noNameAnswers, saidDifferent } from "./name-answers";
import { type NameLink, spellingLink } from "./near-name";
import { type Spelling, spellingOf } from "./spelling";

/** A question: is this spelling that athlete? */
export type NameProposal = {
  readonly written: string;
  /** Rows that carry the spelling. */
  readonly rows: number;
  /** Athletes it may be, likeliest first; one alone is proposed, several are offered. */
  readonly may: readonly { readonly athlete: string; readonly link: NameLink }[];
};

const likelihood: readonly NameLink[] = ["order", "spelling", "initial", "part"];

/**
 * Spellings that are no athlete's own, each with the athletes it may be. `athletes` come from the
 * Athletes table; without one, the fullest spelling in the rows stands for the athlete. Pairs already
 * answered are not asked again. A proposal only: nothing is merged.
 */
export function proposeNames(
  records: readonly { readonly athlete: string }[],
  athletes: readonly string[],
  answers: NameAnswers = noNameAnswers,
): NameProposal[] {
  const written = new Map<string, { name: string; rows: number }>();
  for (const { athlete } of records) {
    const key = nameKey(athlete);
    const entry = written.get(key);
    if (entry === undefined) written.set(key, { name: athlete, rows: 1 });
    else entry.rows++;
  }
  const settled = new Set(answers.same.map((answer) => nameKey(answer.written)));
  const known =
    athletes.length > 0
      ? athletes.map(spelled)
      : fullest([...written.values()].map(({ name }) => name));
  const own = new Set(known.map(({ athlete }) => nameKey(athlete)));
  const proposals: NameProposal[] = [];
  for (const [key, { name, rows }] of written) {
    if (own.has(key) || settled.has(key)) continue;
    const { spelling: asWritten } = spelled(name);
    const may = known
      .map(({ athlete, spelling }) => ({ athlete, link: spellingLink(asWritten, spelling) }))
      .filter((near): near is { athlete: string; link: NameLink } => near.link !== null)
      .filter(({ athlete }) => !saidDifferent(answers, name, athlete))
      .sort((a, b) => likelihood.indexOf(a.link) - likelihood.indexOf(b.link));
    if (may.length > 0) proposals.push({ written: name, rows, may });
  }
  return proposals;
}

/** A name beside its spelling, made ready once for all it is compared with. */
type Spelled = { readonly athlete: string; readonly spelling: Spelling };
const spelled = (athlete: string): Spelled => ({ athlete, spelling: spellingOf(athlete) });

/** One spelling for each group of near spellings: the one with the most letters. */
function fullest(names: readonly string[]): Spelled[] {
  const letters = (name: string) => name.replace(/[^\p{L}]/gu, "").length;
  const kept: Spelled[] = [];
  for (const name of [...names].sort((a, b) => letters(b) - letters(a))) {
    const one = spelled(name);
    if (!kept.some((other) => spellingLink(one.spelling, other.spelling) !== null)) kept.push(one);
  }
  return kept;
}
