import { test } from '@playwright/test'
import type { Page } from '@playwright/test'
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { expect } from '@playwright/test'
import { engineFolder } from '../../engine-files.ts'
import { laws, type LawName } from '../laws.ts'
import { ChromiumSurface } from '../page/chromium.ts'
import { StandIn, type Started } from '../page/stand-in.ts'
import { BlankSurface } from '../page/surface.ts'

const root = join(import.meta.dirname, '../../..')

/** A text of a built file, and what stands there instead. It must be there once. */
export interface Edit {
  readonly in?: 'main.js' | 'preload.cjs'
  readonly text: string
  readonly becomes: string
}

/** How long a broken main is given to show what it does. One that keeps the laws has as long as it needs. */
const brokenGetsMs = 4_000

/** One main on a data folder of its own: the built one, or a copy that was edited. */
export class Trial {
  readonly standIn: StandIn
  readonly surface: BlankSurface | ChromiumSurface
  readonly folder = mkdtempSync(join(tmpdir(), 'law-'))
  readonly data = join(this.folder, 'data')
  readonly sign = join(this.folder, 'sign')
  readonly #program: string
  readonly #specs = engineFolder(['fen-1'])
  readonly #isBroken: boolean

  private constructor(
    standIn: StandIn,
    surface: Trial['surface'],
    edits: readonly Edit[],
    isBroken: boolean,
  ) {
    this.standIn = standIn
    this.surface = surface
    this.#isBroken = isBroken
    this.#program = edits.length === 0 ? root : editedCopy(join(this.folder, 'program'), edits)
  }

  static async of(page: Page | null, edits: readonly Edit[], isBroken: boolean): Promise<Trial> {
    const surface = page === null ? new BlankSurface() : new ChromiumSurface(page)
    return new Trial(await StandIn.on(surface), surface, edits, isBroken)
  }

  /** Starts it with one engine to build: to read all of them is half the work of a start, and no law is about them. */
  start(
    words: readonly string[] = ['--data', this.data],
    env: Readonly<Record<string, string>> = {},
  ): Promise<Started> {
    const own = { XDG_STATE_HOME: join(this.folder, 'state'), BEDPLATE_SIGN: this.sign }
    return this.standIn.start(['--specs', this.#specs, ...words], { ...own, ...env }, this.#program)
  }

  /** Starts it and waits until its window shows. */
  async shown(): Promise<Started> {
    const started = await this.start()
    await this.soon(started.program.log.next('shown'))
    return started
  }

  /** What comes first: a window, or an end with its code and signal. */
  async comesUp({ program, ended }: Started): Promise<unknown> {
    const shown = program.log.next('shown').then(() => 'shown')
    return this.soon(Promise.race([shown, ended]))
  }

  /** Waits as long as it takes; on a broken main a while, as what is waited for may never come. */
  async soon<Value>(what: Promise<Value>): Promise<Value | 'nothing'> {
    if (!this.#isBroken) return what
    return Promise.race([what, after(brokenGetsMs, 'nothing' as const, { ref: false })])
  }

  /** Asks as the page does, from a frame. */
  async request(
    { program }: Started,
    name: string,
    input: object = {},
    frame: { url: string; isMain: boolean } | null = { url: 'bedplate://app/index.html', isMain: true },
  ): Promise<{ ok: boolean; value?: unknown; problem?: { code: string; facts: object } } | string> {
    const answer = await program.line.ask('invoke', {
      window: 1,
      channel: 'bedplate-request',
      args: [name, JSON.stringify(input)],
      frame,
    })
    return 'error' in answer ? answer.error : (JSON.parse(answer.result as string) as never)
  }

  /** Whether SQLite’s log was folded in and taken away, as at a close. */
  get isRecordClosed(): boolean {
    return (
      existsSync(join(this.data, 'bedplate.sqlite')) && !existsSync(join(this.data, 'bedplate.sqlite-wal'))
    )
  }

  get signLeft(): string | null {
    return existsSync(this.sign) ? readFileSync(this.sign, 'utf8') : null
  }

  async end(): Promise<void> {
    await this.standIn.close()
    rmSync(this.folder, { recursive: true, force: true })
  }
}

/** The project’s built program in another folder, with some texts of it replaced. */
function editedCopy(folder: string, edits: readonly Edit[]): string {
  const built = join(folder, 'dist/desktop')
  mkdirSync(built, { recursive: true })
  cpSync(join(root, 'package.json'), join(folder, 'package.json'))
  for (const name of ['main.js', 'preload.cjs'] as const) {
    const text = readFileSync(join(root, 'dist/desktop', name), 'utf8')
    const own = edits.filter((edit) => (edit.in ?? 'main.js') === name)
    writeFileSync(join(built, name), own.reduce(edited, text))
  }
  for (const name of ['dist/renderer', 'node_modules', 'specs', 'assets'])
    symlinkSync(join(root, name), join(folder, name))
  return folder
}

function edited(text: string, edit: Edit): string {
  const parts = text.split(edit.text)
  if (parts.length !== 2) throw new Error(`in the built file ${parts.length - 1} times: ${edit.text}`)
  return parts.join(edit.becomes)
}

/**
 * Tests that main keeps a law: `seen` is what can be seen of it, `kept` is what that is where the law is kept; where main is
 * `broken` it must be something else, or the test could not fail. `given` is changed in both, to bring about what the law is
 * about.
 */
export function testLaw(
  name: LawName,
  about: {
    readonly seen: (trial: Trial) => Promise<unknown>
    readonly kept: unknown
    readonly broken: readonly Edit[]
    readonly given?: readonly Edit[]
    readonly inPage?: boolean
  },
): void {
  const { law, main } = laws[name]
  const once = async (page: Page | null, edits: readonly Edit[], isBroken: boolean): Promise<unknown> => {
    const trial = await Trial.of(page, edits, isBroken)
    try {
      return await about.seen(trial)
    } finally {
      await trial.end()
    }
  }
  const { given = [], broken, kept, inPage = false } = about
  const title = `${law}. Main ${main}`
  // Side by side: a broken one is mostly waited for.
  const both = async (keeps: Page | null, breaks: Page | null): Promise<void> => {
    const [whole, edited] = await Promise.all([
      once(keeps, given, false),
      once(breaks, [...given, ...broken], true),
    ])
    expect(whole).toEqual(kept)
    expect(edited).not.toEqual(kept)
  }
  if (inPage)
    test(title, async ({ page, browser }) => {
      const other = await browser.newContext()
      try {
        await both(page, await other.newPage())
      } finally {
        await other.close()
      }
    })
  else test(title, () => both(null, null))
}
