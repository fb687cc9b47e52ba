import type { BuildEvent } from '../events/events.ts'

/** The demo builds that a bench without a build of its own is offered: one to go on with, one to look at. */
export const samples = ['half-way', 'finished'] as const
export type Sample = (typeof samples)[number]

/** The demo engine that each is made on, and the serial number by which it is known among builds. */
export const sampleFacts = {
  'half-way': { engine: 'skerry-3', serial: 'DEMO-1' },
  finished: { engine: 'tarn-4', serial: 'DEMO-2' },
} as const satisfies Readonly<Record<Sample, { readonly engine: string; readonly serial: string }>>

/** One entry of a demo build, and who makes it. */
export interface SampleEntry {
  readonly person: string
  readonly event: BuildEvent
}

interface ListedSample {
  /** Whether its engine is a demo. */
  readonly demo: boolean
  readonly serial: string
}

const isSample = ({ demo, serial }: ListedSample, sample: Sample) =>
  demo && serial === sampleFacts[sample].serial

/** The demo builds still offered: each until it is there, and none as soon as there is a build of an engine that is no demo. */
export function samplesLeft(builds: readonly ListedSample[]): readonly Sample[] {
  if (builds.some(({ demo }) => !demo)) return []
  return samples.filter((sample) => !builds.some((build) => isSample(build, sample)))
}

/** Whether the guided first build is offered: until a build is begun, be it this one. */
export function offersGuided(builds: readonly ListedSample[]): boolean {
  return builds.every((build) => samples.some((sample) => isSample(build, sample)))
}
