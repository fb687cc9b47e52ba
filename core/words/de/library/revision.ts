import type { Words } from '../../words.ts'

export const revision: Words['revision'] = {
  newer: ({ revision: number }) =>
    `Revision ${number} dieses Datenblatts ist in der Bibliothek. Der Aufbau geht nach seiner eigenen weiter.`,
  look: 'Unterschiede ansehen',
  title: ({ name, revision: number }) => `${name}: Revision ${number}`,
  backToBuild: 'Aufbau',
  none: 'Dieser Aufbau geht nach der neuesten Revision der Bibliothek.',
  keeps: 'Der Aufbau geht bis zum Ende nach seiner eigenen Revision, außer die neuere wird hier übernommen.',
  differences: 'Unterschiede',
  drawings: 'In der Zeichnung',
  ringed: 'Um jeden Unterschied liegt ein Ring mit einem Buchstaben; die Liste darunter nennt ihn.',
  outline: 'der Umriss',
  sameDrawing: 'In der Zeichnung ist nichts anders.',
  ofBuild: ({ face }) => `${face}, nach der Revision des Aufbaus`,
  ofNewer: ({ face }) => `${face}, nach der neueren Revision`,
  how: { added: 'neu', gone: 'in der neueren Revision nicht mehr', moved: 'verschoben', changed: 'geändert' },
  taking: 'Übernehmen',
  opensNone: 'Über Erledigtes sagt sie nichts anderes: Kein Schritt wird wieder offen.',
  opens: 'Über Erledigtes, oder worauf es beruht, sagt sie etwas anderes. Wieder offen werden:',
  marksReadAgain: ({ fit }) => `${fit}: Kennzeichen neu ablesen`,
  readingsGone: ({ fit }) => `${fit}: Messwerte, Untermaße und Vorrat neu eingeben`,
  ownOrderGone: ({ procedure }) => `${procedure}: die eigene Reihenfolge gilt nicht mehr`,
  why: 'Warum wird sie übernommen?',
  take: 'Übernehmen',
  sheet: {
    title: 'Revisionen des Datenblatts',
    row: (facts) =>
      `Von „${facts.before}“ zu „${facts.after}“: ${facts.reason} (${facts.stamp}${facts.takenApart ? '; an der Werkbank zerlegt' : ''}).`,
  },
}
