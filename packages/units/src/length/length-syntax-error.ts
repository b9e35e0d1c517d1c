/** Text that cannot be read as a length: where reading stopped, and what would have been right there. */
export class LengthSyntaxError extends SyntaxError {
  /** The text as given, its first 64 characters. */
  declare readonly text: string;
  /** Index in the text of the first character that does not fit, counted from 0. */
  declare readonly position: number;
  /** What was expected there. */
  declare readonly expected: string;

  constructor(text: string, position: number, expected: string) {
    super(`Expected ${expected} at position ${position} of "${text}"`);
    this.name = 'LengthSyntaxError';
    this.text = text;
    this.position = position;
    this.expected = expected;
  }
}
