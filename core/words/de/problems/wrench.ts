import type { wrenchWords as pattern } from '../../en/problems/wrench.ts'
import type { Table } from '../../table.ts'
import { day } from '../formats.ts'

const starts = {
  mark: 'der kleinste Skalenwert',
  fifth: 'ein Fünftel des Bereichs',
  stated: 'der angegebene Mindestwert',
}
const ends = { hexagon: 'ein Sechskant', 'bi-hexagon': 'ein Zwölfkant' }

export const wrenchWords: Table<typeof pattern> = {
  'wrench-range-reversed': ({ least, most }) =>
    `Der Bereich endet bei ${most}, nicht über dem Anfang ${least}. Zuerst den kleinsten, dann den größten ` +
    'Skalenwert eintragen.',
  'wrench-minimum-past-range': (facts) =>
    `Ein Mindestwert von ${facts.minimum} liegt nicht unter dem Skalenende ${facts.most}. Beides am Schlüssel neu ` +
    'ablesen.',
  'wrench-step-past-range': ({ step, most }) =>
    `Eine Skala mit Teilung ${step} hat unter ihrem Ende ${most} keinen Teilstrich. Abstand von Teilstrich zu Teilstrich ` +
    'angeben, in der Einheit der Skala.',
  'wrench-class-unknown': (facts) =>
    `ISO 6789 kennt keinen Typ ${facts.type} Klasse „${facts.class}“. Kennzeichen am Schlüssel neu ablesen, für diesen Typ möglich: ` +
    `${facts.known.join(', ')}.`,
  'adapter-too-long': (facts) =>
    `„${facts.adapter}“ ragt um ${facts.offset} hinaus, der Schlüssel ist ${facts.length} lang: Keine Einstellung ` +
    'ist damit sicher. Beides neu messen: Schlüssel von Griffmitte bis Abtrieb, ' +
    'Adapter vom Abtrieb bis zur Schraube.',
  'wrench-length-missing': ({ name, adapter }) =>
    `${name}: keine Länge notiert, die Einstellung mit „${adapter}“ hängt davon ab. Von ` +
    'Griffmitte bis Abtrieb messen oder den Adapter quer zum Griff drehen und wie ohne ' +
    'Adapter einstellen.',
  'wrench-target-zero': (_) =>
    'Auf null lässt sich kein Schlüssel einstellen. Drehmoment über null angeben oder die Schraube von Hand anlegen lassen.',
  'wrench-below-range': (facts) =>
    `${facts.name} beginnt bei ${facts.starts}; ${facts.setting} läge darunter (Grenze: ${starts[facts.below]}). ` +
    'Kleineren Schlüssel verwenden.',
  'wrench-above-range': ({ name, setting, ends }) =>
    `${name} endet bei ${ends}; ${setting} läge über der Skala. Größeren Schlüssel verwenden.`,
  'wrench-steps-too-coarse': (facts) =>
    `${facts.name} hat Teilung ${facts.step}: Kein Teilstrich nahe ${facts.setting} hält die Schraube in ` +
    `${facts.limits}. Schlüssel mit feinerer Skala verwenden.`,
  'wrench-may-leave-window': (facts) =>
    `${facts.name} kann so weit abweichen, dass die Schraube ${facts.reach} erhält; zulässig ${facts.limits}. ` +
    'Schlüssel feinerer Klasse verwenden oder diesen bei diesem Wert prüfen lassen.',
  'calibration-overdue': (facts) =>
    `${facts.name}: Kalibrierung fällig, ${
      facts.due === 'months'
        ? `zuletzt am ${day(facts.on)}, vor mehr als 12 Monaten`
        : `${facts.cycles} Lastwechsel seit ${day(facts.on)}, höchstens 5000`
    } (ISO 6789: 12 Monate oder 5000 Lastwechsel, je nachdem, was früher eintritt). Kalibrieren lassen oder anderen verwenden.`,
  'calibration-unknown': ({ name }) =>
    `${name}: keine Kalibrierung notiert. Kalibrieren lassen und das Datum unter „Drehmomentschlüssel“ eintragen oder anderen verwenden.`,
  'calibration-in-future': ({ name, on }) =>
    `${name}: Kalibrierung am ${day(on)} liegt in der Zukunft. Datum oder Uhr dieses ` +
    'Rechners berichtigen.',
  'no-wrench-fits': (facts) =>
    `Kein Schlüssel hier lässt sich auf ${facts.target} einstellen. Einen mit Endwert zwischen ${facts.from} ` +
    `und ${facts.to} verwenden, am besten mit dem Wert in der Mitte des Bereichs.`,
  'choking-up': (_) =>
    'Einen größeren Schlüssel näher am Kopf zu fassen, gibt mehr Gefühl, ist aber nur Notbehelf: Die Skala zeigt dadurch ' +
    'nicht weniger, und ein nicht in der Griffmitte gehaltener Schlüssel löst womöglich zu früh oder zu spät aus. Im ' +
    'letzten Durchgang nicht darauf verlassen.',

  'turn-out-of-range': ({ typed, most }) =>
    `Drehwinkel ${typed} verlangt kein Durchgang: höchstens ${most}, zwei volle Umdrehungen. Wert neu ablesen.`,
  'turn-missing': (_) => 'Ein Drehwinkel von 0° dreht nichts. Winkel angeben, z. B. 90°.',
  'room-too-small': (facts) =>
    `Bei ${facts.room} Schwenkbereich lässt sich ${ends[facts.grip]} nicht umsetzen: nötig sind ` +
    `${facts.flat}. Ratsche oder Zwölfkantring verwenden, der 30° braucht.`,
  'no-room': (_) =>
    'Kein Platz zum Schwenken des Griffs. Gehäuse drehen, anderen Griff oder Verlängerung verwenden.',
  'order-begins-outside': (facts) =>
    `Beginnt mit ${facts.first}; näher an der Mitte: ${facts.nearer}. Die meisten Reihenfolgen beginnen dort. ` +
    'Ungewöhnlich, deshalb nicht falsch.',
  'order-goes-inwards': ({ percent }) =>
    `Von je zwei Schrauben kommt die äußere in ${percent} % der Fälle zuerst: Die Reihenfolge geht nach innen. ` +
    'Die meisten gehen nach außen. Ungewöhnlich, deshalb nicht falsch.',
  'order-in-line': (facts) =>
    `Von ${facts.first} bis ${facts.last} geht sie ${facts.hops}-mal in Folge zur Nachbarin auf derselben ` +
    'Seite. Die meisten Reihenfolgen wechseln öfter. Ungewöhnlich, deshalb nicht falsch.',
  'order-of-caps': ({ caps }) =>
    `Diese Schrauben halten ${caps} Lagerdeckel, jeder eine eigene Verbindung: Beurteilt wird die Reihenfolge innerhalb jedes Deckels, nicht von Deckel ` +
    'zu Deckel.',
  'face-without-fasteners': ({ face }) =>
    `Auf „${face}“ ist keine Schraube, nichts klemmt sie. Eine verschraubte Fläche wählen.`,
}
