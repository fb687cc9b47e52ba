import type { jointWords as pattern } from '../../en/problems/joint.ts'
import type { Table } from '../../table.ts'
import { plain } from '../formats.ts'

export const jointWords: Table<typeof pattern> = {
  'thread-diameter-out-of-range': ({ diameterMm }) =>
    `Ein Gewinde mit ${plain(diameterMm)} mm gibt es nicht: ISO 261 hat 1 mm bis 300 mm. Durchmesser und Einheit prüfen.`,
  'thread-pitch-out-of-range': ({ diameterMm, pitchMm }) =>
    `Eine Steigung von ${plain(pitchMm)} mm lässt sich auf ${plain(diameterMm)} mm Durchmesser nicht schneiden. ` +
    'Den Abstand von Gang zu Gang angeben, höchstens ein Drittel des Durchmessers.',
  'property-class-unknown': (facts) =>
    `Festigkeitsklasse (ISO 898-1) oder Grade (SAE J429, ASTM A574) „${facts.propertyClass}“ gibt es für ein Gewinde von ${plain(facts.diameterMm)} mm nicht. ` +
    `Kennzeichen am Kopf neu ablesen, möglich: ${facts.known.join(', ')}.`,
  'bearing-face-out-of-range': ({ outerMm, holeMm }) =>
    `Eine Kopfauflage von ${plain(outerMm)} mm hat um ein Loch von ${plain(holeMm)} mm keine Auflagefläche. ` +
    'Beide Durchmesser prüfen: Die Auflage ist der größere.',
}
