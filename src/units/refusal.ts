/** Why a text is not what was asked for: `message` says what is wrong, `allowed` what would do, `nearest` the likeliest meaning. */
export interface Refusal {
  readonly message: string;
  readonly allowed: string;
  readonly nearest?: string;
}

/** What a reader of text gives back: the value, or why there is none. */
export type Reading = { readonly value: number } | { readonly refusal: Refusal };
