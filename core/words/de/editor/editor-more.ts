import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'
import { patterns } from '../window/parts.ts'

export const editorMore: Words['editor']['more'] = {
  notSaid: ({ of }) => `${of}: nicht angegeben`,
  split: 'Die Hälften liegen',
  splits: { 'upper-lower': 'übereinander', 'left-right': 'nebeneinander' },
  drawn: ({ of }) => `${of}: Maß und Toleranzklasse der Zeichnung`,
  drawnExample: '62 mm H6',
  pattern: ({ grade }) => `Muster von ${grade}`,
  patterns,
  measuring: {
    title: 'Wie Zapfen und Bohrungen gemessen werden',
    means:
      'Ohne Angabe wird jedes in zwei Ebenen und zwei Richtungen gemessen. Die Konizität gilt für das ganze Lager oder für eine Länge, die hier steht.',
    planes: 'Messebenen längs des Lagers',
    directions: 'Richtungen je Ebene',
    outOfRound: 'Unrundheit, höchstens',
    taper: 'Konizität, höchstens',
    taperPer: 'Die Konizität gilt für eine Länge von',
    planesApart: 'Von der ersten Ebene bis zur letzten',
    add: 'Messweise hinzufügen',
  },
  seating: {
    title: 'Wie die Schalen liegen',
    means: 'Wohin Nut, Ölbohrung und Haltenase jeder Hälfte kommen: steht beim Einlegen neben der Hälfte.',
    halves: 'Beide Hälften eines Lagers',
    parts: { alike: 'sind dasselbe Teil', differ: 'sind verschiedene Teile' },
    upper: 'Die obere oder linke Hälfte',
    lower: 'Die untere oder rechte Hälfte',
    add: 'Lage hinzufügen',
  },
  warm: {
    title: 'Spiel im warmen Zustand',
    means:
      'Wie stark sich jedes dehnt, in Millionsteln seines Maßes je Kelvin (10⁻⁶/K): etwa 23 bei Aluminium, 11 bis 12 bei Stahl und Grauguss.',
    housing: 'Gehäuse, 10⁻⁶/K',
    journal: 'Zapfen, 10⁻⁶/K',
    shell: 'Schalen, 10⁻⁶/K',
    oil: 'Öltemperatur',
    add: 'Warmen Zustand hinzufügen',
  },
  walls: ({ undersize }) => `Wanddicken von ${undersize}, wie gedruckt`,
  wallsMean: 'Ohne eigene Wanddicken ist jede Klasse eines Untermaßes um dessen Hälfte dicker.',
  addWall: 'Wanddicke hinzufügen',
  chartFor: 'Auswahltabelle für',
  allBearings: 'alle',
  newChartFor: 'Weitere Auswahltabelle, für',
  addChart: 'Diese Auswahltabelle beginnen',
  mixed: 'Die beiden Scheiben sind verschieden dick',
  mixes: { no: 'nie', yes: 'wo das Spiel es verlangt' },

  headFace: {
    title: 'Auflagefläche des Kopfes',
    means: 'Eine übliche wird genommen, wo das Handbuch keine angibt.',
    outer: 'Außendurchmesser',
    hole: 'Durchmesser des Lochs darunter',
    add: 'Auflagefläche hinzufügen',
  },
  workingLoad: {
    title: 'Last, während der Motor läuft',
    means: 'Nur zum Lernen: was an jeder Schraube zieht, und wo es angreift, von 0 bis 1 (n nach VDI 2230).',
    force: 'Kraft an jeder',
    introduction: 'Wo sie angreift',
    add: 'Last hinzufügen',
  },
  layers: {
    title: 'Geklemmte Teile, vom Kopf an',
    material: 'Werkstoff',
    thickness: 'Dicke',
    add: 'Teil hinzufügen',
  },

  ringRule: 'Wie das Stoßspiel angegeben ist',
  ringRules: { limits: 'durch Grenzen', bore: 'als Anteil der Bohrung', none: 'gar nicht' },
  perBore: 'Mindestens, als Anteil der Bohrung: 0,004 für 0,004 mm je Millimeter',
  minimum: 'Doch nie weniger als',
  mostPerBore: 'Höchstens, als Anteil der Bohrung',
  endGap: ({ limit }) => `Stoßspiel. ${limit}`,
  inGroove: ({ limit }) => `In der Nut. ${limit}`,
  ringTitle: ({ ring }) => `${ring}: Stoßspiel und Nut`,
  whereGroove: 'Wie das Spiel in der Nut gemessen wird',
  offPin: 'Abstand des Stoßes von den Bolzenenden',
  offThrust: 'Abstand des Stoßes von den Druckseiten',
  thrustSide: 'Druckseite, auf den Boden gesehen, Steuerseite voraus',
  thrustSides: { left: 'links', right: 'rechts' },
  moreRings: 'Ringe anderer Kolben',

  capByCap: 'Ein Deckel durchläuft alle Durchgänge vor dem nächsten',
  only: ({ count }) =>
    count === 0
      ? 'Nachgeprüft: alle der Reihenfolge'
      : `Nachgeprüft: ${counted(count, 'Schraube', 'Schrauben')}`,
  newOrder: 'Name einer weiteren Reihenfolge',
  addOrder: 'Reihenfolge hinzufügen',
  orderTakenOut: ({ order }) => `Die Reihenfolge ${order} entfernen`,
}
