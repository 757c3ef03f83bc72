package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What is collected for one panel while it is put together. */
final class Holes {

    private final List<Hole> holes = new ArrayList<>();
    private final List<Hole> existing = new ArrayList<>();
    private final List<Lid> lids = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    /** What is cut and drilled. */
    List<Hole> holes() {
        return holes;
    }

    /** What is there already and is used. */
    List<Hole> existing() {
        return existing;
    }

    /** Raised covers. */
    List<Lid> lids() {
        return lids;
    }

    /** What is to be known. */
    List<Finding> findings() {
        return findings;
    }

    /** Adds a finding, once. */
    void note(Finding finding) {
        if (!findings.contains(finding)) {
            findings.add(finding);
        }
    }

    /** The holes, kind by kind, each kind numbered. */
    List<Hole> numbered() {
        List<Hole> sorted = new ArrayList<>(holes);
        sorted.sort((a, b) -> a.tag().purpose().compareTo(b.tag().purpose()));
        Map<Hole.Purpose, Integer> used = new EnumMap<>(Hole.Purpose.class);
        List<Hole> out = new ArrayList<>();
        for (Hole hole : sorted) {
            Hole.Purpose purpose = hole.tag().purpose();
            Hole.Purpose counter = purpose == Hole.Purpose.WINDOW ? Hole.Purpose.RING : purpose;
            int number = used.merge(counter, 1, Integer::sum);
            out.add(hole.numbered(purpose.letter() + number));
        }
        return List.copyOf(out);
    }
}
