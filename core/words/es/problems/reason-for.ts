import type { ReasonFor } from '../../en/problems/reason-for.ts'
import { engineParts } from '../engine-parts.ts'

const { halves, standardSize } = engineParts
const sources = { marks: 'las marcas', readings: 'las lecturas' }

type Of<What extends ReasonFor['what']> = Extract<ReasonFor, { readonly what: What }>

const reasons: { readonly [What in ReasonFor['what']]: (facts: Of<What>) => string } = {
  'photo-withdrawn': () => 'por qué se retira la foto',
  'revision-taken-over': () => 'por qué se adopta la revisión más nueva',
  'step-redone': ({ step }) => `por qué se repite «${step}»`,
  'step-skipped': ({ step }) => `por qué se omite «${step}»`,
  'skip-taken-back': ({ step }) => `por qué se hace «${step}» pese a todo`,
  'readings-withdrawn': ({ position }) => `por qué no valen las lecturas de ${position}`,
  'undersize-declared': ({ positions, undersize }) =>
    `por qué se toma ${undersize ?? standardSize} en ${positions.join(', ')}`,
  'basis-decided': ({ by, position }) => `por qué valen ${sources[by]} en ${position}`,
  'shells-pinned': ({ position }) => `por qué se usan estos semicojinetes en ${position}`,
  'other-shell': ({ position, half, grade }) =>
    `por qué ${position}, mitad ${halves[half]}, lleva la clase ${grade}`,
  'half-taken-out': ({ position, half }) => `por qué sale la mitad ${halves[half]} de ${position}`,
  'part-taken-out': ({ step }) => `por qué se deshace «${step}»`,
  'limit-accepted': ({ name, place }) => `por qué se acepta fuera de límites: ${name}, ${place}`,
  'crank-binds': () => 'dónde se traba el cigüeñal y qué se notó',
  'turns-again': () => 'qué se ha hecho desde que el cigüeñal no giraba libre',
  'turning-accepted': () => 'por qué se acepta el par de giro fuera de límites',
  'turning-voided': () => 'por qué no vale la lectura',
  written: ({ place }) => `qué hay ahí, «${place}»`,
  'place-undone': ({ place }) => `por qué no vale lo hecho en ${place}`,
  'rings-taken-off': ({ piston }) => `por qué se quitan los segmentos de ${piston}`,
  'measured-part-replaced': () => 'qué se ha cambiado o retocado',
  'new-each-time': ({ part }) => `por qué se reutiliza «${part}», que debe ser nuevo cada vez`,
  'used-up': ({ part }) => `por qué se reutiliza «${part}» más allá de su límite`,
  'ticks-removed': ({ part }) => `por qué «${part}» no cuenta como montado`,
  'part-left-over': ({ part }) => `por qué sobra «${part}»`,
  'photo-skipped': ({ step }) => `por qué no hay foto en «${step}»`,
  'bead-wiped-off': () => 'por qué se limpia el cordón',
  'step-sent-back': ({ step }) => `por qué hay que repetir «${step}»`,
  addition: () => 'qué hay que añadir al montaje',
  'added-late': () => 'por qué se añade ahora',
  'build-voided': () => 'por qué se anula el montaje',
  'taken-over': () => 'por qué se toma el montaje',
  'fork-settled': () => 'por qué vale esta línea',
  problem: () => 'cuál es el problema',
  'flag-answered': () => 'qué se ha hecho al respecto',
  'out-of-order': ({ fastener, next }) =>
    `por qué ${fastener ?? 'esto'} va antes que ${next ?? 'lo que toca'}`,
  'wait-shortened': () => 'por qué se acorta la espera',
  'over-time': () => 'por qué se cierra la unión con el tiempo abierto vencido',
  'pull-taken-back': () => 'por qué se retira el apriete',
  'pull-read-again': () => 'por qué se ha leído de nuevo',
  'fastener-loosened': ({ fastener }) => `por qué se afloja la fijación ${fastener}`,
  'run-restarted': () => 'por qué se empieza de nuevo',
  'own-order': () => 'por qué se sigue un orden distinto del del fabricante',
}

/** As a clause: `por qué se limpia el cordón`. */
export function reasonText(facts: ReasonFor): string {
  const text = reasons[facts.what] as (facts: ReasonFor) => string
  return text(facts)
}
