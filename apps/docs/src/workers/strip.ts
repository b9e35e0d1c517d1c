import { stripInWood } from '../strip-in-rabbet/strip-in-wood.ts';
import { answerWith } from './answer-with.ts';

answerWith(stripInWood);
