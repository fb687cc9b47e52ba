import type { specWords as pattern } from '../../en/problems/spec.ts'
import { capital } from '../../formats/index.ts'
import type { Table } from '../../table.ts'

type Facts<Code extends keyof typeof pattern> = Parameters<(typeof pattern)[Code]>[0]

const wantedParts: Readonly<Record<Facts<'spec-not-json'>['wanted'], string>> = {
  value: 'ein Wert',
  'value-or-end': 'ein Wert oder ]',
  key: 'ein Name in Anführungszeichen',
  'key-or-end': 'ein Name in Anführungszeichen oder }',
  colon: 'ein Doppelpunkt',
  'comma-or-bracket': 'ein Komma oder ]',
  'comma-or-brace': 'ein Komma oder }',
  nothing: 'das Ende der Datei',
}

export const namedParts: Readonly<Record<Facts<'spec-id-twice'>['what'], string>> = {
  'balance-bearing': 'Ausgleichswellenlager',
  bead: 'Dichtraupe',
  bearing: 'Lager',
  dowel: 'Passstift',
  face: 'Fläche',
  'face-part': 'Teil in einer Fläche',
  fastener: 'Schraube',
  'fastener-group': 'Schraubengruppe',
  fit: 'Lagerung',
  grade: 'Klasse',
  'housing-mark': 'Bohrungskennzeichen',
  'journal-mark': 'Zapfenkennzeichen',
  'oil-passage': 'Ölkanal',
  order: 'Reihenfolge',
  part: 'Teil',
  position: 'Lagerstelle',
  procedure: 'Anziehvorgang',
  ring: 'Kolbenring',
  'ring-set': 'Ringsatz',
  rod: 'Pleuel',
  saddle: 'Lagersitz',
  step: 'Schritt',
  throw: 'Kröpfung der Kurbelwelle',
  wheel: 'Rad der Kurbelwelle',
}

const namedHere: typeof namedParts = {
  ...namedParts,
  order: 'Reihenfolge in diesem Anziehvorgang',
  position: 'Lagerstelle in dieser Lagerung',
}

function foundIn(found: Facts<'spec-part-wrong'>['found']): string {
  switch (found.kind) {
    case 'list':
      return `Liste mit ${found.length}`
    case 'group':
      return 'Gruppe in { }'
    case 'text':
      return `„${found.text}${found.isCut ? '…' : ''}“`
    case 'value':
      return found.json
  }
}

const stop = (text: string): string => (text.endsWith('.') ? '' : '.')
const at = (place: string): string => (place === '' ? 'Datei' : place)

export const specWords: Table<typeof pattern> = {
  'spec-too-large': ({ mostCharacters }) =>
    `Die Datei hat mehr als ${mostCharacters / 1_000_000} Millionen Zeichen; so lang ist kein Datenblatt. Die richtige Datei wählen.`,
  'spec-not-json': (facts) =>
    `Die Datei ist kein JSON: In Zeile ${facts.line}, Spalte ${facts.column} steht ` +
    `${facts.found === '' ? 'nichts mehr' : `„${facts.found}“`}, nötig ist ${wantedParts[facts.wanted]}. Dort berichtigen.`,
  'spec-key-twice': ({ line, column, key }) =>
    `Zeile ${line}, Spalte ${column}: ${key} steht zum zweiten Mal in derselben Gruppe. Eines davon entfernen.`,
  'spec-too-deep': ({ line, column, levels }) =>
    `Zeile ${line}, Spalte ${column}: mehr als ${levels} Ebenen tief verschachtelt; das ist kein Datenblatt. Die richtige Datei wählen.`,
  'spec-part-missing': ({ place, should }) => `${at(place)}: fehlt. ${capital(should)}${stop(should)}`,
  'spec-part-wrong': ({ place, found, should }) =>
    `${at(place)}: gefunden ${foundIn(found)}. ${capital(should)}${stop(should)}`,
  'spec-keys-unknown': ({ place, keys }) =>
    `${at(place)}: ${keys.map((key) => `„${key}“`).join(', ')} gibt es an dieser Stelle in keinem Datenblatt. ` +
    'Schreibweise berichtigen oder entfernen.',
  'spec-id-twice': (facts) =>
    `${namedParts[facts.what]}: „${facts.id}“ ist doppelt vergeben` +
    `${facts.of === null ? '' : ` (${namedParts[facts.of.what]} „${facts.of.id}“)`}. Jedem eine eigene Kennung geben.`,
  'spec-reference-dangling': ({ place, what, id }) =>
    `${at(place)}: genannt ist „${id}“, fehlt aber als ${namedHere[what]}. Namen berichtigen oder das Genannte ergänzen.`,
  'spec-more-problems': ({ count }) =>
    `${count} weitere Probleme. Die ersten beheben und die Datei neu einlesen.`,
}
