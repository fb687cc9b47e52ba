import { describe, expect, it } from 'vitest'
import { auditAfter, nth } from '../../engine/demo.ts'

describe('how the halves of a bearing are called', () => {
  it('is a fault as left and right where the case is split level, has caps or a bedplate', () => {
    expect(auditAfter('skerry-3', (spec) => (nth(spec.fits, 0).split = 'left-right'))).toContain(
      'fault split-against-family fits[0].split: fit=Main bearings, family=split-horizontal',
    )
    expect(auditAfter('tarn-4', (spec) => (nth(spec.fits, 0).split = 'left-right'))).toContainEqual(
      expect.stringContaining('split-against-family fits[0].split: fit=Main bearings, family=caps'),
    )
    expect(auditAfter('rill-5', (spec) => (nth(spec.fits, 0).split = 'left-right'))).toContainEqual(
      expect.stringContaining('split-against-family fits[0].split: fit=Main bearings, family=bedplate'),
    )
  })

  it('is left to the rods where they are big ends, and to the carriers in a tunnel', () => {
    const about = (lines: readonly string[]) => lines.filter((line) => line.includes('split-against'))
    expect(about(auditAfter('skerry-3', (spec) => (nth(spec.fits, 1).split = 'left-right')))).toEqual([])
    expect(about(auditAfter('quay-3', (spec) => (nth(spec.fits, 0).split = 'left-right')))).toEqual([])
    expect(about(auditAfter('fen-1', (spec) => (nth(spec.fits, 0).split = 'left-right')))).toEqual([])
  })

  it('is in the sentences about a chart', () => {
    expect(auditAfter('moor-flat-4', (spec) => (nth(nth(spec.fits, 0).chart, 0).lower = 'M'))).toContainEqual(
      expect.stringContaining(
        'chart-mixes-against-rule fits[0].chart[0]: fit=Main bearings, housing=A, journal=8, split=left-right, upper=K, lower=M, rule=one-grade',
      ),
    )
  })
})
