// The licences of the packages that end up inside dist/cli.cjs: MIT, ISC and BSD ask that their text goes along.
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

const packageOf = (input) => /^(?:.*\/)?node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(input)?.[1];

const licenceText = (folder) => {
  const file = readdirSync(folder).find((name) => /^(licen[cs]e|copying)(\.(md|txt))?$/i.test(name));
  return file === undefined ? '' : readFileSync(join(folder, file), 'utf8').trim();
};

/** One section a package, in order of name: name, version, licence and its text. */
export const thirdPartyLicences = (root, inputs) => {
  const names = [...new Set(inputs.map(packageOf))].filter((name) => name !== undefined).sort();
  return names.map((name) => {
    const folder = join(root, 'node_modules', name);
    if (!existsSync(folder)) throw new Error(`bundled package ${name} is not in node_modules`);
    const { version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    return `${name} ${version} (${license})\n\n${licenceText(folder)}\n`;
  }).join(`\n${'-'.repeat(80)}\n\n`);
};
