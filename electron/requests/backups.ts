import { accessSync, constants, existsSync, realpathSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { isAbsolute, join, relative, sep } from 'node:path'
import type { BackupList } from '../../core/contract/index.ts'
import { done, problem, refused } from '../../core/problem/index.ts'
import type { Outcome, Problem } from '../../core/problem/index.ts'
import {
  appendWitnesses,
  backupFolder,
  backupProblem,
  backupsIn,
  copyBackup,
  keepMarker,
  keepSecondFolder,
  newerFirst,
  ownBackups,
  readMarker,
  readWitnesses,
  secondFolderOf,
} from '../store/index.ts'
import type { Backup, BackupPlace, Store, Witness } from '../store/index.ts'

/** What is known of the backups of a data folder without opening its record: those of `bench` first. */
export function listBackups(
  dataFolder: string,
  bench = readMarker(dataFolder)?.bench ?? null,
): Pick<BackupList, 'backups' | 'secondFolder'> & { files: ReadonlyMap<string, string> } {
  const secondFolder = secondFolderOf(dataFolder)
  const here = backupsIn(backupFolder(dataFolder))
  const names = new Set(here.map(({ name }) => name))
  const there = secondFolder === null ? [] : backupsIn(secondFolder).filter(({ name }) => !names.has(name))
  const backups = [
    ...here.map((backup) => lineOf(backup, 'data-folder', backup.bench === null || backup.bench === bench)),
    ...there.map((backup) => lineOf(backup, 'second-folder', backup.bench === bench)),
  ].sort((a, b) => Number(b.own) - Number(a.own) || newerFirst(a, b))
  return {
    backups: backups.map(({ bench: _, sequence: __, ...line }) => line),
    secondFolder,
    files: new Map([...there, ...here].map(({ name, file }) => [name, file])),
  }
}

function lineOf({ file: _, ...backup }: Backup, place: 'data-folder' | 'second-folder', own: boolean) {
  return { ...backup, place, own }
}

/** How long a backup that could not be made is not tried again by itself. */
const triedAgainAfterMs = 3_600_000

/** Makes the backups of an open record, one at a time, and remembers what went wrong. */
export class BackupKeeper {
  readonly #store: Store
  readonly #folder: string
  readonly #now: () => Date
  readonly #failed: (error: unknown) => void
  readonly #stop = new AbortController()
  #making: Promise<void> | null = null
  #wanted = false
  #trouble: Problem | null = null
  /** By the clock, when one could not be made at all; null after one that was. */
  #failedAt: number | null = null

  constructor(services: {
    readonly store: Store
    readonly dataFolder: string
    readonly now: () => Date
    readonly failed: (error: unknown) => void
  }) {
    this.#store = services.store
    this.#folder = services.dataFolder
    this.#now = services.now
    this.#failed = services.failed
  }

  list(): BackupList {
    const { backups, secondFolder } = listBackups(this.#folder, this.#store.bench)
    const trouble = this.#trouble
    return { backups, secondFolder, running: this.#making !== null, trouble }
  }

  /** Makes one, unless nothing was ever recorded or today's is there. Looked at every minute or so. */
  daily(): void {
    if (this.#making !== null || this.#store.problem() !== null) return
    const now = this.#now()
    if (this.#failedAt !== null && Math.abs(now.getTime() - this.#failedAt) < triedAgainAfterMs) return
    const today = now.toISOString().slice(0, 10)
    const [newest] = this.#own(backupFolder(this.#folder), true)
    if (newest?.at.startsWith(today) !== true && !this.#isEmpty()) void this.make()
  }

  /** A record that cannot be read is not empty: that its backup fails is then reported. */
  #isEmpty(): boolean {
    try {
      return this.#store.builds({ most: 1 }).length === 0
    } catch {
      return false
    }
  }

  /** Resolves when one that was begun after the call is made; what went wrong is in the list. Never rejects. */
  make(): Promise<void> {
    if (this.#making !== null) {
      this.#wanted = true
      return this.#making
    }
    if (this.#stop.signal.aborted) return Promise.resolve()
    this.#making = this.#run()
      .catch((error: unknown) => {
        this.#trouble = problem('program-fault', {})
        this.#failed(error)
      })
      .finally(() => (this.#making = null))
    return this.#making
  }

  /** Ends what is being made, and makes none any more. */
  async stop(): Promise<void> {
    this.#stop.abort()
    await this.#making
  }

  keepIn(folder: string | null): Outcome<null> {
    const fault = folder === null ? null : this.#faultOf(folder)
    if (folder !== null && fault !== null) return refused('backup-folder-wrong', { folder, fault }, 'folder')
    try {
      keepSecondFolder(this.#folder, folder)
      keepMarker({ bench: this.#store.bench, dataFolder: this.#folder, secondFolder: folder })
      if (folder !== null) appendWitnesses(folder, this.#store.bench, this.#store.witnesses())
      this.#trouble = null
      return done(null)
    } catch (error) {
      return { ok: false, problem: backupProblem(error, backupFolder(this.#folder)) }
    }
  }

  #faultOf(folder: string): 'relative' | 'missing' | 'closed' | 'own' | null {
    if (!isAbsolute(folder) || /[\0\r\n]/.test(folder)) return 'relative'
    if (isWithin(this.#folder, folder)) return 'own'
    try {
      if (!statSync(folder).isDirectory()) return 'missing'
      // By way of a link. Of a data folder that was taken away while it was in use, nothing can be a part.
      if (existsSync(this.#folder) && isWithin(realpathSync(this.#folder), realpathSync(folder))) return 'own'
    } catch {
      return 'missing'
    }
    try {
      accessSync(folder, constants.W_OK)
      const probe = join(folder, '.bedplate-probe')
      writeFileSync(probe, '')
      rmSync(probe)
      return null
    } catch {
      return 'closed'
    }
  }

  /** Keeps a head that is given out, in the record and in the second folder, where there is one. */
  keepHead(witness: Witness): Outcome<null> {
    const kept = this.#store.keepWitness(witness)
    if (kept.ok) this.#copyWitnesses()
    return kept
  }

  /** The heads that are kept outside the record: what was written again in the one may stand in the other. */
  outsideWitnesses(): readonly Witness[] {
    const second = secondFolderOf(this.#folder)
    return second === null ? [] : readWitnesses(second, this.#store.bench)
  }

  /** A verified copy of what the record holds in memory, which may be all there is of it. */
  async copyTo(folder: string | null): Promise<Outcome<{ file: string; builds: number; entries: number }>> {
    if (folder !== null) {
      const fault = this.#faultOf(folder)
      if (fault !== null && fault !== 'own')
        return refused('backup-folder-wrong', { folder, fault }, 'folder')
    }
    const made = await this.#store.backUp(this.#place(folder ?? backupFolder(this.#folder)))
    if (!made.ok) return made
    if (made.value === null) return refused('record-being-replaced', {})
    const { file, builds, entries } = made.value
    return done({ file, builds, entries })
  }

  #own(folder: string, unnamedToo: boolean): readonly Backup[] {
    return ownBackups(backupsIn(folder), this.#store.bench, unnamedToo)
  }

  #place(folder: string): BackupPlace {
    const second = secondFolderOf(this.#folder)
    const known = [backupFolder(this.#folder), ...(second === null ? [] : [second])]
    const after = Math.max(0, ...known.flatMap((each) => this.#own(each, false).map((it) => it.sequence)))
    const rotate = folder === backupFolder(this.#folder)
    return { folder, at: this.#now(), after, rotate, signal: this.#stop.signal }
  }

  async #run(): Promise<void> {
    do {
      this.#wanted = false
      const made = await this.#store.backUp(this.#place(backupFolder(this.#folder)))
      this.#failedAt = made.ok ? null : this.#now().getTime()
      this.#trouble = made.ok ? null : made.problem
      if (!made.ok || made.value === null) continue
      const { at, entries, head, broken } = made.value
      this.#store.keepWitness({ kind: 'backup', build: '', entries, head, at })
      if (broken > 0) this.#trouble = problem('backup-carries-broken', { count: broken })
      await this.#copy(made.value)
    } while (this.#wanted && !this.#stop.signal.aborted)
  }

  async #copy(backup: Backup): Promise<void> {
    const second = secondFolderOf(this.#folder)
    if (second === null) return
    const copied = await copyBackup(backup, second)
    if (copied.ok) this.#copyWitnesses()
    else this.#trouble = copied.problem
  }

  #copyWitnesses(): void {
    const second = secondFolderOf(this.#folder)
    try {
      if (second !== null) appendWitnesses(second, this.#store.bench, this.#store.witnesses())
    } catch (error) {
      this.#trouble = backupProblem(error, second ?? '')
    }
  }
}

function isWithin(outer: string, inner: string): boolean {
  const way = relative(outer, inner)
  return way === '' || (way.split(sep)[0] !== '..' && !isAbsolute(way))
}
