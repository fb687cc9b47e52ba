import { existsSync, readFileSync } from 'node:fs'
import { homedir } from 'node:os'
import { join, resolve } from 'node:path'
import { sentenceIn, textIn } from '../../core/problem/index.ts'
import { dataFolder } from '../launch/data-folder.ts'
import { dataFolderFault } from '../launch/data-folder-fault.ts'
import { joinResultText } from '../launch/join-result.ts'
import { languageOfTerminal, speak, systemLanguage, words } from '../launch/spoken.ts'
import { openWindow } from '../launch/window.ts'
import { readPages } from '../pages/index.ts'
import { OpenedFiles, openRequests } from '../requests/index.ts'
import { watchIdle } from './idle.ts'
import { localOptions } from './options.ts'
import { startLocalHost } from './server.ts'
import { newToken } from './token.ts'

// The local host: `node dist/local/main.js [--data DIR] [--specs DIR] [--no-window] [FILE …]`. Where a window was opened, it
// ends some minutes after the last one has gone quiet; without, it serves until it is ended.
const root = join(import.meta.dirname, '../..')
const quietChecks = 10
const checkEveryMs = 30_000

await serve()

async function serve(): Promise<void> {
  process.umask(0o077)
  const options = localOptions(process.argv.slice(2))
  await speak(options.language ?? languageOfTerminal(process.env, systemLanguage()))
  const data = dataFolder(options.data, {
    platform: process.platform,
    env: process.env,
    home: homedir(),
    cwd: process.cwd(),
  })
  const fault = dataFolderFault(data)
  if (fault !== null) return fail(sentenceIn(words, fault))
  const built = join(root, 'dist/renderer')
  if (!existsSync(join(built, 'index.html'))) return fail(words.launch.windowNotBuilt)
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }
  // It may have a password in it, which the browser is not to have in its environment.
  const shopAddress = process.env.BEDPLATE_SHOP
  delete process.env.BEDPLATE_SHOP
  const openedFiles = new OpenedFiles({ more: false })
  openedFiles.open(options.files.map((file) => resolve(file)))
  const opened = await openRequests(
    { host: 'local', why: options.why, version, dataFolder: data },
    options.specs ?? join(root, 'specs'),
    (line) => console.error(line),
    {
      openedFiles,
      language: options.language,
      benchName: process.env.BEDPLATE_BENCH,
      ...(shopAddress !== undefined && {
        shop: { address: shopAddress, onResult: (how) => console.error(joinResultText(how)) },
      }),
    },
  )
  if (!opened.ok) return fail(sentenceIn(words, opened.problem))

  let noteRequest = (): void => undefined
  const { answer, close } = opened.value
  const host = await startLocalHost({
    pages: readPages(built),
    answer,
    token: newToken(),
    onRequest: () => noteRequest(),
  })
  const end = (): void => {
    void host
      .close()
      .then(close)
      .then(() => process.exit())
  }
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, end)

  if (options.window) {
    const window = await openWindow(host.address, data)
    if (window.opened) noteRequest = watchIdle(quietChecks, checkEveryMs, end).noteRequest
    else console.error(textIn(words, words.launch, { code: 'openYourself', facts: { why: window.why } }))
  }
  console.log(words.launch.at(host))
}

function fail(sentence: string): void {
  console.error(sentence)
  process.exitCode = 1
}
