import type { Citation } from '@scantling/rules';
import { simpson1998, woodHandbook2010 } from '@scantling/rules/sources';

// What the cards of the moisture equation and of its inverse share. A function where a bundler could not tell that
// a constant is free of effects, so that nothing of a card comes along with the function alone.

/** The equation in TeX; `aim` says what it is worked for. */
export const moistureEquation = (aim = ''): string => String.raw`\begin{aligned}
M &= \frac{1800}{W}\left[\frac{K h}{1 - K h} + \frac{K_1 K h + 2 K_1 K_2 K^2 h^2}{1 + K_1 K h + K_1 K_2 K^2 h^2}\right]${aim} \\
W &= 349 + 1.29\,T + 0.0135\,T^2 \\
K &= 0.805 + 0.000736\,T - 0.00000273\,T^2 \\
K_1 &= 6.27 - 0.00938\,T - 0.000303\,T^2 \\
K_2 &= 1.91 + 0.0407\,T - 0.000293\,T^2
\end{aligned}`;

/** Its symbols but for the moisture content. */
export const moistureEquationSymbols = {
  h: 'relative humidity, as a fraction',
  T: 'temperature of the air, °C',
  'W, K, K_1, K_2': 'constants of the equation at that temperature',
} as const;

export const moistureEquationSources: readonly Citation[] = [
  { source: woodHandbook2010, at: 'Eq. 4-5, ch. 4: its form, with h as a fraction', confirmed: 'text' },
  { source: simpson1998, at: 'the constants for °C', confirmed: 'text', tier: 'reprint' },
  { source: woodHandbook2010, at: 'Table 4-2, ch. 4: the range of the figures', confirmed: 'memory' },
];
