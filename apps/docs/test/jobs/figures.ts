import { answer } from '../../src/calculator/answer.ts';
import type { AnyCalculation, FirstTexts } from '../../src/calculator/calculation.ts';
import { flatTexts } from '../../src/calculator/form.ts';

/** What a calculator answers when some of its first texts are others. */
export function outcomeOf(job: AnyCalculation, texts: FirstTexts = {}) {
  const { computed, problems, notes } = answer(job, flatTexts({ ...job.first, ...texts }));
  if (!computed) throw new Error([...Object.values(problems), ...notes].join(' '));
  return computed.outcome;
}

/** Its figures by their names: numbers, or words. */
export function figuresOf(job: AnyCalculation, texts: FirstTexts = {}) {
  const { figures } = outcomeOf(job, texts);
  return Object.fromEntries(
    figures.map((figure) => [figure.name, 'text' in figure ? figure.text : figure.value]),
  );
}
