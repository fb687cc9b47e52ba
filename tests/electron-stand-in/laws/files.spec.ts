import { expect, test } from '@playwright/test'
import { existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { testLaw, Trial } from './trial.ts'

const fileName = 'Port engine.bedplate'

testLaw('overwrites-silently', {
  async seen(trial) {
    const there = join(trial.folder, 'there.bedplate')
    writeFileSync(there, 'an older export')
    trial.standIn.person.saveAt = () => there
    const started = await trial.shown()
    const answer = await trial.request(started, 'files.save', { fileName, text: 'an export' })
    return { answer, warnings: started.program.log.all('warning').length }
  },
  kept: { answer: { ok: true, value: { path: expect.any(String) } }, warnings: 0 },
  broken: [{ text: '"showOverwriteConfirmation", ', becomes: '' }],
})

testLaw('no-key-ring', {
  async seen(trial) {
    const started = await trial.shown()
    // A port on which nobody answers: whether it is joined is not what is looked at.
    const address = 'postgres://bench@127.0.0.1:1/firm'
    const answer = await trial.request(started, 'shop.join', {
      address,
      password: 'tea-at-four',
      authority: '',
    })
    const kept = readdirSync(trial.data).filter((name) => name.startsWith('shop-password'))
    const mode = kept.map((name) => statSync(join(trial.data, name)).mode & 0o777)
    return { answer, kept, mode }
  },
  kept: {
    answer: { ok: true, value: expect.objectContaining({ passwordIn: 'file' }) },
    kept: ['shop-password'],
    mode: [0o600],
  },
  broken: [
    { text: 'safeStorage.isEncryptionAvailable()', becomes: 'true' },
    { text: 'safeStorage.getSelectedStorageBackend() !== "basic_text"', becomes: 'true' },
  ],
})

testLaw('downloads-go-unsaid', {
  async seen(trial) {
    trial.standIn.person.saveAt = () => join(trial.folder, 'downloaded')
    const { program } = await trial.shown()
    const about = { window: 1, id: 1, url: 'blob:bedplate://app/0d2c', name: fileName, size: 9 }
    return {
      taken: await program.line.ask('download', about),
      asked: program.log.all('save-dialog').length,
    }
  },
  kept: { taken: null, asked: 0 },
  broken: [{ text: 'refuseDownloads(session.defaultSession);', becomes: '' }],
})

const trials = test.extend<{ trial: Trial }>({
  trial: async ({}, use) => {
    const trial = await Trial.of(null, [], false)
    await use(trial)
    await trial.end()
  },
})

trials('a file is said to be saved when it is on disk, and where', async ({ trial }) => {
  const path = join(trial.folder, fileName)
  trial.standIn.person.saveAt = () => path
  const started = await trial.shown()
  const answer = await trial.request(started, 'files.save', { fileName, text: 'an export, 24 N·m' })
  expect(answer).toEqual({ ok: true, value: { path } })
  expect(readFileSync(path, 'utf8')).toBe('an export, 24 N·m')
  expect(started.program.log.all('save-dialog')[0]).toMatchObject({
    defaultPath: fileName,
    filters: [{ name: 'Exported build', extensions: ['bedplate'] }],
  })
})

trials('a dialog that is closed saves nothing and says so', async ({ trial }) => {
  trial.standIn.person.saveAt = () => null
  const started = await trial.shown()
  expect(await trial.request(started, 'files.save', { fileName, text: 'x' })).toEqual({
    ok: true,
    value: { path: null },
  })
})

trials('a file that cannot be written is refused in words, and leaves nothing behind', async ({ trial }) => {
  const isFolder = join(trial.folder, 'taken.bedplate')
  mkdirSync(isFolder)
  const places = [join(trial.folder, 'gone', fileName), isFolder]
  trial.standIn.person.saveAt = () => places.shift() ?? null
  const started = await trial.shown()
  for (let tried = 0; tried < 2; tried += 1)
    expect(await trial.request(started, 'files.save', { fileName, text: 'x' })).toMatchObject({
      ok: false,
      problem: { code: 'file-not-saved', facts: { file: fileName } },
    })
  expect(readdirSync(trial.folder).filter((name) => name.endsWith('.part'))).toEqual([])
})

trials('two files at once are asked about one after the other, and both are saved', async ({ trial }) => {
  let open = 0
  let most = 0
  const started = await trial.shown()
  const { person } = trial.standIn
  person.saveAt = (options) => {
    most = Math.max(most, ++open)
    // The dialog stays open for a while: the other request comes meanwhile.
    return after(100).then(() => {
      open -= 1
      return join(trial.folder, basename(options.defaultPath ?? ''))
    })
  }
  const save = (name: string) => trial.request(started, 'files.save', { fileName: name, text: name })
  expect(await Promise.all([save('one.csv'), save('two.csv')])).toMatchObject([{ ok: true }, { ok: true }])
  expect(most).toBe(1)
  for (const name of ['one.csv', 'two.csv']) expect(readFileSync(join(trial.folder, name), 'utf8')).toBe(name)
})

trials('a name that is no file of ours is refused before anybody is asked', async ({ trial }) => {
  const started = await trial.shown()
  for (const name of ['sheet.exe', '', `${'x'.repeat(200)}.csv`])
    expect(await trial.request(started, 'files.save', { fileName: name, text: '' })).toMatchObject({
      ok: false,
    })
  expect(started.program.log.all('save-dialog')).toEqual([])
})

trials('a window that goes while it is asked for a place still leaves the file whole', async ({ trial }) => {
  const path = join(trial.folder, fileName)
  const started = await trial.shown()
  trial.standIn.person.saveAt = () => trial.surface.crash().then(() => path)
  await trial.request(started, 'files.save', { fileName, text: 'an export' })
  expect(existsSync(path) && readFileSync(path, 'utf8')).toBe('an export')
})
