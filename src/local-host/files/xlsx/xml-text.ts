import { strFromU8 } from "fflate";
import type { Parts } from "./zip-parts";

/** Texts already decoded: a season's sets are twenty megabytes, and are looked at more than once. */
const texts = new WeakMap<Uint8Array, string>();

/** A part's text; empty when there is no such part. */
export function partText(parts: Parts, path: string): string {
  const part = parts.get(path);
  if (!part) return "";
  const known = texts.get(part);
  if (known !== undefined) return known;
  const text = strFromU8(part);
  texts.set(part, text);
  return text;
}

/** An attribute of a tag, its entities turned back. */
export function attribute(tag: string, name: string): string | null {
  const found =
    new RegExp(`\\s${name}="([^"]*)"`).exec(tag) ?? new RegExp(`\\s${name}='([^']*)'`).exec(tag);
  return found ? unescaped(found[1]!) : null;
}

/** A tag with other values of attributes it has. */
export function withAttributes(tag: string, values: Readonly<Record<string, string>>): string {
  return Object.entries(values).reduce(
    (made, [name, value]) =>
      made.replace(
        new RegExp(`(\\s${name}=)(?:"[^"]*"|'[^']*')`),
        (_, start) => `${start}"${escaped(value)}"`,
      ),
    tag,
  );
}

const entities = new Map([
  ["lt", "<"],
  ["gt", ">"],
  ["quot", '"'],
  ["apos", "'"],
  ["amp", "&"],
]);

export function unescaped(text: string): string {
  return text.replace(
    /&(?:#x([0-9a-f]+)|#(\d+)|(lt|gt|quot|apos|amp));/gi,
    (all, hex, decimal, name) => {
      if (name) return entities.get(name.toLowerCase()) ?? all;
      const code = hex ? Number.parseInt(hex, 16) : Number(decimal);
      return code <= 0x10ffff ? String.fromCodePoint(code) : all;
    },
  );
}

export function escaped(text: string): string {
  return text
    .replace(/[&<>"]/g, (sign) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;" })[sign] ?? "&quot;")
    .replace(/\p{Cc}/gu, (sign) => (/[\t\n\r]/.test(sign) ? `&#${sign.charCodeAt(0)};` : ""));
}

/** The path of a tab's part, by tab name, in order. */
export function sheetPaths(parts: Parts): ReadonlyMap<string, string> {
  const targets = new Map(
    [...partText(parts, "xl/_rels/workbook.xml.rels").matchAll(/<Relationship\b[^<>]*>/g)].map(
      ([tag]) => [attribute(tag, "Id"), attribute(tag, "Target")] as const,
    ),
  );
  return new Map(
    [...partText(parts, "xl/workbook.xml").matchAll(/<sheet\b[^<>]*>/g)].flatMap(([tag]) => {
      const name = attribute(tag, "name");
      const target = targets.get(attribute(tag, "r:id"));
      if (name === null || !target) return [];
      return [[name, target.startsWith("/") ? target.slice(1) : `xl/${target}`]];
    }),
  );
}
