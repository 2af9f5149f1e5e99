/** Headings of one meaning, written "date|day|datum": every formula call parses them, so no quotes. */
export const headings = (words: string): readonly string[] => words.split("|");

/** Headings that nearly every table has. */
export const dayHeadings = "date|day|datum|tag|when|wann|timestamp|zeitstempel|fecha|dato|jour";
export const athleteHeadings =
  "athlete|name|runner|athlete name|name vorname|athlet/in|sportler/in|full name|your name|what is your name|athlete's name|dein name|nom|nombre|nome|naam|namn|navn|atleta|utovare|pupil|student|schuler|schulerin";
export const noteHeadings =
  "note|notes|anm|bem|comment|comments|remark|remarks|notiz|notizen|bemerkung|bemerkungen|anmerkung|anmerkungen|kommentar|kommentare|session comment|session comments|session note|session notes|training notes|general comments|general notes|other comments|other notes|athlete comments|athlete notes|notas|remarques|opmerkingen|anteckning|observaciones";
