import type { Source } from '../citation.ts';

export const beechAndSpruceDiffusion2011: Source = {
  id: 'beech-and-spruce-diffusion-2011',
  title:
    'Combined bound water and water vapour diffusion of Norway spruce and European beech in and between the principal anatomical directions',
  author: 'W. Sonderegger, M. Vecellio, P. Zwicker, P. Niemz',
  year: 2011,
  identifier: 'Holzforschung 65(6), 819-828',
  url: 'https://doi.org/10.1515/HF.2011.091',
  note: 'Its abstract was seen.',
};
