import type { Check } from '../result.ts';

export const checkLines = ({ status, title, says }: Check): string =>
  [`${status.padEnd(4)}  ${title}`, ...says.split('\n').map((line) => `      ${line}`)].join('\n');
