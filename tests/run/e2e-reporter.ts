import type { FullConfig, Reporter, Suite, TestCase, TestError, TestStep } from '@playwright/test/reporter'
import { writeReport, type Ended } from './report.ts'

/** Leaves the outcome of every end-to-end test; of one that failed, with its step. */
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
        switch (test.outcome()) {
          case 'expected':
            return { name, outcome: 'passed' }
          case 'flaky':
            return { name, outcome: 'passed', twice: true }
          case 'unexpected':
            return { name: `${name}${failedStep(test)}`, outcome: 'failed' }
          case 'skipped':
        }
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

/** The names of the steps, from outer to inner, in which a test failed. */
function failedStep(test: TestCase): string {
  const failedIn = (steps: readonly TestStep[]): readonly string[] => {
    const step = steps.find(({ category, error }) => category === 'test.step' && error !== undefined)
    return step === undefined ? [] : [step.title, ...failedIn(step.steps)]
  }
  return failedIn(test.results.at(-1)?.steps ?? [])
    .map((title) => ` › ${title}`)
    .join('')
}
