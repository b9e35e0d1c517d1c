import { defineConfig } from 'vitest/config';

export default defineConfig({
  ssr: { resolve: { conditions: ['@scantling/source', 'module', 'node', 'default'] } },
  test: {
    include: ['packages/*/test/**/*.test.ts', 'tests-shared/test/**/*.test.ts', 'apps/*/test/**/*.test.ts'],
    testTimeout: 20_000,
  },
});
