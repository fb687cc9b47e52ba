import { EventEmitter } from 'node:events'

/**
 * Throws when a member is touched that is not played, so that nothing passes by being ignored.
 * A symbol, `then` and `toJSON` are asked for by the language itself.
 */
export function strict<Played extends object>(what: string, played: Played): Played {
  return new Proxy(played, {
    get(target, key) {
      if (typeof key === 'string' && !(key in target) && key !== 'then' && key !== 'toJSON')
        throw new Error(`stand-in: ${what}.${key} is not played`)
      const value: unknown = Reflect.get(target, key, target)
      return typeof value === 'function' && key !== 'constructor' ? (value.bind(target) as unknown) : value
    },
    set(target, key, value) {
      if (typeof key === 'string' && !(key in target))
        throw new Error(`stand-in: ${what}.${key} is not played`)
      return Reflect.set(target, key, value, target)
    },
  })
}

/** Names of events, each of which `Emitting` has: an event that Electron no longer has does not compile. */
type EventNames<Emitting, Names extends readonly string[]> = {
  readonly [Index in keyof Names]: Emitting extends {
    on(event: Names[Index], listener: () => void): unknown
  }
    ? Names[Index]
    : never
}

export function eventsOf<Emitting>() {
  return <const Names extends readonly string[]>(
    ...names: Names & EventNames<Emitting, Names>
  ): readonly string[] => names
}

/** Refuses a listener for an event that is never sent here. */
export class PlayedEvents extends EventEmitter {
  constructor(what: string, names: readonly string[]) {
    super()
    this.on('newListener', (name: string) => {
      if (!names.includes(name) && name !== 'removeListener')
        throw new Error(`stand-in: the event “${name}” of ${what} is not played`)
    })
  }

  /** Tells all listeners; answers whether one of them prevented what would follow. */
  send(name: string, details: object = {}, ...more: readonly unknown[]): boolean {
    let prevented = false
    const event = {
      ...details,
      preventDefault: () => {
        prevented = true
      },
      get defaultPrevented() {
        return prevented
      },
    }
    this.emit(name, event, ...more)
    return prevented
  }
}
