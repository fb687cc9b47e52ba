import type { quantityWords as english } from '../../en/problems/quantity.ts'

export const quantityWords: typeof english = {
  'number-missing': () => 'No se ha escrito nada. Escribir un número, por ejemplo 12,5.',
  'number-unreadable': ({ typed }) =>
    `«${typed}» no es un número. Escribir cifras con coma o punto, por ejemplo 12,5 o 12.5.`,
  'number-ambiguous': ({ typed }) =>
    `«${typed}» tiene más de una coma o punto. Escribirlo con uno como máximo, por ejemplo 1234,5.`,
  'number-out-of-range': ({ typed }) =>
    `«${typed}» es demasiado grande o demasiado pequeño para ser una lectura. Leer la escala y escribirla de nuevo.`,
  'number-negative': ({ typed }) =>
    `«${typed}» está por debajo de cero. Leer la escala y escribirla de nuevo.`,
  'unit-unknown': ({ typed, units }) =>
    `La unidad de «${typed}» no se conoce aquí. Usar ${units.join(', ')}.`,
  'units-disagree': ({ first, second, is }) =>
    `${first} son ${is}, y al lado figura ${second}. Uno de los dos es una errata: averiguar cuál es el correcto y escribir ese.`,
  'tolerance-class-unknown': ({ typed }) =>
    `«${typed}» no tiene ninguna clase de tolerancia conocida aquí. Escribir una letra (D a H, JS, K, M, N, P, R, S; minúscula para ejes) y ` +
    'un grado de 5 a 11, por ejemplo 62 mm H6, o escribir los dos límites.',
  'tolerance-class-size': ({ size }) =>
    `${size}: las clases de tolerancia son para medidas mayores que cero y de hasta 500 mm. Escribir los dos límites.`,
  'thread-designation-unknown': ({ typed }) =>
    `«${typed}» no es ninguna rosca conocida aquí. Escribirla como viene marcada, por ejemplo M10, M10×1.25, 3/8-16 UNC o #10-32 UNF, o ` +
    'indicar diámetro y paso.',
  'unit-missing': ({ typed, units }) =>
    `«${typed}» no lleva unidad. Añadir una de estas: ${units.join(', ')}.`,
}
