import type { buildWords as english } from '../../en/problems/build.ts'
import { engineParts } from '../engine-parts.ts'
import { pairText } from '../halves.ts'
import { ringWords } from './rings.ts'

const { halves } = engineParts

const undo: Readonly<Record<string, string>> = {
  'fit-shells': 'Sacar antes sus semicojinetes',
  'fit-part': 'Sacarlo antes',
  'lay-bead': 'Limpiarlo antes',
  'run-procedure': 'Retirar antes sus aprietes, empezando por el último, y aflojar lo que se giró',
  check: 'Responder antes que no está bien',
  lubricate: 'Deshacer antes sus puntos',
  orient: 'Deshacer antes sus puntos',
  align: 'Deshacer antes sus puntos',
  'fit-places': 'Deshacer antes sus puntos',
  'fit-rings': 'Quitar antes sus segmentos',
  turn: 'Indicar antes que su lectura no vale',
}

export const buildWords: typeof english = {
  'build-finished': ({ name }) =>
    `«${name}» está terminado. Su trabajo no se puede cambiar; enmendarlo, o empezar un montaje nuevo.`,
  'build-voided': ({ name }) =>
    `«${name}» está anulado. No se le puede añadir nada; empezar un montaje nuevo.`,
  'build-elsewhere': ({ name, bench, is }) =>
    is === 'voided'
      ? `«${name}» estuvo por última vez en ${bench} y está anulado. No se le puede añadir nada.`
      : is === 'finished'
        ? `«${name}» está terminado en ${bench}. Enmendarlo allí, o tomarlo aquí con un motivo y enmendarlo después.`
        : `«${name}» está en ${bench}. Continuarlo allí, pedir que se entregue o tomarlo aquí con un motivo.`,
  'build-is-here': ({ bench }) => `El montaje ya está en ${bench}, que es este banco. Continuarlo.`,
  'handed-to-itself': ({ bench }) => `${bench} es este banco. Elegir el banco que debe continuar.`,
  'bench-name-missing': () => 'El banco no tiene nombre. Escribir cómo se le llama, por ejemplo «Banco 2».',
  'shop-not-joined': () => 'Este banco no pertenece a ningún taller. Unirse a uno en la página «Taller».',
  'bench-unknown': () => 'El taller no conoce ese banco. Elegir uno de la lista.',
  'bench-unnamed': () =>
    'Este banco no pertenece a ningún taller, así que no hay otro que continúe. Unirse primero al taller.',
  'build-apart': ({ name, bench, entry, own }) =>
    `«${name}» se continuó por separado ${own === null ? 'aquí' : `en ${own}`} y en ${bench} desde la entrada ${entry}. Averiguar qué se hizo en el motor, ver las dos líneas y decidir en cualquiera de los dos bancos cuál vale.`,
  'build-line-left': ({ name, bench, entry, own }) =>
    `Para «${name}» vale la línea de ${bench} desde la entrada ${entry}. Lo registrado ${own === null ? 'aquí' : `en ${own}`} se conserva y se puede leer aquí, pero este registro no puede continuar el montaje. Continuar en ${bench}; o iniciar aquí el programa con una carpeta de datos vacía, unirse con ella al taller y hacerse cargo allí del montaje.`,
  'bench-line-left': ({ name, bench }) =>
    `${bench} continuó «${name}» por separado y su línea no vale. Su registro la conserva: allí el montaje se puede leer, pero no continuar. Entregarlo a otro banco o conservarlo aquí.`,
  'build-not-apart': ({ name }) => `«${name}» tiene una sola línea de entradas; no hay nada que decidir.`,
  'build-not-finished': () =>
    'El montaje no está terminado, así que aún no se puede enmendar. Retirar lo que esté mal donde se hizo.',
  'step-not-awaiting': ({ step }) => `«${step}» no espera a una segunda persona. Seguir con el montaje.`,
  'redo-not-done': ({ step, isRead }) =>
    `«${step}» aún no está hecho, así que no se puede repetir. ` +
    (isRead ? 'Volver a medir o responder en él lo que esté mal.' : 'Retirar en él lo que esté mal.'),
  'redo-opens-others': ({ step, others }) =>
    others.length === 0
      ? `Sobre «${step}» ya no se apoya nada. Mirarlo otra vez y confirmar.`
      : `Repetir «${step}» vuelve a abrir también ${others.map((other) => `«${other}»`).join(', ')}. Mirar otra vez la lista y confirmar.`,
  'redo-not-taken-apart': ({ step, first }) =>
    `Antes de repetir «${step}», deshacer en el banco lo que dice la lista, empezando por «${first}», e indicar que está deshecho.`,
  'step-skipped': ({ step }) =>
    `«${step}» está omitido. Retirar antes la omisión; después se puede trabajar en él.`,
  'skip-not-allowed': ({ step }) => `La ficha de este motor no permite omitir «${step}». Hacerlo.`,
  'step-begun': ({ step, isRead }) =>
    isRead
      ? `«${step}» ya está empezado, y lo que se halló en él queda. Ya no se puede omitir: terminarlo.`
      : `«${step}» ya está empezado. Retirar lo hecho en él; después se puede omitir.`,
  'step-not-skipped': ({ step }) => `«${step}» no está omitido, así que no hay nada que retirar.`,
  'skip-stood-on': ({ step, top }) =>
    `«${top}» se hizo después de omitir «${step}». Para hacerlo pese a todo, repetirlo: eso abre lo que se apoya en él.`,
  'step-unconfirmed': ({ step }) =>
    `«${step}» espera a que lo revise una segunda persona. Llamar a una y después continuar.`,
  'step-unknown': ({ step }) => `Este motor no tiene el paso «${step}». Elegir uno de los suyos.`,
  'step-before': ({ step, first }) => `«${step}» va después. Hacer antes «${first}».`,
  'step-on-top': ({ step, top, kind }) =>
    `«${top}» se hizo encima de «${step}». ${undo[kind] ?? 'Deshacerlo antes'}; después se puede cambiar este.`,
  'sealant-over-time': ({ beads, minutes }) =>
    `${beads.join(', ')}: ha vencido el tiempo abierto del sellador, ${minutes} min. Abrir la unión, limpiarla y ` +
    'aplicar un cordón nuevo; o indicar por qué se cierra de todos modos.',
  'restart-opens-joint': ({ steps }) =>
    `Empezar de nuevo por la primera pasada abre la unión, y su sellador no sella dos veces: hay que repetir ${steps.join(', ')}. ` +
    'Aceptarlo, o empezar por una pasada posterior.',
  'step-done-already': ({ step }) => `«${step}» ya está hecho. Si fue un error, retirarlo.`,
  'step-not-done': ({ step }) => `«${step}» no está hecho: no hay nada que retirar.`,
  'measure-unknown': ({ step, place }) => `«${step}» no mide nada en «${place}». Elegir uno de sus puntos.`,
  'place-unknown': ({ step, place }) => `«${step}» no tiene el punto «${place}». Elegir uno de los suyos.`,
  'place-done-already': ({ step, place }) =>
    `${place} ya está hecho en «${step}». Si fue un error, deshacerlo.`,
  'place-not-done': ({ step, place }) => `${place} no está hecho en «${step}»: no hay nada que deshacer.`,
  'marks-first': ({ place, first }) =>
    `${place} se mira otra vez cuando todas las marcas están puestas. Poner antes ${first}.`,
  'turning-missing': ({ step }) =>
    `«${step}» tiene límites. Leer lo que cuesta girar el cigüeñal y escribirlo.`,
  'turning-by-hand': ({ step }) =>
    `«${step}» no tiene límites en la ficha. Girar el cigüeñal a mano e indicar si gira libre.`,
  'turning-not-outside': ({ step }) =>
    `«${step}»: ahí no hay nada fuera de límites. Girar antes el cigüeñal.`,
  'ring-gap-zero': ringWords['ring-gap-zero'],
  'nothing-outside': ({ name, place }) => `${name}, ${place}: ahí no hay nada fuera de límites. Medir antes.`,
  'part-unknown': ({ part }) => `La lista de piezas no tiene «${part}». Elegir una pieza de la lista.`,
  'part-not-in-step': ({ part, step }) =>
    `«${part}» no se usa en «${step}». Marcar la pieza en un paso que la use.`,
  'parts-ticked-already': ({ part, step }) =>
    `«${part}» ya tiene su marca en «${step}». Si fue un error, quitar la marca.`,
  'parts-not-ticked': ({ part, step }) => `Nada de «${part}» tiene marca en «${step}».`,
  'parts-too-many': ({ part, step, count, left }) =>
    `A «${step}» le faltan ${left} de «${part}», no ${count}. Contar de nuevo.`,
  'part-unaccounted': ({ part, step, left }) =>
    `Sin marcar en «${step}»: ${left} de «${part}». Marcar lo montado, o indicar dónde está.`,
  'steps-left': ({ first }) =>
    `El montaje aún no se puede terminar: «${first}» no está hecho. Hacerlo antes.`,
  'marks-missing': ({ fit }) => `${fit}: faltan marcas. Anotar antes las marcas de las dos piezas.`,
  'shell-in-place': ({ position, half }) =>
    `${position}: la mitad ${halves[half]} está puesta. Sacar todos los semicojinetes de estos cojinetes antes de cambiar marcas o semicojinetes.`,
  'shell-undecided': ({ position, half }) =>
    `${position}: no se puede proponer semicojinete para la mitad ${halves[half]}. Elegir una clase e indicar por qué.`,
  'pair-not-allowed': (facts) =>
    `${facts.position}: este motor no admite ${pairText(facts, ' con ')}. Elegir otra pareja.`,
  'basis-undecided': ({ position }) =>
    `${position}: su marca y sus lecturas no coinciden. Medir de nuevo, o decidir cuál vale e indicar por qué.`,
  'nothing-measured': ({ position }) => `${position}: ahí no se ha medido nada. Anotar antes lecturas.`,
  'nothing-pinned': ({ position }) =>
    `${position}: ahí no hay semicojinete elegido a mano: no hay nada que deshacer.`,
  'tray-line-unknown': ({ position, label }) =>
    `${position}: ninguna línea de la bandeja lleva la etiqueta ${label}. Elegir una que exista, o volver a los semicojinetes propuestos.`,
  'tray-line-taken': ({ position, label, count, at }) =>
    `${position}: en la bandeja ${count === 1 ? 'hay un semicojinete' : `hay ${count} semicojinetes`} de ${label}, ` +
    `${at.length === 0 ? 'que no alcanza para las dos mitades' : `ya elegido a mano en ${at.join(', ')}`}. ` +
    'Volver ahí a los semicojinetes propuestos, o elegir otro.',
  'tray-label-missing': ({ line }) =>
    `La línea ${line} de la bandeja no tiene etiqueta. Escribir lo que figura en la caja o en el semicojinete.`,
  'shell-to-be-ordered': ({ position, half, grade }) =>
    `${position}: el semicojinete de la mitad ${halves[half]}, clase ${grade}, está aún por pedir. Confirmar que ha llegado antes de montarlo.`,
  'shell-not-chosen': ({ position, half }) =>
    `${position}: no hay semicojinete elegido para la mitad ${halves[half]}. Elegir antes los semicojinetes.`,
  'position-not-in-fit': ({ position, fit }) =>
    `«${position}» no es un cojinete de ${fit}. Elegir uno que lo sea.`,
  'half-in-place': ({ position, half }) =>
    `${position}: la mitad ${halves[half]} ya está puesta. Si fue un error, sacarla.`,
  'half-not-in-place': ({ position, half }) => `${position}: la mitad ${halves[half]} no está puesta.`,
  'check-without-reading': ({ step }) => `«${step}» no pide lectura. Responder bien o mal.`,
  'check-good-why': ({ step }) => `«${step}» no estaba bien. Indicar qué se ha hecho desde entonces.`,
  'check-reading-missing': ({ step }) => `«${step}» pide una lectura. Escribir lo que marca el instrumento.`,
}
