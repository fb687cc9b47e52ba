import type { Words } from '../../words.ts'
import type { numberAndKind as english, StepOfPass } from '../../en/tightening/passes.ts'

/** What a pass is called in a heading. */
const kinds = {
  seat: 'asentar a mano',
  torque: 'par',
  angle: 'ángulo',
  loosen: 'aflojar',
  recheck: 'comprobar',
  length: 'longitud previa',
  stretch: 'alargamiento',
  'tighten-to-stretch': 'apretar por alargamiento',
  action: 'entre pasadas',
}

const step = ({ number, of }: StepOfPass) => `etapa ${number} de ${of}`

export const passes: Words['passes'] = {
  kinds,
  seatWithGap: `${kinds.seat}, abertura`,
  measuredIn: ({ unit }) => `medido en ${unit}`,
  withLimits: ({ target, limits, isUsual }) =>
    `${target} (${limits}${isUsual ? ', límites habituales' : ''})`,
  only: ({ numbers }) => `solo ${numbers}`,
  printed: ({ value }) => `En el manual: ${value}`,
  printedRange: ({ least, most }) => `${least} a ${most}`,
  untilNoneMoves: 'repetir hasta que ninguna gire',
  inAll: ({ angle }) => `${angle} en total`,
  step,
  atTorque: ({ limits, unit }) => `a ${limits} ${unit}`,
  toRead: ({ instruction, limits }) => `${instruction.replace(/\.$/, '')}: ${limits}.`,
  wait: ({ minutes }) => `Esperar ${minutes} min.`,
}

/** In a table: `3 par`. Passes are counted from 1. */
export const numberAndKind: typeof english = ({ pass, kind, step: part }) =>
  `${pass} ${kinds[kind]}${!part ? '' : `, ${step(part)}`}`
