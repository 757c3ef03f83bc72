/** Facts of the trade as check values, each on a small case of its own made from rule and dimensions. */
@org.jspecify.annotations.NullMarked
package loopwright.trade;
