import { note, type Control } from './controls.ts'

/** A component, as Svelte makes it for a server, that notes what it is given; which one it stands for is said behind the address. */
export default function stub(_: unknown, props: unknown) {
  note({ kind: new URL(import.meta.url).search.slice(1), props } as Control)
}
