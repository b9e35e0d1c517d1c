import { describeRules } from '@scantling/tests-shared';
import * as grids from '../src/index.ts';

describeRules(grids, { dir: new URL('..', import.meta.url).pathname });
