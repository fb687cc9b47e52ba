import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'

const photoCount = (count: number): string => counted(count, 'Foto', 'Fotos')

export const photos: Words['photos'] = {
  title: 'Fotos und Notizen',
  fromFile: 'Foto aus Datei …',
  fromCamera: 'Kamera …',
  writeNote: 'Notiz schreiben …',
  file: 'Bilddatei',
  pasted: 'Eingefügtes Bild',
  preparing: 'Foto wird verkleinert …',
  add: {
    title: 'Foto hinzufügen',
    caption: 'Bildunterschrift',
    part: 'Gezeigtes Teil',
    noPart: 'kein Teil der Liste',
    size: ({ widthPx, heightPx, kilobytes }) =>
      `${widthPx} × ${heightPx} px, ${kilobytes} kB. Nur das Bild wird aufgehoben: kein Ort, keine Zeit, kein Kameraname.`,
    add: 'Hinzufügen',
  },
  camera: {
    title: 'Kamera',
    starting: 'Kamera startet …',
    picture: 'Kamerabild',
    take: 'Foto aufnehmen',
  },
  note: {
    question: 'Was ist zu notieren?',
    write: 'Notieren',
  },
  called: ({ step, caption, part }) =>
    [
      step === null ? 'Foto des fertigen Aufbaus' : `Foto von Schritt ${step}`,
      part,
      caption === '' ? null : caption,
    ]
      .filter((each) => each !== null)
      .join(', '),
  loading: 'Foto wird geladen …',
  by: ({ time, person }) => `${time}, ${person}`,
  skip: 'Kein Foto …',
  whySkip: 'Warum gibt es kein Foto?',
  skipIt: 'Ohne Foto fortfahren',
  usualReasons: ['Keine Kamera da', 'Schon verdeckt'],
  wanted: '„Kamera …“ oder „Foto aus Datei …“ drücken.',
  isThere: ({ photos: there }) => `✓ ${photoCount(there)} vorhanden.`,
  isSkipped: ({ reason }) => `Kein Foto: ${reason}`,
  withdraw: 'Foto zurückziehen …',
  whyWithdraw: 'Warum wird es zurückgezogen? Danach wird es nicht mehr gezeigt, gedruckt oder exportiert.',
  withdrawIt: 'Zurückziehen',
  isWithdrawn: ({ time, reason }) => `Foto von ${time} zurückgezogen: ${reason}`,
  sheet: {
    title: 'Fotos',
    notes: 'Notizen',
    step: ({ place, name }) => `Schritt ${place}, ${name}`,
    finished: 'Fertiger Aufbau',
    withdrawn: (facts) => `Foto zurückgezogen: ${facts.reason} (${facts.stamp}; SHA-256 ${facts.hash} …)`,
    count: ({ photos: there, skipped }) =>
      `${photoCount(there)} im Anhang` +
      (skipped === 0 ? '.' : `; Schritte ohne verlangtes Foto: ${skipped}.`),
  },
}
