import { defineConfig } from 'vitest/config'

const root = new URL('..', import.meta.url).pathname

export default defineConfig({
  resolve: {
    // The library as a stranger imports it, from the sources that are being tested.
    alias: { oaktag: `${root}src/oaktag.ts` },
  },
  test: {
    root,
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    // Files share what they import: satori, the typefaces and the lexicon are opened once a worker, not once a file.
    isolate: false,
    // All cores: vitest would leave one to itself, and on two cores that is half the machine.
    maxWorkers: '100%',
    testTimeout: 120_000,
    hookTimeout: 300_000,
  },
})
