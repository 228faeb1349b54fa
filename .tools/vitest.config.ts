import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    setupFiles: ['.tools/property-seed.ts'],
    // The mesh oracles and the tests that run the built command take seconds each on a small machine.
    testTimeout: 60_000,
    reporters: process.env['CI'] ? ['dot'] : ['default'],
  },
});
