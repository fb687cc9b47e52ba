import { expect, it } from 'vitest'
import { problem, sentenceOf } from '../../../../core/problem/index.ts'
import { fixedAmount, shortAmount } from '../../../../core/quantity/index.ts'

// Findings about tightening, each in a sentence.
it.each([
  [
    problem('angle-without-torque', {
      procedure: 'Rod bolts',
      pass: 1,
      numbers: ['R1', 'R2', 'R3', 'R4', 'R5', 'R6'],
    }),
    'Rod bolts, pass 1: R1, R2, R3, R4, R5 and R6 would be turned by an angle without having been seated or torqued before. Put a torque pass in front.',
  ],
  [
    problem('angle-beyond-a-turn', { procedure: 'Rod bolts', pass: 2, angle: shortAmount(4000, '°', 1) }),
    'Rod bolts, pass 2: 4000° is more than a full turn; a bolt breaks on the way. Correct the angle.',
  ],
  [
    problem('torque-below-last', {
      procedure: 'Rod bolts',
      pass: 2,
      numbers: ['R1', 'R2', 'R3', 'R4', 'R5', 'R6'],
      target: shortAmount(15, 'N·m', 1),
      last: shortAmount(20, 'N·m', 1),
    }),
    'Rod bolts, pass 2: 15 N·m on R1, R2, R3, R4, R5 and R6 is below the 20 N·m they already have, so the wrench clicks at once. Check both values.',
  ],
  [
    problem('order-misses', {
      procedure: 'Case bolts',
      order: 'from-the-middle',
      group: 'Case bolts',
      numbers: ['5'],
    }),
    'Case bolts: the order “from-the-middle” leaves out 5 of Case bolts. Put in every one of them, or none.',
  ],
  [
    problem('order-repeats', { procedure: 'Case bolts', order: 'from-the-middle', numbers: ['5', '7'] }),
    'Case bolts: the order “from-the-middle” has 5 and 7 more than once. Leave each in once.',
  ],
  [
    problem('order-of-other-face', {
      procedure: 'Sump screws',
      order: 'all',
      numbers: ['1'],
      face: 'Sump face',
    }),
    'Sump screws: the order “all” has 1, which are not on Sump face. Take them out, or correct their face.',
  ],
  [
    problem('group-never-tightened', { group: 'End screws', face: 'Case joint', count: 4 }),
    'End screws: no procedure tightens the 4 of them on Case joint. Put them into an order and a pass.',
  ],
  [
    problem('number-twice', { number: '4', face: 'Case joint' }),
    'Case joint: two fasteners have the number 4. Give each its own, as it stands on the drawing.',
  ],
  [
    problem('value-outside-order', { procedure: 'Case bolts', pass: 3, numbers: ['9'] }),
    'Case bolts, pass 3: a value of its own is given for 9, which the pass does not touch. Correct the fasteners, or the order.',
  ],
  [
    problem('same-torque-for-small', {
      procedure: 'Flange bolts',
      pass: 1,
      torque: shortAmount(9, 'N·m', 1),
      small: 'End screws',
      large: 'Flange bolts',
    }),
    'Flange bolts, pass 1: End screws get 9 N·m like the larger Flange bolts. Check that the smaller thread has no value of its own.',
  ],
  [
    problem('tolerance-too-fine', {
      procedure: 'Sump screws',
      pass: 3,
      torque: shortAmount(9, 'N·m', 1),
      spread: fixedAmount(0.03, 'N·m', 2),
    }),
    'Sump screws, pass 3: ±0.03 N·m of 9 N·m is finer than any wrench holds. Check the limits.',
  ],
  [
    problem('no-usual-wrench', { procedure: 'Sump screws', pass: 3, torque: fixedAmount(0.9, 'N·m', 2) }),
    'Sump screws, pass 3: hardly any wrench reads 0.90 N·m. Check the value and its unit.',
  ],
])('$code', (found, sentence) => {
  expect(sentenceOf(found)).toBe(sentence)
})
