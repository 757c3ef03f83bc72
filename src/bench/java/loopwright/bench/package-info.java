/** Benchmarks: how many builds a second the model solves. Not part of the program. Entry type: {@link LoopBenchmark}. */
@NullMarked
package loopwright.bench;

import org.jspecify.annotations.NullMarked;
