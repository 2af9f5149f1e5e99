import { findTables } from "../../../src/rows/find-tables";

// The plain headings of five further languages, from memory; names and figures are invented.
const recordsOf = (name: string, ...cells: readonly unknown[][]) => {
  const [found, ...more] = findTables([{ name, cells }]);
  expect([more, found!.sureness >= 0.6, found!.understanding.reading.issues]).toEqual([
    [],
    true,
    [],
  ]);
  return [found!.table, ...found!.understanding.reading.records];
};

test("a Spanish coach's diary, sets and spells are read", () => {
  expect(
    recordsOf(
      "Diario",
      ["Fecha", "Nombre", "Sueño", "Fatiga", "Agujetas", "Notas"],
      ["8 de junio de 2026", "Ana Prieto", "7,5", 2, 3, "todo bien"],
    ),
  ).toMatchObject([
    "Diary",
    { athlete: "Ana Prieto", sleepH: 7.5, fatigue: 2, soreness: 3, note: "todo bien" },
  ]);
  expect(
    recordsOf(
      "Fuerza",
      ["Fecha", "Atleta", "Ejercicio", "Serie", "Repeticiones", "Carga (kg)", "Velocidad (m/s)"],
      ["8 de junio de 2026", "Ana Prieto", "Sentadilla", 2, 5, 60, "0,62"],
    ),
  ).toMatchObject(["Sets", { exercise: "Sentadilla", set: 2, reps: 5, loadKg: 60 }]);
  expect(
    recordsOf(
      "Disponibilidad",
      ["Nombre", "Estado", "Desde", "Hasta"],
      ["Ana Prieto", "lesionada", "1 de junio de 2026", "9 de junio de 2026"],
    ),
  ).toMatchObject(["Availability", { mayDo: "out" }]);
});

test("French, Dutch and Swedish headings of races and runs are known", () => {
  expect(
    recordsOf("Courses", ["Jour", "Nom", "Durée (min)", "RPE"], ["8 juin 2026", "Éloïse", 45, 4]),
  ).toMatchObject(["Runs", { athlete: "Éloïse", minutes: 45, exertion: 4 }]);
  expect(
    recordsOf(
      "Kalender",
      ["Datum", "Wedstrijd", "Afstand", "Wie"],
      ["za 13 juni 2026", "Baanmijl", "1500 m", "Jo"],
    ),
  ).toMatchObject(["Races", { race: "Baanmijl", distanceKm: 1.5 }]);
  expect(
    recordsOf(
      "Tävlingar",
      ["Datum", "Tävling", "Distans"],
      ["lördag 13 juni 2026", "Milen", "10 km"],
    ),
  ).toMatchObject(["Races", { race: "Milen", distanceKm: 10 }]);
});

test("“m/s 1” to “m/s 5” are the speeds of the repetitions", () => {
  expect(
    recordsOf(
      "Krafttraining",
      ["Datum", "Name", "Übung", "Wdh", "Last (kg)", "m/s 1", "m/s 2"],
      ["08.06.2026", "Jörg", "Kniebeuge", 2, 60, "0,62", "0,60"],
    ),
  ).toMatchObject(["Sets", { repSpeeds: [0.62, 0.6] }]);
});

test("a German coach's short headings of athletes, sets, spells and jumps are known", () => {
  const day = "8. Juni 2026";
  expect(
    recordsOf(
      "Athleten",
      ["Name", "Jg.", "Hauptdisziplin", "Erfahrung", "Einheiten/Woche", "Betreuerin"],
      ["Ida Ruhl", 2010, "800 m", "neu", 2, "M. Gellert"],
    ),
  ).toMatchObject([
    "Athletes",
    { birthYear: 2010, experience: "novice", sessionsAWeek: 2, supervisor: "M. Gellert" },
  ]);
  expect(
    recordsOf(
      "Kraft",
      ["Datum", "Athlet/in", "Übung", "Satz-Nr.", "Gew. (kg)", "Wiederh.", "v (m/s)", "Ausführung"],
      [day, "Ida Ruhl", "Kniebeuge", 2, 60, 5, "0,62", "ja"],
    ),
  ).toMatchObject(["Sets", { set: 2, loadKg: 60, reps: 5, setSpeed: 0.62, movedWell: true }]);
  expect(
    recordsOf(
      "Ausfälle",
      ["Name", "Beginn", "Ende", "Zustand", "Schmerz 0-10", "Körperteil"],
      ["Ida Ruhl", day, "10. Juni 2026", "verletzt", 4, "Wade"],
    ),
  ).toMatchObject(["Availability", { mayDo: "out", pain: 4, site: "Wade" }]);
  expect(
    recordsOf(
      "Sprünge",
      ["Datum", "Name", "Sprungart", "Sprunghöhe (cm)", "Bodenkontaktzeit (ms)"],
      [day, "Ida Ruhl", "Drop Jump", 30, 210],
    ),
  ).toMatchObject(["Jumps", { heightCm: 30, contactS: 0.21 }]);
});

test.each([
  "Bemerkungen",
  "Anmerkung",
  "Kommentare",
  "Notizen",
  "Remarks",
  "Session comment",
  "Training notes",
])("what stands under “%s” is read in every table that keeps notes", (heading) => {
  const day = "2026-05-12";
  const name = "Ilka Brandmoor";
  const noteOf = (header: readonly string[], cells: readonly unknown[]) => {
    const [, record] = recordsOf("", [...header, heading], [...cells, "Wade zwickt"]);
    return (
      (record as { note?: string; notes?: string }).note ?? (record as { notes: string }).notes
    );
  };
  const read = "Wade zwickt";
  expect(
    noteOf(["Date", "Athlete", "Exercise", "Load (kg)", "Reps"], [day, name, "squat", 80, 5]),
  ).toBe(read);
  expect(noteOf(["Date", "Athlete", "Test", "Height (cm)"], [day, name, "CMJ", 31])).toBe(read);
  expect(noteOf(["Date", "Athlete", "Sleep (h)", "Mood"], [day, name, 8, 3])).toBe(read);
  expect(noteOf(["Athlete", "From", "May do"], [name, day, "out"])).toBe(read);
  expect(noteOf(["Athlete", "Group", "Event"], [name, "track", "800 m"])).toBe(read);
  const runs = findTables([
    {
      name: "",
      cells: [
        ["Date", "Athlete", "Kind", "Minutes", heading],
        [day, name, "easy", 40, read],
      ],
    },
  ]);
  expect(runs[0]!.understanding.reading.notes?.map(({ words }) => words)).toEqual([read]);
});

test("“Peso” is the load, and French times of a drop jump are contact and flight, in the heading's unit", () => {
  expect(
    recordsOf(
      "Fuerza",
      ["Fecha", "Atleta", "Ejercicio", "Peso", "Repeticiones"],
      ["8 de junio de 2026", "Ana Prieto", "Sentadilla", 60, 5],
    ),
  ).toMatchObject(["Sets", { exercise: "Sentadilla", reps: 5, loadKg: 60 }]);
  expect(
    recordsOf(
      "Sauts",
      ["Jour", "Nom", "Saut", "Temps de contact (ms)", "Temps de vol (s)"],
      ["8 juin 2026", "Éloïse", "drop jump", 180, 0.5],
    ),
  ).toMatchObject(["Jumps", { test: "drop jump", contactS: 0.18, flightS: 0.5 }]);
});
