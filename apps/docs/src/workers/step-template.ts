import { stepTemplate } from '@scantling/grids';
import { answerWith } from './answer-with.ts';

answerWith(stepTemplate);
