import { members } from "./club";
import { gymPlates } from "./plates";
import type { SampleTable } from "./table";

/** The tables a coach fills in once. */
export function athleteTable(): SampleTable {
  const headings =
    "Athlete,Group,Event,Experience,Birth year,Supervisor,Baseline from,Baseline to,Sessions a week,Notes";
  return {
    name: "Athletes",
    rows: [
      headings.split(","),
      ...members.map((member) => [
        member.athlete,
        member.group,
        member.event,
        member.experience,
        member.birthYear,
        member.supervisor,
        null,
        null,
        member.sessionsAWeek,
        member.notes,
      ]),
    ],
  };
}

export function availabilityTable(): SampleTable {
  const headings = "Athlete,From,Until,May do,By whom,Site,Pain 0-10,Note";
  const doctor = "Dr R. Dalgarth";
  return {
    name: "Availability",
    rows: [
      headings.split(","),
      ["Oona Petrakell", "2026-04-13", "2026-04-19", "modified", "MG", "calf", 2, "no jumps"],
      ["Dario Quell", "2026-05-18", "2026-06-01", "out", doctor, null, null, "fever"],
      ["Dario Quell", "2026-06-02", "2026-06-29", "cleared", doctor, null, null, "in grades"],
      ["Joss Whitterby", "2026-06-15", null, "modified", "N. Ferriter", "Achilles", 3, "no jumps"],
    ],
  };
}

export function plateTable(): SampleTable {
  return { name: "Plates", rows: [["Mass (kg)", "Thickness (cm)", "Number owned"], ...gymPlates] };
}

export function ruleTable(): SampleTable {
  return {
    name: "Rules",
    rows: [
      ["Rule", "Value"],
      ["False flags, share of calm seasons", 0.1],
      ["Velocity loss cap", 0.2],
      ["Load off on a slow day", 0.1],
      ["Weeks of the season", 18],
      ["Sessions in the baseline", 6],
    ],
  };
}
