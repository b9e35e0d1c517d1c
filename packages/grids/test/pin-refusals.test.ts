import { describe, expect, test } from 'vitest';
import { longestPinSpan, type PinFitInput, pinFit } from '../src/index.ts';
import { press } from './pin-arbitraries.ts';

const pins = [
  { xMm: 0, yMm: 0 },
  { xMm: 0, yMm: 96 },
  { xMm: 0, yMm: 192 },
];

describe('pinFit refuses', () => {
  test.each<[string, object, string]>([
    ['no pin', { pins: [] }, '1 to 24 pins, got 0'],
    ['a thousand pins', { pins: Array.from({ length: 1000 }, () => pins[0]) }, '1 to 24 pins, got 1000'],
    ['pins that are no list', { pins: 'two' }, 'pins to be a list, got string'],
    [
      'a pin nowhere',
      { pins: [...pins.slice(0, 2), { xMm: Number.NaN, yMm: 0 }] },
      'pins[2].xMm between -20000 and 20000, got NaN',
    ],
    ['an empty place in the list', { pins: [null] }, 'pins[0].xMm between -20000 and 20000, got undefined'],
    [
      'two pins in one place',
      { pins: [pins[0], pins[0]] },
      'pins[1] at least 19.2 mm from pins[0], or the two may overlap, got 0',
    ],
    [
      'holes that run into each other',
      { pins: [pins[0], { xMm: 20.3, yMm: 0 }] },
      'pins[1] at least 20.4 mm from pins[0], or the two may overlap, got 20.3',
    ],
    ['fewer holes than pins', { holes: pins.slice(1) }, 'as many holes as pins, got 2'],
    ['a hole for nothing', { holes: null }, 'as many holes as pins, got undefined'],
    [
      'a hole nowhere',
      { holes: [...pins.slice(0, 2), { xMm: 0, yMm: Number.POSITIVE_INFINITY }] },
      'holes[2].yMm between -20000 and 20000, got Infinity',
    ],
    ['no hole size', { hole: undefined }, 'hole.lowerLimitMm between 0.1 and 1000, got undefined'],
    [
      'limits the wrong way round',
      { pin: { lowerLimitMm: 19, upperLimitMm: 18 } },
      'pin.upperLimitMm at least pin.lowerLimitMm, got 18 and 19',
    ],
    [
      'a pin of no size',
      { pin: { lowerLimitMm: 0, upperLimitMm: 18 } },
      'pin.lowerLimitMm between 0.1 and 1000, got 0',
    ],
    ['an error below 0', { pinPositionErrorMm: -0.1 }, 'pinPositionErrorMm between 0 and 10, got -0.1'],
    [
      'an error that is text',
      { holePositionErrorMm: '0.1' },
      'holePositionErrorMm between 0 and 10, got "0.1"',
    ],
    ['no season', { swellPct: undefined }, 'swellPct between 0 and 20, got undefined'],
    ['wood that vanishes', { shrinkPct: 100 }, 'shrinkPct between 0 and 20, got 100'],
  ])('%s', (_, change, says) => {
    const asked = () => pinFit({ ...press, pins, ...change } as PinFitInput);
    expect(asked).toThrow(RangeError);
    expect(asked).toThrow(`pinFit requires ${says}`);
  });

  test('nothing at all', () => {
    expect(() => pinFit(undefined as unknown as PinFitInput)).toThrow('pinFit requires pin.lowerLimitMm');
  });
});

describe('longestPinSpan refuses', () => {
  const given = { ...press, pitchMm: 96, mostPitchCount: 6 };
  test.each<[string, object, string]>([
    ['a pitch that leaves no wood', { pitchMm: 20 }, 'pitchMm between 20.4 and 10000, got 20'],
    ['half a pitch', { mostPitchCount: 2.5 }, 'mostPitchCount a whole number between 1 and 1000, got 2.5'],
    [
      'a million pitches',
      { mostPitchCount: 1e6 },
      'mostPitchCount a whole number between 1 and 1000, got 1000000',
    ],
    ['no pin', { pin: undefined }, 'pin.lowerLimitMm between 0.1 and 1000, got undefined'],
  ])('%s', (_, change, says) => {
    const asked = () => longestPinSpan({ ...given, ...change } as typeof given);
    expect(asked).toThrow(RangeError);
    expect(asked).toThrow(`longestPinSpan requires ${says}`);
  });

  test('and says null where not even one pin goes in', () => {
    const hole = { lowerLimitMm: 19, upperLimitMm: 19 };
    expect(longestPinSpan({ ...given, hole })).toEqual({ worstCase: null, rootSumSquare: null });
  });
});

test('the most pins over measured holes are answered at once', () => {
  const many = Array.from({ length: 24 }, (_, i) => ({ xMm: (i % 6) * 96, yMm: Math.floor(i / 6) * 96 }));
  const holes = many.map(({ xMm, yMm }, i) => ({
    xMm: xMm + 0.2 * Math.sin(7 * i) + 0.002 * yMm,
    yMm: yMm + 0.2 * Math.cos(11 * i) - 0.002 * xMm,
  }));
  const from = performance.now();
  expect(pinFit({ ...press, pins: many, holes }).alwaysGoesIn).toBe(false);
  expect(performance.now() - from).toBeLessThan(1000);
});
