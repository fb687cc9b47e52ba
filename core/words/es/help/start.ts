import { say, type TopicsOf } from '../../help/help-words.ts'

/** The first page, and what is the same in every step. */
export const start: TopicsOf<'start'> = {
  engines: {
    title: (shown) => shown.parts.enginesAndBuilds,
    whatFor:
      'La primera página: montajes para continuar, motores para empezar y el acceso a las demás páginas.',
    how: [
      (shown) =>
        say`Tocar un montaje en ${shown.engines.onTheBench} para continuarlo. Se abre donde se dejó.`,
      (shown) => say`Tocar un motor en ${shown.engines.startOn} para empezar un montaje nuevo.`,
      (shown) => say`Los montajes terminados o antiguos están en ${shown.archive.title}.`,
      'El idioma, los colores, la unidad de par y la distancia de lectura se eligen en la parte superior de la página.',
    ],
    troubles: [
      {
        when: (shown) => say`En un motor pone ${shown.engines.cannotBeBuilt}`,
        then: 'Su ficha tiene un error. La línea dice cuál y dónde; corregir el fichero e iniciar de nuevo el programa.',
      },
      {
        when: 'El motor no está en la lista.',
        then: (shown) =>
          say`Introducirlo según su manual en ${shown.library.title}, o abrir allí un fichero con su ficha.`,
      },
      {
        when: 'La ventana está en otro idioma.',
        then: 'Elegirlo en la parte superior de esta página. Cambia al momento; lo escrito queda como se escribió.',
      },
    ],
  },
  'guided-build': {
    title: 'Primer montaje guiado',
    whatFor:
      'Un motor de demostración montado desde el primer paso, con una nota breve en cada uno. Queda en el registro, marcado como demo.',
    how: [
      (shown) =>
        say`Pulsar ${shown.engines.sample.beginGuided}, aquí o en la primera página mientras no se haya empezado ningún montaje.`,
      'No hace falta ningún motor: hacer cada paso en la pantalla, con marcas y lecturas admitidas.',
      'Leer la nota bajo el dibujo. Se puede apartar hasta el paso siguiente, o abre esta ayuda en su tema.',
      'La guía se puede dejar en la nota en cualquier momento; el montaje sigue sin notas.',
    ],
    troubles: [
      {
        when: 'Ya no hay notas.',
        then: 'Están en el último montaje guiado. Empezar otro aquí; el anterior queda en el registro y se puede anular.',
      },
    ],
  },
  'start-build': {
    title: 'Empezar un montaje',
    whatFor: 'Un montaje es un motor que se arma. Todo lo que se confirma en él queda en su registro.',
    how: [
      (shown) => say`Tocar el motor en ${shown.engines.startOn} y comparar su revisión con el manual.`,
      (shown) => say`Escribir ${shown.engines.buildName}: cómo se llama el trabajo en el taller.`,
      (shown) => say`Escribir el número de serie como está estampado, y ${shown.engines.person}.`,
      (shown) => say`Marcar ${shown.engines.apprentice} si otra persona debe revisar ciertos pasos.`,
      (shown) => say`Pulsar ${shown.engines.start}.`,
    ],
    troubles: [
      {
        when: (shown) => say`Hay una línea ${shown.engines.doubtful}`,
        then: 'Se puede montar, pero algo de la ficha parece incorrecto. Comparar antes ese punto con el manual.',
      },
      {
        when: 'Es un motor de demostración.',
        then: 'Sus números son inventados. No montar nunca un motor real con ellos.',
      },
    ],
  },
  'build-window': {
    title: 'La ventana del montaje',
    whatFor:
      'Un paso cada vez: a la izquierda el dibujo, a la derecha lo que hay que hacer, y un botón grande para confirmar.',
    how: [
      'Leer la parte derecha desde arriba: primero está lo que puede herir.',
      'Hacer el trabajo en el motor. Después pulsar el botón grande, Intro, Espacio o un pedal.',
      'Al terminar un paso llega solo el siguiente.',
      (shown) =>
        say`${shown.buildWindow.allSteps} muestra todos los pasos; tocar uno para verlo o repetirlo.`,
      'El nombre del cajetín dice quién está en el banco. Tocarlo cuando siga otra persona.',
      (shown) => say`${shown.buildWindow.benchView} muestra solo lo siguiente, legible a varios metros.`,
    ],
    troubles: [
      {
        when: 'El botón grande está gris.',
        then: 'A la derecha pone qué pasos van antes, o por qué el montaje solo se puede leer.',
      },
      {
        when: 'Se confirmó algo por error.',
        then: 'Ir a su paso. Allí se retira con un motivo; el registro conserva ambas cosas.',
      },
    ],
  },
  'again-and-skip': {
    title: 'Repetir un paso u omitirlo',
    whatFor: 'Un paso hecho se abre de nuevo, con todo lo que se apoya en él; otro se omite, con su motivo.',
    how: [
      (shown) => say`Abrir ${shown.buildWindow.allSteps}, tocar el paso y pulsar ${shown.plan.doAgain}`,
      'Leer qué pasos se abren con él, y deshacer en el motor lo que dice la lista, en su orden.',
      (shown) =>
        say`Marcar ${shown.plan.isUndone} donde se pida, decir por qué y pulsar ${shown.plan.againNow}.`,
      (shown) =>
        say`Para omitir un paso, pulsar ${shown.plan.skip}, decir por qué y pulsar ${shown.plan.skipIt}.`,
      (shown) => say`${shown.plan.takeBackSkip} lo retira.`,
    ],
    troubles: [
      {
        when: 'Un paso no se puede omitir.',
        then: 'La ficha del motor no lo permite. Hay que hacerlo.',
      },
      {
        when: 'Solo se leyó mal una marca.',
        then: 'Repetir el paso de las marcas. Lo que se apoya en ellas sigue hecho, salvo que una marca sea otra.',
      },
      {
        when: 'El montaje está terminado.',
        then: (shown) =>
          say`Su trabajo ya no se puede cambiar. Lo que se hizo después se indica en ${shown.steps.afterwards.amend}.`,
      },
    ],
  },
  drawing: {
    title: (shown) => shown.buildWindow.drawing,
    whatFor:
      'La cara de unión como está en el banco, con lo siguiente en azul. Las posiciones son ciertas, no todas las distancias.',
    how: [
      'Ante todo, buscar el extremo delantero en el dibujo y compararlo con el motor.',
      (shown) =>
        say`${shown.view.flip} muestra la cara desde el otro lado; ${shown.view.turn} la gira un cuarto.`,
      (shown) => say`En ${shown.view.open} indicar cómo está colocado el motor y mostrar más o menos.`,
      'Tocar cualquier cosa para leer qué es. Al lado se abre una tarjeta.',
      'Ampliar con + y −, con la rueda o con dos dedos; Inicio lo muestra todo.',
      (shown) => say`${shown.view.inWords} enumera lo mismo, para teclas y lectores de pantalla.`,
    ],
    troubles: [
      {
        when: 'El dibujo y el motor no coinciden.',
        then: 'No seguir. Voltear o girar hasta que coincidan extremo y números; si no coinciden nunca, es otro motor u otra ficha.',
      },
    ],
  },
  interrupted: {
    title: 'Después de una interrupción',
    whatFor:
      'Lo que la ventana muestra como hecho está guardado. Tras una llamada o un corte de luz se sigue en el mismo sitio.',
    how: [
      'Abrir el programa. Vuelve al montaje que estaba abierto.',
      'Leer el botón grande: nombra lo siguiente.',
      'Mirar la última fijación confirmada, también en el motor.',
      'Si no es seguro que se apretó, retirar el último apriete con ese motivo y repetirlo.',
    ],
    troubles: [
      {
        when: 'Nadie sabe cuánto se giró un ángulo.',
        then: 'No adivinar. Aflojar esa fijación y empezarla de nuevo desde su primera pasada, como se indica.',
      },
      {
        when: 'Se aplicó sellador antes de la interrupción.',
        then: 'Su reloj siguió. Si terminó el tiempo abierto: desmontar, limpiar y aplicar un cordón nuevo.',
      },
    ],
  },
}
