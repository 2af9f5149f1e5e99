import type { StateOfSquad } from "../squad/state-of-squad";
import { liftsToLookAt } from "./lifts-to-look-at";
import { openIssues } from "./open-issues";
import { setsToLookAt } from "./sets-to-look-at";
import { tabsToConfirm } from "./tabs-to-confirm";
import { unknownNames } from "./unknown-names";

/** As many as the Rows view lists, for the views beside it: no two must say different numbers. */
export const toCheck = (state: StateOfSquad): number =>
  tabsToConfirm(state.read).length +
  openIssues(state.read).length +
  liftsToLookAt(state.read).length +
  setsToLookAt(state).length +
  unknownNames(state.read).length;
