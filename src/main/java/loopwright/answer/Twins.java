package loopwright.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import loopwright.answer.Flips.Hung;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Part;
import loopwright.fit.FitCase;
import loopwright.fit.Layout;
import loopwright.fit.Shape;

/**
 * Which shapes of one case are the shapes of another whose parts have other dimensions: they are made of the same parts.
 *
 * <p>Parts that are alike in one case need not be in the other, so a shape can have several twins, each for some of its
 * parts.
 */
final class Twins {

    private final Map<String, Shape> there = new TreeMap<>();
    private final FitCase here;
    private final Map<String, String> outlineThere = new TreeMap<>();
    private final Map<String, Integer> thicknessThere = new TreeMap<>();
    private final Map<Shape, List<Twin>> known = new TreeMap<>();

    /** Twins of one case's shapes in another. */
    Twins(FitCase here, FitCase other) {
        this.here = here;
        other.shapes().all().forEach(s -> there.put(s.text(), s));
        other.shapes().radiators().forEach((text, group) -> group.forEach(r -> outlineThere.put(r.id(), text)));
        other.shapes()
                .fans()
                .values()
                .forEach(group -> group.forEach(
                        f -> thicknessThere.put(f.id(), f.frame().thicknessMm().valueHmm())));
    }

    /**
     * A shape of the other case.
     *
     * @param radiators the parts for which it is the twin, where it is not for all; else empty
     */
    record Twin(Shape shape, List<String> radiators) {}

    /**
     * A layout of the other case, by its text.
     *
     * @param shapes stack by stack
     * @param only those radiators for which it is the twin, where it is not for all that are alike
     */
    record TwinLayout(List<Shape> shapes, List<Hung> only) {

        /** The layout's text there. */
        String text(Layout here) {
            List<String> out = new ArrayList<>();
            for (int i = 0; i < shapes.size(); i++) {
                out.add(here.stacks().get(i).frame().mount().id() + ":"
                        + shapes.get(i).text());
            }
            return String.join(" | ", out);
        }
    }

    /** The twins of a layout: every combination of its stacks' twins. */
    List<TwinLayout> of(Layout layout) {
        List<TwinLayout> out = List.of(new TwinLayout(List.of(), List.of()));
        for (Layout.Stack stack : layout.stacks()) {
            List<TwinLayout> longer = new ArrayList<>();
            for (TwinLayout before : out) {
                for (Twin twin : known.computeIfAbsent(stack.shape(), this::twins)) {
                    longer.add(new TwinLayout(
                            plus(before.shapes(), List.of(twin.shape())),
                            twin.radiators().isEmpty()
                                    ? before.only()
                                    : plus(
                                            before.only(),
                                            List.of(new Hung(
                                                    stack.frame().mount().id(), twin.radiators())))));
                }
            }
            out = longer;
        }
        return out;
    }

    private List<Twin> twins(Shape shape) {
        Map<String, List<String>> outlines =
                grouped(here.shapes().radiatorsOf(shape), r -> outlineThere.getOrDefault(r.id(), ""));
        Map<String, List<String>> fans = grouped(here.shapes().fansOf(shape), this::thicknessOf);
        List<Twin> out = new ArrayList<>();
        outlines.forEach((outline, radiators) -> fans.keySet().forEach(thickness -> {
            String text = outline + "/" + thickness + "/" + shape.arrangement() + "/" + shape.portEnd();
            if (there.containsKey(text)) {
                out.add(new Twin(
                        Objects.requireNonNull(there.get(text)), outlines.size() == 1 ? List.of() : radiators));
            }
        }));
        return List.copyOf(out);
    }

    private String thicknessOf(Fan fan) {
        return String.valueOf(thicknessThere.getOrDefault(fan.id(), -1));
    }

    private static <P extends Part> Map<String, List<String>> grouped(List<P> parts, Function<P, String> by) {
        Map<String, List<String>> out = new LinkedHashMap<>();
        parts.forEach(
                p -> out.computeIfAbsent(by.apply(p), k -> new ArrayList<>()).add(p.id()));
        return out;
    }

    private static <T> List<T> plus(List<T> list, List<T> more) {
        List<T> out = new ArrayList<>(list);
        out.addAll(more);
        return List.copyOf(out);
    }
}
