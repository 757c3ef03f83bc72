package loopwright.fit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.quantity.Dimension;
import loopwright.quantity.Known;

/**
 * The shapes that a brief's radiators and fans make, and which parts each stands for.
 *
 * @param all every shape, in the order of its text
 * @param radiators radiators by outline text
 * @param fans fans by size and thickness, {@code 120/2500}
 */
public record Shapes(List<Shape> all, Map<String, List<Radiator>> radiators, Map<String, List<Fan>> fans) {

    /** Groups parts by their dimensions and combines outlines with fans, arrangements and port ends. */
    public static Shapes of(List<Radiator> radiators, List<Fan> fans) {
        SortedMap<String, List<Radiator>> byOutline = new TreeMap<>();
        for (Radiator radiator : radiators) {
            byOutline
                    .computeIfAbsent(RadiatorOutline.of(radiator).text(), t -> new ArrayList<>())
                    .add(radiator);
        }
        SortedMap<String, List<Fan>> byFrame = new TreeMap<>();
        for (Fan fan : fans) {
            byFrame.computeIfAbsent(frameKey(fan.frame().sizeMm(), fan.frame().thicknessMm()), t -> new ArrayList<>())
                    .add(fan);
        }
        List<Shape> shapes = new ArrayList<>();
        byOutline.replaceAll((text, group) -> knownFirst(group));
        for (List<Radiator> group : byOutline.values()) {
            RadiatorOutline outline = group.stream()
                    .map(RadiatorOutline::of)
                    .reduce(RadiatorOutline::looser)
                    .orElseThrow();
            for (List<Fan> frame : byFrame.values()) {
                if (frame.get(0).frame().sizeMm() == outline.pattern().sizeMm()) {
                    addTurned(shapes, outline, thickness(frame));
                }
            }
        }
        shapes.sort(null);
        return new Shapes(List.copyOf(shapes), byOutline, byFrame);
    }

    /** A zero may be known or not: where one of the group is known, only the known ones stand for the shape. */
    private static List<Radiator> knownFirst(List<Radiator> group) {
        List<Radiator> known =
                group.stream().filter(r -> RadiatorOutline.of(r).isKnown()).toList();
        return known.isEmpty() ? group : known;
    }

    /** These shapes, and a bare row of fans for each pattern and each fan that suits it. */
    Shapes withFanRows(Collection<Pattern> patterns) {
        List<Shape> out = new ArrayList<>(all);
        for (Pattern pattern : new TreeSet<>(patterns)) {
            RadiatorOutline none = new RadiatorOutline(pattern, NOTHING, NOTHING, NOTHING, NOTHING, List.of());
            for (List<Fan> frame : fans.values()) {
                if (frame.get(0).frame().sizeMm() == pattern.sizeMm()) {
                    out.add(new Shape(none, thickness(frame), Arrangement.FANS_ONLY, PortEnd.LOW));
                }
            }
        }
        return new Shapes(List.copyOf(out), radiators, fans);
    }

    /** What a radiator that is not there measures. */
    private static final Dimension NOTHING = new Dimension(0, 0, Known.DATASHEET);

    private static void addTurned(List<Shape> shapes, RadiatorOutline outline, Dimension fanThickness) {
        for (Arrangement arrangement : Arrangement.OF_RADIATORS) {
            for (PortEnd end : PortEnd.values()) {
                shapes.add(new Shape(outline, fanThickness, arrangement, end));
            }
        }
    }

    /** The thickness of fans that are equally thick, off by what the worst of them is. */
    private static Dimension thickness(List<Fan> fans) {
        return fans.stream()
                .map(f -> f.frame().thicknessMm())
                .reduce(RadiatorOutline::looser)
                .orElseThrow();
    }

    private static String frameKey(int sizeMm, Dimension thickness) {
        return sizeMm + "/" + thickness.valueHmm();
    }

    /** The radiators that a shape stands for, in order of id. */
    public List<Radiator> radiatorsOf(Shape shape) {
        return radiators.getOrDefault(shape.outline().text(), List.of());
    }

    /** The fans that a shape stands for, in order of id. */
    public List<Fan> fansOf(Shape shape) {
        return fans.getOrDefault(frameKey(shape.pattern().sizeMm(), shape.fanThickness()), List.of());
    }
}
