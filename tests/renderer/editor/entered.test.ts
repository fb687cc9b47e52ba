import { describe, expect, it } from 'vitest'
import { clearanceWith } from '../../../core/bearing/index.ts'
import type { BareParameters } from '../../../core/drafts/index.ts'
import { readSpec } from '../../../core/engine/index.ts'
import { setA, setB, setC, setD } from '../../published/tightening-sets.ts'
import { Hand, type TypedGroup } from './hand.ts'

/** Begun from a kind of case alone: no bearing is there yet. */
const fromNothing: BareParameters = {
  ...{ family: 'caps', cylinders: 4, bankAngle: '0 °', bore: '80 mm', pitch: '100 mm', mains: 0 },
  ...{ mainDiameter: '', mainWidth: '', thrustMain: null, rods: null },
}
const bolts = {
  ...{ name: 'Bolts', thread: 'M12', propertyClass: '10.9', grip: '110 mm', acrossFlats: '18 mm' },
  threadState: 'oiled' as const,
}

/** Five saddles, and the bolts of a printed set in two rows beside them. */
async function caps(name: string, from: string, group: TypedGroup, across: number, count = 5) {
  const hand = await Hand.begin(name, from, fromNothing)
  await hand.bearings('28 mm', '60 mm', 100, 100, 5)
  const bolt = await hand.group(group)
  await hand.rows(bolt, [100, across], 100, count)
  return hand
}

/** What is pulled, how far, within which limits: what the set says, without what is ours. */
function pullsOf(specText: string) {
  const read = readSpec(specText)
  if (!read.ok) throw new Error('not read')
  return read.spec.procedures[0]!.passes.flatMap((pass): readonly object[] => {
    if (pass.kind === 'loosen') return [{ kind: pass.kind }]
    if (pass.kind !== 'torque' && pass.kind !== 'angle') return []
    const { kind, target, least, most, step } = pass
    return [{ kind, target: Number(target).toFixed(6), least, most, step }]
  })
}

/** Within it a person enters a set with the manual on the bench: a press or a key each second and a half make forty minutes. */
const most = 1600

async function isBuilt(hand: Hand) {
  expect(hand.faults).toEqual([])
  const built = await hand.build()
  expect(built.events.length).toBeGreaterThan(0)
  expect(hand.presses + hand.keys).toBeLessThan(most)
}

describe('a published tightening set, entered from nothing', () => {
  it('A: five caps with long and short screws, the crank tapped and turned in between', async () => {
    const set = setA()
    const hand = await caps(
      'Set A',
      set.source,
      { ...bolts, name: 'Long', propertyClass: '12.9', grip: '60 mm' },
      50,
    )
    const short = await hand.group({ ...bolts, name: 'Short', propertyClass: '12.9', grip: '40 mm' })
    await hand.rows(short, [100, 90], 100, 5)
    await hand.procedure('Main caps')
    const numberAt = (x: number, y: number) =>
      hand.document.fasteners.find(({ at }) => at[0] === `${x} mm` && at[1] === `${y} mm`)!.number
    // From the middle cap outwards, the long screws of a cap before its short ones.
    await hand.tapped([300, 400, 200, 500, 100].flatMap((x) => [50, -50, 90, -90].map((y) => numberAt(x, y))))
    await hand.pass('torque', { value: '12 lbf·ft' })
    await hand.pass('action', { instruction: 'Tap the crank back and forward.' })
    await hand.pass('torque', { value: '40 lbf·ft' })
    await hand.pass('torque', { value: '110 lbf·ft' })
    const others = hand.document.fasteners.filter(({ group }) => group === short).map(({ id }) => id)
    await hand.field(
      ['procedures', 0, 'passes', 4, 'others'],
      [{ fasteners: others, target: '100 lbf·ft' }],
      '100',
    )
    await hand.pass('action', { instruction: 'Turn the crank.' })
    await hand.field(
      ['procedures', 0, 'passes', 5, 'reading'],
      { least: '0.004 in', most: '0.010 in' },
      '0.004 - 0.010 in',
    )
    const { passes } = hand.desk.spec.procedures[0]!
    const last = passes[4]!
    expect(last).toMatchObject({ kind: 'torque' })
    // 110 and 100 lbf·ft are 149.14 and 135.58 N·m.
    if (last.kind === 'torque')
      expect([last.target, last.others[0]!.target].map((value) => Number(value).toFixed(2))).toEqual([
        ...['149.14', '135.58'],
      ])
    expect(last.kind === 'torque' && last.others[0]!.fasteners).toHaveLength(10)
    await isBuilt(hand)
  })

  it('B: ten bolts in number order, 30 ± 3 lbf·ft, mark, 120° ± 5°', async () => {
    const set = setB()
    const hand = await caps('Set B', set.source, bolts, 50)
    await hand.procedure('As printed')
    await hand.tapped(Array.from({ length: 10 }, (_, index) => String(index + 1)))
    await hand.pass('torque', { value: '30 ± 3 lbf·ft' })
    await hand.pass('action', { instruction: 'Mark every head and the metal beside it.' })
    await hand.pass('angle', { value: '120 ± 5 °' })
    expect(pullsOf(JSON.stringify(hand.document))).toEqual(pullsOf(set.specText))
    await isBuilt(hand)
  })

  it('C: 30 ± 3 lbf·ft on oiled threads, mark, 90°', async () => {
    const set = setC()
    const group = { ...bolts, thread: 'M11×1.5', propertyClass: '12.9', grip: '60 mm', acrossFlats: '16 mm' }
    const hand = await caps('Set C', set.source, group, 40, 4)
    await hand.procedure('As printed')
    await hand.pass('torque', { value: '30 ± 3 lbf·ft' })
    await hand.pass('action', { instruction: 'Mark every head and the metal beside it.' })
    await hand.pass('angle', { value: '90 °' })
    expect(pullsOf(JSON.stringify(hand.document))).toEqual(pullsOf(set.specText))
    await isBuilt(hand)
  })

  it('D: up in steps, loosened, up again, then 60° in steps of 30°', async () => {
    const set = setD()
    const group = { ...bolts, thread: 'M20', grip: '120 mm', acrossFlats: '30 mm' }
    const hand = await caps('Set D', set.source, group, 70)
    await hand.procedure('As printed')
    for (const value of ['150 to 160 lbf·ft', '340 to 350 lbf·ft']) await hand.pass('torque', { value })
    await hand.pass('loosen')
    for (const value of ['85 to 90 lbf·ft', '170 to 180 lbf·ft']) await hand.pass('torque', { value })
    await hand.pass('angle', { value: '60 °' })
    await hand.field(['procedures', 0, 'passes', 6, 'inSteps'], '30 °')
    expect(pullsOf(JSON.stringify(hand.document))).toEqual(pullsOf(set.specText))
    await isBuilt(hand)
  })
})

describe('a bottom end of a public manual', () => {
  it('is entered with bearings, end float and screws, and leaves the clearance that the manual has', async () => {
    // TM 5-6115-545-34, table 1-2: bore 2.9700–2.9705, wall 0.10975–0.11025, journal 2.7470–2.7485 in; the screws are set A's.
    const hand = await Hand.begin('Generator engine', 'TM 5-6115-545-34, table 1-2', {
      ...fromNothing,
      ...{ bore: '3.5 in', pitch: '4 in' },
    })
    hand.desk.step = '0.1 in'
    await hand.bearings('1.1 in', '2.97 in', 101.6, 101.6, 5)
    expect(hand.document.case.saddles.map(({ id, at }) => `${id} ${at}`)).toEqual([
      ...['M1 4 in', 'M2 8 in', 'M3 12 in', 'M4 16 in', 'M5 20 in'],
    ])
    await hand.field(['case', 'saddles', 2, 'thrust'], true, '')
    await hand.field(['endFloat'], { saddle: 'M3', least: '0.004 in', most: '0.010 in' }, '0.0040.010')
    await hand.fit({
      ...{ kind: 'main', name: 'Main bearings', least: '0.0010 in', most: '0.0040 in', grades: 'STD' },
      housing: { name: 'Case', marks: '1' },
      journal: { name: 'Crank', marks: 'S' },
      mixing: { neighbours: false, thicker: 'either' },
    })
    const bands = {
      housing: { over: '2.9700 in', upTo: '2.9705 in' },
      journal: { over: '2.7470 in', upTo: '2.7485 in' },
    }
    for (const side of ['housing', 'journal'] as const)
      await hand.field(['fits', 0, side, 'marks', 0, 'band'], bands[side], '2.9700 - 2.9705 in')
    await hand.field(
      ['fits', 0, 'grades', 0, 'wall'],
      { over: '0.10975 in', upTo: '0.11025 in' },
      '0.10975 - 0.11025 in',
    )
    const bolt = await hand.group({
      ...bolts,
      thread: '1/2-13 UNC',
      propertyClass: 'SAE 8',
      grip: '2.4 in',
      acrossFlats: '0.75 in',
    })
    await hand.rows(bolt, [101.6, 63.5], 101.6, 5)
    await hand.procedure('Main caps')
    await hand.tapped(['3', '8', '2', '7', '4', '9', '1', '6', '5', '10'])
    await hand.pass('torque', { value: '12 lbf·ft' })
    await hand.pass('action', { instruction: 'Tap the crank back and forward.' })
    await hand.pass('torque', { value: '40 lbf·ft' })
    await hand.pass('torque', { value: '100 lbf·ft' })
    await isBuilt(hand)
    // The manual's worst case is 0.0010 to 0.0040 in, which is 25.4 to 101.6 µm.
    const judged = clearanceWith(hand.desk.spec.fits[0]!, '1', 'S', 'STD', 'STD')
    if (!judged.ok) throw new Error(judged.problem.code)
    const { least, most: widest } = judged.value.clearance
    expect([least, widest].map((each) => (each / 1000).toFixed(1))).toEqual(['25.4', '101.6'])
  })
})
