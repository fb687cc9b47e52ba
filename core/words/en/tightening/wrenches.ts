/** The wrenches of the shop. */
export const wrenches = {
  title: 'Wrenches of this shop',
  back: 'Back',
  line: (facts: {
    readonly least: string
    readonly most: string
    readonly step: number
    readonly unit: string
    readonly made: { readonly type: string; readonly class: string } | null
    readonly adapters: readonly string[]
  }) =>
    `${facts.least} to ${facts.most}, marks every ${facts.step} ${facts.unit}` +
    (facts.made ? `, type ${facts.made.type} class ${facts.made.class}` : '') +
    (facts.adapters.length > 0 ? `, with ${facts.adapters.join(', ')}` : ''),
  change: ({ name }: { readonly name: string }) => `Change ${name}`,
  remove: ({ name }: { readonly name: string }) => `Remove ${name}`,
  add: 'Add a wrench',
  whatFor:
    'For each pull the wrench is chosen from these: by its range, its marks, its class and its adapters. ' +
    'The one that is used is recorded with each pull: its name, number, adapter and day of calibration.',

  form: {
    title: 'Wrench',
    name: 'Name',
    number: 'Its number',
    numberExample: 'as marked on it; goes on the sheet',
    scaleIn: 'Scale in',
    lowest: ({ unit }: { readonly unit: string }) => `Lowest mark, ${unit}`,
    highest: ({ unit }: { readonly unit: string }) => `Highest mark, ${unit}`,
    step: ({ unit }: { readonly unit: string }) => `From one mark to the next, ${unit}`,
    minimum: ({ unit }: { readonly unit: string }) => `Stated minimum, ${unit}`,
    minimumExample: 'a fifth of full scale',
    made: 'Type and class (ISO 6789)',
    madeExample: 'for example II A',
    length: 'Middle of the grip to the drive',
    lengthExample: 'for example 450 mm; needed for adapters',
    calibratedOn: 'Calibrated on',
    pullsSince: 'Pulls since then',
    adapters: 'Adapters that move the fastener away from the drive',
    adapter: 'Adapter',
    offset: 'Offset',
    offsetExample: '40 mm',
    angle: 'Angle to the handle',
    angleExample: '0° straight on',
    /** By its name, or by its place in the list where it has none yet. */
    removeAdapter: ({ name }: { readonly name: string | number }) => `Remove adapter ${name}`,
    removeThis: 'Remove',
    addAdapter: 'Add an adapter',
    keep: 'Save this wrench',
  },
}
