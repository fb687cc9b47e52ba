import { faceOfStep } from '../../core/builds/index.ts'
import { done } from '../../core/problem/index.ts'
import { Bench } from '../bench/bench.svelte.ts'
import type { OpenBuild } from '../bench/open-build.svelte.ts'
import { engineOf } from './engines.ts'
import type { MemoryBuild } from '../bench/memory-build.ts'
import { memoryClient, type MemoryHandlers } from './memory-client.ts'
import { memoryHost, type SampleContent } from './memory-host.ts'
import { momentsOf, type Moment } from './moments.ts'
import { sampleRecord, sampleWrenches } from './sample-record.ts'
import { holdAsData } from './sample-data.ts'
import { sampleLibrary } from './sample-library.ts'
import type { OnStage } from './shown.ts'

export function clientWith(content: SampleContent, more: MemoryHandlers = {}) {
  const { newer } = content
  return memoryClient({
    ...memoryHost({ wrenches: sampleWrenches, ...content }),
    ...sampleRecord,
    ...sampleLibrary,
    ...(newer && { 'library.read': () => done({ specText: newer.text }) }),
    ...more,
  })
}

/** A bench as it is when the window has been opened. */
export async function benchWith(
  { distance, look, language }: OnStage,
  content: SampleContent = {},
  machine: ConstructorParameters<typeof Bench>[2] = {},
  more: MemoryHandlers = {},
): Promise<Bench> {
  const theme = look === 'dark' ? 'dark' : 'light'
  const preferences = { ...content.preferences, theme, readingDistance: distance } as const
  const client = clientWith({ ...content, preferences }, more)
  holdAsData(machine.speech?.getVoices())
  const bench = new Bench(client, undefined, { language, ...machine })
  await bench.open()
  return bench
}

/** The same with a build on it. */
export async function benchAt(
  shown: OnStage,
  build: MemoryBuild,
  content: SampleContent = {},
  more: MemoryHandlers = {},
): Promise<{ readonly bench: Bench; readonly openBuild: OpenBuild }> {
  const bench = await benchWith(shown, { ...content, builds: [build.branch()] }, {}, more)
  await bench.enterBuild(build.begun.id)
  if (bench.place.at !== 'build') throw new Error(bench.problem?.code ?? 'the build does not open')
  return { bench, openBuild: bench.place.openBuild }
}

/** The moment of this name in a step of an engine's build; in one on its main joint where no step is named. */
export function momentOf(id: string, name: string, step?: string): Moment {
  const engine = engineOf(id)
  const { spec } = engine
  const named = momentsOf(engine).filter((moment) => moment.name === name)
  const isMeant = (moment: Moment) =>
    step === undefined ? faceOfStep(spec, moment.step) === spec.case.faces[0]!.id : moment.step.id === step
  const found = named.find(isMeant)
  if (found === undefined) throw new Error(`a build of ${id} has no moment “${name}” there`)
  return found
}
