/** A folder whose rules are changed one by one, and the tests that must notice, from the root of the project. */
export interface Folder {
  readonly name: string
  readonly sources: string
  readonly tests: readonly string[]
}

export const folders: readonly Folder[] = [
  {
    name: 'joint',
    sources: 'core/joint/*.ts',
    tests: [
      'tests/core/joint/*.test.ts',
      'tests/published/{preload,stiffness,threads}.test.ts',
      'tests/core/tightening/explain-pull.test.ts',
    ],
  },
  {
    name: 'cross-talk',
    sources: 'core/joint/cross-talk/*.ts',
    tests: ['tests/core/joint/cross-talk/*.test.ts', 'tests/published/beam.test.ts'],
  },
  {
    name: 'bearing',
    sources: 'core/bearing/**/*.ts',
    tests: [
      'tests/core/bearing/**/*.test.ts',
      'tests/published/clearances.test.ts',
      'tests/core/builds/shells/*.test.ts',
    ],
  },
  {
    name: 'tightening',
    sources: 'core/tightening/**/*.ts',
    tests: [
      'tests/core/tightening/**/*.test.ts',
      'tests/published/{tightening,wrenches}*.test.ts',
      'tests/core/builds/{commands,events}/*.test.ts',
    ],
  },
  {
    name: 'audit',
    sources: 'core/audit/**/*.ts',
    tests: [
      'tests/core/audit/**/*.test.ts',
      'tests/published/misprints.test.ts',
      'tests/core/engine/demos.test.ts',
    ],
  },
]
