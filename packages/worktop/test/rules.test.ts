import { describeRules } from '@scantling/tests-shared';
import * as worktop from '../src/index.ts';

describeRules(worktop, { dir: new URL('..', import.meta.url).pathname });
