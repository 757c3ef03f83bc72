package loopwright.answer.measure;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.part.Part;
import loopwright.fit.FitCase;
import loopwright.fit.Layout;
import loopwright.fit.Layout.Stack;
import loopwright.fit.Shapes;
import loopwright.quantity.Dimension;

/** What there is to measure behind the names of dimensions in the sums of a layout. */
final class MeasuredNames {

    private static final String RADIATOR = "radiator.";
    private static final String FANS = "fans";

    private final Shapes shapes;

    MeasuredNames(FitCase fitCase) {
        this.shapes = fitCase.shapes();
    }

    /**
     * The length behind a name: {@code ID.PATH}, {@code MOUNT:radiator.PATH}, {@code MOUNT:fans.PATH} (or {@code fans-1},
     * {@code fans-2}), or {@code drive-1:ID.PATH}. Nothing for what is no length of the catalogue.
     */
    Optional<Measurable> of(Layout layout, String name, Dimension now) {
        int colon = name.indexOf(':');
        String rest = name.substring(colon + 1);
        Optional<Stack> stack = layout.stacks().stream()
                .filter(s -> colon > 0 && s.frame().mount().id().equals(name.substring(0, colon)))
                .findFirst();
        int dot = rest.indexOf('.');
        if (dot < 0) {
            return Optional.empty();
        }
        String path = rest.substring(dot + 1);
        if (stack.isPresent() && rest.startsWith(RADIATOR)) {
            return Optional.of(new Measurable(ids(shapes.radiatorsOf(stack.get().shape())), path, now));
        }
        if (stack.isPresent() && rest.startsWith(FANS)) {
            return Optional.of(new Measurable(ids(shapes.fansOf(stack.get().shape())), path, now));
        }
        return Optional.of(new Measurable(List.of(rest.substring(0, dot)), path, now));
    }

    private static List<String> ids(List<? extends Part> parts) {
        return parts.stream().map(Part::id).sorted().toList();
    }
}
