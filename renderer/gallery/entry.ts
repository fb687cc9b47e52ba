import type { Component } from 'svelte'
import type { Presentation } from './shown.ts'

type Props = Record<string, unknown>

/** A component as it is in one state. */
export interface State {
  readonly caption: string
  readonly view: Component<Props>
  readonly props: Props
}

/** Something to look at in the gallery, in all its states. */
export interface Entry {
  readonly id: string
  readonly group: string
  readonly name: string
  /** What one sees, in a sentence. */
  readonly shows: string
  /** Parts of a panel or a page in all their states; a drawing fills a sheet and has two sides; a screen is the window. */
  readonly kind: 'panel' | 'page' | 'drawing' | 'screen'
  /** Buttons that are pressed to get there, by how their text begins. */
  readonly press: readonly string[]
  load(shown: Presentation): Promise<readonly State[]>
}

/** Group and name as they go into an address. */
export function entryId(group: string, name: string): string {
  return `${group}/${name}`.toLowerCase().replace(/[^a-z0-9/]+/g, '-')
}

type Maybe<Value> = Value | Promise<Value>

/** Gives the function that makes the entries of one group: a line each. */
export function entriesOf(group: string, kind: Entry['kind']) {
  return <Of extends object>(
    name: string,
    shows: string,
    view: Component<Of>,
    /** The props of each state, by what it is called. */
    states: (shown: Presentation) => Maybe<Readonly<Record<string, Of>>>,
    press: readonly string[] = [],
  ): Entry => ({
    id: entryId(group, name),
    ...{ group, name, shows, kind, press },
    async load(shown) {
      const each = Object.entries(await states(shown))
      return each.map(([caption, props]) => ({
        caption,
        view: view as Component<Props>,
        props: props as Props,
      }))
    },
  })
}
