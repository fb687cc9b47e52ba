import type { Words } from '../../words.ts'

export const passes: Words['passes'] = {
  kinds: {
    seat: 'von Hand anlegen',
    torque: 'Drehmoment',
    angle: 'Drehwinkel',
    loosen: 'lösen',
    recheck: 'nachprüfen',
    length: 'Länge vorher',
    stretch: 'Längung',
    'tighten-to-stretch': 'nach Längung anziehen',
    action: 'zwischen den Durchgängen',
  },
  seatWithGap: 'von Hand anlegen, Spalt',
  measuredIn: ({ unit }) => `gemessen in ${unit}`,
  withLimits: (facts) => `${facts.target} (${facts.limits}${facts.isUsual ? ', übliche Grenzen' : ''})`,
  only: ({ numbers }) => `nur ${numbers}`,
  printed: ({ value }) => `Im Handbuch: ${value}`,
  printedRange: ({ least, most }) => `${least} bis ${most}`,
  untilNoneMoves: 'wiederholen, bis sich keine mehr bewegt',
  inAll: ({ angle }) => `${angle} insgesamt`,
  step: ({ number, of }) => `Stufe ${number} von ${of}`,
  atTorque: ({ limits, unit }) => `bei ${limits} ${unit}`,
  toRead: ({ instruction, limits }) => `${instruction.replace(/\.$/, '')}: ${limits}.`,
  wait: ({ minutes }) => `${minutes} min warten.`,
}

/** In a table: `3 Drehmoment`. */
export const numberAndKind: Words['clampMap']['pass'] = ({ pass, kind, step }) =>
  `${pass} ${passes.kinds[kind]}${!step ? '' : `, ${passes.step(step)}`}`
