import { buildSheet } from '../../core/builds/index.ts'
import { nextPull, type Reading } from '../../core/tightening/index.ts'
import { Workshop } from '../core/builds/workshop.ts'
import { type TighteningSet } from './tightening-sets.ts'

/** A published set being carried out; every reading is typed as the manual prints it. */
export class CarriedSet extends Workshop {
  constructor(set: TighteningSet) {
    super(set.spec)
    this.does({ type: 'start-run', procedure: 'tighten' })
  }

  get next() {
    return nextPull(this.spec.procedures[0]!, this.state.runs['tighten'])
  }

  /** Pulls whatever is next. */
  pulls(typed: string | null = null, unit: Reading['unit'] = 'lbf·ft') {
    const reading = typed === null ? null : { typed, unit }
    this.does({ type: 'pull', procedure: 'tighten', ...this.next!, reading, moved: false, outOfOrder: null })
    return this.state.runs['tighten']!.pulls.at(-1)!
  }

  /** Pulls every fastener of the pass that is next. */
  pullsPass(typed: string | null = null, unit: Reading['unit'] = 'lbf·ft') {
    const pass = this.next?.pass
    const verdicts = new Set<string>()
    while (this.next !== null && this.next.pass === pass) verdicts.add(this.pulls(typed, unit).verdict)
    return [...verdicts]
  }

  get done() {
    return buildSheet(this.spec, this.entries).runs[0]!.done
  }

  finish() {
    this.does({ type: 'finish-build' })
    return this.state.finished
  }
}
