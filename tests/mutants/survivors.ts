import type { Mutation } from './mutations.ts'

/** A change that no test can notice, or that none needs to. */
interface Survivor {
  readonly file: string
  /** Text that the changed line has, and what is changed in it. */
  readonly line: string
  readonly change: string
  readonly reason: string
}

const prices =
  'any prices of shells give a bound that holds (weak duality): others make the search longer, not its answer another'

const survivors: readonly Survivor[] = [
  {
    file: 'core/bearing/tray/lagrangian-bound.ts',
    line: '? overOrdered : 0,',
    change: '0 → 1',
    reason: prices,
  },
  {
    file: 'core/bearing/tray/lagrangian-bound.ts',
    line: 'order.cost, 0) / places.length',
    change: '0 → 1',
    reason: prices,
  },
  {
    file: 'core/bearing/tray/lagrangian-bound.ts',
    line: '(step * over) / pull',
    change: '* → /',
    reason: prices,
  },
  {
    file: 'core/bearing/tray/lagrangian-bound.ts',
    line: 'Number.isFinite(order.most) ?',
    change: 'Number.isFinite(order.most) → !(Number.isFinite(order.most))',
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
    file: 'core/tightening/pattern.ts',
    line: '(a.id < b.id ? -1 : 1)',
    change: 'a.id < b.id → !(a.id < b.id)',
    reason: 'two fasteners at one place, which the audit refuses',
  },
  {
    file: 'core/tightening/pattern.ts',
    line: '+ 1e-3 ?',
    change: '1e-3 → 0.0010500000000000002',
    reason: 'a twentieth more of what is no difference',
  },
  {
    file: 'core/tightening/flag.ts',
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
    file: 'core/audit/orders.ts',
    line: 'spec.case.faces.find(',
    change: 'find → findLast',
    reason: 'ids are unique: a spec with one twice is not read',
  },
]

/** Why a change is not noticed; null where that is not known, and a test is missing. */
export function reasonFor({ file, original, changed, text }: Mutation): string | null {
  const change = `${original} → ${changed}`
  return (
    survivors.find((each) => each.file === file && text.includes(each.line) && each.change === change)
      ?.reason ?? null
  )
}
