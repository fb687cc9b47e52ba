import type { Words } from '../../words.ts'
import { counted, day } from '../formats.ts'
import { drawn } from './drawn.ts'
import { editorCheck } from './editor-check.ts'
import { editorFields } from './editor-fields.ts'
import { editorMore } from './editor-more.ts'
import { editorPicture } from './editor-picture.ts'
import { editorSteps } from './editor-steps.ts'

const things = ({ count }: { readonly count: number }) => counted(count, 'Element', 'Elemente')

export const editor: Words['editor'] = {
  fields: editorFields,
  more: editorMore,
  drawn,
  steps: editorSteps,
  check: editorCheck,
  picture: editorPicture,
  pages: {
    page: 'Seite des Handbuchs',
    document: 'Dokument, wo es ein anderes ist',
    thatOfTheSpec: 'das Handbuch des Datenblatts',
    enteredBy: ({ by, on }) => `Eingegeben von ${by} am ${day(on)}`,
  },
  title: ({ name, revision }) => `${name}, Revision ${revision}`,
  nothingToUndo: 'Rückgängig',
  nothingToRedo: 'Wiederherstellen',

  face: 'Fläche',
  actions: {
    place: 'Setzen',
    move: 'Verschieben',
    align: 'Ausrichten',
    mirror: 'Spiegeln',
    repeat: 'Wiederholen',
    order: 'Reihenfolge',
    group: 'Gruppe',
    position: 'Lage',
    remove: 'Entfernen',
    picture: 'Bild',
  },
  whatToDo: 'Was auf der Zeichnung zu tun ist',
  selected: (facts) => (facts.count === 0 ? 'Nichts ist gewählt.' : `${things(facts)} gewählt`),
  chooseByTap: 'Antippen, was zu bearbeiten ist; erneut antippen wählt es ab. Ziehen verschiebt es.',
  clear: 'Auswahl aufheben',
  place: {
    what: 'Was gesetzt wird',
    kinds: { fastener: 'Schraube', dowel: 'Passstift', 'oil-passage': 'Ölkanal' },
    group: 'Gruppe',
    tap: 'Antippen, wohin es kommt. Lagersitze, Achse und was schon da ist, ziehen es an.',
    noGroup: 'Noch keine Schraubengruppe: zuerst unter „Gruppen“ eine hinzufügen.',
    oilWay: 'Ölkanal',
    where: ({ saddle, side }) => (side === '' ? `an ${saddle}` : `an ${saddle}, ${side}`),
    onFace: ({ side }) => (side === '' ? 'auf der Achse' : side),
    diameter: 'Durchmesser',
    sizeAlong: 'Maß längs',
    sizeAcross: 'Maß quer',
    size: 'Das Maß steht im Handbuch: keines wird erfunden. Leer gelassen gilt das des letzten auf dieser Fläche.',
    put: 'Dort setzen',
  },
  paste: {
    title: 'Lagen aus einer Tabelle',
    columns: 'x, y und, wo vorhanden, Nummer und Gruppe: aus einem Tabellenblatt oder einer CSV-Datei',
    unit: 'Zahlen ohne Einheit sind in',
    fromFile: 'Aus einer CSV-Datei',
  },
  move: {
    step: 'Schritt',
    keys: 'Die Pfeiltasten verschieben um diesen Schritt.',
    directions: { left: 'Nach links', up: 'Nach oben', down: 'Nach unten', right: 'Nach rechts' },
  },
  align: {
    row: 'In eine Reihe mit dem ersten',
    column: 'In eine Spalte mit dem ersten',
    spread: 'Gleichmäßig zwischen den äußeren beiden',
    needs: ({ count }) => `Mindestens ${count} wählen.`,
  },
  mirror: {
    explained: 'Von jedem kommt eine Kopie auf die andere Seite der Achse, mit eigener Nummer.',
    go: 'An der Achse spiegeln',
  },
  repeat: {
    count: 'Wie viele insgesamt',
    along: 'Abstand längs der Kurbelwelle',
    across: 'Abstand quer dazu',
    go: 'In einer Reihe wiederholen',
    centreAlong: 'Mitte, längs',
    centreAcross: 'Mitte, quer',
    circle: 'Auf einem Kreis wiederholen',
  },
  position: {
    along: 'Längs, von der Steuerseite',
    across: 'Quer, von der Achse',
    one: 'Eines wählen, um seine Lage einzugeben, oder zwei, um ihren Abstand zu sehen.',
    apart: ({ along, across, straight }) => `Längs ${along}, quer ${across}, gerade ${straight}.`,
    where: 'Seine Lage in Worten',
    number: 'Nummer auf der Zeichnung',
  },
  remove: {
    go: 'Gewähltes entfernen',
    losesOrder: ({ order, procedure, count }) =>
      `Die Reihenfolge ${order} von ${procedure} verliert ${counted(count, 'Schraube', 'Schrauben')}.`,
    losesPass: ({ procedure, pass }) => `Durchgang ${pass} von ${procedure} nennt sie.`,
  },
  order: {
    which: 'Reihenfolge',
    none: 'Diese Fläche zieht noch kein Anziehvorgang an.',
    addProcedure: 'Anziehvorgang hinzufügen',
    proposal:
      'Die Reihenfolge geht von der Mitte nach außen, der erste Durchgang ist von Hand, ohne Wert: beides Vorschläge, bis die Reihenfolge des Handbuchs angetippt und seine Durchgänge eingegeben sind.',
    procedureName: ({ face }) => `Anziehen: ${face}`,
    tap: 'Die Schrauben in der Reihenfolge des Handbuchs antippen. Die letzte noch einmal angetippt fällt wieder heraus.',
    begin: 'Mit dem nächsten Antippen neu beginnen',
    begun: 'Das nächste Antippen ist Nummer 1.',
    soFar: ({ done, of }) => `${done} von ${of} in der Reihenfolge`,
    pattern: ({ count }) => `Oder über ${counted(count, 'Schraube', 'Schrauben')} nach einem Muster bilden`,
    mend: 'Berichtigen',
    fastener: 'Schraube',
    toPlace: 'an Stelle',
    moveIt: 'Dorthin setzen',
    swap: 'Mit der dortigen tauschen',
    inPlace: ({ place, number }) => `${place}: Schraube ${number}`,
  },
  group: {
    which: 'Gruppe, die aufgetragen wird',
    tap: 'Die Schrauben antippen, die dazugehören.',
  },

  sections: {
    drawing: 'Zeichnung',
    case: 'Gehäuse',
    faces: 'Flächen',
    groups: 'Gruppen',
    passes: 'Durchgänge',
    fits: 'Lagerungen',
    steps: 'Schritte',
    parts: 'Teile',
    rest: 'Das Übrige',
    audit: 'Prüfung',
    check: 'Gegenlesen',
  },
  sectionWithFindings: ({ section, count }) => (count === 0 ? section : `${section} (${count})`),
  forms: 'Formulare',
  audit: {
    none: 'Die Prüfung findet nichts.',
    faults: ({ count }) => counted(count, 'Fehler', 'Fehler'),
    doubts: ({ count }) => counted(count, 'Zweifel', 'Zweifel'),
    weights: { fault: 'Fehler', doubt: 'Zweifel' },
    show: 'Zeigen',
    accept: 'Annehmen, weil …',
    why: 'Warum es so richtig ist',
    acceptIt: 'So annehmen',
    leave: 'Offen lassen',
    accepted: ({ count }) => `Angenommen: ${counted(count, 'Zweifel', 'Zweifel')}`,
    because: ({ by, on, reason }) => `Am ${day(on)} von ${by} angenommen, weil: ${reason}`,
    openAgain: 'Wieder bezweifeln',
  },
  passes: {
    none: 'Noch kein Anziehvorgang. Über der Zeichnung „Reihenfolge“ wählen, dann „Anziehvorgang hinzufügen“.',
    procedure: 'Anziehvorgang',
    caption: 'Durchgänge, wie das Handbuch sie aufführt',
    columns: {
      kind: 'Art',
      value: 'Wert',
      order: 'Reihenfolge',
    },
    valueExample: '30 ± 3 lbf·ft',
    inAll: 'insgesamt',
    add: 'Durchgang hinzufügen',
    up: ({ pass }) => `Durchgang ${pass} nach oben`,
    takeOut: ({ pass }) => `Durchgang ${pass} entfernen`,
    field: ({ pass, field }) => `Durchgang ${pass}: ${field}`,
    grownOrder: ({ order }) =>
      `Die Reihenfolge „${order}“ ist nach einem Muster gebildet und noch keine des Handbuchs: vergleichen oder die des Handbuchs antippen.`,
    new: 'Neuer Durchgang',
    becomes: ({ pass, kind }) => `Durchgang ${pass} wird: ${kind}`,
    change: 'Ändern',
    leave: 'So lassen',
    needs: {
      value: 'Wert, mit Grenzen, wo angegeben',
      least: 'Längung von',
      most: 'Längung bis',
      torqueLeast: 'Drehmoment von',
      torqueMost: 'Drehmoment bis',
      instruction: 'Was getan wird',
    },
  },
  groups: {
    caption: 'Schraubengruppen: alle, die ein und dasselbe Teil sind',
    add: 'Gruppe hinzufügen',
    new: 'Neue Gruppe',
    used: ({ count }) => counted(count, 'Schraube', 'Schrauben'),
    usual:
      'Eine neue Gruppe hat Sechskantköpfe, geht in Gewindelöcher und hat keine Scheiben, bis es anders gesagt wird.',
    threadMeans: ({ diameter, pitch, toTheInch }) =>
      pitch === null
        ? `Durchmesser ${diameter}, ${toTheInch} Gänge je Zoll`
        : `Durchmesser ${diameter}, Steigung ${pitch}`,
    more: 'Mehr, wo das Handbuch es angibt',
    shank: 'Dehnschaft, Durchmesser',
    frictionClass: 'Reibungszahlklasse (VDI 2230)',
    includesPrevailing: 'Drehmomente enthalten das Klemmdrehmoment',
    pastMost: 'Über den Höchstwert hinaus',
    pastMosts: { replace: 'wird ersetzt', 'begin-again': 'beginnt von vorn' },
  },
  fits: {
    which: 'Lagerung',
    none: 'Dieses Datenblatt hat keine Lager, die nach Kennzeichen gewählt werden.',
    mark: 'Kennz.',
    band: 'Maß, von und bis',
    bandOf: ({ of }) => `Maß von ${of}`,
    grades: 'Schalen',
    grade: 'Klasse',
    wall: 'Wanddicke, von und bis',
    chart: 'Auswahltabelle',
    cell: ({ housing, journal }) =>
      `Schalen für Bohrungskennzeichen ${housing} und Zapfenkennzeichen ${journal}`,
    bandsGive: ({ upper, lower }) => `die Maße ergeben ${upper === lower ? upper : `${upper}/${lower}`}`,
    disagree: ({ count }) =>
      `${counted(count, 'Feld verlässt', 'Felder verlassen')} die Grenzen, oder die Maße ergeben andere Schalen.`,
    grow: 'Aus den Maßen bilden',
    paste: 'Auswahltabelle einfügen',
    pasteHere: 'Die Auswahltabelle mit ihren Kennzeichen, aus einem Tabellenblatt oder einer CSV-Datei',
    takeIn: 'Übernehmen',
    noChart: 'Ohne Auswahltabelle',
    unknown: ({ count }) =>
      `Für ${counted(count, 'Paar Kennzeichen', 'Paare Kennzeichen')} fehlt ein Maß: dort lässt sich nichts bilden.`,
  },
  asPrinted:
    'Jeden Wert eingeben, wie das Handbuch ihn druckt, in beiden Einheiten, wo es beide druckt: 30 lbf·ft (41 N·m). Zwei, die in ihren letzten Stellen nicht übereinstimmen, werden nicht angenommen.',
  lists: {
    takeOut: ({ name }) => `${name} entfernen`,
  },
}
