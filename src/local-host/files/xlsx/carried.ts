import { strToU8 } from "fflate";
import { type Relation, relationsOf, relationsPath } from "./relations";
import { type TabElement, tabText, textOf, withElements } from "./tab-elements";
import { escaped, partText, sheetPaths } from "./xml-text";
import type { Parts } from "./zip-parts";

/** What a tab's part holds that the library drops, or would write otherwise: kept as it is written. */
export type Carried = {
  readonly elements: readonly TabElement[];
  /** Addresses that links lead to, by the id they name. */
  readonly links: readonly Relation[];
  readonly tables: readonly CarriedTable[];
};
export type CarriedTable = { readonly path: string; readonly xml: string };

const carriedNames = new Set(
  "sheetProtection,protectedRanges,autoFilter,sortState,hyperlinks,colBreaks,ignoredErrors".split(
    ",",
  ),
);
const tableType = "application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml";
const tableRelation = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/table";

/** Takes these out of a file's parts, by tab: the library then reads plain cells. */
export function takeCarried(parts: Parts): {
  readonly carried: ReadonlyMap<string, Carried>;
  readonly rest: Parts;
} {
  const rest = new Map(parts);
  const carried = new Map<string, Carried>();
  for (const [tab, path] of sheetPaths(parts)) {
    const text = tabText(partText(parts, path));
    if (!text) continue;
    const relations = relationsOf(parts, path);
    const tables = relations.flatMap(({ kind, path: of }) => {
      if (kind !== "table" || of === null || !parts.has(of)) return [];
      rest.delete(of);
      return [{ path: of, xml: withoutLooks(partText(parts, of)) }];
    });
    const elements = text.elements.filter(({ name }) => carriedNames.has(name));
    if (elements.length + tables.length === 0) continue;
    carried.set(tab, {
      elements: elements.map(({ name, xml }) => ({
        name,
        xml: withoutLooks(withoutForeignMarks(xml)),
      })),
      links: relations.filter(({ kind }) => kind === "hyperlink"),
      tables,
    });
    const others = text.elements.filter(
      ({ name }) => !carriedNames.has(name) && (tables.length === 0 || name !== "tableParts"),
    );
    rest.set(path, strToU8(textOf({ ...text, elements: others })));
  }
  return { carried, rest };
}

/** Puts them into a file that the library wrote. */
export function putCarried(written: Parts, carried: ReadonlyMap<string, Carried>): Parts {
  const parts = new Map(written);
  for (const [tab, path] of sheetPaths(written)) {
    const { elements = [], links = [], tables = [] } = carried.get(tab) ?? {};
    const text = tabText(partText(written, path));
    if (!text || elements.length + tables.length === 0) continue;
    const own = (id: string) => `held-${id}`;
    const linked = elements.map(({ name, xml }) => ({
      name,
      xml: xml.replace(/\sr:id="([^"]*)"/g, (_, id) => ` r:id="${own(id)}"`),
    }));
    const named = new Set(
      linked.flatMap(({ xml }) => [...xml.matchAll(/\sr:id="([^"]*)"/g)].map(([, id]) => id)),
    );
    const more = [
      ...links
        .filter(({ id }) => named.has(own(id)))
        .map(({ id, type, target, path: inside }) =>
          relationXml(own(id), type, target, inside === null),
        ),
      ...tables.map(({ path: of }, at) =>
        relationXml(own(`table${at}`), tableRelation, fromTab(of), false),
      ),
    ];
    for (const { path: of, xml } of tables) {
      parts.set(of, strToU8(xml));
      addType(parts, of);
    }
    if (more.length > 0) addRelations(parts, relationsPath(path), more);
    const tableParts = tables.map((_, at) => `<tablePart r:id="${own(`table${at}`)}"/>`);
    const listed = {
      name: "tableParts",
      xml: `<tableParts count="${tables.length}">${tableParts.join("")}</tableParts>`,
    };
    parts.set(
      path,
      strToU8(textOf(withElements(text, [...linked, ...(tables.length > 0 ? [listed] : [])]))),
    );
  }
  return parts;
}

/** Looks named by number or name: the library numbers them anew, and keeps no names. */
function withoutLooks(xml: string): string {
  return xml.replace(/<[^<>]*>/g, (tag) =>
    tag.replace(/\s(?:dxfId|\w+DxfId|\w+CellStyle)="[^"]*"/g, ""),
  );
}

function relationXml(id: string, type: string, target: string, outside: boolean): string {
  const mode = outside ? ' TargetMode="External"' : "";
  return `<Relationship Id="${id}" Type="${type}" Target="${escaped(target)}"${mode}/>`;
}

/** A part as other programs name it from a tab; some look no further than that. */
const fromTab = (part: string) => (part.startsWith("xl/") ? `../${part.slice(3)}` : `/${part}`);

function addRelations(parts: Map<string, Uint8Array>, path: string, more: readonly string[]): void {
  const old = partText(parts, path);
  const text =
    old === ""
      ? '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"></Relationships>'
      : old.replace(/<Relationships\b([^<>]*)\/>/, "<Relationships$1></Relationships>");
  parts.set(
    path,
    strToU8(text.replace("</Relationships>", () => `${more.join("")}</Relationships>`)),
  );
}

function addType(parts: Map<string, Uint8Array>, path: string): void {
  const types = "[Content_Types].xml";
  const override = `<Override PartName="/${path}" ContentType="${tableType}"/>`;
  parts.set(
    types,
    strToU8(partText(parts, types).replace("</Types>", () => `${override}</Types>`)),
  );
}

/** Attributes of other programs' own namespaces: the part they go back into does not declare them. */
export function withoutForeignMarks(xml: string): string {
  return xml.replace(/<[^<>]*>/g, (tag) =>
    tag.replace(/\s(?!r:|xml:|xmlns:)[A-Za-z_][\w.-]*:[\w.-]+=(?:"[^"]*"|'[^']*')/g, ""),
  );
}
