import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'
import { pairText } from '../halves.ts'

const named = ({ number, name }: { readonly number: string; readonly name: string }) => `${number} „${name}“`

export const archive: Words['archive'] = {
  title: 'Archiv',
  states: { open: 'offen', finished: '✓ abgeschlossen', voided: '✕ ungültig' },

  search: {
    words: 'Suchen nach',
    wordsExample: 'Motor, Seriennummer, Person, Teil …',
    saidOf: 'Suchen in',
    anything: 'allem',
    kinds: {
      engine: 'Motor',
      number: 'Nummer',
      name: 'Name',
      serial: 'Seriennummer',
      person: 'Person',
      part: 'Teil: Lagerschale, Schraube',
      flag: 'Beanstandung',
    },
    startedFrom: 'Begonnen ab',
    startedTo: 'bis',
    builds: 'Aufbauten',
    states: {
      any: 'alle',
      open: 'offen',
      finished: 'abgeschlossen',
      flagged: 'beanstandet',
      voided: 'ungültig',
      forked: 'getrennt fortgesetzt',
    },
    anyBench: 'alle',
    nothingFound:
      'Kein Aufbau gefunden. Ein Wort oder ein Datum weglassen oder alle Zustände wählen; eine neue Aufzeichnung enthält noch keine Aufbauten.',
  },
  pages: 'Seiten',
  newer: '← Neuere',
  older: 'Ältere →',
  page: ({ page }) => `Seite ${page}`,

  table: {
    choose: 'Auswahl',
    chooseBuild: ({ number }) => `${number} auswählen`,
    number: 'Nummer',
    build: 'Aufbau',
    engine: 'Motor',
    serial: 'Seriennummer',
    lastEntry: 'Letzter Eintrag',
    entries: 'Einträge',
    state: 'Zustand',
    engineOf: ({ engine, demo }) => `${engine}${demo ? ', Demo' : ''}`,
    flagged: '! beanstandet',
  },

  chosenBuilds: 'Ausgewählte Aufbauten',
  oneChosen: ({ one }) => [{ strong: one }, ' ausgewählt.'],
  twoChosen: ({ one, other }) => [{ strong: one }, ' und ', { strong: other }, ' ausgewählt.'],
  compareTwo: 'Beide vergleichen',
  twoEngines: 'Es sind zwei verschiedene Motoren: Vergleichen lassen sich nur Aufbauten desselben Motors.',
  verifyIt: 'Überprüfen',
  tickOne:
    'Einen Aufbau ankreuzen, um ihn zu exportieren oder zu überprüfen; zwei desselben Motors, um sie zu vergleichen.',

  takeOut: 'Export',
  exportOne: 'Als eine Datei exportieren',
  pullsCsv: 'Anzüge als CSV',
  readingsCsv: 'Messwerte als CSV',
  partsCsv: 'Teile als CSV',

  import: {
    title: 'Aufbau von einer anderen Werkbank importieren',
    dropHere:
      'Exportierte Datei (.bedplate) irgendwo hier ablegen oder auswählen. Ist auch nur ein Byte verändert, wird sie abgelehnt.',
    chooseFile: 'Datei wählen',
    checking: ({ fileName }) => `${fileName} wird geprüft …`,
    file: 'Exportierter Aufbau',
    open: ({ number }) => `${number} öffnen`,
    added: (facts) =>
      `Importiert als ${named(facts)}: ${counted(facts.entries, 'Eintrag', 'Einträge')}, wie bestätigt.`,
    known: (facts) => `${named(facts)} ist hier schon vorhanden, Eintrag für Eintrag. Nichts wurde geändert.`,
    continued: (facts) =>
      `${named(facts)} wurde anderswo fortgesetzt: ${counted(facts.added, 'Eintrag', 'Einträge')} übernommen, ` +
      `insgesamt ${facts.entries}.`,
    behind: (facts) =>
      `${named(facts)} hat hier ${counted(facts.behind, 'Eintrag', 'Einträge')} mehr als in der Datei. ` +
      'Nichts wurde geändert.',
    fork: (facts) =>
      `${named(facts)} wurde an zwei Orten verschieden fortgesetzt: Ab Eintrag ${facts.at} weicht die Datei von der Aufzeichnung ab. ` +
      'Nichts wurde geändert.',
    photosLost: ({ photosLost }) =>
      `${counted(photosLost, 'Foto', 'Fotos')} beschädigt oder fehlend, in der Datei und hier; an der Stelle steht ein Hinweis. ` +
      'Der Aufbau selbst ist wie bestätigt.',
    fileRefused: ({ fileName }) => `${fileName}:`,
    engineOpened: ({ name, fileName }) =>
      `${name}, aus ${fileName}, steht bis zum Beenden von Bedplate in der Liste der Motoren. Zum Behalten die Datei in den ` +
      'Ordner der Motordatenblätter legen.',
  },

  forked: {
    entry: ({ at }) => `Eintrag ${at}`,
    what: 'Was',
    when: 'Wann',
    who: 'Wer',
    code: 'Code',
    here: 'Hier',
    inFile: 'In der Datei',
    unknownEntry: 'Eintrag, den nur ein neueres Bedplate lesen kann',
    whatToDo:
      'Beide haben denselben Anfang. Klären, was am Motor tatsächlich gemacht wurde; den anderen Aufbau auf seiner Werkbank für ' +
      'ungültig erklären.',
  },
  entryHolds: ({ kind, holds }) => `${kind}: ${holds}`,
  entries: {
    'build-started': 'Aufbau begonnen',
    'marks-noted': 'Maßkennzeichen notiert',
    'shells-chosen': 'Lagerschalen gewählt',
    'half-fitted': 'Lagerschale eingelegt',
    'half-taken-out': 'Lagerschale herausgenommen',
    'part-fitted': 'Teil eingebaut',
    'part-taken-out': 'Teil ausgebaut',
    'crank-turned': 'Kurbelwelle durchgedreht',
    'turning-accepted': 'Durchdrehmoment außerhalb der Grenzen angenommen',
    'turning-voided': 'Durchdrehmoment ungültig',
    'place-done': 'Stelle erledigt',
    'place-undone': 'Stelle wieder offen',
    'rings-fitted': 'Kolbenringe aufgezogen',
    'rings-taken-off': 'Kolbenringe abgenommen',
    'limit-measured': 'gegen Grenzwerte gemessen',
    'limit-accepted': 'Messwert außerhalb der Grenzen angenommen',
    'measured-part-replaced': 'gemessenes Teil ersetzt',
    'parts-ticked': 'Teile eingebaut',
    'ticks-removed': 'eingebaute Teile zurückgenommen',
    'part-left-over': 'Teil übrig',
    'parts-counted': 'Teile gezählt',
    'photo-added': 'Foto hinzugefügt',
    'photo-skipped': 'kein Foto, mit Begründung',
    'photo-withdrawn': 'Foto zurückgezogen',
    'revision-taken-over': 'neuere Revision des Datenblatts übernommen',
    'step-reopened': 'Schritt wieder geöffnet',
    'step-skipped': 'Schritt übersprungen',
    'skip-taken-back': 'übersprungener Schritt doch auszuführen',
    'note-written': 'Notiz geschrieben',
    'bead-laid': 'Dichtraupe aufgetragen',
    'bead-wiped-off': 'Dichtraupe abgewischt',
    'check-answered': 'Prüfung beantwortet',
    'readings-noted': 'Messwerte notiert',
    'readings-withdrawn': 'Messwerte zurückgezogen',
    'undersize-declared': 'Untermaß angegeben',
    'basis-decided': 'zwischen Maßkennzeichen und Messwerten entschieden',
    'shells-pinned': 'Lagerschalen von Hand gewählt',
    'shells-released': 'Lagerschalen nicht mehr von Hand gewählt',
    'tray-noted': 'Schalenvorrat gezählt',
    'thread-read': 'Kunststoffmessfaden abgelesen',
    'run-started': 'Anziehen begonnen',
    'fasteners-declared-new': 'Schrauben als neu angegeben',
    'fastener-pulled': 'Schraube angezogen',
    'pull-taken-back': 'Anzug zurückgenommen',
    'pull-read-again': 'Anzug neu abgelesen',
    'problem-noted': 'Problem notiert',
    'flag-answered': 'Beanstandung beantwortet',
    'fastener-loosened': 'Schraube gelöst',
    'fastener-replaced': 'Schraube ersetzt',
    'pass-repeated': 'Durchgang wiederholt',
    'run-restarted': 'Anziehen neu begonnen',
    'run-paused': 'Anziehen unterbrochen',
    'run-resumed': 'Anziehen fortgesetzt',
    'step-confirmed': 'Schritt von zweiter Person geprüft',
    'step-sent-back': 'Schritt von zweiter Person zurückgegeben',
    'build-finished': 'Aufbau abgeschlossen',
    'build-amended': 'Aufbau berichtigt',
    'build-voided': 'Aufbau für ungültig erklärt',
    'build-handed-over': 'an andere Werkbank übergeben',
    'build-taken-over': 'von anderer Werkbank übernommen',
    'fork-settled': 'entschieden, welche Folge zählt',
  },

  compared: {
    title: 'Zwei Aufbauten nebeneinander',
    differences: ({ different, all }) => `Unterschiede: ${different} von ${all} Punkten.`,
    sameSpec: 'Beide nach demselben Datenblatt, Zeichen für Zeichen.',
    otherSpec: '! Verschiedene Revisionen des Datenblatts: Auch die Vorgaben können abweichen.',
    show: 'Anzeigen',
    shown: { differences: 'nur Unterschiede', all: 'alles' },
    what: 'Was',
    parts: {
      bearings: 'Maßkennzeichen und Lagerschalen',
      checks: 'Prüfungen',
      runs: 'Anziehvorgänge',
      pulls: 'Anzüge',
      steps: 'Schritte',
    },
    shells: (facts) =>
      `Bohrung ${facts.housing ?? '?'}, Zapfen ${facts.journal ?? '?'}: ` +
      pairText({ split: facts.split, upper: facts.upper ?? '–', lower: facts.lower ?? '–' }),
    run: (facts) =>
      `Anzüge: ${facts.pulls}, zurückgenommen: ${facts.takenBack}, Beanstandungen: ${facts.flags}` +
      (facts.ownOrder ? ', eigene Reihenfolge' : ''),
    stepDone: ({ at, person }) => `✓ ${at}, ${person}`,
  },
}
