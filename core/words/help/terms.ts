interface Term {
  readonly en: string
  readonly de: string
  readonly es: string
}

/**
 * The words of the trade that the program uses, in the three languages. They are from memory, no source. Two were asked for in
 * Spanish: `clase de calidad`, the property class of ISO 898-1, is what suppliers in Spain print for it (looked up; the Spanish
 * standard itself was not at hand). For the prevailing torque of ISO 2320 no Spanish source was found; `par de autofrenado` is
 * made from `tuerca autofrenante`, as lists of materials call the nut (looked up), since `par de frenado` is that of a brake.
 */
export const terms = {
  // Bearings and sizes
  'bearing-shell': { en: 'bearing shell', de: 'Lagerschale', es: 'semicojinete' },
  'main-bearing': { en: 'main bearing', de: 'Grundlager', es: 'cojinete de bancada' },
  'big-end-bearing': { en: 'big-end bearing', de: 'Pleuellager', es: 'cojinete de biela' },
  'balance-shaft': { en: 'balance shaft', de: 'Ausgleichswelle', es: 'eje de equilibrado' },
  saddle: { en: 'saddle', de: 'Lagersitz', es: 'apoyo de bancada' },
  journal: { en: 'journal', de: 'Lagerzapfen', es: 'muñón' },
  crankpin: { en: 'crankpin', de: 'Hubzapfen', es: 'muñequilla' },
  bore: { en: 'bore', de: 'Bohrung', es: 'alojamiento' },
  clearance: { en: 'oil clearance', de: 'Lagerspiel', es: 'holgura de aceite' },
  crush: { en: 'crush', de: 'Schalenüberstand', es: 'sobresaliente del semicojinete' },
  tang: { en: 'tang', de: 'Haltenase', es: 'uña' },
  wall: { en: 'wall thickness', de: 'Wanddicke', es: 'espesor de pared' },
  grade: { en: 'grade', de: 'Klasse', es: 'clase' },
  'size-mark': { en: 'size mark', de: 'Maßkennzeichen', es: 'marca de medida' },
  chart: { en: 'selection chart', de: 'Auswahltabelle', es: 'tabla de selección' },
  undersize: { en: 'undersize', de: 'Untermaß', es: 'submedida' },
  'out-of-round': { en: 'out of round', de: 'Unrundheit', es: 'ovalización' },
  taper: { en: 'taper', de: 'Konizität', es: 'conicidad' },
  'service-limit': { en: 'service limit', de: 'Verschleißgrenze', es: 'límite de servicio' },
  'end-float': { en: 'end float', de: 'Axialspiel', es: 'juego axial' },
  'thrust-washer': { en: 'thrust washer', de: 'Anlaufscheibe', es: 'arandela de empuje' },
  'side-clearance': { en: 'side clearance', de: 'Seitenspiel', es: 'juego lateral' },
  'run-out': { en: 'run-out', de: 'Rundlauf', es: 'excentricidad' },
  'turning-torque': { en: 'turning torque', de: 'Durchdrehmoment', es: 'par de giro' },

  // Case, crank, rods
  crankcase: { en: 'crankcase', de: 'Kurbelgehäuse', es: 'cárter' },
  'case-half': { en: 'case half', de: 'Gehäusehälfte', es: 'semicárter' },
  'joint-face': { en: 'joint face', de: 'Trennfläche', es: 'cara de unión' },
  'main-cap': { en: 'main cap', de: 'Lagerdeckel', es: 'sombrerete de bancada' },
  bedplate: { en: 'bedplate', de: 'Grundplatte', es: 'bancada de una pieza' },
  crankshaft: { en: 'crankshaft', de: 'Kurbelwelle', es: 'cigüeñal' },
  nose: { en: 'nose', de: 'Steuerseite', es: 'extremo delantero' },
  'drive-end': { en: 'drive end', de: 'Abtriebsseite', es: 'extremo de salida' },
  'connecting-rod': { en: 'connecting rod', de: 'Pleuel', es: 'biela' },
  'rod-cap': { en: 'rod cap', de: 'Pleueldeckel', es: 'sombrerete de biela' },
  dowel: { en: 'dowel', de: 'Passstift', es: 'pasador de centrado' },
  'oil-way': { en: 'oil way', de: 'Ölkanal', es: 'conducto de aceite' },
  'oil-seal': { en: 'oil seal', de: 'Wellendichtring', es: 'retén' },
  gasket: { en: 'gasket', de: 'Dichtung', es: 'junta' },
  'timing-mark': { en: 'timing mark', de: 'Steuermarke', es: 'marca de distribución' },

  // Pistons and rings
  piston: { en: 'piston', de: 'Kolben', es: 'pistón' },
  'piston-pin': { en: 'piston pin', de: 'Kolbenbolzen', es: 'bulón' },
  circlip: { en: 'circlip', de: 'Sicherungsring', es: 'anillo de retención' },
  'piston-ring': { en: 'piston ring', de: 'Kolbenring', es: 'segmento' },
  'ring-gap': { en: 'ring end gap', de: 'Stoßspiel', es: 'separación entre puntas' },
  'groove-clearance': { en: 'groove clearance', de: 'Höhenspiel', es: 'holgura en la ranura' },
  'deck-height': { en: 'deck height', de: 'Kolbenüberstand', es: 'altura del pistón al plano' },

  // Sealant
  sealant: { en: 'sealant', de: 'Dichtmittel', es: 'sellador' },
  bead: { en: 'bead', de: 'Dichtraupe', es: 'cordón de sellador' },
  'open-time': { en: 'open time', de: 'Offenzeit', es: 'tiempo abierto' },

  // Fasteners and tightening
  bolt: { en: 'bolt', de: 'Schraube', es: 'tornillo' },
  stud: { en: 'stud', de: 'Stehbolzen', es: 'espárrago' },
  nut: { en: 'nut', de: 'Mutter', es: 'tuerca' },
  'through-bolt': { en: 'through bolt', de: 'Durchgangsschraube', es: 'tornillo pasante' },
  torque: { en: 'torque', de: 'Drehmoment', es: 'par de apriete' },
  'tightening-order': { en: 'tightening order', de: 'Anzugsreihenfolge', es: 'orden de apriete' },
  procedure: { en: 'procedure', de: 'Anziehvorgang', es: 'procedimiento' },
  pass: { en: 'pass', de: 'Durchgang', es: 'pasada' },
  pull: { en: 'pull', de: 'Anzug', es: 'apriete' },
  angle: { en: 'tightening angle', de: 'Drehwinkel', es: 'ángulo de apriete' },
  stretch: { en: 'stretch', de: 'Längung', es: 'alargamiento' },
  recheck: { en: 'recheck', de: 'Nachprüfung', es: 'comprobación' },
  preload: { en: 'preload', de: 'Vorspannkraft', es: 'precarga' },
  'proof-load': { en: 'proof load', de: 'Prüfkraft', es: 'carga de prueba' },
  yield: { en: 'yield point', de: 'Streckgrenze', es: 'límite elástico' },
  'prevailing-torque': { en: 'prevailing torque', de: 'Klemmdrehmoment', es: 'par de autofrenado' },
  'cross-talk': {
    en: 'elastic interaction',
    de: 'elastische Wechselwirkung',
    es: 'interacción elástica',
  },
  'thread-lock': { en: 'thread-lock', de: 'Schraubensicherung', es: 'fijador de roscas' },

  // Tools
  'torque-wrench': { en: 'torque wrench', de: 'Drehmomentschlüssel', es: 'llave dinamométrica' },
  adapter: { en: 'adapter', de: 'Adapter', es: 'adaptador' },
  calibration: { en: 'calibration', de: 'Kalibrierung', es: 'calibración' },
  'feeler-gauge': { en: 'feeler gauge', de: 'Fühlerlehre', es: 'galgas de espesores' },
  'dial-gauge': { en: 'dial gauge', de: 'Messuhr', es: 'reloj comparador' },
  micrometer: { en: 'micrometer', de: 'Bügelmessschraube', es: 'micrómetro' },
  'bore-gauge': { en: 'bore gauge', de: 'Innenmessgerät', es: 'alexómetro' },
  'plastic-gauge': { en: 'plastic gauge', de: 'Kunststoffmessfaden', es: 'hilo calibrado de plástico' },

  // Record
  build: { en: 'build', de: 'Aufbau', es: 'montaje' },
  spec: { en: 'engine spec', de: 'Motordatenblatt', es: 'ficha del motor' },
  record: { en: 'record', de: 'Aufzeichnung', es: 'registro' },
  entry: { en: 'entry', de: 'Eintrag', es: 'entrada' },
  'head-code': { en: 'head code', de: 'Kopfcode', es: 'código de control' },
  'build-sheet': { en: 'build sheet', de: 'Montageblatt', es: 'hoja de montaje' },
  flag: { en: 'flag', de: 'Beanstandung', es: 'incidencia' },
} as const satisfies Readonly<Record<string, Term>>

export type TermId = keyof typeof terms
