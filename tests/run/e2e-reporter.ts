import type { FullConfig, Reporter, Suite, TestError } from '@playwright/test/reporter'
import { writeReport, type Ended } from './report.ts'

/** Leaves the outcome of every end-to-end test. */
export default class EndToEndReporter implements Reporter {
  private suite: Suite | undefined
  private readonly errors: TestError[] = []

  printsToStdio(): boolean {
    return false
  }

  onBegin(_: FullConfig, suite: Suite): void {
    this.suite = suite
  }

  onError(error: TestError): void {
    this.errors.push(error)
  }

  onEnd(): void {
    const tests = this.suite?.allTests() ?? []
    writeReport([
      ...tests.map((test): Ended => {
        const name = test.titlePath().filter(Boolean).join(' › ')
        if (test.outcome() !== 'skipped') return { name, outcome: test.ok() ? 'passed' : 'failed' }
        const reason = test.annotations.find(({ type }) => type === 'skip' || type === 'fixme')?.description
        return { name, outcome: 'skipped', reason: reason ?? 'no reason given' }
      }),
      ...this.errors.map(({ message = '' }): Ended => ({
        name: `outside every test: ${message.split('\n', 1).join()}`,
        outcome: 'failed',
      })),
    ])
  }
}
