import type { Component } from 'svelte'
import type { Bench } from '../bench/bench.svelte.ts'
import type { OpenBuild } from '../bench/open-build.svelte.ts'
import type { Press } from './press.ts'
import { holdAsData } from './sample-data.ts'
import type { OnStage } from './shown.ts'

type Props = Record<string, unknown>

/** What is handed down to a component and all in it, where they ask for it. */
export interface Surroundings {
  readonly bench?: Bench
  readonly openBuild?: OpenBuild | null
}

/** A component as it is in one state. */
export interface State {
  readonly caption: string
  readonly view: Component<Props>
  readonly props: Props & Surroundings
}

/** Something to look at in the gallery, in all its states. */
export interface Entry {
  readonly id: string
  readonly group: string
  readonly name: string
  /** What one sees, in a sentence. */
  readonly shows: string
  /** Parts of a panel, of a page or of what is printed in all their states; a drawing fills a sheet and has two sides; a screen is the window. */
  readonly kind: 'panel' | 'page' | 'paper' | 'drawing' | 'screen'
  /** What is pressed to get there. */
  readonly press: readonly Press[]
  load(shown: OnStage): Promise<readonly State[]>
}

/** Group and name as they go into an address. */
export function entryId(group: string, name: string): string {
  return `${group}/${name}`.toLowerCase().replace(/[^a-z0-9/]+/g, '-')
}

/** A component without props of its own has a type of props that allows none. */
type ShownProps<Of> = Surroundings & ([Of[keyof Of]] extends [never] ? unknown : Of)

type Maybe<Value> = Value | Promise<Value>

/** Gives the function that makes the entries of one group: a line each. */
export function entriesOf(group: string, kind: Entry['kind']) {
  return <Of extends object>(
    name: string,
    shows: string,
    view: Component<Of>,
    /** The props of each state and what surrounds it, by what it is called. */
    states: (shown: OnStage) => Maybe<Readonly<Record<string, ShownProps<NoInfer<Of>>>>>,
    press: readonly Press[] = [],
  ): Entry => ({
    id: entryId(group, name),
    ...{ group, name, shows, kind, press },
    async load(shown) {
      const each = Object.entries(await states(shown))
      if (each.length === 0) throw new Error(`${group}, ${name}: there is no state to show`)
      holdAsData(each.map(([, props]) => props))
      return each.map(([caption, props]) => ({
        caption,
        view: view as Component<Props>,
        props: props as Props & Surroundings,
      }))
    },
  })
}
