import { editorEdits } from '../editor/editor-edits.ts'
import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'

const families: Words['drafts']['families'] = {
  'split-horizontal': 'cárter partido en horizontal',
  'split-vertical': 'cárter partido en vertical',
  caps: 'sombreretes',
  bedplate: 'bancada de una pieza',
  tunnel: 'cárter de túnel',
}

export const drafts: Words['drafts'] = {
  families,
  edits: {
    ...editorEdits,
    valueChanged: ({ place }) => place,
    added: ({ what }) => `añadido de ${what}`,
    removed: ({ what }) => `eliminación de ${what}`,
  },
  undo: ({ edit }) => `Deshacer: ${edit}`,
  redo: ({ edit }) => `Rehacer: ${edit}`,
  otherEdit: 'un cambio de una versión más nueva',
  grown: {
    summary: ({ family, cylinders }) =>
      `${counted(cylinders, 'cilindro', 'cilindros')}, ${families[family]}.`,
    sides: { plus: 'lado A', minus: 'lado B' },
    joints: {
      'split-horizontal': 'Junta del cárter',
      'split-vertical': 'Junta del cárter',
      caps: 'Sombreretes de bancada',
      bedplate: 'Unión de la bancada',
      tunnel: 'Portacojinetes de bancada',
    },
    rodFace: 'Bielas',
    firstStep: {
      name: 'Revisar',
      instruction: 'Revisar el cárter: limpio, seco, sin daños, conductos de aceite abiertos.',
    },
    standingCaution:
      'El manual vigente del fabricante y una persona cualificada prevalecen sobre este programa. Si difieren, seguir el manual.',
  },
}
