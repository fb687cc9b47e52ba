import type { Words } from '../../words.ts'
import { counted, day } from '../formats.ts'

export const editorCheck: Words['editor']['check'] = {
  title: 'Mit dem Handbuch vergleichen',
  explained:
    'Jeden Wert mit dem Handbuch auf seiner Seite vergleichen. Drehmomente, Winkel und Reihenfolgen werden so eingegeben, wie das Handbuch sie druckt, ohne das Eingegebene zu sehen.',
  ofDemo: 'Die Zahlen einer Demo sind erfunden: es gibt kein Handbuch zum Vergleichen.',
  byAnother: ({ person }) =>
    `${person} hat die Zahlen eingegeben und kann sie nicht prüfen. Eine andere Person wählt hier ihren Namen und macht weiter.`,
  progress: ({ done, of }) => `${done} von ${counted(of, 'Wert', 'Werten')} als gleich befunden.`,
  checked: ({ by }) => `Geprüft von ${by}.`,
  page: ({ page, document }) => `Seite ${page}, ${document}`,
  noPage: 'Keine Seite angegeben: Sie lässt sich bei dem Teil eingeben, zu dem der Wert gehört.',
  same: 'Gleich',
  other: 'Anders',
  later: 'Später',
  whatItSays: 'Was im Handbuch steht',
  typeUnseen: ({ unit }) => `Was das Handbuch druckt, in ${unit} oder mit Einheit`,
  typeOrder: 'Die Schrauben in der Reihenfolge des Handbuchs, nach ihren Nummern',
  enter: 'Vergleichen',
  note: 'Als anders notieren',
  differs:
    'Das ist nicht, was eingegeben wurde. Noch einmal auf die Seite sehen: bei Tippfehler neu eingeben; steht es so im Handbuch, notieren.',
  noteOther: ({ found }) => `Im Handbuch steht „${found}“`,
  all: 'Alle Werte',
  open: 'noch nicht verglichen',
  sameBy: ({ by, on }) => `gleich, ${by}, ${day(on)}`,
  otherBy: ({ by, on, found }) => `anders, ${by}, ${day(on)}: ${found}`,
  compare: 'Vergleichen',
  again: 'Noch einmal vergleichen',
  noDemoAnyMore: 'Jeder Wert ist ersetzt: keine Kopie einer Demo mehr',
}
