import { isDate } from "./is-date";

const longest = 60;

/** What a cell holds, as a coach would read it aloud; cut short when long. */
export function foundText(cell: unknown): string {
  const text = isDate(cell)
    ? dateText(cell)
    : cell === null || cell === undefined
      ? ""
      : String(cell);
  return text.length > longest ? `${text.slice(0, longest - 1)}…` : text;
}

function dateText(date: Date): string {
  const two = (n: number) => String(n).padStart(2, "0");
  const day = `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
  const time = `${two(date.getHours())}:${two(date.getMinutes())}`;
  return time === "00:00" ? day : `${day} ${time}`;
}
