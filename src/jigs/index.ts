import { drillGuide } from './drill-guide/index.js';
import { registered, type AnyJigKind } from './jig.js';
import { rackTop } from './rack-top/index.js';
import { saddleCope } from './saddle-cope/index.js';
import { vCradle } from './v-cradle/index.js';

/** Every kind of jig by the name that a spec gives it: a new kind is one folder and one line here. */
export const kinds: Readonly<Record<string, AnyJigKind>> = Object.fromEntries([
  registered(saddleCope), registered(vCradle), registered(drillGuide), registered(rackTop),
].map((kind) => [kind.kind, kind]));
