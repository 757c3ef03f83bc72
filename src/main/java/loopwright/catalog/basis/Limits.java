package loopwright.catalog.basis;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The range a number in a file may have, in the unit its field name ends in; outside it is an error.
 *
 * <p>Without it, the reader applies the range of the unit (see {@code UnitLimits}).
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Limits {
    /** Smallest value allowed. */
    double min();

    /** Largest value allowed. */
    double max();
}
