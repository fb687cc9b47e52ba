import { describe, expect, it } from 'vitest'
import { proofLoad, propertyClasses, strengthOf } from '../../../core/joint/index.ts'
import { valueOf, m8, thread } from './workshop.ts'
import { lineOf } from '../../problem-line.ts'

describe('a property class', () => {
  it('promises more the higher it is', () => {
    const loads = (['8.8', '10.9', '12.9'] as const).map((name) =>
      proofLoad(m8.thread, valueOf(strengthOf(name, m8.thread))),
    )
    expect(loads).toEqual(loads.toSorted((a, b) => a - b))
  })

  it('proves below where it yields, and yields below where it breaks', () => {
    for (const name of propertyClasses) {
      const { proofMpa, yieldMpa, tensileMpa } = valueOf(strengthOf(name, m8.thread))
      expect(proofMpa).toBeLessThan(yieldMpa)
      expect(yieldMpa).toBeLessThan(tensileMpa)
    }
  })

  it('8.8 is the softer kind up to and including 16 mm', () => {
    expect(valueOf(strengthOf('8.8', thread(16, 2))).proofMpa).toBe(580)
    expect(valueOf(strengthOf('8.8', thread(16.001, 2))).proofMpa).toBe(600)
  })

  it('SAE 2 and 5 are softer above 3/4 in and 1 in (SAE J429): 20 and 26 mm are above, 19.05 and 25.4 are not', () => {
    const proof = (name: string, diameter: number) =>
      valueOf(strengthOf(name, thread(diameter, 2.5))).proofMpa
    expect([proof('SAE 2', 19.05), proof('SAE 2', 20)].map(Math.round)).toEqual([379, 228])
    expect([proof('SAE 5', 25.4), proof('SAE 5', 26)].map(Math.round)).toEqual([586, 510])
  })

  it('that there is not is refused with those that there are', () => {
    const refused = strengthOf('11.9', m8.thread)
    if (refused.ok) throw new Error('class 11.9 was taken')
    expect(refused.problem.code).toBe('property-class-unknown')
    const sentence = lineOf(refused.problem)
    for (const name of [...propertyClasses, '11.9']) expect(sentence).toContain(name)
  })

  it('9.8 is not made above 16 mm, and is not offered there', () => {
    const refused = strengthOf('9.8', thread(20, 2.5))
    if (refused.ok) throw new Error('class 9.8 was taken for M20')
    expect(refused.problem.facts).toMatchObject({ known: propertyClasses.filter((each) => each !== '9.8') })
  })

  it.each(['', '8,8', ' 8.8', '8.8.', 'toString', 'A2-70'])('%j is not one', (name) => {
    expect(strengthOf(name, m8.thread).ok).toBe(false)
  })
})
