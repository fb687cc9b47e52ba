import type { EngineSpec, Step } from '../../core/engine/index.ts'
import { isPlacedStep } from '../../core/engine/index.ts'
import { numberOf, plannedIn, shownAmount, showWindow, type Units } from '../../core/tightening/index.ts'
import type { RunDesk } from '../steps/run/run-desk.svelte.ts'
import type { Words } from '../../core/words/index.ts'
import type { Task } from '../steps/run/run-task.ts'

/** What is said aloud of what a run asks for now; empty where a person asked for something themselves. */
export function spokenTask(words: Words, desk: RunDesk, task: Task, units: Units): string {
  const { spoken } = words
  const { spec, procedure } = desk
  switch (task.kind) {
    case 'start':
      return spoken.start({ procedure: procedure.name })
    case 'declare-new':
      return spoken.areNew({ group: task.group.name })
    case 'paused':
      return spoken.paused
    case 'picked':
      return ''
    case 'done':
      return spoken.done
    case 'flag':
      return spoken.flag({ number: numberIn(spec, task.flag.fastener), about: task.flag.about })
    case 'replace':
      return spoken.replace({
        number: task.fastener.number,
        isLoose: task.loose && task.remedy === 'replace',
      })
    case 'pull': {
      const { pass, next, fastener } = task
      const window = desk.pulledTo(task, units)
      const isPulled = window?.kind === 'torque' || window?.kind === 'angle'
      const isFirst = plannedIn(procedure, next.pass)[0]?.fastener === next.fastener
      return spoken.pull({
        number: fastener?.number ?? null,
        kind: pass.kind,
        target: isPulled
          ? shownAmount(showWindow(window, units.torque).target, window.kind === 'angle' ? '°' : units.torque)
          : null,
        instruction: pass.kind === 'action' ? pass.instruction : null,
        begins: isFirst ? { pass: next.pass + 1, passes: procedure.passes.length } : null,
      })
    }
    default:
      return task satisfies never
  }
}

/** What is said aloud when a step comes; null stands for the end of all of them. */
export function spokenStep(words: Words, step: Step | null): string {
  if (step === null) return words.spoken.allSteps
  const instruction =
    'instruction' in step ? step.instruction : isPlacedStep(step) ? (step.places[0]?.say ?? null) : null
  return words.spoken.step({ name: step.name, instruction })
}

function numberIn(spec: EngineSpec, fastener: string | null): string | null {
  return numberOf(spec, fastener)
}
