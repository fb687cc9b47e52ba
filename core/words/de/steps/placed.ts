import type { Words } from '../../words.ts'

const title: Words['placed']['title'] = ({ at, round }) => (round === 2 ? `${at}, nochmals` : at)

export const placed: Words['placed'] = {
  title,
  done: {
    lubricate: ({ dry }) => (dry ? 'Ist trocken' : 'Ist geölt'),
    clean: 'Ist sauber',
    orient: 'Liegt so',
    align: 'Markierungen stehen',
    'fit-places': 'Ist drin',
    note: 'Notieren',
  },
  turn: ({ turns }) =>
    `Kurbelwelle jetzt ${turns} volle ${turns === 1 ? 'Umdrehung' : 'Umdrehungen'} durchdrehen. Die Markierungen müssen wieder fluchten.`,
  heat: ({ temperature }) =>
    `! Heißes Teil: ${temperature}. Temperatur prüfen, bevor der Bolzen eingesetzt wird.`,
  write: 'Was dort steht',
  places: 'Alle Stellen',
  read: (facts) => `${facts.done ? '✓ ' : ''}${title(facts)}${facts.note === null ? '' : `: ${facts.note}`}`,
  allDone: ({ places }) => (places === 1 ? '✓ Erledigt.' : `✓ Alle ${places} Stellen erledigt.`),
  undo: 'Zurücknehmen …',
  undoWhich: ({ at }) => `${at}: Warum gilt es nicht?`,
  undoIt: 'Neu ausführen',
  pictures: {
    oil: 'Öltropfen auf der Lagerfläche.',
    dry: 'Durchgestrichener Öltropfen: hier kein Öl.',
    'oil-way': 'Druckluft durch einen Ölkanal, von Ende zu Ende.',
    face: 'Ein Tuch fährt über die ganze Dichtfläche.',
    plug: 'Gewindestopfen am Ende eines Ölkanals.',
    'piston-front': 'Kolben von oben, Pfeil zur Steuerseite links.',
    'rod-side': 'Pleuel auf dem Hubzapfen, von der Steuerseite: Seite mit Kennzeichen zum Betrachter.',
    'cap-numbers': 'Pleuel und Deckel mit gleicher Nummer auf derselben Seite.',
    'washer-grooves': 'Anlaufscheibe neben dem Lagersitz, Ölnuten zur Kurbelwelle.',
    'seal-lip': 'Wellendichtring im Schnitt in seiner Bohrung: Richtung der Dichtlippe und Einbautiefe.',
    'two-piece-seal': 'Beide Hälften eines Wellendichtrings, Dichtmittel an den Enden, Lippe im Schnitt.',
    'core-plug': 'Froststopfen im Schnitt in seinem Loch und Einbautiefe.',
    'check-valve': 'Rückschlagventil im Schnitt: Richtung, in der Öl die Kugel anhebt.',
    strainer: 'Ölsieb, auf das Gewebe gesehen.',
    'circlip-gap': 'Sicherungsring in der Nut, Öffnung von der Aussparung weg.',
    'circlip-seated':
      'Kolben durch den Bolzen geschnitten: Der Sicherungsring liegt ringsum in der Nut, außerhalb des Bolzenendes.',
    'pin-offset': 'Kolben von der Steuerseite: Der Bolzen liegt seitlich der Mitte.',
    'piston-heated': 'Kolben auf der Heizplatte, mit Thermometer; Bolzen warm einsetzen.',
    'timing-marks': 'Zwei Räder, deren Markierungen sich auf der Verbindungslinie der Mitten treffen.',
    'chain-link': 'Kette auf ihrem Rad: das blanke Glied liegt auf dem Punkt.',
    'mark-at-line': 'Rad, dessen Markierung an einem Strich daneben steht.',
    'wheel-on-key': 'Rad auf seiner Welle, Passfeder in der Nut.',
    'ring-heated': 'Ring auf der Heizplatte, mit Thermometer.',
    'ring-in-groove': 'Lager im Schnitt in seiner Bohrung: Der Ring darum liegt in der Nut des Gehäuses.',
    'oil-jet': 'Düse unter ihrem Kolben: Der Strahl trifft die Unterseite des Bodens.',
    'flat-side': 'Rundes Teil von der Stirnseite: wohin seine Abflachung liegt.',
    'drive-slot': 'Schlitz eines Antriebs von der Stirnseite: Er liegt neben der Mitte.',
    'crank-pressed': 'Gebaute Kurbelwelle: Eine Wange wird auf den Hubzapfen gepresst.',
    writing: 'Beschriftetes Schild.',
  },
  sheet: {
    title: 'Stelle für Stelle erledigt',
    place: 'Stelle',
    what: 'Was',
    undone: ({ reason }) => `Galt nicht: ${reason}`,
  },
}
