import { bearingKindOn, inUnitOf, type NewThing } from '../../../core/drafts/index.ts'
import type { FacePart } from '../../../core/engine/index.ts'
import type { Point } from '../../../core/plane/index.ts'
import type { Words } from '../../../core/words/index.ts'
import type { EditorDesk } from '../editor-desk.svelte.ts'
import { PathWork } from './path-work.svelte.ts'

type Kind = NewThing['kind']

/** What is placed by the next tap on the drawing, with its sizes as they are typed. */
export class PlaceWork {
  readonly #desk: EditorDesk
  readonly #words: () => Words
  readonly path: PathWork
  #kind = $state<Kind>('fastener')
  #group = $state('')
  #bead = $state('')
  of = $state<FacePart['kind']>('seal')
  way = $state<'inwards' | 'outwards' | ''>('')
  name = $state('')
  sizes = $state({ diameter: '', width: '', shaft: '', along: '', across: '' })

  readonly kinds: readonly Kind[] = $derived.by(() => {
    const { document, face, subject } = this.#desk
    if (subject === 'parts') return ['fastener', 'dowel', 'oil-passage', 'face-part']
    if (subject === 'outline') return ['corner']
    if (subject === 'beads') return this.beads.length === 0 ? [] : ['bead-point', 'keep-out']
    const kind = bearingKindOn(document, face)
    return kind === null ? [] : [kind]
  })
  readonly beads = $derived.by(() => this.#desk.spec.beads.filter(({ face }) => face === this.#desk.face))

  constructor(desk: EditorDesk, words: () => Words) {
    this.#desk = desk
    this.#words = words
    this.path = new PathWork(desk)
  }

  /** Null where the face has nothing of what is worked on. */
  get kind(): Kind | null {
    return this.kinds.includes(this.#kind) ? this.#kind : (this.kinds[0] ?? null)
  }
  choose(kind: Kind) {
    this.#kind = kind
  }
  get group(): string {
    const groups = this.#desk.document.fastenerGroups
    return groups.some(({ id }) => id === this.#group) ? this.#group : (groups[0]?.id ?? '')
  }
  set group(to: string) {
    this.#group = to
  }
  get bead(): string {
    return this.beads.some(({ id }) => id === this.#bead) ? this.#bead : (this.beads[0]?.id ?? '')
  }
  set bead(to: string) {
    this.#bead = to
  }

  async place(at: Point): Promise<void> {
    if (this.path.kind !== null) return this.path.add(at)
    const thing = this.#made(at)
    if (thing !== null) await this.#desk.place(at, thing)
  }

  /** What stands beside a fastener, until a person says it better: its nearest saddle and its side. */
  whereOf({ x, y }: Point): string {
    const { saddles, sides } = this.#desk.spec.case
    const [nearest] = saddles.toSorted((one, other) => Math.abs(one.at - x) - Math.abs(other.at - x))
    const side = y === 0 ? '' : y > 0 ? sides.plus : sides.minus
    const words = this.#words()
    return nearest === undefined
      ? words.editor.place.onFace({ side })
      : words.editor.place.where({ saddle: nearest.id, side })
  }

  #made(at: Point): NewThing | null {
    const { kind, name } = this
    const { oilWay } = this.#words().editor.place
    switch (kind) {
      case 'fastener':
        return this.group === '' ? null : { kind, group: this.group, where: this.whereOf(at) }
      case 'dowel':
        return { kind, diameter: this.#length('diameter') }
      case 'saddle':
      case 'rod':
      case 'balance':
        return { kind, diameter: this.#length('diameter'), width: this.#length('width') }
      case 'oil-passage':
        return { kind, name: name.trim() || oilWay, size: this.#extent() }
      case 'keep-out':
        return { kind, bead: this.bead, name: name.trim() || oilWay, size: this.#extent() }
      case 'bead-point':
        return { kind, bead: this.bead }
      case 'face-part':
        return {
          ...{ kind, of: this.of, name: name.trim() || this.#words().editor.drawn.faceParts[this.of] },
          ...{ diameter: this.#length('diameter'), shaft: this.#length('shaft'), size: this.#extent() },
          way: this.way === '' ? undefined : this.way,
        }
      case 'corner':
        return { kind }
      case null:
        return null
      default:
        return kind satisfies never
    }
  }
  /** A bare number is in the manual's unit; undefined where nothing is typed. */
  #length(which: keyof PlaceWork['sizes']): string | undefined {
    const typed = this.sizes[which]
    return typed.trim() === '' ? undefined : inUnitOf(typed, `0 ${this.#desk.unit}`)
  }
  /** A hole is as wide as it is long, unless both are typed. */
  #extent(): [string, string] | undefined {
    const along = this.#length('along')
    return along === undefined ? undefined : [along, this.#length('across') ?? along]
  }
}
