import type { Words } from '../../words.ts'
import { engineParts } from '../engine-parts.ts'
import { counted } from '../formats.ts'
import { patterns } from '../window/parts.ts'

type Described = Words['described']

const sizes = ({ least, most }: { readonly least: string; readonly most: string | null }) =>
  most === null ? least : `${least} bis ${most}`
const noted = (mark: string | null) => mark ?? 'nicht notiert'

export const described: Described = {
  half: (facts) =>
    `${engineParts.bearings[facts.bearing]} ${facts.position}, Hälfte ${engineParts.halves[facts.half]}`,
  notChosen: 'Schale noch nicht gewählt',
  shell: (facts) =>
    `${facts.isChosen ? 'Klasse' : 'Vorschlag: Klasse'} ${facts.grade}${facts.undersize === null ? '' : `, ${facts.undersize}`}, ` +
    `Muster: ${facts.pattern === null ? 'unbekannt' : patterns[facts.pattern]}`,
  toBeOrdered: 'Zu bestellen',
  fromTray: ({ label }) => `Aus dem Vorrat: ${label}`,
  clearanceAllowed: ({ limits }) => `Lagerspiel: zulässig ${limits}`,
  clearance: (facts) => `Lagerspiel ${facts.clearance}, ${facts.verdict}; zulässig ${facts.limits}`,
  judged: ({ verdict, limits }) => `${verdict}, zulässig ${limits}`,
  countsAs: ({ size, reason }) => `Gilt als ${size ?? engineParts.standardSize}: ${reason}`,
  decided: ({ by, reason }) => `Es gelten die ${by === 'marks' ? 'Kennzeichen' : 'Messwerte'}: ${reason}`,
  marks: ({ housing, journal }) => `Kennzeichen: Bohrung ${noted(housing)}, Zapfen ${noted(journal)}`,
  boreMeasured: (measured) => `Bohrung gemessen: ${sizes(measured)}`,
  journalMeasured: (measured) => `Zapfen gemessen: ${sizes(measured)}`,
  notInPlace: 'Nicht eingelegt',
  toBeFitted: 'Einzulegen',
  inPlace: 'Eingelegt',
  fit: ({ grade }) => `Klasse ${grade} einlegen`,
  bearingFlags: {
    'sizes-differ': 'angegebenes Maß und Messwert weichen ab',
    'mark-differs': 'Kennzeichen und Messwerte weichen ab',
    'out-of-shape': 'Formfehler',
  },

  journal: ({ position }) => `Grundlagerzapfen ${position}`,
  mark: ({ mark }) => `Kennzeichen ${noted(mark)}`,
  groundTo: ({ undersize }) => `Geschliffen auf ${undersize}`,
  measured: (measured) => `Gemessen: ${sizes(measured)}`,

  fastener: ({ number, where }) => `Schraube ${number}, ${where}`,
  ofProcedure: ({ procedure }) => `${procedure}:`,
  group: (facts) =>
    `${facts.group}: ${facts.thread}, Klemmlänge ${facts.grip}${facts.hasWasher ? ', auf Scheibe' : ''}`,
  reusable: 'Wiederverwendbar',
  onceOnly: 'Jedes Mal neu: nur einmal verwendbar',
  declaredNew: 'Jedes Mal neu: als neu angegeben',
  pass: ({ pass, kind, limits }) => `Durchgang ${pass}, ${kind}${limits === null ? '' : `: ${limits}`}`,
  passDone: (facts) =>
    [
      facts.pass,
      facts.read === null ? 'erledigt' : `abgelesen ${facts.read}`,
      ...(facts.verdict === null
        ? []
        : [{ under: 'zu wenig', over: 'zu viel', moved: 'hat sich bewegt' }[facts.verdict]]),
      ...(facts.beforeTurn === null ? [] : [`außer der Reihe: ${facts.beforeTurn}`]),
    ].join(' · '),
  answered: ({ flag, answer }) => `${flag} · beantwortet: ${answer}`,

  pin: ({ rods }) => `Hubzapfen von ${rods.join(' und ')}`,
  pinAngle: ({ angle }) =>
    `Steht bei ${angle}, wenn die Kurbelwelle eingelegt wird: 0° ist oben, beim Blick von oben zum Betrachter`,
  throwRadius: ({ radius }) => `${radius} von der Achse der Kurbelwelle`,
  wheelSize: ({ diameter, width }) => `Ø ${diameter}, ${width} breit`,
  partSize: ({ diameter }) => `Ø ${diameter}`,
  stands: ({ depth }) => (depth === null ? 'Bündig mit der Fläche' : `${depth} unter der Fläche`),
  lips: { inwards: 'Dichtlippe nach innen, zum Öl', outwards: 'Dichtlippe nach außen' },
  flows: { inwards: 'Öl fließt in die Fläche hinein', outwards: 'Öl fließt aus der Fläche heraus' },
  sealedEnds: 'Dichtmittel auf den Enden beider Hälften',
  gasketWidth: ({ width }) => `${width} breit entlang der Kante`,
  newEachTime: 'Jedes Mal neu',

  thrust: ({ saddle }) => `Anlaufscheiben an Lagersitz ${saddle}`,
  endFloat: (limits) => `Axialspiel der Kurbelwelle: ${limits.least} bis ${limits.most}`,
  dowel: 'Passstift',
  dowelSize: ({ diameter, face }) => `Ø ${diameter}, ${face}`,
  passage: ({ name }) => `Ölkanal: ${name}`,
  passageSize: ({ along, across }) => `${along} längs, ${across} quer`,
  passageFree: 'Von Dichtmittel frei halten',
  sealant: ({ sealant, width }) => `Dichtmittel: ${sealant}, ${width} breit`,
  openTime: ({ minutes }) => `Verbindung binnen ${minutes} Minuten nach dem Auftragen schließen`,
  keepsOut: ({ name }) => `Sperrzone: ${name}`,
  notLaid: 'Noch nicht aufgetragen',
  laid: 'Aufgetragen',
  noSealant: ({ bead }) => `Hier kein Dichtmittel: „${bead}“ läuft daran vorbei`,
  bore: ({ number }) => `Zylinderbohrung ${number}`,
  boreSize: ({ diameter }) => `${diameter}, hinter dieser Fläche`,
  ofRods: ({ rods }) => `Pleuellager dazu: ${rods.join(', ')}`,
  onFace: (facts) =>
    [
      counted(facts.fasteners, 'Schraube', 'Schrauben'),
      counted(facts.dowels, 'Passstift', 'Passstifte'),
      counted(facts.beads, 'Dichtraupe', 'Dichtraupen'),
    ].join(', '),
  workedFrom: ({ from }) => `Bearbeitet von ${from === 'above' ? 'oben' : 'unten'}`,
  check: (facts) =>
    `${facts.name}: ` +
    [
      facts.isGood ? 'in Ordnung' : 'nicht in Ordnung',
      ...(facts.read === null ? [] : [`abgelesen ${facts.read}`]),
      ...(facts.note === '' ? [] : [facts.note]),
    ].join(', '),
  opening: 'Öffnung',
  openThrough: 'Durchgehend offen: Hier dichtet und klemmt nichts',
  nose: 'Steuerseite',
  ofNose: 'Vorderes Ende der Kurbelwelle: von hier wird gezählt',
  drive: 'Abtriebsseite',
  ofDrive: 'Abtreibendes Ende der Kurbelwelle, gegenüber der Steuerseite',

  gap: ({ reading, limits }) => `Spalt ${reading}, ${limits}`,
  checkNote: ({ name, said: texts }) =>
    `${name}: ${texts.length === 0 ? 'nicht in Ordnung' : texts.join(', ')}`,
  byHand: 'von Hand',
  runDown: 'eindrehen',
  loosen: 'lösen',
  measure: 'messen',
  tighten: 'anziehen',
}
