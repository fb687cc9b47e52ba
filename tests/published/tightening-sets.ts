import type { z } from 'zod'
import { readSpec, type engineSpec, type EngineSpec } from '../../core/engine/index.ts'

type Draft = z.input<typeof engineSpec>
type Pass = Draft['procedures'][number]['passes'][number]

/** A printed set of tightening instructions, as a spec. The values are as printed; what the print leaves open is assumed. */
export interface TighteningSet {
  /** Where the set is printed. */
  readonly source: string
  /** What is ours: threads, grips, places, and the order where the print has none. */
  readonly assumed: string
  readonly specText: string
  readonly spec: EngineSpec
}

interface Screws {
  readonly id: string
  readonly name: string
  readonly thread: readonly [diameter: string, pitch: string]
  readonly propertyClass: string
  readonly acrossFlats: string
  readonly grip: string
  readonly threadState?: 'dry' | 'oiled'
  readonly places: readonly (readonly [x: number, y: number])[]
}

const order = 'in-order'

/** Set A: 12 lbf·ft on all, tap the crank back and forward, 40 on all, 110 on the long and 100 on the short, turn, end float. */
export function setA(): TighteningSet {
  const fromTheMiddle = [300, 400, 200, 500, 100]
  const long = { ...screws('long', 'Long screws', fromTheMiddle, 50, 60), propertyClass: '12.9' }
  const short = { ...screws('short', 'Short screws', fromTheMiddle, 90, 40), propertyClass: '12.9' }
  const shortIds = idsOf(short)
  return published({
    source: 'TM 9-2815-237-34, para 2-41',
    assumed:
      'Two long and two short screws in each cap, M12×1.75 of class 12.9; from the middle cap outwards.',
    id: 'published-a',
    groups: [long, short],
    passes: [
      torque('12 lbf·ft'),
      { kind: 'action', instruction: 'Tap the crank back and forward.' },
      torque('40 lbf·ft'),
      { ...torque('110 lbf·ft'), others: [{ fasteners: [...shortIds], target: '100 lbf·ft' }] },
      { kind: 'action', instruction: 'Turn the crank.' },
    ],
    endFloat: { least: '0.004 in', most: '0.010 in' },
  })
}

/** Set B: bolts 1 to 10 in number order, 30 ± 3 lbf·ft, mark, 120° ± 5°. */
export function setB(): TighteningSet {
  return published({
    source: 'TM 5-3825-226-24',
    assumed: 'M12×1.75 of class 10.9, 110 mm grip, in two rows.',
    id: 'published-b',
    groups: [screws('bolt', 'Bolts', [100, 200, 300, 400, 500], 50, 110)],
    passes: [
      torque('30 lbf·ft', '27 lbf·ft', '33 lbf·ft'),
      { kind: 'action', instruction: 'Mark every head and the metal beside it.' },
      { kind: 'angle', order, target: '120 °', least: '115 °', most: '125 °' },
    ],
  })
}

/** Set C: 30 ± 3 lbf·ft on oiled threads, mark, 90°. No tolerance of the angle is printed. */
export function setC(): TighteningSet {
  return published({
    source: 'TM 5-3805-258-24-2',
    assumed: 'Eight bolts, M11×1.5 of class 12.9, 60 mm grip.',
    id: 'published-c',
    groups: [
      {
        ...screws('bolt', 'Bolts', [100, 200, 300, 400], 40, 60),
        thread: ['11 mm', '1.5 mm'],
        propertyClass: '12.9',
        acrossFlats: '16 mm',
        threadState: 'oiled',
      },
    ],
    passes: [
      torque('30 lbf·ft', '27 lbf·ft', '33 lbf·ft'),
      { kind: 'action', instruction: 'Mark every head and the metal beside it.' },
      { kind: 'angle', order, target: '90 °' },
    ],
  })
}

/** Set D: to 150–160, to 340–350 lbf·ft, loosen all, to 85–90, to 170–180, then 60° in steps of 30°. */
export function setD(): TighteningSet {
  return published({
    source: 'TM 5-3810-295-34',
    assumed: 'Ten bolts, M20×2.5 of class 10.9, 120 mm grip; the target is the middle of the printed range.',
    id: 'published-d',
    groups: [
      {
        ...screws('bolt', 'Bolts', [100, 200, 300, 400, 500], 70, 120),
        thread: ['20 mm', '2.5 mm'],
        acrossFlats: '30 mm',
      },
    ],
    passes: [
      { ...range('150 lbf·ft', '160 lbf·ft'), note: 'Up to it in steps.' },
      range('340 lbf·ft', '350 lbf·ft'),
      { kind: 'loosen', order },
      range('85 lbf·ft', '90 lbf·ft'),
      range('170 lbf·ft', '180 lbf·ft'),
      { kind: 'angle', order, target: '60 °', inSteps: '30 °' },
    ],
  })
}

/** Set E: 22 lbf·ft, 40°, then on to 65° in all. The manual counts both angles from the torque. */
export function setE(): TighteningSet {
  return published({
    source: 'a public manual with 22 lbf·ft, 40°, 65°',
    assumed: 'Ten bolts, M12×1.75 of class 12.9, 110 mm grip; both angles counted from the torque.',
    id: 'published-e',
    groups: [{ ...screws('bolt', 'Bolts', [100, 200, 300, 400, 500], 50, 110), propertyClass: '12.9' }],
    passes: [
      torque('22 lbf·ft'),
      { kind: 'angle', order, target: '40 °' },
      { kind: 'angle', order, inAll: '65 °' },
    ],
  })
}

/** Set F: the studs of seven caps in the order 4, 3, 5, 2, 6, 1, 7, each tightened until it is 0.019 to 0.024 in longer. */
export function setF(): TighteningSet {
  return published({
    source: 'a public manual with studs stretched by 0.019 to 0.024 in, caps 4, 3, 5, 2, 6, 1, 7',
    assumed:
      'One stud to each side of a cap, M20×2.5 of class 10.9, 250 mm grip; snug at 50, then 150 to 300 lbf·ft; the ' +
      'joint is let settle for two minutes in between.',
    id: 'published-f',
    groups: [
      {
        ...screws('stud', 'Cap studs', [400, 300, 500, 200, 600, 100, 700], 70, 250),
        thread: ['20 mm', '2.5 mm'],
        acrossFlats: '30 mm',
      },
    ],
    passes: [
      { kind: 'length', order },
      torque('50 lbf·ft'),
      { kind: 'action', instruction: 'Let the joint settle.', waitMinutes: 2 },
      {
        kind: 'tighten-to-stretch',
        order,
        least: '0.019 in',
        most: '0.024 in',
        torque: { least: '150 lbf·ft', most: '300 lbf·ft' },
      },
    ],
  })
}

/** Set H: 70, 140 lbf·ft, loosen, 25, 70, 140. */
export function setH(): TighteningSet {
  return published({
    source: 'a public manual with 70, 140, loosen, 25, 70, 140 lbf·ft',
    assumed: 'Ten bolts, M14×2 of class 12.9, 110 mm grip.',
    id: 'published-h',
    groups: [
      {
        ...screws('bolt', 'Bolts', [100, 200, 300, 400, 500], 50, 110),
        thread: ['14 mm', '2 mm'],
        acrossFlats: '21 mm',
        propertyClass: '12.9',
      },
    ],
    passes: [
      torque('70 lbf·ft'),
      torque('140 lbf·ft'),
      { kind: 'loosen', order },
      torque('25 lbf·ft'),
      torque('70 lbf·ft'),
      torque('140 lbf·ft'),
    ],
  })
}

/** Set J: 22.13 lbf·ft (30 N·m), then three times 30°. */
export function setJ(): TighteningSet {
  return published({
    source: 'TM 5-4320-302-14, p. 6-129',
    assumed: 'Eight bolts, M10×1.5 of class 10.9, 60 mm grip.',
    id: 'published-j',
    groups: [
      {
        ...screws('bolt', 'Bolts', [100, 200, 300, 400], 40, 60),
        thread: ['10 mm', '1.5 mm'],
        acrossFlats: '16 mm',
      },
    ],
    passes: [
      torque('22.13 lbf·ft (30 N·m)'),
      ...[1, 2, 3].map((): Pass => ({ kind: 'angle', order, target: '30 °' })),
    ],
  })
}

/**
 * Set K: each cap by itself, then the next: bolt 5 and bolt 4 to 30 ± 3 lbf·ft, mark, bolt 4 and then bolt 5 by 120° ± 5°. 'Do the
 * steps for the remainder of the bearings.'
 */
export function setK(): TighteningSet {
  const bolts = screws('bolt', 'Cap bolts', [100, 200, 300, 400, 500], 50, 110)
  const caps = [0, 1, 2, 3, 4].map((cap) => [`bolt-${2 * cap + 1}`, `bolt-${2 * cap + 2}`] as const)
  return published({
    source: 'TM 5-3805-260-24, p. 3-114',
    assumed: 'M12×1.75 of class 10.9, 110 mm grip; the caps from the nose on.',
    id: 'published-k',
    groups: [bolts],
    passes: [
      torque('30 lbf·ft', '27 lbf·ft', '33 lbf·ft'),
      { kind: 'action', instruction: 'Mark both heads and the cap.' },
      { kind: 'angle', order: 'back', target: '120 °', least: '115 °', most: '125 °' },
    ],
    capByCap: true,
    orders: [{ id: 'back', sequence: caps.flatMap(([five, four]) => [four, five]) }],
  })
}

/** Screws in two rows to either side of the crank, at each x in turn. */
function screws(id: string, name: string, along: readonly number[], across: number, gripMm: number): Screws {
  return {
    id,
    name,
    thread: ['12 mm', '1.75 mm'],
    propertyClass: '10.9',
    acrossFlats: '18 mm',
    grip: `${gripMm} mm`,
    places: along.flatMap((x) => [[x, across] as const, [x, -across] as const]),
  }
}

function idsOf({ id, places }: Screws): readonly string[] {
  return places.map((_, index) => `${id}-${index + 1}`)
}

function torque(target: string, least?: string, most?: string): Pass & { kind: 'torque' } {
  return { kind: 'torque', order, target, ...(least && { least }), ...(most && { most }) }
}

/** A torque as the print has it, without a target. */
function range(least: string, most: string): Pass & { kind: 'torque' } {
  return { kind: 'torque', order, least, most }
}

function published(set: {
  readonly source: string
  readonly assumed: string
  readonly id: string
  readonly groups: readonly Screws[]
  readonly passes: readonly Pass[]
  readonly endFloat?: { readonly least: string; readonly most: string }
  readonly capByCap?: true
  readonly orders?: Draft['procedures'][number]['orders']
}): TighteningSet {
  const { source, assumed, id, groups, endFloat } = set
  const xs = [...new Set(groups.flatMap(({ places }) => places.map(([x]) => x)))].toSorted((a, b) => a - b)
  const draft: Draft = {
    bedplateSpec: 1,
    id,
    name: 'A published set',
    summary: `The tightening instructions of ${source}.`,
    revision: 'as printed',
    source: {
      kind: 'entered',
      from: `${source}. ${assumed}`,
      enteredBy: 'Ada Brook',
      checkedBy: 'Jon Vale',
      on: '2026-03-31',
    },
    case: {
      family: 'caps',
      cylinders: 4,
      bankAngle: '0 °',
      bore: '80 mm',
      pitch: '100 mm',
      firstBoreAt: '150 mm',
      sides: { plus: 'one side', minus: 'other side' },
      saddles: xs.map((x, index) => ({
        id: `M${index + 1}`,
        at: `${x} mm`,
        width: '28 mm',
        diameter: '60 mm',
      })),
      faces: [{ id: 'block', name: 'Block', shows: 'saddles', workedFrom: 'below' }],
    },
    fits: [],
    fastenerGroups: groups.map(({ id, name, thread: [diameter, pitch], ...group }) => ({
      id,
      name,
      thread: { diameter, pitch },
      grip: group.grip,
      propertyClass: group.propertyClass,
      acrossFlats: group.acrossFlats,
      threadState: group.threadState ?? 'oiled',
      reuse: 'reusable',
      clamped: 'cast-iron',
    })),
    fasteners: groups.flatMap((group, row) =>
      group.places.map(([x, y], index) => ({
        id: `${group.id}-${index + 1}`,
        number: `${row === 0 ? '' : 'S'}${index + 1}`,
        group: group.id,
        face: 'block',
        at: [`${x} mm`, `${y} mm`] as [string, string],
        where: `at ${x} mm, ${y > 0 ? 'one side' : 'other side'}`,
      })),
    ),
    procedures: [
      {
        id: 'tighten',
        name: 'As printed',
        face: 'block',
        orders: [{ id: order, sequence: inTurn(groups) }, ...(set.orders ?? [])],
        passes: [...set.passes],
        ...(set.capByCap && { capByCap: set.capByCap }),
      },
    ],
    steps: [
      { id: 'tighten', name: 'Tighten', kind: 'run-procedure', procedure: 'tighten' },
      ...(endFloat === undefined
        ? []
        : [
            {
              id: 'end-float',
              name: 'End float',
              kind: 'check' as const,
              after: ['tighten'],
              instruction: 'Measure the end float of the crank.',
              reading: endFloat,
            },
          ]),
    ],
    cautions: [
      { signal: 'NOTICE', text: "The maker's current manual and a qualified person overrule this program." },
    ],
  }
  const specText = JSON.stringify(draft)
  const reading = readSpec(specText)
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  return { source, assumed, specText, spec: reading.spec }
}

/** Place by place, all groups at one place before the next: cap by cap. */
function inTurn(groups: readonly Screws[]): string[] {
  const ids = groups.map(idsOf)
  const pairs = Math.max(...ids.map((each) => each.length)) / 2
  return Array.from({ length: pairs }, (_, pair) =>
    ids.flatMap((each) => each.slice(2 * pair, 2 * pair + 2)),
  ).flat()
}
