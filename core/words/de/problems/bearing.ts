import type { bearingWords as pattern } from '../../en/problems/bearing.ts'
import type { Table } from '../../table.ts'
import { pairText } from '../halves.ts'

const measured = {
  bore: 'Bohrung',
  journal: 'Zapfen',
  wall: 'Wanddicke',
  'thread-width': 'Fadenbreite',
  'card-step': 'Stufe der Skala',
}
const gaps = { 'end-float': 'Axialspiel', 'side-clearance': 'Seitenspiel' }
const nameOf = { mm: 'Millimeter', in: 'Zoll', µm: 'Mikrometer', thou: 'Tausendstel Zoll' }

const cure = ({ what }: { readonly what: 'bore' | 'journal' }): string =>
  what === 'bore'
    ? 'Deckel und Schrauben prüfen, dann die Bohrung auf Maß bearbeiten lassen.'
    : 'Zapfen auf das nächste Untermaß schleifen lassen.'

export const bearingWords: Table<typeof pattern> = {
  'mark-unknown': (facts) =>
    `${facts.position}: „${facts.mark}“ ist kein Kennzeichen (${facts.part}). Bekannt sind ${facts.known.join(', ')}; ` +
    'für ein unleserliches ? eintippen.',
  'marks-too-few': ({ part, read, expected }) =>
    `${part}: ${read} von ${expected} Kennzeichen gelesen. Für jede Stelle eines eintippen, ? für ein unleserliches.`,
  'marks-too-many': ({ part, read, expected }) =>
    `${part}: ${read} Kennzeichen gelesen, es gibt aber ${expected} Stellen. Herausnehmen, was kein Kennzeichen ist.`,
  'marks-ambiguous': ({ part, typed }) =>
    `${part}: „${typed}“ lässt sich mehrfach deuten. Leerzeichen zwischen die Kennzeichen setzen.`,
  'mark-worn': ({ place, part }) =>
    `${place}: Kennzeichen unbekannt (${part}). Messen und Lagerschalen nach dem Messwert wählen.`,
  'mark-without-band': ({ place, part, mark }) =>
    `${place}: Kennzeichen ${mark} (${part}) sagt kein Maß: Das Datenblatt hat keines dafür, oder das Teil wurde seit der Kennzeichnung geschliffen. ` +
    'Messen und Lagerschalen nach dem Messwert wählen.',
  'reading-outlier': (facts) =>
    `${facts.place}, Ebene ${facts.plane}, Richtung ${facts.direction}: ${facts.size}, die übrigen etwa ` +
    `${facts.middle}. Nochmals messen.`,
  'chart-cell-missing': ({ place, housing, journal }) =>
    `${place}: Die Auswahltabelle hat keine Lagerschalen für Kennzeichen ${housing} und ${journal}. Beide neu ablesen oder messen.`,
  'grade-unknown': ({ place, grade, known }) =>
    `${place}: ${grade} ist keine Klasse dieser Lagerung. Ihre Klassen: ${known.join(', ')}.`,
  'wall-unknown': ({ place, grade }) =>
    `${place}: Das Datenblatt nennt keine Wanddicke für Klasse ${grade}. Wanddicke der Schale messen.`,
  'no-walls-known': ({ place }) =>
    `${place}: Das Datenblatt nennt keine Wanddicken für die Klassen. Wanddicken der Schalen messen.`,
  'no-pair-inside-limits': (facts) =>
    `${facts.place}: Kein zulässiges Schalenpaar bleibt sicher in ${facts.limits}; am nächsten liegt ` +
    `${pairText(facts.pair, ' mit ')}, ${facts.clearance}. Bohrung und Zapfen messen und nach den Messwerten wählen.`,
  'clearance-leaves-limits': (facts) =>
    `${facts.place}: Lagerspiel ${facts.clearance}, zulässig ${facts.limits}. Vor dem Schließen Bohrung, Zapfen und Schalen ` +
    'messen.',
  'size-not-above-zero': ({ place, what, typed }) =>
    `${place}: „${typed}“ ist kein mögliches Maß (${measured[what]}). Messgerät ablesen und neu eintippen.`,
  'reading-in-other-unit': (facts) =>
    `${facts.place}: „${facts.typed}“ in ${nameOf[facts.unit]} gemeint? Das wären ${facts.meant}; erwartet (${measured[facts.what]}): ` +
    `${facts.least} bis ${facts.most}. Mit Einheit eintippen.`,
  'reading-far-off': (facts) =>
    `${facts.place}: „${facts.typed}“ liegt weit von ${facts.least} bis ${facts.most} (${measured[facts.what]}). ` +
    'Messgerät neu ablesen und prüfen, ob es das richtige Teil ist.',
  'readings-missing': (facts) =>
    `${facts.place}: ${measured[facts.what]} braucht ${facts.planes} Ebenen mit je ${facts.directions} Messwerten. ` +
    'Fehlende eintippen.',
  'temperature-not-sensible': (facts) =>
    `${facts.temperature} ist keine ${facts.of === 'oil' ? 'Öltemperatur im Motor' : 'Messtemperatur'}. ` +
    `Einen Wert von ${facts.least} bis ${facts.most} eintippen.`,
  'expansion-unknown': ({ place }) =>
    `${place}: Das Datenblatt nennt keine Wärmedehnung der Teile. Bei 20 °C messen.`,
  'bore-not-above-journal': ({ place, bore, journal }) =>
    `${place}: Die Bohrung ${bore} ist nicht größer als der Zapfen ${journal}. Prüfen, ob beide hierher gehören, und ` +
    'neu messen.',
  'gauge-too-coarse': ({ limits, uncertainty }) =>
    `Bei einer Messunsicherheit von ± ${uncertainty} kann kein Messwert ein Maß in ${limits} nachweisen. Feineres Messgerät verwenden.`,
  'mark-against-size': (facts) =>
    `${facts.place}: Kennzeichen ${facts.mark} (${facts.part}) heißt ${facts.least} bis ${facts.most}, gemessen sind aber ` +
    `${facts.size}, ${facts.wouldBe === null ? 'wofür kein Kennzeichen steht' : `wie Kennzeichen ${facts.wouldBe}`}. ` +
    'Neu messen, dann entscheiden, was gilt, und begründen.',
  'out-of-round': (facts) =>
    `${facts.place}: ${measured[facts.what]} unrund um ${facts.reading}, zulässig ${facts.allowed}. ${cure(facts)}`,
  tapered: (facts) =>
    `${facts.place}: ${measured[facts.what]} konisch um ${facts.reading}, zulässig ${facts.allowed}. ${cure(facts)}`,
  'shell-worn': (facts) =>
    `${facts.label}: Wanddicke ${facts.wall}, verschlissen; wiederverwendbar ab ${facts.least}. Beide Hälften des Lagers ` +
    'ersetzen und die Schale aus dem Vorrat nehmen.',
  'undersize-unknown': ({ place, name, known }) =>
    `${place}: Das Datenblatt hat kein Untermaß ${name}. Vorhanden: ${known.length === 0 ? 'keines' : known.join(', ')}.`,
  'undersize-against-size': (facts) =>
    `${facts.place}: Zapfen angegeben als ${facts.declared ?? 'Standard'}, gemessen ${facts.size}, das ist ` +
    `${facts.measured ?? 'Standard'}. Neu messen, dann entscheiden, was gilt, und begründen.`,
  'journal-sizes-unknown': ({ place, part }) =>
    `${place}: Das Datenblatt nennt keine Maße (${part}), an denen ein Untermaß zu erkennen wäre. Untermaß selbst wählen.`,
  'journal-of-no-size': (facts) =>
    `${facts.place}: Ein Zapfen von ${facts.journal} ist weder Standard noch Untermaß. ` +
    (facts.next === null
      ? 'Kein Untermaß, auf das er geschliffen werden könnte; neu messen.'
      : `Neu messen oder schleifen lassen auf ${facts.next.name}, ${facts.next.least} bis ${facts.next.most}.`),
  'washer-not-defined': ({ place, float }) =>
    `${place}: Welche Anlaufscheiben zu einem Axialspiel von ${float} gehören, steht nicht im Datenblatt. Neu messen; bleibt ` +
    'es dabei, den Hersteller fragen.',
  'no-thrust-pair': (facts) =>
    `${facts.place}: Keine Anlaufscheiben des Datenblatts ergeben ein Axialspiel von ${facts.least} bis ${facts.most} bei einem Spalt von ${facts.gap}` +
    (facts.nearest === null
      ? '. '
      : `; am nächsten liegen ${facts.nearest.first} und ${facts.nearest.second} mit ${facts.nearest.float}. `) +
    'Neu messen; bleibt es dabei, ist Kurbelwelle oder Lagersitz verschlissen.',
  'gap-outside-limits': (facts) =>
    `${facts.place ?? 'Pleuel'}: ${gaps[facts.gap]} ${facts.reading}, zulässig ${facts.least} bis ${facts.most}. ` +
    (facts.gap === 'end-float'
      ? 'Andere Anlaufscheiben einsetzen und neu messen.'
      : 'Pleuel und Kurbelwelle auf Verschleiß prüfen.'),
  'labels-alike': ({ label }) =>
    `Zwei Zeilen des Vorrats heißen ${label}. Jeder eine eigene Bezeichnung geben.`,
  'count-not-whole': ({ label, count }) =>
    `${label}: ${String(count).replace('.', ',')} ist keine Anzahl von Schalen. Zählen und eine ganze Zahl eintippen, 0 oder mehr.`,
  'pinned-outside': ({ place }) =>
    `${place}: Mit den von Hand gewählten Schalen ist kein Paar zulässig und in den Grenzen. Zum Vorschlag zurückkehren.`,
  'tray-too-small': ({ place }) =>
    `${place}: Der Vorrat reicht nicht für alle Lager, und das Datenblatt nennt keine Wanddicken zum Bestellen. ` +
    'Weitere Schalen messen.',
}
