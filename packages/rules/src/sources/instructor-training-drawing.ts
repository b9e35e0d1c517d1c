import type { Source } from '../citation.ts';

export const instructorTrainingDrawing: Source = {
  id: 'instructor-training-drawing',
  title: 'Engineering Drawing (Mechanical), craft instructor training scheme, exercise 9: limits and fits',
  author: 'National Instructional Media Institute',
  url: 'http://nimi.co.in/cits_ebooks/ED_MECHANICAL/files/basic-html/page232.html',
  note: 'Undated course book; its page 219 is page 232 of the file.',
};
