import { expect, it } from 'vitest'
import { problem, sentenceOf } from '../../../../core/problem/index.ts'
import { fixedAmount } from '../../../../core/quantity/index.ts'

// Findings about the case and the steps, each in a sentence.
it.each([
  [
    problem('standing-caution-missing', {}),
    "No caution says that the maker's current manual and a qualified person overrule this program. Add one for all steps.",
  ],
  [
    problem('saddles-out-of-order', { first: 'M2', second: 'M3' }),
    'Saddle M3 is listed after M2 and does not lie behind it. List the saddles from the nose on.',
  ],
  [
    problem('bearings-overlap', { first: 'M2', second: 'B2', by: fixedAmount(6, 'mm', 1) }),
    'M2 and B2 overlap by 6.0 mm along the crank. Correct where they lie, or their widths.',
  ],
  [
    problem('bores-overlap', { bore: fixedAmount(84, 'mm', 1), pitch: fixedAmount(80, 'mm', 1) }),
    'Bores of 84.0 mm at a pitch of 80.0 mm run into each other. Correct one of the two.',
  ],
  [
    problem('rod-without-cylinder', { rod: 'B3', cylinder: 4, cylinders: 3 }),
    'Rod B3 belongs to cylinder 4, and the engine has 3. Correct one of the two.',
  ],
  [
    problem('outside-outline', {
      what: { code: 'fastenerNumbered', facts: { number: '9' } },
      face: 'Case joint',
      x: fixedAmount(196, 'mm', 1),
      y: fixedAmount(860, 'mm', 1),
    }),
    'Fastener 9 at 196.0 mm, 860.0 mm lies outside the outline of Case joint. Correct the place, or the outline.',
  ],
  [
    problem('far-outside', {
      what: { code: 'fastenerNumbered', facts: { number: 'R1' } },
      face: 'Big ends',
      x: fixedAmount(100, 'mm', 1),
      y: fixedAmount(3100, 'mm', 1),
    }),
    'Fastener R1 at 100.0 mm, 3100.0 mm lies far from everything else on Big ends. Check the place and its unit.',
  ],
  [
    problem('split-against-family', { fit: 'Main bearings', family: 'split-horizontal' }),
    'Main bearings: its halves are left and right, but the case is split level, into an upper and a lower half. Correct how the halves lie, or the kind of case.',
  ],
  [
    problem('bead-in-keep-out', { bead: 'Bead, gear side', zone: 'oil way to the gallery' }),
    'Bead, gear side runs into the keep-out zone “oil way to the gallery”. Lead the path around it.',
  ],
  [
    problem('bead-over-oil-passage', { bead: 'Bead, gear side', passage: 'oil way to the gallery' }),
    'Bead, gear side runs over “oil way to the gallery” and would close it. Lead the path around it.',
  ],
  [
    problem('steps-in-a-ring', { steps: ['Lay crank', 'Rods free', 'Rod bolts', 'Rod shells', 'End float'] }),
    'The steps “Lay crank”, “Rods free”, “Rod bolts”, “Rod shells”, “End float” wait for each other, so that none can begin. Take one out of what another comes after.',
  ],
  [
    problem('done-in-two-steps', {
      work: { kind: 'run-procedure', procedure: 'sump' },
      first: 'Sump screws',
      second: 'Once more',
    }),
    'Procedure “sump” is done both in “Sump screws” and in “Once more”. A build does it once: remove one step.',
  ],
  [
    problem('step-does-not-wait', { step: 'Choose mains', other: 'Crank marks' }),
    '“Choose mains” can begin before “Crank marks” is done. Let it come after that.',
  ],
  [
    problem('part-count-differs', { part: 'Circlip', count: 9, used: 8 }),
    '“Circlip”: 9 on the list, and its steps use 8. Correct one of the two.',
  ],
  [
    problem('part-where-nothing-is-fitted', { part: 'Oil strainer', step: 'End float' }),
    '“Oil strainer” is used in “End float”, and nothing is fitted there. Name a step that fits something.',
  ],
])('$code', (found, sentence) => {
  expect(sentenceOf(found)).toBe(sentence)
})
