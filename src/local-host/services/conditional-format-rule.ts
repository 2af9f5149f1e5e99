import type { ConditionalFormat } from "../workbook-data";
import type { Range } from "./range";

/** The platform's conditional format rule: a look for cells where a formula holds. */
export class ConditionalFormatRule {
  constructor(
    private readonly ranges: readonly Range[],
    readonly look: Omit<ConditionalFormat, "ranges">,
  ) {}
  getRanges(): Range[] {
    return [...this.ranges];
  }
  getBooleanCondition() {
    const { formula, background } = this.look;
    return {
      getCriteriaType: () => "CUSTOM_FORMULA",
      getCriteriaValues: () => [formula],
      getBackground: () => background ?? null,
    };
  }
  copy(): ConditionalFormatRuleBuilder {
    return new ConditionalFormatRuleBuilder(this.ranges, this.look);
  }
}

export class ConditionalFormatRuleBuilder {
  constructor(
    private ranges: readonly Range[] = [],
    private look: Omit<ConditionalFormat, "ranges"> = { formula: "" },
  ) {}
  whenFormulaSatisfied(formula: string): this {
    return this.with({ formula });
  }
  whenTextEqualTo(text: string): this {
    const first = this.ranges[0];
    if (!first) throw new Error("Set the ranges before the text, here.");
    const corner = first.offset(0, 0, 1, 1).getA1Notation();
    return this.with({ formula: `=${corner}="${text.replace(/"/g, '""')}"` });
  }
  setBackground(background: string): this {
    return this.with({ background });
  }
  setFontColor(colour: string): this {
    return this.with({ colour });
  }
  setBold(bold: boolean): this {
    return this.with({ bold });
  }
  setItalic(italic: boolean): this {
    return this.with({ italic });
  }
  setRanges(ranges: readonly Range[]): this {
    this.ranges = ranges;
    return this;
  }
  build(): ConditionalFormatRule {
    if (this.look.formula === "") throw new Error("A conditional format rule needs a condition.");
    if (this.ranges.length === 0) throw new Error("A conditional format rule needs a range.");
    return new ConditionalFormatRule(this.ranges, this.look);
  }
  private with(part: Partial<Omit<ConditionalFormat, "ranges">>): this {
    this.look = { ...this.look, ...part };
    return this;
  }
}
