import { pinFit } from '@scantling/grids';
import { answerWith } from './answer-with.ts';

answerWith(pinFit);
