import { spawn, type ChildProcess } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { createServer, type Server, type Socket } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import type { SaveDialogOptions } from 'electron'
import { writeBinary } from '../binary.ts'
import { Line, type Answers } from '../line.ts'
import type { OfTheTest } from '../questions.ts'
import { packedVariable } from '../program/packed.ts'
import type { Surface, ToProgram } from './surface.ts'

const root = join(import.meta.dirname, '../../..')

/** What the person in front of the played program does when it asks. */
export interface Person {
  /** Where a file is to go; `null` closes the dialog. */
  saveAt(options: SaveDialogOptions): string | null | Promise<string | null>
  /** Which button of a message is pressed, counted from 0. */
  press(message: string, buttons: readonly string[]): number
}

export interface Entry {
  readonly kind: string
  readonly [fact: string]: unknown
}

/** What one started program has told the test, in the order it was told. */
export class ProgramLog {
  readonly entries: Entry[] = []
  readonly #waiting = new Set<(entry: Entry) => void>()

  note(kind: string, about: object | null = {}): void {
    const entry = { ...about, kind }
    this.entries.push(entry)
    for (const listener of this.#waiting) listener(entry)
  }

  all(kind: string): Entry[] {
    return this.entries.filter((entry) => entry.kind === kind)
  }

  /** The first entry of a kind after so many of them, told already or still to come. */
  async next(kind: string, after = 0): Promise<Entry> {
    const past = this.all(kind)[after]
    if (past !== undefined) return past
    return new Promise((resolve) => {
      const listen = (): void => {
        const entry = this.all(kind)[after]
        if (entry === undefined) return
        this.#waiting.delete(listen)
        resolve(entry)
      }
      this.#waiting.add(listen)
    })
  }
}

/** One start of the played program. */
export class Program {
  readonly log = new ProgramLog()
  readonly line: ToProgram
  /** When nothing more can come from it, however it ended. */
  readonly gone: Promise<void>
  pid = 0

  constructor(socket: Socket, answers: (program: Program) => Answers<OfTheTest>) {
    this.line = new Line(socket, answers(this))
    this.gone = new Promise((resolve) => socket.once('close', () => resolve()))
  }

  /** Ends as a power cut would have it: nothing is tidied up. */
  async kill(): Promise<void> {
    if (this.pid !== 0) killIfThere(this.pid)
    await this.gone
  }
}

export interface Ended {
  readonly code: number | null
  readonly signal: NodeJS.Signals | null
}

/** A start that the test made itself, so that it also knows how it ended and what it printed. */
export interface Started {
  readonly program: Program
  readonly child: ChildProcess
  readonly ended: Promise<Ended>
  readonly output: () => string
}

/** Electron's program, played: starts it, answers it, and shows its window on a surface. */
export class StandIn {
  readonly folder = mkdtempSync(join(tmpdir(), 'stand-in-'))
  readonly programs: Program[] = []
  person: Person = { saveAt: () => null, press: () => 0 }
  readonly #surface: Surface
  readonly #server: Server
  readonly #arrivals = new Set<(program: Program) => void>()
  readonly #children = new Set<ChildProcess>()

  private constructor(surface: Surface) {
    this.#surface = surface
    this.#server = createServer((socket) => {
      socket.on('error', () => undefined)
      this.programs.push(new Program(socket, (program) => this.#answers(program)))
    })
  }

  static async on(surface: Surface): Promise<StandIn> {
    const made = new StandIn(surface)
    await new Promise<void>((resolve) => made.#server.listen(join(made.folder, 'socket'), resolve))
    return made
  }

  /** A program for a launcher to spawn. */
  get binary(): string {
    return writeBinary(this.folder, join(this.folder, 'socket'))
  }

  /** The next program that starts, by whatever start. */
  arrival(): Promise<Program> {
    return new Promise((resolve) => {
      const arrived = (program: Program): void => {
        this.#arrivals.delete(arrived)
        resolve(program)
      }
      this.#arrivals.add(arrived)
    })
  }

  /** Starts the program as `electron FOLDER …` does, from the project or from another folder that has a `package.json`. */
  start(
    words: readonly string[],
    env: Readonly<Record<string, string>> = {},
    folder = root,
  ): Promise<Started> {
    return this.#spawn([folder, ...words], env)
  }

  /** Starts a program that was packed: `folder` stands for the archive in its resources. */
  startPacked(
    folder: string,
    words: readonly string[],
    env: Readonly<Record<string, string>>,
  ): Promise<Started> {
    return this.#spawn(words, { ...env, [packedVariable]: folder })
  }

  async #spawn(words: readonly string[], env: Readonly<Record<string, string>>): Promise<Started> {
    const child = spawn(this.binary, words, {
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...process.env, ...env },
    })
    this.#children.add(child)
    let output = ''
    for (const stream of [child.stdout, child.stderr])
      stream.on('data', (chunk: Buffer) => (output += chunk.toString()))
    const ended = new Promise<Ended>((resolve) =>
      child.once('close', (code, signal) => resolve({ code, signal })),
    )
    // What it said may be read only after it has ended.
    const late = ended.then(() => after(5_000, 'never', { ref: false }))
    const program = await Promise.race([this.#withPid(child.pid), late])
    if (typeof program === 'string') throw new Error(`it ended before it started: ${output}`)
    return { program, child, ended, output: () => output }
  }

  async close(): Promise<void> {
    for (const child of this.#children) if (child.exitCode === null) child.kill('SIGKILL')
    for (const { pid, log } of this.programs) if (pid !== 0 && log.all('ended').length === 0) killIfThere(pid)
    await this.#surface.close()
    this.#server.close()
    rmSync(this.folder, { recursive: true, force: true })
  }

  async #withPid(pid: number | undefined): Promise<Program> {
    for (;;) {
      const found = this.programs.find((program) => program.pid === pid)
      if (found !== undefined) return found
      await this.arrival()
    }
  }

  #answers(program: Program): Answers<OfTheTest> {
    const { log } = program
    const note =
      <Input extends object | null>(kind: string) =>
      (input: Input): void =>
        log.note(kind, input)
    let opened = Promise.resolve()
    return {
      started: ({ pid, argv }) => {
        program.pid = pid
        log.note('started', { pid, argv })
        for (const arrived of this.#arrivals) arrived(program)
      },
      ready: note('ready'),
      ended: note('ended'),
      warning: note('warning'),
      'error-box': note('error-box'),
      'message-box': ({ options }) => {
        log.note('message-box', options)
        return this.person.press(options.message, options.buttons ?? [])
      },
      'save-dialog': async ({ options }) => {
        log.note('save-dialog', options)
        const filePath = await this.person.saveAt(options)
        return filePath === null ? { canceled: true, filePath: '' } : { canceled: false, filePath }
      },
      menu: note('menu'),
      'context-menu': note('context-menu'),
      'keep-awake': note('keep-awake'),
      window: (made) => {
        opened = this.#surface.open(made, program.line, (kind, about) => log.note(kind, about))
        log.note('window', made)
        return opened
      },
      shown: note('shown'),
      focused: note('focused'),
      bounds: note('bounds'),
      gone: async (input) => {
        log.note('gone', input)
        await this.#surface.close()
      },
      load: async ({ url }) => {
        await opened
        log.note('load', { url })
        return this.#surface.load(url)
      },
      reload: async (input) => {
        log.note('reload', input)
        await this.#surface.reload()
      },
      crash: () => this.#surface.crash(),
      'full-screen': note('full-screen'),
      copied: note('copied'),
      pdf: ({ options }) => {
        log.note('pdf', options)
        return this.#surface.pdf(options)
      },
      popups: note('popups'),
    }
  }
}

function killIfThere(pid: number): void {
  try {
    process.kill(pid, 'SIGKILL')
  } catch {
    // It has ended already.
  }
}
