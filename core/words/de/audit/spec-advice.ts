import type { specAdvice as pattern } from '../../en/audit/spec-advice.ts'
import type { Table } from '../../table.ts'
import { plain } from '../formats.ts'

const kinds: Readonly<Record<string, string>> = {
  array: 'eine Liste in [ ]',
  boolean: 'true oder false',
  int: 'eine ganze Zahl',
  number: 'eine Zahl ohne Anführungszeichen',
  object: 'eine Gruppe in { }',
  string: 'einen Text in Anführungszeichen',
  tuple: 'eine Liste in [ ]',
}

const relations = {
  'at-least': 'mindestens',
  above: 'mehr als',
  'at-most': 'höchstens',
  below: 'weniger als',
}

export const specAdvice: Table<typeof pattern> = {
  'write-kind': ({ kind }) => `${kinds[kind] ?? kind} eintragen`,
  'write-one-of': ({ values }) => {
    const listed = values.map((value) => (typeof value === 'string' ? `„${value}“` : value))
    return `${listed.length === 1 ? '' : 'eines davon eintragen: '}${listed.join(', ')}${listed.length === 1 ? ' eintragen' : ''}`
  },
  'write-as-shown': (_) => 'in einer der Formen eintragen, die die README bei den Demo-Datenblättern zeigt',
  'turning-empty': (_) =>
    'Höchstwert, Mindestwert oder größten Anstieg des Durchdrehmoments angeben; weglassen, wo das Handbuch keinen nennt',
  'type-number': (_) => 'eine Zahl eingeben',
  'type-whole-number': (_) => 'eine ganze Zahl eingeben',
  'write-date': (_) => 'Datum als Jahr, Monat und Tag eintragen, z. B. 2026-03-31',
  'write-another-way': (_) => 'anders eintragen',
  'write-another-name': (_) => 'einen anderen Namen eintragen',
  'write-another-value': (_) => 'einen anderen Wert eintragen',
  'number-within': ({ relation, limit }) => `${relations[relation]} ${plain(limit)} angeben`,
  'entries-within': ({ relation, limit }) => `${relations[relation]} ${limit} davon angeben`,
  'characters-within': ({ relation, limit }) => `${relations[relation]} ${limit} Zeichen eintragen`,
  'multiple-of': ({ divisor }) => `ein Vielfaches von ${plain(divisor)} eintragen`,

  'value-with-unit': ({ example }) => `Wert mit Einheit in Anführungszeichen eintragen, z. B. "${example}"`,
  'length-within': ({ metres }) => `eine Länge von höchstens ${plain(metres)} m angeben`,
  'size-above-zero': (_) => 'ein Maß über null angeben',
  'gap-not-negative': (_) => 'einen Spalt von null oder mehr angeben',
  'torque-above-zero': (_) => 'ein Drehmoment über null angeben',
  'force-above-zero': (_) => 'eine Kraft über null angeben',
  'two-lengths': (_) => 'zwei Längen eintragen, längs und quer, z. B. ["120 mm", "-46 mm"]',

  'step-above-zero': (_) => 'eine Teilung über null angeben',
  'angle-to-handle': (_) => 'den Winkel zur Griffachse angeben, 0° bis 180°',

  'id-characters': (_) => 'bis zu 40 Buchstaben, Ziffern, Bindestriche und Punkte verwenden',
  'id-of-javascript': (_) => 'eine andere Kennung wählen: Diese behält JavaScript für sich',
  'languages-none': (_) => 'den Text in mindestens einer Sprache eintragen: „en“, „de“ oder „es“',
  'name-empty': (_) => 'einen Namen eintragen',
  'name-long': ({ most }) => `Name kürzer als ${most} Zeichen`,
  'sentence-empty': (_) => 'einen Satz eintragen',
  'sentence-long': ({ most }) => `kürzer als ${most} Zeichen fassen`,
  'number-of-fastener': (_) => 'eine Nummer hat bis zu drei Ziffern, davor höchstens einen Großbuchstaben',
  'mark-characters': (_) => 'ein Kennzeichen hat ein bis drei Zeichen ohne Leerzeichen',
  'grade-characters': (_) => 'eine Klasse hat ein bis drei Großbuchstaben oder Ziffern',
  'colour-digits': (_) => 'Farbe als # und sechs große Hexadezimalziffern eintragen',

  'outline-corners': (_) => 'ein Umriss braucht mindestens drei Ecken',
  'cylinders-none': (_) => 'ein Motor hat mindestens einen Zylinder',
  'faces-none': (_) => 'ein Gehäuse hat mindestens eine Trennfläche',
  'order-empty': (_) => 'eine Reihenfolge hat mindestens eine Schraube',
  'passes-none': (_) => 'ein Anziehvorgang hat mindestens einen Durchgang',
  'limits-empty': (_) => 'Mindestwert, Höchstwert oder beides angeben',
  'pistons-none': (_) => 'mindestens einen Kolben nennen, der diese Ringe bekommt',
  'rings-none': (_) => 'mindestens einen Ring nennen',
  'angle-on-the-clock': (_) =>
    'einen Winkel von 0° bis unter 360° angeben, im Uhrzeigersinn ab der Steuerseite',
  'angle-within-circle': (_) => 'einen Winkel von 0° bis unter 360° angeben',
  'throws-none': (_) => 'eine Kurbelwelle hat mindestens eine Kröpfung',
  'throw-without-rods': (_) => 'die Pleuel auf dem Hubzapfen nennen',
  'angle-up-to-90': (_) => 'einen Winkel von 0° bis 90° angeben',
  'angle-up-to-180': (_) => 'einen Winkel über 0° angeben, höchstens 180°',
  'places-none': (_) => 'mindestens eine Stelle nennen, an der etwas zu tun ist',
  'measures-none': (_) => 'mindestens ein Maß nennen, das gemessen wird',
  'part-limit': (_) =>
    'angeben, dass es jedes Mal neu ist, oder wie lange wiederverwendbar: Grenze in Worten oder Zahl der Aufbauten insgesamt',
  'part-unused': (_) => 'mindestens einen Schritt nennen, der es verwendet',
  'parts-too-many': ({ most }) =>
    `eine Teileliste hat höchstens ${most} Zeilen: gleiche Teile in einer Zeile mit Anzahl zusammenfassen, nicht Einzubauendes weglassen`,
  'steps-none': (_) => 'ein Datenblatt hat mindestens einen Schritt',
  'fasteners-none': (_) => 'mindestens eine Schraube nennen',
  'version-of-spec': ({ version }) =>
    `im eigenen Datenblatt ${version} eintragen, eines aus einem neueren Programm mit diesem öffnen: Hier wird Version ${version} gelesen`,

  'torque-or-range': (_) => 'Drehmoment als einen Wert angeben oder als Bereich mit Mindest- und Höchstwert',
  'turn-or-in-all': (_) => 'entweder angeben, wie weit gedreht wird, oder wie weit insgesamt',
  'others-with-in-all': (_) => 'weglassen, wo der Durchgang den Winkel insgesamt nennt',
  'in-all-unclear': (_) =>
    'einen Winkel über dem bisher gedrehten angeben, der für alle gleich sein muss, oder für jede angeben, wie weit sie gedreht wird',
  'steps-do-not-come-out': (_) =>
    'keine Anzahl gleicher Stufen dieser Größe ergibt den Wert des Durchgangs: Größe als Bereich angeben, von und bis, ' +
    'oder andere Größe',
  'steps-from-unlike': (_) =>
    'alle Schrauben eines Werts müssen vorher dasselbe Drehmoment haben, ab dem die Stufen zählen: je Stufe einen Durchgang eintragen',
}
