import { catalogue } from "../../src/catalogue";
import { isoFromDay } from "../../src/coaching/calendar/day";
import { stackHeight } from "../../src/coaching/jumps/stack-height";
import type { JumpAttempt } from "../../src/coaching/record/jump-attempt";
import type { LiftingSet } from "../../src/coaching/record/lifting-set";
import type { Cells } from "../../src/rows/cells";
import { readTable } from "../../src/rows/read-table";
import type { AthleteJumps } from "../../src/warehouse/jump-table";
import {
  checkJumps,
  checkSets,
  jumpTrend,
  loadSpeedLine,
  seasonHold,
  setToSet,
} from "../../src/warehouse/main";
import type { AthleteSets } from "../../src/warehouse/set-table";
import { warehouseFunctions } from "../../src/warehouse/warehouse-functions";
import { sampleCells } from "../actions/sample-club";

const asOf = "2026-06-27";
const plates = readTable("Plates", sampleCells("Plates")).records;

/** The sample's rows that are read whole, for the sheet and for the warehouse do not see the same cells of the rest. */
function cleanRows(table: "Sets" | "Jumps"): Cells {
  const cells = sampleCells(table);
  const { issues } = readTable(table, cells);
  const spoilt = new Set(issues.map(({ row }) => row));
  return cells.filter((_, at) => !spoilt.has(at + 1));
}

function byAthlete<Row extends { readonly athlete: string }, Kept>(
  rows: readonly Row[],
  kept: (row: Row) => Kept,
): readonly { readonly athlete: string; readonly rows: readonly Kept[] }[] {
  const names = [...new Set(rows.map(({ athlete }) => athlete))].sort();
  return names.map((athlete) => ({
    athlete,
    rows: rows.filter((row) => row.athlete === athlete).map(kept),
  }));
}

const setCells = cleanRows("Sets");
const sets = readTable("Sets", setCells).records as readonly LiftingSet[];
const liftedBy: readonly AthleteSets[] = byAthlete(sets, (set) => ({
  day: isoFromDay(set.day),
  exercise: set.exercise,
  set_number: set.set,
  kind: set.kind,
  load_kg: set.loadKg,
  rep_speeds: set.repSpeeds,
  mean_speed: set.setSpeed,
  tool: set.tool,
  speed_is: set.speedIs,
  bar_kg: set.barKg,
  gym: set.gym,
})).map(({ athlete, rows }) => ({ athlete, sets: rows }));

const jumpCells = cleanRows("Jumps");
const jumps = readTable("Jumps", jumpCells).records as readonly JumpAttempt[];
const heightOf = ({ heightCm, stackKg }: JumpAttempt) => {
  if (stackKg.length === 0) return heightCm;
  const height = stackHeight(stackKg, plates);
  return height.ok ? height.value : null;
};
const jumpedBy: readonly AthleteJumps[] = byAthlete(jumps, (jump) => ({
  day: isoFromDay(jump.day),
  test: jump.test,
  height_cm: heightOf(jump),
  flight_s: jump.flightS,
  contact_s: jump.contactS,
  landing_cm: jump.landingCm,
  cleared: jump.cleared ?? (jump.stackKg.length > 0 ? true : null),
  drop_cm: jump.dropCm,
})).map(({ athlete, rows }) => ({ athlete, jumps: rows }));

const inSheet = (formula: string, ...args: readonly unknown[]) =>
  catalogue.find(({ name }) => name === formula)!.compute(args) as unknown[][];
const inRows = (name: string, said: readonly Readonly<Record<string, unknown>>[]) => {
  const { order } = warehouseFunctions.find((one) => one.name === name)!;
  return said.map((answer) =>
    answer.refused === null
      ? order.map((column) => answer[column] ?? "–")
      : [answer.refused, ...order.slice(1).map(() => "–")],
  );
};

test("the sample season's sets are answered to the last digit as in the sheet, gym and bar and kind of speed with them", () => {
  const names = liftedBy.map(({ athlete }) => [athlete]);
  expect(names).toHaveLength(13);
  expect(inRows("seasonHold", seasonHold(liftedBy, asOf))).toEqual(
    inSheet("SEASON_HOLD", names, setCells, "", asOf),
  );
  expect(inRows("loadSpeedLine", loadSpeedLine(liftedBy, "back squat", asOf))).toEqual(
    inSheet("LOAD_SPEED_LINE", names, setCells, "back squat", asOf),
  );
  expect(inRows("setToSet", setToSet(liftedBy, "back squat", asOf))).toEqual(
    inSheet("SET_TO_SET", names, setCells, "back squat", asOf),
  );
});

test("a session in another gym is said in the warehouse too, and never read as a fall", () => {
  const nils = seasonHold(liftedBy, asOf).find(({ athlete }) => athlete === "Nils Quarrington")!;
  expect(nils.why).toContain("with another gym (home; baseline: Quillbeck gym) are not compared");
  expect(nils.why).toContain("with another tool (bar tool B; baseline: bar tool A)");
});

test.each(["box jump", "drop jump"])(
  "the sample season's %ss are answered to the last digit as in the sheet, stacks by their heights",
  (jump) => {
    const names = jumpedBy.map(({ athlete }) => [athlete]);
    const sheet = inSheet("JUMP_TREND", names, jumpCells, jump, asOf, sampleCells("Plates"));
    expect(inRows("jumpTrend", jumpTrend(jumpedBy, jump, asOf))).toEqual(sheet);
    expect(sheet.filter(([baseline]) => typeof baseline === "number").length).toBe(
      jump === "box jump" ? 12 : 2,
    );
  },
);

const lifted = (athlete: string | null, ...more: readonly object[]): AthleteSets => ({
  athlete: athlete as string,
  sets: more.map((one) => ({
    day: "2026-05-05",
    exercise: "back squat",
    load_kg: 80,
    rep_speeds: [0.6, 0.58],
    ...one,
  })),
});

test("what cannot be used is listed by athlete, day, place and column, with what to do", () => {
  const squad = [
    lifted("Ilka Brandmoor", {}, { load_kg: 8200 }, { rep_speeds: [0.6, 58] }, { day: "soon" }),
    lifted("Joss Whitterby", { tool: "cord" }),
  ];
  const found = checkSets(squad);
  expect(
    found.map(({ athlete, day, place, column_name }) => [athlete, day, place, column_name]),
  ).toEqual([
    ["Ilka Brandmoor", "2026-05-05", 2, "load_kg"],
    ["Ilka Brandmoor", "2026-05-05", 3, "rep_speeds"],
    ["Ilka Brandmoor", "soon", 4, "day"],
  ]);
  for (const { found: what, what_to_do, why_it_matters } of found) {
    for (const words of [what, what_to_do, why_it_matters]) expect(words).toMatch(/\S/);
  }
  const [ilka, joss] = loadSpeedLine(squad, "back squat", asOf);
  expect(ilka!.rests_on).toContain("3 rows with a cell not used (see check_sets)");
  expect(joss!.rests_on).not.toContain("not used");
  expect(
    checkJumps([
      { athlete: "Ilka Brandmoor", jumps: [{ day: "2026-05-05", test: "box jump" }] },
      { athlete: "Joss Whitterby", jumps: null },
    ]).map(({ athlete, place, column_name }) => [athlete, place, column_name]),
  ).toEqual([["Ilka Brandmoor", 1, "height_cm"]]);
  expect([checkSets(null), checkSets([lifted("Ilka Brandmoor", {})])]).toEqual([[], []]);
});

test("rows that name no athlete are refused in words, beside the others and alone", () => {
  const none = "These rows name no athlete: fill in whose they are.";
  const [nobody, blank, ilka] = seasonHold(
    [lifted(null, {}), lifted(" ", {}), lifted("Ilka Brandmoor", {})],
    asOf,
  );
  expect([nobody!.refused, blank!.refused, ilka!.refused]).toEqual([none, none, null]);
  expect(nobody!.word).toBeNull();
  expect(setToSet([lifted(null, {})], "back squat", asOf)).toMatchObject([{ refused: none }]);
});
