import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import fc from 'fast-check'
import { format, type FormatConfig } from 'oxfmt'
import { describe, expect, it } from 'vitest'
import { readSpec } from '../../../core/engine/index.ts'
import { specJsonSchema } from './json-schema.ts'
import { checkProperty } from '../../property.ts'
import { changed, damaged, misprinted, placesIn, valueAt, type Json } from './damaged.ts'
import { shippedDraft, demoIds } from './demo.ts'

const file = '../../../specs/schema/engine-spec.json'
// Formats and draft 2020-12 are what an editor knows as well; “default” only tells it what is meant when a part is left out.
const accepts = new Ajv2020({ allErrors: false, validateFormats: false, strict: true }).compile(
  specJsonSchema(),
)

const formCodes = new Set(['spec-part-missing', 'spec-part-wrong', 'spec-keys-unknown'])

describe('the JSON Schema of a spec', () => {
  it('is the one beside the demo specs; to write it again: npm run unit -- json-schema -u', async () => {
    const rules = JSON.parse(
      readFileSync(join(import.meta.dirname, '../../lint/oxfmtrc.json'), 'utf8'),
    ) as FormatConfig
    const { code, errors } = await format('engine-spec.json', JSON.stringify(specJsonSchema()), rules)
    expect(errors).toEqual([])
    await expect(code).toMatchFileSnapshot(file)
  })

  it('accepts every demo engine', () => {
    expect(demoIds.length).toBeGreaterThan(9)
    for (const id of demoIds) expect(accepts(shippedDraft(id)), id).toBe(true)
  })

  it('accepts whatever the program reads, however it was damaged', () => {
    let read = 0
    checkProperty(
      fc.property(fc.oneof(damaged, misprinted), (spec) => {
        if (!readSpec(JSON.stringify(spec)).ok) return
        read += 1
        expect(accepts(spec), JSON.stringify(accepts.errors)).toBe(true)
      }),
      { numRuns: 150 },
    )
    expect(read).toBeGreaterThan(20)
  })

  it('refuses what has a part too many or of another kind, as the program does', () => {
    const wrong = fc.constantFrom<Json>(null, true, 4.5)
    let refused = 0
    checkProperty(
      fc.property(demoPlace, wrong, fc.boolean(), ({ draft, path }, to, isAdded) => {
        const spec = isAdded ? withPart(draft, path, to) : changed(draft, path, to)
        const reading = readSpec(JSON.stringify(spec))
        // What one part says of another is no matter of form.
        if (reading.ok || !reading.problems.some(({ code }) => formCodes.has(code))) return
        refused += 1
        expect(accepts(spec), path.join('.')).toBe(false)
      }),
      { numRuns: 120 },
    )
    expect(refused).toBeGreaterThan(60)
  })
})

/** A demo engine and a place in it. */
const demoPlace = fc.constantFrom('skerry-3', 'quay-3').chain((id) => {
  const draft = shippedDraft(id) as unknown as Json
  return fc.constantFrom(...placesIn(draft)).map((path) => ({ draft, path }))
})

/** With a part of a name that no part has, in the group at that place or around it. */
function withPart(draft: Json, path: readonly (string | number)[], part: Json): Json {
  const found = valueAt(draft, path)
  if (typeof found === 'object' && found !== null && !Array.isArray(found))
    return changed(draft, path, { ...found, 'no-such-part': part })
  return withPart(draft, path.slice(0, -1), part)
}
