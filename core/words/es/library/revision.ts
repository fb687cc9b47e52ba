import type { Words } from '../../words.ts'

export const revision: Words['revision'] = {
  newer: ({ revision: number }) =>
    `La revisión ${number} de esta ficha está en la biblioteca. El montaje sigue con la suya.`,
  look: 'Ver las diferencias',
  title: ({ name, revision: number }) => `${name}: revisión ${number}`,
  backToBuild: 'Montaje',
  none: 'Este montaje sigue la última revisión de la biblioteca.',
  keeps: 'El montaje sigue su propia revisión hasta el final, salvo que aquí se adopte la más nueva.',
  differences: 'Diferencias',
  drawings: 'En el dibujo',
  ringed: 'Cada diferencia lleva un anillo y una letra; la lista de abajo dice cuál es.',
  outline: 'el contorno',
  sameDrawing: 'En el dibujo no cambia nada.',
  ofBuild: ({ face }) => `${face}, según este montaje`,
  ofNewer: ({ face }) => `${face}, según la revisión más nueva`,
  how: { added: 'nuevo', gone: 'no está en la más nueva', moved: 'desplazado', changed: 'cambiado' },
  taking: 'Adoptarla',
  opensNone: 'No dice otra cosa de lo ya hecho: no vuelve a abrir ningún paso.',
  opens: 'Dice otra cosa de lo ya hecho, o de aquello en que se apoya. Vuelven a abrirse:',
  marksReadAgain: ({ fit }) => `${fit}: leer las marcas de nuevo`,
  readingsGone: ({ fit }) => `${fit}: introducir de nuevo lecturas, submedidas y bandeja`,
  ownOrderGone: ({ procedure }) => `${procedure}: el orden propio ya no vale`,
  why: '¿Por qué se adopta?',
  take: 'Adoptarla',
  sheet: {
    title: 'Revisiones de la ficha',
    row: (facts) =>
      `De «${facts.before}» a «${facts.after}»: ${facts.reason} (${facts.stamp}${facts.takenApart ? '; desmontado en el banco' : ''}).`,
  },
}
