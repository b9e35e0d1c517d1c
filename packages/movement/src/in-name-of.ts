/** Lets a planner use a rule: what the rule refuses is said in the planner's name, with the path to the input. */
export function inNameOf<T>(caller: string, path: string, compute: () => T): T {
  try {
    return compute();
  } catch (error) {
    throw new RangeError((error as Error).message.replace(/^\w+ requires /, `${caller} requires ${path}`));
  }
}
