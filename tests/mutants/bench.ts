import { copyFileSync, cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, relative } from 'node:path'
import { createVitest, type TestSpecification, type Vitest } from 'vitest/node'
import { switched, type Mutation } from './mutations.ts'

/** What came of a change: a test failed, or none did. */
export type Fate = 'killed' | 'survived'

const copied = ['core', 'electron', 'specs', 'tests', 'package.json', 'tsconfig.json']

/** By the number of a change, the test files that come to it, from the root of the project, the quickest first. */
export type Reached = Readonly<Record<number, readonly string[]>>

/**
 * A copy of the sources with changes that do not lie in one another, of which one at a time is switched on. Each run of tests
 * has a thread of its own, so that a constant, or what was kept from an earlier run, has the change in it too.
 */
export class Bench {
  private readonly folder: string
  private readonly vitest: Vitest
  private readonly tests: readonly string[]

  private constructor(folder: string, vitest: Vitest, tests: readonly string[]) {
    this.folder = folder
    this.vitest = vitest
    this.tests = tests
  }

  static async open(root: string, tests: readonly string[], mutations: readonly Mutation[]): Promise<Bench> {
    const folder = mkdtempSync(join(tmpdir(), 'bedplate-mutants-'))
    for (const each of copied) cpSync(join(root, each), join(folder, each), { recursive: true })
    symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'))
    copyFileSync(join(import.meta.dirname, 'switch.ts'), join(folder, 'switch.ts'))
    for (const file of new Set(mutations.map((each) => each.file))) {
      const changes = new Map([...mutations.entries()].filter(([, each]) => each.file === file))
      const path = join(folder, file)
      const name = relative(dirname(path), join(folder, 'switch.ts'))
      const text = switched(readFileSync(path, 'utf8'), changes, 'isTriedHere')
      writeFileSync(path, `import { is as isTriedHere } from '${name}'\n${text}`)
    }
    const vitest = await createVitest('test', {
      root: folder,
      config: false,
      include: [...tests],
      watch: false,
      bail: 1,
      pool: 'threads',
      isolate: false,
      fileParallelism: false,
      testTimeout: 60_000,
      expect: { requireAssertions: true },
      reporters: [{ onInit: () => undefined }],
      sequence: { sequencer: InOrder },
    })
    const found = (await vitest.globTestSpecifications()).map(({ moduleId }) => moduleId)
    return new Bench(folder, vitest, found)
  }

  /** Runs the tests with no change: null where one fails, since every change would seem to be noticed. */
  async look(): Promise<Reached | null> {
    writeFileSync(join(this.folder, 'reached'), '')
    writeFileSync(join(this.folder, 'tried'), '-1')
    if ((await this.run(this.tests)) === 'killed') return null
    const took = new Map(
      this.vitest.state.getTestModules().map((each) => [each.moduleId, each.diagnostic().duration]),
    )
    const reached: Record<number, string[]> = {}
    for (const line of readFileSync(join(this.folder, 'reached'), 'utf8').trimEnd().split('\n')) {
      const [number = '', path = ''] = line.split(' ')
      if (this.tests.includes(path)) (reached[Number(number)] ??= []).push(path)
    }
    for (const paths of Object.values(reached)) paths.sort((a, b) => (took.get(a) ?? 0) - (took.get(b) ?? 0))
    return Object.fromEntries(
      Object.entries(reached).map(([number, paths]) => [
        number,
        paths.map((path) => relative(this.folder, path)),
      ]),
    )
  }

  /** The tests that come to the change first: they are the likeliest to fail, and one that fails ends the run. */
  async try(number: number, reached: readonly string[]): Promise<Fate> {
    writeFileSync(join(this.folder, 'tried'), String(number))
    const first = reached.map((path) => join(this.folder, path))
    const others = this.tests.filter((path) => !first.includes(path))
    for (const files of [first, others])
      if (files.length > 0 && (await this.run(files)) === 'killed') return 'killed'
    return 'survived'
  }

  async close(): Promise<void> {
    await this.vitest.close()
    rmSync(this.folder, { recursive: true, force: true })
  }

  private async run(files: readonly string[]): Promise<Fate> {
    const project = this.vitest.getRootProject()
    const { testModules, unhandledErrors } = await this.vitest.runTestSpecifications(
      files.map((file) => project.createSpecification(file)),
    )
    // The state has the results of earlier runs as well.
    const failed = testModules.some((each) => files.includes(each.moduleId) && !each.ok())
    return failed || unhandledErrors.length > 0 ? 'killed' : 'survived'
  }
}

/** Test files one after the other as they are asked for. */
class InOrder {
  shard(files: TestSpecification[]): Promise<TestSpecification[]> {
    return Promise.resolve(files)
  }

  sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return Promise.resolve(files)
  }
}
