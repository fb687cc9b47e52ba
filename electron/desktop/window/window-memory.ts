import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { z } from 'zod'
import { preferences } from '../../../core/contract/index.ts'
import { windowPlace } from './window-place.ts'

const remembered = z.strictObject({
  place: windowPlace.nullable().catch(null),
  /** What the bench chose last, so that the window has its ground before the record is open. */
  theme: preferences.shape.theme.catch('as-the-system'),
  /** The language that the bench chose last; null for that of the system. */
  language: preferences.shape.language.catch(null),
  /** Where a file was saved last; null when none was. */
  saveFolder: z.string().nullable().catch(null),
})
export type WindowSettings = z.output<typeof remembered>

const atFirst: WindowSettings = { place: null, theme: 'as-the-system', language: null, saveFolder: null }

/**
 * What the window remembers between starts and the record has no part in. It is done without where it cannot be read or
 * written, and a part of it that makes no sense is as it is at first.
 */
export class WindowMemory {
  readonly #file: string
  #now: WindowSettings

  constructor(file: string) {
    this.#file = file
    this.#now = read(file)
  }

  get now(): WindowSettings {
    return this.#now
  }

  keep(change: Partial<WindowSettings>): void {
    const next = { ...this.#now, ...change }
    if (JSON.stringify(next) === JSON.stringify(this.#now)) return
    this.#now = next
    try {
      mkdirSync(dirname(this.#file), { recursive: true, mode: 0o700 })
      writeFileSync(`${this.#file}.new`, JSON.stringify(next), { mode: 0o600 })
      renameSync(`${this.#file}.new`, this.#file) // in one go: a start meanwhile reads the old or the new
    } catch {
      // remembered until the program ends, then
    }
  }
}

function read(file: string): WindowSettings {
  try {
    const parsed = remembered.safeParse({ ...atFirst, ...(JSON.parse(readFileSync(file, 'utf8')) as object) })
    return parsed.success ? parsed.data : atFirst
  } catch {
    return atFirst
  }
}
