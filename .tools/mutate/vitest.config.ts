import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Runs test files in the order that they are named in. */
const named: string[] | undefined = process.env['MUTANT_TESTS'] === undefined ? undefined : JSON.parse(process.env['MUTANT_TESTS']);
class AsNamed extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    if (named === undefined) return super.sort(files);
    const place = ({ moduleId }: TestSpecification): number => named.findIndex((file) => moduleId.endsWith(file));
    return files.toSorted((a, b) => place(a) - place(b));
  }
}

export default defineConfig({
  cacheDir: '.vite',
  test: {
    include: named ?? ['test/**/*.test.ts'],
    // What reads the source as text, and what compares times, says nothing of a broken formula.
    exclude: ['**/node_modules/**', 'test/architecture/**', 'test/bench/**'],
    setupFiles: ['.tools/property-seed.ts', '.tools/mutate/reached.ts'],
    testTimeout: 60_000,
    cache: false,
    sequence: { sequencer: AsNamed },
  },
});
