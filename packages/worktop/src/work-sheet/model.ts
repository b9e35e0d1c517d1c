/** A figure that something is set to, cut to or looked for. */
export interface Setting {
  readonly name: string;
  readonly value: string;
}

/** A stage of the work. */
export interface WorkStep {
  readonly stage: 'mill' | 'glue' | 'flatten' | 'rabbet' | 'mark' | 'drill' | 'sand' | 'finish' | 'fix';
  readonly title: string;
  readonly settings: readonly Setting[];
  /** What is done, in order, each with a place to tick. */
  readonly tasks: readonly string[];
  /** What the plan does not say and the maker decides, each with room to write. */
  readonly decisions: readonly string[];
  readonly cautions: readonly string[];
}

/** A plan as the shop needs it, in the order of the work. */
export interface WorkSheet {
  readonly name: string;
  /** What it is made of, and where it is measured from. */
  readonly says: string;
  /** Which checks fail, and which are to be judged, before work begins. */
  readonly warnings: readonly string[];
  readonly steps: readonly WorkStep[];
  /** What holds for all of it. */
  readonly cautions: readonly string[];
}

export const setting = (name: string, value: string): Setting => ({ name, value });
