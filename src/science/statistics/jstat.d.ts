/** The part of the distribution library that this room uses; it ships no types of its own. */
declare module "jstat" {
  interface Distributions {
    readonly studentt: {
      cdf(x: number, degreesOfFreedom: number): number;
      inv(probability: number, degreesOfFreedom: number): number;
    };
    readonly normal: { inv(probability: number, mean: number, standardDeviation: number): number };
    readonly beta: { inv(probability: number, alpha: number, beta: number): number };
    readonly chisquare: { inv(probability: number, degreesOfFreedom: number): number };
  }
  const jStat: Distributions;
  export = jStat;
}
