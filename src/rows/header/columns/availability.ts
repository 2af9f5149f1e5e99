/** Headings of the Availability table, as coaches write them; the first of each is ours. */
export const availabilityColumns = {
  athlete: ["athlete", "name", "runner", "athlete name", "athlet", "wer", "who"],
  from: ["from", "start", "since", "von", "ab", "date", "datum", "from date"],
  until: ["until", "to", "end", "till", "bis", "back on", "until date", "last day"],
  mayDo: ["may do", "status", "allowed", "can do", "availability", "darf", "state"],
  by: ["by whom", "by", "said by", "cleared by", "decided by", "von wem", "who says"],
  site: ["site", "where", "body part", "place", "stelle", "ort"],
  pain: ["pain", "pain 0-10", "pain 0–10", "schmerz", "pain score"],
  note: ["note", "notes", "comment", "reason", "notiz", "grund", "bemerkung"],
} as const;
