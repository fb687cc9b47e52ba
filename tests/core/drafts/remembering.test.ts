import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { audit, rememberingAudit } from '../../../core/audit/index.ts'
import { changesBetween, documentText, patched, type Json } from '../../../core/drafts/index.ts'
import { readDocument, readSpec, type SpecDocument } from '../../../core/engine/index.ts'
import { languages } from '../../../core/words/index.ts'
import { checkProperty } from '../../property.ts'
import { runs } from '../../runs.ts'
import { changed, placesIn, type Json as OpenJson } from '../engine/damaged.ts'
import { documentOf } from './document-of-demo.ts'

// One in inches, one whose caps are found by the program, one of two halves.
const demos = ['skerry-3', 'firth-v8', 'tarn-4'].map(documentOf)

interface Slip {
  readonly at: number
  readonly from: number
  readonly how: 'take-out' | 'repeat' | 'exchange' | 'copy'
}
const slip: fc.Arbitrary<Slip> = fc.record({
  at: fc.nat(),
  from: fc.nat(),
  how: fc.constantFrom('take-out', 'repeat', 'exchange', 'copy'),
})

/** An edit: something taken out, written twice, exchanged with its neighbour, or given what stands elsewhere under the same name. */
function edited(document: Json, { at, from, how }: Slip): Json {
  const open = document as OpenJson
  const places = placesIn(open).slice(1)
  const path = places[at % places.length]!
  if (how === 'take-out') return changed(open, path, undefined)
  if (how === 'copy') {
    const like = places.filter((each) => each.at(-1) === path.at(-1))
    return changed(open, path, valueAt(open, like[from % like.length]!))
  }
  const depth = path.findLastIndex((key) => typeof key === 'number')
  if (depth < 0) return document
  const list = valueAt(open, path.slice(0, depth)) as OpenJson[]
  const place = Number(path[depth])
  const next = how === 'repeat' ? list.toSpliced(place, 0, list[place]!) : list.toSpliced(place, 1)
  if (how === 'exchange') next.splice(from % list.length, 0, list[place]!)
  return changed(open, path.slice(0, depth), next)
}

function valueAt(value: OpenJson, path: readonly (string | number)[]): OpenJson {
  return path.reduce<OpenJson>((inside, key) => (inside as Record<string, OpenJson>)[key]!, value)
}

describe('a document that is read and audited after each edit', () => {
  it('is read, and audited, as from scratch, over random edits', () => {
    const seen = { read: 0, refused: 0, otherFindings: 0, sameParts: 0 }
    checkProperty(
      fc.property(
        fc.constantFrom(...demos),
        fc.constantFrom(...languages),
        fc.array(slip, { minLength: 2, maxLength: 8 }),
        (demo, language, slips) => {
          const auditNow = rememberingAudit()
          let document: SpecDocument = demo
          const first = readDocument(document, language)
          let last = first.ok ? auditNow(first.spec) : []
          for (const each of slips) {
            const after = edited(document, each)
            // As the host and the window have it: what the edit left alone is the same object.
            const next = patched(document, changesBetween(document, after)) as SpecDocument
            const reading = readDocument(next, language)
            expect(reading).toEqual(readSpec(documentText(next), language))
            if (next.fits === document.fits) seen.sameParts += 1
            if (!reading.ok) {
              seen.refused += 1
              continue
            }
            seen.read += 1
            const found = auditNow(reading.spec)
            expect(found).toEqual(audit(reading.spec))
            if (JSON.stringify(found) !== JSON.stringify(last)) seen.otherFindings += 1
            last = found
            document = next
          }
        },
      ),
      { numRuns: runs(40, 400) },
    )
    expect(seen.read).toBeGreaterThan(20)
    expect(seen.refused).toBeGreaterThan(5)
    expect(seen.otherFindings).toBeGreaterThan(4)
    expect(seen.sameParts).toBeGreaterThan(20)
  })

  it('keeps what it read of the parts that an edit left alone', () => {
    const [demo] = demos
    const path = '/fasteners/3/number'
    const next = patched(demo as Json, [{ op: 'replace', path, value: '77' }]) as SpecDocument
    const [before, after] = [readDocument(demo!), readDocument(next)]
    if (!before.ok || !after.ok) throw new Error('not read')
    expect(after.spec.fasteners[3]!.number).toBe('77')
    expect(after.spec.fasteners[2]).toBe(before.spec.fasteners[2])
    expect(after.spec.steps).toBe(before.spec.steps)
    expect(after.spec.case).toBe(before.spec.case)
  })

  it('is refused as its text is where it is too large', () => {
    const large = { ...demos[0]!, summary: 'a'.repeat(5_000_001) }
    expect(readDocument(large)).toMatchObject({ ok: false, problems: [{ code: 'spec-too-large' }] })
  })
})
