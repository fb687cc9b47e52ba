import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'
import { signals } from '../steps/dangers.ts'

const things = ({ count }: { readonly count: number }) => counted(count, 'Element', 'Elemente')

const placed = {
  fastener: 'Schraube',
  dowel: 'Passstift',
  'oil-passage': 'Ölkanal',
  'face-part': 'Teil',
  saddle: 'Lagersitz',
  rod: 'Pleuel',
  balance: 'Ausgleichswellenlager',
  corner: 'Ecke',
  'bead-point': 'Punkt einer Dichtraupe',
  'keep-out': 'Sperrzone',
}

export const editorEdits: Omit<Words['drafts']['edits'], 'valueChanged' | 'added' | 'removed'> = {
  placed: ({ kind }) => `${placed[kind]} setzen`,
  moved: (facts) => `${things(facts)} verschieben`,
  aligned: (facts) => `${things(facts)} ausrichten`,
  mirrored: (facts) => `${things(facts)} spiegeln`,
  repeated: (facts) => `${things(facts)} wiederholen`,
  takenOut: (facts) => `${things(facts)} entfernen`,
  orderAdded: ({ order }) => `Reihenfolge „${order}“ hinzufügen`,
  orderTapped: ({ order }) => `Reihenfolge „${order}“`,
  grouped: ({ group }) => `Gruppe ${group}`,
  passAdded: ({ pass }) => `Durchgang ${pass} hinzufügen`,
  passTakenOut: ({ pass }) => `Durchgang ${pass} entfernen`,
  passMoved: ({ pass }) => `Durchgang ${pass} verschieben`,
  procedureAdded: ({ face }) => `Anziehvorgang für ${face} hinzufügen`,
  groupAdded: ({ group }) => `Gruppe „${group}“ hinzufügen`,
  chartChanged: ({ fit }) => `Auswahltabelle ${fit}`,
  entryTakenOut: ({ name }) => `${name} entfernen`,
  stepAdded: ({ step }) => `Schritt „${step}“ hinzufügen`,
  stepMoved: ({ step }) => `Schritt „${step}“ verschieben`,
  entryAdded: ({ name }) => `${name} hinzufügen`,
  cautionAdded: ({ signal }) => `${signals[signal]} hinzufügen`,
  cautionTakenOut: ({ signal }) => `${signals[signal]} entfernen`,
  pageSaid: ({ page }) => `Seite ${page}`,
  valueChecked: () => 'einen Wert vergleichen',
  demoReplaced: () => 'keine Kopie einer Demo mehr',
  doubtAccepted: () => 'Zweifel annehmen',
  doubtOpenAgain: () => 'wieder bezweifeln',
  outlineDrawn: ({ face }) => `Umriss von ${face}`,
  beadDrawn: ({ name }) => `Dichtraupe „${name}“ zeichnen`,
  faceAdded: ({ face }) => `Fläche „${face}“ hinzufügen`,
  fitAdded: ({ fit }) => `Lagerung „${fit}“ hinzufügen`,
  marksAdded: ({ fit }) => `Kennzeichen zu ${fit} hinzufügen`,
  gradesAdded: ({ fit }) => `Klassen zu ${fit} hinzufügen`,
  gradeMoved: ({ grade }) => `Klasse ${grade} verschieben`,
  ringsAdded: () => 'Kolbenringe hinzufügen',
  bearingRenamed: ({ from, to }) => `${from} in ${to} umbenennen`,
  pasted: ({ count }) => `${counted(count, 'Schraube', 'Schrauben')} nach Tabelle setzen`,
}
