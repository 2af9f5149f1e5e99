import { athleteHeadings, dayHeadings, headings, noteHeadings } from "./headings";

/** Headings of the Runs table, as coaches write them; the first of each is ours. */
export const runsColumns = {
  day: headings(dayHeadings),
  minute: headings("time|start|start time|uhrzeit|time of day"),
  athlete: headings(`${athleteHeadings}|wer|who|athlet`),
  kind: headings("kind|type|run|session|run type|art|typ|einheit|what|workout"),
  minutes: headings(
    "minutes|min|duration|mins|time run|dauer|minuten|length|duree|duracion|durata|duur",
  ),
  exertion: headings(
    "exertion|exertion 0-10|exertion 0–10|rpe|effort|srpe|anstrengung|belastung|belastung 0-10|session rpe|how hard was it|how hard was the run",
  ),
  km: headings("km|distance|kilometres|kilometers|mi|miles|strecke|distanz"),
  note: headings(noteHeadings),
} as const;
