import { describeRules } from '@scantling/tests-shared';
import * as units from '../src/index.ts';

describeRules(units, { dir: new URL('..', import.meta.url).pathname });
