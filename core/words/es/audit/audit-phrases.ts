import type { auditPhrases as english } from '../../en/audit/audit-phrases.ts'

export const auditPhrases: typeof english = {
  partOfFit: ({ fit, part, mark }) => `${fit}, ${part}${mark === null ? '' : `, marca ${mark}`}`,
  gradeOfFit: ({ fit, grade }) => `${fit}, clase ${grade}`,
  oilClearance: ({ fit }) => `${fit}, holgura de aceite`,
  rodSideClearance: () => 'juego lateral de biela',
  endFloat: () => 'juego axial',
  endFloatOfWasher: ({ washer }) => `juego axial, arandela «${washer}»`,
  measureCalled: ({ name }) => name,
  passOf: ({ procedure, pass }) => `${procedure}, pasada ${pass}`,
  fastenerNumbered: ({ number }) => `fijación ${number}`,
  dowelCalled: ({ dowel }) => `pasador de centrado ${dowel}`,
  facePartCalled: ({ name }) => `«${name}»`,
  passageCalled: ({ name }) => `«${name}»`,
}
