/** What help says of one test: three pictures with their words, then the rules. */
export interface TestHelp {
  readonly title: string;
  readonly lead: string;
  /** Under the three pictures, in the order in which they are done. */
  readonly pictures: readonly [string, string, string];
  readonly rules: readonly RuleGroup[];
}

/** Rules that belong together. */
export interface RuleGroup {
  readonly title: string;
  readonly says: readonly string[];
}
