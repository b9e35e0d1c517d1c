/**
 * Sheets to print. Needs `jspdf`, an optional peer of this package.
 *
 * @module worktop/print
 */
export { type Paper, papers } from './pdf.ts';
export { type PrintedTemplate, printTemplate, type TemplatePaper } from './print-template.ts';
export { type PrintedWorkSheet, printWorkSheet } from './print-work-sheet.ts';
