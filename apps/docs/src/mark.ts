/** Our mark: a board under its dimension line, on a square of 32. */
const drawing = ({ ink, wood, measure }: { ink: string; wood: string; measure: string }) => `
<path d="M2 12h28v12H2z" fill="${wood}"/>
<g fill="none" stroke-width="1.5">
<path class="ink" d="M2 12h28v12H2zM2 19l7-7M6 24l12-12M14 24l12-12M22 24l8-8" stroke="${ink}"/>
<path class="measure" d="M2 3v7M30 3v7M2 6h28" stroke="${measure}"/>
</g>`;

/** The colours of styles/theme.css by day; a drawing outside a page can't read them there. */
const byDay = { ink: '#14222a', wood: '#ecc98f', measure: '#a13318' };
export const cloth = '#f2f5f1';

const svg = (content: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><title>Scantling</title>${content}</svg>`;

/** The mark alone, for the tab of a browser, whose colour follows the system. */
export const favicon = svg(
  `<style>@media (prefers-color-scheme:dark){.ink{stroke:#e6e6dc}.measure{stroke:#f2a081}}</style>${drawing(byDay)}`,
);

/**
 * The mark on cloth, for the screen of a device.
 *
 * @param share How much of the width the mark takes; a mask may cut a maskable icon to a circle of 80 % of it.
 * @param corner Radius of the corners, of a width of 32.
 */
export const icon = (share: number, corner: number) =>
  svg(
    `<rect width="32" height="32" rx="${corner}" fill="${cloth}"/>
<g transform="translate(16 16) scale(${share}) translate(-16 -13.5)">${drawing(byDay)}</g>`,
  );
