import { contract } from '../../core/contract/index.ts'
import type { RequestName } from '../../core/contract/index.ts'
import { done, problem, refused } from '../../core/problem/index.ts'
import type { Outcome, Problem } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'
import { fileProblem, openStore, restoreRecord } from '../store/index.ts'
import type { Store, Witness } from '../store/index.ts'
import { answering } from './answer.ts'
import type { Answering } from './answer.ts'
import { archiveRequests } from './archive.ts'
import { OpenBuildCache } from './open-build-cache.ts'
import { BackupKeeper, listBackups } from './backups.ts'
import { buildRequests } from './builds.ts'
import { draftRequests } from './drafts.ts'
import { doctorLines } from './doctor.ts'
import type { HostFacts } from './host-facts.ts'
import { EngineShelf } from './engine-shelf.ts'
import { engineRequests } from './engines.ts'
import type { Handlers, HandlersOf } from './handlers.ts'
import { newIds } from './ids.ts'
import { ListedNames } from './listed-names.ts'
import { libraryRequests } from './library.ts'
import { openLog } from './log.ts'
import { OpenedFiles } from './opened-files.ts'
import { People } from './people.ts'
import { practiceRequests } from './practice.ts'
import { revisionRequests } from './revisions.ts'
import { photoRequests } from './photos.ts'
import { preferenceRequests } from './preferences.ts'
import { readEngines, type Engine } from './specs.ts'
import { traceOf } from './trace.ts'
import { verificationRequests } from './verification.ts'
import { wrenchRequests } from './wrenches.ts'

/** Everything that the requests rest on, handed in: nothing below reads a clock or draws an id of its own. */
export interface HostServices {
  readonly facts: HostFacts
  readonly store: Store
  readonly engines: readonly Engine[]
  readonly now: () => Date
  readonly newId: () => string
  /** A clock that nobody can set, in milliseconds; that of the process when absent. */
  readonly nowMs?: () => number
  readonly report: (line: string) => void
  readonly savePdf: SavePdf
  /** Left to the browser when absent. */
  readonly saveFile?: SaveFile | undefined
  /** What the program was asked to open; nothing when absent. */
  readonly openedFiles?: OpenedFiles | undefined
}

/** Makes a PDF of the page in the window. */
export type SavePdf = HandlersOf<'sheet'>['sheet.pdf']

/** Puts what the window made into a file. */
export type SaveFile = HandlersOf<'files'>['files.save']

/** Puts the backup of this name in the place of the record, and answers with the name the present file was given. */
type Restore = HandlersOf<'backups'>['backups.restore']

type BeginEmpty = HandlersOf<'record'>['record.begin-empty']

/** All requests of the contract, answered from a record; `stop` ends what goes on in the background. */
export interface Requests {
  readonly answer: Answering
  readonly stop: () => Promise<void>
}

/** All requests of the contract, answered from the given store and engines. */
export function createRequests(services: HostServices, restore: Restore = notHere): Requests {
  const { facts, store, now, report, openedFiles = new OpenedFiles({ more: false }) } = services
  const shelf = new EngineShelf(services.engines, store)
  const failed = (name: RequestName, error: unknown): void => report(`${name}: ${traceOf(error)}`)
  const openBuilds = new OpenBuildCache(store)
  const names = new ListedNames(store)
  const people = new People({ store, nowMs: services.nowMs ?? monotonicMs, newId: services.newId })
  const keeper = new BackupKeeper({
    store,
    dataFolder: facts.dataFolder,
    now,
    failed: (error) => failed('backups.make', error),
  })
  const keepHead = (witness: Witness) => keeper.keepHead(witness)
  const verification = verificationRequests({
    store,
    now,
    failed: (error) => failed('verification.start', error),
    outside: () => keeper.outsideWitnesses(),
    keepHead,
  })
  const handlers: Handlers = {
    'host.read': () => {
      keeper.daily()
      const lost = store.problem()
      return done({ ...facts, problem: lost })
    },
    'host.doctor': async () => {
      const lost = store.problem()
      const photos = lost === null ? await store.photos.count() : null
      return done(
        doctorLines(
          facts,
          lost === null
            ? { kind: 'open', builds: store.countBuilds(), photos }
            : { kind: 'closed', problem: lost },
          now(),
        ),
      )
    },
    'sheet.pdf': services.savePdf,
    'files.save': services.saveFile ?? (() => refused('save-by-browser', {})),
    'files.opened': async ({ after }) =>
      done(await openedFiles.next(after, (fileName, text) => shelf.take(fileName, text))),
    ...preferenceRequests(store),
    ...wrenchRequests(store),
    ...engineRequests(shelf),
    ...libraryRequests({ store, shelf, people, now }),
    ...draftRequests({ store, shelf, people, now, newId: services.newId }),
    ...people.handlers,
    ...practiceRequests({ store, engines: shelf, people, now }),
    ...buildRequests({
      ...services,
      engines: shelf,
      openBuilds,
      names,
      people,
      finished: () => void keeper.make(),
    }),
    ...revisionRequests({ store, openBuilds, people, now }),
    ...photoRequests({ store, openBuilds, people, now }),
    ...archiveRequests({ store, openBuilds, names, now, keepHead }),
    ...verification.handlers,
    'backups.list': () => done(keeper.list()),
    'backups.make': async () => {
      await keeper.make()
      return done(keeper.list())
    },
    'backups.keep-in': ({ folder }) => {
      const kept = keeper.keepIn(folder)
      return kept.ok ? done(keeper.list()) : kept
    },
    'backups.restore': restore,
    'record.copy': ({ folder }) => keeper.copyTo(folder),
    'record.rebuild-lists': () => {
      const changed = store.rebuildLists()
      return changed.ok ? done({ changed: changed.value }) : changed
    },
    'record.begin-empty': () => refused('record-not-missing', {}),
  }
  return {
    answer: answering(handlers, failed, (error) => fileProblem(error, store.file, facts.dataFolder)),
    async stop() {
      verification.stop()
      await keeper.stop()
    },
  }
}

/** What can still be asked where the record cannot be used: why, what backups there are, and to restore one. */
function withoutRecord(
  { facts, now, report }: Pick<HostServices, 'facts' | 'now' | 'report'>,
  why: Problem,
  restore: Restore,
  beginEmpty: BeginEmpty = () => ({ ok: false, problem: why }),
): Requests {
  const refusing = Object.keys(contract).map((name) => [name, () => ({ ok: false, problem: why })])
  const handlers = {
    ...(Object.fromEntries(refusing) as Handlers),
    'host.read': () => done({ ...facts, problem: why }),
    'host.doctor': () => done(doctorLines(facts, { kind: 'closed', problem: why }, now())),
    'backups.list': () => {
      const { backups, secondFolder } = listBackups(facts.dataFolder)
      return done({ backups, secondFolder, running: false, trouble: null })
    },
    'backups.restore': restore,
    'record.begin-empty': beginEmpty,
  } satisfies Handlers
  return {
    answer: answering(handlers, (name, error) => report(`${name}: ${traceOf(error)}`)),
    stop: () => Promise.resolve(),
  }
}

/** Problems of a record that a backup is a way out of; with any other the program does not start. */
const rescued: readonly Problem['code'][] = [
  'record-damaged',
  'record-schema-altered',
  'record-missing',
  'record-not-a-database',
  'record-of-another-program',
]

/**
 * Opens the record of a data folder and answers from it: the wiring that both hosts share. Where the record cannot be used
 * the backups are offered, and nothing is overwritten.
 */
export async function openRequests(
  facts: HostFacts,
  specsFolder: string,
  tell: (line: string) => void,
  {
    savePdf = byBrowser,
    saveFile,
    openedFiles,
    language,
  }: Partial<Pick<HostServices, 'savePdf' | 'saveFile' | 'openedFiles'>> & {
    /** What the bench is to speak from now on; as it was when absent. */
    readonly language?: Language | undefined
  } = {},
): Promise<Outcome<{ answer: Answering; flush: () => void; close: () => Promise<void> }>> {
  const now = () => new Date()
  const log = openLog(facts.dataFolder, now)
  const report = (line: string): void => {
    log(line)
    tell(line)
  }
  const engines = readEngines(specsFolder)
  const bare = { facts, now, report }
  let store: Store | null = null
  let requests: Requests

  async function open(how: { beginEmpty?: boolean } = {}): Promise<Outcome<Requests>> {
    const opened = await openStore(facts.dataFolder, now, how)
    if (opened.ok) {
      store = opened.value
      if (language !== undefined) store.keepPreferences({ language })
      const newId = newIds(store.lastBuild(), () => now().getTime())
      return done(
        createRequests(
          { facts, store, engines, now, newId, report, savePdf, saveFile, openedFiles },
          restore,
        ),
      )
    }
    log(`the record was not opened: ${opened.problem.code}`)
    if (!rescued.includes(opened.problem.code)) return opened
    const isMissing = opened.problem.code === 'record-missing'
    return done(withoutRecord(bare, opened.problem, restore, isMissing ? beginEmpty : undefined))
  }

  async function beginEmpty(): Promise<Outcome<Record<string, never>>> {
    const opened = await open({ beginEmpty: true })
    if (!opened.ok) return opened
    requests = opened.value
    log('an empty record was begun, as was asked for')
    return done({})
  }

  async function close(): Promise<void> {
    await requests.stop()
    store?.close()
    store = null
  }

  async function restore({ name }: { name: string }): Promise<Outcome<{ kept: string | null }>> {
    const backup = listBackups(facts.dataFolder).files.get(name)
    if (backup === undefined) return refused('backup-unknown', {}, 'name')
    const before = requests
    requests = withoutRecord(bare, problem('record-being-replaced', {}), beingReplaced)
    await before.stop()
    store?.close()
    store = null
    const restored = await restoreRecord(facts.dataFolder, backup, now())
    const reopened = await open()
    if (!reopened.ok) {
      requests = withoutRecord(bare, reopened.problem, restore)
      return reopened
    }
    requests = reopened.value
    return restored.ok ? done({ kept: restored.value }) : restored
  }

  const first = await open()
  if (!first.ok) return first
  requests = first.value
  log(
    `started ${facts.version} in the ${facts.host} host, Node ${process.versions.node}, ${process.platform}`,
  )
  return done({
    answer: (name, input) => requests.answer(name, input),
    flush: () => store?.flush(),
    close,
  })
}

function monotonicMs(): number {
  return performance.now()
}

/** Where there is a browser around the window, it prints. */
export function byBrowser(): Outcome<never> {
  return refused('pdf-by-browser', {})
}

function beingReplaced(): Outcome<never> {
  return refused('record-being-replaced', {})
}

/** For requests on a store that somebody else opened and holds: there is nothing to put in its place. */
function notHere(): Outcome<never> {
  return refused('backup-unknown', {}, 'name')
}
