import type { ReasonFor } from '../../en/problems/reason-for.ts'
import { engineParts } from '../engine-parts.ts'

const { halves, standardSize } = engineParts
const sources = { marks: 'Maßkennzeichen', readings: 'Messwerte' }

const reasons: {
  readonly [What in ReasonFor['what']]: (facts: Extract<ReasonFor, { readonly what: What }>) => string
} = {
  'readings-withdrawn': ({ position }) => `warum die Messwerte von ${position} nicht gelten`,
  'undersize-declared': (facts) =>
    `warum ${facts.positions.join(', ')} als ${facts.undersize ?? standardSize} gilt`,
  'basis-decided': ({ by, position }) => `warum bei ${position} die ${sources[by]} gelten`,
  'shells-pinned': ({ position }) => `warum bei ${position} diese Lagerschalen verwendet werden`,
  'other-shell': ({ position, half, grade }) =>
    `warum bei ${position}, Hälfte ${halves[half]}, Klasse ${grade} eingesetzt wird`,
  'half-taken-out': ({ position, half }) =>
    `warum bei ${position} die Hälfte ${halves[half]} herausgenommen wird`,
  'part-taken-out': ({ step }) => `warum „${step}“ rückgängig gemacht wird`,
  'limit-accepted': ({ name, place }) => `warum ${name}, ${place}, außerhalb der Grenzen angenommen wird`,
  'crank-binds': (_) => 'wo die Kurbelwelle klemmt und was zu spüren war',
  'turns-again': (_) => 'was seit dem Klemmen der Kurbelwelle getan wurde',
  'turning-accepted': (_) => 'warum das Durchdrehmoment außerhalb der Grenzen angenommen wird',
  'turning-voided': (_) => 'warum der Messwert nicht gilt',
  written: ({ place }) => `was dort steht, „${place}“`,
  'place-undone': ({ place }) => `warum ${place} nicht gilt`,
  'rings-taken-off': ({ piston }) => `warum die Ringe von ${piston} abgenommen werden`,
  'measured-part-replaced': (_) => 'was ersetzt oder nachgearbeitet wurde',
  'new-each-time': ({ part }) => `warum „${part}“ wiederverwendet wird, obwohl jedes Mal neu vorgeschrieben`,
  'used-up': ({ part }) => `warum „${part}“ über die Grenze hinaus wiederverwendet wird`,
  'ticks-removed': ({ part }) => `warum „${part}“ nicht als eingebaut gilt`,
  'part-left-over': ({ part }) => `warum „${part}“ übrig ist`,
  'photo-skipped': ({ step }) => `warum es in „${step}“ kein Foto gibt`,
  'photo-withdrawn': (_) => 'warum das Foto zurückgezogen wird',
  'revision-taken-over': (_) => 'warum die neuere Revision übernommen wird',
  'step-redone': ({ step }) => `warum „${step}“ wiederholt wird`,
  'step-skipped': ({ step }) => `warum „${step}“ übersprungen wird`,
  'skip-taken-back': ({ step }) => `warum „${step}“ doch ausgeführt wird`,
  'bead-wiped-off': (_) => 'warum die Dichtraupe abgewischt wird',
  'step-sent-back': ({ step }) => `warum „${step}“ nachzuarbeiten ist`,
  addition: (_) => 'was zum Aufbau hinzuzufügen ist',
  'added-late': (_) => 'warum es jetzt hinzugefügt wird',
  'build-voided': (_) => 'warum der Aufbau ungültig ist',
  'taken-over': (_) => 'warum der Aufbau übernommen wird',
  'fork-settled': (_) => 'warum diese Folge zählt',
  problem: (_) => 'was das Problem ist',
  'flag-answered': (_) => 'was dagegen getan wurde',
  'out-of-order': (facts) =>
    `warum ${facts.fastener ?? 'dieser Arbeitsgang'} vor ${facts.next ?? 'dem nächsten'} kommt`,
  'wait-shortened': (_) => 'warum die Wartezeit verkürzt wird',
  'over-time': (_) => 'warum die Verbindung trotz abgelaufener Offenzeit geschlossen wird',
  'pull-taken-back': (_) => 'warum der Anzug zurückgenommen wird',
  'pull-read-again': (_) => 'warum neu abgelesen wurde',
  'fastener-loosened': ({ fastener }) => `warum Schraube ${fastener} gelöst wird`,
  'run-restarted': (_) => 'warum neu begonnen wird',
  'own-order': (_) => 'warum eine andere Reihenfolge als die des Herstellers gilt',
}

/** As a clause: `warum die Dichtraupe abgewischt wird`. */
export function reasonText(facts: ReasonFor): string {
  const text = reasons[facts.what] as (facts: ReasonFor) => string
  return text(facts)
}
