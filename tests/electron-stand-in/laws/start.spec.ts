import { expect, test } from '@playwright/test'
import { noLinksVariable } from '../program/lock.ts'
import { testLaw, Trial } from './trial.ts'

/** What comes of a start: a window, or an end, and the sign that the launcher finds. */
async function comesUp(trial: Trial): Promise<unknown> {
  const started = await trial.start()
  return trial.comesUp(started)
}

testLaw('ready-after-entry', {
  seen: comesUp,
  kept: 'shown',
  broken: [
    {
      text: 'var commandLine = readCommandLine(',
      becomes: 'await app.whenReady();\nvar commandLine = readCommandLine(',
    },
  ],
})

testLaw('faults-end-nothing', {
  given: [
    {
      text: 'const memory = new WindowMemory(',
      becomes: 'throw new Error("a fault of main’s own");\nconst memory = new WindowMemory(',
    },
  ],
  async seen(trial) {
    const { program, ended } = await trial.start()
    return {
      ended: await trial.soon(ended),
      told: program.log.all('error-box').length,
      sign: trial.signLeft?.slice(0, 8),
    }
  },
  kept: { ended: { code: 1, signal: null }, told: 1, sign: 'refused:' },
  broken: [{ text: 'process.on("unhandledRejection",', becomes: 'process.on("beforeExit",' }],
})

testLaw('first-show', {
  async seen(trial) {
    const started = await trial.start()
    await trial.soon(started.program.log.next('load'))
    const before = trial.signLeft
    await started.program.log.next('shown')
    await trial.request(started, 'host.read') // heard after what `show` set off
    return [before === null || before === 'shown', trial.signLeft]
  },
  kept: [true, 'shown'],
  broken: [
    {
      text: 'window.once("show", () => leaveSign(process.env.BEDPLATE_SIGN, { kind: "shown" }));',
      becomes: '',
    },
  ],
})

testLaw('sandbox-before-ready', {
  seen: comesUp,
  kept: 'shown',
  broken: [{ text: 'app.enableSandbox();', becomes: 'app.whenReady().then(() => app.enableSandbox());' }],
})

testLaw('schemes-before-ready', {
  seen: comesUp,
  kept: 'shown',
  broken: [
    {
      text: 'protocol.registerSchemesAsPrivileged([{',
      becomes: 'app.whenReady().then(() => protocol.registerSchemesAsPrivileged)([{',
    },
  ],
})

testLaw('session-after-ready', {
  seen: comesUp,
  kept: 'shown',
  broken: [
    {
      text: 'refuseLeaving(app);',
      becomes: 'refuseLeaving(app);\nrefusePermissions(session.defaultSession);',
    },
  ],
})

testLaw('windows-after-ready', {
  seen: comesUp,
  kept: 'shown',
  broken: [{ text: 'await app.whenReady();', becomes: '' }],
})

testLaw('user-data-before-ready', {
  seen: comesUp,
  kept: 'shown',
  broken: [
    {
      text: 'app.setPath("userData", folder);',
      becomes: 'app.whenReady().then(() => app.setPath("userData", folder));',
    },
  ],
})

testLaw('lock-needs-links', {
  async seen(trial) {
    return trial.comesUp(await trial.start(undefined, { [noLinksVariable]: 'yes' }))
  },
  kept: 'shown',
  broken: [{ text: 'if (!found.isHeld) return "go-on";', becomes: 'if (!found.isHeld) return "leave";' }],
})

testLaw('second-instance', {
  async seen(trial) {
    const first = await trial.shown()
    const second = await trial.start()
    const ended = await second.ended
    return { ended, focused: (await trial.soon(first.program.log.next('focused'))) !== 'nothing' }
  },
  kept: { ended: { code: 0, signal: null }, focused: true },
  broken: [{ text: 'app.on("second-instance",', becomes: 'app.on("open-file",' }],
})

testLaw('second-while-closing', {
  // A record so large that it is still being closed when the second start asks for the lock.
  given: [
    {
      text: '[fallback.close(), record.close()]',
      becomes:
        '[new Promise((asked) => app.once("second-instance", () => setTimeout(asked, 300))).then(() => record.close())]',
    },
  ],
  async seen(trial) {
    const first = await trial.shown()
    first.program.line.tell('close', { window: 1 })
    await first.program.log.next('gone')
    const second = await trial.comesUp(await trial.start())
    return { first: await first.ended, second }
  },
  kept: { first: { code: 0, signal: null }, second: 'shown' },
  broken: [{ text: 'if (!found.isClosing) return "leave";', becomes: 'return "leave";' }],
})

test('of two starts at once one shows its window, and the other one ends well without', async () => {
  const trial = await Trial.of(null, [], false)
  try {
    const starts = await Promise.all([trial.start(), trial.start()])
    const outcomes = await Promise.all(
      starts.map(({ program, ended }) =>
        Promise.race([program.log.next('shown').then(() => 'shown'), ended]),
      ),
    )
    expect(outcomes).toContainEqual({ code: 0, signal: null })
    expect(outcomes).toContain('shown')
    const shown = starts[outcomes.indexOf('shown')]
    expect(shown && (await trial.request(shown, 'engines.list'))).toMatchObject({ ok: true })
  } finally {
    await trial.end()
  }
})
