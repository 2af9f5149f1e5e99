import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Done } from "../../src/actions/messages";
import { monday, smallClub, today } from "../faults/small-club";
import { local } from "../local-host/built";

// The script's clock and the spreadsheet's differ, as online, where the script's is set by its manifest:
// dates come as moments of the spreadsheet's zone, and what is written must be one of its midnights.

const bundleSource = readFileSync(join(__dirname, "../../dist/code.js"), "utf8");
const askWeek = { today, monday, changes: [], athletes: null };

/** The moment at which a zone's clocks show what this process's clock shows of a date, by trying all. */
function momentIn(zone: string, date: Date): Date {
  const reads = (at: Date, timeZone?: string) => at.toLocaleString("sv-SE", { timeZone });
  const wanted = reads(date);
  const utc = Date.parse(`${wanted.replace(" ", "T")}Z`);
  for (let quarter = -64; quarter <= 64; quarter++) {
    const moment = new Date(utc + quarter * 900_000);
    if (reads(moment, zone) === wanted) return moment;
  }
  throw new Error(`${wanted} is never shown in ${zone}`);
}

const isDate = (cell: unknown): cell is Date =>
  Object.prototype.toString.call(cell) === "[object Date]";

/** Cells as the platform hands them over; what the script itself wrote there is such a moment already. */
function handedOver(zone: string, given: unknown): unknown {
  if (Array.isArray(given)) return given.map((one) => handedOver(zone, one));
  if (!isDate(given) || given.getHours() + given.getMinutes() > 0) return given;
  return momentIn(zone, given);
}

/** The script with every formula handed its arguments as the platform would in a zone. */
const scriptIn = (zone: string) => `${bundleSource.replaceAll("core.compute(", "inZone(")}
${momentIn}
const isDate = ${isDate};
${handedOver}
function inZone(name, args) { return core.compute(name, handedOver("${zone}", [...args])); }
`;

const formulas = [
  "=READINESS(Athletes!A1:C3, Sets!A1:G49, , Diary!A1:F4, Sets!A49)",
  '=SET_TO_SET(Athletes!A1:C3, Sets!A1:G49, "back squat", Sets!A49)',
  '=LOAD_SPEED_LINE(Athletes!A1:C3, Sets!A1:G49, "back squat", Sets!A49)',
];

/** The club with its days as dates, in a spreadsheet of this process's zone or of another. */
async function opened(zone: string | null) {
  const cell = (value: string | number) =>
    /^\d{4}-\d\d-\d\d$/.test(`${value}`)
      ? { value: Date.parse(`${value}`) / 86_400_000 + 25_569, format: "yyyy-mm-dd" }
      : { value };
  const tabs = Object.entries(smallClub()).map(([name, rows]) =>
    local.plainTab(
      name,
      rows.map((row) => row.map(cell)),
    ),
  );
  const host = await local.openHost({
    workbook: { name: "Small club", tabs, names: [], properties: {} },
    bundleSource: zone === null ? bundleSource : scriptIn(zone),
    files: {},
  });
  if (zone !== null) {
    host.calls.watch = {
      answered: (call, result) => {
        if (call === "Spreadsheet.getSpreadsheetTimeZone") return zone;
        return call === "Range.getValues" ? handedOver(zone, result) : result;
      },
    };
  }
  return host;
}

const open: { dispose: () => void }[] = [];
afterAll(() => {
  for (const host of open) host.dispose();
});

/** What the script finds and leaves: answers, formulas, and the week's cells with each date's moment. */
async function found(zone: string | null) {
  const host = await opened(zone);
  open.push(host);
  const answers: unknown[] = [];
  for (const formula of formulas) answers.push(await host.evaluate(formula));
  const written = host.run("writeWeek", [askWeek]) as Done;
  const again = host.run("writeWeek", [askWeek]) as Done;
  host.calls.watch = {};
  return { answers, said: [written.said, again.said], week: host.values("Next week") };
}

test.each(["America/New_York", "Pacific/Auckland", "Asia/Kolkata"])(
  "in a spreadsheet of %s formulas answer the same and the week is written on the same days",
  async (zone) => {
    const [here, there] = [await found(null), await found(zone)];
    expect(here.answers).toEqual(Array(3).fill(expect.objectContaining({ ok: true })));
    expect(there.answers).toEqual(here.answers);
    expect(there.said).toEqual(here.said);
    const days = here.week.flat().filter(isDate);
    expect(days.length).toBeGreaterThan(0);
    const moments = here.week.map((row) =>
      row.map((cell) => (isDate(cell) ? momentIn(zone, cell) : cell)),
    );
    expect(there.week).toEqual(moments);
  },
);
