import type { Words } from '../../words.ts'

export const plan: Words['plan'] = {
  doAgain: 'Schritt wiederholen …',
  skip: 'Schritt überspringen …',
  takeBackSkip: 'Doch ausführen …',
  isSkipped: ({ reason }) => `ÜBERSPRUNGEN: ${reason}`,
  skipped: 'Dieser Schritt ist übersprungen.',
  again: ({ reason, other }) =>
    other === null
      ? `Zu wiederholen: ${reason}`
      : `Zu wiederholen, weil „${other}“ wiederholt wird: ${reason}`,
  whySkip: 'Warum wird er übersprungen?',
  skipIt: 'Überspringen',
  whyAfterAll: 'Warum wird er doch ausgeführt?',
  doAfterAll: 'Doch ausführen',
  whyAgain: 'Warum wird er wiederholt?',
  againNow: 'Wiederholen',
  opensNone: 'Kein weiterer Schritt wird dadurch wieder offen.',
  opens: 'Damit werden wieder offen:',
  opensIfOther: 'Liest sich ein Kennzeichen anders, werden wieder offen:',
  marksAlone: 'Was auf den Kennzeichen beruht, bleibt erledigt, solange sie sich nicht anders lesen.',
  undoFirst: 'Zuerst an der Werkbank rückgängig machen, in dieser Reihenfolge:',
  deeds: {
    loosen: ({ step }) => `${step}: alle lösen, in umgekehrter Reihenfolge`,
    'take-out-part': ({ step }) => `${step}: abnehmen oder ausbauen`,
    'clean-off-bead': ({ step }) => `${step}: Dichtmittel von beiden Flächen entfernen`,
    'take-out-shells': ({ step }) => `${step}: Lagerschalen herausnehmen`,
    'take-off-rings': ({ step }) => `${step}: Kolbenringe abnehmen`,
  },
  isUndone: 'An der Werkbank rückgängig gemacht',
  sheet: {
    redone: 'Wiederholt',
    row: (facts) =>
      `Wiederholt: ${facts.reason} (${facts.again}${facts.takenApart ? '; an der Werkbank zerlegt' : ''}).`,
    first: ({ stamp }) => (stamp === null ? 'vorher begonnen' : `vorher erledigt: ${stamp}`),
    alsoOpen: 'damit wieder offen:',
    skipped: 'ÜBERSPRUNGENE SCHRITTE',
    skippedRow: ({ reason, stamp }) => `${reason} (${stamp})`,
    afterAll: ({ reason, stamp }) => `Doch ausgeführt: ${reason} (${stamp}).`,
    inList: ({ reason }) => `! ÜBERSPRUNGEN: ${reason}`,
    timesAgain: ({ times }) => (times === 1 ? '; einmal wiederholt' : `; ${times}-mal wiederholt`),
  },
}
