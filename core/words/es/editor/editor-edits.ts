import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'

const things = ({ count }: { readonly count: number }) => counted(count, 'elemento', 'elementos')

export const editorEdits: Omit<Words['drafts']['edits'], 'valueChanged' | 'added' | 'removed'> = {
  placed: ({ kind }) =>
    ({
      fastener: 'colocar una fijación',
      dowel: 'colocar un pasador',
      'oil-passage': 'colocar un conducto de aceite',
    })[kind],
  moved: (facts) => `mover ${things(facts)}`,
  aligned: (facts) => `alinear ${things(facts)}`,
  mirrored: (facts) => `reflejar ${things(facts)}`,
  repeated: (facts) => `repetir ${things(facts)}`,
  takenOut: (facts) => `quitar ${things(facts)}`,
  orderTapped: ({ order }) => `el orden «${order}»`,
  grouped: ({ group }) => `grupo ${group}`,
  passAdded: ({ pass }) => `añadir la pasada ${pass}`,
  passTakenOut: ({ pass }) => `quitar la pasada ${pass}`,
  passMoved: ({ pass }) => `mover la pasada ${pass}`,
  procedureAdded: ({ face }) => `añadir un procedimiento para ${face}`,
  groupAdded: ({ group }) => `añadir el grupo «${group}»`,
  chartChanged: ({ fit }) => `tabla de ${fit}`,
  entryTakenOut: ({ name }) => `quitar ${name}`,
  doubtAccepted: () => 'aceptar una duda',
  doubtOpenAgain: () => 'volver a dudar',
  pasted: ({ count }) => `colocar ${counted(count, 'fijación', 'fijaciones')} según una tabla`,
}
