import { attribute, partText } from "./xml-text";
import type { Parts } from "./zip-parts";

/** What a part leans on: another part of the file, or an address outside it. */
export type Relation = {
  readonly id: string;
  /** The last word of its type, such as "table". */
  readonly kind: string;
  readonly type: string;
  /** Path inside the file; null for an address outside. */
  readonly path: string | null;
  readonly target: string;
};

export function relationsPath(path: string): string {
  const at = path.lastIndexOf("/") + 1;
  return `${path.slice(0, at)}_rels/${path.slice(at)}.rels`;
}

export function relationsOf(parts: Parts, path: string): readonly Relation[] {
  const text = partText(parts, relationsPath(path));
  return [...text.matchAll(/<Relationship\b[^<>]*>/g)].flatMap(([tag]) => {
    const [id, type, target] = ["Id", "Type", "Target"].map((name) => attribute(tag, name));
    if (!id || !type || target === null || target === undefined) return [];
    const outside = attribute(tag, "TargetMode") === "External";
    const kind = type.slice(type.lastIndexOf("/") + 1);
    return [{ id, kind, type, target, path: outside ? null : resolved(path, target) }];
  });
}

function resolved(from: string, target: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const steps = from.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") steps.pop();
    else if (step !== ".") steps.push(step);
  }
  return steps.join("/");
}
