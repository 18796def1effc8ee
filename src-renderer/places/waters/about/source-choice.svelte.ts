/**
 * Which kind of source is looked at. A source is only kept once it says something (a station, a first number), so
 * until then the choice stands here alone.
 */
export class SourceChoice<S extends { readonly source: string }> {
  #looking = $state<S['source'] | 'none'>()

  constructor(
    private readonly kept: () => S | undefined,
    private readonly keep: (source: undefined) => void,
  ) {}

  value = $derived.by((): S['source'] | 'none' => this.#looking ?? this.kept()?.source ?? 'none')

  choose(next: S['source'] | 'none'): void {
    this.#looking = next
    if (next === 'none' && this.kept()) this.keep(undefined)
  }
}
