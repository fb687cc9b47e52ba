import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'
import { halves } from '../halves.ts'
import { patterns } from '../window/parts.ts'

type Steps = Words['steps']

const named: Steps['fitShells']['name'] = ({ position, half }) => `${position} ${halves[half]}`

const frame: Steps['frame'] = {
  title: 'Was zu tun ist',
  waitsFor: ({ steps }) => `Zuerst: ${steps.join(', ')}.`,
  saving: 'Wird gesichert …',
  goOn: 'Weiter',
  whichReading: 'Zuerst angeben, welcher der beiden Messwerte gilt.',
}

const elsewhere: Steps['elsewhere'] = {
  confirmed: ({ entries, person }) =>
    `In einem anderen Fenster oder an einer anderen Werkbank bestätigt: ${counted(entries, 'Eintrag', 'Einträge')}, ` +
    `${entries === 1 ? '' : 'der letzte '}von ${person}.`,
  look: 'Hier Eingetipptes bleibt. Gehört es noch hierher?',
  goOn: 'Angesehen: weiter',
}

const marks: Steps['marks'] = {
  note: 'Kennzeichen notieren',
  asStamped: 'Wie eingeschlagen, von der Steuerseite an',
  signOfWorn: ({ sign }) => `${sign} für unleserlich`,
  stillToRead: ({ positions }) => `Noch abzulesen: ${positions.join(', ')}.`,
  band: ({ least, most }) => `${least} bis ${most}`,
  wornAway: 'unleserlich',
  worn: 'unleserlich',
  noneReadable: 'Keines lesbar',
}

const fitShells: Steps['fitShells'] = {
  isIn: (half) => `${named(half)} liegt`,
  name: named,
  title: ({ position, half }) => `${position}, Hälfte ${halves[half]}`,
  shell: (facts) =>
    [
      `Klasse ${facts.grade}`,
      patterns[facts.pattern],
      ...(facts.undersize === null ? [] : [facts.undersize]),
      ...(facts.label === undefined
        ? []
        : [facts.label === null ? 'zu bestellen' : `aus dem Vorrat: ${facts.label}`]),
    ].join(', ') + '.',
  toOrder: (half) => `Die Schale für ${named(half)} ist noch zu bestellen. Ist sie eingetroffen?`,
  hasCome: (half) => `Eingetroffen, ${named(half)} liegt`,
  asks: (half) => `${named(half)} einlegen, noch zu bestellen …`,
  noneChosen: 'Noch keine Schale gewählt.',
  seating: 'Haltenase in der Nut, Ölbohrung über dem Ölkanal.',
  dryAndClean: 'Schalenrücken und Bohrung trocken und sauber.',
  inPlace: '✓ Eingelegt.',
  allIn: ({ halves: all }) => `✓ Alle ${all} Hälften eingelegt.`,
  in: '✓ liegt',
  toFit: 'einzulegen',
  takeOut: (half) => `${named(half)} herausnehmen`,
}

const fitPart: Steps['fitPart'] = {
  isIn: 'Ist eingebaut',
  done: '✓ Erledigt.',
  whyOut: 'Warum wird es wieder ausgebaut?',
  takeOut: 'Ausbauen',
  takeOutAgain: 'Wieder ausbauen',
}

const bead: Steps['bead'] = {
  laid: 'Dichtraupe liegt: Uhr starten',
  bead: (facts) =>
    `${facts.name}: ${facts.sealant}, Dichtraupe ${facts.width} breit${facts.closed ? ', in sich geschlossen' : ''}.`,
  keepOut: 'Frei halten:',
  withinReach:
    'Zuerst alles zum Schließen der Verbindung bereitlegen. Vom Auftragen bis zum Schließen bleiben',
  minutes: ({ minutes }) => `${minutes} Minuten`,
  whyWiped: 'Warum wird sie abgewischt?',
  wipeOff: 'Abwischen',
  usualReasons: ['Offenzeit abgelaufen', 'Beim Schließen verschmiert'],
}

const check: Steps['check'] = {
  noteBad: 'Als nicht in Ordnung notieren',
  noteReading: 'Messwert notieren',
  isGood: 'In Ordnung',
  isGoodAfterAll: 'Doch in Ordnung',
  isNotGood: '! Nicht in Ordnung',
  good: '✓ In Ordnung',
  notGood: '! Nicht in Ordnung',
  reading: ({ least, most }) => `Messwert, ${least} bis ${most}`,
  howToType: ({ unit }) => `in ${unit} oder mit Einheit: ${unit === 'in' ? '0,12 mm' : '0,005 in'}`,
  measuredWith: 'Anlaufscheiben',
  withWashers: ({ name }) => `gemessen mit Scheiben ${name}`,
  washersByTable: ({ name, thickness }) => `Scheiben nach Tabelle: ${name}, je ${thickness}`,
  fitPair: (facts) =>
    facts.first.name === facts.second.name
      ? `Scheiben: zwei ${facts.first.name}, je ${facts.first.thickness}, für Axialspiel ${facts.float}`
      : `Scheiben: ${facts.first.name}, ${facts.first.thickness}, und ${facts.second.name}, ${facts.second.thickness}, für Axialspiel ${facts.float}`,
  pairStays: 'Die eingebauten Scheiben bleiben.',
  toGet: ({ washers }) =>
    `Zu bestellen, falls nicht da: ${washers.map(({ count, name, thickness }) => `${count} × ${name}, ${thickness}`).join('; ')}.`,
  sayMeasuredWith: 'Angeben, mit welchen Scheiben gemessen wurde: Daraus folgt, welche einzubauen sind.',
  noPairFits: 'Scheiben: keine des Datenblatts passt',
  withoutWashers: 'ohne Scheiben',
  measuredWithout: 'gemessen ohne Scheiben',
  measuredWithPair: ({ first, second }) =>
    first === second ? `gemessen mit zwei Scheiben ${first}` : `gemessen mit Scheiben ${first} und ${second}`,
  andWith: 'und',
  washersNotDefined: 'Scheiben: nicht festgelegt',
  whatIsWrong: 'Was nicht stimmt',
  whatWasDone: 'War nicht in Ordnung: Was wurde seither getan?',
  isGoodNow: 'Jetzt in Ordnung',
}

const finish: Steps['finish'] = {
  void: 'Ungültig',
  finished: 'Abgeschlossen',
  showSheet: 'Montageblatt zeigen',
  finish: 'Aufbau abschließen',
  isFinished: '✓ Aufbau abgeschlossen. Die Arbeit ist nicht mehr änderbar.',
  lookOnceMore: 'Montageblatt vor dem Abschluss nochmals ansehen: Danach ist nichts mehr änderbar.',
  lookAtSheet: 'Montageblatt ansehen',
}

const afterwards: Steps['afterwards'] = {
  isVoid: '✕ Aufbau ungültig. Aufgezeichnetes bleibt.',
  whatToAdd: 'Was ist diesem Aufbau hinzuzufügen?',
  nextWhy: 'Weiter: warum',
  whyAdded: 'Warum wird es jetzt hinzugefügt?',
  add: 'Hinzufügen',
  whyVoid: 'Warum ist dieser Aufbau ungültig?',
  voidIt: 'Für ungültig erklären',
  amend: 'Aufbau berichtigen',
  void: 'Aufbau für ungültig erklären',
}

export const steps: Steps = { frame, elsewhere, marks, fitShells, fitPart, bead, check, finish, afterwards }
