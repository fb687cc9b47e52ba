import type { Words } from '../../words.ts'
import { engineParts } from '../engine-parts.ts'

export const benchCard: Words['benchCard'] = {
  foot: ({ engine, revision, procedure }) =>
    `Ficha de banco Bedplate · ${engine}, revisión ${revision} · ${procedure}`,
  of: ({ engine, revision, face, seenFrom }) =>
    `${engine}, revisión ${revision} de la ficha. ${face}, vista desde ${sides[seenFrom]}.`,
  demo: ({ note }) => `DEMO: ${note}`,
  group: ({ group, threads, newEachTime }) =>
    `${group}: rosca ${engineParts.threadStates[threads]}${newEachTime ? ', de un solo uso' : ''}.`,
  prevailing: ({ group, most, counts }) =>
    `${group}: par de autofrenado al enroscar, hasta ${most}. ` +
    {
      included: 'El par lo incluye: no sumar nada.',
      'not-said': 'Nada dice si el par lo incluye: no sumar nada.',
      'on-top':
        'El par no lo incluye. Leerlo en cada una antes de que asiente, con una llave sin adaptador, anotarlo y sumarlo al ' +
        'par y a sus límites. Si requiere más, desenroscarla y mirar las dos roscas.',
    }[counts],
  runsDownAt: ({ group, unit }) => `${group}: par de autofrenado, en ${unit}:`,
  ownOrder: ({ reason, ofMaker }) => [
    { strong: '! Orden propio, no el del fabricante.' },
    ` ${reason === null ? 'Aún no está registrado.' : `Motivo: ${reason}.`} ` +
      `Orden del fabricante: ${ofMaker.map((numbers) => numbers.join(', ')).join('; ')}.`,
  ],
  serial: 'N.º de serie',
  name: 'Nombre',
  date: 'Fecha',
  wrench: 'Llave n.º',
  passes: 'Pasadas: marcar cada fijación al hacerla',
  capByCap: 'Sombrerete por sombrerete: marcar todas las pasadas de uno antes de empezar el siguiente',
  gap: 'abertura',
  done: 'hecho',
  drawing: ({ face, procedure }) => `${face}: ${procedure}`,

  turnBy: ({ angle }) => `Girar ${angle}`,
  turn: ({ angle, flats, least, most }) =>
    `Girar ${angle}: ${flats}. Correcto de ${least} a ${most}. A trazos: dónde empieza la marca.`,
}

const sides = { above: 'arriba', below: 'abajo' }
