import { readFileSync, statSync } from 'node:fs'
import { basename, extname } from 'node:path'
import { mostExportCharacters } from '../../core/contract/index.ts'
import { mostSpecFileCharacters, specFileEnding } from '../../core/drafts/index.ts'
import type { OpenedFile, Output } from '../../core/contract/index.ts'
import { done, refused } from '../../core/problem/index.ts'
import type { Outcome } from '../../core/problem/index.ts'

type Content = OpenedFile['content']

/** Adds a spec to the engines; refused where it has no place among them. */
export type TakeSpec = (fileName: string, text: string) => Outcome<{ id: string; name: string }>

/**
 * The files that the program was asked to open, waiting for the window. One that was given to a window stays until that
 * window has said that it is dealt with, so that none is lost with a page that crashed.
 */
export class OpenedFiles {
  readonly #more: boolean
  #waiting: { readonly number: number; readonly path: string }[] = []
  #last = 0
  #wake = (): void => undefined

  /** @param more Whether files may be opened later on too. */
  constructor({ more }: { readonly more: boolean }) {
    this.#more = more
  }

  /** @param paths Whole paths. */
  open(paths: readonly string[]): void {
    for (const path of paths) this.#waiting.push({ number: (this.#last += 1), path })
    this.#wake()
  }

  async next(after: number, takeSpec: TakeSpec): Promise<Output<'files.opened'>> {
    this.#wake() // a window that asked before has gone
    this.#waiting = this.#waiting.filter(({ number }) => number > after)
    if (this.#waiting.length === 0 && this.#more) await new Promise<void>((resolve) => (this.#wake = resolve))
    const [first] = this.#waiting
    if (first === undefined) return { file: null, more: this.#more }
    const fileName = basename(first.path)
    return {
      file: { number: first.number, fileName, content: contentOf(first.path, takeSpec) },
      more: this.#more,
    }
  }
}

function contentOf(path: string, takeSpec: TakeSpec): Content {
  const read = readOpened(path)
  if (!read.ok) return { kind: 'refused', problem: read.problem }
  const ending = extname(path).toLowerCase()
  if (ending === '.bedplate') return { kind: 'build', text: read.value }
  if (ending === specFileEnding) return { kind: 'spec', text: read.value }
  const spec = takeSpec(basename(path), read.value)
  return spec.ok ? { kind: 'engine', ...spec.value } : { kind: 'refused', problem: spec.problem }
}

/** A mark of byte order is kept: it is a byte that an export does not have. */
function readOpened(path: string): Outcome<string> {
  if (!/\.(bedplate|bedplate-spec|json)$/i.test(path)) return refused('file-not-ours', {})
  const mostCharacters = path.toLowerCase().endsWith(specFileEnding)
    ? mostSpecFileCharacters
    : mostExportCharacters
  try {
    if (statSync(path).size > mostCharacters)
      return refused('import-too-large', { most: Math.floor(mostCharacters / 1024 / 1024) })
    return done(new TextDecoder('utf-8', { ignoreBOM: true }).decode(readFileSync(path)))
  } catch {
    return refused('file-unreadable', {})
  }
}
