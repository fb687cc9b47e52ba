import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { testLaw, type Trial } from './trial.ts'

const blob = 'blob:bedplate://app/0d2c'

/** Saves a file from the page at a path, or at none, and answers with what the dialog asked. */
async function save(trial: Trial, path: string | null) {
  trial.standIn.person.saveAt = () => path
  const { program } = await trial.shown()
  const about = { window: 1, id: 1, url: blob, name: 'Port engine.bedplate', size: 9 }
  const taken = await program.line.ask('download', about)
  return { program, taken, asked: program.told.all('save-dialog')[0] }
}

testLaw('overwrites-silently', {
  async seen(trial) {
    const there = join(trial.folder, 'there.bedplate')
    writeFileSync(there, 'an export')
    const { program, taken } = await save(trial, there)
    return { taken: taken === there, warnings: program.told.all('warning').length }
  },
  kept: { taken: true, warnings: 0 },
  broken: [{ text: '"showOverwriteConfirmation", ', becomes: '' }],
})

testLaw('downloads-untitled', {
  async seen(trial) {
    const { taken, asked } = await save(trial, null) // a dialog that is closed saves nothing
    return {
      taken,
      hasTitle: asked?.title !== blob || asked?.filters !== undefined,
      asked: asked !== undefined,
    }
  },
  kept: { taken: null, hasTitle: true, asked: true },
  broken: [{ text: 'watchDownloads(session.defaultSession, memory);', becomes: '' }],
})

testLaw('downloads-end-silently', {
  async seen(trial) {
    const { program, taken } = await save(trial, join(trial.folder, 'gone/x.bedplate'))
    await program.line.ask('downloaded', { id: 1, state: taken === null ? 'cancelled' : 'interrupted' })
    const [said] = program.told.all('error-box')
    return String(said?.content).includes('not saved')
  },
  kept: true,
  broken: [{ text: 'if (state === "interrupted")', becomes: 'if (state === "never")' }],
})
