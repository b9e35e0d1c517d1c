import type { Source } from '../citation.ts';

export const physicsClassExpansion: Source = {
  id: 'physics-class-expansion',
  title: 'Thermal expansion: Example 3, the steel bed of a suspension bridge',
  author: 'a class in physics',
  url: 'http://class.physicsnaught.org/Physics-Classes/Preview-AP-Physics2-II/sun_lesson_62/topic_514.html',
  note: 'Undated page.',
};
