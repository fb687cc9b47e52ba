/** The demo builds that an empty bench is offered: one to go on with, one to look at. */
export const samples = ['half-way', 'finished'] as const
export type Sample = (typeof samples)[number]

/** The demo engine that each is made on, and the serial number by which it is known among builds. */
export const sampleFacts = {
  'half-way': { engine: 'skerry-3', serial: 'DEMO-1' },
  finished: { engine: 'tarn-4', serial: 'DEMO-2' },
} as const satisfies Readonly<Record<Sample, { readonly engine: string; readonly serial: string }>>

/** What is still offered: each once, and nothing as soon as there is a build that is no demo build. */
export function samplesLeft(
  builds: readonly { readonly demo: boolean; readonly serial: string }[],
): readonly Sample[] {
  const isThere = (sample: Sample) =>
    builds.some(({ demo, serial }) => demo && serial === sampleFacts[sample].serial)
  const there = samples.filter(isThere)
  return builds.length > there.length ? [] : samples.filter((sample) => !there.includes(sample))
}
