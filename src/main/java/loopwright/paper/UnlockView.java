package loopwright.paper;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Which part of what mods unlock is shown.
 *
 * @param cuts what fits with at most so many cuts
 * @param layout every way to have the layout with this key
 */
public record UnlockView(OptionalInt cuts, Optional<String> layout) {}
