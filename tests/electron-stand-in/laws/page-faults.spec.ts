import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { testLaw, type Edit, type Trial } from './trial.ts'

type Started = Awaited<ReturnType<Trial['shown']>>

/**
 * Lets something happen to the page twice and the person end the program when they are asked. The page is to be loaded again
 * once, the person to be told with the way out, and the log to know.
 */
async function happensTwice(trial: Trial, happen: (started: Started) => Promise<unknown>): Promise<unknown> {
  trial.standIn.person.press = (_message, buttons) => buttons.length - 1
  const started = await trial.shown()
  const { log } = started.program
  await happen(started)
  const again = await trial.soon(log.next('load', 1))
  await happen(started)
  const box = await trial.soon(log.next('message-box'))
  return {
    loadedAgain: again !== 'nothing',
    said: box !== 'nothing' && String(box.message),
    hasWayOut: box !== 'nothing' && /http:\/\/127\.0\.0\.1:\d+/.test(String(box.detail)),
    ended: await trial.soon(started.ended),
    logged: logOf(trial).match(/The page in the window .*|The part of the program .*/g)?.length ?? 0,
  }
}

function logOf(trial: Trial): string {
  const file = join(trial.data, 'log/bedplate.log')
  return existsSync(file) ? readFileSync(file, 'utf8') : ''
}

const keptFor = (message: string, logged: number) => ({
  loadedAgain: true,
  said: `${message} It was loaded again once, and that did not help.`,
  hasWayOut: true,
  ended: { code: 0, signal: null },
  logged,
})

/** A person would wait ten seconds for a page that may only be at work. */
const impatient: Edit = { text: 'patienceMs = 1e4', becomes: 'patienceMs = 100' }

testLaw('page-hung', {
  given: [impatient],
  async seen(trial) {
    const hang = ({ program }: Started) =>
      program.line.ask('window-event', { window: 1, event: 'unresponsive' })
    // One that answers again is left alone, however long it took.
    const started = await trial.shown()
    await hang(started)
    await started.program.line.ask('window-event', { window: 1, event: 'responsive' })
    await after(300) // by then it would have been ended
    const crashed = logOf(trial).includes('no longer answered')
    started.program.line.tell('quit', null)
    await started.ended
    return { crashed, ...((await happensTwice(trial, hang)) as object) }
  },
  kept: { crashed: false, ...keptFor('The page in the window no longer answered.', 6) },
  broken: [{ text: 'window.on("unresponsive",', becomes: 'window.on("blur",' }],
})

testLaw('graphics-gone', {
  seen: (trial) =>
    happensTwice(trial, ({ program }) =>
      program.line.ask('child-process-gone', { type: 'GPU', reason: 'crashed', exitCode: 133 }),
    ),
  kept: keptFor('The part of the program that draws on the screen ended.', 2),
  broken: [{ text: 'app.on("child-process-gone",', becomes: 'app.on("activate",' }],
})

testLaw('preload-may-fail', {
  seen: (trial) =>
    happensTwice(trial, ({ program }) =>
      program.line.ask('window-event', {
        window: 1,
        event: 'preload-error',
        path: 'preload.cjs',
        message: 'it cannot be read',
      }),
    ),
  kept: keptFor('The page in the window could not be connected to the program.', 2),
  broken: [{ text: 'contents.on("preload-error",', becomes: 'contents.on("destroyed",' }],
})
