import type { PrintToPDFOptions } from 'electron'
import type { Line } from '../line.ts'
import type { LoadFailure, MadeWindow, OfTheProgram, OfTheTest, WindowEvent } from '../questions.ts'

export type ToProgram = Line<OfTheProgram, OfTheTest>

/** What a surface makes known to the test, besides what it tells the program. */
export type Note = (kind: string, about: object) => void

/** Where the one window of a played program shows. */
export interface Surface {
  open(made: MadeWindow, program: ToProgram, note: Note): Promise<void>
  load(url: string): Promise<LoadFailure | null>
  reload(): Promise<void>
  /** Ends the renderer, as a fault of its own would. */
  crash(): Promise<void>
  pdf(options: PrintToPDFOptions): Promise<Uint8Array>
  /** Lets go of the window: it was closed, or its program has ended. */
  close(): Promise<void>
}

/** A window without a page, for what depends on the main process alone: it loads whatever it is asked to. */
export class BlankSurface implements Surface {
  /** What becomes of what it is asked to load. */
  does: 'paints' | 'never paints' | 'fails' = 'paints'
  #window = 0
  #program: ToProgram | null = null

  open({ window }: MadeWindow, program: ToProgram): Promise<void> {
    this.#window = window
    this.#program = program
    return Promise.resolve()
  }

  load(url: string): Promise<LoadFailure | null> {
    if (this.does === 'fails') return Promise.resolve({ code: -6, text: 'ERR_FILE_NOT_FOUND' })
    this.#tell({ event: 'navigated', url })
    if (this.does === 'paints') this.#tell({ event: 'first-paint' })
    this.#tell({ event: 'loaded' })
    return Promise.resolve(null)
  }

  reload(): Promise<void> {
    return Promise.resolve()
  }

  crash(): Promise<void> {
    this.#tell({ event: 'render-process-gone', details: { reason: 'crashed', exitCode: 133 } })
    return Promise.resolve()
  }

  pdf(): Promise<Uint8Array> {
    return Promise.resolve(Buffer.from('%PDF-1.7'))
  }

  close(): Promise<void> {
    this.#program = null
    return Promise.resolve()
  }

  #tell(event: WindowEvent): void {
    this.#program?.tell('window-event', { window: this.#window, ...event })
  }
}
