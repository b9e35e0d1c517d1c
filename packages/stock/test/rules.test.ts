import { describeRules } from '@scantling/tests-shared';
import * as stock from '../src/index.ts';

describeRules(stock, { dir: new URL('..', import.meta.url).pathname });
