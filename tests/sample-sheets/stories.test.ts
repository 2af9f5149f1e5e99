import { bestKg, markerResiduals, mean, sampleRows, slopeAWeek } from "./sample-rows";

const values = (athlete: string, from = "", to = "9") =>
  markerResiduals(athlete, from, to).map(({ percentOfBest }) => percentOfBest);
const sets = sampleRows("Sets");
const jumps = sampleRows("Jumps");
const today = "2026-06-28";
/** Mean of a session's wobble of 3 % over n sessions stays within three standard errors. */
const within = (sessions: number) => (3 * 3) / Math.sqrt(sessions);

test("Tomas loses 1.3 % a week from 12 May, and no Thursday is his after it", () => {
  const before = values("Tomas Reyerson", "", "2026-05-11");
  expect(Math.abs(mean(before))).toBeLessThan(within(before.length));
  const after = markerResiduals("Tomas Reyerson", "2026-05-12");
  // Seven Tuesdays with 3 % of wobble: the slope's standard error is 3/√28 = 0.6 a week.
  expect(Math.abs(slopeAWeek(after) + 1.3)).toBeLessThan(1.2);
  expect(mean(after.slice(-2).map(({ percentOfBest }) => percentOfBest))).toBeLessThan(-6);
  expect(after.map(({ date }) => new Date(`${date}T00:00:00Z`).getUTCDay())).toEqual(
    Array(7).fill(2),
  );
});

test("Tomas's rows of 5 May and his marker of 23 June are the ones told of him", () => {
  const told = (date: string, set: string) =>
    sets.find(
      (r) => r.Athlete === "Tomas Reyerson" && r.Date === date && (r.Set || r.Kind) === set,
    );
  expect(told("2026-05-05", "1")).toMatchObject({
    Reps: "5",
    "Load (kg)": "85",
    "Rep speeds (m/s)": "0.63 0.62 0.61 0.61 0.60",
    "Movement ok?": "y",
    "Reps in reserve": "3",
  });
  expect(told("2026-05-05", "marker")).toMatchObject({
    "Load (kg)": "67.5",
    "Rep speeds (m/s)": "0.86 0.85 0.86",
  });
  expect(told("2026-06-23", "marker")).toMatchObject({ "Rep speeds (m/s)": "0.79 0.80 0.78" });
  expect(told("2026-06-23", "1")).toMatchObject({ "Load (kg)": "80" });
});

test.each([
  ["Wren Castellow", 1.5],
  ["Bea Lindqvale", 1],
])("%s rises by about %s %% a week", (athlete, rise) => {
  // Some 22 sessions over 12 weeks: standard error about 3/(3.4·√22) = 0.19 a week.
  expect(Math.abs(slopeAWeek(markerResiduals(athlete)) - rise)).toBeLessThan(0.57);
});

test("Wren's knees came in on 14 May and the step was repeated", () => {
  const work = sets.filter((row) => row.Athlete === "Wren Castellow" && row.Kind === "work");
  const marked = new Set(work.filter((r) => r["Movement ok?"] === "n").map((r) => r.Date));
  expect([...marked]).toEqual(["2026-05-14"]);
  const block = (date: string) => {
    const rows = work.filter((row) => row.Date === date);
    return `${rows.length}x${rows[0]?.Reps} at ${rows[0]?.["Load (kg)"]}`;
  };
  expect(block("2026-05-19")).toBe(block("2026-05-14"));
});

test("Kofi's fourth and fifth set of 28 May fell away by 12 % and 20 %, on no other day", () => {
  const firstReps = (date: string) =>
    sets
      .filter((r) => r.Athlete === "Kofi Anstruther" && r.Date === date && r.Kind === "work")
      .map((r) => mean(r["Rep speeds (m/s)"]!.split(" ").map(Number)));
  const [one, two, three, four, five] = firstReps("2026-05-28");
  const fresh = mean([one!, two! / 0.99, three! / 0.98]);
  expect(Math.abs(four! / (fresh * 0.97) - 0.88)).toBeLessThan(0.04);
  expect(Math.abs(five! / (fresh * 0.96) - 0.8)).toBeLessThan(0.04);
  for (const date of ["2026-04-07", "2026-05-05", "2026-05-26"]) {
    const speeds = firstReps(date);
    expect(speeds.at(-1)! / speeds[0]!).toBeGreaterThan(0.9);
  }
});

test("Ilka is calm, and 9 % up on 16 June", () => {
  const calm = markerResiduals("Ilka Brandmoor").filter(({ date }) => date !== "2026-06-16");
  const level = mean(calm.map(({ percentOfBest }) => percentOfBest));
  expect(Math.abs(level)).toBeLessThan(within(calm.length));
  expect(Math.abs(values("Ilka Brandmoor", "2026-06-16", "2026-06-16")[0]! - 9)).toBeLessThan(9);
  expect(values("Ilka Brandmoor", "2026-06-16", "2026-06-16")[0]!).toBeGreaterThan(5);
});

test("Oona comes once a week and stays level", () => {
  const all = markerResiduals("Oona Petrakell");
  expect(all).toHaveLength(12);
  expect(Math.abs(slopeAWeek(all))).toBeLessThan(0.8);
});

test("Dario has no row while he has a fever, and comes back at 6 % less and lighter", () => {
  const away = [...sets, ...jumps, ...sampleRows("Diary"), ...sampleRows("Runs")].filter(
    (r) => r.Athlete === "Dario Quell" && r.Date! >= "2026-05-18" && r.Date! <= "2026-06-01",
  );
  expect(away).toEqual([]);
  const back = values("Dario Quell", "2026-06-02", "2026-06-11");
  expect(Math.abs(mean(back) + 5)).toBeLessThan(within(back.length));
  const loads = (date: string) =>
    sets
      .filter((r) => r.Athlete === "Dario Quell" && r.Date === date && r.Kind === "work")
      .map((r) => Number(r["Load (kg)"]));
  expect(loads("2026-06-02")).toEqual([70, 70]);
  expect(Math.max(...loads("2026-05-14"))).toBe(87.5);
});

test("Priya's eight slow days stand apart, seven after a short night, as do three of the other 24", () => {
  const days = markerResiduals("Priya Tellander");
  expect(days).toHaveLength(32);
  const slowest = [...days].sort((a, b) => a.percentOfBest - b.percentOfBest);
  const slow = slowest.slice(0, 8);
  const others = slowest.slice(8);
  const value = ({ percentOfBest }: { percentOfBest: number }) => percentOfBest;
  expect(Math.abs(mean(slow.map(value)) - mean(others.map(value)) + 7)).toBeLessThan(4);
  const sleep = new Map(
    sampleRows("Diary")
      .filter((row) => row.Athlete === "Priya Tellander")
      .map((row) => [row.Date, Number(row["Sleep (h)"])]),
  );
  const short = (list: typeof days) => list.filter(({ date }) => sleep.get(date)! < 6).length;
  expect([short(slow), short(others)]).toEqual([7, 3]);
});

test("Hamid runs a marathon, is 6 % down on 7 May and level from 19 May", () => {
  expect(values("Hamid Sorley", "2026-04-27", "2026-05-06")).toEqual([]);
  expect(values("Hamid Sorley", "2026-05-07", "2026-05-07")[0]!).toBeLessThan(-2);
  const level = values("Hamid Sorley", "2026-05-19");
  expect(Math.abs(mean(level))).toBeLessThan(within(level.length));
});

test("Nils's new tool reads 0.04 m/s more from 2 June, and his home plates are in pounds", () => {
  const own = sets.filter((r) => r.Athlete === "Nils Quarrington" && r.Tool !== "");
  expect(new Set(own.filter((r) => r.Date! < "2026-06-02").map((r) => r.Tool))).toEqual(
    new Set(["bar tool A"]),
  );
  expect(new Set(own.filter((r) => r.Date! >= "2026-06-02").map((r) => r.Tool))).toEqual(
    new Set(["bar tool B"]),
  );
  const home = own.filter((r) => r.Gym === "home");
  expect(home.length).toBeGreaterThan(10);
  expect(home.every((r) => r["Load (kg)"]!.endsWith(" lb"))).toBe(true);
  // 0.04 m/s at a marker 40 % under best is 0.04/(1.45·0.6) = 4.6 % of best.
  const before = values("Nils Quarrington", "", "2026-06-01");
  const after = values("Nils Quarrington", "2026-06-02");
  const error = 3 * 3 * Math.sqrt(1 / before.length + 1 / after.length);
  expect(Math.abs(mean(after) - mean(before) - 5)).toBeLessThan(error);
});

test("Joss's contact lengthens to 221 and 243 ms while his squat holds", () => {
  const contact = (date: string) =>
    mean(
      jumps
        .filter((r) => r.Athlete === "Joss Whitterby" && r.Date === date && r.Test === "drop jump")
        .map((r) => Number(r["Contact time (ms)"])),
    );
  expect(Math.abs(contact("2026-06-09") - 221)).toBeLessThanOrEqual(0.5);
  expect(Math.abs(contact("2026-06-23") - 243)).toBeLessThanOrEqual(0.5);
  expect(Math.abs(contact("2026-04-14") - 190)).toBeLessThan(20);
  const all = values("Joss Whitterby", "2026-05-19");
  expect(Math.abs(mean(all))).toBeLessThan(within(all.length));
});

test("Maren joins on 26 May with twice the wobble of the others", () => {
  const all = values("Maren Aspholt");
  expect(markerResiduals("Maren Aspholt")[0]!.date).toBe("2026-05-26");
  expect(all).toHaveLength(10);
  const sd = Math.sqrt(
    all.reduce((sum, value) => sum + (value - mean(all)) ** 2, 0) / (all.length - 1),
  );
  expect(sd).toBeGreaterThan(4);
});

test("marker loads are about 60 % of best, and work sets start from about 75 %", () => {
  for (const [athlete, best] of Object.entries(bestKg)) {
    const first = sets.filter((r) => r.Athlete === athlete).slice(0, 3);
    expect(Math.abs(Number(first[1]?.["Load (kg)"]) / best - 0.6)).toBeLessThan(0.04);
    expect(Math.abs(Number(first[2]?.["Load (kg)"]) / best - 0.78)).toBeLessThan(0.08);
  }
});

test("nothing done lies after today; runs and races are planned beyond it", () => {
  for (const table of ["Sets", "Jumps", "Diary"]) {
    expect([table, sampleRows(table).filter((row) => row.Date! > today)]).toEqual([table, []]);
  }
  const beyond = sampleRows("Runs").filter((row) => row.Date! > today);
  expect(beyond.length).toBeGreaterThan(80);
  expect(beyond.filter((row) => row.Exertion !== "")).toEqual([]);
  expect(sampleRows("Races").filter((row) => row.Date! > today)).toHaveLength(5);
});

test("the slips left in the rows are the five told", () => {
  expect(sets.filter((row) => row["Rep speeds (m/s)"]!.includes(" 62 "))).toHaveLength(1);
  expect(sets.filter((row) => row.Athlete === "Tomas Reyersen")).toHaveLength(1);
  expect(sets.filter((row) => row.Kind === "work" && row["Load (kg)"] === "")).toHaveLength(1);
  const lines = sets.map((row) => JSON.stringify(row));
  expect(lines.filter((line, i) => lines.indexOf(line) !== i)).toHaveLength(1);
  expect(sampleRows("Diary").filter((row) => row["Sleep (h)"] === "75")).toHaveLength(1);
});
