import { describe, expect, it } from 'vitest'
import { auditAfter, demoDraft, nth, readAfter, specOf } from '../../engine/demo.ts'
import { millimetres } from '../../../../core/quantity/index.ts'

const bigEnds = 1

/** The big ends of a demo whose bands fill 43 H6 and 40 h6, with what the drawing says of one part. */
function drawnAs(part: 'housing' | 'journal', drawn: string) {
  return auditAfter('holm-2', (spec) => {
    nth(spec.fits, bigEnds)[part].drawn = drawn
  })
}

describe('a tolerance class that the drawing names', () => {
  it('says nothing where the bands of the marks fill it', () => {
    expect(drawnAs('housing', '43 mm H6')).toEqual([])
    expect(drawnAs('journal', '40 mm h6')).toEqual([])
  })

  it('is doubted where they are another class, which is named', () => {
    expect(drawnAs('housing', '43 mm H7')).toEqual([
      expect.stringContaining(
        'doubt bands-not-as-drawn fits[1].housing.drawn: drawn=43 H7, from=43 mm, upTo=43.025 mm, from=43 mm, upTo=43.016 mm, width=16 µm, classes=H6',
      ),
    ])
  })

  it('is doubted where they are no class', () => {
    expect(
      auditAfter('holm-2', (spec) => {
        const { journal } = nth(spec.fits, bigEnds)
        journal.drawn = '40 mm h6'
        journal.marks = journal.marks.map(({ mark }, index) =>
          index === 0 ? { mark, band: { over: '39.990 mm', upTo: '40.002 mm' } } : { mark },
        )
      }),
    ).toContainEqual(
      expect.stringMatching(
        /^doubt bands-not-as-drawn fits\[1\]\.journal\.drawn: drawn=40 h6, .*, width=12 µm$/,
      ),
    )
  })

  it('is not asked for where a part has no sizes', () => {
    expect(
      auditAfter('fen-1', (spec) => {
        nth(spec.fits, 0).housing.drawn = '43 mm H6'
      }).filter((line) => line.includes('bands-not-as-drawn')),
    ).toEqual([])
  })
})

describe('a band that is written as a tolerance class', () => {
  it('has the limits of the class', () => {
    const draft = demoDraft('holm-2')
    nth(nth(draft.fits, bigEnds).housing.marks, 0).band = '43 mm H6'
    const spec = specOf(draft)
    expect(nth(nth(spec.fits, bigEnds).housing.marks, 0).band).toEqual({
      over: millimetres(43),
      upTo: millimetres(43.016),
    })
  })

  it.each([
    ['43 mm Q6', 'spec-part-wrong fits[1].housing.marks[0].band'],
    [
      '600 mm H6',
      'spec-part-wrong fits[1].housing.marks[0].band: kind=text, text=600 mm H6, should=tolerance-class-size, size=600 mm',
    ],
    ['43 mm', 'spec-part-wrong fits[1].housing.marks[0].band'],
  ])('%s is refused in words about the text', (band, sentence) => {
    const lines = readAfter('holm-2', (spec) => {
      nth(nth(spec.fits, bigEnds).housing.marks, 0).band = band
    })
    expect(lines).toEqual([expect.stringContaining(sentence)])
    expect(lines[0]).toContain('fits[1].housing.marks[0].band')
  })

  it('with half of its limits names the one that is missing', () => {
    expect(
      readAfter('holm-2', (spec) => {
        Object.assign(nth(nth(spec.fits, bigEnds).housing.marks, 0), { band: { over: '43 mm' } })
      }),
    ).toEqual([expect.stringContaining('spec-part-missing fits[1].housing.marks[0].band.upTo')])
  })

  it('that is neither a text nor limits is told so', () => {
    expect(
      readAfter('holm-2', (spec) => {
        Object.assign(nth(nth(spec.fits, bigEnds).housing.marks, 0), { band: 43 })
      }),
    ).toEqual([
      expect.stringContaining(
        'spec-part-wrong fits[1].housing.marks[0].band: kind=value, json=43, should=write-as-shown',
      ),
    ])
  })
})
