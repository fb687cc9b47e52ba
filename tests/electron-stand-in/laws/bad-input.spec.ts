import { expect, test } from '@playwright/test'
import { mkdirSync, writeFileSync } from 'node:fs'
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
  expect(program.told.all('error-box')[0]?.content).toContain('notes.txt')
  expect(trial.signLeft).toMatch(/^refused: /)
})

trials('a data folder that cannot be made ends the program with a sentence', async ({ trial }) => {
  // Nobody, not even root, makes a folder in /sys.
  const started = await trial.start(['--data', '/sys/bedplate'])
  await trial.comesUp(started)
  if (started.program.told.all('shown').length > 0)
    await trial.request(started, 'host.read').catch(() => undefined) // it may end before it answers
  expect(await started.ended).toEqual({ code: 1, signal: null })
  expect(started.program.told.all('error-box')).toHaveLength(1)
})

trials('a window that never paints leaves no sign that it was shown', async ({ trial }) => {
  if (trial.surface instanceof BlankSurface) trial.surface.does = 'never paints'
  const { program } = await trial.start()
  await program.told.heard('load')
  await program.line.ask('may-have', { window: 1, permission: 'fullscreen', how: 'check' })
  expect(program.told.all('shown')).toEqual([])
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
