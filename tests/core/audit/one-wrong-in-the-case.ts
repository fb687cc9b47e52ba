import { named, nth, type Draft } from '../engine/demo.ts'
import type { OneWrong } from './one-wrong.ts'

const skerry = (change: (spec: Draft) => unknown): OneWrong => ['skerry-3', change]
const moor = (change: (spec: Draft) => unknown): OneWrong => ['moor-flat-4', change]
const holm = (change: (spec: Draft) => unknown): OneWrong => ['holm-2', change]

/** Without a step, and nothing that names it. */
const without = (id: string) =>
  skerry((spec) => {
    spec.steps = spec.steps.filter((step) => step.id !== id)
    for (const step of spec.steps) step.after = (step.after ?? []).filter((each) => each !== id)
    for (const caution of spec.cautions) caution.steps = caution.steps?.filter((each) => each !== id)
  })

/** A crank with nothing to run in: no saddle and no rod, and nothing that names one. */
const withoutBearings = skerry((spec) => {
  const named = new Set(
    spec.steps.flatMap((step) =>
      'fit' in step || step.kind === 'check' || step.kind === 'turn' ? [step.id] : [],
    ),
  )
  const kept = (ids: readonly string[] = []) => ids.filter((id) => !named.has(id))
  spec.case.saddles = []
  spec.case.rods = []
  spec.fits = []
  delete spec.endFloat
  delete spec.rodSideClearance
  delete spec.crank
  spec.steps = spec.steps.filter(({ id }) => !named.has(id))
  for (const step of spec.steps) step.after = kept(step.after)
  for (const caution of spec.cautions) if (caution.steps) caution.steps = kept(caution.steps)
  for (const part of spec.parts ?? []) part.usedIn = part.usedIn.filter(({ step }) => !named.has(step))
})

const entered = (checkedBy?: string) =>
  skerry((spec) => {
    const source = { kind: 'entered', from: 'Shop notes', enteredBy: 'Ada Brook', on: '2026-03-31' } as const
    spec.source = { ...source, ...(checkedBy && { checkedBy }) }
  })

const measure = (spec: Draft, id: string) => {
  const all = spec.steps.flatMap((step) => (step.kind === 'measure-limits' ? step.measures : []))
  return named(all, id)
}

const ringGap = (limits: { least: string; most: string }) =>
  moor((spec) => Object.assign(measure(spec, 'pin'), { what: 'ring-gap', new: limits }))

/** Takes steps out, and whatever names them. */
function withoutSteps(spec: Draft, isOut: (step: Draft['steps'][number]) => boolean): void {
  const out = new Set(spec.steps.filter(isOut).map(({ id }) => id))
  spec.steps = spec.steps.filter(({ id }) => !out.has(id))
  for (const step of spec.steps) step.after = step.after?.filter((id) => !out.has(id))
  for (const caution of spec.cautions) caution.steps = caution.steps?.filter((id) => !out.has(id))
}

/** One thing wrong with the case, its beads, the steps or the parts. */
export const oneWrongInTheCase: Readonly<Record<string, OneWrong>> = {
  'source-unchecked': entered(),
  'source-checked-by-same': entered('Ada Brook'),
  'value-reads-otherwise': skerry((spec) => {
    spec.source = {
      ...{ kind: 'entered', from: 'Shop notes', enteredBy: 'Ada Brook', checkedBy: 'Bo Lind' },
      on: '2026-03-31',
    }
    const check = {
      path: 'case.bore',
      by: 'Bo Lind',
      on: '2026-04-01',
      how: 'other',
      found: '71 mm',
    } as const
    spec.checks = [check]
  }),
  'source-copied-from-demo': skerry((spec) => {
    spec.source = {
      ...{ kind: 'entered', from: 'Heron workshop manual', enteredBy: 'Ada Brook', checkedBy: 'Bo Lind' },
      ...{ on: '2026-03-02', copiedFromDemo: 'skerry-3' },
    }
  }),
  'fasteners-none': skerry((spec) => {
    withoutSteps(spec, ({ kind }) => kind === 'run-procedure')
    Object.assign(spec, { fasteners: [], fastenerGroups: [], procedures: [] })
  }),
  'bearings-without-fit': skerry((spec) => {
    const bigEnds = spec.fits.find(({ kind }) => kind === 'big-end')!
    withoutSteps(spec, (step) => 'fit' in step && step.fit === bigEnds.id)
    spec.fits = spec.fits.filter((fit) => fit !== bigEnds)
  }),
  'end-float-missing': skerry((spec) => delete spec.endFloat),
  'standing-caution-missing': skerry((spec) => spec.cautions.shift()),

  'saddles-none': withoutBearings,
  'saddles-out-of-order': skerry((spec) => {
    const [, second, third] = spec.case.saddles
    ;[second!.at, third!.at] = [third!.at, second!.at]
  }),
  'bearings-overlap': skerry((spec) => (nth(spec.case.rods, 1).at = '165 mm')),
  'bores-overlap': skerry((spec) => (spec.case.pitch = '84 mm')),
  'cylinder-with-two-rods': skerry((spec) => (nth(spec.case.rods, 2).cylinder = 2)),
  'rod-without-cylinder': skerry((spec) => Object.assign(spec.case, { cylinders: 2 })),
  'rods-missing': skerry((spec) => (spec.case.cylinders = 4)),
  'outline-crosses-itself': skerry((spec) =>
    named(spec.case.faces, 'joint').outline!.splice(
      2,
      0,
      ['180 mm', '-100 mm'],
      ['190 mm', '-110 mm'],
      ['180 mm', '-110 mm'],
      ['190 mm', '-100 mm'],
    ),
  ),
  'outside-outline': skerry((spec) => (named(spec.fasteners, 'flange-9').at = ['196 mm', '860 mm'])),
  'far-outside': skerry((spec) => (named(spec.fasteners, 'rod-1').at = ['100 mm', '3100 mm'])),
  'parts-collide': skerry((spec) => (named(spec.case.dowels, 'dowel-1').at = ['98 mm', '86 mm'])),
  'rod-without-throw': moor(
    (spec) => spec.crank!.throws.splice(2, 1) && spec.crank!.counterweights!.splice(2, 1),
  ),
  'rod-on-two-throws': moor((spec) => nth(spec.crank!.throws, 0).rods.push('B1')),
  'saddle-within-throw': moor((spec) => {
    nth(spec.crank!.throws, 1).rods = ['B3']
    nth(spec.crank!.throws, 0).rods = ['B1', 'B4']
    nth(spec.crank!.throws, 2).rods = ['B2']
    spec.crank!.throws.pop()
    spec.crank!.counterweights!.pop()
  }),
  'counterweight-twice': moor(
    (spec) => (
      (nth(spec.crank!.counterweights, 1).throw = 'P3'),
      (nth(spec.crank!.counterweights, 1).side = 'nose')
    ),
  ),
  'wheel-over-bearing': moor((spec) => (nth(spec.crank!.wheels, 0).at = '24 mm')),
  'crank-not-described': moor((spec) => delete spec.crank),
  'crank-not-on-face': moor((spec) => Object.assign(named(spec.steps, 'sump-on'), { shows: 'crank' })),
  'seal-too-small': holm((spec) => Object.assign(nth(spec.case.faceParts, 0), { shaft: '92 mm' })),
  'gasket-not-listed': moor((spec) => delete named(spec.case.faces, 'sump').gasket!.part),
  'gasket-used-again': moor((spec) => (named(spec.parts, 'sump-gaskets').reuse = { uses: 2 })),
  'gasket-laid-elsewhere': moor((spec) => (named(spec.case.faces, 'sump').gasket!.part = 'barrel-gaskets')),
  'least-above-most': skerry((spec) => (spec.rodSideClearance = { least: '0.3 mm', most: '0.1 mm' })),
  'limits-said-twice': skerry((spec) =>
    Object.assign(named(spec.steps, 'end-float'), { reading: { least: '0.08 mm', most: '0.25 mm' } }),
  ),

  'bead-in-keep-out': skerry((spec) => (named(spec.beads, 'minus').width = '9 mm')),
  'bead-outside-outline': skerry((spec) => (nth(named(spec.beads, 'plus').path, 2)[1] = '172 mm')),
  'bead-over-hole': skerry((spec) => (named(spec.case.dowels, 'dowel-1').at = ['70 mm', '75 mm'])),
  'bead-over-oil-passage': skerry((spec) => {
    const bead = named(spec.beads, 'minus')
    bead.path = bead.path.filter(([x]) => !['206 mm', '214 mm', '234 mm', '242 mm'].includes(x))
    bead.keepOut = []
    named(spec.case.oilPassages, 'gallery').at = ['224 mm', '-66 mm']
  }),
  'bead-never-laid': without('bead-plus'),

  'fit-without-step': without('choose-mains'),
  'procedure-never-run': without('sump-run'),
  'done-in-two-steps': skerry((spec) =>
    spec.steps.push({
      ...{ id: 'again', name: 'Once more', kind: 'run-procedure', procedure: 'sump', after: ['sump-run'] },
    }),
  ),
  'skippable-step-needed': skerry((spec) => (named(spec.steps, 'lay-crank').mayBeSkipped = 'with-a-reason')),
  'steps-in-a-ring': skerry((spec) => (named(spec.steps, 'last-look').after = ['last-look'])),
  'step-does-not-wait': moor((spec) => (named(spec.steps, 'count').after = ['turn-crank'])),

  'place-twice': moor((spec) => {
    const places = spec.steps.flatMap((step) => ('places' in step ? [step.places] : []))
    const several = places.find(({ length }) => length > 1)!
    several[1]!.id = several[0]!.id
  }),
  'measure-twice': moor((spec) => (measure(spec, 'pin').id = 'skirt')),
  'measured-place-twice': moor((spec) => (measure(spec, 'skirt').at = ['Barrel 1', 'Barrel 1'])),
  'service-limits-narrower': moor((spec) => (measure(spec, 'skirt').service = { most: '0.05 mm' })),
  'ring-gap-may-close': ringGap({ least: '0 mm', most: '0.5 mm' }),
  'ring-gap-unusual': ringGap({ least: '0.030 mm', most: '0.045 mm' }),
  'count-without-parts': moor((spec) => {
    delete spec.parts
    delete named(spec.case.faces, 'sump').gasket
  }),
  'parts-never-counted': moor((spec) => spec.steps.pop()),
  'part-count-differs': moor((spec) => (named(spec.parts, 'circlips').count = 9)),
  'part-twice-in-step': moor((spec) => {
    const part = named(spec.parts, 'sump-gaskets')
    const [use] = part.usedIn
    part.usedIn = [use!, use!]
    part.count = 2 * use!.count
  }),
  'part-where-nothing-is-fitted': moor(
    (spec) => (named(spec.parts, 'strainer').usedIn = [{ step: 'end-float', count: 1 }]),
  ),
}
