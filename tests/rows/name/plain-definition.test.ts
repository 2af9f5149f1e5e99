import fc from "fast-check";
import { plainWords } from "../../../src/rows/header/header-words";
import { checkNames } from "../../../src/rows/name/check-names";
import { editDistance } from "../../../src/rows/name/edit-distance";
import { type NameLink, nameLink } from "../../../src/rows/name/near-name";
import { proposeNames } from "../../../src/rows/name/propose-names";
import { lettersDiffer, spellingOf } from "../../../src/rows/name/spelling";

// The plain definition of what links two names: every distance is counted in full, nothing is made ready
// beforehand and no pair is passed over. The program must answer the same, however it gets there.
function plainLink(one: string, other: string): NameLink | null {
  const [few, many] = [wordsOf(one), wordsOf(other)].sort((a, b) => a.length - b.length) as [
    string[],
    string[],
  ];
  if (few.length === 0) return null;
  if (few.length === many.length) {
    if (few.join(" ") === many.join(" ")) return "spelling";
    if ([...few].sort().join(" ") === [...many].sort().join(" ")) return "order";
    if (near(few.join(" "), many.join(" "))) return "spelling";
  }
  return pairedWords(few, many);
}

function pairedWords(few: readonly string[], many: readonly string[]): NameLink | null {
  const free = [...many];
  const ways = [...few]
    .sort((a, b) => b.length - a.length)
    .map((word) => {
      const tests = [
        ["whole", (other: string) => other === word],
        ["slip", (other: string) => word.length > 1 && other.length > 1 && near(word, other)],
        [
          "initial",
          (other: string) => Math.min(word.length, other.length) === 1 && word[0] === other[0],
        ],
      ] as const;
      const way = tests.find(([, test]) => free.some(test));
      if (way) free.splice(free.findIndex(way[1]), 1);
      return way?.[0];
    });
  if (ways.includes(undefined) || ways.every((way) => way === "initial")) return null;
  if (ways.includes("initial")) return "initial";
  if (few.length < many.length) return "part";
  return ways.includes("slip") ? "spelling" : "order";
}

const near = (a: string, b: string) => {
  const shorter = Math.min(a.length, b.length);
  return editDistance(a, b) <= (shorter >= 8 ? 2 : shorter >= 4 ? 1 : 0);
};
const wordsOf = (name: string) =>
  plainWords(name)
    .replace(/\([^)]*\)/g, " ")
    .split(/[\s.,;/_-]+/)
    .filter((word) => word !== "");

/** Few letters, so that names come near one another; initials, accents, brackets, stops. */
const word = fc.string({ unit: fc.constantFrom(..."aaabbcéoK"), maxLength: 10 });
const sign = fc.constantFrom(" ", " ", ". ", "-", ", ", " (u18) ");
const name = fc
  .array(fc.tuple(word, sign), { minLength: 1, maxLength: 3 })
  .map((parts) => parts.flat().join(""));
/** A letter put in, left out, changed or swapped with its neighbour, words turned round, or one shortened. */
const change = fc.tuple(fc.nat(), fc.constantFrom("in", "out", "other", "swap", "turn", "short"));
const changed = (text: string, [nat, how]: readonly [number, string]): string => {
  const at = nat % (text.length + 1);
  const [left, right] = [text.slice(0, at), text.slice(at)];
  if (how === "in") return `${left}d${right}`;
  if (how === "out") return left + right.slice(1);
  if (how === "other") return `${left}d${right.slice(1)}`;
  if (how === "swap") return left + (right[1] ?? "") + (right[0] ?? "") + right.slice(2);
  if (how === "turn") return text.split(" ").reverse().join(" ");
  return `${left[0] ?? ""}. ${right}`;
};
const pair = fc
  .tuple(name, fc.array(change, { maxLength: 3 }), name, fc.boolean())
  .map(([one, changes, other, isOther]) => [one, isOther ? other : changes.reduce(changed, one)]);

test("two names are linked as the plain definition links them, either way round", () => {
  const links = new Map<string, number>();
  fc.assert(
    fc.property(pair, ([one, other]) => {
      const link = nameLink(one!, other!);
      links.set(String(link), (links.get(String(link)) ?? 0) + 1);
      expect(link).toBe(plainLink(one!, other!));
      expect(nameLink(other!, one!)).toBe(plainLink(other!, one!));
    }),
    { numRuns: 4000, seed: 20260602 },
  );
  for (const kind of ["spelling", "initial", "part", "order", "null"])
    expect(links.get(kind)).toBeGreaterThan(50);
});

test("words within so many changes are never passed over for their letters", () => {
  fc.assert(
    fc.property(pair, fc.integer({ min: 0, max: 3 }), ([one, other], changes) => {
      const [a, b] = [spellingOf(one!).whole, spellingOf(other!).whole];
      if (lettersDiffer(a, b, changes))
        expect(editDistance(a.text, b.text)).toBeGreaterThan(changes);
    }),
    { numRuns: 4000, seed: 20260603 },
  );
  const [a, b] = [spellingOf("kofi").whole, spellingOf("wren").whole];
  expect([0, 1, 2, 3, 4].map((changes) => lettersDiffer(a, b, changes))).toEqual([
    true,
    true,
    true,
    true,
    false,
  ]);
});

test("a squad's unknown names are offered the athletes that the plain definition links, in their order", () => {
  const names = fc.array(name, { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(names, names, (written, squad) => {
      const rows = written.map((athlete, at) => ({ row: at + 2, athlete }));
      const athletes = squad.map((athlete) => ({ athlete }));
      for (const { name: unknown, near: offered } of checkNames(rows, athletes))
        expect(offered).toEqual(squad.filter((one) => plainLink(unknown, one) !== null));
      for (const { written: asked, may } of proposeNames(rows, squad))
        for (const { athlete, link } of may) expect(link).toBe(plainLink(asked, athlete));
    }),
    { numRuns: 500, seed: 20260604 },
  );
});
