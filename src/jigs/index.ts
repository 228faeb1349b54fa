import type { JigKind } from './jig.js';
import { saddleCope } from './saddle-cope/index.js';

/** Every kind of jig by name: a new kind is one folder and one line here. */
export const jigKinds = {
  'saddle-cope': saddleCope,
} as const satisfies Record<string, JigKind<never, never>>;
