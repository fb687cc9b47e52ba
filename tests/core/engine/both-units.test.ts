import { describe, expect, it } from 'vitest'
import { shippedDraft, demoIds, shippedSpec, readLines, specOf, type Draft } from './demo.ts'

/** Units of the same kind, by definition: 1 in is 25.4 mm, 1 lbf 4.4482216 N, 1 ft 0.3048 m. */
const others: Readonly<Record<string, readonly [unit: string, times: number]>> = {
  mm: ['in', 1 / 25.4],
  µm: ['in', 1 / 25_400],
  in: ['mm', 25.4],
  'N·m': ['lbf·ft', 1 / (4.4482216 * 0.3048)],
  'lbf·ft': ['N·m', 4.4482216 * 0.3048],
  kN: ['lbf', 1000 / 4.4482216],
}
const value = /^(-?\d+(?:\.\d+)?) (mm|µm|in|N·m|lbf·ft|kN)$/u

/** Where a spec has a value with a unit, as `path: text`, and the same spec with each of them changed. */
function changed(draft: Draft, change: (text: string, amount: number, unit: string) => string) {
  const places: string[] = []
  const within = (part: unknown, path: string): unknown => {
    if (typeof part === 'string') {
      const [, amount, unit] = value.exec(part) ?? []
      if (amount === undefined || unit === undefined) return part
      places.push(path)
      return change(part, Number(amount), unit)
    }
    if (Array.isArray(part)) return part.map((each, index) => within(each, `${path}[${index}]`))
    if (part === null || typeof part !== 'object') return part
    return Object.fromEntries(
      Object.entries(part).map(([key, each]) => [key, within(each, path === '' ? key : `${path}.${key}`)]),
    )
  }
  return { spec: within(draft, '') as Draft, places }
}

const printed = (text: string, amount: number, unit: string) => {
  const [other, times] = others[unit]!
  return `${text} (${(amount * times).toFixed(6)} ${other})`
}

/** Larger than the amount by more than is rounded, whichever sign it has. */
const misprint = (amount: number, unit: string) => {
  const [other, times] = others[unit]!
  return `${((amount + 1 + 0.1 * Math.abs(amount)) * times).toFixed(6)} ${other}`
}

/** A spec that is wrong in more than a hundred places is not read to its end. */
const atOnce = 60
const refusal = /^spec-part-wrong (\S+): .*should=units-disagree/

describe.each(demoIds)('a value that is printed in two units, in %s', (id) => {
  it('is taken wherever a value stands, as the first of the two', () => {
    const { spec, places } = changed(shippedDraft(id), printed)
    expect(places.length).toBeGreaterThan(50)
    expect(specOf(spec)).toEqual(shippedSpec(id))
  })

  it('is refused wherever it stands when the two disagree', () => {
    const { places } = changed(shippedDraft(id), printed)
    for (let from = 0; from < places.length; from += atOnce) {
      let place = -1
      const isWrong = () => (place += 1) >= from && place < from + atOnce
      const { spec } = changed(shippedDraft(id), (text, ...value) =>
        isWrong() ? `${text} (${misprint(...value)})` : text,
      )
      const found = readLines(JSON.stringify(spec)).map((line) => refusal.exec(line)?.[1])
      expect(found.toSorted()).toEqual(places.slice(from, from + atOnce).toSorted())
    }
  })
})
