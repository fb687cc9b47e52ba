/** Signal words as ANSI Z535.6 and ISO 3864-2 use them: DANGER will and WARNING could kill or maim, CAUTION could hurt, NOTICE harms the engine alone. */
export const signals = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE'] as const

/** What a step can do to the hands, or to the engine, each kind with the signal word that it deserves. */
export const signalOf = {
  'heavy-lift': 'WARNING',
  'turning-crank': 'WARNING',
  'hot-part': 'WARNING',
  'spring-load': 'WARNING',
  'press-load': 'WARNING',
  'compressed-air': 'WARNING',
  solvent: 'WARNING',
  'sealant-on-skin': 'CAUTION',
  'sharp-edge': 'CAUTION',
  'sealant-in-oil-way': 'NOTICE',
  'journal-scratch': 'NOTICE',
  'dirt-in-joint': 'NOTICE',
} as const satisfies Readonly<Record<string, (typeof signals)[number]>>

export type Danger = keyof typeof signalOf
export const dangerKinds = Object.keys(signalOf) as [Danger, ...Danger[]]
