import { readFileSync } from "node:fs";
import { knownSurvivors } from "./known-survivors.mjs";

const known = knownSurvivors();

/**
 * Share noticed with its 95 % limits (Wilson 1927) as of a random sample, by folder, how many of the
 * others have their reason, and a line for each survivor, with that reason where it cannot be noticed.
 */
export function report(results) {
  const folders = new Map();
  const survivors = [];
  for (const { fileName, status, location, replacement } of results) {
    if (status === "CompileError" || status === "Ignored" || status === "RuntimeError") continue;
    const folder = fileName.split("/").slice(1, -1).join("/");
    const count = folders.get(folder) ?? { noticed: 0, explained: 0, all: 0 };
    folders.set(folder, count);
    count.all++;
    if (status === "Killed" || status === "Timeout") {
      count.noticed++;
      continue;
    }
    const { line, column } = location.start;
    const text = oneLine(replacement);
    const stood = oneLine(textAt(fileName, location));
    const lines = linesAt(fileName, location).join("\n");
    const reason = known.find(
      ({ file, stands, fault, within = "" }) =>
        file === fileName &&
        stands === stood &&
        fault === oneLine(replacement) &&
        lines.includes(within),
    )?.reason;
    if (reason !== undefined) count.explained++;
    const why = reason === undefined ? "" : `\n    cannot be noticed: ${reason}`;
    survivors.push(`${fileName}:${line}:${column} ${status}: ${stood} -> ${text}${why}`);
  }
  const rows = [...folders].sort(([a], [b]) => (a < b ? -1 : 1));
  const sum = { noticed: 0, explained: 0, all: 0 };
  for (const [, count] of rows) for (const key of Object.keys(sum)) sum[key] += count[key];
  const lines = [...rows, ["together", sum]].map(([folder, { noticed, explained, all }]) => {
    const [low, high] = wilson(noticed, all);
    const share = `${((100 * noticed) / all).toFixed(1)} %`;
    return `${folder.padEnd(28)} ${String(noticed).padStart(5)} of ${String(all).padStart(5)}  ${share.padStart(7)}  (${low}–${high} %), ${explained} of ${all - noticed} others explained`;
  });
  return { text: lines.join("\n"), survivors: survivors.sort() };
}

const oneLine = (text = "") => text.replace(/\s+/g, " ").trim();

/** What stands in a source between two places; lines and columns count from 1. */
function textAt(fileName, location) {
  const { start, end } = location;
  const lines = linesAt(fileName, location);
  lines[lines.length - 1] = lines.at(-1).slice(0, end.column - 1);
  lines[0] = lines[0].slice(start.column - 1);
  return lines.join("\n");
}

function linesAt(fileName, { start, end }) {
  return readFileSync(fileName, "utf8")
    .split("\n")
    .slice(start.line - 1, end.line);
}

function wilson(noticed, all) {
  const z = 1.96;
  const share = noticed / all;
  const middle = (share + z ** 2 / (2 * all)) / (1 + z ** 2 / all);
  const half =
    (z * Math.sqrt((share * (1 - share)) / all + z ** 2 / (4 * all ** 2))) / (1 + z ** 2 / all);
  return [middle - half, middle + half].map((one) => (100 * one).toFixed(1));
}
