import type { NamedThing } from '../../en/problems/named-thing.ts'

export const things: Readonly<Record<NamedThing, string>> = {
  name: 'Name',
  serial: 'Seriennummer',
  person: 'Name der handelnden Person',
}
