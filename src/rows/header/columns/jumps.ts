import { athleteHeadings, dayHeadings, headings, noteHeadings } from "./headings";

/** Headings of the Jumps table, as coaches write them; the first of each is ours. */
export const jumpsColumns = {
  day: headings(dayHeadings),
  minute: headings("time|uhrzeit|start time|time of day"),
  athlete: headings(`${athleteHeadings}|who|wer|athlet|athletin|sportler`),
  test: headings(
    "test|jump|jump test|sprung|sprungart|sprungtest|exercise|kind of jump|saut|salto|sprong|hopp",
  ),
  attempt: headings("attempt|try|attempt no|trial|versuch|rep"),
  height: headings(
    "height|jump height|ht|hohe|sprunghohe|cm|best|result|hauteur|altura|altezza|hoogte|hojd",
  ),
  stack: headings("stack|plate stack|plates|scheiben|stapel|box|plate"),
  cleared: headings("cleared|cleared?|clean|made|geschafft|ok"),
  drop: headings("drop height|drop|drop from|drop ht|fallhohe|box height"),
  landing: headings("landing height|landing|onto|landehohe|landing box"),
  contact: headings(
    "contact time|contact|ground contact|ground contact time|kontaktzeit|bodenkontaktzeit|bkz|kontakt|gct|ct|temps de contact",
  ),
  flight: headings("flight time|flight|flugzeit|flug|air time|ft|temps de vol"),
  note: headings(noteHeadings),
} as const;
