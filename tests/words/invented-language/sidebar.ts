import { sidebarWords as english } from "../../../src/words/sidebar";

/** A few words of no language at all: the rest stays British English. */
export const sidebarWords = {
  ...english,
  views: { ...english.views, week: "Vorn sela" },
  goTo: (cell: string) => `Ga ${cell}`,
};
