/**
 * How long the engine takes. Benchmarks, not tests: run them by hand and write the figures into
 * docs/performance.md with the processor's name.
 */
package tankyard.bench;
