import {
  grownOrder,
  newPass,
  newStep,
  passChoices,
  stepKinds,
  withAccepted,
  withBead,
  withChartFor,
  withChecked,
  withFit,
  withNewOrder,
  withOutline,
  withPage,
  withProcedure,
  withSequence,
  withStep,
  withValueAt,
  type NewThing,
  type SpecDocument,
} from '../../core/drafts/index.ts'
import { problem, done } from '../../core/problem/index.ts'
import type { EditorDesk } from '../../renderer/editor/editor-desk.svelte.ts'

type Make = Parameters<EditorDesk['change']>[1]
type Act = (desk: EditorDesk) => unknown

const mm = 1_000_000
const said = { code: 'moved', facts: { count: 1 } } as const
const doing =
  (make: Make): Act =>
  (desk) =>
    desk.change(said, make)
const bo = { by: 'Bo Lind', on: '2026-03-03' }

const onTheCase: readonly NewThing[] = [
  { kind: 'fastener', group: 'case-bolts', where: 'at M1' },
  { kind: 'dowel', diameter: '8 mm' },
  { kind: 'oil-passage', name: 'Oil way', size: ['8 mm', '8 mm'] },
  ...(['seal', 'two-piece-seal', 'plug', 'check-valve', 'strainer'] as const).map((of) => ({
    ...{ kind: 'face-part' as const, of, name: 'Part', way: 'inwards' as const },
    ...{ diameter: '40 mm', shaft: '30 mm', size: ['20 mm', '20 mm'] as const },
  })),
]

/** What is entered by doing something, on the drawing or by a button, and not into a field: each as the page does it. */
export const actions: Readonly<Record<string, Act>> = {
  'a tap places what is chosen': async (desk) => {
    for (const thing of onTheCase) await desk.place({ x: 100 * mm, y: 70 * mm }, thing)
    const [bead] = desk.document.beads!
    await desk.place(
      { x: 100 * mm, y: 0 },
      { kind: 'keep-out', bead: bead!.id, name: 'Way', size: ['8 mm', '8 mm'] },
    )
  },
  'points are tapped for an outline': doing((document) =>
    done(
      withOutline(document, 'joint', [
        { x: 0, y: -100 * mm },
        { x: 392 * mm, y: -100 * mm },
        { x: 392 * mm, y: 100 * mm },
      ]),
    ),
  ),
  'points are tapped for a bead': doing((document) => {
    const typed = { name: 'Bead', width: '3 mm', sealant: 'silicone', openTimeMinutes: 10, closed: false }
    const drawn = withBead(document, 'joint', typed, [
      { x: 50 * mm, y: 80 * mm },
      { x: 90 * mm, y: 80 * mm },
    ])
    return drawn.ok ? done(drawn.value.document) : drawn
  }),
  'a procedure is added': doing((document) => withProcedure(document, 'sump', 'New')),
  'an order is tapped': doing((document) => {
    const [procedure] = document.procedures
    const [order] = procedure!.orders
    return withSequence(
      document,
      { procedure: procedure!.id, order: order!.id },
      order!.sequence.toReversed(),
    )
  }),
  'an order is grown': doing((document) => {
    const [procedure] = document.procedures
    const [order] = procedure!.orders
    return grownOrder(document, { procedure: procedure!.id, order: order!.id }, 'spiral', order!.sequence)
  }),
  'an order more is begun': doing((document) =>
    done(withNewOrder(document, document.procedures[0]!.id, 'loosening').document),
  ),
  'a pass is added': async (desk) => {
    for (const choice of passChoices) await desk.change(said, (document) => done(withPass(document, choice)))
  },
  'a step is added': async (desk) => {
    for (const kind of stepKinds) await desk.change(said, (document) => done(withNew(document, kind)))
  },
  'bearings are added': doing((document) => {
    const part = { name: 'Case', marks: '1 2' }
    const sizes = { grades: 'A B', least: '20 µm', most: '50 µm' }
    const mixing = { neighbours: false, thicker: 'either' as const }
    const typed = { kind: 'balance' as const, name: 'New', ...sizes, mixing, housing: part, journal: part }
    const names = { housing: 'A', journal: 'B', choose: 'C', fitting: 'D' }
    return done(withFit(document, typed, names).document)
  }),
  'a chart for some bearings is begun': doing((document) =>
    done(withValueAt(document, ['fits', 0, 'chart'], withChartFor(document.fits[0]!.chart, ['M1'], oneCell))),
  ),
  'the page of a part is said': doing((document) =>
    done(withPage(document, 'crank', { page: '14', document: 'Supplement' }, bo)),
  ),
  'a second person compares a value': doing((document) =>
    withChecked(document, { path: 'case.bore' }, { how: 'other', found: '81 mm' }, bo, new Map()),
  ),
  'a doubt is accepted': doing((document) =>
    done(
      withAccepted(document, problem('chart-too-large', { cells: 5000, most: 2000 }, 'case'), {
        reason: 'So',
        ...bo,
      }),
    ),
  ),
  'every value of a copy was replaced': (desk) => desk.set(['source', 'copiedFromDemo'], undefined),
}

const oneCell = [{ housing: '1', journal: 'F', upper: 'S', lower: 'S' }]

function withPass(document: SpecDocument, choice: (typeof passChoices)[number]): SpecDocument {
  const { orders, passes } = document.procedures[0]!
  const value = choice === 'in-all' ? '180 °' : choice === 'angle' ? '10 °' : '25 N·m'
  const limits = { least: '0.1 mm', most: '0.2 mm', torqueLeast: '20 N·m', torqueMost: '30 N·m' }
  const pass = newPass(choice, orders[0]!.id, { ...limits, value, instruction: 'Turn it.' })
  return withValueAt(document, ['procedures', 0, 'passes', passes.length], pass)
}

function withNew(document: SpecDocument, kind: (typeof stepKinds)[number]): SpecDocument {
  const chosen = {
    ...{ fit: 'mains', part: 'housing', rings: 'rings' },
    ...{ bead: document.beads![0]!.id, procedure: document.procedures[0]!.id },
  }
  const typed = { name: 'New', instruction: 'So', at: 'Here', say: 'So', where: 'So', limits: '0.1 – 0.2 mm' }
  return withStep(document, newStep(document, kind, { ...chosen, ...typed })!, null)
}
