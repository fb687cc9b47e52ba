import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import type { ReadWith } from '../../../core/instrument/index.ts'
import { ReadingField } from '../../../renderer/instruments/reading-field.svelte.ts'

/** As much of a text field as keys need: what is typed goes where the focus is, and over what is selected. */
class Text {
  value = ''
  isSelected = false
  focus() {
    page.activeElement = this
  }
  select() {
    this.isSelected = true
  }
  blur() {
    if (page.activeElement === this) page.activeElement = null
  }
}
const page: { activeElement: Text | null } = { activeElement: null }

beforeEach(() => {
  vi.useFakeTimers()
  page.activeElement = null
  vi.stubGlobal('document', page)
  vi.stubGlobal('HTMLInputElement', Text)
  vi.stubGlobal('HTMLTextAreaElement', class {})
  vi.stubGlobal('Element', class {})
})
afterEach(() => {
  vi.useRealTimers()
  vi.unstubAllGlobals()
})

/** A window with a field that asks for 24 N·m ± 1.2 where `asks`; what an Enter pressed that nobody took is counted. */
function bench({ asks }: { readonly asks: boolean }) {
  const field = new ReadingField()
  const input = new Text()
  const confirmed: string[] = []
  const presses = { count: 0 }
  let now = 1000
  if (asks)
    field.attach(
      'torque',
      (typed) => Math.abs(Number(typed) - 24) <= 1.2,
    )(input as unknown as HTMLInputElement)
  field.confirmBy(() => confirmed.push(field.typed))

  function press(key: string, afterMs: number) {
    vi.advanceTimersByTime(afterMs)
    now += afterMs
    let isTaken = false
    const event = {
      ...{ key, timeStamp: now, target: page.activeElement, repeat: false },
      ...{ ctrlKey: false, altKey: false, metaKey: false },
      preventDefault: () => (isTaken = true),
      stopPropagation: () => undefined,
    }
    field.hear(event as unknown as KeyboardEvent)
    if (isTaken) return
    const to = page.activeElement
    if (key === 'Enter') presses.count++
    else if (to === input) {
      field.typed = input.isSelected ? key : field.typed + key
      input.isSelected = false
    } else if (to !== null) to.value += key
  }
  const send = (text: string, everyMs: number, ending = 'Enter') => {
    for (const key of [...text, ...(ending ? [ending] : [])]) press(key, everyMs)
  }
  const wait = (ms: number) => {
    vi.advanceTimersByTime(ms)
    now += ms
  }
  return { field, confirmed, presses, press, send, wait }
}

describe('a gauge that sends what is asked for', () => {
  it('confirms it by its own Enter, and presses nothing else', () => {
    const { send, wait, confirmed, presses } = bench({ asks: true })
    send('24.1', 5)
    wait(100)
    expect(confirmed).toEqual(['24.1'])
    expect(presses.count).toBe(0)
  })

  it('leaves it to a person where it is outside the limits', () => {
    const { field, send, wait, confirmed, presses } = bench({ asks: true })
    send('27.3', 5)
    wait(1000)
    expect(field.typed).toBe('27.3')
    expect(confirmed).toEqual([])
    expect(presses.count).toBe(0)
  })

  it.each([50, 150])('is as good as hands where it takes %i ms from key to key', (everyMs) => {
    const { field, send, presses } = bench({ asks: true })
    send('-24.1', everyMs)
    expect(field.typed).toBe('-24.1')
    expect(presses.count).toBe(1)
  })

  it('is asked about where a reading was there already: nobody says for a person which counts', () => {
    const { field, send, wait, confirmed } = bench({ asks: true })
    send('27.3', 5)
    wait(1000)
    send('24.1', 5)
    wait(1000)
    expect(field.rivals).toEqual(['27.3', '24.1'])
    expect(confirmed).toEqual([])
    field.settle('24.1')
    expect(field.typed).toBe('24.1')
    expect(field.rivals).toBeNull()
  })

  it('keeps for the next one what it sent while the first was being recorded', () => {
    const { field, send, wait } = bench({ asks: true })
    send('24.1', 5)
    wait(100)
    send('23.8', 5)
    field.clear('24.1')
    expect(field.unasked).toBe('23.8')
    expect(field.typed).toBe('')
  })
})

describe('two gauges at once', () => {
  it('send what neither of them measured: all of it is dropped, and said', () => {
    const { field, send, press, wait, confirmed, presses } = bench({ asks: true })
    // 24.1 and 0.12, key by key in turn: `204..112`, and two Enters.
    send('204..112', 3)
    press('Enter', 3)
    wait(500)
    expect(field.typed).toBe('')
    expect(field.dropped).toBe('crossed')
    expect(confirmed).toEqual([])
    expect(presses.count).toBe(0)
  })

  it('are told apart by the Enter of the first, with the second still typing', () => {
    const { field, send, wait, confirmed, presses } = bench({ asks: true })
    send('24.1', 5)
    send('9', 5)
    wait(500)
    expect(field.typed).toBe('')
    expect(field.dropped).toBe('crossed')
    expect(confirmed).toEqual([])
    expect(presses.count).toBe(0)
  })
})

describe('what has no place to go', () => {
  it.each([5, 50, 150])('is kept and presses nothing, %i ms from key to key', (everyMs) => {
    const { field, send, presses } = bench({ asks: false })
    send('24.1', everyMs)
    expect(field.unasked).toBe('24.1')
    expect(presses.count).toBe(0)
  })

  it.each([5, 50, 150])('is no reason that nobody chose to write, %i ms from key to key', (everyMs) => {
    const { field, send, presses } = bench({ asks: false })
    const reason = new Text()
    reason.focus()
    send('24.1 Nm', everyMs)
    expect(reason.value).toBe('')
    expect(field.unasked).toBe('24.1 Nm')
    expect(presses.count).toBe(0)
  })

  it('goes into a text that was clicked, as whatever is typed there', () => {
    const { field, send } = bench({ asks: false })
    const reason = new Text()
    field.point({ target: reason } as unknown as PointerEvent)
    reason.focus()
    send('24.1', 5, '')
    expect(reason.value).toBe('24.1')
    expect(field.unasked).toBeNull()
  })

  it('is no digit within a reason that was begun with a letter', () => {
    const { field, send } = bench({ asks: false })
    const reason = new Text()
    reason.focus()
    send('Bolt 4 sits', 120, '')
    expect(reason.value).toBe('Bolt 4 sits')
    expect(field.unasked).toBeNull()
  })

  it('is used where a reading is asked for next', () => {
    const { field, send } = bench({ asks: false })
    send('24.1', 5)
    field.attach('torque', () => true)(new Text() as unknown as HTMLInputElement)
    field.useUnasked()
    expect(field.typed).toBe('24.1')
    expect(field.unasked).toBeNull()
  })
})

describe('what a reading was taken with', () => {
  const gauge: ReadWith = {
    ...{ came: 'by-line', name: 'Depth gauge', number: '12', unit: 'mm' },
    ...{ deviation: 0.01, calibratedOn: '2026-05-01' },
  }

  it('is nothing while none stands there, and a hand for what a person types', () => {
    const { field, send } = bench({ asks: true })
    expect(field.readWith).toBeUndefined()
    send('24', 300, '')
    expect(field.typed).toBe('24')
    expect(field.readWith).toEqual({ came: 'by-hand' })
  })

  it('is an instrument that types, until a person changes what it sent', () => {
    const { field, send, press, wait } = bench({ asks: true })
    send('27.5', 5)
    wait(100)
    expect(field.readWith).toEqual({ came: 'typed' })
    field.focus()
    press('2', 400)
    expect(field.readWith).toEqual({ came: 'by-hand' })
  })

  it('is the instrument whose line it came over, also where it was kept first', () => {
    const { field } = bench({ asks: true })
    field.arrived('24.1 N·m', gauge, () => true)
    expect(field.readWith).toEqual(gauge)
    field.clear('24.1 N·m')
    expect(field.readWith).toBeUndefined()
    field.keep('24.2 N·m', gauge)
    field.useUnasked()
    expect([field.typed, field.readWith]).toEqual(['24.2 N·m', gauge])
  })

  it('is that of the one of two readings that a person says counts', () => {
    const { field } = bench({ asks: true })
    field.typed = '24'
    field.arrived('25 N·m', gauge, () => true)
    expect(field.rivals).toEqual(['24', '25 N·m'])
    field.settle('25 N·m')
    expect(field.readWith).toEqual(gauge)
  })
})
