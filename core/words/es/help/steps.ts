import { say, type TopicsOf } from '../../help/help-words.ts'

/** Steps that choose, measure and fit. */
export const steps: TopicsOf<'steps'> = {
  marks: {
    title: 'Leer las marcas de medida',
    whatFor:
      'Las marcas de cárter, cigüeñal y bielas dicen qué medida tiene cada alojamiento y muñón. De ellas salen los semicojinetes.',
    how: [
      'Limpiar las marcas y buscar el extremo delantero.',
      'Leerlas del extremo delantero al de salida, como están estampadas.',
      'Escribirlas una tras otra, con o sin espacios.',
      'Escribir ? para una marca borrada.',
      (shown) => say`Comparar la lista otra vez con el motor y pulsar ${shown.steps.marks.note}.`,
    ],
    troubles: [
      {
        when: 'Se rechaza una marca.',
        then: 'Este motor no tiene esa marca. Mirar otra vez con mejor luz; letras y cifras se confunden fácilmente.',
      },
      {
        when: 'No se puede leer una marca.',
        then: 'Dejarla como borrada y medir ese alojamiento o muñón al elegir los semicojinetes.',
      },
    ],
  },
  shells: {
    title: 'Elegir semicojinetes',
    whatFor: 'Un semicojinete para cada mitad de cada cojinete, con la holgura que resulta.',
    how: [
      'Mirar cada cojinete de la lista: marcas, semicojinetes, holgura.',
      'Tocar un cojinete para ver por qué se proponen y qué otras parejas se admiten.',
      (shown) => say`${shown.shells.countTray} elige entre los que hay, para todos los cojinetes a la vez.`,
      (shown) => say`${shown.shells.orderAndLabels} imprime lo que hay que pedir y las etiquetas.`,
      (shown) => say`Pulsar ${shown.shells.take} cuando cada cojinete tenga una pareja dentro de límites.`,
    ],
    troubles: [
      {
        when: 'No se propone ninguno.',
        then: 'Falta una marca o una lectura, o nada de la ficha sirve. Tocar el cojinete: dice qué falta y qué medir.',
      },
      {
        when: 'La marca y la lectura difieren.',
        then: 'Medir otra vez. Después decidir cuál vale; el motivo queda en la hoja.',
      },
      {
        when: 'El cigüeñal se rectificó.',
        then: 'Declarar la submedida en el muñón y medirlo: semicojinetes de otra submedida se agarrotan o golpean.',
      },
    ],
  },
  measuring: {
    title: 'Medir alojamientos y muñones',
    whatFor:
      'Una medida tomada con instrumento, donde una marca está borrada, el cigüeñal se rectificó o el cárter no es nuevo.',
    how: [
      (shown) =>
        say`Elegir ${shown.shells.measuring.parts.housing} o ${shown.shells.measuring.parts.journal}.`,
      'Antes de medir un alojamiento, apretar el sombrerete sin semicojinetes, como dice el manual.',
      'Medir en cada plano y dirección de la figura; escribir la lectura o enviarla desde el instrumento.',
      'Indicar la temperatura de la pieza y del instrumento, y cuánto puede errar, si se sabe.',
      (shown) => say`Pulsar ${shown.shells.measuring.noteReadings}.`,
    ],
    troubles: [
      {
        when: 'Una lectura se aparta mucho de las demás.',
        then: 'El programa la señala. Limpiar el sitio y medirlo otra vez.',
      },
      {
        when: 'Está ovalado o cónico.',
        then: 'Ningún semicojinete lo corrige. Seguir el manual: rectificar, mandrinar u otra pieza.',
      },
    ],
  },
  'fit-shells': {
    title: 'Montar semicojinetes',
    whatFor: 'Cada semicojinete va en su propia mitad; el dibujo los marca uno a uno.',
    how: [
      'Tomar el semicojinete indicado. Comparar letra, color y medida en su dorso.',
      'Limpiar y secar el dorso y el alojamiento.',
      (shown) => say`Empujarlo con los pulgares. ${shown.steps.fitShells.seating}`,
      'Pulsar el botón grande para esta mitad y tomar el siguiente.',
    ],
    troubles: [
      {
        when: 'El agujero de aceite no queda sobre el conducto.',
        then: 'Es la otra mitad, o está al revés. Un agujero tapado deja el cojinete sin aceite.',
      },
      {
        when: 'Un semicojinete se puso en la mitad equivocada.',
        then: 'Tocar esa mitad y sacarlo; el motivo queda registrado.',
      },
    ],
  },
  'fit-part': {
    title: 'Montar una pieza',
    whatFor: 'Una pieza que se coloca: el cigüeñal, un retén, el otro semicárter.',
    how: [
      'Leer las advertencias que están sobre el trabajo.',
      'Hacer lo que dice el paso, a mano o con polipasto.',
      (shown) => say`Indicar en ${shown.partsList.title} si las piezas son nuevas o reutilizadas.`,
      (shown) => say`Pulsar ${shown.steps.fitPart.isIn}.`,
    ],
    troubles: [
      {
        when: 'Hay que sacarla otra vez.',
        then: (shown) =>
          say`Pulsar ${shown.steps.fitPart.takeOutAgain} y decir por qué. Antes se deshace lo montado encima.`,
      },
      {
        when: 'Se pide una pieza nueva y no la hay.',
        then: 'Esperarla. Una pieza de un solo uso reutilizada queda en la hoja con su motivo.',
      },
    ],
  },
  placed: {
    title: 'Trabajo punto por punto',
    whatFor: 'Aceitar, limpiar, orientar piezas, hacer coincidir marcas, colocar piezas: un punto tras otro.',
    how: [
      'El dibujo y la figura muestran el punto siguiente.',
      'Hacer allí el trabajo, y solo allí.',
      'Mirar otra vez y pulsar el botón grande.',
      (shown) => say`${shown.placed.places} muestra lo hecho y lo que falta.`,
    ],
    troubles: [
      {
        when: 'Se confirmó un punto sin hacerlo.',
        then: (shown) => say`Pulsar ${shown.placed.undo}, elegir el punto y hacerlo.`,
      },
      {
        when: 'La pieza está al revés.',
        then: 'Sacarla y girarla. Un pistón, un sombrerete o un retén al revés ya no se ve después.',
      },
    ],
  },
  bead: {
    title: 'Aplicar un cordón de sellador',
    whatFor: 'Sellador por su recorrido en la cara de unión, y el reloj de su tiempo abierto.',
    how: [
      'Tener primero a mano todo lo necesario para cerrar la unión.',
      'Limpiar ambas caras y dejarlas secar.',
      'Aplicar el cordón por el recorrido dibujado, no más ancho de lo pedido, rodeando los agujeros como está dibujado.',
      (shown) => say`Pulsar ${shown.steps.bead.laid} en cuanto esté aplicado.`,
      'Cerrar y apretar la unión antes de que el reloj termine.',
    ],
    troubles: [
      {
        when: 'Entró sellador en un conducto de aceite.',
        then: 'Quitarlo todo y empezar de nuevo. Deja un cojinete sin aceite.',
      },
      {
        when: 'Terminó el tiempo abierto.',
        then: (shown) =>
          say`Desmontar, limpiar y pulsar ${shown.steps.bead.wipeOff}. Después aplicar un cordón nuevo.`,
      },
    ],
  },
  check: {
    title: 'Comprobaciones',
    whatFor: 'Una pregunta que se responde en el motor, con una lectura donde se pide.',
    how: [
      'Comprobar como dice el paso.',
      'Escribir la lectura con el instrumento aún colocado, o enviarla desde él.',
      (shown) => say`Pulsar ${shown.steps.check.isGood} o ${shown.steps.check.noteReading}.`,
    ],
    troubles: [
      {
        when: 'No está bien.',
        then: (shown) =>
          say`Pulsar ${shown.steps.check.isNotGood} y decir qué falla. Corregirlo, decir qué se hizo y responder otra vez.`,
      },
      {
        when: 'El juego axial está fuera de límites.',
        then: 'Se indica qué arandelas de empuje sirven, si la ficha tiene una tabla de ellas.',
      },
    ],
  },
  limits: {
    title: 'Medir contra límites',
    whatFor: 'Medidas que deben estar en los límites del manual: para piezas nuevas y para reutilizadas.',
    how: [
      'Mirar la figura: muestra dónde va el instrumento.',
      'Medir el punto siguiente; escribir la lectura o enviarla.',
      (shown) => say`Pulsar ${shown.limits.note}.`,
      (shown) => say`${shown.limits.places} muestra cada lectura y lo que falta.`,
    ],
    troubles: [
      {
        when: 'Una lectura está fuera de límites.',
        then: (shown) =>
          say`Medir primero otra vez. Después poner otra pieza y pulsar ${shown.limits.replace}; ${shown.limits.accept} es para lo que el manual permite.`,
      },
    ],
  },
  rings: {
    title: 'Segmentos',
    whatFor:
      'La separación entre puntas de cada segmento en su cilindro, y dónde quedan las aberturas en el pistón.',
    how: [
      'Empujar el segmento en su cilindro con un pistón, para que quede recto, y medir la separación.',
      'Desde entonces no separar segmento y cilindro.',
      'Montar los segmentos en el orden y con el lado hacia arriba que se indican.',
      'Girar cada abertura a su sitio en el reloj, mirando la cabeza con el extremo delantero a la izquierda.',
      (shown) => say`Pulsar ${shown.rings.confirm}.`,
    ],
    troubles: [
      {
        when: 'Una separación es demasiado pequeña.',
        then: 'Limar las puntas rectas o tomar otro segmento. Sin separación se agarrota, por eso no se acepta nunca.',
      },
      {
        when: 'Dos aberturas quedan en línea.',
        then: 'El programa lo dice. Girar una: el gas pasa directo por aberturas en línea.',
      },
    ],
  },
  turning: {
    title: 'Girar el cigüeñal',
    whatFor:
      'Lo que cuesta girar el cigüeñal dice si un cojinete se agarra, antes de que la siguiente pieza lo oculte.',
    how: [
      (shown) => say`${shown.turning.manualFirst}`,
      'Mantener las manos lejos de bielas y contrapesos.',
      (shown) =>
        say`Medir con ${shown.turning.byWrench} o ${shown.turning.byBalance} y escribir lo que indica.`,
      (shown) => say`Pulsar ${shown.turning.note}; si no hay límites, ${shown.turning.turnsFreely}.`,
    ],
    troubles: [
      {
        when: 'Cuesta demasiado o se agarra en un punto.',
        then: 'Aflojar un sombrerete tras otro y girar cada vez. Revisar el que lo libera: semicojinetes, aceite, número y sentido del sombrerete.',
      },
      {
        when: 'Cuesta más después de un sombrerete que antes.',
        then: 'Parar ahí. La causa está en ese sombrerete, no en los anteriores.',
      },
    ],
  },
  photo: {
    title: 'Fotos y notas',
    whatFor: 'Una imagen o una frase de lo que ya no se verá una vez cerrado.',
    how: [
      (shown) => say`Pulsar ${shown.photos.fromCamera} o ${shown.photos.fromFile}, o pegar una imagen.`,
      'Sostener la cámara de modo que la pieza llene la imagen, con buena luz.',
      (shown) => say`Escribir un pie de foto y pulsar ${shown.photos.add.add}.`,
      (shown) => say`${shown.photos.writeNote} añade una frase en su lugar.`,
    ],
    troubles: [
      {
        when: 'No hay cámara.',
        then: (shown) =>
          say`Fotografiar con un teléfono y añadir el fichero, o pulsar ${shown.photos.skip} y decir por qué.`,
      },
      {
        when: 'La imagen no es nítida.',
        then: 'Hacer otra antes de tapar la pieza. Ambas quedan en el registro.',
      },
      {
        when: 'Una foto muestra lo que no debe.',
        then: (shown) =>
          say`Tocarla, pulsar ${shown.photos.withdraw} y decir por qué. Ya no se muestra, imprime ni exporta; el motivo queda en la hoja.`,
      },
    ],
  },
  count: {
    title: 'Contar piezas',
    whatFor: 'Antes del final, cada pieza de la lista está en el motor, o se dice dónde está.',
    how: [
      'Mirar en cada bandeja y debajo del banco.',
      'Repasar las piezas sin marcar. Las que están puestas se marcan aquí.',
      (shown) =>
        say`De una pieza que no está en el motor, decir dónde está y pulsar ${shown.partsList.count.noteLeftOver}.`,
      (shown) => say`Pulsar ${shown.partsList.count.done}.`,
    ],
    troubles: [
      {
        when: 'Sobra una pieza y nadie sabe por qué.',
        then: 'No terminar. Buscar su paso en la lista y mirar si está en el motor.',
      },
    ],
  },
}
