import { expect, test } from '@playwright/test'
import { statSync } from 'node:fs'
import { join } from 'node:path'
import { testLaw, Trial, type Edit } from './trial.ts'

type Started = Awaited<ReturnType<Trial['shown']>>

/** Shows the window, has the record opened, lets the program be ended, and looks at what is left. */
async function afterEnd(trial: Trial, end: (started: Started) => void): Promise<unknown> {
  const started = await trial.shown()
  await trial.request(started, 'engines.list')
  end(started)
  return { ended: await trial.soon(started.ended), isRecordClosed: trial.isRecordClosed }
}

const inOrder = { ended: { code: 0, signal: null }, isRecordClosed: true }

/** A large record takes its time to be closed. */
const slowClose: Edit = {
  text: 'record.close()])',
  becomes: 'new Promise((soon) => setTimeout(soon, 500)).then(() => record.close())])',
}

testLaw('signal-once', {
  given: [slowClose],
  seen: (trial) => afterEnd(trial, ({ child }) => child.kill('SIGINT')),
  kept: inOrder,
  broken: [{ text: '.then(() => record.close())])', becomes: '])' }],
})

testLaw('will-quit', {
  given: [slowClose],
  seen: (trial) => afterEnd(trial, ({ program }) => program.line.tell('close', { window: 1 })),
  kept: inOrder,
  broken: [{ text: 'event.preventDefault();\n\t\tmarkClosing(folder);', becomes: 'markClosing(folder);' }],
})

testLaw('shutdown-waits-if-asked', {
  given: [slowClose],
  seen: (trial) => afterEnd(trial, ({ program }) => program.line.tell('power', 'shutdown')),
  kept: inOrder,
  broken: [{ text: 'event?.preventDefault();', becomes: '' }],
})

/** What stands in SQLite’s log and not yet in the record itself, in bytes. */
function logBytes(trial: Trial): number {
  return statSync(join(trial.data, 'bedplate.sqlite-wal')).size
}

/** Has something written, then lets the system tell of what comes; answers how the log was before and after. */
async function logAfter(trial: Trial, tell: (started: Started) => Promise<unknown>): Promise<unknown> {
  const started = await trial.shown()
  await trial.request(started, 'preferences.keep', { person: 'Ana Ruiz' })
  const before = logBytes(trial)
  await tell(started)
  return { hadLog: before > 0, left: logBytes(trial) }
}

testLaw('sleep-waits-for-nobody', {
  seen: (trial) => logAfter(trial, ({ program }) => program.line.ask('power', 'suspend')),
  kept: { hadLog: true, left: 0 },
  broken: [{ text: 'powerMonitor.on("suspend", flush);', becomes: '' }],
})

testLaw('log-off-waits-for-nobody', {
  async seen(trial) {
    let ended: unknown
    const log = await logAfter(trial, async (started) => {
      await started.program.line.ask('window-event', { window: 1, event: 'query-session-end' })
      ended = started.ended
    })
    trial.standIn.programs[0]?.line.tell('window-event', { window: 1, event: 'session-end' })
    return { log, ended: await trial.soon(Promise.resolve(ended)), isRecordClosed: trial.isRecordClosed }
  },
  kept: { log: { hadLog: true, left: 0 }, ...inOrder },
  broken: [{ text: 'window.on("query-session-end", flush);', becomes: '' }],
})

test('a second Ctrl+C ends a program that hangs while it ends, and what was confirmed is in the record', async () => {
  const neverCloses: Edit = { text: 'record.close()])', becomes: 'new Promise(() => undefined)])' }
  const trial = await Trial.of(null, [neverCloses], false)
  try {
    const first = await trial.shown()
    await trial.request(first, 'preferences.keep', { person: 'Ana Ruiz' })
    first.child.kill('SIGINT')
    await first.program.log.next('gone') // it is ending: the window has gone, the record is being closed
    expect(first.child.exitCode).toBeNull()
    first.child.kill('SIGINT')
    expect(await first.ended).toEqual({ code: null, signal: 'SIGINT' })
    const again = await trial.shown()
    expect(await trial.request(again, 'preferences.read')).toMatchObject({
      ok: true,
      value: { person: 'Ana Ruiz' },
    })
  } finally {
    await trial.end()
  }
})
