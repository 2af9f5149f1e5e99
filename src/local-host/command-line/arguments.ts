import { serialFromIso } from "../spreadsheet-date";

/** What was asked for on the command line. */
export type Asked = {
  readonly command: "open" | "squad" | "formula" | "check" | "start" | "help";
  /** Null: the sample workbook. */
  readonly workbook: string | null;
  readonly formula: string;
  readonly asOf: string | null;
  readonly json: boolean;
  readonly serve: boolean;
  readonly port: number;
};

/** Thrown when the command line itself is wrong: exit status 2. */
export class UsageError extends Error {}

const commands = ["open", "squad", "formula", "check", "start", "help"] as const;
const takes: Readonly<Record<Asked["command"], { places: number; flags: readonly string[] }>> = {
  open: { places: 1, flags: ["--port"] },
  squad: { places: 1, flags: ["--as-of", "--json"] },
  formula: { places: 2, flags: ["--json"] },
  check: { places: 1, flags: ["--json"] },
  start: { places: 1, flags: ["--no-serve", "--port"] },
  help: { places: 1, flags: [] },
};

/** @throws UsageError with a sentence */
export function askedFor(argv: readonly string[]): Asked {
  const [first, ...rest] = argv;
  if (first === undefined || ["help", "--help", "-h"].includes(first)) return asked("help");
  const command = commands.find((known) => known === first);
  if (!command) throw new UsageError(`There is no command “${first}”.`);
  if (rest.includes("--help") || rest.includes("-h")) return asked("help");
  const { places, flags } = takes[command];
  const found: string[] = [];
  let asOf: string | null = null;
  let port = 0;
  let json = false;
  let serve = true;
  for (let i = 0; i < rest.length; i++) {
    const word = rest[i]!;
    if (!word.startsWith("--")) {
      found.push(word);
      continue;
    }
    if (!flags.includes(word)) throw new UsageError(`${command} does not take ${word}.`);
    if (word === "--json") json = true;
    else if (word === "--no-serve") serve = false;
    else if (word === "--as-of") asOf = dayGiven(rest[++i]);
    else port = portGiven(rest[++i]);
  }
  if (found.length > places) {
    throw new UsageError(`${command} does not know what to do with “${found[places]}”.`);
  }
  if (command === "formula" && found.length < 2) {
    throw new UsageError("formula needs a workbook and a formula in quotes.");
  }
  return { command, workbook: found[0] ?? null, formula: found[1] ?? "", asOf, json, serve, port };
}

function asked(command: "help"): Asked {
  const none = { workbook: null, formula: "", asOf: null, json: false, serve: false, port: 0 };
  return { command, ...none };
}

function dayGiven(text: string | undefined): string {
  if (text === undefined || serialFromIso(text) === null) {
    throw new UsageError("--as-of needs a day, such as 2026-06-28.");
  }
  return text;
}

function portGiven(text: string | undefined): number {
  const port = Number(text);
  if (!Number.isInteger(port) || port < 1 || port > 65_535) {
    throw new UsageError("--port needs a number from 1 to 65535.");
  }
  return port;
}
