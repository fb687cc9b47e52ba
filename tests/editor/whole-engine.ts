import {
  newPass,
  newStep,
  passChoices,
  stepKinds,
  withRingSet,
  withStep,
  type SpecDocument,
} from '../../core/drafts/index.ts'
import { shippedDraft } from '../core/engine/demo.ts'

type Engine = SpecDocument

/** A demo with each part once that a form shows only where it is, and with a pass and a step of every kind. */
export function wholeEngine(): Engine {
  const demo: Engine = shippedDraft('skerry-3')
  const parts = [withCase, withGroups, withBearings, withRings, withPasses, withSteps]
  return parts.reduce<Engine>((engine, add) => add(engine), {
    ...demo,
    source: {
      ...{ kind: 'entered', from: 'Shop manual', enteredBy: 'Ada Brook', on: '2026-03-02' },
      copiedFromDemo: 'fen-1',
    },
    pages: [{ path: 'case', page: '12', by: 'Ada Brook', on: '2026-03-02' }],
  })
}

function withCase(engine: Engine): Engine {
  const face = 'joint'
  const at = (x: number): [string, string] => [`${x} mm`, '60 mm']
  const common = { face, name: 'Part' }
  const seal = { ...common, diameter: '40 mm', shaft: '30 mm', lip: 'inwards' as const }
  return {
    ...engine,
    case: {
      ...engine.case,
      balanceBearings: [{ id: 'L1', at: '100 mm', across: '80 mm', width: '20 mm', diameter: '30 mm' }],
      faces: engine.case.faces.map((each) =>
        each.id === face ? { ...each, gasket: { width: '5 mm' } } : each,
      ),
      faceParts: [
        { ...seal, kind: 'seal', id: 'seal-1', at: at(60) },
        { ...seal, kind: 'two-piece-seal', id: 'seal-2', at: at(110) },
        { ...common, kind: 'plug', id: 'plug-1', at: at(160), diameter: '20 mm' },
        { ...common, kind: 'check-valve', id: 'valve-1', at: at(210), diameter: '20 mm', flow: 'inwards' },
        { ...common, kind: 'strainer', id: 'strainer-1', at: at(260), size: ['20 mm', '20 mm'] },
      ],
    },
  }
}

function withGroups(engine: Engine): Engine {
  const [first, second, ...others] = engine.fastenerGroups
  const more = {
    headFace: { outer: '18 mm', hole: '11 mm' },
    workingLoad: { force: '5 kN' },
    layers: [{ material: 'steel' as const, thickness: '20 mm' }],
  }
  return {
    ...engine,
    fastenerGroups: [{ ...first!, ...more }, { ...second!, thread: 'M8×1.25' }, ...others],
  }
}

function withBearings(engine: Engine): Engine {
  const [mains, ...others] = engine.fits
  const sizes = {
    housing: { ...mains!.housing, marks: mains!.housing.marks.slice(0, 2) },
    journal: { ...mains!.journal, marks: mains!.journal.marks.slice(0, 2) },
    chart: mains!.chart!.slice(0, 2),
  }
  const walls = mains!.grades.map(({ grade }) => ({ grade, wall: { over: '1.6 mm', upTo: '1.603 mm' } }))
  const undersizes = [{ name: '0.25 under', undersize: '0.25 mm', walls }]
  return { ...engine, fits: [{ ...mains!, ...sizes, undersizes }, ...others] }
}

function withRings(demo: Engine): Engine {
  const few = demo.ringSets!.map((set) => ({
    ...set,
    rings: set.rings.slice(0, 2),
    pistons: set.pistons.slice(0, 1),
  }))
  const engine = { ...demo, ringSets: few }
  const ring = { name: 'Top', kind: 'compression' as const, groove: 1, gapAt: '0 °' }
  const typed = { name: 'Others', where: 'In the bore.', apart: '90 °' }
  const byBore = { ...ring, endGap: { perBore: 0.003 } }
  const named = { piston: (cylinder: number) => `P${cylinder}`, bore: (cylinder: number) => `Z${cylinder}` }
  return withRingSet(engine, { ...typed, ring: byBore }, named)
}

function withPasses(engine: Engine): Engine {
  const [first] = engine.procedures
  const [order] = first!.orders
  const value = (choice: (typeof passChoices)[number]) =>
    choice === 'angle' ? '30 °' : choice === 'in-all' ? '90 °' : '20 N·m'
  const limits = { least: '0.1 mm', most: '0.2 mm', torqueLeast: '20 N·m', torqueMost: '30 N·m' }
  // What counts in all comes before what turns some further than others.
  const choices = ['in-all' as const, ...passChoices.filter((choice) => choice !== 'in-all')]
  const passes = choices.map((choice) =>
    newPass(choice, order!.id, { ...limits, value: value(choice), instruction: 'Turn it.' })!,
  )
  // One of the order is of another group, so that a pass may have a value for each; few others are kept.
  const [other, ...alike] = order!.sequence
  const onFace = (face: string) => engine.fasteners.filter((each) => each.face === face).slice(0, 2)
  const inOrder = engine.fasteners.filter(({ id }) => alike.includes(id))
  const one = engine.fasteners.find(({ id }) => id === other)!
  return {
    ...engine,
    fasteners: [...inOrder, { ...one, group: 'case-bolts' }, ...onFace('joint'), ...onFace('sump')],
    procedures: [{ ...first!, orders: [order!, { ...order!, id: 'again' }], passes }],
  }
}

function withSteps(engine: Engine): Engine {
  const chosen = {
    ...{ fit: 'mains', part: 'housing', rings: 'rings' },
    ...{ bead: engine.beads![0]!.id, procedure: engine.procedures[0]!.id },
  }
  const typed = { name: 'New', instruction: 'So', at: 'Here', say: 'So', where: 'So', limits: '0.1 – 0.2 mm' }
  const bare = { ...engine, steps: [], parts: [engine.parts![0]!], cautions: [engine.cautions[0]!] }
  const whole = stepKinds.reduce<Engine>(
    (all, kind) => withStep(all, newStep(all, kind, { ...chosen, ...typed })!, null),
    bare,
  )
  const { id } = whole.steps.find(({ kind }) => kind === 'fit-part')!
  return { ...whole, parts: [{ ...engine.parts![0]!, usedIn: [{ step: id, count: 2 }] }] }
}
