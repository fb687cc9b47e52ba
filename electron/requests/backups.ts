import { accessSync, constants, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { isAbsolute, join, relative, sep } from 'node:path'
import type { BackupList } from '../../core/contract/index.ts'
import { done, problem, refused, type Outcome, type Problem } from '../../core/problem/index.ts'
import {
  backupFolder,
  backupProblem,
  backupsIn,
  copyBackup,
  secondFolderNote,
  type Backup,
  type Store,
} from '../store/index.ts'
import { told } from './answer.ts'

/** What is known of the backups of a data folder without opening its record. */
export function listBackups(
  dataFolder: string,
): Pick<BackupList, 'backups' | 'secondFolder'> & { files: ReadonlyMap<string, string> } {
  const secondFolder = secondFolderOf(dataFolder)
  const here = backupsIn(backupFolder(dataFolder))
  const names = new Set(here.map(({ name }) => name))
  const there = secondFolder === null ? [] : backupsIn(secondFolder).filter(({ name }) => !names.has(name))
  const backups = [
    ...here.map((backup) => lineOf(backup, 'data-folder')),
    ...there.map((backup) => lineOf(backup, 'second-folder')),
  ].sort((a, b) => (a.name < b.name ? 1 : -1))
  return { backups, secondFolder, files: new Map([...there, ...here].map(({ name, file }) => [name, file])) }
}

function lineOf({ file: _, ...backup }: Backup, place: 'data-folder' | 'second-folder') {
  return { ...backup, place }
}

function secondFolderOf(dataFolder: string): string | null {
  try {
    return readFileSync(secondFolderNote(dataFolder), 'utf8').trim() || null
  } catch {
    return null
  }
}

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

  constructor(given: {
    readonly store: Store
    readonly dataFolder: string
    readonly now: () => Date
    readonly failed: (error: unknown) => void
  }) {
    this.#store = given.store
    this.#folder = given.dataFolder
    this.#now = given.now
    this.#failed = given.failed
  }

  list(): BackupList {
    const { backups, secondFolder } = listBackups(this.#folder)
    const trouble = this.#trouble && told(this.#trouble)
    return { backups, secondFolder, running: this.#making !== null, trouble }
  }

  /** Makes one, unless nothing was ever recorded or today's is there. Looked at every minute or so. */
  daily(): void {
    if (this.#making !== null || this.#trouble !== null) return
    const today = this.#now().toISOString().slice(0, 10)
    const [newest] = backupsIn(backupFolder(this.#folder))
    if (newest?.at.startsWith(today) !== true && !this.#isEmpty()) void this.make()
  }

  /** A record that cannot be read is not empty: that its backup fails is then told. */
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
      mkdirSync(backupFolder(this.#folder), { recursive: true, mode: 0o700 })
      if (folder === null) rmSync(secondFolderNote(this.#folder), { force: true })
      else writeFileSync(secondFolderNote(this.#folder), `${folder}\n`, { mode: 0o600 })
      this.#trouble = null
      return done(null)
    } catch (error) {
      return { ok: false, problem: backupProblem(error, backupFolder(this.#folder)) }
    }
  }

  #faultOf(folder: string): 'relative' | 'missing' | 'closed' | 'own' | null {
    if (!isAbsolute(folder) || /[\0\r\n]/.test(folder)) return 'relative'
    const within = relative(this.#folder, folder)
    if (within === '' || (within.split(sep)[0] !== '..' && !isAbsolute(within))) return 'own'
    try {
      if (!statSync(folder).isDirectory()) return 'missing'
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

  async #run(): Promise<void> {
    do {
      this.#wanted = false
      const made = await this.#store.backUp(backupFolder(this.#folder), this.#now(), this.#stop.signal)
      this.#trouble = made.ok ? null : made.problem
      if (made.ok && made.value !== null) await this.#copy(made.value)
    } while (this.#wanted && !this.#stop.signal.aborted)
  }

  async #copy(backup: Backup): Promise<void> {
    const second = secondFolderOf(this.#folder)
    if (second === null) return
    const copied = await copyBackup(backup, second)
    if (!copied.ok) this.#trouble = copied.problem
  }
}
