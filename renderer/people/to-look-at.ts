import type { BuildState } from '../../core/builds/index.ts'
import type { EngineSpec, Step } from '../../core/engine/index.ts'
import { numberOf } from '../../core/tightening/index.ts'

/** What a second person looks at in a step that was done: what to compare, and what was recorded. */
export function toLookAt(spec: EngineSpec, state: BuildState, step: Step): readonly string[] {
  switch (step.kind) {
    case 'note-marks': {
      const fit = spec.fits.find(({ id }) => id === step.fit)
      const marks = state.marks[step.fit]?.[step.part] ?? []
      const read = fit?.positions.map((position, index) => `${position} ${marks[index] ?? 'worn'}`) ?? []
      return ['Read the marks off the parts once more. Noted:', read.join(', ')]
    }
    case 'choose-shells': {
      const chosen = state.shells[step.fit] ?? []
      const fit = spec.fits.find(({ id }) => id === step.fit)
      const grade = (position: string, half: string) =>
        chosen.find((each) => each.position === position && each.half === half)?.grade ?? '–'
      const pairs = fit?.positions.map(
        (position) => `${position}: ${grade(position, 'upper')} above, ${grade(position, 'lower')} below`,
      )
      return ['Compare with marks, readings and the boxes of the shells. Chosen:', ...(pairs ?? [])]
    }
    case 'fit-shells':
      return ['Look at every half in its saddle. The drawing shows which shell belongs where.']
    case 'fit-part':
      return [step.instruction]
    case 'lay-bead':
      return ['Compare the bead with its path on the drawing.']
    case 'run-procedure': {
      const run = state.runs[step.procedure]
      const flags = run?.flags ?? []
      const told = flags.map(({ about, fastener, text, answer }) => {
        const at = numberOf(spec, fastener)
        return `! ${at === null ? '' : `Fastener ${at}: `}${text ?? about}. Answer: ${answer ?? 'none'}`
      })
      return [
        'Look at every fastener on the drawing and at the engine. Each pull is on the sheet.',
        ...(told.length > 0 ? told : ['No flag was raised.']),
      ]
    }
    case 'check': {
      const answer = state.checks[step.id]
      const said = [answer?.reading?.typed, answer?.note].filter(Boolean).join('. ')
      return [step.instruction, `Answered: good${said ? `, ${said}` : ''}`]
    }
    default:
      return step satisfies never
  }
}
