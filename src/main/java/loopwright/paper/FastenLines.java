package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.catalog.part.ScrewThread;
import loopwright.workshop.fasten.Clamped;
import loopwright.workshop.fasten.Fasteners;
import loopwright.workshop.fasten.FixedSet;
import loopwright.workshop.fasten.Joint;
import loopwright.workshop.fasten.LengthChoice;
import loopwright.workshop.fasten.LengthChoice.Fits;
import loopwright.workshop.fasten.LengthChoice.Refused;
import loopwright.workshop.fasten.LengthWindow;
import loopwright.workshop.fasten.ScrewSet;

/** Screws of a build as lines of text and as rows of tables. */
public final class FastenLines {

    /** What always holds of screws in radiators. */
    public static final String CARE =
            "Put one screw of each set in by hand on the bench first, the radiator not yet hung:"
                    + " if it stops before its head seats, it is bottoming. Mark its depth with tape. Never a powered driver into a"
                    + " radiator: a screw that is too long goes into a tube, and leaks months later.";

    private FastenLines() {}

    /** Everything, in lines of at most {@value Lines#WIDTH} columns. */
    public static List<String> of(Fasteners screws) {
        List<String> out = new ArrayList<>();
        Columns table = Columns.headed(
                "mount", "holds", "screws", "least", "screw", "allowed mm", "hole mm", "left mm", "under head");
        rows(screws).forEach(r -> table.row(r.toArray(String[]::new)));
        out.addAll(table.lines(""));
        for (ScrewSet set : screws.sets()) {
            refusal(set).ifPresent(text -> out.addAll(Lines.wrap("NO SCREW FITS  ", text)));
        }
        for (ScrewSet set : screws.sets()) {
            notes(set).forEach(note -> out.addAll(Lines.wrap("look:  ", where(set.joint()) + ": " + note)));
        }
        out.addAll(Lines.wrap(
                "",
                "Left: from the screw's end to the first tube (blades, what is behind), nominal / worst case. "
                        + CARE));
        out.add("");
        Columns fixed = Columns.headed("holds", "screws", "screw", "note");
        fixedRows(screws).forEach(r -> fixed.row(r.toArray(String[]::new)));
        out.addAll(fixed.lines(""));
        out.addAll(Lines.wrap("", "Sizes of the trade, from memory: screws that come with a part go first."));
        for (Fasteners.MixUp mix : screws.mixUps()) {
            out.addAll(Lines.wrap(
                    "keep apart:  ",
                    word(mix.screw().thread()) + " in a " + word(mix.hole().thread()) + " hole "
                            + mix.mix().words()));
        }
        out.add("");
        out.addAll(Lines.wrap(
                "bag:  ",
                screws.bag().entrySet().stream()
                        .map(e -> e.getValue() + " " + e.getKey())
                        .collect(Collectors.joining(", "))));
        return out;
    }

    /** What has no screw, what to look at, what to keep apart: a sentence each. */
    public static List<String> remarks(Fasteners screws) {
        List<String> out = new ArrayList<>();
        screws.sets().forEach(set -> refusal(set).ifPresent(text -> out.add("NO SCREW FITS: " + text)));
        screws.sets().forEach(set -> notes(set).forEach(note -> out.add("Look: " + where(set.joint()) + ": " + note)));
        screws.mixUps()
                .forEach(mix -> out.add("Keep apart: " + word(mix.screw().thread()) + " in a "
                        + word(mix.hole().thread()) + " hole " + mix.mix().words()));
        return out;
    }

    /** A row a set: mount, holds, screws, least, screw, allowed, hole, left, layers. */
    public static List<List<String>> rows(Fasteners screws) {
        return screws.sets().stream().map(FastenLines::row).toList();
    }

    private static List<String> row(ScrewSet set) {
        LengthWindow window = set.window();
        String left = set.leftHmm().isPresent()
                ? Mm.text(set.leftHmm().getAsInt()) + " / "
                        + Mm.text(set.leftWorstHmm().getAsInt())
                : "-";
        return List.of(
                set.joint().mount(),
                set.joint().holding().word(),
                String.valueOf(set.joint().count().holes()),
                String.valueOf(set.joint().count().least()),
                set.findScrew()
                        .map(s ->
                                word(s.thread()) + " x " + Mm.text(s.lengthMm().valueHmm()))
                        .orElse("NONE, " + word(set.joint().seat().thread())),
                window.leastHmm() <= window.mostHmm()
                        ? Mm.text(window.leastHmm()) + "-" + Mm.text(window.mostHmm())
                        : "none",
                Mm.text(set.clearanceHoleHmm()),
                left,
                set.joint().layers().stream().map(FastenLines::layer).collect(Collectors.joining(" + ")));
    }

    private static String layer(Clamped layer) {
        return layer.name() + " " + Mm.text(layer.thicknessHmm());
    }

    /** A row a set of one length: holds, screws, screw, note. */
    public static List<List<String>> fixedRows(Fasteners screws) {
        return screws.fixed().stream().map(FastenLines::fixedRow).toList();
    }

    private static List<String> fixedRow(FixedSet set) {
        String note = set.screw().isEmpty() ? "NOT IN STOCK. " + set.note() : set.note();
        return List.of(
                set.what(),
                String.valueOf(set.count()),
                word(set.thread()) + " x " + Mm.text(set.lengthHmm()),
                note.isBlank() ? "-" : note.strip());
    }

    /** Why a set has no screw, and what would do; nothing where it has one. */
    static Optional<String> refusal(ScrewSet set) {
        if (!(set.choice() instanceof Refused refused)) {
            return Optional.empty();
        }
        LengthWindow window = set.window();
        StringBuilder out = new StringBuilder(where(set.joint()) + ": ");
        if (window.leastHmm() > window.mostHmm()) {
            out.append("the shortest that holds, ")
                    .append(Mm.text(window.leastHmm()))
                    .append(" mm, is longer than the longest that is safe, ")
                    .append(Mm.text(window.mostHmm()))
                    .append(" mm");
        } else {
            out.append("no ")
                    .append(word(set.joint().seat().thread()))
                    .append(" of stock is ")
                    .append(Mm.text(window.leastHmm()))
                    .append(" to ")
                    .append(Mm.text(window.mostHmm()))
                    .append(" mm");
        }
        refused.shorter()
                .ifPresent(s -> out.append("; ")
                        .append(Mm.text(s.lengthMm().valueHmm()))
                        .append(" does not hold"));
        refused.longer()
                .ifPresent(s -> out.append("; ").append(tooLong(s.lengthMm().valueHmm(), window, set)));
        out.append(refused.padded().map(FastenLines::padded).orElse("; washers do not help"));
        return Optional.of(out + ".");
    }

    private static String tooLong(int lengthHmm, LengthWindow window, ScrewSet set) {
        int past = lengthHmm - window.reachHmm();
        return Mm.text(lengthHmm)
                + (past > 0
                        ? " goes " + Mm.text(past) + " mm past the "
                                + set.joint().seat().before()
                        : " is " + Mm.text(lengthHmm - window.mostHmm()) + " mm over what is safe");
    }

    private static String padded(LengthChoice.Padded padded) {
        return "; " + Mm.text(padded.screw().lengthMm().valueHmm()) + " fits with " + padded.washers()
                + (padded.washers() == 1 ? " washer of " : " washers of ") + Mm.text(padded.washerHmm())
                + " mm under the head";
    }

    private static List<String> notes(ScrewSet set) {
        List<String> out = new ArrayList<>(set.warnings());
        set.leftWorstHmm().ifPresent(worst -> {
            if (worst < 0) {
                out.add("touches the " + set.joint().seat().before() + " by " + Mm.text(-worst)
                        + " mm if everything is off against us: measure before it goes in");
            }
        });
        if (set.choice() instanceof Fits fits && !fits.alsoFit().isEmpty()) {
            out.add("inside too: "
                    + fits.alsoFit().stream()
                            .map(s -> Mm.text(s.lengthMm().valueHmm()))
                            .collect(Collectors.joining(", ")));
        }
        if (set.joint().frees().size() > 1) {
            out.add("undone, frees " + String.join(", ", set.joint().frees()));
        }
        return out;
    }

    private static String where(Joint joint) {
        return joint.mount() + " " + joint.holding().word();
    }

    private static String word(ScrewThread thread) {
        return switch (thread) {
            case M3 -> "M3";
            case M4 -> "M4";
            case UNC_6_32 -> "6-32";
            case M3_5 -> "M3.5";
            case FAN -> "fan tapper";
        };
    }
}
