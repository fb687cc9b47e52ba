import { test } from './bench.ts'
import { electronVariable } from './hosts/electron.ts'

// Stands for all tests of its project where there is no program to run them on, so that their absence is told.
test('the same tests on Electron’s real program', () => {
  test.skip(
    process.env[electronVariable] === undefined,
    `Electron’s program is not here; name one: ${electronVariable}=/path/to/electron`,
  )
})
