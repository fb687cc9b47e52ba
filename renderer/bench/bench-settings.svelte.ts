import type { Client, Preferences } from '../../core/contract/index.ts'
import { usualPxPerMm, type Reader } from '../../core/layout/index.ts'
import type { Problem } from '../../core/problem/index.ts'
import type { Units } from '../../core/tightening/index.ts'
import { keptFor, withKept, type FaceViews } from './kept-by-build.ts'

/** What hears of a change of the settings. */
interface Listeners {
  readonly report: (problem: Problem) => void
  /** Hears of another language before the change counts as kept. */
  readonly languageChosen: (language: Preferences['language']) => Promise<unknown>
}

/** The preferences of this bench as the host keeps them, and what is read from them. */
export class BenchSettings {
  readonly #client: Client
  readonly #listeners: Listeners
  #kept = $state.raw<Preferences | null>(null)

  readonly #torque = $derived.by(() => this.#kept?.torqueUnit ?? 'N·m')
  readonly #length = $derived.by(() => this.#kept?.lengthUnit ?? 'mm')
  readonly #distance = $derived.by(() => this.#kept?.readingDistance ?? 1)
  readonly #pxPerMm = $derived.by(() => this.#kept?.screenPxPerMm ?? usualPxPerMm)
  /** The units this bench reads in. */
  readonly units: Units = $derived.by(() => ({ torque: this.#torque, length: this.#length }))
  /** What sizes of bores and journals are read and shown in: whole diameters, so never their small units. */
  readonly sizeUnit: 'mm' | 'in' = $derived.by(() => (['in', 'thou'].includes(this.#length) ? 'in' : 'mm'))
  /** How the screen of this bench is read. */
  readonly reader: Reader = $derived.by(() => ({ distance: this.#distance, pxPerMm: this.#pxPerMm }))

  constructor(client: Client, listeners: Listeners) {
    this.#client = client
    this.#listeners = listeners
  }

  /** Null until they are read. */
  get kept() {
    return this.#kept
  }

  /** Why they cannot be read, where they cannot. */
  async read(): Promise<Problem | null> {
    const answer = await this.#client.request('preferences.read', {})
    if (!answer.ok) return answer.problem
    this.#kept = answer.value
    return null
  }

  async keep(change: Partial<Preferences>) {
    const answer = await this.#client.request('preferences.keep', change)
    if (!answer.ok) return this.#listeners.report(answer.problem)
    this.#kept = answer.value
    if (change.language !== undefined) await this.#listeners.languageChosen(change.language)
  }

  /** How the faces of a build were looked at last. */
  viewsOf(build: string): FaceViews {
    return keptFor(this.#kept?.views ?? [], build)?.faces ?? {}
  }
  keepViews(build: string, faces: FaceViews) {
    return this.keep({ views: withKept(this.#kept?.views ?? [], { build, faces }) })
  }
}
