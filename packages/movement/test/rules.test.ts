import { describeRules } from '@scantling/tests-shared';
import * as movement from '../src/index.ts';

describeRules(movement, { dir: new URL('..', import.meta.url).pathname });
