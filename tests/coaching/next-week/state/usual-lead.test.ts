import { jStat } from "jstat";
import { usualLineSettings } from "../../../../src/coaching/bar-speed/line-settings";
import { squadLines } from "../../../../src/coaching/bar-speed/squad-lines";
import { usualLeadAt, usualLeads } from "../../../../src/coaching/next-week/state/usual-lead";
import { exerciseKey } from "../../../../src/coaching/record/exercise-key";
import { squadIndex } from "../../../../src/coaching/series/squad-index";
import { inventedSeason, sessionDay } from "../../series/invented-season";

const name = "Ilka Brandmoor";
const { sets } = inventedSeason(name, 20);
const index = squadIndex({ sets }, sessionDay(19));
const found = squadLines({ index, exercise: "squat" })(name);
if (!found.ok) throw new Error(found.refusal.code);
const line = found.value;
const own = index.of(name)!.lifts.get(exerciseKey("squat"))!;

test("the usual speed of the set that decides is its mean, not its fastest repetition", () => {
  const { usual } = usualLeads(own)(line, "work", 60);
  // By hand: each day's first work set, what its mean lies under its fastest repetition.
  const under = own
    .filter(({ leads }) => leads === "work")
    .map(({ set }) => set.repSpeeds as readonly number[])
    .map((reps) => Math.max(...reps) - reps.reduce((sum, one) => sum + one, 0) / reps.length);
  expect(under).toHaveLength(20);
  const [a, b] = [...under].sort((x, y) => x - y).slice(9, 11) as [number, number];
  const middle = (a + b) / 2;
  expect(middle).toBeGreaterThan(0);
  const fastest = line.intercept + line.slope * 60 + line.leads.work.offset;
  expect(usual).toBeCloseTo(fastest - middle, 12);
});

test("how far a mean lies under its fastest is of the kind of set: a marker of one repetition has no such way", () => {
  const ofWork = own.filter(({ leads }) => leads === "work");
  const markers = ofWork.map((one) => ({
    ...one,
    leads: "marker" as const,
    set: { ...one.set, repSpeeds: [one.speed] },
  }));
  const leadOn = usualLeads([...markers, ...ofWork]);
  const lead = (kind: "marker" | "work") =>
    line.intercept + line.slope * 60 + line.leads[kind].offset - leadOn(line, kind, 60).usual;
  expect(lead("marker")).toBeCloseTo(0, 12);
  expect(lead("work")).toBeGreaterThan(0.005);
});

test("one repetition misread slow makes no slower set the usual one", () => {
  const first = own.findIndex(({ leads }) => leads === "work");
  const misread = own.map((one, at) =>
    at === first ? { ...one, set: { ...one.set, repSpeeds: [0.7, 0.1, 0.68] } } : one,
  );
  const { usual } = usualLeads(misread)(line, "work", 60);
  expect(usual).toBeCloseTo(usualLeads(own)(line, "work", 60).usual, 2);
});

test("its slow end is the lower limit of the 80 % prediction interval of a new day's set (Student t by jStat)", () => {
  const { usual, low } = usualLeads(own)(line, "work", 60);
  const t = jStat.studentt.inv(0.9, usualLineSettings.spreadFreedom);
  const daySpread = Math.hypot(line.daySd, line.setSd);
  // The line's own error at a load among those lifted is small beside the days' and the sets' spread.
  expect(usual - low).toBeGreaterThanOrEqual(t * daySpread);
  expect(usual - low).toBeLessThan(t * Math.hypot(daySpread, 0.02));
  // Far from every load lifted the line itself is known less well.
  const far = usualLeads(own)(line, "work", 120);
  expect(far.usual - far.low).toBeGreaterThan(usual - low);
});

test("at a load at which markers were taken the marker decides, at others the first work set", () => {
  const work = own.filter(({ leads }) => leads === "work");
  const [markerKg, workKg] = [45, work[0]!.loadKg!];
  const markers = work.map((one) => ({ ...one, leads: "marker" as const, loadKg: markerKg }));
  const taken = [...markers, ...own];
  // Markers move faster than the line's work sets do at their load.
  const fit = { ...line, leads: { ...line.leads, marker: { ...line.leads.marker, offset: 0.1 } } };
  const [ofMarker, ofWork] = (["marker", "work"] as const).map((kind) =>
    usualLeads(taken)(fit, kind, markerKg),
  );
  expect(ofMarker).not.toEqual(ofWork);
  expect(usualLeadAt(fit, taken, markerKg)).toEqual(ofMarker);
  expect(usualLeadAt(fit, taken, workKg)).toEqual(usualLeads(taken)(fit, "work", workKg));
  expect(usualLeadAt(fit, own, markerKg)).toEqual(usualLeads(own)(fit, "work", markerKg));
});
