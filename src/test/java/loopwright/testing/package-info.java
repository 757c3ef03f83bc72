/** Builders that tests share: small whole cases made in code. */
@org.jspecify.annotations.NullMarked
package loopwright.testing;
