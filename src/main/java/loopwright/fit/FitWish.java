package loopwright.fit;

import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * How the question is narrowed, and when to stop.
 *
 * @param with mods that are done in any case
 * @param without mods that are not done
 * @param layoutLimit stop after so many layouts
 * @param timeLimitMs stop after so many milliseconds
 */
public record FitWish(List<String> with, List<String> without, OptionalInt layoutLimit, OptionalLong timeLimitMs) {

    /** Everything, to the end. */
    public static final FitWish ALL = new FitWish(List.of(), List.of(), OptionalInt.empty(), OptionalLong.empty());

    /** Copies. */
    public FitWish {
        with = List.copyOf(with);
        without = List.copyOf(without);
    }
}
