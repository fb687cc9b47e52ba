import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'
import { drawnForms } from './drawn-forms.ts'

export const drawn: Words['editor']['drawn'] = {
  ...drawnForms,
  subject: 'Arbeiten an',
  subjects: {
    parts: 'Schrauben, Löcher',
    bearings: 'Lager',
    outline: 'Umriss',
    beads: 'Dichtraupen',
  },
  kinds: {
    'face-part': 'Dichtring, Stopfen, Ventil, Sieb',
    saddle: 'Lagersitz',
    rod: 'Pleuel',
    balance: 'Ausgleichswellenlager',
    corner: 'Ecke',
    'bead-point': 'Punkt der Raupe',
    'keep-out': 'Sperrzone',
  },
  facePart: 'Teil',
  faceParts: {
    seal: 'Wellendichtring',
    'two-piece-seal': 'Zweiteilige Dichtung',
    plug: 'Verschlussstopfen',
    'check-valve': 'Rückschlagventil',
    strainer: 'Ölsieb',
  },
  partName: 'Wie es heißt',
  lip: 'Lippe zeigt',
  flow: 'Öl fließt',
  ways: { inwards: 'nach innen', outwards: 'nach außen' },
  shaft: 'Welle',
  depth: 'Unter der Fläche um',
  noBearings:
    'Auf dieser Fläche liegt kein Lager offen. Eine Fläche wählen, die Lagersitze, Pleuel oder Ausgleichswellenlager zeigt, oder unter „Flächen“ eine hinzufügen.',
  onAxis: 'Grundlager und Pleuel liegen auf der Achse der Kurbelwelle: nur ihre Lage längs zählt.',
  snapped: {
    axis: 'auf der Achse',
    saddle: ({ name }) => `an Lagersitz ${name}`,
    edge: 'auf dem Rand',
    thing: ({ name }) => `in Linie mit ${name}`,
    mirror: ({ name }) => `gegenüber ${name}`,
  },
  listed: {
    chosen: 'gewählt',
    inOrder: ({ place }) => `Stelle ${place} der Reihenfolge`,
  },
  handles: {
    corner: ({ number }) => `Ecke ${number}`,
    beadPoint: ({ bead, number }) => `${bead}, Punkt ${number}`,
    bearing: ({ kind, id }) =>
      ({ saddle: `Lagersitz ${id}`, rod: `Pleuel ${id}`, balance: `Ausgleichswellenlager ${id}` })[kind],
  },
  path: {
    grown: 'Diese Fläche hat keinen eigenen Umriss: ihr Rand wächst um das, was auf ihr liegt.',
    again: 'Umriss neu zeichnen',
    addCorner: 'Auf den Rand tippen fügt dort eine Ecke ein; Ziehen verschiebt eine Ecke.',
    drop: 'Ohne Umriss',
    tapOn: 'Punkt für Punkt auf der Zeichnung antippen oder eingeben.',
    soFar: ({ count, least }) =>
      count < least
        ? `${counted(count, 'Punkt', 'Punkte')}; ab ${least} im Motordatenblatt.`
        : `${counted(count, 'Punkt', 'Punkte')}, im Motordatenblatt.`,
    takeBack: 'Letzten Punkt zurücknehmen',
    finish: 'Fertig',
    addPoint: 'Diesen Punkt anfügen',
  },
  beads: {
    which: 'Dichtraupe',
    new: 'Neue Dichtraupe',
    none: 'Diese Fläche hat noch keine Dichtraupe.',
    begin: 'Zeichnen',
    width: 'Breite der Raupe',
    sealant: 'Dichtmittel',
    openTime: 'Offenzeit, min',
    form: 'Ihr Weg',
    forms: { open: 'offen', closed: 'geschlossen' },
    addPoint: 'Neben die Raupe tippen fügt dort einen Punkt ein; Ziehen verschiebt einen Punkt.',
  },
}
