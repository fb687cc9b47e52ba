/** The one channel between the window and the desktop host. */
export const channel = 'bedplate-request'
