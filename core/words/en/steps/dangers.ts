/** Signal words as ANSI Z535.6 and ISO 3864-2 have them: what will or could kill or maim, what could hurt, what harms the engine alone. */
export const signals = { DANGER: 'DANGER', WARNING: 'WARNING', CAUTION: 'CAUTION', NOTICE: 'NOTICE' }

/** What can hurt hands or engine, by kind: what it is, what it does, how to keep out of its way. */
export const dangers = {
  'heavy-lift':
    'A heavy part that slips could crush a hand or a foot. Lift it with a hoist or with two people, and keep hands out from under it.',
  'turning-crank':
    'Rods and counterweights of a turning crank could crush fingers. Turn it by its end, slowly, when nobody’s hands are in the case.',
  'hot-part':
    'A heated part could burn the hands badly. Wear heat-proof gloves, and do not leave it where somebody picks it up.',
  'spring-load':
    'A spring or a circlip under load could fly into an eye. Wear eye protection, and keep a hand over it until it is seated.',
  'press-load':
    'A part that slips under the press could fly out. Wear eye protection, set it square, and keep hands away from it.',
  'compressed-air':
    'Compressed air could drive chips into an eye. Wear eye protection, and never point it at anybody.',
  solvent:
    'Solvent could catch fire, and its vapour could make you faint. Open a door, keep flames away, wear gloves.',
  'sealant-on-skin':
    'Sealant that has not cured irritates skin and eyes. Wear gloves; wipe it off dry, then wash with soap.',
  'sharp-edge': 'Ring ends and machined edges cut. Wear gloves while they are handled.',
  'sealant-in-oil-way':
    'Sealant in an oil way starves a bearing. Keep the bead narrow and away from every hole.',
  'journal-scratch':
    'A bolt or a rod that touches a journal scores it. Put sleeves over the threads, and guide the rods by hand.',
  'dirt-in-joint':
    'A chip or a thread of cloth under a shell or in the joint spoils the clearance. Wipe both faces, and look again.',
}
