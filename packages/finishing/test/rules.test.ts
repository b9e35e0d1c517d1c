import { describeRules } from '@scantling/tests-shared';
import * as finishing from '../src/index.ts';

describeRules(finishing, { dir: new URL('..', import.meta.url).pathname });
