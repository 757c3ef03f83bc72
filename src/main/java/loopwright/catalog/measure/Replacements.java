package loopwright.catalog.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import loopwright.catalog.read.ChoiceName;
import loopwright.catalog.read.FileKind;
import loopwright.catalog.read.Node;
import loopwright.catalog.read.Node.Entry;
import loopwright.catalog.read.Node.ListNode;
import loopwright.catalog.read.Node.MapNode;
import loopwright.catalog.read.Node.Scalar;
import loopwright.catalog.read.Place;
import loopwright.catalog.read.Problem;
import loopwright.catalog.read.TreeEdit;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;

/**
 * Lengths that take other values than the catalogue's, put into the tree of a file before it is bound: so everything
 * that is checked of a catalogue is checked of them too.
 *
 * @param all in the order in which they are made; a later one of the same length holds
 */
public record Replacements(List<Replacement> all) implements TreeEdit {

    /** Nothing is replaced. */
    public static final Replacements NONE = new Replacements(List.of());

    /** Most replacements that a message names. */
    private static final int NAMED_MAX = 3;

    /** Copies. */
    public Replacements {
        all = List.copyOf(all);
    }

    @Override
    public MapNode edited(FileKind kind, String id, MapNode item) {
        String name = kind.isList() ? id : kind.word();
        Node out = item;
        for (Replacement one : all) {
            if (one.id().equals(name)) {
                out = replaced(out, List.of(one.path().split("\\.")), one.to());
            }
        }
        return out instanceof MapNode map ? map : item;
    }

    /** The tree with the value at the end of some steps replaced; what does not lead anywhere changes nothing. */
    private static Node replaced(Node node, List<String> steps, Dimension to) {
        if (steps.isEmpty()) {
            return written(to, node.at());
        }
        String step = steps.get(0);
        List<String> rest = steps.subList(1, steps.size());
        if (node instanceof MapNode map && map.find(step).isPresent()) {
            Map<String, Entry> entries = new LinkedHashMap<>(map.entries());
            entries.computeIfPresent(step, (s, e) -> new Entry(e.keyAt(), replaced(e.value(), rest, to)));
            return new MapNode(map.at(), entries);
        }
        if (node instanceof ListNode list) {
            List<Node> items = new ArrayList<>(list.items());
            int index = index(items, step);
            if (index >= 0) {
                items.set(index, replaced(items.get(index), rest, to));
                return new ListNode(list.at(), items);
            }
        }
        return node;
    }

    /** Which element of a list a step means: that of this id, that number from 1, or an end of a span; −1 if none. */
    private static int index(List<Node> items, String step) {
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i) instanceof MapNode map
                    && map.findText("id").filter(step::equals).isPresent()) {
                return i;
            }
        }
        if (step.equals("from") || step.equals("to")) {
            return step.equals("from") ? 0 : items.size() - 1;
        }
        int number = step.matches("[1-9]\\d{0,5}") ? Integer.parseInt(step) : 0;
        return number <= items.size() ? number - 1 : -1;
    }

    /** A dimension in its long form, standing where the catalogue's value stands. */
    private static MapNode written(Dimension to, Place at) {
        Map<String, Entry> entries = new LinkedHashMap<>();
        entries.put("value_mm", new Entry(at, number(to.valueHmm(), at)));
        entries.put("plus_minus_mm", new Entry(at, number(to.plusMinusHmm(), at)));
        entries.put(
                "known",
                new Entry(at, new Scalar(at, Scalar.Kind.TEXT, to.known().name().toLowerCase(Locale.ROOT))));
        entries.put("distribution", new Entry(at, new Scalar(at, Scalar.Kind.TEXT, ChoiceName.of(to.distribution()))));
        return new MapNode(at, entries);
    }

    private static Scalar number(int hmm, Place at) {
        BigDecimal mm = Hundredths.toMm(hmm).stripTrailingZeros();
        return new Scalar(at, Scalar.Kind.NUMBER, mm.toPlainString());
    }

    /** Everything by value, in the order of the addresses: what a catalogue's version is a digest of. */
    public String text() {
        SortedMap<String, String> out = new TreeMap<>();
        for (Replacement one : all) {
            Dimension to = one.to();
            out.put(
                    one.address(),
                    to.valueHmm() + " " + to.plusMinusHmm() + " " + to.known() + " " + to.distribution());
        }
        return out.entrySet().stream()
                .map(e -> e.getKey() + "=" + e.getValue() + "\n")
                .collect(Collectors.joining());
    }

    /** A problem of a catalogue that is right without these: its hint says what replaced the values. */
    public Problem told(Problem problem) {
        List<Replacement> ofItem = all.stream()
                .filter(r ->
                        problem.subject().equals(r.id()) || problem.subject().endsWith("\"" + r.id() + "\""))
                .toList();
        List<Replacement> named = ofItem.isEmpty() ? all : ofItem;
        String by = named.stream()
                .limit(NAMED_MAX)
                .map(r -> r.by() + ": " + r.text())
                .collect(Collectors.joining("; "));
        String more = named.size() > NAMED_MAX ? "; and " + (named.size() - NAMED_MAX) + " more" : "";
        String hint = (problem.hint().isEmpty() ? "" : problem.hint() + " ") + "As overridden by " + by + more + ".";
        return new Problem(
                problem.file(),
                problem.line(),
                problem.column(),
                problem.subject(),
                problem.field(),
                problem.found(),
                problem.allowed(),
                hint);
    }
}
