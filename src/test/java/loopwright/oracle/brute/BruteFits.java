package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Shell;
import loopwright.catalog.part.Part;
import loopwright.oracle.OracleCase;

/** What the choices of parts and the stacks of one mod set are, and which of them fit together; by trying. */
public final class BruteFits {
    private final OracleCase question;
    private final List<Mod> mods;
    private final BruteApart apart;
    private final Map<List<Part>, List<String>> placings = new LinkedHashMap<>();
    private final Map<String, BruteWorld> worlds = new HashMap<>();
    private final Map<String, Boolean> answers = new HashMap<>();
    private final List<List<BruteHung>> stacks = new ArrayList<>();
    private final List<List<BruteHung>> rows = new ArrayList<>();

    /** Everything about a case with a valid mod set, or with one mistake about tight places. */
    public BruteFits(OracleCase question, SortedSet<String> set, Fault fault) {
        this.question = question;
        this.mods = question.chassis().mods().stream()
                .filter(m -> set.contains(m.id()))
                .toList();
        Shell.Interior interior = question.chassis().shell().interior();
        int[] insideHmm = {
            interior.widthMm().valueHmm(),
            interior.depthMm().valueHmm(),
            interior.heightMm().valueHmm()
        };
        this.apart = BruteApart.of(question, fault);
        BruteHangings hangings = new BruteHangings(question, mods, insideHmm);
        for (Mount mount : question.chassis().mounts()) {
            stacks.add(hangings.stacks(mount));
            rows.add(hangings.rows(mount));
        }
        choices(set);
    }

    /** Choices in cases that look the same share a world. */
    private void choices(SortedSet<String> set) {
        BruteChoices all = new BruteChoices(question.catalog(), question.chassis(), question.brief(), Fault.NONE);
        Map<String, Boolean> stands = new HashMap<>();
        for (BruteChoices.Chosen chosen : all.choices(set)) {
            if (chosen.bodies().stream().anyMatch(BruteBody::unknown)) {
                continue;
            }
            String looks = looks(chosen.bodies());
            BruteWorld world = worlds.computeIfAbsent(looks, l -> new BruteWorld(chosen.bodies(), apart, Fault.NONE));
            if (stands.computeIfAbsent(looks, l -> world.standsWithoutStacks())) {
                List<String> places = placings.computeIfAbsent(chosen.parts(), p -> new ArrayList<>());
                if (!places.contains(looks)) {
                    places.add(looks);
                }
            }
        }
    }

    private static String looks(List<BruteBody> bodies) {
        StringBuilder out = new StringBuilder();
        for (BruteBody body : bodies) {
            out.append(body.sort()).append(body.id());
            body.against().stream().sorted().forEach(out::append);
            body.touches().stream().sorted().forEach(t -> out.append('~').append(t));
            for (BruteBox box : body.boxes()) {
                out.append(box.room ? '[' : '{').append(box.needHmm);
                for (int axis = 0; axis < 3; axis++) {
                    out.append(',').append(box.low[axis]).append(':').append(box.high[axis]);
                    out.append('~').append(box.lowOff[axis]).append('~').append(box.highOff[axis]);
                }
            }
            out.append('\n');
        }
        return out.toString();
    }

    /** Every choice of parts that stands without stacks: board, processor, card, memory, block, supply, pump, reservoir. */
    public List<List<Part>> choices() {
        return List.copyOf(placings.keySet());
    }

    /** Mount by mount, the radiator stacks that have a position there. */
    public List<List<BruteHung>> stacks() {
        return stacks;
    }

    /** Mount by mount, the bare rows of fans that have a position there. */
    public List<List<BruteHung>> rows() {
        return rows;
    }

    /** Whether stacks and rows can hang together, with these parts in some places. */
    public boolean fits(List<Part> choice, List<BruteHung> hung) {
        StringBuilder what = new StringBuilder();
        hung.forEach(h -> what.append(h.mount().id()).append(h.text()).append('|'));
        for (String looks : placings.getOrDefault(choice, List.of())) {
            BruteWorld world = worlds.get(looks);
            List<BruteRun.Hanging> hangings =
                    hung.stream().map(BruteHung::hanging).toList();
            if (world != null && answers.computeIfAbsent(what + looks, w -> world.takes(hangings))) {
                return true;
            }
        }
        return false;
    }

    /** Free area of a mount's panel for a fan size. */
    public double freeArea(Mount mount, int sizeMm) {
        return new BruteRange(question.catalog(), question.brief().limits().freeAreaMin(), Fault.NONE)
                .freeArea(mount, sizeMm, mods, new Ruler());
    }

    /** The mods of the set. */
    public List<Mod> mods() {
        return mods;
    }
}
