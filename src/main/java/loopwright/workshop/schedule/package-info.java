/** When the work is done: one pair of hands, waits through nights, parts that arrive. Entry type: {@link loopwright.workshop.schedule.Schedule}. Unit: working time in steps of five minutes, waits in minutes. */
@NullMarked
package loopwright.workshop.schedule;

import org.jspecify.annotations.NullMarked;
