import type { photoWords as pattern } from '../../en/problems/photo.ts'
import type { Table } from '../../table.ts'
import { plain } from '../formats.ts'

const anotherPicture = 'Ein Bild als JPEG, PNG oder WebP wählen.'
const whose = ({ step }: { readonly step: number | null }) =>
  step === null ? 'Foto des Aufbaus' : `Foto von Schritt ${step}`

export const photoWords: Table<typeof pattern> = {
  'photo-too-large': (facts) =>
    `${facts.name} hat ${plain(facts.megabytes)} MB, zulässig sind ${facts.most}. Ein kleineres aufnehmen oder vorher verkleinern.`,
  'photo-empty': ({ name }) => `${name} ist eine leere Datei. ${anotherPicture}`,
  'photo-no-picture': ({ name }) => `${name} ist kein Bild. ${anotherPicture}`,
  'photo-kind-unread': ({ name, kind }) =>
    `${name} ist eine ${kind}-Datei und hier nicht zu öffnen. Als JPEG speichern; beim Telefon die Kamera auf das ` +
    'kompatibelste Format stellen.',
  'photo-too-many-pixels': (facts) =>
    `${facts.name} hat ${plain(facts.megapixels)} Millionen Pixel, zu öffnen sind ${facts.most}. Vorher verkleinern.`,
  'photo-damaged-file': ({ name }) =>
    `${name} beginnt wie ein Bild, lässt sich aber nicht öffnen: abgeschnitten oder beschädigt. Neu kopieren oder anderes wählen.`,
  'photo-not-prepared': (_) =>
    'Kein Foto, wie das Fenster von Bedplate es vorbereitet: vollständiges JPEG, verkleinert, nur mit dem Bild darin. Im ' +
    'Fenster hinzufügen.',
  'photo-several': (_) => 'Mehr als eine Datei. Fotos nacheinander hinzufügen.',
  'photo-too-many': ({ most }) =>
    `Dieser Aufbau hat ${most} Fotos, mehr werden nicht aufgehoben. Stattdessen eine Notiz schreiben.`,
  'photo-there-already': (_) => 'Genau dieses Foto ist schon vorhanden. Ein anderes hinzufügen.',
  'photo-at-no-step': (_) =>
    'Solange der Aufbau offen ist, gehört ein Foto zu einem Schritt. Zuerst den Schritt wählen.',
  'photo-without-bytes': (_) => 'Zum Foto fehlt das Bild. Im Fenster hinzufügen.',
  'photo-damaged': (facts) =>
    `${whose(facts)} ist beschädigt: andere Bytes als aufgezeichnet. Der Aufbau ist davon nicht betroffen. Einen Export mit dem ` +
    'Foto importieren oder eine Sicherung einsetzen.',
  'photo-missing': (facts) =>
    `${whose(facts)} fehlt: Bytes nicht in der Aufzeichnung. Der Aufbau ist davon nicht betroffen. Einen Export mit dem ` +
    'Foto importieren oder eine Sicherung einsetzen.',
  'photo-withdrawn': (_) =>
    'Dieses Foto ist zurückgezogen und wird nicht mehr gezeigt. Eintrag und Hash bleiben in der Aufzeichnung.',
  'photo-unknown': (_) => 'Dieser Eintrag ist kein Foto. Den Aufbau neu ansehen.',
  'picture-points-near': (_) =>
    'Die beiden Punkte des Bildes sind einer. Zwei wählen, die weit auseinander liegen: je weiter, desto genauer liegt das Bild.',
  'picture-places-same': (_) =>
    'Beide Punkte des Bildes kämen auf dieselbe Stelle. Zwei verschiedene Dinge der Zeichnung wählen.',
  'picture-distance-none': (_) =>
    'Der Abstand muss größer als 0 sein. Eingeben, was das Handbuch angibt: 120 mm.',
  'picture-missing': (_) =>
    'Unter dieser Fläche liegt kein Bild mehr: ein anderes Fenster hat es entfernt. Wieder eines darunterlegen.',
  'picture-damaged': (_) =>
    'Das Bild unter dieser Fläche ist beschädigt: seine Bytes sind nicht die aufbewahrten. Das Motordatenblatt ist nicht betroffen. Das ' +
    'Bild entfernen und wieder darunterlegen.',
  'camera-refused': (_) =>
    'Die Kamera ist hier nicht freigegeben. Im Browser oder in den Systemeinstellungen für diese Seite erlauben, dann erneut ' +
    'drücken; oder mit anderem Gerät aufnehmen und als Datei hinzufügen.',
  'camera-none': (_) =>
    'Keine Kamera gefunden. Anschließen und erneut drücken oder mit anderem Gerät aufnehmen und als Datei hinzufügen.',
  'camera-in-use': (_) =>
    'Die Kamera startet nicht; vielleicht benutzt sie ein anderes Programm. Dieses schließen und erneut drücken oder das Foto als Datei hinzufügen.',
  'camera-stopped': (_) =>
    'Die Kamera hat angehalten. Kabel prüfen und erneut drücken oder das Foto als Datei hinzufügen.',
  'note-empty': (_) => 'Noch nichts zu notieren. Zuerst schreiben.',
}
