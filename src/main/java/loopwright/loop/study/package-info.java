/**
 * Questions over several solves of one machine: how it warms up, how quiet it can run, what changes its temperature.
 *
 * <p>Entry types: {@link loopwright.loop.study.WarmUp}, {@link loopwright.loop.study.Speeds},
 * {@link loopwright.loop.study.Sensitivities}. Units are in the names: °C, K, s, W/K, dB(A) at 1 m, duties in whole percent.
 */
@NullMarked
package loopwright.loop.study;

import org.jspecify.annotations.NullMarked;
