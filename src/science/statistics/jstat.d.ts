/** The part of the distribution library that this room uses; it ships no types of its own. */
declare module "jstat" {
  interface Distributions {
    readonly studentt: {
      cdf(x: number, degreesOfFreedom: number): number;
      inv(probability: number, degreesOfFreedom: number): number;
    };
    readonly normal: {
      cdf(x: number, mean: number, standardDeviation: number): number;
      inv(probability: number, mean: number, standardDeviation: number): number;
    };
    readonly beta: {
      cdf(x: number, alpha: number, beta: number): number;
      inv(probability: number, alpha: number, beta: number): number;
    };
    readonly centralF: { cdf(x: number, above: number, below: number): number };
    readonly noncentralt: { cdf(x: number, degreesOfFreedom: number, noncentrality: number): number };
    readonly chisquare: {
      cdf(x: number, degreesOfFreedom: number): number;
      inv(probability: number, degreesOfFreedom: number): number;
    };
  }
  const jStat: Distributions;
  export = jStat;
}
