import type { Words } from '../../words.ts'

export const flags: Words['flags'] = {
  deeds: {
    replaced: 'Aflojada, cambiada por una nueva y empezada de nuevo por su primera pasada.',
    'begun-again': 'Aflojada y empezada de nuevo por su primera pasada.',
    'turned-on': 'Girada más desde donde estaba.',
    'tightened-on': 'Apretada más desde donde estaba.',
    'pass-repeated': 'La pasada se repite hasta que ninguna gire.',
  },
  causes: {
    'to-be-replaced': 'Demasiado: hay que cambiarla',
    'to-begin-again': 'Demasiado: hay que empezarla de nuevo',
    'gap-out': 'La abertura estaba fuera de límites',
    'crank-stiff': 'El cigüeñal giraba demasiado duro',
    'joint-opened': 'Se aflojaron las fijaciones de la unión para empezar de nuevo',
  },
  moved: 'ha girado',
  reads: ({ read, limits }) => `lectura ${read}, ${limits}`,
  measured: ({ read, limits }) => `medido ${read}, ${limits}`,
}
