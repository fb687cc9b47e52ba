import type { RequestName } from '../../core/contract/index.ts'
import { done, refused, type Outcome } from '../../core/problem/index.ts'
import { fileProblem } from '../store/index.ts'
import type { Store, Witness } from '../store/index.ts'
import { answering } from './answer.ts'
import type { AnswerRequest } from './answer.ts'
import { archiveRequests } from './exchange/archive.ts'
import { OpenBuildCache } from './open-build-cache.ts'
import { BackupKeeper } from './backups.ts'
import { buildRequests } from './builds.ts'
import { draftRequests } from './drafts.ts'
import { doctorLines } from './doctor.ts'
import { findRequest } from './find.ts'
import type { HostFacts } from './host-facts.ts'
import { EngineShelf } from './engine-shelf.ts'
import { engineRequests } from './engines.ts'
import type { Handlers, HandlersOf } from './handlers.ts'
import { ListedNames } from './listed-names.ts'
import { libraryRequests } from './library.ts'
import { OpenedFiles } from './opened-files.ts'
import { People } from './people.ts'
import { practiceRequests } from './practice.ts'
import { revisionRequests } from './revisions.ts'
import { photoRequests } from './photos.ts'
import { pictureRequests } from './pictures.ts'
import { preferenceRequests } from './preferences.ts'
import { reportingStore } from './shop/reporting-store.ts'
import { ShopDesk, type ShopServices } from './shop/shop-desk.ts'
import { shopRequests } from './shop/shop.ts'
import type { Engine } from './specs.ts'
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
  /** The way to the archive of a shop; none when absent. */
  readonly shop?: Omit<ShopServices, 'store' | 'openBuilds' | 'now' | 'program'> | undefined
}

/** Makes a PDF of the page in the window. */
export type SavePdf = HandlersOf<'sheet'>['sheet.pdf']

/** Puts what the window made into a file. */
export type SaveFile = HandlersOf<'files'>['files.save']

/** Puts the backup of this name in the place of the record, and answers with the name the present file was given. */
export type Restore = HandlersOf<'backups'>['backups.restore']

export type BeginEmpty = HandlersOf<'record'>['record.begin-empty']

/** All requests of the contract, answered from a record; `stop` ends what goes on in the background. */
export interface Requests {
  readonly answer: AnswerRequest
  readonly stop: () => Promise<void>
}

/** All requests of the contract, answered from the given store and engines. */
export function createRequests(services: HostServices, restore: Restore = notHere): Requests {
  const { facts, now, report, openedFiles = new OpenedFiles({ more: false }) } = services
  const store = reportingStore(services.store, {
    added: (build) => desk.noted(build),
    listChanged: (list) => desk.listChanged(list),
  })
  const shelf = new EngineShelf(services.engines, store)
  const failed = (name: RequestName, error: unknown): void => report(`${name}: ${traceOf(error)}`)
  const openBuilds = new OpenBuildCache(store)
  const names = new ListedNames(store)
  const desk = new ShopDesk({
    ...(services.shop ?? withoutShop),
    ...{ store: services.store, openBuilds, now, program: facts.version },
  })
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
          lost === null ? desk.state().joined : null,
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
    ...pictureRequests(store),
    ...people.handlers,
    ...practiceRequests({ store, engines: shelf, people, now }),
    ...buildRequests({
      ...services,
      store,
      shop: desk,
      engines: shelf,
      openBuilds,
      names,
      people,
      finished: () => void keeper.make(),
    }),
    ...revisionRequests({ store, openBuilds, people, shop: desk, now }),
    ...photoRequests({ store, openBuilds, people, shop: desk, now }),
    ...archiveRequests({ store, openBuilds, now, keepHead }),
    ...findRequest({ store, openBuilds, names, desk }),
    ...shopRequests({ store, desk }),
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
      await desk.stop()
      await keeper.stop()
    },
  }
}

function monotonicMs(): number {
  return performance.now()
}

/** For requests on a store that somebody else opened and holds: there is nothing to put in its place. */
function notHere(): Outcome<never> {
  return refused('backup-unknown', {}, 'name')
}

/** Where there is no way to an archive: a shop that was joined cannot be reached. */
const withoutShop: Omit<ShopServices, 'store' | 'openBuilds' | 'now' | 'program'> = {
  openArchive: null,
  secret: { read: () => done(null), keep: () => undefined, forget: () => undefined, place: () => 'file' },
  machine: '',
  random: Math.random,
}
