import { cutBars } from '@scantling/stock';
import { answerWith } from './answer-with.ts';

answerWith(cutBars);
