import type { auditBearingWords as pattern } from '../../en/problems/audit-bearing.ts'
import type { OfPair } from '../../formats/index.ts'
import type { Table } from '../../table.ts'
import { or } from '../formats.ts'
import { pairText } from '../halves.ts'

const families = {
  'split-horizontal': 'das Gehäuse ist waagerecht geteilt, in obere und untere Hälfte',
  'split-vertical': 'das Gehäuse ist senkrecht geteilt',
  caps: 'das Gehäuse hat Lagerdeckel unter den Lagersitzen',
  bedplate: 'das Gehäuse hat eine Grundplatte mit den unteren Lagersitzen',
  tunnel: 'die Kurbelwelle sitzt in einem Tunnelgehäuse',
}

const rules = {
  'one-grade': 'beide Hälften eines Lagers müssen dieselbe Klasse haben',
  neighbours: 'nur benachbarte Klassen dürfen gemischt werden',
  'thicker-upper': 'die dickere Wand gehört nach oben',
  'thicker-lower': 'die dickere Wand gehört nach unten',
  'thicker-left': 'die dickere Wand gehört nach links',
  'thicker-right': 'die dickere Wand gehört nach rechts',
}

const cell = (facts: { readonly fit: string; readonly housing: string; readonly journal: string }): string =>
  `${facts.fit}, Kennzeichen ${facts.housing} und ${facts.journal}`
const pair = (facts: OfPair): string => pairText(facts, ' mit ')

export const auditBearingWords: Table<typeof pattern> = {
  'band-reversed': ({ place, over, upTo }) =>
    `${place}: Das Maßfeld reicht von ${over} bis ${upTo}, verkehrt herum oder über nichts. Eines davon berichtigen.`,
  'bands-overlap': ({ place, first, second }) =>
    `${place}: Die Maßfelder der Kennzeichen ${first} und ${second} überschneiden sich, ein Maß hätte zwei Kennzeichen. Eines davon berichtigen.`,
  'bands-gap': (facts) =>
    `${facts.place}: Zwischen Kennzeichen ${facts.first} und ${facts.second} haben Maße über ${facts.from} bis ${facts.to} kein ` +
    'Kennzeichen. Maßfelder auf Druckfehler prüfen.',
  'bands-not-as-drawn': (facts) =>
    `${facts.place}: Laut Zeichnung ${facts.drawn}, das ist ${facts.limits}; die Maßfelder der Kennzeichen reichen von ${facts.bands}` +
    (facts.classes.length === 0
      ? `, Breite ${facts.width}, und entsprechen keiner hier bekannten Toleranzklasse nach ISO 286. `
      : `, das wäre ${or(facts.classes)}. `) +
    'Beides mit der Zeichnung vergleichen.',
  'band-wide': ({ place, width }) =>
    `${place}: Ein Maßfeld von ${width} Breite ist für ein Lager ungewöhnlich. Beide Enden und die Einheit prüfen.`,
  'band-missing': ({ place }) =>
    `${place}: kein Maßfeld, während andere eines haben. Ergänzen, damit das Lagerspiel berechnet werden kann.`,
  'bore-far-from-nominal': (facts) =>
    `${facts.place}: ${facts.band} liegt weit von ${facts.nominal}, dem Nennmaß von ${facts.bearing}. ` +
    'Beides und die Einheit prüfen.',
  'nothing-to-choose-by': ({ fit }) =>
    `${fit}: weder Auswahltabelle noch Maßfelder für alle Kennzeichen und Klassen, keine Lagerschale wählbar. Eines davon angeben.`,
  'grades-not-ascending': ({ fit, first, second }) =>
    `${fit}: Klasse ${second} steht nach ${first} und ist nicht dicker. Klassen von dünn nach dick aufführen.`,
  'grades-overlap': ({ fit, first, second }) =>
    `${fit}: Die Wanddicken der Klassen ${first} und ${second} überschneiden sich. Beide Maßfelder prüfen.`,
  'grades-look-alike': ({ fit, first, second }) =>
    `${fit}: Klassen ${first} und ${second} haben gleiche Farbe und gleiches Muster. Bei einer ändern.`,
  'undersize-large': ({ fit, name, undersize }) =>
    `${fit}: ${undersize} schleift niemand von einem Zapfen ab („${name}“). Wert und Einheit prüfen.`,
  'undersize-twice': ({ fit, name, undersize }) =>
    `${fit}: Untermaß ${undersize} kommt zweimal vor oder hat zwei Namen („${name}“). Eines behalten.`,
  'split-against-family': ({ fit, family }) =>
    `${fit}: Hälften links und rechts, aber ${families[family]}. Berichtigen, wie die Hälften liegen, oder die Gehäuseart.`,
  'undersize-grade-unknown': ({ fit, name, grade }) =>
    `${fit}, ${name}: ${grade} ist keine Klasse dieser Lagerung. Berichtigen oder bei den Klassen aufführen.`,
  'undersize-grade-twice': ({ fit, name, grade }) =>
    `${fit}, ${name}: zwei Wanddicken für Klasse ${grade}. Eine behalten.`,
  'undersize-wall-off': (facts) =>
    `${facts.fit}, ${facts.name}: Klasse ${facts.grade} ist mit ${facts.printed} angegeben, nach dem halben Untermaß wären es ` +
    `${facts.expected}. Beides nochmals ansehen.`,
  'undersize-wall-full': (facts) =>
    `${facts.fit}, ${facts.name}: Klasse ${facts.grade}, ${facts.printed}, ist um das ganze Untermaß dicker als Standard. Die ` +
    `beiden Hälften teilen es sich: ${facts.expected}.`,
  'worn-wall-above-new': ({ fit, name, worn }) =>
    `${fit}${name === null ? '' : `, ${name}`}: Gebrauchte Schalen gelten bei ${worn} als verschlissen, manche neuen sind dünner. Eines davon ` +
    'berichtigen.',
  'taper-length-incomplete': ({ fit }) =>
    `${fit}: Konizität je Länge braucht die Konizität, mindestens zwei Messebenen und den Abstand der ersten zur letzten. Fehlendes ` +
    'ergänzen.',
  'planes-beyond-bearing': (facts) =>
    `${facts.fit}: Messebenen mit ${facts.apart} Abstand liegen nicht in einem Lager von ${facts.width} Breite. Eines davon berichtigen.`,
  'position-in-two-fits': ({ position, first, second }) =>
    `${position} gehört zu ${first} und zu ${second} und bekäme zweimal Lagerschalen. Aus einer Lagerung herausnehmen.`,

  'chart-mark-unknown': (facts) =>
    `${facts.fit}: Die Auswahltabelle hat ein Feld für Kennzeichen ${facts.mark} (${facts.part}); bekannt sind ` +
    `${facts.known.join(', ')}. Feld berichtigen oder Kennzeichen ergänzen.`,
  'chart-grade-unknown': (facts) =>
    `${cell(facts)}: ${facts.grade} ist keine Klasse dieser Lagerung. Ihre Klassen: ${facts.known.join(', ')}.`,
  'chart-cell-absent': (facts) =>
    `${cell(facts)}: Die Auswahltabelle hat keine Lagerschalen für ${facts.positions.join(', ')}. Feld ergänzen oder begründen, warum es leer ist.`,
  'chart-cell-twice': (facts) =>
    `${cell(facts)}: zwei Felder der Auswahltabelle für ein Lager. Eines behalten.`,
  'chart-mixes-against-rule': (facts) =>
    `${cell(facts)}: ${pair(facts)}, aber ${rules[facts.rule]}. Feld oder Regel berichtigen.`,
  'chart-leaves-limits': (facts) =>
    `${cell(facts)}: ${pair(facts)} kann nach den Maßfeldern ein Lagerspiel von ${facts.clearance} ergeben; ` +
    `zulässig ${facts.limits}. Feld und Maßfelder prüfen.`,
  'chart-misses-limits': (facts) =>
    `${cell(facts)}: ${pair(facts)} ergibt nach den Maßfeldern ein Lagerspiel von ${facts.clearance}, ` +
    `nirgends in ${facts.limits}. Feld oder Maßfelder berichtigen.`,
  'bands-leave-limits': (facts) =>
    `${cell(facts)}: Das beste Paar, ${pair(facts)}, kann ${facts.clearance} ergeben; ` +
    `zulässig ${facts.limits}. Maßfelder und Grenzen prüfen.`,
  'bands-miss-limits': (facts) =>
    `${cell(facts)}: Kein Klassenpaar liegt in ${facts.limits}; das nächste, ` +
    `${pair(facts)}, ergibt ${facts.clearance}. Maßfelder oder Grenzen berichtigen.`,
}
