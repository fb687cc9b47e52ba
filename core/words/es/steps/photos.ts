import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'

export const photos: Words['photos'] = {
  title: 'Fotos y notas',
  fromFile: 'Foto de un fichero …',
  fromCamera: 'Cámara …',
  writeNote: 'Escribir una nota …',
  file: 'El fichero de la imagen',
  pasted: 'La imagen pegada',
  preparing: 'Reduciendo la foto …',
  add: {
    title: 'Añadir esta foto',
    caption: 'Pie de foto',
    part: 'Qué muestra',
    noPart: 'ninguna pieza de la lista',
    size: ({ widthPx, heightPx, kilobytes }) =>
      `${widthPx} × ${heightPx} px, ${kilobytes} kB. Solo se guarda la imagen: ni lugar, ni hora, ni nombre de la cámara.`,
    add: 'Añadirla',
  },
  camera: {
    title: 'Cámara',
    starting: 'Arrancando la cámara …',
    picture: 'Lo que ve la cámara',
    take: 'Hacer la foto',
  },
  note: {
    question: '¿Qué hay que anotar?',
    write: 'Anotarlo',
  },
  called: ({ step, caption, part }) =>
    [
      step === null ? 'Foto del montaje terminado' : `Foto del paso ${step}`,
      part,
      caption === '' ? null : caption,
    ]
      .filter((each) => each !== null)
      .join(', '),
  loading: 'Leyendo la foto …',
  by: ({ time, person }) => `${time}, ${person}`,
  skip: 'Sin foto …',
  whySkip: '¿Por qué no hay foto?',
  skipIt: 'Continuar sin foto',
  usualReasons: ['Aquí no hay cámara', 'Ya está tapado'],
  wanted: 'Pulsar «Cámara …» o «Foto de un fichero …».',
  isThere: ({ photos: there }) => `✓ ${counted(there, 'foto añadida', 'fotos añadidas')}.`,
  isSkipped: ({ reason }) => `Sin foto: ${reason}`,
  withdraw: 'Retirar la foto …',
  whyWithdraw: '¿Por qué se retira? Ya no se mostrará, imprimirá ni exportará.',
  withdrawIt: 'Retirarla',
  isWithdrawn: ({ time, reason }) => `Foto de las ${time} retirada: ${reason}`,
  sheet: {
    title: 'Fotos',
    notes: 'Notas',
    step: ({ place, name }) => `Paso ${place}, ${name}`,
    finished: 'El montaje terminado',
    withdrawn: ({ reason, stamp, hash }) => `foto retirada: ${reason} (${stamp}; SHA-256 ${hash} …)`,
    count: ({ photos: there, skipped }) =>
      `${counted(there, 'foto', 'fotos')} en el anexo` +
      (skipped === 0 ? '.' : `; ${counted(skipped, 'paso', 'pasos')} sin la foto que se pide.`),
  },
}
