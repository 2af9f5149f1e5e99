import { slowContactS } from "../../coaching/jumps/contact-kind";
import { stackHeight } from "../../coaching/jumps/stack-height";
import type { SessionItem } from "../../coaching/next-week/session/session-plan";
import { athleteNamed } from "../../coaching/record/athlete-named";
import { pageWords, sentence } from "../../words/pages";
import { loadWords } from "../../words/session";
import { stackToRead, stackWords } from "../../words/week";
import type { CardPage } from "../page-messages";
import type { PrintableWeek, PrintedSession } from "./printable-week";

/**
 * The session's jumps and assistance as the card says them. What replaces the usual exercise says of
 * which it takes the place, never why: soreness and pain are not for paper.
 */
export function cardSession(
  week: PrintableWeek,
  { line, session }: PrintedSession,
): Pick<CardPage, "jumps" | "assistance"> {
  const { numbers, plates, state } = week;
  const about = athleteNamed(state.read.rows.athletes, line.athlete);
  const novice = about?.experience === "novice";
  const { items, drop } = session;
  const jumping = items.filter((item) => item.kind === "plyometrics" || item.kind === "jump");
  const landings = jumping.filter(({ contacts }) => contacts > 0);
  const stack = numbers.marked(stackToRead(session, numbers));
  const place = (item: SessionItem) =>
    item.insteadOf === null ? "" : ` (${pageWords.instead(item.insteadOf)})`;
  // Plates seldom make the height wished for: what the stack really measures is printed.
  const dropStack = stackHeight(drop.stackKg, plates);
  const plain = drop.cm === null ? "" : `${numbers.cm(drop.cm)} cm`;
  const built = numbers.marked(stackWords(drop.stackKg));
  const from =
    built === "" ? plain : dropStack.ok ? `${numbers.cm(dropStack.value)} cm (${built})` : built;
  const lines = landings.map((item) => {
    const many = `${item.sets} × ${item.reps}`;
    const dropping = item.exercise.includes("drop jump");
    const boxing = item.exercise.includes("box jump");
    return {
      name: sentence(item.exercise),
      instead: place(item).trim(),
      amount: dropping
        ? `${many}, from ${from}`
        : boxing
          ? `${many}${stack === "" ? "" : `, ${stack}`}`
          : `${many}, low and light`,
      write: dropping ? ("contact" as const) : boxing ? ("cleared" as const) : ("" as const),
    };
  });
  const writes = (what: (typeof lines)[number]["write"]) =>
    lines.some(({ write }) => write === what);
  const contacts = landings.reduce((sum, item) => sum + item.contacts, 0);
  return {
    jumps: {
      lead: line.who.noJumps
        ? pageWords.noJumps
        : contacts === 0
          ? pageWords.noJumpsToday
          : pageWords.contacts(contacts),
      lines,
      care:
        lines.length === 0
          ? null
          : {
              contactS: writes("contact") && !novice ? numbers.speed(slowContactS) : null,
              box: writes("cleared") ? (novice ? "soft" : "firm") : null,
            },
    },
    assistance: assistanceLines(
      items.filter(({ kind }) => kind === "assistance"),
      place,
      numbers.withUnit,
    ),
  };
}

/** "Step-up: 2 × 6 a side, 12 kg."; what is loaded by feel is said once when it is so for all. */
function assistanceLines(
  items: readonly SessionItem[],
  place: (item: SessionItem) => string,
  mass: (kg: number) => string,
): readonly string[] {
  const loads = items.map((item) => loadWords(item, mass));
  const feels = items.filter(({ loadKg }, at) => loadKg === null && loads[at]!.load !== "").length;
  const once = feels > 1;
  const lines = items.map((item, at) => {
    const { exercise, load } = loads[at]!;
    const how = load === "" || (once && item.loadKg === null) ? "" : `, ${load}`;
    return `${sentence(exercise)}${place(item)}: ${item.sets} × ${item.reps} a side${how}.`;
  });
  return once ? [...lines, pageWords.byFeel] : lines;
}
