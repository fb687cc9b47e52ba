import type { TurningLimits } from '../../en/steps/turning.ts'
import type { Words } from '../../words.ts'

/** `höchstens 2,5 N·m`, `0,5 N·m bis 2,5 N·m`, with what it may rise and what it rose. */
export function turningLimits({ least, most, mostRise, rise }: TurningLimits): string {
  const range = [
    ...(most === null ? [] : [least === null ? `höchstens ${most}` : `${least} bis ${most}`]),
    ...(most === null && least !== null ? [`mindestens ${least}`] : []),
    ...(mostRise === null ? [] : [`Anstieg höchstens ${mostRise}${rise === null ? '' : ` (war ${rise})`}`]),
    ...(mostRise === null && rise !== null ? [`Anstieg ${rise} seit dem letzten Messwert`] : []),
  ]
  return range.join(', ')
}

const verdicts = {
  free: 'dreht von Hand frei',
  within: 'innerhalb der Grenzen',
  under: '! zu wenig',
  over: '! zu viel',
  binds: '! dreht nicht frei',
}

export const turning: Words['turning'] = {
  limits: turningLimits,
  verdicts,
  manualFirst:
    'Das Handbuch des Herstellers geht vor. Kurbelwelle langsam durchdrehen, mindestens eine volle Umdrehung, und während der Bewegung ablesen.',
  reading: ({ unit }) => `Durchdrehmoment in ${unit}`,
  byWrench: 'Schlüssel mit Skala',
  byBalance: 'Federwaage',
  with: 'Abgelesen mit',
  arm: 'Hebel, von Kurbelwellenmitte bis Federwaage',
  howToTypeArm: '250 mm',
  force: ({ unit }) => `Kraft an der Federwaage in ${unit}`,
  square: 'Federwaage rechtwinklig zum Hebel halten. Drehmoment ist Kraft mal Hebelarm.',
  comesTo: ({ torque }) => `Das sind ${torque}.`,
  last: ({ torque }) => `Vorher abgelesen: ${torque}.`,
  note: 'Messwert notieren',
  turnsFreely: 'Dreht frei',
  binds: 'Klemmt …',
  whatBinds: 'Wo sie klemmt und was zu spüren war',
  noteBinds: 'Klemmen notieren',
  whatWasDone: 'Vorher drehte sie nicht frei. Was wurde seither getan?',
  isFreeNow: 'Dreht jetzt frei',
  lookFor:
    'Das Handbuch des Herstellers geht vor. Einen Deckel nach dem anderen lösen und jedes Mal durchdrehen: Wo die Kurbelwelle frei wird, ' +
    'Lagerschalen, Öl, Nummer und Richtung des Deckels prüfen. Dann nochmals durchdrehen.',
  capIsLoose: ({ cap }) => `Deckel ${cap} ist gelöst`,
  accept: 'Annehmen …',
  whyAccepted: 'Warum außerhalb der Grenzen angenommen?',
  acceptIt: 'So annehmen',
  again: 'Nochmals durchdrehen …',
  whyAgain: 'Warum gilt der Messwert nicht?',
  againIt: 'Kurbelwelle neu durchdrehen',
  read: (facts) =>
    [
      ...(facts.typed === null
        ? []
        : [facts.torque === null ? facts.typed : `${facts.typed} = ${facts.torque}`]),
      verdicts[facts.verdict],
      ...(facts.rise === null ? [] : [`Anstieg ${facts.rise}`]),
      ...(facts.accepted === null ? [] : [`angenommen: ${facts.accepted}`]),
      ...(facts.note === '' ? [] : [facts.note]),
    ].join(', '),
  sheet: {
    title: 'Kurbelwelle durchdrehen',
    step: 'Schritt',
    reading: 'Messwert',
    limits: 'Grenzwerte',
    voided: ({ text, reason }) => `${text}; gilt nicht: ${reason}`,
    again: ({ text }) => `${text} (später neu durchgedreht)`,
  },
}
