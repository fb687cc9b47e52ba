import { editorEdits } from '../editor/editor-edits.ts'
import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'

const families: Words['drafts']['families'] = {
  'split-horizontal': 'Gehäuse waagerecht geteilt',
  'split-vertical': 'Gehäuse senkrecht geteilt',
  caps: 'Lagerdeckel',
  bedplate: 'Grundplatte',
  tunnel: 'Tunnelgehäuse',
}

export const drafts: Words['drafts'] = {
  families,
  edits: {
    ...editorEdits,
    valueChanged: ({ place }) => place,
    added: ({ what }) => `${what} hinzugefügt`,
    removed: ({ what }) => `${what} entfernt`,
  },
  undo: ({ edit }) => `Rückgängig: ${edit}`,
  redo: ({ edit }) => `Wiederherstellen: ${edit}`,
  otherEdit: 'eine Änderung einer neueren Version',
  grown: {
    summary: ({ family, cylinders }) => `${counted(cylinders, 'Zylinder', 'Zylinder')}, ${families[family]}.`,
    sides: { plus: 'Seite A', minus: 'Seite B' },
    joints: {
      'split-horizontal': 'Gehäusetrennfläche',
      'split-vertical': 'Gehäusetrennfläche',
      caps: 'Grundlagerdeckel',
      bedplate: 'Fuge der Grundplatte',
      tunnel: 'Grundlagerträger',
    },
    rodFace: 'Pleuel',
    firstStep: {
      name: 'Durchsehen',
      instruction: 'Gehäuse durchsehen: sauber, trocken, ohne Schaden, Ölkanäle frei.',
    },
    standingCaution:
      'Das aktuelle Handbuch des Herstellers und eine Fachkraft gehen diesem Programm vor. Bei Abweichungen gilt das Handbuch.',
  },
}
