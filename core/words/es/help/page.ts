import type { HelpWords } from '../../help/help-words.ts'

/** What stands on the page of the help itself. */
export const page: HelpWords['page'] = {
  title: 'Ayuda',
  back: 'Volver',
  search: 'Buscar en la ayuda',
  searchExample: 'por ejemplo: par, segmento, copia',
  nothingFound: 'No se ha encontrado nada. Probar otra palabra, o una parte de ella.',
  found: ({ topics, terms }) =>
    `${topics} ${topics === 1 ? 'tema' : 'temas'}, ${terms} ${terms === 1 ? 'palabra' : 'palabras'} del glosario`,
  topics: 'Temas',
  allTopics: 'Todos los temas',
  groups: {
    start: 'Primera página y ventana',
    steps: 'Pasos',
    tightening: 'Apriete',
    papers: 'Papeles y archivo',
    bench: 'El banco',
  },
  whatFor: 'Para qué sirve',
  how: 'Cómo se hace',
  troubles: 'Qué puede fallar y qué hacer',
  manualFirst:
    'Primero vale el manual vigente del fabricante; después, las normas locales y una persona cualificada. Esta ayuda explica el programa, no el motor.',
  glossary: 'Glosario',
  aboutGlossary: 'Las palabras del oficio como las usa el programa, en sus tres idiomas.',
  term: 'Palabra',
  meaning: 'Qué es',
  demo: 'Motor de demostración: sus números son inventados.',
  guide: { title: 'Primer montaje guiado', read: 'Entendido', more: 'Más', leave: 'Dejar la guía' },
}
