import type { Words } from '../../words.ts'

const verdicts = {
  new: 'wie neu',
  service: 'innerhalb der Verschleißgrenze',
  outside: '! außerhalb der Grenzen',
}

export const limits: Words['limits'] = {
  title: ({ name, at }) => `${name}, ${at}`,
  range: ({ least, most }) => {
    if (least === null) return `bis ${most}`
    return most === null ? `ab ${least}` : `${least} bis ${most}`
  },
  verdicts,
  newPart: ({ range }) => `Neu: ${range}`,
  usedPart: ({ range }) => `Verschleißgrenze: ${range}`,
  reading: ({ unit }) => `Messwert in ${unit}`,
  note: 'Messwert notieren',
  isOutside: ({ typed }) =>
    `! ${typed} liegt außerhalb der Grenzen. Neu messen, mit Begründung annehmen oder das Teil ersetzen.`,
  accept: 'Annehmen …',
  whyAccepted: ({ name, at }) => `${name}, ${at}: Warum außerhalb der Grenzen angenommen?`,
  acceptIt: 'So annehmen',
  replace: 'Ersetzt …',
  whatReplaced: ({ name, at }) => `${name}, ${at}: Was wurde ersetzt oder nachgearbeitet?`,
  replaceIt: 'Ersetzt: neu messen',
  allDone: ({ readings }) => `✓ Alle ${readings} Messwerte notiert.`,
  places: 'Alle Stellen',
  toMeasure: 'zu messen',
  read: (facts) =>
    `${facts.name}, ${facts.at}: ${facts.typed}, ${verdicts[facts.verdict]}` +
    `${facts.accepted === null ? '' : `, angenommen: ${facts.accepted}`}`,
  replacedFor: ({ text, replaced }) => `${text}; ersetzt: ${replaced}`,
  again: ({ text }) => `${text} (später neu gemessen)`,
  pictures: {
    'ring-gap': 'Ring allein in seiner Bohrung, rechtwinklig: Fühlerlehre zwischen die Enden.',
    'groove-clearance': 'Ring in seiner Nut: Fühlerlehre zwischen Ring und Nut.',
    'piston-clearance': 'Kolben in seiner Bohrung: Spalt am Schaft, quer zum Bolzen.',
    'rod-side': 'Pleuelfuß auf dem Hubzapfen: Fühlerlehre zwischen Pleuel und Wange.',
    'run-out': 'Welle auf zwei Prismen: Messuhr ablesen, Welle einmal durchdrehen.',
    'deck-height': 'Kolben im oberen Totpunkt: vom Kolbenboden zur Blockfläche.',
    other: 'Messgerät am Teil.',
  },
  sheet: { title: 'Gegen Grenzwerte gemessen', limits: 'Grenzwerte', reading: 'Messwert' },
}
