const escapes: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
/** XML 1.0 allows no control characters, no half of a surrogate pair and no non-characters, not even escaped. */
const forbidden = /[\p{Cc}\p{Cs}\ufffe\uffff]/gu;

/**
 * Text as it may stand in an XML file, such as an SVG drawing, between tags or in an attribute's double quotes.
 *
 * @param text - Any text.
 * @returns The text, escaped; what XML 1.0 has no place for is left off.
 * @example
 * ```ts
 * import { xmlText } from '@scantling/grids/export';
 * xmlText('3/4" < 20 mm & more') // => '3/4&quot; &lt; 20 mm &amp; more'
 * ```
 */
export const xmlText = (text: string): string =>
  text.replace(forbidden, '').replace(/[&<>"]/g, (sign) => escapes[sign] as string);
