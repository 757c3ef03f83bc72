package loopwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** A value that is made when it is first asked for, and kept. For one thread. */
public final class Once {

    private Once() {}

    /** The value of a maker, made once. */
    public static <T> Supplier<T> of(Supplier<T> maker) {
        List<T> made = new ArrayList<>();
        return () -> {
            if (made.isEmpty()) {
                made.add(maker.get());
            }
            return made.get(0);
        };
    }
}
