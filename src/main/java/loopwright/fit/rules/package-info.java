/**
 * Each constraint of a build as one small class that can state itself.
 *
 * <p>A {@link loopwright.fit.rules.PartRule} is about parts, a {@link loopwright.fit.rules.ModRule} about mods. Rules
 * see no solver type; the models in {@code loopwright.fit} post them by kind. Watts are whole milliwatts here.
 */
@NullMarked
package loopwright.fit.rules;

import org.jspecify.annotations.NullMarked;
