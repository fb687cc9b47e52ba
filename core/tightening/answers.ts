/** What is answered for a person where the procedure, or the way out of a flag, says what was done. */
export const replacedAnswer = 'Loosened, replaced by a new one, and begun again from its first pass.'
export const beganAgainAnswer = 'Loosened, and begun again from its first pass.'
export const turnedOnAnswer = 'Turned on from where it stood.'
export const repeatAnswer = 'The pass is gone through again until none moves.'
