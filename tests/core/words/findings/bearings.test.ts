import { expect, it } from 'vitest'
import { problem, sentenceOf } from '../../../../core/problem/index.ts'
import { fixedAmount, shortAmount } from '../../../../core/quantity/index.ts'

// Findings about bearings, each in a sentence.
it.each([
  [
    problem('bands-not-as-drawn', {
      place: { code: 'partOfFit', facts: { fit: 'Big ends', part: 'Rods', mark: null } },
      drawn: '43 H7',
      limits: { from: fixedAmount(43, 'mm', 3), upTo: fixedAmount(43.025, 'mm', 3) },
      bands: { from: fixedAmount(43, 'mm', 3), upTo: fixedAmount(43.016, 'mm', 3) },
      width: fixedAmount(16, 'µm', 1),
      classes: ['H6'],
    }),
    'Big ends, Rods: the drawing says 43 H7, which is 43.000 mm to 43.025 mm; the bands of the marks go from 43.000 mm to 43.016 mm, which would be H6. Compare both with the drawing.',
  ],
  [
    problem('target-outside-limits', {
      place: { code: 'passOf', facts: { procedure: 'Rod bolts', pass: 3 } },
      target: shortAmount(90, '°', 1),
      least: shortAmount(57, '°', 1),
      most: shortAmount(63, '°', 1),
    }),
    'Rod bolts, pass 3: the target, 90°, is not within 57° to 63°. Correct one of them.',
  ],
  [
    problem('service-limit-below-most', {
      fit: 'Main bearings',
      limit: fixedAmount(40, 'µm', 1),
      most: fixedAmount(50, 'µm', 1),
    }),
    'Main bearings: the service limit, 40.0 µm, is below the maximum for new parts, 50.0 µm. Correct one of them.',
  ],
  [
    problem('washers-overlap', { first: 'standard', second: 'first oversize' }),
    'End float: the washers “standard” and “first oversize” are both given for the same float. Correct where one begins.',
  ],
  [
    problem('washer-misses-limits', {
      washer: '+0.10',
      standard: 'STD',
      floats: { from: fixedAmount(0.28, 'mm', 3), upTo: fixedAmount(0.46, 'mm', 3) },
      leaves: { from: fixedAmount(0.08, 'mm', 3), upTo: fixedAmount(0.26, 'mm', 3) },
      limits: { from: fixedAmount(0.1, 'mm', 3), upTo: fixedAmount(0.26, 'mm', 3) },
    }),
    'End float: at 0.280 mm to 0.460 mm the washers “+0.10” are to go in. By their thickness they leave 0.080 mm to 0.260 mm, where “STD” were in before; allowed is 0.100 mm to 0.260 mm. Check the thickness, and the floats of the row.',
  ],
  [
    problem('limits-said-twice', {
      step: 'End float',
      gap: 'end-float',
      here: { from: fixedAmount(0.08, 'mm', 3), upTo: fixedAmount(0.25, 'mm', 3) },
      there: { from: fixedAmount(0.08, 'mm', 3), upTo: fixedAmount(0.2, 'mm', 3) },
    }),
    'End float: the step allows 0.080 mm to 0.250 mm, and the end float of this engine is given as 0.080 mm to 0.200 mm. Two limits for one thing: find out which holds.',
  ],
  [
    problem('band-reversed', {
      place: { code: 'partOfFit', facts: { fit: 'Main bearings', part: 'Case', mark: '2' } },
      over: fixedAmount(55.012, 'mm', 4),
      upTo: fixedAmount(55.006, 'mm', 4),
    }),
    'Main bearings, Case, mark 2: the band runs from 55.0120 mm to 55.0060 mm, the wrong way or over nothing. Correct one of the two.',
  ],
  [
    problem('bands-overlap', {
      place: { code: 'partOfFit', facts: { fit: 'Main bearings', part: 'Crank', mark: null } },
      first: 'G',
      second: 'F',
    }),
    'Main bearings, Crank: the bands of mark G and mark F overlap, so that a size has two marks. Correct one of them.',
  ],
  [
    problem('bands-gap', {
      place: { code: 'partOfFit', facts: { fit: 'Main bearings', part: 'Crank', mark: null } },
      first: 'G',
      second: 'F',
      from: fixedAmount(51.992, 'mm', 4),
      to: fixedAmount(51.994, 'mm', 4),
    }),
    'Main bearings, Crank: between mark G and mark F, sizes over 51.9920 mm up to 51.9940 mm have no mark. Check whether a band is misprinted.',
  ],
  [
    problem('band-missing', {
      place: { code: 'partOfFit', facts: { fit: 'Main bearings', part: 'Case', mark: '3' } },
    }),
    'Main bearings, Case, mark 3 has no band while others have. Add it, so that its clearance can be calculated.',
  ],
  [
    problem('nothing-to-choose-by', { fit: 'Big ends' }),
    'Big ends: there is neither a chart nor a band for every mark and grade, so no shell can be chosen. Give one of them.',
  ],
  [
    problem('band-wide', {
      place: { code: 'partOfFit', facts: { fit: 'Big ends', part: 'Crank pins', mark: '8' } },
      width: fixedAmount(300, 'µm', 1),
    }),
    'Big ends, Crank pins, mark 8: a band 300.0 µm wide is unusual for a bearing. Check both ends of it and their unit.',
  ],
  [
    problem('bore-far-from-nominal', {
      place: { code: 'partOfFit', facts: { fit: 'Main bearings', part: 'Case', mark: '1' } },
      band: fixedAmount(55, 'mm', 4),
      bearing: 'M1',
      nominal: fixedAmount(54, 'mm', 4),
    }),
    'Main bearings, Case, mark 1: 55.0000 mm is far from the 54.0000 mm that M1 is drawn with. Check both, and their unit.',
  ],
  [
    problem('grades-overlap', { fit: 'Big ends', first: 'P', second: 'Q' }),
    'Big ends: the walls of grades P and Q overlap. Check both bands.',
  ],
  [
    problem('grades-look-alike', { fit: 'Main bearings', first: 'R', second: 'U' }),
    'Main bearings: grades R and U have the same colour and pattern. Give one of them another.',
  ],
  [
    problem('undersize-large', {
      fit: 'Main bearings',
      name: '0.25 under',
      undersize: fixedAmount(6.35, 'mm', 2),
    }),
    'Main bearings: nobody grinds 6.35 mm off a journal (“0.25 under”). Check the value and its unit.',
  ],
  [
    problem('undersize-twice', {
      fit: 'Main bearings',
      name: 'second',
      undersize: fixedAmount(0.25, 'mm', 2),
    }),
    'Main bearings: the undersize 0.25 mm is there twice, or has two names (“second”). Keep one.',
  ],
  [
    problem('position-in-two-fits', { position: 'M2', first: 'Main bearings', second: 'Mains again' }),
    'M2 is in Main bearings and in Mains again: it would get its shells twice. Take it out of one.',
  ],
  [
    problem('chart-mark-unknown', { fit: 'Main bearings', part: 'Case', mark: '7', known: ['1', '2', '3'] }),
    'Main bearings: the chart has a cell for mark 7 of Case, which is not one of 1, 2, 3. Correct the cell, or add the mark.',
  ],
  [
    problem('chart-grade-unknown', {
      fit: 'Main bearings',
      housing: '2',
      journal: 'G',
      grade: 'Z',
      known: ['R', 'S', 'T', 'U', 'V'],
    }),
    'Main bearings, marks 2 and G: Z is not a grade of this fit. Its grades are R, S, T, U, V.',
  ],
  [
    problem('chart-cell-absent', {
      fit: 'Main bearings',
      housing: '2',
      journal: 'H',
      positions: ['M1', 'M2', 'M3', 'M4'],
    }),
    'Main bearings, marks 2 and H: the chart has no shells for M1, M2, M3, M4. Add the cell, or say why it is empty.',
  ],
  [
    problem('chart-cell-twice', { fit: 'Main bearings', housing: '2', journal: 'G' }),
    'Main bearings, marks 2 and G: the chart has two cells for one bearing. Keep one.',
  ],
  [
    problem('chart-leaves-limits', {
      fit: 'Main bearings',
      clearance: { from: shortAmount(14, '', 3), upTo: shortAmount(32, 'µm', 3) },
      limits: { from: shortAmount(20, '', 3), upTo: shortAmount(50, 'µm', 3) },
      housing: '2',
      journal: 'G',
      split: 'upper-lower',
      upper: 'V',
      lower: 'V',
    }),
    'Main bearings, marks 2 and G: upper V with lower V can give a clearance of 14 to 32 µm, by their bands; allowed is 20 to 50 µm. Check the cell and the bands.',
  ],
  [
    problem('chart-misses-limits', {
      fit: 'Main bearings',
      clearance: { from: shortAmount(2, '', 3), upTo: shortAmount(20, 'µm', 3) },
      limits: { from: shortAmount(21, '', 3), upTo: shortAmount(50, 'µm', 3) },
      housing: '1',
      journal: 'F',
      split: 'upper-lower',
      upper: 'V',
      lower: 'V',
    }),
    'Main bearings, marks 1 and F: upper V with lower V give a clearance of 2 to 20 µm, by their bands, nowhere inside 21 to 50 µm. Correct the cell or the bands.',
  ],
  [
    problem('bands-leave-limits', {
      fit: 'Big ends',
      clearance: { from: shortAmount(34, '', 3), upTo: shortAmount(56, 'µm', 3) },
      limits: { from: shortAmount(36, '', 3), upTo: shortAmount(56, 'µm', 3) },
      housing: 'A',
      journal: '7',
      split: 'upper-lower',
      upper: 'P',
      lower: 'P',
    }),
    'Big ends, marks A and 7: the best pair, upper P with lower P, can give 34 to 56 µm; allowed is 36 to 56 µm. Check the bands and the limits.',
  ],
  [
    problem('bands-miss-limits', {
      fit: 'Big ends',
      clearance: { from: shortAmount(34, '', 3), upTo: shortAmount(56, 'µm', 3) },
      limits: { from: shortAmount(70, '', 3), upTo: shortAmount(95, 'µm', 3) },
      housing: 'A',
      journal: '7',
      split: 'upper-lower',
      upper: 'P',
      lower: 'P',
    }),
    'Big ends, marks A and 7: no pair of grades comes inside 70 to 95 µm; the nearest, upper P with lower P, gives 34 to 56 µm. Correct the bands or the limits.',
  ],
])('$code', (found, sentence) => {
  expect(sentenceOf(found)).toBe(sentence)
})
