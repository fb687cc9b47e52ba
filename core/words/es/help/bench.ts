import { say, type TopicsOf } from '../../help/help-words.ts'

/** What belongs to the bench: people, tools, settings, the record, practice. */
export const bench: TopicsOf<'bench'> = {
  people: {
    title: (shown) => shown.people.title,
    whatFor: 'Quién trabaja aquí. El nombre del banco está en cada entrada.',
    how: [
      'Añadir a cada persona con el nombre que irá en la hoja y su función.',
      'Poner un PIN, para que nadie anote nada con el nombre de otra persona.',
      (shown) => say`Pulsar ${shown.people.form.teachBadge} y presentar una tarjeta cuyo lector escriba.`,
      'En un montaje, tocar el nombre del cajetín para cambiar quién está en el banco.',
    ],
    troubles: [
      {
        when: 'La lista no se puede cambiar.',
        then: 'Quien la cambia debe estar en la lista como mecánico con PIN, y estar elegido.',
      },
      {
        when: 'Una tarjeta se toma por una lectura.',
        then: 'Escribe un número. Tocar antes el nombre y presentar después la tarjeta.',
      },
    ],
  },
  'second-person': {
    title: 'Segunda persona',
    whatFor:
      'En el montaje de un aprendiz, ciertos pasos esperan hasta que los revisa un mecánico; los que la ficha del motor retiene esperan en todos los montajes.',
    how: [
      'Quien revisa va al motor y mira lo que se indica.',
      'Elige su propio nombre y escribe el PIN o presenta la tarjeta.',
      'Después confirma, o devuelve el paso con un motivo.',
    ],
    troubles: [
      {
        when: 'No se puede elegir un nombre.',
        then: 'Esa persona trabajó en este paso. Tiene que mirar otra.',
      },
      {
        when: 'El paso fue devuelto.',
        then: (shown) => say`Leer el motivo, pulsar ${shown.people.second.again} y corregirlo.`,
      },
      {
        when: 'Un paso espera aunque aquí no hay ningún aprendiz.',
        then: 'La ficha del motor retiene este paso en todos los montajes. Lo revisa un mecánico de la lista que no trabajó en él.',
      },
    ],
  },
  library: {
    title: (shown) => shown.library.title,
    whatFor:
      'Las fichas de motor de este taller: quién introdujo y comprobó cada una, y qué montajes se basan en ella.',
    how: [
      (shown) => say`Pulsar ${shown.library.begin.title} para empezar según el tipo y unas pocas medidas.`,
      (shown) => say`O elegir un motor y pulsar ${shown.library.copy}: después, sustituir cada valor.`,
      (shown) => say`${shown.library.drafts.show} nombra lo que falta o está mal, cada cosa en su lugar.`,
      (shown) =>
        say`${shown.library.drafts.publish} la deja lista para empezar montajes. Después no se cambia nunca.`,
      (shown) =>
        say`${shown.library.save} hace un fichero para otro taller; soltar uno así en la página para tomarlo.`,
    ],
    troubles: [
      {
        when: 'Un borrador no se puede publicar.',
        then: 'La comprobación encuentra un fallo en él. Corregir antes lo que dice.',
      },
      {
        when: 'Un valor publicado está mal.',
        then: (shown) =>
          say`Elegir el motor y pulsar ${shown.library.revise}. Los montajes empezados conservan su revisión.`,
      },
      {
        when: 'Un montaje sigue una revisión que ya tiene otra más nueva.',
        then: (shown) =>
          say`Su ventana lo dice: ${shown.revision.look} muestra qué cambia y qué vuelve a abrirse si se adopta.`,
      },
      {
        when: 'Se descartó un borrador por error.',
        then: (shown) => say`Pulsar ${shown.library.drafts.bringBack} arriba en la página.`,
      },
    ],
  },
  editor: {
    title: 'Escribir la ficha de un motor',
    whatFor:
      'Un motor se introduce desde su manual: se dibuja y después van sus fijaciones, pasadas, cojinetes, pasos y piezas. Cada cambio queda en el disco al momento.',
    how: [
      (shown) =>
        say`Colocar en el dibujo lo que une las piezas y después ${shown.editor.actions.order}: tocar el orden del manual.`,
      (shown) =>
        say`${shown.editor.actions.picture} pone el dibujo del manual o una foto bajo el dibujo, situado por dos puntos conocidos. Se queda en este banco.`,
      (shown) =>
        say`Recorrer ${shown.editor.sections.groups}, ${shown.editor.sections.passes}, ${shown.editor.sections.fits}, ${shown.editor.sections.steps} y ${shown.editor.sections.parts}. Escribir cada valor como lo imprime el manual, en ambas unidades si da ambas: 30 lbf·ft (41 N·m).`,
      (shown) =>
        say`Indicar la ${shown.editor.pages.page} de cada parte: acompaña a sus valores cuando se comparan.`,
      (shown) =>
        say`En ${shown.editor.sections.audit} corregir cada fallo. Una duda que está bien así: ${shown.editor.audit.accept}`,
      (shown) =>
        say`Que una segunda persona elija su nombre y recorra ${shown.editor.sections.check}. Un valor que cambia se compara de nuevo.`,
      'Ctrl+Z deshace lo que se está escribiendo en un campo o, si no, el último cambio, también tras cerrar el programa. Tab pasa de campo en campo, Intro lo confirma.',
    ],
    troubles: [
      {
        when: 'Un valor no se acepta.',
        then: 'La línea bajo el campo dice por qué. Lo escrito se queda; no se cambió nada.',
      },
      {
        when: 'Un paso no se puede quitar.',
        then: 'En él entra una pieza, o una advertencia lo acompaña solo a él. Cambiar eso primero.',
      },
      {
        when: 'Una duda aceptada vuelve a salir.',
        then: 'Cambió aquello de lo que trata. Mirarlo otra vez.',
      },
    ],
  },
  wrenches: {
    title: (shown) => shown.wrenches.title,
    whatFor: 'Las llaves dinamométricas del taller. Para cada apriete se elige una que sirva.',
    how: [
      (shown) => say`Pulsar ${shown.wrenches.add}.`,
      'Escribir nombre y número, y la primera y la última marca de la escala.',
      'Escribir el día de su calibración, y tipo y clase como están marcados.',
      'Para adaptadores que alejan la fijación del cuadradillo, escribir longitud de la llave y distancia.',
      (shown) => say`Pulsar ${shown.wrenches.form.keep}.`,
    ],
    troubles: [
      {
        when: 'Ninguna llave sirve.',
        then: (shown) =>
          say`${shown.run.wrench.offer} en el paso dice por qué: alcance, divisiones, clase o adaptador.`,
      },
      {
        when: 'La llave se ajusta a un valor distinto del que recibe la fijación.',
        then: 'Con adaptador es correcto: se indica a cuánto ajustar. Mantener el adaptador en el ángulo indicado.',
      },
    ],
  },
  instruments: {
    title: (shown) => shown.instruments.title,
    whatFor: 'Instrumentos y llaves que envían sus lecturas, y las indicaciones habladas.',
    how: [
      'Un instrumento que escribe como un teclado no necesita ajuste: pulsar su botón cuando se pide una lectura.',
      (shown) =>
        say`Para uno de puerto serie pulsar ${shown.instruments.add} y copiar los ajustes de su manual.`,
      (shown) => say`Pulsar ${shown.instruments.connect} y elegir su puerto.`,
      'Enviar una lectura y compararla con su pantalla.',
      'Activar la voz y elegir su velocidad.',
    ],
    troubles: [
      {
        when: 'Lo que llega no es una lectura.',
        then: 'Comparar velocidad, bits de datos, paridad y bits de parada con el manual del instrumento.',
      },
      {
        when: 'Llegó una lectura cuando no se pedía.',
        then: (shown) => say`Se conserva: ${shown.run.unasked.use} o ${shown.run.unasked.drop}.`,
      },
    ],
  },
  'screen-and-keys': {
    title: (shown) => shown.settings.title,
    whatFor: 'Números a su tamaño real en esta pantalla, y las teclas.',
    how: [
      'Poner una tarjeta bancaria sobre el contorno e igualar el contorno.',
      (shown) => say`Pulsar ${shown.settings.asLargeAsCard}.`,
      (shown) => say`En la primera página elegir ${shown.settings.readFrom}: medio metro, uno o dos.`,
      (shown) => say`Desactivar ${shown.settings.letterKeys} si se pulsan por error.`,
    ],
    troubles: [
      {
        when: 'Los números son demasiado pequeños o grandes.',
        then: 'Medir otra vez la pantalla; el zoom del navegador cuenta, ponerlo antes al 100 %.',
      },
      {
        when: 'Una tecla no hace nada.',
        then: 'Mientras se escribe un texto, las teclas son del texto. Pulsar antes Esc.',
      },
    ],
  },
  record: {
    title: (shown) => shown.engines.record,
    whatFor: 'Si todas las entradas están como se confirmaron, y copias de ellas.',
    how: [
      (shown) => say`Elegir una segunda carpeta en otro disco y pulsar ${shown.record.backup.keepThere}.`,
      (shown) => say`${shown.record.backup.make} hace una copia ahora; cada día se hace una sola.`,
      (shown) => say`${shown.record.verify.whole} comprueba cada entrada.`,
      'Escribir el código de control de una hoja antigua para ver si el registro aún coincide.',
      (shown) => say`Leer ${shown.record.doctor} a quien ayude por teléfono.`,
    ],
    troubles: [
      {
        when: 'Algo no está como se confirmó.',
        then: 'La página dice qué entrada. Dejar el registro como está y compararlo con una copia o una hoja.',
      },
      {
        when: 'Hay que poner una copia en su lugar.',
        then: 'Elegirla y restaurarla. Lo que había antes se conserva al lado.',
      },
    ],
  },
  shop: {
    title: (shown) => shown.shop.title,
    whatFor:
      'Varios bancos con un archivo común: cada uno encuentra, lee e imprime todos los montajes, y uno cada vez trabaja en ellos.',
    how: [
      (shown) =>
        say`Dar un nombre al banco, escribir la dirección del archivo y pulsar ${shown.shop.join.join}.`,
      'Seguir como antes: lo confirmado está primero en este banco y llega solo al archivo.',
      (shown) => say`${shown.shop.build.handOver}, en la ventana de un montaje, lo da a otro banco.`,
      (shown) => say`${shown.shop.build.takeOver} continúa uno cuyo banco no responde; pide un motivo.`,
      (shown) =>
        say`${shown.archive.title} encuentra los montajes de todos los bancos, también por ${shown.shop.bench}; ${shown.archive.search.states.forked} son los que hay que decidir.`,
      (shown) => say`${shown.shop.wall.open} muestra cada montaje abierto con letras que se leen a 3 m.`,
    ],
    troubles: [
      {
        when: 'No hay red.',
        then: 'Seguir trabajando. Lo que espera se cuenta en la página y se envía cuando el archivo vuelve a responder.',
      },
      {
        when: 'Un montaje se continuó por separado en dos bancos.',
        then: (shown) =>
          say`Averiguar cuál se hizo en el motor. En cualquiera de los dos bancos abrir el montaje, pulsar ${shown.shop.apart.look} y decidir cuál vale.`,
      },
    ],
  },
  'damaged-record': {
    title: 'Cuando el registro está dañado',
    whatFor: 'El programa no monta sobre un registro en el que no se puede confiar. No se tira nada.',
    how: [
      'Leer arriba qué pasa. No borrar ningún fichero.',
      (shown) => say`Conectar el disco que falte y pulsar ${shown.record.rescue.lookAgain}.`,
      'Si no, elegir la copia comprobada más reciente y restaurarla.',
      'Comparar el último montaje con su hoja: lo confirmado después de la copia hay que introducirlo otra vez.',
    ],
    troubles: [
      {
        when: 'No hay ninguna copia.',
        then: 'Buscarla en la segunda carpeta y en otros discos. Copiar toda la carpeta de datos antes de probar nada.',
      },
      {
        when: 'El registro desapareció con el programa en marcha.',
        then: (shown) =>
          say`Aún está en memoria: pulsar ${shown.record.rescue.write} antes de cerrar el programa.`,
      },
    ],
  },
  practice: {
    title: (shown) => shown.practice.title,
    whatFor:
      'Ejercicios con los motores de la biblioteca, fuera de cualquier montaje, unos diez minutos al día.',
    how: [
      'Elegir quién está en el banco, para conservar el progreso.',
      (shown) => say`Empezar con ${shown.practice.today}: cada ejercicio vuelve cuando toca.`,
      'Los errores se muestran en su sitio del dibujo.',
      (shown) =>
        say`${shown.practice.dryRun.name} es un montaje entero en las pantallas reales. No se registra nada.`,
    ],
    troubles: [
      {
        when: 'No se conserva nada.',
        then: (shown) => say`El nombre del banco no está en ${shown.engines.people}.`,
      },
    ],
  },
}
