import type { NamedThing } from '../../en/problems/named-thing.ts'

/** With its article. */
const things: Readonly<Record<NamedThing, string>> = {
  name: 'El nombre',
  serial: 'El número de serie',
  person: 'El nombre de quien trabaja',
}

export function thingText(thing: NamedThing): string {
  return things[thing]
}
