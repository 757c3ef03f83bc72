package loopwright.answer;

import java.util.List;
import java.util.Optional;
import loopwright.fit.Layout;

/**
 * Which of the layouts that fit are shown.
 *
 * @param mounts only those with a stack on each of these
 * @param key only the one with this key
 */
public record FitView(List<String> mounts, Optional<String> key) {

    /** All of them. */
    public static final FitView ALL = new FitView(List.of(), Optional.empty());

    /** Copies. */
    public FitView {
        mounts = List.copyOf(mounts);
    }

    /** Whether a layout is shown. */
    boolean shows(Layout layout) {
        return key.map(k -> k.equals(layout.key())).orElse(true)
                && mounts.stream()
                        .allMatch(m -> layout.stacks().stream()
                                .anyMatch(s -> s.frame().mount().id().equals(m)));
    }
}
