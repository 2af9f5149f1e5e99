import { answers, figureOf } from "./answers";
import { type AthleteJumps, jumpCells } from "./jump-cells";
import { type AthleteSets, setCells } from "./set-cells";
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
  answers(setToSetOf!, namesOf(squad), setCells(squad ?? []), exercise, asOf);
export const loadSpeedLine = (squad: Squad<AthleteSets>, exercise: string, asOf: string) =>
  answers(loadSpeedLineOf!, namesOf(squad), setCells(squad ?? []), exercise, asOf);
export const seasonHold = (squad: Squad<AthleteSets>, asOf: string) =>
  answers(seasonHoldOf!, namesOf(squad), setCells(squad ?? []), "", asOf);
export const jumpTrend = (squad: Squad<AthleteJumps>, test: string, asOf: string) =>
  answers(jumpTrendOf!, namesOf(squad), jumpCells(squad ?? []), test, asOf);
