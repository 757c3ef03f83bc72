/**
 * What coolant touches and whether it bears it: metals, plating, seals, tube and what is in the coolant.
 *
 * <p>Entry types: {@link loopwright.loop.material.LoopMaterials} (what one loop is made of) and
 * {@link loopwright.loop.material.MaterialRules} (what is said of it). Temperatures in °C, lengths in millimetres.
 */
@NullMarked
package loopwright.loop.material;

import org.jspecify.annotations.NullMarked;
