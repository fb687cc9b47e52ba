import { globSync, rmSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import { join } from 'node:path'
import { whyNoSandbox } from './chromium.ts'
import { root, run, type Command } from './command.ts'
import { readReport, reportVariable, type Ended, type Part } from './report.ts'

type Check = { readonly name: string; readonly words: Command['words'] }

/** The native compilers clear away less often: they end soon, and it was a fifth of their work. A machine's own value is kept. */
const native = { GOGC: process.env.GOGC ?? '400' }

/** Each counts as one check. They take turns beside the unit tests. */
export const staticChecks: readonly Check[] = [
  {
    name: 'type check of components',
    words: [
      'node_modules/svelte-check/bin/svelte-check',
      // By the same compiler as the other layers; what it makes of the components lies in .svelte-check.
      ...['--tsgo', '--tsconfig', 'renderer/tsconfig.json', '--fail-on-warnings'],
    ],
  },
  {
    // Lint has the types worked out, each file by the configuration of its layer: to say what is wrong in them costs little more.
    name: 'type check and lint of core, electron, renderer, tests and configuration',
    words: [
      'node_modules/oxlint/dist/cli.js',
      ...['--type-aware', '--type-check', '--report-unused-disable-directives-severity=error'],
      ...['core', 'electron', 'renderer', 'tests', ...globSync('*.ts', { cwd: root })],
    ],
  },
  {
    name: 'lint of components',
    words: ['node_modules/eslint/bin/eslint.js', '-c', 'tests/lint/eslint.config.js', '.'],
  },
  {
    name: 'format',
    words: ['node_modules/oxfmt/bin/oxfmt', '-c', 'tests/lint/oxfmtrc.json', '--check', '.'],
  },
]

export const build: Check = { name: 'build', words: ['electron/launch/build.ts'] }

/** Runs one check, beside what takes longer; what it prints is shown when it fails. */
export async function check({ name, words }: Check): Promise<Part> {
  const start = Date.now()
  const { code, output } = await run({ words, env: native, givesWay: true })
  console.log(`${code === 0 ? 'ok    ' : 'FAILED'}  ${name}`)
  if (code !== 0) console.log(output)
  return partOf(name, start, [{ name, outcome: code === 0 ? 'passed' : 'failed' }])
}

/** Runs the unit tests, or those below a folder; what they print is shown when one fails. */
export async function unitTests(name: string, folder?: string): Promise<Part> {
  const start = Date.now()
  const reporters = ['--reporter=default', '--reporter=./tests/run/unit-reporter.ts']
  // Of two cores Vitest would use one: some of its tests only wait for a program, and the other checks end long before it.
  const workers = `--maxWorkers=${availableParallelism()}`
  const { output, ended } = await runReported(name, {
    words: [
      'node_modules/vitest/vitest.mjs',
      'run',
      workers,
      ...reporters,
      ...(folder === undefined ? [] : [folder]),
    ],
  })
  const isGood = ended.every(({ outcome }) => outcome !== 'failed')
  console.log(`${isGood ? 'ok    ' : 'FAILED'}  ${name}: ${ended.length}`)
  if (!isGood) console.log(output)
  return partOf(name, start, ended)
}

/** The projects of the end-to-end tests that mostly wait for a program to start and to end, most of them without a browser. */
export const waiting = ['laws']
/** The others, which keep two cores busy. */
export const working = ['local', 'desktop', 'electron']

/** Runs the end-to-end tests of some projects in a real Chromium, each shown as it ends. */
export async function endToEndTests(
  chromium: string | undefined,
  projects: readonly string[],
): Promise<Part> {
  const name = `end-to-end tests in ${projects.join(', ')}`
  const start = Date.now()
  if (chromium === undefined) {
    console.log('No Chromium was found or could be installed. Name one: BEDPLATE_CHROMIUM=/path/to/chromium')
    return partOf(name, start, [{ name: `${name} without Chromium`, outcome: 'failed' }])
  }
  const bare = await whyNoSandbox(chromium)
  if (bare !== undefined) console.log(`        Chromium runs without its sandbox in these tests: ${bare}`)
  console.log(`        ${name}, by ${chromium} …`)
  const { ended } = await runReported(name, {
    words: [
      'node_modules/@playwright/test/cli.js',
      ...['test', '--reporter=list,./tests/run/e2e-reporter.ts'],
      ...projects.map((project) => `--project=${project}`),
    ],
    env: {
      BEDPLATE_CHROMIUM: chromium,
      BEDPLATE_SANDBOX: bare === undefined ? 'on' : 'off',
      PW_DISABLE_TS_ESM: '1', // Node strips types itself; Playwright's Babel took 17 s of a processor for it
    },
    shown: true,
  })
  return partOf(name, start, ended)
}

async function runReported(
  name: string,
  command: Command,
): Promise<{ readonly output: string; readonly ended: readonly Ended[] }> {
  const file = join(root, 'dist/reports', `${name.replaceAll(/[ ,]+/g, '-')}.json`)
  rmSync(file, { force: true })
  const { code, output } = await run({ ...command, env: { ...command.env, [reportVariable]: file } })
  return { output, ended: readReport(name, file, code) }
}

function partOf(name: string, start: number, ended: readonly Ended[]): Part {
  return { name, seconds: (Date.now() - start) / 1000, ended }
}
