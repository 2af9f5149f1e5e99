import { answers, figureOf } from "./answers";
import { type AthleteJumps, jumpTable } from "./jump-table";
import { rowIssues } from "./row-issues";
import { type AthleteSets, setTable } from "./set-table";
import { figureFunctions, warehouseFunctions } from "./warehouse-functions";

type Squad<Athlete> = readonly Athlete[] | null;
type Figure = number | null;

const [velocityLossOf, flightHeightOf, reactiveStrengthOf] = figureFunctions;
const [setToSetOf, loadSpeedLineOf, seasonHoldOf, jumpTrendOf] = warehouseFunctions;

const namesOf = (squad: Squad<{ readonly athlete: string }>) =>
  (squad ?? []).map(({ athlete }) => athlete);

export const velocityLoss = (speeds: readonly Figure[] | null) =>
  figureOf(velocityLossOf!, [speeds ?? []]);
export const flightHeight = (flightS: Figure, landingCm: Figure) =>
  figureOf(flightHeightOf!, [flightS, landingCm]);
export const reactiveStrength = (heightCm: Figure, contactS: Figure) =>
  figureOf(reactiveStrengthOf!, [heightCm, contactS]);

export const setToSet = (squad: Squad<AthleteSets>, exercise: string, asOf: string) =>
  answers(setToSetOf!, namesOf(squad), setTable(squad ?? []).cells, exercise, asOf);
export const loadSpeedLine = (squad: Squad<AthleteSets>, exercise: string, asOf: string) =>
  answers(loadSpeedLineOf!, namesOf(squad), setTable(squad ?? []).cells, exercise, asOf);
export const seasonHold = (squad: Squad<AthleteSets>, asOf: string) =>
  answers(seasonHoldOf!, namesOf(squad), setTable(squad ?? []).cells, "", asOf);
export const jumpTrend = (squad: Squad<AthleteJumps>, test: string, asOf: string) =>
  answers(jumpTrendOf!, namesOf(squad), jumpTable(squad ?? []).cells, test, asOf);

export const checkSets = (squad: Squad<AthleteSets>) => rowIssues(setTable(squad ?? []));
export const checkJumps = (squad: Squad<AthleteJumps>) => rowIssues(jumpTable(squad ?? []));
