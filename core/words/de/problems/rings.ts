import type { auditRingWords as auditPattern, ringWords as pattern } from '../../en/problems/rings.ts'
import type { Table } from '../../table.ts'

const badPlaces = { 'over-pin': 'Bolzenauge', 'on-thrust': 'Mitte einer Druckseite' }

export const auditRingWords: Table<typeof auditPattern> = {
  'piston-without-cylinder': (facts) =>
    `${facts.piston} gehört zu Zylinder ${facts.cylinder}, der Motor hat ${facts.cylinders}. Eines davon berichtigen.`,
  'cylinder-with-two-ring-sets': ({ cylinder }) =>
    `Zylinder ${cylinder} hat zweimal Kolbenringe. Aus einem der Sätze herausnehmen.`,
  'cylinder-without-rings': ({ cylinder }) =>
    `Zylinder ${cylinder} hat keine Kolbenringe, andere haben welche. Seinen Kolben dem Ringsatz hinzufügen.`,
  'rings-out-of-order': ({ first, second }) =>
    `„${second}“ steht nach „${first}“, liegt aber in einer Nut darüber. Ringe vom Kolbenboden abwärts aufführen.`,
  'groove-not-whole': ({ groove }) =>
    `Nut ${groove} hat nicht genau einen Ring oder zwei Stahllamellen mit Expander dazwischen. Berichtigen, was darin liegt.`,
  'ring-without-gap': ({ ring }) =>
    `„${ring}“ hat kein Stoßspiel. Grenzen oder die Regel nach Bohrung angeben.`,
  'ring-gaps-in-line': ({ first, second, apart, least }) =>
    `Stöße von „${first}“ und „${second}“ liegen ${apart} auseinander, nötig sind mindestens ${least}: Gas bläst durch beide. ` +
    'Einen der Winkel berichtigen.',
  'ring-gap-over-pin': ({ ring, apart, least }) =>
    `Stoß von „${ring}“ liegt ${apart} vom Bolzenauge, nötig sind mindestens ${least}. Winkel berichtigen.`,
  'ring-gap-on-thrust': ({ ring, apart, least }) =>
    `Stoß von „${ring}“ liegt ${apart} von der Mitte einer Druckseite, nötig sind mindestens ${least}. Winkel berichtigen.`,
  'rings-never-measured': ({ rings }) =>
    `„${rings}“: Kein Schritt misst das Stoßspiel. Einen vor dem Aufziehen der Ringe ergänzen.`,
  'hot-part-without-caution': (facts) =>
    `„${facts.step}“: ${facts.place} wird auf ${facts.temperature} erwärmt, Verbrennungsgefahr, und der Schritt warnt nicht davor. ` +
    '„hot-part“ bei seinen Gefahren ergänzen.',
}

export const ringWords: Table<typeof pattern> = {
  'ring-gap-zero': ({ place }) =>
    `${place}: Stoßspiel 0 ist kein Messwert, Ringenden dürfen sich nie berühren. Mit dem dünnsten Blatt der Fühlerlehre messen; geht ` +
    'auch das nicht hinein, Ring nachfeilen oder anderen einsetzen und neu messen.',
  'ring-gap-other-unit': (facts) =>
    `${facts.name}: ${facts.typed} sind ${facts.is}, weit außerhalb der Grenzen; ${facts.meant} (${facts.inMillimetres}) läge darin. ` +
    'Mit der Einheit des Messgeräts eintippen; stimmt die Eingabe, dies angeben.',
  'ring-gap-impossible': (facts) =>
    `${facts.name}: ${facts.typed} sind ${facts.is}; in einer Bohrung von ${facts.bore} klafft kein Ring weiter als ${facts.widest}. ` +
    'Messgerät und Einheit neu ablesen; stimmt die Eingabe, dies angeben.',
  'ring-too-tight': ({ name, place }) =>
    `${name}, ${place}: Zu enges Stoßspiel wird nie angenommen, bei heißem Ring stoßen die Enden zusammen. Enden nachfeilen und ` +
    'neu messen.',
  'piston-unknown': ({ step, cylinder }) =>
    `„${step}“ hat keinen Kolben für Zylinder ${cylinder}. Einen seiner Kolben wählen.`,
  'ring-unknown': ({ piston, ring }) => `${piston} hat keinen Ring „${ring}“. Einen seiner Ringe wählen.`,
  'rings-fitted-already': ({ piston }) =>
    `${piston}: Ringe sind schon aufgezogen. War das ein Versehen, zurücknehmen.`,
  'rings-not-fitted': ({ piston }) => `${piston}: keine Ringe aufgezogen, es gibt nichts zurückzunehmen.`,
  'angle-past-turn': ({ ring }) =>
    `${ring}: Winkel am Kolben von 0° bis unter 360°, im Uhrzeigersinn ab der Steuerseite. Lage des Stoßes eintippen.`,
  'gaps-lie-in-line': (facts) =>
    `${facts.piston}: Stöße von ${facts.first} und ${facts.second} liegen ${facts.apart} auseinander, nötig sind mindestens ${facts.least}. ` +
    'Einen der Ringe drehen.',
  'gap-badly-placed': (facts) =>
    `${facts.piston}: Stoß von ${facts.ring} liegt ${facts.apart} entfernt (${badPlaces[facts.where]}), nötig sind mindestens ${facts.least}. ` +
    'Ring drehen.',
}
