/** A method in plain words; the scientific term stands with it. */
export interface MethodWords {
  readonly title: string;
  readonly says: string;
}
