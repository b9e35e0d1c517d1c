import { bestOffset } from '@scantling/grids';
import { answerWith } from './answer-with.ts';

answerWith(bestOffset);
