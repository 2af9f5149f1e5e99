import render from "preact-render-to-string";
import { DiaryChart, type DiaryChartGiven } from "../../src/charts/diary-chart";

// Invented figures of the invented club.
const given: DiaryChartGiven = {
  athlete: "Tomas Reyerson",
  from: "2026-05-05",
  to: "2026-06-23",
  sessions: [
    { day: "2026-05-05", size: 0.3, side: 0 },
    { day: "2026-06-09", size: -2.4, side: -1 },
    { day: "2026-06-16", size: 9, side: 1 },
    { day: "2026-06-23", size: -0.2, side: 0 },
  ],
  band: 1.28,
  marks: [
    { day: "2026-05-04", kind: "note" },
    { day: "2026-06-09", kind: "pain or illness" },
    { day: "2026-06-09", kind: "figure" },
    { day: "2026-06-16", kind: "figure" },
  ],
  keys: { "pain or illness": "pain words", figure: "far from usual", note: "notes" },
  inWords: "Tomas Reyerson, 4 sessions.",
};
const html = render(<DiaryChart {...given} />);

test("it is one picture with a name and a description in words", () => {
  expect(html).toContain("<title>Sessions and diary of Tomas Reyerson");
  expect(html).toContain(`<desc>${given.inWords}</desc>`);
  expect(html).toMatch(/aria-label="Sessions and diary of Tomas Reyerson[^"]*4 sessions\."/);
});

test("nothing depends on a colour: unusual days and each kind of mark have their own shape", () => {
  expect(html).not.toMatch(/(?:fill|stroke)="#|style=/);
  expect(html.match(/class="dot"/g)).toHaveLength(2);
  expect(html.match(/class="dot-down"/g)).toHaveLength(1);
  expect(html.match(/class="dot-up"/g)).toHaveLength(1);
  const shapes = [...html.matchAll(/diary-mark (\w+)" d="([^"]+)"/g)].map(([, look, d]) => {
    const across = d!.match(/[\d.]+/g)!.map(Number);
    return `${look} ${d!.includes("H") ? Math.round(across[2]! - across[0]!) : "diamond"}`;
  });
  expect(shapes).toHaveLength(4);
  expect(new Set(shapes)).toEqual(new Set(["full diamond", "full 2", "open 6"]));
});

test("each lane says what it is and on how many days", () => {
  for (const text of ["pain words: 1 day", "far from usual: 2 days", "notes: 1 day"]) {
    expect(html).toContain(`>${text}<`);
  }
});

test("everything stays inside the picture, far values and the day before the first included", () => {
  const [, width, height] = /viewBox="0 0 (\d+) (\d+)"/.exec(html)!.map(Number);
  const cx = [...html.matchAll(/ c?x="([^"]+)"/g)].map(([, n]) => Number(n));
  const cy = [...html.matchAll(/ c?y="([^"]+)"/g)].map(([, n]) => Number(n));
  for (const n of cx) expect(n).toBeLessThanOrEqual(width!);
  for (const n of cy) expect(n).toBeLessThanOrEqual(height!);
  for (const [, x, y] of html.matchAll(/d="M([-\d.]+) ([-\d.]+)/g)) {
    expect(Number(x)).toBeGreaterThan(0);
    expect(Number(y)).toBeGreaterThan(0);
  }
  expect(html).not.toMatch(/NaN|Infinity|undefined/);
});

test("a season of one session is drawn too", () => {
  const one = render(
    <DiaryChart {...given} to={given.from} sessions={given.sessions.slice(0, 1)} marks={[]} />,
  );
  expect(one).not.toMatch(/NaN|Infinity/);
});
