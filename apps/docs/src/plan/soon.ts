import { asked, type Outcome, type Sheet, unplanned } from './work.ts';

/** Reads a sheet and plans the top, with as much of the planner as it asks for: that is loaded the first time. */
export async function outcomeSoon(sheet: Sheet): Promise<Outcome> {
  const { reading, plan } = asked(sheet);
  if (plan === null) return unplanned(reading);
  const { planOnDemand } = await import('@scantling/worktop/on-demand');
  try {
    return { reading, problems: reading.problems, result: await planOnDemand(plan) };
  } catch (error) {
    return unplanned(reading, error);
  }
}
