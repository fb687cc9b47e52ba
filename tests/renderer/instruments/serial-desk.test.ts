import { describe, expect, it, vi } from 'vitest'
import type { Instrument, ReadingFieldName, ReadWith } from '../../../core/instrument/index.ts'
import { en } from '../../../core/words/index.ts'
import type { ReadingField } from '../../../renderer/instruments/reading-field.svelte.ts'
import { SerialDesk } from '../../../renderer/instruments/serial-desk.svelte.ts'
import { depthGauge, PlayedPort, PlayedPorts } from './played-ports.ts'

/** A bench that knows one gauge, and a field that takes what is measured against limits, where one is open. */
function bench(asks: ReadingFieldName | null = 'limits', known: readonly Instrument[] = [depthGauge]) {
  let list = known
  const ports = new PlayedPorts()
  const port = new PlayedPort()
  ports.chosen = port
  const desk = new SerialDesk(ports, {
    list: () => list,
    keep: (kept) => Promise.resolve(void (list = kept)),
  })
  const taken: string[] = []
  const kept: string[] = []
  const instruments: ReadWith[] = []
  desk.feed({
    arrived: (sent: string, readWith: ReadWith, may: (field: ReadingFieldName) => boolean) => {
      instruments.push(readWith)
      const isHere = asks !== null && may(asks)
      ;(isHere ? taken : kept).push(sent)
      return isHere || asks === null
    },
  } as unknown as ReadingField)
  return { desk, ports, port, taken, kept, instruments, list: () => list }
}

const settled = () => new Promise((resolve) => setTimeout(resolve, 5))

describe('an instrument on a serial line', () => {
  it('feeds the field that asks, in its unit, once a person has chosen its line', async () => {
    const { desk, port, taken, instruments, list } = bench()
    expect(desk.standingOf('g')).toBe('closed')
    await desk.connect('g')
    expect(port.opened).toEqual(depthGauge.serial)
    port.send('0,3')
    await settled()
    expect(taken).toEqual([])
    port.send('5\r\n')
    await vi.waitFor(() => expect(taken).toEqual(['0.35 mm']))
    expect(desk.standingOf('g')).toBe('open')
    expect(desk.lastSentBy('g')).toBe('0.35 mm')
    expect(list()[0]!.usb).toEqual({ vendor: 0x1234, product: 0x42 })
    const { name, number, unit, deviation, calibratedOn } = depthGauge
    expect(instruments).toEqual([{ came: 'by-line', name, number, unit, deviation, calibratedOn }])
  })

  it('is not asked for twice, and says so where none was chosen, it is not allowed, or it is taken', async () => {
    const { desk, ports, port } = bench()
    ports.chosen = null
    await desk.connect('g')
    expect(desk.standingOf('g')).toBe('not-chosen')
    ports.refusal = 'SecurityError'
    await desk.connect('g')
    expect(desk.standingOf('g')).toBe('refused')
    ports.chosen = port
    port.isTaken = true
    await desk.connect('g')
    expect(desk.standingOf('g')).toBe('busy')
  })

  it('is kept where it may not feed the field that is open, and that is said', async () => {
    const { desk, port, kept } = bench('checks')
    await desk.connect('g')
    port.send('0.35\n')
    await vi.waitFor(() => expect(kept).toEqual(['0.35 mm']))
    expect(desk.news).toEqual({ kind: 'otherField', name: 'Depth gauge', sent: '0.35 mm' })
  })

  it('that is unplugged in the middle of a line is told so, and nothing of the half is taken', async () => {
    const { desk, port, taken } = bench()
    await desk.connect('g')
    port.send('0.3')
    await settled()
    port.unplug()
    await vi.waitFor(() => expect(desk.standingOf('g')).toBe('unplugged'))
    expect(desk.news).toEqual({ kind: 'unpluggedMidLine', name: 'Depth gauge' })
    expect(taken).toEqual([])
  })

  it('is read again once it is plugged in again, without a question, and that is reported', async () => {
    const { desk, ports, port, taken } = bench()
    const unfollow = desk.follow()
    await desk.connect('g')
    port.unplug()
    await vi.waitFor(() => expect(desk.news?.kind).toBe('unplugged'))
    const again = new PlayedPort()
    ports.chosen = null
    ports.plugIn(again)
    await vi.waitFor(() => expect(desk.news?.kind).toBe('pluggedIn'))
    again.send('0.35\n')
    await vi.waitFor(() => expect(taken).toEqual(['0.35 mm']))
    unfollow()
  })

  it('is read from the start where this page was let have its line before', async () => {
    const usb = { vendor: 0x1234, product: 0x42 }
    const { desk, ports, port } = bench('limits', [{ ...depthGauge, usb }])
    ports.known = [port]
    desk.follow()
    await vi.waitFor(() => expect(desk.standingOf('g')).toBe('open'))
  })

  it('of which there are two of a kind is not guessed: a person says which is which', async () => {
    const usb = { vendor: 0x1234, product: 0x42 }
    const { desk, ports, port } = bench('limits', [
      { ...depthGauge, usb },
      { ...depthGauge, usb, id: 'h', name: 'The other' },
    ])
    ports.known = [port]
    desk.follow()
    await settled()
    expect([desk.standingOf('g'), desk.standingOf('h')]).toEqual(['closed', 'closed'])
  })

  it('goes on after a wrong bit, and is given up where nothing else comes', async () => {
    const { desk, port, taken } = bench()
    await desk.connect('g')
    port.garble()
    await settled()
    port.send('0.35\n')
    await vi.waitFor(() => expect(taken).toEqual(['0.35 mm']))
    for (let times = 0; times < 60; times++) {
      port.garble()
      await Promise.resolve()
      await settled()
    }
    expect(desk.standingOf('g')).toBe('garbled')
    expect(desk.news).toEqual({ kind: 'garbled', name: 'Depth gauge' })
  })

  it('that sends all the time, or in a unit that is none, feeds nothing', async () => {
    const { desk, port, taken } = bench()
    await desk.connect('g')
    port.send('3.4 bar\n')
    await vi.waitFor(() => expect(desk.news).toMatchObject({ kind: 'unitUnknown', unit: 'bar' }))
    port.send('0.1\n0.2\n0.3\n0.4\n0.5\n')
    await vi.waitFor(() => expect(desk.standingOf('g')).toBe('streams'))
    expect(taken).toEqual([])
  })

  it('is let go of when it is disconnected or taken off the list', async () => {
    const { desk, port, list } = bench()
    await desk.connect('g')
    await desk.remove('g')
    expect(port.opened).toBeNull()
    expect(list()).toEqual([])
  })
})

describe('what is said of an instrument, followed to the letter', () => {
  const { states, ...news } = en.instruments
  const name = depthGauge.name

  it('unplugged: what it measures can be typed, or it is plugged in again', async () => {
    const { desk, ports, port, taken } = bench()
    const unfollow = desk.follow()
    await desk.connect('g')
    port.unplug()
    await vi.waitFor(() => expect(desk.news).toEqual({ kind: 'unplugged', name }))
    expect(news.unplugged({ name })).toMatch(/can be typed, or plug it in again\.$/)
    expect(states.unplugged).toContain('read again as soon as it is plugged in')
    const again = new PlayedPort()
    ports.plugIn(again)
    await vi.waitFor(() => expect(desk.standingOf('g')).toBe('open'))
    again.send('0.35\n')
    await vi.waitFor(() => expect(taken).toEqual(['0.35 mm']))
    expect(desk.news).toBeNull()
    unfollow()
  })

  it('unplugged in mid line: it is plugged in and sends again, and the half is in neither reading', async () => {
    const { desk, ports, port, taken } = bench()
    const unfollow = desk.follow()
    await desk.connect('g')
    port.send('0.3')
    await settled()
    port.unplug()
    await vi.waitFor(() => expect(desk.news?.kind).toBe('unpluggedMidLine'))
    expect(news.unpluggedMidLine({ name })).toMatch(/plug it in and send it again\.$/)
    const again = new PlayedPort()
    ports.plugIn(again)
    await vi.waitFor(() => expect(desk.standingOf('g')).toBe('open'))
    again.send('0.35\n')
    await vi.waitFor(() => expect(taken).toEqual(['0.35 mm']))
    unfollow()
  })

  it('in a unit that is none: it is set to another unit, and its next reading counts', async () => {
    const { desk, port, taken } = bench()
    await desk.connect('g')
    port.send('3.4 bar\n')
    await vi.waitFor(() => expect(desk.news?.kind).toBe('unitUnknown'))
    expect(news.unitUnknown({ name, unit: 'bar' })).toMatch(/set the instrument to another unit\.$/)
    port.send('0.0138 in\n')
    await vi.waitFor(() => expect(taken).toEqual(['0.0138 in']))
    expect(desk.news).toBeNull()
  })

  it('that sends all the time: it is set to send at its button, and its next reading counts', async () => {
    let now_ms = 0
    const clock = vi.spyOn(performance, 'now').mockImplementation(() => now_ms)
    const { desk, port, taken } = bench()
    await desk.connect('g')
    port.send('0.1\n0.2\n0.3\n0.4\n0.5\n')
    await vi.waitFor(() => expect(desk.standingOf('g')).toBe('streams'))
    expect(news.streams({ name })).toMatch(/Set it to send at the press of its button\.$/)
    now_ms = 5000
    port.send('0.35\n')
    await vi.waitFor(() => expect(taken).toEqual(['0.35 mm']))
    expect([desk.standingOf('g'), desk.news]).toEqual(['open', null])
    clock.mockRestore()
  })

  it('of which no reading comes: its settings are compared, and it is connected again', async () => {
    const { desk, port, taken } = bench()
    await desk.connect('g')
    port.send('~~\n'.repeat(25))
    await vi.waitFor(() => expect(desk.standingOf('g')).toBe('garbled'))
    expect(states.garbled).toMatch(/then connect again\.$/)
    await desk.write({ ...depthGauge, serial: { ...depthGauge.serial, baudRate: 4800 } })
    await desk.connect('g')
    expect(port.opened).toMatchObject({ baudRate: 4800 })
    port.send('0.35\n')
    await vi.waitFor(() => expect(taken).toEqual(['0.35 mm']))
    expect([desk.standingOf('g'), desk.news]).toEqual(['open', null])
  })

  it('whose line is taken: the other program is closed, and it is connected again', async () => {
    const { desk, port, taken } = bench()
    port.isTaken = true
    await desk.connect('g')
    expect(desk.standingOf('g')).toBe('busy')
    expect(states.busy).toMatch(/close the other program, then connect again\.$/)
    port.isTaken = false
    await desk.connect('g')
    port.send('0.35\n')
    await vi.waitFor(() => expect(taken).toEqual(['0.35 mm']))
  })
})
