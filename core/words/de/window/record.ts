import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'

const builds = (count: number) => counted(count, 'Aufbau', 'Aufbauten')
const entries = (count: number) => counted(count, 'Eintrag', 'Einträge')
/** In the dative, as after `mit`. */
const inEntries = (count: number) => counted(count, 'Eintrag', 'Einträgen')

const witnessWords = (witnesses: number): string =>
  witnesses === 0 ? '' : ` Ausgegebene Kopfcodes, die weiterhin passen: ${witnesses}.`

const sinceText = (since: number): string => (since === 0 ? '' : ` Seither hinzugekommen: ${since}.`)

export const record: Words['record'] = {
  tables: {
    size: (facts) =>
      `${facts.fit}, ${facts.position}, ${facts.part}, Ebene ${facts.plane}, Richtung ${facts.direction}`,
    pull: (facts) => `${facts.procedure}, Durchgang ${facts.pass}, ${facts.fastener}`,
    adapter: (facts) => `${facts.name}, ${facts.offset} bei ${facts.angle}`,
  },
  title: 'Aufzeichnung',
  isWhole: 'Ist alles wie bestätigt?',
  codes:
    'Jeder Eintrag trägt einen Code über sich und den vorigen. Die Prüfung der Codes zeigt, was verändert wurde und wo. ' +
    'An der Werkbank kann derweil weitergearbeitet werden.',
  backups: 'Sicherungen',
  doctor: 'Systemprüfung, zum Vorlesen am Telefon',

  verify: {
    whole: 'Ganzes Archiv überprüfen',
    followed: ({ builds, of }) => `Geprüft: ${builds} von ${counted(of, 'Aufbau', 'Aufbauten')}`,
    stop: 'Anhalten',
    stopped: 'Vor dem Ende angehalten. Über den Rest ist nichts gesagt.',
    isWhole: (facts) =>
      `✓ ${facts.builds === null ? '' : `${builds(facts.builds)} mit `}` +
      `${facts.builds === null ? entries(facts.entries) : inEntries(facts.entries)}: alles wie ` +
      `bestätigt.${witnessWords(facts.witnesses)}`,
    buildIsBroken: '! Dieser Aufbau ist nicht wie bestätigt.',
    wholeIsBroken: '! Die Aufzeichnung als Ganzes ist nicht wie bestätigt.',
    someAreBroken: ({ broken, builds }) =>
      `! Nicht wie bestätigt: ${broken} von ${counted(builds, 'Aufbau', 'Aufbauten')}.`,
    buildCode: ({ head, at }) => ['Kopfcode, wie auf dem Montageblatt: ', { code: head }, `, geprüft ${at}.`],
    wholeCode: ({ head, at }) => [
      'Code über alles: ',
      { code: head },
      `, geprüft ${at}. Mit dem Code einer Sicherung vergleichen: Eine gekürzte oder neu geschriebene Aufzeichnung hat ` +
        'einen anderen.',
    ],
    rebuildLists: 'Listen aus den Einträgen neu anlegen',
  },

  compare: {
    title: 'Mit Montageblatt, Export oder Sicherung vergleichen',
    whatFor:
      'Wer die ganze Aufzeichnung neu schreibt, erzeugt neue Codes, die zueinander passen. Zu früher Ausgegebenem passen sie nicht: ' +
      'eine solche Datei irgendwo hier ablegen oder den Kopfcode vom Montageblatt eintippen.',
    comparing: 'Vergleich läuft …',
    chooseFile: 'Datei wählen',
    headCode: 'Kopfcode',
    lookForIt: 'Suchen',
    file: 'Montageblatt, Export oder Sicherung',
    lines: {
      'same-entries': (facts) =>
        `${facts.name}: Alle ${facts.entries} Einträge sind hier gleich.${sinceText(facts.since)}`,
      'entry-has-code': (facts) =>
        `${facts.name}: Eintrag ${facts.entry} trägt diesen Code; ` +
        (facts.since === 0 ? 'es ist der letzte.' : `danach folgen noch ${facts.since}.`),
      'not-same': ({ name, why }) => `${name}: ${why}`,
    },
  },

  backup: {
    making: 'Sicherung wird angelegt und geprüft …',
    make: 'Jetzt sichern',
    byItself: 'Automatisch täglich und nach jedem abgeschlossenen Aufbau.',
    none: 'Noch keine vorhanden.',
    choose: 'Auswahl',
    made: 'Angelegt',
    builds: 'Aufbauten',
    entries: 'Einträge',
    headCode: 'Kopfcode',
    size: 'Größe',
    inThe: 'Ort',
    of: 'Herkunft',
    chooseOf: ({ at }) => `Sicherung von ${at}`,
    newest: 'neueste',
    kilobytes: ({ bytes }) => `${Math.max(1, Math.round(bytes / 1000))} kB`,
    places: { 'data-folder': 'Datenordner', 'second-folder': 'zweiter Ordner' },
    ofBench: ({ own, broken }) =>
      `${own ? 'diese Werkbank' : 'andere Werkbank'}${broken > 0 ? ` · ! ${broken} nicht wie bestätigt` : ''}`,
    putInPlace: (facts) => [
      'Sicherung von ',
      { strong: facts.at },
      ` anstelle der Aufzeichnung einsetzen? Sie enthält ${builds(facts.builds)} mit ${inEntries(facts.entries)}; später ` +
        'Bestätigtes fehlt darin. Die jetzige Datei bleibt unter anderem Namen daneben erhalten, nichts wird ' +
        'überschrieben.',
    ],
    ofAnother: 'Von einer anderen Werkbank: Deren Aufbauten treten an die Stelle der hiesigen.',
    wasBroken: 'Beim Anlegen war darin etwas nicht wie bestätigt; danach das Archiv überprüfen.',
    putting: 'Wird wiederhergestellt …',
    put: 'Sicherung einsetzen',
    isInPlace: '✓ Sicherung eingesetzt.',
    keptAs: ({ name }) => [
      'Die bisherige Datei liegt im Datenordner als ',
      { code: name },
      '. An die Person weitergeben, die den Rechner betreut.',
    ],
    nothingThere: 'An ihrer Stelle lag vorher keine Datei.',
    goOn: 'Damit weiterarbeiten',
    secondFolder: 'Zweite Kopie jeder Sicherung in diesem Ordner: anderes Laufwerk, Freigabe',
    secondFolderExample: 'ganzer Pfad; leer: keine zweite Kopie',
    keepThere: 'Dort Kopie ablegen',
    keepNone: 'Keine zweite Kopie',
    copiesGoTo: ({ folder }) => `Kopien gehen nach ${folder}.`,
    noSecondCopy: 'Keine zweite Kopie.',
  },

  rescue: {
    isBack: 'Aufzeichnung wiederhergestellt',
    cannotBeUsed: 'Die Aufzeichnung ist nicht benutzbar',
    nothingChanged: 'Nichts wurde geändert; bis zur Behebung ist kein Aufbau möglich.',
    noBackup: ({ secondFolder }) =>
      `Keine Sicherung im Datenordner${secondFolder ? ` und keine in ${secondFolder}` : ''}. Die Datei ` +
      'untersuchen lassen, bevor sonst etwas mit ihr geschieht.',
    checkedBackups: 'Sicherungen, beim Anlegen geprüft',
    lookAgain: 'Erneut suchen',
    beginEmptySure:
      'Mit leerer Aufzeichnung beginnen? Die bisherigen Aufbauten stehen dann nicht in den Listen; gelöscht wird nichts.',
    beginEmpty: 'Leer beginnen',
    nothingToBring: 'Nichts wiederherzustellen …',
    stillInMemory:
      'Zuvor Bestätigtes ist noch im Arbeitsspeicher dieses Programms. Eine Kopie davon rettet alles.',
    folder: 'Ordner für die Kopie',
    folderExample: 'ganzer Pfad; leer: Ordner der Sicherungen',
    writing: 'Wird geschrieben und geprüft …',
    write: 'Jetzt Kopie schreiben',
    written: (facts) => [
      `✓ Gesichert: ${builds(facts.builds)} mit ${inEntries(facts.entries)} in `,
      { code: facts.file },
      '. Eine Sicherung wie jede andere; sie lässt sich unten einsetzen.',
    ],
  },
}
