import { say, type TopicsOf } from '../../help/help-words.ts'

/** Tightening procedures. */
export const tightening: TopicsOf<'tightening'> = {
  run: {
    title: 'Apretar',
    whatFor: 'Un procedimiento guía por sus pasadas, fijación por fijación, en el orden del manual.',
    how: [
      'Ajustar la llave al valor indicado para esta llave.',
      'Buscar por su número la fijación azul del dibujo y poner en ella la llave.',
      'Tirar de forma continua hasta que salte o se alcance el valor; sin tirones y sin saltar dos veces.',
      'Escribir la lectura si la llave la muestra y pulsar el botón grande.',
      (shown) =>
        say`${shown.run.pause} conserva el sitio; ${shown.run.problem} anota lo que falla en una fijación.`,
      (shown) => say`${shown.run.explained.offer} muestra qué hace el valor en la fijación.`,
    ],
    troubles: [
      {
        when: 'Se pulsó el botón y no se apretó nada.',
        then: 'Pulsar Retroceso, o tocar el último apriete, y retirarlo con un motivo. Después apretar.',
      },
      {
        when: 'No se llega a la fijación siguiente.',
        then: 'Tocar la que se puede apretar en esta pasada y decir por qué. El orden sigue donde estaba.',
      },
      {
        when: 'Una lectura está fuera de sus límites.',
        then: 'Queda como incidencia. Ver «Incidencias»: no volver a apretar nunca por tacto.',
      },
    ],
  },
  angle: {
    title: 'Girar un ángulo',
    whatFor: 'Después del par se sigue girando un ángulo, para que el rozamiento influya menos.',
    how: [
      'Marcar la cabeza o poner un medidor de ángulo. El dibujo muestra dónde empieza el mango y dónde llega.',
      'Mover el mango del dibujo a donde empieza el propio: arrastrarlo o pulsar ← y →.',
      (shown) => say`Indicar en ${shown.run.angle.room} cuánto puede girar; entonces se cuentan los tramos.`,
      'Girar de una vez donde haya sitio, sin dejar que vuelva.',
      'Escribir el ángulo alcanzado o pulsar el botón grande.',
    ],
    troubles: [
      {
        when: 'Se giró de menos.',
        then: 'Lo que falta queda abierto y se pide a continuación. Se sigue desde donde está, nunca desde el principio.',
      },
      {
        when: 'Se giró de más.',
        then: 'La fijación puede haber pasado su límite elástico. Hacer lo indicado: se cambia o se empieza de nuevo desde su primera pasada.',
      },
      {
        when: 'Nadie sabe cuánto se giró.',
        then: 'Aflojarla y empezarla de nuevo; una fijación de un solo uso se cambia.',
      },
    ],
  },
  stretch: {
    title: 'Apretar por alargamiento',
    whatFor:
      'La longitud de la fijación antes y después dice cuánta carga tiene, sea cual sea el rozamiento.',
    how: [
      'Medir cada fijación antes de ponerla, en los mismos puntos, y escribir su longitud.',
      'Apretarla al par con el que empieza la pasada.',
      'Medir otra vez: se indica cuánto más larga debe quedar.',
      'Seguir apretando poco a poco y escribir cada longitud, hasta que baste.',
    ],
    troubles: [
      {
        when: 'Es más larga que el máximo.',
        then: 'Se cambia. Girarla hacia atrás no deshace el alargamiento.',
      },
      {
        when: 'Las longitudes saltan.',
        then: 'Limpiar los extremos, esperar a que fijación e instrumento tengan la misma temperatura y medir tres veces.',
      },
    ],
  },
  flags: {
    title: 'Incidencias',
    whatFor:
      'Lo que estuvo fuera de límites o se anotó como incorrecto queda como incidencia hasta que se dice qué se hizo.',
    how: [
      'Leer la incidencia: qué fijación, qué pasada y qué lectura.',
      'Mirar la fijación y su asiento antes de girar nada.',
      (shown) => say`Si la lectura era errónea, leer otra vez: ${shown.run.readAgain.offer}`,
      (shown) => say`Donde se ofrezca, pulsar ${shown.run.loosen.offer}`,
      (shown) => say`Hacer lo decidido y escribirlo en ${shown.run.flag.whatWasDone}`,
      (shown) => say`Pulsar ${shown.run.flag.note}.`,
    ],
    troubles: [
      {
        when: 'Pasó de su máximo.',
        then: 'Las palabras no lo arreglan. Se cambia, se empieza de nuevo o se sigue girando, según se ofrezca.',
      },
      {
        when: 'Ahora no hay tiempo.',
        then: 'Se puede responder más tarde. El procedimiento queda abierto hasta entonces.',
      },
    ],
  },
  'own-order': {
    title: (shown) => shown.order.own.title,
    whatFor: 'Por una vez, otro orden que el del fabricante, con su motivo. El del fabricante va primero.',
    how: [
      (shown) => say`Antes de empezar el procedimiento, abrir ${shown.order.own.title}.`,
      'Tocar las fijaciones una tras otra o escribir sus números.',
      (shown) => say`${shown.order.own.compare} muestra qué hace el orden con la fuerza de apriete.`,
      (shown) => say`Pulsar ${shown.run.confirm.useOrder} y decir por qué.`,
    ],
    troubles: [
      {
        when: 'Falta una fijación en el orden.',
        then: 'No se empieza hasta que cada una se nombra una vez.',
      },
      {
        when: 'Se quiere cambiar el orden a la mitad.',
        then: 'Vale hasta el final. Empezar de nuevo el procedimiento, o adelantar fijaciones sueltas con un motivo.',
      },
    ],
  },
}
