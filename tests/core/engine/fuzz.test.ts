import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sentenceOf, type Problem } from '../../../core/problem/index.ts'
import { readSpec } from '../../../core/engine/index.ts'
import { audit } from '../../../core/audit/index.ts'
import { damaged, misprinted } from './damaged.ts'
import { demoText } from './demo.ts'
import { checkProperty } from '../../property.ts'
import { runs } from '../../runs.ts'

const damages = runs(160, 400)

function tellsAll(problem: Problem): void {
  const sentence = sentenceOf(problem)
  expect(sentence).toMatch(/^\S[\s\S]+[.!]$/)
  expect(sentence).not.toMatch(/undefined|\[object|NaN(?!”)/)
  expect(typeof problem.path).toBe('string')
}

describe('a damaged spec', () => {
  it('is read or refused in sentences, never with a crash; what is read can be audited', () => {
    const seen = { read: 0, refused: 0 }
    checkProperty(
      fc.property(fc.oneof(damaged, misprinted), (spec) => {
        const reading = readSpec(JSON.stringify(spec))
        seen[reading.ok ? 'read' : 'refused'] += 1
        if (reading.ok) for (const { problem } of audit(reading.spec)) tellsAll(problem)
        else {
          expect(reading.problems.length).toBeGreaterThan(0)
          for (const problem of reading.problems) tellsAll(problem)
        }
      }),
      { numRuns: damages },
    )
    expect(seen.read).toBeGreaterThan(damages / 8)
    expect(seen.refused).toBeGreaterThan(damages / 8)
  })

  it('that is read has each of its faults told at a path that is there', () => {
    checkProperty(
      fc.property(misprinted, (spec) => {
        const reading = readSpec(JSON.stringify(spec))
        if (!reading.ok) return
        for (const { problem } of audit(reading.spec)) {
          const keys = problem.path.match(/[^.[\]]+/g) ?? []
          const parent = keys
            .slice(0, -1)
            .reduce<unknown>((value, key) => (value as Record<string, unknown>)[key], spec)
          expect(parent, problem.path).toBeDefined()
        }
      }),
      { numRuns: runs(80, 200), leastShare: 0.5 },
    )
  })

  it('is reported where its text was cut or where a character was changed', () => {
    const text = demoText('skerry-3').trimEnd()
    checkProperty(
      fc.property(
        fc.nat(text.length - 1),
        fc.option(fc.constantFrom('{', '}', '[', ']', '"', ',', ':', '\\', 'x'), { nil: '' }),
        (at, character) => {
          const reading = readSpec(
            character === '' ? text.slice(0, at) : text.slice(0, at) + character + text.slice(at + 1),
          )
          if (character === '') expect(reading.ok).toBe(false)
          if (!reading.ok) for (const problem of reading.problems) tellsAll(problem)
        },
      ),
      { numRuns: runs(100, 300) },
    )
  })

  it('of anything at all is refused in sentences', () => {
    checkProperty(
      fc.property(fc.oneof(fc.string(), fc.json(), fc.string({ unit: 'binary' })), (text) => {
        const reading = readSpec(text)
        if (reading.ok) throw new Error('no random text is a spec')
        for (const problem of reading.problems) tellsAll(problem)
      }),
      { numRuns: runs(100, 300) },
    )
  })
})

describe('where JSON breaks off', () => {
  it('is found for every text that JSON.parse refuses, and for none that it takes', () => {
    const nearlyJson = fc
      .tuple(fc.json(), fc.nat(), fc.constantFrom('', ',', '}', '"', '1', 'e', '\\', '\n', ' ', '[]'))
      .map(
        ([json, at, character]) =>
          json.slice(0, at % (json.length + 1)) + character + json.slice((at % (json.length + 1)) + (at % 2)),
      )
    checkProperty(
      fc.property(nearlyJson, (text) => {
        const reading = readSpec(text)
        const codes = reading.ok ? [] : reading.problems.map(({ code }) => code)
        let parses = true
        try {
          JSON.parse(text)
        } catch {
          parses = false
        }
        const more: readonly string[] = ['spec-key-twice', 'spec-too-deep']
        if (!codes.some((code) => more.includes(code))) expect(codes.includes('spec-not-json')).toBe(!parses)
      }),
      { numRuns: runs(400, 1000) },
    )
  })
})
