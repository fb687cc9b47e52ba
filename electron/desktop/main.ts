import { realpathSync } from 'node:fs'
import { homedir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { app, protocol, session } from 'electron'
import { problem } from '../../core/problem/index.ts'
import { dataFolder } from '../launch/data-folder.ts'
import { dataFolderFault } from '../launch/data-folder-fault.ts'
import { joinResultText } from '../launch/join-result.ts'
import { languageOfTerminal, speak, systemLanguage } from '../launch/spoken.ts'
import { readPages } from '../pages/index.ts'
import { OpenedFiles, openLog, openRequests } from '../requests/index.ts'
import { makeFolder } from '../store/index.ts'
import { filesIn, readCommandLine } from './starting/command-line.ts'
import { FileSaver } from './saving/file-saver.ts'
import { giveUp, giveUpOnFault } from './starting/give-up.ts'
import { putPolicyOnAll, refuseDownloads, refuseLeaving, refusePermissions } from './guards.ts'
import { answerWindow } from './ipc.ts'
import { platformKeyStore } from './key-store.ts'
import { watchPage } from './window/page-watch.ts'
import { savePdfBy } from './saving/pdf.ts'
import { watchPower } from './power.ts'
import { RecordLink } from './record-link.ts'
import { saveFileBy } from './saving/save-file.ts'
import { servePages } from './scheme.ts'
import {
  afterRefusedLock,
  betweenTriesMs,
  isClosing,
  isLockHeld,
  markClosing,
  unmarkClosing,
} from './starting/second-start.ts'
import { chooseByBox, offerSerialLines } from './serial-lines.ts'
import { leaveSign } from './starting/sign.ts'
import { chosenIn } from './window/chosen-in.ts'
import { BrowserFallback } from './starting/browser-fallback.ts'
import { bringToFront, dressMenu, dressWindow, makeWindow } from './window/window.ts'
import { windowFolder } from './window/window-folder.ts'
import { WindowMemory } from './window/window-memory.ts'
import { scheme, schemeRights } from './window/window-rules.ts'

// The desktop host: wiring only. What must be settled before Electron is ready comes first. Nothing is awaited at the top
// level: Electron becomes ready only when this module has been evaluated (lib/browser/init.ts, `appCodeLoaded`), so that a
// module that waited for it here would wait for ever.
process.umask(0o077)
app.enableSandbox()
app.setName('Bedplate')
protocol.registerSchemesAsPrivileged([{ scheme, privileges: schemeRights }])
refuseLeaving(app)

const root = join(import.meta.dirname, '../..')
// It may have a password in it, which nothing that is started from here is to have.
const shopAddress = process.env.BEDPLATE_SHOP
delete process.env.BEDPLATE_SHOP
const surroundings = { platform: process.platform, env: process.env, home: homedir(), cwd: process.cwd() }
const commandLine = readCommandLine(process.argv, {
  appPath: app.getAppPath(),
  packed: app.isPackaged,
  cwd: process.cwd(),
})
const data = dataFolder(commandLine.data, surroundings)
const openedFiles = new OpenedFiles({ more: true })
openedFiles.open(commandLine.files)
const log = openLog(data, () => new Date())
process.on('uncaughtException', (error) => giveUpOnFault(error, log))
process.on('unhandledRejection', (reason) => giveUpOnFault(reason, log))

const fault = dataFolderFault(data)
if (fault === null) start()
else giveUp(fault, () => undefined)

/** The lock belongs to a folder that must be known before it is asked for, and both before Electron is ready. */
function start(): void {
  try {
    makeFolder(data)
  } catch {
    // Said when the record is opened, with what to do about it.
  }
  const folder = windowFolder(realPath(data), surroundings)
  makeFolder(folder) // before Chromium makes it with wider rights
  app.setPath('userData', folder)
  app.on('window-all-closed', () => app.quit())
  app.on('open-file', (event, path) => {
    event.preventDefault()
    openedFiles.open([path])
    bringToFront()
  })
  void lock(folder).then(async (isOurs) => {
    if (!isOurs) return
    unmarkClosing(folder)
    app.on('second-instance', (_event, _words, _cwd, handedOver) => {
      openedFiles.open(filesIn(handedOver))
      bringToFront()
    })
    await app.whenReady()
    const memory = new WindowMemory(join(folder, 'window.json'))
    await speak(
      commandLine.language ?? memory.now.language ?? languageOfTerminal(process.env, systemLanguage()),
    )
    open(folder, memory)
  })
}

/** Whether this start is the one that opens a window. Where another one does it is shown, and this one has ended. */
async function lock(folder: string): Promise<boolean> {
  for (let tries = 0; !app.requestSingleInstanceLock({ files: commandLine.files }); tries += 1) {
    const next = afterRefusedLock({
      isClosing: isClosing(folder),
      isHeld: isLockHeld(folder, process.platform),
      tries,
    })
    if (next === 'go-on') return true
    if (next === 'leave') {
      leaveSign(process.env.BEDPLATE_SIGN, { kind: 'shown' })
      app.quit()
      return false
    }
    if (next === 'give-up') {
      giveUp(problem('still-ending', { folder: data }), log)
      return false
    }
    await after(betweenTriesMs)
  }
  return true
}

/** From here on Electron is ready, and this is the one program for its data folder. */
function open(folder: string, memory: WindowMemory): void {
  const pages = readPages(join(root, 'dist/renderer'))
  const facts = {
    host: 'desktop',
    why: { code: 'electronThere', facts: {} },
    version: app.getVersion(),
    dataFolder: data,
  } as const
  const specs = commandLine.specs ?? join(root, 'specs')
  const window = makeWindow(root, memory, { isWaitedFor: Boolean(process.env.BEDPLATE_SIGN) })
  const saver = new FileSaver(memory)
  const record = new RecordLink({
    open: () =>
      openRequests(facts, specs, (line) => console.error(line), {
        savePdf: savePdfBy(saver),
        saveFile: saveFileBy(saver),
        openedFiles,
        language: commandLine.language,
        benchName: process.env.BEDPLATE_BENCH,
        ...(shopAddress !== undefined && {
          shop: { address: shopAddress, onResult: (how) => console.error(joinResultText(how)) },
        }),
        keyStore: platformKeyStore,
      }),
    shown: new Promise<void>((resolve) => window.once('show', () => resolve())),
    refused: (why) => giveUp(why, log),
  })
  window.once('show', () => leaveSign(process.env.BEDPLATE_SIGN, { kind: 'shown' }))
  app.once('will-quit', (event) => {
    event.preventDefault() // until the record is closed; then it is quit for good
    markClosing(folder)
    void Promise.allSettled([fallback.close(), record.close()]).then(() => app.quit())
  })

  refusePermissions(session.defaultSession)
  offerSerialLines(
    session.defaultSession,
    chooseByBox(() => (window.isDestroyed() ? undefined : window)),
  )
  refuseDownloads(session.defaultSession)
  putPolicyOnAll(session.defaultSession)
  servePages(pages)
  answerWindow(async (name, input) => {
    const answer = await record.answer(name, input)
    const chosen = chosenIn(name, answer)
    if (chosen === null) return answer
    dressWindow(window, memory, chosen.theme)
    if (chosen.language !== memory.now.language) {
      memory.keep({ language: chosen.language })
      await speak(chosen.language ?? languageOfTerminal(process.env, systemLanguage()))
      dressMenu()
    }
    return answer
  })
  const fallback = new BrowserFallback({ pages, answer: record.answer })
  watchPower(window, record.flush)
  watchPage(window, log, (what) => fallback.ask(window, what))
}

/** One window for a data folder, by whatever path it was reached. */
function realPath(folder: string): string {
  try {
    return realpathSync(folder)
  } catch {
    return folder
  }
}
