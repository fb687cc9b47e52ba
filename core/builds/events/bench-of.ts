import type { BenchName } from './bench-events.ts'
import type { BuildEvent } from './events.ts'

/** The bench at which an entry was made, where it says so. Of any other entry the build alone does not tell. */
export function benchOf(event: BuildEvent): BenchName | null {
  switch (event.type) {
    case 'build-handed-over':
      return event.from
    case 'build-taken-over':
      return event.to
    case 'fork-settled':
      return event.bench
    default:
      return null
  }
}
