/** Two figures of a plan that can't both be right. */
export interface Conflict {
  readonly path: readonly (string | number)[];
  readonly allowed: string;
  readonly given: string | number;
}

/** A conflict unless it holds. */
export type Claim = Conflict & { readonly holds: boolean };

export const claim = (path: string, holds: boolean, allowed: string, given: string | number): Claim => ({
  path: path.split('.').map((key) => (/^\d+$/.test(key) ? Number(key) : key)),
  holds,
  allowed,
  given,
});

const quoted = (names: readonly string[]) => names.map((name) => `"${name}"`).join(', ');

export const oneOf = (
  path: string,
  given: string,
  things: readonly { readonly name: string }[],
  what: string,
) => {
  const names = things.map(({ name }) => name);
  return claim(path, names.includes(given), `the name of ${what}: ${quoted(names)}`, given);
};

export const inOrder = (least: readonly [string, number], most: readonly [string, number]) =>
  claim(most[0], least[1] <= most[1], `at least ${least[0]}, ${least[1]}`, most[1]);

/** The same of two figures of one section. */
export const ordered = (path: string, of: object, least: string, most: string) => {
  const values = of as Readonly<Record<string, number>>;
  return inOrder([`${path}.${least}`, values[least] as number], [`${path}.${most}`, values[most] as number]);
};

/** Each name of a list stands once, and none is taken. */
export function ownNames(
  path: string,
  items: readonly { readonly name: string }[],
  taken = new Set<string>(),
): Claim[] {
  return items.map(({ name }, i) => {
    const holds = !taken.has(name);
    taken.add(name);
    return claim(`${path}.${i}.name`, holds, 'a name of its own', name);
  });
}
