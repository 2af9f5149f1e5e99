import { athleteHeadings, headings, noteHeadings } from "./headings";

/** Headings of the Availability table, as coaches write them; the first of each is ours. */
export const availabilityColumns = {
  athlete: headings(`${athleteHeadings}|athlet|wer|who`),
  from: headings(
    "from|start|start date|beginn|since|von|ab|date|datum|from date|when|wann|dates|days|zeitraum|seit|depuis|desde|dal|vanaf|fran",
  ),
  until: headings(
    "until|to|end|end date|ende|till|bis|back on|until date|last day|hasta|fino al|tot|jusqu'au",
  ),
  mayDo: headings(
    "may do|status|allowed|can do|availability|darf|state|zustand|statut|estado|stato",
  ),
  by: headings(
    "by whom|by|signed|signed by|signed off by|said by|cleared by|decided by|von wem|freigabe durch|who says",
  ),
  site: headings(
    "site|where|body part|place|stelle|wo|wo?|korperteil|ort|injury|injury site|verletzung",
  ),
  pain: headings("pain|pain 0-10|pain 0–10|schmerz|schmerzen|schmerz 0-10|pain score"),
  note: headings(`${noteHeadings}|reason|why|details|grund`),
} as const;
