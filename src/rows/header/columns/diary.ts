import { athleteHeadings, dayHeadings, headings, noteHeadings } from "./headings";

/** Headings of the Diary, as coaches write them; the first of each is ours. */
export const diaryColumns = {
  day: headings(dayHeadings),
  minute: headings("time|written at|uhrzeit"),
  athlete: headings(`${athleteHeadings}|wer|who|athlet`),
  sleepH: headings(
    "sleep|sleep h|hours slept|sleep hours|hours of sleep|schlaf|sleep night before|sleep h night before|schlafdauer|sommeil|sueno|sonno|sono|slaap|somn",
  ),
  sleepQuality: headings("sleep quality|quality of sleep|schlafqualitat"),
  soreness: headings(
    "soreness|sore|muskelkater|muscle soreness|courbatures|agujetas|spierpijn|traningsvark",
  ),
  fatigue: headings("fatigue|tiredness|tired|mudigkeit|fatiga|stanchezza|vermoeidheid|trotthet"),
  stress: headings("stress|life stress"),
  mood: headings("mood|stimmung|feeling|humeur|animo|umore|stemming|humor"),
  pain: headings(
    "pain|pain or injury|pain or illness|any pain|injury|injuries|injury or illness|illness|ill|sick|niggles|symptoms|pain 0-10|pain 0–10|pain score|schmerz|schmerzen|verletzung|krank|beschwerden",
  ),
  carbs: headings(
    "carbs in session|carbs in session?|carbs|carbohydrate in session|kohlenhydrate|fuelled",
  ),
  food: headings("food note|food|fuel|essen|eaten"),
  newToday: headings("new today|new|anything new|neu|was war neu|etwas neues|new today?"),
  note: headings(`${noteHeadings}|anything else|anything to tell us`),
  private: headings("private|private?|privat|keep private"),
} as const;
