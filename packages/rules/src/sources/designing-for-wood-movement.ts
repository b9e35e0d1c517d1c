import type { Source } from '../citation.ts';

export const designingForWoodMovement: Source = {
  id: 'designing-for-wood-movement',
  title: 'Designing for Wood Movement, Part 2: Using Cleats or Buttons to Attach a Tabletop',
  author: 'Core77',
  url: 'https://core77.com/posts/71864/Designing-for-Wood-Movement-Part-2-Using-Cleats-or-Buttons-to-Attach-a-Tabletop',
  note: 'Undated. It states what has to fit, without figures.',
};
