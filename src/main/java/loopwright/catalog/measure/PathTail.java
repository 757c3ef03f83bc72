package loopwright.catalog.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import loopwright.catalog.read.Nearest;

/**
 * The end of a path as people type it: any number of its last steps, with or without {@code _mm}.
 *
 * @param steps without {@code _mm}
 */
record PathTail(List<String> steps) {

    private static final String UNIT = "_mm";

    /** The tail that a text means. */
    static PathTail of(String typed) {
        return new PathTail(
                Arrays.stream(typed.split("\\.", -1)).map(PathTail::withoutUnit).toList());
    }

    private static String withoutUnit(String step) {
        return step.endsWith(UNIT) ? step.substring(0, step.length() - UNIT.length()) : step;
    }

    /** The lengths that it can mean: the one whose whole path it is, else all whose paths end so. */
    List<Length> matching(List<Length> lengths) {
        List<Length> ending =
                lengths.stream().filter(l -> isEndOf(of(l.path()))).toList();
        return ending.stream()
                .filter(l -> of(l.path()).equals(this))
                .findFirst()
                .map(List::of)
                .orElse(ending);
    }

    private boolean isEndOf(PathTail path) {
        int less = path.steps.size() - steps.size();
        return less >= 0 && path.steps.subList(less, path.steps.size()).equals(steps);
    }

    /** A hint at the nearest end of any of some paths; empty if none is near. */
    static String hint(String typed, List<String> paths) {
        Set<String> ends = new TreeSet<>();
        for (String path : paths) {
            List<String> steps = of(path).steps;
            for (int from = 0; from < steps.size(); from++) {
                ends.add(String.join(".", steps.subList(from, steps.size())));
            }
        }
        return Nearest.hint(of(typed).steps.stream().collect(Collectors.joining(".")), new ArrayList<>(ends));
    }
}
