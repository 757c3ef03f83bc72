package loopwright.catalog.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loopwright.catalog.read.Nearest;
import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;
import loopwright.quantity.Known;

/**
 * One what-if: {@code WHAT.FIELD=VALUE}, like {@code card.length=+3mm} or {@code short-tower.shell.interior.height=433mm}.
 *
 * <p>WHAT is an item's id, or a word for all items of a kind. FIELD is the whole path of a length, or any end of it that
 * can mean only one length of an item, with or without {@code _mm}. A value with a sign is more or less than it was, one
 * without is the value itself. The ± stays what it was.
 *
 * @param text as typed
 * @param relative whether the value is a difference
 */
record Assumption(String text, String what, String field, boolean relative, int valueHmm) {

    private static final Pattern FORM = Pattern.compile("([^.=]+)\\.([^=]+)=(.*)");
    private static final Pattern VALUE = Pattern.compile("([+-]?)((?:0|[1-9]\\d{0,4})(?:\\.\\d{1,2})?) ?mm");

    /** Most lengths that a message names. */
    private static final int NAMED_MAX = 6;

    /**
     * The assumption that a text writes.
     *
     * @throws NotUnderstood if it writes none
     */
    static Assumption of(String text) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            throw trouble(text, "an assumption reads like card.length=+3mm or gpu-a.body.length_mm=305mm");
        }
        String typed = form.group(3);
        Matcher value = VALUE.matcher(typed);
        if (!value.matches()) {
            throw trouble(
                    text,
                    "\"" + typed + "\" is no length: write +3mm (longer), -0.5mm (shorter) or 305mm (exactly), with at"
                            + " most two decimals");
        }
        int size = Hundredths.ofMm(new BigDecimal(value.group(2)));
        boolean less = value.group(1).equals("-");
        return new Assumption(
                text, form.group(1), form.group(2), !value.group(1).isEmpty(), less ? -size : size);
    }

    /**
     * What it replaces.
     *
     * @throws NotUnderstood if it means nothing of the catalogue, or more than one thing
     */
    List<Replacement> replacements(Lengths lengths) {
        List<String> ids = ids(lengths);
        List<Length> meant = new ArrayList<>();
        for (String id : ids) {
            List<Length> can = PathTail.of(field).matching(lengths.of(id));
            if (can.size() > 1) {
                throw trouble(text, "\"" + field + "\" can mean " + named(can) + " of " + id + ": say more of it");
            }
            meant.addAll(can);
        }
        if (meant.isEmpty()) {
            throw trouble(text, "no length \"" + field + "\"" + hint(lengths, ids));
        }
        List<Length> known =
                meant.stream().filter(l -> !l.dimension().isUnknown()).toList();
        if (relative && known.isEmpty()) {
            throw trouble(
                    text,
                    meant.get(0).address() + " is unknown: it can only be assumed to be so much, like 30mm, not more or"
                            + " less");
        }
        return (relative ? known : meant).stream().map(this::replacement).toList();
    }

    private List<String> ids(Lengths lengths) {
        if (lengths.ids().contains(what)) {
            return List.of(what);
        }
        Optional<KindWord> kind = KindWord.find(what);
        if (kind.isEmpty()) {
            List<String> known = new ArrayList<>(KindWord.words());
            known.addAll(lengths.ids());
            String near = Nearest.hint(what, known);
            throw trouble(
                    text,
                    "\"" + what + "\" is neither an id of the catalogue nor one of "
                            + String.join(", ", KindWord.words()) + (near.isEmpty() ? "" : ". " + near));
        }
        List<String> ids = lengths.ids(kind.get().kind());
        if (ids.isEmpty()) {
            throw trouble(text, "the catalogue has no " + kind.get().many());
        }
        return ids;
    }

    private Replacement replacement(Length length) {
        Dimension was = length.dimension();
        int hmm = relative ? was.valueHmm() + valueHmm : valueHmm;
        if (!length.range().holds(Hundredths.toMm(hmm))) {
            throw trouble(
                    text,
                    length.address() + " would be " + Hundredths.text(hmm) + " mm, allowed is "
                            + length.range().words());
        }
        Dimension to = was.isUnknown()
                ? new Dimension(hmm, Dimension.DEFAULT_PLUS_MINUS_HMM, Known.ASSUMED)
                : new Dimension(hmm, was.plusMinusHmm(), Known.ASSUMED, was.distribution());
        return new Replacement(length.id(), length.path(), was, to, "--assume " + text);
    }

    private static String named(List<Length> lengths) {
        String some = lengths.stream().limit(NAMED_MAX).map(Length::path).collect(Collectors.joining(", "));
        return some + (lengths.size() > NAMED_MAX ? " and " + (lengths.size() - NAMED_MAX) + " more" : "");
    }

    private String hint(Lengths lengths, List<String> ids) {
        Set<String> paths = new TreeSet<>();
        ids.forEach(id -> lengths.of(id).forEach(l -> paths.add(l.path())));
        String near = PathTail.hint(field, List.copyOf(paths));
        String of = ids.size() == 1 ? " of " + ids.get(0) : " of any " + what;
        return of + (near.isEmpty() ? "" : ". " + near);
    }

    private static NotUnderstood trouble(String text, String why) {
        return new NotUnderstood("--assume " + text + ": " + why);
    }
}
