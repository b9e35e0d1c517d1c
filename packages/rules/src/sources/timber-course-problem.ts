import type { Source } from '../citation.ts';

export const timberCourseProblem: Source = {
  id: 'timber-course-problem',
  title: 'Problem 4.34, shrinkage of a joist',
  author: 'J. Thomas, Missouri University of Science and Technology',
  url: 'https://web.mst.edu/jthomas/classes/5260/problem/04/034/index.html',
  note: 'Undated solution for a course in timber design. By a second formula it prints 13.02 in, where that expression gives 12.99.',
};
