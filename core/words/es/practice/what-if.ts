import type { Words } from '../../words.ts'

export const whatIf: Words['whatIf'] = {
  name: 'Y si',
  about: 'Cualquier orden propio en el modelo de una unión, frente al orden de la ficha. No se puntúa nada.',
  begin: 'Empezar Y si',
  none: 'No en este motor: Y si, porque ninguna pasada recorre dos fijaciones.',
  procedure: 'Procedimiento',
  tap: '¿En qué orden? Tocar las fijaciones una tras otra, o tomar un patrón.',
  soFar: ({ done, of }) => `${done} de ${of} tocadas`,
  pattern: 'Tomar un patrón',
  patterns: {
    spiral: 'en espiral',
    'centre-out': 'del centro hacia fuera',
    crosswise: 'en cruz',
    'row-by-row': 'fila por fila',
    'ends-first': 'primero los extremos',
    'end-to-end': 'de extremo a extremo',
    reversed: 'el de la ficha desde su final',
  },
  takeBack: 'Retirar el último toque',
  rest: 'El resto como en la ficha',
  again: 'Otro orden',
  calculating: 'Calculando el modelo en los dos órdenes …',
  tapped: ({ place, where }) => `Tocada la ${place}, ${where}`,
}
