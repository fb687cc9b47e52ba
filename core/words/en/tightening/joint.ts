import type { AmountText } from '../../amount.ts'

const threadClasses = {
  oiled: 'oiled threads: VDI 2230 part 1, table A5, class B and its middle',
  dry: 'dry threads: VDI 2230 part 1, table A5, class C and its middle',
  sealant: 'sealant on the threads: VDI 2230 part 1, table A5, classes B and C together',
  'thread-lock': 'thread-lock on the threads: VDI 2230 part 1, table A5, classes B and C together',
}

export interface Layer {
  readonly material: string
  readonly modulus: AmountText
  /** Null where there is one material through the whole grip. */
  readonly thickness: AmountText | null
}

function layersText(layers: readonly Layer[]): string {
  return layers
    .map(({ material, modulus, thickness }) =>
      thickness === null ? `${material} of ${modulus}` : `${thickness} of ${material} of ${modulus}`,
    )
    .join(' on ')
}

type None = Record<never, never>

/** What the effect of a pull was calculated from: what each thing is called, its value, and where that comes from. */
export const pullInputs = {
  names: {
    thread: 'Thread',
    class: 'Property class',
    face: 'Face under the head',
    friction: 'Friction',
    prevailing: 'Prevailing torque',
    torque: 'Torque and preload',
    yield: 'Where it yields',
    bolt: 'How far the bolt stretches',
    parts: 'How far the parts give way',
    turn: 'Turn and preload',
  },
  values: {
    thread: ({ designation }: { readonly designation: string }) => designation,
    class: (facts: { readonly name: string; readonly proof: AmountText; readonly yield: AmountText }) =>
      `${facts.name}: proof ${facts.proof}, yield ${facts.yield}`,
    face: ({ outer, hole }: { readonly outer: AmountText; readonly hole: AmountText }) =>
      `Ø ${outer} with a hole of Ø ${hole}`,
    friction: (facts: {
      readonly usual: AmountText
      readonly least: AmountText
      readonly most: AmountText
    }) =>
      `${facts.usual}, between ${facts.least} and ${facts.most}; the limits of the preload follow from that`,
    /** `isIncluded` is null where the spec does not say. */
    prevailing: (facts: { readonly torque: AmountText; readonly isIncluded: boolean | null }) =>
      facts.isIncluded === false
        ? `up to ${facts.torque}, which is measured and set on top of the torque; the torque all clamps`
        : `none to ${facts.torque}, usually half of that, which goes off the torque before it clamps` +
          (facts.isIncluded === null ? '; the spec does not say so, and nothing is added' : ''),
    torque: (_: None) => 'M = F·(0.16·P + 0.58·d2·µ + D_Km/2·µ)',
    yield: (_: None) => 'tension and twist together reach the yield point',
    resilience: ({ perKilonewton }: { readonly perKilonewton: AmountText }) => `${perKilonewton} for each kN`,
    turn: (_: None) => 'ΔF = θ/360° · P/(δ_S + δ_P), level from where it yields',
  },
  sources: {
    'metric-thread': (_: None) => 'the spec; its other sizes by ISO 724',
    'unified-thread': (_: None) => 'the spec; its other sizes by ASME B1.1',
    'sae-class': (_: None) => 'the spec; SAE J429, table 1',
    'astm-class': (_: None) => 'the spec; ASTM A574, mechanical requirements',
    'iso-class': (_: None) => 'the spec; ISO 898-1, table 3',
    spec: (_: None) => 'the spec',
    'socket-head': (_: None) => 'from the diameter of a socket head, as ISO 4762 and ISO 273 have it',
    'inch-socket-head': (_: None) => 'from the diameter of a socket head, as ASME B18.3 has it',
    'hexagon-head': (_: None) => 'from the width across flats, as ISO 4014 and ISO 273 have it',
    'threads-state': ({ state }: { readonly state: keyof typeof threadClasses }) => threadClasses[state],
    'friction-class': ({ name }: { readonly name: string }) =>
      `class ${name} of the spec: VDI 2230 part 1, table A5, and its middle`,
    prevailing: (_: None) => 'the spec; ISO 2320',
    torque: (_: None) => 'VDI 2230 part 1, ISO 16047',
    yield: (_: None) => 'VDI 2230 part 1, 2001 and later',
    bolt: (facts: {
      readonly head: 'socket' | 'hexagon'
      readonly grip: AmountText
      /** Null where the shank is as thick as the thread. */
      readonly shank: AmountText | null
      readonly into: 'nut' | 'tapped-hole'
    }) =>
      `VDI 2230 part 1, 5.1.1; a steel bolt of ${facts.head === 'socket' ? 'ISO 4762' : 'ISO 4014'} over a grip of ` +
      `${facts.grip}${facts.shank === null ? '' : `, its shank of ${facts.shank}`}, ` +
      (facts.into === 'nut' ? 'with a nut' : 'one diameter of it engaged'),
    parts: ({ into, layers }: { readonly into: 'nut' | 'tapped-hole'; readonly layers: readonly Layer[] }) =>
      into === 'nut'
        ? `two cones of 30° under the head and the nut (Shigley's Mechanical Engineering Design, 8-5), in ${layersText(layers)}`
        : `a cone of 30° under the head (Shigley's Mechanical Engineering Design, 8-5), in ${layersText(layers)}, into a tapped hole`,
    turn: (_: None) => 'VDI 2230 part 1',
  },
}

/** What the model of a joint face assumes. */
export const flangeAssumptions = {
  caps:
    'Each cap is a bar across its bearing, as wide as the bearing and as deep as the grip of its bolts; ' +
    'nothing lies under it within the bore, and no cap feels another.',
  walls:
    'At each saddle a wall crosses from edge to edge, as wide as the saddle and as deep as the grip of the ' +
    'fasteners in it; nothing lies under it within the bore.',
  rail:
    'The flange runs along the edge of the face as one bar, twice as wide as its fasteners stand in from ' +
    'the edge and as deep as their mean grip.',
  'nearest-place': 'Each fastener pulls at the nearest place of the edge or of a wall.',
  metal: 'Metal lies on metal, with a film of sealant at most.',
  gasket:
    'Between the faces lies a flat fibre gasket of 0.5 mm, which springs back; a real one also settles.',
  bed:
    'What lies below gives way like an even bed, as a bar of the same depth does when it is squeezed. The ' +
    'bed pushes and never pulls: where the flange lifts, the joint is open.',
  flat:
    'The faces are flat and lie on each other before the first pull, and every fastener has been run down ' +
    'by hand until it touches.',
  elastic:
    'A bolt is an elastic spring with the stiffness of its shank, thread and head. It does not yield, and ' +
    'nothing settles.',
  teaching:
    'This is a model for teaching. It shows how bolts take load from each other, not what one bolt of this ' +
    'engine holds.',
}
