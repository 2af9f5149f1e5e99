import type { Column } from "../header/column";
import type { Unit } from "../value/units";

/** Unit and heading of the fields of some flat rows. */
export type Meanings = Map<string, Partial<Column>>;

/** What a field of the flat rows is read with. */
export type Meaning = {
  readonly unit?: Unit | null;
  readonly heading: string;
  readonly words: string;
};

/** What the fields of flat rows mean, from place to place: rows whose headings contradict one another are read by themselves. */
export class Chapters {
  readonly all: Meanings[] = [];
  /** What was described last. */
  private readonly described: Meanings = new Map();
  private current: Meanings | null = null;

  /** Unit and heading a field is read with from here on. */
  describe(field: string, meaning: Meaning): void {
    this.described.set(field, meaning);
    this.current = null;
  }

  /** What holds for rows found here. */
  now(): Meanings {
    if (this.current !== null) return this.current;
    const said = [...this.described];
    const agrees = (chapter: Meanings) =>
      said.every(([field, { unit, words }]) => {
        const other = chapter.get(field);
        // Only of speeds the words say more than the meaning: mean, peak or best.
        return (
          other === undefined ||
          (other.unit === unit && (field !== "speed" || other.words === words))
        );
      });
    let chapter = this.all.find(agrees);
    if (chapter === undefined) {
      chapter = new Map();
      this.all.push(chapter);
    }
    for (const [field, meaning] of said) chapter.set(field, meaning);
    this.current = chapter;
    return chapter;
  }
}
