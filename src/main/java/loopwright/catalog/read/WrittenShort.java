package loopwright.catalog.read;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Span;
import loopwright.catalog.read.Node.ListNode;
import loopwright.catalog.read.Node.MapNode;
import loopwright.catalog.read.Node.Scalar;
import loopwright.quantity.Dimension;
import loopwright.quantity.Distribution;
import loopwright.quantity.Hundredths;
import loopwright.quantity.Known;

/** Records that files write in a shorter way than field by field: dimensions, spans and patterns. */
final class WrittenShort {

    /** How far a dimension may be off, mm. */
    private static final Range PLUS_MINUS = new Range(0, 50, "");

    private static final Set<Class<?>> KINDS = Set.of(Dimension.class, Span.class, Pattern.class);

    private static final Set<String> KNOWN = Set.of("measured", "datasheet", "assumed");

    private final Notes notes;

    WrittenShort(Notes notes) {
        this.notes = notes;
    }

    /** The records written short. */
    static Set<Class<?>> kinds() {
        return KINDS;
    }

    Optional<Object> value(Slot slot, Node node, String path) {
        if (slot.raw() == Dimension.class) {
            return dimension(slot.range(), node, path).map(d -> d);
        }
        return slot.raw() == Span.class ? span(node, path) : pattern(node, path);
    }

    private Optional<Dimension> dimension(Range range, Node node, String path) {
        if (node instanceof Scalar s && s.kind() == Scalar.Kind.TEXT && s.text().equals("unknown")) {
            return Optional.of(Dimension.UNKNOWN);
        }
        if (node instanceof MapNode map) {
            return measured(range, map, path);
        }
        return hundredths(range, node, path).map(Dimension::ofHmm);
    }

    private Optional<Integer> hundredths(Range range, Node node, String path) {
        Optional<BigDecimal> mm = new Numbers(notes).number(range, node, path, "a number of mm, or unknown");
        if (mm.isEmpty()) {
            return Optional.empty();
        }
        if (mm.get().stripTrailingZeros().scale() > 2) {
            return notes.wrong(node, path, mm.get().toPlainString(), "at most two decimals", "");
        }
        return Optional.of(Hundredths.ofMm(mm.get()));
    }

    private Optional<Dimension> measured(Range range, MapNode map, String path) {
        List<String> fields = List.of("value_mm", "plus_minus_mm", "known", "distribution");
        boolean fieldsKnown = true;
        for (var entry : map.entries().entrySet()) {
            if (!fields.contains(entry.getKey())) {
                notes.add(
                        entry.getValue().keyAt(),
                        Notes.join(path, entry.getKey()),
                        "an unknown field",
                        String.join(", ", fields),
                        Nearest.hint(entry.getKey(), fields));
                fieldsKnown = false;
            }
        }
        Optional<Integer> hmm = map.find("value_mm")
                .map(n -> hundredths(range, n, Notes.join(path, "value_mm")))
                .orElseGet(() -> notes.wrong(
                        map, Notes.join(path, "value_mm"), "nothing", "a number of mm", "The field is missing."));
        Optional<Integer> plusMinus = map.find("plus_minus_mm")
                .map(n -> hundredths(PLUS_MINUS, n, Notes.join(path, "plus_minus_mm")))
                .orElse(Optional.of(Dimension.DEFAULT_PLUS_MINUS_HMM));
        Optional<Known> known =
                map.find("known").map(n -> known(n, Notes.join(path, "known"))).orElse(Optional.of(Known.DATASHEET));
        Optional<Distribution> spread = map.find("distribution")
                .map(n -> distribution(n, Notes.join(path, "distribution")))
                .orElse(Optional.of(Distribution.NORMAL));
        if (!fieldsKnown || hmm.isEmpty() || plusMinus.isEmpty() || known.isEmpty() || spread.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Dimension(hmm.get(), plusMinus.get(), known.get(), spread.get()));
    }

    private Optional<Distribution> distribution(Node node, String path) {
        List<String> choices = Allowed.choices(Distribution.class);
        if (node instanceof Scalar s && s.kind() == Scalar.Kind.TEXT && choices.contains(s.text())) {
            return Optional.of(Distribution.valueOf(s.text().toUpperCase(Locale.ROOT)));
        }
        return notes.wrong(node, path, node.words(), String.join(", ", choices), "");
    }

    private Optional<Known> known(Node node, String path) {
        if (node instanceof Scalar s && s.kind() == Scalar.Kind.TEXT && KNOWN.contains(s.text())) {
            return Optional.of(Known.valueOf(s.text().toUpperCase(Locale.ROOT)));
        }
        return notes.wrong(node, path, node.words(), "measured, datasheet, assumed", "");
    }

    private Optional<Object> span(Node node, String path) {
        if (!(node instanceof ListNode list) || list.items().size() != 2) {
            return notes.wrong(node, path, node.words(), "a span [from, to]", "");
        }
        List<Slot> ends = Slot.allOf(Span.class);
        Optional<Dimension> from = dimension(ends.get(0).range(), list.items().get(0), path + "[0]");
        Optional<Dimension> to = dimension(ends.get(1).range(), list.items().get(1), path + "[1]");
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Span(from.get(), to.get()));
        } catch (IllegalArgumentException e) {
            return notes.wrong(
                    node,
                    path,
                    "[" + Hundredths.text(from.get().valueHmm()) + ", "
                            + Hundredths.text(to.get().valueHmm()) + "]",
                    "a span that does not run backwards",
                    "");
        }
    }

    private Optional<Object> pattern(Node node, String path) {
        String allowed = "a pattern like 2x140";
        if (!(node instanceof Scalar s) || s.kind() != Scalar.Kind.TEXT) {
            return notes.wrong(node, path, node.words(), allowed, "");
        }
        try {
            return Optional.of(Pattern.parse(s.text()));
        } catch (IllegalArgumentException e) {
            return notes.wrong(
                    node,
                    path,
                    node.words(),
                    allowed,
                    "1 to 5 fans of one of the sizes "
                            + Pattern.SIZES_MM.toString().replaceAll("[\\[\\]]", "") + ".");
        }
    }
}
