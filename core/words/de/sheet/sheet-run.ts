import { minutesAndSeconds } from '../../formats/index.ts'
import type { Words } from '../../words.ts'
import { numberAndKind } from '../tightening/passes.ts'

const flagAbout = { under: 'zu wenig', over: 'zu viel', moved: 'hat sich bewegt', problem: 'Problem' }

export const sheetRun: Words['sheet']['run'] = {
  states: { done: 'erledigt', started: 'läuft', 'not-started': 'nicht begonnen' },
  ownOrder: (facts) =>
    `! Eigene Reihenfolge, nicht die des Herstellers: ${facts.own.join(', ')}. Grund: ${facts.reason} (${facts.stamp}). ` +
    `Reihenfolge des Herstellers: ${facts.ofMaker.join(', ')}.`,
  declaredNew: ({ group, stamp }) => `${group}, als neu angegeben: ${stamp}.`,
  pass: 'Durchgang',
  number: 'Nr.',
  where: 'Wo',
  target: 'Sollwert',
  result: 'Ergebnis',
  whenWho: 'Wann, wer',
  passAndKind: numberAndKind,
  window: (facts) => `${facts.target} (${facts.least} bis ${facts.most})`,
  gap: 'Spalt der Trennfläche',
  done: 'erledigt',
  scaleAndFastener: ({ scale, fastener }) => `${scale} an der Skala, ${fastener} an der Schraube`,
  clamping: ({ read, clamping }) => `${read}; ${clamping} ohne Klemmdrehmoment`,
  running: ({ torque }) => `Klemmdrehmoment ${torque}, zugeschlagen`,
  turnedOn: ({ read, whole }) => `${read} weiter, ${whole} insgesamt`,
  atTorque: ({ torque }) => `bei ${torque}`,
  waited: ({ seconds, shortened }) =>
    `gewartet ${minutesAndSeconds(seconds)}${shortened === null ? '' : `, ! verkürzt: ${shortened}`}`,
  sure: 'Länge hinterfragt: nochmals angesehen und richtig',
  longer: ({ stretch }) => `Längung ${stretch}`,
  verdicts: {
    unread: 'bestätigt, nicht abgelesen',
    within: 'in den Grenzen',
    under: '! zu wenig',
    over: '! zu viel',
    moved: '! bewegt',
  },
  readFirst: ({ first, reason, stamp }) => `zuerst abgelesen: ${first}; neu abgelesen: ${reason} (${stamp})`,
  held: (facts) => `${facts.wrench} mit ${facts.adapter}, ${facts.offset} bei ${facts.angle}`,
  setAside: {
    loosened: 'gilt nicht mehr: Schraube gelöst',
    'pass-repeated': 'gilt nicht mehr: Durchgang wiederholt',
    'run-restarted': 'gilt nicht mehr: neu begonnen',
  },
  beforeItsTurn: ({ reason }) => `außer der Reihe: ${reason}`,
  takenBack: ({ reason, stamp }) => `zurückgenommen: ${reason} (${stamp})`,
  flag: (facts) =>
    `! Beanstandung ${facts.flag}${facts.fastener === null ? '' : `, Schraube ${facts.fastener}`}: ` +
    `${facts.text ?? flagAbout[facts.about]} (${facts.stamp}).`,
  answer: ({ text, stamp }) => `Antwort: ${text} (${stamp}).`,
  notAnswered: 'NICHT BEANTWORTET.',
  paused: (facts) =>
    `Unterbrochen ${facts.from}${facts.reason === '' ? '' : `: ${facts.reason}`}; fortgesetzt ${facts.to}.`,
}
