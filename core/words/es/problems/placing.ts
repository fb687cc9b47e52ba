import type { placingWords as english } from '../../en/problems/placing.ts'
import { capital } from '../../formats/index.ts'
import { counted } from '../formats.ts'
import { namedParts } from './spec.ts'

const faceUses = {
  fasteners: (count: number) => counted(count, 'fijación', 'fijaciones'),
  procedures: (count: number) => counted(count, 'procedimiento', 'procedimientos'),
  beads: (count: number) => counted(count, 'cordón', 'cordones'),
  steps: (count: number) => counted(count, 'paso', 'pasos'),
}

const stop = (text: string): string => (text.endsWith('.') ? '' : '.')

export const placingWords: typeof english = {
  'draft-value-unfit': ({ place, should }) => `${capital(place)}: ${should}${stop(should)}`,
  'draft-too-large': ({ mostCharacters }) =>
    `Con eso la ficha tendría más de ${mostCharacters / 1_000_000} millones de caracteres. No se ha cambiado nada: escribir menos.`,
  'draft-part-needed': ({ what, name, place }) =>
    `${capital(namedParts[what])} «${name}» aún hace falta: ${place}. Cambiar antes eso, y quitarlo después.`,
  'draft-off-face': ({ what }) =>
    `Ahí, ${what} quedaría fuera de su cara. No se ha cambiado nada: elegir un sitio en la cara, o cambiar antes el contorno.`,
  'draft-order-left-empty': ({ order, procedure }) =>
    `El orden «${order}» del procedimiento «${procedure}» se quedaría sin fijaciones. Poner antes otras, o quitar el procedimiento.`,
  'draft-thing-in-step': ({ what, step }) => `El paso «${step}» trabaja con ${what}. Cambiar antes el paso.`,
  'draft-face-without-fasteners': ({ face }) =>
    `En la cara «${face}» aún no hay fijaciones. Colocar antes las fijaciones, luego apretarlas.`,
  'draft-step-uses-part': ({ step, part }) =>
    `En el paso «${step}» entra «${part}». Indicar primero, en «Piezas», en qué paso entra en su lugar, o quitar la pieza de la lista.`,
  'draft-step-has-caution': ({ step }) =>
    `Una advertencia acompaña solo al paso «${step}». Ponerla primero junto a otro paso, o quitarla.`,
  'draft-size-unsaid': () =>
    'En esta cara aún no hay ninguno cuya medida valga. Escribir antes la medida que da el manual, luego colocarlo.',
  'draft-way-unsaid': () =>
    'Indicar hacia dónde mira el labio o fluye el aceite, como lo da el manual. Luego colocarlo.',
  'draft-no-outline': () =>
    'El borde de esta cara aún crece alrededor de lo que hay en ella. Elegir «Dibujar de nuevo el contorno» y tocar sus vértices.',
  'draft-face-in-use': ({ face, what, count }) =>
    `En la cara «${face}» aún hay ${faceUses[what](count)}. Quitarlo antes.`,
}
