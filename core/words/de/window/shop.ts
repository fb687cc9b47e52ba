import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'

export const shop: Words['shop'] = {
  title: 'Werkstatt',
  thisBench: 'Name dieser Werkbank',
  keepName: 'Namen speichern',
  thisOne: 'diese Werkbank',
  bench: 'Werkbank',
  lastSeen: 'Zuletzt gesehen',
  program: 'Programm',
  asOf: 'Stand',
  standing: 'Zwischen dieser Werkbank und der Werkstatt',
  connection: {
    untried: (_) => 'Noch nicht verbunden.',
    open: ({ since }) => `Verbunden${since === null ? '.' : ` seit ${since}.`}`,
    cut: ({ since }) => `Nicht verbunden${since === null ? '.' : ` seit ${since}.`}`,
  },
  notReached: ({ since }) => `Nicht verbunden${since === null ? '.' : ` seit ${since}.`}`,
  onlyHere:
    'Aufgeführt ist, was diese Werkbank hat: die eigenen Aufbauten und die anderer Werkbänke, wie sie zuletzt hierher kamen.',
  waiting: ({ entries, builds }) =>
    entries === 0
      ? 'Nichts wartet: Alles hier Bestätigte ist im Archiv.'
      : `Noch nicht im Archiv: ${counted(entries, 'Eintrag', 'Einträge')} in ${counted(builds, 'Aufbau', 'Aufbauten')}. Alles ist hier gesichert und wird von selbst übertragen.`,
  refused: 'Abgelehnte Aufbauten',
  benches: 'Werkbänke der Werkstatt',
  builds: 'Aufbauten der Werkstatt',
  find: 'Name, Seriennummer, Motor, Person, Teil',
  findIt: 'Suchen',
  leave: 'Werkstatt verlassen',
  isForked: 'an zwei Werkbänken getrennt fortgesetzt',

  /** Whether all benches have people and wrenches in common. */
  lists: {
    title: 'Personen und Drehmomentschlüssel',
    people: {
      common: 'Personen: eine Liste für alle Werkbänke. Was hier geändert wird, gilt an jeder Werkbank.',
      own: 'Personen: diese Werkbank hat ihre eigene Liste.',
    },
    wrenches: {
      common:
        'Drehmomentschlüssel: eine Liste für alle Werkbänke. Was hier geändert wird, gilt an jeder Werkbank.',
      own: 'Drehmomentschlüssel: diese Werkbank hat ihre eigene Liste.',
    },
    chosen: 'Dies legt der Eigentümer des Archivs fest, mit „npm run shop -- lists“.',
  },

  join: {
    title: 'Einer Werkstatt beitreten',
    what: 'Die Werkbänke einer Werkstatt teilen ein Archiv in PostgreSQL. Diese Werkbank führt ihre eigene Aufzeichnung wie bisher und arbeitet auch ohne Netz weiter; was hier bestätigt wird, kommt von selbst ins Archiv.',
    address: 'Adresse des Archivs',
    example: 'postgres://bench@server/bedplate',
    password: 'Passwort, falls das Archiv danach fragt',
    authority: 'Datei der Zertifizierungsstelle des Servers, falls es eine eigene ist',
    kept: {
      'key-store': 'Das Passwort liegt im Schlüsselspeicher dieses Systems und wird nie angezeigt.',
      file: 'Das Passwort liegt in einer Datei, die nur dieser Benutzer lesen darf, da hier kein Schlüsselspeicher benutzbar ist, und wird nie angezeigt.',
      environment:
        'Das Passwort kommt aus der Umgebung (PGPASSWORD); diese geht einem hier eingegebenen vor.',
    },
    join: 'Beitreten',
  },

  apart: {
    title: 'An zwei Werkbänken getrennt fortgesetzt',
    line: ({ number, name, entry, bench, own, counts }) =>
      `${number} ${name}: ${own === null ? 'hier' : `bei ${own}`} und bei ${bench} ab Eintrag ${entry}. ` +
      (counts === null
        ? 'Niemand hat entschieden, was zählt.'
        : counts === 'here'
          ? `Was ${own === null ? 'hier' : `bei ${own}`} eingetragen wurde, zählt.`
          : `Was bei ${bench} eingetragen wurde, zählt.`),
    look: 'Beide Folgen ansehen',
    own: ({ own }) => own ?? 'Diese Werkbank',
    which: 'Welche Folge zählt?',
    hereCounts: ({ own }) => `Was ${own === null ? 'hier' : `bei ${own}`} eingetragen wurde, zählt`,
    thereCounts: ({ bench }) => `Was bei ${bench} eingetragen wurde, zählt`,
    entries: 'Einträge seit der Trennung',
    entry: 'Eintrag',
    onTheSheet: 'Was die beiden Montageblätter unterscheidet',
  },

  build: {
    title: 'Werkbänke',
    asOf: ({ at }) => `Stand ${at}.`,
    handOver: 'Übergeben …',
    toWhich: 'Welche Werkbank setzt fort?',
    note: 'Was dort zu wissen ist (darf leer sein)',
    doHandOver: ({ bench }) => `An ${bench} übergeben`,
    handedOver: ({ bench, note }) => `Übergeben von ${bench}${note === '' ? '.' : `: ${note}`}`,
    noOther: 'Noch keine andere Werkbank ist der Werkstatt beigetreten.',
    takeOver: 'An dieser Werkbank übernehmen',
    whyTakeOver: 'Warum wird übernommen? Die bisherige Werkbank hört auf, sobald sie davon erfährt.',
    doTakeOver: 'Übernehmen',
    whySettle: 'Warum zählt diese Folge? Die andere bleibt erhalten und wird nicht fortgesetzt.',
  },

  wall: {
    title: 'Wandansicht',
    open: 'Wandansicht',
    none: 'Kein Aufbau der Werkstatt ist offen.',
    step: ({ place, of }) => `${place}/${of}`,
    noStep: 'erledigt',
    next: ({ fastener, pass }) => (fastener === null ? `Durchgang ${pass}` : `dann ${fastener}`),
    problems: ({ openProblems }) => counted(openProblems, 'Problem', 'Probleme'),
    awaitsSecond: 'zweite Person',
    forked: 'zwei Folgen',
    paused: 'Pause',
  },
}
