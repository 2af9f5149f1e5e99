/** The platform's rule for what a cell takes: here, one of a list. */
export class DataValidation {
  constructor(
    readonly values: readonly string[],
    readonly refusesOthers: boolean,
    readonly helpText: string,
  ) {}
  getCriteriaValues(): unknown[] {
    return [[...this.values], true];
  }
  getAllowInvalid(): boolean {
    return !this.refusesOthers;
  }
  getHelpText(): string {
    return this.helpText;
  }
}

export class DataValidationBuilder {
  private values: readonly string[] | null = null;
  private refusesOthers = true;
  private helpText = "";

  requireValueInList(values: readonly string[], _showDropdown = true): this {
    this.values = values.map(String);
    return this;
  }
  setAllowInvalid(allow: boolean): this {
    this.refusesOthers = !allow;
    return this;
  }
  setHelpText(text: string): this {
    this.helpText = text;
    return this;
  }
  build(): DataValidation {
    if (!this.values) throw new Error("Cannot build a data validation rule without criteria.");
    return new DataValidation(this.values, this.refusesOthers, this.helpText);
  }
}
