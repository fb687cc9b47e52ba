import { describe, expect, it } from 'vitest'
import type { FoundLine } from '../../../core/contract/index.ts'
import { sampleShopLines } from '../../../renderer/gallery/sample-shop.ts'
import { needsSomebody } from '../../../renderer/shop/needs-somebody.ts'

const [well] = sampleShopLines()
if (well === undefined) throw new Error('a line')
const standing = { ...well.standing!, openProblems: 0, awaitsSecond: false }
const at = { ...well.at!, isForked: false }

describe('a build on the wall needs somebody', () => {
  it.each<[string, Partial<FoundLine>, boolean]>([
    ['not, while work goes on', {}, false],
    ['where a problem is open', { standing: { ...standing, openProblems: 1 } }, true],
    ['where a second person is waited for', { standing: { ...standing, awaitsSecond: true } }, true],
    ['where two benches went on apart', { at: { ...at, isForked: true } }, true],
    ['not, where nothing is known of its step', { standing: null }, false],
  ])('%s', (_, change, needs) => {
    expect(needsSomebody({ ...well, standing, at, ...change })).toBe(needs)
  })
})
