const things = { name: 'name', serial: 'serial number', person: 'name of who acts' }

/** What is typed at the start of a build, and who acts. */
export type NamedThing = keyof typeof things

export function thingText(thing: NamedThing): string {
  return things[thing]
}
