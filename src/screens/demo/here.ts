/**
 * What of the example farm is here: nothing, all of it, a part that was cut short and can be gone on with, or
 * what stayed behind when it was taken away.
 */
export type DemoHere = "none" | "whole" | "part" | "rest";
