import render from "preact-render-to-string";
import { BarDrawing } from "../../src/charts/bar-drawing";
import { LadderChart } from "../../src/charts/ladder-chart";
import { LineChart } from "../../src/charts/line-chart";
import { shortRace } from "../../src/charts/race-labels";
import { SeasonChart } from "../../src/charts/season-chart";
import { SetsChart } from "../../src/charts/sets-chart";
import type { NumberStyle } from "../../src/words/printed-numbers";

// Invented figures of the invented club; what is under test is what a reader can see and hear.
const plain = { unit: "kg", mark: "." } as const;
const season = {
  athlete: "Tomas Reyerson",
  from: "2026-04-01",
  to: "2026-06-28",
  series: [
    {
      name: "bar speed",
      band: 4.6,
      points: [
        { day: "2026-04-07", percent: 0.5 },
        { day: "2026-05-19", percent: -8 },
        { day: "2026-05-26", percent: 6 },
      ],
    },
  ],
  since: { from: "2026-05-02", day: "2026-05-12", to: "2026-05-22", way: "low" as const },
  races: [
    { day: "2026-05-16", name: "R2 county", matters: "A" },
    { day: "2026-06-06", name: "R3", matters: "C" },
  ],
  inWords: "Tomas Reyerson: bar speed −8.1 % since 12 May.",
};
const numbers = (html: string) =>
  [...html.matchAll(/ (?:x|y|cx|cy|x1|x2|y1|y2|width|height|d)="([^"]*)"/g)].map(([, n]) => n!);

const drawings = {
  season: <SeasonChart {...season} />,
  "season of one day": (
    <SeasonChart
      {...season}
      to={season.from}
      series={[{ name: "jump", points: [], band: 4 }]}
      since={null}
    />
  ),
  line: (
    <LineChart
      exercise="Back squat"
      points={[
        { loadKg: 60, speed: 0.9, latest: false },
        { loadKg: 80, speed: 0.7, latest: true },
      ]}
      line={[
        { loadKg: 60, speed: 0.88, low: 0.8, high: 0.96 },
        { loadKg: 80, speed: 0.7, low: 0.62, high: 0.78 },
      ]}
      inWords="Back squat, 20 sets."
      numbers={plain}
    />
  ),
  "line of one load": (
    <LineChart
      exercise="Back squat"
      points={[{ loadKg: 60, speed: 0.9, latest: true }]}
      line={[{ loadKg: 60, speed: 0.9, low: 0.9, high: 0.9 }]}
      inWords="Back squat, 1 set."
      numbers={plain}
    />
  ),
  sets: (
    <SetsChart
      sets={[
        { set: 2, percent: -2, usual: -1, low: -4, high: 2 },
        { set: 3, percent: -9, usual: null, low: null, high: null },
      ]}
      inWords="25 Jun: set 3 left the usual."
    />
  ),
  ladder: (
    <LadderChart
      athlete="Tomas Reyerson"
      steps={[
        { week: "this step", block: "5×5", loadKg: 85 },
        { week: "step 2", block: "3×5", loadKg: 85 },
      ]}
      numbers={plain}
    />
  ),
  bar: <BarDrawing loadKg={85} plates={[20, 10, 2.5]} words="20+10+2.5 a side" numbers={plain} />,
  "bare bar": <BarDrawing loadKg={20} plates={[]} words="bar only" numbers={plain} />,
};

test.each(Object.entries(drawings))(
  "%s is one picture with a name, drawn with numbers only",
  (_, drawing) => {
    const html = render(drawing);
    expect(html).toMatch(/<svg[^>]* role="img"/);
    expect(html).toMatch(/aria-label(ledby)?="[^"]+"/);
    expect(numbers(html).join(" ")).not.toMatch(/NaN|Infinity|undefined|null/);
    // No picture depends on a colour of its own: looks come from the style sheet by class.
    expect(html).not.toMatch(/(?:fill|stroke)="#|style=/);
  },
);

test.each([
  ["season", "Season of Tomas Reyerson, percent of baseline", season.inWords],
  ["line", "Speed against load, Back squat", "Back squat, 20 sets."],
  ["sets", "Speed of each set against the first", "25 Jun: set 3 left the usual."],
  ["ladder", "The weeks ahead for Tomas Reyerson", "this step: 5×5 at 85 kg; step 2: 3×5 at 85 kg"],
] as const)(
  "%s is told in words: a title and a description, both in its name",
  (name, title, told) => {
    const html = render(drawings[name]);
    const titleText = /<title[^>]*>([^<]*)/.exec(html)![1]!;
    const description = /<desc[^>]*>([^<]*)/.exec(html)![1]!;
    expect([titleText, description]).toEqual([title, told]);
    expect(html).toContain(`aria-label="${title}. ${told}"`);
    // A name that points to an id finds another drawing's, where two athletes have one lift or one day.
    expect(html).not.toMatch(/ id="|labelledby/);
  },
);

test("points outside the band have another shape than points inside, low and high ones different", () => {
  const html = render(drawings.season);
  expect(html.match(/<circle class="dot"/g)).toHaveLength(1);
  const low = /class="dot-down" d="M[\d.]+ ([\d.]+)L[\d.]+ ([\d.]+)/.exec(html)!;
  const high = /class="dot-up" d="M[\d.]+ ([\d.]+)L[\d.]+ ([\d.]+)/.exec(html)!;
  expect(Number(low[1])).toBeGreaterThan(Number(low[2]));
  expect(Number(high[1])).toBeLessThan(Number(high[2]));
});

test("each value has the band of its own wobble: what is far for one is within it for another", () => {
  const points = [{ day: "2026-05-19", percent: -8 }];
  const html = render(
    <SeasonChart
      {...season}
      series={[
        { name: "bar speed", band: 4.6, points },
        { name: "reactive strength", band: 12, points },
      ]}
    />,
  );
  const [speed = "", strength = ""] = html.split("reactive strength")[0]!.split('class="key halo"');
  expect(html.match(/class="dot-down"/g)).toHaveLength(1);
  expect(speed).toContain('class="dot-down"');
  expect(strength).toContain('class="dot"');
  expect(html).toMatch(/>\+5<.*>\+12</);
});

test("the figures of a narrow band keep clear of the 0 between them", () => {
  const wide = [{ day: "2026-05-19", percent: 30 }];
  const html = render(
    <SeasonChart {...season} series={[{ name: "bar speed", band: 3, points: wide }]} />,
  );
  const at = (text: string) => {
    const found = new RegExp(`class="tick" x="30" y="([\\d.]+)"[^>]*>${text}`).exec(html);
    return Number(found![1]);
  };
  expect(at("0 %") - at("\\+3")).toBeGreaterThanOrEqual(10);
  expect(at("−3") - at("0 %")).toBeGreaterThanOrEqual(10);
});

test("loads and speeds are written in the mark that is given, in the drawing and in its words", () => {
  const steps = [{ week: "29 Jun", block: "3×5", loadKg: 82.5 }];
  const drawn = (numbers: NumberStyle) =>
    render(<LadderChart athlete="Tomas Reyerson" steps={steps} numbers={numbers} />);
  const ladder = drawn({ unit: "kg", mark: "," });
  expect(ladder).toMatch(/>3×5 82,5</);
  expect(ladder).toContain("29 Jun: 3×5 at 82,5 kg");
  expect(drawn(plain)).toMatch(/>3×5 82\.5</);
});

test("where the coach keeps pounds, steps, bar and line are drawn in pounds", () => {
  // 185 lb and plates of 45, 25 and 2.5 lb, a pound being 0.45359237 kg (international agreement 1959).
  const pound = 0.45359237;
  const pounds = { unit: "lb", mark: "," } as const;
  const steps = [{ week: "29 Jun", block: "3×5", loadKg: 185 * pound }];
  const ladder = render(<LadderChart athlete="Tomas" steps={steps} numbers={pounds} />);
  expect(ladder).toMatch(/>3×5 185</);
  expect(ladder).toContain("29 Jun: 3×5 at 185 lb");
  const plates = [45, 25, 2.5].map((one) => one * pound);
  const bar = render(
    <BarDrawing
      loadKg={185 * pound}
      plates={plates}
      words="45 + 25 + 2,5 a side"
      numbers={pounds}
    />,
  );
  expect(bar).toContain('aria-label="185 lb: 45 + 25 + 2,5 a side"');
  expect(bar.match(/>[\d,]+</g)).toEqual([">45<", ">25<", ">2,5<"]);
  const points = [135, 185].map((load, at) => ({
    loadKg: load * pound,
    speed: 0.9 - 0.2 * at,
    latest: at === 1,
  }));
  const line = points.map(({ loadKg, speed }) => ({
    loadKg,
    speed,
    low: speed - 0.08,
    high: speed + 0.08,
  }));
  const given = { exercise: "Back squat", points, line, inWords: "Back squat, 20 sets." };
  const html = render(<LineChart {...given} numbers={pounds} />);
  const axis = [...html.matchAll(/text-anchor="middle">([^<]+)</g)].map(([, load]) => load);
  expect(axis).toEqual(["140", "160", "180"]);
  expect(html).toContain("m/s by lb.");
  expect(html).toMatch(/>0,80</);
  // The dots stand where they stood in kg: only the figures along the axis are others.
  const dots = (text: string) => text.match(/<circle[^>]*>/g);
  expect(dots(html)).toEqual(dots(render(<LineChart {...given} numbers={plain} />)));
});

test("the days that may hold a rise are blue, those of a loss orange", () => {
  const rising = { ...season, since: { ...season.since, way: "high" as const } };
  expect(render(<SeasonChart {...rising} />)).toMatch(/class="rise thin".*class="rise"/);
  expect(render(<SeasonChart {...rising} />)).not.toContain('class="slip');
  expect(render(drawings.season)).toMatch(/class="slip thin".*class="slip"/);
});

test("an A race is drawn otherwise than a C race, and both are named", () => {
  const html = render(drawings.season);
  expect(html).toMatch(/class="race-a"/);
  expect(html).toMatch(/class="race-b"/);
  expect(html).toMatch(/>R2</);
  expect(html).toMatch(/>R3</);
});

test("the names of races near one another stand in two rows and never on one another", () => {
  const races = [
    { day: "2026-05-02", name: "County Championships", matters: "B" },
    { day: "2026-05-09", name: "Great Midlands Relay", matters: "C" },
    { day: "2026-05-16", name: "St. Albans half", matters: "B" },
    { day: "2026-05-17", name: "Regional Championships", matters: "A" },
    { day: "2026-06-28", name: "Harbour 10, road", matters: "A" },
  ];
  const html = render(<SeasonChart {...season} races={races} />);
  const named = [
    ...html.matchAll(/class="race[^"]*" x="([\d.]+)" y="([\d.]+)"[^>]*>([^<]+)</g),
  ].map(([, x, y, text]) => ({
    y: Number(y),
    from: Number(x) - 3 * text!.length,
    to: Number(x) + 3 * text!.length,
    text,
  }));
  // Every race has its line; the A races have their names whatever else stands there.
  expect(html.match(/<line class="race-/g)).toHaveLength(5);
  expect(named.map(({ text }) => text)).toEqual(
    expect.arrayContaining(["County", "Regional", "Harbour"]),
  );
  for (const one of named) {
    expect([one.from >= 0, one.to <= 276]).toEqual([true, true]);
    const inRow = named.filter((other) => other !== one && other.y === one.y);
    for (const other of inRow) expect(one.to <= other.from || one.from >= other.to).toBe(true);
  }
  // The upper row is inside the drawing, and the first value's name is under the lower one.
  expect(Math.min(...named.map(({ y }) => y))).toBeGreaterThanOrEqual(10);
});

test.each([
  ["R4 county track weekend, 5000 m", "R4"],
  ["St. Albans half", "St. Albans"],
  ["The Dash", "The Dash"],
  ["10k of the river", "10k"],
  ["GNR", "GNR"],
])("%s is named %s above its line", (name, short) => {
  expect(shortRace(name)).toBe(short);
});

test("very many plates stay within the drawing, clear of the words beside it", () => {
  const many = [...Array(9).fill(5), 2.5, 1.25] as number[];
  const html = render(<BarDrawing loadKg={117.5} plates={many} words="" numbers={plain} />);
  const [, wide] = /viewBox="0 0 ([\d.]+) 66" width="140"/.exec(html)!;
  const ends = [...html.matchAll(/class="plate" x="([\d.]+)"[^>]* width="(\d+)"/g)].map(
    ([, x, width]) => Number(x) + Number(width),
  );
  expect(ends).toHaveLength(11);
  expect(Math.max(...ends)).toBeLessThan(Number(wide));
  expect(render(drawings.bar)).toContain('viewBox="0 0 140 66"');
});

test("plates stand from the collar outwards with their mass on them, heavier ones taller", () => {
  const html = render(drawings.bar);
  const masses = [...html.matchAll(/platelabel[^>]*>([\d.]+)</g)].map(([, kg]) => kg);
  expect(masses).toEqual(["20", "10", "2.5"]);
  const heights = [...html.matchAll(/class="plate"[^>]* height="([\d.]+)"/g)].map(([, h]) =>
    Number(h),
  );
  expect(heights).toEqual([...heights].sort((a, b) => b - a));
});

test("a contact time that lengthened lies low and reads above zero there, as its sentence does", () => {
  const points = [{ day: "2026-05-19", percent: -14 }];
  const side = (turned: boolean) => {
    const html = render(
      <SeasonChart {...season} series={[{ name: "contact time", band: 7, points, turned }]} />,
    );
    const height = (text: string) =>
      Number(new RegExp(`y="([^"]*)"[^>]*>${text.replace("+", "\\+")}<`).exec(html)![1]);
    return { html, plusIsLower: height("+7") > height("−7") };
  };
  expect(side(true).plusIsLower).toBe(true);
  expect(side(true).html).toContain("contact time: longer is lower");
  expect(side(false).plusIsLower).toBe(false);
  expect(side(false).html).not.toContain("longer");
});
