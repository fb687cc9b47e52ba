import { describe, expect, it, vi } from 'vitest'
import { done, refused, sentenceOf } from '../../../core/problem/index.ts'
import type { Outcome } from '../../../core/problem/index.ts'
import { RecordLink } from '../../../electron/desktop/record-link.ts'
import type { OpenedRecord } from '../../../electron/desktop/record-link.ts'

const answered: Awaited<ReturnType<OpenedRecord['answer']>> = { ok: true, value: [] }

/** A record that notes what is done with it, behind a window that is shown when the test says so. */
function link(outcomes: readonly (() => Outcome<OpenedRecord>)[] = []) {
  const log: string[] = []
  const record: OpenedRecord = {
    answer: (name) => {
      log.push(name)
      return Promise.resolve(answered)
    },
    flush: () => void log.push('flush'),
    close: () => {
      log.push('close')
      return Promise.resolve()
    },
  }
  let show = (): void => undefined
  const shown = new Promise<void>((resolve) => (show = resolve))
  const rest = [...outcomes]
  const it = new RecordLink({
    open: () => {
      log.push('open')
      return Promise.resolve((rest.shift() ?? (() => done(record)))())
    },
    shown,
    refused: (why) => void log.push(sentenceOf(why)),
  })
  return { it, log, show }
}

const inUse = () => refused('record-in-use', { folder: '/d' })

describe('the record behind the window', () => {
  it('is opened when the window is on the screen and asks for something, once', async () => {
    const { it: record, log, show } = link()
    const first = record.answer('host.read', {})
    const second = record.answer('engines.list', {})
    await Promise.resolve()
    expect(log).toEqual([])
    show()
    expect(await first).toEqual(answered)
    await second
    expect(log).toEqual(['open', 'host.read', 'engines.list'])
  })

  it('is tried for again while another Bedplate that is ending holds it', async () => {
    vi.useFakeTimers()
    const { it: record, log, show } = link([inUse, inUse])
    show()
    const answer = record.answer('host.read', {})
    await vi.runAllTimersAsync()
    vi.useRealTimers()
    expect(await answer).toEqual(answered)
    expect(log).toEqual(['open', 'open', 'open', 'host.read'])
  })

  it('is given up with a sentence where it stays in use, or cannot be opened at all', async () => {
    vi.useFakeTimers()
    const attempts = link(Array.from({ length: 12 }, () => inUse))
    attempts.show()
    const answer = attempts.it.answer('host.read', {})
    await vi.runAllTimersAsync()
    vi.useRealTimers()
    expect(await answer).toMatchObject({ ok: false })
    expect(attempts.log.at(-1)).toMatch(/^Another Bedplate is already running on the data folder \/d\./)
    expect(attempts.log.filter((line) => line === 'open')).toHaveLength(12)

    const newer = link([() => refused('record-newer', { file: '/d/record.sqlite', version: 9, known: 3 })])
    newer.show()
    expect(await newer.it.answer('host.read', {})).toMatchObject({ ok: false })
    expect(newer.log).toEqual(['open', expect.stringMatching(/made by a newer Bedplate/)])
  })

  it('is closed once, and answers nothing after that', async () => {
    const { it: record, log, show } = link()
    show()
    await record.answer('host.read', {})
    await Promise.all([record.close(), record.close()])
    expect(await record.answer('builds.list', {})).toMatchObject({
      ok: false,
      problem: { code: 'host-lost' },
    })
    record.flush()
    expect(log).toEqual(['open', 'host.read', 'close'])
  })

  it('is closed also when it is only being opened, and never opened for a window that has gone', async () => {
    const { it: record, log, show } = link()
    show()
    const answer = record.answer('host.read', {})
    await Promise.resolve()
    await record.close()
    await answer
    expect(log).toEqual(expect.arrayContaining(['open', 'close']))

    const lostLink = link()
    await lostLink.it.close()
    lostLink.show()
    expect(await lostLink.it.answer('host.read', {})).toMatchObject({ ok: false })
    expect(lostLink.log).toEqual([])
  })

  it('is flushed at once where it is open, and left alone where it is not', async () => {
    const { it: record, log, show } = link()
    record.flush()
    show()
    await record.answer('host.read', {})
    record.flush()
    expect(log).toEqual(['open', 'host.read', 'flush'])
  })
})
