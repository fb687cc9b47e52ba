import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'
import { signals } from '../steps/dangers.ts'

const things = ({ count }: { readonly count: number }) => counted(count, 'elemento', 'elementos')

const placed = {
  fastener: 'una fijación',
  dowel: 'un pasador',
  'oil-passage': 'un conducto de aceite',
  'face-part': 'una pieza',
  saddle: 'un apoyo',
  rod: 'una biela',
  balance: 'un cojinete de equilibrado',
  corner: 'un vértice',
  'bead-point': 'un punto de un cordón',
  'keep-out': 'una zona prohibida',
}

export const editorEdits: Omit<Words['drafts']['edits'], 'valueChanged' | 'added' | 'removed'> = {
  placed: ({ kind }) => `colocar ${placed[kind]}`,
  moved: (facts) => `mover ${things(facts)}`,
  aligned: (facts) => `alinear ${things(facts)}`,
  mirrored: (facts) => `reflejar ${things(facts)}`,
  repeated: (facts) => `repetir ${things(facts)}`,
  takenOut: (facts) => `quitar ${things(facts)}`,
  orderAdded: ({ order }) => `añadir el orden «${order}»`,
  orderTapped: ({ order }) => `el orden «${order}»`,
  grouped: ({ group }) => `grupo ${group}`,
  passAdded: ({ pass }) => `añadir la pasada ${pass}`,
  passTakenOut: ({ pass }) => `quitar la pasada ${pass}`,
  passMoved: ({ pass }) => `mover la pasada ${pass}`,
  procedureAdded: ({ face }) => `añadir un procedimiento para ${face}`,
  groupAdded: ({ group }) => `añadir el grupo «${group}»`,
  chartChanged: ({ fit }) => `tabla de ${fit}`,
  entryTakenOut: ({ name }) => `quitar ${name}`,
  stepAdded: ({ step }) => `añadir el paso «${step}»`,
  stepMoved: ({ step }) => `mover el paso «${step}»`,
  entryAdded: ({ name }) => `añadir ${name}`,
  cautionAdded: ({ signal }) => `añadir ${signals[signal]}`,
  cautionTakenOut: ({ signal }) => `quitar ${signals[signal]}`,
  pageSaid: ({ page }) => `página ${page}`,
  valueChecked: () => 'comparar un valor',
  demoReplaced: () => 'ya no es copia de una demo',
  doubtAccepted: () => 'aceptar una duda',
  doubtOpenAgain: () => 'volver a dudar',
  outlineDrawn: ({ face }) => `el contorno de ${face}`,
  beadDrawn: ({ name }) => `dibujar el cordón «${name}»`,
  faceAdded: ({ face }) => `añadir la cara «${face}»`,
  fitAdded: ({ fit }) => `añadir los cojinetes «${fit}»`,
  marksAdded: ({ fit }) => `añadir marcas a ${fit}`,
  gradesAdded: ({ fit }) => `añadir clases a ${fit}`,
  gradeMoved: ({ grade }) => `mover la clase ${grade}`,
  ringsAdded: () => 'añadir los segmentos',
  bearingRenamed: ({ from, to }) => `llamar ${to} a ${from}`,
  pasted: ({ count }) => `colocar ${counted(count, 'fijación', 'fijaciones')} según una tabla`,
}
