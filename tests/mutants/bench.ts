import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { createVitest, type Vitest } from 'vitest/node'
import { mutated, type Mutation } from './mutations.ts'

/** What came of a change: a test failed, or none did. */
export type Fate = 'killed' | 'survived'

const copied = ['core', 'electron', 'specs', 'tests', 'package.json', 'tsconfig.json']

/** A copy of the sources, in which one file at a time is changed and the tests are run. */
export class Bench {
  private readonly folder: string
  private readonly vitest: Vitest
  private readonly tests: readonly string[]

  private constructor(folder: string, vitest: Vitest, tests: readonly string[]) {
    this.folder = folder
    this.vitest = vitest
    this.tests = tests
  }

  static async open(root: string, tests: readonly string[]): Promise<Bench> {
    const folder = mkdtempSync(join(tmpdir(), 'bedplate-mutants-'))
    for (const each of copied) cpSync(join(root, each), join(folder, each), { recursive: true })
    symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'))
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
    })
    const found = (await vitest.globTestSpecifications()).map(({ moduleId }) => moduleId)
    return new Bench(folder, vitest, found)
  }

  /** Runs the tests on the sources as they are: without that, every change would seem to be noticed. */
  async isSound(): Promise<boolean> {
    return (await this.run('')) === 'survived'
  }

  async try(mutation: Mutation): Promise<Fate> {
    const path = join(this.folder, mutation.file)
    const text = readFileSync(path, 'utf8')
    writeFileSync(path, mutated(text, mutation))
    this.vitest.invalidateFile(path)
    try {
      return await this.run(basename(mutation.file, '.ts'))
    } finally {
      writeFileSync(path, text)
      this.vitest.invalidateFile(path)
    }
  }

  async close(): Promise<void> {
    await this.vitest.close()
    rmSync(this.folder, { recursive: true, force: true })
  }

  /** The tests of the file's own name first: they are the likeliest to fail, and one that fails ends the run. */
  private async run(name: string): Promise<Fate> {
    const ours = this.tests.filter((path) => name !== '' && basename(path).startsWith(name))
    const others = this.tests.filter((path) => !ours.includes(path))
    for (const files of [ours, others]) {
      if (files.length === 0) continue
      const project = this.vitest.getRootProject()
      const { testModules, unhandledErrors } = await this.vitest.runTestSpecifications(
        files.map((file) => project.createSpecification(file)),
      )
      // The state has the results of earlier runs as well.
      const failed = testModules.some((each) => files.includes(each.moduleId) && !each.ok())
      if (failed || unhandledErrors.length > 0) return 'killed'
    }
    return 'survived'
  }
}
