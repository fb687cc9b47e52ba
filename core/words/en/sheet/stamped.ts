/** When and by whom, as it is printed. */
export interface Stamped {
  readonly stamp: string
}
export interface Reasoned extends Stamped {
  readonly reason: string
}
