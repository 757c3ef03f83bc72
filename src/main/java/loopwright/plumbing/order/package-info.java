/**
 * The order of the loop's parts, and which port is in and which is out.
 *
 * <p>Entry type: {@link loopwright.plumbing.order.OrderSearch}. Costs are hundredths of a millimetre of tube.
 */
@NullMarked
package loopwright.plumbing.order;

import org.jspecify.annotations.NullMarked;
