import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { describe, expect, test } from 'vitest';

/** What a program ships that uses a few names, bundled from the sources. */
async function shipped(contents: string): Promise<{ text: string; bytes: number }> {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: import.meta.dirname },
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
    conditions: ['@scantling/source'],
  });
  const text = outputFiles[0]?.text ?? '';
  return { text, bytes: gzipSync(text).length };
}

describe('what a program ships', () => {
  test('parseLength alone: at most 1.2 kB', async () => {
    const { text, bytes } = await shipped(`export { parseLength } from '@scantling/units';`);
    expect(text).toContain('denominator');
    expect(bytes).toBeLessThanOrEqual(1200);
  });

  test.each([
    ['usGallon', 'litre'],
    ['inch', 'millimetre'],
    ['poundForcePerSquareInch', 'megapascal'],
    ['poundPerUsGallon', 'gramPerLitre'],
    ['squareFootPerUsGallon', 'squareMetrePerLitre'],
  ])(
    'a conversion from %s to %s alone: at most 250 bytes, and no word of where it comes from',
    async (a, b) => {
      const { text, bytes } = await shipped(
        `import { convert, ${a}, ${b} } from '@scantling/units'; export const f = (x) => convert(x, ${a}, ${b});`,
      );
      expect(text).toContain('convert requires');
      expect(text).not.toMatch(/NIST|Appendix|exact|derived|denominator/);
      expect(bytes).toBeLessThanOrEqual(250);
    },
  );

  test('the list of factors brings the sources, so the check above can fail', async () => {
    const { text } = await shipped(`export { factors } from '@scantling/units';`);
    expect(text).toMatch(/NIST.*Appendix B\.8.*231 cubic inches/s);
  });
});
