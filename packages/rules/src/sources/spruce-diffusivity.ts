import type { Source } from '../citation.ts';

export const spruceDiffusivity: Source = {
  id: 'spruce-diffusivity',
  title:
    'Estimation of the apparent anisotropic water diffusivity on spruce evaluated with a simplified derivative approach and as a function of the flow rate',
  author: 'A. Sánchez-Ferrer, M. Engelhardt',
  year: 2026,
  identifier: 'doi 10.1038/s41598-026-38932-7',
  url: 'https://tomesphere.com/paper/PMC12894689',
  note: 'Its abstract was seen on a page that reprints it; the year follows from its number.',
};
