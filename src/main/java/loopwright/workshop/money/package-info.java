/** What a build costs the client, what is ordered when. Entry types: {@link loopwright.workshop.money.Quote}, {@link loopwright.workshop.money.OrderList}. Unit: whole cents, minutes. */
@NullMarked
package loopwright.workshop.money;

import org.jspecify.annotations.NullMarked;
