import type { WorkbookData } from "../../src/local-host/workbook-data";
import { cellsOf, endOf, heldBy, openServices, type ServicesHost } from "./held-by-services";
import { type Cells, standsWhole } from "./whole-cells";
import { type Message, type Scenario, scenarios } from "./writing-actions";

// The built script against the strict services: every call of theirs that changes something, takes or
// gives up the lock fails once in each way; so does the first that only reads after each of them, for a
// stop at any other reading one leaves the same behind. Every list that is read comes shortened once.
jest.setTimeout(7_200_000);

const faults = ["throws before", "throws after it took effect", "answers in part"] as const;
type Fault = (typeof faults)[number];

const tried: string[] = [];
afterAll(() => process.stdout.write(`Fault points tried, on the services: ${tried.join(", ")}.\n`));

/** Lists of tabs, rows and texts, which may come shortened. */
const lists = /\.(?:getSheets|getValues|getFormulas|getProperties|getConditionalFormatRules|find)$/;
const changes = /\.(?:set|insert|delete|add|remove|protect|activate|flush|try|release|build)/;
const only = process.env.FAULTS_OF;

async function prepared({ prepare, message }: Scenario) {
  const host = await openServices();
  const spoilt: string[] = [];
  const held = heldBy(host, spoilt);
  prepare?.(held);
  const asked = message(held);
  const left = host.workbook();
  host.dispose();
  const properties = { ...left.properties };
  for (const key of spoilt) properties[key] = "3 parts";
  return { left: { ...left, properties } satisfies WorkbookData, asked };
}

/** Runs with one fault; a stopped script does nothing any more, and its lock is given up. */
function run(host: ServicesHost, name: string, asked: Message, at: number, fault: Fault): string {
  let calls = 0;
  const failed = (call: string) => new Error(`The service failed in ${call}`);
  host.calls.watch = {
    before: (call) => {
      if (++calls === at && fault === "throws before") throw failed(call);
    },
    after: (call) => {
      if (calls === at && fault === "throws after it took effect") throw failed(call);
    },
    answered: (_, result) =>
      calls === at && fault === "answers in part" && Array.isArray(result)
        ? result.slice(0, Math.floor(result.length / 2))
        : calls === at && fault === "answers in part"
          ? Object.fromEntries(Object.entries(result as object).slice(1))
          : result,
  };
  try {
    host.run(name, [asked]);
    return "done";
  } catch (error) {
    expect(error).not.toBeInstanceOf(TypeError);
    return (error as Error).message;
  } finally {
    host.calls.watch = {};
  }
}

describe.each(
  scenarios
    .filter(({ request }) => only === undefined || request === only)
    .map((one) => [`${one.request}: ${one.name}`, one] as const),
)("%s", (_, scenario) => {
  const { request } = scenario;
  let left: WorkbookData;
  let asked: Message;
  let before: Cells;
  let after: Cells;
  let ended: unknown;
  const made: string[] = [];
  beforeAll(async () => {
    ({ left, asked } = await prepared(scenario));
    const host = await openServices(left);
    before = cellsOf(host);
    host.calls.watch = { before: (call) => void made.push(call) };
    host.run(request, [asked]);
    host.calls.watch = {};
    [after, ended] = [cellsOf(host), endOf(host)];
    host.dispose();
  });

  test.each(faults)(
    "one call %s: no coach's cell differs, asking again completes it",
    async (fault) => {
      let points = 0;
      for (const [i, call] of made.entries()) {
        const stops = i === 0 || changes.test(call) || changes.test(made[i - 1]!);
        if (fault === "answers in part" ? !lists.test(call) : !stops) continue;
        const host = await openServices(left);
        const place = `${call}, call ${i + 1}`;
        const said = run(host, request, asked, i + 1, fault);
        expect([place, said, standsWhole(cellsOf(host), before, after)]).toEqual([place, said, []]);
        host.run(request, [asked]);
        expect([place, endOf(host)]).toEqual([place, ended]);
        host.dispose();
        points++;
      }
      expect(points).toBeGreaterThan(0);
      tried.push(`${request} ${points} (${fault})`);
    },
  );
});
