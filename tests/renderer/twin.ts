import type { BuildLine, Client, RequestName } from '../../core/contract/index.ts'
import { memoryClient, type MemoryHandlers } from '../../renderer/gallery/memory-client.ts'

/** A client in memory that notes what it was asked, and holds answers back where a disk would be slow. */
export function twin(handlers: MemoryHandlers) {
  const inMemory = memoryClient(handlers)
  const requests: { readonly name: RequestName; readonly input: unknown }[] = []
  let gate = Promise.resolve()
  const client: Client = {
    async request(name, input) {
      const opening = gate
      requests.push({ name, input })
      const answer = await inMemory.request(name, input)
      await opening
      return answer
    },
  }
  return {
    client,
    requests,
    /** What is asked from now on is answered only when the function given back is called. */
    hold: (): (() => void) => {
      let open = () => undefined as void
      gate = new Promise((resolve) => (open = resolve))
      return open
    },
  }
}

/** The `place`th build of the bench, counted from 1. */
export function lineOf(place: number, change: Partial<BuildLine> = {}): BuildLine {
  return {
    id: `01956f6c-8a00-7000-8000-${String(place).padStart(12, '0')}`,
    number: `2026-${String(place).padStart(3, '0')}`,
    name: `Ferry ${place}`,
    serial: `F-${200 + place}`,
    engine: 'Skerry 3 ferry auxiliary',
    demo: true,
    startedAt: '2026-03-02T07:30:00.000Z',
    lastAt: '2026-03-02T09:30:00.000Z',
    finished: false,
    voided: false,
    flagged: false,
    entries: 61,
    standing: null,
    fault: null,
    ...change,
  }
}
