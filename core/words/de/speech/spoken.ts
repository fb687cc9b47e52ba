import type { Words } from '../../words.ts'
import { passes } from '../tightening/passes.ts'
import { spokenAmount, spokenName } from './numbers.ts'

type Spoken = Words['spoken']

const doing: Readonly<Record<keyof typeof passes.kinds, string>> = {
  seat: 'von Hand anlegen',
  torque: 'anziehen',
  angle: 'weiterdrehen',
  loosen: 'lösen',
  recheck: 'nachprüfen',
  length: 'Länge messen',
  stretch: 'Länge nochmals messen',
  'tighten-to-stretch': 'anziehen, bis die Längung erreicht ist',
  action: 'ausführen, was gezeigt ist',
}

const pull: Spoken['pull'] = ({ number, kind, target, instruction, begins }) => {
  const passBegins =
    begins === null
      ? ''
      : `Durchgang ${spokenName(String(begins.pass))} von ${spokenName(String(begins.passes))}, ${passes.kinds[kind]}. `
  const who = number === null ? '' : `${spokenName(number)}, `
  const amount = target === null ? null : spokenAmount(target)
  if (kind === 'action') return `${passBegins}${instruction ?? doing.action}`
  if (amount === null) return `${passBegins}${who}${doing[kind]}`
  if (kind === 'angle') return `${passBegins}${who}${amount} drehen`
  return kind === 'recheck' ? `${passBegins}${who}${amount} nachprüfen` : `${passBegins}${who}${amount}`
}

export const spoken: Spoken = {
  amount: spokenAmount,
  pull,
  start: ({ procedure }) => `${procedure}: bereit zum Start.`,
  areNew: ({ group }) => `Neue einsetzen: ${group}.`,
  paused: 'Unterbrochen.',
  done: 'Alle Durchgänge erledigt.',
  replace: ({ number, isLoose }) => `${spokenName(number)}: ${isLoose ? 'neue einsetzen' : 'ganz lösen'}.`,
  flag: ({ number, about }) =>
    number === null && about === 'problem'
      ? 'Ein Problem ist notiert.'
      : `Halt. ${number === null ? '' : `${spokenName(number)}: `}${
          {
            under: 'unter der Grenze',
            over: 'über der Grenze',
            moved: 'hat sich bewegt',
            problem: 'beanstandet',
          }[about]
        }.`,
  step: ({ name, instruction }) =>
    `Nächster Schritt: ${name}.${instruction === null ? '' : ` ${instruction}`}`,
  allSteps: 'Alle Schritte erledigt.',
  unplugged: ({ name }) => `${name} wurde abgesteckt.`,
  pluggedIn: ({ name }) => `${name} ist verbunden.`,

  again: 'Wiederholen',
  slower: 'Langsamer',
  says: 'Angesagt',
  title: 'Ansagen',
  about:
    'Der nächste Anzug, sein Wert, der nächste Schritt und Beanstandungen können angesagt und angezeigt werden. Alles Angesagte steht auch auf dem Bildschirm.',
  say: 'Ansagen sprechen',
  rate: 'Tempo',
  rates: { slow: 'langsam', usual: 'normal', fast: 'schnell' },
  voice: 'Stimme',
  ownChoice: 'vom Programm gewählt',
  notLocal: ({ voice }) => `${voice} (sendet Gesprochenes über das Netz)`,
  try: 'Beispiel ansagen',
  uses: ({ voice }) => `✓ Stimme: ${voice}.`,
  noVoice:
    'Auf diesem Rechner gibt es keine deutsche Stimme ohne Netzverbindung, daher keine Ansagen. In den Systemeinstellungen installieren, dann das Programm neu starten.',
  cannotSpeak: 'Dieser Browser kann nicht sprechen. Ansagen stehen nur auf dem Bildschirm.',
}
