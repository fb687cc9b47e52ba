import { spawnSync } from 'node:child_process'
import { readFileSync, statSync } from 'node:fs'
import { homedir } from 'node:os'
import { join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { textIn, type Phrase } from '../../core/problem/index.ts'
import { dataFolder } from './data-folder.ts'
import { runDesktop } from './desktop-run.ts'
import { hasDisplay, isRoot } from './display.ts'
import { findElectron } from './electron-binary.ts'
import { fetchElectron, lastFailure } from './fetch-electron.ts'
import { isStale, type Target } from './freshness.ts'
import { hostChoice, type HostChoice } from './host-choice.ts'
import { parseOptions, type Options } from './options.mjs'
import { languageOfTerminal, speak, systemLanguage, words } from './spoken.ts'
import { wordsFor } from './words/index.mjs'
import { sandboxFacts, sandboxRefusal, whyNoSandbox } from './sandbox.ts'

// Everything is installed here, and this is a Node that runs TypeScript: see start.mjs and prepare.mjs.
const root = join(import.meta.dirname, '../..')
// npm changes to the folder of the project and keeps here where it was called.
const cwd = process.env.INIT_CWD ?? process.cwd()

// Started by another Node, this one ends with it, even when that one is killed; and the channel alone keeps neither alive.
process.once('disconnect', () => process.kill(process.pid, 'SIGTERM'))
process.channel?.unref()

const typed = process.argv.slice(2)
const answer = parseOptions(wordsFor(typed), typed)
if (answer.kind === 'options' && answer.options.shop !== undefined) process.title = 'bedplate'
if (answer.kind !== 'options') throw new Error('the options were to be looked at before')
await launch(answer.options)

/** What either host is started on: the data folder, the folder of specs, files to open; each an absolute path. */
interface StartPaths {
  readonly data: string
  readonly specs: string | undefined
  readonly files: readonly string[]
}

async function launch(options: Options): Promise<void> {
  await speak(options.language ?? languageOfTerminal(process.env, systemLanguage()))
  const paths: StartPaths = {
    data: dataFolder(options.data, { platform: process.platform, env: process.env, home: homedir(), cwd }),
    specs: options.specs === undefined ? undefined : resolve(cwd, options.specs),
    files: options.files.map((file) => resolve(cwd, file)),
  }
  const fault = faultOf(paths)
  if (fault !== undefined) return fail(fault, 2)
  if (options.doctor) return printDoctor(options, paths.data)
  if (!built('renderer')) return
  // Not among the words of the host’s command line: a password may stand in it, and others can see those.
  if (options.shop !== undefined) process.env.BEDPLATE_SHOP = options.shop
  if (options.bench !== undefined) process.env.BEDPLATE_BENCH = options.bench
  const choice = await choose(options)
  if (choice.kind === 'local') return runLocal(choice.why, options, paths)
  if (!built('desktop')) return
  console.error(words.launch.inDesktopHost)
  const specs = paths.specs === undefined ? [] : ['--specs', paths.specs]
  const language = options.language === undefined ? [] : ['--language', options.language]
  const run = await runDesktop({
    binary: choice.binary,
    words: [root, '--data', paths.data, ...specs, ...language, ...paths.files],
    env: process.env,
  })
  if (run.kind === 'no-window') await runLocal(run.why, options, paths)
  else process.exitCode = run.code
}

function faultOf({ specs, files }: StartPaths): string | undefined {
  const found = (path: string) => statSync(path, { throwIfNoEntry: false })
  if (specs !== undefined && found(specs)?.isDirectory() !== true)
    return words.launch.specsNoFolder({ folder: specs })
  const missing = files.find((file) => found(file)?.isFile() !== true)
  return missing === undefined ? undefined : words.launch.noFile({ file: missing })
}

async function choose(options: Options): Promise<Exclude<HostChoice, { kind: 'fetch-electron' }>> {
  const first = decide(options)
  if (first.kind !== 'fetch-electron') return first
  const why = await fetchElectron(root, process.env)
  const second = decide({ ...options, fetchElectron: false })
  if (second.kind === 'fetch-electron')
    throw new Error(`the attempt at fetching left no note: ${why?.code ?? 'it succeeded'}`)
  return second
}

function decide(options: Options): HostChoice {
  const electron = findElectron(root, process.env.BEDPLATE_ELECTRON)
  const binary =
    electron.kind === 'there' ? electron.binary : join(root, 'node_modules/electron/dist/electron')
  const noSandbox = process.platform === 'linux' ? whyNoSandbox(sandboxFacts(binary)) : undefined
  return hostChoice({
    options,
    isRoot: isRoot(),
    hasDisplay: hasDisplay(process.platform, process.env),
    electron,
    noSandbox: noSandbox === undefined ? undefined : sandboxRefusal(noSandbox, root, binary),
    lastFailure: lastFailure(root),
  })
}

/** Nothing is built, fetched or opened for it: what does not work may be just that. */
async function printDoctor(options: Options, data: string): Promise<void> {
  const { askDoctor } = await import('../requests/index.ts')
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string }
  const choice = decide({ ...options, fetchElectron: false })
  const why: Phrase =
    choice.kind === 'local'
      ? choice.why
      : { code: choice.kind === 'desktop' ? 'electronThere' : 'electronToCome', facts: {} }
  const host = choice.kind === 'desktop' ? 'desktop' : 'local'
  for (const line of await askDoctor({ host, why, version, dataFolder: data }, new Date()))
    console.log(words.doctor.terminalLine({ ...line, text: textIn(words, words.doctor.lines, line.says) }))
  console.log(words.doctor.restInWindow)
}

/** Builds what is stale, in a process of its own: the builder is large and the host stays for hours. */
function built(target: Target): boolean {
  if (!isStale(root, target)) return true
  console.error(words.launch.building({ target }))
  const { status } = spawnSync(
    process.execPath,
    [...process.execArgv, join(root, 'electron/launch/build.ts'), target],
    {
      stdio: ['ignore', 2, 2],
    },
  )
  if (status !== 0) fail(words.launch.buildingFailed, 1)
  return status === 0
}

function fail(sentence: string, code: number): void {
  console.error(sentence)
  process.exitCode = code
}

/** The local host takes its own command line; it runs in this process, so that one signal ends all. */
async function runLocal(why: Phrase, options: Options, { data, specs, files }: StartPaths): Promise<void> {
  if (!built('local')) return
  console.error(textIn(words, words.launch, { code: 'inLocalHost', facts: { why } }))
  process.argv.splice(
    2,
    Infinity,
    ...['--data', data, '--because', JSON.stringify(why)],
    ...(specs === undefined ? [] : ['--specs', specs]),
    ...(options.language === undefined ? [] : ['--language', options.language]),
    ...(options.window ? [] : ['--no-window']),
    '--',
    ...files,
  )
  await import(pathToFileURL(join(root, 'dist/local/main.js')).href)
}
