/** A chassis as its file says it: shell, inside, mounts and mods. Entry type: {@link loopwright.catalog.chassis.Chassis}. */
@NullMarked
package loopwright.catalog.chassis;

import org.jspecify.annotations.NullMarked;
