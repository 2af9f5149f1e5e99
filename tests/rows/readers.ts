import type { Cells } from "../../src/rows/cells";
import { readTable } from "../../src/rows/read-table";

/** The nine readers, each for the range of one table with its header row. */
export const readAthletes = (cells: Cells) => readTable("Athletes", cells);
export const readAvailability = (cells: Cells) => readTable("Availability", cells);
export const readSets = (cells: Cells) => readTable("Sets", cells);
export const readJumps = (cells: Cells) => readTable("Jumps", cells);
export const readDiary = (cells: Cells) => readTable("Diary", cells);
export const readRuns = (cells: Cells) => readTable("Runs", cells);
export const readRaces = (cells: Cells) => readTable("Races", cells);
export const readPlates = (cells: Cells) => readTable("Plates", cells);
export const readRules = (cells: Cells) => readTable("Rules", cells);
