import type { Shape, Spot } from './scene.ts';

/**
 * The symbol of first-angle projection (ISO 5456-2): a cone cut off, its narrow end to the left, and right of it what is
 * seen of it from the left. `centre` is midway between the two.
 */
export function firstAngleSymbol([x, y]: Spot): Shape[] {
  const [narrow, wide, half] = [1.25, 2.5, 2.5];
  const cone = x - 4.5;
  const eye = x + 4;
  const line = (from: Spot, to: Spot, type: 'thin' | 'centre' = 'thin'): Shape => ({
    kind: 'line',
    from,
    to,
    line: type,
  });
  return [
    line([cone - half, y - narrow], [cone - half, y + narrow]),
    line([cone + half, y - wide], [cone + half, y + wide]),
    line([cone - half, y - narrow], [cone + half, y - wide]),
    line([cone - half, y + narrow], [cone + half, y + wide]),
    { kind: 'circle', centre: [eye, y], radius: narrow, line: 'thin' },
    { kind: 'circle', centre: [eye, y], radius: wide, line: 'thin' },
    line([cone - half - 1, y], [eye + wide + 1, y], 'centre'),
    line([eye, y - wide - 1], [eye, y + wide + 1], 'centre'),
  ];
}
