/** Names the folder of a program that was packed; absent for one that Electron is given as a word. */
export const packedVariable = 'STAND_IN_PACKED'
