import { contract } from '../../core/contract/index.ts'
import { done, problem, refused, sentenceOf } from '../../core/problem/index.ts'
import type { Outcome, Problem } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'
import type { KeyStore } from '../shop/index.ts'
import { openStore, restoreRecord } from '../store/index.ts'
import type { Store } from '../store/index.ts'
import { answering } from './answer.ts'
import type { AnswerRequest } from './answer.ts'
import { listBackups } from './backups.ts'
import { createRequests, type BeginEmpty, type HostServices, type Requests, type Restore } from './create.ts'
import { doctorLines } from './doctor.ts'
import type { HostFacts } from './host-facts.ts'
import type { Handlers } from './handlers.ts'
import { newIds } from './ids.ts'
import { openLog } from './log.ts'
import { joinAtStart, type ShopAtStart } from './shop/join-at-start.ts'
import { postgresShop } from './shop/postgres.ts'
import { readEngines } from './specs.ts'
import { traceOf } from './trace.ts'

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
  print: (line: string) => void,
  {
    savePdf = byBrowser,
    saveFile,
    openedFiles,
    language,
    benchName,
    shop: shopAtStart,
    keyStore = null,
  }: Partial<Pick<HostServices, 'savePdf' | 'saveFile' | 'openedFiles'>> & {
    /** What the bench is to speak from now on; as it was when absent. */
    readonly language?: Language | undefined
    /** The archive of a shop to join now; as it was when absent. */
    readonly shop?: ShopAtStart | undefined
    /** What the bench is to be called from now on; as it was when absent. */
    readonly benchName?: string | undefined
    /** What keeps the password of that archive; null for a file. */
    readonly keyStore?: KeyStore | null
  } = {},
): Promise<Outcome<{ answer: AnswerRequest; flush: () => void; close: () => Promise<void> }>> {
  const now = () => new Date()
  const log = openLog(facts.dataFolder, now)
  const report = (line: string): void => {
    log(line)
    print(line)
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
      const shop = postgresShop(facts.dataFolder, process.env, keyStore)
      const created = createRequests(
        { facts, store, engines, now, newId, report, savePdf, saveFile, openedFiles, shop },
        restore,
      )
      if (benchName !== undefined) await call(created, benchName)
      if (shopAtStart !== undefined)
        await joinAtStart(created.answer, shopAtStart, { log, isOver: () => requests !== created })
      return done(created)
    }
    log(`the record was not opened: ${opened.problem.code}`)
    if (!rescued.includes(opened.problem.code)) return opened
    const isMissing = opened.problem.code === 'record-missing'
    return done(withoutRecord(bare, opened.problem, restore, isMissing ? beginEmpty : undefined))
  }

  /** A name that cannot be is said, and the bench goes on by the one it has. */
  async function call({ answer }: Requests, name: string): Promise<void> {
    const called = await answer('shop.name-bench', { name })
    if (!called.ok) report(sentenceOf(called.problem))
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

/** Where there is a browser around the window, it prints. */
export function byBrowser(): Outcome<never> {
  return refused('pdf-by-browser', {})
}

function beingReplaced(): Outcome<never> {
  return refused('record-being-replaced', {})
}
