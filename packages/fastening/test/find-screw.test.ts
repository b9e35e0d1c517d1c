import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  findScrew,
  inchLagScrews,
  inchMachineScrews,
  inchWoodScrews,
  metricLagScrews,
  type Screw,
} from '../src/index.ts';
import { joinScrews } from '../src/screws.ts';

const screws = joinScrews();
const nothing = {
  screw: null,
  candidates: [],
  why: 'No size of a screw can be read from this text.',
};
const namesOf = (text: string) => {
  const { screw, candidates } = findScrew(text);
  return [screw?.name ?? null, ...candidates.map(({ name }) => name)];
};

describe('the screws', () => {
  test('are those of the tables, each with a name of its own', () => {
    const ofKind = (kind: Screw['kind'], series: Screw['series']) =>
      screws.filter((screw) => screw.kind === kind && screw.series === series).length;
    expect(ofKind('wood screw', 'inch')).toBe(inchWoodScrews.rows.length);
    expect(ofKind('lag screw', 'inch')).toBe(inchLagScrews.rows.length);
    expect(ofKind('machine screw', 'inch')).toBe(inchMachineScrews.rows.length);
    expect(ofKind('lag screw', 'metric')).toBe(metricLagScrews.rows.length);
    expect(ofKind('wood screw', 'metric')).toBe(11);
    expect(ofKind('machine screw', 'metric')).toBe(17);
    expect(new Set(screws.map(({ name }) => name)).size).toBe(screws.length);
  });

  test('have a root inside the thread, and a head wider than the shank', () => {
    for (const { name, diameterMm, rootDiameterMm, bodyDiameterMm, heads } of screws) {
      if (rootDiameterMm) expect(rootDiameterMm.value, name).toBeLessThan(diameterMm.value);
      if (bodyDiameterMm) expect(bodyDiameterMm.value, name).toBeGreaterThan(diameterMm.value);
      for (const head of heads) {
        const widths = [head.diameterMm, head.edgeDiameterMm, head.acrossFlatsMm].flatMap((one) => one ?? []);
        expect(widths.length, name).toBeGreaterThan(0);
        for (const { value } of widths) expect(value, name).toBeGreaterThan(diameterMm.value * 1.3);
        if (head.diameterMm && head.edgeDiameterMm) {
          expect(head.edgeDiameterMm.value, name).toBeLessThan(head.diameterMm.value);
        }
        expect(head.angleDeg === null, name).toBe(head.shape !== 'countersunk');
      }
    }
  });

  test('carry each erratum of their tables at the figure that it is about', () => {
    const erratum = (text: string, figure: 'pitchMm' | 'rootDiameterMm' | 'diameterMm') =>
      findScrew(text).screw?.[figure]?.citation.erratum;
    expect(erratum('5.5 mm wood screw', 'pitchMm')).toMatch(/2\.4 mm/);
    expect(erratum('5.5 mm wood screw', 'rootDiameterMm')).toMatch(/3\.8 mm/);
    expect(erratum('5.5 mm wood screw', 'diameterMm')).toBeUndefined();
    expect(erratum('9/16 in machine screw', 'pitchMm')).toMatch(/12/);
    const socket = findScrew('M2').screw?.heads[1];
    expect(socket?.diameterMm?.citation.erratum).toMatch(/4\.48/);
    expect(socket?.heightMm.citation.erratum).toBeUndefined();
  });
});

describe('findScrew', () => {
  test.each([
    ['#8', 'No. 8 wood screw'],
    ['No. 8', 'No. 8 wood screw'],
    ['No.8', 'No. 8 wood screw'],
    ['8 gauge', 'No. 8 wood screw'],
    ['#8 x 1 1/4" wood screw', 'No. 8 wood screw'],
    ['8 × 1¼ in', 'No. 8 wood screw'],
    ['#8 brass flat head wood screw', 'No. 8 wood screw'],
    ['#8-32', 'No. 8 machine screw'],
    ['10-24 machine screw', 'No. 10 machine screw'],
    ['number 10 lag screw', 'No. 10 lag screw'],
    ['M6', 'M6 machine screw'],
    ['m6×40', 'M6 machine screw'],
    ['M6 countersunk', 'M6 machine screw'],
    ['M8 coach screw', '8 mm lag screw'],
    ['6 mm wood screw', '6 mm wood screw'],
    ['6 x 60 mm wood screw', '6 mm wood screw'],
    ['4,5 mm', '4.5 mm wood screw'],
    ['4.5', '4.5 mm wood screw'],
    ['1/4 in lag', '1/4 in lag screw'],
    ['3/8" lag screw', '3/8 in lag screw'],
    ['3/8″ lag bolt', '3/8 in lag screw'],
    ['1-1/4 in lag', '1 1/4 in lag screw'],
    ['1¼ inch lag screw', '1 1/4 in lag screw'],
    ['1/4-20', '1/4 in machine screw'],
    ['1/4"-20 x 2', '1/4 in machine screw'],
    ['1/4 in-20', '1/4 in machine screw'],
    ['#8-15 wood screw', 'No. 8 wood screw'],
    ['.25" lag', '1/4 in lag screw'],
    ['0.25 in lag', '1/4 in lag screw'],
    ['8g', 'No. 8 wood screw'],
    ['No. 8.', 'No. 8 wood screw'],
    ['M6x1', 'M6 machine screw'],
    ['M6 x 1.0', 'M6 machine screw'],
    ['M6-1.0', 'M6 machine screw'],
    ['M6x1x30', 'M6 machine screw'],
    ['M8×1,25 × 40', 'M8 machine screw'],
    ['M8 x 3 mm', 'M8 machine screw'],
    ['M20 × 2 1/2 in', 'M20 machine screw'],
  ])('%s is the %s', (text, name) => {
    expect(namesOf(text)).toEqual([name]);
  });

  test('gives all that a text may mean', () => {
    expect(findScrew('8').why).toBe('It may mean each of these.');
    expect(findScrew('#11').why).toBe('No table has this size: these are the next ones.');
    expect(namesOf('8')).toEqual([null, 'No. 8 wood screw', '8 mm wood screw', '8 mm lag screw']);
    expect(namesOf('6 mm')).toEqual([null, '6 mm wood screw', '6 mm lag screw']);
    expect(namesOf('1/4 in')).toEqual([null, '1/4 in lag screw', '1/4 in machine screw']);
  });

  // Source: ISO 261, fine pitches: M8 × 1, M10 × 1.25, M12 × 1.5; UNF No. 10: 32 to the inch. From memory.
  test.each([
    ['M8x1', 'M8 machine screw'],
    ['M8 × 1 × 40', 'M8 machine screw'],
    ['M10x1.25', 'M10 machine screw'],
    ['M12 x 1.5', 'M12 machine screw'],
    ['M12-1.5', 'M12 machine screw'],
    ['10-32', 'No. 10 machine screw'],
    ['#8-36', 'No. 8 machine screw'],
    ['1/4-28', '1/4 in machine screw'],
  ])(
    'takes %s, a fine thread, for no other: it names that size, and says that its thread is in no table',
    (text, name) => {
      expect(namesOf(text)).toEqual([null, name]);
      expect(findScrew(text).why).toBe('No table has this thread: these are of its size.');
    },
  );

  test('takes a metric thread with a pitch for what the tables have of that pitch, and with a length for any', () => {
    const threaded = screws.filter(({ kind, series }) => kind === 'machine screw' && series === 'metric');
    const written = fc
      .record({
        screw: fc.constantFrom(...threaded),
        tenths: fc.integer({ min: 1, max: 400 }),
        cross: fc.constantFrom('x', ' x ', '×', ' × '),
      })
      .map(({ screw, tenths, cross }) => ({ screw, figure: tenths / 10, cross }));
    const seen = { other: 0, length: 0 };
    fc.assert(
      fc.property(written, ({ screw, figure, cross }) => {
        const found = findScrew(`${screw.size}${cross}${figure}`).screw;
        const isPitch = figure <= screw.diameterMm.value / 2;
        seen[isPitch ? 'other' : 'length'] += 1;
        const fits = !isPitch || (screw.pitchMm !== null && Math.abs(screw.pitchMm.value - figure) < 0.005);
        expect(found?.name ?? null).toBe(fits ? screw.name : null);
        if (screw.pitchMm) {
          expect(findScrew(`${screw.size}${cross}${screw.pitchMm.value}${cross}40`).screw).toEqual(screw);
        }
      }),
      { numRuns: 300 },
    );
    expect(Math.min(seen.other, seen.length)).toBeGreaterThan(10);
  });

  test('gives the next sizes where no table has the one that was asked for', () => {
    expect(namesOf('#11')).toEqual([null, 'No. 10 wood screw', 'No. 12 wood screw']);
    expect(namesOf('M7')).toEqual([null, 'M6 machine screw', 'M8 machine screw']);
    expect(namesOf('1 1/2 in lag')).toEqual([null, '1 1/4 in lag screw']);
    expect(namesOf('1 mm wood screw')).toEqual([null, '2 mm wood screw']);
  });

  test.each([
    '',
    '  ',
    'screw',
    'lag screw',
    '8 penny nail',
    '8d',
    '#00',
    '00',
    '08',
    '#8.5',
    '-6 mm',
    '−6 mm',
    '- 6 mm',
    '#-6',
    'M-6',
    'M6-30',
    'M6.5.5',
    '#8 nail',
    'coach bolt 8 mm',
    '1/0 in',
    'M',
    '-',
  ])('"%s" is no screw', (text) => expect(findScrew(text)).toEqual(nothing));

  test('finds every screw by its name, however it is written', () => {
    const written = fc
      .record({
        screw: fc.constantFrom(...screws),
        shout: fc.boolean(),
        gap: fc.constantFrom(' ', '  ', '\t', '\u00a0'),
        mark: fc.constantFrom(' in', '"', ' inch', '″'),
        gauge: fc.constantFrom('No. ', '#', 'no ', 'number ', 'gauge '),
        cross: fc.constantFrom('', ' x 40', ' × 2 1/2 in', ' x 50 mm'),
      })
      .map(({ screw, shout, gap, mark, gauge, cross }) => {
        const size = screw.size.replace(' in', mark).replace('No. ', gauge);
        const text = `${size}${cross} ${screw.kind}`.replaceAll(' ', gap);
        return { screw, text: shout ? text.toUpperCase() : text };
      });
    fc.assert(
      fc.property(written, ({ screw, text }) => {
        expect(findScrew(text)).toEqual({ screw, candidates: [], why: null });
      }),
    );
  });

  test('answers any text: with one screw, with several, or with none, never with both', () => {
    const pieces = fc.constantFrom(
      ...[
        '#',
        'No. ',
        '8',
        '6',
        '1/4',
        '0',
        '/',
        '-',
        'x',
        '"',
        ' mm',
        ' in',
        'M',
        'lag',
        'wood',
        ' ',
        '.',
        '½',
        'é',
      ],
    );
    const texts = fc.oneof(
      fc.string(),
      fc.array(pieces, { maxLength: 8 }).map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const { screw, candidates, why } = findScrew(text);
        expect(screw === null).toBe(why !== null);
        expect(screw === null || candidates.length === 0).toBe(true);
        expect(new Set(candidates).size).toBe(candidates.length);
        for (const one of screw ? [screw] : candidates)
          expect(screws.map(({ name }) => name)).toContain(one.name);
        expect(findScrew(`  ${text.toUpperCase().toLowerCase()} `)).toEqual(
          findScrew(text.toUpperCase().toLowerCase()),
        );
      }),
    );
  });

  test('a size between two of the table gives just these two', () => {
    const wood = screws.filter(({ kind, series }) => kind === 'wood screw' && series === 'metric');
    fc.assert(
      fc.property(fc.integer({ min: 201, max: 799 }), (hundredths) => {
        const diameterMm = hundredths / 100;
        const { screw, candidates } = findScrew(`${diameterMm} mm wood screw`);
        if (screw) {
          expect(screw.diameterMm.value).toBe(diameterMm);
          return;
        }
        const [smaller = Number.NaN, larger = Number.NaN] = candidates.map((one) => one.diameterMm.value);
        expect(candidates).toHaveLength(2);
        expect(smaller).toBeLessThan(diameterMm);
        expect(larger).toBeGreaterThan(diameterMm);
        const between = wood.filter(({ diameterMm: { value } }) => value > smaller && value < larger);
        expect(between).toEqual([]);
      }),
    );
  });

  test.each([[8], [null], [undefined], [{}], [['#8']]])('refuses %o', (text) => {
    expect(() => findScrew(text as string)).toThrow(/^findScrew requires text to be text, got /);
  });
});
