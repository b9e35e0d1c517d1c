import type { Limits } from '@scantling/rules';

/**
 * What may stand in one place of a plan. One description serves the check of a plan that a program made, the schema of
 * plan files, and the JSON Schema for editors.
 */
export type Field = Figure | Figures | Text | Choice | List | Section;

interface Place {
  /** It may be left out, or be `null`. */
  readonly optional?: true | undefined;
  /** It may be `choose`: left to the planner. */
  readonly open?: true | undefined;
  /** For whoever edits a plan file: what it is, in a sentence. */
  readonly about: string;
}

/** A number. One whose name ends in `Mm` may be written as text with its unit in a plan file. */
export interface Figure extends Place {
  readonly kind: 'figure';
  readonly limits: Limits;
}

/** Numbers under one name, each within the limits. */
export interface Figures extends Place {
  readonly kind: 'figures';
  readonly limits: Limits;
  readonly minItems: number;
  readonly maxItems: number;
}

export interface Text extends Place {
  readonly kind: 'text';
}

export interface Choice extends Place {
  readonly kind: 'choice';
  readonly names: readonly string[];
}

export interface List extends Place {
  readonly kind: 'list';
  readonly of: Section | Text;
  readonly minItems: number;
  readonly maxItems: number;
}

export interface Section extends Place {
  readonly kind: 'section';
  readonly fields: Fields;
}

export type Fields = Readonly<Record<string, Field>>;

type Without<T> = Exclude<T, undefined | null>;

/** The fields of a type: one for each of its properties, of the kind that the property has. */
export type FieldsOf<T> = { readonly [K in keyof T]-?: FieldOf<Without<T[K]>> & MayBeLeftOut<T, K> };

type FieldOf<V> = [V] extends [number]
  ? Figure
  : [V] extends [string]
    ? Text | Choice
    : [V] extends [number | 'choose']
      ? Figure & { readonly open: true }
      : [V] extends [readonly number[]]
        ? Figures
        : [V] extends [readonly unknown[]]
          ? List
          : [V] extends [object]
            ? Section
            : Section & { readonly open: true };

type MayBeLeftOut<T, K extends keyof T> = undefined extends T[K] ? { readonly optional: true } : unknown;

export const figure = (about: string, limits: Limits): Figure => ({ kind: 'figure', about, limits });
export const figures = (about: string, limits: Limits, minItems: number, maxItems: number): Figures => ({
  kind: 'figures',
  about,
  limits,
  minItems,
  maxItems,
});
export const text = (about: string): Text => ({ kind: 'text', about });
export const choice = (about: string, names: readonly string[]): Choice => ({ kind: 'choice', about, names });
export const list = (about: string, of: Section | Text, minItems: number, maxItems: number): List => ({
  kind: 'list',
  about,
  of,
  minItems,
  maxItems,
});

/** A part of a plan, with a field for each property of its type. */
export const section = <T>(about: string, fields: FieldsOf<T>): Section => ({
  kind: 'section',
  about,
  fields: fields as unknown as Fields,
});

export const optional = <F extends Field>(field: F): F & { readonly optional: true } => ({
  ...field,
  optional: true,
});

export const open = <F extends Field>(field: F): F & { readonly open: true } => ({ ...field, open: true });
