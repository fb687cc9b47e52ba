import type {
  OutsideWindow,
  Stretched,
  StretchedAt,
  tighteningWords as pattern,
  TooStiff,
  Turned,
} from '../../en/problems/tightening.ts'
import { clock } from '../../formats/index.ts'
import type { Table } from '../../table.ts'
import { and } from '../formats.ts'
import { turningLimits } from '../steps/turning.ts'
import { reasonText } from './reason-for.ts'

const scales = { angle: 'ein Winkel in °', length: 'eine Länge', torque: 'ein Drehmoment' }

const lengthsBeside = {
  itself: 'vor dem Anziehen waren es',
  others: 'die anderen gleicher Art haben etwa',
  grip: 'die Klemmlänge ist',
}

const the = (fastener: string | null) =>
  fastener === null ? 'Arbeitsgang zwischen zwei Durchgängen' : `Schraube ${fastener}`
const inUnit = (otherUnit: string | null) =>
  otherUnit === null ? '' : ` In ${otherUnit} wäre es richtig: Einheit der Schlüsselskala prüfen.`

const outside = ({ fastener, read, limits, otherUnit }: OutsideWindow, verdict: string) =>
  `${the(fastener)}: ${read}, zulässig ${limits}: ${verdict}.${inUnit(otherUnit)}`

const stretched = (facts: Stretched) =>
  `${the(facts.fastener)}: Längung ${facts.stretch} bei ${facts.torque}, zulässig ${facts.limits}`

const stretchedAt = (facts: StretchedAt) =>
  `${the(facts.fastener)}: Längung ${facts.stretch} (zulässig ${facts.limits}) bei ${facts.torque} (zulässig ` +
  `${facts.torqueLimits}): ${facts.tooMuch ? 'nicht weiter anziehen' : 'gab zu leicht nach'}.`

const turned = ({ cap, read, limits }: Turned) =>
  `${cap === null ? '' : `Nach Deckel ${cap}: `}Durchdrehmoment ${read}, zulässig ${turningLimits(limits)}`

const lookAt = ({ lookAt: found }: TooStiff) =>
  found === null
    ? 'Einen Deckel nach dem anderen lösen und jedes Mal durchdrehen: Wo die Kurbelwelle frei wird, Lagerschalen, Öl, ' +
      'Nummer und Richtung des Deckels prüfen. Dann wieder anziehen und nochmals durchdrehen.'
    : `Am stärksten gestiegen mit Deckel ${found.cap}: ${and(found.fasteners)} lösen, Lagerschalen, Öl, Nummer und ` +
      'Richtung des Deckels prüfen, ab dem ersten Durchgang wieder anziehen und nochmals durchdrehen.'

export const tighteningWords: Table<typeof pattern> = {
  'procedure-unknown': ({ procedure }) =>
    `Dieser Motor hat keinen Anziehvorgang „${procedure}“. Einen seiner Schritte wählen.`,
  'run-started-already': ({ name }) => `„${name}“ läuft schon. Dort fortfahren.`,
  'run-not-started': ({ name }) => `„${name}“ ist nicht begonnen. Zuerst starten.`,
  'run-paused': ({ name }) => `„${name}“ ist unterbrochen. Vor dem Anziehen oder Zurücknehmen fortsetzen.`,
  'run-not-paused': ({ name }) => `„${name}“ ist nicht unterbrochen.`,
  'run-done': ({ name }) => `„${name}“ ist erledigt. Es gibt nichts mehr zu unterbrechen.`,
  'pass-unknown': ({ pass, passes, name }) =>
    `„${name}“ hat ${passes} Durchgänge, keinen Durchgang ${pass}. Anziehen, was die Zeichnung als Nächstes zeigt.`,
  'fastener-not-in-pass': ({ fastener, pass, name }) =>
    `${the(fastener)}: nicht in Durchgang ${pass} von „${name}“. Anziehen, was die Zeichnung als Nächstes zeigt.`,
  'fastener-not-in-procedure': ({ fastener, name }) =>
    `${the(fastener)}: gehört nicht zu „${name}“. Problem an einer zugehörigen notieren oder an keiner.`,
  'pulled-already': ({ fastener, pass }) =>
    `${the(fastener)}: in Durchgang ${pass} schon erledigt. War das ein Versehen, zuerst zurücknehmen.`,
  'earlier-pass-first': (facts) =>
    `Schraube ${facts.fastener}: Durchgang ${facts.earlier} fehlt. Vor Durchgang ${facts.pass} nachholen.`,
  'not-its-turn': (facts) =>
    `${the(facts.fastener)}: nicht an der Reihe. Als Nächstes: Durchgang ${facts.pass}, ${facts.next === null ? 'ein Arbeitsgang' : `Schraube ${facts.next}`}. ` +
    'Außer der Reihe nur mit Begründung.',
  'declare-new-first': ({ group }) =>
    `${group}: nur einmal verwendbar. Vor dem ersten Anzug bestätigen, dass sie neu sind.`,
  'declared-already': ({ group }) => `${group}: schon als neu bestätigt.`,
  'group-not-in-procedure': ({ group, name }) =>
    `„${group}“ wird in „${name}“ nicht angezogen. Nur Angezogenes als neu bestätigen.`,
  'order-unknown': ({ order, name }) => `„${name}“ hat keine Reihenfolge „${order}“. Eine vorhandene wählen.`,
  'order-number-unknown': (facts) =>
    `Eine Schraube „${facts.typed}“ gibt es in dieser Reihenfolge nicht. Enthalten sind ${facts.numbers.join(', ')}.`,
  'order-number-twice': ({ fastener }) =>
    `Schraube ${fastener} steht zweimal in der Reihenfolge. Je Durchgang wird jede einmal angezogen: eine herausnehmen.`,
  'order-numbers-missing': ({ numbers }) =>
    `Noch nicht eingereiht: ${numbers.join(', ')}. Je Durchgang wird jede Schraube einmal angezogen.`,
  'reading-of-other-kind': ({ wanted, unit }) =>
    `In diesem Durchgang ist ${scales[wanted]} gefragt, der Messwert ist in ${unit}. Die andere Skala ablesen.`,
  'reading-not-asked': ({ fastener }) =>
    `${the(fastener)}: in diesem Durchgang nichts abzulesen. Ohne Messwert bestätigen.`,
  'reading-missing': ({ fastener }) =>
    `${fastener === null ? 'Hier' : `Schraube ${fastener}: Hier`} wird gemessen. Anzeige des Messgeräts notieren.`,
  'length-far-off': (facts) =>
    `${the(facts.fastener)}: abgelesen ${facts.read}, ${lengthsBeside[facts.of]} ${facts.beside}. ` +
    'Komma und Einheit prüfen und neu messen.',
  'length-missing': ({ fastener }) =>
    `${the(fastener)}: vor dem Anziehen nicht gemessen, Längung unbekannt. Lösen und neu beginnen.`,
  'torque-missing': ({ fastener }) =>
    `${the(fastener)}: wird nach Längung angezogen. Auch das Drehmoment notieren.`,
  'running-torque-missing': ({ fastener }) =>
    `${the(fastener)}: Das Klemmdrehmoment wird zum Drehmoment addiert. Vor der Auflage ablesen und notieren.`,
  'running-torque-high': (facts) =>
    `${the(facts.fastener)}: Klemmdrehmoment ${facts.read}, zulässig höchstens ${facts.most}. Darauf wird nichts zugeschlagen: ` +
    'herausdrehen, beide Gewinde ansehen und vor der Auflage neu ablesen.',
  'wait-not-over': ({ minutes, seconds }) =>
    `Vor dem nächsten Durchgang ${minutes} min warten: noch ${clock(seconds)}. Vorzeitig nur mit Begründung.`,
  'fastener-not-pulled': ({ fastener }) =>
    `Schraube ${fastener} ist nicht angezogen, es gibt nichts zu lösen.`,
  'loosen-first': ({ fastener }) =>
    `Schraube ${fastener} sitzt noch fest. Zuerst lösen, dann die neue einsetzen.`,
  'restart-after-angle': ({ pass, name }) =>
    `„${name}“ kann nicht bei Durchgang ${pass} neu beginnen: Seither wurde nach Drehwinkel oder Längung angezogen, die Schrauben würden doppelt gedehnt. ` +
    'Alle lösen und mit Durchgang 1 beginnen.',
  'nothing-to-restart': ({ pass, name }) =>
    `In „${name}“ wurde ab Durchgang ${pass} nichts angezogen. Am jetzigen Stand fortfahren.`,
  'moved-outside-recheck': ({ fastener }) =>
    `${the(fastener)}: keine Nachprüfung, hier soll sie sich bewegen. Bestätigen oder ein Problem notieren.`,
  'nothing-to-take-back': (_) => 'Noch nichts angezogen, es gibt nichts zurückzunehmen.',
  'not-the-last-pull': ({ last, pass }) =>
    `Nur der letzte Anzug lässt sich zurücknehmen: ${last === null ? 'der Arbeitsgang' : `Schraube ${last}`} in Durchgang ${pass}. ` +
    'Diesen zuerst zurücknehmen oder ein Problem notieren.',
  'flag-not-open': ({ flag }) => `Beanstandung ${flag} wartet auf keine Antwort.`,
  'reason-missing': ({ reasonFor }) => `Angeben, ${reasonText(reasonFor)}; ein Wort genügt.`,
  'reading-under': (facts) =>
    `${outside(facts, 'zu wenig')} Zurücknehmen und neu anziehen oder angeben, was getan wurde.`,
  'turn-short': (facts) =>
    `${the(facts.fastener)}: gedreht ${facts.read}, zulässig ${facts.limits}: zu wenig. Stehen lassen und um ` +
    `${facts.left} weiterdrehen (${facts.from} bis ${facts.to}).`,
  'length-under': (facts) =>
    `${facts.fastener === null ? 'Gemessen' : `Schraube ${facts.fastener}`}: ${facts.read}, zulässig ${facts.limits}: zu ` +
    `wenig.${inUnit(facts.otherUnit)} Neu ablesen oder angeben, was getan wurde.`,
  'stretch-short': (facts) =>
    `${stretched(facts)}: zu wenig. Stehen lassen, bis höchstens ${facts.mostTorque} weiter anziehen und neu messen.`,
  'stretch-too-long': (facts) =>
    `${stretched(facts)}: zu viel. Lösen, neue einsetzen und ab dem ersten Durchgang anziehen.`,
  'stretch-torque': (facts) =>
    `${stretchedAt(facts)} Ganz lösen, Gewinde, Kopf und Öl ansehen und ab dem ersten Durchgang neu anziehen.`,
  'stretch-torque-replace': (facts) =>
    `${stretchedAt(facts)} Lösen, Gewinde, Kopf und Öl ansehen, neue einsetzen und ab dem ersten Durchgang anziehen.`,
  'reading-over-begin-again': (facts) =>
    `${outside(facts, 'zu viel')} Ganz lösen und ab dem ersten Durchgang neu anziehen.`,
  'reading-over-replace': (facts) =>
    `${outside(facts, 'zu viel')} Lösen, neue einsetzen und ab dem ersten Durchgang anziehen.`,
  'must-be-replaced': ({ fastener }) =>
    `Schraube ${fastener}: obere Grenze überschritten. Lösen, neue einsetzen und ab dem ersten Durchgang anziehen; ` +
    'oder neu ablesen, falls falsch abgelesen.',
  'must-begin-again': ({ fastener }) =>
    `Schraube ${fastener}: obere Grenze überschritten. Ganz lösen und ab dem ersten Durchgang neu anziehen; oder neu ` +
    'ablesen, falls falsch abgelesen.',
  'turn-on-first': ({ fastener }) =>
    `Schraube ${fastener}: noch nicht weit genug gedreht. Vom erreichten Stand weiterdrehen; oder neu ablesen, falls ` +
    'falsch abgelesen.',
  'pull-on-first': ({ fastener }) =>
    `Schraube ${fastener}: Längung noch nicht erreicht. Vom erreichten Stand weiter anziehen und neu messen; oder neu ablesen, ` +
    'falls falsch abgelesen.',
  'used-once-already': ({ fastener }) =>
    `Schraube ${fastener}: nur einmal verwendbar, schon angezogen und gelöst. Vor dem Anziehen eine neue einsetzen.`,
  'turn-not-taken-back': ({ fastener }) =>
    `Gedreht bleibt gedreht: Schraube ${fastener} lässt sich hier nicht zurücknehmen. Wurde sie gar nicht gedreht, ` +
    'dies angeben. Sonst lösen und neu beginnen.',
  'not-flagged-reading': ({ pull }) =>
    `Anzug ${pull} hat keinen Messwert, der auf Antwort wartet. Nur solche werden neu abgelesen.`,
  'arm-not-above-zero': ({ typed }) =>
    `Hebellänge „${typed}“ ist nicht möglich. Von der Mitte der Kurbelwelle bis zum Angriff der Federwaage messen.`,
  'turning-over': (facts) =>
    `${turned(facts)}: zu viel. Das Handbuch des Herstellers geht vor. ${lookAt(facts)}`,
  'turning-under': (facts) =>
    `${turned(facts)}: zu wenig. Prüfen, ob sich Kurbelwelle und Messgerät gemeinsam drehten und alles eingebaut ist, ` +
    'und neu ablesen; oder angeben, was getan wurde.',
  'reading-over': (facts) => `${outside(facts, 'zu viel')} Angeben, was getan wurde.`,
  'fastener-moved': ({ fastener }) =>
    `${the(fastener)}: bei der Nachprüfung bewegt, hatte Vorspannkraft verloren. Angeben, was getan wurde.`,
  'problem-noted': ({ fastener, text }) => `${fastener === null ? '' : `Schraube ${fastener}: `}${text}`,
}
