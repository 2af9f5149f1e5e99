import type { PlacedTag } from "./placed-tags";
import type { SheetInside } from "./sheet-inside";

/** Where a tag may stand, as a script names it. */
export const locationTypes = { SHEET: "SHEET", ROW: "ROW", COLUMN: "COLUMN" } as const;
type LocationType = keyof typeof locationTypes;

/** The platform's search for tags within one tab. */
export class MetadataFinder {
  private readonly wanted: ((tag: PlacedTag) => boolean)[] = [];

  constructor(private readonly inside: SheetInside) {}

  withKey(key: string): this {
    this.wanted.push((tag) => tag.key === key);
    return this;
  }
  withValue(value: string): this {
    this.wanted.push((tag) => tag.value === value);
    return this;
  }
  withLocationType(type: LocationType): this {
    this.wanted.push(({ along }) => (along ?? "sheet").toUpperCase() === type);
    return this;
  }
  find() {
    return this.inside.tagsWhere((tag) => this.wanted.every((fits) => fits(tag)));
  }
}
