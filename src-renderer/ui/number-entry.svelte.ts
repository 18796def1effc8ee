import { typedNumber } from '@shared/units/typed-number'
import { reader } from './reader.svelte'
import { words } from './words'

export interface NumberLimits {
  readonly label: string
  readonly unit: string
  readonly min: number
  readonly max: number
  readonly whole: boolean
}

type Reading = { ok: true; value: number | undefined } | { ok: false; message: string }

/**
 * What is typed in a number field while it is not yet a value. A draft belongs to the value it was typed over, so an
 * undo or a turn of the twin slider replaces it.
 */
export class NumberEntry {
  #draft = $state.raw<{ text: string; over: number | undefined; message: string | undefined }>()

  constructor(
    private readonly value: () => number | undefined,
    private readonly limits: () => NumberLimits,
    private readonly allowsNone: () => boolean,
    private readonly apply: (value: number | undefined) => void,
  ) {}

  #live = $derived.by(() => (this.#draft?.over === this.value() ? this.#draft : undefined))
  text = $derived.by(() => this.#live?.text ?? this.#written(this.value()))
  message = $derived.by(() => this.#live?.message)

  type(text: string): void {
    const reading = this.#read(text)
    if (reading.ok) {
      if (reading.value !== this.value()) this.apply(reading.value)
      this.#draft = { text, over: this.value(), message: undefined }
    } else this.#draft = { text, over: this.value(), message: reading.message }
  }

  /** Leaving the field tidies what was understood and keeps what was not, with its message. */
  leave(): void {
    if (this.#live?.message === undefined) this.#draft = undefined
  }

  forget(): void {
    this.#draft = undefined
  }

  step(by: number): void {
    const { min, max, unit } = this.limits()
    const next = reader.stored(reader.shown(this.value() ?? min, unit) + by, unit)
    this.#draft = undefined
    this.apply(Math.min(max, Math.max(min, Number(next.toPrecision(10)))))
  }

  #written(value: number | undefined): string {
    return value === undefined ? '' : reader.field(value, this.limits().unit)
  }

  #read(text: string): Reading {
    const { label, unit, min, max, whole } = this.limits()
    const value = this.value()
    const kept = value === undefined ? words.unset : reader.say(value, unit)
    if (text.trim() === '' && this.allowsNone()) return { ok: true, value: undefined }
    const shown = typedNumber(text)
    if (shown === undefined) return { ok: false, message: words.notANumber(label, kept) }
    const stored = Number(reader.stored(shown, unit).toPrecision(10))
    if (whole && !Number.isInteger(stored)) return { ok: false, message: words.notWhole(label, kept) }
    if (stored < min) return { ok: false, message: words.tooSmall(label, reader.say(min, unit), kept) }
    if (stored > max) return { ok: false, message: words.tooLarge(label, reader.say(max, unit), kept) }
    return { ok: true, value: stored }
  }
}
