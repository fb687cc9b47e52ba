import type { Words } from '../../words.ts'
import { and, counted } from '../formats.ts'
import { namesOf } from '../halves.ts'
import { faultDrill } from './fault-drill.ts'
import { measureDrill } from './measure-drill.ts'
import { mirrorDrill } from './mirror-drill.ts'

type Practice = Words['practice']

const names: Practice['names'] = {
  order: 'Reihenfolge',
  chart: 'Auswahltabelle',
  values: 'Werte und Schlüssel',
  angle: 'Drehwinkel',
  mirror: 'Spiegelbild',
  measure: 'Messen',
  fault: 'Fehlersuche',
}

const rounds = (count: number): string => counted(count, 'Runde', 'Runden')
const clock = (seconds: number): string =>
  seconds < 60 ? `${Math.round(seconds)} s` : `${Math.floor(seconds / 60)} min ${Math.round(seconds % 60)} s`

export const practice: Practice = {
  title: 'Übung',
  back: 'Zurück zur Übung',
  banner: 'ÜBUNG',
  engine: 'Motor',
  none: 'Für diesen Motor gibt es nichts zu üben: keine Durchgänge und keine Auswahltabelle.',
  keptFor: ({ name }) => `Übungen von ${name} werden auf dieser Werkbank aufgehoben.`,
  notKept: ({ name }) =>
    (name === '' ? 'Niemand ist an der Werkbank' : `${name} steht nicht in der Personenliste`) +
    ': Runden sind möglich, werden aber nicht aufgehoben.',

  today: 'Heute, etwa zehn Minuten',
  nothingToday: 'Für heute erledigt.',
  todays: (of) => `${names[of.drill]}: ${of.engine}, ${of.minutes} min`,
  drillsOf: ({ engine }) => `Übungen: ${engine}`,
  names,
  abouts: {
    order: 'Reihenfolge eines Durchgangs, auf der Zeichnung ohne Nummern.',
    chart: 'Lagerschalen zu zufälligen Kennzeichen, nach der gedruckten Auswahltabelle.',
    values: 'Drehmoment eines Anzugs, seine Einheit, der Schlüssel dafür und dessen Einstellung.',
    angle: 'Drehwinkel nach Augenmaß, ohne angezeigten Winkel.',
    mirror: 'Schalen und Schraubennummern eines kopfstehenden oder gedrehten Gehäuses.',
    measure:
      'Fühlerlehre, Kunststoffmessfaden, Bügelmessschraube und Innenmessgerät, bis zum letzten Strich.',
    fault: 'Ein fertiger Aufbau mit einem Fehler, auf Zeichnung und Montageblatt.',
  },
  notOffered: {
    order: 'kein Durchgang geht über Schrauben',
    chart: 'keine Auswahltabelle vorhanden',
    values: 'kein Durchgang hat ein Drehmoment',
    angle: 'kein Durchgang hat einen Drehwinkel',
    mirror: 'nur eine Stelle für eine Schale oder Schraube',
    measure: 'nichts zu messen',
    fault: 'nichts, was falsch sein kann, ist auf Zeichnung und Montageblatt zu sehen',
  },
  without: ({ drill, reason }) => `Nicht für diesen Motor: ${names[drill]} (${reason}).`,
  begin: ({ drill }) => `Beginnen: ${names[drill]}`,
  never: 'Noch nicht geübt.',
  standing: (of) => [
    `${rounds(of.rounds)}, davon ${of.faultless} fehlerfrei. Wieder am `,
    { whole: `${of.dueAt}.` },
  ],

  errors: 'Fehler nach Stelle',
  errorsShown: 'Markiert: Fehler der letzten zehn Runden. Gefüllt: gefragt, ohne Fehler.',
  noErrors: 'Keine Fehler in den letzten Runden.',
  errorsAt: (of) => `${of.errors} Fehler, ${of.asked}-mal gefragt`,

  minimum: 'Fehlerfreie Runden je Übung, bevor jemand einen Aufbau dieses Motors leitet',
  noMinimum: 'keine',
  minimumBy:
    'Ein Mechaniker der Personenliste legt sie fest, mit PIN, wo Mechaniker eine haben. Sie wird beim Beginn eines Aufbaus angezeigt und hält niemanden auf.',
  ready: {
    title: 'Wer für diesen Motor bereit ist',
    person: 'Person',
    verdict: 'Mindestzahl',
    yes: 'erreicht',
    notYet: 'noch nicht',
    meaning: 'Fehlerfreie Runden und Tag der letzten.',
  },
  missing: (of) =>
    `Die Werkstatt verlangt je Übung ${counted(of.least, 'fehlerfreie Runde', 'fehlerfreie Runden')}, bevor jemand einen Aufbau dieses Motors leitet. ` +
    `${of.name}: ` +
    of.missing.map(({ drill, faultless }) => `${names[drill]} ${faultless}`).join(', ') +
    '. Der Aufbau kann trotzdem beginnen.',

  fastener: (of) =>
    `Schraube, ${of.where}${of.letter === null ? '' : ` ${of.letter}`}: ${of.isPulled ? 'angezogen' : 'nicht angezogen'}`,

  soFar: (of) => `${of.done} von ${of.of}`,
  right: 'Richtig.',
  wrong: 'Nicht diese.',
  question: 'Frage',
  check: 'Prüfen',
  onward: 'Weiter',

  order: {
    help: 'Die nächste wird gezeigt nach',
    afterErrors: ({ errors }) => `${errors} ${errors === 1 ? 'Fehler' : 'Fehlern'}`,
    tap: 'Welche Schraube ist die nächste? Antippen.',
    pass: (of) => [`${of.procedure}${of.cap === null ? '' : `, Deckel ${of.cap}`}: `, { strong: of.pass }],
    complete: 'Durchgang ist vollständig',
    whatNext: 'Was kommt als Nächstes?',
    done: 'Anziehvorgang ist fertig',
    whole: ({ name, target }) => (target === null ? name : `${name}, ${target}`),
    mistakes: {
      'already-pulled': ({ number }) => `${number} ist in diesem Durchgang schon angezogen.`,
      'not-in-pass': ({ number }) =>
        `${number} gehört nicht zu diesem Durchgang: Er geht nur über einen Teil der Schrauben.`,
      'is-complete': 'Alle dieses Durchgangs sind angezogen. Das angeben.',
      'not-complete': ({ left }) =>
        `Der Durchgang ist nicht vollständig: noch ${counted(left, 'Schraube', 'Schrauben')}. Eine ausgelassene Schraube wird im nächsten zu weit gedreht.`,
      'wrong-pass':
        'Ein anderer Durchgang kommt zuerst. Durchgänge steigern die Kraft stufenweise, damit die Flächen gleichmäßig schließen.',
    },
    reasons: {
      'middle-first': ({ number }) =>
        `${number} noch nicht: Diese Reihenfolge geht von der Mitte nach außen. Was in der Mitte eingeschlossen ist, kann sich nicht mehr setzen.`,
      apart: ({ number }) =>
        `${number} noch nicht: Sie liegt neben der letzten. Nacheinander angezogene Nachbarn nehmen einander Kraft.`,
      'as-given': ({ number }) =>
        `${number} noch nicht: Die Reihenfolge des Datenblatts geht zuerst woandershin.`,
    },
    consequence: (of) =>
      `Mit Dichtung in der Fuge und ${of.early} jetzt angezogen, hielte ${of.number} am Ende des Durchgangs ${of.wrong} kN statt ${of.right} kN.`,
    hardlyAny:
      'Im Modell dieser Verbindung ändern sich die Kräfte am Ende des Durchgangs kaum; die Reihenfolge gilt trotzdem.',
    picture: 'Mehr oder weniger Kraft je Schraube am Ende des Durchgangs, in kN',
    showsNext: ({ number }) => `Als Nächste ${number}, in Blau.`,
  },

  chart: {
    marks: (of) => [
      { strong: `${of.position}: ` },
      `${of.housing} `,
      { strong: of.housingMark },
      `, ${of.journal} `,
      { strong: of.journalMark },
    ],
    which: 'Welche Lagerschalen?',
    chart: (of) => `Auswahltabelle ${of.fit}, ${of.position}: ${namesOf(of.split).join(' / ')}`,
    sides: ({ housing, journal }) => `${housing} ↓ ${journal} →`,
    cell: ({ upper, lower }) => `${upper} / ${lower}`,
    noCell: '–',
    wrongHalves: ({ halves }) =>
      `Nicht, was die Auswahltabelle für diese Kennzeichen angibt: ${and(halves)}.`,
    wouldBe: ({ clearance, allowed }) => `Diese Schalen ergäben ${clearance}; zulässig ${allowed}.`,
    chartLeaves: ({ clearance }) => `Die Schalen der Auswahltabelle ergeben ${clearance}.`,
    noSizes: 'Das Datenblatt nennt keine Maße dafür: Es entscheidet allein die Auswahltabelle.',
  },

  values: {
    wrenches: {
      small: 'Kleiner Schlüssel, 5 bis 25 N·m',
      inch: 'Kleiner Schlüssel, 30 bis 250 lbf·in',
      middle: 'Mittlerer Schlüssel, 20 bis 110 N·m',
      foot: 'Mittlerer Schlüssel, 20 bis 150 lbf·ft',
      large: 'Großer Schlüssel, 60 bis 330 N·m',
      adapter: 'Aufsteckschlüssel 60 mm',
    },
    practiceRack: 'Die Werkstatt hat keine Schlüssel eingetragen: Diese sind zum Üben.',
    asks: {
      value: ({ pass, number }) => `${pass}: Womit wird Schraube ${number} angezogen?`,
      unit: ({ torque, unit }) =>
        `Verlangt sind ${torque}, die Skala des Schlüssels ist in ${unit}. Worauf einstellen?`,
      wrench: ({ torque }) => `Welcher davon taugt für ${torque}?`,
      setting: ({ setup, torque }) => `${setup}: Worauf einstellen für ${torque} an der Schraube?`,
    },
    pass: ({ procedure, pass, kind }) => `${procedure}, Durchgang ${pass}, ${kind}`,
    scale: ({ number, unit }) => `${number} ${unit}`,
    noneOfThem: 'Keiner davon',
    someFits: 'Einer davon taugt: den Wert mit dem Bereich jedes Schlüssels vergleichen.',
    gives: (of) =>
      `${of.value} ergäbe an der Schraube ${of.byValue}: das ${of.times}-fache der verlangten ${of.target}.`,
  },

  angle: {
    ask: ({ number, angle }) => [`Schraube ${number} drehen um `, { strong: angle }, '.'],
    room: ({ room, grip }) =>
      room === null ? 'Der Griff ist frei.' : `Schwenkbereich des Griffs ${room}°. Umsetzen mit: ${grip}.`,
    hint: 'Knopf ziehen oder Pfeiltasten: je 5°, mit Umschalt 1°.',
    by: ({ degrees }) => (degrees < 0 ? `↺ ${-degrees}°` : `↻ ${degrees}°`),
    grip: 'Umsetzen',
    here: 'Ist gedreht',
    atEnd: 'Der Griff ist am Ende des Schwenkbereichs.',
    handle: ({ clock }) => `Griff etwa auf ${clock} Uhr`,
    judged: (of) => `${of.reached}: ${of.off}. Zulässig ${of.least} bis ${of.most}.`,
    off: ({ degrees }) =>
      degrees === 0 ? 'auf das Grad genau' : `${Math.abs(degrees)}° zu ${degrees > 0 ? 'weit' : 'wenig'}`,
    how: 'Gedreht',
    hows: { screen: 'hier', own: 'mit eigenem Schlüssel' },
    ownWrench:
      'Schraube in den Schraubstock, nach Augenmaß um diesen Winkel drehen, dann am Winkelmesser ablesen.',
    protractorReads: 'Winkelmesser zeigt, in °',
  },

  mirror: mirrorDrill,

  fault: faultDrill,

  measure: measureDrill,
  dryRun: {
    name: 'Probelauf',
    about:
      'Ein ganzer Aufbau dieses Motors auf den echten Bildschirmen, ohne Motor. Er steht in keiner Liste und keiner Aufzeichnung und ist weg, wenn das Fenster geschlossen oder neu geladen wird.',
    start: 'Probelauf starten',
    number: 'ÜBUNG',
    build: 'Probelauf',
    nobody: 'Niemand',
    band: 'ÜBUNG: nichts wird aufgezeichnet',
    end: 'Probelauf beenden',
    howItWent: ({ engine }) => `Ergebnis des Probelaufs: ${engine}`,
    notFinished: 'Vor dem Abschluss beendet, zählt daher nicht als Runde.',
    counted:
      'Als Fehler zählt: eine abgelehnte Antwort, ein Messwert außerhalb der Grenzen, eine andere Schale als in der Auswahltabelle und alles Zurückgenommene oder Wiederholte.',
  },

  result: {
    title: 'Fertig',
    faultless: 'Keine Fehler.',
    errors: ({ errors, asked }) => `${errors} Fehler bei ${asked} Fragen.`,
    took: ({ seconds, fastest }) =>
      `Dauer ${clock(seconds)}.${fastest === null ? '' : ` Schnellste fehlerfreie Runde bisher: ${clock(fastest)}.`}`,
    speedLater: 'Die Zeit zählt, sobald eine Runde fehlerfrei ist.',
    again: ({ dueAt }) => `Wieder am ${dueAt}.`,
    another: 'Noch eine Runde',
  },
}
