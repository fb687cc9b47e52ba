import fc from 'fast-check'
import { families, readSpec, type EngineSpec } from '../../../core/engine/index.ts'
import { demo } from './demos.ts'

/** An engine made of a handful of parameters, in whole mm, no outline given: the drawing has to grow one. */
export const anyEngine = fc
  .record({
    family: fc.constantFrom(...families),
    cylinders: mostly(fc.integer({ min: 1, max: 6 }), fc.constantFrom(12, 39)),
    // Up to 40 saddles over more than 3 m.
    bore: fc.integer({ min: 40, max: 140 }),
    wall: fc.integer({ min: 8, max: 30 }),
    bearing: fc.integer({ min: 30, max: 90 }),
    width: fc.integer({ min: 14, max: 34 }),
    bankAngle: fc.constantFrom(0, 45, 60, 90, 180),
    // Two fasteners at each saddle, and more round the edge of the case.
    beside: fc.integer({ min: 12, max: 40 }),
    edge: mostly(fc.integer({ min: 0, max: 24 }), fc.integer({ min: 24, max: 120 })),
    // As long as a spec may have it, with and without a place to break it.
    name: mostly(
      fc.constant('pump side'),
      fc.constantFrom('W'.repeat(80), 'very long name '.repeat(5).trim()),
    ),
  })
  .map(engineOf)

/** What is common, and now and then what is as far out as it goes. */
function mostly<Value>(usual: fc.Arbitrary<Value>, far: fc.Arbitrary<Value>): fc.Arbitrary<Value> {
  return fc.oneof({ arbitrary: usual, weight: 5 }, { arbitrary: far, weight: 1 })
}

interface Parameters {
  readonly family: (typeof families)[number]
  readonly cylinders: number
  readonly bore: number
  readonly wall: number
  readonly bearing: number
  readonly width: number
  readonly bankAngle: number
  readonly beside: number
  readonly edge: number
  readonly name: string
}

function engineOf(parameters: Parameters): EngineSpec {
  const pitch = parameters.bore + parameters.wall
  const mm = (value: number): string => `${value} mm`
  const place = (x: number, y: number): string[] => [mm(Math.round(x)), mm(Math.round(y))]
  const saddles = Array.from({ length: parameters.cylinders + 1 }, (_, index) => ({
    ...{
      id: `M${index + 1}`,
      at: mm(index * pitch),
      width: mm(parameters.width),
      diameter: mm(parameters.bearing),
    },
    thrust: index === 1,
  }))
  const across = parameters.bearing / 2 + parameters.beside
  const atSaddles = saddles.flatMap((_, index) => [across, -across].map((y) => place(index * pitch, y)))
  const length = parameters.cylinders * pitch
  // No closer than 16 mm: the holes of M10 bolts need metal between them.
  const edge = Math.min(parameters.edge, 2 * Math.floor((length + 40) / 16))
  const round = Array.from({ length: edge }, (_, index) => {
    const half = Math.ceil(edge / 2)
    const side = index < half ? 1 : -1
    const share = ((index % half) + 0.5) / half
    return place(-20 + share * (length + 40), side * (across + 34))
  })
  const { fasteners, fastenerGroups } = demo('skerry-3')
  const [group] = fastenerGroups
  const [pattern] = fasteners
  if (group === undefined || pattern === undefined) throw new Error('the demo engine has no fasteners')
  const text = JSON.stringify({
    ...template,
    case: {
      ...{
        family: parameters.family,
        cylinders: Math.min(parameters.cylinders, 24),
        bankAngle: `${parameters.bankAngle} °`,
      },
      ...{ bore: mm(parameters.bore), pitch: mm(pitch), firstBoreAt: mm(pitch / 2) },
      sides: { plus: parameters.name, minus: 'gear side' },
      saddles,
      faces: [
        {
          id: 'joint',
          name: parameters.name === 'pump side' ? 'Joint' : parameters.name,
          shows: 'saddles',
          plane: 'plan',
          workedFrom: 'below',
        },
      ],
    },
  })
  const read = readSpec(text)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return {
    ...read.spec,
    fastenerGroups: [group],
    fasteners: [...atSaddles, ...round].map((at, index) => ({
      ...{ ...pattern, id: `f${index + 1}`, number: String(index + 1) },
      at: at.map((each) => Number.parseInt(each) * 1e6) as unknown as (typeof pattern)['at'],
    })),
  }
}

const template = {
  ...{ bedplateSpec: 1, id: 'any', name: 'Any engine', summary: 'Made of parameters.', revision: '1' },
  source: { kind: 'demo', note: 'Made of parameters.' },
  ...{ fits: [], fastenerGroups: [], fasteners: [], procedures: [], cautions: [] },
  steps: [{ id: 'look', name: 'Look', kind: 'check', instruction: 'Look.' }],
}
