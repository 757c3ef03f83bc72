package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import loopwright.catalog.standard.Finishing.Surface;
import loopwright.workshop.finish.PaintedPart;

/**
 * Parts that are painted together, because one mod or several do something to the same panels.
 *
 * @param mods those that want the paint
 * @param parts all panels and pieces of theirs
 */
record PaintGroup(List<ModWork> mods, Set<String> parts) {

    /** The groups of some mods, none sharing a part; those decided late by themselves. */
    static List<PaintGroup> of(List<ModWork> all) {
        List<PaintGroup> out = new ArrayList<>();
        for (ModWork mod : all) {
            if (!mod.paints()) {
                continue;
            }
            List<ModWork> mods = new ArrayList<>();
            Set<String> parts = new TreeSet<>(mod.parts());
            List<PaintGroup> apart = new ArrayList<>();
            for (PaintGroup group : out) {
                if (Collections.disjoint(group.parts, mod.parts())) {
                    apart.add(group);
                } else {
                    mods.addAll(group.mods);
                    parts.addAll(group.parts);
                }
            }
            mods.add(mod);
            apart.add(new PaintGroup(mods, parts));
            out = apart;
        }
        return out;
    }

    private List<PaintedPart> painted() {
        return mods.stream()
                .flatMap(m -> m.painted().stream())
                .sorted(Comparator.comparing(PaintedPart::id))
                .toList();
    }

    /** What is really painted: an insert, a cover, a panel; the parts worked on where nothing is known of that. */
    String id() {
        return painted().isEmpty()
                ? parts.stream().map(p -> p.replaceFirst("^piece:", "")).collect(Collectors.joining("+"))
                : painted().stream().map(PaintedPart::id).collect(Collectors.joining("+"));
    }

    String words() {
        return painted().isEmpty()
                ? parts.stream().map(ModWork::words).collect(Collectors.joining(", "))
                : painted().stream().map(PaintGroup::words).collect(Collectors.joining(", "));
    }

    private static String words(PaintedPart part) {
        return part.kind() == PaintedPart.Kind.PANEL ? ModWork.words(part.id()) : part.title();
    }

    /** Metal where nothing is known. */
    Set<Surface> surfaces() {
        return painted().isEmpty()
                ? Set.of(Surface.METAL)
                : painted().stream().map(PaintedPart::surface).collect(Collectors.toSet());
    }

    int paintMin() {
        return mods.stream().mapToInt(m -> m.mod().work().paintMin()).sum();
    }

    int waitDays() {
        return mods.stream().mapToInt(m -> m.mod().work().waitDays()).max().orElse(0);
    }

    boolean late() {
        return mods.stream().allMatch(ModWork::late);
    }

    boolean loose() {
        return mods.stream().allMatch(ModWork::loose);
    }
}
