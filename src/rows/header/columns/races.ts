import { dayHeadings, headings } from "./headings";

/** Headings of the Races table, as coaches write them; the first of each is ours. */
export const racesColumns = {
  day: headings(dayHeadings),
  start: headings("start time|start|time|gun|startzeit|uhrzeit"),
  race: headings(
    "race|event|meet|meeting|fixture|competition|rennen|wettkampf|name|carrera|gara|wedstrijd|tavling",
  ),
  who: headings(
    "athlete or group or all|athlete|who|athletes|runner|group|athlete or group|for|wer|athlet|gruppe|who runs|runners|entries|laufer|starter|teilnehmer|quien|qui|coureurs|corredores",
  ),
  distance: headings(
    "distance|dist|km|m|strecke|distanz|length|distancia|distanza|afstand|distans",
  ),
  surface: headings("surface|course|untergrund|on"),
  matters: headings(
    "matters|matters a/b/c|priority|prio|prioritat|a/b/c|class|wichtigkeit|importance",
  ),
} as const;
