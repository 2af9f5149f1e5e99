import type { Highlight, Tab, Workbook } from "../../src/actions/workbook";
import { spreadsheetWords } from "../../src/words/spreadsheet";

type MemoryTab = Tab & { readonly cells: { value: unknown; formula: string }[][] };

/** A workbook in memory: tabs of cells, what was remembered, highlights; every change is counted. */
export type MemoryWorkbook = Workbook & {
  readonly tabNamed: (name: string) => Tab;
  /** Types into a cell as a coach would; "=…" is a formula whose value is given. */
  readonly type: (
    name: string,
    row: number,
    column: number,
    value: unknown,
    formula?: string,
  ) => void;
  readonly insertColumn: (name: string, column: number) => void;
  /** Moves a column before another, both counted before the move. */
  readonly moveColumn: (name: string, from: number, before: number) => void;
  readonly deleteColumn: (name: string, column: number) => void;
  /** Moves a tab to a place among the tabs, from 0. */
  readonly moveTab: (name: string, to: number) => void;
  /** A coach's new tab at a place among the tabs. */
  readonly insertTab: (name: string, at: number) => void;
  readonly sortRows: (
    name: string,
    fromRow: number,
    by: (row: readonly unknown[]) => string,
  ) => void;
  readonly rename: (from: string, to: string) => void;
  readonly marks: (name: string) => readonly Highlight[];
  readonly coachMark: (name: string, highlight: Highlight) => void;
  /** Everything that can be seen or is remembered, for comparing. */
  readonly all: () => unknown;
  readonly selected: () => string | null;
  /** Another workbook in which everything stands, and is remembered, as it does here now. */
  readonly copy: () => MemoryWorkbook;
  /** Calls made, by name, in order. */
  readonly calls: string[];
  /** Makes the given call, counted from 1, fail; Infinity for none. */
  failAt: number;
};

/** All that a workbook in memory holds; a cell is never changed, only replaced. */
type Held = {
  nextId: number;
  readonly made: MemoryTab[];
  readonly kept: Map<string, string>;
  readonly marks: Map<number, readonly { ours: boolean; highlight: Highlight }[]>;
  readonly offers: Map<string, readonly string[]>;
  readonly dressed: Map<string, unknown>;
  /** By tab: the first columns kept in view. */
  readonly inView: Map<number, number>;
  readonly formats: Map<string, string>;
  readonly aligned: Set<string>;
  readonly painted: Map<string, string>;
  readonly warned: Map<string, string>;
  /** By tab: the column each tag stands on, from 1. */
  readonly tags: Map<number, Map<string, number>>;
};

const nothingHeld = (): Held => ({
  nextId: 100,
  made: [],
  kept: new Map(),
  marks: new Map(),
  offers: new Map(),
  dressed: new Map(),
  inView: new Map(),
  formats: new Map(),
  aligned: new Set(),
  painted: new Map(),
  warned: new Map(),
  tags: new Map(),
});

const copyOf = (held: Held): Held => ({
  nextId: held.nextId,
  made: held.made.map((tab) => ({ ...tab, cells: tab.cells.map((row) => [...row]) })),
  kept: new Map(held.kept),
  marks: new Map(held.marks),
  offers: new Map(held.offers),
  dressed: new Map(held.dressed),
  inView: new Map(held.inView),
  formats: new Map(held.formats),
  aligned: new Set(held.aligned),
  painted: new Map(held.painted),
  warned: new Map(held.warned),
  tags: new Map([...held.tags].map(([id, columns]) => [id, new Map(columns)])),
});

export function memoryWorkbook(
  tabs: Readonly<Record<string, readonly (readonly unknown[])[]>>,
  held: Held = nothingHeld(),
): MemoryWorkbook {
  const { made, kept, marks, offers, dressed, formats, aligned, painted, warned, tags } = held;
  const { inView } = held;
  const add = (name: string, rows: readonly (readonly unknown[])[]): MemoryTab => {
    const tab = {
      id: held.nextId++,
      name,
      cells: rows.map((row) => row.map((value) => ({ value, formula: "" }))),
    };
    made.push(tab);
    return tab;
  };
  for (const [name, rows] of Object.entries(tabs)) add(name, rows);
  const tagsOf = (id: number) => {
    const found = tags.get(id) ?? new Map<string, number>();
    tags.set(id, found);
    return found;
  };
  /** Columns renumbered; null takes one out, and its tag with it. */
  const renumber = (id: number, to: (column: number) => number | null) => {
    for (const [tag, column] of [...tagsOf(id)]) {
      const now = to(column);
      if (now === null) tagsOf(id).delete(tag);
      else tagsOf(id).set(tag, now);
    }
  };
  let selected: string | null = null;
  let locked = false;
  const tabOf = (id: number) => {
    const tab = made.find((one) => one.id === id);
    if (!tab) throw new Error(spreadsheetWords.tabGone);
    return tab;
  };
  const named = (name: string) => {
    const tab = made.find((one) => one.name === name);
    if (!tab) throw new Error(`No tab ${name}`);
    return tab;
  };
  const grid = (id: number) => {
    const { cells } = tabOf(id);
    const width = Math.max(1, ...cells.map((row) => row.length));
    const rows = cells.length === 0 ? [[]] : cells;
    return rows.map((row) =>
      Array.from({ length: width }, (_, i) => row[i] ?? { value: "", formula: "" }),
    );
  };
  const put = (tab: MemoryTab, row: number, column: number, value: unknown, formula = "") => {
    while (tab.cells.length < row) tab.cells.push([]);
    const line = tab.cells[row - 1]!;
    while (line.length < column) line.push({ value: "", formula: "" });
    line[column - 1] = { value, formula };
  };
  const lockedWrite = () => {
    if (!locked) throw new Error("Written without the lock");
  };
  const calls: string[] = [];
  const counted =
    <Args extends unknown[], Answer>(name: string, work: (...args: Args) => Answer) =>
    (...args: Args): Answer => {
      calls.push(name);
      if (calls.length === book.failAt) throw new Error(`The platform failed in ${name}`);
      return work(...args);
    };
  const book: MemoryWorkbook = {
    failAt: Number.POSITIVE_INFINITY,
    calls,
    tabs: counted("tabs", () => made.map(({ id, name }) => ({ id, name }))),
    values: counted("values", (id: number) => grid(id).map((row) => row.map(({ value }) => value))),
    formulas: counted("formulas", (id: number) =>
      grid(id).map((row) => row.map(({ formula }) => formula)),
    ),
    write: counted("write", (id, { row, column, values }) => {
      lockedWrite();
      values.forEach((line, i) => {
        line.forEach((cell, j) => {
          if (typeof cell === "object" && "day" in cell) {
            const [year, month, date] = cell.day.split("-").map(Number);
            put(tabOf(id), row + i, column + j, new Date(year!, month! - 1, date!));
          } else if (typeof cell === "object") {
            put(tabOf(id), row + i, column + j, `(${cell.formula})`, cell.formula);
          } else put(tabOf(id), row + i, column + j, cell);
        });
      });
    }),
    addTab: counted("addTab", (name) => {
      lockedWrite();
      if (made.some((one) => one.name === name)) throw new Error("A tab of that name is there");
      const { id } = add(name, []);
      return { id, name };
    }),
    keepInView: counted("keepInView", (id, columns) => {
      inView.set(id, columns);
    }),
    dress: counted("dress", (id, headingRow, widths, fromColumn = 1) => {
      dressed.set(`${id}!${fromColumn}`, { headingRow, widths });
    }),
    isPlain: counted("isPlain", (id, column) =>
      [...painted.keys()].every((key) => !key.startsWith(`${tabOf(id).name}!${column}!`)),
    ),
    paint: counted("paint", (id, column, fromRow, colour) => {
      painted.set(`${tabOf(id).name}!${column}!${fromRow}`, colour);
    }),
    select: counted("select", (id, range) => {
      selected = `${tabOf(id).name}!${range}`;
    }),
    highlights: counted("highlights", (id) =>
      (marks.get(id) ?? []).flatMap(({ ours, highlight }) => (ours ? [highlight.formula] : [])),
    ),
    highlight: counted("highlight", (id, highlights) => {
      lockedWrite();
      const coaches = (marks.get(id) ?? []).filter(({ ours }) => !ours);
      marks.set(id, [...coaches, ...highlights.map((highlight) => ({ ours: true, highlight }))]);
    }),
    offer: counted("offer", (id, range, values) => {
      offers.set(`${id}!${range}`, values);
    }),
    format: counted("format", (id, range, pattern) => {
      formats.set(`${tabOf(id).name}!${range}`, pattern);
    }),
    decimalMark: counted("decimalMark", () => "." as const),
    alignLeft: counted("alignLeft", (id, range) => {
      aligned.add(`${tabOf(id).name}!${range}`);
    }),
    warn: counted("warn", (id, range, reason) => {
      warned.set(`${tabOf(id).name}!${range}`, reason);
    }),
    tagColumn: counted("tagColumn", (id, column, tag) => {
      lockedWrite();
      tagsOf(id).set(tag, column);
    }),
    taggedColumns: counted("taggedColumns", (id) => new Map(tagsOf(id))),
    untagColumn: counted("untagColumn", (id, tag) => {
      lockedWrite();
      tagsOf(id).delete(tag);
    }),
    recall: counted("recall", (key) => kept.get(key) ?? null),
    recallAll: counted("recallAll", () => Object.fromEntries(kept)),
    remember: counted("remember", (texts) => {
      for (const [key, value] of Object.entries(texts)) {
        if (value.length * 3 > 9000) throw new Error("Argument too large: value");
        kept.set(key, value);
      }
    }),
    forget: counted("forget", (keys) => {
      for (const key of keys) kept.delete(key);
    }),
    alone: counted("alone", <Answer>(work: () => Answer): Answer => {
      if (locked) throw new Error("Locked");
      locked = true;
      try {
        return work();
      } finally {
        locked = false;
      }
    }) as Workbook["alone"],
    tabNamed: named,
    type: (name, row, column, value, formula = "") => put(named(name), row, column, value, formula),
    insertColumn: (name, column) => {
      for (const row of named(name).cells) {
        if (row.length >= column) row.splice(column - 1, 0, { value: "", formula: "" });
      }
      renumber(named(name).id, (at) => (at >= column ? at + 1 : at));
    },
    moveColumn: (name, from, before) => {
      const to = before > from ? before - 1 : before;
      const { id, cells } = named(name);
      const width = Math.max(...cells.map((row) => row.length));
      for (const row of cells) {
        while (row.length < width) row.push({ value: "", formula: "" });
        row.splice(to - 1, 0, ...row.splice(from - 1, 1));
      }
      const order = Array.from({ length: width }, (_, at) => at + 1);
      order.splice(to - 1, 0, ...order.splice(from - 1, 1));
      renumber(id, (at) => order.indexOf(at) + 1);
    },
    deleteColumn: (name, column) => {
      for (const row of named(name).cells) row.splice(column - 1, 1);
      renumber(named(name).id, (at) => (at === column ? null : at > column ? at - 1 : at));
    },
    moveTab: (name, to) => {
      const [tab] = made.splice(made.indexOf(named(name)), 1);
      made.splice(to, 0, tab!);
    },
    insertTab: (name, at) => {
      add(name, []);
      made.splice(at, 0, ...made.splice(-1));
    },
    sortRows: (name, fromRow, by) => {
      const { cells } = named(name);
      const key = (row: MemoryTab["cells"][number]) => by(row.map(({ value }) => value));
      const sorted = cells.splice(fromRow - 1).sort((a, b) => (key(a) < key(b) ? -1 : 1));
      cells.push(...sorted);
    },
    rename: (from, to) => {
      const at = made.findIndex((one) => one.name === from);
      made[at] = { ...made[at]!, name: to };
    },
    marks: (name) => (marks.get(named(name).id) ?? []).map(({ highlight }) => highlight),
    coachMark: (name, highlight) => {
      const { id } = named(name);
      marks.set(id, [...(marks.get(id) ?? []), { ours: false, highlight }]);
    },
    all: () =>
      JSON.parse(
        JSON.stringify({
          tabs: made.map(({ id, name }) => ({ name, cells: grid(id) })),
          marks: [...marks],
          dressed: [...dressed],
          inView: [...inView],
          offers: [...offers],
          formats: [...formats],
          aligned: [...aligned],
          warned: [...warned],
          painted: [...painted],
        }),
      ),
    selected: () => selected,
    copy: () => memoryWorkbook({}, copyOf(held)),
  };
  return book;
}
