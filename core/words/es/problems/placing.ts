import type { placingWords as english } from '../../en/problems/placing.ts'

export const placingWords: typeof english = {
  'draft-off-face': ({ what }) =>
    `Ahí, ${what} quedaría fuera de su cara. No se ha cambiado nada: elegir un sitio en la cara, o cambiar antes el contorno.`,
  'draft-order-left-empty': ({ order, procedure }) =>
    `El orden ${order} del procedimiento ${procedure} se quedaría sin fijaciones. Poner antes otras, o quitar el procedimiento.`,
  'draft-thing-in-step': ({ what, step }) => `El paso ${step} trabaja con ${what}. Cambiar antes el paso.`,
  'draft-face-without-fasteners': ({ face }) =>
    `En la cara ${face} aún no hay fijaciones. Colocar antes las fijaciones, luego apretarlas.`,
  'draft-size-unsaid': () =>
    'En esta cara aún no hay ninguno cuya medida valga. Escribir antes la medida que da el manual, luego colocarlo.',
}
