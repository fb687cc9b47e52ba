import { problem } from '../../core/problem/index.ts'
import type { Outcome, Problem } from '../../core/problem/index.ts'
import type { AnswerRequest } from '../requests/index.ts'

/** What is behind the window once the record is open. */
export interface OpenedRecord {
  readonly answer: AnswerRequest
  readonly flush: () => void
  readonly close: () => Promise<void>
}

/** A record held by a Bedplate that is just ending is tried for again, so many times and so far apart. */
const tries = 12
const betweenTriesMs = 250

/**
 * The record of the window, which is opened only when the window first asks for something and is on the screen: a slow check
 * then looks like what it is, and not like a program that does not start. Requests wait meanwhile.
 */
export class RecordLink {
  readonly #open: () => Promise<Outcome<OpenedRecord>>
  readonly #shown: Promise<unknown>
  readonly #refused: (why: Problem) => void
  #opening: Promise<OpenedRecord | null> | null = null
  #opened: OpenedRecord | null = null
  #closing: Promise<void> | null = null

  constructor(behaviour: {
    readonly open: () => Promise<Outcome<OpenedRecord>>
    /** Resolves when the window is on the screen. */
    readonly shown: Promise<unknown>
    /** The record cannot be opened, and no backup is a way out. */
    readonly refused: (why: Problem) => void
  }) {
    this.#open = behaviour.open
    this.#shown = behaviour.shown
    this.#refused = behaviour.refused
  }

  readonly answer: AnswerRequest = async (name, input) => {
    await this.#shown
    if (this.#closing !== null) return hostLost()
    this.#opening ??= this.#openOnce()
    const record = await this.#opening
    return record === null ? hostLost() : record.answer(name, input)
  }

  /** Before the machine sleeps or ends. Done when it returns: the system may not wait for more. */
  readonly flush = (): void => {
    if (this.#closing === null) this.#opened?.flush()
  }

  /** Closes the record, once, whether it is open, is being opened or never was. */
  close(): Promise<void> {
    this.#closing ??= Promise.resolve(this.#opening).then((record) => record?.close())
    return this.#closing
  }

  async #openOnce(): Promise<OpenedRecord | null> {
    for (let tried = 1; ; tried += 1) {
      const opened = await this.#open()
      if (opened.ok) return (this.#opened = opened.value)
      if (opened.problem.code !== 'record-in-use' || tried === tries || this.#closing !== null) {
        if (this.#closing === null) this.#refused(opened.problem)
        return null
      }
      await new Promise((resolve) => setTimeout(resolve, betweenTriesMs))
    }
  }
}

function hostLost(): Awaited<ReturnType<AnswerRequest>> {
  return { ok: false, problem: problem('host-lost', {}) }
}
