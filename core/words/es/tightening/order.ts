import type { Words } from '../../words.ts'

export const order: Words['order'] = {
  title: 'Orden de apriete',
  given: ({ numbers, cut, pattern }) => [
    { strong: 'Orden:' },
    ` ${numbers.join(', ')}${cut ? ' …' : ''}; ` +
      `${pattern === null ? 'según la numeración del manual' : grown[pattern]}.`,
  ],

  own: {
    title: 'Orden propio',
    tapOrType: 'Tocar las fijaciones una tras otra, o escribir sus números',
    asMaker: 'vacío: el orden del fabricante',
    allIn: ({ count }) => `✓ En el orden están todas: ${count}.`,
    isMaker: 'Es el orden del fabricante.',
    undo: 'Deshacer la última',
    clear: 'Vaciar',
    fillWith: 'Rellenar con',
    maker: 'El del fabricante',
    patterns: {
      'centre-out': 'Del centro hacia fuera',
      spiral: 'En espiral',
      crosswise: 'En cruz',
      'end-to-end': 'De extremo a extremo',
    },
    allPulls: ({ count }) => `Todos los aprietes (${count}), en el orden en que van`,
    pullsOfPass: ({ pass }) => `Aprietes de la pasada ${pass}`,
    once: 'una vez',
    compare: 'Comparar mapas de apriete …',
    caution:
      'El orden del fabricante tiene prioridad. El orden propio se registra como desviación, con su motivo.',
    forOwnEngine: 'Para la ficha de un motor propio',
    forSpec: 'Para la ficha',
  },
}

const grown = {
  'centre-out': 'del centro hacia fuera, alternando lados',
  spiral: 'en espiral del centro hacia fuera',
  crosswise: 'en cruz sobre un círculo',
  'end-to-end': 'de un extremo al otro',
}
