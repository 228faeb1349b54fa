import Module, { type Manifold } from 'manifold-3d';

type Vector = readonly [number, number, number];

const wasm = await Module();
wasm.setup();

/** The mesh library's solids; it shares nothing with the code under test. Its vertices are kept in single precision. */
export const solids = wasm.Manifold;

const unit = (v: Vector): Vector => {
  const length = Math.hypot(...v);
  return [v[0] / length, v[1] / length, v[2] / length];
};

const across = (a: Vector): Vector => {
  const least = [0, 1, 2].reduce((i, j) => (Math.abs(a[j]!) < Math.abs(a[i]!) ? j : i));
  const e = [0, 1, 2].map((i) => (i === least ? 1 : 0)) as unknown as Vector;
  return unit([a[1] * e[2] - a[2] * e[1], a[2] * e[0] - a[0] * e[2], a[0] * e[1] - a[1] * e[0]]);
};

/**
 * A cylinder about the line through `at` along `axis`, from `from` to `to` along it, as an inscribed prism of `facets`
 * sides: its surface lies inside the true one by up to radius·(1 − cos(π/facets)).
 */
export const cylinderSolid = (options: {
  readonly at: Vector; readonly axis: Vector; readonly from: number; readonly to: number; readonly radius: number; readonly facets: number;
}): Manifold => {
  const { at, from, to, radius, facets } = options;
  const w = unit(options.axis);
  const u = across(w);
  const v: Vector = [w[1] * u[2] - w[2] * u[1], w[2] * u[0] - w[0] * u[2], w[0] * u[1] - w[1] * u[0]];
  const base = [0, 1, 2].map((i) => at[i]! + from * w[i]!);
  return solids.cylinder(to - from, radius, radius, facets)
    .transform([...u, 0, ...v, 0, ...w, 0, ...(base as [number, number, number]), 1]);
};

/** How far a prism of `facets` sides lies inside its cylinder, at most. */
export const sagitta = (radius: number, facets: number): number => radius * (1 - Math.cos(Math.PI / facets));

/** The vertices of a solid. */
export const vertices = (solid: Manifold): Vector[] => {
  const { vertProperties, numProp } = solid.getMesh();
  return Array.from({ length: vertProperties.length / numProp }, (_, i) =>
    [vertProperties[i * numProp]!, vertProperties[i * numProp + 1]!, vertProperties[i * numProp + 2]!]);
};
