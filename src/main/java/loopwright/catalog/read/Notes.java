package loopwright.catalog.read;

import java.util.Optional;

/** Notes problems about one item while it is bound. */
final class Notes {

    private final Subject subject;
    private final Problems problems;

    Notes(Subject subject, Problems problems) {
        this.subject = subject;
        this.problems = problems;
    }

    void add(Place at, String path, String found, String allowed, String hint) {
        problems.add(subject.problem(at, path, found, allowed, hint));
    }

    /** Notes that a value is wrong, and is the absence of it. */
    <T> Optional<T> wrong(Node node, String path, String found, String allowed, String hint) {
        add(node.at(), path, found, allowed, hint);
        return Optional.empty();
    }

    /** The path of a field inside another. */
    static String join(String path, String field) {
        return path.isEmpty() ? field : path + "." + field;
    }
}
