import { describe, expect, it } from 'vitest'
import { offersGuided, samplesLeft } from '../../../../core/builds/index.ts'

const halfWay = { demo: true, serial: 'DEMO-1' }
const finished = { demo: true, serial: 'DEMO-2' }
/** Of a demo engine as well: it has no serial number. */
const guided = { demo: true, serial: '' }
const own = { demo: false, serial: 'F-201' }

describe('the demo builds that the first page offers', () => {
  it('are those that are missing, as long as there is no build of an engine that is no demo', () => {
    expect(samplesLeft([])).toEqual(['half-way', 'finished'])
    expect(samplesLeft([guided])).toEqual(['half-way', 'finished'])
    expect(samplesLeft([guided, halfWay])).toEqual(['finished'])
    expect(samplesLeft([finished])).toEqual(['half-way'])
    expect(samplesLeft([halfWay, finished])).toEqual([])
    expect(samplesLeft([own])).toEqual([])
    expect(samplesLeft([guided, own])).toEqual([])
  })

  it('are not taken for there because a build of a person’s own engine has such a serial number', () => {
    expect(offersGuided([{ demo: false, serial: 'DEMO-1' }])).toBe(false)
  })

  it('have the guided first build beside them until one is begun, or any other build', () => {
    expect(offersGuided([])).toBe(true)
    expect(offersGuided([halfWay, finished])).toBe(true)
    expect(offersGuided([guided])).toBe(false)
    expect(offersGuided([halfWay, own])).toBe(false)
  })
})
