import { describe, expect, it } from 'vitest'
import {
  inUnitOf,
  isAtOrIn,
  newPass,
  passAs,
  passChoices,
  passNeeds,
  pathOf,
  printedValue,
  valueIn,
  withoutProcedure,
  withProcedure,
  withValueAt,
  typedNumber,
} from '../../../core/drafts/index.ts'
import { engineSpec } from '../../../core/engine/index.ts'
import { documentOf } from './document-of-demo.ts'

const fen = documentOf('fen-1')

describe('a value as a manual prints it', () => {
  it.each([
    ['30 ± 3 lbf·ft', { target: '30 lbf·ft', least: '27 lbf·ft', most: '33 lbf·ft' }],
    ['30 lbf·ft +/- 3 lbf·ft', { target: '30 lbf·ft', least: '27 lbf·ft', most: '33 lbf·ft' }],
    ['2,5 ± 0,25 N·m', { target: '2,5 N·m', least: '2,25 N·m', most: '2,75 N·m' }],
    ['0.3 ± 0.1 N·m', { target: '0.3 N·m', least: '0.2 N·m', most: '0.4 N·m' }],
    ['90 ± 5 °', { target: '90 °', least: '85 °', most: '95 °' }],
    ['27 to 33 lbf·ft', { least: '27 lbf·ft', most: '33 lbf·ft' }],
    ['150–160 N·m', { least: '150 N·m', most: '160 N·m' }],
    ['24 bis 26 Nm', { least: '24 Nm', most: '26 Nm' }],
    ['24 N·m', { target: '24 N·m' }],
    // As public manuals print them: no nought before the point, a stroke between two sizes, each of them in two units.
    ['.002 to .005 in', { least: '.002 in', most: '.005 in' }],
    ['2.999/3.000 in', { least: '2.999 in', most: '3.000 in' }],
    ['1/2 in', { target: '1/2 in' }],
    ['120° ± 5°', { target: '120 °', least: '115 °', most: '125 °' }],
    [
      '30 ± 3 lb. ft. (40 ± 4 N·m)',
      { target: '30 lb. ft. (40 N·m)', least: '27 lb. ft. (36 N·m)', most: '33 lb. ft. (44 N·m)' },
    ],
    ['120 to 130 ft lb (163 to 176 N·m)', { least: '120 ft lb (163 N·m)', most: '130 ft lb (176 N·m)' }],
    ['30 lbf·ft (41 N·m)', { target: '30 lbf·ft (41 N·m)' }],
    // A tolerance in one of them alone is none that both have.
    ['30 ± 3 lbf·ft (40 N·m)', { target: '30 ± 3 lbf·ft (40 N·m)' }],
    // Two units: nothing is guessed, and the schema says what is wrong with it.
    ['20 N·m to 25 lbf·ft', { target: '20 N·m to 25 lbf·ft' }],
  ])('%s', (typed, parts) => {
    expect(printedValue(typed)).toEqual(parts)
  })
})

describe('a value that is typed over another', () => {
  it.each([
    ['12', '11.5 mm', '12 mm'],
    ['30', '27 lbf·ft (37 N·m)', '30 lbf·ft'],
    ['0.5 in', '11.5 mm', '0.5 in'],
    // A field that was emptied says that nothing was typed, and not that a unit alone is no number.
    ['', '11.5 mm', ''],
    [' ', '0 mm', ''],
  ])('“%s” over “%s” is “%s”', (typed, before, is) => {
    expect(inUnitOf(typed, before)).toBe(is)
  })
})

describe('a value by its path', () => {
  it('is set, and taken out, and all beside it stays what it was', () => {
    const path = ['procedures', 0, 'passes', 0, 'note']
    const set = withValueAt(fen, path, 'oil the threads')
    expect(valueIn(set, path)).toBe('oil the threads')
    expect(set.case).toBe(fen.case)
    expect(set.procedures[1]).toBe(fen.procedures[1])
    expect(valueIn(withValueAt(set, path, undefined), path)).toBeUndefined()
    expect(withValueAt(fen, ['fasteners', 0], undefined).fasteners).toEqual(fen.fasteners.slice(1))
  })

  it('is found in what findings say', () => {
    expect(pathOf(['procedures', 0, 'passes', 2, 'target'])).toBe('procedures[0].passes[2].target')
    expect(isAtOrIn('procedures[1].passes[2]', 'procedures[1]')).toBe(true)
    expect(isAtOrIn('procedures[11].passes[2]', 'procedures[1]')).toBe(false)
  })
})

describe('a new procedure', () => {
  it('goes over all fasteners of its face, and can be read with a pass of any kind', () => {
    const made = withProcedure(fen, 'joint', 'Case joint')
    if (!made.ok) throw new Error(made.problem.code)
    const procedure = made.value.procedures.at(-1)!
    const onFace = fen.fasteners.filter(({ face }) => face === 'joint').map(({ id }) => id)
    expect(procedure.orders[0]!.sequence.toSorted()).toEqual(onFace.toSorted())
    expect(made.value.steps.at(-1)).toMatchObject({ kind: 'run-procedure', procedure: procedure.id })
    expect(withoutProcedure(made.value, procedure.id)).toEqual(fen)
    const order = procedure.orders[0]!.id
    const typed = {
      ...{ least: '0.11 mm', most: '0.14 mm', torqueLeast: '20 N·m', torqueMost: '45 N·m' },
      instruction: 'Turn the crank.',
    }
    for (const kind of passChoices) {
      const path = ['procedures', made.value.procedures.length - 1, 'passes', 0]
      const value = kind === 'angle' || kind === 'in-all' ? '90 ± 5 °' : '30 ± 3 lbf·ft'
      const whole = withValueAt(made.value, path, newPass(kind, order, { ...typed, value }))
      expect(engineSpec.safeParse(whole).success, kind).toBe(true)
    }
  })

  it('needs a fastener on its face', () => {
    const bare = { ...fen, fasteners: fen.fasteners.filter(({ face }) => face !== 'joint') }
    const made = withProcedure(bare, 'joint', 'Case joint')
    expect(!made.ok && made.problem.code).toBe('draft-face-without-fasteners')
  })
})

describe('a new pass', () => {
  it('is none while something is missing that the manual gives: no value is made up', () => {
    for (const kind of passChoices)
      expect(newPass(kind, 'order', {}) === null, kind).toBe(passNeeds[kind].length > 0)
    expect(newPass('stretch', 'order', { least: '0.11 mm', most: ' ' })).toBeNull()
    expect(newPass('torque', 'order', { value: '30 ± 3 lbf·ft' })).toEqual({
      ...{ kind: 'torque', order: 'order' },
      ...{ target: '30 lbf·ft', least: '27 lbf·ft', most: '33 lbf·ft' },
    })
  })

  it('of another kind keeps what both have, and asks for the rest', () => {
    const torque = { kind: 'torque', order: 'cross', target: '24 N·m', least: '22 N·m' } as const
    expect(passAs(torque, 'recheck', 'order')).toEqual({ ...torque, kind: 'recheck' })
    expect(passAs(torque, 'seat', 'order')).toEqual({ kind: 'seat', order: 'cross' })
    expect(passAs(torque, 'angle', 'order')).toBeNull()
    const angle = { kind: 'angle', order: 'cross', target: '60 °' } as const
    expect(passAs(angle, 'in-all', 'order')).toEqual({ kind: 'angle', order: 'cross', inAll: '60 °' })
    expect(passAs(angle, 'torque', 'order')).toBeNull()
  })
})

describe('a number as it is typed', () => {
  it('is a plain decimal with either sign; anything else stays as it was typed, for the schema to refuse', () => {
    expect(['12', '1,5', '-0.5', ' 7 '].map(typedNumber)).toEqual([12, 1.5, -0.5, 7])
    const others = ['1e999', '1e3', '0x10', 'NaN', 'Infinity', '', '9'.repeat(400)]
    expect(others.map(typedNumber)).toEqual(others)
  })
})
