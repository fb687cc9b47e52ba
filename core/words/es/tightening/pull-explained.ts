import type { pullExplained as english } from '../../en/tightening/pull-explained.ts'

export const pullExplained: typeof english = {
  offer: 'Qué hace este apriete …',
  title: 'Qué hace este apriete',
  notCalculated: 'No se puede calcular: antes no hay ningún par, o no carga nada.',
  spread: ({ usual, least, most }) =>
    `${usual} (${least} ${most === null ? 'hasta pasado su límite elástico' : `a ${most}`})`,
  preload: 'Precarga resultante',
  ofProof: 'De la carga de prueba',
  ofTorque: 'Del par, aprieta',
  clamps: ({ part, whole }) => `${part} de ${whole}`,
  friction: 'Perdido en rozamiento',
  lost: ({ share, thread, head, prevailing }) =>
    `${share}: rosca ${thread}, cabeza ${head}` + (prevailing === null ? '' : `, enroscar ${prevailing}`),
  stress: 'Tensión al apretar',
  stressAndYield: ({ mpa, usual, least, most }) =>
    `${mpa} MPa, ${usual} del límite elástico (${least} a ${most})`,
  beforeTurn: 'Antes del giro',
  preloadFrom: ({ preload, torque }) => `${preload} por ${torque}`,
  eachDegree: 'Cada grado añade',
  proofAfter: 'Carga de prueba a los',
  yieldsFirst: 'antes cede',
  yieldsAfter: 'Cede a los',
  atTarget: 'En el valor nominal está',
  states: { elastic: 'en zona elástica', yielded: 'pasado su límite elástico' },
  onlyExplains: 'Explica el valor de la ficha y nunca lo sustituye.',
  workingLoad: ({ force, percent, onFastener, clampLeft, opensAt, opens }) =>
    `Para aprender: de ${force} que tiran de ella con el motor en marcha, la fijación nota el ${percent}, ${onFastener}; ` +
    `el resto descarga las piezas, que conservan ${clampLeft} de apriete. ` +
    {
      never: `Siguen cerradas hasta ${opensAt} con la precarga habitual, y con esta carga también con la más baja.`,
      'at-least-preload': `Siguen cerradas hasta ${opensAt} con la precarga habitual; con la más baja se abren.`,
      'at-usual-preload': `Se abren ya a ${opensAt}.`,
    }[opens],
  inputs: 'Calculado con',

  plot: {
    title: 'Precarga según el giro',
    yields: ({ force }) => `cede, ${force}`,
    proof: ({ force }) => `prueba, ${force}`,
    snug: ({ force }) => `asentada, ${force}`,
    turn: 'giro desde el par →',
  },
}
