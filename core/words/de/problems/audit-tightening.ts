import type { auditTighteningWords as pattern, Slip } from '../../en/problems/audit-tightening.ts'
import type { Table } from '../../table.ts'
import { and, thread } from '../formats.ts'

const inPass = ({ procedure, pass }: { readonly procedure: string; readonly pass: number }): string =>
  `${procedure}, Durchgang ${pass}`

const slipWords = (slip: Slip | null): string =>
  slip === null
    ? ''
    : ` Falls ${slip.meant} gemeint ist statt ${slip.written}, sind das ${slip.inNewtonMetres}.`

/** `3`, `3 und 5`, `3, 5 und 9 weitere`. */
function listed(numbers: readonly string[]): string {
  const shown = numbers.slice(0, 8)
  const more = numbers.length - shown.length
  return and(more > 0 ? [...shown, `${more} weitere`] : shown)
}

export const auditTighteningWords: Table<typeof pattern> = {
  'order-misses': (facts) =>
    `${facts.procedure}: In der Reihenfolge „${facts.order}“ fehlen ${listed(facts.numbers)} von „${facts.group}“. ` +
    'Alle aufnehmen oder keine.',
  'order-repeats': (facts) =>
    `${facts.procedure}: In der Reihenfolge „${facts.order}“ mehrfach enthalten: ${listed(facts.numbers)}. Jede nur einmal aufführen.`,
  'order-of-other-face': (facts) =>
    `${facts.procedure}: Die Reihenfolge „${facts.order}“ enthält ${listed(facts.numbers)}, nicht auf „${facts.face}“. ` +
    'Herausnehmen oder Fläche berichtigen.',
  'order-unused': ({ procedure, order }) =>
    `${procedure}: Kein Durchgang verwendet die Reihenfolge „${order}“. In einem Durchgang nennen oder entfernen.`,
  'group-never-tightened': ({ group, face, count }) =>
    `${group}: Kein Anziehvorgang zieht sie auf „${face}“ an (${count} Stück). In Reihenfolge und Durchgang aufnehmen.`,
  'number-twice': ({ number, face }) =>
    `${face}: Zwei Schrauben haben die Nummer ${number}. Jeder eine eigene geben, wie auf der Zeichnung.`,
  'value-outside-order': (facts) =>
    `${inPass(facts)}: eigener Wert für ${listed(facts.numbers)}, die der ` +
    'Durchgang nicht berührt. Schrauben oder Reihenfolge berichtigen.',
  'recheck-outside-order': (facts) =>
    `${inPass(facts)}: Nachprüfung für ${listed(facts.numbers)}, nicht in der Reihenfolge des Durchgangs ` +
    'enthalten. Schrauben oder Reihenfolge berichtigen.',
  'value-given-twice': (facts) =>
    `${inPass(facts)}: zwei eigene Werte für ${listed(facts.numbers)}. Einen behalten.`,

  'cap-by-cap-without-caps': ({ procedure, face }) =>
    `${procedure}: geht Deckel für Deckel vor, „${face}“ hat aber keine Lagerdeckel. Das weglassen oder die Fläche berichtigen.`,
  'cap-with-one-fastener': ({ procedure, cap, number }) =>
    `${procedure}: geht Deckel für Deckel vor; den Deckel von ${cap} hält nur ${number}. Die übrigen Schrauben des Deckels aufnehmen oder ihre Lage ` +
    'berichtigen.',
  'cap-by-cap-repeats': (facts) =>
    `${inPass(facts)}: Deckel für Deckel und zugleich wiederholen, bis sich keine mehr bewegt, geht nicht. Eines davon weglassen.`,
  'two-readings-at-once': (facts) =>
    `${inPass(facts)}: Länge und Durchdrehmoment werden zugleich abgelesen. Je einen eigenen Arbeitsgang daraus machen.`,
  'rise-above-most': (facts) =>
    `${facts.place}: Das Durchdrehmoment darf auf einmal um ${facts.rise} steigen und höchstens ${facts.most} betragen. Prüfen, ob beide ` +
    'vertauscht sind.',

  'angle-without-torque': (facts) =>
    `${inPass(facts)}: Drehwinkel für ${listed(facts.numbers)}, ohne vorher anzulegen ` +
    'oder mit Drehmoment anzuziehen. Einen Drehmoment-Durchgang davorsetzen.',
  'angle-beyond-a-turn': (facts) =>
    `${inPass(facts)}: ${facts.angle} ist mehr als eine volle Umdrehung; die Schraube reißt dabei. Winkel berichtigen.`,
  'angle-missing': (facts) =>
    `${inPass(facts)}: Ein Winkel von 0° dreht nichts. Winkel angeben oder Durchgang entfernen.`,
  'recheck-before-torque': (facts) =>
    `${inPass(facts)}: Nachprüfung für ${listed(facts.numbers)}, bevor sie mit Drehmoment angezogen sind. ` +
    'Nachprüfung hinter den Drehmoment-Durchgang setzen.',
  'stretch-without-length': (facts) =>
    `${inPass(facts)}: Für die Längung von ${listed(facts.numbers)} fehlt die Ausgangslänge. ` +
    'Einen Durchgang davorsetzen, der die Länge vor jedem Anziehen misst.',
  'length-after-pull': (facts) =>
    `${inPass(facts)}: Länge von ${listed(facts.numbers)} wird erst nach dem Anziehen gemessen, ` +
    'also schon gedehnt. Länge vor dem ersten Drehmoment messen.',
  'stretch-large': (facts) =>
    `${inPass(facts)}: Eine Längung von ${facts.most} ist ${facts.percent} der Klemmlänge ${facts.grip} von ` +
    `„${facts.group}“: mehr, als eine Schraube je absichtlich gedehnt wird. Wert und Einheit prüfen.`,
  'stretch-not-by-torque': (facts) =>
    `${inPass(facts)}: Aus Gewinde, Klemmlänge und Reibung berechnet, längen sich „${facts.group}“ bei ${facts.torque} ` +
    `um ${facts.tooShort ? 'höchstens' : 'mindestens'} ${facts.longer}; verlangt sind ` +
    `${facts.tooShort ? 'mindestens' : 'höchstens'} ${facts.bound}. Drehmomente, Längung und Klemmlänge prüfen.`,
  'torque-after-turn': (facts) =>
    `${inPass(facts)}: Drehmoment für ${listed(facts.numbers)} nach dem Drehwinkel: ` +
    'Der Schlüssel löst sofort aus oder dehnt weiter. Reihenfolge der Durchgänge prüfen oder vorher lösen.',
  'torque-below-last': (facts) =>
    `${inPass(facts)}: ${facts.target} für ${listed(facts.numbers)} liegt unter den schon erreichten ` +
    `${facts.last}, der Schlüssel löst sofort aus. Beide Werte prüfen.`,
  'recheck-above-last': (facts) =>
    `${inPass(facts)}: Nachprüfung von ${listed(facts.numbers)} mit ${facts.target}, über ` +
    `den angezogenen ${facts.last}: Sie bewegen sich. Beide Werte prüfen.`,
  'left-loose': ({ procedure, numbers }) =>
    `${procedure}: Am Ende gelöst: ${listed(numbers)}. Den Durchgang ergänzen, der sie anzieht.`,
  'only-seated': ({ procedure, numbers }) =>
    `${procedure}: Nur von Hand angelegt, nie mit Drehmoment angezogen: ${listed(numbers)}. Den Durchgang ergänzen, der sie anzieht.`,

  'torque-overload': (facts) =>
    `${inPass(facts)}: ${facts.torque} zieht „${facts.group}“ (${thread(facts.thread)}, ` +
    `${facts.propertyClass}) selbst bei hoher Reibung auf ${facts.preload}; Prüfkraft ${facts.proof}. ` +
    `Drehmoment, Gewinde oder Klasse berichtigen.${slipWords(facts.slip)}`,
  'torque-likely-overload': (facts) =>
    `${inPass(facts)}: ${facts.torque} zieht „${facts.group}“ (${thread(facts.thread)}, ` +
    `${facts.propertyClass}) bei üblicher Reibung auf ${facts.preload}; Prüfkraft ${facts.proof}. ` +
    `Wert, Gewinde und Klasse prüfen.${slipWords(facts.slip)}`,
  'torque-clamps-nothing': (facts) =>
    `${inPass(facts)}: ${facts.torque} als letztes Drehmoment zieht „${facts.group}“ (${thread(facts.thread)}, ` +
    `${facts.propertyClass}) auf höchstens ${facts.preload} von ${facts.proof}: fast keine Klemmkraft. ` +
    `Wert und Einheit prüfen.${slipWords(facts.slip)}`,
  'turn-leaves-elastic-line': (facts) =>
    `${inPass(facts)}: Elastisch berechnet bringt ${facts.angle} „${facts.group}“ auf ` +
    `${facts.preload}, weit über die Streckgrenze (${facts.yieldLoad}; Prüfkraft ${facts.proof}). Winkel, Klemmlänge und Klasse prüfen.`,
  'same-torque-for-small': (facts) =>
    `${inPass(facts)}: „${facts.small}“ erhält ${facts.torque} wie die größeren „${facts.large}“. ` +
    'Prüfen, ob das kleinere Gewinde einen eigenen Wert hat.',
  'tolerance-too-fine': (facts) =>
    `${inPass(facts)}: ±${facts.spread} bei ${facts.torque} hält kein Schlüssel ein. Grenzen prüfen.`,

  'no-usual-wrench': (facts) =>
    `${inPass(facts)}: ${facts.torque} zeigt kaum ein Schlüssel an. Wert und Einheit prüfen.`,
}
