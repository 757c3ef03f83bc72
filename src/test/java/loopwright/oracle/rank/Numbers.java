package loopwright.oracle.rank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Gives equal things the same small number, so that keys made of them are short. */
final class Numbers<T> {
    private final Map<T, Integer> known = new HashMap<>();
    private final List<T> things = new ArrayList<>();

    int of(T thing) {
        Integer number = known.get(thing);
        if (number == null) {
            number = things.size();
            known.put(thing, number);
            things.add(thing);
        }
        return number;
    }

    T the(int number) {
        return things.get(number);
    }

    int count() {
        return things.size();
    }
}
