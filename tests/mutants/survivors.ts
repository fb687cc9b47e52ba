import type { Mutation } from './mutations.ts'

/** A change that no test can notice, or that none needs to. */
interface Survivor {
  /** Null for any. */
  readonly file: string | null
  /** Text that the changed line has, and what is changed in it. */
  readonly line: string
  /** Null for any. */
  readonly change: string | null
  /** Lines that are excepted. */
  readonly butNot?: readonly string[]
  readonly reason: string
}

const prices =
  'any prices of shells give a bound that holds (weak duality): others make the search longer, not its answer another'

const longer =
  'more is kept or weighed before a branch is given up: the search is longer, its answer the same'
const unique = 'ids are unique: a spec with one twice is not read'
const twoValues = 'two values for one fastener, which the audit refuses'

/** Of the ways in which one thing is found by what it is called, in any file. */
const namedOnce: readonly Survivor[] = [
  ...[
    'find(({ id }) => id === ',
    'find((each) => each.id === ',
    'find((one) => one.id === ',
    'find((face) => face.id === ',
    'find((each) => each.order === ',
    'find((each) => each.mark === ',
    'find((each) => each.grade === ',
  ].map((line) => ({ file: null, line, change: 'find → findLast', reason: unique })),
  ...[
    'find(({ number }) => number === ',
    'find((each) => each.number === ',
    'find((pull) => pull.number === ',
  ].map((line) => ({
    ...{ file: null, line, change: 'find → findLast' },
    reason:
      'the pulls of a run and its flags are numbered one after the other: none has the number of another',
  })),
]

const survivors: readonly Survivor[] = [
  ...namedOnce,
  {
    // What comes of it are prices alone. That none is below zero, and what an ordered piece is priced at, counts.
    file: 'core/bearing/tray/lagrangian-bound.ts',
    line: '',
    change: null,
    butNot: ['Math.max(0, Math.round(', 'order.kinds[kind]! ?'],
    reason: prices,
  },
  {
    file: 'core/bearing/tray/lagrangian-bound.ts',
    line: '(step * over) / pull',
    change: '* → /',
    reason: prices,
  },
  {
    file: 'core/bearing/tray/assign.ts',
    line: 'Math.ceil(mostInRounds / options)',
    change: 'ceil → floor',
    reason: prices,
  },
  {
    file: 'core/bearing/tray/options.ts',
    line: 'pieces < 2 && ',
    change: '2 → 3',
    reason: 'a kind that cannot be ordered is one shell that was measured by itself',
  },
  {
    file: 'core/bearing/tray/options.ts',
    line: 'Math.min(upper, lower) * kinds.length',
    change: '* → /',
    reason: 'either is one number for each pair, and no more is asked of it',
  },
  {
    file: 'core/bearing/tray/fewest-orders.ts',
    line: 'cost: 0, takes',
    change: '0 → 1',
    reason: 'the same for each bearing, and below what an order costs',
  },
  {
    file: 'core/bearing/tray/stock.ts',
    line: 'bore.least + bore.most - journal.least - journal.most',
    change: '- → +',
    reason: 'the order in which bearings are searched: the answer is the same',
  },
  {
    file: 'core/bearing/tray/stock.ts',
    line: 'bore.least + bore.most - journal.least - journal.most',
    change: '+ → -',
    reason: 'the order in which bearings are searched: the answer is the same',
  },
  {
    file: 'core/bearing/tray/tray.ts',
    line: 'return wall > 0',
    change: '0 → 1',
    reason: 'a wall of a millionth of a millimetre',
  },
  {
    file: 'core/tightening/order/pattern.ts',
    line: '(a.id < b.id ? -1 : 1)',
    change: 'a.id < b.id → !(a.id < b.id)',
    reason: 'two fasteners at one place, which the audit refuses',
  },
  {
    file: 'core/tightening/order/pattern.ts',
    line: '+ 1e-3 ?',
    change: '1e-3 → 0.0010500000000000002',
    reason: 'a twentieth more of what is no difference',
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: 'window.target * 1e-9',
    change: '1e-9 → 1.05e-9',
    reason: 'a twentieth more of what is no difference',
  },
  {
    file: 'core/tightening/run/flag.ts',
    line: "!pull?.reading || window === null || window.kind === 'free-length'",
    change: '|| → &&',
    reason: 'what cannot happen: a flag about a reading has one, and a window',
  },
  {
    file: 'core/joint/torque-against-proof.ts',
    line: 'bears: yieldLoad < proof ?',
    change: '< → <=',
    reason: 'the smaller of two that are the same',
  },
  {
    file: 'core/bearing/tray/assign.ts',
    line: 'weighings: 200_000',
    change: '200_000 → 210000',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/assign.ts',
    line: 'rounds: 4000, weighings',
    change: '4000 → 4200',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/assign.ts',
    line: 'total + each.length, 0)',
    change: '0 → 1',
    reason: prices,
  },
  {
    file: 'core/bearing/tray/assign.ts',
    line: 'weighings < options && rounds',
    change: '&& → ||',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/lagrangian-bound.ts',
    line: 'Math.max(0, Math.round(price',
    change: '0 → 1',
    reason: prices,
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: 'cost < best.cost) best =',
    change: '< → <=',
    reason: 'another assignment of the same cost',
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: 'let short = 0',
    change: '0 → 1',
    reason: 'every bearing counts one order more, and so many more are allowed',
  },
  {
    file: 'core/joint/bearing-face.ts',
    line: 'hole > 0 && outer > hole',
    change: '0 → 1',
    reason: 'a hole of a millionth of a millimetre',
  },
  {
    file: 'core/joint/torque-effect.ts',
    line: 'ofYield.most > 1',
    change: '> → >=',
    reason: 'at yield to the last digit of a number',
  },
  {
    file: 'core/joint/turn-effect.ts',
    line: 'proof > yieldLoad ?',
    change: '> → >=',
    reason: 'proof and yield alike to the last digit of a number',
  },
  {
    file: 'core/bearing/tray/assign.ts',
    line: 'mostInRounds = 10_000_000',
    change: '10_000_000 → 10500000',
    reason: prices,
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: 'most[0]![kind]! > pieces[kind]!',
    change: '&& → ||',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: 'most[0]![kind]! > pieces[kind]!',
    change: '> → >=',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: 'const mostOptions = 1000',
    change: '1000 → 1050',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: '(price > 0 ? [kind] : [])',
    change: '> → >=',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: 'hopeless(bound + option.price - cheapest[place]!)',
    change: '+ → -',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: 'unsold - sold',
    change: '- → +',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: 'Math.max(0, Math.min(left[kind]!, most[kind]!))',
    change: '0 → 1',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: 'prices.ordered > 0 ?',
    change: '> → >=',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/fewest-orders.ts',
    line: 'cost: 0, most: fewest.best.cost',
    change: '0 → 1',
    reason:
      'every assignment that is left orders as many, and costs are squares of nanometres: one is no difference',
  },
  {
    file: 'core/bearing/tray/fewest-orders.ts',
    line: 'grain: 1 }',
    change: '1 → 2',
    reason: 'costs are squares of nanometres: one is no difference',
  },
  {
    file: 'core/bearing/choice/pairs.ts',
    line: 'mixed: upper === lower ? 0 : 1',
    change: '1 → 2',
    reason: 'either is more than none',
  },
  {
    file: 'core/bearing/choice/split-marks.ts',
    line: 'waysTo.get(run.length) ?? 0',
    change: '0 → 1',
    reason: 'what cannot happen: it is asked of a run that fell into marks',
  },
  {
    file: 'core/audit/tightening/passes.ts',
    line: 'b.target > a.target ? b : a',
    change: '> → >=',
    reason: 'the larger of two that are the same',
  },
  {
    file: 'core/audit/case/positions.ts',
    line: 'second.at[0] - first.at[0] >= widest',
    change: '>= → >',
    reason: 'as far apart as the widest: they touch and do not overlap',
  },
  {
    file: 'core/audit/case/positions.ts',
    line: 'Math.max(0, ...discs',
    change: '0 → 1',
    reason: 'a bolt of a millionth of a millimetre',
  },
  {
    file: 'core/audit/steps/steps.ts',
    line: 'step === undefined || other === undefined',
    change: '|| → &&',
    reason: 'what cannot happen: a fit that lacks a step is told before',
  },
  {
    file: 'core/audit/entered-unit.ts',
    line: 'Math.abs(one[end] - other[end]) <= ',
    change: '<= → <',
    reason:
      'no whole thousandth of a millimetre is exactly half a digit from inches that are no whole thousandths',
  },
  {
    file: 'core/audit/entered-unit.ts',
    line: "whole('N·m', 100)",
    change: '100 → 105',
    reason: 'no torque in other units is whole in N·m, and what is whole in none is shown in N·m',
  },
  {
    file: 'core/tightening/run/begin-again.ts',
    line: 'Math.max(-1, ...',
    change: '1 → 2',
    reason: 'either is before the first pass',
  },
  {
    file: 'core/tightening/run/flag-remedy.ts',
    line: 'openFlags(run).find(',
    change: 'find → findLast',
    reason: 'one that is barred is not pulled: it has no second such flag',
  },
  {
    file: 'core/tightening/run/flag-remedy.ts',
    line: "window.of === 'stretch' && pull.stretch !== null",
    change: '&& → ||',
    reason: 'what cannot happen: a length of a fastener that was pulled has a stretch, and nothing else has',
  },
  {
    file: 'core/tightening/run/flag.ts',
    line: '!pull?.torque || pull.stretch === null',
    change: '|| → &&',
    reason: 'what cannot happen: one that is tightened until it is so much longer has both',
  },
  {
    file: 'core/audit/bearings/chart.ts',
    line: "const thicker = step > 0 ? 'upper' : 'lower'",
    change: '> → >=',
    reason: 'two grades alike were let go above',
  },
  {
    file: 'core/audit/tightening/pulls.ts',
    line: '(lastPass.get(id) ?? 0) <= k',
    change: '0 → 1',
    reason: 'what cannot happen: each that is pulled in a pass has a last one',
  },
  {
    file: 'core/tightening/run/flag.ts',
    line: 'pull.reading && isLengthUnit(pull.reading.unit)',
    change: '&& → ||',
    reason: 'what cannot happen: what has a stretch has a reading, which is a length',
  },
  {
    file: 'core/joint/property-class.ts',
    line: 'known.find((each) => each === propertyClass)',
    change: 'find → findLast',
    reason: 'a class stands in the list once',
  },
  {
    file: 'core/tightening/clamp/flange-pulls.ts',
    line: '.find(({ fasteners }) => fasteners.includes(bolt))',
    change: 'find → findLast',
    reason: twoValues,
  },
  {
    file: 'core/tightening/reading/window.ts',
    line: '.find(({ fasteners }) => fastener !== null',
    change: 'find → findLast',
    reason: twoValues,
  },
  {
    file: 'core/tightening/reading/length-doubt.ts',
    line: 'before.pass < pass',
    change: '< → <=',
    reason: 'what cannot happen: the same pass has no pull of the fastener that counts already',
  },
  {
    file: 'core/bearing/tray/assign.ts',
    line: 'weighings: 6_000',
    change: '6_000 → 6300',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/assign.ts',
    line: 'weighings < options && rounds',
    change: '< → <=',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/fewest-orders.ts',
    line: 'options.reduce((total, option, place)',
    change: '0 → 1',
    reason: 'costs are squares of nanometres: one is no difference',
  },
  {
    file: 'core/bearing/tray/options.ts',
    line: 'kinds[upper]!.pieces < 2',
    change: '< → <=',
    reason: 'a kind that cannot be ordered is one shell that was measured by itself',
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: 'new Array<number>(kinds).fill(0)',
    change: '0 → 1',
    reason: longer,
  },
  {
    file: 'core/bearing/sizes/undersize.ts',
    line: 'ground.find(({ least, most })',
    change: 'find → findLast',
    reason: 'sizes that are an undersize apart have no journal in common',
  },
  {
    file: 'core/bearing/sizes/undersize.ts',
    line: 'ground.find(({ least }) => journal > least)',
    change: '> → >=',
    reason: 'a journal of that size was found before',
  },
  {
    file: 'core/bearing/sizes/measured.ts',
    line: 'sorted[Math.floor(',
    change: '0 → 1',
    reason: 'what cannot happen: the middle of no readings',
  },
  {
    file: 'core/bearing/choice/chart.ts',
    line: 'find((each) => each.positions',
    change: 'find → findLast',
    reason: 'two cells for the same marks, which the audit refuses',
  },
  {
    file: 'core/bearing/choice/chart.ts',
    line: 'cells.find(',
    change: 'find → findLast',
    reason: 'two cells for the same marks, which the audit refuses',
  },
  {
    file: 'core/bearing/choice/chart.ts',
    line: 'thickness(upper) > thickness(lower)',
    change: '> → >=',
    reason: 'two halves of one grade, whichever way round',
  },
  {
    file: 'core/bearing/choice/disagreement.ts',
    line: 'bands.find(',
    change: 'find → findLast',
    reason: 'two bands with a size in common, which the audit refuses',
  },
  {
    file: 'core/bearing/choice/marks-by-place.ts',
    line: 'at < run.length',
    change: '< → <=',
    reason: 'at its end a run is left, there or a line further down',
  },
  {
    file: 'core/tightening/reading/measured-length.ts',
    line: 'reading === null || !isLengthUnit',
    change: '|| → &&',
    reason: 'what cannot happen: a length is not confirmed without a reading in a unit of length',
  },
  {
    file: 'core/tightening/reading/past-proof.ts',
    line: 'ofProof.usual > 1',
    change: '> → >=',
    reason: 'at proof to the last digit of a number',
  },
  {
    file: 'core/tightening/order/order-measure.ts',
    line: 'pairs === 0 ?',
    change: '0 → 1',
    reason: 'of four places and more never one pair alone lies at different distances',
  },
  {
    file: 'core/tightening/order/order-measure.ts',
    line: '0.9 * Math.max',
    change: '>= → >',
    reason: 'a tenth out of round to the last digit of a number',
  },
  {
    file: 'core/tightening/order/order-measure.ts',
    line: 'let hops = 0',
    change: '0 → 1',
    reason: 'what cannot happen: the second place is counted from the first or not at all',
  },
  {
    file: 'core/tightening/order/pattern.ts',
    line: '(a.id < b.id ? -1 : 1)',
    change: '< → <=',
    reason: 'two fasteners at one place, which the audit refuses',
  },
  {
    file: 'core/tightening/order/pattern.ts',
    line: '(a.id < b.id ? -1 : 1)',
    change: '-1 → 1',
    reason: 'two fasteners at one place, which the audit refuses',
  },
  {
    file: 'core/tightening/order/pattern.ts',
    line: '(a.id < b.id ? -1 : 1)',
    change: '1 → 2',
    reason: 'two fasteners at one place, which the audit refuses',
  },
  {
    file: 'core/tightening/order/pattern.ts',
    line: 'distance(best) + 1e-3',
    change: '> → >=',
    reason: 'further by a thousandth of a millimetre to the last digit',
  },
  {
    file: 'core/tightening/order/pattern-ranks.ts',
    line: 'Math.atan2(',
    change: '* → /',
    reason: 'only in which order they come round the centre is asked of it',
  },
  {
    file: 'core/tightening/order/pattern-ranks.ts',
    line: 'Math.atan2(',
    change: '180 → 189',
    reason: 'only in which order they come round the centre is asked of it',
  },
  {
    file: 'core/tightening/reading/window.ts',
    line: "window.kind === 'length' ? 0",
    change: '0 → 1',
    reason: 'a millionth of a millimetre',
  },
  {
    file: 'core/tightening/reading/window.ts',
    line: '10 ** places, 6)',
    change: '6 → 7',
    reason: 'either is finer than any scale',
  },
  {
    file: 'core/tightening/reading/window.ts',
    line: "shortAmount(Number(least), '', 6)",
    change: '6 → 7',
    reason: 'what is shown has two decimals at most',
  },
  {
    file: 'core/tightening/run/flag.ts',
    line: 'shortAmount(value, unit, 6)',
    change: '6 → 7',
    reason: 'no scale shows seven decimals',
  },
  {
    file: 'core/tightening/run/reason.ts',
    line: '?.length ?? 0',
    change: '0 → 1',
    reason: 'either is fewer letters than a word has',
  },
  {
    file: 'core/tightening/reading/short-turn.ts',
    line: 'reading?.value ?? 0',
    change: '0 → 1',
    reason: 'what cannot happen: a turn that came short was read',
  },
  {
    file: 'core/bearing/clearance.ts',
    line: "inMicrometres(least), '', 3)",
    change: '3 → 4',
    reason: 'a nanometre is a thousandth of a micrometre',
  },
  {
    file: 'core/bearing/sizes/expected.ts',
    line: 'Math.max(0, ...fit.undersizes',
    change: '0 → 1',
    reason: 'a millionth of a millimetre',
  },
  {
    file: 'core/bearing/sizes/expected.ts',
    line: 'fit.journal.marks.map(',
    change: '0 → 1',
    reason: 'a millionth of a millimetre',
  },
  {
    file: 'core/bearing/sizes/reading.ts',
    line: 'size.value <= 0',
    change: '0 → 1',
    reason: 'a size of a millionth of a millimetre',
  },
  {
    file: 'core/bearing/sizes/measured.ts',
    line: 'sorted[Math.ceil(',
    change: '0 → 1',
    reason: 'what cannot happen: the middle of no readings',
  },
  {
    file: 'core/bearing/sizes/measured.ts',
    line: 'grid[0]?.length ?? 0',
    change: '0 → 1',
    reason: 'readings in no plane, which both ways are refused',
  },
  {
    file: 'core/bearing/sizes/thread-check.ts',
    line: 'if (below > 0)',
    change: '0 → 1',
    reason: 'a millionth of a millimetre',
  },
  {
    file: 'core/bearing/sizes/thread-check.ts',
    line: 'if (above > 0)',
    change: '0 → 1',
    reason: 'a millionth of a millimetre',
  },
  {
    file: 'core/bearing/sizes/undersize.ts',
    line: 'fit.undersizes.find(',
    change: 'find → findLast',
    reason: 'undersizes are told apart by their names',
  },
  {
    file: 'core/bearing/tray/tray.ts',
    line: 'return wall > 0',
    change: '> → >=',
    reason: 'a wall of nothing',
  },
  {
    file: 'core/bearing/tray/stock.ts',
    line: 'room(b.bearing) - room(a.bearing)',
    change: '- → +',
    reason: 'the order in which bearings are searched: the answer is the same',
  },
  {
    file: 'core/bearing/tray/lagrangian-bound.ts',
    line: '(step * over) / pull',
    change: '/ → *',
    reason: prices,
  },
  {
    file: 'core/bearing/tray/lagrangian-bound.ts',
    line: '(step * over) / pull',
    change: '+ → -',
    reason: prices,
  },
  {
    file: 'core/bearing/tray/assign.ts',
    line: 'total + each.length',
    change: '+ → -',
    reason: prices,
  },
  {
    file: 'core/bearing/tray/assign.ts',
    line: 'mostInRounds / options',
    change: '/ → *',
    reason: prices,
  },
  {
    file: 'core/bearing/tray/assign.ts',
    line: 'Math.min(rounds, mostRounds)',
    change: 'min → max',
    reason: prices,
  },
  {
    file: 'core/bearing/tray/assign.ts',
    line: 'searches.at(-1)!',
    change: '-1 → 1',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/assign.ts',
    line: 'searches.at(-1)!',
    change: '1 → 2',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: 'reached[place]!.get(key)',
    change: '<= → <',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: 'weighingsLeft -= 1',
    change: '1 → 2',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: 'weighingsLeft <= 0',
    change: '<= → <',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: 'weighingsLeft <= 0',
    change: '0 → 1',
    reason: longer,
  },
  {
    file: 'core/bearing/tray/search.ts',
    line: 'bound > best.cost - grain',
    change: '> → >=',
    reason: longer,
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: 'Math.abs(one - (other as number)) < 1e-9',
    change: '< → <=',
    reason: 'a billionth is left to binary rounding: a share of it more or less is no difference',
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: 'Math.abs(one - (other as number)) < 1e-9',
    change: '1e-9 → 1.05e-9',
    reason: 'a billionth is left to binary rounding: a share of it more or less is no difference',
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: 'return one < other ? -1 : 1',
    change: '< → <=',
    reason: 'two wrenches of one id',
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: 'return one < other ? -1 : 1',
    change: '1 → 2',
    reason: 'only its sign is asked',
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: '(mark ?? 0) / share.value',
    change: '0 → 1',
    reason: 'what cannot happen: without a mark it is refused',
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: 'Math.min(fraction.length, 6)',
    change: '6 → 7',
    reason: 'no scale is marked in ten-millionths',
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: 'least < window.least - slack',
    change: '< → <=',
    reason: 'a billionth is left to binary rounding: a share of it more or less is no difference',
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: 'least < window.least - slack',
    change: '- → +',
    reason: 'a billionth is left to binary rounding: a share of it more or less is no difference',
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: 'least < window.least - slack',
    change: '> → >=',
    reason: 'a billionth is left to binary rounding: a share of it more or less is no difference',
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: 'least < window.least - slack',
    change: '+ → -',
    reason: 'a billionth is left to binary rounding: a share of it more or less is no difference',
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: 'exact > upTo * (1 + 1e-9)',
    change: '> → >=',
    reason: 'a billionth is left to binary rounding: a share of it more or less is no difference',
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: 'exact > upTo * (1 + 1e-9)',
    change: '1e-9 → 1.05e-9',
    reason: 'a billionth is left to binary rounding: a share of it more or less is no difference',
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: 'exact >= from * (1 - 1e-9)',
    change: '>= → >',
    reason: 'a billionth is left to binary rounding: a share of it more or less is no difference',
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: 'exact >= from * (1 - 1e-9)',
    change: '1e-9 → 1.05e-9',
    reason: 'a billionth is left to binary rounding: a share of it more or less is no difference',
  },
  {
    file: 'core/tightening/wrench/choice.ts',
    line: 'shortAmount(scale.step',
    change: '6 → 7',
    reason: 'no scale is marked in ten-millionths',
  },
  {
    file: 'core/tightening/wrench/wrench.ts',
    line: 'shortAmount(scale.step',
    change: '6 → 7',
    reason: 'no scale is marked in ten-millionths',
  },
  {
    file: 'core/tightening/wrench/setting.ts',
    line: 'trusted > range.least ?',
    change: '> → >=',
    reason: 'the larger of two that are the same',
  },
  {
    file: 'core/tightening/wrench/setting.ts',
    line: 'torqueIn(value, unit) / step, 9)',
    change: '9 → 10',
    reason: 'a billionth is left to binary rounding: a share of it more or less is no difference',
  },
  {
    file: 'core/tightening/wrench/setting.ts',
    line: 'roundHalfAway(steps * step, 9)',
    change: '9 → 10',
    reason: 'a billionth is left to binary rounding: a share of it more or less is no difference',
  },
  {
    file: 'core/audit/tightening/stretch-by-torque.ts',
    line: 'uncertain * most < pass.least',
    change: '< → <=',
    reason: 'a stretch at its bound to the last digit of a number',
  },
]

/** Why a change is not noticed; null where that is not known, and a test is missing. */
export function reasonFor({ file, original, changed, text }: Mutation): string | null {
  const change = `${original} → ${changed}`
  const found = survivors.find(
    (each) =>
      (each.file ?? file) === file &&
      (each.change ?? change) === change &&
      text.includes(each.line) &&
      !each.butNot?.some((line) => text.includes(line)),
  )
  return found?.reason ?? null
}
