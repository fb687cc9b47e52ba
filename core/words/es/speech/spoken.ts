import type { Words } from '../../words.ts'
import type { SpokenPull } from '../../en/speech/spoken.ts'
import type { PassKind } from '../../en/tightening/run.ts'
import { passes } from '../tightening/passes.ts'
import { spokenAmount, spokenName } from './numbers.ts'

const doing: Readonly<Record<PassKind, string>> = {
  seat: 'asentar',
  torque: 'apretar',
  angle: 'girar',
  loosen: 'aflojar',
  recheck: 'comprobar',
  length: 'medir la longitud',
  stretch: 'medir de nuevo la longitud',
  'tighten-to-stretch': 'apretar hasta el alargamiento pedido',
  action: 'hacer lo que se muestra',
}

function pull({ number, kind, target, instruction, begins }: SpokenPull): string {
  const passBegins =
    begins === null
      ? ''
      : `Pasada ${spokenName(String(begins.pass))} de ${spokenName(String(begins.passes))}, ${passes.kinds[kind]}. `
  const who = number === null ? '' : `${spokenName(number)}, `
  const amount = target === null ? null : spokenAmount(target)
  if (kind === 'action') return `${passBegins}${instruction ?? doing.action}`
  if (amount === null) return `${passBegins}${who}${doing[kind]}`
  if (kind === 'angle') return `${passBegins}${who}girar ${amount}`
  return kind === 'recheck' ? `${passBegins}${who}comprobar ${amount}` : `${passBegins}${who}${amount}`
}

export const spoken: Words['spoken'] = {
  amount: spokenAmount,
  pull,
  start: ({ procedure }) => `${procedure}: listo para empezar.`,
  areNew: ({ group }) => `Montar nuevos: ${group}.`,
  paused: 'En pausa.',
  done: 'Todas las pasadas están hechas.',
  replace: ({ number, isLoose }) =>
    `${spokenName(number)}: ${isLoose ? 'montar una nueva' : 'aflojar del todo'}.`,
  flag: ({ number, about }) =>
    `${number === null ? 'Un problema:' : `Alto. ${spokenName(number)}`} ${
      {
        under: 'por debajo del límite',
        over: 'por encima del límite',
        moved: 'ha girado',
        problem: 'con incidencia',
      }[about]
    }.`,
  step: ({ name, instruction }) => `Paso siguiente: ${name}.${instruction === null ? '' : ` ${instruction}`}`,
  allSteps: 'Todos los pasos están hechos.',
  unplugged: ({ name }) => `${name}, desenchufado.`,
  pluggedIn: ({ name }) => `${name}, conectado.`,

  // The panel of a build, while it speaks
  again: 'Repetir',
  slower: 'Más despacio',
  says: 'Dicho en voz alta',
  // The page
  title: 'Indicaciones habladas',
  about:
    'El apriete siguiente, su valor, el paso siguiente y las incidencias se pueden decir en voz alta además de mostrarse. Todo lo que se dice está también en pantalla.',
  say: 'Decir las indicaciones en voz alta',
  rate: 'Velocidad',
  rates: { slow: 'lenta', usual: 'normal', fast: 'rápida' },
  voice: 'Voz',
  ownChoice: 'elegida por el programa',
  notLocal: ({ voice }) => `${voice} (envía por la red lo que dice)`,
  try: 'Decir un ejemplo',
  uses: ({ voice }) => `✓ Habla con la voz ${voice}.`,
  noVoice:
    'Este ordenador no tiene ninguna voz en español que funcione sin red, así que no se dice nada. Instalar una en los ajustes del sistema y arrancar el programa de nuevo.',
  cannotSpeak: 'Este navegador no puede hablar. Las indicaciones solo se muestran en pantalla.',
}
