import { registered, type AnyJigKind } from './jig.js';
import { saddleCope } from './saddle-cope/index.js';

/** Every kind of jig by the name that a spec gives it: a new kind is one folder and one line here. */
export const kinds: Readonly<Record<string, AnyJigKind>> = Object.fromEntries([
  registered(saddleCope),
].map((kind) => [kind.kind, kind]));
