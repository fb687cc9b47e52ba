import { expect, test } from '@playwright/test'
import { chmodSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { BlankSurface } from '../page/surface.ts'
import { Trial } from './trial.ts'

/** A trial of the built main, ended with the test. */
const trials = test.extend<{ trial: Trial }>({
  trial: async ({}, use) => {
    const trial = await Trial.of(null, [], false)
    await use(trial)
    await trial.end()
  },
})

trials('a data folder may have spaces and other letters than Latin in its path', async ({ trial }) => {
  const data = join(trial.folder, 'мастерская 工場 é')
  const started = await trial.start(['--data', data])
  expect(await trial.comesUp(started)).toBe('shown')
  expect(await trial.request(started, 'host.read')).toMatchObject({ ok: true, value: { dataFolder: data } })
})

trials('a data folder that is a file ends the program with a sentence', async ({ trial }) => {
  const file = join(trial.folder, 'notes.txt')
  writeFileSync(file, 'no folder')
  const { ended, program } = await trial.start(['--data', file])
  expect(await ended).toEqual({ code: 1, signal: null })
  expect(program.log.all('error-box')[0]?.content).toContain('notes.txt')
  expect(trial.signLeft).toMatch(/^refused: /)
})

/** Starts on a data folder, has its record opened where a window comes, and answers with what the person is told. */
async function refusedOn(trial: Trial, data: string): Promise<unknown> {
  const started = await trial.start(['--data', data])
  await trial.comesUp(started)
  if (started.program.log.all('shown').length > 0)
    await trial.request(started, 'host.read').catch(() => undefined) // it may end before it answers
  const boxes = started.program.log.all('error-box')
  return { ended: await started.ended, told: boxes.length, sentence: boxes[0]?.content }
}

const closed = {
  ended: { code: 1, signal: null },
  told: 1,
  sentence: expect.stringMatching(
    /^Bedplate cannot write in its data folder .* choose another folder with --data\.$/,
  ) as unknown,
}

for (const [what, data] of [
  ['cannot be made', '/sys/bedplate'],
  ['is in a place that is for reading alone', '/sys/kernel'],
] as const)
  // Nobody, not even root, makes a file in /sys.
  trials(`a data folder that ${what} ends the program with a sentence`, async ({ trial }) => {
    expect(await refusedOn(trial, data)).toEqual(closed)
  })

trials(
  'a data folder without the right to write is refused, keeps its rights, and its record',
  async ({ trial }) => {
    trials.skip(
      process.getuid?.() === 0,
      'root may write anywhere; the run as an ordinary user has this test',
    )
    const made = await trial.shown()
    await trial.request(made, 'preferences.keep', { person: 'Ana Ruiz' })
    made.program.line.tell('quit', null)
    await made.ended
    const record = join(trial.data, 'bedplate.sqlite')
    const before = readFileSync(record)
    chmodSync(trial.data, 0o500)
    try {
      expect(await refusedOn(trial, trial.data)).toEqual(closed)
      expect(statSync(trial.data).mode & 0o777).toBe(0o500)
      expect(readFileSync(record).equals(before)).toBe(true)
    } finally {
      chmodSync(trial.data, 0o700)
    }
  },
)

trials('a window that never paints leaves no sign that it was shown', async ({ trial }) => {
  if (trial.surface instanceof BlankSurface) trial.surface.does = 'never paints'
  const { program } = await trial.start()
  await program.log.next('load')
  await program.line.ask('may-have', { window: 1, permission: 'fullscreen', how: 'check' })
  expect(program.log.all('shown')).toEqual([])
  expect(trial.signLeft).toBeNull()
})

trials(
  'a file that is no export, and two of them, do not keep the window from opening',
  async ({ trial }) => {
    mkdirSync(trial.data)
    const files = ['one.bedplate', 'two.bedplate'].map((name) => join(trial.folder, name))
    for (const file of files) writeFileSync(file, 'GIF89a, a picture renamed')
    expect(await trial.comesUp(await trial.start(['--data', trial.data, ...files]))).toBe('shown')
  },
)
