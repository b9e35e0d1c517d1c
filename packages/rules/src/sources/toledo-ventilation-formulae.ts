import type { Source } from '../citation.ts';

export const toledoVentilationFormulae: Source = {
  id: 'toledo-ventilation-formulae',
  title: 'Related formulae: general dilution ventilation',
  author: 'University of Toledo, College of Engineering',
  url: 'http://www.eng.utoledo.edu/~akumar/IV/RelatedFormulae/FORM_CHAPX.HTML',
  note: 'Undated course page. Its 403 ft³ of vapour from a pint are for 70 °F.',
};
