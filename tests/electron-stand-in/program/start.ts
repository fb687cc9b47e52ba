import './resolve.ts'
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { homedir, tmpdir } from 'node:os'
import { basename, join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { playedApp } from './app.ts'
import { dialog } from './dialog.ts'
import { keepToPlainReading } from './files.ts'
import { outside } from './outside.ts'
import { packedVariable } from './packed.ts'

// What Electron does with `electron FOLDER …`: lib/browser/init.ts, then default_app/main.ts. And what a packed program does,
// which has its application in its own resources and no word for it on its command line: lib/browser/init.ts, `appPath`.
const packed = process.env[packedVariable]

const words = process.argv.slice(2)
process.argv = [process.env.STAND_IN_BINARY ?? process.execPath, ...words]
const version = (
  JSON.parse(readFileSync(createRequire(import.meta.url).resolve('electron/package.json'), 'utf8')) as {
    version: string
  }
).version
Object.defineProperty(process, 'versions', { value: { ...process.versions, electron: version } })
Object.defineProperty(process, 'type', { value: 'browser' })
if (packed === undefined) Object.defineProperty(process, 'defaultApp', { value: true })
keepToPlainReading()
setInterval(() => undefined, 1 << 30) // the message loop: nothing but a quit ends it

// init.ts: an exception that nobody catches is shown, and ends nothing.
process.on('uncaughtException', (error) => {
  if (process.listenerCount('uncaughtException') > 1) return
  dialog.showErrorBox(
    'A JavaScript error occurred in the main process',
    `Uncaught Exception:\n${error.stack ?? `${error.name}: ${error.message}`}`,
  )
})
// electron_browser_main_parts.cc: `unhandled_rejections = "warn-with-error-code"`: told, and ends nothing.
process.on('unhandledRejection', (reason) => console.error('UnhandledPromiseRejectionWarning:', reason))
// init.ts: the end of the process is the end of the program.
process.exit = ((code?: number) =>
  playedApp.exit(code ?? Number(process.exitCode ?? 0))) as typeof process.exit
playedApp.once('quit', (_event, code: number) => process.emit('exit', code))

outside.tell('started', { pid: process.pid, argv: process.argv })
await load(packed ?? resolve(words.find((word) => !word.startsWith('-')) ?? '.'))
// NodeBindings::JoinAppCode ends with the evaluation of the entry, or with a quit before that.
setImmediate(() => playedApp.becomeReady())

async function load(root: string): Promise<void> {
  try {
    const about = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
      name: string
      productName?: string
      version: string
    }
    const name = about.productName ?? about.name
    const home = homedir()
    const appData = process.env.XDG_CONFIG_HOME ?? join(home, '.config')
    playedApp.introduce({
      name,
      version: about.version,
      path: root,
      isPackaged: packed !== undefined,
      paths: {
        home,
        appData,
        userData: join(appData, name),
        temp: tmpdir(),
        exe: process.argv[0] ?? basename(process.execPath),
        downloads: process.env.STAND_IN_DOWNLOADS ?? join(home, 'Downloads'),
        documents: join(home, 'Documents'),
        desktop: join(home, 'Desktop'),
      },
    })
    const entry = createRequire(join(root, 'package.json')).resolve(root)
    const evaluated = import(pathToFileURL(entry).href)
    await Promise.race([evaluated, new Promise((quit) => playedApp.once('quit', quit))])
  } catch (error) {
    // default_app/main.ts, then init.ts: told, the code counts as loaded, and Electron goes on without a window.
    console.error('App threw an error during load')
    console.error(error instanceof Error ? error.stack : error)
    process.emit('uncaughtException', error as Error)
  }
}
