import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'

const things = ({ count }: { readonly count: number }) => counted(count, 'Element', 'Elemente')

export const editorEdits: Omit<Words['drafts']['edits'], 'valueChanged' | 'added' | 'removed'> = {
  placed: ({ kind }) =>
    ({ fastener: 'Schraube setzen', dowel: 'Passstift setzen', 'oil-passage': 'Ölkanal setzen' })[kind],
  moved: (facts) => `${things(facts)} verschieben`,
  aligned: (facts) => `${things(facts)} ausrichten`,
  mirrored: (facts) => `${things(facts)} spiegeln`,
  repeated: (facts) => `${things(facts)} wiederholen`,
  takenOut: (facts) => `${things(facts)} entfernen`,
  orderTapped: ({ order }) => `Reihenfolge „${order}“`,
  grouped: ({ group }) => `Gruppe ${group}`,
  passAdded: ({ pass }) => `Durchgang ${pass} hinzufügen`,
  passTakenOut: ({ pass }) => `Durchgang ${pass} entfernen`,
  passMoved: ({ pass }) => `Durchgang ${pass} verschieben`,
  procedureAdded: ({ face }) => `Anziehvorgang für ${face} hinzufügen`,
  groupAdded: ({ group }) => `Gruppe „${group}“ hinzufügen`,
  chartChanged: ({ fit }) => `Auswahltabelle ${fit}`,
  entryTakenOut: ({ name }) => `${name} entfernen`,
  doubtAccepted: () => 'Zweifel annehmen',
  doubtOpenAgain: () => 'wieder bezweifeln',
  pasted: ({ count }) => `${counted(count, 'Schraube', 'Schrauben')} nach Tabelle setzen`,
}
