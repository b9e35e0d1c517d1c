import { describeRules } from '@scantling/tests-shared';
import * as fastening from '../src/index.ts';

describeRules(fastening, { dir: new URL('..', import.meta.url).pathname });
