import { describe, expect, it } from 'vitest'
import { apartFrom, type BuildEvent, type RecordedEvent } from '../../../../core/builds/index.ts'

const second = { id: 'ba9876543210', name: 'Bench 2' }

/** An entry whose hash is made of one letter. */
function entry(seq: number, letter: string, event?: BuildEvent): RecordedEvent {
  return {
    seq,
    at: '2026-03-09T07:00:00.000Z',
    person: 'Ada',
    event: event ?? { type: 'note-written', version: 1, step: 'marks', text: 'dry' },
    hash: letter.repeat(64),
  }
}
const settled = (over: string): BuildEvent => ({
  type: 'fork-settled',
  version: 1,
  bench: second,
  entry: 3,
  over: over.repeat(64),
  reason: 'The engine stands here',
})
const givesWay = (to: string): BuildEvent => ({ ...settled(to), givesWay: true }) as BuildEvent
const own = [entry(1, 'a'), entry(2, 'b'), entry(3, 'c')]
const other = { bench: second, events: [entry(3, 'd'), entry(4, 'e')] }

describe('a build that went on at two benches apart', () => {
  it('waits for somebody to settle which line counts', () => {
    expect(apartFrom('Pump', own, [other])).toEqual({
      code: 'build-apart',
      facts: { name: 'Pump', bench: 'Bench 2', entry: 3, own: null },
      path: '',
    })
  })

  it('goes on where this line was settled to count', () => {
    expect(apartFrom('Pump', [...own, entry(4, 'f', settled('d'))], [other])).toBeNull()
  })

  it('is left where the other line was settled to count', () => {
    const counts = { ...other, events: [...other.events, entry(5, 'f', settled('c'))] }
    expect(apartFrom('Pump', own, [counts])?.code).toBe('build-line-left')
  })

  it('waits as before where a line was settled over another entry, or each over the other', () => {
    expect(apartFrom('Pump', [...own, entry(4, 'f', settled('9'))], [other])?.code).toBe('build-apart')
    const both = { ...other, events: [...other.events, entry(5, 'f', settled('c'))] }
    expect(apartFrom('Pump', [...own, entry(4, 'f', settled('d'))], [both])?.code).toBe('build-apart')
  })

  it('is settled from the bench whose line is left, too', () => {
    expect(apartFrom('Pump', [...own, entry(4, 'f', givesWay('d'))], [other])?.code).toBe('build-line-left')
    const left = { ...other, events: [...other.events, entry(5, 'f', givesWay('c'))] }
    expect(apartFrom('Pump', own, [left])).toBeNull()
  })

  it('is ended by one more answer at either bench where each was settled over the other', () => {
    const both = { ...other, events: [...other.events, entry(5, 'f', settled('c'))] }
    const here = [...own, entry(4, '0', settled('d'))]
    expect(apartFrom('Pump', [...here, entry(5, '1', givesWay('d'))], [both])?.code).toBe('build-line-left')
    const yielded = { ...other, events: [...both.events, entry(6, '2', givesWay('c'))] }
    expect(apartFrom('Pump', here, [yielded])).toBeNull()
  })

  it('is not apart where the other bench has the same entries', () => {
    expect(apartFrom('Pump', own, [{ ...other, events: [entry(3, 'c')] }])).toBeNull()
    expect(apartFrom('Pump', own, [])).toBeNull()
  })
})
