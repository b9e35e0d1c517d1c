import { fileURLToPath } from 'node:url';
import { describeTables } from '@scantling/tests-shared';

describeTables(fileURLToPath(new URL('..', import.meta.url)));
