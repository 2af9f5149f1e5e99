import { autosave, type SaveState } from "../../src/local-host/page/autosave";
import { plainTab, type WorkbookData } from "../../src/local-host/workbook-data";

/** A workbook of one cell whose calculation ends, or is given up, as each test says. */
function typedInto(settled: () => Promise<void>) {
  let change = () => {};
  const kept: unknown[] = [];
  const told: SaveState["state"][] = [];
  const book = (load: number): WorkbookData => ({
    name: "Quillbeck",
    tabs: [plainTab("Sets", [[{ value: load }]])],
    names: [],
    properties: {},
  });
  let load = 0;
  const saving = autosave(
    {
      settled,
      workbook: () => book(load),
      onChange: (watch) => {
        change = watch;
      },
    },
    async ({ tabs }) => {
      kept.push(tabs[0]?.cells[0]?.[0]?.value);
    },
    ({ state }) => told.push(state),
  );
  const type = (typed: number) => {
    load = typed;
    change();
  };
  return { kept, told, type, saving };
}

beforeEach(() => jest.useFakeTimers());
afterEach(() => jest.useRealTimers());

test("what is typed while a calculation does not end is saved, and saved again with its results", async () => {
  let long = true;
  const { kept, told, type } = typedInto(async () => {
    if (long) throw new Error("The calculation did not finish.");
  });
  type(60);
  await jest.advanceTimersByTimeAsync(1000);
  expect([kept, told]).toEqual([[60], ["saving", "saved"]]);
  long = false;
  type(62.5);
  await jest.advanceTimersByTimeAsync(10_000);
  expect(kept).toEqual([60, 62.5]);
});

test("what was saved without its results is saved with them by itself", async () => {
  let long = true;
  const { kept, type, saving } = typedInto(async () => {
    if (long) throw new Error("The calculation did not finish.");
  });
  type(60);
  await jest.advanceTimersByTimeAsync(1000);
  long = false;
  await jest.advanceTimersByTimeAsync(10_000);
  expect(kept).toEqual([60, 60]);
  expect(saving.isPending()).toBe(false);
});
