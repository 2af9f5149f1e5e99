/** The part of jstat that is used; it brings no types of its own. */
declare module "jstat" {
  type OneParameter = {
    cdf(x: number, degrees: number): number;
    inv(p: number, degrees: number): number;
  };
  export const jStat: {
    readonly studentt: OneParameter;
    readonly chisquare: OneParameter;
    readonly centralF: { inv(p: number, upper: number, lower: number): number };
    readonly normal: {
      cdf(x: number, mean: number, sd: number): number;
      inv(p: number, mean: number, sd: number): number;
    };
  };
}
