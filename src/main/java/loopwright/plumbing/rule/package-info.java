/**
 * What has to hold of a loop so that it fills, bleeds, drains and lasts.
 *
 * <p>Entry type: {@link loopwright.plumbing.rule.LoopRules}. Unit: hundredths of a millimetre.
 */
@NullMarked
package loopwright.plumbing.rule;

import org.jspecify.annotations.NullMarked;
