import type { Reporter, TestCase, TestModule } from 'vitest/node'
import { writeReport, type Ended } from './report.ts'

/** Leaves the outcome of every vitest test, and of every file and group that failed outside its tests. */
export default class UnitReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    writeReport([
      ...modules.flatMap(endedOf),
      ...unhandled.map(() => ({ name: 'an error outside every test', outcome: 'failed' }) as const),
    ])
  }
}

function endedOf(module: TestModule): readonly Ended[] {
  const groups = [module, ...module.children.allSuites()]
  return [
    ...groups
      .filter((group) => group.errors().length > 0)
      .map((): Ended => ({ name: `${module.relativeModuleId} outside its tests`, outcome: 'failed' })),
    ...[...module.children.allTests()].map((test) => endedOfTest(module, test)),
  ]
}

function endedOfTest(module: TestModule, test: TestCase): Ended {
  const name = `${module.relativeModuleId} › ${test.fullName.replaceAll(' > ', ' › ')}`
  const result = test.result()
  if (result.state === 'passed' || result.state === 'failed') return { name, outcome: result.state }
  const note = result.state === 'skipped' ? result.note : undefined
  return { name, outcome: 'skipped', reason: note ?? 'no reason given' }
}
