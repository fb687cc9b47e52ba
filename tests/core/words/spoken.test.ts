import { describe, expect, it } from 'vitest'
import { fixedAmount, shortAmount } from '../../../core/quantity/index.ts'
import { de } from '../../../core/words/de/index.ts'
import { es } from '../../../core/words/es/index.ts'
import { en } from '../../../core/words/index.ts'

const { spoken } = en

describe('an amount said aloud', () => {
  it.each([
    [24, 'N·m', 'twenty-four newton metres'],
    [1, 'N·m', 'one newton metre'],
    [0, '°', 'zero degrees'],
    [90, '°', 'ninety degrees'],
    [17.7, 'lbf·ft', 'seventeen point seven pound-feet'],
    [212, 'lbf·in', 'two hundred and twelve pound-inches'],
    [300, 'lbf·in', 'three hundred pound-inches'],
    [1005, 'lbf·in', 'one thousand and five pound-inches'],
    [1240, 'N·m', 'one thousand two hundred and forty newton metres'],
    [2.45, 'kgf·m', 'two point four five kilogram-force metres'],
    [0.05, 'mm', 'zero point zero five millimetres'],
    [-0.2, 'mm', 'minus zero point two millimetres'],
    [13, '', 'thirteen'],
  ])('%d %s is “%s”', (value, unit, said) => {
    expect(spoken.amount(shortAmount(value, unit, 6))).toBe(said)
  })

  it('has the zeros that are shown', () => {
    expect(spoken.amount(fixedAmount(0.1, 'mm', 2))).toBe('zero point one zero millimetres')
  })

  it('tells the pound-foot from the pound-inch, which are read for each other', () => {
    const [feet, inches] = ['lbf·ft', 'lbf·in'].map((unit) => spoken.amount(shortAmount(80, unit, 1)))
    expect(feet).not.toBe(inches)
  })
})

describe('an amount said aloud in German', () => {
  it.each([
    [24, 'N·m', 'vierundzwanzig Newtonmeter'],
    [1, 'N·m', 'ein Newtonmeter'],
    [101, '°', 'einhundertein Grad'],
    [21, '', 'einundzwanzig'],
    [1, '', 'eins'],
    [1001, '', 'eintausendeins'],
    [0.5, 'mm', 'null Komma fünf Millimeter'],
    [1.05, 'mm', 'eins Komma null fünf Millimeter'],
    [-0.2, 'mm', 'minus null Komma zwei Millimeter'],
    [216, 'lbf·in', 'zweihundertsechzehn Inch-Pound'],
    [121_000, '', 'einhunderteinundzwanzigtausend'],
  ])('%d %s is “%s”', (value, unit, said) => {
    expect(de.spoken.amount(shortAmount(value, unit, 6))).toBe(said)
  })
})

describe('an amount said aloud in Spanish', () => {
  it.each([
    [24, 'N·m', 'veinticuatro newton metro'],
    [1, 'N·m', 'un newton metro'],
    [21, 'mm', 'veintiún milímetros'],
    [100, '°', 'cien grados'],
    [101, '°', 'ciento un grados'],
    [21, '', 'veintiuno'],
    [216, 'lbf·in', 'doscientas dieciséis libras pulgada'],
    [31, 'lbf·ft', 'treinta y una libras pie'],
    [0.5, 'mm', 'cero coma cinco milímetros'],
    [1.05, 'mm', 'uno coma cero cinco milímetros'],
    [-0.2, 'mm', 'menos cero coma dos milímetros'],
    [1001, '', 'mil uno'],
  ])('%d %s is “%s”', (value, unit, said) => {
    expect(es.spoken.amount(shortAmount(value, unit, 6))).toBe(said)
  })
})

describe('a prompt', () => {
  const pull = {
    number: '6',
    kind: 'torque',
    target: shortAmount(24, 'N·m', 6),
    instruction: null,
    begins: null,
  } as const

  it('is the fastener and its value', () => {
    expect(spoken.pull(pull)).toBe('six, twenty-four newton metres')
  })

  it('says which pass begins', () => {
    expect(spoken.pull({ ...pull, begins: { pass: 2, passes: 3 } })).toBe(
      'Pass two of three, torque. six, twenty-four newton metres',
    )
  })

  it.each([
    [{ kind: 'angle', target: shortAmount(90, '°', 6) }, 'six, turn ninety degrees'],
    [{ kind: 'seat', target: null }, 'six, seat it'],
    [{ kind: 'loosen', target: null }, 'six, loosen it'],
    [{ kind: 'recheck' }, 'six, check twenty-four newton metres'],
    [{ kind: 'stretch', target: null }, 'six, measure its length again'],
    [{ number: 'A12', kind: 'seat', target: null }, 'A twelve, seat it'],
    [{ number: null, kind: 'action', target: null, instruction: 'Wait ten minutes.' }, 'Wait ten minutes.'],
  ] as const)('says what is done: %j', (change, said) => {
    expect(spoken.pull({ ...pull, ...change })).toBe(said)
  })

  it('says what is flagged, and why', () => {
    expect(spoken.flag({ number: '6', about: 'over' })).toBe('Stop. six is over its limit.')
    expect(spoken.flag({ number: null, about: 'problem' })).toBe('A problem is flagged.')
  })

  it('is said in German and in Spanish as well', () => {
    const begins = { pass: 2, passes: 3 }
    expect(de.spoken.pull({ ...pull, begins })).toBe(
      'Durchgang zwei von drei, Drehmoment. sechs, vierundzwanzig Newtonmeter',
    )
    expect(es.spoken.pull({ ...pull, begins })).toBe(
      'Pasada dos de tres, par. seis, veinticuatro newton metro',
    )
    const turn = { ...pull, kind: 'angle', target: shortAmount(90, '°', 6) } as const
    expect(de.spoken.pull(turn)).toBe('sechs, neunzig Grad drehen')
    expect(es.spoken.pull(turn)).toBe('seis, girar noventa grados')
    expect(de.spoken.flag({ number: '6', about: 'over' })).toBe('Halt. sechs: über der Grenze.')
    expect(es.spoken.flag({ number: '6', about: 'over' })).toBe('Alto. seis por encima del límite.')
  })
})
