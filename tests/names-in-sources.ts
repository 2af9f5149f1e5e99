import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { parseSync } from "@swc/core";

export const root = join(__dirname, "..");
/** Files of the sources that hold names, by their path from the root. */
export const files = (readdirSync(join(root, "src"), { recursive: true }) as string[])
  .filter((file) => /(?<!\.d)\.(ts|tsx)$/.test(file))
  .map((file) => `src/${file}`);
export const text = (file: string) => readFileSync(join(root, file), "utf8");

/** A node of the parser, whatever its kind. */
type Node = { readonly type?: string; readonly [part: string]: unknown };
/** What one name of a file is made of: the names it mentions, in the file's own words. */
type Declared = { readonly mentions: ReadonlySet<string> };
export type Source = {
  readonly declared: ReadonlyMap<string, Declared>;
  /** Exported name to the file's own, or to a name of another file. */
  readonly exported: ReadonlyMap<string, { readonly from: string | null; readonly name: string }>;
  /** Own name to a name of another file; "*" is all of it. */
  readonly imported: ReadonlyMap<string, { readonly from: string; readonly name: string }>;
  /** What is done as soon as the file is loaded. */
  readonly atOnce: ReadonlySet<string>;
  /** Files it loads later on or takes in without a name. */
  readonly loaded: readonly string[];
  /** Files all of whose exports it hands on. */
  readonly handsOn: readonly string[];
  /** Names that hold no value: types. */
  readonly types: ReadonlySet<string>;
};

function each(node: unknown, visit: (node: Node) => void): void {
  if (Array.isArray(node)) for (const one of node) each(one, visit);
  else if (node !== null && typeof node === "object") {
    visit(node as Node);
    for (const part of Object.values(node)) each(part, visit);
  }
}
const namesIn = (node: unknown): Set<string> => {
  const names = new Set<string>();
  each(node, ({ type, value }) => {
    if (type === "Identifier" || type === "JSXIdentifier") names.add(value as string);
  });
  return names;
};
const textOf = (node: unknown) => (node as { readonly value: string }).value;

/** The file of the sources that a path in a file names, if there is one. */
export function fileAt(from: string, path: string): string | null {
  if (!path.startsWith(".")) return null;
  const to = relative(root, resolve(root, dirname(from), path));
  return [to, `${to}.ts`, `${to}.tsx`, `${to}/index.ts`].find((one) => files.includes(one)) ?? null;
}

/** The names a file declares, takes in and hands on. */
export function sourceOf(file: string): Source {
  const { body } = parseSync(text(file), { syntax: "typescript", tsx: file.endsWith("x") });
  const declared = new Map<string, Declared>();
  const exported = new Map<string, { from: string | null; name: string }>();
  const imported = new Map<string, { from: string; name: string }>();
  const atOnce = new Set<string>();
  const loaded: string[] = [];
  const handsOn: string[] = [];
  const types = new Set<string>();
  const declare = (node: Node, isExported: boolean) => {
    const { type } = node;
    const names: string[] = [];
    const parts: (readonly [string, unknown])[] = [];
    if (type === "VariableDeclaration") {
      for (const one of node.declarations as readonly Node[])
        for (const name of namesIn({ ...(one.id as Node), typeAnnotation: null }))
          parts.push([name, one]);
    } else if (type === "TsTypeAliasDeclaration" || type === "TsInterfaceDeclaration") {
      types.add(textOf(node.id));
      parts.push([textOf(node.id), node]);
    } else if (node.identifier) parts.push([textOf(node.identifier), node]);
    for (const [name, part] of parts) {
      names.push(name);
      declared.set(name, { mentions: namesIn(part) });
    }
    if (isExported) for (const name of names) exported.set(name, { from: null, name });
  };
  for (const statement of body as unknown as readonly Node[]) {
    const from = statement.source ? fileAt(file, textOf(statement.source)) : null;
    switch (statement.type) {
      case "ImportDeclaration": {
        if (!from) break;
        loaded.push(from);
        for (const one of statement.specifiers as readonly Node[]) {
          const name =
            one.type === "ImportNamespaceSpecifier"
              ? "*"
              : one.type === "ImportDefaultSpecifier"
                ? "default"
                : textOf(one.imported ?? one.local);
          imported.set(textOf(one.local), { from, name });
        }
        break;
      }
      case "ExportDeclaration":
        declare(statement.declaration as Node, true);
        break;
      case "ExportNamedDeclaration":
        if (from) loaded.push(from);
        for (const one of statement.specifiers as readonly Node[]) {
          const name = textOf(one.exported ?? one.orig);
          exported.set(name, { from, name: textOf(one.orig) });
          if (statement.typeOnly || one.isTypeOnly) types.add(textOf(one.orig));
        }
        break;
      case "ExportAllDeclaration":
        if (!from) throw new Error(`${file} hands on all of a library: name what it hands on`);
        loaded.push(from);
        handsOn.push(from);
        break;
      case "ExportDefaultDeclaration":
      case "ExportDefaultExpression":
        declared.set("default", { mentions: namesIn(statement) });
        exported.set("default", { from: null, name: "default" });
        break;
      case "ExpressionStatement":
      case "IfStatement":
      case "ForOfStatement":
        for (const name of namesIn(statement)) atOnce.add(name);
        break;
      default:
        declare(statement, false);
    }
  }
  each(body, ({ type, callee, arguments: given }) => {
    if (type !== "CallExpression" || (callee as Node).type !== "Import") return;
    const path = (given as readonly { readonly expression: Node }[])[0]!.expression;
    const to = path.type === "StringLiteral" ? fileAt(file, textOf(path)) : null;
    if (to) atOnce.add(`import ${to}`);
  });
  return { declared, exported, imported, atOnce, loaded, handsOn, types };
}
