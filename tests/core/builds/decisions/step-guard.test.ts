import { describe, expect, it } from 'vitest'
import { stepFor } from '../../../../core/builds/decisions/step-guard.ts'
import {
  stepRules,
  type CommandOf,
  type StepCommand,
  type StepCommandType,
} from '../../../../core/builds/commands/step-rules.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const skerry = demoEngine('skerry-3')
const reason = 'The apprentice asked to see it'
const mm = { typed: '0.05', unit: 'mm' } as const
const ofM1 = { step: 'choose-mains', position: 'M1' }
const half = { step: 'fit-mains', position: 'M1', half: 'upper' } as const
const ofRings = { step: 'ring-gaps', measure: 'top', at: 'Barrel 1' }
const ofMark = { step: 'timing', place: 'crank', round: 1 } as const
const rods = { procedure: 'rods' }

/** One of each, to a step that has steps before and after it, but for the marks, which come first. */
const commands: { readonly [Type in StepCommandType]: CommandOf<Type> } = {
  'note-marks': { type: 'note-marks', step: 'case-marks', typed: '1 2 2 3' },
  'choose-shells': { type: 'choose-shells', step: 'choose-mains', others: [] },
  'note-readings': {
    ...{ type: 'note-readings', ...ofM1, part: 'journal', cells: [] },
    ...{ partTemperature: '', gaugeTemperature: '', uncertainty: '' },
  },
  'withdraw-readings': { type: 'withdraw-readings', ...ofM1, part: 'journal', reason },
  'declare-undersize': {
    type: 'declare-undersize',
    step: 'choose-mains',
    positions: ['M1'],
    undersize: null,
  },
  'decide-basis': { type: 'decide-basis', ...ofM1, by: 'marks', reason },
  'pin-shells': { type: 'pin-shells', ...ofM1, upper: null, lower: null, reason },
  'release-shells': { type: 'release-shells', ...ofM1 },
  'note-tray': { type: 'note-tray', step: 'choose-mains', halves: 'alike', lines: [] },
  'read-thread': { type: 'read-thread', ...ofM1, width: mm, cardStep: mm },
  'fit-half': { type: 'fit-half', ...half },
  'take-out-half': { type: 'take-out-half', ...half, reason },
  'fit-part': { type: 'fit-part', step: 'lay-crank' },
  'take-out-part': { type: 'take-out-part', step: 'lay-crank', reason },
  'lay-bead': { type: 'lay-bead', step: 'bead-plus' },
  'wipe-off-bead': { type: 'wipe-off-bead', step: 'bead-plus', reason },
  'answer-check': { type: 'answer-check', step: 'end-float', good: true, reading: '0.10', note: '' },
  'do-place': { type: 'do-place', ...ofMark, note: '' },
  'undo-place': { type: 'undo-place', ...ofMark, reason },
  'fit-rings': { type: 'fit-rings', step: 'rings-on', cylinder: 1, others: [] },
  'take-off-rings': { type: 'take-off-rings', step: 'rings-on', cylinder: 1, reason },
  'turn-crank': { type: 'turn-crank', step: 'turn', typed: '2', free: true, note: '' },
  'accept-turning': { type: 'accept-turning', step: 'turn', reason },
  'void-turning': { type: 'void-turning', step: 'turn', reason },
  'measure-limit': { type: 'measure-limit', ...ofRings, typed: '0.3' },
  'accept-measured': { type: 'accept-measured', ...ofRings, reason },
  'replace-measured': { type: 'replace-measured', ...ofRings, reason },
  'tick-parts': {
    ...{ type: 'tick-parts', step: 'lay-crank', part: 'washers', count: 1 },
    ...{ condition: 'new', reason: '', number: '' },
  },
  'remove-ticks': { type: 'remove-ticks', step: 'lay-crank', part: 'washers', reason },
  'leave-over': { type: 'leave-over', step: 'count', part: 'washers', usedIn: 'lay-crank', reason },
  'count-parts': { type: 'count-parts', step: 'count' },
  'redo-step': { type: 'redo-step', step: 'lay-crank', reason, opens: [] },
  'skip-step': { type: 'skip-step', step: 'lay-crank', reason },
  'take-back-skip': { type: 'take-back-skip', step: 'lay-crank', reason },
  'skip-photo': { type: 'skip-photo', step: 'gear-photo', reason },
  'write-note': { type: 'write-note', step: 'lay-crank', text: reason },
  'start-run': { type: 'start-run', ...rods },
  'declare-new': { type: 'declare-new', ...rods, group: 'rod-bolts' },
  pull: { type: 'pull', ...rods, pass: 0, fastener: 'R1', reading: null, moved: false, outOfOrder: null },
  'replace-fastener': { type: 'replace-fastener', ...rods, fastener: 'R1' },
  'take-back': { type: 'take-back', ...rods, pull: 1, reason },
  'loosen-fastener': { type: 'loosen-fastener', ...rods, fastener: 'R1', reason },
  'restart-run': { type: 'restart-run', ...rods, pass: 0, reason },
  'read-again': { type: 'read-again', ...rods, pull: 1, reading: { typed: '20', unit: 'N·m' }, reason },
  'note-problem': { type: 'note-problem', ...rods, fastener: null, text: reason },
  'answer-flag': { type: 'answer-flag', ...rods, flag: 1, answer: reason },
  'pause-run': { type: 'pause-run', ...rods, reason },
  'resume-run': { type: 'resume-run', ...rods },
}

const all = Object.values(commands)
/** The types of the commands that are refused with this code, in the order of the list above. */
const refusedWith = (shop: Workshop, code: string) =>
  all.flatMap((command) => {
    const step = stepFor(shop.spec, shop.state, command)
    return !step.ok && step.problem.code === code ? [command.type] : []
  })

function wholeBuild(): Workshop {
  const shop = new Workshop(skerry)
  for (const { id } of skerry.steps) shop.worksThrough(id)
  return shop
}

describe('a command', () => {
  it('that works on a step waits for the steps before it', () => {
    expect(refusedWith(new Workshop(skerry), 'step-before')).toEqual([
      ...['choose-shells', 'note-readings', 'withdraw-readings', 'declare-undersize', 'decide-basis'],
      ...['pin-shells', 'release-shells', 'note-tray', 'fit-half', 'fit-part', 'lay-bead', 'answer-check'],
      ...['tick-parts', 'skip-step', 'start-run', 'declare-new', 'pull', 'replace-fastener'],
    ])
  })

  it('that undoes something is refused while a later step is in place on it', () => {
    expect(refusedWith(wholeBuild(), 'step-on-top')).toEqual([
      ...['take-out-half', 'take-out-part', 'wipe-off-bead'],
      ...['take-back', 'loosen-fastener', 'restart-run'],
    ])
  })

  it('that changes what shells are chosen by waits until the shells are out', () => {
    expect(refusedWith(wholeBuild(), 'shell-in-place')).toEqual([
      ...['note-marks', 'choose-shells', 'note-readings', 'withdraw-readings', 'declare-undersize'],
      ...['decide-basis', 'pin-shells', 'release-shells', 'note-tray'],
    ])
  })

  it('is let through otherwise, to a step of the kind that its rule names', () => {
    const [first, last] = [new Workshop(skerry), wholeBuild()]
    const kinds = (shop: Workshop) =>
      all.flatMap((command) => {
        const step = stepFor(skerry, shop.state, command)
        return step.ok ? [[command.type, step.value.kind, stepRules[command.type].kind] as const] : []
      })
    expect(kinds(first).map(([type]) => type)).toEqual([
      ...['note-marks', 'read-thread', 'take-out-half', 'take-out-part', 'wipe-off-bead', 'remove-ticks'],
      'redo-step',
      'take-back-skip',
      'write-note',
      ...[
        'take-back',
        'loosen-fastener',
        'restart-run',
        'read-again',
        'note-problem',
        'answer-flag',
        'pause-run',
      ],
      'resume-run',
    ])
    for (const [type, kind, named] of [...kinds(first), ...kinds(last)])
      if (named !== 'any') expect([named].flat(), String(type)).toContain(kind)
  })

  it('to a step of another kind, to none, and to no procedure is unknown', () => {
    const shop = new Workshop(skerry)
    const codeOf = (command: StepCommand) => {
      const step = stepFor(skerry, shop.state, command)
      return step.ok ? null : step.problem.code
    }
    expect(codeOf({ type: 'fit-part', step: 'bead-plus' })).toBe('step-unknown')
    expect(codeOf({ type: 'lay-bead', step: 'bead-front' })).toBe('step-unknown')
    expect(codeOf({ type: 'resume-run', procedure: 'head' })).toBe('procedure-unknown')
  })

  it('that calls a check not good is let through once the check was answered, and not before', () => {
    const command = { ...commands['answer-check'], good: false, reading: null }
    const answered = wholeBuild()
    expect(stepFor(skerry, answered.state, command).ok).toBe(true)
    expect(stepFor(skerry, new Workshop(skerry).state, command)).toMatchObject({
      problem: { code: 'step-before' },
    })
  })
})
