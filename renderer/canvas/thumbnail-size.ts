/** Of the small picture of an engine, in px. */
export const thumbnailSize = { width: 144, height: 96 } as const
