/** How a quantity is spoken of in a finding. */
export interface QuantityWords {
  /** Subject of the sentence, as "The release cord's thickness". */
  readonly label: string
  /** What to do when the value is too great, or when something banned is there. */
  readonly less?: string
  /** What to do when the value is too small, or when something asked for is not there. */
  readonly more?: string
}
