// The package's main file is CommonJS without readable named exports; its ES module is the same code, typed the same.
declare module 'opentype.js/dist/opentype.mjs' {
  export * from 'opentype.js';
}
