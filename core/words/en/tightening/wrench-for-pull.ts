import type { RichText } from '../../rich.ts'

export interface OfWrench {
  readonly wrench: string
  readonly adapter: string | null
}
export interface OfSetup extends OfWrench {
  /** Of the adapter, in degrees. */
  readonly angle: number
}

const setup = ({ wrench, adapter, angle }: OfSetup) =>
  adapter === null ? wrench : `${wrench} with ${adapter} at ${angle}°`

/** Which wrench a pull is made with, and what it is set to. Settings and torques come with their unit. */
export const wrenchForPull = {
  title: 'Wrench',
  offer: 'Wrenches …',
  /** `torque` is what the fastener gets where an adapter makes that another value than the setting. */
  set: (facts: OfWrench & { readonly setting: string; readonly torque: string | null }): RichText => [
    `${facts.wrench}${facts.adapter === null ? '' : ` with ${facts.adapter}`}: set `,
    { strong: facts.setting },
    ...(facts.torque === null ? [] : [`, which gives the fastener ${facts.torque}`]),
  ],
  another: 'Another wrench, without an adapter: its scale shows what the fastener has.',
  noneListed: 'The list of wrenches is empty.',

  forThisPull: 'Wrench for this pull',
  usable: 'Wrenches that can be used',
  setup,
  setTo: (facts: OfSetup & { readonly setting: string; readonly best: boolean }) =>
    `${facts.best ? 'Best: ' : ''}${setup(facts)}: set ${facts.setting}`,
  /** `rounding` is null on the target; `exact` is what an adapter asks for; both deviations as they are printed. */
  gives: (facts: {
    readonly torque: string
    readonly rounding: string | null
    readonly deviation: string
    readonly least: string
    readonly most: string
    readonly exact: string | null
  }) =>
    `Gives ${facts.torque}, ${facts.rounding === null ? 'on the target' : `${facts.rounding} % off by rounding to a mark`}` +
    `; with ±${facts.deviation} % of the wrench ${facts.least} to ${facts.most}.` +
    (facts.exact === null ? '' : ` With the adapter the exact setting is ${facts.exact}.`),
  inUse: '✓ In use: readings are taken with this one.',
  take: (of: OfSetup) => `Use ${setup(of)}`,
  takeAnother: 'Use another wrench, without an adapter',
  notThese: 'Cannot be used',
  notUsable: 'Wrenches that cannot be used',
}
