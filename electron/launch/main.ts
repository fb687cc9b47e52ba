import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { homedir } from 'node:os'
import { join } from 'node:path'
import { dataFolder } from './data-folder.ts'
import { runDesktop } from './desktop-run.ts'
import { hasDisplay, isRoot } from './display.ts'
import { electronBinary, fetchElectron, wasTried } from './electron-binary.ts'
import { isStale, type Target } from './freshness.ts'
import { hostChoice, type HostChoice } from './host-choice.ts'
import { parseOptions, type Options } from './options.mjs'

// Everything is installed here, and this is a Node that runs TypeScript: see start.mjs and prepare.mjs.
const root = join(import.meta.dirname, '../..')

// Started by another Node, this one ends with it, even when that one is killed; and the channel alone keeps neither alive.
process.once('disconnect', () => process.kill(process.pid, 'SIGTERM'))
process.channel?.unref()

const answer = parseOptions(process.argv.slice(2))
if (answer.kind !== 'options') throw new Error('the options were to be looked at before')
await launch(answer.options)

async function launch(options: Options): Promise<void> {
  const data = dataFolder(options.data, {
    platform: process.platform,
    env: process.env,
    home: homedir(),
    // npm changes to the folder of the project and keeps here where it was called.
    cwd: process.env.INIT_CWD ?? process.cwd(),
  })
  if (options.doctor) return tellDoctor(options, data)
  if (!built('renderer')) return
  const choice = await choose(options)
  if (choice.kind === 'desktop') {
    if (!built('desktop')) return
    console.error('Bedplate runs in the desktop host.')
    const code = await runDesktop(choice.binary, root, data)
    if (code === undefined) await runLocal('the window of the desktop host did not come up', options, data)
    else process.exitCode = code
  } else {
    await runLocal(choice.why, options, data)
  }
}

async function choose(options: Options): Promise<Exclude<HostChoice, { kind: 'fetch-electron' }>> {
  const decide = (): HostChoice =>
    hostChoice({
      options,
      isRoot: isRoot(),
      hasDisplay: hasDisplay(process.platform, process.env),
      electron: electronBinary(root),
      wasTried: wasTried(root),
    })
  const first = decide()
  if (first.kind !== 'fetch-electron') return first
  await fetchElectron(root)
  const second = decide()
  if (second.kind === 'fetch-electron') throw new Error('an attempt at fetching was not remembered')
  return second
}

/** Nothing is built, fetched or opened for it: what does not work may be just that. */
async function tellDoctor(options: Options, data: string): Promise<void> {
  const { askDoctor } = await import('../requests/index.ts')
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }
  const choice = hostChoice({
    options,
    isRoot: isRoot(),
    hasDisplay: hasDisplay(process.platform, process.env),
    electron: electronBinary(root),
    wasTried: true,
  })
  const host = choice.kind === 'desktop' ? 'desktop' : 'local'
  const why = choice.kind === 'local' ? choice.why : 'Electron is there'
  const signs = { good: 'ok  ', look: 'look', bad: 'BAD ' }
  for (const line of await askDoctor({ host, why, version, dataFolder: data }, new Date()))
    console.log(`${signs[line.state]}  ${line.subject}: ${line.sentence}`)
  console.log('Type, screen and voices only the window can see: they stand on its page “Record and backups”.')
}

/** Builds what is stale, in a process of its own: the builder is large and the host stays for hours. */
function built(target: Target): boolean {
  if (!isStale(root, target)) return true
  console.error(`Building the ${target === 'renderer' ? 'window' : 'desktop host'} (its sources are new) …`)
  const { status } = spawnSync(
    process.execPath,
    [...process.execArgv, join(root, 'electron/launch/build.ts'), target],
    {
      stdio: ['ignore', 2, 2],
    },
  )
  if (status !== 0) {
    console.error('Building failed; the lines above say where.')
    process.exitCode = 1
  }
  return status === 0
}

/** The local host takes its own command line; it runs in this process, so that one signal ends all. */
async function runLocal(why: string, options: Options, data: string): Promise<void> {
  console.error(`Bedplate runs in the local host: ${why}.`)
  process.argv.splice(
    2,
    Infinity,
    '--data',
    data,
    '--because',
    why,
    ...(options.window ? [] : ['--no-window']),
  )
  await import('../local/main.ts')
}
