import { jsPDF } from 'jspdf';

/** Sheets upright, width and height in mm: ISO 216 and ANSI/ASME Y14.1. */
export const papers = { A4: [210, 297], A3: [297, 420], Letter: [215.9, 279.4] } as const;

export type Paper = keyof typeof papers;

/** The same plan gives the same bytes, so a file carries neither the hour nor a number drawn by chance. */
const NO_DATE = "D:20000101000000+00'00'";
const NO_ID = '0'.repeat(32);

/** A document with its first page, measured in millimetres from the top left corner. */
export function newPdf(title: string, paper: Paper, lying = false): jsPDF {
  const pdf = new jsPDF({
    unit: 'mm',
    format: [...papers[paper]],
    orientation: lying ? 'landscape' : 'portrait',
    compress: true,
    putOnlyUsedFonts: true,
  });
  pdf.setCreationDate(NO_DATE);
  pdf.setFileId(NO_ID);
  pdf.setDocumentProperties({ title: printable(title), creator: 'Scantling' });
  return pdf;
}

export const pdfBytes = (pdf: jsPDF): Uint8Array => new Uint8Array(pdf.output('arraybuffer'));

/** Signs that the standard fonts of PDF lack, as signs that they have and the trade reads alike. */
const likened: Readonly<Record<string, string>> = { '⌀': 'Ø', '−': '–', '≥': 'at least ', '≤': 'at most ' };

/** What Windows-1252, the encoding of the standard fonts, has besides Latin-1. */
const BEYOND_LATIN_1 = '€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ';

const hasSign = (sign: string) => /[\u0020-\u007e\u00a0-\u00ff]/.test(sign) || BEYOND_LATIN_1.includes(sign);

/**
 * Text in the signs that the standard fonts of PDF have: accents that they lack are left off, and what no Latin letter
 * stands for becomes a question mark.
 */
export const printable = (text: string): string =>
  [...text.normalize('NFC')]
    .flatMap((sign) => [...(likened[sign] ?? sign)])
    .map((sign) => {
      if (hasSign(sign)) return sign;
      const bare = sign.normalize('NFKD').replace(/\p{M}/gu, '');
      return bare !== '' && [...bare].every(hasSign) ? bare : '?';
    })
    .join('');
