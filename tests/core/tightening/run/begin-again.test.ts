import { describe, expect, it } from 'vitest'
import { engineSpec } from '../../../../core/engine/index.ts'
import { isRunDone, isUsedUp, restartPoints, remedyOf } from '../../../../core/tightening/index.ts'
import { Bench, pull } from '../bench.ts'
import { measuredEngine } from '../measured-engine.ts'
import { byStretch, capsBy } from '../stretch-engine.ts'
import { winchEngine } from '../winch-engine.ts'

/** The rod bolts with R1 turned 70° where 63° is the most. */
function overturned(): Bench {
  const rods = Bench.started('rods')
  rods.pullsToTarget()
  rods.pullsToTarget()
  rods.does(pull(rods.next!, ['70', '°']))
  return rods
}

describe('too much on a bolt that is turned by an angle', () => {
  it('must be replaced; a cap bolt that is only torqued and may be used again begins again', () => {
    const rods = overturned()
    expect(remedyOf(winchEngine, rods.procedure, rods.run!, rods.run!.flags[0]!)).toBe('replace')
    const caps = Bench.started('caps')
    caps.pullsNext(4)
    caps.does(pull(caps.next!, ['26', 'N·m']))
    expect(remedyOf(winchEngine, caps.procedure, caps.run!, caps.run!.flags[0]!)).toBe('begin-again')
  })

  it('is loosened, replaced, and begins again from its first pass; the other bolt goes on where it stood', () => {
    const rods = overturned()
    rods.does({ type: 'loosen-fastener', fastener: 'rod-1', reason: 'Turned too far' })
    expect(rods.next).toEqual({ pass: 0, fastener: 'rod-1' })
    expect(rods.run?.flags[0]?.answer).toBeNull()
    rods.does({ type: 'replace-fastener', fastener: 'rod-1' })
    expect(rods.run?.flags[0]?.answer).toEqual({ deed: 'replaced' })
    rods.pullsToTarget()
    expect(rods.next).toEqual({ pass: 1, fastener: 'rod-1' })
    rods.pullsToTarget()
    expect(rods.next).toEqual({ pass: 1, fastener: 'rod-2' })
    rods.pullsToTarget()
    expect(isRunDone(rods.procedure, rods.run)).toBe(true)
    expect(rods.run?.pulls.map(({ setAside }) => setAside)).toEqual([
      'loosened',
      null,
      'loosened',
      null,
      null,
      null,
    ])
  })

  it('is not replaced while it is tight, and not loosened where nothing was pulled', () => {
    const rods = overturned()
    expect(rods.refuses({ type: 'replace-fastener', fastener: 'rod-1' })).toContain('Loosen it first')
    const fresh = Bench.started('rods')
    expect(fresh.refuses({ type: 'loosen-fastener', fastener: 'rod-1', reason: 'why not' })).toContain(
      'nothing to loosen',
    )
    expect(rods.refuses({ type: 'loosen-fastener', fastener: 'cap-1', reason: 'why not' })).toContain(
      'not part of',
    )
    expect(rods.refuses({ type: 'loosen-fastener', fastener: 'rod-1', reason: '.' })).toContain('Say why')
  })
})

describe('a bolt that is loosened beside one that had too much', () => {
  /** Cap bolt 1 at 26 N·m where 25.2 is the most, the others not yet torqued but seated. */
  function tooMuch(): Bench {
    const caps = Bench.started('caps')
    caps.pullsNext(4)
    caps.does(pull(caps.next!, ['26', 'N·m']))
    return caps
  }

  it('settles nothing of the other: cap bolt 1 still has to come out', () => {
    const caps = tooMuch()
    caps.does({ type: 'loosen-fastener', fastener: 'cap-2', reason: 'Washer forgotten' })
    expect(caps.run!.flags.map(({ fastener, answer }) => [fastener, answer])).toEqual([['cap-1', null]])
  })

  it('is not loosened where only others were pulled', () => {
    const caps = Bench.started('caps')
    caps.pullsNext()
    expect(
      caps.refuses({ type: 'loosen-fastener', fastener: 'cap-2', reason: 'Washer forgotten' }),
    ).toContain('nothing to loosen')
    caps.does({ type: 'loosen-fastener', fastener: 'cap-1', reason: 'Washer forgotten' })
    expect(caps.refuses({ type: 'loosen-fastener', fastener: 'cap-1', reason: 'And again' })).toContain(
      'nothing to loosen',
    )
  })

  it('has its own reason where nothing was too much, though a cause is named', () => {
    const caps = Bench.started('caps')
    caps.pullsNext()
    const command = { type: 'loosen-fastener', fastener: 'cap-1', cause: 'to-begin-again' } as const
    expect(caps.refuses({ ...command, reason: '' })).toContain('Say why')
    expect(caps.does({ ...command, reason: 'Washer forgotten' })).toEqual([
      {
        ...{ type: 'fastener-loosened', version: 1, procedure: 'caps', fastener: 'cap-1' },
        reason: 'Washer forgotten',
      },
    ])
    const [loosened, answered] = tooMuch().does({ ...command, reason: '' })
    expect(loosened).toMatchObject({ type: 'fastener-loosened', cause: 'to-begin-again' })
    expect(loosened).not.toHaveProperty('reason')
    expect(answered).toMatchObject({ type: 'flag-answered', deed: 'begun-again' })
  })
})

describe('what is loose', () => {
  const loosened = () => {
    const caps = Bench.started('caps')
    caps.pullsNext(5)
    for (const fastener of ['cap-1', 'cap-2'])
      caps.does({ type: 'loosen-fastener', fastener, reason: 'Washer forgotten' })
    return caps
  }

  it('stays loose until it is pulled or replaced, each for itself', () => {
    const caps = loosened()
    caps.does(pull({ pass: 0, fastener: 'cap-1' }))
    expect(caps.run!.loosened).toEqual(['cap-2'])
    expect(caps.refuses({ type: 'replace-fastener', fastener: 'cap-1' })).toContain('Loosen it first')
    caps.does({ type: 'replace-fastener', fastener: 'cap-2' })
    expect(caps.run!.loosened).toEqual([])
  })

  it('stays so when a later pass begins again; with the first pass every bolt comes out', () => {
    const later = loosened()
    later.does({ type: 'restart-run', pass: 0, reason: 'Part has to come off' })
    expect(later.run!.loosened).toEqual([])
    const caps = Bench.started('caps')
    caps.pullsNext(6)
    caps.does({ type: 'loosen-fastener', fastener: 'cap-4', reason: 'Washer forgotten' })
    caps.does({ type: 'restart-run', pass: 1, reason: 'Wrong wrench' })
    expect(caps.run!.loosened).toEqual(['cap-4'])
  })
})

describe('a bolt that may be used once only', () => {
  it('is used up by a torque and not by a hand that seats it, whatever became of the others', () => {
    const passes = [
      { kind: 'seat', order: 'pair' },
      { kind: 'torque', order: 'pair', target: '15 N·m' },
    ]
    const [rods] = winchEngine.procedures.filter(({ id }) => id === 'rods')
    const procedures = engineSpec.shape.procedures.parse([{ ...rods, orders: rods!.orders, passes }])
    const bench = Bench.started('rods', { ...winchEngine, procedures })
    const isUsed = (id: string) => isUsedUp(bench.spec, bench.procedure, bench.run!, id)
    bench.pullsNext(3)
    expect(['rod-1', 'rod-2'].map(isUsed)).toEqual([false, false])
    for (const fastener of ['rod-1', 'rod-2'])
      bench.does({ type: 'loosen-fastener', fastener, reason: 'Washer forgotten' })
    expect(['rod-1', 'rod-2'].map(isUsed)).toEqual([true, false])
    bench.does({ type: 'replace-fastener', fastener: 'rod-1' })
    expect(isUsed('rod-1')).toBe(false)
  })
})

describe('two bolts that were turned too far', () => {
  it('are replaced one by one: a new R1 answers nothing for R2', () => {
    const rods = overturned()
    rods.does(pull(rods.next!, ['75', '°']))
    expect(rods.run!.flags.map(({ fastener, answer }) => [fastener, answer])).toEqual([
      ['rod-1', null],
      ['rod-2', null],
    ])
    rods.does({ type: 'loosen-fastener', fastener: 'rod-1', reason: 'Turned too far' })
    rods.does({ type: 'replace-fastener', fastener: 'rod-1' })
    expect(rods.run!.flags.map(({ answer }) => answer)).toEqual([{ deed: 'replaced' }, null])
  })
})

describe('a gap that is measured again', () => {
  it('answers what was said of it, and nothing that was said of a fastener or by a person', () => {
    const bench = Bench.started('measured', measuredEngine)
    for (const fastener of ['cap-1', 'cap-2', 'cap-3']) bench.does(pull({ pass: 0, fastener }, ['80', 'mm']))
    bench.pullsNext(3)
    bench.does(pull(bench.next!, ['0.08', 'mm']))
    bench.does({ type: 'note-problem', fastener: null, text: 'A burr on the face.' })
    bench.does(pull(bench.next!, ['40', 'N·m']))
    const open = () => bench.run!.flags.filter(({ answer }) => answer === null).map(({ about }) => about)
    expect(open()).toEqual(['over', 'problem', 'over'])
    bench.does({ type: 'restart-run', pass: 1, measuredAgain: true, reason: 'Faces cleaned' })
    expect(open()).toEqual(['problem', 'over'])
    expect(bench.run!.flags[0]!.answer).toBe('Faces cleaned')
  })
})

describe('a run that begins again', () => {
  it('sets aside all pulls from the pass on, and keeps them in the record', () => {
    const caps = Bench.started('caps')
    caps.pullsNext(6)
    caps.does({ type: 'restart-run', pass: 1, reason: 'Sealant open too long' })
    expect(caps.next).toEqual({ pass: 1, fastener: 'cap-1' })
    expect(caps.run?.pulls).toHaveLength(6)
    caps.does({ type: 'restart-run', pass: 0, reason: 'Part has to come off again' })
    expect(caps.next).toEqual({ pass: 0, fastener: 'cap-1' })
  })

  it('goes on at once when it was paused', () => {
    const caps = Bench.started('caps')
    caps.pullsNext(2)
    caps.does({ type: 'pause-run', reason: 'Telephone' })
    caps.does({ type: 'restart-run', pass: 0, reason: 'Sealant open too long' })
    expect(caps.run?.paused).toBeNull()
    expect(caps.next).toEqual({ pass: 0, fastener: 'cap-1' })
  })

  it('never begins with a pass whose angle was turned: it would be turned twice', () => {
    const rods = Bench.started('rods')
    for (let made = 0; made < 3; made++) rods.pullsToTarget()
    expect(restartPoints(rods.procedure, rods.run!)).toEqual([0])
    const refused = rods.refuses({ type: 'restart-run', pass: 1, reason: 'Pass was broken off' })
    expect(refused).toContain('cannot begin again at pass 2')
    expect(refused).toContain('stretched twice')
  })

  it('never begins with a pass in which one was tightened to a stretch, nor before it but with the first', () => {
    const caps = Bench.started('own', capsBy(byStretch))
    for (const fastener of ['cap-1', 'cap-2', 'cap-3']) caps.does(pull({ pass: 0, fastener }, ['6', 'in']))
    caps.pullsNext(3)
    expect(restartPoints(caps.procedure, caps.run!)).toEqual([0, 1])
    caps.does(pull(caps.next!, ['6.02', 'in'], { torque: ['75', 'lbf·ft'] }))
    expect(restartPoints(caps.procedure, caps.run!)).toEqual([0])
    expect(caps.refuses({ type: 'restart-run', pass: 2, reason: 'Pass was broken off' })).toContain(
      'stretched twice',
    )
  })

  it('asks again whether single-use bolts are new when it begins with the first pass', () => {
    const rods = Bench.started('rods')
    for (let made = 0; made < 3; made++) rods.pullsToTarget()
    rods.does({ type: 'restart-run', pass: 0, reason: 'Pass was broken off' })
    expect(rods.refusal(pull(rods.next!))).toMatchObject({
      code: 'declare-new-first',
      facts: { group: 'Rod bolts' },
    })
  })

  it('wants a reason, and something that was pulled', () => {
    const caps = Bench.started('caps')
    expect(caps.refusal({ type: 'restart-run', pass: 0, reason: 'Broken off' })).toMatchObject({
      code: 'nothing-to-restart',
      facts: { pass: 1, name: 'Main caps' },
    })
    caps.pullsNext()
    expect(caps.refusal({ type: 'restart-run', pass: 1, reason: 'Broken off' })).toMatchObject({
      code: 'nothing-to-restart',
      facts: { pass: 2, name: 'Main caps' },
    })
    expect(caps.refuses({ type: 'restart-run', pass: 0, reason: '' })).toContain('Say why')
  })
})
