import { strToU8 } from "fflate";
import { partText } from "./xml-text";
import type { Parts } from "./zip-parts";

const path = "docProps/custom.xml";
const contentType = "application/vnd.openxmlformats-officedocument.custom-properties+xml";
const relation =
  "http://schemas.openxmlformats.org/officeDocument/2006/relationships/custom-properties";

/** Carries a document's own properties, which the library drops, into the file it wrote. */
export function withOwnProperties(written: Parts, original: Parts | null): Parts {
  const own = original?.get(path);
  if (!own) return written;
  const types = partText(written, "[Content_Types].xml");
  const relations = partText(written, "_rels/.rels");
  return new Map([
    ...written,
    [path, own],
    [
      "[Content_Types].xml",
      strToU8(
        types.replace(
          "</Types>",
          `<Override PartName="/${path}" ContentType="${contentType}"/></Types>`,
        ),
      ),
    ],
    [
      "_rels/.rels",
      strToU8(
        relations.replace(
          "</Relationships>",
          `<Relationship Id="rIdOwn" Type="${relation}" Target="${path}"/></Relationships>`,
        ),
      ),
    ],
  ]);
}
