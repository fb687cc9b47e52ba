import type { auditWords as english } from '../../en/problems/audit.ts'
import { capital } from '../../formats/index.ts'

/** What a check measures, where the spec has limits for that elsewhere too. */
const gaps = { 'end-float': 'juego axial', 'rod-side': 'juego lateral de biela' }

const shellSteps = {
  'note-housing-marks': 'anotar las marcas de los alojamientos',
  'note-journal-marks': 'anotar las marcas de los muñones',
  'choose-shells': 'elegir los semicojinetes',
  'fit-shells': 'montar los semicojinetes',
}

export const auditWords: typeof english = {
  // Limits
  'least-above-most': ({ place, least, most }) =>
    `${capital(place)}: el mínimo, ${least}, es mayor que el máximo, ${most}. Uno de los dos es una errata.`,
  'target-outside-limits': ({ place, target, least, most }) =>
    `${capital(place)}: el valor nominal, ${target}, no está entre ${least ?? '…'} y ${most ?? '…'}. Corregir uno de ellos.`,
  'service-limit-below-most': ({ fit, limit, most }) =>
    `${fit}: el límite de servicio, ${limit}, es menor que el máximo de piezas nuevas, ${most}. Corregir uno de ellos.`,
  'washers-overlap': ({ first, second }) =>
    `Juego axial: las arandelas «${first}» y «${second}» se dan para un mismo juego. Corregir dónde empieza una.`,
  'washers-half-tabled': ({ washer }) =>
    `Juego axial: la arandela «${washer}» no tiene juego desde y hasta, y otras, o su otro extremo, sí. Dar los dos en todas, o en ` +
    'ninguna: entonces se eligen por su espesor.',
  'washers-mixed-tabled': () =>
    'Juego axial: las arandelas pueden ser distintas entre sí, pero la tabla da las dos iguales. Indicar que nunca son distintas, o quitar la tabla.',
  'washer-misses-limits': ({ washer, standard, floats, leaves, limits }) =>
    `Juego axial: con ${floats} deben ir las arandelas «${washer}». Por su espesor dejan ${leaves} donde antes estaban ` +
    `«${standard}»; admisible: ${limits}. Comprobar el espesor y los juegos de la fila.`,
  'washer-thickness-twice': ({ first, second, thickness }) =>
    `Juego axial: las arandelas «${first}» y «${second}» tienen las dos ${thickness} de espesor. Corregir una, o dejar una.`,
  'washer-steps-wide': ({ step, range }) =>
    `Juego axial: de una pareja de arandelas a la siguiente más gruesa cambia ${step}, y sus límites solo distan ${range}: ` +
    'para algunos cigüeñales no sirve ninguna pareja. Mirar si falta un espesor, o si las dos arandelas pueden ser distintas.',
  'limits-said-twice': ({ step, gap, here, there }) =>
    `${step}: el paso admite ${here}, y el ${gaps[gap]} de este motor se da como ${there}. ` +
    'Dos límites para una misma cosa: averiguar cuál vale.',

  // Positions
  'saddles-out-of-order': ({ first, second }) =>
    `El apoyo ${second} figura después de ${first} y no está detrás. Enumerar los apoyos desde el extremo delantero.`,
  'bearings-overlap': ({ first, second, by }) =>
    `${first} y ${second} se solapan ${by} a lo largo del cigüeñal. Corregir su posición o su ancho.`,
  'bores-overlap': ({ bore, pitch }) =>
    `Cilindros de ${bore} con una distancia entre centros de ${pitch} se cortan entre sí. Corregir uno de los dos.`,
  'rod-without-cylinder': ({ rod, cylinder, cylinders }) =>
    `La biela ${rod} es del cilindro ${cylinder}, y el motor tiene ${cylinders}. Corregir uno de los dos.`,
  'cylinder-with-two-rods': ({ cylinder }) =>
    `El cilindro ${cylinder} tiene dos bielas. Corregir el cilindro de una de ellas.`,
  'rods-missing': ({ rods, cylinders }) =>
    `Hay ${rods} bielas para ${cylinders} cilindros. Añadir las que faltan.`,
  'outside-outline': ({ what, face, x, y }) =>
    `${capital(what)}, en ${x}, ${y}: fuera del contorno de ${face}. Corregir la posición, o el contorno.`,
  'far-outside': ({ what, face, x, y }) =>
    `${capital(what)}, en ${x}, ${y}: lejos de todo lo demás de ${face}. Comprobar la posición y su unidad.`,
  'parts-collide': ({ first, second, face }) =>
    `${face}: se solapan ${first} y ${second}. Corregir la posición de uno de los dos.`,
  'outline-crosses-itself': ({ face }) =>
    `El contorno de ${face} se cruza consigo mismo. Dar sus vértices en orden, en una vuelta.`,
  'shank-not-waisted': ({ group, shank, thread }) =>
    `${group}: un vástago de ${shank} con una rosca de ${thread} no está rebajado, o es demasiado fino para un tornillo. Corregirlo, u omitirlo si ` +
    'el vástago es tan grueso como la rosca.',
  'prevailing-missing': ({ group }) =>
    `${group}: se dice si el par incluye el par de autofrenado, y no hay par de autofrenado. Indicar lo máximo que ` +
    'cuesta enroscar, u omitir los dos.',
  'prevailing-not-said': ({ group, torque }) =>
    `${group}: enroscar cuesta hasta ${torque}, y nada dice si su par lo incluye. Consultarlo e ` +
    'indicarlo; hasta entonces no se suma nada al par.',
  'layers-not-grip': ({ group, layers, grip }) =>
    `${group}: las capas suman ${layers}, y la longitud de apriete es ${grip}. Corregir una de las dos.`,
  'head-smaller-than-thread': ({ group, acrossFlats, thread }) =>
    `${group}: ${acrossFlats} entre caras no es más ancho que la rosca, ${thread}. Corregir uno de los dos.`,

  // The crank as it is drawn
  'rod-without-throw': ({ rod }) =>
    `Cigüeñal: la biela ${rod} no está en ningún codo. Nombrarla en el codo que la lleva.`,
  'rod-on-two-throws': ({ rod, first, second }) =>
    `Cigüeñal: la biela ${rod} figura en el codo ${first} y otra vez en el codo ${second}. Una biela gira sobre una sola muñequilla: quitar una.`,
  'saddle-within-throw': ({ throw: named, saddle }) =>
    `Cigüeñal: las bielas del codo ${named} están a ambos lados del apoyo ${saddle}, y ninguna muñequilla atraviesa un apoyo. Corregir las bielas del codo.`,
  'counterweight-twice': ({ throw: named, side }) =>
    `Cigüeñal: el brazo del codo ${named} hacia el extremo ${side === 'nose' ? 'delantero' : 'de salida'} tiene dos contrapesos. Quitar uno.`,
  'wheel-over-bearing': ({ wheel, bearing }) =>
    `Cigüeñal: la rueda «${wheel}» está sobre ${bearing}. Corregir su lugar o su anchura.`,
  'crank-not-described': ({ step }) =>
    `«${step}» muestra el cigüeñal, y esta ficha no lo describe. Describir el cigüeñal, o no mostrarlo en ese paso.`,
  'crank-not-on-face': ({ step, face }) =>
    `«${step}» muestra el cigüeñal, que no se ve en ${face}. Nombrar la cara de los apoyos, o una en un extremo del cárter.`,

  // Parts in a face
  'seal-too-small': ({ seal, shaft, diameter }) =>
    `${seal}: su eje de ${shaft} no es más fino que el retén, ${diameter}. Corregir uno de los dos.`,
  'gasket-not-listed': ({ face }) =>
    `${face}: su junta no está entre las piezas, así que nadie la marca. Añadirla e indicar en la junta qué pieza es.`,
  'gasket-used-again': ({ face, part }) =>
    `${face}: la junta «${part}» se puede volver a usar. Una junta suele ser nueva cada vez: consultarlo.`,
  'gasket-laid-elsewhere': ({ face, part }) =>
    `${face}: ningún paso de esta cara coloca la junta «${part}». Indicar en la pieza en qué paso entra, y en ese paso la cara.`,

  // Beads
  'bead-in-keep-out': ({ bead, zone }) =>
    `${bead}: entra en la zona prohibida «${zone}». Rodearla con el recorrido.`,
  'bead-over-oil-passage': ({ bead, passage }) =>
    `${bead}: pasa sobre «${passage}» y lo taparía. Rodearlo con el recorrido.`,
  'bead-over-hole': ({ bead, what }) => `${bead}: pasa sobre el agujero de ${what}. Desviar el recorrido.`,
  'bead-outside-outline': ({ bead, face }) =>
    `${bead}: se sale del contorno de ${face}. Corregir el recorrido, o el contorno.`,

  // Steps
  'steps-in-a-ring': ({ steps }) =>
    `Los pasos ${steps.map((step) => `«${step}»`).join(', ')} se esperan unos a otros, así que ninguno puede empezar. ` +
    'Quitar uno de lo que otro espera.',
  'procedure-never-run': ({ procedure }) =>
    `${procedure}: ningún paso ejecuta este procedimiento. Añadir un paso, o quitar el procedimiento.`,
  'bead-never-laid': ({ bead }) => `${bead}: ningún paso lo aplica. Añadir un paso, o quitar el cordón.`,
  'fit-without-step': ({ fit, missing }) =>
    `${fit}: falta el paso de ${shellSteps[missing]}. Añadirlo, o se olvidarán los semicojinetes.`,
  'done-in-two-steps': ({ work, first, second }) =>
    `${workIn(work)}: se hace tanto en «${first}» como en «${second}». Un montaje lo hace una vez: quitar un paso.`,
  'skippable-step-needed': ({ step, other }) =>
    `«${step}» se puede omitir, y «${other}» lo necesita. No permitir omitirlo, o que «${other}» no dependa de él.`,
  'step-does-not-wait': ({ step, other }) =>
    `«${step}» puede empezar antes de que «${other}» esté hecho. Ponerlo después.`,

  // Parts
  'part-count-differs': ({ part, count, used }) =>
    `«${part}»: ${count} en la lista, y sus pasos usan ${used}. Corregir uno de los dos.`,
  'part-twice-in-step': ({ part, step }) =>
    `«${part}» figura dos veces en «${step}». Escribir ahí la cantidad una sola vez.`,
  'part-where-nothing-is-fitted': ({ part, step }) =>
    `«${part}» se usa en «${step}», y ahí no se monta nada. Nombrar un paso que monte algo.`,
  'count-without-parts': ({ step }) =>
    `«${step}» cuenta lo que sobra, y no hay lista de piezas. Añadir una, o quitar el paso.`,
  'parts-never-counted': () => 'Hay lista de piezas, y ningún paso cuenta lo que sobra. Añadir uno al final.',

  // What is measured against limits
  'service-limits-narrower': ({ name }) =>
    `${name}: los límites de una pieza usada son más estrechos que los de una nueva. Corregir uno de los dos.`,
  'place-twice': ({ step, place }) =>
    `«${step}» tiene dos puntos que se llaman «${place}» o comparten un id. Dar a cada uno el suyo.`,
  'measured-place-twice': ({ name, place }) =>
    `${name}: «${place}» figura dos veces. Dar a cada punto su propio nombre.`,
  'measure-twice': ({ name, id }) =>
    `${name}: «${id}» figura dos veces en un paso. Dar a cada medición su propio id.`,
  'ring-gap-may-close': ({ name }) =>
    `${name}: no hay separación mínima mayor que cero. Las puntas de un segmento no deben tocarse nunca: escribir el mínimo que da el manual.`,
  'ring-gap-unusual': ({ name, bore, least, most }) =>
    `${name}: en un cilindro de ${bore}, la separación entre puntas está entre ${least} y ${most}. Comprobar los límites y su unidad.`,

  // Cautions and source
  'fasteners-none': () =>
    'No hay ninguna fijación descrita, así que no se apretaría nada. Introducir las que sujetan las piezas, según el manual.',
  'bearings-without-fit': ({ bearing, ids }) =>
    `${bearing === 'main' ? 'Cojinetes de bancada' : 'Cojinetes de biela'} ${ids.join(', ')}: nada dice qué semicojinetes llevan, y nada los pide. Añadirlos en «Cojinetes», o mirar si no llevan.`,
  'saddles-none': () =>
    'En este cárter gira un cigüeñal y no hay ningún apoyo. Colocar los cojinetes de bancada según el manual, o que ninguna cara muestre apoyos ni bielas.',
  'end-float-missing': ({ saddle }) =>
    `${saddle} lleva las arandelas de empuje y no se da el juego axial. Introducir sus límites según el manual.`,
  'standing-caution-missing': () =>
    'Ningún aviso dice que el manual vigente del fabricante y una persona cualificada están por encima de este programa. Añadir uno para todos los pasos.',
  'source-unchecked': ({ enteredBy }) =>
    `Los números los introdujo ${enteredBy} y no los ha revisado nadie. Que una segunda persona los compare con su fuente.`,
  'value-reads-otherwise': ({ place, by, found }) =>
    `${capital(place)}: ${by} lo comparó con el manual y allí lee «${found}». Averiguar cuál vale: corregir el valor o hacerlo comparar de nuevo.`,
  'source-copied-from-demo': ({ demo }) =>
    `Esta ficha se empezó como copia de la demo «${demo}», cuyos números son inventados. Comparar cada valor con el manual y decirlo después en el editor, en «Cotejo»; en un fichero, quitar «copiedFromDemo» de la fuente.`,
  'source-checked-by-same': ({ enteredBy }) =>
    `${enteredBy} introdujo y también revisó los números. Que una segunda persona los compare con su fuente.`,
}

function workIn(work: Parameters<(typeof english)['done-in-two-steps']>[0]['work']): string {
  switch (work.kind) {
    case 'note-marks':
      return `Anotar las marcas ${work.part === 'housing' ? 'de los alojamientos' : 'de los muñones'}, «${work.fit}»`
    case 'choose-shells':
      return `Elegir los semicojinetes, «${work.fit}»`
    case 'fit-shells':
      return `Montar los semicojinetes, «${work.fit}»`
    case 'lay-bead':
      return `Cordón «${work.bead}»`
    case 'run-procedure':
      return `Procedimiento «${work.procedure}»`
  }
}
