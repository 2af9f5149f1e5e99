import { wordsCell } from "../../rows/words-cell";
import type { ReadWorkbook } from "../read-workbook";
import type { Tab } from "../workbook";

/** The tab and cell in which words stand, "Gym E3", and what that cell says. */
export function placeOfWords(
  read: Pick<ReadWorkbook, "cells">,
  tab: Tab,
  said: Parameters<typeof wordsCell>[1],
): { readonly place: string; readonly words: string } {
  const { cell, words } = wordsCell(read.cells(tab.id), said);
  return { place: `${tab.name} ${cell}`, words };
}
