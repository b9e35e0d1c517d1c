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
  ])('%s is the %s', (text, name) => {
    expect(namesOf(text)).toEqual([name]);
  });

  test('gives all that a text may mean', () => {
    expect(namesOf('8')).toEqual([null, 'No. 8 wood screw', '8 mm wood screw', '8 mm lag screw']);
    expect(namesOf('6 mm')).toEqual([null, '6 mm wood screw', '6 mm lag screw']);
    expect(namesOf('1/4 in')).toEqual([null, '1/4 in lag screw', '1/4 in machine screw']);
  });

  test('gives the next sizes where no table has the one that was asked for', () => {
    expect(namesOf('#11')).toEqual([null, 'No. 10 wood screw', 'No. 12 wood screw']);
    expect(namesOf('M7')).toEqual([null, 'M6 machine screw', 'M8 machine screw']);
    expect(namesOf('1 1/2 in lag')).toEqual([null, '1 1/4 in lag screw']);
    expect(namesOf('1 mm wood screw')).toEqual([null, '2 mm wood screw']);
    expect(namesOf('#8-36')).toEqual([null, 'No. 8 machine screw', 'No. 10 machine screw']);
  });

  test.each([
    '',
    '  ',
    'screw',
    'lag screw',
    '8 penny nail',
    '8d',
    '#8 nail',
    'coach bolt 8 mm',
    '1/0 in',
    'M',
    '-',
  ])('"%s" is no screw', (text) => expect(findScrew(text)).toEqual({ screw: null, candidates: [] }));

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
        expect(findScrew(text)).toEqual({ screw, candidates: [] });
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
        const { screw, candidates } = findScrew(text);
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
