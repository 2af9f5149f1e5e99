import render from "preact-render-to-string";
import { numberStyle } from "../../src/actions/number-style";
import type { CardPage, PageKind, PrintedPages, RackPage } from "../../src/actions/page-messages";
import type { PrintedSession } from "../../src/actions/pages/printable-week";
import { shortNames } from "../../src/actions/pages/short-names";
import { readWorkbook } from "../../src/actions/read-workbook";
import { serveRequest } from "../../src/actions/requests";
import { PicturePage } from "../../src/pages/picture-page";
import { paperSentences } from "../../src/words/paper-sentences";
import { printedNumbers } from "../../src/words/printed-numbers";
import { type MemoryWorkbook, memoryWorkbook } from "../actions/memory-workbook";
import { sampleClub } from "./sample-club";

const today = "2026-06-28";
const monday = "2026-06-29";
type Of<Kind extends PageKind> = Extract<PrintedPages, { readonly kind: Kind }>;
const fresh = <Kind extends PageKind>(kind: Kind, book = sampleClub(), given: object = {}) =>
  serveRequest(book, "printPages", { today, kind, monday, changes: [], ...given }) as Of<Kind>;
const known = new Map<PageKind, PrintedPages>();
/** The sample's own pages are made once; a changed club's every time. */
const asked = <Kind extends PageKind>(kind: Kind, ...changed: [MemoryWorkbook?, object?]) => {
  if (changed.length > 0) return fresh(kind, ...changed);
  if (!known.has(kind)) known.set(kind, fresh(kind));
  return known.get(kind) as Of<Kind>;
};
const cardOf = (cards: readonly CardPage[], name: string) =>
  cards.find(({ athlete }) => athlete === name);
const platesSaid = ({ short }: RackPage) => paperSentences.platesSaid(short);
const kinds = ["cards", "rack plan", "week page", "pictures"] as const;

test.each(kinds)(
  "%s are plain data, the same from JSON, and reading them changes no cell",
  (kind) => {
    const book = sampleClub();
    const before = book.all();
    const pages = asked(kind, book);
    expect(JSON.parse(JSON.stringify(pages))).toEqual(pages);
    expect(book.all()).toEqual(before);
  },
);

test("a card's bands leave no speed out, each lighter than the one before, the last without a load", () => {
  const { cards } = asked("cards");
  expect(cards.length).toBeGreaterThan(10);
  const hundredths = (text: string) => Math.round(100 * Number(text));
  for (const { bands, lift } of cards) {
    expect(bands.length).toBeGreaterThan(1);
    expect(bands[0]!.speedAfter).toBe("or faster");
    expect(`${bands[0]!.lift} kg`).toBe(lift.load);
    expect(bands[bands.length - 1]).toMatchObject({ lift: "", speedAfter: "or slower, or ill" });
    for (const [at, band] of bands.entries()) {
      const next = bands[at + 1];
      if (!next) continue;
      const lowest = hundredths(band.speed.split(" to ")[0]!);
      const highest = hundredths(next.speed.split(" to ").pop()!);
      expect(highest).toBe(lowest - 1);
      if (next.lift !== "") expect(Number(next.lift)).toBeLessThan(Number(band.lift));
    }
  }
});

test("the plates of every band make its load on the athlete's bar", () => {
  const { cards } = asked("cards");
  for (const { athlete, bands } of cards) {
    const bar = athlete === "Wren Castellow" || athlete === "Bea Lindqvale" ? 15 : 20;
    for (const { lift, side } of bands) {
      if (lift !== "") expect(bar + 2 * side.reduce((sum, kg) => sum + kg, 0)).toBe(Number(lift));
    }
  }
});

test("Tomas in race week: two sets of five, Tuesday only, his marker and three loads", () => {
  const own = asked("cards").cards.filter(({ athlete }) => athlete === "Tomas Reyerson");
  expect(own).toHaveLength(1);
  expect(own[0]).toMatchObject({
    when: "Tue 30 June 2026, 18:00",
    about: "5000 m. Race week: R4 county track weekend, Sat 4 Jul.",
    marker: { load: "67.5 kg", reps: 3, plates: "20 + 2.5 + 1.25 a side" },
    lift: { name: "Back squat", sets: 2, reps: 5 },
  });
  expect(own[0]!.cautions).toHaveLength(2);
  expect(own[0]!.lift.say).toContain("Fewer sets this week.");
});

test("who is out has no card and no place at a rack, and paper says `out` without a reason", () => {
  const fever = (rows: unknown[][]) => [
    ...rows,
    ["Ilka Brandmoor", "2026-06-28", "", "out", "Dr R. Dalgarth", "knee", 6, "torn meniscus"],
  ];
  const book = () => sampleClub({ Availability: fever });
  expect(cardOf(asked("cards").cards, "Ilka Brandmoor")).toBeDefined();
  expect(cardOf(asked("cards", book()).cards, "Ilka Brandmoor")).toBeUndefined();
  expect(JSON.stringify(asked("rack plan", book()))).not.toContain("Ilka");
  const { paper } = asked("week page", book());
  const line = paper.lines.find(({ athlete }) => athlete === "Ilka Brandmoor");
  expect(line).toMatchObject({ mayDo: "out", next: "–", nextDays: "" });
  expect(JSON.stringify(paper)).not.toMatch(/meniscus|knee/);
});

test("no page holds a word of the diary, of a pain site, of who cleared whom, or a strength estimate", () => {
  const marked = (rows: unknown[][]) => rows.map((row, at) => (at === 0 ? row : row.map(secret)));
  // Every text of the diary that is no number, day, name or yes/no becomes a word to look for.
  const secret = (cell: unknown, column: number) =>
    typeof cell === "string" && column > 1 && /[a-z]{4}/.test(cell) ? `zzdiary ${cell}` : cell;
  for (const kind of kinds) {
    const text = JSON.stringify(asked(kind, sampleClub({ Diary: marked })));
    expect(text).not.toMatch(/zzdiary|fever|Dalgarth|Ferriter|Achilles,|strength|soreness|sleep/i);
  }
});

test("an athlete with a calf or Achilles site has no jumps, and the card names no site", () => {
  const joss = cardOf(asked("cards").cards, "Joss Whitterby")!;
  expect(joss.jumps).toEqual({ lead: "No jumps until asked about.", lines: [], care: null });
  const { plans } = asked("rack plan");
  expect(plans[0]!.noJumps).toBe("No jumps: Joss.");
});

test("a change in the sidebar and an athlete left out are on paper as shown there", () => {
  const changes = [
    { athlete: "Oona Petrakell", loadKg: 50, sets: 4 },
    { athlete: "Kofi Anstruther", leaveOut: true },
  ];
  const { cards } = asked("cards", sampleClub(), { changes });
  expect(cardOf(cards, "Oona Petrakell")!.lift).toMatchObject({ load: "50 kg", sets: 4 });
  expect(cardOf(cards, "Kofi Anstruther")).toBeUndefined();
});

test("everyone who lifts stands once in the rack plan, lightest first, and the changes build each bar", () => {
  const { plans } = asked("rack plan");
  expect(plans.map(({ when }) => when)).toEqual([
    "Tue 30 June 2026, 18:00",
    "Thu 2 July 2026, 18:00",
  ]);
  const [tuesday] = plans;
  const names = tuesday!.racks.flatMap(({ lines }) => lines.map(({ athlete }) => athlete));
  expect(new Set(names).size).toBe(12);
  expect(names).toHaveLength(12);
  const kg = (text: string) => text.split(" + ").map(Number);
  for (const { lines } of tuesday!.racks) {
    const loads = lines.map(({ load }) => Number(load));
    expect([...loads].sort((a, b) => a - b)).toEqual(loads);
    // Followed by hand: take off from the outside, put on, and the bar carries what is written.
    const on: number[] = [];
    const follow = (change: string) => {
      const [, off] = /off ([\d. +]+)/.exec(change) ?? [];
      const [, put] = /on ([\d. +]+)/.exec(change) ?? [];
      if (off) for (const mass of kg(off.trim()).reverse()) expect(on.pop()).toBe(mass);
      if (put) on.push(...kg(put.trim()));
    };
    for (const line of lines) if (line.marker !== "–") follow(line.markerChange);
    for (const line of lines) {
      follow(line.change);
      expect(on).toEqual(line.side);
    }
  }
});

test("names kept as “Surname, First” are short by the first name, and whole where two share it", () => {
  const turned = (names: readonly string[]) => {
    const group = names.map((athlete) => ({ line: { athlete } })) as unknown as PrintedSession[];
    return names.map(shortNames(group));
  };
  expect(turned(["O'Brien, Siobhán", "Ek, Tom", "Ana Lopez"])).toEqual(["Siobhán", "Tom", "Ana"]);
  expect(turned(["Ek, Tom", "Lind, Tom"])).toEqual(["Ek, Tom", "Lind, Tom"]);
  expect(turned(["Ek,"])).toEqual(["Ek,"]);
  expect(turned(["J. P. van der Meer", "Ek, Ö", "Jo Lind"])).toEqual([
    "J. P. van der Meer",
    "Ek, Ö",
    "Jo",
  ]);
});

test("a step taken within the week stands beside its day on the head coach's page, as on the cards", () => {
  const step = (rows: unknown[][]) => [...rows, ["Step every session, not by the week", 1]];
  const none = (rows: unknown[][]) => rows.slice(0, 1);
  const book = sampleClub({ Rules: step, Races: none });
  const kofi = "Kofi Anstruther";
  const cards = asked("cards", book).cards.filter(({ athlete }) => athlete === kofi);
  const [first, second] = cards.map(({ lift }) => `${lift.sets}×${lift.reps} at ${lift.load}`);
  expect(second).not.toBe(first);
  const line = asked("week page", book).paper.lines.find(({ athlete }) => athlete === kofi)!;
  expect([line.next, line.nextDays]).toEqual([first, `Tue and Thu ${second}`]);
});

test("a room free too briefly still has a plan, and the page says what it needs", () => {
  const short = (rows: unknown[][]) => [...rows, ["Minutes the racks are free", 5]];
  const [plan] = asked("rack plan", sampleClub({ Rules: short })).plans;
  expect(plan!.warning).toMatch(
    /^The lifts need \d+ min at these racks, and the room is free for 5/,
  );
  expect(plan!.racks.flatMap(({ lines }) => lines)).toHaveLength(12);
});

test("the head coach reads who slipped, since when, by how much, and what holding would have shown", () => {
  const { paper } = asked("week page");
  expect(paper.title).toBe("Week of 22 June, for the head coach");
  const tomas = paper.lines.find(({ athlete }) => athlete === "Tomas Reyerson")!;
  expect(tomas.word).toBe("slipping");
  expect(tomas.words).toMatch(
    /^ since \d+ May \(± \d+ days\): back squat speed \d+ % under baseline, wobble \d+ %$/,
  );
  expect(tomas.sessions).toBe("1 of 2");
  const holding = paper.lines.filter(({ word }) => word === "holding");
  expect(holding.length).toBeGreaterThan(4);
  for (const { athlete, words } of holding) {
    // His tool changed in June: no loss would show in a speed that is not compared.
    const said = athlete === "Nils Quarrington" ? / last compared on 26 May$/ : / would show$/;
    expect(words).toMatch(said);
  }
  expect(paper.sentences.join(" ")).toContain("Next week is a race week for seven");
  expect(paper.sentences.join(" ")).toContain("Tomas Reyerson, 4 of 8");
  expect(paper.weeks[0]).toMatchObject({ week: "29 Jun" });
  expect(paper.lines.filter(({ dress }) => dress === "low").map(({ athlete }) => athlete)).toEqual(
    paper.lines.slice(0, 2).map(({ athlete }) => athlete),
  );
});

test("sessions are counted whether speeds were taken or not: a gym without a tool was not empty", () => {
  const without = (heading: RegExp) => (rows: unknown[][]) => {
    const at = rows[0]!.findIndex((name) => heading.test(String(name)));
    return rows.map((row, index) =>
      index === 0 ? row : row.map((cell, column) => (column === at ? "" : cell)),
    );
  };
  const empty = (rows: unknown[][]) => rows.slice(0, 1);
  const book = sampleClub({ Sets: without(/^Rep speeds/), Jumps: empty });
  const { paper } = asked("week page", book);
  const before = asked("week page").paper;
  const sessions = ({ lines }: typeof paper) =>
    new Map(lines.map((line) => [line.athlete, line.sessions]));
  expect(sessions(paper)).toEqual(sessions(before));
  expect(paper.sentences.join(" ")).not.toContain("No gym rows");
  expect(paper.sentences.join(" ")).toContain("Tomas Reyerson, 4 of 8");
});

test("in the season's second week nobody is said to have missed sessions that were not yet due", () => {
  const from = (rows: unknown[][]) =>
    rows.filter(([day], at) => at === 0 || String(day) >= "2026-06-15");
  const { paper } = asked("week page", sampleClub({ Sets: from, Jumps: from }));
  const said = paper.sentences.join(" ");
  // Two weeks of rows: four sessions are planned, and only who did fewer than seven tenths is named.
  for (const [, done, planned] of said.matchAll(/(\d) of (\d)/g)) {
    expect(Number(planned)).toBeLessThanOrEqual(4);
    expect(Number(done)).toBeLessThan(0.7 * Number(planned));
  }
  expect(said.match(/\d of \d/g)?.length ?? 0).toBeLessThan(3);
});

test("a coach who writes decimal commas reads them on paper", () => {
  const commas = (rows: unknown[][]) =>
    rows.map((row, at) =>
      at === 0
        ? row
        : row.map((cell) =>
            typeof cell === "string" ? cell.replace(/(\d)\.(\d)/g, "$1,$2") : cell,
          ),
    );
  const { cards } = asked("cards", sampleClub({ Sets: commas }));
  expect(cardOf(cards, "Tomas Reyerson")!.marker!.load).toBe("67,5 kg");
  for (const { bands } of cards) for (const { speed } of bands) expect(speed).not.toContain(".");
  const [page] = asked("pictures", sampleClub({ Sets: commas })).pictures;
  const drawn = render(PicturePage({ page: page! })).replace(/<[^>]+>/g, "|");
  expect(drawn).not.toMatch(/\d\.\d/);
  expect(drawn).toMatch(/\|0,\d0\|/);
  const { care } = cardOf(cards, "Tomas Reyerson")!.jumps;
  expect(paperSentences.jumpCare(care!)).toMatch(/^Contact past 0,25 s: lower the drop\./);
});

test("a card says what to mind of the jumps that are on it, and of no others", () => {
  const care = (name: string, given: object = {}) =>
    paperSentences.jumpCare(cardOf(fresh("cards", sampleClub(), given).cards, name)!.jumps.care!);
  expect(care("Tomas Reyerson")).toBe(
    "Contact past 0.25 s: lower the drop. Two misses end the box jump. Achilles or calf pain: no jumps.",
  );
  expect(care("Wren Castellow")).toBe(
    "Soft box. Two misses end the box jump. Achilles or calf pain: no jumps.",
  );
  // That week hops are in place of the drop.
  expect(care("Priya Tellander", { today: "2026-05-10", monday: "2026-05-11" })).toBe(
    "Two misses end the box jump. Achilles or calf pain: no jumps.",
  );
});

test("charts of a coach who keeps pounds say pounds, in the names of the drawings too", () => {
  const [page] = asked("pictures").pictures;
  const drawn = (unit: "kg" | "lb") =>
    render(PicturePage({ page: { ...page!, numbers: { unit, mark: "." } } })).match(
      /<figcaption>[^<]*<\/figcaption>/g,
    )!;
  expect(drawn("kg").filter((name) => /kg/.test(name)).length).toBeGreaterThan(1);
  expect(drawn("lb").filter((name) => /kg/.test(name))).toEqual([]);
  expect(drawn("lb").join()).toMatch(/m\/s and lb.*sets × reps and lb/);
});

test("a gym with pound plates reads pounds: 45 lb is 20.41 kg and comes back as 45", () => {
  const book = memoryWorkbook({
    Plates: [
      ["Mass (lb)", "Thickness (cm)", "Number owned"],
      [45, 5, 4],
      [25, 4, 4],
    ],
  });
  const read = readWorkbook(book, 20_000);
  const { unit, mass } = printedNumbers(numberStyle(read));
  expect(unit).toBe("lb");
  expect(read.rows.plates.map(({ massKg }) => mass(massKg))).toEqual(["45", "25"]);
});

test("a week without anybody to lift gives no pages and says so", () => {
  const all = (rows: unknown[][]) =>
    rows
      .slice(0, 1)
      .concat(sampleAthletes.map((name) => [name, "2026-06-28", "", "out", "", "", "", ""]));
  const pages = asked("cards", sampleClub({ Availability: all }));
  expect(pages.cards).toEqual([]);
  expect(pages.said).toBe("Nobody lifts in that week: there is no page to print");
});
const sampleAthletes = asked("cards").cards.map(({ athlete }) => athlete);

test.each([
  [{ kind: "poster" }, "kind"],
  [{ monday: "2026-02-30" }, "monday"],
  [{ changes: [{ athlete: "Tomas Reyerson", loadKg: -5 }] }, "changes"],
])("a request that cannot be right is refused: %p", (given, part) => {
  expect(() => asked("cards", sampleClub(), given)).toThrow(new RegExp(`sent ${part}`));
});

test("plates needed at once: bars, box-jump stack and drop-jump stack against the number owned", () => {
  const [tuesday] = asked("rack plan").plans;
  for (const { bars, stack, drop, owned, spare } of tuesday!.plates) {
    expect(Number(spare.replace("−", "-"))).toBe(Number(owned) - bars - stack - drop);
    expect(bars % 2).toBe(0);
  }
  const short = tuesday!.plates.filter(({ spare }) => spare.startsWith("−"));
  for (const { plate } of short) expect(platesSaid(tuesday!)).toContain(`${plate} kg`);
  expect(short.length === 0).toBe(platesSaid(tuesday!).startsWith("Every load"));
});

test("the plates of all racks' markers at once are counted too, not the heaviest loads alone", () => {
  // Without plates of 10 kg a marker of 50 to 57.5 kg is 15 kg a side and small ones.
  const noTens = (rows: unknown[][]) => rows.filter(([kg]) => kg !== 10);
  const { plans } = asked("rack plan", sampleClub({ Plates: noTens }));
  const fifteens = plans.map(({ racks, plates }) => {
    const markers = racks.filter(({ lines }) =>
      lines.some(({ marker }) => Number(marker) >= 50 && Number(marker) < 60),
    );
    return [plates.find(({ plate }) => plate === "15")?.bars ?? 0, 2 * markers.length] as const;
  });
  expect(Math.max(...fifteens.map(([, markers]) => markers))).toBeGreaterThan(2);
  for (const [bars, markers] of fifteens) expect(bars).toBeGreaterThanOrEqual(markers);
});

test("the club's gym: on Thursday all is built at once, on Tuesday the novices' drop wants two 25 kg plates more", () => {
  const [tuesday, thursday] = asked("rack plan").plans;
  expect(platesSaid(thursday!)).toBe("Every load and stack can be built at the same time.");
  const short = tuesday!.plates.filter(({ spare }) => spare.startsWith("−"));
  // One pair on the heaviest bar and four under the novices' drop, of four owned.
  expect(short).toEqual([{ plate: "25", bars: 2, stack: 0, drop: 4, owned: "4", spare: "−2" }]);
  expect(platesSaid(tuesday!)).toMatch(/^Not enough of 25 kg for every load/);
});

test("with one number of plates not written down it is not said that all can be built", () => {
  const blank = (rows: unknown[][]) => rows.map((row) => (row[0] === 20 ? [20, row[1], ""] : row));
  const [tuesday, thursday] = asked("rack plan", sampleClub({ Plates: blank })).plans;
  expect(platesSaid(thursday!)).toBe("");
  expect(platesSaid(tuesday!)).toMatch(/^Not enough of 25 kg/);
});

test("plates that the bars alone lack are not to be had by jumping at another time: they go from rack to rack", () => {
  const fewer = (rows: unknown[][]) => rows.map((row) => (row[0] === 10 ? [10, row[1], 2] : row));
  const [tuesday] = asked("rack plan", sampleClub({ Plates: fewer })).plans;
  const ten = tuesday!.plates.find(({ plate }) => plate === "10")!;
  expect(ten.bars).toBeGreaterThan(Number(ten.owned));
  expect(platesSaid(tuesday!)).toBe(
    "Not enough of 10 kg for every bar at once: pass them from rack to rack, or change a load. Not enough of 25 kg for every load and the stacks at once: lift and jump in turn.",
  );
});

test("a card without a rack names what stands for the lift, has no marker, and takes no place at a rack", () => {
  const changes = [{ athlete: "Tomas Reyerson", noRack: true }];
  const card = cardOf(asked("cards", sampleClub(), { changes }).cards, "Tomas Reyerson")!;
  expect(card).toMatchObject({ marker: null, bands: [], rack: "" });
  expect(card.lift).toMatchObject({
    name: "Leg press (in place of back squat)",
    load: "by feel, 2–3 in reserve",
    plates: "",
  });
  expect(card.noBands).toBe("no marker");
  const { plans } = asked("rack plan", sampleClub(), { changes });
  expect(JSON.stringify(plans)).not.toContain("Tomas");
  const { paper } = asked("week page", sampleClub(), { changes });
  expect(paper.lines.find(({ athlete }) => athlete === "Tomas Reyerson")!.next).toBe(
    "2×5 leg press",
  );
});

test("charts of those who moved: the slipping first, two a page, nobody who holds", () => {
  const { pictures } = asked("pictures");
  const all = pictures.flatMap(({ athletes }) => athletes);
  expect(all.map(({ word }) => word)).toEqual(["slipping", "slipping", "rising", "rising"]);
  expect(all[0]!.athlete).toBe("Tomas Reyerson");
  for (const { athletes } of pictures) expect(athletes.length).toBeLessThanOrEqual(2);
  for (const { season, loadSpeed, sets, ahead } of all) {
    expect([season, loadSpeed, sets].includes(null)).toBe(false);
    expect(ahead.map(({ steps }) => steps.length)).toEqual([4]);
  }
});
