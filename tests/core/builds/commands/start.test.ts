import { describe, expect, it } from 'vitest'
import { readPerson, startBuild } from '../../../../core/builds/index.ts'
import { sentenceOf, type Outcome } from '../../../../core/problem/index.ts'
import type { EngineSpec } from '../../../../core/engine/index.ts'
import { demoEngine, newBuild } from '../workshop.ts'

const skerry = demoEngine('skerry-3')
const sentence = (answer: Outcome<unknown>) => (answer.ok ? 'not refused' : sentenceOf(answer.problem))

describe('starting a build', () => {
  it('keeps which spec it is built by, and its own name and serial number', () => {
    expect(startBuild(skerry, { ...newBuild, name: '  Pump at the lower lock ', serial: ' A 117 ' })).toEqual(
      {
        ok: true,
        value: {
          type: 'build-started',
          version: 1,
          spec: 'skerry-3',
          specRevision: skerry.revision,
          specSha256: 'a'.repeat(64),
          name: 'Pump at the lower lock',
          serial: 'A 117',
        },
      },
    )
  })

  it('needs a name, but no serial number', () => {
    expect(sentence(startBuild(skerry, { ...newBuild, name: '   ' }))).toContain('The build has no name.')
    expect(startBuild(skerry, { ...newBuild, serial: '' }).ok).toBe(true)
  })

  it('needs somebody who does it', () => {
    expect(sentence(startBuild(skerry, { ...newBuild, person: ' ' }))).toContain('Nobody is named.')
  })

  it('takes 80 characters and not 81', () => {
    const long = 'x'.repeat(80)
    expect(startBuild(skerry, { ...newBuild, name: long, serial: long, person: long }).ok).toBe(true)
    expect(sentence(startBuild(skerry, { ...newBuild, name: `${long}x` }))).toContain('80 characters')
    expect(sentence(startBuild(skerry, { ...newBuild, serial: `${long}x` }))).toContain('80 characters')
    expect(sentence(readPerson(`${long}x`))).toContain('80 characters')
  })

  it('is refused on a spec with a fault: here one bolt is in no order', () => {
    const procedures = skerry.procedures.map((procedure) => ({
      ...procedure,
      orders: procedure.orders.map((order) => ({
        ...order,
        sequence: order.sequence.filter((id) => id !== 'case-8'),
      })),
    }))
    const faulty: EngineSpec = { ...skerry, procedures }
    expect(startBuild(faulty, newBuild)).toMatchObject({ ok: false, problem: { code: 'engine-faulty' } })
  })
})
