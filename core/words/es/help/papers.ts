import { say, type TopicsOf } from '../../help/help-words.ts'

/** The end of a build, and what is printed, kept and found again. */
export const papers: TopicsOf<'papers'> = {
  finish: {
    title: 'Terminar un montaje',
    whatFor: 'Cuando todos los pasos están hechos y todas las incidencias respondidas, el montaje se cierra.',
    how: [
      (shown) => say`Pulsar ${shown.steps.finish.lookAtSheet} y leerla entera.`,
      (shown) => say`Pulsar ${shown.steps.finish.finish}. Después el trabajo ya no se puede cambiar.`,
      'Imprimir la hoja o guardarla como PDF.',
      (shown) => say`Lo que aparece más tarde se añade con ${shown.steps.afterwards.amend}.`,
    ],
    troubles: [
      {
        when: 'Un paso vuelve a estar abierto.',
        then: 'Se deshizo o cambió algo de lo que depende. Repetir ese paso.',
      },
      {
        when: 'El montaje no debe valer.',
        then: (shown) => say`Pulsar ${shown.steps.afterwards.void} y decir por qué. Lo registrado queda.`,
      },
    ],
  },
  sheet: {
    title: 'La hoja de montaje',
    whatFor:
      'Todo lo hecho en un montaje, en papel: primero los resultados, después cada apriete con hora y nombre.',
    how: [
      (shown) =>
        say`Pulsar ${shown.buildWindow.sheet} en cualquier momento; lo que no está hecho falta en ella.`,
      (shown) => say`Elegir A4 o Letter y pulsar ${shown.sheet.page.print} o ${shown.sheet.page.saveAsPdf}.`,
      'Guardar la hoja, o su código de control, lejos de este ordenador: más tarde prueba que las entradas son las mismas.',
    ],
    troubles: [
      {
        when: 'En cada página pone que no está como se confirmó.',
        then: (shown) =>
          say`El registro fue alterado. Averiguar dónde en ${shown.engines.record}; no entregar la hoja.`,
      },
      {
        when: 'El PDF no aparece.',
        then: 'La línea debajo de los botones dice dónde se guardó y por qué no.',
      },
    ],
  },
  'order-and-labels': {
    title: (shown) => shown.shells.orderAndLabels,
    whatFor: 'Lo que hay que pedir para este montaje, y una etiqueta para cada semicojinete.',
    how: [
      'Imprimir la página y cortar las etiquetas por sus líneas.',
      'Poner cada semicojinete sobre su etiqueta según llegue.',
      (shown) =>
        say`${shown.tray.orderCsv} y ${shown.tray.labelsCsv} hacen ficheros para una hoja de cálculo.`,
    ],
    troubles: [
      {
        when: 'En la lista hay uno que está en la estantería.',
        then: (shown) =>
          say`Contar lo que hay: ${shown.shells.countTray} en el paso que elige semicojinetes.`,
      },
    ],
  },
  'bench-card': {
    title: (shown) => shown.run.benchCard,
    whatFor: 'Un procedimiento, o las aberturas de los segmentos, en un papel, para un banco sin pantalla.',
    how: [
      (shown) => say`Pulsar ${shown.run.benchCard} en el paso del procedimiento, o ${shown.rings.card.open}.`,
      'Imprimirla y escribir en ella número de serie, nombre, fecha y llave.',
      'Marcar cada fijación al apretarla, pasada por pasada.',
      'Después, introducirlo en el montaje: la ficha no es un registro.',
    ],
    troubles: [
      {
        when: 'La ficha del motor tiene una revisión más nueva.',
        then: 'Tirar el papel e imprimir otro.',
      },
    ],
  },
  'clamp-map': {
    title: (shown) => shown.run.clampMap,
    whatFor: 'Cómo las fijaciones se quitan carga unas a otras al apretarlas, en dos órdenes lado a lado.',
    how: [
      (shown) => say`Pulsar ${shown.run.clampMap} en el paso de un procedimiento.`,
      'Elegir los dos órdenes y qué hay entre las caras.',
      'Mover el cursor apriete por apriete y mirar dónde se abre la unión.',
      'En la tabla están las cargas en cifras.',
    ],
    troubles: [
      {
        when: 'Las cargas no coinciden con el manual.',
        then: 'Es un modelo didáctico, no un cálculo de esta unión. Sus supuestos están al pie de la página.',
      },
    ],
  },
  archive: {
    title: (shown) => shown.archive.title,
    whatFor: 'Todos los montajes de este banco: buscar, exportar, importar, verificar y comparar.',
    how: [
      'Escribir palabras: motor, número de serie, persona, pieza.',
      'Marcar un montaje para exportarlo o verificarlo; dos del mismo motor para compararlos.',
      (shown) => say`${shown.archive.exportOne} hace el fichero para otro banco.`,
      'Soltar un fichero así sobre la página para importarlo.',
      'Tocar un montaje para abrirlo.',
    ],
    troubles: [
      {
        when: 'Se rechaza un fichero.',
        then: 'Se cambió un byte, o sus entradas incumplen una regla. Pedirlo otra vez; allí pone el motivo.',
      },
      {
        when: 'El mismo montaje se continuó en dos bancos.',
        then: 'No se mezcla nada. Averiguar cuál se hizo en el motor y anular el otro.',
      },
    ],
  },
  comparison: {
    title: (shown) => shown.archive.compared.title,
    whatFor: 'Dos montajes de un motor lado a lado: marcas, semicojinetes, comprobaciones, aprietes.',
    how: [
      (shown) =>
        say`En ${shown.archive.title} marcar dos montajes de un motor y pulsar ${shown.archive.compareTwo}.`,
      'Al principio solo se ve lo que difiere; se puede cambiar a todo.',
      'Mirar arriba la revisión de la ficha: si difiere, también puede diferir lo pedido.',
    ],
    troubles: [
      {
        when: 'Dos montajes no se pueden comparar.',
        then: 'Son de dos motores.',
      },
    ],
  },
}
