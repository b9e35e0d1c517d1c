import type { Source } from '../citation.ts';

export const hardwoodMeasurementPage: Source = {
  id: 'hardwood-measurement-page',
  title: 'Grading sawn lumber: measurement',
  author: 'American Hardwood Export Council',
  url: 'https://www.americanhardwood.org/en/american-hardwood/grading-sawn-lumber/measurement',
  note: 'Undated page on the grading rules of the National Hardwood Lumber Association.',
};
