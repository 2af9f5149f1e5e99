import { athleteHeadings, headings, noteHeadings } from "./headings";

/** Headings of the Athletes table, as coaches write them; the first of each is ours. */
export const athletesColumns = {
  athlete: headings(`${athleteHeadings}|athlet|athletin|sportler|athletes`),
  group: headings(
    "group|grp|squad|school|team|schule|gruppe|training group|groupe|grupo|gruppo|groep|grupp",
  ),
  event: headings(
    "event|events|ev|distance|disziplin|hauptdisziplin|strecke|main event|epreuve|prueba|specialita|gren",
  ),
  experience: headings(
    "experience|exp|level|training experience|erfahrung|novice or trained|status",
  ),
  birthYear: headings(
    "birth year|year of birth|born|yob|jahrgang|jg|jahrg|geb|geb-jahr|geb jahr|geburtsjahr|geburtsdatum|geburtstag|birthdate|year born|date of birth|dob|birthday|birth year or under-18 mark|birth year or under 18|birth year / u18|annee de naissance|ano de nacimiento|anno di nascita|geboortejaar|fodelsear",
  ),
  under18: headings(
    "under 18|under-18|u18|under 18?|under-18 mark|minor|unter 18|minderjahrig|age|age yrs|age years|alter",
  ),
  supervisor: headings(
    "supervisor|supervised by|named supervisor|aufsicht|aufsichtsperson|betreuer|betreuer/in|betreuerin|responsible adult",
  ),
  baselineFrom: headings("baseline from|baseline start|basis von"),
  baselineTo: headings("baseline to|baseline end|baseline until|basis bis"),
  sessions: headings(
    "sessions a week|sessions per week|gym sessions a week|sessions/week|gym/wk|sessions|einheiten pro woche|einheiten/woche|einh/woche|x/woche|gym sessions|sessions week|gym per week|gym a week|gym/week|gym days|lifts per week|lifts/wk|sessions/wk|sess/wk",
  ),
  step: headings("step up|step up in load|load step|step in load|own step|laststeigerung"),
  notes: headings(`notes|${noteHeadings}`),
} as const;
