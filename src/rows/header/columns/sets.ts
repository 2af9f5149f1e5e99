import { athleteHeadings, dayHeadings, headings, noteHeadings } from "./headings";

/** Headings of the Sets table, as coaches write them; the first of each is ours. */
export const setsColumns = {
  day: headings(dayHeadings),
  minute: headings("time|start|start time|uhrzeit|zeit|time of day"),
  athlete: headings(`${athleteHeadings}|who|wer|athlet|athletin|sportler|player`),
  exercise: headings(
    "exercise|ex|lift|movement|ubung|what|was|drill|exercise name|which exercise|which lift|exercice|ejercicio|esercizio|exercicio|oefening|ovning",
  ),
  set: headings("set|set no|set number|set nr|set #|satz|satz nr|satz-nr|serie"),
  setCount: headings("number of sets|sets|satze|anzahl satze|no of sets|series"),
  rep: headings("rep number|rep|rep no|rep #|wdh nr|wiederholung nr|repetition"),
  kind: headings("kind|set kind|type|set type|art|satzart"),
  reps: headings(
    "reps|repetitions|wdh|wiederholungen|reps done|number of reps|wdhs|wiederh|anz wdh|reps completed|# reps|reps #|rep count|repeticiones|ripetizioni|herhalingen",
  ),
  scheme: headings(
    "sets x reps|scheme|set x rep|work done|sets and reps|what was done|sets × reps|prescription",
  ),
  load: headings(
    "load|weight|wt|bar load|kg|lb|lbs|load on bar|last|gewicht|barbell load|total load|weight on bar|weight on the bar|load on the bar|kgs|gew|weight lifted|charge|carga|carico|peso",
  ),
  speed: headings(
    "rep speeds|speeds|speed|bar speed|velocity|m/s|cm/s|mm/s|mean speed|mean velocity|avg speed|av speed|ave speed|average speed|average velocity|avg velocity|geschwindigkeit|tempo|speed of set|set speed|mv|m/s mittel je satz|velocities|bar velocity|mean bar speed|mittlere geschwindigkeit|vel|peak speed|peak velocity|best speed|best rep|fastest rep|best rep speed|top speed|speed of best rep|geschw|bar-geschw|hantelgeschwindigkeit|stangengeschwindigkeit|mittl geschw|vmean|v mean|mpv|mean propulsive velocity|vitesse|velocidad|velocita|snelheid|hastighet",
  ),
  speedIs: headings("speed is|mean or peak|speed is mean or peak|measure|mean/peak|speed type"),
  tool: headings("tool|device|sensor|measured with|gerat|instrument"),
  bar: headings("bar mass|bar|bar weight|barbell|hantelstange|stange"),
  gym: headings("gym|place|where|room|ort|halle|location"),
  movedWell: headings(
    "movement ok|movement ok?|ok|moved well|form ok|form|technique|technique ok|tech ok|tech|technik|technik ok|movement|quality|clean|moved ok|moved ok?|good form|good form?|ausfuhrung|saubere ausfuhrung|technik sauber",
  ),
  reserve: headings("reps in reserve|rir|reserve|in reserve|reps left|wdh in reserve"),
  effort: headings(
    "effort of the set|rpe|set rpe|rpe of set|perceived effort|perceived exertion|how hard was it|how hard was it rpe|how hard was the set",
  ),
  by: headings("by|initials|recorded by|coach|entered by|von|kurzel"),
  note: headings(noteHeadings),
} as const;
