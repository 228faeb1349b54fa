/** Put in by the build, from package.json. */
declare const versionAtBuild: string;

/** The version in package.json. */
export const programVersion: string = versionAtBuild;
